//! A pump: the shaft's power becomes flow under pressure.

use super::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::displacement::{Losses, RatedPoint};
use crate::physics::hydraulic::pump_displacement;
use crate::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure, Torque};
use crate::source::Source;
use crate::spread::{Axis, Corner, Spread};
use crate::units::Quantity;

/// How the pump's size is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PumpSize {
    /// From a sheet's flow at the rated point.
    Sheet {
        /// The sheet's figure.
        flow: Spread<Flow>,
        /// The steering pump's flow, where the sheet has added it in.
        less: Option<Spread<Flow>>,
        /// Volumetric efficiency of a pump that gives that flow: the likely one.
        volumetric: f64,
    },
    /// Displacement per revolution of its shaft.
    Displacement(Displacement),
}

/// A pump with its relief valve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pump {
    /// How its size is known.
    pub size: PumpSize,
    /// Where its efficiencies hold: shaft speed, pressure and viscosity.
    pub rated: RatedPoint,
    /// Volumetric efficiency there, above 0 to 1.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency there, above 0 to 1.
    pub hydro_mechanical: Spread<f64>,
    /// Pressure at which the relief valve opens, or to which a variable pump is set.
    pub relief: Spread<Pressure>,
    /// The flow that a variable pump is asked for; it swings back to that. A fixed pump gives all.
    pub demand: Option<Flow>,
}

/// A pump at one speed and pressure, with what it loses there.
struct Working {
    pressure: Pressure,
    flow: Flow,
    leaks: Flow,
    rubbed: Torque,
}

impl Pump {
    /// Displacement per revolution.
    ///
    /// Equation: V = 2π·(Q_s − Q_st)/(ω_r·ηv), with the likely ηv: a worn pump of the same size
    /// gives less. Units: SI. Valid range: as the fields'. Source: definition.
    pub fn displacement(&self, corner: Corner) -> Displacement {
        match self.size {
            PumpSize::Sheet {
                flow,
                less,
                volumetric,
            } => {
                let flow = corner.of(Axis::Flow, &flow);
                let less = less.map_or(Flow::ZERO, |less| corner.of(Axis::Steering, &less));
                // V = 2π·(Q_s − Q_st)/(ω_r·ηv)
                pump_displacement(flow - less, self.rated.speed, volumetric)
            }
            PumpSize::Displacement(displacement) => displacement,
        }
    }

    fn losses(&self, corner: Corner) -> Losses {
        Losses::of_pump(
            self.displacement(corner),
            self.rated,
            corner.of(Axis::Tightness, &self.volumetric),
            corner.of(Axis::Merit, &self.hydro_mechanical),
        )
    }

    /// Pressure and flow for a torque on the shaft. `None` where drag takes all of it.
    ///
    /// Equation: 2π·T/V = Δp·(x + C_f) + 2π·T_d/V, Q = x·V·ω/2π − Q_s. x = 1, or what gives the
    /// flow that is asked for: x = (Q_d + Q_s)/(V·ω/2π); leakage and friction don't swing back.
    /// Units: SI. Valid range: speed above zero. Source: Wilson's model, from memory.
    fn working(
        &self,
        losses: &Losses,
        torque: Torque,
        speed: AngularSpeed,
        at: &AtWork,
    ) -> Option<Working> {
        let one = Pressure::pascals(1.0);
        let without_loss = one * losses.displacement;
        let drag = losses.drag(speed, at.viscosity);
        // 2π·(T − T_d)/V, in pascals
        let left = (torque - drag) / without_loss;
        if left <= 0.0 {
            return None;
        }
        let geometric = losses.displacement * speed;
        // Leakage for each pascal.
        let leaks = losses.leaks(one, at.viscosity);
        // Δp = left/(1 + C_f)
        let full = left / (1.0 + losses.friction());
        let flow = geometric - leaks * full;
        let (pascals, flow) = match self.demand {
            Some(demand) if flow > demand => {
                // left = Δp·(x₀ + C_f) + s·Δp², with x = x₀ + s·Δp
                let b = demand / geometric + losses.friction();
                let s = leaks / geometric;
                let root = libm::sqrt(b * b + 4.0 * s * left);
                (2.0 * left / (b + root), demand)
            }
            _ => (full, flow),
        };
        Some(Working {
            pressure: Pressure::pascals(pascals),
            flow,
            leaks: leaks * pascals,
            // T_loss = C_f·V·Δp/2π + T_d
            rubbed: without_loss * (pascals * losses.friction()) + drag,
        })
    }

