//! Flow and pressure of a sheet.

use super::sheet::left_out;
use super::{Answer, Finding, ROUNDING, Sheet, SheetFigure, Taken, Weight};
use crate::defaults;
use crate::machine::{Circuit, SteeringShare, Supply};
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

/// What the implement's pump gives of a claimed flow, and what is left of that for the implement.
struct Shared {
    pump_gives: Flow,
    steering: Flow,
    left: Flow,
}

impl<'a> OfOil<'a> {
    pub(super) fn new(sheet: &'a Sheet, circuit: &'a Circuit) -> Self {
        Self {
            sheet,
            circuit,
            speed: sheet.engine_speed.unwrap_or(circuit.engine_speed),
        }
    }

    /// n/n_r: the sheet's engine speed over that of the yard's flow.
    fn times(&self) -> f64 {
        self.speed / self.circuit.engine_speed
    }

    /// A claimed flow shared out, where the yard knows of a flow for steering.
    ///
    /// It is taken for the machine's flow with steering's where it lies within that one's range, and
    /// nearer to it than to the flow without: so nothing is taken off twice.
    fn shared(&self, claimed: Flow) -> Option<Shared> {
        let known = self.circuit.flow.map(|flow| flow * self.times());
        let is_about = |known: Spread<Flow>, steering: Flow| {
            let off = claimed.max(known.likely) - claimed.min(known.likely);
            off < steering * 0.5
                && claimed >= known.low * (1.0 - ROUNDING)
                && claimed <= known.high * (1.0 + ROUNDING)
        };
        // Q₂ = Q₁ − Q_t
        let less = |flow: Flow, steering: Flow| (flow - steering).max(Flow::ZERO);
        match self.circuit.steering {
            SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority => None,
            SteeringShare::Summed(share) => {
                let steering = share.likely * self.times();
                let left = if is_about(known, steering) {
                    less(claimed, steering)
                } else {
                    claimed
                };
                Some(Shared {
                    pump_gives: left,
                    steering,
                    left,
                })
            }
            SteeringShare::FixedPriority(share) => {
                let steering = share.likely;
                let added = known.map(|flow| flow + steering);
                let (pump_gives, left) = if is_about(added, steering) {
                    let pump_gives = less(claimed, steering);
                    (pump_gives, less(pump_gives, steering))
                } else if self.sheet.taken == Some(Taken::AtPump) || is_about(known, steering) {
                    (claimed, less(claimed, steering))
                } else {
                    (claimed + steering, claimed)
                };
                Some(Shared {
                    pump_gives,
                    steering,
                    left,
                })
            }
        }
    }

    /// The flow for the implement at the sheet's engine speed.
    pub(super) fn flow(&self) -> Option<Flow> {
        let claimed = self.sheet.flow?;
        Some(self.shared(claimed).map_or(claimed, |it| it.left))
    }

    /// The sheet's flow as a yard file means it: at the yard's engine speed, with what a divider
    /// or a pump that is added in gives to steering.
    ///
    /// Equation: Q_s = (Q + Q_t)·n_r/n with a divider, Q·n_r/n + Q_t where steering's is added in.
    pub(super) fn as_of_yard(&self) -> Option<Flow> {
        let flow = self.flow()?;
        Some(match self.circuit.steering {
            SteeringShare::FixedPriority(share) => (flow + share.likely) / self.times(),
            SteeringShare::Summed(share) => flow / self.times() + share.likely,
            SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority => flow / self.times(),
        })
    }

    /// Flow against the machine's with and without steering's.
    pub(super) fn steering(&self) -> Answer {
        if matches!(
            self.circuit.steering,
            SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority
        ) {
            return Answer::NotForThisMachine;
        }
        let Some((claimed, shared)) = self
            .sheet
            .flow
            .and_then(|flow| Some((flow, self.shared(flow)?)))
        else {
            return Answer::Lacks(vec![SheetFigure::Flow]);
        };
        let Shared {
            pump_gives,
            steering,
            left,
        } = shared;
        let weight = if left >= claimed {
            Weight::Holds
        } else if self.sheet.taken == Some(Taken::AtPump) && pump_gives == claimed {
            Weight::Restated
        } else {
            Weight::Wrong
        };
        let finding = Finding::Steering {
            claimed,
            pump_gives,
            steering,
            left,
        };
        Answer::Found(weight, finding)
    }

    /// The flow at the working speed.
    ///
    /// Equation: Q₂ = (Q₁ + Q_t)·n₂/n₁ − Q_t; Q_t = 0 without a divider. Units: SI.
    /// Source: definition of displacement; a divider's share is the same at every speed.
    pub(super) fn working_speed(&self, working: AngularSpeed) -> Answer {
        let (Some(flow), Some(speed)) = (self.flow(), self.sheet.engine_speed) else {
            return Answer::Lacks(left_out([
                (SheetFigure::Flow, self.sheet.flow.is_some()),
                (SheetFigure::EngineSpeed, self.sheet.engine_speed.is_some()),
            ]));
        };
        let steering = match self.circuit.steering {
            SteeringShare::FixedPriority(share) => share.likely,
            _ => Flow::ZERO,
        };
        let weight = if (working / speed - 1.0).abs() > ROUNDING {
            Weight::Restated
        } else {
            Weight::Holds
        };
        let finding = Finding::WorkingSpeed {
            flow,
            speed,
            steering,
            working,
            // Q₂ = (Q₁ + Q_t)·n₂/n₁ − Q_t
            left: ((flow + steering) * (working / speed) - steering).max(Flow::ZERO),
        };
        Answer::Found(weight, finding)
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
