//! What a sheet or an advertisement says, held against itself and against a machine.
//!
//! Each check gives one [`Answer`] with every figure of its arithmetic, so that a reader can follow
//! it. A check that lacks a figure names it: unknown is a question, never a pass. Sheets are held
//! against the yard's own figures, not against what has been turned; of the settings only the
//! outlet and the working speed count.

mod engine;
mod honest;
mod oil;
mod sheet;
mod steering;

pub use honest::Honest;
pub use sheet::{HYDRAULIC_POWER_LIMITS, Rating, Sheet, SheetFigure, Taken};

use crate::fault::Fault;
use crate::machine::Machine;
use crate::quantity::{AngularSpeed, Flow, Power, Pressure};
use crate::settings::Settings;
use crate::spread::Spread;
use crate::words::words;
use engine::OfEngine;
use oil::OfOil;

/// How far figures of a sheet may lie apart that mean the same, as a part of one: each is rounded.
/// This project's judgement; 20 kW for 62 L/min at 190 bar (19.6 kW) are the same.
pub const ROUNDING: f64 = 0.03;

words! {
    /// What is held against what.
    Check {
        /// Hydraulic power against flow times pressure.
        HydraulicPower = "hydraulic_power",
        /// Flow and pressure together against the engine.
        EnginePower = "engine_power",
        /// Flow against the machine's with and without steering's.
        Steering = "steering",
        /// The engine speed that flow holds for against the working one.
        WorkingSpeed = "working_speed",
        /// Where pressure was taken.
        Couplers = "couplers",
        /// Pressure against that at which the relief valve begins to open.
        Relief = "relief",
        /// The engine's power as net power.
        EngineRating = "engine_rating",
        /// PTO power against the engine's.
        PtoPower = "pto_power",
    }
}

/// What came of a check.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// It was made.
    Found(Weight, Finding),
    /// It lacks these figures of the sheet.
    Lacks(Vec<SheetFigure>),
    /// The machine has nothing that it could be held against.
    NotForThisMachine,
}

/// What a finding means for the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// The claim holds.
    Holds,
    /// It may hold; something is to be known beside it.
    Advice,
    /// It is true for another place, speed or rating: the finding says what it means here.
    Restated,
    /// It can't be so.
    Wrong,
}

/// A check's arithmetic.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Finding {
    /// P = Q·p: wrong where the claim is more, an advice where it is less.
    HydraulicPower {
        /// Q.
        flow: Flow,
        /// p.
        pressure: Pressure,
        /// What they come to.
        comes_to: Power,
        /// What the sheet says.
        claimed: Power,
        /// How far the two lie apart.
        apart: Power,
    },
    /// P = Q·p/(ηv·ηhm): wrong where the engine can't give it, an advice where it can only with
    /// everything at its best.
    EnginePower {
        /// Q.
        flow: Flow,
        /// p.
        pressure: Pressure,
        /// ηv.
        volumetric: Spread<f64>,
        /// ηhm.
        hydro_mechanical: Spread<f64>,
        /// What the pump takes.
        needs: Spread<Power>,
        /// The engine's speed.
        speed: AngularSpeed,
        /// The engine's net power there.
        net: Spread<Power>,
    },
    /// Q₂ = Q₁ − Q_t: steering's flow is in the claim where less is left than claimed.
    Steering {
        /// What the sheet says.
        claimed: Flow,
        /// What the implement's pump gives of it at the sheet's engine speed.
        pump_gives: Flow,
        /// What steering takes or has been given.
        steering: Flow,
        /// What is left for the implement; nothing where steering takes all.
        left: Flow,
    },
    /// Q₂ = (Q₁ + Q_t)·n₂/n₁ − Q_t.
    WorkingSpeed {
        /// Flow for the implement at the sheet's engine speed.
        flow: Flow,
        /// That speed.
        speed: AngularSpeed,
        /// What steering takes at every speed.
        steering: Flow,
        /// The working speed.
        working: AngularSpeed,
        /// Flow for the implement there; nothing where steering takes all.
        left: Flow,
    },
    /// p₂ = p₁ − Δp_v − Δp_c; nothing where they take all.
    Couplers {
        /// Flow for the implement.
        flow: Flow,
        /// Pressure at the pump.
        at_pump: Spread<Pressure>,
        /// What the open valve takes.
        valve: Spread<Pressure>,
        /// What the couplers take, there and back.
        couplers: Spread<Pressure>,
        /// Pressure at the couplers.
        at_couplers: Spread<Pressure>,
    },
    /// p₀ = k·p_r: above p₀ a part of the flow goes through the relief valve.
    Relief {
        /// The sheet's pressure, at the pump.
        pressure: Pressure,
        /// The machine's relief pressure.
        relief: Spread<Pressure>,
        /// Where that valve begins to open.
        opens: Spread<Pressure>,
    },
    /// P_net = k·P_gross where it is gross power, else what is claimed.
    EngineRating {
        /// What the sheet says.
        claimed: Power,
        /// The yard's net power.
        known: Spread<Power>,
        /// The claim as net power.
        net: Spread<Power>,
    },
    /// P = η·P_net.
    PtoPower {
        /// What the sheet says.
        claimed: Power,
        /// The engine's net power.
        net: Spread<Power>,
        /// η.
        train: Spread<f64>,
        /// What reaches the PTO.
        gives: Spread<Power>,
    },
    /// No train gives more than its engine.
    PtoAboveEngine {
        /// What the sheet says of the PTO.
        claimed: Power,
        /// What it says of the engine, or the most that the yard does, at the speed that counts.
        engine: Power,
    },
}

