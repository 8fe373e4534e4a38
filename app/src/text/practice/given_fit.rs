//! What a learner is given to see whether something can be hooked up.

use super::given::{Fact, Given, NONE, place};
use crate::text::fit;
use farend_core::kit::Kit;
use farend_core::route::RouteId;
use farend_core::route::part::Part;
use farend_core::units::Quantity;

impl Given<'_> {
    /// Both sides of all that must fit.
    pub(super) fn of_fit(&self, route: RouteId) -> Vec<Fact> {
        let machine = &self.scene.machine;
        let parts = route.parts();
        let mut facts = self.kit();
        let pto = match parts.contains(&Part::MidPto) {
            true => machine.mid_pto.as_ref(),
            false => machine.rear_pto(self.case.settings.economy),
        };
        if route.has_pto() {
            let what = pto.map_or_else(
                || NONE.to_owned(),
                |pto| {
                    format!(
                        "{}, {}, turns {}",
                        self.shown(Quantity::Speed(pto.rated)),
                        fit::shaft_type(pto.end.shaft),
                        fit::turns(pto.end.turns)
                    )
                },
            );
            facts.push(("PTO", what));
            let kit = self.scene.kit.as_ref();
            facts.extend(kit.map(|kit| kit_shaft(kit, route)));
        }
        if route.needs_oil() {
            facts.extend(self.own_circuit().into_iter().filter(|_| !route.has_pto()));
            facts.push((
                "Motor",
                self.motor()
                    .map_or_else(|| NONE.to_owned(), |(_, what)| what),
            ));
            facts.extend(self.oil_ends(route));
        } else {
            facts.extend(self.inputs());
        }
        facts.extend(self.carrying());
        facts
    }

    /// Hitch, weight and what can be lifted.
    pub(super) fn carrying(&self) -> Vec<Fact> {
        let (machine, implement) = (&self.scene.machine, &self.scene.implement);
        let hitch = machine.hitch.and_then(|hitch| hitch.category);
        let hitch = format!(
            "machine {}, implement {}",
            fit::category(hitch),
            fit::category(implement.mount.category)
        );
        let mass = |mass| self.shown(Quantity::Mass(mass));
        let weight = implement.mass.map_or_else(|| UNKNOWN.to_owned(), mass);
        let rear = machine.hitch.and_then(|hitch| hitch.lift);
        let front = machine.loader.and_then(|loader| loader.lift);
        let lifts = [("Rear hitch lifts", rear), ("Loader lifts", front)];
        let lifts = lifts
            .into_iter()
            .filter_map(|(name, lift)| Some((name, mass(lift?))));
        [("Hitch", hitch), ("Weight", weight)]
            .into_iter()
            .chain(lifts)
            .collect()
    }

    fn inputs(&self) -> Vec<Fact> {
        let shafts = self.scene.implement.shafts.iter();
        shafts
            .map(|shaft| {
                let what = format!(
                    "{}, {}, must turn {}",
                    self.shown(Quantity::Speed(shaft.speed)),
                    fit::shaft_type(shaft.end.shaft),
                    fit::turns(shaft.end.turns)
                );
                (place(shaft.place), what)
            })
            .collect()
    }

    /// Couplers, case drain and the third function.
    fn oil_ends(&self, route: RouteId) -> Vec<Fact> {
        let size = |size| match size {
            Some(size) => self.shown(Quantity::Bore(size)),
            None => UNKNOWN.to_owned(),
        };
        let hoses = self.scene.kit.as_ref().and_then(|kit| kit.hoses.as_ref());
        let circuit = self.case.settings.own_circuit(&self.scene.machine);
        let circuit = circuit.filter(|_| !route.has_pto());
        let mut facts = Vec::new();
        if let Some(circuit) = circuit {
            let what = format!(
                "machine {}, hoses {}",
                size(circuit.coupler_size),
                size(hoses.and_then(|hoses| hoses.coupler_size))
            );
            facts.push(("Couplers", what));
        }
        let motor = self.scene.implement.motor.as_ref();
        let mut drain = vec![
            ("motor needs one", motor.and_then(|it| it.case_drain)),
            ("hoses have one", hoses.and_then(|it| it.case_drain)),
        ];
        if let Some(circuit) = circuit {
            drain.push(("machine has one", circuit.case_drain));
        }
        let drain = drain.into_iter();
        let drain: Vec<_> = drain
            .map(|(what, it)| format!("{what}: {}", yes_or_no(it)))
            .collect();
        facts.push(("Case drain", drain.join("; ")));
        if let Some(loader) = self.scene.machine.loader {
            facts.push((
                "Third function",
                yes_or_no(loader.third_function).to_owned(),
            ));
        }
        facts
    }
}

const UNKNOWN: &str = "not known";

fn yes_or_no(it: Option<bool>) -> &'static str {
    match it {
        Some(true) => "yes",
        Some(false) => "no",
        None => UNKNOWN,
    }
}

/// What a kit's shaft suits; behind a pump there is no other end.
fn kit_shaft(kit: &Kit, route: RouteId) -> Fact {
    let mut what = format!("suits a PTO of {}", fit::shaft_type(kit.shaft.pto_end));
    if !route.needs_oil() {
        what.push_str(&format!(
            " and an input of {}",
            fit::shaft_type(kit.shaft.far_end)
        ));
        what.push_str(match kit.shaft.reverses {
            Some(true) => ", turns the direction round",
            Some(false) => ", keeps the direction",
            None => "",
        });
    }
    ("Kit's shaft", what)
}
