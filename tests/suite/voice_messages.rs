//! Whole messages with the voices that come with the project.

use kabla::data::Embedded;
use kabla::guidance::{StepKind, for_step, tell};
use kabla::language::{Pack, Piece};
use kabla::plan::make;
use kabla::voice::level::{LevelOptions, measure, measure_interleaved};
use kabla::voice::write::{WavOptions, wav};
use kabla::voice::{Bank, Frames, SpeakOptions, Spoken, speak};

use crate::examples;

fn messages(tag: &str, see: impl Fn(&str, &Spoken)) {
    let pack = Pack::load(&Embedded, tag).unwrap();
    let bank = Bank::load(&Embedded, tag, pack.voice()).unwrap();
    for (name, case) in examples() {
        let statements = tell(&case, &make(&case).unwrap());
        for topic in
            [StepKind::MarkPlants, StepKind::FillContainer, StepKind::WaterBed, StepKind::CutForPlanting]
        {
            let chosen = for_step(&statements, topic);
            let pieces: Vec<Piece> =
                chosen.iter().flat_map(|statement| pack.say(statement).unwrap()).collect();
            let spoken = speak(&pieces, &bank, &SpeakOptions::default())
                .unwrap_or_else(|error| panic!("{tag} {name}: {error}"));
            see(&format!("{tag} {name} {}", topic.name()), &spoken);
        }
    }
}

fn largest_step(samples: &[f32]) -> f32 {
    samples.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0.0, f32::max)
}

#[test]
fn stand_in_voices_say_every_example_without_clicks() {
    for tag in ["en", "sw", "am", "fr", "pt-MZ"] {
        messages(tag, |what, spoken| {
            // Around each join the steps stay below what the clips that meet there have within.
            let near = Frames::from_millis(10).0 as usize;
            let within: Vec<f32> = spoken
                .lines
                .iter()
                .map(|line| {
                    largest_step(&spoken.samples[line.from.0 as usize + near..line.to.0 as usize - near])
                })
                .collect();
            for (index, line) in spoken.lines.iter().enumerate() {
                let at = line.to.0 as usize;
                let join = largest_step(&spoken.samples[at - near..(at + near).min(spoken.samples.len())]);
                let clips = within.iter().skip(index).take(2).copied().fold(0.0, f32::max);
                assert!(join <= clips, "{what}: a step of {join} after \"{}\", {clips} within", line.words);
            }
        });
    }
}

#[test]
fn loudness_lengths_and_pauses_of_every_example() {
    for tag in ["en", "sw", "am", "fr", "pt-MZ"] {
        messages(tag, |what, spoken| {
            // Measured anew from the file as written, not taken from the message.
            let bytes = wav(&spoken.samples, &WavOptions::default()).unwrap();
            let reader = hound::WavReader::new(bytes.as_slice()).unwrap();
            let spec = reader.spec();
            assert_eq!((spec.channels, spec.sample_rate, spec.bits_per_sample), (1, 48_000, 16));
            let written: Vec<f32> =
                reader.into_samples::<i16>().map(|sample| f32::from(sample.unwrap()) / 32_768.0).collect();
            assert_eq!(written.len() as u64, spoken.length().0);
            let loudness = measure(&written).unwrap();
            // What is said of it was summed from what its clips are known to measure.
            let said = spoken.loudness;
            let near = |said: f64, measured: f64, most: f64| {
                assert!((said - measured).abs() <= most, "{what}: {said} is said, {measured} measured")
            };
            near(said.integrated_lufs, loudness.integrated_lufs, 0.02);
            near(said.true_peak_dbtp, loudness.true_peak_dbtp, 0.1);
            near(said.range_lu.unwrap(), loudness.range_lu.unwrap(), 0.1);
            // As exact as EBU Tech 3341 asks of a meter: clips that overlap are summed as if they did not.
            near(said.momentary_lufs.unwrap(), loudness.momentary_lufs.unwrap(), 0.1);
            near(said.short_term_lufs.unwrap(), loudness.short_term_lufs.unwrap(), 0.02);
            assert!((loudness.integrated_lufs + 23.0).abs() <= 0.2, "{what}: {loudness:?}");
            assert!(loudness.true_peak_dbtp <= -1.0, "{what}: {loudness:?}");
            // Nothing overlaps, nothing is out of order, nothing is digitally silent.
            for pair in spoken.lines.windows(2) {
                assert!(pair[0].from < pair[0].to && pair[0].to <= pair[1].from, "{what}: {pair:?}");
            }
            assert!(spoken.lines.last().unwrap().to <= spoken.length());
            let longest_zero = written.chunk_by(|a, b| a == b && *a == 0.0).map(<[f32]>::len).max().unwrap();
            assert!(longest_zero < 480, "{what}: {longest_zero} samples of digital silence");
        });
    }
}

/// Near the ceiling what is known of clips does not do: the message is measured, and held down.
#[test]
fn messages_too_loud_for_their_ceiling_are_held_down() {
    let pack = Pack::load(&Embedded, "en").unwrap();
    let bank = Bank::load(&Embedded, "en", pack.voice()).unwrap();
    let (_, case) = examples().into_iter().find(|(name, _)| name == "farm").unwrap();
    let statements = tell(&case, &make(&case).unwrap());
    let chosen = for_step(&statements, StepKind::FillContainer);
    let pieces: Vec<Piece> = chosen.iter().flat_map(|statement| pack.say(statement).unwrap()).collect();
    let level = LevelOptions { target_lufs: -22.0, ceiling_dbtp: -9.0 };
    let spoken = speak(&pieces, &bank, &SpeakOptions { level, ..SpeakOptions::default() }).unwrap();
    assert!(spoken.limited);
    let measured = measure_interleaved(&spoken.samples, 1, 48_000).unwrap();
    assert!((measured.integrated_lufs + 22.0).abs() <= 0.2, "{measured:?}");
    // The other meter looks at other points between samples.
    assert!(measured.true_peak_dbtp <= -9.0 + 0.1, "{measured:?}");
}
