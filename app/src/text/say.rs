//! The messages of `app/lang/` in the language that is spoken now, a function each.
//!
//! A file there is a module, `pump = …` in it is `pump()`, and its attribute `.within` is
//! `pump_within()`. A message with one argument takes it; more are given by name, in a type of the
//! message's own: `Needs { brings, needs }.said()`.

use super::message::{Argument, filled, plain};

include!(concat!(env!("OUT_DIR"), "/messages.rs"));
