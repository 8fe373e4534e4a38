//! Enums whose variants stand as words in files, or as phrases for people: each is written once.

/// Defines an enum with the word that a file uses for each variant.
macro_rules! words {
    (
        $(#[$doc:meta])*
        $name:ident { $( $(#[$variant_doc:meta])* $variant:ident = $word:literal, )+ }
    ) => {
        $(#[$doc])*
        #[derive(
            Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash,
            serde::Serialize, serde::Deserialize,
        )]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub enum $name {
            $( $(#[$variant_doc])* #[serde(rename = $word)] $variant, )+
        }

        impl $name {
            /// Every variant, in order.
            pub const ALL: &[Self] = &[$( Self::$variant, )+];
            /// Every variant's word, in the same order.
            pub const WORDS: &[&str] = &[$( $word, )+];

            /// The word that files use.
            pub fn word(self) -> &'static str {
                match self {
                    $( Self::$variant => $word, )+
                }
            }
        }
    };
}
pub(crate) use words;

/// Defines an enum with the English of each variant, for the terminal.
macro_rules! phrases {
    (
        $(#[$doc:meta])*
        $name:ident { $( $variant:ident = $english:literal, )+ }
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum $name {
            $( #[doc = $english] $variant, )+
        }

        impl $name {
            /// Every variant, in order.
            pub const ALL: &[Self] = &[$( Self::$variant, )+];

            /// What it says, in English.
            pub const fn english(self) -> &'static str {
                match self {
                    $( Self::$variant => $english, )+
                }
            }
        }

        impl core::fmt::Display for $name {
            fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.write_str(self.english())
            }
        }
    };
}
pub(crate) use phrases;
