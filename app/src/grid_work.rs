//! Gets the rows of the whole yard: from a worker, or in short slices on the page's own thread where
//! the browser allows none.

use crate::model::Model;
use crate::{browser, worker};
use farend_core::grid::{Pair, from_bytes, rows};
use farend_core::settings::Settings;
use farend_core::state::View;
use farend_core::yard::Yard;
use js_sys::Uint8Array;
use leptos::prelude::*;
use std::cell::RefCell;
use std::collections::VecDeque;
use std::ops::Range;
use std::rc::Rc;
use std::sync::Arc;
use std::time::Duration;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{MessageEvent, Worker};

/// Pairs of one slice in a worker: some hundredths of a second.
const SLICE: usize = 6_000;
/// Pairs of one slice on the page's own thread, which must not be held up for longer than a frame.
const SLICE_HERE: usize = 1_000;
/// Slices asked for before the first of them is there, so that the worker never waits.
const AHEAD: usize = 2;
/// A worker that hasn't said that it listens by then never will.
const PATIENCE: Duration = Duration::from_secs(10);

/// The rows of a yard as far as they are there.
pub type Rows = Vec<Option<Arc<[Pair]>>>;

/// The rows, and what can be done about them.
#[derive(Clone, Copy)]
pub struct GridWork {
    /// As far as they are there.
    pub rows: RwSignal<Rows>,
    /// Whether the user has stopped the work.
    pub stopped: RwSignal<bool>,
    work: StoredValue<Rc<RefCell<Work>>, LocalStorage>,
}

/// What the rows are of.
#[derive(Clone)]
struct Task {
    yard: Arc<Yard>,
    site: Settings,
    as_it_stands: bool,
}

impl PartialEq for Task {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.yard, &other.yard)
            && self.site == other.site
            && self.as_it_stands == other.as_it_stands
    }
}

/// Who computes.
enum Hand {
    /// Not yet known.
    Nobody,
    /// A worker that hasn't said yet that it listens.
    Starting(Worker),
    /// A worker.
    Worker(Worker),
    /// The page's own thread.
    Here,
}

struct Work {
    hand: Hand,
    task: Option<Task>,
    /// Counts tasks, so that answers to an earlier one are known.
    number: u64,
    /// The first row that hasn't been asked for.
    next: usize,
    /// What was asked for and isn't there yet: the task's number and the first row.
    asked: VecDeque<(u64, usize)>,
}

impl GridWork {
    /// Follows the model: rows are computed while the whole yard is on the screen.
    pub fn of(model: Model) -> Self {
        let grid = Self {
            rows: RwSignal::new(Vec::new()),
            stopped: RwSignal::new(false),
            work: StoredValue::new_local(Rc::new(RefCell::new(Work {
                hand: Hand::Nobody,
                task: None,
                number: 0,
                next: 0,
                asked: VecDeque::new(),
            }))),
        };
        let as_it_stands = Memo::new(move |_| model.state.read().selection.as_it_stands);
        let site = Memo::new(move |_| model.settings.get().of_site());
        Effect::new(move |_| {
            if model.view.get() == View::Grid {
                grid.begin(Task {
                    yard: model.yard.get(),
                    site: site.get(),
                    as_it_stands: as_it_stands.get(),
                });
            }
        });
        grid
    }

    /// How many of the rows are there, and how many there are.
    pub fn progress(self) -> (usize, usize) {
        let rows = self.rows.read();
        (rows.iter().flatten().count(), rows.len())
    }

    /// Computes no further, or goes on.
    pub fn stop(self, stopped: bool) {
        self.stopped.set(stopped);
        self.go_on();
    }

    fn work(self) -> Rc<RefCell<Work>> {
        self.work.get_value()
    }

    fn begin(self, task: Task) {
        let work = self.work();
        if work.borrow().task.as_ref() == Some(&task) {
            return;
        }
        self.rows.set(vec![None; task.yard.machines.len()]);
        self.stopped.set(false);
        {
            let mut work = work.borrow_mut();
            work.number += 1;
            work.next = 0;
            work.task = Some(task);
        }
        let first = matches!(work.borrow().hand, Hand::Nobody);
        if first {
            self.hire();
        }
        self.hand_over();
        self.go_on();
    }

