//! Units at the edge: what a quantity is called and how large it is for a reader.

use crate::measure::{Amount, Measure};
use crate::quantity::{
    AngularSpeed, Area, Conductance, Density, Displacement, Flow, Force, Length, Mass, Power,
    Pressure, Temperature, Time, Torque, Velocity, Viscosity, Volume,
};
use serde::{Deserialize, Serialize};

/// The units that the reader wants.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum UnitSystem {
    /// kW, N·m, L/min, bar, mm.
    #[default]
    Metric,
    /// Mechanical horsepower, lb·ft, US gallons a minute, psi, inches.
    Us,
}

/// Any quantity, for showing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Quantity {
    /// Power.
    Power(Power),
    /// Speed of turning.
    Speed(AngularSpeed),
    /// Torque.
    Torque(Torque),
    /// Volume flow.
    Flow(Flow),
    /// Pressure or pressure difference.
    Pressure(Pressure),
    /// Displacement per revolution.
    Displacement(Displacement),
    /// A length along the ground or a hose.
    Length(Length),
    /// A bore or another small length.
    Bore(Length),
    /// Velocity.
    Velocity(Velocity),
    /// Kinematic viscosity.
    Viscosity(Viscosity),
    /// Temperature.
    Temperature(Temperature),
    /// Density.
    Density(Density),
    /// A ratio or an efficiency.
    Ratio(f64),
    /// Speed over ground.
    GroundSpeed(Velocity),
    /// Rise over run.
    Slope(f64),
    /// An angle, radians.
    Angle(f64),
    /// Depth of what is worked.
    Depth(Length),
    /// How much work there is.
    Amount(Amount),
    /// Work for each second, in SI units of its measure.
    WorkRate(Measure, f64),
    /// Energy for each SI unit of work, joules.
    WorkEnergy(Measure, f64),
    /// Time.
    Time(Time),
    /// A force.
    Force(Force),
    /// A mass.
    Mass(Mass),
    /// Oil in a tank.
    Volume(Volume),
    /// Heat for each kelvin.
    Conductance(Conductance),
}

