//! Power by frequency of short stretches of sound.

use std::f32::consts::TAU;
use std::fmt;
use std::sync::Arc;

use realfft::num_complex::Complex32;
use realfft::{RealFftPlanner, RealToComplex};

/// Takes the spectra of stretches of one length, under a Hann window.
pub(super) struct Spectrum {
    transform: Arc<dyn RealToComplex<f32>>,
    window: Vec<f32>,
    input: Vec<f32>,
    output: Vec<Complex32>,
    scratch: Vec<Complex32>,
}

impl fmt::Debug for Spectrum {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Spectrum").field("length", &self.window.len()).finish_non_exhaustive()
    }
}

impl Spectrum {
    /// For stretches of `length` samples.
    pub(super) fn new(length: usize) -> Spectrum {
        let transform = RealFftPlanner::new().plan_fft_forward(length);
        let window: Vec<f32> =
            (0..length).map(|n| 0.5 - 0.5 * (TAU * n as f32 / length as f32).cos()).collect();
        Spectrum {
            input: transform.make_input_vec(),
            output: transform.make_output_vec(),
            scratch: transform.make_scratch_vec(),
            transform,
            window,
        }
    }

    /// The power in each band of `rate / length` Hz, from 0 Hz to half the
    /// rate, of the stretch that begins at `start`. A sine at full scale has
    /// the power 1 in the band it lies in; beyond the sound lies silence.
    pub(super) fn powers(&mut self, samples: &[f32], start: usize) -> impl Iterator<Item = f32> {
        let stretch = samples.get(start..).unwrap_or_default();
        self.input.fill(0.0);
        for ((input, sample), weight) in self.input.iter_mut().zip(stretch).zip(&self.window) {
            *input = sample * weight;
        }
        // It fails on buffers of another length only, and these are its own.
        if self.transform.process_with_scratch(&mut self.input, &mut self.output, &mut self.scratch).is_err()
        {
            self.output.fill(Complex32::default());
        }
        let scale = 4.0 / self.window.len() as f32;
        self.output.iter().map(move |value| (value * scale).norm_sqr())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_full_sine_has_power_one_in_its_band_and_none_far_off() {
        let samples: Vec<f32> = (0..512).map(|n| (TAU * 20.0 * n as f32 / 512.0).sin()).collect();
        let powers: Vec<f32> = Spectrum::new(512).powers(&samples, 0).collect();
        assert_eq!(powers.len(), 257);
        assert!((powers.get(20).unwrap() - 1.0).abs() < 1e-3);
        assert!(powers.iter().enumerate().all(|(band, power)| band.abs_diff(20) < 3 || *power < 1e-9));
    }

    #[test]
    fn beyond_the_sound_lies_silence() {
        assert!(Spectrum::new(64).powers(&[1.0; 64], 64).all(|power| power == 0.0));
    }
}