    /// Starts a worker.
    fn hire(self) {
        let hand = browser::worker().map_or(Hand::Here, |worker| {
            let listen = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
                self.heard(&event);
            });
            worker.set_onmessage(Some(listen.as_ref().unchecked_ref()));
            let fail = Closure::<dyn FnMut()>::new(move || self.without_worker());
            worker.set_onerror(Some(fail.as_ref().unchecked_ref()));
            // They live as long as the page.
            listen.forget();
            fail.forget();
            set_timeout(
                move || {
                    let silent = matches!(self.work().borrow().hand, Hand::Starting(_));
                    if silent {
                        self.without_worker();
                    }
                },
                PATIENCE,
            );
            Hand::Starting(worker)
        });
        self.work().borrow_mut().hand = hand;
    }

    fn without_worker(self) {
        let work = self.work();
        {
            let mut work = work.borrow_mut();
            if let Hand::Worker(worker) | Hand::Starting(worker) = &work.hand {
                worker.terminate();
            }
            work.hand = Hand::Here;
            // What was asked of it never comes; what an earlier task asked isn't wanted any more.
            let number = work.number;
            let mut asked = work.asked.iter();
            let lost = asked.find(|(of, _)| *of == number).copied();
            if let Some((_, first)) = lost {
                work.next = first;
            }
            work.asked.clear();
        }
        self.go_on();
    }

    /// Tells the worker what the rows are of.
    fn hand_over(self) {
        let work = self.work();
        let work = work.borrow();
        if let (Hand::Worker(worker), Some(task)) = (&work.hand, &work.task) {
            // One that can't be reached fails at the first rows.
            let _ = worker::Asked::post(worker, &task.yard, task.site, task.as_it_stands);
        }
    }

    fn heard(self, event: &MessageEvent) {
        let Ok(bytes) = event.data().dyn_into::<Uint8Array>() else {
            let work = self.work();
            let mut work = work.borrow_mut();
            if let Hand::Starting(worker) = &work.hand {
                work.hand = Hand::Worker(worker.clone());
            }
            drop(work);
            self.hand_over();
            return self.go_on();
        };
        let work = self.work();
        let (front, number) = {
            let mut work = work.borrow_mut();
            (work.asked.pop_front(), work.number)
        };
        if let Some((of, first)) = front
            && of == number
        {
            match from_bytes(&bytes.to_vec()) {
                Some(rows) if !rows.is_empty() => self.take(first, rows),
                _ => {
                    work.borrow_mut().asked.push_front((number, first));
                    return self.without_worker();
                }
            }
        }
        self.go_on();
    }

    fn take(self, first: usize, computed: Vec<Vec<Pair>>) {
        self.rows.update(|rows| {
            for (row, computed) in rows.iter_mut().skip(first).zip(computed) {
                *row = Some(computed.into());
            }
        });
    }

    /// Asks for as many slices as may be waited for.
    fn go_on(self) {
        if self.stopped.get_untracked() {
            return;
        }
        let work = self.work();
        let mut work = work.borrow_mut();
        match &work.hand {
            Hand::Nobody | Hand::Starting(_) => {}
            Hand::Worker(worker) => {
                let worker = worker.clone();
                while work.asked.len() < AHEAD
                    && let Some(range) = work.slice(SLICE)
                {
                    let number = work.number;
                    work.asked.push_back((number, range.start));
                    if worker::ask(&worker, &range).is_none() {
                        drop(work);
                        return self.without_worker();
                    }
                }
            }
            Hand::Here => {
                let number = work.number;
                if let Some(range) = work.slice(SLICE_HERE) {
                    drop(work);
                    set_timeout(move || self.compute_here(number, range), Duration::ZERO);
                }
            }
        }
    }

    fn compute_here(self, number: u64, range: Range<usize>) {
        let work = self.work();
        let task = work.borrow().task.clone();
        if let Some(task) = task
            && work.borrow().number == number
        {
            let first = range.start;
            self.take(
                first,
                rows(&task.yard, range, &task.site, task.as_it_stands),
            );
            self.go_on();
        }
    }
}

impl Work {
    /// The next rows to ask for, with about so many pairs.
    fn slice(&mut self, pairs: usize) -> Option<Range<usize>> {
        let yard = &self.task.as_ref()?.yard;
        let all = yard.machines.len();
        let many = (pairs / yard.implements.len().max(1)).max(1);
        let range = self.next..(self.next + many).min(all);
        self.next = range.end;
        (!range.is_empty()).then_some(range)
    }
}
