//! A sheet as it stands.

use crate::fault::Fault;
use crate::hint::Hint;
use crate::machine::Machine;
use crate::quantity::{AngularSpeed, Flow, Power, Pressure};
use crate::settings::{
    ENGINE_POWER_LIMITS, FLOW_LIMITS, RELIEF_LIMITS, SHAFT_POWER_LIMITS, engine_speed_limits,
};
use crate::words::words;
use crate::yard::report::Report;
use serde::Serialize;

/// What a sheet or an advertisement says of a machine. `None`: nothing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
pub struct Sheet {
    /// Hydraulic flow.
    pub flow: Option<Flow>,
    /// Hydraulic pressure, mostly that of the relief valve.
    pub pressure: Option<Pressure>,
    /// Hydraulic power.
    pub hydraulic: Option<Power>,
    /// Where flow and pressure were taken.
    pub taken: Option<Taken>,
    /// The engine speed that they hold for.
    pub engine_speed: Option<AngularSpeed>,
    /// Power of the engine.
    pub engine: Option<Power>,
    /// What kind of power that is.
    pub rating: Option<Rating>,
    /// Power of the PTO.
    pub pto: Option<Power>,
}

words! {
    /// Where hydraulic figures are taken.
    Taken {
        /// Before divider and valve.
        AtPump = "at_pump",
        /// On the implement's side of the couplers.
        AtCouplers = "at_couplers",
    }
}

words! {
    /// A kind of engine power.
    Rating {
        /// With all that the engine needs to run in the machine.
        Net = "net",
        /// Without fan, air cleaner and the like.
        Gross = "gross",
    }
}

words! {
    /// A figure of a sheet. The words are the paths of faults.
    SheetFigure {
        /// [`Sheet::flow`].
        Flow = "flow",
        /// [`Sheet::pressure`].
        Pressure = "pressure",
        /// [`Sheet::hydraulic`].
        Hydraulic = "hydraulic",
        /// [`Sheet::taken`].
        Taken = "taken",
        /// [`Sheet::engine_speed`].
        EngineSpeed = "engine_speed",
        /// [`Sheet::engine`].
        Engine = "engine",
        /// [`Sheet::rating`].
        Rating = "rating",
        /// [`Sheet::pto`].
        Pto = "pto",
    }
}

/// Least and most hydraulic power on a sheet, kW. The least is that of the least flow at the least
/// pressure, 1 L/min at 20 bar; the most is that of shafts.
pub const HYDRAULIC_POWER_LIMITS: (f64, f64) = (
    FLOW_LIMITS.0 * RELIEF_LIMITS.0 / 600.0,
    SHAFT_POWER_LIMITS.1,
);

impl Sheet {
    /// Checks it against a machine's engine.
    ///
    /// # Errors
    /// Every figure that is out of its range or isn't a number.
    pub fn check(&self, machine: &Machine) -> Result<(), Vec<Fault>> {
        let mut report = Report::default();
        let mut within = |figure: SheetFigure, value: Option<f64>, limits, unit, hint: Hint| {
            report.within(figure.word(), value, limits, unit, hint);
        };
        let horsepower = Hint::Horsepower;
        within(
            SheetFigure::Flow,
            self.flow.map(Flow::to_litres_per_minute),
            FLOW_LIMITS,
            "L/min",
            Hint::Gallons,
        );
        within(
            SheetFigure::Pressure,
            self.pressure.map(Pressure::to_bar),
            RELIEF_LIMITS,
            "bar",
            Hint::Psi,
        );
        within(
            SheetFigure::Hydraulic,
            self.hydraulic.map(Power::to_kilowatts),
            HYDRAULIC_POWER_LIMITS,
            "kW",
            horsepower,
        );
        within(
            SheetFigure::EngineSpeed,
            self.engine_speed.map(AngularSpeed::to_rpm),
            engine_speed_limits(&machine.engine),
            "rpm",
            Hint::PumpSpeed,
        );
        within(
            SheetFigure::Engine,
            self.engine.map(Power::to_kilowatts),
            ENGINE_POWER_LIMITS,
            "kW",
            horsepower,
        );
        within(
            SheetFigure::Pto,
            self.pto.map(Power::to_kilowatts),
            SHAFT_POWER_LIMITS,
            "kW",
            horsepower,
        );
        if report.is_empty() {
            Ok(())
        } else {
            Err(report.into_faults())
        }
    }
}

/// Which of some figures a sheet leaves out.
pub(super) fn left_out<const N: usize>(figures: [(SheetFigure, bool); N]) -> Vec<SheetFigure> {
    let missing = figures.into_iter().filter(|(_, is_there)| !is_there);
    missing.map(|(figure, _)| figure).collect()
}
