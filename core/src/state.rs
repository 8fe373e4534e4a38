//! All that a user has chosen, as one value, and the link that carries it.
//!
//! A link is the URL-safe base64 of: one version byte, the postcard form of that version's frozen
//! struct, and a CRC-32 of both. Numbers are in rpm, L/min, bar and °C.

use crate::machine::Outlet;
use crate::quantity::{AngularSpeed, Flow, Pressure, Temperature};
use crate::route::RouteId;
use crate::settings::{Control, OilSettings, Settings};
use crate::units::UnitSystem;
use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use serde::{Deserialize, Serialize};

/// All that a user has chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct State {
    /// Identifier of the machine.
    pub machine: String,
    /// Identifier of the implement.
    pub implement: String,
    /// The route whose ledger is open.
    pub route: RouteId,
    /// What has been turned.
    pub settings: Settings,
    /// The control that the curve runs over.
    pub over: Control,
    /// The reader's units.
    pub units: UnitSystem,
}

/// Why a link can't be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkFault {
    /// It isn't one of ours, or a part is missing.
    Damaged,
    /// It was made by a newer version of this program.
    Newer(u8),
    /// It is longer than any link of ours.
    TooLong,
}

/// The version that links are written in.
const VERSION: u8 = 1;
/// The longest link that is looked at, in characters.
pub const LONGEST_LINK: usize = 2_000;
/// Bytes of the check sum at the end.
const SUM_BYTES: usize = 4;

/// Version 1: frozen. A change of meaning or order is a new version.
#[derive(Serialize, Deserialize)]
struct LinkV1 {
    machine: String,
    implement: String,
    route: u8,
    engine_rpm: Option<f64>,
    own_l_min: Option<f64>,
    own_bar: Option<f64>,
    pack_l_min: Option<f64>,
    pack_bar: Option<f64>,
    oil_c: Option<f64>,
    outlet: Option<u8>,
    over: u8,
    units: u8,
}

/// The controls in the order of their numbers in a link.
const CONTROLS: [Control; 6] = [
    Control::EngineSpeed,
    Control::OwnFlow,
    Control::OwnRelief,
    Control::PackFlow,
    Control::PackRelief,
    Control::OilTemperature,
];
/// The units in the order of their numbers in a link.
const UNITS: [UnitSystem; 2] = [UnitSystem::Metric, UnitSystem::Us];

impl State {
    /// The link's fragment, without the number sign.
    pub fn to_link(&self) -> String {
        let Settings {
            engine_speed,
            own,
            pack,
            oil,
            outlet,
        } = self.settings;
        let link = LinkV1 {
            machine: self.machine.clone(),
            implement: self.implement.clone(),
            route: number(RouteId::ALL, self.route),
            engine_rpm: engine_speed.map(AngularSpeed::to_rpm),
            own_l_min: own.flow.map(Flow::to_litres_per_minute),
            own_bar: own.relief.map(Pressure::to_bar),
            pack_l_min: pack.flow.map(Flow::to_litres_per_minute),
            pack_bar: pack.relief.map(Pressure::to_bar),
            oil_c: oil.map(Temperature::to_celsius),
            outlet: outlet.map(|outlet| number(Outlet::ALL, outlet)),
            over: number(&CONTROLS, self.over),
            units: number(&UNITS, self.units),
        };
        let mut bytes = vec![VERSION];
        // Writing plain fields to memory has no way to fail.
        bytes.extend(postcard::to_allocvec(&link).unwrap_or_default());
        bytes.extend(crc32fast::hash(&bytes).to_le_bytes());
        URL_SAFE_NO_PAD.encode(bytes)
    }

    /// Reads a link's fragment, without the number sign. Whether machine and implement are in the
    /// yard, and the numbers in their ranges, is for the reader to check.
    ///
    /// # Errors
    /// [`LinkFault`] where it can't be read whole.
    pub fn from_link(fragment: &str) -> Result<Self, LinkFault> {
        if fragment.len() > LONGEST_LINK {
            return Err(LinkFault::TooLong);
        }
        let damaged = LinkFault::Damaged;
        let bytes = URL_SAFE_NO_PAD.decode(fragment).map_err(|_| damaged)?;
        let (body, sum) = bytes.split_last_chunk::<SUM_BYTES>().ok_or(damaged)?;
        if crc32fast::hash(body) != u32::from_le_bytes(*sum) {
            return Err(damaged);
        }
        match body.split_first() {
            Some((&VERSION, fields)) => read_v1(fields).ok_or(damaged),
            Some((&newer, _)) if newer > VERSION => Err(LinkFault::Newer(newer)),
            _ => Err(damaged),
        }
    }
}

fn read_v1(fields: &[u8]) -> Option<State> {
    let (link, rest) = postcard::take_from_bytes::<LinkV1>(fields).ok()?;
    if !rest.is_empty() {
        return None;
    }
    let outlet = match link.outlet {
        None => None,
        Some(number) => Some(*Outlet::ALL.get(usize::from(number))?),
    };
    Some(State {
        machine: link.machine,
        implement: link.implement,
        route: *RouteId::ALL.get(usize::from(link.route))?,
        settings: Settings {
            engine_speed: link.engine_rpm.map(AngularSpeed::rpm),
            own: OilSettings {
                flow: link.own_l_min.map(Flow::litres_per_minute),
                relief: link.own_bar.map(Pressure::bar),
            },
            pack: OilSettings {
                flow: link.pack_l_min.map(Flow::litres_per_minute),
                relief: link.pack_bar.map(Pressure::bar),
            },
            oil: link.oil_c.map(Temperature::celsius),
            outlet,
        },
        over: *CONTROLS.get(usize::from(link.over))?,
        units: *UNITS.get(usize::from(link.units))?,
    })
}

/// A value's place in a list that has it.
fn number<T: PartialEq>(list: &[T], value: T) -> u8 {
    let place = list.iter().position(|item| *item == value);
    place
        .and_then(|place| u8::try_from(place).ok())
        .unwrap_or(0)
}
