//! What a seed decides. Only numbers of a fixed width are drawn, for a pointer's width differs
//! between a browser and a computer.

use super::Draw;
use fastrand::Rng;

/// The chance of one draw.
#[derive(Debug)]
pub(super) struct Chance(Rng);

impl Chance {
    /// From a seed.
    pub fn seeded(seed: u64) -> Self {
        Self(Rng::with_seed(seed))
    }

    /// That of a draw.
    pub fn of(draw: Draw) -> Self {
        Self::seeded((u64::from(draw.kind as u8) << 32) | u64::from(draw.seed))
    }

    /// A number below another one, which must be above zero.
    pub fn below(&mut self, number: u32) -> u32 {
        self.0.u32(..number)
    }

    /// Any number.
    pub fn any(&mut self) -> u32 {
        self.0.u32(..)
    }

    /// One way or the other.
    pub fn flip(&mut self) -> bool {
        self.below(2) == 0
    }

    /// Puts things in another order (Fisher and Yates).
    pub fn shuffle<T>(&mut self, things: &mut [T]) {
        for (last, left) in (1..things.len()).rev().zip((2..=things.len() as u32).rev()) {
            things.swap(last, self.below(left) as usize);
        }
    }

    /// The same things in another order.
    pub fn shuffled<T>(&mut self, mut things: Vec<T>) -> Vec<T> {
        self.shuffle(&mut things);
        things
    }
}

#[cfg(test)]
mod tests {
    use super::super::Kind;
    use super::*;

    /// What the library gives, so that another version can't change every case unseen.
    #[test]
    fn the_same_seed_gives_the_same_numbers() {
        let mut chance = Chance::seeded(1);
        let any: Vec<_> = (0..16).map(|_| chance.any()).collect();
        assert_eq!(
            any,
            [
                3067199153, 2864053821, 4078585478, 1299177904, 574072521, 1284846970, 3802340853,
                1642046250, 3439786033, 2073965000, 1336280203, 3021363527, 1650102614, 2365044065,
                3328461005, 1604112388
            ]
        );
        let below: Vec<_> = (1..=16).map(|number| chance.below(number)).collect();
        assert_eq!(below, [0, 1, 1, 3, 2, 3, 1, 3, 7, 2, 10, 6, 2, 5, 10, 3]);
        let order = chance.shuffled((0..12).collect());
        assert_eq!(order, [1, 4, 11, 9, 5, 2, 0, 3, 10, 6, 8, 7]);
        let kind = Kind::Sheet;
        assert_eq!(Chance::of(Draw { kind, seed: 7 }).any(), 73869600);
    }

    #[test]
    fn every_order_of_three_things_comes_about_as_often() {
        let mut chance = Chance::seeded(5);
        let mut counts = std::collections::BTreeMap::new();
        const DRAWS: u32 = 6_000;
        for _ in 0..DRAWS {
            *counts.entry(chance.shuffled(vec![0, 1, 2])).or_insert(0) += 1;
        }
        assert_eq!(counts.len(), 6);
        // Five standard deviations of a binomial count: √(n·p·(1 − p)) is 29.
        assert!(
            counts
                .values()
                .all(|count: &i32| (count - 1_000).abs() < 145),
            "{counts:?}"
        );
    }
}
