//! The sounding part of a clip: what is left without the silence at its edges, and how loud it is.

use std::ops::Range;

use super::{SAMPLE_RATE, simd};

/// Frames over which a clip's level is taken: 5 ms.
const WINDOW: usize = SAMPLE_RATE as usize / 200;
/// Windows this far below the mean of all are pauses within the clip.
const GATE: f64 = 0.1;
/// Edges this far below a clip's own level are silence, as a power: 40 dB.
const EDGE: f64 = 1e-4;
/// A clip's own noise lies below this share of its windows.
const NOISE_SHARE: usize = 10;
/// Edges this near to a clip's noise are silence.
const ABOVE_NOISE: f64 = 4.0;
/// Nothing louder than this, below the clip's level, is ever taken for silence.
const MOST_EDGE: f64 = 3.2e-3;
/// What is kept of the silence at either edge: 10 ms.
const KEEP: usize = SAMPLE_RATE as usize / 100;

/// The sounding part of a clip.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Shape {
    /// Its frames.
    pub(super) range: Range<usize>,
    /// RMS without pauses, in dBFS; minus infinity for silence.
    pub(super) level_db: f64,
}

impl Shape {
    pub(super) fn of(samples: &[f32]) -> Shape {
        let powers: Vec<f64> = samples.chunks(WINDOW).map(simd::power).collect();
        let level = active_power(&powers);
        let mut sorted = powers.clone();
        sorted.sort_by(f64::total_cmp);
        let noise = sorted.get(sorted.len() / NOISE_SHARE).copied().unwrap_or(0.0);
        let edge = (level * EDGE).max((noise * ABOVE_NOISE).min(level * MOST_EDGE));
        let sounds = |power: &f64| *power > edge;
        let range = match (powers.iter().position(sounds), powers.iter().rposition(sounds)) {
            (Some(first), Some(last)) => {
                (first * WINDOW).saturating_sub(KEEP)..((last + 1) * WINDOW + KEEP).min(samples.len())
            }
            _ => 0..samples.len(),
        };
        Shape { range, level_db: 10.0 * level.log10() }
    }
}

/// Mean power of the windows that are no pauses.
fn active_power(powers: &[f64]) -> f64 {
    let mean = |powers: &[f64]| powers.iter().sum::<f64>() / powers.len().max(1) as f64;
    let gate = mean(powers) * GATE;
    let active: Vec<f64> = powers.iter().copied().filter(|power| *power > gate).collect();
    mean(&active)
}
