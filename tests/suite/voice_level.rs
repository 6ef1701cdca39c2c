//! Loudness against EBU Tech 3341 (tests/expected/ebu-tech-3341).
use super::expected::rows;
use super::voice_bank::sine;
use kabla::voice::Sound as _;
use kabla::voice::level::{LevelError, LevelOptions, measure, measure_interleaved, to_target};
use std::f64::consts::TAU;

/// A signal of the table: a tone of 1 kHz in steps of level and length.
fn signal(steps: &str) -> Vec<f32> {
    let step = |step: &str| {
        let (level, seconds) = step.split_once('@').unwrap();
        sine(48_000, 1000.0, 10f64.powf(level.parse::<f64>().unwrap() / 20.0), seconds.parse().unwrap())
    };
    steps.split(' ').flat_map(step).collect()
}

/// The signals are on two channels, whose powers add: one alone is 10 log 2 quieter. The tolerance is the EBU's.
#[test]
fn loudness_signals_read_as_the_ebu_says() {
    for row in rows("ebu-tech-3341", "loudness.csv") {
        let one = signal(&row["steps"]);
        let wanted: f64 = row["lufs"].parse().unwrap();
        let read = measure(&one).unwrap().integrated_lufs;
        let of_one = wanted - 10.0 * 2f64.log10();
        assert!((read - of_one).abs() <= 0.1, "signal {}: {read}, not {of_one}", row["signal"]);
        let both: Vec<f32> = one.iter().flat_map(|sample| [*sample, *sample]).collect();
        let read = measure_interleaved(&both, 2, 48_000).unwrap().integrated_lufs;
        assert!((read - wanted).abs() <= 0.1, "signal {}: {read}, not {wanted}", row["signal"]);
    }
}

#[test]
fn true_peak_signals_read_as_the_ebu_says() {
    for row in rows("ebu-tech-3341", "true-peak.csv") {
        let number = |key: &str| row[key].parse::<f64>().unwrap();
        let sample = |n: usize| {
            (number("full_scale")
                * (TAU * n as f64 / number("rate_over_frequency") + number("phase_degrees").to_radians())
                    .sin()) as f32
        };
        // A taper of our own: an abrupt start would ring between the samples, in any meter.
        let taper = |n: usize| (n.min(48_000 - n) as f32 / 2400.0).min(1.0);
        let samples: Vec<f32> = (0..48_000).map(|n| sample(n) * taper(n)).collect();
        let off = measure(&samples).unwrap().true_peak_dbtp - number("dbtp");
        assert!((-0.4..=0.2).contains(&off), "signal {}: off by {off}", row["signal"]);
    }
}

#[test]
fn mono_counts_as_one_channel() {
    let samples: Vec<f32> = sine(48_000, 1000.0, 0.1, 3.0).collect();
    assert!((measure(&samples).unwrap().integrated_lufs + 23.0).abs() < 0.1);
}

#[test]
fn gain_and_limiter_reach_target_and_ceiling() {
    // Bursts over a quiet tone: a crest that gain alone cannot bring to -23 LUFS.
    let bursty: Vec<f32> = sine(48_000, 300.0, 0.02, 10.0)
        .enumerate()
        .map(|(n, s)| if n % 24_000 < 40 { s * 49.0 } else { s })
        .collect();
    for (samples, limited) in [(sine(48_000, 997.0, 0.004, 5.0).collect(), false), (bursty, true)] {
        let levelled = to_target::<Vec<f32>>(samples, &LevelOptions::default()).unwrap();
        let again = measure(&levelled.sound.samples()).unwrap();
        assert_eq!(levelled.limited, limited);
        assert!((again.integrated_lufs + 23.0).abs() <= 0.2 && again.true_peak_dbtp <= -1.0, "{again:?}");
        assert!((again.integrated_lufs - levelled.loudness.integrated_lufs).abs() < 0.02);
        assert!((again.true_peak_dbtp - levelled.loudness.true_peak_dbtp).abs() < 0.02);
    }
}

#[test]
fn what_has_no_level_is_refused() {
    let options = LevelOptions::default();
    assert!(matches!(to_target(vec![0.1; 19_199], &options), Err(LevelError::TooShort { frames: 19_199 })));
    assert_eq!(to_target(vec![0.0; 48_000], &options), Err(LevelError::TooQuiet));
    assert_eq!(to_target(vec![f32::NAN; 48_000], &options), Err(LevelError::NotFinite));
    let click: Vec<f32> = (0..48_000).map(|n| if n % 9600 == 0 { 1.0 } else { 0.0 }).collect();
    assert!(matches!(to_target(click, &options), Err(LevelError::OutOfReach { .. })));
}
