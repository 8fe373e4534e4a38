//! Files packed beforehand, for hosts that send such: packed as small as can be, once.

use std::fs;
use std::io::Write;
use std::path::Path;

use anyhow::Result;
use flate2::Compression;
use flate2::write::GzEncoder;

use super::files::{WORKER, WORKER_OFF, parts};

/// Brotli's largest quality, and the window that browsers are sure to accept.
const QUALITY: i32 = 11;
const WINDOW: i32 = 22;

/// Puts `.br` and `.gz` beside each file of the page.
pub fn pack(dist: &Path) -> Result<()> {
    let workers = [WORKER, WORKER_OFF].map(str::to_owned);
    for name in parts(dist)?.into_iter().chain(workers) {
        let content = fs::read(dist.join(&name))?;
        fs::write(dist.join(format!("{name}.br")), brotli(&content)?)?;
        fs::write(dist.join(format!("{name}.gz")), gzip(&content)?)?;
    }
    Ok(())
}

pub fn brotli(content: &[u8]) -> Result<Vec<u8>> {
    let parameters = brotli::enc::BrotliEncoderParams {
        quality: QUALITY,
        lgwin: WINDOW,
        ..Default::default()
    };
    let mut packed = Vec::new();
    brotli::BrotliCompress(&mut &content[..], &mut packed, &parameters)?;
    Ok(packed)
}

fn gzip(content: &[u8]) -> Result<Vec<u8>> {
    let mut packed = GzEncoder::new(Vec::new(), Compression::best());
    packed.write_all(content)?;
    Ok(packed.finish()?)
}

#[cfg(test)]
mod tests {
    use std::io::Read;

    use super::*;

    #[test]
    fn what_is_packed_comes_out_again() {
        let content = b"shaft power ".repeat(1000);
        let (mut from_brotli, mut from_gzip) = (Vec::new(), Vec::new());
        let brotli = brotli(&content).unwrap();
        brotli::BrotliDecompress(&mut &brotli[..], &mut from_brotli).unwrap();
        let gzip = gzip(&content).unwrap();
        flate2::read::GzDecoder::new(&gzip[..])
            .read_to_end(&mut from_gzip)
            .unwrap();
        assert_eq!((&from_brotli, &from_gzip), (&content, &content));
        assert!(brotli.len() < 100 && gzip.len() < 100);
    }
}
