//! What a sheet claims, in plain sentences with the arithmetic.

pub use super::say::claims::{
    allowed, ask_heading, clear, lead, not_said, not_taken_over, nothing, rating_heading,
    take_over, taken_heading, taken_over, title,
};

use super::say::claims as say;
use super::{capital, list, remark};
use crate::number;
use farend_core::claims::{Check, Finding, Rating, SheetFigure, Taken, Weight};
use farend_core::spread::Spread;
use farend_core::units::{Quantity, UnitSystem};

/// A figure of a sheet, alone and within a list.
fn figure_names(figure: SheetFigure) -> [&'static str; 2] {
    match figure {
        SheetFigure::Flow => [say::figure_flow(), say::figure_flow_small()],
        SheetFigure::Pressure => [say::figure_pressure(), say::figure_pressure_small()],
        SheetFigure::Hydraulic => [say::figure_hydraulic(), say::figure_hydraulic_small()],
        SheetFigure::Taken => [say::figure_taken(), say::figure_taken_small()],
        SheetFigure::EngineSpeed => [say::figure_engine_speed(), say::figure_engine_speed_small()],
        SheetFigure::Engine => [say::figure_engine(), say::figure_engine_small()],
        SheetFigure::Rating => [say::figure_rating(), say::figure_rating_small()],
        SheetFigure::Pto => [say::figure_pto(), say::figure_pto_small()],
    }
}

/// A figure of a sheet.
pub fn figure(figure: SheetFigure) -> &'static str {
    let [name, _] = figure_names(figure);
    name
}

/// Where figures were taken.
pub fn taken(taken: Taken) -> &'static str {
    match taken {
        Taken::AtPump => say::at_pump(),
        Taken::AtCouplers => say::at_couplers(),
    }
}

/// A kind of engine power.
pub fn rating(rating: Rating) -> &'static str {
    match rating {
        Rating::Net => say::net(),
        Rating::Gross => say::gross(),
    }
}

/// What is held against what, alone and within a list.
fn check_names(check: Check) -> [&'static str; 2] {
    match check {
        Check::HydraulicPower => [
            say::check_hydraulic_power(),
            say::check_hydraulic_power_small(),
        ],
        Check::EnginePower => [say::check_engine_power(), say::check_engine_power_small()],
        Check::Steering => [say::check_steering(), say::check_steering_small()],
        Check::WorkingSpeed => [say::check_working_speed(), say::check_working_speed_small()],
        Check::Couplers => [say::check_couplers(), say::check_couplers_small()],
        Check::Relief => [say::check_relief(), say::check_relief_small()],
        Check::EngineRating => [say::check_engine_rating(), say::check_engine_rating_small()],
        Check::PtoPower => [say::check_pto_power(), say::check_pto_power_small()],
    }
}

/// What is held against what.
pub fn check(check: Check) -> &'static str {
    let [name, _] = check_names(check);
    name
}

/// What is held against what, within a list.
pub fn check_small(check: Check) -> &'static str {
    let [_, name] = check_names(check);
    name
}

/// What it means for the sheet.
pub fn weight(weight: Weight) -> &'static str {
    match weight {
        Weight::Holds => say::holds(),
        Weight::Advice => say::advice(),
        Weight::Restated => say::restated(),
        Weight::Wrong => say::wrong(),
    }
}

/// The figures that a check lacks.
pub fn lacks(figures: &[SheetFigure]) -> String {
    let named = figures.iter().map(|it| {
        let [_, name] = figure_names(*it);
        name
    });
    capital(&list(&named.collect::<Vec<_>>()))
}

/// A likely value, with its range where it has one.
fn with_range<T: Copy + PartialEq>(
    it: Spread<T>,
    quantity: fn(T) -> Quantity,
    units: UnitSystem,
) -> String {
    let likely = number::shown(quantity(it.likely), units);
    if it.low == it.high {
        return likely;
    }
    let range = number::range(quantity(it.low), quantity(it.high), units);
    remark(&likely, &range)
}

