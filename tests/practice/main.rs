//! Cases to practise on: fair, the same everywhere, rightly judged, and without their answer.

mod fading;
mod fair;
mod hidden;
mod judged;
mod same;
