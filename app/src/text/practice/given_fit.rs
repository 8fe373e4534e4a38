//! What a learner is given to see whether something can be hooked up.

use super::given::{Fact, Given, none, place};
use super::{not_known, yes_or_no};
use crate::text::say::practice::given;
use crate::text::say::practice::given_fit as say;
use crate::text::{fit, in_turn};
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
            let what = pto.map_or_else(none, |pto| {
                let end = say::PtoEnd {
                    speed: &self.shown(Quantity::Speed(pto.rated)),
                    shaft: &fit::shaft_type(pto.end.shaft),
                    direction: fit::turns(pto.end.turns),
                };
                end.said()
            });
            facts.push((given::pto(), what));
            let kit = self.scene.kit.as_ref();
            facts.extend(kit.map(|kit| kit_shaft(kit, route)));
        }
        if route.needs_oil() {
            facts.extend(self.own_circuit().into_iter().filter(|_| !route.has_pto()));
            let motor = self.motor();
            facts.push(motor.unwrap_or_else(|| (given::motor(), none())));
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
        let hitch = say::HitchFacts {
            machine: &fit::category(hitch),
            implement: &fit::category(implement.mount.category),
        };
        let mass = |mass| self.shown(Quantity::Mass(mass));
        let weight = implement.mass.map_or_else(|| not_known().to_owned(), mass);
        let rear = machine.hitch.and_then(|hitch| hitch.lift);
        let front = machine.loader.and_then(|loader| loader.lift);
        let lifts = [(say::rear_lifts(), rear), (say::loader_lifts(), front)];
        let lifts = lifts
            .into_iter()
            .filter_map(|(name, lift)| Some((name, mass(lift?))));
        [(say::hitch(), hitch.said()), (say::weight(), weight)]
            .into_iter()
            .chain(lifts)
            .collect()
    }

    fn inputs(&self) -> Vec<Fact> {
        let shafts = self.scene.implement.shafts.iter();
        shafts
            .map(|shaft| {
                let what = say::Input {
                    speed: &self.shown(Quantity::Speed(shaft.speed)),
                    shaft: &fit::shaft_type(shaft.end.shaft),
                    direction: fit::turns(shaft.end.turns),
                };
                (place(shaft.place), what.said())
            })
            .collect()
    }

    /// Couplers, case drain and the third function.
    fn oil_ends(&self, route: RouteId) -> Vec<Fact> {
        let size = |size| match size {
            Some(size) => self.shown(Quantity::Bore(size)),
            None => not_known().to_owned(),
        };
        let hoses = self.scene.kit.as_ref().and_then(|kit| kit.hoses.as_ref());
        let circuit = self.case.settings.own_circuit(&self.scene.machine);
        let circuit = circuit.filter(|_| !route.has_pto());
        let mut facts = Vec::new();
        if let Some(circuit) = circuit {
            let what = say::CouplersFacts {
                machine: &size(circuit.coupler_size),
                hoses: &size(hoses.and_then(|hoses| hoses.coupler_size)),
            };
            facts.push((say::couplers(), what.said()));
        }
        let motor = self.scene.implement.motor.as_ref();
        let of_motor = motor.and_then(|it| it.case_drain);
        let of_hoses = hoses.and_then(|it| it.case_drain);
        let mut drain = vec![
            say::case_drain_motor(yes_or_no(of_motor)),
            say::case_drain_hoses(yes_or_no(of_hoses)),
        ];
        if let Some(circuit) = circuit {
            drain.push(say::case_drain_machine(yes_or_no(circuit.case_drain)));
        }
        facts.push((say::case_drain(), in_turn(&drain)));
        if let Some(loader) = self.scene.machine.loader {
            let there = yes_or_no(loader.third_function).to_owned();
            facts.push((say::third_function(), there));
        }
        facts
    }
}

/// What a kit's shaft suits; behind a pump there is no other end.
fn kit_shaft(kit: &Kit, route: RouteId) -> Fact {
    let pto = &fit::shaft_type(kit.shaft.pto_end);
    if route.needs_oil() {
        return (say::kit_shaft(), say::kit_shaft_to_pump(pto));
    }
    let input = &fit::shaft_type(kit.shaft.far_end);
    let what = match kit.shaft.reverses {
        Some(true) => say::KitShaftReverses { pto, input }.said(),
        Some(false) => say::KitShaftKeeps { pto, input }.said(),
        None => say::KitShaftToInput { pto, input }.said(),
    };
    (say::kit_shaft(), what)
}
