//! What the page's host wants of it: a dealer who frames the page writes it in the query of its
//! address, as in `?machine=heron-68&units=us`. The host's options are never in the link behind the
//! number sign, which carries what the reader has chosen.
//!
//! All options are read at once; one that can't be used is a fault and the page works without it.

#[cfg(test)]
mod any;
pub mod colours;
pub mod fault;
pub mod height;
pub mod part;

use crate::browser;
use crate::language::{LANGUAGES, QUERY, offered};
use colours::Colour;
use farend_core::units::UnitSystem;
use farend_core::yard::{Yard, is_currency};
use fault::{OptionFault, Wrong};
use part::Part;

/// Systems of units by their words.
const UNITS: [(&str, UnitSystem); 2] = [("metric", UnitSystem::Metric), ("us", UnitSystem::Us)];

/// The host's options.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Options {
    /// The whole address of a yard file.
    pub yard: Option<String>,
    /// Identifier of the one machine that the page is about.
    pub machine: Option<String>,
    /// Identifier of the one implement that the page is about.
    pub implement: Option<String>,
    /// The units that the page begins with.
    pub units: Option<UnitSystem>,
    /// The currency where a yard has none.
    pub currency: Option<String>,
    /// The host's own colours, as they are written.
    pub colours: Vec<(Colour, String)>,
    /// The parts that are shown, where not all are.
    pub show: Option<Vec<Part>>,
    /// The origin of the page around this one, which is told the height.
    pub origin: Option<String>,
    /// All that is wrong with the options, but for what only a yard or a colour's ground can tell.
    pub faults: Vec<OptionFault>,
}

impl Options {
    /// The options in the page's own address.
    pub fn of_page() -> Self {
        Self::read(&browser::query(), browser::is_framed())
    }

    /// Reads names and values. Those that no option has are left alone unless the page stands in a
    /// frame: whoever passes an address on may add to it.
    fn read(query: &[(String, String)], framed: bool) -> Self {
        let mut options = Self::default();
        for (place, (name, value)) in query.iter().enumerate() {
            let earlier = query.iter().take(place).any(|(other, _)| other == name);
            let taken = match (earlier, value.trim()) {
                (true, _) => Err(Wrong::Twice),
                (false, "") => Err(Wrong::Empty),
                (false, value) => options.take(name, value),
            };
            if let Err(wrong) = taken
                && (framed || wrong != Wrong::Unknown)
            {
                options.faults.push(OptionFault::of(name, value, wrong));
            }
        }
        options
    }

    fn take(&mut self, name: &str, value: &str) -> Result<(), Wrong> {
        if let Some(colour) = Colour::named(name) {
            self.colours.push((colour, value.to_owned()));
            return Ok(());
        }
        match name {
            "yard" => {
                let address = browser::yard_address(value);
                self.yard = Some(address.ok_or(Wrong::NoAddress)?);
            }
            "machine" => self.machine = Some(value.to_owned()),
            "implement" => self.implement = Some(value.to_owned()),
            "units" => self.units = Some(one_of(&UNITS, value)?),
            QUERY => language(value)?,
            "currency" => {
                let code = is_currency(value).then(|| value.to_owned());
                self.currency = Some(code.ok_or(Wrong::NoCurrency)?);
            }
            "show" => {
                let words = value.split(',').map(str::trim);
                let parts = words.map(|word| one_of(Part::WORDS, word));
                self.show = Some(parts.collect::<Result<_, _>>()?);
            }
            "origin" => {
                let origin = browser::origin_of(value).filter(|origin| origin == value);
                self.origin = Some(origin.ok_or(Wrong::NoOrigin)?);
            }
            _ => return Err(Wrong::Unknown),
        }
        Ok(())
    }

    /// Whether a part is shown. The whole yard and practice lead to other pairs, so they aren't where
    /// one of the two is fixed.
    pub fn shows(&self, part: Part) -> bool {
        let is_fixed = self.machine.is_some() || self.implement.is_some();
        let leads_away = matches!(part, Part::Grid | Part::Practice);
        let wanted = self.show.as_ref().is_none_or(|show| show.contains(&part));
        wanted && !(is_fixed && leads_away)
    }

    /// The fixed machine, where the yard has it.
    pub fn machine_of(&self, yard: &Yard) -> Option<&str> {
        let id = self.machine.as_deref();
        id.filter(|id| yard.machine(id).is_some())
    }

    /// The fixed implement, where the yard has it.
    pub fn implement_of(&self, yard: &Yard) -> Option<&str> {
        let id = self.implement.as_deref();
        id.filter(|id| yard.implement(id).is_some())
    }

