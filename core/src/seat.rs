//! Where a route puts the implement, and what that means at work.

use crate::hookup::Seat;
use crate::implement::{Implement, ImplementKind};
use crate::kit::Kit;
use crate::quantity::Time;
use crate::route::RouteId;

/// Where a route puts the implement: where its kit says, else the route's usual place.
pub fn seat(route: RouteId, kit: &Kit, implement: &Implement) -> Seat {
    kit.seat.unwrap_or_else(|| match route {
        RouteId::RearShaft => rear(implement),
        RouteId::MidShaft | RouteId::TurnedForward => Seat::FrontFrame,
        RouteId::MachineHydraulics | RouteId::PumpPack | RouteId::SkidSteer => Seat::Loader,
    })
}

/// What the implement says, else what is usual: throwers on the rear hitch are driven backwards.
/// Common practice, no source.
fn rear(implement: &Implement) -> Seat {
    let usual = implement.kind == ImplementKind::Thrower;
    if implement.mount.backwards.unwrap_or(usual) {
        Seat::RearBackwards
    } else {
        Seat::RearForwards
    }
}

/// Whether it matters to what an implement does that wheels go over it first: snow is packed and
/// growth is flattened. Common practice, no source.
pub fn minds_wheels(kind: ImplementKind) -> bool {
    matches!(
        kind,
        ImplementKind::Thrower
            | ImplementKind::Mulcher
            | ImplementKind::Broom
            | ImplementKind::Mower
    )
}

/// Where the driver looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum View {
    /// Ahead at the work.
    Ahead,
    /// Ahead, and over the shoulder now and then.
    OverTheShoulder,
    /// Behind, for as long as the work takes.
    Behind,
}

/// What becomes of the loader.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LoaderUse {
    /// It stays on with its bucket.
    Stays,
    /// Its bucket comes off.
    WithoutBucket,
    /// It must come off.
    ComesOff,
}

impl Seat {
    /// Where the driver looks. Common practice, no source.
    pub fn view(self) -> View {
        match self {
            Self::Loader | Self::FrontFrame => View::Ahead,
            Self::RearForwards => View::OverTheShoulder,
            Self::RearBackwards => View::Behind,
        }
    }

    /// Whether the wheels go over the work before it's done, where that matters to it. Common
    /// practice, no source.
    pub fn drives_over(self, kind: ImplementKind) -> bool {
        self == Self::RearForwards && minds_wheels(kind)
    }

    /// What becomes of the loader. Common practice, no source.
    pub fn loader(self) -> LoaderUse {
        match self {
            Self::Loader => LoaderUse::WithoutBucket,
            Self::FrontFrame => LoaderUse::ComesOff,
            Self::RearBackwards | Self::RearForwards => LoaderUse::Stays,
        }
    }

    /// Time to hook up where the kit doesn't say: this project's judgement.
    pub fn usual_hookup(self) -> Time {
        Time::minutes(match self {
            Self::Loader => 5.0,
            Self::FrontFrame => 30.0,
            Self::RearBackwards | Self::RearForwards => 10.0,
        })
    }
}
