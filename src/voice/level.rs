//! Loudness by EBU R 128 and ITU-R BS.1770.
//!
//! A mono message is measured as **one** channel. A player that feeds it to
//! two loudspeakers adds 3 LU; broadcasters' meters on a mono file do not.

use std::collections::VecDeque;
use std::ops::Range;

use ebur128::{EbuR128, Mode};

use super::join::{Known, Mix};
use super::loudness::{Loudness, to_db, to_gain};
use super::meter::LoudnessReading;
use super::sound::{Sound, pieces};
use super::{SAMPLE_RATE, simd};

/// How loud a sound is to be.
#[derive(Debug, Clone, PartialEq)]
pub struct LevelOptions {
    /// Integrated loudness in LUFS.
    pub target_lufs: f64,
    /// The highest true peak in dBTP.
    pub ceiling_dbtp: f64,
}

impl Default for LevelOptions {
    /// EBU R 128.
    fn default() -> Self {
        LevelOptions { target_lufs: -23.0, ceiling_dbtp: -1.0 }
    }
}

/// Why a sound cannot be brought to its level.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum LevelError {
    /// It is shorter than the 400 ms over which loudness is defined.
    #[error("{frames} frames are too short for a loudness: it takes 400 ms")]
    TooShort {
        /// Its frames.
        frames: usize,
    },
    /// It is silent, or below -70 LUFS throughout.
    #[error("it is silent, or too quiet to have a loudness")]
    TooQuiet,
    /// Some samples are no numbers.
    #[error("some samples are no numbers")]
    NotFinite,
    /// The samples do not fill whole frames, or no meter has that many channels or that rate.
    #[error("these channels and this rate cannot be measured")]
    BadShape,
    /// Its peaks are too high for its loudness.
    #[error(
        "loudness and peak cannot be reached together: {integrated_lufs:.1} LUFS came with {true_peak_dbtp:.1} dBTP"
    )]
    OutOfReach {
        /// The loudness that was reached, in LUFS.
        integrated_lufs: f64,
        /// The true peak that was reached, in dBTP.
        true_peak_dbtp: f64,
    },
}

/// A sound at its level.
#[derive(Debug, Clone, PartialEq)]
pub struct Levelled<S = Vec<f32>> {
    /// The sound.
    pub sound: AtGain<S>,
    /// What they measure.
    pub loudness: Loudness,
    /// Whether peaks had to be held down.
    pub limited: bool,
}

/// A sound made louder or quieter, and held down where its peaks would be too high.
#[derive(Debug, Clone, PartialEq)]
pub struct AtGain<S> {
    sound: S,
    gain: f32,
    /// In order and apart.
    reductions: Vec<GainReduction>,
}

/// What a stretch is lowered by, from a frame on.
#[derive(Debug, Clone, PartialEq)]
struct GainReduction {
    from: usize,
    curve: Vec<f64>,
}

impl<S> AtGain<S> {
    /// With nothing held down.
    fn plain(sound: S, gain: f32) -> AtGain<S> {
        AtGain { sound, gain, reductions: Vec::new() }
    }
}

impl<S: Sound> Sound for AtGain<S> {
    fn frames(&self) -> usize {
        self.sound.frames()
    }

    fn make(&self, from: usize, into: &mut [f32]) {
        self.sound.make(from, into);
        if self.gain != 1.0 {
            simd::scale(into, self.gain);
        }
        let end = from + into.len();
        let first =
            self.reductions.partition_point(|reduction| reduction.from + reduction.curve.len() <= from);
        let reductions = self.reductions.get(first..).unwrap_or_default();
        for GainReduction { from: start, curve } in
            reductions.iter().take_while(|reduction| reduction.from < end)
        {
            let places = into.iter_mut().skip(start.saturating_sub(from));
            for (place, factor) in places.zip(curve.iter().skip(from.saturating_sub(*start))) {
                *place = (f64::from(*place) * factor) as f32;
            }
        }
    }
}

/// How near to the target a result must be, in LU.
const TOLERANCE_LU: f64 = 0.2;
/// How near the rounds below try to come, in LU.
const NEAR_LU: f64 = 0.05;
/// Kept below the ceiling for what 16 bits and dither add, in dB.
const MARGIN_DB: f64 = 0.02;
/// Rounds of limiting and measuring.
const ROUNDS: usize = 12;
/// No decibel of gain is taken to bring less loudness than this, in LU.
const LEAST_SLOPE: f64 = 0.25;
/// How far the limiter looks ahead and back, in frames: 5 ms.
const LOOKAHEAD: usize = SAMPLE_RATE as usize / 200;

