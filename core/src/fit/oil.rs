//! Items of a route's oil.

use super::{Check, Item, Judgement, Look, all, same, there};
use crate::drive::Rate;
use crate::machine::Circuit;
use crate::route::part::{Part, circuit};
use crate::stage::Stage;

pub(super) fn look(look: &Look<'_>, items: &mut Vec<Item>) {
    let Some(motor) = look
        .implement
        .motor
        .as_ref()
        .filter(|_| look.route.needs_oil())
    else {
        return;
    };
    let circuit = own_circuit(look);
    let hoses = look.kit.hoses.as_ref();
    if let Some(circuit) = circuit {
        let (machine, hoses) = (
            circuit.coupler_size,
            hoses.and_then(|hoses| hoses.coupler_size),
        );
        items.push(Item {
            check: Check::Couplers { machine, hoses },
            judgement: match same(machine, hoses) {
                // Half a coupler is soon changed.
                Judgement::Stop => Judgement::Advice,
                judgement => judgement,
            },
        });
    }
    for passage in look.run.iter().flat_map(|run| &run.ledger.passages) {
        match (&passage.stage, passage.takes.rate) {
            (Stage::Divert(_), Rate::Flowing(comes)) => items.push(Item {
                check: Check::MotorFlow {
                    comes,
                    most: motor.highest_flow,
                },
                judgement: at_most(comes <= motor.highest_flow),
            }),
            (Stage::Pump(pump), _) => items.push(Item {
                check: Check::MotorPressure {
                    relief: pump.relief.likely,
                    most: motor.highest_pressure,
                },
                judgement: at_most(pump.relief.likely <= motor.highest_pressure),
            }),
            _ => {}
        }
    }
    let drain = all([
        hoses.and_then(|hoses| hoses.case_drain),
        // A pump pack's tank takes any line.
        circuit.map_or(Some(true), |circuit| circuit.case_drain),
    ]);
    items.push(Item {
        check: Check::CaseDrain {
            needs: motor.case_drain,
            there: drain,
        },
        judgement: match motor.case_drain {
            Some(true) => there(drain),
            Some(false) => Judgement::Pass,
            None => Judgement::Question,
        },
    });
    if let Some(heat) = look.heat {
        let [cautious, _] = heat.settling;
        items.push(Item {
            check: Check::OilHeat {
                after: cautious.to_limit,
                cooler: heat.cooler_duty,
            },
            judgement: at_most(heat.holds().is_none()),
        });
    }
}

fn at_most(holds: bool) -> Judgement {
    if holds {
        Judgement::Pass
    } else {
        Judgement::Advice
    }
}

/// The machine's own circuit that the route takes.
fn own_circuit<'a>(look: &Look<'a>) -> Option<&'a Circuit> {
    look.route.parts().iter().find_map(|part| match part {
        Part::Circuit(outlets) => circuit(look.machine, outlets, look.settings),
        _ => None,
    })
}