    /// What is wrong with the options in a yard: it lacks what they fix.
    pub fn lacks(&self, yard: &Yard) -> Vec<OptionFault> {
        let lacks = [
            ("machine", &self.machine, self.machine_of(yard)),
            ("implement", &self.implement, self.implement_of(yard)),
        ];
        let lacks = lacks
            .iter()
            .filter_map(|(name, id, found)| match (id, found) {
                (Some(id), None) => Some(OptionFault::of(name, id, Wrong::NotInYard)),
                _ => None,
            });
        lacks.collect()
    }
}

fn one_of<T: Copy>(words: &[(&'static str, T)], word: &str) -> Result<T, Wrong> {
    let found = words.iter().find(|(of, _)| *of == word);
    let all = || words.iter().map(|(of, _)| *of).collect();
    found.map(|(_, of)| *of).ok_or_else(|| Wrong::NoneOf(all()))
}

/// A language that the page speaks; the start script has loaded it by now. A tag counts by its first
/// part: "en-NZ" is English.
fn language(tag: &str) -> Result<(), Wrong> {
    let first = tag.split('-').next().unwrap_or_default();
    let known = LANGUAGES
        .iter()
        .any(|it| it.tag.eq_ignore_ascii_case(first));
    let tags = || offered().iter().map(|it| it.tag).collect();
    known.then_some(()).ok_or_else(|| Wrong::NotSpoken(tags()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use farend_core::yard::DEMO;

    fn read(query: &[(&str, &str)], framed: bool) -> Options {
        let own = |(name, value): &(&str, &str)| (name.to_string(), value.to_string());
        Options::read(&query.iter().map(own).collect::<Vec<_>>(), framed)
    }

    fn paths(options: &Options) -> Vec<&str> {
        options.faults.iter().map(|it| it.option.as_str()).collect()
    }

    #[test]
    fn every_option_is_read() {
        let options = read(
            &[
                ("machine", "heron-68"),
                ("implement", "broom-180"),
                ("units", "us"),
                ("lang", "es-CL"),
                ("currency", "NZD"),
                ("accent", "#123"),
                ("show", "routes, what-if"),
            ],
            true,
        );
        assert_eq!(options.faults, []);
        assert_eq!(options.machine.as_deref(), Some("heron-68"));
        assert_eq!(options.implement.as_deref(), Some("broom-180"));
        assert_eq!(options.units, Some(UnitSystem::Us));
        assert_eq!(options.currency.as_deref(), Some("NZD"));
        assert_eq!(options.colours, [(Colour::Accent, "#123".to_owned())]);
        assert_eq!(options.show, Some(vec![Part::Routes, Part::WhatIf]));
    }

    #[test]
    fn all_that_is_wrong_comes_at_once_and_the_rest_counts() {
        let query = [
            ("units", "imperial"),
            ("lang", "tlh"),
            ("currency", "euro"),
            ("show", "routes,price"),
            ("machine", "heron-68"),
            ("machine", "wren-18"),
            ("implement", " "),
            ("machin", "wren-18"),
        ];
        let options = read(&query, true);
        let all = [
            "units",
            "lang",
            "currency",
            "show",
            "machine",
            "implement",
            "machin",
        ];
        assert_eq!(paths(&options), all);
        assert_eq!(options.machine.as_deref(), Some("heron-68"));
        assert_eq!(
            (options.units, options.show, options.implement),
            (None, None, None)
        );
    }

    #[test]
    fn whoever_passes_an_address_on_may_add_to_it() {
        let query = [("from", "a letter"), ("units", "us")];
        assert_eq!(read(&query, false).faults, []);
        assert_eq!(paths(&read(&query, true)), ["from"]);
    }

    #[test]
    fn what_is_fixed_counts_where_the_yard_has_it() {
        let yard = Yard::from_json(DEMO).unwrap();
        let options = read(&[("machine", "heron-68"), ("implement", "boat")], true);
        assert_eq!(options.machine_of(&yard), Some("heron-68"));
        assert_eq!(options.implement_of(&yard), None);
        let lacks = options.lacks(&yard);
        assert_eq!(lacks.len(), 1);
        assert_eq!(lacks[0].option, "implement");
    }

    #[test]
    fn a_fixed_machine_leaves_no_way_to_another() {
        let free = read(&[], true);
        assert!(Part::WORDS.iter().all(|(_, part)| free.shows(*part)));
        let fixed = read(&[("machine", "heron-68")], true);
        assert!(!fixed.shows(Part::Grid) && !fixed.shows(Part::Practice));
        assert!(fixed.shows(Part::Choices));
        let few = read(&[("show", "routes")], true);
        assert!(few.shows(Part::Routes) && !few.shows(Part::Ledger));
    }
}
