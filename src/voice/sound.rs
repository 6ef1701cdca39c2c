//! A sound of which any stretch can be had, whether or not all of it has been made.

use std::ops::Range;

/// Samples that are still near at hand when something else is done with them.
pub(super) const PIECE: usize = 4096;

/// Mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE).
pub trait Sound {
    /// How many samples.
    fn frames(&self) -> usize;

    /// Makes the stretch from a frame on; it ends within the sound.
    fn make(&self, from: usize, into: &mut [f32]);

    /// A stretch, made in `buffer` if need be; `buffer` is as long.
    fn stretch<'a>(&'a self, frames: Range<usize>, buffer: &'a mut [f32]) -> &'a [f32] {
        self.make(frames.start, buffer);
        buffer
    }

    /// All of them.
    fn samples(&self) -> Vec<f32> {
        let mut samples = Vec::with_capacity(self.frames());
        pieces(self, &mut |piece| samples.extend_from_slice(piece));
        samples
    }
}

/// Shows a sound piece by piece; all but the last are [`PIECE`] long.
pub(super) fn pieces(sound: &(impl Sound + ?Sized), show: &mut dyn FnMut(&[f32])) {
    let mut buffer = [0f32; PIECE];
    for from in (0..sound.frames()).step_by(PIECE) {
        let to = (from + PIECE).min(sound.frames());
        show(sound.stretch(from..to, buffer.get_mut(..to - from).unwrap_or_default()));
    }
}

impl Sound for [f32] {
    fn frames(&self) -> usize {
        self.len()
    }

    fn make(&self, from: usize, into: &mut [f32]) {
        into.copy_from_slice(self.get(from..from + into.len()).unwrap_or_default());
    }

    fn stretch<'a>(&'a self, frames: Range<usize>, _: &'a mut [f32]) -> &'a [f32] {
        self.get(frames).unwrap_or_default()
    }

    fn samples(&self) -> Vec<f32> {
        self.to_vec()
    }
}

impl Sound for Vec<f32> {
    fn frames(&self) -> usize {
        self.len()
    }

    fn make(&self, from: usize, into: &mut [f32]) {
        self.as_slice().make(from, into);
    }

    fn stretch<'a>(&'a self, frames: Range<usize>, buffer: &'a mut [f32]) -> &'a [f32] {
        self.as_slice().stretch(frames, buffer)
    }

    fn samples(&self) -> Vec<f32> {
        self.clone()
    }
}

impl<S: Sound + ?Sized> Sound for &S {
    fn frames(&self) -> usize {
        (**self).frames()
    }

    fn make(&self, from: usize, into: &mut [f32]) {
        (**self).make(from, into);
    }

    fn stretch<'a>(&'a self, frames: Range<usize>, buffer: &'a mut [f32]) -> &'a [f32] {
        (**self).stretch(frames, buffer)
    }

    fn samples(&self) -> Vec<f32> {
        (**self).samples()
    }
}
