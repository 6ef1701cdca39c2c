//! Loudness and true peak of a mono sound at the common rate, in one go.
//!
//! The same measures as a meter for any shape of sound, by ITU-R BS.1770 and
//! EBU Tech 3341 and 3342, but made for long messages: the sound is read once,
//! the weighting filters run over several stretches of it at once, and it is
//! interpolated only where it could pass the highest peak found so far.

use std::f64::consts::PI;

use fearless_simd::{Level, Simd, SimdBase, dispatch, f32x16};

use super::SAMPLE_RATE;
use super::loudness::{Loudness, to_db};
use super::sound::Sound;

/// A tenth of a second: windows are made of such hops, and begin with each.
pub(super) const HOP: usize = SAMPLE_RATE as usize / 10;
const SHORT_TERM_HOPS: usize = 30;
const HOPS_A_BLOCK: usize = 4;
/// Stretches that are filtered side by side.
const LANES: usize = 16;
/// Frames before a stretch in which its filters settle: to one part in a million.
const SETTLE: usize = HOP;
/// Quieter blocks do not count, in LUFS.
const ABSOLUTE_GATE: f64 = -70.0;
/// Blocks this far below the mean of the rest do not count either, in LU.
const RELATIVE_GATE: f64 = -10.0;
/// The same for the loudness range, over short-term windows.
const RANGE_GATE: f64 = -20.0;
/// The part of the windows below the range, and that below its upper end.
const RANGE_PARTS: (f64, f64) = (0.10, 0.95);

/// A filter of the second order: b0, b1, b2, a1, a2 (BS.1770, 48 kHz).
type Filter = [f64; 5];
const SHELF: Filter =
    [1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585];
const HIGH_PASS: Filter = [1.0, -2.0, 1.0, -1.99004745483398, 0.99007225036621];

/// What a sound measures.
pub(super) struct LoudnessReading {
    /// The mean square of each whole hop after the weighting filters.
    hops: Vec<f64>,
    /// The highest peak at and between samples, as a factor of full scale.
    true_peak: f64,
}

impl LoudnessReading {
    /// None where some samples are no numbers.
    pub(super) fn of(sound: &impl Sound) -> Option<LoudnessReading> {
        let Weighted { sums, true_peak, .. } = Weighted::of::<HOP, { HOP / STRIDE }>(sound)?;
        Some(LoudnessReading::known(sums, true_peak))
    }

    /// Of a sound whose sums of squares after the weighting filters are known, over each whole [`HOP`].
    pub(super) fn known(sums: Vec<f64>, true_peak: f64) -> LoudnessReading {
        LoudnessReading { hops: sums.into_iter().map(|sum| sum / HOP as f64).collect(), true_peak }
    }

    /// None where all is silent or too quiet.
    pub(super) fn loudness(&self) -> Option<Loudness> {
        let blocks = self.windows(HOPS_A_BLOCK);
        let short_terms = self.windows(SHORT_TERM_HOPS);
        let highest = |windows: &[f64]| {
            let most = windows.iter().copied().fold(0.0, f64::max);
            (most > 0.0).then(|| lufs_of(most))
        };
        Some(Loudness {
            integrated_lufs: lufs_of(gated_mean(&blocks, RELATIVE_GATE)?.0),
            true_peak_dbtp: to_db(self.true_peak),
            range_lu: range(&short_terms),
            momentary_lufs: highest(&blocks),
            short_term_lufs: highest(&short_terms),
        })
    }

    /// The mean power of so many hops from each hop on.
    fn windows(&self, hops: usize) -> Vec<f64> {
        self.hops.windows(hops).map(|window| window.iter().sum::<f64>() / hops as f64).collect()
    }
}

fn power_of(lufs: f64) -> f64 {
    10f64.powf((lufs + 0.691) / 10.0)
}

fn lufs_of(power: f64) -> f64 {
    -0.691 + 10.0 * power.log10()
}

/// The mean of the windows above both gates, and the higher of the gates.
fn gated_mean(windows: &[f64], relative_gate: f64) -> Option<(f64, f64)> {
    let absolute = power_of(ABSOLUTE_GATE);
    let gate = mean_above(windows, absolute)? * 10f64.powf(relative_gate / 10.0);
    let gate = gate.max(absolute);
    Some((mean_above(windows, gate)?, gate))
}

