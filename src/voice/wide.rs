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

/// Adds a sound in 16 bits, times a gain, to another.
pub(super) fn add(target: &mut [f32], sound: &[i16], gain: f32) {
    dispatch!(Level::new(), simd => add_with(simd, target, sound, gain));
}

#[inline(always)]
fn add_with<S: Simd>(_: S, target: &mut [f32], sound: &[i16], gain: f32) {
    for (sum, sample) in target.iter_mut().zip(sound) {
        *sum += gain * f32::from(*sample);
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

/// Puts a sound, times a gain, in the place of another; they end with the shorter.
pub(super) fn set(target: &mut [f32], sound: &[f32], gain: f32) {
    dispatch!(Level::new(), simd => set_with(simd, target, sound, gain));
}

#[inline(always)]
fn set_with<S: Simd>(_: S, target: &mut [f32], sound: &[f32], gain: f32) {
    for (place, sample) in target.iter_mut().zip(sound) {
        *place = gain * sample;
    }
}

/// The mean square.
pub(super) fn power(samples: &[f32]) -> f64 {
    dispatch!(Level::new(), simd => power_with(simd, samples))
}

#[inline(always)]
fn power_with<S: Simd>(_: S, samples: &[f32]) -> f64 {
    // Sixteen sums, since a single one waits for each addition.
    let mut sums = [0f32; 16];
    let (blocks, rest) = samples.as_chunks::<16>();
    let rest: f32 = rest.iter().map(|sample| sample * sample).sum();
    for block in blocks {
        for (sum, sample) in sums.iter_mut().zip(block) {
            *sum += sample * sample;
        }
    }
    f64::from(sums.iter().sum::<f32>() + rest) / samples.len().max(1) as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_sample_counts() {
        for length in [0, 1, 15, 16, 17, 100, 4095, 4096, 4097, 9000] {
            let samples: Vec<f32> = (0..length).map(|n| ((n * n % 97) as f32 - 48.0) / 64.0).collect();
            let mut made = vec![1.0; length];
            let steps: Vec<i16> = samples.iter().map(|sample| (sample * 64.0) as i16).collect();
            add(&mut made, &steps, 0.5 / 64.0);
            assert!(made.iter().zip(&samples).all(|(sum, sample)| *sum == 1.0 + 0.5 * sample));
            let curve = vec![0.25; length];
            add_shaped(&mut made, &steps, &curve, -2.0 / 64.0);
            assert!(made.iter().all(|sum| *sum == 1.0));
            add(&mut made, &steps, 0.5 / 64.0);
            scale(&mut made, 2.0);
            assert!(made.iter().zip(&samples).all(|(twice, sample)| *twice == 2.0 + sample));
            let mean =
                samples.iter().map(|sample| f64::from(*sample).powi(2)).sum::<f64>() / length.max(1) as f64;
            assert!((power(&samples) - mean).abs() <= 1e-6 * mean, "{length}");
            let mut put = vec![7.0; length + 1];
            set(&mut put, &samples, 0.5);
            assert!(put.iter().zip(&samples).all(|(half, sample)| *half == 0.5 * sample));
            assert_eq!(put.last(), Some(&7.0));
        }
    }
}
