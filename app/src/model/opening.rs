//! Files and links: what is taken over of them, or what is wrong with them.

use super::table::TableFile;
use super::yard::demo;
use super::{Model, Notice, take_implement, take_machine};
use crate::embed::Options;
use crate::link;
use farend_core::claims::Sheet;
use farend_core::export::open::{Opened, open};
use farend_core::settings::Settings;
use farend_core::state::State;
use farend_core::yard::Yard;
use farend_core::yard::edit::{Change, Editing};
use farend_core::yard::history::Deed;
use farend_core::yard::list::List;
use leptos::prelude::*;

impl Model {
    /// Takes over a yard file or a saved comparison, or says all that is wrong with it and leaves
    /// everything as it was. Of a table it shows what that would change.
    pub fn open_file(self, file: String, text: &str) {
        if TableFile::is_one(&file) {
            return self.open_table(file, text);
        }
        match open(text) {
            Err(faults) => {
                let mendable = mendable(text).map(Box::new);
                self.notice.set(Some(Notice::BadFile {
                    file,
                    faults,
                    mendable,
                }));
            }
            Ok(Opened {
                yard,
                state: Some(mut state),
            }) => {
                self.open_yard(Editing::from(&yard), file.clone());
                hold(&self.options.read_value(), &yard, &mut state);
                self.state.set(state);
                self.notice.set(Some(Notice::OpenedComparison(file)));
            }
            Ok(Opened { yard, state: None }) => {
                self.open_yard(Editing::from(&yard), file.clone());
                self.notice.set(Some(Notice::OpenedYard(file)));
            }
        }
    }

    /// Opens the yard of a file, and shows the start of it.
    pub fn open_yard(self, yard: Editing, file: String) {
        self.edit(Change::All(Box::new(yard)), Deed::Opened(file));
        self.state.update(|state| {
            let (units, view) = (state.units, state.view);
            *state = State {
                units,
                view,
                ..first_state(&self.yard.read_untracked(), &self.options.read_value())
            };
        });
        self.keep_a_running_route();
    }

    /// Takes over a link's state, or says what is wrong with it.
    pub fn open_link(self, fragment: &str) {
        if fragment == self.state.with_untracked(State::to_link) {
            return;
        }
        let yard = self.yard.read_untracked();
        let (state, notice) = read_link(&yard, fragment, &self.options.read_value());
        drop(yard);
        self.state.set(state);
        self.notice.set(notice);
        self.open_route_for(fragment);
    }

    /// A link opens the route that it names, whether that can be hooked up or not. Without a link, or with
    /// one that couldn't be taken as it is, a route that can be hooked up is opened.
    pub(super) fn open_route_for(self, fragment: &str) {
        let is_linked = !matches!(fragment, "" | link::DEMO);
        if !is_linked || self.notice.with_untracked(Option::is_some) {
            self.keep_a_running_route();
        }
    }
}

/// The yard of a file that has faults, where there are entries to mend.
fn mendable(text: &str) -> Option<Editing> {
    let yard = Editing::from_json(text).ok()?;
    let has_entries = List::ALL.iter().any(|list| yard.len(*list) > 0);
    has_entries.then_some(yard)
}

/// Whether the demo has what a link names.
fn demo_has(linked: &State) -> bool {
    let demo = demo();
    let has = |list, id: &str| demo.place(list, id).is_some();
    has(List::Machines, &linked.machine) && has(List::Implements, &linked.implement)
}

/// What a yard opens with: what the host wants, else its machine of middling power and its first
/// implement.
pub(super) fn first_state(yard: &Yard, options: &Options) -> State {
    let mut machines: Vec<_> = yard.machines.iter().collect();
    machines.sort_by(|a, b| {
        let (a, b) = (a.engine.net.likely.to_si(), b.engine.net.likely.to_si());
        a.total_cmp(&b)
    });
    let middle = machines.get(machines.len().saturating_sub(1) / 2);
    let implement = yard.implements.first();
    let mut state = State::of(
        middle.map_or_else(String::new, |machine| machine.id.clone()),
        implement.map_or_else(String::new, |implement| implement.id.clone()),
    );
    state.units = options.units.unwrap_or(state.units);
    hold(options, yard, &mut state);
    state
}

/// What the host has fixed stands in place of anything else, and its currency where there is none.
fn hold(options: &Options, yard: &Yard, state: &mut State) {
    if let Some(id) = options.machine_of(yard).filter(|id| *id != state.machine) {
        take_machine(state, yard, id.to_owned());
    }
    if let Some(id) = options
        .implement_of(yard)
        .filter(|id| *id != state.implement)
    {
        take_implement(state, id.to_owned());
    }
    if yard.currency.is_none() {
        let own = state.prices.currency.take();
        state.prices.currency = own.or_else(|| options.currency.clone());
    }
}

