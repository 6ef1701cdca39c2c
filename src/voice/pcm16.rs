//! A clip's samples in 16 bits, in steps of a size of its own.
//!
//! The largest sample takes the most steps there are, so that what rounding adds lies 98 dB
//! below it, under the noise of any room. They take half the room, and half the time to read.

use std::borrow::Cow;

use super::simd;

/// Mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE).
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pcm16 {
    pub(super) steps: Vec<i16>,
    /// What a step is worth, as a part of full scale.
    pub(super) unit: f32,
}

impl Pcm16 {
    pub(super) fn of(samples: &[f32]) -> Pcm16 {
        let (low, high) = simd::extremes(samples);
        let peak = high.max(-low);
        // Of silence any size will do.
        let unit = if peak > 0.0 { (peak / f32::from(i16::MAX)).max(f32::MIN_POSITIVE) } else { 1.0 };
        Pcm16 { steps: simd::rounded(samples, unit), unit }
    }

    pub(super) fn samples(&self) -> Vec<f32> {
        self.steps.iter().map(|step| f32::from(*step) * self.unit).collect()
    }
}

/// A stretch of them.
#[derive(Debug, Clone)]
pub(super) struct Stretch<'a> {
    pub(super) steps: Cow<'a, [i16]>,
    pub(super) unit: f32,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounding_is_half_a_step_at_most() {
        for peak in [1e-6f32, 0.01, 0.7, 1.0, 900.0] {
            let samples: Vec<f32> = (0..500).map(|n| peak * (n as f32 * 0.37).sin()).collect();
            let back = Pcm16::of(&samples).samples();
            // And a little for what division and multiplication round.
            let most = peak / 32_767.0 * 0.51;
            assert!(samples.iter().zip(&back).all(|(one, other)| (one - other).abs() <= most), "{peak}");
        }
        assert_eq!(Pcm16::of(&[0.0; 3]).samples(), [0.0; 3]);
        assert!(Pcm16::of(&[]).samples().is_empty());
    }
}
