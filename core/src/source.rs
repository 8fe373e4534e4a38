//! Where a number comes from. Every default and every figure of a yard names one of these.

use crate::words::words;

words! {
    /// The origin of a number.
    Source {
        /// Entered by the user or the yard file, without more said.
        Own = "own",
        /// Follows from other figures shown.
        Computed = "computed",
        /// A fact of the trade without a published source.
        CommonPractice = "common-practice",
        /// Recalled, not looked up.
        FromMemory = "from-memory",
        /// Decided by this project.
        Judgement = "judgement",
        /// General engineering web reference: overall efficiency of pumps.
        PumpReference = "pump-reference",
        /// Maker's technical article: overall efficiency of gear and piston motors.
        MotorArticle = "motor-article",
        /// University course text: the 86 per cent rule between power ratings.
        RatingRule = "rating-rule",
        /// Engineering note on the efficiency of gear types.
        GearNote = "gear-note",
        /// Government tip sheet on the efficiency of belts.
        BeltSheet = "belt-sheet",
        /// Maker's table that reproduces ISO 14541 coupler sizes.
        CouplerTable = "coupler-table",
        /// Trade journal's chapter on motors: starting torque.
        StartingNote = "starting-note",
        /// Army manual and course exercise: tank size.
        TankRules = "tank-rules",
        /// Two rules of thumb for what a tank's surface sheds.
        SurfaceRules = "surface-rules",
        /// Article on types of mowers: power per metre.
        MowerArticle = "mower-article",
        /// Field trial of chippers: energy for each tonne.
        ChipperTrial = "chipper-trial",
        /// Distributor's viscosity chart for ISO VG grades.
        ViscosityChart = "viscosity-chart",
    }
}

impl Source {
    /// Where a reader can look it up, or the plain statement that there is no source.
    pub fn citation(self) -> &'static str {
        match self {
            Self::Own => "the yard's own figure",
            Self::CommonPractice => "common practice, no source",
            Self::FromMemory => "from memory",
            Self::Judgement => "this project's judgement",
            Self::Computed => "follows from the other figures",
            Self::PumpReference => {
                "engineeringtoolbox.com, hydraulic pumps: overall efficiency commonly 80 to 95 %"
            }
            Self::MotorArticle => {
                "a motor maker's article: about 75 % for gear motors to 92 % for piston motors"
            }
            Self::RatingRule => {
                "progressivegardening.com, converting tractor power ratings: 86 % rule; \
                 Univ. Arizona, cales.arizona.edu, agricultural machinery management: 0.90; \
                 the lower end, 0.83, from memory (ASABE D497)"
            }
            Self::GearNote => "meadinfo.org, August 2008: efficiency bands of gear types",
            Self::BeltSheet => "US DOE tip sheet on belts (attribution inferred): 95 to 98 % new",
            Self::CouplerTable => {
                "a maker's table reproducing ISO 14541: size 12.5, 45 L/min at 1.5 bar \
                 or less, size 20, 106 L/min at 2.2 bar or less; what lies below is this project's \
                 judgement"
            }
            Self::StartingNote => {
                "hydraulicspneumatics.com, chapter 15: low-speed motors start at 75 to 90 % of \
                 their highest torque"
            }
            Self::TankRules => {
                "US Army TM 5-3820-256-24-2, chapter 7: a gallon or more for each gallon a minute; \
                 hydrauliclearning.com, an exercise: three"
            }
            Self::SurfaceRules => {
                "precisionfluidpower.com: 2.0 Btu/h for each square foot and °F; Sullivan, Fluid \
                 Power, 14.6: 0.001 hp"
            }
            Self::MowerArticle => {
                "informedfarmers.com, types of mowers: kW for each metre of width"
            }
            Self::ChipperTrial => {
                "Silva Fennica 47(2) article 930 (2013), tables 2 and 4: 3.7 and 4.2 kWh for each \
                 oven-dry tonne"
            }
            Self::ViscosityChart => "aimsindustrial.com.au, oil viscosity chart: ISO VG 46 and 68",
        }
    }
}
