//! What is on the screen: one part of the page a file.

mod answer;
mod bars;
mod cautions;
mod choices;
mod control;
mod curve;
mod deeper;
mod formula;
mod header;
mod ledger;
mod notice;
pub mod page;
mod picture;
mod radio;
mod save;
mod sources;
mod what_if;
mod work;
