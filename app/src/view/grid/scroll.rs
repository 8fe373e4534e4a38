//! A box in which more stands than is seen, and what of it is in sight.

use super::super::watch;
use super::span::{in_sight, scrolled_to};
use crate::browser;
use leptos::html::Div;
use leptos::prelude::*;
use std::ops::Range;

/// A box that scrolls.
#[derive(Clone, Copy)]
pub struct Scroll {
    /// The box.
    pub node: NodeRef<Div>,
    /// What is scrolled away, across and down, in pixels.
    from: RwSignal<[f64; 2]>,
    /// What is seen, across and down, in pixels.
    extent: RwSignal<[f64; 2]>,
}

/// Which way.
#[derive(Clone, Copy, PartialEq)]
pub enum Way {
    /// From left to right.
    Across = 0,
    /// From top to bottom.
    Down = 1,
}

impl Scroll {
    /// Nothing is scrolled away yet.
    pub fn new() -> Self {
        let scroll = Self {
            node: NodeRef::new(),
            from: RwSignal::new([0.0; 2]),
            extent: RwSignal::new([0.0; 2]),
        };
        watch::size(scroll.node, move |element| {
            let size = [element.client_width(), element.client_height()];
            let _ = scroll.extent.try_set(size.map(f64::from));
        });
        scroll
    }

    /// To be called when it has scrolled.
    pub fn follow(self) {
        if let Some(element) = self.node.get_untracked() {
            let from = [element.scroll_left(), element.scroll_top()];
            self.from.set(from.map(f64::from));
        }
    }

    /// The width that is seen, in rem.
    pub fn width(self) -> f64 {
        self.extent.get()[0] / browser::rem()
    }

    /// The places in sight of so many of one size in rem, behind a head of so many rem.
    pub fn in_sight(self, way: Way, count: usize, size: f64, head: f64) -> Range<usize> {
        let rem = browser::rem();
        let (from, extent) = (
            self.from.get()[way as usize],
            self.extent.get()[way as usize],
        );
        in_sight(count, size * rem, from, extent - head * rem)
    }

    /// Brings a place in sight.
    pub fn to(self, way: Way, place: usize, size: f64, head: f64) {
        let Some(element) = self.node.get_untracked() else {
            return;
        };
        let rem = browser::rem();
        let from = self.from.get_untracked()[way as usize];
        let extent = self.extent.get_untracked()[way as usize] - head * rem;
        let to = scrolled_to(place, size * rem, from, extent).round() as i32;
        match way {
            Way::Across => element.set_scroll_left(to),
            Way::Down => element.set_scroll_top(to),
        }
    }

    /// How many of one size in rem are seen at once, downwards.
    pub fn page(self, size: f64, head: f64) -> usize {
        let rem = browser::rem();
        let extent = self.extent.get_untracked()[Way::Down as usize] - head * rem;
        ((extent / (size * rem)) as usize).max(1)
    }
}
