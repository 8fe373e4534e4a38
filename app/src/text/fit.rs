//! Whether it can be hooked up, in words: what was found, and what to do or to ask.

pub use super::say::fit::stop_small;

use super::say::fit as say;
use super::{clauses, in_turn, reasons};
use crate::number;
use farend_core::fit::{Check, Item, Judgement};
use farend_core::hookup::{Seat, Turns};
use farend_core::physics::balance::{End, LEAST_SHARE};
use farend_core::physics::hitch::Category;
use farend_core::physics::joint_shaft::{least_clearance, least_overlap};
use farend_core::physics::shaft::ShaftType;
use farend_core::quantity::{Length, Mass};
use farend_core::units::{Quantity, UnitSystem};

/// A judgement.
pub fn judgement(judgement: Judgement) -> &'static str {
    match judgement {
        Judgement::Pass => say::pass(),
        Judgement::Advice => say::advice(),
        Judgement::Question => say::question(),
        Judgement::Stop => say::stop(),
    }
}

/// What was looked at, short.
pub fn name(check: &Check) -> &'static str {
    match check {
        Check::Missing(_) => say::name_missing(),
        Check::InputSpeed { .. } => say::name_input_speed(),
        Check::PtoEnd { .. } => say::name_pto_end(),
        Check::FarEnd { .. } => say::name_far_end(),
        Check::Direction { .. } => say::name_direction(),
        Check::ShaftTorque { .. } => say::name_shaft_torque(),
        Check::SlipClutch { .. } => say::name_slip_clutch(),
        Check::Angle { .. } => say::name_angle(),
        Check::LiftAngle { .. } => say::name_lift_angle(),
        Check::Overlap { .. } => say::name_overlap(),
        Check::Guards { .. } => say::name_guards(),
        Check::Category { .. } => say::name_category(),
        Check::Lift { .. } => say::name_lift(),
        Check::FrontHooks { .. } => say::name_front_hooks(),
        Check::ThirdFunction { .. } => say::name_third_function(),
        Check::Balance { .. } => say::name_balance(),
        Check::AxleLoad { .. } => say::name_axle_load(),
        Check::Couplers { .. } => say::name_couplers(),
        Check::MotorFlow { .. } => say::name_motor_flow(),
        Check::MotorPressure { .. } => say::name_motor_pressure(),
        Check::CaseDrain { .. } => say::name_case_drain(),
        Check::OilHeat { .. } => say::name_oil_heat(),
    }
}

/// Kits of the yard that fit better.
pub fn other_kits(names: &[String]) -> String {
    say::other_kits(&in_turn(names))
}

/// How many items of each gravity, short: "1 to stop for, 2 to ask".
pub fn count(items: &[Item]) -> String {
    let told = |judgement, words: fn(usize) -> String| {
        let count = items.iter().filter(|it| it.judgement == judgement).count();
        (count > 0).then(|| words(count))
    };
    let each = [
        told(Judgement::Stop, say::to_stop_for),
        told(Judgement::Question, say::to_ask),
        told(Judgement::Advice, say::to_mind),
    ];
    let told: Vec<_> = each.into_iter().flatten().collect();
    if told.is_empty() {
        say::all_fits().to_owned()
    } else {
        super::items(&told)
    }
}