fn mean_above(windows: &[f64], gate: f64) -> Option<f64> {
    let (mut sum, mut count) = (0.0, 0usize);
    for power in windows.iter().filter(|power| **power > gate) {
        sum += power;
        count += 1;
    }
    (count > 0).then(|| sum / count as f64)
}

/// The loudness range of short-term windows, in LU.
fn range(short_terms: &[f64]) -> Option<f64> {
    let (_, gate) = gated_mean(short_terms, RANGE_GATE)?;
    let mut counted: Vec<f64> = short_terms.iter().copied().filter(|power| *power > gate).collect();
    counted.sort_by(f64::total_cmp);
    let at = |part: f64| counted.get((part * counted.len().saturating_sub(1) as f64).round() as usize);
    Some(lufs_of(*at(RANGE_PARTS.1)?) - lufs_of(*at(RANGE_PARTS.0)?))
}

/// What a sound amounts to after the weighting filters.
pub(super) struct Weighted {
    /// The sum of squares over each whole stretch of the length that was asked for.
    pub(super) sums: Vec<f64>,
    /// The highest peak at and between samples, as a factor of full scale.
    pub(super) true_peak: f64,
    /// About where it lies.
    pub(super) peak_at: usize,
}

impl Weighted {
    /// Stretch by stretch, each of `STRIDES` [`STRIDE`]s. None where some samples are no numbers.
    pub(super) fn of<const STRETCH: usize, const STRIDES: usize>(sound: &impl Sound) -> Option<Weighted> {
        const { assert!(STRETCH == STRIDES * STRIDE) };
        let mut peaks = vec![0f32; sound.frames().div_ceil(STRIDE)];
        let sums = dispatch!(Level::new(), simd => sums::<_, STRETCH, STRIDES>(simd, sound, &mut peaks))?;
        let (true_peak, peak_at) = true_peak(sound, &peaks);
        Some(Weighted { sums, true_peak, peak_at })
    }
}

/// The sum of squares of each whole stretch after the filters, none where some samples are no
/// numbers; `peaks` becomes the largest distance from zero in each stride.
#[inline(always)]
fn sums<S: Simd, const STRETCH: usize, const STRIDES: usize>(
    simd: S,
    sound: &impl Sound,
    peaks: &mut [f32],
) -> Option<Vec<f64>> {
    let silence = &[0f32; STRETCH];
    let stretches = sound.frames() / STRETCH;
    let each = stretches.div_ceil(LANES);
    let settle = SETTLE.div_ceil(STRETCH);
    let mut all = vec![0f64; stretches];
    let mut filters = [SHELF, HIGH_PASS].map(|filter| Lanes::of(simd, filter));
    let mut buffer = vec![0f32; LANES * STRETCH];
    let mut highs = [[0f32; LANES]; STRIDES];
    // Each lane starts before its own; before the beginning lies silence. After the end none may lie:
    // filters that fade away would work on numbers too small for the processor to be quick with.
    let before = settle + LANES * each - stretches;
    for step in 0..settle + each {
        let mut blocks = [silence; LANES];
        let mut places = [None; LANES];
        let lanes = blocks.iter_mut().zip(&mut places).zip(buffer.as_chunks_mut::<STRETCH>().0);
        for (lane, ((block, place), buffer)) in lanes.enumerate() {
            *place = (lane * each + step).checked_sub(before);
            let stretch = place.map(|place| sound.stretch(place * STRETCH..(place + 1) * STRETCH, buffer));
            *block = stretch.and_then(|stretch| stretch.try_into().ok()).unwrap_or(silence);
        }
        let sums = filter(simd, blocks, &mut filters, &mut highs);
        if step < settle {
            continue;
        }
        for (lane, (place, sum)) in places.into_iter().zip(sums).enumerate() {
            if let Some((place, whole)) = place.and_then(|place| Some((place, all.get_mut(place)?))) {
                *whole = sum;
                let peaks = peaks.get_mut(place * STRIDES..).unwrap_or_default().iter_mut();
                peaks.zip(&highs).for_each(|(peak, highs)| *peak = highs.get(lane).copied().unwrap_or(0.0));
            }
        }
    }
    let from = stretches * STRETCH;
    let rest =
        sound.stretch(from..sound.frames(), buffer.get_mut(..sound.frames() - from).unwrap_or_default());
    peaks_of(simd, rest, peaks.get_mut(stretches * STRIDES..).unwrap_or_default());
    // What is no number stays in the filters; what comes after the last stretch does not pass them.
    let finite = all.iter().all(|sum| sum.is_finite()) && rest.iter().all(|sample| sample.is_finite());
    finite.then_some(all)
}

