//! Gentle compression, so that speech can be loud without its peaks being cut.

use crate::voice::SAMPLE_RATE;

/// Above this envelope, in dBFS, the compressor halves what is above it in dB.
const THRESHOLD_DBFS: f64 = -27.0;
const RATIO: f64 = 2.0;
/// How fast the compressor follows louder and quieter speech, in seconds.
const ATTACK_S: f64 = 0.01;
const RELEASE_S: f64 = 0.2;

/// Evens loud and quiet speech out, gently.
pub(super) fn compressed(samples: &[f32]) -> Vec<f32> {
    let pole = |seconds: f64| (-1.0 / (f64::from(SAMPLE_RATE) * seconds)).exp();
    let (attack, release) = (pole(ATTACK_S), pole(RELEASE_S));
    let mut power = 0f64;
    let even = |sample: &f32| {
        let now = f64::from(*sample).powi(2);
        let keep = if now > power { attack } else { release };
        power = keep * power + (1.0 - keep) * now;
        let over = (10.0 * power.max(1e-12).log10() - THRESHOLD_DBFS).max(0.0);
        (f64::from(*sample) * 10f64.powf(-over * (1.0 - 1.0 / RATIO) / 20.0)) as f32
    };
    samples.iter().map(even).collect()
}
