//! All that a user has chosen, as one value, and the link that carries it.
//!
//! A link is the URL-safe base64 of: one version byte, the postcard form of that version's frozen
//! struct, and a CRC-32 of both. Numbers are in rpm, L/min, bar, °C,
//! m, km/h and SI units of a job's measure; prices in the user's currency.

use crate::choice::{EVEN, Weight, Weights};
use crate::claims::{Rating, Sheet, Taken};
use crate::control::Control;
use crate::export::practice_set::CASES;
use crate::grid::{Order, Reading, Selection};
use crate::implement::{Ground, ImplementKind};
use crate::machine::{MachineKind, Outlet};
use crate::measure::{Amount, Measure};
use crate::money::{Prices, RoutePrices, is_price};
use crate::physics::oil::Grade;
use crate::practice::{Kinds, Set};
use crate::quantity::{
    AngularSpeed, Density, Flow, Length, Power, Pressure, Temperature, Velocity,
};
use crate::route::RouteId;
use crate::settings::{OilSettings, Settings};
use crate::standing::Standing;
use crate::units::UnitSystem;
use crate::wanted::Wish;
use crate::words::words;
use crate::yard::is_currency;
use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use serde::{Deserialize, Serialize};

words! {
    /// What of the program is on the screen.
    View {
        /// One machine with one implement.
        Pair = "pair",
        /// The whole yard.
        Grid = "grid",
        /// The yard's entries.
        Yard = "yard",
        /// Practice for those who learn the trade.
        Practice = "practice",
    }
}

/// All that a user has chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct State {
    /// What is on the screen.
    pub view: View,
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
    /// Identifier of the machine to hold beside the first.
    pub beside: Option<String>,
    /// The standing of which is told what it would take.
    pub wished: Wish,
    /// What matters to the user.
    pub weights: Weights,
    /// Prices beside the yard's.
    pub prices: Prices,
    /// What a sheet says that is held against the machine.
    pub sheet: Sheet,
    /// What is shown of the whole yard.
    pub selection: Selection,
    /// A trainer's set of practice cases.
    pub practice: Option<Set>,
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
pub const VERSION: u8 = 4;
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

/// Version 2: frozen. What version 1 has, and site, driving and job.
#[derive(Serialize, Deserialize)]
struct LinkV2 {
    first: LinkV1,
    grade: Option<u8>,
    altitude_m: Option<f64>,
    air_c: Option<f64>,
    ground_km_h: Option<f64>,
    slope: Option<f64>,
    ground: Option<u8>,
    depth_m: Option<f64>,
    density_kg_m3: Option<f64>,
    job: Option<(u8, f64)>,
    economy: bool,
}

/// Version 3: frozen. What version 2 has, and what leads to the sale.
#[derive(Serialize, Deserialize)]
struct LinkV3 {
    second: LinkV2,
    engine_kw: Option<f64>,
    beside: Option<String>,
    wished: u8,
    weights: [u8; 5],
    currency: Option<String>,
    hour: Option<f64>,
    /// Place in [`price_places`] and price.
    prices: Vec<(u8, f64)>,
    sheet: Option<LinkedSheet>,
}

/// A sheet of version 3: frozen.
#[derive(Serialize, Deserialize)]
struct LinkedSheet {
    l_min: Option<f64>,
    bar: Option<f64>,
    hydraulic_kw: Option<f64>,
    taken: Option<u8>,
    engine_rpm: Option<f64>,
    engine_kw: Option<f64>,
    rating: Option<u8>,
    pto_kw: Option<f64>,
}

/// Version 4: frozen. What version 3 has, what of the program and of the whole yard is shown, and a
/// set of practice cases.
#[derive(Serialize, Deserialize)]
struct LinkV4 {
    third: LinkV3,
    view: u8,
    selection: Option<LinkedSelection>,
    practice: Option<LinkedPractice>,
}

/// A selection of version 4: frozen.
#[derive(Serialize, Deserialize)]
struct LinkedSelection {
    reading: u8,
    route: Option<u8>,
    least: Option<u8>,
    machines: Option<u8>,
    implements: Option<u8>,
    from_kw: Option<f64>,
    to_kw: Option<f64>,
    as_it_stands: bool,
    order: u8,
    grouped: bool,
}

/// A set of practice cases of version 4: frozen.
#[derive(Serialize, Deserialize)]
struct LinkedPractice {
    seed: u32,
    kinds: u8,
    count: u8,
}

/// Every price beside that of an hour, in the order of their numbers in a link.
fn price_places(prices: &mut Prices) -> impl Iterator<Item = &mut Option<f64>> {
    let Prices {
        routes, machines, ..
    } = prices;
    let of_routes = routes.iter_mut().flat_map(
        |RoutePrices {
             kit,
             variant,
             fitting,
         }| [kit, variant, fitting],
    );
    of_routes.chain(machines)
}

/// The units in the order of their numbers in a link.
const UNITS: [UnitSystem; 2] = [UnitSystem::Metric, UnitSystem::Us];