impl Quantity {
    /// The number and the unit's symbol in a system of units. The symbol of a ratio is empty.
    /// `hp` is the mechanical horsepower, `gpm` the US gallon a minute.
    pub fn shown_in(self, units: UnitSystem) -> (f64, &'static str) {
        use Quantity as Q;
        use UnitSystem::{Metric, Us};
        match (self, units) {
            (Q::Power(x), Metric) => (x.to_kilowatts(), "kW"),
            (Q::Power(x), Us) => (x.to_horsepower(), "hp"),
            (Q::Speed(x), _) => (x.to_rpm(), "rpm"),
            (Q::Torque(x), Metric) => (x.to_newton_metres(), "N·m"),
            (Q::Torque(x), Us) => (x.to_pound_feet(), "lb·ft"),
            (Q::Flow(x), Metric) => (x.to_litres_per_minute(), "L/min"),
            (Q::Flow(x), Us) => (x.to_us_gallons_per_minute(), "gpm"),
            (Q::Pressure(x), Metric) => (x.to_bar(), "bar"),
            (Q::Pressure(x), Us) => (x.to_psi(), "psi"),
            (Q::Displacement(x), Metric) => (x.to_cubic_centimetres(), "cm³"),
            (Q::Displacement(x), Us) => (x.to_cubic_inches(), "in³"),
            (Q::Length(x), Metric) => (x.to_metres(), "m"),
            (Q::Length(x), Us) => (x.to_feet(), "ft"),
            (Q::Bore(x), Metric) => (x.to_millimetres(), "mm"),
            (Q::Bore(x), Us) => (x.to_inches(), "in"),
            (Q::Velocity(x), Metric) => (x.to_metres_per_second(), "m/s"),
            (Q::Velocity(x), Us) => (x.to_feet_per_second(), "ft/s"),
            (Q::Viscosity(x), _) => (x.to_centistokes(), "cSt"),
            (Q::Temperature(x), Metric) => (x.to_celsius(), "°C"),
            (Q::Temperature(x), Us) => (x.to_fahrenheit(), "°F"),
            (Q::Density(x), Metric) => (x.to_kilograms_per_cubic_metre(), "kg/m³"),
            (Q::Density(x), Us) => (x.to_pounds_per_cubic_foot(), "lb/ft³"),
            (Q::Ratio(x), _) => (x, ""),
            (Q::GroundSpeed(x), Metric) => (x.to_kilometres_per_hour(), "km/h"),
            (Q::GroundSpeed(x), Us) => (x.to_miles_per_hour(), "mph"),
            (Q::Slope(x), _) => (x * 100.0, "%"),
            (Q::Angle(x), _) => (x.to_degrees(), "°"),
            (Q::Depth(x), Metric) => (x.to_centimetres(), "cm"),
            (Q::Depth(x), Us) => (x.to_inches(), "in"),
            (Q::Amount(x), _) => amount(x, units),
            (Q::WorkRate(measure, x), _) => {
                // So much in an hour.
                let an_hour = Amount::of(measure, x * HOUR);
                let (number, _) = amount(an_hour, units);
                (number, rate_symbol(measure, units))
            }
            (Q::WorkEnergy(measure, x), _) => {
                let (number, symbol) = energy_unit(measure, units);
                (x / number, symbol)
            }
            (Q::Time(x), _) => (x.to_minutes(), "min"),
            (Q::Force(x), Metric) => (x.to_newtons(), "N"),
            (Q::Force(x), Us) => (x.to_pounds_force(), "lbf"),
            (Q::Mass(x), Metric) => (x.to_kilograms(), "kg"),
            (Q::Mass(x), Us) => (x.to_pounds(), "lb"),
            (Q::Volume(x), Metric) => (x.to_litres(), "L"),
            (Q::Volume(x), Us) => (x.to_us_gallons(), "gal"),
            (Q::Conductance(x), _) => (x.to_watts_per_kelvin(), "W/K"),
        }
    }

    /// The value a part of the way from this one to another of the same kind.
    pub fn between(self, to: Self, part: f64) -> Option<Self> {
        use Quantity as Q;
        Some(match (self, to) {
            (Q::Power(a), Q::Power(b)) => Q::Power(a + (b - a) * part),
            (Q::Speed(a), Q::Speed(b)) => Q::Speed(a + (b - a) * part),
            (Q::Flow(a), Q::Flow(b)) => Q::Flow(a + (b - a) * part),
            (Q::Pressure(a), Q::Pressure(b)) => Q::Pressure(a + (b - a) * part),
            (Q::Length(a), Q::Length(b)) => Q::Length(a + (b - a) * part),
            (Q::GroundSpeed(a), Q::GroundSpeed(b)) => Q::GroundSpeed(a + (b - a) * part),
            (Q::Slope(a), Q::Slope(b)) => Q::Slope(a + (b - a) * part),
            (Q::Depth(a), Q::Depth(b)) => Q::Depth(a + (b - a) * part),
            (Q::Density(a), Q::Density(b)) => Q::Density(a + (b - a) * part),
            (Q::Temperature(a), Q::Temperature(b)) => {
                let (a, b) = (a.to_kelvins(), b.to_kelvins());
                Q::Temperature(Temperature::kelvins(a + (b - a) * part))
            }
            _ => return None,
        })
    }

