//! What two axles carry of a machine that stands still on level ground with something hung on it.

use crate::quantity::{Length, Mass};

/// Least part of the whole weight that the axle must keep on the other end than the load's: of the
/// rear axle by a loader maker's page, of the front axle, which steers, from memory.
pub const LEAST_SHARE: f64 = 0.2;

/// The end at which something hangs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// Ahead of the front axle.
    Front,
    /// Behind the rear axle.
    Rear,
}

impl End {
    /// The other end.
    pub fn other(self) -> Self {
        match self {
            Self::Front => Self::Rear,
            Self::Rear => Self::Front,
        }
    }
}

/// What each axle carries, as a mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxleLoads {
    /// The front axle.
    pub front: Mass,
    /// The rear axle.
    pub rear: Mass,
}

impl AxleLoads {
    /// What an axle carries; less than nothing where it would lift off.
    pub fn of(self, end: End) -> Mass {
        match end {
            End::Front => self.front,
            End::Rear => self.rear,
        }
    }

    /// With a mass hung beyond the axle of one end.
    ///
    /// Equation: W_n = W_n0 + m·(b + x)/b, W_o = W_o0 − m·x/b; n near, o other axle, b wheelbase,
    /// x from the near axle outwards. Units: kg, m. Valid range: b above zero.
    /// Source: equilibrium of moments about either axle.
    pub fn with(self, mass: Mass, end: End, out: Length, wheelbase: Length) -> Self {
        // W_n = W_n0 + m·(b + x)/b
        let near = mass * ((wheelbase + out) / wheelbase);
        // W_o = W_o0 − m·x/b
        let off = mass * (out / wheelbase);
        match end {
            End::Front => Self {
                front: self.front + near,
                rear: self.rear - off,
            },
            End::Rear => Self {
                front: self.front - off,
                rear: self.rear + near,
            },
        }
    }

    /// Part of the whole weight on an axle.
    ///
    /// Equation: s = W/(W_f + W_r). Units: ratio. Valid range: the sum above zero.
    /// Source: definition; to be held against [`LEAST_SHARE`].
    pub fn share(self, end: End) -> f64 {
        // s = W/(W_f + W_r)
        self.of(end) / (self.front + self.rear)
    }

    /// The ballast, hung beyond the axle of one end, with which that axle keeps a share; nothing
    /// where it does without.
    ///
    /// Equation: m = (s·(W_f + W_r) − W)/((b + x)/b − s). Units: kg, m. Valid range: s below 1,
    /// x from 0. Source: [`Self::with`] and [`Self::share`] solved for m.
    pub fn ballast(self, share: f64, end: End, out: Length, wheelbase: Length) -> Mass {
        let short = (self.front + self.rear) * share - self.of(end);
        // m = (s·(W_f + W_r) − W)/((b + x)/b − s)
        (short / ((wheelbase + out) / wheelbase - share)).max(Mass::ZERO)
    }
}
