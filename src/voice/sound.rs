//! A sound of which any stretch can be had, whether or not all of it has been made.

use std::ops::Range;

use super::wide;

/// Mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE).
pub(super) trait Sound {
    /// How many samples.
    fn len(&self) -> usize;

    /// A stretch of them, made in `room` if need be; `room` is as long.
    fn stretch<'a>(&'a self, frames: Range<usize>, room: &'a mut [f32]) -> &'a [f32];

    /// All of them, times a gain.
    fn with_gain(self, gain: f32) -> Vec<f32>;
}

impl Sound for &[f32] {
    fn len(&self) -> usize {
        (**self).len()
    }

    fn stretch<'a>(&'a self, frames: Range<usize>, _: &'a mut [f32]) -> &'a [f32] {
        self.get(frames).unwrap_or_default()
    }

    fn with_gain(self, gain: f32) -> Vec<f32> {
        self.to_vec().with_gain(gain)
    }
}

impl Sound for Vec<f32> {
    fn len(&self) -> usize {
        self.as_slice().len()
    }

    fn stretch<'a>(&'a self, frames: Range<usize>, _: &'a mut [f32]) -> &'a [f32] {
        self.get(frames).unwrap_or_default()
    }

    fn with_gain(mut self, gain: f32) -> Vec<f32> {
        wide::scale(&mut self, gain);
        self
    }
}
