//! The cardan (Hooke) joint: uneven speed, friction, and how far it may bend.
//!
//! Angles are in radians.

use crate::quantity::AngularSpeed;
use crate::source::Source;
use crate::spread::Spread;
use core::f64::consts::PI;
use libm::{acos, cos, sin, sqrt};

/// Slowest and fastest speed of the driven shaft within a turn, the driver's speed being steady.
///
/// Equation: ω₂/ω₁ = cos β/(1 − sin²β·cos²θ), lowest cos β, highest 1/cos β.
/// Units: speed as given, angle in radians. Valid range: |β| below π/2; the caller keeps to it.
/// Source: general kinematics; worked example in Khurmi & Gupta, *Theory of Machines*, 9.7.
pub fn speed_extremes(speed: AngularSpeed, angle: f64) -> (AngularSpeed, AngularSpeed) {
    // ω₂,min = ω₁·cos β, ω₂,max = ω₁/cos β
    (speed * cos(angle), speed / cos(angle))
}

/// Speed ratio of one joint at one instant.
///
/// Equation: ω₂/ω₁ = cos β/(1 − sin²β·cos²θ), θ from where the driven shaft is fastest.
/// Units: ratio. Valid range: |β| below π/2. Source: general kinematics.
pub fn speed_ratio_at(angle: f64, turned: f64) -> f64 {
    let across = sin(angle) * cos(turned);
    // ω₂/ω₁ = cos β/(1 − sin²β·cos²θ)
    cos(angle) / (1.0 - across * across)
}

/// Fastest less slowest speed of the driven shaft, over that of the driver.
///
/// Equation: q = 1/cos β − cos β. Units: ratio. Valid range: |β| below π/2.
/// Source: general kinematics.
pub fn total_fluctuation(angle: f64) -> f64 {
    // q = 1/cos β − cos β
    1.0 / cos(angle) - cos(angle)
}

/// Angle at which one joint has a total fluctuation.
///
/// Equation: cos β = (√(q² + 4) − q)/2. Units: radians. Valid range: q from 0.
/// Source: [`total_fluctuation`] solved for β; worked example in Khurmi & Gupta, 9.4.
pub fn angle_for_fluctuation(fluctuation: f64) -> f64 {
    let q = fluctuation;
    // cos β = (√(q² + 4) − q)/2, written without a difference
    acos(2.0 / (sqrt(q * q + 4.0) + q))
}

/// Total fluctuation that two joints in one plane leave behind both, over the driver's speed.
///
/// Equation: q = √(s·(s + 4)), s = (cos²δ·(cos β₁ − cos β₂)² + sin²δ·(1 − cos β₁·cos β₂)²)
/// /(cos β₁·cos β₂); δ is how far the shaft between is twisted from yokes in phase.
/// Units: ratio, radians. Valid range: |β| below π/2, any δ.
/// Source: own derivation. Each joint maps the tangent of the angle turned by a factor, so both
/// and the twist between them are one 2×2 matrix, and the speed ratio's extremes are the ratio of
/// its singular values and the inverse. The tests compose [`speed_ratio_at`] instead.
pub fn two_joints(angle_1: f64, angle_2: f64, phase: f64) -> f64 {
    let (c_1, c_2) = (cos(angle_1), cos(angle_2));
    let in_phase = cos(phase) * (c_1 - c_2);
    let crossed = sin(phase) * (1.0 - c_1 * c_2);
    // s = (cos²δ·(cos β₁ − cos β₂)² + sin²δ·(1 − cos β₁·cos β₂)²)/(cos β₁·cos β₂)
    let s = (in_phase * in_phase + crossed * crossed) / (c_1 * c_2);
    // q = √(s·(s + 4))
    sqrt(s * (s + 4.0))
}

/// Efficiency of a straight joint: from memory, the upper end of 98 to 99.5 %.
pub const STRAIGHT: f64 = 0.995;

/// Bearing friction coefficient times pin radius over arm radius: this project's judgement, the
/// high value so that 15° comes to the lower end of 98 to 99.5 %.
pub const FRICTION: Spread<f64> = Spread::new(0.01, 0.03, 0.045, Source::Judgement);

/// Efficiency of a joint by its angle.
///
/// Equation: η = η₀ − (4/π)·μ·(r/R)·|β|. Units: ratio, radians; `friction` is μ·r/R.
/// Valid range: |β| to π/4.
/// Source: own derivation. Four pins under T/2R each swing through 4·β a turn against the moment
/// μ·r·T/2R, out of the turn's work 2π·T. η₀ is what remains when straight: from memory.
pub fn efficiency(angle: f64, friction: f64) -> f64 {
    // η = η₀ − (4/π)·μ·(r/R)·|β|
    STRAIGHT - 4.0 / PI * friction * angle.abs()
}

