//! Prices and what follows from them, against hand arithmetic. Prices are invented.

use farend_core::choice::{Candidate, EVEN, Wish, weigh};
use farend_core::fit::Judgement;
use farend_core::hookup::Seat;
use farend_core::implement::ImplementKind;
use farend_core::implement::InputShaft;
use farend_core::money::{
    BreakEven, Prices, RoutePrices, Worker, break_even, is_price, per_watt, working, yard_prices,
};
use farend_core::quantity::{AngularSpeed, Power, Time};
use farend_core::route::RouteId;
use farend_core::standing::Standing;
use farend_core::survey::Asked;
use farend_tests::parts::Parts;

fn three(kit: Option<f64>, variant: Option<f64>, fitting: Option<f64>) -> RoutePrices {
    RoutePrices {
        kit,
        variant,
        fitting,
    }
}

#[test]
fn a_total_is_of_three_known_prices() {
    let (kit, variant, fitting) = (Some(1200.0), Some(6500.0), Some(300.0));
    // 1200 + 6500 + 300 = 8000
    assert_eq!(three(kit, variant, fitting).total(), Some(8000.0));
    assert_eq!(three(None, variant, fitting).total(), None);
    assert_eq!(three(kit, None, fitting).total(), None);
    assert_eq!(three(kit, variant, None).total(), None);
    // What costs nothing is known.
    assert_eq!(three(Some(0.0), Some(0.0), Some(0.0)).total(), Some(0.0));
}

#[test]
fn one_price_stands_in_for_another_only_where_that_is_missing() {
    let typed = three(Some(1.0), None, Some(0.0));
    let yard = three(Some(10.0), Some(20.0), Some(30.0));
    assert_eq!(typed.or(yard), three(Some(1.0), Some(20.0), Some(0.0)));
    assert_eq!(yard.or(typed), yard);
    let nothing = RoutePrices::default();
    assert_eq!(nothing.or(typed), typed);
    assert_eq!(nothing.or(nothing).total(), None);
}

#[test]
fn a_route_changes_only_its_own_prices() {
    for route in RouteId::ALL {
        let mut prices = Prices::default();
        let own = three(Some(7.0), None, None);
        *prices.of_mut(*route).expect("a route") = own;
        for other in RouteId::ALL {
            let is = if other == route {
                own
            } else {
                RoutePrices::default()
            };
            assert_eq!(prices.of(*other), is, "{route:?}, {other:?}");
        }
    }
}

/// Each kit, shaft and motor has a price of its own.
fn priced() -> Parts {
    let mut parts = Parts::of("curlew-46", "mower-150");
    for (place, kit) in parts.kits.iter_mut().enumerate() {
        let number = u32::try_from(place).expect("a few kits");
        kit.price = Some(f64::from(number));
        kit.fitting = Some(f64::from(number) + 0.5);
    }
    let [rear, front] = &parts.implement.shafts[..] else {
        panic!("one shaft for each end");
    };
    let like = |shaft: &InputShaft, rpm, price| InputShaft {
        speed: AngularSpeed::rpm(rpm),
        price: Some(price),
        ..shaft.clone()
    };
    parts.implement.shafts = vec![
        like(rear, 540.0, 541.0),
        like(rear, 1000.0, 1001.0),
        like(front, 2000.0, 2002.0),
        like(front, 1000.0, 1002.0),
    ];
    let motor = parts.implement.motor.as_mut().expect("a motor");
    motor.price = Some(3.0);
    parts
}

/// What the yard says of the implement's price by a route with a kit.
fn variant(parts: &Parts, route: RouteId, economy: bool, kit: &str) -> Option<f64> {
    let mut kits = parts.kits.iter().filter(|it| it.id == kit);
    let kit = kits.next().expect("a kit of the demo");
    let found = yard_prices(route, &parts.machine, economy, &parts.implement, kit);
    assert_eq!((found.kit, found.fitting), (kit.price, kit.fitting));
    found.variant
}