/// The state that a link means in a yard, and what must be said about it.
pub(super) fn read_link(yard: &Yard, fragment: &str, options: &Options) -> (State, Option<Notice>) {
    let fallback = first_state(yard, options);
    if fragment.is_empty() || fragment == link::DEMO {
        return (fallback, None);
    }
    let mut linked = match State::from_link(fragment) {
        Ok(linked) => linked,
        Err(fault) => return (fallback, Some(Notice::BadLink(fault))),
    };
    hold(options, yard, &mut linked);
    let machine = yard.machine(&linked.machine);
    let implement = yard.implement(&linked.implement);
    let (Some(machine), Some(_)) = (machine, implement) else {
        let missing = [
            machine.is_none().then(|| linked.machine.clone()),
            implement.is_none().then(|| linked.implement.clone()),
        ];
        // What the yard does have is kept.
        let state = State {
            machine: machine.map_or(fallback.machine, |machine| machine.id.clone()),
            implement: implement.map_or(fallback.implement, |implement| implement.id.clone()),
            units: linked.units,
            ..fallback
        };
        let missing = missing.into_iter().flatten().collect();
        let in_demo = demo_has(&linked).then(|| fragment.to_owned());
        return (state, Some(Notice::MissingFromYard { missing, in_demo }));
    };
    let checks = [linked.settings.check(machine), linked.sheet.check(machine)];
    let faults: Vec<_> = checks
        .into_iter()
        .filter_map(Result::err)
        .flatten()
        .collect();
    match faults.as_slice() {
        [] => (linked, None),
        _ => (
            State {
                settings: Settings::default(),
                sheet: Sheet::default(),
                ..linked
            },
            Some(Notice::BadSettings(faults)),
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::embed::part::Part;
    use crate::model::tests::{with_model, with_options};
    use farend_core::control::Control;
    use farend_core::quantity::AngularSpeed;
    use farend_core::route::RouteId;
    use farend_core::state::View;
    use farend_core::units::{Quantity, UnitSystem};
    use farend_core::yard::DEMO;

    #[test]
    fn a_link_brings_back_the_same_state() {
        with_model("", |model| {
            model.choose_machine("heron-68".to_owned());
            model.choose_implement("broom-180".to_owned());
            let bar = Quantity::Pressure(farend_core::quantity::Pressure::bar(150.0));
            model.turn(Control::OwnRelief, Some(bar));
            let state = model.state.get();
            with_model(&state.to_link(), |again| {
                assert_eq!(again.state.get(), state);
                assert_eq!(again.notice.get(), None);
            });
        });
    }

    #[test]
    fn no_link_leads_away_from_what_the_host_has_fixed() {
        let fixed = || Options {
            machine: Some("heron-68".to_owned()),
            units: Some(UnitSystem::Us),
            currency: Some("NZD".to_owned()),
            ..Options::default()
        };
        let mut linked = State::of("curlew-46".to_owned(), "broom-180".to_owned());
        linked.settings.engine_speed = Some(AngularSpeed::rpm(2300.0));
        for fragment in ["", &linked.to_link(), &linked.to_link()[1..]] {
            with_options(fixed(), fragment, |model| {
                assert_eq!(model.state.get().machine, "heron-68");
                assert_eq!(model.settings.get().engine_speed, None);
                assert!(model.comparison.get().is_some());
            });
        }
        with_options(fixed(), &linked.to_link(), |model| {
            assert_eq!(model.state.get().implement, "broom-180");
            // The reader's own units count.
            assert_eq!(model.units.get(), UnitSystem::Metric);
            assert_eq!(model.currency().as_deref(), Some("NZD"));
            model.open_link(
                &State {
                    units: UnitSystem::Us,
                    ..linked.clone()
                }
                .to_link(),
            );
            assert_eq!(model.units.get(), UnitSystem::Us);
            assert_eq!(model.state.get().machine, "heron-68");
        });
        with_options(fixed(), "", |model| {
            assert_eq!(model.units.get(), UnitSystem::Us);
            model.open_file("own.json".to_owned(), &DEMO.replace("heron-68", "own-68"));
            assert_ne!(model.state.get().machine, "heron-68");
            assert!(model.comparison.get().is_some());
        });
    }

    #[test]
    fn what_the_host_has_fixed_opens_with_a_route_that_can_be_hooked_up() {
        let fixed = Options {
            machine: Some("puffin-62".to_owned()),
            ..Options::default()
        };
        with_options(fixed, "", |model| {
            assert_eq!(model.route.get(), RouteId::SkidSteer);
        });
        // A link may show that one can't.
        let linked = State {
            route: RouteId::RearShaft,
            ..State::of("puffin-62".to_owned(), "broom-180".to_owned())
        };
        with_model(&linked.to_link(), |model| {
            assert_eq!(model.route.get(), RouteId::RearShaft);
        });
    }

    #[test]
    fn a_yards_own_currency_counts_before_the_hosts() {
        let options = Options {
            currency: Some("NZD".to_owned()),
            ..Options::default()
        };
        with_options(options, "", |model| {
            let own = DEMO.replacen('{', "{ \"currency\": \"NOK\",", 1);
            model.open_file("own.json".to_owned(), &own);
            assert_eq!(model.currency().as_deref(), Some("NOK"));
        });
    }

    #[test]
    fn a_view_that_the_host_leaves_out_is_not_opened_by_a_link() {
        let options = || Options {
            show: Some(vec![Part::Routes, Part::Grid]),
            ..Options::default()
        };
        for (view, opens) in [(View::Grid, View::Grid), (View::Yard, View::Pair)] {
            let linked = State {
                view,
                ..State::of("curlew-46".to_owned(), "broom-180".to_owned())
            };
            with_options(options(), &linked.to_link(), |model| {
                assert_eq!(model.view.get(), opens);
            });
        }
    }

    #[test]
    fn a_bad_file_leaves_everything_as_it_was() {
        with_model("", |model| {
            let (yard, state) = (model.yard.get(), model.state.get());
            model.open_file("bad.json".to_owned(), "{}");
            assert_eq!(model.yard.get(), yard);
            assert_eq!(model.state.get(), state);
            let Some(Notice::BadFile { faults, .. }) = model.notice.get() else {
                panic!("the faults must be told");
            };
            assert!(faults.len() > 1);
        });
    }

    /// The demo cut off at many places, and with a letter too many in many of its keys.
    #[test]
    fn no_damaged_file_touches_what_is_open() {
        let ends = DEMO.char_indices().step_by(DEMO.len() / 30);
        let cut = ends.map(|(end, _)| DEMO[..end].to_owned());
        let keys = DEMO.match_indices("\": ").step_by(20);
        let misspelt = keys.map(|(end, _)| format!("{}e{}", &DEMO[..end], &DEMO[end..]));
        let files: Vec<_> = cut.chain(misspelt).collect();
        assert!(files.len() > 60, "{}", files.len());
        with_model("", |model| {
            model.open_file("own.json".to_owned(), &DEMO.replace("heron-68", "own-68"));
            model.choose_machine("own-68".to_owned());
            let (yard, state) = (model.yard.get(), model.state.get());
            for file in files {
                model.open_file("bad.json".to_owned(), &file);
                let notice = model.notice.get();
                assert!(matches!(notice, Some(Notice::BadFile { .. })), "{file}");
                assert_eq!(model.yard.get(), yard);
                assert_eq!(model.state.get(), state);
            }
        });
    }

    #[test]
    fn a_saved_comparison_brings_back_yard_and_state() {
        with_model("", |model| {
            let own = DEMO.replace("heron-68", "own-68");
            model.open_file("own.json".to_owned(), &own);
            model.choose_machine("own-68".to_owned());
            model.state.update(|state| state.route = RouteId::PumpPack);
            let text = model.with_saved(|saved| saved.to_json().unwrap()).unwrap();
            let (yard, state) = (model.yard.get(), model.state.get());
            with_model("", |again| {
                again.open_file("saved.json".to_owned(), &text);
                assert_eq!(again.yard.get(), yard);
                assert_eq!(again.state.get(), state);
                let opened = Notice::OpenedComparison("saved.json".to_owned());
                assert_eq!(again.notice.get(), Some(opened));
            });
        });
    }

    #[test]
    fn a_link_to_missing_equipment_names_it_and_shows_the_rest() {
        with_model("", |model| {
            let mut state = model.state.get();
            state.machine = "not-there".to_owned();
            state.implement = "broom-180".to_owned();
            with_model(&state.to_link(), |again| {
                let missing = Notice::MissingFromYard {
                    missing: vec!["not-there".to_owned()],
                    in_demo: None,
                };
                assert_eq!(again.notice.get(), Some(missing));
                assert_eq!(again.state.get().implement, "broom-180");
            });
        });
    }
}
