//! Random yards and settings that keep to the rules of yard files.
//!
//! Strategies are boxed: nested by value they overflow a test's stack.

pub mod hookup;
mod implement;
mod kit;
mod machine;
mod oil;
mod settings;

pub use implement::implement;
pub use kit::kit;
pub use machine::{skid_steer, tractor};
pub use oil::{oil, reservoir};
pub use settings::{Turned, settings};

use farend_core::route::RouteId;
use farend_core::source::Source;
use farend_core::yard::entry::{ImplementEntry, KitEntry, MachineEntry, UncertainEntry, YardEntry};
use farend_core::yard::rules::FORMAT_VERSION;
use libm::pow;
use proptest::option;
use proptest::prelude::*;

/// A yard in which each route has a kit. Its tractor stands first, its skid steer second.
pub fn yard() -> BoxedStrategy<YardEntry> {
    let kits: Vec<_> = RouteId::ALL
        .iter()
        .enumerate()
        .map(|(place, route)| kit(format!("kit-{place}"), vec![*route]))
        .collect();
    let routes = proptest::sample::subsequence(RouteId::ALL, 1..=RouteId::ALL.len());
    let further = routes.prop_flat_map(|routes| kit("further".to_owned(), routes));
    (
        tractor("tractor"),
        skid_steer("skid-steer"),
        [implement("one"), implement("two")],
        kits,
        further,
        option::of(any::<bool>()),
        option::of(0.0..500.0),
    )
        .prop_map(
            |(tractor, skid_steer, implements, mut kits, further, invented, hour_price)| {
                kits.push(further);
                let machines = vec![tractor, skid_steer];
                of(machines, implements.into(), kits, invented, hour_price)
            },
        )
        .boxed()
}

fn of(
    machines: Vec<MachineEntry>,
    implements: Vec<ImplementEntry>,
    kits: Vec<KitEntry>,
    invented: Option<bool>,
    hour_price: Option<f64>,
) -> YardEntry {
    YardEntry {
        format_version: FORMAT_VERSION,
        name: "A yard".to_owned(),
        place: invented.map(|_| "Nowhere".to_owned()),
        invented,
        dealer: invented.map(|_| "A dealer".to_owned()),
        note: hour_price.map(|_| "A note".to_owned()),
        currency: hour_price.map(|_| "EUR".to_owned()),
        hour_price,
        machines,
        implements,
        kits,
    }
}

/// What small yards are put together from, each with one of each: drawing them at random takes
/// longer than reading them.
#[derive(Clone, Debug)]
pub struct Parts {
    machines: [MachineEntry; 3],
    implements: [ImplementEntry; 3],
    kits: [KitEntry; 2],
    invented: Option<bool>,
    hour_price: Option<f64>,
}

impl Parts {
    /// With machines of a kind.
    pub fn with(machine: fn(&'static str) -> BoxedStrategy<MachineEntry>) -> BoxedStrategy<Self> {
        let kit = || {
            let routes = proptest::sample::subsequence(RouteId::ALL, 1..=RouteId::ALL.len());
            routes.prop_flat_map(|routes| kit("kit".to_owned(), routes))
        };
        (
            [machine("one"), machine("two"), machine("three")],
            [implement("one"), implement("two"), implement("three")],
            [kit(), kit()],
            option::of(any::<bool>()),
            option::of(0.0..500.0),
        )
            .prop_map(|(machines, implements, kits, invented, hour_price)| Self {
                machines,
                implements,
                kits,
                invented,
                hour_price,
            })
            .boxed()
    }

    /// Every yard.
    pub fn yards(&self) -> Vec<YardEntry> {
        let mut yards = Vec::new();
        for machine in &self.machines {
            for implement in &self.implements {
                for kit in &self.kits {
                    yards.push(of(
                        vec![machine.clone()],
                        vec![implement.clone()],
                        vec![kit.clone()],
                        self.invented,
                        self.hour_price,
                    ));
                }
            }
        }
        yards
    }
}

/// A number between two above zero, each order of size as likely as another.
pub fn log(min: f64, max: f64) -> BoxedStrategy<f64> {
    (0.0..=1.0_f64)
        .prop_map(move |part| (min * pow(max / min, part)).clamp(min, max))
        .boxed()
}

/// A known or an uncertain figure between two above zero.
pub fn uncertain(min: f64, max: f64) -> BoxedStrategy<UncertainEntry> {
    let source = option::of(proptest::sample::select(Source::ALL));
    prop_oneof![
        log(min, max).prop_map(UncertainEntry::One),
        (log(min, max), 0.7..=1.0_f64, 1.0..=1.4_f64, source).prop_map(
            move |(likely, down, up, source)| UncertainEntry::Three {
                low: (likely * down).max(min),
                likely,
                high: (likely * up).min(max),
                source,
            }
        ),
    ]
    .boxed()
}

/// An efficiency.
pub fn efficiency(min: f64) -> BoxedStrategy<UncertainEntry> {
    uncertain(min, 1.0)
}

/// A shaft speed, most often one of the usual.
pub fn shaft_rpm() -> BoxedStrategy<f64> {
    prop_oneof![
        6 => proptest::sample::select(&[540.0, 1000.0][..]),
        1 => Just(2000.0),
        1 => log(300.0, 3000.0),
    ]
    .boxed()
}
