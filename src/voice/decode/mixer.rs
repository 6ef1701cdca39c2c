//! Blocks of any number of channels become mono.

use super::file::Problem;

/// Some programs write a little beyond full scale; nothing that was recorded lies 60 dB beyond it.
const LOUDEST: f32 = 1000.0;

/// Averages channels and keeps to the limits.
pub(super) struct Mixer<'t> {
    pub(super) most_seconds: u64,
    pub(super) take: &'t mut dyn FnMut(u32, &[f32]),
    pub(super) mono: Vec<f32>,
    pub(super) frames: u64,
}

impl Mixer<'_> {
    pub(super) fn add(&mut self, rate: u32, channels: usize, interleaved: &[f32]) -> Result<(), Problem> {
        let mono = match channels {
            1 => interleaved,
            2 => {
                self.mono.clear();
                self.mono.extend(interleaved.chunks_exact(2).map(|pair| 0.5 * pair.iter().sum::<f32>()));
                &self.mono
            }
            channels => return Err(Problem::Channels(channels)),
        };
        // Floating point reaches so far that a filter would leave the numbers. What is no number lies within nothing.
        if !mono.iter().fold(true, |within, sample| within & (sample.abs() <= LOUDEST)) {
            let finite = mono.iter().all(|sample| sample.is_finite());
            return Err(if finite { Problem::TooLoud } else { Problem::NotFinite });
        }
        self.frames += mono.len() as u64;
        if self.frames > self.most_seconds * u64::from(rate) {
            return Err(Problem::TooLong(self.most_seconds));
        }
        (self.take)(rate, mono);
        Ok(())
    }
}