#[inline(always)]
fn peaks_of<S: Simd>(simd: S, samples: &[f32], peaks: &mut [f32]) {
    let (strides, rest) = samples.as_chunks::<STRIDE>();
    for (stride, peak) in strides.iter().zip(peaks.iter_mut()) {
        *peak = peak_of(simd, stride);
    }
    if let (false, Some(peak)) = (rest.is_empty(), peaks.get_mut(strides.len())) {
        *peak = rest.iter().fold(0.0, |peak, sample| peak.max(sample.abs()));
    }
}

/// The largest distance from zero.
#[inline(always)]
#[allow(clippy::indexing_slicing)] // Arrays of one length, in plain loops, which surely become vector code.
fn peak_of<S: Simd>(_: S, samples: &[f32; STRIDE]) -> f32 {
    let mut peaks = *samples;
    for peak in &mut peaks {
        *peak = peak.abs();
    }
    let mut width = STRIDE / 2;
    while width > 0 {
        for at in 0..width {
            peaks[at] = if peaks[at + width] > peaks[at] { peaks[at + width] } else { peaks[at] };
        }
        width /= 2;
    }
    peaks[0]
}

/// Runs both filters over one stretch of each lane; the sums of squares. `highs` become the largest distances
/// from zero in each stride, before the filters.
#[inline(always)]
#[allow(clippy::indexing_slicing, clippy::needless_range_loop)] // As above.
fn filter<S: Simd, const STRETCH: usize, const STRIDES: usize>(
    simd: S,
    blocks: [&[f32; STRETCH]; LANES],
    filters: &mut [Lanes<S>; 2],
    highs: &mut [[f32; LANES]; STRIDES],
) -> [f64; LANES] {
    // Out of memory while it works.
    let [mut shelf, mut high_pass] = *filters;
    let mut all = [0f64; LANES];
    for (stride, highs) in highs.iter_mut().enumerate() {
        let mut sums = f32x16::splat(simd, 0.0);
        let mut high = f32x16::splat(simd, 0.0);
        for at in stride * STRIDE..(stride + 1) * STRIDE {
            let input: [f32; LANES] = std::array::from_fn(|lane| blocks[lane][at]);
            let input = f32x16::load_array(simd, input);
            let passed = high_pass.step(shelf.step(input));
            sums = passed * passed + sums;
            high = high.max(input.abs());
        }
        high.store_array(highs);
        all.iter_mut().zip(sums.as_slice()).for_each(|(all, sum)| *all += f64::from(*sum));
    }
    *filters = [shelf, high_pass];
    all
}

/// A filter over all lanes, in 32 bits: the tests hold what is measured with them within 0.001 LU of a meter
/// that counts in 64.
///
/// Transposed, with what the output feeds back put into the input's own part: a step waits for one
/// multiplication and one addition of the step before, not for two of each.
#[derive(Clone, Copy)]
struct Lanes<S: Simd> {
    b0: f32x16<S>,
    c1: f32x16<S>,
    c2: f32x16<S>,
    a1: f32x16<S>,
    a2: f32x16<S>,
    first: f32x16<S>,
    second: f32x16<S>,
}

impl<S: Simd> Lanes<S> {
    #[inline(always)]
    fn of(simd: S, [b0, b1, b2, a1, a2]: Filter) -> Lanes<S> {
        let all = |value: f64| f32x16::splat(simd, value as f32);
        let (c1, c2) = (all(b1 - a1 * b0), all(b2 - a2 * b0));
        Lanes { b0: all(b0), c1, c2, a1: all(a1), a2: all(a2), first: all(0.0), second: all(0.0) }
    }

    #[inline(always)]
    fn step(&mut self, input: f32x16<S>) -> f32x16<S> {
        let before = self.first;
        self.first = (self.c1 * input + self.second) - self.a1 * before;
        self.second = self.c2 * input - self.a2 * before;
        self.b0 * input + before
    }
}