/// A sheet held against a machine.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighed {
    /// What came of each check, in the order of [`Check::ALL`].
    pub answers: Vec<(Check, Answer)>,
    /// The figures to compare with.
    pub honest: Honest,
}

/// Holds a sheet against itself and against a machine with its own circuit that the settings mean.
///
/// # Errors
/// Every figure of the sheet and every setting that is out of its range.
pub fn weigh(sheet: &Sheet, machine: &Machine, settings: &Settings) -> Result<Weighed, Vec<Fault>> {
    let faults: Vec<_> = [sheet.check(machine), settings.check(machine)]
        .into_iter()
        .filter_map(Result::err)
        .flatten()
        .collect();
    if !faults.is_empty() {
        return Err(faults);
    }
    let of_engine = OfEngine { sheet, machine };
    let of_oil = settings
        .own_circuit(machine)
        .map(|circuit| OfOil::new(sheet, circuit));
    let answer = |check| match (check, &of_oil) {
        (Check::HydraulicPower, _) => oil::hydraulic_power(sheet),
        (Check::EngineRating, _) => of_engine.rating(),
        (Check::PtoPower, _) => of_engine.pto_power(),
        (_, None) => Answer::NotForThisMachine,
        (Check::EnginePower, Some(oil)) => of_engine.turns_pump(oil),
        (Check::Steering, Some(oil)) => oil.steering(),
        (Check::WorkingSpeed, Some(oil)) => oil.working_speed(settings.engine_speed_for(machine)),
        (Check::Couplers, Some(oil)) => oil.couplers(),
        (Check::Relief, Some(oil)) => oil.relief(),
    };
    Ok(Weighed {
        answers: Check::ALL
            .iter()
            .map(|check| (*check, answer(*check)))
            .collect(),
        honest: Honest::of(sheet, &of_engine, of_oil.as_ref()),
    })
}

/// What a need weighs against what is there: wrong where its least is above the most that there is,
/// an advice where the likely is above the likely.
fn within_reach((least, likely): (Power, Power), there: Spread<Power>) -> Weight {
    if least > there.high * (1.0 + ROUNDING) {
        Weight::Wrong
    } else if likely > there.likely * (1.0 + ROUNDING) {
        Weight::Advice
    } else {
        Weight::Holds
    }
}
