//! Loudness and true peak of a mono sound at the common rate, in one go.
//!
//! The same measures as a meter for any shape of sound, by ITU-R BS.1770, but
//! made for long messages: the weighting filters run over several stretches at
//! once, and the sound is interpolated only where it could pass the highest
//! peak found so far.

use std::f64::consts::PI;

use super::SAMPLE_RATE;

/// A tenth of a second: loudness blocks are four of them and begin with each.
const HOP: usize = SAMPLE_RATE as usize / 10;
const HOPS_A_BLOCK: usize = 4;
/// Stretches that are filtered side by side.
const LANES: usize = 4;
/// Hops before a stretch in which its filters settle: to one part in 10^20.
const SETTLE: usize = 2;
/// Quieter blocks do not count, in LUFS.
const ABSOLUTE_GATE: f64 = -70.0;
/// Blocks this far below the mean of the rest do not count either, in LU.
const RELATIVE_GATE: f64 = -10.0;

/// A filter of the second order: b0, b1, b2, a1, a2 (BS.1770, 48 kHz).
type Filter = [f64; 5];
const SHELF: Filter = [
    1.535_124_859_586_97,
    -2.691_696_189_406_38,
    1.198_392_810_852_85,
    -1.690_659_293_182_41,
    0.732_480_774_215_85,
];
const HIGH_PASS: Filter = [1.0, -2.0, 1.0, -1.990_047_454_833_98, 0.990_072_250_366_21];

/// Integrated loudness in LUFS; none where all is silent or too quiet.
pub(super) fn loudness(samples: &[f32]) -> Option<f64> {
    let hops = weighted_hops(samples);
    let blocks: Vec<f64> =
        hops.windows(HOPS_A_BLOCK).map(|block| block.iter().sum::<f64>() / HOPS_A_BLOCK as f64).collect();
    let loud = mean_above(&blocks, power_of(ABSOLUTE_GATE))?;
    let gate = loud * 10f64.powf(RELATIVE_GATE / 10.0);
    mean_above(&blocks, gate.max(power_of(ABSOLUTE_GATE))).map(|power| -0.691 + 10.0 * power.log10())
}

fn power_of(lufs: f64) -> f64 {
    10f64.powf((lufs + 0.691) / 10.0)
}

fn mean_above(blocks: &[f64], gate: f64) -> Option<f64> {
    let (mut sum, mut count) = (0.0, 0usize);
    for power in blocks.iter().filter(|power| **power > gate) {
        sum += power;
        count += 1;
    }
    (count > 0).then(|| sum / count as f64)
}

/// The mean square of each whole hop after the weighting filters.
fn weighted_hops(samples: &[f32]) -> Vec<f64> {
    let hops = samples.len() / HOP;
    let each = hops.div_ceil(LANES).max(1);
    // Each lane starts some hops before its own; before the beginning lies silence.
    let padded: Vec<f32> = std::iter::repeat_n(0.0, SETTLE * HOP)
        .chain(samples.iter().copied().take(hops * HOP))
        .chain(std::iter::repeat_n(0.0, LANES * each * HOP - hops * HOP))
        .collect();
    let lane = |lane: usize| padded.get(lane * each * HOP..).unwrap_or_default().chunks_exact(HOP);
    let mut lanes: [_; LANES] = std::array::from_fn(lane);
    let mut powers: [Vec<f64>; LANES] = std::array::from_fn(|_| Vec::with_capacity(each));
    let mut state = [[0f64; LANES]; 4];
    for hop in 0..SETTLE + each {
        let blocks: [&[f32]; LANES] =
            std::array::from_fn(|lane| lanes.get_mut(lane).and_then(Iterator::next).unwrap_or_default());
        let sums = filter_hop(blocks, &mut state);
        if hop >= SETTLE {
            powers.iter_mut().zip(sums).for_each(|(powers, sum)| powers.push(sum / HOP as f64));
        }
    }
    let mut powers = powers.concat();
    powers.truncate(hops);
    powers
}

/// Runs both filters over one hop of each lane; the sums of squares.
fn filter_hop([a, b, c, d]: [&[f32]; LANES], state: &mut [[f64; LANES]; 4]) -> [f64; LANES] {
    let [mut s1, mut s2, mut s3, mut s4] = *state;
    let mut sums = [0f64; LANES];
    for (((a, b), c), d) in a.iter().zip(b).zip(c).zip(d) {
        let input = [f64::from(*a), f64::from(*b), f64::from(*c), f64::from(*d)];
        let shelved = step(&SHELF, input, &mut s1, &mut s2);
        let passed = step(&HIGH_PASS, shelved, &mut s3, &mut s4);
        for (sum, value) in sums.iter_mut().zip(passed) {
            *sum += value * value;
        }
    }
    *state = [s1, s2, s3, s4];
    sums
}

