//! Plain loops over samples that run on the widest vectors the processor has.
//!
//! No loop here adds in another order, or rounds otherwise, on another
//! processor: the same input gives the same bits everywhere.

use fearless_simd::{Level, Simd, dispatch};

/// Multiplies each sample.
pub(super) fn scale(samples: &mut [f32], gain: f32) {
    dispatch!(Level::new(), simd => scale_with(simd, samples, gain));
}

#[inline(always)]
fn scale_with<S: Simd>(_: S, samples: &mut [f32], gain: f32) {
    for sample in samples {
        *sample *= gain;
    }
}

/// Adds a sound in 16 bits, times a gain and a curve, to another.
pub(super) fn add_shaped(target: &mut [f32], sound: &[i16], curve: &[f32], gain: f32) {
    dispatch!(Level::new(), simd => add_shaped_with(simd, target, sound, curve, gain));
}

#[inline(always)]
fn add_shaped_with<S: Simd>(_: S, target: &mut [f32], sound: &[i16], curve: &[f32], gain: f32) {
    for ((sum, sample), shape) in target.iter_mut().zip(sound).zip(curve) {
        *sum += gain * shape * f32::from(*sample);
    }
}

/// Puts a sound in 16 bits, times a gain, in the place of another; they end with the shorter.
pub(super) fn set(target: &mut [f32], sound: &[i16], gain: f32) {
    dispatch!(Level::new(), simd => set_with(simd, target, sound, gain));
}

#[inline(always)]
fn set_with<S: Simd>(_: S, target: &mut [f32], sound: &[i16], gain: f32) {
    for (place, sample) in target.iter_mut().zip(sound) {
        *place = gain * f32::from(*sample);
    }
}

/// The same with two sounds, each at its gain, in one.
pub(super) fn set_sum(target: &mut [f32], sounds: [&[i16]; 2], gains: [f32; 2]) {
    dispatch!(Level::new(), simd => set_sum_with(simd, target, sounds, gains));
}

#[inline(always)]
fn set_sum_with<S: Simd>(_: S, target: &mut [f32], [one, other]: [&[i16]; 2], gains: [f32; 2]) {
    for ((place, one), other) in target.iter_mut().zip(one).zip(other) {
        *place = gains[0] * f32::from(*one) + gains[1] * f32::from(*other);
    }
}

/// The mean square.
pub(super) fn power(samples: &[f32]) -> f64 {
    product(samples, samples) / samples.len().max(1) as f64
}

/// The sum of what samples are times those of another sound; they end with the shorter.
pub(super) fn product(one: &[f32], other: &[f32]) -> f64 {
    dispatch!(Level::new(), simd => product_with(simd, one, other))
}

#[inline(always)]
fn product_with<S: Simd>(_: S, one: &[f32], other: &[f32]) -> f64 {
    let length = one.len().min(other.len());
    let (blocks, rest) = one.get(..length).unwrap_or_default().as_chunks::<SIDE>();
    let (others, other_rest) = other.get(..length).unwrap_or_default().as_chunks::<SIDE>();
    let mut sums = [0f32; SIDE];
    for (block, other) in blocks.iter().zip(others) {
        for (sum, (one, other)) in sums.iter_mut().zip(block.iter().zip(other)) {
            *sum += one * other;
        }
    }
    let rest: f32 = rest.iter().zip(other_rest).map(|(one, other)| one * other).sum();
    f64::from(sums.iter().sum::<f32>() + rest)
}

/// Sums side by side, since a single one waits for each addition.
const SIDE: usize = 16;

/// The mean.
pub(super) fn mean(samples: &[f32]) -> f64 {
    dispatch!(Level::new(), simd => sum_with(simd, samples)) / samples.len().max(1) as f64
}

#[inline(always)]
fn sum_with<S: Simd>(_: S, samples: &[f32]) -> f64 {
    let (blocks, rest) = samples.as_chunks::<SIDE>();
    let mut sums = [0f32; SIDE];
    for block in blocks {
        for (sum, sample) in sums.iter_mut().zip(block) {
            *sum += sample;
        }
    }
    f64::from(sums.iter().chain(rest).sum::<f32>())
}

