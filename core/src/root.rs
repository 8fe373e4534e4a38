//! The root of a rising function between two bounds.

/// The largest argument between 0 and 1 at which a rising function isn't above zero, to within
/// [`CLOSE`] of the whole interval. It is 0 where the function is above zero from the beginning,
/// and 1 where it never gets there.
///
/// Equation: interpolate, truncate, project (ITP): regula falsi, nudged towards the middle by
/// k₁·(b−a)² and kept within the steps that halving would need.
/// Units: none. Valid range: any function that doesn't fall; it may jump or be flat. It always
/// ends, after at most [`MOST_STEPS`] steps: halving alone needs one fewer.
/// Source: Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2021), from
/// memory.
pub fn rising_root(mut f: impl FnMut(f64) -> f64) -> f64 {
    let (mut a, mut b) = (0.0, 1.0);
    let (mut f_a, mut f_b) = (f(a), f(b));
    if f_a > 0.0 {
        return a;
    }
    if f_b <= 0.0 {
        return b;
    }
    for step in 0..MOST_STEPS {
        let width = b - a;
        if width <= 2.0 * CLOSE || f_a == 0.0 {
            break;
        }
        let middle = 0.5 * (a + b);
        // x_f = (b·f(a) − a·f(b))/(f(a) − f(b))
        let straight = (b * f_a - a * f_b) / (f_a - f_b);
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
        let f_x = f(x);
        if f_x > 0.0 {
            (b, f_b) = (x, f_x);
        } else {
            (a, f_a) = (x, f_x);
        }
    }
    a
}

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
            assert!((found - expected).abs() <= 1e-14, "{name}: {found}");
            assert!(f(found) <= 0.0, "{name}: above zero at {found}");
            assert!(steps <= MOST_STEPS + 2, "{name}: {steps} steps");
        }
    }

    #[test]
    fn a_nearly_straight_function_needs_few_steps() {
        let mut steps = 0;
        let found = rising_root(|x| {
            steps += 1;
            x + 0.05 * x * x - 0.6
        });
        assert!((found + 0.05 * found * found - 0.6).abs() < 1e-14);
        assert!(steps <= 12, "{steps} steps");
    }

    #[test]
    fn without_a_change_of_sign_it_is_the_end() {
        assert_eq!(rising_root(|x| x + 1.0), 0.0);
        assert_eq!(rising_root(|x| x - 2.0), 1.0);
    }
}
