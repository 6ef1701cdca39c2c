//! What a clip adds to a message's loudness and peak, measured once and kept with it.
//!
//! The weighting filters forget within hundredths of a second, and clips meet in quiet: the power
//! of a message is that of its clips, each in its place and at its gain, so that a message is
//! measured without being mixed. The suite holds what comes of it against the mixed sound.

use std::borrow::Cow;

use super::SAMPLE_RATE;
use super::meter::{STRIDE, Weighted};

/// Frames that are summed: 5 ms.
pub(super) const GRAIN: usize = SAMPLE_RATE as usize / 200;

/// What the sounding part of a clip amounts to.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct ClipLoudness {
    /// The sum of squares after the weighting filters, of each grain; the last may be shorter.
    pub(super) sums: Vec<f32>,
    /// The highest peak at and between samples, as a factor of full scale.
    pub(super) peak: f32,
    /// About where it lies.
    pub(super) peak_at: usize,
}

impl ClipLoudness {
    /// Of samples that are numbers.
    pub(super) fn of(sounding: &[f32]) -> ClipLoudness {
        let mut whole = Cow::Borrowed(sounding);
        if !sounding.len().is_multiple_of(GRAIN) {
            whole.to_mut().resize(sounding.len().next_multiple_of(GRAIN), 0.0);
        }
        let weighted = Weighted::of::<GRAIN, { GRAIN / STRIDE }>(&&*whole);
        weighted.map_or_else(ClipLoudness::default, |weighted| ClipLoudness {
            sums: weighted.sums.into_iter().map(|sum| sum as f32).collect(),
            peak: weighted.true_peak as f32,
            peak_at: weighted.peak_at,
        })
    }
}
