//! A list written as a table and read again has the same entries, whoever wrote the table how.

use crate::every::loaded;
use crate::random::yard;
use csv::{QuoteStyle, Terminator, WriterBuilder};
use farend_core::export::csv::{Cell, Table};
use farend_core::yard::Yard;
use farend_core::yard::edit::Editing;
use farend_core::yard::entry::YardEntry;
use farend_core::yard::list::List;
use farend_core::yard::table::{DecimalMark, How, Reading, read, table, take_in};
use proptest::prelude::*;
use proptest::sample::select;
use serde::Deserialize;

/// How a program writes a table.
#[derive(Clone, Debug)]
struct Hand {
    separator: u8,
    ends: Terminator,
    quotes: QuoteStyle,
    mark: DecimalMark,
    begins: &'static str,
    shouts: bool,
}

fn hand() -> BoxedStrategy<Hand> {
    (
        select(&b",;\t"[..]),
        select(
            &[
                Terminator::CRLF,
                Terminator::Any(b'\n'),
                Terminator::Any(b'\r'),
            ][..],
        ),
        select(
            &[
                QuoteStyle::Necessary,
                QuoteStyle::Always,
                QuoteStyle::NonNumeric,
            ][..],
        ),
        select(DecimalMark::ALL),
        select(&["", "\u{feff}"][..]),
        any::<bool>(),
    )
        .prop_map(|(separator, ends, quotes, mark, begins, shouts)| Hand {
            separator,
            ends,
            quotes,
            mark,
            begins,
            shouts,
        })
        .boxed()
}

fn written(table: &Table, hand: &Hand) -> String {
    let mut writer = WriterBuilder::new()
        .delimiter(hand.separator)
        .terminator(hand.ends)
        .quote_style(hand.quotes)
        .from_writer(Vec::new());
    let headers = table.headers.iter().map(|header| match hand.shouts {
        true => format!(" {} ", header.to_uppercase()),
        false => header.clone(),
    });
    writer.write_record(headers).expect("headers");
    for row in &table.rows {
        let cells = row.iter().map(|cell| match cell {
            Cell::Text(text) => text.clone(),
            Cell::Empty => String::new(),
            Cell::Number(number) => match hand.mark {
                DecimalMark::Point => number.to_string(),
                DecimalMark::Comma => number.to_string().replace('.', ","),
            },
        });
        writer
            .write_record(cells)
            .expect("as many cells as headers");
    }
    let bytes = writer.into_inner().expect("written to memory");
    format!(
        "{}{}",
        hand.begins,
        String::from_utf8(bytes).expect("UTF-8")
    )
}

/// The yard with every list read from its table.
fn taken(yard: &Yard, how: How, text: impl Fn(List) -> String, mark: Option<DecimalMark>) -> Yard {
    let mut made = yard.clone();
    for list in List::ALL {
        let rows = match read(&text(*list), *list, mark) {
            Ok(Reading::Rows(rows)) => rows,
            other => panic!("{}: {other:?}", list.word()),
        };
        let taken = take_in(&Editing::from(&made), &rows, how).expect("a yard");
        assert_eq!(taken.counts(), [0, 0, taken.rows.len()], "all unchanged");
        assert!(taken.removed.is_empty());
        made = taken.yard.sound();
    }
    made
}

/// The entries of the tables themselves, not those that stay because they say the same.
fn rebuilt(yard: &Yard, text: impl Fn(List) -> String, mark: Option<DecimalMark>) -> YardEntry {
    let mut bare = yard.clone();
    for list in List::ALL {
        // An identifier that no table has, so that every row is new.
        if let Some(entries) = bare.written[list.word()].as_array_mut() {
            entries.truncate(1);
            if let Some(first) = entries.first_mut() {
                first["id"] = "none-has-this".into();
            }
        }
    }
    let mut made = Yard::from_json(&bare.written.to_string()).expect("a yard");
    for list in List::ALL {
        let Ok(Reading::Rows(rows)) = read(&text(*list), *list, mark) else {
            panic!("{} isn't read", list.word());
        };
        made = take_in(&Editing::from(&made), &rows, How::Replace)
            .expect("a yard")
            .yard
            .sound();
    }
    YardEntry::deserialize(&made.written).expect("entries")
}

proptest! {
    #![proptest_config(crate::cases(100))]

    #[test]
    fn a_table_gives_the_entries_that_it_was_made_of(entry in yard()) {
        let yard = loaded(&entry);
        let text = |list| table(&yard, list).to_csv().expect("a table");
        // Equal doubles, so equal bit for bit: none is zero and negative or not a number.
        prop_assert_eq!(&rebuilt(&yard, text, None), &entry);
        for how in [How::Merge, How::Replace] {
            let made = taken(&yard, how, text, None);
            prop_assert_eq!(&made, &yard);
        }
    }

    #[test]
    fn it_does_so_with_every_separator_quote_and_decimal_mark(entry in yard(), hand in hand()) {
        let yard = loaded(&entry);
        let text = |list| written(&table(&yard, list), &hand);
        prop_assert_eq!(&rebuilt(&yard, text, Some(hand.mark)), &entry);
    }
}
