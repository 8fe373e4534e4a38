//! Named steps: the first that fails ends the run, and the time of each is told.

use std::time::{Duration, Instant};

use anyhow::{Context, Result};

pub struct Steps {
    started: Instant,
    done: Vec<(&'static str, Duration)>,
}

impl Steps {
    pub fn new() -> Self {
        Self {
            started: Instant::now(),
            done: Vec::new(),
        }
    }

    pub fn run<T>(&mut self, name: &'static str, step: impl FnOnce() -> Result<T>) -> Result<T> {
        println!("\n=== {name}");
        let started = Instant::now();
        let result = step().with_context(|| format!("step failed: {name}"));
        self.done.push((name, started.elapsed()));
        result
    }

    pub fn report(&self) {
        println!("\n=== times");
        for (name, time) in &self.done {
            println!("{:>8.1} s  {name}", time.as_secs_f64());
        }
        println!(
            "{:>8.1} s  in all, {} steps",
            self.started.elapsed().as_secs_f64(),
            self.done.len()
        );
    }
}