impl State {
    /// With nothing else chosen yet.
    pub fn of(machine: String, implement: String) -> Self {
        Self {
            view: View::Pair,
            machine,
            implement,
            route: RouteId::MachineHydraulics,
            settings: Settings::default(),
            over: Control::OwnRelief,
            units: UnitSystem::Metric,
            beside: None,
            wished: Wish::Enough,
            weights: EVEN,
            prices: Prices::default(),
            sheet: Sheet::default(),
            selection: Selection::default(),
            practice: None,
        }
    }

    /// The link's fragment, without the number sign.
    pub fn to_link(&self) -> String {
        let Settings {
            engine_speed,
            own,
            pack,
            oil,
            outlet,
            economy,
            grade,
            altitude,
            air,
            ground_speed,
            slope,
            ground,
            depth,
            density,
            job,
            engine_power,
        } = self.settings;
        let first = LinkV1 {
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
            over: number(Control::ALL, self.over),
            units: number(&UNITS, self.units),
        };
        let link = LinkV2 {
            first,
            grade: grade.map(|grade| number(Grade::ALL, grade)),
            altitude_m: altitude.map(Length::to_metres),
            air_c: air.map(Temperature::to_celsius),
            ground_km_h: ground_speed.map(Velocity::to_kilometres_per_hour),
            slope,
            ground: ground.map(|ground| number(Ground::ALL, ground)),
            depth_m: depth.map(Length::to_metres),
            density_kg_m3: density.map(Density::to_kilograms_per_cubic_metre),
            job: job.map(|job| (number(Measure::ALL, job.measure()), job.to_si())),
            economy,
        };
        let mut prices = self.prices.clone();
        let priced = (0..).zip(price_places(&mut prices));
        let link = LinkV3 {
            second: link,
            engine_kw: engine_power.map(Power::to_kilowatts),
            beside: self.beside.clone(),
            wished: number(&Wish::ALL, self.wished),
            weights: self.weights.map(|weight| number(Weight::ALL, weight)),
            currency: self.prices.currency.clone(),
            hour: self.prices.hour,
            prices: priced
                .filter_map(|(place, price)| Some((place, (*price)?)))
                .collect(),
            sheet: write_sheet(&self.sheet),
        };
        let link = LinkV4 {
            third: link,
            view: number(View::ALL, self.view),
            selection: write_selection(&self.selection),
            practice: self.practice.map(|set| LinkedPractice {
                seed: set.seed,
                kinds: set.kinds.bits(),
                count: set.count,
            }),
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
            Some((1, fields)) => whole(fields).and_then(read_v1).ok_or(damaged),
            Some((2, fields)) => whole(fields).and_then(read_v2).ok_or(damaged),
            Some((3, fields)) => whole(fields).and_then(read_v3).ok_or(damaged),
            Some((&VERSION, fields)) => whole(fields).and_then(read_v4).ok_or(damaged),
            Some((0, _)) | None => Err(damaged),
            Some((&newer, _)) => Err(LinkFault::Newer(newer)),
        }
    }
}

/// A link's fields, where nothing is left over behind them.
fn whole<'a, T: Deserialize<'a>>(fields: &'a [u8]) -> Option<T> {
    let (link, rest) = postcard::take_from_bytes::<T>(fields).ok()?;
    rest.is_empty().then_some(link)
}

/// What a number in a link stands for: nothing where it isn't there, and nothing known where the
/// list doesn't have it.
fn listed<T: Copy>(list: &[T], number: Option<u8>) -> Option<Option<T>> {
    match number {
        None => Some(None),
        Some(number) => list.get(usize::from(number)).map(|item| Some(*item)),
    }
}

fn read_v4(link: LinkV4) -> Option<State> {
    Some(State {
        view: *View::ALL.get(usize::from(link.view))?,
        selection: match link.selection {
            None => Selection::default(),
            Some(selection) => read_selection(&selection)?,
        },
        practice: match link.practice {
            None => None,
            Some(practice) => Some(read_practice(&practice)?),
        },
        ..read_v3(link.third)?
    })
}

/// A selection that leaves all as it comes takes no room.
fn write_selection(selection: &Selection) -> Option<LinkedSelection> {
    let Selection {
        reading,
        route,
        least,
        machines,
        implements,
        from,
        to,
        as_it_stands,
        order,
        grouped,
    } = *selection;
    (*selection != Selection::default()).then(|| LinkedSelection {
        reading: number(Reading::ALL, reading),
        route: route.map(|route| number(RouteId::ALL, route)),
        least: least.map(|least| number(Standing::ALL, least)),
        machines: machines.map(|kind| number(MachineKind::ALL, kind)),
        implements: implements.map(|kind| number(ImplementKind::ALL, kind)),
        from_kw: from.map(Power::to_kilowatts),
        to_kw: to.map(Power::to_kilowatts),
        as_it_stands,
        order: number(Order::ALL, order),
        grouped,
    })
}

