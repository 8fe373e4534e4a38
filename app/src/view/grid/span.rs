//! Which of many equal rows or columns are in sight.

use std::ops::Range;

/// More than are in sight, on each side, so that a turn of the wheel finds them there.
const MARGIN: usize = 2;

/// The places in sight: of so many with one size, where `from` is scrolled away and `extent` is
/// seen.
pub fn in_sight(count: usize, size: f64, from: f64, extent: f64) -> Range<usize> {
    if size <= 0.0 {
        return 0..0;
    }
    let first = (from.max(0.0) / size) as usize;
    let last = ((from + extent).max(0.0) / size) as usize + 1;
    first.saturating_sub(MARGIN).min(count)..(last + MARGIN).min(count)
}

/// Where to scroll so that a place is in sight behind a head of its own size.
pub fn scrolled_to(place: usize, size: f64, from: f64, extent: f64) -> f64 {
    let start = place as f64 * size;
    if start < from {
        start
    } else if start + size > from + extent {
        start + size - extent
    } else {
        from
    }
}

#[cfg(test)]
mod tests {
    use super::{MARGIN, in_sight, scrolled_to};

    #[test]
    fn only_what_is_in_sight_is_there() {
        assert_eq!(in_sight(500, 50.0, 0.0, 600.0), 0..13 + MARGIN);
        assert_eq!(in_sight(500, 50.0, 1000.0, 600.0), 20 - MARGIN..33 + MARGIN);
        assert_eq!(in_sight(3, 50.0, 0.0, 600.0), 0..3);
        assert_eq!(in_sight(0, 50.0, 0.0, 600.0), 0..0);
        // A scroll that bounces, and one beyond what a filter has left.
        assert_eq!(in_sight(500, 50.0, -80.0, 600.0), 0..11 + MARGIN);
        assert_eq!(in_sight(10, 50.0, 9000.0, 600.0), 10..10);
    }

    #[test]
    fn a_place_is_brought_in_sight_by_the_shortest_way() {
        assert_eq!(scrolled_to(3, 50.0, 0.0, 600.0), 0.0);
        assert_eq!(scrolled_to(12, 50.0, 0.0, 600.0), 50.0);
        assert_eq!(scrolled_to(3, 50.0, 400.0, 600.0), 150.0);
    }
}
