//! Names of things.

use farend_core::control::Control;
use farend_core::drive::Limit;
use farend_core::implement::Ground;
use farend_core::machine::Outlet;
use farend_core::measure::Measure;
use farend_core::physics::joint::AngleAdvice;
use farend_core::physics::oil::Grade;
use farend_core::route::RouteId;
use farend_core::stage::gear::{GearKind, GearRole};
use farend_core::stage::{FigureName, StageKind};
use farend_core::standing::Standing;
use farend_core::thermal::SurfaceRule;
use farend_core::warning::Line;

pub const TITLE: &str = "Farend";
pub const PURPOSE: &str = "What really drives the implement: how much of the engine's power \
    reaches its shaft, by each route.";
pub const MACHINE: &str = "Machine";
pub const IMPLEMENT: &str = "Implement";
pub const UNITS: &str = "Units";
pub const METRIC: &str = "Metric: kW, bar";
pub const US: &str = "US: hp, psi";
pub const VIEWS: &str = "Views";
pub const VIEW_PAIR: &str = "One pair";
pub const VIEW_GRID: &str = "Whole yard";
pub const VIEW_YARD: &str = "Edit yard";
pub const VIEW_PRACTICE: &str = "Practice";
pub const INVENTED: &str = "Demo yard. Machines, implements and the place are invented.";
pub const MENU: &str = "Yard and link";
pub const OPEN_FILE: &str = "Open a yard, a comparison or a table…";
pub const SAVE_DEMO: &str = "Save the demo yard as a pattern";
pub const DEMO_FILE: &str = "farend-demo-yard.json";
pub const COPY_LINK: &str = "Copy link to this comparison";
pub const COPIED: &str = "Copied.";
pub const COPY_BY_HAND: &str = "This browser keeps the clipboard closed. Copy it from here:";
pub const SAVE: &str = "Save";
pub const SAVE_ROUTES: &str = "Table of the routes (CSV)";
pub const SAVE_LEDGER: &str = "Ledger of the open route (CSV)";
pub const SAVE_SVG: &str = "Picture, sharp at any size (SVG)";
pub const SAVE_PNG: &str = "Picture for slides and mail (PNG)";
pub const SAVE_COMPARISON: &str = "This comparison, to open again (JSON)";
pub const CLOSE: &str = "Close";
pub const NOT_LOADED: &str = "This part of the page couldn’t be loaded. Is the network there?";
pub const TRY_AGAIN: &str = "Try again";

pub const ROUTES_HEADING: &str = "Six routes, one engine";
pub const ARRIVES: &str = "arrives at the rotor";
pub const LOST_IN_SHAFTS: &str = "lost in shafts, gears, belts";
pub const LOST_IN_OIL: &str = "lost in oil";
pub const NOT_TAKEN_UP: &str = "engine power that the route can't take up";
/// The same beside a bar of the picture, each with its power behind it.
pub const IN_SHAFTS: &str = "lost in shafts";
pub const IN_OIL: &str = "lost in oil";
pub const LEFT_OVER: &str = "not taken up";
pub const BEFORE: &str = "air and driving";
pub const INVENTED_DATA: &str = "Invented demo data";
pub const AIR_AND_DRIVING: &str = "taken by thin air and driving";
pub const NEED: &str = "what the job needs, likely and range";
pub const SPREAD: &str = "low to high of what arrives";
pub const AS_TABLE: &str = "The same as a table";

pub const WHAT_IF: &str = "What if…";
pub const LESS: &str = "Less";
pub const MORE: &str = "More";
pub const OWN: &str = "To begin with:";
pub const ENGINE_SET: &str = "The engine's net power is set as a sheet says:";
pub const BACK_TO_OWN: &str = "Back to";
pub const CURVE_OVER: &str = "Curve over";
pub const CIRCUIT: &str = "Circuit";
pub const CURVE_POINT: &str = "where it stands now";
pub const CURVE_LIKELY: &str = "likely";
pub const CURVE_RANGE: &str = "low to high";
pub const CURVE_NEED: &str = "need";
pub const DELIVERED: &str = "Delivered";

