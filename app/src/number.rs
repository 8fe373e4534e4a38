//! Numbers as people read them. The browser's own formatter does the work.

use crate::intl;
use crate::text::remark;
use crate::text::say::number as say;
use farend_core::formula::Figure;
use farend_core::quantity::{Power, Time};
use farend_core::units::{Quantity, UnitSystem};

/// A number with exactly so many digits after the point, at most three.
pub fn fixed(value: f64, digits: usize) -> String {
    intl::number(value, digits)
}

/// A count.
pub fn count(count: usize) -> String {
    intl::number(count as f64, 0)
}

/// An amount of money, in a currency where one is named: "1,250 €".
pub fn money(amount: f64, currency: Option<&str>) -> String {
    // Cents don't matter in a hundred.
    let digits = if amount.abs() < 100.0 { 2 } else { 0 };
    match currency {
        Some(code) => intl::money(amount, code, digits),
        None => fixed(amount, digits),
    }
}

/// Digits after the point that a quantity deserves, by its unit and size.
fn digits(quantity: Quantity, value: f64) -> usize {
    match quantity {
        Quantity::Speed(_)
        | Quantity::Temperature(_)
        | Quantity::Viscosity(_)
        | Quantity::Density(_)
        | Quantity::Depth(_)
        | Quantity::Slope(_)
        | Quantity::Angle(_)
        | Quantity::Mass(_)
        | Quantity::Force(_)
        | Quantity::Volume(_)
        | Quantity::Time(_)
        | Quantity::Conductance(_) => 0,
        Quantity::Amount(_) | Quantity::WorkRate(..) | Quantity::Length(_)
            if value.abs() >= 20.0 =>
        {
            0
        }
        Quantity::WorkEnergy(..) => 2,
        Quantity::Torque(_) if value.abs() >= 10.0 => 0,
        Quantity::Pressure(_) if value.abs() >= 100.0 => 0,
        Quantity::Displacement(_) if value.abs() >= 20.0 => 0,
        Quantity::Ratio(_) if value >= 1.0 && value.fract() == 0.0 => 0,
        Quantity::Ratio(_) if value >= 100.0 => 0,
        Quantity::Ratio(_) => 3,
        Quantity::Bore(_) if value.abs() < 10.0 => 2,
        _ => 1,
    }
}

/// A quantity with its unit: "36.0 kW".
pub fn shown(quantity: Quantity, units: UnitSystem) -> String {
    let (value, _) = quantity.shown_in(units);
    let number = fixed(value, digits(quantity, value));
    let unit = unit(quantity, units);
    if unit.is_empty() {
        number
    } else {
        if unit == "°" {
            return format!("{number}°");
        }
        // A no-break space keeps number and unit on one line.
        format!("{number}\u{a0}{unit}")
    }
}

/// A quantity's unit as the language has it. Symbols are the same everywhere, words aren't.
pub fn unit(quantity: Quantity, units: UnitSystem) -> &'static str {
    let (_, symbol) = quantity.shown_in(units);
    unit_word(symbol)
}

