//! Kits of a yard that fit better than the one that a route takes.

use super::{Judgement, Look, gravest};
use crate::compare::{Outcome, Run, evaluate};
use crate::kit::Kit;
use crate::route::part::Hookup;
use crate::thermal::heat_at_job;

/// A kit that fits better.
#[derive(Clone, Debug, PartialEq)]
pub struct OtherKit {
    /// The route with it.
    pub run: Run,
    /// What its items come to.
    pub gravest: Judgement,
}

/// The kits that serve a route and whose gravest item is better than that of the one that was
/// looked at: the best judged first, of those the one that delivers most. Of the kits that nothing
/// stops a route takes the one that delivers most, whatever must be asked or changed for it.
pub fn other_kits(look: &Look<'_>, kits: &[Kit]) -> Vec<OtherKit> {
    let than = gravest(&look.items());
    let mut others: Vec<_> = kits
        .iter()
        .filter_map(|kit| other(look, kit))
        .filter(|other| other.gravest < than)
        .collect();
    others.sort_by(|a, b| {
        let delivers = |other: &OtherKit| other.run.delivered.likely.to_si();
        (a.gravest.cmp(&b.gravest)).then(delivers(b).total_cmp(&delivers(a)))
    });
    others
}

/// The same route with another kit, where that serves it.
fn other(look: &Look<'_>, kit: &Kit) -> Option<OtherKit> {
    let Look {
        route,
        machine,
        implement,
        settings,
        ..
    } = *look;
    let kits = core::slice::from_ref(kit);
    let Outcome::Runs(run) = evaluate(route, machine, implement, kits, settings) else {
        return None;
    };
    let heat = heat_at_job(
        route,
        Hookup {
            machine,
            implement,
            kit: Some(kit),
            settings,
        },
    );
    let items = Look {
        kit,
        run: Some(&run),
        heat: heat.as_ref(),
        ..*look
    }
    .items();
    Some(OtherKit {
        gravest: gravest(&items),
        run: *run,
    })
}