/// What was found, as a sentence.
pub fn finding(check: &Check, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    let torque = |torque| shown(Quantity::Torque(torque));
    let mass = |mass: Mass| shown(Quantity::Mass(mass));
    let length = |length: Length| shown(Quantity::Depth(length));
    match *check {
        Check::Missing(reason) => clauses(&[reasons::no_fit(reason, units)]),
        Check::InputSpeed { brings, needs } => say::InputSpeed {
            brings: &shown(Quantity::Speed(brings)),
            needs: &shown(Quantity::Speed(needs)),
        }
        .said(),
        Check::PtoEnd { pto, kit } => say::PtoEnd {
            pto: &shaft_type(pto),
            kit: &shaft_type(kit),
        }
        .said(),
        Check::FarEnd { kit, input } => say::FarEnd {
            kit: &shaft_type(kit),
            input: &shaft_type(input),
        }
        .said(),
        Check::Direction { comes, needs } => say::Direction {
            comes: turns(comes),
            needs: turns(needs),
        }
        .said(),
        Check::ShaftTorque {
            can,
            may: Some(may),
        } => say::ShaftTorque {
            can: &torque(can),
            may: &torque(may),
        }
        .said(),
        Check::ShaftTorque { can, may: None } => say::shaft_torque_unknown(&torque(can)),
        Check::SlipClutch { slips: Some(slips) } => say::slip_clutch(&torque(slips)),
        Check::SlipClutch { slips: None } => say::slip_clutch_unknown().to_owned(),
        Check::Angle {
            working: Some(working),
        } => say::angle(&shown(Quantity::Angle(working))),
        Check::Angle { working: None } => say::angle_unknown().to_owned(),
        Check::LiftAngle {
            angles: Some((at_work, steepest)),
        } => say::LiftAngle {
            at_work: &shown(Quantity::Angle(at_work)),
            steepest: &shown(Quantity::Angle(steepest)),
        }
        .said(),
        Check::LiftAngle { angles: None } => say::lift_angle_unknown().to_owned(),
        Check::Overlap {
            least: Some((overlap, left)),
        } => say::Overlap {
            overlap: &length(overlap),
            left: &length(left),
        }
        .said(),
        Check::Overlap { least: None } => say::overlap_unknown().to_owned(),
        Check::Guards { kit, implement } => {
            let implement = guarded(implement);
            match kit {
                Some(kit) => say::Guards {
                    kit: guarded(kit),
                    implement,
                }
                .said(),
                None => say::guards_implement(implement),
            }
        }
        Check::Category { machine, implement } => say::Category {
            machine: &category(machine),
            implement: &category(implement),
        }
        .said(),
        Check::Lift {
            seat,
            mass: load,
            centre,
            lifts,
        } => {
            let load = &load.map_or_else(|| say::load_unknown().to_owned(), mass);
            let lifts = &lifts.map_or_else(
                || say::lifts_unknown().to_owned(),
                |it| number::range(Quantity::Mass(it.low), Quantity::Mass(it.high), units),
            );
            match (seat, centre.map(length).as_deref()) {
                (Seat::Loader, Some(centre)) => say::LiftLoader {
                    load,
                    centre,
                    lifts,
                }
                .said(),
                (Seat::Loader, None) => say::lift_loader_unknown(load),
                (_, Some(centre)) => say::LiftHitch {
                    load,
                    centre,
                    lifts,
                }
                .said(),
                (_, None) => say::lift_hitch_unknown(load),
            }
        }
        Check::FrontHooks { known: true } => say::front_hooks().to_owned(),
        Check::FrontHooks { known: false } => say::front_hooks_unknown().to_owned(),
        Check::ThirdFunction { there } => match there {
            Some(true) => say::third_function().to_owned(),
            Some(false) => say::third_function_none().to_owned(),
            None => say::third_function_unknown().to_owned(),
        },
        Check::Balance { axle: end, found } => match found {
            None => say::balance_unknown(axle(end)),
            Some(balance) if balance.share <= 0.0 => say::balance_lifts_off(axle(end)),
            Some(balance) => say::Balance {
                axle: axle(end),
                share: &number::percent(balance.share),
                least: &number::percent(LEAST_SHARE),
            }
            .said(),
        },
        Check::AxleLoad { axle, load, limit } => {
            let told =
                |it: Option<Mass>| it.map_or_else(|| say::axle_load_unknown().to_owned(), mass);
            let (load, limit) = (&told(load), &told(limit));
            match axle {
                End::Front => say::AxleLoadFront { load, limit }.said(),
                End::Rear => say::AxleLoadRear { load, limit }.said(),
            }
        }
        Check::Couplers { machine, hoses } => {
            let size = |size: Option<Length>| {
                size.map_or_else(
                    || say::couplers_unknown().to_owned(),
                    |size| shown(Quantity::Bore(size)),
                )
            };
            say::Couplers {
                machine: &size(machine),
                hoses: &size(hoses),
            }
            .said()
        }
        Check::MotorFlow { comes, most } => say::MotorFlow {
            comes: &shown(Quantity::Flow(comes)),
            most: &shown(Quantity::Flow(most)),
        }
        .said(),
        Check::MotorPressure { relief, most } => say::MotorPressure {
            relief: &shown(Quantity::Pressure(relief)),
            most: &shown(Quantity::Pressure(most)),
        }
        .said(),
        Check::CaseDrain { needs, there } => {
            let needs = match needs {
                Some(true) => say::case_drain_needed(),
                Some(false) => return say::case_drain_none_needed().to_owned(),
                None => say::case_drain_needed_unknown(),
            };
            let there = match there {
                Some(true) => say::case_drain_there(),
                Some(false) => say::case_drain_missing(),
                None => say::case_drain_there_unknown(),
            };
            clauses(&[needs, there].map(str::to_owned))
        }
        Check::OilHeat { after: None, .. } => say::oil_heat_none().to_owned(),
        Check::OilHeat {
            after: Some(after), ..
        } => say::oil_heat(&number::time(after)),
    }
}