/// Measures a mono sound at [`SAMPLE_RATE`] as one channel.
///
/// # Errors
/// It is too short, too quiet or not made of numbers.
pub fn measure(samples: &[f32]) -> Result<Loudness, LevelError> {
    measure_sound(samples)
}

fn measure_sound(sound: impl Sound) -> Result<Loudness, LevelError> {
    long_enough(sound.frames(), SAMPLE_RATE)?;
    LoudnessReading::of(&sound).ok_or(LevelError::NotFinite)?.loudness().ok_or(LevelError::TooQuiet)
}

/// Measures interleaved channels (left and right first) at a rate in Hz.
///
/// # Errors
/// It is too short, too quiet or not made of numbers, or the shape is not
/// one that can be measured.
pub fn measure_interleaved(samples: &[f32], channels: u32, rate: u32) -> Result<Loudness, LevelError> {
    let mut meter = meter(samples, channels, rate, Mode::I | Mode::S | Mode::LRA | Mode::TRUE_PEAK)?;
    let (mut momentary, mut short_term) = (f64::NEG_INFINITY, f64::NEG_INFINITY);
    let step = rate as usize / 10;
    let mut steps = 0;
    for block in samples.chunks(step * channels as usize) {
        meter.add_frames_f32(block).map_err(|_| LevelError::BadShape)?;
        steps += 1;
        // A window is only full after as many steps.
        if steps >= 4 {
            momentary = momentary.max(meter.loudness_momentary().map_err(|_| LevelError::BadShape)?);
        }
        if steps >= 30 {
            short_term = short_term.max(meter.loudness_shortterm().map_err(|_| LevelError::BadShape)?);
        }
    }
    let mut peak = 0f64;
    for channel in 0..channels {
        peak = peak.max(meter.true_peak(channel).map_err(|_| LevelError::BadShape)?);
    }
    let known = |value: f64| value.is_finite().then_some(value);
    let range = meter.loudness_range().map_err(|_| LevelError::BadShape)?;
    Ok(Loudness {
        integrated_lufs: integrated(&meter)?,
        true_peak_dbtp: to_db(peak),
        range_lu: known(range).filter(|_| steps >= 30),
        momentary_lufs: known(momentary),
        short_term_lufs: known(short_term),
    })
}

fn check(samples: &[f32], channels: u32, rate: u32) -> Result<(), LevelError> {
    if channels == 0 || !samples.len().is_multiple_of(channels as usize) {
        return Err(LevelError::BadShape);
    }
    long_enough(samples.len() / channels as usize, rate)?;
    if !samples.iter().all(|sample| sample.is_finite()) {
        return Err(LevelError::NotFinite);
    }
    Ok(())
}

fn long_enough(frames: usize, rate: u32) -> Result<(), LevelError> {
    match (frames as u64) < u64::from(rate) * 2 / 5 {
        true => Err(LevelError::TooShort { frames }),
        false => Ok(()),
    }
}

fn meter(samples: &[f32], channels: u32, rate: u32, mode: Mode) -> Result<EbuR128, LevelError> {
    check(samples, channels, rate)?;
    EbuR128::new(channels, rate, mode).map_err(|_| LevelError::BadShape)
}

fn integrated(meter: &EbuR128) -> Result<f64, LevelError> {
    let loudness = meter.loudness_global().map_err(|_| LevelError::BadShape)?;
    if loudness.is_finite() { Ok(loudness) } else { Err(LevelError::TooQuiet) }
}

/// Brings a mono sound at [`SAMPLE_RATE`] to its level: by gain alone where
/// its peaks allow, else with a limiter.
///
/// # Errors
/// It cannot be measured, or loudness (within 0.2 LU) and ceiling cannot both be had.
pub fn to_target<S: Sound>(sound: S, options: &LevelOptions) -> Result<Levelled<S>, LevelError> {
    let before = measure_sound(&sound)?;
    let gain_db = options.target_lufs - before.integrated_lufs;
    let highest = options.ceiling_dbtp - MARGIN_DB;
    if before.true_peak_dbtp + gain_db > highest {
        return limit_to_target(sound, gain_db, highest, options.target_lufs);
    }
    let sound = AtGain::plain(sound, to_gain(gain_db) as f32);
    Ok(Levelled { sound, loudness: before.with_gain(gain_db), limited: false })
}

