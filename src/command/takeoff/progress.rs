//! A progress bar on a terminal, and none anywhere else.

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use std::io::{self, IsTerminal, Write};

/// How far the reading of a takeoff is.
#[derive(Clone, Debug)]
pub struct Progress {
    bar: ProgressBar,
    /// Whether answers go to the same terminal as the bar, which must then make room for them.
    shared: bool,
}

impl Progress {
    /// The progress of a takeoff of `length` bytes, where that is known.
    pub fn of(length: Option<u64>) -> Self {
        // standard error: the answers on standard output stay what they are
        let bar = match length {
            Some(length) => ProgressBar::new(length),
            None => ProgressBar::no_length(),
        };
        bar.set_draw_target(ProgressDrawTarget::stderr());
        let template = match length {
            Some(_) => "{wide_bar} {percent:>3}%  {bytes}/{total_bytes}  {bytes_per_sec}  {eta}",
            None => "{spinner} {bytes}  {bytes_per_sec}",
        };
        if let Ok(style) = ProgressStyle::with_template(template) {
            bar.set_style(style);
        }
        Self { bar, shared: io::stdout().is_terminal() }
    }

    /// Counts bytes that were read.
    pub fn add(&self, bytes: u64) {
        self.bar.inc(bytes);
    }

    /// Writes to standard output, with the bar out of the way where both are on one terminal.
    ///
    /// A reader that is slow holds up everything before it: that is what keeps memory bounded.
    pub fn write(&self, text: &[u8]) -> io::Result<()> {
        let write = || {
            let mut output = io::stdout().lock();
            output.write_all(text).and_then(|()| output.flush())
        };
        if self.shared { self.bar.suspend(write) } else { write() }
    }

    /// Takes the bar away.
    pub fn finish(&self) {
        self.bar.finish_and_clear();
    }
}