    /// Power that it takes at a pressure. A pump that is asked for a flow swings back to that and
    /// what leaks of it, as far as it has so much.
    ///
    /// Equation: P = Δp·x·V·ω/2π + (C_f·V·Δp/2π + T_d)·ω, x·V·ω/2π = Q_d + Q_s or x = 1. Units: SI.
    /// Valid range: speed above zero. Source: Wilson's model, from memory.
    fn takes(
        &self,
        pressure: Pressure,
        asked: Option<Flow>,
        speed: AngularSpeed,
        at: &AtWork,
    ) -> Power {
        let losses = self.losses(at.corner);
        let geometric = losses.displacement * speed;
        // x·V·ω/2π = Q_d + Q_s
        let swept = asked.map_or(geometric, |asked| {
            geometric.min(asked + losses.leaks(pressure, at.viscosity))
        });
        // T_loss = C_f·V·Δp/2π + T_d
        let rubbed =
            pressure * losses.displacement * losses.friction() + losses.drag(speed, at.viscosity);
        // P = Δp·x·V·ω/2π + T_loss·ω
        pressure * swept + rubbed * speed
    }

    /// Power that it takes while nothing is asked of it, all of which heats the oil: a fixed pump
    /// sends its flow round against a pressure, a variable one only holds that pressure.
    pub fn idles(&self, against: Pressure, speed: AngularSpeed, at: &AtWork) -> Power {
        let asked = self.demand.map(|_| Flow::ZERO);
        self.takes(against, asked, speed, at)
    }

    /// Power that it takes more for a flow where it holds its set pressure than at the load's: what the
    /// valve throttles, and what pump and seals lose by the higher pressure. All of it heats the oil.
    ///
    /// Equation: P(p_set) − P(p), the power it takes at each. Units: SI. Valid range: pressure up to the
    /// set one. Source: Wilson's model, from memory.
    pub fn held_up(
        &self,
        flow: Flow,
        pressure: Pressure,
        speed: AngularSpeed,
        at: &AtWork,
    ) -> Power {
        // P(p_set) − P(p)
        let takes = |pressure| self.takes(pressure, Some(flow), speed, at);
        (takes(at.corner.of(Axis::Merit, &self.relief)) - takes(pressure)).max(Power::ZERO)
    }
}

impl StagePhysics for Pump {
    fn kind(&self) -> StageKind {
        StageKind::Pump
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        let speed = takes.rate.turning()?;
        let losses = self.losses(at.corner);
        let geometric = losses.displacement * speed;
        let gives = |flow, power| Drive {
            rate: Rate::Flowing(flow),
            power,
        };
        if geometric <= Flow::ZERO {
            let gives = gives(Flow::ZERO, takes.power);
            return Ok(Pass::stalled(takes, gives, Stall::NoFlowLeft));
        }
        let Some(working) = self.working(&losses, takes.power / speed, speed, at) else {
            let gives = gives(geometric, takes.power);
            return Ok(Pass::stalled(takes, gives, Stall::NoPressureLeft));
        };
        let Working {
            pressure,
            flow,
            leaks,
            rubbed,
        } = working;
        let strain = Some((
            pressure / at.corner.of(Axis::Merit, &self.relief),
            Limit::Pressure,
        ));
        if flow <= Flow::ZERO {
            let stalled = Pass::stalled(takes, gives(Flow::ZERO, takes.power), Stall::NoFlowLeft);
            return Ok(Pass { strain, ..stalled });
        }
        Ok(Pass {
            // P₂ = p·Q
            gives: gives(flow, pressure * flow),
            // P_loss = Q_s·Δp + T_loss·ω
            loss: pressure * leaks + rubbed * speed,
            strain,
            stall: None,
        })
    }