/// The same for a mix, which is measured only where what is known of its clips does not do.
pub(super) fn mix_to_target<'a>(
    mix: Mix<'a>,
    options: &LevelOptions,
) -> Result<Levelled<Mix<'a>>, LevelError> {
    let known = mix.known().filter(|_| long_enough(mix.frames(), SAMPLE_RATE).is_ok());
    if let Some((loudness, bound)) =
        known.and_then(|Known { reading, bound }| Some((reading.loudness()?, bound)))
    {
        let gain_db = options.target_lufs - loudness.integrated_lufs;
        if to_db(bound) + gain_db <= options.ceiling_dbtp - MARGIN_DB {
            let mix = mix.raised(to_gain(gain_db) as f32);
            return Ok(Levelled {
                sound: AtGain::plain(mix, 1.0),
                loudness: loudness.with_gain(gain_db),
                limited: false,
            });
        }
    }
    to_target(mix, options)
}

fn limit_to_target<S: Sound>(
    sound: S,
    gain_db: f64,
    highest: f64,
    target: f64,
) -> Result<Levelled<S>, LevelError> {
    let (mut gain_db, mut threshold_db) = (gain_db, highest);
    let mut reached = Loudness::default();
    // Of what the gain adds the limiter takes a part away: how much loudness a decibel of it brought last.
    let (mut slope, mut before) = (1.0, None::<(f64, f64)>);
    for round in 1..=ROUNDS {
        let limited = limit(&sound, to_gain(gain_db), to_gain(threshold_db));
        reached = measure_sound(&limited)?;
        let AtGain { gain, reductions, .. } = limited;
        let wanted = if round == ROUNDS { TOLERANCE_LU } else { NEAR_LU };
        let off = target - reached.integrated_lufs;
        let over = reached.true_peak_dbtp - highest;
        if off.abs() <= wanted && over <= 0.0 {
            let sound = AtGain { sound, gain, reductions };
            return Ok(Levelled { sound, loudness: reached, limited: true });
        }
        if let Some((gain_before, lufs_before)) = before {
            let (gained, louder) = (gain_db - gain_before, reached.integrated_lufs - lufs_before);
            slope = if gained.abs() > 0.01 { (louder / gained).clamp(LEAST_SLOPE, 1.0) } else { slope };
        }
        before = Some((gain_db, reached.integrated_lufs));
        gain_db += off / slope;
        if over > 0.0 {
            // Between samples the sound may rise above them: aim that much lower.
            threshold_db -= over + MARGIN_DB / 2.0;
        }
    }
    let Loudness { integrated_lufs, true_peak_dbtp, .. } = reached;
    Err(LevelError::OutOfReach { integrated_lufs, true_peak_dbtp })
}

/// Applies a gain, and lowers it smoothly around samples that would pass `threshold`.
///
/// The gain that each sample needs is held for `LOOKAHEAD` frames before and after
/// it, then averaged over as many: no average rises above what is needed.
pub(super) fn limit<S: Sound>(sound: S, gain: f64, threshold: f64) -> AtGain<S> {
    let reductions = lowered_stretches(&sound, (threshold / gain) as f32).into_iter().map(|stretch| {
        // The gain at its end is an average of what comes after.
        let known = stretch.start..(stretch.end + 2 * LOOKAHEAD).min(sound.frames());
        let mut buffer = vec![0f32; known.len()];
        let samples = sound.stretch(known.clone(), &mut buffer);
        let needed = |at: usize| {
            let sample = at.checked_sub(known.start).and_then(|at| samples.get(at));
            let level = sample.map_or(0.0, |sample| f64::from(sample.abs()) * gain);
            if level > threshold { threshold / level } else { 1.0 }
        };
        let held = sliding_least((stretch.start..stretch.end + 2 * LOOKAHEAD).map(needed), 2 * LOOKAHEAD + 1);
        let curve = sliding_mean(&sliding_mean(&held, LOOKAHEAD + 1), LOOKAHEAD + 1);
        GainReduction { from: stretch.start, curve }
    });
    let reductions = reductions.collect();
    AtGain { sound, gain: gain as f32, reductions }
}