/// A unit's symbol as the language has it.
pub fn unit_word(symbol: &'static str) -> &'static str {
    match symbol {
        "rpm" => say::rpm(),
        "tons" => say::tons(),
        "tons/h" => say::tons_per_hour(),
        symbol => symbol,
    }
}

/// A power with its unit.
pub fn power(power: Power, units: UnitSystem) -> String {
    shown(Quantity::Power(power), units)
}

/// Today's date in a style of the browser's formatter: "Nov 25, 2026" is medium.
pub fn today(style: &str) -> String {
    intl::date(None, style)
}

/// The date of a time as headers of the web write it, in such a style.
pub fn day(written: &str, style: &str) -> String {
    intl::date(Some(written), style)
}

/// A number as an input field wants it.
pub fn plain(value: f64) -> String {
    // A tenth tells nothing in a thousand.
    let digits = usize::from(value.abs() < 1000.0);
    let text = format!("{value:.digits$}");
    in_box(text.strip_suffix(".0").unwrap_or(&text))
}

/// A number written with a point, as a field of the language has it: with its mark before decimals
/// and none between thousands.
pub fn in_box(number: &str) -> String {
    number.replace('.', &intl::decimal_mark().to_string())
}

/// A time: "35 min", "2 h 10 min", "100 h or more".
pub fn time(time: Time) -> String {
    const MOST: f64 = 6_000.0;
    let minutes = time.to_minutes().round();
    if minutes >= MOST {
        return say::hundred_hours().to_owned();
    }
    let (hours, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
    match (hours > 0.0, rest > 0.0 || hours == 0.0) {
        (false, _) => format!("{}\u{a0}min", fixed(rest, 0)),
        (true, false) => format!("{}\u{a0}h", fixed(hours, 0)),
        (true, true) => format!(
            "{}\u{a0}h\u{a0}{}\u{a0}min",
            fixed(hours, 0),
            fixed(rest, 0)
        ),
    }
}

/// A time of which whole hours are enough: "340 h".
pub fn long_time(time: Time) -> String {
    if time < Time::hours(10.0) {
        return self::time(time);
    }
    format!("{}\u{a0}h", fixed(time.to_hours(), 0))
}

/// A range: "27.3 to 30.1 kW".
pub fn range(low: Quantity, high: Quantity, units: UnitSystem) -> String {
    let (value, _) = low.shown_in(units);
    between(&fixed(value, digits(low, value)), &shown(high, units))
}

/// A range of what may be entered: each end is rounded to what is allowed.
pub fn allowed(low: Quantity, high: Quantity, units: UnitSystem) -> String {
    range(
        inward(low, units, f64::ceil),
        inward(high, units, f64::floor),
        units,
    )
}

/// An end of a range, rounded towards the other one as far as it is shown.
fn inward(end: Quantity, units: UnitSystem, round: fn(f64) -> f64) -> Quantity {
    /// How many of the last digit's steps are in one, by the digits after the point.
    const STEPS: [f64; 4] = [1.0, 10.0, 100.0, 1000.0];
    let (value, _) = end.shown_in(units);
    let steps = STEPS[digits(end, value).min(3)];
    // Without what the way through SI leaves in the last digits.
    let whole = (value * steps * 1e6).round() / 1e6;
    end.entered_in(units, round(whole) / steps).unwrap_or(end)
}

/// A range of which both ends are written already, the unit in the second one.
pub fn between(low: &str, high: &str) -> String {
    say::Range { low, high }.said()
}

/// A figure of a formula with its range, if it has one: "0.860 (0.830 to 0.900)".
pub fn figure(figure: &Figure, units: UnitSystem) -> String {
    let value = shown(figure.value, units);
    match figure.range {
        None => value,
        Some((low, high)) => remark(&value, &range(low, high, units)),
    }
}

/// A part of one as a percentage: "80 %".
pub fn percent(part: f64) -> String {
    format!("{}\u{a0}%", fixed(part * 100.0, 0))
}

/// What a person typed: with the language's mark before decimals, or the other one where it can't part
/// thousands. `None` where it isn't one clear number.
pub fn typed(text: &str) -> Option<f64> {
    read(text, intl::decimal_mark())
}

fn read(text: &str, mark: char) -> Option<f64> {
    let text = text.trim();
    let other = if mark == ',' { '.' } else { ',' };
    let plain = match text.split_once(other) {
        None => text.replace(mark, "."),
        // "1,234" may be one and a bit or a thousand and more: ask.
        Some((whole, decimals)) if !may_be_thousands(whole, decimals) && !text.contains(mark) => {
            text.replace(other, ".")
        }
        Some(_) => return None,
    };
    plain.parse().ok().filter(|number: &f64| number.is_finite())
}

/// Whether a mark between such digits could part thousands.
fn may_be_thousands(whole: &str, decimals: &str) -> bool {
    let whole = whole.trim_start_matches('-');
    (1..=3).contains(&whole.len()) && !whole.starts_with('0') && decimals.len() == 3
}

#[cfg(test)]
mod tests {
    use super::{allowed, read, typed};
    use farend_core::quantity::{AngularSpeed, Pressure};
    use farend_core::units::{Quantity, UnitSystem};

    #[test]
    fn a_decimal_comma_is_read_and_a_thousands_mark_is_asked_about() {
        assert_eq!(typed(" 1.5 "), Some(1.5));
        assert_eq!(typed("1,5"), Some(1.5));
        assert_eq!(typed("0,125"), Some(0.125));
        assert_eq!(typed("2400"), Some(2400.0));
        assert_eq!(typed("1.234"), Some(1.234));
        assert_eq!(typed("1,234"), None);
        assert_eq!(typed("-1,234"), None);
        assert_eq!(typed("1,234.5"), None);
        assert_eq!(typed("1,2,3"), None);
        assert_eq!(typed("inf"), None);
        assert_eq!(typed("NaN"), None);
        assert_eq!(typed("fast"), None);
        assert_eq!(typed(""), None);
    }

    /// Where the comma stands before decimals it's the point that is asked about.
    #[test]
    fn each_language_has_its_own_mark() {
        assert_eq!(read("1,234", ','), Some(1.234));
        assert_eq!(read("1.5", ','), Some(1.5));
        assert_eq!(read("1.234", ','), None);
        assert_eq!(read("1.234,5", ','), None);
    }

    /// 50 bar are 725.19 psi and 350 bar are 5076.3 psi: 1 psi is 0.068 947 573 bar (definition).
    #[test]
    fn what_may_be_entered_is_never_told_wider_than_it_is() {
        let bar = |bar| Quantity::Pressure(Pressure::bar(bar));
        let told = |units| allowed(bar(50.0), bar(350.0), units);
        assert_eq!(told(UnitSystem::Us), "726\u{a0}to\u{a0}5076\u{a0}psi");
        assert_eq!(told(UnitSystem::Metric), "50.0\u{a0}to\u{a0}350\u{a0}bar");
        // Both come through SI a last digit off.
        let rpm = |rpm| Quantity::Speed(AngularSpeed::rpm(rpm));
        let told = allowed(rpm(1260.0), rpm(3000.0), UnitSystem::Metric);
        assert_eq!(told, "1260\u{a0}to\u{a0}3000\u{a0}rpm");
    }

    #[test]
    fn what_a_box_shows_is_read_as_the_same_number() {
        for number in [
            0.0, 0.125, 0.5, -0.61, 1.234, 12.5, 999.999, 1234.567, 540.0, 2e6,
        ] {
            for mark in ['.', ','] {
                let shown = f64::to_string(&number).replace('.', &mark.to_string());
                assert_eq!(read(&shown, mark), Some(number), "{shown}");
            }
        }
    }
}
