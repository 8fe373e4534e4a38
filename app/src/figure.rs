//! Numbers of a yard file in the reader's units. The file stays metric.

use crate::number;
use farend_core::defaults_work::joules_per_unit;
use farend_core::measure::Measure;
use farend_core::units::{Quantity, UnitSystem};

/// What a number of a yard file counts.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Counts {
    /// The file's unit.
    Unit(&'static str),
    /// Kilowatt hours for a measure's usual amount.
    Energy(Measure),
    /// Money, in the yard's currency.
    Money,
}

impl Counts {
    fn quantity(self, number: f64) -> Option<Quantity> {
        match self {
            Self::Unit(unit) => Quantity::of_file(number, unit),
            Self::Energy(measure) => Some(Quantity::WorkEnergy(
                measure,
                joules_per_unit(measure, number),
            )),
            Self::Money => None,
        }
    }

    /// A number of the file as the reader sees it.
    pub fn shown(self, number: f64, units: UnitSystem) -> f64 {
        match self.quantity(number) {
            Some(quantity) if units == UnitSystem::Us => quantity.shown_in(units).0,
            // The file's own number, without rounding there and back.
            _ => number,
        }
    }

    /// The unit that the reader sees; that of money is the yard's currency.
    pub fn symbol(self, units: UnitSystem) -> &'static str {
        number::unit_word(match (self, self.quantity(1.0)) {
            (_, Some(quantity)) => quantity.shown_in(units).1,
            (Self::Unit(unit), None) => unit,
            (Self::Energy(_) | Self::Money, None) => "",
        })
    }

    /// A number that the reader entered as the file has it.
    pub fn entered(self, number: f64, units: UnitSystem) -> f64 {
        let of_us = || {
            let entered = self.quantity(1.0)?.entered_in(units, number)?;
            Some(entered.shown_in(UnitSystem::Metric).0)
        };
        match units {
            UnitSystem::Metric => number,
            UnitSystem::Us => of_us().unwrap_or(number),
        }
    }

    /// Two limits as the reader may enter them: rounded to what is allowed in any case.
    pub fn limits(self, (min, max): (f64, f64), units: UnitSystem) -> (f64, f64) {
        let round = |limit: f64, to: fn(f64) -> f64| {
            let shown = self.shown(limit, units);
            if shown == limit {
                return limit;
            }
            let scale = match shown.abs() {
                it if it >= 1000.0 => 1.0,
                it if it >= 100.0 => 10.0,
                it if it >= 10.0 => 100.0,
                it if it >= 1.0 => 1000.0,
                _ => 10_000.0,
            };
            to(shown * scale) / scale
        };
        (round(min, f64::ceil), round(max, f64::floor))
    }
}

/// A number of the file as a reader's field has it: as it was entered, or in other units to five
/// figures; never fewer than stand before the point, and without zeros at the end.
pub fn written(number: f64, units: UnitSystem) -> String {
    let figures = match units {
        UnitSystem::Metric => 7,
        UnitSystem::Us => 5,
    };
    let before: usize = match number.abs() {
        it if it >= 1e5 => 6,
        it if it >= 1e4 => 5,
        it if it >= 1e3 => 4,
        it if it >= 1e2 => 3,
        it if it >= 10.0 => 2,
        it if it >= 1.0 => 1,
        _ => 0,
    };
    let decimals = usize::saturating_sub(figures, before);
    let text = format!("{number:.decimals$}");
    number::in_box(match text.contains('.') {
        true => text.trim_end_matches('0').trim_end_matches('.'),
        false => &text,
    })
}

#[cfg(test)]
mod tests {
    use super::{Counts, written};
    use farend_core::measure::Measure;
    use farend_core::units::UnitSystem::{Metric, Us};
    use farend_core::yard::rules::YARD;
    use farend_core::yard::shape::{Field, Shape};

    fn walk(fields: &[Field], see: &mut impl FnMut(&'static str)) {
        for field in fields {
            match field.shape {
                Shape::Group(of) | Shape::Many { of, .. } => walk(of, see),
                Shape::Number { unit, .. } | Shape::Uncertain { unit, .. } => see(unit),
                _ => {}
            }
        }
    }

    #[test]
    fn every_unit_of_the_rules_is_one_that_readers_get() {
        walk(YARD, &mut |unit| {
            let counts = match unit {
                "kWh" => Counts::Energy(Measure::Volume),
                unit => Counts::Unit(unit),
            };
            let symbol = counts.symbol(Metric);
            assert!(symbol == unit || symbol == "kWh/m³", "{unit}, not {symbol}");
            assert!(counts.quantity(1.0).is_some(), "{unit}");
            let there = counts.shown(7.0, Us);
            let back = counts.entered(there, Us);
            assert!((back - 7.0).abs() < 1e-9, "{unit}: {back}");
        });
    }

    /// 1 hp is 0.745 699 872 kW, 1 psi is 0.068 947 573 bar, 1 lb is 0.453 592 37 kg (definitions).
    #[test]
    fn the_file_stays_metric() {
        assert!((Counts::Unit("kW").entered(60.0, Us) - 44.741_992).abs() < 1e-5);
        assert!((Counts::Unit("bar").entered(2500.0, Us) - 172.368_93).abs() < 1e-4);
        assert!((Counts::Unit("kg").shown(1000.0, Us) - 2_204.622_62).abs() < 1e-4);
        assert_eq!(Counts::Unit("kW").entered(46.1, Metric), 46.1);
        assert_eq!(Counts::Money.entered(46.1, Us), 46.1);
    }

    #[test]
    fn limits_in_other_units_are_never_wider() {
        let power = Counts::Unit("kW");
        let (min, max) = power.limits((3.0, 600.0), Us);
        assert!(power.entered(min, Us) >= 3.0 && power.entered(max, Us) <= 600.0);
        assert_eq!((min, max), (4.024, 804.6));
        assert_eq!(power.limits((3.0, 600.0), Metric), (3.0, 600.0));
    }

    #[test]
    fn numbers_stand_as_they_were_entered() {
        for text in ["46", "46.5", "0.955", "2400", "1234567", "0.0085", "-1.5"] {
            assert_eq!(written(text.parse().unwrap(), Metric), text);
        }
        assert_eq!(written(44.741_992_3, Us), "44.742");
        assert_eq!(written(1_234_567.0, Us), "1234567");
    }
}
