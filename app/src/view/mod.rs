//! What is on the screen: one part of the page a file.

mod answer;
mod bars;
mod beside;
mod cautions;
mod choices;
mod choose;
mod claims;
mod code;
mod control;
mod cost;
mod curve;
mod deciding;
mod deeper;
mod entry;
mod fit;
mod fold;
mod formula;
mod header;
mod ledger;
mod notice;
pub mod page;
mod radio;
mod sources;
mod take_home;
mod what_if;
mod work;
