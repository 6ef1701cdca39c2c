//! What is heard where nobody speaks: the sound of the room.

use std::f64::consts::PI;
use std::sync::{Arc, LazyLock};

use super::SAMPLE_RATE;
use super::clip_loudness::ClipLoudness;
use super::noise::triangular;
use super::pcm16::Pcm16;

/// Frames of room tone before it repeats: 2.7 s, too long to be heard as a pattern.
const TONE: u32 = 1 << 17;
/// Frames over which a recorded room fades into itself: 50 ms.
const CROSSFADE: usize = SAMPLE_RATE as usize / 20;
/// What the low-pass of the room tone, near 1200 Hz, lets in of each new value.
const PASS: f64 = 0.15;

/// What is heard again and again; it repeats without a seam.
#[derive(Debug, Clone)]
pub(super) struct RoomTone {
    sound: Arc<Pcm16>,
    /// To be applied to them.
    pub(super) gain: f32,
    /// Their mean square after the weighting filters.
    weighted: f64,
    /// Their highest peak at and between samples.
    peak: f64,
}

impl RoomTone {
    /// Noise as of a quiet room.
    pub(super) fn quiet(dbfs: f64) -> RoomTone {
        QUIET.clone().raised(10f64.powf(dbfs / 20.0))
    }

    /// A room as recorded: its end is faded into its beginning.
    pub(super) fn recorded(recorded: &[f32]) -> RoomTone {
        let crossfade = (recorded.len() / 4).min(CROSSFADE);
        let (body, end) = recorded.split_at(recorded.len() - crossfade);
        let fading = end.iter().enumerate().map(|(index, sample)| {
            // Two stretches of noise are not alike: their powers are to sum to one, not their values.
            let rising = PI / 2.0 * (index as f64 + 0.5) / crossfade as f64;
            (rising.sin() as f32, rising.cos() as f32 * sample)
        });
        let start = body.iter().zip(fading).map(|(sample, (rising, ending))| rising * sample + ending);
        RoomTone::of(start.chain(body.iter().skip(crossfade).copied()).collect())
    }

    fn of(samples: Vec<f32>) -> RoomTone {
        let ClipLoudness { sums, peak, .. } = ClipLoudness::of(&samples);
        let sum: f64 = sums.into_iter().map(f64::from).sum();
        let weighted = sum / samples.len().max(1) as f64;
        RoomTone { sound: Pcm16::of(&samples).into(), gain: 1.0, weighted, peak: peak.into() }
    }

    /// Louder or quieter.
    pub(super) fn raised(mut self, gain: f64) -> RoomTone {
        self.gain *= gain as f32;
        self
    }

    pub(super) fn is_empty(&self) -> bool {
        self.sound.steps.is_empty()
    }

    /// The mean square after the weighting filters.
    pub(super) fn weighted_power(&self) -> f64 {
        f64::from(self.gain).powi(2) * self.weighted
    }

    /// The highest peak at and between samples, as a factor of full scale.
    pub(super) fn peak(&self) -> f64 {
        f64::from(self.gain) * self.peak
    }

    /// What a step is worth.
    pub(super) fn step(&self) -> f32 {
        self.gain * self.sound.unit
    }

    /// The steps from a frame on, up to where they repeat.
    pub(super) fn from(&self, frame: usize) -> &[i16] {
        let steps = &self.sound.steps;
        steps.get(frame % steps.len().max(1)..).unwrap_or_default()
    }
}

/// The quiet room at a level of 1.
static QUIET: LazyLock<RoomTone> = LazyLock::new(|| {
    let white = |place: u32| f64::from(triangular(0x5EED, place));
    let mut low = 0f64;
    let mut pass = |place: u32| {
        low += PASS * (white(place) - low);
        low
    };
    // A first stretch brings the filter to where the end of the tone leaves it.
    (TONE - 1024..TONE).for_each(|place| {
        pass(place);
    });
    let tone: Vec<f64> = (0..TONE).map(pass).collect();
    let power = tone.iter().map(|value| value * value).sum::<f64>() / f64::from(TONE);
    RoomTone::of(tone.into_iter().map(|value| (value / power.sqrt()) as f32).collect())
});
