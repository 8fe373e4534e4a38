//! What a sheet claims, in plain sentences with the arithmetic.

use super::{capital, list};
use crate::number;
use farend_core::claims::{Check, Finding, Rating, SheetFigure, Taken, Weight};
use farend_core::quantity::{Power, Pressure};
use farend_core::spread::Spread;
use farend_core::units::{Quantity, UnitSystem};

pub const TITLE: &str = "Is the sheet honest?";
pub const LEAD: &str = "Enter what a sheet or an advertisement says of this machine. Leave empty \
    what it doesn't say.";
pub const TAKEN: &str = "Flow and pressure taken";
pub const RATING: &str = "Engine power is";
pub const NOT_SAID: &str = "Not said";
pub const TAKE_OVER: &str = "Compare with the honest figures";
pub const CLEAR: &str = "Clear the sheet";
pub const ASKED: &str = "To ask for";
pub const TAKEN_OVER: &str = "Taken over: the bars above now show the honest figures.";
pub const NOTHING: &str = "Nothing has been entered yet.";
pub const ALLOWED: &str = "a number above zero, of a size that such machines have.";

/// A figure of a sheet.
pub fn figure(figure: SheetFigure) -> &'static str {
    match figure {
        SheetFigure::Flow => "Hydraulic flow",
        SheetFigure::Pressure => "Hydraulic pressure",
        SheetFigure::Hydraulic => "Hydraulic power",
        SheetFigure::Taken => "Where flow and pressure were taken",
        SheetFigure::EngineSpeed => "At an engine speed of",
        SheetFigure::Engine => "Engine power",
        SheetFigure::Rating => "Whether engine power is net or gross",
        SheetFigure::Pto => "PTO power",
    }
}

/// Where figures were taken.
pub fn taken(taken: Taken) -> &'static str {
    match taken {
        Taken::AtPump => "At the pump",
        Taken::AtCouplers => "At the couplers",
    }
}

/// A kind of engine power.
pub fn rating(rating: Rating) -> &'static str {
    match rating {
        Rating::Net => "Net",
        Rating::Gross => "Gross",
    }
}

/// What is held against what.
pub fn check(check: Check) -> &'static str {
    match check {
        Check::HydraulicPower => "Flow, pressure and power",
        Check::EnginePower => "Flow and pressure against the engine",
        Check::Steering => "Steering's flow",
        Check::WorkingSpeed => "Flow at working speed",
        Check::Couplers => "Pressure at the couplers",
        Check::Relief => "Relief pressure",
        Check::EngineRating => "Engine power",
        Check::PtoPower => "PTO power",
    }
}

/// What it means for the sheet.
pub fn weight(weight: Weight) -> &'static str {
    match weight {
        Weight::Holds => "Holds",
        Weight::Advice => "Mind",
        Weight::Restated => "Means",
        Weight::Wrong => "Can't be",
    }
}

/// The figures that a check lacks.
pub fn lacks(figures: &[SheetFigure]) -> String {
    let named: Vec<_> = figures.iter().map(|it| super::small(figure(*it))).collect();
    capital(&list(&named))
}