/// How long a joint may run at an angle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AngleAdvice {
    /// All day.
    Fine,
    /// The most for steady work.
    Steady,
    /// For moments, such as lifting or turning.
    Brief,
    /// Only a wide-angle joint, for moments.
    NeedsWideAngle,
    /// No joint does it.
    Never,
}

impl AngleAdvice {
    /// All, from the smallest angle.
    pub const ALL: [Self; 5] = [
        Self::Fine,
        Self::Steady,
        Self::Brief,
        Self::NeedsWideAngle,
        Self::Never,
    ];

    /// The largest angle of an advice, where there is one.
    ///
    /// Source: 15°, a driveline maker's page; 25° continuous, 45° brief and 80° brief for
    /// wide-angle joints, a forum's copy of a manual.
    pub fn up_to(self) -> Option<f64> {
        match self {
            Self::Fine => Some(15.0_f64.to_radians()),
            Self::Steady => Some(25.0_f64.to_radians()),
            Self::Brief => Some(45.0_f64.to_radians()),
            Self::NeedsWideAngle => Some(80.0_f64.to_radians()),
            Self::Never => None,
        }
    }

    /// The advice for an angle of either sign; what isn't a number is never allowed.
    pub fn of(angle: f64) -> Self {
        Self::ALL
            .into_iter()
            .find(|advice| advice.up_to().is_some_and(|limit| angle.abs() <= limit))
            .unwrap_or(Self::Never)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::{FRAC_PI_2, TAU};
    use libm::atan2;

    const STEPS: u32 = 3600;

    fn turn() -> impl Iterator<Item = f64> {
        (0..STEPS).map(|step| TAU * f64::from(step) / f64::from(STEPS))
    }

    fn degrees() -> impl Iterator<Item = f64> {
        [0.0, 5.0, 12.5, 20.0, 33.0, 45.0]
            .into_iter()
            .map(f64::to_radians)
    }

    #[test]
    fn a_joint_turns_as_far_as_its_driver() {
        for angle in degrees() {
            let sum: f64 = turn().map(|turned| speed_ratio_at(angle, turned)).sum();
            assert!((sum / f64::from(STEPS) - 1.0).abs() < 1e-12, "{angle}");
        }
    }

    #[test]
    fn the_extremes_are_those_of_a_turn() {
        for angle in degrees() {
            let (slowest, fastest) = speed_extremes(AngularSpeed::radians_per_second(1.0), angle);
            assert!((speed_ratio_at(angle, 0.0) - fastest.to_si()).abs() < 1e-14);
            assert!((speed_ratio_at(angle, FRAC_PI_2) - slowest.to_si()).abs() < 1e-15);
            for turned in turn() {
                let ratio = speed_ratio_at(angle, turned);
                assert!(ratio <= fastest.to_si() + 1e-14 && ratio >= slowest.to_si() - 1e-14);
            }
        }
    }

    #[test]
    fn equal_joints_in_phase_leave_nothing() {
        for angle in degrees() {
            assert_eq!(two_joints(angle, angle, 0.0), 0.0);
            assert_eq!(two_joints(angle, -angle, 0.0), 0.0);
        }
    }

    /// The turn of the shaft between follows tan φ = tan θ/cos β₁; in phase, the second joint's
    /// driving yoke is a quarter turn from where its own driven shaft is fastest.
    #[test]
    fn two_joints_are_one_after_the_other() {
        for angle_1 in degrees() {
            for angle_2 in degrees() {
                for phase in [0.0, 0.3, 1.0, FRAC_PI_2, 2.5, -0.7] {
                    let ratio = |turned| {
                        let between = atan2(sin(turned), cos(turned) * cos(angle_1));
                        speed_ratio_at(angle_1, turned)
                            * speed_ratio_at(angle_2, between + FRAC_PI_2 + phase)
                    };
                    let fastest = turn().map(ratio).fold(f64::MIN, f64::max);
                    let slowest = turn().map(ratio).fold(f64::MAX, f64::min);
                    let exact = two_joints(angle_1, angle_2, phase);
                    let found = fastest - slowest;
                    assert!((found - exact).abs() < 1e-5, "{angle_1} {angle_2} {phase}");
                }
            }
        }
    }

    #[test]
    fn an_angle_gets_its_advice() {
        use AngleAdvice::{Brief, Fine, NeedsWideAngle, Never, Steady};
        for (degrees, advice) in [
            (0.0, Fine),
            (15.0, Fine),
            (-15.0, Fine),
            (15.1, Steady),
            (25.0, Steady),
            (-25.1, Brief),
            (45.0, Brief),
            (45.1, NeedsWideAngle),
            (80.0, NeedsWideAngle),
            (80.1, Never),
            (f64::NAN, Never),
        ] {
            assert_eq!(AngleAdvice::of(degrees.to_radians()), advice, "{degrees}°");
        }
    }
}
