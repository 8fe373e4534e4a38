//! Hydraulic power and pressure of a sheet.

use super::sheet::left_out;
use super::{Answer, Finding, ROUNDING, Sheet, SheetFigure, Taken, Weight};
use crate::defaults;
use crate::machine::{Circuit, Supply};
use crate::physics::hydraulic;
use crate::physics::line::rated_drop;
use crate::quantity::{AngularSpeed, Flow, Pressure};
use crate::source::Source;
use crate::spread::{Corner, Scenario, Spread};

/// Couplers between a machine and what a sheet calls its couplers, one there and one back: ISO
/// 10448:2021 measures between the two on the implement's side.
const COUPLERS: f64 = 2.0;

/// Hydraulic power against flow times pressure.
///
/// Equation: P = Q·p. Source: definition.
pub(super) fn hydraulic_power(sheet: &Sheet) -> Answer {
    let (Some(flow), Some(pressure), Some(claimed)) = (sheet.flow, sheet.pressure, sheet.hydraulic)
    else {
        return Answer::Lacks(left_out([
            (SheetFigure::Flow, sheet.flow.is_some()),
            (SheetFigure::Pressure, sheet.pressure.is_some()),
            (SheetFigure::Hydraulic, sheet.hydraulic.is_some()),
        ]));
    };
    // P = Q·p
    let comes_to = hydraulic::hydraulic_power(pressure, flow);
    let weight = if claimed > comes_to * (1.0 + ROUNDING) {
        Weight::Wrong
    } else if claimed < comes_to * (1.0 - ROUNDING) {
        Weight::Advice
    } else {
        Weight::Holds
    };
    let finding = Finding::HydraulicPower {
        flow,
        pressure,
        comes_to,
        claimed,
        apart: claimed.max(comes_to) - claimed.min(comes_to),
    };
    Answer::Found(weight, finding)
}

/// A sheet's flow and pressure beside the circuit that they are said of.
pub(super) struct OfOil<'a> {
    pub(super) sheet: &'a Sheet,
    pub(super) circuit: &'a Circuit,
    /// The engine speed that the flow holds for: where the sheet doesn't say, that of the yard's.
    pub(super) speed: AngularSpeed,
}

impl<'a> OfOil<'a> {
    pub(super) fn new(sheet: &'a Sheet, circuit: &'a Circuit) -> Self {
        Self {
            sheet,
            circuit,
            speed: sheet.engine_speed.unwrap_or(circuit.engine_speed),
        }
    }

    /// What the open valve and the couplers take of a flow.
    fn drops(&self, flow: Flow) -> (Spread<Pressure>, Spread<Pressure>) {
        let valve = self.circuit.open_valve();
        let burden = |scenario: Scenario| valve.drop(flow, Corner::all(scenario.of_a_burden()));
        let valve = Spread::new(
            burden(Scenario::Low),
            burden(Scenario::Likely),
            burden(Scenario::High),
            self.circuit.valve.source,
        );
        // Δp = Δp_r·(Q/Q_r)²
        let couplers = defaults::coupler_drop()
            .map(|rated| rated_drop(rated, defaults::coupler_flow(), flow) * COUPLERS);
        (valve, couplers)
    }

    /// Pressure on both sides of valve and couplers: at the pump, then at the couplers.
    ///
    /// Equation: p₂ = p₁ − Δp_v − Δp_c. Units: SI. Source: definition; drops as [`rated_drop`].
    pub(super) fn pressures(&self) -> Option<(Spread<Pressure>, Spread<Pressure>)> {
        let (flow, pressure, taken) = (self.flow()?, self.sheet.pressure?, self.sheet.taken?);
        let (valve, couplers) = self.drops(flow);
        let claimed = Spread::exact(pressure, Source::Own);
        // p₂ = p₁ − Δp_v − Δp_c
        let less = |drops: Pressure| (pressure - drops).max(Pressure::ZERO);
        let more = |drops: Pressure| pressure + drops;
        Some(match taken {
            Taken::AtPump => {
                let at_couplers = Spread::new(
                    less(valve.high + couplers.high),
                    less(valve.likely + couplers.likely),
                    less(valve.low + couplers.low),
                    Source::Computed,
                );
                (claimed, at_couplers)
            }
            Taken::AtCouplers => {
                let at_pump = Spread::new(
                    more(valve.low + couplers.low),
                    more(valve.likely + couplers.likely),
                    more(valve.high + couplers.high),
                    Source::Computed,
                );
                (at_pump, claimed)
            }
        })
    }

    /// Where pressure was taken.
    pub(super) fn couplers(&self) -> Answer {
        let (Some(flow), Some((at_pump, at_couplers))) = (self.flow(), self.pressures()) else {
            return Answer::Lacks(left_out([
                (SheetFigure::Flow, self.sheet.flow.is_some()),
                (SheetFigure::Pressure, self.sheet.pressure.is_some()),
                (SheetFigure::Taken, self.sheet.taken.is_some()),
            ]));
        };
        let weight = match self.sheet.taken {
            Some(Taken::AtPump) => Weight::Restated,
            _ => Weight::Holds,
        };
        let (valve, couplers) = self.drops(flow);
        let finding = Finding::Couplers {
            flow,
            at_pump,
            valve,
            couplers,
            at_couplers,
        };
        Answer::Found(weight, finding)
    }

    /// The pressure at the pump, where the sheet gives one: the claimed one unless it is said to be
    /// taken at the couplers.
    pub(super) fn at_pump(&self) -> Option<Pressure> {
        match self.sheet.taken {
            Some(Taken::AtCouplers) => Some(self.pressures()?.0.likely),
            _ => self.sheet.pressure,
        }
    }

    /// Pressure against that at which the relief valve begins to open. A pump that swings back has
    /// no such valve at work.
    ///
    /// Equation: p₀ = k·p_r. Source: common practice, no source.
    pub(super) fn relief(&self) -> Answer {
        if self.circuit.supply != Supply::OpenCentre {
            return Answer::NotForThisMachine;
        }
        let (Some(_), Some(pressure)) = (self.sheet.flow, self.at_pump()) else {
            return Answer::Lacks(left_out([
                (SheetFigure::Flow, self.sheet.flow.is_some()),
                (SheetFigure::Pressure, self.sheet.pressure.is_some()),
            ]));
        };
        let relief = self.circuit.relief;
        // p₀ = k·p_r
        let opens = defaults::RELIEF_OPENS.map(|part| relief.likely * part);
        let weight = if pressure > opens.likely {
            Weight::Advice
        } else {
            Weight::Holds
        };
        let finding = Finding::Relief {
            pressure,
            relief,
            opens,
        };
        Answer::Found(weight, finding)
    }
}
