//! How much of an engine's power reaches an implement's shaft, by each route, stage by stage.
//!
//! Conventions: SI inside, in the types of [`quantity`]; pressures are above the tank's; a ratio
//! is speed out over speed in; efficiencies are parts of one, in the sense of ISO 4391 for pumps
//! and motors. Every uncertain figure is low, likely and high ([`spread::Spread`]) and names its
//! [`source::Source`].
//!
//! One way for data: a yard file becomes checked types or a list of all its faults
//! ([`yard::Yard::from_json`]); machine, implement and kits with the user's [`settings::Settings`]
//! become ledgers ([`compare::compare`]).
//!
//! What each machine of a yard does best with each implement, without a browser:
//!
//! ```
//! use farend_core::{compare::compare, settings::Settings, yard::{DEMO, Yard}};
//!
//! let yard = Yard::from_json(DEMO)?;
//! for machine in &yard.machines {
//!     for implement in &yard.implements {
//!         let all = compare(machine, implement, &yard.kits, &Settings::default())?;
//!         let Some((route, run)) = all.ranked().first().copied() else { continue };
//!         let kilowatts = run.delivered.likely.to_kilowatts();
//!         println!("{} {} {} {kilowatts:.1} kW", machine.id, implement.id, route.word());
//! #       assert!(kilowatts < all.budget.net.likely.to_kilowatts());
//!     }
//! }
//! # Ok::<(), Vec<farend_core::fault::Fault>>(())
//! ```
//!
//! `cargo run -p farend-core --release --example yard -- --help` makes a table of all routes.

#![forbid(unsafe_code)]
#![warn(missing_docs)]
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::indexing_slicing,
        clippy::unreachable,
        clippy::todo
    )
)]

pub mod budget;
pub mod chain;
pub mod choice;
pub mod claims;
pub mod compare;
pub mod control;
pub mod defaults;
pub mod defaults_work;
pub mod drive;
pub mod export;
pub mod fault;
pub mod fit;
pub mod formula;
pub mod grid;
pub mod hint;
pub mod hookup;
pub mod implement;
pub mod kit;
pub mod machine;
pub mod measure;
pub mod money;
pub mod physics;
pub mod practice;
pub mod quantity;
pub mod recommend;
pub mod root;
pub mod route;
pub mod seat;
pub mod sensitivity;
pub mod settings;
pub mod source;
pub mod spread;
pub mod stage;
pub mod standing;
pub mod state;
pub mod survey;
pub mod sweep;
pub mod thermal;
pub mod units;
pub mod wanted;
mod words;

pub mod warning;
pub mod work;
pub mod yard;
