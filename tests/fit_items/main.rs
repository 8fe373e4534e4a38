//! Each item of a fit comes to each judgement that it can have, and to another where its cause is
//! gone.

mod carrying;
mod kits;
mod oil;
mod shafts;

use farend_core::fit::{Item, Judgement, gravest};
use farend_core::route::RouteId;
use farend_tests::item_kind::ItemKind;
use farend_tests::parts::Parts;
use std::collections::HashSet;

/// What was looked at, on which route, after what change, and what it comes to: nothing where there
/// is no such item.
type Row = (ItemKind, RouteId, Option<Judgement>, fn(&mut Parts));

/// A machine, an implement and a kit for a route of which all is known.
fn parts(route: RouteId) -> Parts {
    match route {
        RouteId::SkidSteer => Parts::of("puffin-62", "stump-cutter"),
        _ => {
            let mut parts = Parts::of("curlew-46", "snow-thrower-150");
            parts.kits.retain(|kit| kit.id != "joint-shaft-heavy");
            parts
        }
    }
}

fn rows() -> impl Iterator<Item = &'static Row> {
    [shafts::ROWS, oil::ROWS, carrying::ROWS]
        .into_iter()
        .flatten()
}

/// What the items of a kind come to, where there is one.
fn comes_to(items: &[Item], kind: ItemKind) -> Option<Judgement> {
    let of_kind = |item: &&Item| ItemKind::of(&item.check) == kind;
    let items: Vec<_> = items.iter().filter(of_kind).copied().collect();
    (!items.is_empty()).then(|| gravest(&items))
}

#[test]
fn each_item_comes_to_what_it_must() {
    for (place, (kind, route, expected, change)) in rows().enumerate() {
        let mut parts = parts(*route);
        change(&mut parts);
        let items = parts.items(*route);
        let found = comes_to(&items, *kind);
        assert_eq!(found, *expected, "row {place}, {kind:?}: {items:#?}");
    }
}

#[test]
fn each_judgement_of_each_item_comes_and_goes() {
    for (kind, can_be) in ItemKind::ALL {
        let of_kind = rows().filter(|(of, ..)| of == kind);
        let found: HashSet<_> = of_kind.map(|(_, _, expected, _)| *expected).collect();
        for judgement in *can_be {
            assert!(
                found.contains(&Some(*judgement)),
                "{kind:?}: {judgement:?} never comes"
            );
        }
        assert!(
            found.len() > 1,
            "{kind:?}: it never comes to anything else, so it never goes"
        );
        let listed = |it: &Judgement| can_be.contains(it);
        assert!(found.iter().flatten().all(listed), "{kind:?}: {found:?}");
    }
}

#[test]
fn all_items_come_to_the_gravest() {
    use Judgement::{Advice, Pass, Question, Stop};
    let check = parts(RouteId::PumpPack).items(RouteId::PumpPack)[0].check;
    let of = |judgements: &[Judgement]| {
        let item = |judgement: &Judgement| Item {
            check,
            judgement: *judgement,
        };
        gravest(&judgements.iter().map(item).collect::<Vec<_>>())
    };
    assert_eq!(of(&[]), Pass);
    assert_eq!(of(&[Pass, Advice, Pass]), Advice);
    assert_eq!(of(&[Question, Advice]), Question);
    assert_eq!(of(&[Pass, Stop, Question]), Stop);
}