#[test]
fn the_yards_price_is_that_of_the_shaft_or_motor_that_the_route_takes() {
    use RouteId::{MachineHydraulics, MidShaft, PumpPack, RearShaft, SkidSteer, TurnedForward};
    let mut parts = priced();
    let price = |route, kit| variant(&parts, route, false, kit);
    assert_eq!(price(RearShaft, "joint-shaft"), Some(541.0));
    // 540·1.852 = 1000; the kit for a 1000 PTO would bring 540, and 1000 is nearer than 2000.
    assert_eq!(price(TurnedForward, "forward-kit-540"), Some(1002.0));
    assert_eq!(price(TurnedForward, "forward-kit-1000"), Some(1002.0));
    // The mid PTO's 2000: straight, and halved.
    assert_eq!(price(MidShaft, "mid-shaft-straight"), Some(2002.0));
    assert_eq!(price(MidShaft, "subframe-drive"), Some(1002.0));
    assert_eq!(price(MachineHydraulics, "loader-hoses"), Some(3.0));
    assert_eq!(price(PumpPack, "pump-pack-540"), Some(3.0));
    assert_eq!(price(SkidSteer, "skid-hoses"), Some(3.0));
    // A PTO at 1000 takes the other rear shaft; in the economy gear only where it has one.
    assert_eq!(variant(&parts, RearShaft, true, "joint-shaft"), Some(541.0));
    let mut economy = parts.machine.rear_pto.clone().expect("a rear PTO");
    economy.rated = AngularSpeed::rpm(1000.0);
    parts.machine.economy_pto = Some(economy);
    assert_eq!(
        variant(&parts, RearShaft, true, "joint-shaft"),
        Some(1001.0)
    );
    assert_eq!(
        variant(&parts, RearShaft, false, "joint-shaft"),
        Some(541.0)
    );
}

/// No sum is taken over two currencies; where one isn't named, it is the other.
#[test]
fn a_yards_prices_count_in_its_own_currency_only() {
    let parts = priced();
    let comparison = parts.compared();
    let bought = |yard: Option<&str>, user: Option<&str>| {
        let prices = Prices {
            currency: user.map(str::to_owned),
            ..Prices::default()
        };
        let asked = Asked {
            machine: &parts.machine,
            implement: &parts.implement,
            kits: &parts.kits,
            settings: &parts.settings,
            currency: yard,
            prices: &prices,
            weights: EVEN,
        };
        let survey = asked.survey(&comparison);
        let route = survey.route(RouteId::RearShaft).expect("a route");
        route.running.as_ref().expect("it runs").prices.variant
    };
    for (yard, user) in [
        (None, None),
        (Some("USD"), None),
        (None, Some("EUR")),
        (Some("EUR"), Some("EUR")),
    ] {
        assert_eq!(bought(yard, user), Some(541.0), "{yard:?} {user:?}");
    }
    assert_eq!(bought(Some("USD"), Some("EUR")), None);
}

#[test]
fn what_isnt_there_has_no_price() {
    use RouteId::{MidShaft, PumpPack, RearShaft};
    let mut parts = priced();
    parts.machine.mid_pto = None;
    assert_eq!(variant(&parts, MidShaft, false, "subframe-drive"), None);
    parts.machine.rear_pto = None;
    assert_eq!(variant(&parts, RearShaft, false, "joint-shaft"), None);
    // The price of the implement with a motor doesn't hang on a PTO.
    assert_eq!(variant(&parts, PumpPack, false, "pump-pack-540"), Some(3.0));
    parts.implement.motor = None;
    assert_eq!(variant(&parts, PumpPack, false, "pump-pack-540"), None);
    let mut parts = priced();
    parts.implement.shafts.clear();
    assert_eq!(variant(&parts, RearShaft, false, "joint-shaft"), None);
}

#[test]
fn a_survey_has_typed_prices_and_the_yards_where_none_are_typed() {
    let mut parts = priced();
    parts.kits.retain(|kit| kit.id == "joint-shaft");
    let kit = &mut parts.kits[0];
    (kit.price, kit.fitting) = (Some(400.0), None);
    let found = |prices: &Prices| {
        let (_, survey) = parts.surveyed(prices, EVEN);
        let route = survey.route(RouteId::RearShaft).expect("all six are there");
        route.running.as_ref().expect("it runs").prices
    };
    let mut prices = Prices::default();
    assert_eq!(found(&prices), three(Some(400.0), Some(541.0), None));
    *prices.of_mut(RouteId::RearShaft).expect("a route") = three(Some(350.0), None, Some(50.0));
    let both = found(&prices);
    assert_eq!(both, three(Some(350.0), Some(541.0), Some(50.0)));
    // 350 + 541 + 50 = 941
    assert_eq!(both.total(), Some(941.0));
    // Another route's prices are none of its.
    let mut prices = Prices::default();
    *prices.of_mut(RouteId::MidShaft).expect("a route") = both;
    assert_eq!(found(&prices), three(Some(400.0), Some(541.0), None));
}

#[test]
fn a_price_is_a_number_from_nothing_to_a_billion() {
    for price in [0.0, 0.01, 1e9] {
        assert!(is_price(price), "{price}");
    }
    for price in [-0.01, 1e9 + 1.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert!(!is_price(price), "{price}");
    }
}

