//! A standing by its looks, which are the same in all languages.

use farend_core::standing::Standing;

/// What the style sheet knows a standing by; `None` is a route that can't be hooked up.
pub fn looks(standing: Option<Standing>) -> &'static str {
    match standing {
        Some(Standing::Ample) => "ample",
        Some(Standing::Enough) => "enough",
        Some(Standing::Slower) => "slower",
        Some(Standing::Labours) => "labours",
        Some(Standing::Starves) => "starves",
        None => "no-fit",
    }
}
