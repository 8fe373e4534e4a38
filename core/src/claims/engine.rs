//! Power of engine and PTO on a sheet.

use super::oil::OfOil;
use super::sheet::left_out;
use super::{Answer, Finding, ROUNDING, Rating, Sheet, SheetFigure, Weight, within_reach};
use crate::defaults;
use crate::machine::{Engine, Machine};
use crate::physics::engine::net_from_gross;
use crate::physics::hydraulic::hydraulic_power;
use crate::quantity::{AngularSpeed, Power};
use crate::source::Source;
use crate::spread::Spread;

/// A sheet's powers beside the machine that they are said of.
pub(super) struct OfEngine<'a> {
    pub(super) sheet: &'a Sheet,
    pub(super) machine: &'a Machine,
}

impl OfEngine<'_> {
    /// The claimed power as net power, with what it weighs. `None` where nothing is claimed, or
    /// where more is than net or gross power could be and the sheet doesn't say which it is.
    ///
    /// Equation: P_net = k·P_gross. Units: SI. Source: that of [`defaults::NET_OF_GROSS`].
    fn claimed_net(&self) -> Option<(Weight, Spread<Power>)> {
        let claimed = self.sheet.engine?;
        let as_net = Spread::exact(claimed, Source::Own);
        let factor = defaults::NET_OF_GROSS;
        // P_net = k·P_gross
        let as_gross = factor.map(|factor| net_from_gross(claimed, factor));
        let most = self.machine.engine.net.high * (1.0 + ROUNDING);
        match self.sheet.rating {
            Some(Rating::Net) => Some((Weight::Holds, as_net)),
            Some(Rating::Gross) => Some((Weight::Restated, as_gross)),
            None if claimed <= most => Some((Weight::Holds, as_net)),
            None if as_gross.low <= most => Some((Weight::Restated, as_gross)),
            None => None,
        }
    }

    /// The sheet's net power at rated speed.
    pub(super) fn net(&self) -> Option<Spread<Power>> {
        self.claimed_net().map(|(_, net)| net)
    }

    /// Net power at a speed within the engine's own range: the sheet's with the yard's curve, else
    /// the yard's.
    fn net_at(&self, speed: AngularSpeed) -> Spread<Power> {
        let own = &self.machine.engine;
        let of_sheet = self.net().map(|net| Engine { net, ..own.clone() });
        of_sheet.as_ref().unwrap_or(own).net_at(speed)
    }

    /// The engine's power as net power.
    pub(super) fn rating(&self) -> Answer {
        let Some(claimed) = self.sheet.engine else {
            return Answer::Lacks(vec![SheetFigure::Engine]);
        };
        let Some((weight, net)) = self.claimed_net() else {
            return Answer::Lacks(vec![SheetFigure::Rating]);
        };
        let finding = Finding::EngineRating {
            claimed,
            known: self.machine.engine.net,
            net,
        };
        Answer::Found(weight, finding)
    }

    /// Flow and pressure together against the engine. The pump's efficiencies are taken to hold
    /// there, for a sheet gives its rated point.
    ///
    /// Equation: P = Q·p/(ηv·ηhm). Units: SI. Source: definitions of ISO 4391, from memory.
    pub(super) fn turns_pump(&self, oil: &OfOil<'_>) -> Answer {
        // A yard's flow may hold for a speed below the engine's lowest.
        let speed_is_there = oil.speed >= self.machine.engine.lowest;
        let (Some(flow), Some(pressure), true) =
            (self.sheet.flow, self.sheet.pressure, speed_is_there)
        else {
            return Answer::Lacks(left_out([
                (SheetFigure::Flow, self.sheet.flow.is_some()),
                (SheetFigure::Pressure, self.sheet.pressure.is_some()),
                (SheetFigure::EngineSpeed, speed_is_there),
            ]));
        };
        let (volumetric, hydro_mechanical) = (oil.circuit.volumetric, oil.circuit.hydro_mechanical);
        let hydraulic = hydraulic_power(pressure, flow);
        // P = Q·p/(ηv·ηhm)
        let needs = Spread::new(
            hydraulic / (volumetric.high * hydro_mechanical.high),
            hydraulic / (volumetric.likely * hydro_mechanical.likely),
            hydraulic / (volumetric.low * hydro_mechanical.low),
            Source::Computed,
        );
        let net = self.net_at(oil.speed);
        let finding = Finding::EnginePower {
            flow,
            pressure,
            volumetric,
            hydro_mechanical,
            needs,
            speed: oil.speed,
            net,
        };
        Answer::Found(within_reach((needs.low, needs.likely), net), finding)
    }

    /// PTO power against the engine's. Sheets give it at the PTO's engine speed or at the rated one:
    /// the one at which the engine has more counts.
    ///
    /// Equation: P = η·P_net. Units: SI. Source: that of the train, see [`defaults::PTO_TRAIN`].
    pub(super) fn pto_power(&self) -> Answer {
        let Some(claimed) = self.sheet.pto else {
            return Answer::Lacks(vec![SheetFigure::Pto]);
        };
        let own = &self.machine.engine;
        let pto = self.machine.first_pto(false);
        let at_rated = self.net_at(own.rated);
        let net = pto
            .map(|pto| self.net_at(pto.engine_speed))
            .filter(|net| net.likely > at_rated.likely)
            .unwrap_or(at_rated);
        let engine = self.sheet.engine.unwrap_or(own.net.high) * (net.likely / at_rated.likely);
        if claimed > engine * (1.0 + ROUNDING) {
            return Answer::Found(Weight::Wrong, Finding::PtoAboveEngine { claimed, engine });
        }
        let train = pto.map_or(defaults::PTO_TRAIN, |pto| pto.train(own).efficiency);
        // P = η·P_net
        let gives = Spread::new(
            net.low * train.low,
            net.likely * train.likely,
            net.high * train.high,
            Source::Computed,
        );
        let finding = Finding::PtoPower {
            claimed,
            net,
            train,
            gives,
        };
        Answer::Found(within_reach((claimed, claimed), gives), finding)
    }
}
