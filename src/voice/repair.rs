//! Gentle repair of a clip before it is joined; the recording itself stays as it is.
//!
//! Only what a clip's measures ask for is done, so that a clean clip passes
//! sample for sample.

use super::filter::rumble_out;
use super::hum::Hum;
use super::record::quality::{Measures, measure};
use super::{SAMPLE_RATE, simd};

/// Below the lowest voice of a man, in Hz.
const HIGH_PASS_HZ: f64 = 75.0;
/// Rumble this far below speech, in dB, is not heard. Common practice, no source.
const RUMBLE_DB: f64 = 40.0;
/// An offset below this makes no click. Common practice, no source.
const DC: f64 = 1e-3;
/// Hum this far below speech, in dB, is not heard. Common practice, no source.
const HUM_DB: f64 = 50.0;
/// Noise is taken out where speech stands less than this above it, in dB. Common practice, no source.
#[cfg(feature = "denoise")]
const NOISE_DB: f64 = 30.0;

/// What a clip needs.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Needs {
    /// Take out the offset and what lies below a voice.
    pub high_pass: bool,
    /// Take out this hum.
    pub hum: Option<Hum>,
    /// Take out noise, where the program was built for it (feature `denoise`).
    pub denoise: bool,
}

impl Needs {
    /// What measures ask for.
    pub fn of(measures: &Measures) -> Needs {
        let rumbles = measures.rumble_dbfs > measures.level_dbfs - RUMBLE_DB;
        let hums = measures.speech_to_hum_db().is_some_and(|db| db < HUM_DB);
        Needs {
            high_pass: rumbles || measures.dc.abs() > DC,
            hum: measures.hum.clone().filter(|_| hums),
            #[cfg(feature = "denoise")]
            denoise: measures.speech_to_noise_db().is_some_and(|db| db < NOISE_DB),
            #[cfg(not(feature = "denoise"))]
            denoise: false,
        }
    }
}

/// A clip at [`SAMPLE_RATE`] with what it needs done to it.
pub(super) fn repaired(mut samples: Vec<f32>) -> Vec<f32> {
    let needs = Needs::of(&measure(SAMPLE_RATE, &samples));
    repair(&mut samples, &needs);
    samples
}

/// Repairs a clip at [`SAMPLE_RATE`]; its length stays.
pub fn repair(samples: &mut [f32], needs: &Needs) {
    if let Some(hum) = &needs.hum {
        hum.take_out(SAMPLE_RATE, samples);
    }
    if needs.high_pass {
        // The mean goes first, so that the filter has nothing to settle from.
        let mean = simd::mean(samples) as f32;
        samples.iter_mut().for_each(|sample| *sample -= mean);
        rumble_out(samples, f64::from(SAMPLE_RATE), HIGH_PASS_HZ);
    }
    #[cfg(feature = "denoise")]
    if needs.denoise {
        denoise(samples);
    }
}

/// Takes noise out with a small neural network. It answers a frame late, which is made good, and hears the clip
/// twice: at first it does not yet know the noise.
#[cfg(feature = "denoise")]
fn denoise(samples: &mut [f32]) {
    use nnnoiseless::DenoiseState;
    const FRAME: usize = DenoiseState::FRAME_SIZE;
    /// The network knows samples of 16 bits.
    const FULL: f32 = 32_768.0;
    let length = samples.len();
    let mut state = DenoiseState::new();
    let mut cleaned = Vec::with_capacity(length + 2 * FRAME);
    let (mut input, mut output) = ([0f32; FRAME], [0f32; FRAME]);
    let frames = length.div_ceil(FRAME) + 1;
    for _ in 0..2 {
        cleaned.clear();
        for frame in 0..frames {
            input.fill(0.0);
            let rest = samples.get(frame * FRAME..).unwrap_or_default();
            input.iter_mut().zip(rest).for_each(|(input, sample)| *input = sample * FULL);
            state.process_frame(&mut output, &input);
            cleaned.extend(output.iter().map(|sample| sample / FULL));
        }
    }
    for (sample, cleaned) in samples.iter_mut().zip(cleaned.into_iter().skip(FRAME)) {
        *sample = cleaned;
    }
}