/// What to do about an item, or what to ask; nothing where it fits.
pub fn remedy(item: &Item, units: UnitSystem) -> Option<String> {
    let shown = |quantity| number::shown(quantity, units);
    let stops = item.judgement == Judgement::Stop;
    if item.judgement == Judgement::Pass {
        return None;
    }
    if item.judgement == Judgement::Question {
        return Some(question(&item.check).to_owned());
    }
    let told = match item.check {
        Check::Missing(_) => say::do_missing(),
        Check::InputSpeed { .. } => say::do_input_speed(),
        Check::PtoEnd { .. } | Check::FarEnd { .. } => say::do_shaft_end(),
        Check::Direction { .. } => say::do_direction(),
        Check::ShaftTorque { .. } => say::do_shaft_torque(),
        Check::SlipClutch { .. } | Check::FrontHooks { .. } => question(&item.check),
        Check::Angle { .. } if stops => say::do_angle_stop(),
        Check::Angle { .. } => say::do_angle(),
        Check::LiftAngle { .. } if stops => say::do_lift_angle_stop(),
        Check::LiftAngle { .. } => say::do_lift_angle(),
        Check::Overlap { .. } => {
            let told = say::DoOverlap {
                overlap: &shown(Quantity::Depth(least_overlap())),
                left: &shown(Quantity::Depth(least_clearance())),
            };
            return Some(told.said());
        }
        Check::Guards { .. } => say::do_guards(),
        Check::Category { .. } if stops => say::do_category_stop(),
        Check::Category { .. } => say::do_category(),
        Check::Lift { .. } if stops => say::do_lift_stop(),
        Check::Lift { .. } => say::do_lift(),
        Check::ThirdFunction { .. } => say::do_third_function(),
        Check::Balance { axle, found } => {
            let end = end(axle);
            return Some(match found.and_then(|found| found.ballast) {
                Some(ballast) => say::DoBalance {
                    end,
                    ballast: &shown(Quantity::Mass(ballast)),
                }
                .said(),
                None => say::do_balance_unknown(end),
            });
        }
        Check::AxleLoad { .. } => say::do_axle_load(),
        Check::Couplers { .. } => say::do_couplers(),
        Check::MotorFlow { .. } => say::do_motor_flow(),
        Check::MotorPressure { .. } => say::do_motor_pressure(),
        Check::CaseDrain { .. } => say::do_case_drain(),
        Check::OilHeat { cooler, .. } => {
            return Some(say::do_oil_heat(&shown(Quantity::Power(cooler))));
        }
    };
    Some(told.to_owned())
}

/// What to ask where something isn't known.
pub fn question(check: &Check) -> &'static str {
    match check {
        Check::PtoEnd { .. } => say::ask_pto_end(),
        Check::FarEnd { .. } => say::ask_far_end(),
        Check::Direction { .. } => say::ask_direction(),
        Check::SlipClutch { .. } => say::ask_slip_clutch(),
        Check::LiftAngle { .. } => say::ask_lift_angle(),
        Check::Overlap { .. } => say::ask_overlap(),
        Check::Guards { .. } => say::ask_guards(),
        Check::Category { .. } => say::ask_category(),
        Check::Lift { .. } => say::ask_lift(),
        Check::FrontHooks { .. } => say::ask_front_hooks(),
        Check::ThirdFunction { .. } => say::ask_third_function(),
        Check::Balance { .. } => say::ask_balance(),
        Check::Couplers { .. } => say::ask_couplers(),
        Check::CaseDrain { .. } => say::ask_case_drain(),
        Check::ShaftTorque { .. } => say::ask_shaft_torque(),
        Check::Angle { .. } => say::ask_angle(),
        Check::AxleLoad { .. } => say::ask_axle_load(),
        Check::Missing(_)
        | Check::InputSpeed { .. }
        | Check::MotorFlow { .. }
        | Check::MotorPressure { .. }
        | Check::OilHeat { .. } => say::ask_maker(),
    }
}

pub(super) fn shaft_type(shaft: Option<ShaftType>) -> String {
    match shaft {
        None => say::shaft_type_unknown().to_owned(),
        Some(shaft) => say::ShaftType {
            kind: shaft.word(),
            splines: &shaft.splines().to_string(),
        }
        .said(),
    }
}

pub(super) fn turns(turns: Option<Turns>) -> &'static str {
    match turns {
        Some(Turns::Clockwise) => say::turns_clockwise(),
        Some(Turns::Anticlockwise) => say::turns_anticlockwise(),
        None => say::turns_unknown(),
    }
}

pub(super) fn category(category: Option<Category>) -> String {
    match category {
        None => say::category_unknown().to_owned(),
        Some(category) => say::category_named(&category.word().to_uppercase()),
    }
}

fn guarded(guarded: Option<bool>) -> &'static str {
    match guarded {
        Some(true) => say::guards_there(),
        Some(false) => say::guards_not_all(),
        None => say::guards_unknown(),
    }
}

fn axle(end: End) -> &'static str {
    match end {
        End::Front => say::axle_front(),
        End::Rear => say::axle_rear(),
    }
}

fn end(end: End) -> &'static str {
    match end {
        End::Front => say::end_front(),
        End::Rear => say::end_rear(),
    }
}
