//! The friction factor between its published points.

use crate::random::log;
use farend_core::physics::line::{LAMINAR_BELOW, TURBULENT_ABOVE, friction_factor};
use proptest::prelude::*;

proptest! {
    #![proptest_config(crate::cases(2_000))]

    /// No formula holds in the transition: only that it leads from the one end to the other.
    #[test]
    fn the_transition_stays_between_its_ends(
        reynolds in LAMINAR_BELOW..TURBULENT_ABOVE,
        roughness in 0.0..0.05,
    ) {
        let ends = [LAMINAR_BELOW, TURBULENT_ABOVE].map(|end| friction_factor(end, roughness));
        let factor = friction_factor(reynolds, roughness);
        prop_assert!(factor >= ends[0].min(ends[1]) && factor <= ends[0].max(ends[1]));
    }

    #[test]
    fn it_has_no_jump(reynolds in log(1.0, 1e8), roughness in 0.0..0.05) {
        let factor = friction_factor(reynolds, roughness);
        let beside = friction_factor(reynolds * (1.0 + 1e-9), roughness);
        prop_assert!(factor.is_finite() && factor > 0.0);
        prop_assert!((beside / factor - 1.0).abs() < 1e-8, "{factor} and {beside}");
    }

    #[test]
    fn a_rougher_wall_never_takes_less(reynolds in log(1.0, 1e8), roughness in 0.0..0.05) {
        let smoother = friction_factor(reynolds, roughness / 2.0);
        prop_assert!(friction_factor(reynolds, roughness) >= smoother);
    }
}

#[test]
fn it_has_no_jump_where_the_formulas_meet() {
    for end in [LAMINAR_BELOW, TURBULENT_ABOVE] {
        let [below, above] =
            [1.0 - 1e-12, 1.0 + 1e-12].map(|part| friction_factor(end * part, 1e-3));
        assert!(
            (above / below - 1.0).abs() < 1e-9,
            "{below} and {above} at {end}"
        );
    }
}