    fn may_take(&self, rate: Rate, at: &AtWork) -> Option<Power> {
        let relief = at.corner.of(Axis::Merit, &self.relief);
        let most = self.takes(relief, self.demand, rate.turning().ok()?, at);
        // A pump that steering leaves no flow takes nothing, and nothing holds it.
        (most > Power::ZERO).then_some(most)
    }

    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula> {
        let (Rate::Turning(speed), Rate::Flowing(flow), Quantity::Pressure(pressure)) =
            (takes.rate, gives.rate, gives.effort())
        else {
            return Vec::new();
        };
        let flow_now = Figure::computed("Q", Quantity::Flow(flow));
        let speed_now = Figure::computed("n", Quantity::Speed(speed));
        let pressure_now = Figure::computed("p", Quantity::Pressure(pressure));
        let displacement = self.displacement(at.corner);
        let (size, source) = match self.size {
            PumpSize::Sheet {
                flow,
                less,
                volumetric,
            } => {
                let sheet = Figure::spread("Qₛ", flow, Quantity::Flow);
                let size = Figure::computed("V", Quantity::Displacement(displacement));
                let size = match less {
                    None => Formula::new(size, sheet),
                    Some(less) => Formula::of(size)
                        .sign("(")
                        .figure(sheet)
                        .then("−", Figure::spread("Qₜ", less, Quantity::Flow))
                        .sign(")"),
                };
                let at = Figure::known("nᵣ", Quantity::Speed(self.rated.speed), flow.source);
                let rated =
                    Figure::known("ηvᵣ", Quantity::Ratio(volumetric), self.volumetric.source);
                let size = size.then("/ (", at).then("·", rated).sign(")");
                (Some(size), Source::Computed)
            }
            PumpSize::Displacement(_) => (None, Source::Own),
        };
        let displacement_now = Figure::known("V", Quantity::Displacement(displacement), source);
        let asked = self.demand.filter(|demand| *demand == flow);
        let swept = match asked {
            None => displacement * speed,
            // It has swung back: x·V·ω/2π = Q_d + Q_s
            Some(demand) => demand + self.losses(at.corner).leaks(pressure, at.viscosity),
        };
        let volumetric = flow / swept;
        let volumetric_now = Figure::computed("ηv", Quantity::Ratio(volumetric));
        let share = takes.power / gives.power;
        let hydro_mechanical_now = Figure::computed("ηhm", Quantity::Ratio(swept / flow / share));
        let flow_formula = match asked {
            Some(demand) => Formula::new(
                flow_now,
                Figure::known("Qₐ", Quantity::Flow(demand), Source::Computed),
            ),
            None => Formula::new(flow_now, displacement_now)
                .then("·", speed_now)
                .then("·", volumetric_now),
        };
        size.into_iter()
            .chain([flow_formula])
            .chain(asked.is_none().then(|| {
                // 1 − ηv = (1 − ηvᵣ)·(p/pᵣ)·(nᵣ/n)·(νᵣ/ν)
                let leaked = Quantity::Ratio(1.0 - volumetric);
                let formula = Formula::of(Figure::computed("1 − ηv", leaked))
                    .sign("(1 −")
                    .figure(Figure::spread("ηvᵣ", self.volumetric, Quantity::Ratio))
                    .sign(")");
                super::against_rated(formula, &self.rated, (speed, pressure), at)
            }))
            .chain([
                Formula::new(Figure::power_out(gives), pressure_now).then("·", flow_now),
                Formula::new(Figure::power_in(takes), Figure::power_out(gives))
                    .then("/ (", volumetric_now)
                    .then("·", hydro_mechanical_now)
                    .sign(")"),
            ])
            .collect()
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        if let PumpSize::Sheet { flow, less, .. } = &mut self.size {
            visit(FigureName::SheetFlow, Axis::Flow, Uncertain::Flow(flow));
            if let Some(less) = less {
                let less = Uncertain::Flow(less);
                visit(FigureName::SteeringFlow, Axis::Steering, less);
            }
        }
        let volumetric = Uncertain::Ratio(&mut self.volumetric);
        visit(FigureName::PumpVolumetric, Axis::Tightness, volumetric);
        let hydro_mechanical = Uncertain::Ratio(&mut self.hydro_mechanical);
        visit(
            FigureName::PumpHydroMechanical,
            Axis::Merit,
            hydro_mechanical,
        );
        let relief = Uncertain::Pressure(&mut self.relief);
        visit(FigureName::Relief, Axis::Merit, relief);
    }
}
