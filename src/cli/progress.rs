//! A progress bar for work over a second, none where nobody watches.

use std::time::{Duration, Instant};

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

pub(super) struct Bar {
    bar: ProgressBar,
    began: Instant,
}

impl Bar {
    pub(super) fn new() -> Bar {
        // Standard error: where it is not a terminal, the bar draws nothing.
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::hidden());
        if let Ok(style) = ProgressStyle::with_template("{bar:30} {pos}/{len} {msg}") {
            bar.set_style(style);
        }
        Bar { bar, began: Instant::now() }
    }

    pub(super) fn callback(&mut self) -> impl FnMut(usize, usize, &str) + '_ {
        move |done, all, what| {
            if self.began.elapsed() > Duration::from_secs(1) && self.bar.is_hidden() {
                self.bar.set_draw_target(ProgressDrawTarget::stderr());
            }
            self.bar.set_length(all as u64);
            self.bar.set_position(done as u64);
            self.bar.set_message(what.to_owned());
        }
    }
}

impl Drop for Bar {
    fn drop(&mut self) {
        self.bar.finish_and_clear();
    }
}
