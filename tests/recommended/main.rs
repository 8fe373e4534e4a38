//! Everything that a recommendation can say comes, and goes where its cause is gone. Bands, points
//! and from where a thing is worth saying are this project's judgement.

mod given;
mod rows;
mod said;

use farend_core::choice::{Weight, Wish};
use farend_core::compare::{Comparison, Outcome};
use farend_core::fit::{Item, Judgement};
use farend_core::quantity::{Conductance, Power, Time};
use farend_core::recommend::{Advice, Reason, Recommendation, recommend};
use farend_core::route::RouteId;
use farend_core::seat::View;
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::standing::Standing;
use given::{Given, NOTHING};
use rows::ROWS;
use said::Said;

#[test]
fn each_thing_that_is_said_comes_and_goes() {
    for (place, (said, routes, comes, goes)) in ROWS.iter().enumerate() {
        let mut given = Given::by(routes);
        comes(&mut given);
        let found = given.recommended();
        let there = Said::by(&found).contains(said);
        assert!(there, "row {place}, {said:?} doesn't come: {found:#?}");
        goes(&mut given);
        let found = given.recommended();
        let there = Said::by(&found).contains(said);
        assert!(!there, "row {place}, {said:?} doesn't go: {found:#?}");
    }
}

#[test]
fn nothing_can_be_said_that_isnt_tried() {
    for said in Said::all() {
        let tried = ROWS.iter().any(|(of, ..)| *of == said);
        assert!(tried, "{said:?}");
    }
    let tried = |fits: fn(&Said) -> bool| ROWS.iter().any(|(of, ..)| fits(of));
    assert!(tried(|it| matches!(it, Said::Needs(_))));
    assert!(tried(|it| matches!(it, Said::Asks(_))));
}

/// Of what a route means only what matters is told.
#[test]
fn what_doesnt_matter_isnt_told() {
    for (place, (_, routes, comes, _)) in ROWS.iter().enumerate() {
        let mut given = Given::by(routes);
        comes(&mut given);
        given.weights = NOTHING;
        let found = given.recommended();
        let of_power = |it: &Reason| matches!(it, Reason::Power { .. } | Reason::MoreThan { .. });
        let of_power = found.reasons.iter().all(of_power);
        assert!(
            of_power && found.drawbacks.is_empty(),
            "row {place}: {found:#?}"
        );
    }
}

/// What is needed and what is asked is what the route named, and none other, is looked at for.
#[test]
fn needs_and_questions_are_those_of_the_route() {
    let mut given = Given::by(RouteId::ALL);
    given.parts.implement.mass = None;
    let (_, survey) = given.surveyed();
    let found = given.recommended();
    let Advice::Equal(routes) = &found.advice else {
        panic!("{found:#?}");
    };
    let route = survey.route(routes[0]).expect("a route");
    let of = |judgement| -> Vec<Item> {
        let items = route.items.iter();
        items
            .filter(|it| it.judgement == judgement)
            .copied()
            .collect()
    };
    assert_eq!(found.needs, of(Judgement::Advice));
    assert_eq!(found.questions, of(Judgement::Question));
    assert!(!found.needs.is_empty() && !found.questions.is_empty());
}

#[test]
fn the_weightiest_three_are_told_first() {
    let mut given = Given::by(&[RouteId::MidShaft]);
    given.hookup(RouteId::MidShaft, 6.0);
    given.matters(Wish::LookAhead, Weight::Somewhat);
    let ahead = Reason::View(View::Ahead);
    let hooks_up = Reason::HooksUp(Time::minutes(6.0));
    // Looking ahead is worth 1·1, hooking up in a tenth of an hour 1·0.9, then 2·0.9.
    given.matters(Wish::HookUpQuickly, Weight::Somewhat);
    assert_eq!(given.recommended().reasons[1..], [ahead, hooks_up]);
    given.matters(Wish::HookUpQuickly, Weight::Much);
    assert_eq!(given.recommended().reasons[1..], [hooks_up, ahead]);
    // Two that are worth the same come in the order of the wishes; a fourth isn't told.
    given.matters(Wish::KeepOff, Weight::Somewhat);
    assert_eq!(given.recommended().reasons[1..], [hooks_up, ahead]);
    given.matters(Wish::HookUpQuickly, Weight::Not);
    let keeps_off = Reason::DrivesOver(false);
    assert_eq!(given.recommended().reasons[1..], [ahead, keeps_off]);
}

/// Rear shaft and machine's hydraulics, after a change of what the latter delivers.
fn beside(given: &Given, delivered: impl Fn(Power) -> Power) -> Recommendation {
    let (mut comparison, survey) = given.surveyed();
    let own = delivered_by(&comparison, RouteId::RearShaft);
    for result in &mut comparison.routes {
        if let (RouteId::MachineHydraulics, Outcome::Runs(run)) =
            (result.route, &mut result.outcome)
        {
            run.delivered = Spread::exact(delivered(own), Source::Own);
        }
    }
    recommend(&comparison, &survey, given.weights)
}

fn delivered_by(comparison: &Comparison, route: RouteId) -> Power {
    let run = comparison.route(route).and_then(|it| it.run());
    run.expect("it runs").delivered.likely
}

#[test]
fn a_fifth_more_is_worth_saying() {
    let given = Given::by(&[RouteId::RearShaft, RouteId::MachineHydraulics]);
    let times = |found: Recommendation| {
        found.reasons.into_iter().find_map(|it| match it {
            Reason::MoreThan { route, times } => Some((route, times)),
            _ => None,
        })
    };
    let (route, quotient) = times(beside(&given, |own| own * (1.0 / 1.21))).expect("it's said");
    assert_eq!(route, RouteId::MachineHydraulics);
    assert!((quotient - 1.21).abs() < 1e-9, "{quotient}");
    assert_eq!(times(beside(&given, |own| own * (1.0 / 1.19))), None);
    // Of nothing there is no multiple.
    assert_eq!(times(beside(&given, |_| Power::ZERO)), None);
}

/// A pump pack that brings the need until its oil is too hot is Slower for good; with a cooler it
/// isn't. What it brings is the same.
#[test]
fn the_standing_that_is_told_is_the_one_for_good() {
    let mut given = Given::by(&[RouteId::PumpPack]);
    let power = |given: &Given| match given.recommended().reasons[..] {
        [Reason::Power { ratio, standing }] => (ratio, standing),
        ref other => panic!("{other:?}"),
    };
    let (ratio, standing) = power(&given);
    assert!(ratio > 1.0, "{ratio}");
    assert_eq!(standing, Standing::Slower);
    for kit in &mut given.parts.kits {
        let pump = kit.pump.as_mut().expect("a pump");
        pump.reservoir.cooler = Some(Conductance::watts_per_kelvin(1000.0));
    }
    assert_eq!(power(&given), (ratio, Standing::Enough));
}