pub const ENTER: &str = "Enter a number, or leave it empty:";
pub const VERSION: &str = "Version";
pub const DECIDING_HEADING: &str = "Before you decide";
pub const FIT: &str = "Can it be hooked up?";
pub const FITS: &str = "What fits";
pub const QUESTIONS: &str = "To ask before anything is bought, over all routes";
pub const CHOOSE: &str = "Where it sits, and what matters to you";
pub const SEAT: &str = "Place";
pub const AT_WORK: &str = "At work";
pub const HOOKUP: &str = "To hook up";
pub const USUALLY: &str = "usually";
pub const STANDING_FOR_GOOD: &str = "For good";
pub const POINTS: &str = "Points";
pub const FOR_POWER: &str = "for power";
pub const FOR_WISHES: &str = "for what matters";
pub const NOT_WEIGHED: &str = "not weighed";
pub const POINTS_NOTE: &str = "Power: 6 points for Ample, 5 for Enough, 2 for Slower; below that, \
    and where something stops it, a route isn't weighed. Each thing that matters adds up to 1 \
    point, or 2 where it matters much. Cost counts once every price is known. Oil that gets too \
    hot leaves no better than Slower until it is cooled. The points are this project's judgement.";

pub const DRIVING_AND_MATERIAL: &str = "Driving and material";
pub const SITE_AND_OIL: &str = "Site and oil";
pub const REAR_PTO: &str = "Rear PTO";
pub const GROUND: &str = "Ground";
pub const OIL_GRADE: &str = "Oil in the circuits";
pub const AS_IN_THE_YARD: &str = "As in the yard";

pub const DEEPER_HEADING: &str = "For those who want to know more";
pub const WORK: &str = "How the work goes";
pub const HEAT: &str = "How warm the oil gets";
pub const INFLUENCES: &str = "What moves this figure most";
pub const ALL_SOURCES: &str = "Where the figures come from, and what isn't modelled";
pub const JOB: &str = "The job";
pub const JOB_BY: &str = "Measured by";
pub const MOST_WORK: &str = "Most work";
pub const TIME: &str = "Time for the job";
pub const GROUND_SPEED: &str = "Speed over ground";
pub const THROWS: &str = "Throws, at most";
pub const TIPS: &str = "Tips run at";
pub const NO_WORK: &str = "The yard doesn't say what this implement's work takes: no time can be \
    given.";
pub const NO_OIL: &str = "No oil carries power on this route.";
pub const NOTHING_MOVES: &str = "Nothing moves on this route.";
pub const FIGURE: &str = "Figure";
pub const AT_LOW: &str = "Arrives at its low value";
pub const AT_HIGH: &str = "Arrives at its high value";
pub const NOT_UNCERTAIN: &str = "Nothing on this route is uncertain.";
pub const RULE: &str = "Tank sheds";
pub const SETTLES_AT: &str = "Settles at";
pub const TO_LIMIT: &str = "From cold to the limit";
pub const FOR_GOOD: &str = "Arrives for good";
pub const NEVER: &str = "never";
pub const NEVER_DONE: &str = "not done";
pub const TOO_SLOW: &str = "The rotor is too slow to work properly.";
pub const NOTHING: &str = "nothing";
pub const NOT_MODELLED: &str = "Not modelled";
pub const MODELS: &str = "Equations";
pub const FIGURES: &str = "Figures";

pub const LEDGER_HEADING: &str = "Where the power goes";
pub const STAGE: &str = "Stage";
pub const TAKES: &str = "Takes";
pub const LOSES: &str = "Loses";
pub const PASSES_ON: &str = "Passes on";
pub const ROUTE: &str = "Route";
pub const STANDING: &str = "Standing";
pub const HELD_BY: &str = "Held by";
pub const LOST: &str = "Lost on the way";
pub const ENGINE: &str = "Engine";
pub const ROTOR: &str = "Rotor";
pub const KIT: &str = "Needs";
pub const CAN_GIVE: &str = "Can give";
pub const KEEPS: &str = "Keeps";
pub const NOT_FOR_THIS_ROUTE: &str = "can't be taken up";
pub const FORMULAS: &str = "Show formulas";
pub const SOURCES: &str = "Show sources";