/// A finding with its arithmetic.
pub fn finding(weight: Weight, finding: &Finding, units: UnitSystem) -> String {
    let flow = |it| number::shown(Quantity::Flow(it), units);
    let speed = |it| number::shown(Quantity::Speed(it), units);
    let pressure = |it| number::shown(Quantity::Pressure(it), units);
    let power = |it| number::power(it, units);
    let pressures = |it| with_range(it, Quantity::Pressure, units);
    let powers = |it| with_range(it, Quantity::Power, units);
    match *finding {
        Finding::HydraulicPower {
            flow: taken,
            pressure: at,
            comes_to,
            claimed,
            apart,
        } => {
            let (flow, pressure) = (&flow(taken), &pressure(at));
            let (comes_to, claimed, apart) = (&power(comes_to), &power(claimed), &power(apart));
            match weight {
                Weight::Wrong => say::HydraulicTooMuch {
                    flow,
                    pressure,
                    power: comes_to,
                    claimed,
                    apart,
                }
                .said(),
                Weight::Advice => say::HydraulicLess {
                    flow,
                    pressure,
                    power: comes_to,
                    claimed,
                    apart,
                }
                .said(),
                _ => say::HydraulicHolds {
                    flow,
                    pressure,
                    power: comes_to,
                }
                .said(),
            }
        }
        Finding::EnginePower {
            flow: taken,
            pressure: at,
            needs,
            speed: turns,
            net,
            ..
        } => {
            let (flow, pressure, speed) = (&flow(taken), &pressure(at), &speed(turns));
            let (needs, net) = (&powers(needs), &powers(net));
            match weight {
                Weight::Wrong => say::EngineCant {
                    flow,
                    pressure,
                    needs,
                    speed,
                    net,
                }
                .said(),
                Weight::Advice => say::EngineAtBest {
                    flow,
                    pressure,
                    needs,
                    speed,
                    net,
                }
                .said(),
                _ => say::EngineCan {
                    flow,
                    pressure,
                    needs,
                    speed,
                    net,
                }
                .said(),
            }
        }
        Finding::Steering {
            claimed,
            pump_gives,
            steering,
            left,
        } => {
            let (claimed, steering, left) = (&flow(claimed), &flow(steering), &flow(left));
            match weight {
                Weight::Holds => say::SteeringApart { claimed, steering }.said(),
                Weight::Restated => say::SteeringOfPump {
                    pump_gives: &flow(pump_gives),
                    steering,
                    left,
                }
                .said(),
                _ => say::SteeringWithin {
                    claimed,
                    steering,
                    left,
                }
                .said(),
            }
        }
        Finding::WorkingSpeed {
            flow: claimed,
            speed: at,
            working,
            left,
            ..
        } => match weight {
            Weight::Restated => say::WorkingSlower {
                flow: &flow(claimed),
                speed: &speed(at),
                working: &speed(working),
                left: &flow(left),
            }
            .said(),
            _ => say::WorkingSame {
                flow: &flow(claimed),
                speed: &speed(at),
            }
            .said(),
        },
        Finding::Couplers {
            flow: taken,
            at_pump,
            valve,
            couplers,
            at_couplers,
        } => say::Couplers {
            flow: &flow(taken),
            valve: &pressure(valve.likely),
            couplers: &pressure(couplers.likely),
            at_pump: &pressures(at_pump),
            at_couplers: &pressures(at_couplers),
        }
        .said(),
        Finding::Relief {
            pressure: claimed,
            relief,
            opens,
        } => {
            let (relief, opens) = (&pressures(relief), &pressures(opens));
            let pressure = &pressure(claimed);
            match weight {
                Weight::Holds => say::ReliefClosed {
                    relief,
                    opens,
                    pressure,
                }
                .said(),
                _ => say::ReliefOpen {
                    relief,
                    opens,
                    pressure,
                }
                .said(),
            }
        }
        Finding::EngineRating {
            claimed,
            known,
            net,
        } => {
            let (claimed, known) = (&power(claimed), &power(known.likely));
            match weight {
                Weight::Holds => say::RatingNet { claimed, known }.said(),
                _ => say::RatingGross {
                    claimed,
                    net: &powers(net),
                    known,
                }
                .said(),
            }
        }
        Finding::PtoPower {
            claimed,
            net,
            gives,
            ..
        } => {
            let (net, gives) = (&power(net.likely), &powers(gives));
            let claimed = &power(claimed);
            match weight {
                Weight::Wrong => say::PtoTooMuch {
                    net,
                    gives,
                    claimed,
                }
                .said(),
                Weight::Advice => say::PtoAtBest {
                    net,
                    gives,
                    claimed,
                }
                .said(),
                _ => say::PtoHolds {
                    net,
                    gives,
                    claimed,
                }
                .said(),
            }
        }
        Finding::PtoAboveEngine { claimed, engine } => say::PtoAboveEngine {
            claimed: &power(claimed),
            engine: &power(engine),
        }
        .said(),
    }
}
