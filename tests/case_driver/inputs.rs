//! What a case feeds into its calculation.

use farend_tests::quantity::{Kind, Quantity};
use farend_tests::units::unit;
use serde::Deserialize;
use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

/// What stands in a case file that can't be worked with.
pub type Problem = String;

/// One input.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[serde(untagged)]
pub enum Input {
    /// The same for every point.
    Number(f64),
    /// One for each point.
    Numbers(Vec<f64>),
    /// A name of the demo yard.
    Text(String),
}

/// The inputs at one point, and which of them the calculation has asked for.
pub struct Point<'a> {
    inputs: &'a BTreeMap<String, Input>,
    place: usize,
    asked: RefCell<BTreeSet<&'a str>>,
}

impl<'a> Point<'a> {
    /// The inputs at a place of their lists.
    pub fn new(inputs: &'a BTreeMap<String, Input>, place: usize) -> Self {
        Self {
            inputs,
            place,
            asked: RefCell::default(),
        }
    }

    fn find(&self, fits: impl Fn(&str) -> bool) -> Option<(&'a str, &'a Input)> {
        let (name, input) = self.inputs.iter().find(|(name, _)| fits(name))?;
        self.asked.borrow_mut().insert(name);
        Some((name, input))
    }

    fn number_of(&self, name: &str, input: &Input) -> Result<f64, Problem> {
        match input {
            Input::Number(number) => Some(*number),
            Input::Numbers(numbers) => numbers.get(self.place).copied(),
            Input::Text(_) => None,
        }
        .ok_or_else(|| format!("{name} has no number for point {}", self.place))
    }

    /// A plain number.
    pub fn number(&self, name: &str) -> Result<f64, Problem> {
        let (name, input) = self
            .find(|key| key == name)
            .ok_or_else(|| format!("{name} is missing"))?;
        self.number_of(name, input)
    }

    /// A plain number, or this one where there is none.
    pub fn number_or(&self, name: &str, otherwise: f64) -> Result<f64, Problem> {
        if self.inputs.contains_key(name) {
            self.number(name)
        } else {
            Ok(otherwise)
        }
    }

    /// A name.
    pub fn text(&self, name: &str) -> Result<&'a str, Problem> {
        self.text_if_any(name)?
            .ok_or_else(|| format!("{name} is missing"))
    }

    /// The same, where it is there.
    pub fn text_if_any(&self, name: &str) -> Result<Option<&'a str>, Problem> {
        match self.find(|key| key == name) {
            Some((_, Input::Text(text))) => Ok(Some(text)),
            Some(_) => Err(format!("{name} must be a name")),
            None => Ok(None),
        }
    }

    /// A number under a name that ends with its unit.
    pub fn get<T: Kind>(&self, name: &str) -> Result<T, Problem> {
        self.get_if_any(name)?
            .ok_or_else(|| format!("{name} with its unit is missing"))
    }

    /// The same, where it is there.
    pub fn get_if_any<T: Kind>(&self, name: &str) -> Result<Option<T>, Problem> {
        match self.quantity(name)? {
            None => Ok(None),
            Some(quantity) => T::of(quantity)
                .map(Some)
                .ok_or_else(|| format!("{name} has a unit of another kind")),
        }
    }

    /// A number under a name that ends with its unit, of whatever kind.
    pub fn quantity(&self, name: &str) -> Result<Option<Quantity>, Problem> {
        let unit_of = |key: &str| unit(key.strip_prefix(name)?.strip_prefix('_')?);
        match self.find(|key| unit_of(key).is_some()) {
            None => Ok(None),
            Some((key, input)) => {
                let number = self.number_of(key, input)?;
                Ok(unit_of(key).map(|unit| (unit.make)(number)))
            }
        }
    }

    /// Names that no calculation has asked for.
    pub fn left_over(&self) -> Vec<&'a str> {
        let asked = self.asked.borrow();
        let names = self.inputs.keys().map(String::as_str);
        names.filter(|name| !asked.contains(name)).collect()
    }
}