fn read_selection(link: &LinkedSelection) -> Option<Selection> {
    Some(Selection {
        reading: *Reading::ALL.get(usize::from(link.reading))?,
        route: listed(RouteId::ALL, link.route)?,
        least: listed(Standing::ALL, link.least)?,
        machines: listed(MachineKind::ALL, link.machines)?,
        implements: listed(ImplementKind::ALL, link.implements)?,
        from: link.from_kw.map(Power::kilowatts),
        to: link.to_kw.map(Power::kilowatts),
        as_it_stands: link.as_it_stands,
        order: *Order::ALL.get(usize::from(link.order))?,
        grouped: link.grouped,
    })
}

fn read_practice(link: &LinkedPractice) -> Option<Set> {
    let kinds = Kinds::from_bits(link.kinds).filter(|kinds| *kinds != Kinds::NONE)?;
    let (least, most) = CASES;
    (least..=most).contains(&link.count).then_some(Set {
        seed: link.seed,
        kinds,
        count: link.count,
    })
}

fn read_v3(link: LinkV3) -> Option<State> {
    let state = read_v2(link.second)?;
    let listed_weight = |number: u8| Weight::ALL.get(usize::from(number)).copied();
    let mut weights = EVEN;
    for (weight, number) in weights.iter_mut().zip(link.weights) {
        *weight = listed_weight(number)?;
    }
    let mut prices = Prices {
        currency: link.currency.filter(|code| is_currency(code)),
        hour: link.hour.filter(|price| is_price(*price)),
        ..Prices::default()
    };
    for (place, price) in link.prices {
        *price_places(&mut prices).nth(place.into())? = Some(price).filter(|it| is_price(*it));
    }
    Some(State {
        settings: Settings {
            engine_power: link.engine_kw.map(Power::kilowatts),
            ..state.settings
        },
        sheet: match link.sheet {
            None => Sheet::default(),
            Some(sheet) => read_sheet(&sheet)?,
        },
        beside: link.beside,
        wished: *Wish::ALL.get(usize::from(link.wished))?,
        weights,
        prices,
        ..state
    })
}

/// A sheet that says nothing takes no room.
fn write_sheet(sheet: &Sheet) -> Option<LinkedSheet> {
    (*sheet != Sheet::default()).then(|| LinkedSheet {
        l_min: sheet.flow.map(Flow::to_litres_per_minute),
        bar: sheet.pressure.map(Pressure::to_bar),
        hydraulic_kw: sheet.hydraulic.map(Power::to_kilowatts),
        taken: sheet.taken.map(|taken| number(Taken::ALL, taken)),
        engine_rpm: sheet.engine_speed.map(AngularSpeed::to_rpm),
        engine_kw: sheet.engine.map(Power::to_kilowatts),
        rating: sheet.rating.map(|rating| number(Rating::ALL, rating)),
        pto_kw: sheet.pto.map(Power::to_kilowatts),
    })
}

fn read_sheet(link: &LinkedSheet) -> Option<Sheet> {
    Some(Sheet {
        flow: link.l_min.map(Flow::litres_per_minute),
        pressure: link.bar.map(Pressure::bar),
        hydraulic: link.hydraulic_kw.map(Power::kilowatts),
        taken: listed(Taken::ALL, link.taken)?,
        engine_speed: link.engine_rpm.map(AngularSpeed::rpm),
        engine: link.engine_kw.map(Power::kilowatts),
        rating: listed(Rating::ALL, link.rating)?,
        pto: link.pto_kw.map(Power::kilowatts),
    })
}

fn read_v2(link: LinkV2) -> Option<State> {
    let mut state = read_v1(link.first)?;
    state.settings = Settings {
        economy: link.economy,
        grade: listed(Grade::ALL, link.grade)?,
        altitude: link.altitude_m.map(Length::metres),
        air: link.air_c.map(Temperature::celsius),
        ground_speed: link.ground_km_h.map(Velocity::kilometres_per_hour),
        slope: link.slope,
        ground: listed(Ground::ALL, link.ground)?,
        depth: link.depth_m.map(Length::metres),
        density: link.density_kg_m3.map(Density::kilograms_per_cubic_metre),
        job: match link.job {
            None => None,
            Some((measure, si)) => {
                let measure = *Measure::ALL.get(usize::from(measure))?;
                Some(Amount::of(measure, si))
            }
        },
        ..state.settings
    };
    Some(state)
}

fn read_v1(link: LinkV1) -> Option<State> {
    let outlet = listed(Outlet::ALL, link.outlet)?;
    Some(State {
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
            ..Settings::default()
        },
        over: *Control::ALL.get(usize::from(link.over))?,
        units: *UNITS.get(usize::from(link.units))?,
        ..State::of(link.machine, link.implement)
    })
}

/// A value's place in a list that has it.
fn number<T: PartialEq>(list: &[T], value: T) -> u8 {
    let place = list.iter().position(|item| *item == value);
    place
        .and_then(|place| u8::try_from(place).ok())
        .unwrap_or(0)
}
