//! Whole yards: every machine with every implement by every route.

use crate::large::large;
use farend_core::grid::{rows, to_bytes};
use farend_core::settings::Settings;
use farend_core::yard::Yard;
use wasm_bindgen::prelude::wasm_bindgen;

/// What a large yard has beside machines and implements: a few kits for each route.
pub const KITS: usize = 24;
/// The same yard each time.
pub const SEED: u64 = 1;

/// Machines and implements of the whole yards: 10,080, 100,200 and 600,000 routes.
pub const SIZES: [[usize; 2]; 3] = [[42, 40], [167, 100], [500, 200]];

/// All sizes, one after the other.
#[wasm_bindgen]
pub fn sizes() -> Vec<usize> {
    SIZES.concat()
}

/// A large yard.
#[wasm_bindgen]
pub struct Grid {
    yard: Yard,
}

#[wasm_bindgen]
impl Grid {
    /// With so many machines and implements.
    #[wasm_bindgen(constructor)]
    pub fn new(machines: usize, implements: usize) -> Self {
        let text = large(machines, implements, KITS, SEED);
        Self {
            yard: Yard::from_json(&text).expect("the generator keeps to the rules"),
        }
    }

    /// Reckons all of it. Gives the number of routes that can be joined up.
    pub fn reckon(&self) -> usize {
        let all = rows(
            &self.yard,
            0..self.yard.machines.len(),
            &Settings::default(),
            false,
        );
        all.iter().flatten().flatten().flatten().count()
    }

    /// Bytes of all of it on the way from a worker to its page.
    pub fn bytes(&self) -> usize {
        let all = rows(
            &self.yard,
            0..self.yard.machines.len(),
            &Settings::default(),
            false,
        );
        to_bytes(&all).len()
    }
}
