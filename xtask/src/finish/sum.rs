//! Short sums of files, for names and versions that change with what is in them.

use sha2::{Digest, Sha256};

/// A sum of files with their names.
#[derive(Default)]
pub struct Sum(Sha256);

impl Sum {
    /// With one more file. Names and contents go in with their lengths, so that none can stand for another.
    pub fn and(mut self, name: &str, content: &[u8]) -> Self {
        for part in [name.as_bytes(), content] {
            self.0.update((part.len() as u64).to_le_bytes());
            self.0.update(part);
        }
        self
    }

    /// Its first bytes, two digits each.
    pub fn told(self, bytes: usize) -> String {
        let sum = self.0.finalize();
        let bytes = sum.iter().take(bytes);
        bytes.map(|byte| format!("{byte:02x}")).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_and_contents_count_and_none_stands_for_another() {
        let of = |name: &str, content: &[u8]| Sum::default().and(name, content).told(8);
        assert_eq!(of("a", b"1").len(), 16);
        assert_eq!(of("a", b"1"), of("a", b"1"));
        for (name, content) in [
            ("a", b"2".as_slice()),
            ("b", b"1"),
            ("a1", b""),
            ("", b"a1"),
        ] {
            assert_ne!(of("a", b"1"), of(name, content), "{name}");
        }
    }
}
