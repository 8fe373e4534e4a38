//! Changes, each made and compared.

use super::{Seen, distinct, right_one, shows};
use farend_core::compare::compare;
use farend_core::kit::Kit;
use farend_core::practice::{Change, Question};
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::units::{Quantity, UnitSystem};

impl Seen<'_> {
    pub fn wanted(&self, route: RouteId, kit: &str, choices: &[Change]) -> Vec<String> {
        assert!((3..=4).contains(&choices.len()));
        let Question::Wanted { wish, .. } = &self.case.question else {
            panic!("{:?}", self.case);
        };
        for units in [UnitSystem::Metric, UnitSystem::Us] {
            distinct(choices.iter().map(|it| shown(*it, units)));
        }
        let now = self.run(route, kit);
        let wished = wish.standing();
        assert!(now.verdict.likely < wished, "{:?}", self.case);
        let mut does = Vec::new();
        for (place, change) in choices.iter().enumerate() {
            let (settings, kit) = made(*change, route, self.case.settings, self.kit(kit));
            let all = compare(self.machine, self.implement, &[kit], &settings);
            let all = all.unwrap_or_else(|faults| panic!("{:?}: {faults:?}", self.case));
            let run = all
                .route(route)
                .and_then(|it| it.run())
                .expect("it still fits");
            let rotor = &self.implement.rotor;
            let ratio = run.verdict.ratio / wished.begins_at();
            let speed = run.rotor / rotor.lowest;
            if run.verdict.likely >= wished {
                assert!(
                    ratio >= 1.049 && speed >= 1.049,
                    "{change:?}: {:?}",
                    self.case
                );
                assert!(run.rotor <= rotor.highest);
                does.push(place);
            } else {
                assert!(
                    ratio <= 0.951 || speed <= 0.951,
                    "{change:?}: {:?}",
                    self.case
                );
            }
        }
        assert_eq!(does.len(), 1, "{:?}", self.case);
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(right, does[0]);
        let mut counts = shows(shown);
        let kind = shown_kind(choices[right]);
        counts.push(format!("wanted: {kind}"));
        counts.push(format!("wanted: {} choices", choices.len()));
        counts
    }
}

/// Settings and kit with a change made.
fn made(change: Change, route: RouteId, mut settings: Settings, kit: &Kit) -> (Settings, Kit) {
    let mut kit = kit.clone();
    let oil = match route {
        RouteId::PumpPack => &mut settings.pack,
        _ => &mut settings.own,
    };
    match change {
        Change::Flow(flow) => oil.flow = Some(flow),
        Change::Relief(pressure) => oil.relief = Some(pressure),
        Change::EngineSpeed(speed) => settings.engine_speed = Some(speed),
        Change::Hoses(bore) => {
            let hoses = kit.hoses.as_mut().expect("a kit with hoses");
            hoses.supply.bore = bore;
            hoses.back.bore = bore;
        }
    }
    (settings, kit)
}

fn shown_kind(change: Change) -> &'static str {
    match change {
        Change::Flow(_) => "flow",
        Change::Relief(_) => "relief",
        Change::EngineSpeed(_) => "engine speed",
        Change::Hoses(_) => "hoses",
    }
}

/// A change as it's shown: with no more digits than the page has.
fn shown(change: Change, units: UnitSystem) -> String {
    let (quantity, digits) = match change {
        Change::Flow(flow) => (Quantity::Flow(flow), 1),
        Change::Relief(pressure) => (Quantity::Pressure(pressure), 0),
        Change::EngineSpeed(speed) => (Quantity::Speed(speed), 0),
        Change::Hoses(bore) => (Quantity::Bore(bore), 1),
    };
    let (value, unit) = quantity.shown_in(units);
    format!("{} {value:.digits$} {unit}", shown_kind(change))
}
