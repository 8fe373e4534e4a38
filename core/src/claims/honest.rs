//! The figures of a sheet that can be compared with others'.

use super::Sheet;
use super::engine::OfEngine;
use super::oil::OfOil;
use crate::quantity::{Flow, Power, Pressure};
use crate::settings::{OilSettings, Settings};
use crate::spread::Spread;

/// What a sheet's figures mean for the implement. `None`: the sheet doesn't say enough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Honest {
    /// Flow for the implement at the sheet's engine speed.
    pub flow: Option<Flow>,
    /// Pressure at the couplers with that flow.
    pub at_couplers: Option<Spread<Pressure>>,
    /// Net power of the engine at rated speed.
    pub net: Option<Spread<Power>>,
    /// Flow and relief pressure as the machine's own hydraulics are set.
    own: OilSettings,
}

impl Honest {
    pub(super) fn of(sheet: &Sheet, of_engine: &OfEngine<'_>, of_oil: Option<&OfOil<'_>>) -> Self {
        Self {
            flow: of_oil.map_or(sheet.flow, OfOil::flow),
            at_couplers: of_oil.and_then(OfOil::pressures).map(|(_, there)| there),
            net: of_engine.net(),
            own: OilSettings {
                flow: of_oil.and_then(OfOil::as_of_yard),
                relief: of_oil.and_then(OfOil::at_pump),
            },
        }
    }

    /// Settings with the machine's own flow and relief pressure and the engine's power taken over,
    /// as far as they are known. Whether they are in their ranges is for [`Settings::check`] to say.
    pub fn applied(&self, settings: Settings) -> Settings {
        Settings {
            engine_power: self.net.map(|net| net.likely).or(settings.engine_power),
            own: OilSettings {
                flow: self.own.flow.or(settings.own.flow),
                relief: self.own.relief.or(settings.own.relief),
            },
            ..settings
        }
    }
}
