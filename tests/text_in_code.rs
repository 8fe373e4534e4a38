//! What the page says stands in `app/lang/`: no sentence and no mark that joins words is written in
//! the code of `app/src/view/` or `app/src/text/`.

use std::fs;
use std::path::{Path, PathBuf};

/// What has a space and no reader: names of classes, type faces.
const NO_TEXT: [&str; 6] = [
    "need halo",
    "whisker halo",
    "shaft box",
    "oil box",
    "system-ui, sans-serif",
    "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif",
];

/// The strings of a program up to its tests, but for comments and values of attributes.
fn strings(code: &str) -> Vec<String> {
    let code = code.split("#[cfg(test)]").next().unwrap_or_default();
    let mut found = Vec::new();
    let mut before = ' ';
    let mut letters = code.chars().peekable();
    while let Some(letter) = letters.next() {
        match letter {
            '/' if letters.peek() == Some(&'/') => {
                letters.by_ref().find(|it| *it == '\n');
            }
            // A quote as a letter.
            '"' if before == '\'' => {}
            '"' => {
                let mut text = String::new();
                while let Some(letter) = letters.next() {
                    match letter {
                        '"' => break,
                        '\\' => {
                            letters.next();
                            text.push('\\');
                        }
                        letter => text.push(letter),
                    }
                }
                // `class="two names"`
                if before != '=' {
                    found.push(text);
                }
            }
            _ => {}
        }
        before = letter;
    }
    found
}

/// Whether people would read it: two words with a space between them, or a mark that joins words.
/// Names such as "ISO VG 46" have no small letters.
fn is_text(string: &str) -> bool {
    let is_word = |it: &str| {
        let letters = it.chars().filter(|it| it.is_alphabetic()).count();
        letters > 1 && it.contains(char::is_lowercase) && !it.contains(['=', '<', '_', '-'])
    };
    let said = without_places(string);
    let words: Vec<_> = said.split(' ').collect();
    let is_sentence = words.windows(2).any(|it| it.iter().all(|it| is_word(it)));
    // A mark by itself is no text: "–" where nothing is known.
    let is_spaced = string == "." || said.contains([' ', '(', ')']);
    let is_mark = said.contains([':', ',', ';', '.', '(', ')', '–', '·']);
    let joins = is_spaced && is_mark && !said.contains(char::is_alphanumeric);
    (is_sentence || joins) && !NO_TEXT.contains(&string)
}

/// What a format says beside what is put into it.
fn without_places(string: &str) -> String {
    let mut said = String::new();
    let mut depth = 0;
    for letter in string.chars() {
        match letter {
            '{' => depth += 1,
            '}' => depth -= 1,
            letter if depth == 0 => said.push(letter),
            _ => {}
        }
    }
    said
}

fn files(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("a folder");
    let paths = entries.map(|it| it.expect("an entry").path());
    paths
        .flat_map(|path| match path.is_dir() {
            true => files(&path),
            false => vec![path],
        })
        .collect()
}

#[test]
fn what_the_page_says_stands_in_its_files() {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("../app/src");
    let mut seen = 0;
    let mut told = Vec::new();
    for file in ["view", "text"].map(|it| files(&source.join(it))).concat() {
        let code = fs::read_to_string(&file).expect("text");
        let strings = strings(&code);
        seen += strings.len();
        let texts = strings.into_iter().filter(|it| is_text(it));
        told.extend(texts.map(|it| format!("{}: {it:?}", file.display())));
    }
    assert!(seen > 300, "only {seen} strings were seen");
    assert!(told.is_empty(), "{}", told.join("\n"));
}

#[test]
fn a_planted_text_is_found() {
    let found = |code: &str| {
        let strings = strings(code);
        strings.into_iter().filter(|it| is_text(it)).count()
    };
    for planted in [
        r#"view! { <p>"Nothing yet."</p> }"#,
        r#"format!("must be {min} rpm or more", min)"#,
        r#"view! { <b>{name} ": "</b> }"#,
        r#"format!("{}: {}", name, what)"#,
        r#"format!("{name} ({})", what)"#,
        r#"words.join(", ")"#,
        r#"view! { <p>{version} "."</p> }"#,
    ] {
        assert_eq!(found(planted), 1, "{planted}");
    }
    for code in [
        r#"view! { <p class="fine print">{words}</p> } // "no text here""#,
        r#"format!("{id}-hint {id}-fault")"#,
        r#"json.contains('"') || text == "kept""#,
        "#[cfg(test)]\nassert_eq!(said, \"two words\")",
    ] {
        assert_eq!(found(code), 0, "{code}");
    }
}
