//! Commands that talk to a server which may never answer.

use std::path::Path;
use std::process::{Child, Command, ExitStatus};
use std::time::{Duration, Instant};

use anyhow::{Context, Result, bail};
use wait_timeout::ChildExt;
use walkdir::WalkDir;

/// Runs `command` until it ends, or ends it once `watched` has not grown or changed for `limit`.
///
/// A slow download is thereby let finish, while a silent server costs one limit and no more.
pub fn run(command: &mut Command, limit: Duration, watched: &[&Path]) -> Result<ExitStatus> {
    let mut child = command
        .spawn()
        .with_context(|| format!("starting {:?}", command.get_program()))?;
    let mut last_change = Instant::now();
    let mut last_size = size_of(watched);
    loop {
        if let Some(status) = child.wait_timeout(Duration::from_secs(1))? {
            return Ok(status);
        }
        let size = size_of(watched);
        if size != last_size {
            last_size = size;
            last_change = Instant::now();
        }
        if last_change.elapsed() > limit {
            end(&mut child)?;
            bail!("no progress for {} s, ended", limit.as_secs());
        }
    }
}

fn end(child: &mut Child) -> Result<()> {
    child.kill()?;
    child.wait()?;
    Ok(())
}

fn size_of(folders: &[&Path]) -> u64 {
    folders
        .iter()
        .flat_map(WalkDir::new)
        // Files come and go while the command runs: one that is gone counts as nothing.
        .filter_map(|entry| entry.ok()?.metadata().ok())
        .map(|metadata| metadata.len())
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[cfg(unix)]
    #[test]
    fn a_command_without_progress_is_ended() {
        let mut command = Command::new("sleep");
        let error = run(command.arg("600"), Duration::ZERO, &[]).unwrap_err();
        assert!(error.to_string().contains("no progress"));
    }

    #[cfg(unix)]
    #[test]
    fn a_command_that_ends_gives_its_status() {
        let status = run(&mut Command::new("false"), Duration::from_secs(60), &[]).unwrap();
        assert!(!status.success());
    }
}
