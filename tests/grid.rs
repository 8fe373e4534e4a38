//! The whole yard: each pair is what the comparison says of it, and what is shown follows the
//! selection.

use farend_core::compare::compare;
use farend_core::fit::{Judgement, Look, gravest};
use farend_core::grid::{
    Arranged, Cell, Order, Pair, Reading, Selection, arrange, from_bytes, rows, to_bytes,
};
use farend_core::implement::ImplementKind;
use farend_core::machine::MachineKind;
use farend_core::quantity::{Length, Power, Temperature};
use farend_core::route::RouteId;
use farend_core::route::part::Hookup;
use farend_core::settings::Settings;
use farend_core::standing::Standing;
use farend_core::yard::Yard;
use farend_tests::demo;
use std::sync::Arc;

fn all(yard: &Yard) -> Vec<Option<Arc<[Pair]>>> {
    let rows = rows(yard, 0..yard.machines.len(), &Settings::default(), false);
    rows.into_iter().map(|row| Some(row.into())).collect()
}

/// Whatever was turned for a machine, the grid takes the site alone.
#[test]
fn each_cell_is_what_the_comparison_says() {
    let yard = demo();
    let site = Settings {
        altitude: Some(Length::metres(1200.0)),
        air: Some(Temperature::celsius(-10.0)),
        oil: Some(Temperature::celsius(20.0)),
        ..Settings::default()
    };
    let turned = Settings {
        economy: true,
        slope: Some(0.2),
        ..site
    };
    let grid = rows(&yard, 0..yard.machines.len(), &turned, false);
    let mut running = 0;
    for (machine, row) in yard.machines.iter().zip(&grid) {
        assert_eq!(row.len(), yard.implements.len());
        for (implement, pair) in yard.implements.iter().zip(row) {
            let compared = compare(machine, implement, &yard.kits, &site).expect("fits");
            for (result, cell) in compared.routes.iter().zip(pair) {
                assert_eq!(result.run().is_some(), cell.is_some());
                let Some((run, cell)) = result.run().zip(*cell) else {
                    continue;
                };
                let kit = &yard.kits[usize::from(cell.kit)];
                assert_eq!(kit.id, run.kit);
                assert_eq!(cell.ratio, run.verdict.ratio);
                assert_eq!(cell.standing, run.verdict.likely);
                let hookup = Hookup {
                    machine,
                    implement,
                    kit: None,
                    settings: &site,
                };
                let items = Look::before(result.route, hookup, kit).items();
                assert_eq!(cell.fit, gravest(&items));
                let need = compared.need.likely;
                let delivered = cell.delivered(need) / run.delivered.likely;
                assert!((delivered - 1.0).abs() < 1e-12);
                running += 1;
            }
        }
    }
    assert!(running > 60, "{running}");
}

#[test]
fn some_rows_are_the_same_as_those_of_all() {
    let yard = demo();
    let settings = Settings::default();
    let whole = rows(&yard, 0..yard.machines.len(), &settings, false);
    assert_eq!(rows(&yard, 2..5, &settings, false), whole[2..5]);
    assert!(rows(&yard, 4..400, &settings, false).is_empty());
}

#[test]
fn as_it_stands_no_kit_must_be_bought() {
    let mut yard = demo();
    let settings = Settings::default();
    let whole = |yard: &Yard| rows(yard, 0..yard.machines.len(), &settings, true);
    let cells = |grid: Vec<Vec<Pair>>| grid.into_iter().flatten().flatten().flatten();
    let some = cells(whole(&yard)).count();
    for cell in cells(whole(&yard)) {
        assert!(yard.kits[usize::from(cell.kit)].included);
    }
    assert!(some > 0);
    for kit in &mut yard.kits {
        kit.included = false;
    }
    assert_eq!(cells(whole(&yard)).count(), 0);
    let bought = rows(&yard, 0..yard.machines.len(), &settings, false);
    assert!(cells(bought).count() > some);
}

#[test]
fn rows_come_back_from_their_bytes() {
    let yard = demo();
    let whole = rows(&yard, 0..yard.machines.len(), &Settings::default(), false);
    let bytes = to_bytes(&whole);
    assert_eq!(from_bytes(&bytes), Some(whole));
    assert_eq!(from_bytes(&bytes[..bytes.len() - 1]), None);
}

fn cell(standing: Standing, fit: Judgement, ratio: f64) -> Option<Cell> {
    Some(Cell {
        kit: 0,
        ratio,
        standing,
        fit,
    })
}

