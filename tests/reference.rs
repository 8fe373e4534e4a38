//! The core against figures that other people's libraries compute: see `tests/reference/`.

use farend_core::physics::line::{Pipe, friction_factor};
use farend_core::physics::oil::Oil;
use farend_core::quantity::{Density, Flow, Length, Temperature, Viscosity};
use farend_tests::circuit::{Circuit, Given, Held, LAMINAR_UP_TO, TURBULENT_FROM};
use farend_tests::units::{UNITS, read, unit};
use serde::Deserialize;
use std::collections::BTreeSet;

/// Written by `cargo xtask reference --write`.
const FIGURES: &str = include_str!("reference/figures.json");

/// Both sides divide 64 by the Reynolds number: only rounding parts them.
const LAMINAR: f64 = 1e-12;
/// Explicit formulas lie within this of Colebrook's equation, which measurements scatter about by
/// more.
const TURBULENT: f64 = 0.02;
/// One product of factors that are exact by definition: only rounding parts them.
const CONVERSION: f64 = 1e-12;
/// One straight line through the same two points, in other logarithms: rounding, grown by raising
/// to a power twice.
const VISCOSITY: f64 = 1e-9;

/// Both sides search for the most that arrives, with the same formula for friction. A search knows
/// the place of a peak to half of all digits.
const CIRCUIT: f64 = 1e-6;

