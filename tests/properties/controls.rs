//! What a control offers is taken.

use crate::every::{loaded, pairs};
use crate::random::{settings, yard};
use farend_core::control::Control;
use farend_core::settings::Settings;
use farend_core::units::{Quantity, UnitSystem};
use proptest::prelude::*;

fn number(quantity: Quantity) -> f64 {
    quantity.shown_in(UnitSystem::Metric).0
}

proptest! {
    #![proptest_config(crate::cases(200))]

    /// Both ends of its range, and what stands there now, within the two ends or not.
    #[test]
    fn both_ends_of_every_range_are_taken(entry in yard(), turned in settings()) {
        let yard = loaded(&entry);
        for (machine, implement) in pairs(&yard) {
            let settings = turned.on(machine, implement);
            for kit in yard.kits.iter().map(Some).chain([None]) {
                for control in Control::ALL {
                    let Some(range) = control.range(machine, implement, kit, &settings) else {
                        continue;
                    };
                    let [min, own, max] = [range.min, range.own, range.max].map(number);
                    prop_assert!(min <= max, "{control:?} {range:?}");
                    // A pack's own pump may give more than can be set.
                    prop_assert!(
                        *control == Control::PackFlow || (min <= own && own <= max),
                        "{control:?} {range:?}"
                    );
                    for end in [range.min, range.max] {
                        let at_end = control.turned(settings, Some(end));
                        prop_assert_eq!(at_end.check(machine), Ok(()), "{:?}", control);
                        let there = control.range(machine, implement, kit, &at_end);
                        prop_assert_eq!(there.map(|it| it.now), Some(end), "{:?}", control);
                        let back = control.turned(at_end, None);
                        let own = control.range(machine, implement, kit, &back);
                        prop_assert_eq!(own.map(|it| it.now), Some(range.own), "{:?}", control);
                    }
                }
            }
        }
    }

    /// The two speeds at which an engine's curve ends, through a link's rpm and a last digit off.
    #[test]
    fn an_engine_at_its_limits_has_the_power_of_its_curve(entry in yard()) {
        for machine in &loaded(&entry).machines {
            for limit in [machine.engine.lowest, machine.engine.rated] {
                for off in [-1e-12, 0.0, 1e-12] {
                    let settings = Settings {
                        engine_speed: Some(limit * (1.0 + off)),
                        ..Settings::default()
                    };
                    prop_assert_eq!(settings.check(machine), Ok(()));
                    prop_assert_eq!(settings.engine_speed_for(machine), limit);
                }
            }
        }
    }
}