/// A finding with its arithmetic.
pub fn finding(weight: Weight, finding: &Finding, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    let power = |power| number::power(power, units);
    let powers = |it: Spread<Power>| {
        if it.low == it.high {
            return power(it.likely);
        }
        format!(
            "{} ({})",
            power(it.likely),
            number::range(Quantity::Power(it.low), Quantity::Power(it.high), units)
        )
    };
    let pressures = |it: Spread<Pressure>| {
        if it.low == it.high {
            return shown(Quantity::Pressure(it.likely));
        }
        format!(
            "{} ({})",
            shown(Quantity::Pressure(it.likely)),
            number::range(
                Quantity::Pressure(it.low),
                Quantity::Pressure(it.high),
                units
            )
        )
    };
    match *finding {
        Finding::HydraulicPower {
            flow,
            pressure,
            comes_to,
            claimed,
            apart,
        } => {
            let sum = format!(
                "{} times {} is {}",
                shown(Quantity::Flow(flow)),
                shown(Quantity::Pressure(pressure)),
                power(comes_to)
            );
            match weight {
                Weight::Wrong => format!(
                    "{sum}, not the {} that the sheet says: {} too much.",
                    power(claimed),
                    power(apart)
                ),
                Weight::Advice => format!(
                    "{sum}; the sheet says {} only, {} less: ask at which flow and pressure.",
                    power(claimed),
                    power(apart)
                ),
                _ => format!("{sum}, as the sheet says."),
            }
        }
        Finding::EnginePower {
            flow,
            pressure,
            needs,
            speed,
            net,
            ..
        } => {
            let sum = format!(
                "For {} at {} the pump takes {} off the engine; at {} the engine has {} net",
                shown(Quantity::Flow(flow)),
                shown(Quantity::Pressure(pressure)),
                powers(needs),
                shown(Quantity::Speed(speed)),
                powers(net)
            );
            match weight {
                Weight::Wrong => format!("{sum}: it can't turn that pump at that pressure."),
                Weight::Advice => format!("{sum}: only with everything at its best."),
                _ => format!("{sum}: it can."),
            }
        }
        Finding::Steering {
            claimed,
            pump_gives,
            steering,
            left,
        } => {
            let flow = |it| shown(Quantity::Flow(it));
            match weight {
                Weight::Holds => format!(
                    "The {} are the implement's; steering's {} are not in them.",
                    flow(claimed),
                    flow(steering)
                ),
                Weight::Restated => format!(
                    "Of the {} that the pump gives steering takes {}: {} are left for the \
                     implement.",
                    flow(pump_gives),
                    flow(steering),
                    flow(left)
                ),
                _ => format!(
                    "Steering's {} are in the {}: {} are left for the implement.",
                    flow(steering),
                    flow(claimed),
                    flow(left)
                ),
            }
        }
        Finding::WorkingSpeed {
            flow,
            speed,
            working,
            left,
            ..
        } => match weight {
            Weight::Restated => format!(
                "{} are for {}; at the working speed of {} it is {}.",
                shown(Quantity::Flow(flow)),
                shown(Quantity::Speed(speed)),
                shown(Quantity::Speed(working)),
                shown(Quantity::Flow(left))
            ),
            _ => format!(
                "{} are for {}, which is the working speed.",
                shown(Quantity::Flow(flow)),
                shown(Quantity::Speed(speed))
            ),
        },
        Finding::Couplers {
            flow,
            at_pump,
            valve,
            couplers,
            at_couplers,
        } => format!(
            "At {} the open valve takes {} and two couplers {}: {} at the pump are {} at the \
             couplers.",
            shown(Quantity::Flow(flow)),
            shown(Quantity::Pressure(valve.likely)),
            shown(Quantity::Pressure(couplers.likely)),
            pressures(at_pump),
            pressures(at_couplers)
        ),
        Finding::Relief {
            pressure,
            relief,
            opens,
        } => {
            let sum = format!(
                "The relief valve is set to {} and begins to open at {}",
                pressures(relief),
                pressures(opens)
            );
            match weight {
                Weight::Holds => format!(
                    "{sum}; at {} the whole flow is there.",
                    shown(Quantity::Pressure(pressure))
                ),
                _ => format!(
                    "{sum}: at {} a part of the flow runs off over it. Full flow and full \
                     pressure don't come together.",
                    shown(Quantity::Pressure(pressure))
                ),
            }
        }
        Finding::EngineRating {
            claimed,
            known,
            net,
        } => match weight {
            Weight::Holds => format!(
                "{} as net power; the yard has {}.",
                power(claimed),
                power(known.likely)
            ),
            _ => format!(
                "{} is gross power, without fan, filter and the like: about {} net; the yard has \
                 {}.",
                power(claimed),
                powers(net),
                power(known.likely)
            ),
        },
        Finding::PtoPower {
            claimed,
            net,
            gives,
            ..
        } => {
            let sum = format!(
                "Of {} net about {} reach the PTO",
                power(net.likely),
                powers(gives)
            );
            match weight {
                Weight::Wrong => format!("{sum}, not {}.", power(claimed)),
                Weight::Advice => format!("{sum}; {} is at the upper end.", power(claimed)),
                _ => format!("{sum}; the sheet says {}.", power(claimed)),
            }
        }
        Finding::PtoAboveEngine { claimed, engine } => format!(
            "{} at the PTO are more than the engine's {}: no train gives more than its engine.",
            power(claimed),
            power(engine)
        ),
    }
}
