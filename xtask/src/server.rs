//! Serves dist/ the way a plain static host does, on this machine only.

use std::io::ErrorKind;
use std::net::{Ipv4Addr, TcpListener};
use std::path::Path;
use std::thread;

use anyhow::{Context, Result};
use axum::Router;
use axum::http::{HeaderName, HeaderValue, header};
use tower_http::services::ServeDir;
use tower_http::set_header::SetResponseHeaderLayer;

use crate::finish::Header;

/// A second address of the same files: proves that the page works from any folder of a host, and
/// from one that sends nothing but files.
pub const SUB_FOLDER: &str = "/some/folder";

/// The address of the example of a dealer's page.
const EXAMPLE: &str = "/example-dealer";

/// Ports tried before giving up.
const TRIES: u16 = 50;

pub struct Server {
    listener: TcpListener,
    pages: Router,
}

impl Server {
    /// Listens on `port`, or on the next free one; on any free one if it is 0. Files are sent with
    /// `headers`.
    pub fn bind(port: u16, dist: &Path, headers: &[Header]) -> Result<Self> {
        let listener = bind_from(port)?;
        listener.set_nonblocking(true)?;
        Ok(Self {
            listener,
            pages: pages(dist, headers)?,
        })
    }

    /// Serves the example of a dealer's page beside the page.
    pub fn with_example(mut self, folder: &Path) -> Self {
        self.pages = self.pages.nest_service(EXAMPLE, ServeDir::new(folder));
        self
    }

    pub fn url(&self) -> Result<String> {
        Ok(format!("http://{}/", self.listener.local_addr()?))
    }

    /// Serves until the process ends.
    pub fn serve(self) -> Result<()> {
        tokio::runtime::Builder::new_current_thread()
            .enable_io()
            .build()?
            .block_on(async {
                let listener = tokio::net::TcpListener::from_std(self.listener)?;
                axum::serve(listener, with_headers(self.pages)).await
            })?;
        Ok(())
    }

    /// Serves beside the caller until the process ends.
    pub fn serve_in_background(self) {
        thread::spawn(|| {
            if let Err(error) = self.serve() {
                eprintln!("the server ended: {error:#}");
            }
        });
    }
}

fn bind_from(port: u16) -> Result<TcpListener> {
    let mut candidate = port;
    loop {
        match TcpListener::bind((Ipv4Addr::LOCALHOST, candidate)) {
            Ok(listener) => return Ok(listener),
            Err(error) if error.kind() == ErrorKind::AddrInUse && candidate - port < TRIES => {
                println!("Port {candidate} is taken, trying the next one.");
                candidate = candidate
                    .checked_add(1)
                    .context("no free port up to the last one, 65535")?;
            }
            Err(error) => {
                return Err(error).with_context(|| format!("cannot listen on port {candidate}"));
            }
        }
    }
}

/// The files twice: with what a careful host sends beside them, and in a folder with nothing of it.
fn pages(dist: &Path, headers: &[Header]) -> Result<Router> {
    // Packed where that was done beforehand.
    let files = || ServeDir::new(dist).precompressed_br().precompressed_gzip();
    let mut careful = Router::new().fallback_service(files());
    for (name, value) in headers {
        careful = careful.layer(always(name.parse()?, value.parse()?));
    }
    Ok(Router::new()
        .nest_service(SUB_FOLDER, files())
        .fallback_service(careful))
}

fn with_headers(pages: Router) -> Router {
    let always_says = |name, value| always(name, HeaderValue::from_static(value));
    pages
        // Whoever looks for a rebuilt page gets it, also its unhashed index.html.
        .layer(always_says(header::CACHE_CONTROL, "no-store"))
        .layer(always_says(header::X_CONTENT_TYPE_OPTIONS, "nosniff"))
        // A frame without an origin of its own asks for the page's files as a stranger.
        .layer(always_says(header::ACCESS_CONTROL_ALLOW_ORIGIN, "*"))
}

fn always(name: HeaderName, value: HeaderValue) -> SetResponseHeaderLayer<HeaderValue> {
    SetResponseHeaderLayer::overriding(name, value)
}

#[cfg(test)]
mod tests {
    use std::io::{Read, Write};
    use std::net::TcpStream;

    use super::*;

    #[test]
    fn a_taken_port_gives_way_to_a_free_one() {
        let taken = bind_from(0).unwrap();
        let port = taken.local_addr().unwrap().port();
        let next = bind_from(port).unwrap();
        assert!(next.local_addr().unwrap().port() > port);
    }

    #[test]
    fn files_come_typed_uncached_and_shared_at_every_address() {
        let sh = xshell::Shell::new().unwrap();
        let dist = sh.create_temp_dir().unwrap();
        let write = |name: &str, text: &str| sh.write_file(dist.path().join(name), text).unwrap();
        write("page.wasm", "module");
        let policy = ("Content-Security-Policy", "default-src 'none'".to_owned());
        let server = Server::bind(0, dist.path(), &[policy])
            .unwrap()
            .with_example(dist.path());
        let address = server.listener.local_addr().unwrap();
        server.serve_in_background();

        for path in [
            "/page.wasm",
            "/some/folder/page.wasm",
            "/example-dealer/page.wasm",
        ] {
            let mut stream = TcpStream::connect(address).unwrap();
            write!(stream, "GET {path} HTTP/1.0\r\n\r\n").unwrap();
            let mut answer = String::new();
            stream.read_to_string(&mut answer).unwrap();
            assert!(answer.starts_with("HTTP/1.0 200"), "{answer}");
            assert!(
                answer.contains("content-type: application/wasm"),
                "{answer}"
            );
            assert!(answer.contains("cache-control: no-store"), "{answer}");
            assert!(
                answer.contains("access-control-allow-origin: *"),
                "{answer}"
            );
            assert!(answer.ends_with("module"), "{answer}");
            let policy = "content-security-policy: default-src 'none'\r\n";
            assert_eq!(answer.contains(policy), path == "/page.wasm", "{answer}");
        }
    }
}
