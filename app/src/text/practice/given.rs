//! What a learner is given to answer by: figures of the yard, nothing that follows from them.

use super::case::{Scene, route_and_kit};
use crate::number;
use crate::text::say::practice::given as say;
use crate::text::{claims, fit, labels, sentences};
use farend_core::claims::{Rating, Sheet, SheetFigure};
use farend_core::implement::Place;
use farend_core::machine::{Circuit, Pto, SteeringShare};
use farend_core::physics::line::Pipe;
use farend_core::practice::{Case, Question};
use farend_core::route::RouteId;
use farend_core::route::part::Part;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::work::need_for;

/// One fact: what it's about, and what is known.
pub type Fact = (&'static str, String);

/// How to read what isn't there.
pub use crate::text::say::practice::given::not_known_unless_said;

/// What is known of a case.
pub fn facts(scene: &Scene, case: &Case, units: UnitSystem) -> Vec<Fact> {
    let given = Given { scene, case, units };
    match &case.question {
        Question::Route { .. } => given.of_all_routes(),
        Question::Sheet { sheet, .. } => given.of_sheet(sheet),
        Question::Fit { route, .. } => given.of_fit(*route),
        _ => given.of_route(route_and_kit(&case.question).map(|(route, _)| route)),
    }
}

/// A case to be told of.
pub(super) struct Given<'a> {
    pub scene: &'a Scene,
    pub case: &'a Case,
    pub units: UnitSystem,
}

