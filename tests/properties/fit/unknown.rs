//! What isn't known is asked and never a pass.

use super::{Joint, Uses, on_each_route, pairs};
use farend_core::fit::Judgement;
use farend_core::hookup::{Axles, InputEnd, KitShaft, Mount, PtoEnd};
use farend_core::machine::Pto;
use farend_tests::item_kind::ItemKind;
use proptest::prelude::*;

impl Joint {
    fn ptos(&mut self) -> impl Iterator<Item = &mut Pto> {
        let machine = &mut self.machine;
        let ptos = [
            &mut machine.rear_pto,
            &mut machine.economy_pto,
            &mut machine.mid_pto,
        ];
        ptos.into_iter().flatten()
    }

    fn axles(&mut self, change: fn(&mut Axles)) {
        self.machine.axles.iter_mut().for_each(change);
    }

    fn pto_ends(&mut self, change: fn(&mut PtoEnd)) {
        self.ptos().for_each(|pto| change(&mut pto.end));
    }

    fn input_ends(&mut self, change: fn(&mut InputEnd)) {
        let shafts = self.implement.shafts.iter_mut();
        shafts.for_each(|shaft| change(&mut shaft.end));
    }
}

type Change = (&'static str, fn(&mut Joint));

/// Figures that a yard needn't say. Where it doesn't say which way a rear PTO turns, that's as ISO
/// 500-1 wants it, so that isn't here.
const BLANKS: &[Change] = &[
    ("hitch", |it| it.machine.hitch = None),
    ("hitch.category", |it| {
        it.machine
            .hitch
            .iter_mut()
            .for_each(|it| it.category = None);
    }),
    ("hitch.lift", |it| {
        it.machine.hitch.iter_mut().for_each(|it| it.lift = None);
    }),
    ("hitch.lowest", |it| {
        it.machine.hitch.iter_mut().for_each(|it| it.lowest = None);
    }),
    ("hitch.highest", |it| {
        it.machine.hitch.iter_mut().for_each(|it| it.highest = None);
    }),
    ("loader", |it| it.machine.loader = None),
    ("loader.lift", |it| {
        it.machine.loader.iter_mut().for_each(|it| it.lift = None);
    }),
    ("loader.reach", |it| {
        it.machine.loader.iter_mut().for_each(|it| it.reach = None);
    }),
    ("loader.third_function", |it| {
        let loader = it.machine.loader.iter_mut();
        loader.for_each(|it| it.third_function = None);
    }),
    ("machine.mass", |it| it.machine.mass = None),
    ("axles", |it| it.machine.axles = None),
    ("axles.front_limit", |it| {
        it.axles(|it| it.front_limit = None)
    }),
    ("axles.rear_limit", |it| it.axles(|it| it.rear_limit = None)),
    ("axles.loader_ahead", |it| {
        it.axles(|it| it.loader_ahead = None);
    }),
    ("axles.frame_ahead", |it| {
        it.axles(|it| it.frame_ahead = None)
    }),
    ("axles.hitch_behind", |it| {
        it.axles(|it| it.hitch_behind = None);
    }),
    ("mid_pto.turns", |it| {
        it.machine
            .mid_pto
            .iter_mut()
            .for_each(|it| it.end.turns = None);
    }),
    ("pto.shaft", |it| it.pto_ends(|it| it.shaft = None)),
    ("pto.height", |it| it.pto_ends(|it| it.height = None)),
    ("pto.ahead", |it| it.pto_ends(|it| it.ahead = None)),
    ("input.shaft", |it| it.input_ends(|it| it.shaft = None)),
    ("input.turns", |it| it.input_ends(|it| it.turns = None)),
    ("input.behind", |it| it.input_ends(|it| it.behind = None)),
    ("input.above", |it| it.input_ends(|it| it.above = None)),
    ("implement.mass", |it| it.implement.mass = None),
    ("mount", |it| {
        // Which way it is driven isn't a question but a place.
        it.implement.mount = Mount {
            backwards: it.implement.mount.backwards,
            ..Mount::default()
        };
    }),
    ("mount.category", |it| it.implement.mount.category = None),
    ("mount.centre", |it| it.implement.mount.centre = None),
    ("mount.guarded", |it| it.implement.mount.guarded = None),
    ("kit.shaft", |it| it.kit.shaft = KitShaft::default()),
    ("kit.pto_end", |it| it.kit.shaft.pto_end = None),
    ("kit.far_end", |it| it.kit.shaft.far_end = None),
    ("kit.closed", |it| it.kit.shaft.closed = None),
    ("kit.open", |it| it.kit.shaft.open = None),
    ("kit.reverses", |it| it.kit.shaft.reverses = None),
    ("kit.guarded", |it| it.kit.shaft.guarded = None),
    ("kit.slips", |it| it.kit.slips = None),
    ("hoses.coupler_size", |it| {
        it.kit
            .hoses
            .iter_mut()
            .for_each(|it| it.coupler_size = None);
    }),
    ("hoses.case_drain", |it| {
        it.kit.hoses.iter_mut().for_each(|it| it.case_drain = None);
    }),
    ("circuit.coupler_size", |it| {
        let circuits = it.machine.circuits.iter_mut();
        circuits.for_each(|it| it.coupler_size = None);
    }),
    ("circuit.case_drain", |it| {
        let circuits = it.machine.circuits.iter_mut();
        circuits.for_each(|it| it.case_drain = None);
    }),
    ("motor.case_drain", |it| {
        it.implement
            .motor
            .iter_mut()
            .for_each(|it| it.case_drain = None);
    }),
];

#[test]
fn what_isnt_known_is_asked_and_never_a_pass() {
    let asked = Uses::default();
    on_each_route(150, |case| {
        let joint = Joint::of(&case);
        let before = joint.look(&case).items();
        for (name, blank) in BLANKS {
            let mut blanked = joint.clone();
            blank(&mut blanked);
            for (was, is) in pairs(&before, &blanked.look(&case).items())? {
                prop_assert!(
                    is.judgement == was.judgement || is.judgement == Judgement::Question,
                    "{name}: {was:?} becomes {is:?}"
                );
                if was.judgement != is.judgement {
                    asked.count(name);
                }
            }
        }
        Ok(())
    });
    for (name, _) in BLANKS {
        assert!(asked.of(name) > 0, "{name} was never asked for");
    }
}

/// The list of what each item can come to leaves nothing out.
#[test]
fn an_item_comes_to_nothing_but_what_is_listed() {
    on_each_route(150, |case| {
        for item in Joint::of(&case).look(&case).items() {
            let kind = ItemKind::of(&item.check);
            let mut listed = ItemKind::ALL.iter().filter(|(of, _)| *of == kind);
            let can_be = listed.next().map_or(&[][..], |(_, can_be)| can_be);
            prop_assert!(can_be.contains(&item.judgement), "{item:?}");
        }
        Ok(())
    });
}