#[inline(always)]
#[allow(clippy::indexing_slicing)] // Arrays of one length, in a loop that is to become vector code.
fn step(
    [b0, b1, b2, a1, a2]: &Filter,
    input: [f64; LANES],
    first: &mut [f64; LANES],
    second: &mut [f64; LANES],
) -> [f64; LANES] {
    let mut output = [0f64; LANES];
    for lane in 0..LANES {
        let x = input[lane];
        let y = b0 * x + first[lane];
        first[lane] = b1 * x - a1 * y + second[lane];
        second[lane] = b2 * x - a2 * y;
        output[lane] = y;
    }
    output
}

/// Points between two samples at which the sound is interpolated, and the sample itself.
const PHASES: usize = 4;
/// Samples that take part in a point between two.
const TAPS: usize = 24;
/// Samples that are weighed together.
const STRIDE: usize = 64;

/// The highest peak between and at samples, as a factor of full scale.
pub(super) fn true_peak(samples: &[f32]) -> f64 {
    let phases = interpolators();
    // No point between samples lies further out than this times the largest near it.
    let most = phases.iter().map(|taps| taps.iter().map(|tap| tap.abs()).sum::<f32>()).fold(1.0, f32::max);
    let peaks: Vec<f32> = samples
        .chunks(STRIDE)
        .map(|chunk| {
            chunk.iter().fold(0f32, |peak, sample| if sample.abs() > peak { sample.abs() } else { peak })
        })
        .collect();
    let mut best = peaks.iter().copied().fold(0.0, f32::max);
    let mut order: Vec<(f32, usize)> = (0..peaks.len())
        .map(|at| {
            let near = peaks.get(at.saturating_sub(1)..(at + 2).min(peaks.len())).unwrap_or_default();
            (near.iter().copied().fold(0.0, f32::max), at)
        })
        .filter(|(near, _)| near * most > best)
        .collect();
    order.sort_by(|a, b| b.0.total_cmp(&a.0));
    for (near, at) in order {
        if near * most <= best {
            break;
        }
        best = best.max(peak_between(samples, at * STRIDE, &phases));
    }
    f64::from(best)
}

/// The highest point between the samples of a stride and those after them.
fn peak_between(samples: &[f32], from: usize, phases: &[[f32; TAPS]]) -> f32 {
    const WIDTH: usize = STRIDE + TAPS - 1;
    let mut near = [0f32; WIDTH];
    let before = TAPS / 2 - 1;
    let known = samples.get(from.saturating_sub(before)..).unwrap_or_default();
    let place = near.get_mut(before.saturating_sub(from)..).unwrap_or_default();
    place.iter_mut().zip(known).for_each(|(place, sample)| *place = *sample);
    let mut best = 0f32;
    for taps in phases {
        let mut sums = [0f32; STRIDE];
        for (shift, tap) in taps.iter().enumerate() {
            for (sum, sample) in sums.iter_mut().zip(near.iter().skip(shift)) {
                *sum += tap * sample;
            }
        }
        best = sums.iter().fold(best, |best, sum| best.max(sum.abs()));
    }
    best
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
    use crate::voice::noise::Noise;

    /// Bursts of noise and tones with pauses, as uneven as speech.
    fn sound(seed: u64, length: usize) -> Vec<f32> {
        let mut noise = Noise::new(seed);
        let (mut low, mut gain) = (0f32, 0f32);
        let samples = (0..length).map(|n| {
            if n % 7001 == 0 {
                gain = (noise.triangular() * 0.8).abs().powi(2);
            }
            low += 0.3 * (noise.triangular() - low);
            let tone = (n as f32 * (0.02 + 0.3 * (seed % 5) as f32)).sin();
            gain * (low + 0.4 * tone)
        });
        samples.collect()
    }

    #[test]
    fn it_agrees_with_the_meter_for_any_shape() {
        for (seed, length) in
            [(1, 19_200), (2, 19_201), (3, 48_000), (4, 100_003), (5, 960_000), (6, 333_333)]
        {
            let samples = sound(seed, length);
            let slow = crate::voice::level::measure_interleaved(&samples, 1, SAMPLE_RATE).unwrap();
            let lufs = loudness(&samples).unwrap();
            assert!((lufs - slow.integrated_lufs).abs() < 0.001, "{length}: {lufs} {slow:?}");
            let peak = 20.0 * true_peak(&samples).log10();
            assert!((peak - slow.true_peak_dbtp).abs() < 0.2, "{length}: {peak} {slow:?}");
        }
    }

    #[test]
    fn leaving_out_what_cannot_be_the_peak_changes_nothing() {
        let phases = interpolators();
        for seed in 0..20 {
            let samples = sound(seed, 5_000 + 37 * seed as usize);
            let all = (0..samples.len()).step_by(STRIDE).map(|from| peak_between(&samples, from, &phases));
            let all = all.chain(samples.iter().map(|sample| sample.abs())).fold(0.0, f32::max);
            assert_eq!(true_peak(&samples), f64::from(all), "{seed}");
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
            let peak = 20.0 * true_peak(&samples).log10();
            assert!((-6.42..=-5.82).contains(&peak), "{part}: {peak}");
        }
    }
}
