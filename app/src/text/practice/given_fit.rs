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
        let (machine, implement) = (&self.scene.machine, &self.scene.implement);
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
            facts.extend(self.scene.kit.as_ref().map(|kit| self.kit_shaft(kit)));
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
        let hitch = machine.hitch.and_then(|hitch| hitch.category);
        facts.push((
            "Hitch",
            format!(
                "machine {}, implement {}",
                fit::category(hitch),
                fit::category(implement.mount.category)
            ),
        ));
        facts.push((
            "Weight",
            implement.mass.map_or_else(
                || "not known".to_owned(),
                |it| self.shown(Quantity::Mass(it)),
            ),
        ));
        facts.extend(self.lifts());
        facts
    }

    fn kit_shaft(&self, kit: &Kit) -> Fact {
        let turned = match kit.shaft.reverses {
            Some(true) => ", turns the direction round",
            Some(false) => ", keeps the direction",
            None => "",
        };
        let what = format!(
            "suits a PTO of {} and an input of {}{turned}",
            fit::shaft_type(kit.shaft.pto_end),
            fit::shaft_type(kit.shaft.far_end)
        );
        ("Kit's shaft", what)
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
        let yes_or_no = |it: Option<bool>| match it {
            Some(true) => "yes",
            Some(false) => "no",
            None => "not known",
        };
        let size = |size| match size {
            Some(size) => self.shown(Quantity::Bore(size)),
            None => "not known".to_owned(),
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
        let drain = format!(
            "motor needs one: {}; machine has one: {}; hoses have one: {}",
            yes_or_no(motor.and_then(|motor| motor.case_drain)),
            yes_or_no(circuit.and_then(|circuit| circuit.case_drain)),
            yes_or_no(hoses.and_then(|hoses| hoses.case_drain))
        );
        facts.push(("Case drain", drain));
        if let Some(loader) = self.scene.machine.loader {
            facts.push((
                "Third function",
                yes_or_no(loader.third_function).to_owned(),
            ));
        }
        facts
    }

    fn lifts(&self) -> Vec<Fact> {
        let lift = |lift| Some(self.shown(Quantity::Mass(lift?)));
        let machine = &self.scene.machine;
        let rear = machine.hitch.and_then(|hitch| lift(hitch.lift));
        let front = machine.loader.and_then(|loader| lift(loader.lift));
        let lifts = [("Rear hitch lifts", rear), ("Loader lifts", front)];
        lifts
            .into_iter()
            .filter_map(|(name, what)| Some((name, what?)))
            .collect()
    }
}
