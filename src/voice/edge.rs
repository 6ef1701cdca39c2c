//! How a clip sounds where it begins and ends, and how well two clips meet.
//!
//! Level, pitch and spectrum are taken from the first and the last 32 ms of
//! its sounding part, at 16 kHz: what lies above 8 kHz tells takes apart no
//! better.

use std::sync::{Arc, LazyLock};

use realfft::{RealFftPlanner, RealToComplex};

use super::{SAMPLE_RATE, simd};

/// Every third sample is kept for the measurements.
const THIN: usize = 3;
const RATE: f32 = SAMPLE_RATE as f32 / THIN as f32;
/// Thinned samples of an edge: 32 ms, two periods of the lowest voice.
const LENGTH: usize = 512;
/// Bands of the spectrum, equally wide to the ear.
const BANDS: usize = 12;
/// The lowest and highest frequency of the bands, in Hz.
const BAND_LIMITS: (f32, f32) = (100.0, 7600.0);
/// Bands weaker than this, of the strongest's power, are not heard beside it.
const FAINT: f32 = 1e-4;
/// The lowest and the highest pitch of a voice, in Hz.
const PITCHES: (f32, f32) = (70.0, 400.0);
/// How alike two periods are in a voiced sound, from 0 to 1.
const VOICED: f32 = 0.5;
/// Below any recording, in dBFS.
const FLOOR_DB: f32 = -120.0;

/// What counts as one unit of roughness: a difference heard as a small step.
const LEVEL_UNIT_DB: f32 = 6.0;
const PITCH_UNIT_SEMITONES: f32 = 3.0;
const SPECTRUM_UNIT_DB: f32 = 9.0;
/// No single difference counts for more units than this.
const MOST_UNITS: f32 = 4.0;

/// One edge of a clip.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Edge {
    /// RMS relative to the clip's own level, in dB.
    pub(super) level_db: f32,
    /// Pitch in Hz; 0 where the edge is not voiced.
    pub(super) pitch_hz: f32,
    /// Each band's level, relative to the mean of all, in dB.
    pub(super) bands_db: [f32; BANDS],
}

/// Both edges of a clip.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Edges {
    pub(super) start: Edge,
    pub(super) end: Edge,
}

/// How much is heard of two clips meeting.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Joint {
    /// Difference of level, in dB.
    pub level_db: f32,
    /// Difference of pitch, in semitones; 0 unless both edges are voiced.
    pub pitch_semitones: f32,
    /// Difference of the spectra's shapes, in dB RMS over the bands.
    pub spectrum_db: f32,
}

impl Joint {
    /// The end of one clip and the start of the next.
    pub(super) fn of(before: &Edges, after: &Edges) -> Joint {
        let (end, start) = (&before.end, &after.start);
        let pitch_semitones = if end.pitch_hz > 0.0 && start.pitch_hz > 0.0 {
            12.0 * (start.pitch_hz / end.pitch_hz).log2().abs()
        } else {
            0.0
        };
        let squares = end.bands_db.iter().zip(&start.bands_db).map(|(end, start)| (end - start).powi(2));
        Joint {
            level_db: (end.level_db - start.level_db).abs(),
            pitch_semitones,
            spectrum_db: (squares.sum::<f32>() / BANDS as f32).sqrt(),
        }
    }

    /// Roughness: the sum of the three differences, each in thousandths of its unit.
    pub fn roughness(&self) -> u64 {
        let units = |difference: f32, unit: f32| (difference / unit).clamp(0.0, MOST_UNITS);
        let sum = units(self.level_db, LEVEL_UNIT_DB)
            + units(self.pitch_semitones, PITCH_UNIT_SEMITONES)
            + units(self.spectrum_db, SPECTRUM_UNIT_DB);
        (1000.0 * sum).round() as u64
    }
}

impl Edges {
    /// Numbers that hold an edge pair, in the order of [`Edges::to_numbers`].
    pub(super) const NUMBERS: usize = 2 * (2 + BANDS);

    /// Measures the sounding part of a clip, whose level is in dBFS.
    pub(super) fn of(sounding: &[f32], level_db: f64) -> Edges {
        let width = (LENGTH * THIN).min(sounding.len());
        let end = sounding.get(sounding.len() - width..).unwrap_or_default();
        let start = sounding.get(..width).unwrap_or_default();
        let level_db = level_db.max(f64::from(FLOOR_DB)) as f32;
        Edges { start: Edge::of(start, level_db), end: Edge::of(end, level_db) }
    }

    /// The same in a row.
    pub(super) fn to_numbers(self) -> Vec<f32> {
        let numbers = |edge: Edge| [edge.level_db, edge.pitch_hz].into_iter().chain(edge.bands_db);
        numbers(self.start).chain(numbers(self.end)).collect()
    }

    /// Back from a row.
    pub(super) fn from_numbers(numbers: &[f32]) -> Option<Edges> {
        let edge = |numbers: &[f32]| {
            let (&[level_db, pitch_hz], bands) = numbers.split_first_chunk()?;
            Some(Edge { level_db, pitch_hz, bands_db: bands.try_into().ok()? })
        };
        let (start, end) = numbers.split_at_checked(numbers.len() / 2)?;
        Some(Edges { start: edge(start)?, end: edge(end)? })
    }
}