/// Circuits that each kind must have, for its formulas to be seen to hold.
const OF_A_KIND: usize = 15;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Figures {
    circuits: Vec<Circuit>,
    circuits_stalled: Vec<Given>,
    conversions: Vec<Conversion>,
    drops: Vec<Drop>,
    friction: Vec<Friction>,
    friction_in_transition: Vec<Bounds>,
    viscosity: Vec<OilAt>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Conversion {
    unit: String,
    number: f64,
    si_unit: String,
    si_number: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Drop {
    flow_l_min: f64,
    bore_mm: f64,
    length_m: f64,
    viscosity_cst: f64,
    density_kg_m3: f64,
    relative_roughness: f64,
    reynolds: f64,
    drop_bar: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Friction {
    relative_roughness: f64,
    reynolds: f64,
    factor: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct Bounds {
    relative_roughness: f64,
    reynolds: f64,
    laminar: f64,
    turbulent: f64,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct OilAt {
    at_40_cst: f64,
    at_100_cst: f64,
    at_c: f64,
    viscosity_cst: f64,
}

fn figures() -> Figures {
    serde_json::from_str(FIGURES).expect("figures as this test reads them")
}

/// Fails with every figure that `mismatch` has something to say about, or where there are too few.
fn check<F: std::fmt::Debug>(
    figures: &[F],
    fewest: usize,
    mismatch: impl Fn(&F) -> Option<String>,
) {
    assert!(figures.len() >= fewest, "{} of {fewest}", figures.len());
    let mismatches: Vec<_> = figures
        .iter()
        .filter_map(|figure| Some(format!("{} for {figure:?}", mismatch(figure)?)))
        .collect();
    assert!(
        mismatches.is_empty(),
        "{} of {}:\n{}",
        mismatches.len(),
        figures.len(),
        mismatches.join("\n")
    );
}

/// What parts the core's number from the wanted one by more than `tolerance`, relative. No number
/// is never near.
fn far(core: f64, wanted: f64, tolerance: f64) -> Option<String> {
    let off = (core - wanted).abs() / wanted.abs();
    if off <= tolerance {
        return None;
    }
    Some(format!("the core has {core}, off by {off:.2e}"))
}

fn friction_tolerance(reynolds: f64) -> f64 {
    if reynolds <= LAMINAR_UP_TO {
        LAMINAR
    } else {
        TURBULENT
    }
}

#[test]
fn friction_factors() {
    check(&figures().friction, 330, |figure| {
        far(
            friction_factor(figure.reynolds, figure.relative_roughness),
            figure.factor,
            friction_tolerance(figure.reynolds),
        )
    });
}

/// No formula holds here: only that a flow is no smoother than laminar, no rougher than turbulent.
#[test]
fn friction_factors_in_the_transition() {
    check(&figures().friction_in_transition, 40, |figure| {
        let core = friction_factor(figure.reynolds, figure.relative_roughness);
        let lowest = figure.laminar * (1.0 - LAMINAR);
        let highest = figure.turbulent * (1.0 + TURBULENT);
        (!(lowest..=highest).contains(&core)).then(|| format!("the core has {core}"))
    });
}

#[test]
fn drops_of_lines() {
    check(&figures().drops, 120, |figure| {
        let pipe = Pipe {
            bore: Length::millimetres(figure.bore_mm),
            length: Length::metres(figure.length_m),
            relative_roughness: figure.relative_roughness,
        };
        let drop = pipe.drop(
            Flow::litres_per_minute(figure.flow_l_min),
            Viscosity::centistokes(figure.viscosity_cst),
            Density::kilograms_per_cubic_metre(figure.density_kg_m3),
        );
        let tolerance = friction_tolerance(figure.reynolds);
        far(drop.to_bar(), figure.drop_bar, tolerance)
    });
}

#[test]
fn viscosities() {
    check(&figures().viscosity, 250, |figure| {
        let oil = Oil {
            at_40: Viscosity::centistokes(figure.at_40_cst),
            at_100: Viscosity::centistokes(figure.at_100_cst),
            // Has no part in it.
            density_at_15: Density::ZERO,
        };
        let viscosity = oil.viscosity(Temperature::celsius(figure.at_c));
        far(viscosity.to_centistokes(), figure.viscosity_cst, VISCOSITY)
    });
}

#[test]
fn circuits_where_most_arrives() {
    check(&figures().circuits, 240, |circuit| {
        let ledger = circuit.given.ledger();
        let Some(pairs) = circuit.found.beside(&ledger) else {
            return Some("the core has a stall".to_owned());
        };
        if ledger.limit != circuit.found.limit.limit() {
            return Some(format!("the core has {:?}", ledger.limit));
        }
        pairs.into_iter().find_map(|(name, core, wanted)| {
            Some(format!("{name}: {}", far(core, wanted, CIRCUIT)?))
        })
    });
}

/// Another formula for turbulent friction changes what arrives by no more than it may change what
/// the hoses lose.
#[test]
fn circuits_with_colebrooks_friction() {
    check(&figures().circuits, 240, |circuit| {
        let found = &circuit.found;
        let delivered = circuit.given.ledger().delivered()?.power.to_kilowatts();
        let off = (delivered - found.delivered_by_colebrook_kw).abs();
        let allowed = TURBULENT * found.hose_loss_kw + CIRCUIT * found.delivered_kw;
        (off > allowed).then(|| format!("the core has {delivered}, off by {off:.2e}"))
    });
}

/// What the fuzzer holds the core against is itself held against these.
#[test]
fn circuits_by_the_plain_reference() {
    check(&figures().circuits, 240, |circuit| {
        let (solved, found) = (circuit.given.solved(), &circuit.found);
        if solved.held != found.limit {
            return Some(format!("the plain reference has {:?}", solved.held));
        }
        // At a peak, the pressure is known to half of all digits.
        let place = if solved.held == Held::Flow {
            1e-4
        } else {
            CIRCUIT
        };
        far(solved.delivered_kw, found.delivered_kw, CIRCUIT)
            .or_else(|| far(solved.pump_bar, found.pump_bar, place))
            .or_else(|| far(solved.pump_l_min, found.pump_l_min, place))
    });
    check(&figures().circuits_stalled, OF_A_KIND, |given| {
        let solved = given.solved();
        (solved.delivered_kw != 0.0).then(|| format!("{solved:?}"))
    });
}

/// Where a hose's flow passes between turbulent and laminar, what arrives has two peaks. Which of them a
/// plain search ends at is chance, so there are many alike.
#[test]
fn of_two_peaks_the_higher_is_found() {
    let bytes = *include_bytes!("../fuzz/corpus/circuit/two-peaks");
    let at = |bar| Given::drawn(&bytes).arrives_kw(bar);
    assert!(at(243.0) > at(245.0) && at(248.0) > at(245.0));
    for alike in 0..600_u32 {
        let mut bytes = bytes;
        for (place, byte) in (0_u32..).zip(&mut bytes) {
            // The higher byte of some of the numbers, by a little.
            if place % 2 == 1 && (alike >> (place % 9)) & 1 == 1 {
                *byte = byte.saturating_add_signed(if alike % 2 == 0 { 3 } else { -3 });
            }
        }
        let given = Given::drawn(&bytes);
        let solved = given.solved();
        let delivered = given.ledger().delivered().expect("it arrives");
        let found = far(delivered.power.to_kilowatts(), solved.delivered_kw, CIRCUIT);
        assert_eq!(found, None, "{alike}: {solved:?}");
    }
}

#[test]
fn circuits_at_whose_end_nothing_arrives() {
    check(&figures().circuits_stalled, OF_A_KIND, |given| {
        let arrives = given.ledger().delivered()?;
        Some(format!("the core has {arrives:?}"))
    });
}

#[test]
fn circuits_are_held_by_every_limit_and_have_every_kind_of_flow() {
    let circuits = figures().circuits;
    let of_a_kind = |what: &str, is: &dyn Fn(&Circuit) -> bool| {
        let count = circuits.iter().filter(|circuit| is(circuit)).count();
        assert!(count >= OF_A_KIND, "{count} {what}");
    };
    for held in Held::ALL {
        of_a_kind(&format!("{held:?}"), &|it| it.found.limit == held);
    }
    let reynolds = |it: &Circuit| it.found.reynolds;
    of_a_kind("laminar", &|it| reynolds(it) < LAMINAR_UP_TO);
    of_a_kind("turbulent", &|it| reynolds(it) > TURBULENT_FROM);
    of_a_kind("between", &|it| {
        (LAMINAR_UP_TO..TURBULENT_FROM).contains(&reynolds(it))
    });
    of_a_kind("variable pumps", &|it| it.given.swings_back(&it.found));
    of_a_kind("with flow diverted", &|it| it.given.diverts(&it.found));
}

/// Into SI and out of it.
#[test]
fn conversions() {
    check(&figures().conversions, 3 * UNITS.len(), |figure| {
        let convert = |number: f64, from: &str, to: &str| {
            let from = unit(from)?;
            read((from.make)(number), to)
        };
        let (unit, si_unit) = (&figure.unit, &figure.si_unit);
        let (Some(into), Some(out)) = (
            convert(figure.number, unit, si_unit),
            convert(figure.si_number, si_unit, unit),
        ) else {
            return Some("the core doesn't convert".to_owned());
        };
        far(into, figure.si_number, CONVERSION).or_else(|| far(out, figure.number, CONVERSION))
    });
}

#[test]
fn every_unit_has_figures() {
    let listed: BTreeSet<_> = UNITS.iter().map(|unit| unit.name.to_owned()).collect();
    let computed = figures().conversions.into_iter().map(|figure| figure.unit);
    assert_eq!(computed.collect::<BTreeSet<_>>(), listed);
}

/// A unit of the core that the list lacks would go unchecked.
#[test]
fn the_list_has_every_unit_of_the_core() {
    let readers = |source: &'static str| -> BTreeSet<&str> {
        source
            .split(|c: char| !(c.is_alphanumeric() || c == '_'))
            .filter(|word| word.starts_with("to_") && *word != "to_si")
            .collect()
    };
    let core = [
        include_str!("../core/src/quantity.rs"),
        include_str!("../core/src/quantity/temperature.rs"),
    ];
    let core: BTreeSet<_> = core.into_iter().flat_map(readers).collect();
    assert_eq!(readers(include_str!("units.rs")), core);
}