#[test]
fn price_for_each_watt() {
    // 8000/20 kW = 0.4 for a watt, 400 for a kilowatt.
    assert_eq!(per_watt(8000.0, Power::kilowatts(20.0)), Some(0.4));
    assert_eq!(per_watt(0.0, Power::kilowatts(20.0)), Some(0.0));
    assert_eq!(per_watt(8000.0, Power::ZERO), None);
}

#[test]
fn price_of_working() {
    // 2 h 30 min at 64 an hour: 160.
    assert_eq!(working(64.0, Time::minutes(150.0)), 160.0);
    assert_eq!(working(64.0, Time::ZERO), 0.0);
    assert_eq!(working(0.0, Time::hours(3.0)), 0.0);
}

/// One route against another that costs 5000 and does 10 units in a second.
fn against(total: f64, rate: f64, hour: f64) -> BreakEven {
    let other = Worker {
        total: 5000.0,
        rate: 10.0,
    };
    break_even(Worker { total, rate }, other, hour)
}

/// Two costs that are equal after so many hours: C₁ + h·t = C₂ + h·t·r₁/r₂.
#[test]
fn a_dearer_and_faster_route_pays_after_so_many_hours() {
    // 2000 more and half as fast again. An hour of it is 1.5 of the other's, and saves 0.5·80 = 40:
    // 2000/40 = 50 h. Then 7000 + 50·80 = 11000 and 5000 + 75·80 = 11000.
    assert_eq!(
        against(7000.0, 15.0, 80.0),
        BreakEven::After(Time::hours(50.0))
    );
    // At half the price of an hour after twice the hours, for half of what it costs more after half.
    assert_eq!(
        against(7000.0, 15.0, 40.0),
        BreakEven::After(Time::hours(100.0))
    );
    assert_eq!(
        against(6000.0, 15.0, 80.0),
        BreakEven::After(Time::hours(25.0))
    );
}

#[test]
fn costs_and_speeds_decide_whether_it_pays_at_all() {
    use BreakEven::{After, AheadFor, AtOnce, Never};
    // As dear and as fast, and a little off in each direction.
    assert_eq!(against(5000.0, 10.0, 80.0), AtOnce);
    assert_eq!(against(4999.0, 10.0, 80.0), AtOnce);
    assert_eq!(against(5000.0, 10.1, 80.0), AtOnce);
    assert_eq!(against(4999.0, 10.1, 80.0), AtOnce);
    assert_eq!(against(5001.0, 10.0, 80.0), Never);
    assert_eq!(against(5000.0, 9.9, 80.0), Never);
    assert_eq!(against(5001.0, 9.9, 80.0), Never);
    // 1000 cheaper and half as fast: an hour of its own does half, so it costs 40 more than the other: 25 h.
    assert_eq!(against(4000.0, 5.0, 80.0), AheadFor(Time::hours(25.0)));
    assert!(matches!(against(4999.0, 9.9, 80.0), AheadFor(_)));
    assert!(matches!(against(5001.0, 10.1, 80.0), After(_)));
    // Where an hour costs nothing, no speed pays for a price, and what is cheaper stays so.
    assert_eq!(against(7000.0, 15.0, 0.0), Never);
    assert_eq!(against(5000.0, 15.0, 0.0), AtOnce);
    assert_eq!(against(4999.0, 9.9, 0.0), AtOnce);
}

/// Of two that cost nothing both are as cheap as can be.
#[test]
fn what_costs_nothing_is_cheapest() {
    let free = |route| Candidate {
        route,
        standing: Standing::Enough,
        fit: Judgement::Pass,
        seat: Seat::FrontFrame,
        hookup: Time::minutes(10.0),
        total: Some(0.0),
    };
    let dear = Candidate {
        total: Some(500.0),
        ..free(RouteId::PumpPack)
    };
    let all = [free(RouteId::RearShaft), free(RouteId::MidShaft), dear];
    let weighed = weigh(&all, ImplementKind::Thrower, EVEN);
    let cheap = |route| {
        let it = weighed
            .iter()
            .find(|it| it.route == route)
            .expect("weighed");
        let place = Wish::ALL.iter().position(|wish| *wish == Wish::BuyCheaply);
        it.meets[place.expect("a wish")]
    };
    assert_eq!(cheap(RouteId::RearShaft), Some(1.0));
    assert_eq!(cheap(RouteId::MidShaft), Some(1.0));
    assert_eq!(cheap(RouteId::PumpPack), Some(0.0));
}
