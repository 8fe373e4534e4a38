//! A route's delivered power over one control: the points of a curve.

use crate::compare::{Outcome, evaluate};
use crate::control::{Control, Range};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::Power;
use crate::route::RouteId;
use crate::settings::Settings;
use crate::spread::Spread;
use crate::units::Quantity;
use crate::work::need_for;

/// One point of a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Where the control stands.
    pub at: Quantity,
    /// What arrives there.
    pub delivered: Spread<Power>,
    /// What the job takes there.
    pub need: Power,
}

/// Evaluates a route at evenly spaced values of a control. Points at which the settings are
/// refused, or the route can't be hooked up, are left out.
pub fn sweep(
    (machine, implement, kits): (&Machine, &Implement, &[Kit]),
    route: RouteId,
    settings: &Settings,
    (control, range): (Control, Range),
    points: u16,
) -> Vec<Point> {
    (0..points)
        .filter_map(|place| {
            let part = f64::from(place) / f64::from(points.max(2) - 1);
            let at = range.min.between(range.max, part)?;
            let settings = control.turned(*settings, Some(at));
            settings.check(machine).ok()?;
            match evaluate(route, machine, implement, kits, &settings) {
                Outcome::NoFit(_) => None,
                Outcome::Runs(run) => Some(Point {
                    at,
                    delivered: run.delivered,
                    need: need_for(implement, &settings).likely,
                }),
            }
        })
        .collect()
}
