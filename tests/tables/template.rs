//! Templates, and tables as they are written.

use crate::{entries, rows};
use farend_core::export::csv::Cell;
use farend_core::yard::list::List;
use farend_core::yard::rules::YARD;
use farend_core::yard::shape::{Field, Shape};
use farend_core::yard::table::{list_of, table, template};
use farend_tests::demo;

/// Every column's name, from the rules: the first place of each list.
fn names(fields: &'static [Field], path: &str, names: &mut Vec<String>) {
    for field in fields {
        let name = match path {
            "" => field.key.to_owned(),
            _ => format!("{path}.{}", field.key),
        };
        match field.shape {
            Shape::Group(of) => self::names(of, &name, names),
            Shape::Many { of, .. } => self::names(of, &format!("{name}.1"), names),
            Shape::Uncertain { .. } => {
                names.push(name.clone());
                let parts = ["low", "likely", "high", "source"];
                names.extend(parts.map(|part| format!("{name}.{part}")));
            }
            _ => names.push(name),
        }
    }
}

fn of_list(list: List) -> Vec<String> {
    let field = YARD
        .iter()
        .find(|it| it.key == list.word())
        .expect("a list");
    let Shape::Many { of, .. } = field.shape else {
        panic!("{} is no list of groups", list.word());
    };
    let mut all = Vec::new();
    names(of, "", &mut all);
    all.push("comment".to_owned());
    all
}

#[test]
fn a_template_has_every_column_and_a_row_that_can_be_read() {
    for list in List::ALL {
        let template = template(*list);
        assert_eq!(template.headers, of_list(*list));
        assert_eq!(template.rows.len(), 1);
        let filled = template.rows[0].iter().filter(|cell| **cell != Cell::Empty);
        assert!(filled.count() >= 6, "{}", list.word());
        let text = template.to_csv().expect("a table");
        assert_eq!(list_of(&text), Ok(Some(*list)));
        let entries = entries(*list, &text, None);
        assert_eq!(entries.len(), 1);
        assert_eq!(entries[0]["id"], "example");
    }
}

/// The headers of cells that are filled.
fn filled<'a>(headers: &'a [String], row: &[Cell]) -> Vec<&'a String> {
    let cells = headers.iter().zip(row);
    let filled = cells.filter(|(_, cell)| **cell != Cell::Empty);
    filled.map(|(header, _)| header).collect()
}

/// Of the demo's entries whose columns it has, it shows that with the most.
#[test]
fn a_templates_row_shows_as_much_as_it_can() {
    for list in List::ALL {
        let template = template(*list);
        let shown = filled(&template.headers, &template.rows[0]).len();
        let demo = table(&demo(), *list);
        let rows = demo.rows.iter().map(|row| filled(&demo.headers, row));
        let fitting = rows.filter(|row| row.iter().all(|it| template.headers.contains(it)));
        assert_eq!(
            Some(shown),
            fitting.map(|row| row.len()).max(),
            "{}",
            list.word()
        );
    }
}

#[test]
fn a_table_has_the_columns_that_are_used_in_the_rules_order() {
    let yard = demo();
    for list in List::ALL {
        let table = table(&yard, *list);
        assert_eq!(table.headers[..2], ["id", "name"]);
        let cells = |column: usize| table.rows.iter().map(move |row| &row[column]);
        for (column, header) in table.headers.iter().enumerate() {
            assert!(
                cells(column).any(|cell| *cell != Cell::Empty),
                "{header} is empty"
            );
        }
        // Those of first places stand as in the template.
        let all = of_list(*list);
        let places: Vec<_> = table
            .headers
            .iter()
            .filter_map(|header| all.iter().position(|it| it == header))
            .collect();
        assert!(places.len() > 10 && places.is_sorted(), "{}", list.word());
        assert_eq!(
            table.rows.len(),
            yard.written[list.word()].as_array().expect("a list").len()
        );
    }
}

/// RFC 4180 with a mark for UTF-8, numbers with a point and all their digits.
#[test]
fn a_table_is_written_for_spreadsheets() {
    let text = table(&demo(), List::Machines).to_csv().expect("a table");
    assert!(text.starts_with("\u{feff}id,name,kind,engine.net_kw,"));
    assert!(text.ends_with("\r\n") && !text.replace("\r\n", "").contains('\n'));
    assert!(text.contains("\r\nwren-18,\"Wren 18, small compact tractor\",tractor,18,"));
    assert!(text.contains(",0.61,"));
    let read = rows(List::Machines, &text, None);
    assert_eq!(
        rows(List::Machines, &text.replace("\r\n", "\n"), None),
        read
    );
}
