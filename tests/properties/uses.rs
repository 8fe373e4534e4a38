//! Whether random yards were of use at all: a property that never applied has shown nothing.

use std::cell::RefCell;
use std::collections::HashMap;

/// How often something of a name was of use.
#[derive(Debug, Default)]
pub struct Uses(RefCell<HashMap<&'static str, u32>>);

impl Uses {
    pub fn count(&self, name: &'static str) {
        *self.0.borrow_mut().entry(name).or_default() += 1;
    }

    pub fn of(&self, name: &str) -> u32 {
        self.0.borrow().get(name).copied().unwrap_or_default()
    }

    pub fn are_at_least(&self, fewest: &[(&'static str, u32)]) {
        for (name, fewest) in fewest {
            assert!(self.of(name) >= *fewest, "{name}: {self:?}");
        }
    }
}
