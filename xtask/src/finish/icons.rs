//! The icons of an installed page, drawn from one SVG.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use resvg::tiny_skia::{Color, Pixmap, Transform};
use resvg::usvg::{Options, Tree};
use serde::Deserialize;

use super::files::MANIFEST;

/// How much of the side the drawing takes where any shape may be cut out of the icon: its corners
/// must lie in a circle of 40 % of the side (Web App Manifest, from memory).
const IN_ANY_SHAPE: f32 = 0.68;

#[derive(Deserialize)]
struct Manifest {
    background_color: String,
    icons: Vec<Icon>,
}

/// An icon as the manifest names it.
#[derive(Deserialize)]
struct Icon {
    src: String,
    sizes: String,
    #[serde(default)]
    purpose: String,
}

/// Draws what the manifest names.
pub fn draw(root: &Path, dist: &Path) -> Result<()> {
    let manifest = fs::read_to_string(dist.join(MANIFEST)).context(MANIFEST)?;
    let manifest: Manifest = serde_json::from_str(&manifest).context(MANIFEST)?;
    let drawing = fs::read(root.join("app").join("icon.svg")).context("app/icon.svg")?;
    let drawing = Tree::from_data(&drawing, &Options::default()).context("app/icon.svg")?;
    for icon in &manifest.icons {
        let png = png(&drawing, icon, &manifest.background_color)
            .with_context(|| format!("drawing {}", icon.src))?;
        fs::write(dist.join(&icon.src), png)?;
    }
    Ok(())
}

fn png(drawing: &Tree, icon: &Icon, ground: &str) -> Result<Vec<u8>> {
    let (width, height) = icon.sizes.split_once('x').context("no size")?;
    let (width, height): (u32, u32) = (width.parse()?, height.parse()?);
    let mut made = Pixmap::new(width, height).context("no pixels")?;
    made.fill(color(ground)?);
    let share = if icon.purpose == "maskable" {
        IN_ANY_SHAPE
    } else {
        1.0
    };
    let side = width.min(height) as f32;
    let scale = share * side / drawing.size().width();
    let edge = (1.0 - share) / 2.0 * side;
    let placed = Transform::from_row(scale, 0.0, 0.0, scale, edge, edge);
    resvg::render(drawing, placed, &mut made.as_mut());
    Ok(made.encode_png()?)
}

/// A colour written `#rrggbb`.
fn color(written: &str) -> Result<Color> {
    let digits = written.strip_prefix('#').filter(|it| it.len() == 6);
    let digits = digits.with_context(|| format!("{written} is not written #rrggbb"))?;
    let [_, red, green, blue] = u32::from_str_radix(digits, 16)?.to_be_bytes();
    Ok(Color::from_rgba8(red, green, blue, 255))
}
