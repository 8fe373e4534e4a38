//! Where figures come from.

use super::say::sources as say;
use crate::number;
use farend_core::formula;
use farend_core::source::Source;
use farend_core::units::UnitSystem;

/// Where a reader can look it up, or the plain statement that there is no source.
pub fn citation(source: Source) -> &'static str {
    match source {
        Source::Own => say::own(),
        Source::Computed => say::computed(),
        Source::CommonPractice => say::common_practice(),
        Source::FromMemory => say::from_memory(),
        Source::Judgement => say::judgement(),
        Source::PumpReference => say::pump_reference(),
        Source::MotorArticle => say::motor_article(),
        Source::RatingRule => say::rating_rule(),
        Source::GearNote => say::gear_note(),
        Source::BeltSheet => say::belt_sheet(),
        Source::CouplerTable => say::coupler_table(),
        Source::StartingNote => say::starting_note(),
        Source::TankRules => say::tank_rules(),
        Source::SurfaceRules => say::surface_rules(),
        Source::MowerArticle => say::mower_article(),
        Source::ChipperTrial => say::chipper_trial(),
        Source::ViscosityChart => say::viscosity_chart(),
    }
}

/// A figure of a formula with its range and its source.
pub fn note(figure: &formula::Figure, units: UnitSystem) -> String {
    say::Note {
        symbol: figure.symbol,
        figure: &number::figure(figure, units),
        source: citation(figure.source),
    }
    .said()
}

#[cfg(test)]
mod tests {
    use super::{Source, citation};

    /// The terminal and the page say the same.
    #[test]
    fn english_citations_are_those_of_the_core() {
        for source in Source::ALL {
            assert_eq!(citation(*source), source.citation());
        }
    }
}
