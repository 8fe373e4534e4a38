//! What a host sends beside the files, in the form of `_headers` that several static hosts read.

use std::fmt::Write;
use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

use super::files::{PAGE, all, is_hashed};
use super::html;

const FILE: &str = "_headers";
const POLICY: &str = "Content-Security-Policy";
/// What the page may connect to: the page itself allows what a yard from another address needs, a
/// host only itself until it says more.
const CONNECT: &str = "connect-src ";
/// Names that change with the content: kept for a year.
const FOR_GOOD: &str = "public, max-age=31536000, immutable";
/// Names that don't: asked about each time.
const ASK: &str = "no-cache";

/// The name of what is sent beside a file, and what it says.
pub type Header = (&'static str, String);

/// What every file is sent with.
pub fn everywhere(dist: &Path) -> Result<Vec<Header>> {
    let page = fs::read_to_string(dist.join(PAGE))?;
    let policy = html::meta(&page, "http-equiv", POLICY).context("no policy in index.html")?;
    Ok(vec![
        (POLICY, narrowed(policy)),
        ("X-Content-Type-Options", "nosniff".to_owned()),
        ("Referrer-Policy", "no-referrer".to_owned()),
        (
            "Permissions-Policy",
            "camera=(), geolocation=(), microphone=()".to_owned(),
        ),
        ("Access-Control-Allow-Origin", "*".to_owned()),
    ])
}

/// The page's policy, but for what the host must say itself.
fn narrowed(policy: &str) -> String {
    let own = |it: &str| match it.starts_with(CONNECT) {
        true => format!("{CONNECT}'self'"),
        false => it.to_owned(),
    };
    let directives = policy.split(';').map(|it| own(it.trim()));
    directives.collect::<Vec<_>>().join("; ")
}

pub fn write(dist: &Path) -> Result<()> {
    let mut text = String::from("/*\n");
    for (name, value) in everywhere(dist)? {
        writeln!(text, "  {name}: {value}")?;
    }
    for name in all(dist)?.iter().filter(|it| *it != FILE) {
        let keep = if is_hashed(name) { FOR_GOOD } else { ASK };
        writeln!(text, "/{name}\n  Cache-Control: {keep}")?;
    }
    writeln!(text, "/\n  Cache-Control: {ASK}")?;
    Ok(fs::write(dist.join(FILE), text)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn policy() -> String {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        let page = fs::read_to_string(root.join(PAGE)).unwrap();
        html::meta(&page, "http-equiv", POLICY).unwrap().to_owned()
    }

    #[test]
    fn the_policy_lets_nothing_in_that_is_not_named() {
        let policy = policy();
        let named: Vec<_> = policy.split("; ").collect();
        assert!(named.contains(&"default-src 'none'"));
        assert!(named.contains(&"script-src 'self' 'wasm-unsafe-eval'"));
        assert!(named.contains(&"require-trusted-types-for 'script'"));
        // In a meta tag these say nothing, so that nobody may take them for said.
        for header_only in ["frame-ancestors", "sandbox", "report-"] {
            assert!(!policy.contains(header_only));
        }
    }

    #[test]
    fn a_host_allows_connections_to_itself_only() {
        let narrowed = narrowed(&policy());
        assert!(narrowed.contains("; connect-src 'self'; "), "{narrowed}");
        assert!(!narrowed.contains("https:"), "{narrowed}");
    }

    /// The rules for hosts that read other files are written by hand.
    #[test]
    fn the_guide_for_hosts_has_the_policy() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
        let guide = fs::read_to_string(root.join("docs").join("hosting.md")).unwrap();
        assert_eq!(guide.matches(&narrowed(&policy())).count(), 2);
        assert!(guide.contains(FOR_GOOD));
    }
}
