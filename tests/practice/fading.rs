//! Help that fades, and the score behind progress.

use farend_core::practice::Confidence::{Fairly, Guessing, Sure};
use farend_core::practice::Help::{AllBlank, FirstBlank, Shown};
use farend_core::practice::{Answered, Confidence, Help, Idea, next, progress, score};

const IDEA: Idea = Idea::FlowIsSpeed;

fn answered(right: bool, confidence: Confidence, help: Help) -> Answered {
    Answered {
        idea: IDEA,
        right,
        confidence,
        help,
    }
}

/// Help, the last answers with it, the help that follows.
type Row = (Help, &'static [(bool, Confidence)], Help);

#[test]
fn help_fades_after_right_answers_and_comes_back_after_a_wrong_one() {
    let table: [Row; 16] = [
        (Shown, &[], Shown),
        (AllBlank, &[], AllBlank),
        (Shown, &[(true, Sure)], Shown),
        (Shown, &[(true, Sure), (true, Sure)], FirstBlank),
        (Shown, &[(true, Fairly), (true, Sure)], FirstBlank),
        (FirstBlank, &[(true, Fairly), (true, Fairly)], AllBlank),
        (AllBlank, &[(true, Sure), (true, Sure)], AllBlank),
        // What was guessed isn't known, and isn't wrong.
        (Shown, &[(true, Guessing), (true, Sure)], Shown),
        (Shown, &[(true, Sure), (true, Guessing)], Shown),
        (
            FirstBlank,
            &[(true, Guessing), (true, Guessing)],
            FirstBlank,
        ),
        (Shown, &[(false, Sure), (true, Sure)], Shown),
        (
            Shown,
            &[(false, Sure), (true, Sure), (true, Sure)],
            FirstBlank,
        ),
        (AllBlank, &[(false, Guessing)], FirstBlank),
        (FirstBlank, &[(true, Sure), (false, Fairly)], Shown),
        (Shown, &[(false, Sure)], Shown),
        (
            AllBlank,
            &[(true, Sure), (true, Sure), (false, Sure)],
            FirstBlank,
        ),
    ];
    for (help, answers, then) in table {
        let last: Vec<_> = answers
            .iter()
            .map(|it| answered(it.0, it.1, help))
            .collect();
        assert_eq!(next(help, &last), then, "{help:?} {answers:?}");
    }
}

#[test]
fn answers_with_more_help_dont_count_for_less() {
    let with_more = answered(true, Sure, Shown);
    let with_this = answered(true, Sure, FirstBlank);
    assert_eq!(next(FirstBlank, &[with_more, with_more]), FirstBlank);
    assert_eq!(next(FirstBlank, &[with_more, with_this]), FirstBlank);
    assert_eq!(
        next(FirstBlank, &[with_more, with_this, with_this]),
        AllBlank
    );
}

#[test]
fn who_knows_it_skips_to_no_help() {
    assert_eq!(Help::KNOWN, AllBlank);
}

/// 1 − (c − o)² by hand.
#[test]
fn an_answer_scores_by_what_was_said_of_it() {
    let table = [
        (true, Sure, 0.9975),
        (true, Fairly, 0.9375),
        (true, Guessing, 0.75),
        (false, Guessing, 0.75),
        (false, Fairly, 0.4375),
        (false, Sure, 0.0975),
    ];
    for (right, confidence, expected) in table {
        let is = score(&answered(right, confidence, AllBlank));
        assert!(
            (is - expected).abs() < 1e-12,
            "{right} {confidence:?}: {is}"
        );
    }
}

/// A proper score: whoever is right so often does best by saying just that.
#[test]
fn honesty_about_confidence_pays_best() {
    for truly in Confidence::ALL {
        let chance = truly.chance();
        let expected = |said: Confidence| {
            let score = |right| score(&answered(right, said, AllBlank));
            chance * score(true) + (1.0 - chance) * score(false)
        };
        for said in Confidence::ALL {
            assert!(expected(*said) <= expected(*truly), "{truly:?} {said:?}");
        }
    }
}

#[test]
fn progress_is_of_one_idea_and_forgets_what_is_long_ago() {
    let other = Answered {
        idea: Idea::ItMustHookUp,
        ..answered(false, Sure, AllBlank)
    };
    assert_eq!(progress(&[other], IDEA), None);
    let right = answered(true, Sure, AllBlank);
    let wrong = answered(false, Sure, AllBlank);
    let close = |is: Option<f64>, expected: f64| (is.expect("answers") - expected).abs() < 1e-12;
    assert!(close(progress(&[other, right, other, wrong], IDEA), 0.5475));
    let mut answers = vec![wrong; 3];
    answers.extend(vec![right; 8]);
    assert!(close(progress(&answers, IDEA), 0.9975));
}
