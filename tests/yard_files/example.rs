//! The yard of the example of a dealer's page.

use farend_core::settings::Settings;
use farend_tests::{compared, load};

#[test]
fn every_machine_of_the_example_drives_every_implement_by_some_route() {
    let yard = load(include_str!("../../docs/example-dealer/yard.json"));
    assert!(yard.invented);
    for machine in &yard.machines {
        for implement in &yard.implements {
            let all = compared(&yard, &machine.id, &implement.id, &Settings::default());
            let pair = (&machine.id, &implement.id);
            // A skid steer has no PTO, and the chipper no motor.
            let can = pair != (&"bramble-74".to_owned(), &"chipper-6".to_owned());
            assert_eq!(!all.ranked().is_empty(), can, "{pair:?}");
        }
    }
}