#[test]
fn a_pair_shows_the_best_that_fits() {
    use Judgement::{Advice, Pass, Question, Stop};
    use Standing::{Ample, Enough, Labours};
    let any = Selection::default();
    let pair = |cells: &[Option<Cell>]| {
        let mut pair = Pair::default();
        pair[..cells.len()].copy_from_slice(cells);
        pair
    };
    let shown = |selection: &Selection, cells: &[Option<Cell>]| {
        selection.of(&pair(cells)).map(|(route, _)| route)
    };
    assert_eq!(shown(&any, &[]), None);
    // What is stopped isn't shown, however strong.
    let stopped = [cell(Ample, Stop, 3.0), cell(Labours, Question, 0.5)];
    assert_eq!(shown(&any, &stopped), Some(RouteId::MidShaft));
    assert_eq!(shown(&any, &stopped[..1]), None);
    // The standing comes first, then what must be asked, then the power, then the order.
    let standing = [cell(Enough, Pass, 1.1), cell(Ample, Question, 1.2)];
    assert_eq!(shown(&any, &standing), Some(RouteId::MidShaft));
    let asked = [cell(Ample, Question, 3.0), cell(Ample, Advice, 1.2)];
    assert_eq!(shown(&any, &asked), Some(RouteId::MidShaft));
    let stronger = [cell(Ample, Pass, 1.2), cell(Ample, Pass, 1.3)];
    assert_eq!(shown(&any, &stronger), Some(RouteId::MidShaft));
    let equal = [cell(Ample, Pass, 1.2), cell(Ample, Pass, 1.2)];
    assert_eq!(shown(&any, &equal), Some(RouteId::RearShaft));
    // A slow rotor stands lower than one of which less arrives.
    let slow = [cell(Labours, Pass, 1.4), cell(Enough, Pass, 1.0)];
    assert_eq!(shown(&any, &slow), Some(RouteId::MidShaft));
    let only = Selection {
        route: Some(RouteId::RearShaft),
        ..any
    };
    assert_eq!(shown(&only, &standing), Some(RouteId::RearShaft));
    assert_eq!(shown(&only, &stopped), None);
    let least = |least| Selection {
        least: Some(least),
        ..any
    };
    assert_eq!(shown(&least(Enough), &slow), Some(RouteId::MidShaft));
    assert_eq!(shown(&least(Ample), &slow), None);
}

fn machines(yard: &Yard, arranged: &Arranged) -> Vec<String> {
    let places = arranged.machines.iter();
    places
        .map(|place| yard.machines[*place].id.clone())
        .collect()
}

fn implements(yard: &Yard, arranged: &Arranged) -> Vec<String> {
    let places = arranged.implements.iter();
    places
        .map(|place| yard.implements[*place].id.clone())
        .collect()
}

/// Whether none is below the next.
fn falls<T: PartialOrd>(values: &[T]) -> bool {
    values.windows(2).all(|pair| pair[0] >= pair[1])
}

