//! Several cases in a row, for a group.

use super::chance::Chance;
use super::{Draw, Kind};
use serde::{Deserialize, Serialize};

/// Some kinds: a bit each, in the order of [`Kind::ALL`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Kinds(u8);

impl Kinds {
    /// Every kind.
    pub const ALL: Self = Self((1 << Kind::ALL.len()) - 1);

    /// None of them.
    pub const NONE: Self = Self(0);

    /// From bits; `None` where one stands for nothing.
    pub fn from_bits(bits: u8) -> Option<Self> {
        (bits & !Self::ALL.0 == 0).then_some(Self(bits))
    }

    /// As bits.
    pub fn bits(self) -> u8 {
        self.0
    }

    /// Whether a kind is among them.
    pub fn has(self, kind: Kind) -> bool {
        self.0 & bit(kind) != 0
    }

    /// With a kind put in, or taken out where it is.
    pub fn toggled(self, kind: Kind) -> Self {
        Self(self.0 ^ bit(kind))
    }
}

fn bit(kind: Kind) -> u8 {
    1 << kind as u8
}

/// What a trainer hands out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Set {
    /// The same seed gives the same draws.
    pub seed: u32,
    /// What they ask.
    pub kinds: Kinds,
    /// How many.
    pub count: u8,
}

impl Set {
    /// Its draws in order: every kind in turn, each turn in another order. None where no kind is
    /// wanted.
    pub fn draws(&self) -> Vec<Draw> {
        let kinds: Vec<_> = Kind::ALL
            .iter()
            .copied()
            .filter(|it| self.kinds.has(*it))
            .collect();
        // Far from the seeds of draws.
        let mut chance = Chance::seeded(u64::from(self.seed) | 1 << 63);
        let mut draws = Vec::new();
        while draws.len() < usize::from(self.count) && !kinds.is_empty() {
            let turn = chance.shuffled(kinds.clone()).into_iter();
            draws.extend(turn.map(|kind| Draw {
                kind,
                seed: chance.any(),
            }));
        }
        draws.truncate(self.count.into());
        draws
    }
}
