//! Translations against English: nothing is missing, nothing is left over, and the arguments are the
//! same.

use crate::{Fault, Language, Message};

pub fn faults(languages: &[Language]) -> Vec<Fault> {
    let [source, translations @ ..] = languages else {
        return Vec::new();
    };
    let mut faults = Vec::new();
    for translation in translations {
        for subject in translation.subjects.keys() {
            if !source.subjects.contains_key(subject) {
                let what = format!("{} has no such file", source.tag);
                faults.push(fault(translation, subject, what));
            }
        }
        for (subject, messages) in &source.subjects {
            match translation.subjects.get(subject) {
                None => faults.push(fault(translation, subject, "it's missing".to_owned())),
                Some(said) => {
                    let told = of_subject(messages, said).into_iter();
                    faults.extend(told.map(|what| fault(translation, subject, what)));
                }
            }
        }
    }
    faults
}

fn fault(language: &Language, subject: &str, what: String) -> Fault {
    let file = format!("{}/{subject}.ftl", language.tag);
    Fault { file, what }
}

fn of_subject(source: &[Message], translation: &[Message]) -> Vec<String> {
    let mut told = Vec::new();
    for message in source {
        let Some(said) = translation.iter().find(|it| it.name == message.name) else {
            told.push(format!("`{}` is missing", message.name));
            continue;
        };
        let (asked, taken) = (message.arguments(), said.arguments());
        for argument in taken.keys().filter(|it| !asked.contains_key(*it)) {
            told.push(format!("`{}`: English has no ${argument}", message.name));
        }
        for argument in asked.keys().filter(|it| !taken.contains_key(*it)) {
            told.push(format!("`{}` leaves out ${argument}", message.name));
        }
    }
    let left_over = translation
        .iter()
        .filter(|it| source.iter().all(|message| message.name != it.name));
    told.extend(left_over.map(|it| format!("`{}`: English has no such message", it.name)));
    told
}

#[cfg(test)]
mod tests {
    use super::of_subject;
    use crate::read::messages;

    #[test]
    fn a_translation_says_all_that_english_says_and_no_more() {
        let source = messages("a = { $x } and { $y }\nb = b\n    .c = c\n").unwrap();
        let told = |translation| of_subject(&source, &messages(translation).unwrap());
        assert!(told("b = β\n    .c = γ\na = { $y } y { $x }\n").is_empty());
        assert_eq!(
            told("a = { $x } y { $z }\nb = β\nd = δ\n"),
            [
                "`a`: English has no $z",
                "`a` leaves out $y",
                "`b.c` is missing",
                "`d`: English has no such message",
            ]
        );
    }
}
