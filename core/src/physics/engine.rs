//! The engine's power: gross to net, and over its speed.

use crate::quantity::{AngularSpeed, Power};

/// Net power at a speed, from the net power at rated speed.
///
/// Equation: P = P_r·(0.87·x + 1.13·x² − x³), x = n/n_r (Leiderman's form with the coefficients
/// of a direct-injection diesel).
/// Units: SI. Valid range: x from 0.3 to 1; the caller keeps to it.
/// Source: from memory. It is a default shape, used where no curve is known.
pub fn net_power_at(rated: Power, rated_speed: AngularSpeed, speed: AngularSpeed) -> Power {
    // x = n/n_r
    let x = speed / rated_speed;
    // P = P_r·(0.87·x + 1.13·x² − x³)
    rated * (x * (0.87 + x * (1.13 - x)))
}

/// Net power from gross power.
///
/// Equation: P_net = k·P_gross, k being what fan, air cleaner and the like leave of it.
/// Units: SI; ratio. Valid range: k above 0 to 1. Source: definition of the two ratings.
pub fn net_from_gross(gross: Power, factor: f64) -> Power {
    // P_net = k·P_gross
    gross * factor
}

/// Power over speed as measured points.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    points: Vec<(AngularSpeed, Power)>,
}

/// What is wrong with the points of a curve. A place counts from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CurveFault {
    /// Fewer than two points.
    TooFew,
    /// Speed or power at this place isn't a finite number above zero.
    NotPositive(usize),
    /// The speed at this place isn't above the one before it.
    NotRising(usize),
}

impl Curve {
    /// A curve through points in order of their speeds.
    ///
    /// Equation: none, the points stay as they are. Units: SI. Valid range: two points or more, all
    /// finite and above zero, each faster than the one before. Source: none needed.
    ///
    /// # Errors
    /// Everything that is wrong with the points.
    pub fn new(points: Vec<(AngularSpeed, Power)>) -> Result<Self, Vec<CurveFault>> {
        let is_positive = |value: f64| value.is_finite() && value > 0.0;
        let too_few = (points.len() < 2).then_some(CurveFault::TooFew);
        let not_positive = points
            .iter()
            .enumerate()
            .filter(|(_, (speed, power))| {
                !(is_positive(speed.to_si()) && is_positive(power.to_si()))
            })
            .map(|(place, _)| CurveFault::NotPositive(place));
        let not_rising = points
            .iter()
            .zip(points.iter().skip(1))
            .enumerate()
            .filter(|(_, ((before, _), (after, _)))| after <= before)
            .map(|(place, _)| CurveFault::NotRising(place + 1));
        let faults: Vec<_> = too_few
            .into_iter()
            .chain(not_positive)
            .chain(not_rising)
            .collect();
        if faults.is_empty() {
            Ok(Self { points })
        } else {
            Err(faults)
        }
    }

    /// Power at a speed; `None` outside the points.
    ///
    /// Equation: P = P₁ + (P₂ − P₁)·(n − n₁)/(n₂ − n₁) between neighbours.
    /// Units: SI. Valid range: from the first point's speed to the last one's.
    /// Source: straight lines between points are this project's judgement.
    pub fn power_at(&self, speed: AngularSpeed) -> Option<Power> {
        let mut pairs = self.points.iter().zip(self.points.iter().skip(1));
        pairs
            .find(|((from, _), (to, _))| (*from..=*to).contains(&speed))
            .map(|((n_1, p_1), (n_2, p_2))| {
                // P = P₁ + (P₂ − P₁)·(n − n₁)/(n₂ − n₁)
                *p_1 + (*p_2 - *p_1) * ((speed - *n_1) / (*n_2 - *n_1))
            })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(list: &[(f64, f64)]) -> Vec<(AngularSpeed, Power)> {
        let point = |(rpm, kw): &(f64, f64)| (AngularSpeed::rpm(*rpm), Power::kilowatts(*kw));
        list.iter().map(point).collect()
    }

    #[test]
    fn nothing_is_known_outside_the_points() {
        let curve = Curve::new(points(&[(1000.0, 20.0), (2000.0, 40.0)])).unwrap();
        let known = |rpm| curve.power_at(AngularSpeed::rpm(rpm)).is_some();
        assert!(known(1000.0) && known(1500.0) && known(2000.0));
        assert!(!known(999.9) && !known(2000.1) && !known(f64::NAN));
    }

    #[test]
    fn anything_above_zero_is_a_point() {
        assert!(Curve::new(points(&[(1e-3, 1e-9), (1e9, 1e9)])).is_ok());
    }

    #[test]
    fn all_faults_of_a_curve_are_found() {
        use CurveFault::{NotPositive, NotRising, TooFew};
        for (list, faults) in [
            (&[][..], vec![TooFew]),
            (&[(0.0, 1.0)], vec![TooFew, NotPositive(0)]),
            (&[(1000.0, 20.0), (1000.0, 30.0)], vec![NotRising(1)]),
            (
                &[(1000.0, f64::NAN), (900.0, -1.0), (f64::INFINITY, 9.0)],
                vec![NotPositive(0), NotPositive(1), NotPositive(2), NotRising(1)],
            ),
        ] {
            assert_eq!(Curve::new(points(list)), Err(faults));
        }
    }
}
