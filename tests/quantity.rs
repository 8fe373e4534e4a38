//! Any quantity that a case can name.

use farend_core::measure::Amount;
use farend_core::quantity as core;
use farend_core::units;

/// A type of quantity that an input can have.
pub trait Kind: Sized {
    /// The value, where it is of this type.
    fn of(quantity: Quantity) -> Option<Self>;
}

macro_rules! kinds {
    ($( $kind:ident of $type:ident; )*) => {
        /// A quantity with its kind.
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub enum Quantity {
            /// A plain number.
            Ratio(f64),
            $(
                #[doc = stringify!($type)]
                $kind(core::$type),
            )*
        }

        $(
            impl Kind for core::$type {
                fn of(quantity: Quantity) -> Option<Self> {
                    match quantity {
                        Quantity::$kind(value) => Some(value),
                        _ => None,
                    }
                }
            }
        )*
    };
}

kinds! {
    Power of Power;
    Speed of AngularSpeed;
    Torque of Torque;
    Pressure of Pressure;
    Flow of Flow;
    Displacement of Displacement;
    Length of Length;
    Velocity of Velocity;
    Viscosity of Viscosity;
    Temperature of Temperature;
    Density of Density;
    Force of Force;
    Mass of Mass;
    Area of Area;
    Volume of Volume;
    Time of Time;
    Energy of Energy;
    Difference of TemperatureDifference;
    HeatCapacity of HeatCapacity;
    SpecificHeat of SpecificHeat;
    Conductance of Conductance;
    Film of FilmCoefficient;
}

/// What the core shows to readers.
impl From<units::Quantity> for Quantity {
    fn from(shown: units::Quantity) -> Self {
        use units::Quantity as Q;
        match shown {
            Q::Power(it) => Self::Power(it),
            Q::Speed(it) => Self::Speed(it),
            Q::Torque(it) => Self::Torque(it),
            Q::Flow(it) => Self::Flow(it),
            Q::Pressure(it) => Self::Pressure(it),
            Q::Displacement(it) => Self::Displacement(it),
            Q::Length(it) | Q::Bore(it) | Q::Depth(it) => Self::Length(it),
            Q::Velocity(it) | Q::GroundSpeed(it) => Self::Velocity(it),
            Q::Viscosity(it) => Self::Viscosity(it),
            Q::Temperature(it) => Self::Temperature(it),
            Q::Density(it) => Self::Density(it),
            // Work has no type of its own: a rate and an energy are read in SI.
            Q::Ratio(it)
            | Q::Slope(it)
            | Q::Angle(it)
            | Q::WorkRate(_, it)
            | Q::WorkEnergy(_, it) => Self::Ratio(it),
            Q::Amount(it) => it.into(),
            Q::Time(it) => Self::Time(it),
            Q::Force(it) => Self::Force(it),
            Q::Mass(it) => Self::Mass(it),
            Q::Volume(it) => Self::Volume(it),
            Q::Conductance(it) => Self::Conductance(it),
        }
    }
}

impl From<Amount> for Quantity {
    fn from(amount: Amount) -> Self {
        match amount {
            Amount::Mass(it) => Self::Mass(it),
            Amount::Area(it) => Self::Area(it),
            Amount::Volume(it) => Self::Volume(it),
            Amount::Length(it) => Self::Length(it),
        }
    }
}
