//! English, accented and longer, for trying whether every word comes from the files and has room.

use crate::{Language, Piece};

/// Its tag. It is no language's, and no browser asks for it.
pub const TAG: &str = "pseudo";

/// A language of the words of another one.
pub fn of(source: &Language) -> Language {
    let mut pseudo = source.clone();
    pseudo.tag = TAG.to_owned();
    pseudo.name = "Pseudo".to_owned();
    for message in pseudo.subjects.values_mut().flatten() {
        if message.pieces.is_empty() || message.pieces == [Piece::Words(String::new())] {
            continue;
        }
        message.pieces.iter_mut().for_each(lengthen);
        message.pieces.insert(0, Piece::Words("[".to_owned()));
        message.pieces.push(Piece::Words("]".to_owned()));
    }
    pseudo
}

fn lengthen(piece: &mut Piece) {
    match piece {
        Piece::Words(words) => *words = longer(words),
        Piece::Argument(_) => {}
        Piece::Forms { forms, .. } => {
            forms
                .iter_mut()
                .flat_map(|(_, said)| said)
                .for_each(lengthen);
        }
    }
}

/// Two accented letters for each of the most frequent ones: that is two fifths of English more.
fn longer(words: &str) -> String {
    let mut made = String::new();
    for letter in words.chars() {
        match letter {
            'a' => made.push_str("áà"),
            'e' => made.push_str("éè"),
            'i' => made.push_str("íì"),
            'o' => made.push_str("óò"),
            'u' => made.push_str("úù"),
            't' => made.push_str("ţť"),
            other => made.push(other),
        }
    }
    made
}

#[cfg(test)]
mod tests {
    use super::longer;

    #[test]
    fn it_is_two_fifths_longer_than_english() {
        let english = "The oil gets too hot. A shaft or a box on the way must not take more torque; \
            back off and clear it with the engine stopped.";
        let part = longer(english).chars().count() as f64 / english.chars().count() as f64;
        assert!((1.35..1.5).contains(&part), "{part}");
    }
}
