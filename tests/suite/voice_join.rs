//! Joints without clicks, lengths to the sample.
use super::voice_bank::sine;
use kabla::language::Pause;
use kabla::voice::join::{JoinOptions, Part, join};
use kabla::voice::{Frames, SAMPLE_RATE};
use proptest::prelude::*;

fn largest_step(samples: &[f32]) -> f32 {
    samples.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0.0, f32::max)
}

fn rms_db(samples: &[f32]) -> f64 {
    10.0 * (samples.iter().map(|s| f64::from(*s).powi(2)).sum::<f64>() / samples.len() as f64).log10()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn no_joint_clicks(
        clips in prop::collection::vec((150f64..3000.0, 0.05f64..0.9, 0.05f64..0.4, prop::option::of(0..3usize)), 1..8),
    ) {
        let options = JoinOptions::default();
        let sounds: Vec<Vec<f32>> = clips.iter().map(|(hz, peak, seconds, _)| {
            // A cosine: cut hard, it jumps from nothing to its peak.
            sine(SAMPLE_RATE, *hz, *peak, *seconds + 1.0).skip((48_000.0 / hz / 4.0) as usize).take((48_000.0 * seconds) as usize).collect()
        }).collect();
        let pauses = [Pause::Comma, Pause::Sentence, Pause::Statement];
        let parts: Vec<Part<'_>> = sounds.iter().zip(&clips).map(|(samples, clip)| Part::new(samples, clip.3.map(|n| pauses[n]))).collect();
        let joined = join(parts, &options);
        // The clips at the level they have in the message, from their undisturbed middles.
        let mut inner = 0f32;
        let mut peak = 0f32;
        for span in &joined.spans {
            let (from, to) = (span.from.0 as usize, span.to.0 as usize);
            let middle = &joined.samples[from + 500..to - 500];
            inner = inner.max(largest_step(middle));
            peak = peak.max(middle.iter().fold(0.0, |peak, s| peak.max(s.abs())));
        }
        // A fade of 240 frames or more adds at most its own slope, once for each of two clips.
        let fade = 2.0 * peak * std::f32::consts::PI / (2.0 * 240.0);
        let step = largest_step(&joined.samples);
        prop_assert!(step <= inner + fade + 0.002, "{step} where clips have {inner}");
        // Nothing trimmed from steady tones: the length follows.
        let mut length = options.lead.0 + options.tail.0;
        let mut overlaps = 0;
        for (index, (sound, clip)) in sounds.iter().zip(&clips).enumerate() {
            length += sound.len() as u64;
            if index + 1 < sounds.len() {
                match clip.3 {
                    Some(0) => length += options.comma.0,
                    Some(1) => length += options.sentence.0,
                    Some(_) => length += options.statement.0,
                    None => overlaps += 1,
                }
            }
        }
        // Overlaps are 5 to 20 ms long.
        let made = joined.samples.len() as u64;
        prop_assert!((length - overlaps * 960..=length - overlaps * 240).contains(&made), "{made} of {length}");
    }
}

#[test]
fn silence_is_trimmed_but_for_ten_milliseconds() {
    let mut clip = vec![0f32; 4800];
    clip.extend(sine(SAMPLE_RATE, 400.0, 0.3, 0.5));
    clip.extend(vec![0f32; 9600]);
    let joined = join(vec![Part::new(&clip, None)], &JoinOptions::default());
    let span = joined.spans[0];
    assert_eq!(span.to - span.from, Frames::from_millis(520));
}

#[test]
fn levels_meet_within_six_decibels_and_pauses_are_not_dead() {
    let sounds: Vec<Vec<f32>> =
        [0.1, 0.2, 0.9].map(|peak| sine(SAMPLE_RATE, 500.0, peak, 0.5).collect()).into();
    let parts: Vec<_> = sounds.iter().map(|samples| Part::new(samples, Some(Pause::Statement))).collect();
    let options = JoinOptions::default();
    let joined = join(parts.clone(), &options);
    let level = |n: usize| {
        rms_db(&joined.samples[joined.spans[n].from.0 as usize + 1000..joined.spans[n].to.0 as usize - 1000])
    };
    assert!((level(1) + 23.0).abs() < 0.1 && (level(0) - level(1)).abs() < 0.1);
    // 13.06 dB above the median, lowered by 6.
    assert!((level(2) - level(1) - 7.06).abs() < 0.1, "{}", level(2) - level(1));
    let pause = &joined.samples[joined.spans[0].to.0 as usize..joined.spans[1].from.0 as usize];
    assert!((rms_db(pause) + 75.0).abs() < 1.0);
    assert_eq!(joined, join(parts, &options));
}
