//! Whether it can be hooked up, in words: what was found, and what to do or to ask.

use super::{capital, reasons};
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
        Judgement::Pass => "Fits",
        Judgement::Advice => "Mind",
        Judgement::Question => "Ask",
        Judgement::Stop => "Stop",
    }
}

/// What was looked at, short.
pub fn name(check: &Check) -> &'static str {
    match check {
        Check::Missing(_) => "Route",
        Check::InputSpeed { .. } => "Input speed",
        Check::PtoEnd { .. } => "Shaft on the PTO",
        Check::FarEnd { .. } => "Shaft on the implement",
        Check::Direction { .. } => "Direction of rotation",
        Check::ShaftTorque { .. } => "Torque in the shaft",
        Check::SlipClutch { .. } => "Slip clutch",
        Check::Angle { .. } => "Joint angle of the kit",
        Check::LiftAngle { .. } => "Joint angle behind the hitch",
        Check::Overlap { .. } => "Length of the joint shaft",
        Check::Guards { .. } => "Guards",
        Check::Category { .. } => "Hitch category",
        Check::Lift { .. } => "Lift",
        Check::FrontHooks { .. } => "Subframe in front",
        Check::ThirdFunction { .. } => "Third function",
        Check::Balance { .. } => "Ballast",
        Check::AxleLoad { .. } => "Axle load",
        Check::Couplers { .. } => "Couplers",
        Check::MotorFlow { .. } => "Flow to the motor",
        Check::MotorPressure { .. } => "Pressure at the motor",
        Check::CaseDrain { .. } => "Case drain",
        Check::OilHeat { .. } => "Heat of the oil",
    }
}

/// Kits of the yard that fit better.
pub fn other_kits(names: &[String]) -> String {
    format!(
        "It takes the kit that delivers most. This one of the yard fits better: {}.",
        names.join("; ")
    )
}

/// How many items of each gravity, short: "1 stop, 2 to ask".
pub fn count(items: &[Item]) -> String {
    let of = |judgement| items.iter().filter(|it| it.judgement == judgement).count();
    let told: Vec<_> = [
        (Judgement::Stop, "to stop for"),
        (Judgement::Question, "to ask"),
        (Judgement::Advice, "to mind"),
    ]
    .into_iter()
    .filter_map(|(judgement, what)| {
        let count = of(judgement);
        (count > 0).then(|| format!("{count} {what}"))
    })
    .collect();
    if told.is_empty() {
        "all that is known fits".to_owned()
    } else {
        told.join(", ")
    }
}