/// The stretches whose gain samples beyond `highest` lower, in order and apart.
fn lowered_stretches(sound: &impl Sound, highest: f32) -> Vec<Range<usize>> {
    let mut stretches: Vec<Range<usize>> = Vec::new();
    let mut from = 0;
    pieces(sound, &mut |piece| {
        let beyond = piece.iter().enumerate().filter(|(_, sample)| sample.abs() >= highest);
        for at in beyond.map(|(at, _)| from + at) {
            // Twice the lookahead: it holds the gain, and averages it.
            let (from, to) = (at.saturating_sub(2 * LOOKAHEAD), (at + 2 * LOOKAHEAD + 1).min(sound.frames()));
            match stretches.last_mut() {
                Some(last) if from <= last.end => last.end = to,
                _ => stretches.push(from..to),
            }
        }
        from += piece.len();
    });
    stretches
}

/// The least of each value and those before it, `width` in all.
fn sliding_least(values: impl Iterator<Item = f64>, width: usize) -> Vec<f64> {
    let mut rising: VecDeque<(usize, f64)> = VecDeque::new();
    let mut least = Vec::new();
    for (index, value) in values.enumerate() {
        while rising.back().is_some_and(|(_, last)| *last >= value) {
            rising.pop_back();
        }
        rising.push_back((index, value));
        if rising.front().is_some_and(|(first, _)| first + width <= index) {
            rising.pop_front();
        }
        least.extend(rising.front().map(|(_, value)| *value));
    }
    least
}

/// The mean of each `width` neighbours; shorter than the values by `width - 1`.
fn sliding_mean(values: &[f64], width: usize) -> Vec<f64> {
    let mut sum: f64 = values.iter().take(width).sum();
    let mut means = vec![sum / width as f64];
    for (leaving, entering) in values.iter().zip(values.iter().skip(width)) {
        sum += entering - leaving;
        means.push(sum / width as f64);
    }
    means
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::voice::noise::triangular;

    /// What is held down lies across the pieces that a sound is made in.
    #[test]
    fn stretches_of_a_limited_sound_are_those_of_the_whole() {
        let mut samples: Vec<f32> = (0..15_000).map(|place| 0.2 * triangular(5, place)).collect();
        for at in [0, 1_000, 4_090, 4_096, 4_300, 8_191, 12_000, 14_999] {
            samples[at] = 0.9;
        }
        let limited = limit(&samples, 2.0, 0.5);
        let whole = limited.samples();
        assert!(limited.reductions.len() > 2 && whole.iter().all(|sample| sample.abs() <= 0.5 + 1e-6));
        for length in [1, 39, 480, 4_096, 4_800] {
            for from in (0..samples.len() - length).step_by(611) {
                let mut buffer = vec![9.0; length];
                assert_eq!(limited.stretch(from..from + length, &mut buffer), &whole[from..from + length]);
            }
        }
    }

    /// By the rule itself: for each sample, means of means of what is least around it.
    #[test]
    fn lowering_only_where_it_is_needed_is_lowering_everywhere() {
        let needed = |samples: &[f32], at: i64| {
            let level = usize::try_from(at).ok().and_then(|at| samples.get(at)).map_or(0.0, |s| s.abs());
            (0.5 / (2.0 * f64::from(level))).min(1.0)
        };
        let lookahead = LOOKAHEAD as i64;
        // Peaks at the ends, alone, near and far from each other.
        for peaks in [&[0usize, 1999][..], &[700], &[300, 1100, 1101], &[500, 981, 1462], &[]] {
            let mut samples: Vec<f32> = (0..2000).map(|place| 0.2 * triangular(3, place)).collect();
            peaks.iter().zip([0.9f32, -0.7, 0.3]).for_each(|(at, peak)| samples[*at] = peak);
            let lows: Vec<f64> = (-2 * lookahead..2000 + 4 * lookahead)
                .map(|end| (end - 2 * lookahead..=end).map(|at| needed(&samples, at)).fold(1.0, f64::min))
                .collect();
            let low = |at: i64| lows[(at + 2 * lookahead) as usize];
            let mean = |from: i64| (from..=from + lookahead).map(low).sum::<f64>() / (lookahead + 1) as f64;
            let means: Vec<f64> = (0..2000 + lookahead).map(mean).collect();
            for (at, limited) in limit(&samples, 2.0, 0.5).samples().into_iter().enumerate().step_by(7) {
                let gain = means[at..=at + LOOKAHEAD].iter().sum::<f64>() / (LOOKAHEAD + 1) as f64;
                let right = 2.0 * gain * f64::from(samples[at]);
                assert!((f64::from(limited) - right).abs() < 1e-6, "{peaks:?}, {at}: {limited} {right}");
            }
        }
    }
}
