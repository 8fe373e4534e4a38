//! What a recommendation says, without its figures, and where each can be said.

use farend_core::fit::Item;
use farend_core::recommend::{Advice, Obstacle, Reason, Recommendation};
use farend_core::seat::{LoaderUse, View};
use farend_tests::item_kind::ItemKind;

macro_rules! kinds {
    ($(#[$doc:meta])* $name:ident of $what:ty { $( $kind:ident: $pattern:pat, )+ }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum $name {
            $( $kind, )+
        }

        impl $name {
            pub const ALL: &[Self] = &[$( Self::$kind, )+];

            fn of(it: &$what) -> Self {
                match it {
                    $( $pattern => Self::$kind, )+
                }
            }
        }
    };
}

kinds! {
    /// One for each way to advise: the compiler asks for it.
    Answer of Advice {
        Take: Advice::Take(_),
        Equal: Advice::Equal(_),
        NothingRuns: Advice::None(None),
        Stopped: Advice::None(Some((_, Obstacle::Stops))),
        TooWeak: Advice::None(Some((_, Obstacle::TooWeak(_)))),
    }
}

kinds! {
    /// One for each meaning of a reason: the compiler asks for it.
    Meaning of Reason {
        Power: Reason::Power { .. },
        MoreThan: Reason::MoreThan { .. },
        Ahead: Reason::View(View::Ahead),
        OverTheShoulder: Reason::View(View::OverTheShoulder),
        Behind: Reason::View(View::Behind),
        DrivesOver: Reason::DrivesOver(true),
        KeepsOff: Reason::DrivesOver(false),
        LoaderStays: Reason::Loader(LoaderUse::Stays),
        WithoutBucket: Reason::Loader(LoaderUse::WithoutBucket),
        LoaderComesOff: Reason::Loader(LoaderUse::ComesOff),
        HooksUp: Reason::HooksUp(_),
        Cheapest: Reason::Cheapest(_),
    }
}

impl Meaning {
    /// Where it can be said: of a short time to hook up for a route, of a long one against it.
    fn where_said(self) -> &'static [fn(Self) -> Said] {
        match self {
            Self::Power
            | Self::MoreThan
            | Self::Ahead
            | Self::OverTheShoulder
            | Self::KeepsOff
            | Self::LoaderStays
            | Self::WithoutBucket
            | Self::Cheapest => &[Said::For],
            Self::Behind | Self::DrivesOver | Self::LoaderComesOff => &[Said::Against],
            Self::HooksUp => &[Said::For, Said::Against],
        }
    }
}

/// One thing that is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// Which route.
    Advice(Answer),
    /// A reason for it.
    For(Meaning),
    /// A drawback.
    Against(Meaning),
    /// What it needs beside.
    Needs(ItemKind),
    /// What must be asked before.
    Asks(ItemKind),
}

impl Said {
    /// Everything that can be said of a route, but for what it needs and what is asked: those are
    /// the items of its fit.
    pub fn all() -> impl Iterator<Item = Self> {
        let answers = Answer::ALL.iter().map(|it| Self::Advice(*it));
        let reasons = Meaning::ALL
            .iter()
            .flat_map(|it| it.where_said().iter().map(|side| side(*it)));
        answers.chain(reasons)
    }

    /// All that a recommendation says.
    pub fn by(recommendation: &Recommendation) -> Vec<Self> {
        let Recommendation {
            advice,
            reasons,
            drawbacks,
            needs,
            questions,
        } = recommendation;
        let kind = |item: &Item| ItemKind::of(&item.check);
        let mut said = vec![Self::Advice(Answer::of(advice))];
        said.extend(reasons.iter().map(|it| Self::For(Meaning::of(it))));
        said.extend(drawbacks.iter().map(|it| Self::Against(Meaning::of(it))));
        said.extend(needs.iter().map(|it| Self::Needs(kind(it))));
        said.extend(questions.iter().map(|it| Self::Asks(kind(it))));
        said
    }
}
