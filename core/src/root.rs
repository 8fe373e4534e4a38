//! The root of a rising function between two bounds.

/// The largest argument between 0 and 1 at which a rising function isn't above zero, to within
/// [`CLOSE`] of the whole interval. It is 0 where the function is above zero from the beginning,
/// and 1 where it never gets there. Where it's zero on the way, any argument of these may be given.
///
/// Equation: interpolate, truncate, project (ITP): regula falsi, nudged towards the middle by
/// k₁·(b−a)² and kept within the steps that halving would need.
/// Units: none. Valid range: any function that doesn't fall; it may jump or be flat. It always
/// ends, after at most [`MOST_STEPS`] steps: halving alone needs one fewer.
/// Source: Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2021), from
/// memory.
pub fn rising_root(mut f: impl FnMut(f64) -> f64) -> f64 {
    let (at_0, at_1) = (f(0.0), f(1.0));
    if at_0 > 0.0 {
        return 0.0;
    }
    if at_1 <= 0.0 {
        return 1.0;
    }
    Bracket {
        a: 0.0,
        b: 1.0,
        at_a: at_0,
        at_b: at_1,
    }
    .root(f)
}

/// Two arguments of a rising function with a root between them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bracket {
    /// The lower, from 0.
    pub a: f64,
    /// The upper, to 1.
    pub b: f64,
    /// The function there, not above zero.
    pub at_a: f64,
    /// The function there, above zero.
    pub at_b: f64,
}

impl Bracket {
    /// The largest argument at which the function isn't above zero: see [`rising_root`].
    pub fn root(self, mut f: impl FnMut(f64) -> f64) -> f64 {
        let Self {
            mut a,
            mut b,
            mut at_a,
            mut at_b,
        } = self;
        for step in 0..MOST_STEPS {
            let width = b - a;
            if width <= 2.0 * CLOSE || at_a == 0.0 {
                break;
            }
            let middle = 0.5 * (a + b);
            // x_f = (b·f(a) − a·f(b))/(f(a) − f(b))
            let straight = (b * at_a - a * at_b) / (at_a - at_b);
            let inwards = if middle >= straight { 1.0 } else { -1.0 };
            // δ = k₁·(b−a)²
            let nudge = NUDGE * width * width;
            let nudged = if nudge <= (middle - straight).abs() {
                straight + inwards * nudge
            } else {
                middle
            };
            // r = ε·2^(n−j) − (b−a)/2
            let reach = CLOSE * libm::exp2(f64::from(MOST_STEPS - step)) - 0.5 * width;
            let x = if (nudged - middle).abs() <= reach {
                nudged
            } else {
                middle - inwards * reach
            };
            let at_x = f(x);
            if at_x > 0.0 {
                (b, at_b) = (x, at_x);
            } else {
                (a, at_a) = (x, at_x);
            }
            // What is left of a smooth function that is this near to zero is rounding.
            if at_a >= -ROUNDING {
                break;
            }
        }
        a
    }
}

/// A value so close below zero counts as zero.
const ROUNDING: f64 = 1e-14;
/// How close a root is found, as a part of the interval: 2⁻⁵⁰.
pub const CLOSE: f64 = 8.881_784_197_001_252e-16;
/// Steps after which halving has come so close, and one more.
pub const MOST_STEPS: u32 = 50;
/// k₁ of the source, for an interval of 1.
const NUDGE: f64 = 0.01;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_finds_smooth_kinked_flat_and_jumping_roots() {
        type Function = fn(f64) -> f64;
        let cases: [(&str, Function, f64); 6] = [
            ("line", |x| x - 0.3, 0.3),
            ("cube", |x| x * x * x - 0.027, 0.3),
            ("kink", |x| (x - 0.7).max(20.0 * x - 18.0), 0.7),
            (
                "flat, then steep",
                |x| if x < 0.9 { -1.0 } else { x - 0.95 },
                0.95,
            ),
            ("jump", |x| if x < 0.123 { -1e-9 } else { 1e9 }, 0.123),
            ("steep", |x| libm::expm1(700.0 * (x - 0.4)), 0.4),
        ];
        for (name, f, expected) in cases {
            let mut steps = 0;
            let found = rising_root(|x| {
                steps += 1;
                f(x)
            });
            assert!((found - expected).abs() <= 1e-13, "{name}: {found}");
            assert!(f(found) <= 0.0, "{name}: above zero at {found}");
            assert!(steps <= MOST_STEPS + 2, "{name}: {steps} steps");
        }
    }

    /// Halving takes 51: each choice of the next step earns its keep by one of these.
    #[test]
    fn a_smooth_function_needs_few_steps() {
        type Function = fn(f64) -> f64;
        let cases: [(&str, Function, u32); 7] = [
            ("line", |x| x - 0.3, 8),
            ("line to the middle", |x| x - 0.5, 3),
            ("nearly straight", |x| x + 0.05 * x * x - 0.6, 8),
            ("falling behind", |x| libm::sqrt(x) - 0.8, 11),
            ("logarithm", |x| libm::log1p(x) - 0.3, 12),
            ("turning", |x| libm::atan(30.0 * (x - 0.35)), 11),
            ("zero from the beginning", |x| (x - 0.4).max(0.0), 2),
        ];
        for (name, f, most) in cases {
            let mut steps = 0;
            let found = rising_root(|x| {
                steps += 1;
                f(x)
            });
            assert!(f(found).abs() < 1e-14, "{name}: {found}");
            assert!(steps <= most, "{name}: {steps} steps");
        }
    }

    #[test]
    fn without_a_change_of_sign_it_is_the_end() {
        assert_eq!(rising_root(|x| x + 1.0), 0.0);
        assert_eq!(rising_root(|x| x - 2.0), 1.0);
    }
}