pub const CAUTIONS_HEADING: &str = "Before anything turns";
pub const ASSUMED_HEADING: &str = "What this takes for granted";

/// A route's name.
pub fn route(route: RouteId) -> &'static str {
    match route {
        RouteId::RearShaft => "Rear shaft",
        RouteId::MidShaft => "Mid shaft",
        RouteId::TurnedForward => "Rear shaft turned forward",
        RouteId::MachineHydraulics => "Machine hydraulics",
        RouteId::PumpPack => "Pump pack",
        RouteId::SkidSteer => "Skid steer hydraulics",
    }
}

/// A route within a sentence.
pub fn the_route(route: RouteId) -> &'static str {
    match route {
        RouteId::RearShaft => "the rear shaft",
        RouteId::MidShaft => "the mid shaft",
        RouteId::TurnedForward => "the rear shaft turned forward",
        RouteId::MachineHydraulics => "the machine's own hydraulics",
        RouteId::PumpPack => "a pump pack on the PTO",
        RouteId::SkidSteer => "the skid steer's hydraulics",
    }
}

/// A standing.
pub fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Ample => "Ample",
        Standing::Enough => "Enough",
        Standing::Slower => "Slower",
        Standing::Labours => "Labours",
        Standing::Starves => "Starves",
    }
}

/// What stands in place of a standing where a route can't be hooked up.
pub const NO_FIT: &str = "No fit";

/// What a standing means at work.
pub fn at_work(standing: Standing) -> &'static str {
    match standing {
        Standing::Ample => "power to spare for the job",
        Standing::Enough => "the job is met",
        Standing::Slower => "the job gets done, but slower",
        Standing::Labours => "it labours: expect stalling and poor work",
        Standing::Starves => "it starves: the job can't be done this way",
    }
}

/// A limit.
pub fn limit(limit: Limit) -> &'static str {
    match limit {
        Limit::Engine => "engine",
        Limit::ShaftRating => "shaft rating",
        Limit::Flow => "flow (speed)",
        Limit::Pressure => "pressure (torque)",
        Limit::OilHeat => "oil heat",
        Limit::Implement => "implement's rating",
    }
}

/// What a limit means.
pub fn limit_reason(limit: Limit) -> &'static str {
    match limit {
        Limit::Engine => "The engine gives no more at this speed.",
        Limit::ShaftRating => "A shaft or a box on the way must not take more torque.",
        Limit::Flow => {
            "Flow is speed: there isn't enough oil to bring the rotor up to its rated speed."
        }
        Limit::Pressure => "Pressure is torque: the relief valve lets no more through.",
        Limit::OilHeat => "The oil gets too hot.",
        Limit::Implement => "The implement's own input must not take more.",
    }
}

/// A stage's name.
pub fn stage(kind: StageKind) -> &'static str {
    match kind {
        StageKind::Gear(GearRole::PtoTrain) => "PTO train",
        StageKind::Gear(GearRole::InputShaft) => "Implement's input shaft",
        StageKind::Gear(GearRole::Step(kind)) => gear(kind),
        StageKind::Pump => "Pump",
        StageKind::Steering => "Steering's share",
        StageKind::Divert => "Flow sent back to the tank",
        StageKind::Valve => "Control valve",
        StageKind::Hoses => "Hoses and couplers",
        StageKind::Motor => "Hydraulic motor",
    }
}

fn gear(kind: GearKind) -> &'static str {
    match kind {
        GearKind::Spur => "Spur gears",
        GearKind::Bevel => "Bevel gears",
        GearKind::SpiralBevel => "Spiral bevel gears",
        GearKind::Worm => "Worm gear",
        GearKind::Belt => "Belt drive",
        GearKind::Chain => "Chain drive",
        GearKind::JointShaft => "Joint shaft",
        GearKind::Direct => "Direct drive",
    }
}