#[test]
fn the_selection_says_which_rows_and_columns_are_shown() {
    let yard = demo();
    let grid = all(&yard);
    let arranged =
        |selection: &Selection| arrange(&yard, &grid, selection, ("curlew-46", "tiller-150"));
    let any = Selection::default();
    let whole = arranged(&any);
    assert_eq!(whole.machines.len(), yard.machines.len());
    assert_eq!(whole.implements.len(), yard.implements.len());
    let of_kind = arranged(&Selection {
        machines: Some(MachineKind::SkidSteer),
        implements: Some(ImplementKind::Broom),
        ..any
    });
    assert_eq!(machines(&yard, &of_kind), ["puffin-62"]);
    assert_eq!(implements(&yard, &of_kind), ["broom-180"]);
    let power = |place: &usize| yard.machines[*place].engine.net.likely.to_kilowatts();
    let middling = arranged(&Selection {
        from: Some(Power::kilowatts(25.0)),
        to: Some(Power::kilowatts(50.0)),
        ..any
    });
    assert!(!middling.machines.is_empty());
    for (place, machine) in yard.machines.iter().enumerate() {
        let inside = (25.0..=50.0).contains(&machine.engine.net.likely.to_kilowatts());
        assert_eq!(middling.machines.contains(&place), inside, "{}", machine.id);
    }
    // The limits themselves are shown.
    let exactly = yard.machines[0].engine.net.likely;
    let one = arranged(&Selection {
        from: Some(exactly),
        to: Some(exactly),
        ..any
    });
    assert!(one.machines.contains(&0));
    for (reading, rows, columns) in [
        (Reading::Machines, yard.machines.len(), 1),
        (Reading::Implements, 1, yard.implements.len()),
    ] {
        let list = arranged(&Selection { reading, ..any });
        assert_eq!(
            (list.machines.len(), list.implements.len()),
            (rows, columns)
        );
    }
    let list = arranged(&Selection {
        reading: Reading::Machines,
        ..any
    });
    assert_eq!(implements(&yard, &list), ["tiller-150"]);
    let list = arranged(&Selection {
        reading: Reading::Implements,
        ..any
    });
    assert_eq!(machines(&yard, &list), ["curlew-46"]);
    let largest = arranged(&Selection {
        order: Order::Size,
        ..any
    });
    let powers: Vec<_> = largest.machines.iter().map(power).collect();
    assert!(falls(&powers), "{powers:?}");
    let needs = largest.implements.iter();
    let needs: Vec<_> = needs
        .map(|place| yard.implements[*place].need.likely.to_si())
        .collect();
    assert!(falls(&needs), "{needs:?}");
    let named = arranged(&Selection {
        order: Order::Name,
        ..any
    });
    let names = named.machines.iter().rev();
    let names: Vec<_> = names
        .map(|place| yard.machines[*place].name.to_lowercase())
        .collect();
    assert!(falls(&names), "{names:?}");
    let grouped = arranged(&Selection {
        grouped: true,
        order: Order::Size,
        ..any
    });
    let kinds = grouped.machines.iter().rev();
    let kinds: Vec<_> = kinds.map(|place| yard.machines[*place].kind).collect();
    assert!(falls(&kinds), "{kinds:?}");
}

#[test]
fn the_best_stand_first() {
    let yard = demo();
    let grid = all(&yard);
    let list = Selection {
        reading: Reading::Machines,
        ..Selection::default()
    };
    let arranged = arrange(&yard, &grid, &list, ("", "snow-thrower-150"));
    let column = arranged.implements[0];
    let shown = arranged.machines.iter().map(|row| {
        let pair = &grid[*row].as_ref().expect("it's there")[column];
        list.of(pair).map(|(_, cell)| (cell.standing, cell.ratio))
    });
    // Nothing is below everything.
    let shown: Vec<_> = shown.collect();
    assert!(falls(&shown), "{shown:?}");
    assert!(shown[0] > shown[shown.len() - 1], "{shown:?}");
    // In the whole grid those stand first that do the most.
    let whole = Selection::default();
    let arranged = arrange(&yard, &grid, &whole, ("", ""));
    let working = arranged.machines.iter().map(|row| {
        let pairs = grid[*row].as_ref().expect("it's there").iter();
        let shown = pairs.filter_map(|pair| whole.of(pair));
        shown
            .filter(|(_, cell)| cell.standing >= Standing::Enough)
            .count()
    });
    let working: Vec<_> = working.collect();
    assert!(falls(&working), "{working:?}");
    assert!(working[0] > working[working.len() - 1]);
}

#[test]
fn where_a_standing_is_asked_rows_and_columns_without_it_are_left_out() {
    let yard = demo();
    let grid = all(&yard);
    let ample = Selection {
        least: Some(Standing::Ample),
        route: Some(RouteId::MidShaft),
        ..Selection::default()
    };
    let arranged = arrange(&yard, &grid, &ample, ("", ""));
    let has = |row: usize, column: usize| {
        let row = grid[row].as_ref().expect("it's there");
        ample.of(&row[column]).is_some()
    };
    for row in 0..yard.machines.len() {
        let any = (0..yard.implements.len()).any(|column| has(row, column));
        assert_eq!(arranged.machines.contains(&row), any);
    }
    for column in 0..yard.implements.len() {
        let any = (0..yard.machines.len()).any(|row| has(row, column));
        assert_eq!(arranged.implements.contains(&column), any);
    }
    assert!(arranged.machines.len() < yard.machines.len());
    assert!(!arranged.machines.is_empty());
    // What isn't there yet isn't left out.
    let unknown = vec![None; yard.machines.len()];
    let early = arrange(&yard, &unknown, &ample, ("", ""));
    assert_eq!(early.machines.len(), yard.machines.len());
    assert_eq!(early.implements.len(), yard.implements.len());
}
