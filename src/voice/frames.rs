//! Time as it is counted in sound.

use std::ops::{Add, AddAssign, Sub};

/// Frames a second of everything made here.
pub const SAMPLE_RATE: u32 = 48_000;

/// A number of frames at [`SAMPLE_RATE`]; in mono, of samples.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Frames(pub u64);

impl Frames {
    /// The frames of a duration in milliseconds.
    pub const fn from_millis(millis: u64) -> Frames {
        Frames(millis * SAMPLE_RATE as u64 / 1000)
    }

    /// The duration in whole milliseconds, rounded.
    pub const fn millis(self) -> u64 {
        let rate = SAMPLE_RATE as u64;
        (self.0 * 1000 + rate / 2) / rate
    }

    /// The duration in seconds.
    pub fn seconds(self) -> f64 {
        self.0 as f64 / f64::from(SAMPLE_RATE)
    }

    /// How many samples of a mono buffer these are.
    pub(super) fn len(self) -> usize {
        usize::try_from(self.0).unwrap_or(usize::MAX)
    }

    pub(super) fn of(len: usize) -> Frames {
        Frames(len as u64)
    }
}

impl Add for Frames {
    type Output = Frames;
    fn add(self, other: Frames) -> Frames {
        Frames(self.0 + other.0)
    }
}

impl AddAssign for Frames {
    fn add_assign(&mut self, other: Frames) {
        self.0 += other.0;
    }
}

/// Never below zero.
impl Sub for Frames {
    type Output = Frames;
    fn sub(self, other: Frames) -> Frames {
        Frames(self.0.saturating_sub(other.0))
    }
}
