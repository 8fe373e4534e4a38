//! The same seed is the same case.

use farend_core::practice::{Draw, Kind, Kinds, Set, draw, reveal};
use farend_tests::demo;
use std::collections::BTreeSet;

#[test]
fn the_native_build_draws_the_committed_cases() {
    farend_tests::draws::assert_committed();
}

#[test]
fn a_draw_is_the_same_twice_and_another_seed_is_mostly_another_case() {
    let (yard, again) = (demo(), demo());
    for kind in Kind::ALL {
        let mut cases = BTreeSet::new();
        for seed in 0..20 {
            let of = |yard| draw(yard, Draw { kind: *kind, seed }).expect("a case");
            let case = of(&yard);
            assert_eq!(case, of(&again));
            assert_eq!(reveal(&yard, &case), reveal(&again, &case));
            cases.insert(format!(
                "{:?}",
                (case.machine, case.implement, case.settings, case.question)
            ));
        }
        assert!(cases.len() >= 15, "{kind:?}: {} of 20", cases.len());
    }
}

/// A yard with nothing to ask about has no cases, and a case of another yard no answer.
#[test]
fn a_yard_without_oil_has_no_questions_about_it() {
    let mut yard = demo();
    let case = |yard: &_, kind| draw(yard, Draw { kind, seed: 1 });
    let of_the_demo = case(&yard, Kind::Wanted).expect("a case");
    yard.machines.retain(|machine| machine.id == "wren-18");
    yard.implements
        .retain(|implement| implement.id == "tiller-150");
    assert_eq!(case(&yard, Kind::Wanted), None);
    assert_eq!(case(&yard, Kind::Route), None);
    assert!(case(&yard, Kind::Limit).is_some());
    assert_eq!(reveal(&yard, &of_the_demo), None);
}

#[test]
fn a_set_takes_its_kinds_in_turn() {
    let kinds = Kinds::NONE
        .toggled(Kind::Limit)
        .toggled(Kind::Fit)
        .toggled(Kind::Sheet);
    let set = Set {
        seed: 3,
        kinds,
        count: 8,
    };
    let draws = set.draws();
    assert_eq!(draws, set.draws());
    assert_eq!(draws.len(), 8);
    for turn in draws.chunks(3) {
        let asked: BTreeSet<_> = turn.iter().map(|draw| draw.kind).collect();
        assert_eq!(asked.len(), turn.len());
        assert!(asked.iter().all(|kind| kinds.has(*kind)));
    }
    let seeds: BTreeSet<_> = draws.iter().map(|draw| draw.seed).collect();
    assert_eq!(seeds.len(), 8);
    assert_ne!(draws, Set { seed: 4, ..set }.draws());
    // A longer set begins like a shorter one.
    assert_eq!(Set { count: 20, ..set }.draws()[..8], draws);
    let none = Set {
        kinds: Kinds::NONE,
        ..set
    };
    assert!(none.draws().is_empty());
}

#[test]
fn kinds_are_bits_and_no_others() {
    assert_eq!(Kinds::ALL.bits(), 0b11_1111);
    assert!(
        Kind::ALL
            .iter()
            .all(|kind| Kinds::ALL.has(*kind) && !Kinds::NONE.has(*kind))
    );
    assert_eq!(
        Kinds::from_bits(0b101),
        Some(Kinds::NONE.toggled(Kind::Route).toggled(Kind::Limit))
    );
    assert_eq!(Kinds::from_bits(0b100_0000), None);
    assert_eq!(Kinds::ALL.toggled(Kind::Wanted).bits(), 0b1_1111);
}