    /// The same kind of quantity from a number in a system of units: the inverse of
    /// [`Self::shown_in`]. `None` for a kind that nobody enters.
    pub fn entered_in(self, units: UnitSystem, number: f64) -> Option<Self> {
        use Quantity as Q;
        use UnitSystem::{Metric, Us};
        Some(match (self, units) {
            (Q::Power(_), Metric) => Q::Power(Power::kilowatts(number)),
            (Q::Power(_), Us) => Q::Power(Power::horsepower(number)),
            (Q::Speed(_), _) => Q::Speed(AngularSpeed::rpm(number)),
            (Q::Torque(_), Metric) => Q::Torque(Torque::newton_metres(number)),
            (Q::Torque(_), Us) => Q::Torque(Torque::pound_feet(number)),
            (Q::Flow(_), Metric) => Q::Flow(Flow::litres_per_minute(number)),
            (Q::Flow(_), Us) => Q::Flow(Flow::us_gallons_per_minute(number)),
            (Q::Pressure(_), Metric) => Q::Pressure(Pressure::bar(number)),
            (Q::Pressure(_), Us) => Q::Pressure(Pressure::psi(number)),
            (Q::Displacement(_), Metric) => {
                Q::Displacement(Displacement::cubic_centimetres(number))
            }
            (Q::Displacement(_), Us) => Q::Displacement(Displacement::cubic_inches(number)),
            (Q::Temperature(_), Metric) => Q::Temperature(Temperature::celsius(number)),
            (Q::Temperature(_), Us) => Q::Temperature(Temperature::fahrenheit(number)),
            (Q::Length(_), Metric) => Q::Length(Length::metres(number)),
            (Q::Length(_), Us) => Q::Length(Length::feet(number)),
            (Q::Bore(_), Metric) => Q::Bore(Length::millimetres(number)),
            (Q::Bore(_), Us) => Q::Bore(Length::inches(number)),
            (Q::Viscosity(_), _) => Q::Viscosity(Viscosity::centistokes(number)),
            (Q::GroundSpeed(_), Metric) => Q::GroundSpeed(Velocity::kilometres_per_hour(number)),
            (Q::GroundSpeed(_), Us) => Q::GroundSpeed(Velocity::miles_per_hour(number)),
            (Q::Ratio(_), _) => Q::Ratio(number),
            (Q::Slope(_), _) => Q::Slope(number / 100.0),
            (Q::Angle(_), _) => Q::Angle(number.to_radians()),
            (Q::Depth(_), Metric) => Q::Depth(Length::centimetres(number)),
            (Q::Depth(_), Us) => Q::Depth(Length::inches(number)),
            (Q::Density(_), Metric) => Q::Density(Density::kilograms_per_cubic_metre(number)),
            (Q::Density(_), Us) => Q::Density(Density::pounds_per_cubic_foot(number)),
            (Q::Time(_), _) => Q::Time(Time::minutes(number)),
            (Q::Force(_), Metric) => Q::Force(Force::newtons(number)),
            (Q::Force(_), Us) => Q::Force(Force::pounds_force(number)),
            (Q::Mass(_), Metric) => Q::Mass(Mass::kilograms(number)),
            (Q::Mass(_), Us) => Q::Mass(Mass::pounds(number)),
            (Q::Volume(_), Metric) => Q::Volume(Volume::litres(number)),
            (Q::Volume(_), Us) => Q::Volume(Volume::us_gallons(number)),
            (Q::Conductance(_), _) => Q::Conductance(Conductance::watts_per_kelvin(number)),
            (Q::Amount(of), _) => {
                let (one, _) = amount(Amount::of(of.measure(), 1.0), units);
                Q::Amount(Amount::of(of.measure(), number / one))
            }
            (Q::WorkEnergy(measure, _), _) => {
                Q::WorkEnergy(measure, number * energy_unit(measure, units).0)
            }
            (Q::Velocity(_) | Q::WorkRate(..), _) => return None,
        })
    }