/// Points between two samples at which the sound is interpolated, and the sample itself.
const PHASES: usize = 4;
/// Samples that take part in a point between two.
const TAPS: usize = 24;
/// Samples that are weighed together; their squares are summed in 32 bits.
pub(super) const STRIDE: usize = 16;

/// The highest peak between and at samples, as a factor of full scale, and about where it lies; `peaks`
/// are those at samples, of each stride.
fn true_peak(sound: &impl Sound, peaks: &[f32]) -> (f64, usize) {
    let phases = interpolators();
    // No point between samples lies further out than this times the largest near it.
    let most = phases.iter().map(|taps| taps.iter().map(|tap| tap.abs()).sum::<f32>()).fold(1.0, f32::max);
    // Many strides at once are passed over where none comes near the highest.
    let mut highs = vec![0f32; peaks.len().div_ceil(STRIDE)];
    dispatch!(Level::new(), simd => peaks_of(simd, peaks, &mut highs));
    let mut best = highs.iter().copied().fold(0.0, f32::max);
    let mut place = peaks.iter().position(|peak| *peak == best).unwrap_or(0);
    // A peak between samples comes of its own stride's and those beside it.
    let around = |peaks: &[f32], at: usize| {
        let near = peaks.get(at.saturating_sub(1)..).unwrap_or_default().iter();
        near.take(if at > 0 { 3 } else { 2 }).copied().fold(0.0, f32::max)
    };
    let mut order: Vec<(f32, usize)> = Vec::new();
    let high = (0..highs.len()).filter(|high| around(&highs, *high) * most > best);
    for at in high.flat_map(|high| high * STRIDE..((high + 1) * STRIDE).min(peaks.len())) {
        let near = around(peaks, at);
        if near * most > best {
            order.push((near, at));
        }
    }
    order.sort_by(|a, b| b.0.total_cmp(&a.0));
    for (near, at) in order {
        if near * most <= best {
            break;
        }
        let between = dispatch!(Level::new(), simd => peak_between(simd, sound, at * STRIDE, &phases));
        if between > best {
            (best, place) = (between, at);
        }
    }
    (f64::from(best), place * STRIDE)
}

/// The highest point between the samples of a stride and those after them.
#[inline(always)]
#[allow(clippy::indexing_slicing, clippy::needless_range_loop)] // As above.
fn peak_between<S: Simd>(_: S, sound: &impl Sound, from: usize, phases: &[[f32; TAPS]; PHASES - 1]) -> f32 {
    const WIDTH: usize = STRIDE + TAPS - 1;
    const BEFORE: usize = TAPS / 2 - 1;
    // At either end of the sound there is silence beyond.
    let (mut near, mut buffer) = ([0f32; WIDTH], [0f32; WIDTH]);
    let known = from.saturating_sub(BEFORE)..(from + WIDTH - BEFORE).min(sound.frames());
    let silence = BEFORE.saturating_sub(from);
    let known = sound.stretch(known.clone(), &mut buffer[..known.len()]);
    near[silence..silence + known.len()].copy_from_slice(known);
    let mut best = [0f32; STRIDE];
    for taps in phases {
        let mut sums = [0f32; STRIDE];
        for tap in 0..TAPS {
            for at in 0..STRIDE {
                sums[at] += taps[tap] * near[tap + at];
            }
        }
        for at in 0..STRIDE {
            best[at] = if sums[at].abs() > best[at] { sums[at].abs() } else { best[at] };
        }
    }
    best.iter().copied().fold(0.0, f32::max)
}