impl Edge {
    fn of(samples: &[f32], clip_db: f32) -> Edge {
        let mut thinned: Vec<f32> =
            samples.chunks_exact(THIN).map(|three| three.iter().sum::<f32>() / THIN as f32).collect();
        thinned.resize(LENGTH, 0.0);
        let power = simd::power(samples) as f32;
        Edge {
            level_db: (10.0 * power.log10()).max(FLOOR_DB) - clip_db,
            pitch_hz: pitch(&thinned).unwrap_or(0.0),
            bands_db: bands(&thinned),
        }
    }
}

/// The frequency at which a sound repeats, where it does.
fn pitch(samples: &[f32]) -> Option<f32> {
    let (lowest, highest) = PITCHES;
    let lags = (RATE / highest) as usize..=(RATE / lowest) as usize;
    let alike = |lag: usize| {
        let later = samples.get(lag..).unwrap_or_default();
        let now = samples.get(..later.len()).unwrap_or_default();
        let powers = (simd::product(now, now) + 1e-12) * (simd::product(later, later) + 1e-12);
        (simd::product(now, later) / powers.sqrt()) as f32
    };
    let found: Vec<(usize, f32)> = lags.map(|lag| (lag, alike(lag))).collect();
    let best = found.iter().map(|(_, alike)| *alike).fold(0.0, f32::max);
    // Twice the period is just as alike: the shortest that is nearly the best counts, at its own peak.
    let peak = found.windows(3).find(|near| match near {
        [(_, left), (_, here), (_, right)] => *here > 0.9 * best && here >= left && here >= right,
        _ => false,
    });
    match peak {
        Some([_, (lag, _), _]) if best > VOICED => Some(RATE / *lag as f32),
        _ => None,
    }
}

/// What the spectrum of an edge is taken with.
struct Ear {
    transform: Arc<dyn RealToComplex<f32>>,
    window: Vec<f32>,
    /// Of each frequency, the band it lies in.
    bands: Vec<Option<usize>>,
}

static EAR: LazyLock<Ear> = LazyLock::new(|| {
    let turn = |n: usize| std::f32::consts::TAU * (n as f32 + 0.5) / LENGTH as f32;
    let mel = |hz: f32| 2595.0 * (1.0 + hz / 700.0).log10();
    let (lowest, highest) = (mel(BAND_LIMITS.0), mel(BAND_LIMITS.1));
    let band = |bin: usize| {
        let place = (mel(bin as f32 * RATE / LENGTH as f32) - lowest) / (highest - lowest) * BANDS as f32;
        (place >= 0.0).then_some(place as usize)
    };
    Ear {
        transform: RealFftPlanner::new().plan_fft_forward(LENGTH),
        window: (0..LENGTH).map(|n| 0.5 - 0.5 * turn(n).cos()).collect(),
        bands: (0..=LENGTH / 2).map(band).collect(),
    }
});

fn bands(samples: &[f32]) -> [f32; BANDS] {
    let mut input: Vec<f32> =
        samples.iter().zip(&EAR.window).map(|(sample, weight)| sample * weight).collect();
    let mut spectrum = EAR.transform.make_output_vec();
    if EAR.transform.process(&mut input, &mut spectrum).is_err() {
        return [0.0; BANDS];
    }
    let mut powers = [1e-12f32; BANDS];
    for (value, band) in spectrum.iter().zip(&EAR.bands) {
        if let Some(power) = band.and_then(|band| powers.get_mut(band)) {
            *power += value.norm_sqr();
        }
    }
    let strongest = powers.iter().copied().fold(0.0, f32::max);
    let levels = powers.map(|power| 10.0 * power.max(strongest * FAINT).log10());
    let mean = levels.iter().sum::<f32>() / BANDS as f32;
    levels.map(|level| level - mean)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn voice(hz: f32, peak: f32) -> Vec<f32> {
        let wave =
            |n: usize, part: f32| (std::f32::consts::TAU * part * hz * n as f32 / 48_000.0).sin() / part;
        (0..4800).map(|n| peak * (1..6).map(|part| wave(n, part as f32)).sum::<f32>()).collect()
    }

    #[test]
    fn pitch_and_level_of_known_sounds_are_found() {
        for hz in [80.0, 110.0, 180.0, 250.0, 380.0] {
            let edges = Edges::of(&voice(hz, 0.1), -20.0);
            assert!((edges.start.pitch_hz / hz - 1.0).abs() < 0.03, "{hz}: {}", edges.start.pitch_hz);
        }
        let (loud, soft) = (Edges::of(&voice(150.0, 0.2), -20.0), Edges::of(&voice(150.0, 0.1), -20.0));
        let joint = Joint::of(&loud, &soft);
        assert!((joint.level_db - 6.02).abs() < 0.1 && joint.pitch_semitones < 0.01);
        assert!(joint.spectrum_db < 0.5, "the shape of a spectrum has no level: {}", joint.spectrum_db);
        let octave = Joint::of(&loud, &Edges::of(&voice(300.0, 0.2), -20.0));
        assert!((octave.pitch_semitones - 12.0).abs() < 0.6);
    }

    #[test]
    fn silence_has_no_pitch_and_numbers_come_back() {
        let edges = Edges::of(&[0.0; 100], f64::NEG_INFINITY);
        assert_eq!(edges.start.pitch_hz, 0.0);
        let numbers = edges.to_numbers();
        assert_eq!(numbers.len(), Edges::NUMBERS);
        assert_eq!(Edges::from_numbers(&numbers), Some(edges));
        assert_eq!(Edges::from_numbers(&[]), None);
    }
}
