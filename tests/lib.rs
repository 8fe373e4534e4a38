//! Shared by the tests of this crate.