/// For each point between samples, how much each sample near it takes part: a
/// sinc under a raised cosine, such that a steady value stays itself.
fn interpolators() -> [[f32; TAPS]; PHASES - 1] {
    std::array::from_fn(|phase| {
        let shift = (phase + 1) as f64 / PHASES as f64;
        let taps: [f64; TAPS] = std::array::from_fn(|tap| {
            let x = tap as f64 - (TAPS / 2 - 1) as f64 - shift;
            let window = 0.5 + 0.5 * (2.0 * PI * x / (TAPS + 1) as f64).cos();
            (PI * x).sin() / (PI * x) * window
        });
        let sum: f64 = taps.iter().sum();
        taps.map(|tap| (tap / sum) as f32)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::voice::noise::triangular;

    /// Bursts of noise and tones with pauses, as uneven as speech.
    fn sound(seed: u64, length: usize) -> Vec<f32> {
        let (seed32, mut place) = (seed as u32, 0);
        let mut noise = move || {
            place += 1;
            triangular(seed32, place)
        };
        let (mut low, mut gain) = (0f32, 0f32);
        let samples = (0..length).map(|n| {
            if n % 7001 == 0 {
                gain = (noise() * 0.8).abs().powi(2);
            }
            low += 0.3 * (noise() - low);
            let tone = (n as f32 * (0.02 + 0.3 * (seed % 5) as f32)).sin();
            gain * (low + 0.4 * tone)
        });
        samples.collect()
    }

    #[test]
    fn it_agrees_with_the_meter_for_any_shape() {
        for (seed, length) in [
            (1, 19_200),
            (2, 19_201),
            (3, 48_000),
            (4, 100_003),
            (5, 960_000),
            (6, 2_333_333),
            (7, 1_500_000),
        ] {
            let samples = sound(seed, length);
            let slow = crate::voice::level::measure_interleaved(&samples, 1, SAMPLE_RATE).unwrap();
            let fast = LoudnessReading::of(&samples).unwrap().loudness().unwrap();
            let near = |fast: f64, slow: f64, most: f64| {
                assert!((fast - slow).abs() < most, "{length}: {fast} {slow}")
            };
            near(fast.integrated_lufs, slow.integrated_lufs, 0.001);
            near(fast.true_peak_dbtp, slow.true_peak_dbtp, 0.2);
            near(fast.momentary_lufs.unwrap(), slow.momentary_lufs.unwrap(), 0.001);
            assert_eq!(fast.short_term_lufs.is_some(), length >= 144_000);
            assert_eq!(fast.range_lu.is_some(), slow.range_lu.is_some());
            if let (Some(fast), Some(slow)) = (fast.short_term_lufs, slow.short_term_lufs) {
                near(fast, slow, 0.001);
            }
        }
    }

    /// Tones of 20 s each, left and right alike in Tech 3342; alone they are as far from each other.
    #[test]
    fn loudness_ranges_of_tones_are_the_distances_of_their_levels() {
        for (levels, expected) in [
            (&[-20.0, -30.0][..], 10.0),
            (&[-20.0, -15.0], 5.0),
            (&[-40.0, -20.0], 20.0),
            (&[-50.0, -35.0, -20.0, -35.0, -50.0], 15.0),
        ] {
            let tone = |db: f64| {
                let peak = 10f64.powf(db / 20.0);
                (0..960_000).map(move |n| (peak * (2.0 * PI * 1000.0 * f64::from(n) / 48_000.0).sin()) as f32)
            };
            let samples: Vec<f32> = levels.iter().flat_map(|db| tone(*db)).collect();
            let range = LoudnessReading::of(&samples).unwrap().loudness().unwrap().range_lu.unwrap();
            assert!((range - expected).abs() <= 1.0, "{levels:?}: {range}");
        }
    }

    #[test]
    fn leaving_out_what_cannot_be_the_peak_changes_nothing() {
        let phases = interpolators();
        for seed in 0..20 {
            let samples = sound(seed, 5_000 + 37 * seed as usize);
            let between = |from| dispatch!(Level::new(), simd => peak_between(simd, &samples, from, &phases));
            let all = (0..samples.len()).step_by(STRIDE).map(between);
            let all = all.chain(samples.iter().map(|sample| sample.abs())).fold(0.0, f32::max);
            assert_eq!(LoudnessReading::of(&samples).unwrap().true_peak, f64::from(all), "{seed}");
        }
    }

    #[test]
    fn peaks_between_samples_of_known_sines_are_found() {
        // A quarter and a sixth of the rate, between the samples as far as can be.
        for (part, degrees) in [(4.0, 45.0), (6.0, 60.0), (8.0, 67.5)] {
            let wave = |n: usize| (2.0 * PI * n as f64 / part + f64::to_radians(degrees)).sin() as f32;
            // Faded in and out, since a hard edge has peaks of its own.
            let fade = |n: usize| (n.min(48_000 - n) as f32 / 4800.0).min(1.0);
            let samples: Vec<f32> = (0..48_000).map(|n| 0.5 * fade(n) * wave(n)).collect();
            let peak = 20.0 * LoudnessReading::of(&samples).unwrap().true_peak.log10();
            assert!((-6.42..=-5.82).contains(&peak), "{part}: {peak}");
        }
    }
}
