//! How wide words are where nothing can be measured: estimated on the wide side, so that lettering
//! of another face than the one asked for still has room.

/// Width of a text in units of its size. The widths are those of the wider common faces, rounded:
/// from memory.
pub fn width(text: &str) -> f64 {
    text.chars().map(of_letter).sum()
}

fn of_letter(letter: char) -> f64 {
    match letter {
        'i' | 'j' | 'l' | 'I' | '\'' | '|' | '!' | '.' | ',' | ':' | ';' => 0.29,
        'f' | 't' | 'r' | '(' | ')' | '[' | ']' | '/' | '-' | ' ' | '\u{a0}' | '·' => 0.34,
        'm' | 'w' | 'M' | 'W' | '%' | '@' | '…' | 'æ' | 'œ' | 'Æ' | 'Œ' => 1.03,
        'A'..='Z' | 'À'..='Þ' => 0.77,
        // Ideographs and the like fill a square.
        '\u{1100}'.. => 1.02,
        _ => 0.64,
    }
}

/// A text that is no wider than so much, shortened by its end where it must be.
pub fn fitted(text: &str, size: f64, most: f64) -> String {
    if width(text) * size <= most {
        return text.to_owned();
    }
    let mut left = most / size - of_letter('…');
    let short: String = text
        .chars()
        .take_while(|letter| {
            left -= of_letter(*letter);
            left >= 0.0
        })
        .collect();
    format!("{}…", short.trim_end())
}

/// A text in so many lines at most, broken at spaces; what is left over shortens the last one.
pub fn lines(text: &str, size: f64, most: f64, count: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ') {
        let is_last = lines.len() == count;
        match lines.last_mut() {
            Some(line) if is_last || width(&format!("{line} {word}")) * size <= most => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines.iter().map(|line| fitted(line, size, most)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_fits_stays_and_what_does_not_is_shortened() {
        assert_eq!(fitted("Rear shaft", 10.0, 60.0), "Rear shaft");
        let long = "An implement with a very long name indeed";
        for most in [15.0, 60.0, 123.0, 200.0] {
            let short = fitted(long, 10.0, most);
            assert!(width(&short) * 10.0 <= most, "{short}");
            assert!(short.ends_with('…') && long.starts_with(short.trim_end_matches('…')));
        }
    }

    #[test]
    fn lines_keep_every_word_while_there_is_room() {
        let text = "Rear shaft turned forward";
        assert_eq!(lines(text, 10.0, 300.0, 2), [text]);
        let two = lines(text, 10.0, 80.0, 2);
        assert_eq!(two.join(" "), text);
        assert_eq!(two.len(), 2);
        let few = lines(text, 10.0, 50.0, 2);
        assert_eq!(few.len(), 2);
        assert!(few.iter().all(|line| width(line) * 10.0 <= 50.0), "{few:?}");
        assert!(few[1].ends_with('…'), "{few:?}");
    }
}
