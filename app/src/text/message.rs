//! A message filled in. `farend_lang::packed` says how it is packed.

use crate::{intl, language, number};

include!(concat!(env!("OUT_DIR"), "/marks.rs"));

/// What is put into a message.
#[derive(Clone, Copy)]
pub enum Argument<'a> {
    /// Words, or a number with its unit.
    Text(&'a str),
    /// A count, by which the message may choose a form.
    Count(usize),
}

/// A message without arguments. Hundreds of places ask for one: handing on where it lies takes a third
/// of the room that handing on the text itself would.
#[inline(always)]
pub fn plain(place: usize) -> &'static str {
    language::message(place)
}

/// A message with its arguments, in alphabetical order of their names.
pub fn filled(place: usize, arguments: &[Argument]) -> String {
    let mut said = String::new();
    fill(&mut said, language::message(place), arguments);
    said
}

fn fill(said: &mut String, message: &str, arguments: &[Argument]) {
    let given = |mark: Option<char>| {
        let place = u32::from(mark?).checked_sub(u32::from(ARGUMENT))?;
        arguments.get(place as usize).copied()
    };
    let mut rest = message;
    while let Some((words, marked)) = rest.find(|it| it < ' ').map(|at| rest.split_at(at)) {
        said.push_str(words);
        let mut marks = marked.chars();
        let mark = marks.next();
        rest = marks.as_str();
        if mark == Some(FORMS) {
            let by = given(marks.next());
            let (forms, after) = marks.as_str().split_once(END).unwrap_or_default();
            if let Some(Argument::Count(count)) = by {
                fill(said, form(forms, count), arguments);
            }
            rest = after;
        } else {
            match given(mark) {
                Some(Argument::Text(text)) => said.push_str(text),
                Some(Argument::Count(count)) => said.push_str(&number::count(count)),
                None => {}
            }
        }
    }
    said.push_str(rest);
}

/// The form for a count: the one for this very number, else the one for its plural category.
fn form(forms: &str, count: usize) -> &str {
    let of = |wanted: &str| {
        let mut all = forms.split(FORM).filter_map(|form| form.split_once(SAID));
        all.find(|(key, _)| *key == wanted).map(|(_, said)| said)
    };
    of(&count.to_string())
        .or_else(|| of(&intl::plural(count)))
        .or_else(|| of("other"))
        .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::{Argument, fill};

    fn said(message: &str, arguments: &[Argument]) -> String {
        let mut said = String::new();
        fill(&mut said, message, arguments);
        said
    }

    #[test]
    fn arguments_stand_where_their_marks_stood() {
        let arguments = [Argument::Text("aus"), Argument::Text("é")];
        assert_eq!(said("« \u{11} », \u{10}.", &arguments), "« é », aus.");
        assert_eq!(said("no mark", &arguments), "no mark");
    }

    #[test]
    fn a_form_is_chosen_by_a_number_or_its_category() {
        let message =
            "\u{1}\u{10}\u{2}0\u{3}none\u{2}one\u{3}\u{10} kit\u{2}other\u{3}\u{10} kits\u{4} left";
        let told = [0, 1, 2].map(|count| said(message, &[Argument::Count(count)]));
        assert_eq!(told, ["none left", "1 kit left", "2 kits left"]);
    }
}