/// A control's name.
pub fn control(control: Control) -> &'static str {
    match control {
        Control::EngineSpeed => "Engine speed",
        Control::OwnFlow => "Flow on the sheet",
        Control::OwnRelief => "Relief pressure",
        Control::PackFlow => "Pack's flow at rated PTO speed",
        Control::PackRelief => "Pack's relief pressure",
        Control::OilTemperature => "Oil temperature",
        Control::Altitude => "Height above the sea",
        Control::AirTemperature => "Air temperature",
        Control::GroundSpeed => "Speed over ground",
        Control::Slope => "Slope, uphill above zero",
        Control::Depth => "Depth worked",
        Control::MaterialDensity => "Density of the material",
    }
}

/// What is driven on.
pub fn ground(ground: Ground) -> &'static str {
    match ground {
        Ground::Firm => "Firm",
        Ground::Grass => "Grass",
        Ground::Loose => "Loose",
    }
}

/// An oil.
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::Vg22 => "ISO VG 22",
        Grade::Vg32 => "ISO VG 32",
        Grade::Vg46 => "ISO VG 46",
        Grade::Vg68 => "ISO VG 68",
        Grade::Vg100 => "ISO VG 100",
        Grade::TractorFluid => "Tractor fluid",
    }
}

/// What a job is measured in.
pub fn measure(measure: Measure) -> &'static str {
    match measure {
        Measure::Mass => "mass",
        Measure::Area => "area",
        Measure::Volume => "volume",
        Measure::Length => "length",
    }
}

/// An uncertain figure.
pub fn figure(figure: FigureName) -> &'static str {
    match figure {
        FigureName::EnginePower => "engine's net power",
        FigureName::Driving => "what driving takes",
        FigureName::Efficiency => "efficiency",
        FigureName::Rating => "rating",
        FigureName::SheetFlow => "flow on the sheet",
        FigureName::SteeringFlow => "steering's flow",
        FigureName::PumpVolumetric | FigureName::MotorVolumetric => "leakage (ηv)",
        FigureName::PumpHydroMechanical | FigureName::MotorHydroMechanical => "friction (ηhm)",
        FigureName::Relief => "relief pressure",
        FigureName::ValveDrop => "pressure that it takes",
        FigureName::CouplerDrop => "pressure that a coupler takes",
        FigureName::Viscosity => "the oil's viscosity",
    }
}

/// A rule for what a tank sheds.
pub fn surface_rule(rule: SurfaceRule) -> &'static str {
    match rule {
        SurfaceRule::Btu => "11.4 W/(m²·K), which is 2.0 Btu/(h·ft²·°F)",
        SurfaceRule::Horsepower => "14.4 W/(m²·K), which is 0.001 hp/(ft²·°F)",
    }
}

/// How long a joint may run at an angle.
pub fn angle(advice: AngleAdvice) -> &'static str {
    match advice {
        AngleAdvice::Fine => "fine all day",
        AngleAdvice::ForAWhile => "up to 15° is good for all day, 25° is the most for steady work",
        AngleAdvice::Brief => "only for moments; 25° is the most for steady work",
        AngleAdvice::NeedsWideAngle => "only a wide-angle joint bears that, and only for moments",
        AngleAdvice::Never => "no joint bears that",
    }
}

/// A line.
pub fn line(line: Line) -> &'static str {
    match line {
        Line::Suction => "suction line",
        Line::Supply => "hose to the motor",
        Line::Back => "hose back",
    }
}

/// An outlet.
pub fn outlet(outlet: Outlet) -> &'static str {
    match outlet {
        Outlet::Remotes => "Remotes or third function",
        Outlet::StandardFlow => "Standard flow",
        Outlet::HighFlow => "High flow",
    }
}

/// A unit as a screen reader should say it.
pub fn spoken(symbol: &str) -> &str {
    match symbol {
        "kW" => "kilowatts",
        "hp" => "mechanical horsepower",
        "rpm" => "revolutions per minute",
        "L/min" => "litres per minute",
        "°C" => "degrees Celsius",
        "°F" => "degrees Fahrenheit",
        "gpm" => "US gallons per minute",
        other => other,
    }
}