    /// So many of a unit that yard files use, as [`crate::yard::rules`] writes it: shown in metric
    /// units it has the same number and symbol. `None` for another symbol; `kWh` alone is energy
    /// for an amount that only its measure tells.
    pub fn of_file(number: f64, unit: &str) -> Option<Self> {
        use Quantity as Q;
        let kind = match unit {
            "" => Q::Ratio(0.0),
            "kW" => Q::Power(Power::ZERO),
            "rpm" => Q::Speed(AngularSpeed::ZERO),
            "N·m" => Q::Torque(Torque::ZERO),
            "L/min" => Q::Flow(Flow::ZERO),
            "bar" => Q::Pressure(Pressure::ZERO),
            "cm³" => Q::Displacement(Displacement::ZERO),
            "m" => Q::Length(Length::ZERO),
            "mm" => Q::Bore(Length::ZERO),
            "cSt" => Q::Viscosity(Viscosity::ZERO),
            "kg/m³" => Q::Density(Density::ZERO),
            "km/h" => Q::GroundSpeed(Velocity::ZERO),
            "°" => Q::Angle(0.0),
            "min" => Q::Time(Time::ZERO),
            "N" => Q::Force(Force::ZERO),
            "kg" => Q::Mass(Mass::ZERO),
            "L" => Q::Volume(Volume::ZERO),
            "W/K" => Q::Conductance(Conductance::ZERO),
            _ => return None,
        };
        kind.entered_in(UnitSystem::Metric, number)
    }
}

/// Seconds of an hour.
const HOUR: f64 = 3600.0;
fn amount(amount: Amount, units: UnitSystem) -> (f64, &'static str) {
    use UnitSystem::{Metric, Us};
    match (amount, units) {
        (Amount::Mass(x), Metric) => (x.to_tonnes(), "t"),
        (Amount::Mass(x), Us) => (x.to_short_tons(), "tons"),
        (Amount::Area(x), Metric) => (x.to_square_metres(), "m²"),
        (Amount::Area(x), Us) => (x.to_square_feet(), "ft²"),
        (Amount::Volume(x), Metric) => (x.to_cubic_metres(), "m³"),
        (Amount::Volume(x), Us) => (x.to_cubic_yards(), "yd³"),
        (Amount::Length(x), Metric) => (x.to_metres(), "m"),
        (Amount::Length(x), Us) => (x.to_feet(), "ft"),
    }
}

fn rate_symbol(measure: Measure, units: UnitSystem) -> &'static str {
    use UnitSystem::{Metric, Us};
    match (measure, units) {
        (Measure::Mass, Metric) => "t/h",
        (Measure::Mass, Us) => "tons/h",
        (Measure::Area, Metric) => "m²/h",
        (Measure::Area, Us) => "ft²/h",
        (Measure::Volume, Metric) => "m³/h",
        (Measure::Volume, Us) => "yd³/h",
        (Measure::Length, Metric) => "m/h",
        (Measure::Length, Us) => "ft/h",
    }
}

/// J for each SI unit that make one of the unit, and its symbol.
fn energy_unit(measure: Measure, units: UnitSystem) -> (f64, &'static str) {
    use UnitSystem::{Metric, Us};
    let kilowatt_hour = (Power::kilowatts(1.0) * Time::hours(1.0)).to_si();
    let horsepower_hour = (Power::horsepower(1.0) * Time::hours(1.0)).to_si();
    match (measure, units) {
        (Measure::Mass, Metric) => (kilowatt_hour / 1e3, "kWh/t"),
        (Measure::Mass, Us) => (horsepower_hour / Mass::short_tons(1.0).to_si(), "hp·h/ton"),
        (Measure::Area, Metric) => (kilowatt_hour / 1e3, "kWh/1000 m²"),
        (Measure::Area, Us) => (
            horsepower_hour / Area::square_feet(1e3).to_si(),
            "hp·h/1000 ft²",
        ),
        (Measure::Volume, Metric) => (kilowatt_hour, "kWh/m³"),
        (Measure::Volume, Us) => (
            horsepower_hour / Volume::cubic_yards(1.0).to_si(),
            "hp·h/yd³",
        ),
        (Measure::Length, Metric) => (kilowatt_hour / 1e3, "kWh/km"),
        (Measure::Length, Us) => (horsepower_hour / Length::feet(1e3).to_si(), "hp·h/1000 ft"),
    }
}