impl Given<'_> {
    pub(super) fn shown(&self, quantity: Quantity) -> String {
        number::shown(quantity, self.units)
    }

    fn engine(&self) -> Fact {
        let engine = &self.scene.machine.engine;
        let at = self.case.settings.engine_speed_for(&self.scene.machine);
        let what = say::EngineRuns {
            power: &number::power(engine.net.likely, self.units),
            rated: &self.shown(Quantity::Speed(engine.rated)),
            speed: &self.shown(Quantity::Speed(at)),
        };
        (labels::engine(), what.said())
    }

    fn ptos(&self) -> Vec<Fact> {
        let machine = &self.scene.machine;
        let told = |pto: Option<&Pto>| match pto {
            None => none(),
            Some(pto) => say::PtoTurns {
                gear: &sentences::pto_gear(pto, self.units),
                direction: fit::turns(pto.end.turns),
            }
            .said(),
        };
        vec![
            (labels::rear_pto(), told(machine.rear_pto.as_ref())),
            (say::mid_pto(), told(machine.mid_pto.as_ref())),
        ]
    }

    /// The machine's own hydraulics.
    fn circuit(&self, circuit: &Circuit) -> Vec<Fact> {
        let flow = |flow| self.shown(Quantity::Flow(flow));
        let steering = match circuit.steering {
            SteeringShare::SeparatePump => say::steering_separate_pump().to_owned(),
            SteeringShare::LoadSensingPriority => say::steering_load_sensing().to_owned(),
            SteeringShare::FixedPriority(share) => say::steering_fixed(&flow(share.likely)),
            SteeringShare::Summed(share) => say::steering_summed(&flow(share.likely)),
        };
        let oil = say::MachineOilFacts {
            flow: &flow(circuit.flow.likely),
            speed: &self.shown(Quantity::Speed(circuit.engine_speed)),
            relief: &self.shown(Quantity::Pressure(circuit.relief.likely)),
        };
        vec![
            (say::machine_oil(), oil.said()),
            (say::steering(), steering),
        ]
    }

    pub(super) fn own_circuit(&self) -> Vec<Fact> {
        let circuit = self.case.settings.own_circuit(&self.scene.machine);
        match circuit {
            Some(circuit) => self.circuit(circuit),
            None => vec![(say::machine_oil(), none())],
        }
    }

    fn rotor(&self) -> Fact {
        let rotor = &self.scene.implement.rotor;
        let what = say::RotorFacts {
            rated: &self.shown(Quantity::Speed(rotor.rated)),
            lowest: &self.shown(Quantity::Speed(rotor.lowest)),
        };
        (labels::rotor(), what.said())
    }

    fn need(&self) -> Fact {
        let need = need_for(&self.scene.implement, &self.case.settings);
        (say::need(), number::power(need.likely, self.units))
    }

    pub(super) fn motor(&self) -> Option<Fact> {
        let motor = self.scene.implement.motor.as_ref()?;
        let displacement = &self.shown(Quantity::Displacement(motor.displacement));
        let flow = &self.shown(Quantity::Flow(motor.highest_flow));
        let pressure = &self.shown(Quantity::Pressure(motor.highest_pressure));
        let what = if motor.ratio == 1.0 {
            say::MotorFacts {
                displacement,
                flow,
                pressure,
            }
            .said()
        } else {
            say::MotorGeared {
                displacement,
                flow,
                pressure,
                ratio: &number::fixed(motor.ratio, 2),
            }
            .said()
        };
        Some((say::motor(), what))
    }

    fn shafts(&self) -> Vec<Fact> {
        let shafts = self.scene.implement.shafts.iter();
        shafts
            .map(|shaft| {
                let speed = &self.shown(Quantity::Speed(shaft.speed));
                let direction = fit::turns(shaft.end.turns);
                let what = match shaft.rating {
                    None => say::Shaft { speed, direction }.said(),
                    Some(rating) => say::ShaftRated {
                        speed,
                        direction,
                        power: &number::power(rating.likely, self.units),
                    }
                    .said(),
                };
                (place(shaft.place), what)
            })
            .collect()
    }

    pub(super) fn kit(&self) -> Vec<Fact> {
        let Some(kit) = &self.scene.kit else {
            return Vec::new();
        };
        let mut facts = vec![(say::kit(), kit.name.clone())];
        let ratio: f64 = kit.drive.iter().map(|gear| gear.ratio).product();
        if (ratio - 1.0).abs() > 1e-9 {
            let what = say::kit_box_facts(&number::fixed(ratio, 2));
            facts.push((say::kit_box(), what));
        }
        if let Some(pump) = &kit.pump {
            let relief = self.case.settings.pack.relief.unwrap_or(pump.relief.likely);
            let what = say::KitPumpFacts {
                displacement: &self.shown(Quantity::Displacement(pump.displacement)),
                relief: &self.shown(Quantity::Pressure(relief)),
            };
            facts.push((say::kit_pump(), what.said()));
        }
        if let Some(hoses) = &kit.hoses {
            let hose = |pipe: &Pipe| {
                let hose = say::Hose {
                    length: &self.shown(Quantity::Length(pipe.length)),
                    bore: &self.shown(Quantity::Bore(pipe.bore)),
                };
                hose.said()
            };
            let (there, back) = (&hose(&hoses.supply), &hose(&hoses.back));
            let what = match there == back {
                true => say::hoses_each_way(there),
                false => say::HosesThereAndBack { there, back }.said(),
            };
            facts.push((say::hoses(), what));
        }
        facts
    }

    fn of_all_routes(&self) -> Vec<Fact> {
        let mut facts = vec![self.engine()];
        facts.extend(self.ptos());
        facts.extend(self.own_circuit());
        let places = [Place::Rear, Place::Front].map(place);
        let shafts = self.shafts();
        facts.extend(places.map(|name| {
            let found = shafts.iter().find(|(of, _)| *of == name);
            found.cloned().unwrap_or_else(|| (name, none()))
        }));
        facts.push(self.motor().unwrap_or_else(|| (say::motor(), none())));
        facts.push(self.rotor());
        facts.extend(self.carrying());
        facts
    }

    fn of_route(&self, route: Option<RouteId>) -> Vec<Fact> {
        let mut facts = vec![self.engine()];
        let Some(route) = route else {
            return facts;
        };
        let machine = &self.scene.machine;
        let parts = route.parts();
        let ptos = [
            (Part::RearPto, machine.rear_pto(self.case.settings.economy)),
            (Part::MidPto, machine.mid_pto.as_ref()),
        ];
        for (part, pto) in ptos {
            if let Some(pto) = pto.filter(|_| parts.contains(&part)) {
                facts.push((say::pto(), sentences::pto_gear(pto, self.units)));
            }
        }
        if route.needs_oil() && !route.has_pto() {
            facts.extend(self.own_circuit());
        }
        facts.extend(self.kit());
        if route.needs_oil() {
            facts.extend(self.motor());
        } else {
            let place = match parts.contains(&Part::Shaft(Place::Rear)) {
                true => Place::Rear,
                false => Place::Front,
            };
            let shafts = self.shafts().into_iter();
            facts.extend(shafts.filter(|(name, _)| *name == self::place(place)));
        }
        facts.push(self.rotor());
        facts.push(self.need());
        facts
    }

    fn of_sheet(&self, sheet: &Sheet) -> Vec<Fact> {
        let power = |power| number::power(power, self.units);
        let engine = sheet.engine.map(|it| match sheet.rating {
            Some(Rating::Net) => say::engine_net(&power(it)),
            Some(Rating::Gross) => say::engine_gross(&power(it)),
            None => power(it),
        });
        let said = [
            (
                SheetFigure::Flow,
                sheet.flow.map(|it| self.shown(Quantity::Flow(it))),
            ),
            (
                SheetFigure::Pressure,
                sheet.pressure.map(|it| self.shown(Quantity::Pressure(it))),
            ),
            (SheetFigure::Hydraulic, sheet.hydraulic.map(power)),
            (
                SheetFigure::Taken,
                sheet.taken.map(|it| claims::taken(it).to_owned()),
            ),
            (
                SheetFigure::EngineSpeed,
                sheet.engine_speed.map(|it| self.shown(Quantity::Speed(it))),
            ),
            (SheetFigure::Engine, engine),
            (SheetFigure::Pto, sheet.pto.map(power)),
        ];
        let said = said
            .into_iter()
            .filter_map(|(name, what)| Some((claims::figure(name), say::sheet_says(&what?))));
        said.chain(core::iter::once(self.engine()))
            .chain(self.own_circuit())
            .collect()
    }
}

/// In place of what isn't there.
pub(super) fn none() -> String {
    say::none().to_owned()
}

pub(super) fn place(place: Place) -> &'static str {
    match place {
        Place::Rear => say::input_rear(),
        Place::Front => say::input_front(),
    }
}