/// What was found, as a sentence.
pub fn finding(check: &Check, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    let mass = |mass: Mass| shown(Quantity::Mass(mass));
    let length = |length: Length| shown(Quantity::Depth(length));
    match *check {
        Check::Missing(reason) => format!("{}.", capital(&reasons::no_fit(reason, units))),
        Check::InputSpeed { brings, needs } => format!(
            "The shaft brings {}, the implement is built for {}.",
            shown(Quantity::Speed(brings)),
            shown(Quantity::Speed(needs))
        ),
        Check::PtoEnd { pto, kit } => format!(
            "The PTO is {}; the kit suits {}.",
            shaft_type(pto),
            shaft_type(kit)
        ),
        Check::FarEnd { kit, input } => format!(
            "The kit suits {}; the implement's input is {}.",
            shaft_type(kit),
            shaft_type(input)
        ),
        Check::Direction { comes, needs } => format!(
            "Seen from behind the machine the input would turn {}; it must turn {}.",
            turns(comes),
            turns(needs)
        ),
        Check::ShaftTorque {
            can,
            may: Some(may),
        } => format!(
            "All of the engine would put {} into its weakest shaft or box; that may take {}.",
            shown(Quantity::Torque(can)),
            shown(Quantity::Torque(may))
        ),
        Check::ShaftTorque { can, may: None } => format!(
            "All of the engine would put {} into a shaft of which it isn't known what it may take.",
            shown(Quantity::Torque(can))
        ),
        Check::SlipClutch { slips: Some(slips) } => {
            format!("It slips at {}.", shown(Quantity::Torque(slips)))
        }
        Check::SlipClutch { slips: None } => {
            "What this implement works on can jam it; no slip clutch is known of.".to_owned()
        }
        Check::Angle {
            working: Some(working),
        } => format!(
            "They work at {}, as far as is known.",
            shown(Quantity::Angle(working))
        ),
        Check::Angle { working: None } => "How far the kit's joints bend isn't known.".to_owned(),
        Check::LiftAngle {
            angles: Some((at_work, steepest)),
        } => format!(
            "Lowered to work the joints bend {}, over the hitch's travel up to {}.",
            shown(Quantity::Angle(at_work)),
            shown(Quantity::Angle(steepest))
        ),
        Check::LiftAngle { angles: None } => {
            "How far the joints bend behind the hitch isn't known.".to_owned()
        }
        Check::Overlap {
            least: Some((overlap, left)),
        } => format!(
            "At its longest its tubes overlap by {}; at its shortest {} are left.",
            length(overlap),
            length(left)
        ),
        Check::Overlap { least: None } => {
            "Whether it is long and short enough isn't known.".to_owned()
        }
        Check::Guards { kit, implement } => {
            let told = |guarded| match guarded {
                Some(true) => "there",
                Some(false) => "not all there",
                None => "not known",
            };
            match kit {
                Some(kit) => format!(
                    "On the shaft: {}; on the implement: {}.",
                    told(kit),
                    told(implement)
                ),
                None => format!("On the implement: {}.", told(implement)),
            }
        }
        Check::Category { machine, implement } => format!(
            "The machine has {}, the implement {}.",
            category(machine),
            category(implement)
        ),
        Check::Lift {
            seat,
            mass: load,
            centre,
            lifts,
        } => {
            let load = load.map_or("unknown weight".to_owned(), mass);
            let lifts = lifts.map_or("not known".to_owned(), |it| {
                number::range(Quantity::Mass(it.low), Quantity::Mass(it.high), units)
            });
            let by = match seat {
                Seat::Loader => "loader",
                _ => "hitch",
            };
            match centre {
                Some(centre) => format!(
                    "The implement weighs {load}, its centre {} out; there the {by} lifts: {lifts}.",
                    length(centre)
                ),
                None => format!(
                    "The implement weighs {load}; how far out its centre lies, and so what the \
                     {by} lifts there, isn't known."
                ),
            }
        }
        Check::FrontHooks { known: true } => "The machine takes a subframe in front.".to_owned(),
        Check::FrontHooks { known: false } => {
            "Whether the machine takes a subframe in front isn't known.".to_owned()
        }
        Check::ThirdFunction { there } => match there {
            Some(true) => "Oil gets to the loader's end.".to_owned(),
            Some(false) => "No oil gets to the loader's end.".to_owned(),
            None => "Whether oil gets to the loader's end isn't known.".to_owned(),
        },
        Check::Balance { axle, found: None } => {
            format!("What stays on the {} axle isn't known.", end(axle))
        }
        Check::Balance {
            axle,
            found: Some(balance),
        } => {
            if balance.share <= 0.0 {
                format!("Without ballast the {} axle lifts off.", end(axle))
            } else {
                format!(
                    "Without ballast {} of the weight stays on the {} axle; {} is the least.",
                    number::percent(balance.share),
                    end(axle),
                    number::percent(LEAST_SHARE)
                )
            }
        }
        Check::AxleLoad { axle, load, limit } => {
            let told = |it: Option<Mass>| it.map_or("an unknown load".to_owned(), mass);
            format!(
                "The {} axle carries {} with the ballast it takes; it may carry {}.",
                end(axle),
                told(load),
                told(limit)
            )
        }
        Check::Couplers { machine, hoses } => {
            let size = |size: Option<Length>| {
                size.map_or("unknown".to_owned(), |size| shown(Quantity::Bore(size)))
            };
            format!(
                "The machine's are size {}, the hoses' size {}.",
                size(machine),
                size(hoses)
            )
        }
        Check::MotorFlow { comes, most } => format!(
            "{} come, the motor may be given {}.",
            shown(Quantity::Flow(comes)),
            shown(Quantity::Flow(most))
        ),
        Check::MotorPressure { relief, most } => format!(
            "The relief valve opens at {}, the motor may be given {}.",
            shown(Quantity::Pressure(relief)),
            shown(Quantity::Pressure(most))
        ),
        Check::CaseDrain { needs, there } => {
            let needs = match needs {
                Some(true) => "The motor needs a pressureless line back to the tank",
                Some(false) => return "The motor needs none.".to_owned(),
                None => "Whether the motor needs a pressureless line back to the tank isn't known",
            };
            let there = match there {
                Some(true) => "it is there",
                Some(false) => "there is none",
                None => "whether there is one isn't known",
            };
            format!("{needs}; {there}.")
        }
        Check::OilHeat { after: None, .. } => {
            "The oil stays below its limit at this job.".to_owned()
        }
        Check::OilHeat {
            after: Some(after), ..
        } => format!(
            "At this job the oil passes its limit after about {}.",
            number::time(after)
        ),
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
    Some(match item.check {
        Check::Missing(_) => "Another route, another machine or another kit.".to_owned(),
        Check::InputSpeed { .. } => {
            "Set the engine so that the input turns at its own speed; never faster.".to_owned()
        }
        Check::PtoEnd { .. } | Check::FarEnd { .. } => {
            "A joint shaft with the right yoke at this end; no sleeve that only bridges the size."
                .to_owned()
        }
        Check::Direction { .. } => {
            "A box that turns the direction round, or the implement built for this one.".to_owned()
        }
        Check::ShaftTorque { .. } => {
            "A slip clutch set below that, and no more engine speed than the work needs.".to_owned()
        }
        Check::SlipClutch { .. } => question(&item.check).to_owned(),
        Check::Angle { .. } if stops => {
            "Bring the shafts nearer in line, or use a wide-angle joint as its maker says."
                .to_owned()
        }
        Check::Angle { .. } => "For a while only; nearer in line it lasts longer.".to_owned(),
        Check::LiftAngle { .. } if stops => {
            "Work and lift nearer to level, or use a wide-angle joint as its maker says.".to_owned()
        }
        Check::LiftAngle { .. } => {
            "Stop the PTO before lifting; lowered, nearer to level lasts longer.".to_owned()
        }
        Check::Overlap { .. } => format!(
            "A shaft of another length: {} of overlap at its longest, {} left at its shortest.",
            shown(Quantity::Depth(least_overlap())),
            shown(Quantity::Depth(least_clearance()))
        ),
        Check::Guards { .. } => "Not to be run until every guard is there.".to_owned(),
        Check::Category { .. } if stops => "Pins of the machine's category, if the implement's \
            maker has them."
            .to_owned(),
        Check::Category { .. } => "Bushes over the implement's pins.".to_owned(),
        Check::Lift { .. } if stops => "A lighter implement or a stronger machine.".to_owned(),
        Check::Lift { .. } => {
            "Close to what it lifts: look it up in the machine's manual before you buy.".to_owned()
        }
        Check::FrontHooks { .. } => question(&item.check).to_owned(),
        Check::ThirdFunction { .. } => {
            "A third function on the loader, or hoses led forward from the rear.".to_owned()
        }
        Check::Balance { axle, found } => match found.and_then(|found| found.ballast) {
            Some(ballast) => format!(
                "Hang about {} on the {} end, reckoned level and standing still; the machine's \
                 manual has the last word.",
                shown(Quantity::Mass(ballast)),
                end(axle)
            ),
            None => format!(
                "Ballast the {} end as the machine's manual says.",
                end(axle)
            ),
        },
        Check::AxleLoad { .. } => "A lighter implement or a heavier machine.".to_owned(),
        Check::Couplers { .. } => {
            "They won't plug in as they are: change one half; the larger loses less.".to_owned()
        }
        Check::MotorFlow { .. } => {
            "Set the flow down, or fit a flow divider; too much turns it too fast.".to_owned()
        }
        Check::MotorPressure { .. } => "A relief valve at the motor, set to its limit.".to_owned(),
        Check::CaseDrain { .. } => {
            "A line straight to the tank; without it the shaft's seal goes.".to_owned()
        }
        Check::OilHeat { cooler, .. } => format!(
            "A cooler that takes {}, a larger tank, or breaks.",
            shown(Quantity::Power(cooler))
        ),
    })
}

/// What to ask where something isn't known.
pub fn question(check: &Check) -> &'static str {
    match check {
        Check::PtoEnd { .. } => "How many splines has the PTO, and which does the kit's yoke take?",
        Check::FarEnd { .. } => "How many splines has the implement's input, and which the shaft?",
        Check::Direction { .. } => {
            "Which way does the input have to turn? Its maker's plate or manual says."
        }
        Check::SlipClutch { .. } => {
            "Is there a slip clutch or a shear bolt, and where does it give way?"
        }
        Check::LiftAngle { .. } => {
            "How high stand PTO, hitch and input, lowered and lifted? Measure before you buy."
        }
        Check::Overlap { .. } => {
            "How far is it from joint to joint, lowered and lifted, and how long is the shaft \
             pushed together and pulled out?"
        }
        Check::Guards { .. } => "Is every guard there, on the shaft and at both ends?",
        Check::Category { .. } => "Which hitch category have machine and implement?",
        Check::Lift { .. } => {
            "What does the implement weigh, how far out is its centre, and what is lifted there?"
        }
        Check::FrontHooks { .. } => "Is there a subframe that fits under this machine?",
        Check::ThirdFunction { .. } => "Is there a third function at the loader's end?",
        Check::Balance { .. } => {
            "What do the axles carry, and how far out does the implement hang?"
        }
        Check::Couplers { .. } => "Which size are the couplers on the machine and on the hoses?",
        Check::CaseDrain { .. } => {
            "Does the motor need a case drain, and is there a pressureless line to the tank?"
        }
        Check::ShaftTorque { .. } => {
            "What may the PTO, the joint shaft and the implement's input take?"
        }
        Check::Angle { .. } => "How far do the kit's joints bend at work?",
        Check::AxleLoad { .. } => {
            "What may each axle carry, and what does it with implement and ballast?"
        }
        Check::Missing(_)
        | Check::InputSpeed { .. }
        | Check::MotorFlow { .. }
        | Check::MotorPressure { .. }
        | Check::OilHeat { .. } => "Ask the maker.",
    }
}

pub(super) fn shaft_type(shaft: Option<ShaftType>) -> String {
    match shaft {
        None => "not known".to_owned(),
        Some(shaft) => format!("type {} with {} splines", shaft.word(), shaft.splines()),
    }
}

pub(super) fn turns(turns: Option<Turns>) -> &'static str {
    match turns {
        Some(Turns::Clockwise) => "clockwise",
        Some(Turns::Anticlockwise) => "anticlockwise",
        None => "in a direction that isn't known",
    }
}

pub(super) fn category(category: Option<Category>) -> String {
    match category {
        None => "an unknown category".to_owned(),
        Some(category) => format!("category {}", category.word().to_uppercase()),
    }
}

fn end(end: End) -> &'static str {
    match end {
        End::Front => "front",
        End::Rear => "rear",
    }
}