/// The lowest and the highest sample, and 0 where all lie on one side of it.
pub(super) fn extremes(samples: &[f32]) -> (f32, f32) {
    dispatch!(Level::new(), simd => extremes_with(simd, samples))
}

#[inline(always)]
fn extremes_with<S: Simd>(_: S, samples: &[f32]) -> (f32, f32) {
    let (mut lows, mut highs) = ([0f32; SIDE], [0f32; SIDE]);
    let (blocks, rest) = samples.as_chunks::<SIDE>();
    for block in blocks {
        for ((low, high), sample) in lows.iter_mut().zip(&mut highs).zip(block) {
            *low = if *sample < *low { *sample } else { *low };
            *high = if *sample > *high { *sample } else { *high };
        }
    }
    let low = lows.iter().chain(rest).copied().fold(0.0, f32::min);
    (low, highs.iter().chain(rest).copied().fold(0.0, f32::max))
}

/// The nearest whole numbers, of samples in units; none lies beyond 16 bits.
pub(super) fn rounded(samples: &[f32], unit: f32) -> Vec<i16> {
    let mut steps = vec![0i16; samples.len()];
    dispatch!(Level::new(), simd => round_with(simd, samples, unit, &mut steps));
    steps
}

#[inline(always)]
fn round_with<S: Simd>(_: S, samples: &[f32], unit: f32, steps: &mut [i16]) {
    for (step, sample) in steps.iter_mut().zip(samples) {
        *step = nearest(sample / unit);
    }
}

/// The nearest whole number of 16 bits. Without `round`, or a conversion that minds what is no number, which no
/// vectors do.
#[inline(always)]
pub(super) fn nearest(value: f32) -> i16 {
    // So far up no fractions are left, and the lowest bits count whole numbers.
    const FAR: f32 = 12_582_912.0;
    (value.clamp(-32_768.0, 32_767.0) + FAR).to_bits() as i16
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_sample_counts() {
        for length in [0, 1, 15, 16, 17, 100, 4095, 4096, 4097, 9000] {
            let samples: Vec<f32> = (0..length).map(|n| ((n * n % 97) as f32 - 48.0) / 64.0).collect();
            let steps: Vec<i16> = samples.iter().map(|sample| (sample * 64.0) as i16).collect();
            let ones = vec![2i16; length];
            // One more than there are of the sounds, which stays.
            let mut made = vec![7.0; length + 1];
            set(&mut made, &steps, 0.5 / 64.0);
            assert!(made.iter().zip(&samples).all(|(half, sample)| *half == 0.5 * sample));
            set_sum(&mut made, [&steps, &ones], [0.5 / 64.0, 0.5]);
            assert!(made.iter().zip(&samples).all(|(sum, sample)| *sum == 1.0 + 0.5 * sample));
            assert_eq!(made.pop(), Some(7.0));
            let curve = vec![0.25; length];
            add_shaped(&mut made, &steps, &curve, 2.0 / 64.0);
            scale(&mut made, 2.0);
            assert!(made.iter().zip(&samples).all(|(sum, sample)| *sum == 2.0 * (1.0 + sample)));
            let mean =
                samples.iter().map(|sample| f64::from(*sample).powi(2)).sum::<f64>() / length.max(1) as f64;
            assert!((power(&samples) - mean).abs() <= 1e-6 * mean, "{length}");
            let sum = samples.iter().copied().map(f64::from).sum::<f64>();
            assert!((super::mean(&samples) - sum / length.max(1) as f64).abs() <= 1e-6, "{length}");
            let low = samples.iter().copied().fold(0.0, f32::min);
            assert_eq!(extremes(&samples), (low, samples.iter().copied().fold(0.0, f32::max)));
            let turned: Vec<f32> = samples.iter().rev().copied().collect();
            let exact: f64 = samples.iter().zip(&turned).map(|(a, b)| f64::from(*a) * f64::from(*b)).sum();
            assert!((product(&samples, &turned) - exact).abs() <= 1e-6 * length as f64, "{length}");
            assert_eq!(rounded(&samples, 1.0 / 64.0), steps);
        }
    }
}
