//! Filters: finite responses with linear phase by the window method, and a Butterworth high-pass.

use std::f64::consts::PI;

/// A low-pass of an odd number of taps: a sinc in a Kaiser window, as its
/// author gives window and length for a wanted attenuation.
///
/// `cutoff` (the middle of the transition) and `transition` are in Hz at `rate`.
pub(super) fn low_pass(rate: f64, cutoff: f64, transition: f64, attenuation_db: f64) -> Vec<f64> {
    let beta = 0.1102 * (attenuation_db - 8.7).max(0.0);
    let half = ((attenuation_db - 7.95) / (2.285 * 2.0 * PI * transition / rate) / 2.0).ceil().max(1.0);
    let taps = (0..=2 * half as usize).map(|tap| {
        let at = tap as f64 - half;
        let angle = 2.0 * PI * cutoff / rate;
        let sinc = if at == 0.0 { angle / PI } else { (angle * at).sin() / (PI * at) };
        sinc * bessel(beta * (1.0 - (at / half).powi(2)).max(0.0).sqrt()) / bessel(beta)
    });
    let mut taps: Vec<f64> = taps.collect();
    let sum: f64 = taps.iter().sum();
    taps.iter_mut().for_each(|tap| *tap /= sum);
    taps
}

/// What a low-pass leaves out.
pub(super) fn high_pass(rate: f64, cutoff: f64, transition: f64, attenuation_db: f64) -> Vec<f64> {
    let mut taps = low_pass(rate, cutoff, transition, attenuation_db);
    taps.iter_mut().for_each(|tap| *tap = -*tap);
    let middle = taps.len() / 2;
    if let Some(tap) = taps.get_mut(middle) {
        *tap += 1.0;
    }
    taps
}

/// The modified Bessel function of the first kind and order 0, by its series.
fn bessel(x: f64) -> f64 {
    let (mut sum, mut term) = (1.0, 1.0);
    for order in 1..64 {
        term *= (x / 2.0 / f64::from(order)).powi(2);
        sum += term;
    }
    sum
}

/// Every `step`th of the samples, filtered without delay; beyond the ends there is silence.
pub(super) fn filtered(samples: &[f32], taps: &[f64], step: usize) -> Vec<f32> {
    let half = taps.len() / 2;
    let centres = (0..samples.len()).step_by(step.max(1));
    let at = |centre: usize| {
        let (from, skip) = (centre.saturating_sub(half), half.saturating_sub(centre));
        let around = samples.get(from..).unwrap_or_default();
        let sum: f64 = around.iter().zip(taps.iter().skip(skip)).map(|(s, tap)| f64::from(*s) * tap).sum();
        sum as f32
    };
    centres.map(at).collect()
}

/// A Butterworth high-pass of second order, by the bilinear transform: 3 dB down at `cutoff` Hz.
pub(super) fn rumble_out(samples: &mut [f32], rate: f64, cutoff: f64) {
    let k = (PI * cutoff / rate).tan();
    let norm = 1.0 / (1.0 + 2f64.sqrt() * k + k * k);
    let (a1, a2) = (2.0 * (k * k - 1.0) * norm, (1.0 - 2f64.sqrt() * k + k * k) * norm);
    let (mut one, mut two) = (0f64, 0f64);
    for sample in samples {
        let input = norm * f64::from(*sample);
        let passed = input + one;
        one = (two - 2.0 * input) - a1 * passed;
        two = input - a2 * passed;
        *sample = passed as f32;
    }
}
