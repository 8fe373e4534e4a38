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
