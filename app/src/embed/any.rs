//! Options with any names and values: what is read of them is what a host could have written.
//!
//! The fuzzer has no part in it: it would have to take in all that the page is built with. Addresses
//! and origins are left out, which only a browser takes apart.

use super::colours::Colour;
use super::part::Part;
use super::{Options, UNITS};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::test_runner::RngSeed;

const NAMES: &[&str] = &[
    "machine",
    "implement",
    "units",
    "lang",
    "currency",
    "show",
    "accent",
    "accent-ground",
    "ground",
];

fn name() -> impl Strategy<Value = String> {
    let other = ".{0,12}".prop_filter("a browser's", |name| name != "yard" && name != "origin");
    prop_oneof![4 => select(NAMES).prop_map(str::to_owned), 1 => other]
}

fn value() -> impl Strategy<Value = String> {
    const VALUES: &[&str] = &[
        "",
        " ",
        "us",
        "metric",
        "es-CL",
        "fr",
        "pseudo",
        "EUR",
        "eur",
        "#123",
        "heron-68",
        "routes",
        "routes, what-if",
        "routes,,ledger",
        ",",
        "header,sheet,deeper",
    ];
    prop_oneof![2 => select(VALUES).prop_map(str::to_owned), 1 => ".{0,80}"]
}

/// The options as a host would write them.
fn written(options: &Options) -> Vec<(String, String)> {
    let units = options.units.map(|units| word(&UNITS, units));
    let parts = |show: &Vec<Part>| {
        let words = show.iter().map(|part| word(Part::WORDS, *part));
        words.collect::<Vec<_>>().join(",")
    };
    let one = [
        ("machine", options.machine.clone()),
        ("implement", options.implement.clone()),
        ("units", units.map(str::to_owned)),
        ("currency", options.currency.clone()),
        ("show", options.show.as_ref().map(parts)),
    ];
    let one = one
        .into_iter()
        .filter_map(|(name, value)| Some((name.to_owned(), value?)));
    let name = |of: Colour| {
        let mut names = NAMES.iter();
        let found = names.find(|name| Colour::named(name) == Some(of));
        found.expect("a name of each").to_string()
    };
    let colours = options.colours.iter();
    let colours = colours.map(|(colour, written)| (name(*colour), written.clone()));
    one.chain(colours).collect()
}

fn word<T: PartialEq>(words: &[(&'static str, T)], of: T) -> &'static str {
    let found = words.iter().find(|(_, other)| *other == of);
    found.expect("a word of each").0
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 2_000,
        rng_seed: RngSeed::Fixed(540),
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn what_is_read_is_written_and_read_back(
        query in vec((name(), value()), 0..12),
        framed: bool,
    ) {
        let options = Options::read(&query, framed);
        prop_assert!(options.faults.len() <= query.len());
        let again = Options::read(&written(&options), framed);
        prop_assert_eq!(again.faults.len(), 0, "{:?}", again.faults);
        prop_assert_eq!(again, Options { faults: Vec::new(), ..options });
    }
}
