//! The page's address as a QR code.

use crate::text::sheet;
use leptos::prelude::*;
use qrcodegen::{QrCode, QrCodeEcc};

/// Quiet modules on each side: ISO/IEC 18004, by a maker's page.
const QUIET: i32 = 4;
/// Side of a module on paper, mm: what a phone reads without trouble, by common practice.
const MODULE_MM: f64 = 0.5;
/// The most modules that the sheet has room for.
const MOST: i32 = 117;

/// The code, or why there is none. `None` for an address that leads nowhere.
pub fn code(address: Option<&str>) -> impl IntoView + use<> {
    let Some(address) = address else {
        return view! { <p class="fine">{sheet::no_code()}</p> }.into_any();
    };
    let made = QrCode::encode_text(address, QrCodeEcc::Low).ok();
    let Some(made) = made.filter(|made| made.size() <= MOST) else {
        return view! { <p class="fine">{sheet::long_code()}</p> }.into_any();
    };
    let side = made.size() + 2 * QUIET;
    let mut path = String::new();
    for y in 0..made.size() {
        for x in 0..made.size() {
            if made.get_module(x, y) {
                path.push_str(&format!("M{} {}h1v1h-1z", x + QUIET, y + QUIET));
            }
        }
    }
    let width = format!("{}mm", f64::from(side) * MODULE_MM);
    view! {
        <svg
            class="code"
            data-testid="code"
            role="img"
            aria-label=sheet::code()
            style:width=width
            viewBox=format!("0 0 {side} {side}")
            shape-rendering="crispEdges"
        >
            <rect width="100%" height="100%" fill="#fff" />
            <path d=path fill="#000" />
        </svg>
    }
    .into_any()
}
