//! What a learner is given to answer by: figures of the yard, nothing that follows from them.

use super::case::{Scene, route_and_kit};
use crate::number;
use crate::text::{claims, fit, labels};
use farend_core::claims::{Sheet, SheetFigure};
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
pub const NOT_KNOWN: &str = "What isn't said isn't known.";
pub(super) const NONE: &str = "none";

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
        let what = format!(
            "{} net at {}; runs at {}",
            number::power(engine.net.likely, self.units),
            self.shown(Quantity::Speed(engine.rated)),
            self.shown(Quantity::Speed(at))
        );
        ("Engine", what)
    }

    fn pto(&self, pto: &Pto) -> String {
        format!(
            "{} with the engine at {}",
            self.shown(Quantity::Speed(pto.rated)),
            self.shown(Quantity::Speed(pto.engine_speed))
        )
    }

    fn ptos(&self) -> Vec<Fact> {
        let machine = &self.scene.machine;
        let told = |pto: Option<&Pto>| match pto {
            None => NONE.to_owned(),
            Some(pto) => format!("{}, turns {}", self.pto(pto), fit::turns(pto.end.turns)),
        };
        vec![
            (labels::rear_pto(), told(machine.rear_pto.as_ref())),
            ("Mid PTO", told(machine.mid_pto.as_ref())),
        ]
    }

    /// The machine's own hydraulics.
    fn circuit(&self, circuit: &Circuit) -> Vec<Fact> {
        let flow = |flow| self.shown(Quantity::Flow(flow));
        let steering = match circuit.steering {
            SteeringShare::SeparatePump => "a pump of its own, not in that flow".to_owned(),
            SteeringShare::LoadSensingPriority => "takes its share only while steering".to_owned(),
            SteeringShare::FixedPriority(share) => {
                format!("takes {} of that, always", flow(share.likely))
            }
            SteeringShare::Summed(share) => {
                format!(
                    "its {} are counted in, and never reach it",
                    flow(share.likely)
                )
            }
        };
        let oil = format!(
            "{} at {}, relief {}",
            flow(circuit.flow.likely),
            self.shown(Quantity::Speed(circuit.engine_speed)),
            self.shown(Quantity::Pressure(circuit.relief.likely))
        );
        vec![("Machine's oil", oil), ("Steering", steering)]
    }

    pub(super) fn own_circuit(&self) -> Vec<Fact> {
        let circuit = self.case.settings.own_circuit(&self.scene.machine);
        match circuit {
            Some(circuit) => self.circuit(circuit),
            None => vec![("Machine's oil", NONE.to_owned())],
        }
    }

    fn rotor(&self) -> Fact {
        let rotor = &self.scene.implement.rotor;
        let what = format!(
            "built for {}, works from {} on",
            self.shown(Quantity::Speed(rotor.rated)),
            self.shown(Quantity::Speed(rotor.lowest))
        );
        (labels::rotor(), what)
    }

    fn need(&self) -> Fact {
        let need = need_for(&self.scene.implement, &self.case.settings);
        ("The job needs", number::power(need.likely, self.units))
    }

    pub(super) fn motor(&self) -> Option<Fact> {
        let motor = self.scene.implement.motor.as_ref()?;
        let mut what = format!(
            "{}, up to {} and {}",
            self.shown(Quantity::Displacement(motor.displacement)),
            self.shown(Quantity::Flow(motor.highest_flow)),
            self.shown(Quantity::Pressure(motor.highest_pressure))
        );
        if motor.ratio != 1.0 {
            let ratio = number::fixed(motor.ratio, 2);
            what.push_str(&format!(", 1 to {ratio} to the rotor"));
        }
        Some(("Motor", what))
    }

    fn shafts(&self) -> Vec<Fact> {
        let shafts = self.scene.implement.shafts.iter();
        shafts
            .map(|shaft| {
                let mut what = format!(
                    "{}, must turn {}",
                    self.shown(Quantity::Speed(shaft.speed)),
                    fit::turns(shaft.end.turns)
                );
                if let Some(rating) = shaft.rating {
                    what.push_str(&format!(
                        ", may take {}",
                        number::power(rating.likely, self.units)
                    ));
                }
                (place(shaft.place), what)
            })
            .collect()
    }

    pub(super) fn kit(&self) -> Vec<Fact> {
        let Some(kit) = &self.scene.kit else {
            return Vec::new();
        };
        let mut facts = vec![("Kit", kit.name.clone())];
        let ratio: f64 = kit.drive.iter().map(|gear| gear.ratio).product();
        if (ratio - 1.0).abs() > 1e-9 {
            facts.push(("Kit's box", format!("1 to {}", number::fixed(ratio, 2))));
        }
        if let Some(pump) = &kit.pump {
            let relief = self.case.settings.pack.relief.unwrap_or(pump.relief.likely);
            let what = format!(
                "{} each turn, relief {}",
                self.shown(Quantity::Displacement(pump.displacement)),
                self.shown(Quantity::Pressure(relief))
            );
            facts.push(("Kit's pump", what));
        }
        if let Some(hoses) = &kit.hoses {
            let hose = |pipe: &Pipe| {
                let length = self.shown(Quantity::Length(pipe.length));
                format!("{length} of {}", self.shown(Quantity::Bore(pipe.bore)))
            };
            let (there, back) = (hose(&hoses.supply), hose(&hoses.back));
            let what = match there == back {
                true => format!("{there} each way"),
                false => format!("{there} there, {back} back"),
            };
            facts.push(("Hoses", what));
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
            found.cloned().unwrap_or((name, NONE.to_owned()))
        }));
        facts.push(self.motor().unwrap_or(("Motor", NONE.to_owned())));
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
                facts.push(("PTO", self.pto(pto)));
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
        let rating = sheet.rating.map(|it| claims::rating(it).to_lowercase());
        let engine = sheet.engine.map(|it| match &rating {
            Some(rating) => format!("{} {rating}", power(it)),
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
        let said = said.into_iter().filter_map(|(name, what)| {
            Some((claims::figure(name), format!("sheet says {}", what?)))
        });
        said.chain(core::iter::once(self.engine()))
            .chain(self.own_circuit())
            .collect()
    }
}

pub(super) fn place(place: Place) -> &'static str {
    match place {
        Place::Rear => "Input for the rear",
        Place::Front => "Input for the front",
    }
}
