//! Radio segments of exact length, their scripts, and the season's plan of them.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use chrono::NaiveDate;
use kabla::app::{self, Error, MusicFiles, Overrides, SegmentRequest, SegmentTime};
use kabla::data::Embedded;
use kabla::guidance::{
    DateSpan, Priority, StepKind, Subject, Timing, Value, for_week, in_order, tell, told_in, week_of,
};
use kabla::language::{Label, Pack, Pause, Piece};
use kabla::plan::make;
use kabla::voice::level::measure;
use kabla::voice::segment::{
    Choice, Measure, MixOptions, Music, PauseRanges, Range, choose, estimate, fit, mix,
};
use kabla::voice::{Bank, Frames, JoinOptions, Loudness, SAMPLE_RATE, Spoken, Timed};
use proptest::prelude::*;

use crate::examples;
use crate::project::{Project, Run, example, repository, text};
use crate::pseudo::worded_lines;

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

// Choosing

/// What choosing promises, by plain counting over all sets: the classes' counts compare one by one, and of the best
/// sets one that reaches the time is taken, with the earliest items.
fn promised(classes: &[Option<u8>], lengths: &[(u64, u64)], target: u64) -> Vec<u32> {
    let total = |set: u32, pick: fn(&(u64, u64)) -> u64| -> u64 {
        (0..lengths.len()).filter(|bit| set >> bit & 1 == 1).map(|bit| pick(&lengths[bit])).sum()
    };
    let counts = |set: u32| -> Vec<usize> {
        let of = |class| {
            (0..classes.len()).filter(|bit| set >> bit & 1 == 1 && classes[*bit] == Some(class)).count()
        };
        (0..4).map(of).collect()
    };
    let within: Vec<u32> = (0..1 << classes.len())
        .filter(|set| total(*set, |length| length.0) <= target && counts(*set).iter().sum::<usize>() > 0)
        .collect();
    let best = within.iter().map(|set| counts(*set)).max();
    within
        .into_iter()
        .filter(|set| Some(counts(*set)) == best && total(*set, |length| length.1) >= target)
        .collect()
}

fn sets() -> impl Strategy<Value = (Vec<Option<u8>>, Vec<(u64, u64)>)> {
    let item = (0u8..5, 3u64..40, 0u64..8);
    prop::collection::vec(item, 1..8).prop_map(|mut items| {
        // Fillers, the fifth class here, come last.
        items.sort_by_key(|item| item.0);
        let classes = items.iter().map(|item| (item.0 < 4).then_some(item.0)).collect();
        (classes, items.iter().map(|item| (item.1, item.1 + item.2)).collect())
    })
}

proptest! {
    #[test]
    fn priorities_hold_against_brute_force((classes, lengths) in sets(), target in 1u64..160) {
        let length = |set: u32| {
            let chosen = || lengths.iter().enumerate().filter(|(bit, _)| set >> bit & 1 == 1).map(|(_, length)| length);
            let least = chosen().map(|length| length.0).sum();
            Range { least: Frames(least), usual: Frames(least), most: Frames(chosen().map(|length| length.1).sum()) }
        };
        let choose_at = |target| choose(&classes, length, Frames(target));
        let expected = promised(&classes, &lengths, target);
        match choose_at(target) {
            Choice::Fits(set) => {
                prop_assert!(expected.contains(&set.items));
                // Of equals the one with the earlier items.
                let important = classes.iter().flatten().count();
                let early = |items: u32| (0..important).map(|bit| items >> bit & 1).collect::<Vec<_>>();
                prop_assert_eq!(Some(early(set.items)), expected.iter().map(|items| early(*items)).max());
            }
            Choice::Between { below, above } => {
                prop_assert!(expected.is_empty());
                let from = below.map_or(0, |set| set.length.most.0);
                let to = above.map_or(target + 60, |set| set.length.least.0);
                prop_assert!(from < target && target < to);
                // Both can be had, and nothing between them.
                for between in from + 1..to {
                    prop_assert!(promised(&classes, &lengths, between).is_empty());
                }
                if let Some(below) = below {
                    prop_assert!(promised(&classes, &lengths, from).contains(&below.items));
                }
                if above.is_some() {
                    prop_assert!(matches!(choose_at(to), Choice::Fits(_)));
                }
            }
        }
    }

    #[test]
    fn pauses_fit_to_the_frame_and_stay_in_bounds(
        seconds in 5.0f64..300.0, commas in 0u64..60, sentences in 0u64..80, statements in 1u64..20,
        share in 0.0f64..=1.0, signatures in any::<(bool, bool)>(), bed in any::<bool>(),
    ) {
        let join = JoinOptions::default();
        let measure = Measure { speech: Frames((seconds * 48_000.0) as u64), commas, sentences, statements };
        let ranges = PauseRanges::around(&join, signatures, bed);
        let lengths = measure.lengths(&ranges, &join);
        let target = Frames(lengths.least.0 + ((lengths.most.0 - lengths.least.0) as f64 * share) as u64);
        let fitted = fit(&measure, target, &ranges, &join).unwrap();
        prop_assert_eq!(measure.length(&fitted), target);
        for (pause, range) in [
            (fitted.comma, ranges.comma), (fitted.sentence, ranges.sentence),
            (fitted.statement, ranges.statement), (fitted.lead, ranges.lead),
        ] {
            prop_assert!(range.least <= pause && pause <= range.most);
        }
        // What rounding leaves over goes there: less than a frame a pause.
        let rest = Frames(commas + sentences + statements + 3);
        prop_assert!(ranges.tail.least <= fitted.tail + rest && fitted.tail <= ranges.tail.most + rest);
        prop_assert_eq!(fit(&measure, lengths.most + Frames(1), &ranges, &join), None);
        prop_assert_eq!(fit(&measure, lengths.least - Frames(1), &ranges, &join), None);
    }
}

#[test]
fn pauses_keep_the_bounds_that_are_stated() {
    let usual = Frames::from_millis(500);
    let range = Range::around(usual);
    assert_eq!((range.least.millis(), range.usual.millis(), range.most.millis()), (350, 500, 800));
}

// What matters in a week

#[test]
fn every_week_has_its_work_its_cautions_and_its_end() {
    for (name, case) in examples() {
        let statements = tell(&case, &make(&case).unwrap());
        let first = statements.iter().flat_map(|of| &of.when).map(|span| span.from).min().unwrap();
        let mut due = 0;
        for week in (0..40).map(|week| week_of(first + chrono::Days::new(7 * week))) {
            let items = for_week(&statements, week);
            assert!(items.windows(2).all(|pair| pair[0].class() <= pair[1].class()), "{name} {week:?}");
            for item in &items {
                let Subject::Step(topic) = item.statement.subject else {
                    assert!(matches!(item.timing, Timing::Past | Timing::Ahead), "{name} {item:?}");
                    continue;
                };
                let belongs = |of: &&kabla::guidance::Statement| match of.subject {
                    Subject::Caution(caution) => caution.steps().contains(&topic),
                    Subject::Consequence(consequence) => consequence.steps().contains(&topic),
                    _ => false,
                };
                assert!(statements.iter().filter(belongs).eq(item.beside.iter().copied()), "{name} {week:?}");
                let overlaps =
                    item.statement.when.iter().any(|span| span.from <= week.to && span.to >= week.from);
                assert_eq!(item.timing == Timing::Due, overlaps, "{name} {week:?} {}", topic.name());
                due += usize::from(overlaps);
            }
            // Any choice of items brings all their cautions, each once, and ends with local advice.
            for chosen in [items.iter().collect::<Vec<_>>(), items.iter().step_by(2).collect()] {
                let said = in_order(&statements, &chosen);
                assert_eq!(said.first().unwrap().subject, Subject::Opening);
                assert_eq!(said.last().unwrap().subject, Subject::Closing);
                for item in chosen {
                    let at = said.iter().position(|of| *of == item.statement).unwrap();
                    let led_to =
                        statements.iter().filter(|of| matches!(of.subject, Subject::Consequence(_))).count();
                    let heard = |caution: &&kabla::guidance::Statement| {
                        said.iter()
                            .position(|of| of == caution)
                            .is_some_and(|caution| caution < at + 4 + led_to)
                    };
                    assert!(item.beside.iter().all(heard), "{name} {week:?}");
                }
                let mut subjects: Vec<Subject> = said.iter().map(|of| of.subject).collect();
                subjects.sort_unstable();
                subjects.dedup();
                assert_eq!(subjects.len(), said.len(), "{name} {week:?}: something is said twice");
            }
        }
        assert!(due > 20, "{name}");
    }
}

#[test]
fn a_later_check_is_the_next_and_has_its_own_day() {
    let (_, case) = examples().remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    let check = |told: &[kabla::guidance::Statement]| {
        told.iter().find(|of| of.subject == Subject::Step(StepKind::MonthlyCheck)).unwrap().clone()
    };
    let days: Vec<NaiveDate> = check(&statements).when.iter().map(|span| span.from).collect();
    assert!(days.len() > 2);
    let pack = Pack::load(&Embedded, "en").unwrap();
    for (index, from) in days.iter().enumerate() {
        let told = told_in(&statements, week_of(*from));
        let check = check(&told);
        // In its own week, a check that is not over yet is the one told.
        assert_eq!(check.value("first"), Some(&Value::Date(*from)), "check {index}");
        let said: String = pack
            .say(&check)
            .unwrap()
            .iter()
            .map(|piece| match piece {
                Piece::Words(words) => format!("{} ", words.text),
                Piece::Pause(_) => String::new(),
            })
            .collect();
        assert_eq!(said.contains("first check is on"), index == 0, "{said}");
        assert_eq!(said.contains("next check is on"), index > 0, "{said}");
    }
    let others = |told: Vec<kabla::guidance::Statement>| {
        // The check has another day, opening and closing another season.
        let changes = |of: Subject| of == Subject::Step(StepKind::MonthlyCheck) || of.is_framing();
        told.into_iter().filter(|of| !changes(of.subject)).collect::<Vec<_>>()
    };
    assert_eq!(others(told_in(&statements, week_of(days[2]))), others(statements));
}

#[test]
fn a_week_far_from_all_work_has_nothing_that_matters() {
    let (_, case) = examples().remove(2);
    let statements = tell(&case, &make(&case).unwrap());
    let items = for_week(&statements, week_of(day("2028-08-01")));
    // Cautions that hold for all work only fill time.
    assert!(!items.is_empty());
    assert!(
        items
            .iter()
            .all(|item| item.timing == Timing::Ahead && item.statement.priority == Priority::Essential)
    );
    assert_eq!(week_of(day("2027-05-16")), DateSpan::new(day("2027-05-10"), day("2027-05-16")));
    let text = refused(&[&example("zone.toml"), "--week", "2028-08-01", "--fit", "60"]);
    assert!(
        text.contains("--week: there is nothing to say in the week from 2028-07-31 to 2028-08-06"),
        "{text}"
    );
}

// The whole, in files

fn segment(
    tag: &str,
    case: &str,
    week: &str,
    seconds: f64,
    music: MusicFiles<'_>,
    out: &Path,
) -> Result<f64, String> {
    let case = example(case);
    let request = SegmentRequest {
        case: Path::new(&case),
        overrides: Overrides::default(),
        language: Some(tag),
        voice: None,
        music,
        live: false,
        out,
    };
    let time = SegmentTime { week: day(week), seconds };
    match app::segment(&Embedded, request, time, &mut |_, _, _| {}) {
        Ok(segment) => {
            assert!(segment.missing.is_none());
            let reader = hound::WavReader::open(&segment.made[0].path).unwrap();
            Ok(f64::from(reader.duration()) / f64::from(SAMPLE_RATE))
        }
        Err(Error::Input(findings)) => Err(findings.iter().map(ToString::to_string).collect()),
        Err(error) => panic!("{error}"),
    }
}

const SILENT: MusicFiles<'static> = MusicFiles { opening: None, closing: None, bed: None, bed_below: 20.0 };

/// The lengths that a refusal names.
fn named(refusal: &str) -> Vec<f64> {
    let hint = refusal.split("hint:").nth(1).unwrap();
    hint.split_whitespace().filter_map(|word| word.strip_suffix('s')?.parse().ok()).collect()
}

#[test]
fn segments_have_the_length_asked_for_or_name_lengths_that_can_be_had() {
    let (mut made, mut refused) = (0, 0);
    for (tag, case, week) in [
        ("sw", "zone.toml", "2027-06-10"),
        ("en", "zone.toml", "2027-08-25"),
        ("en", "village.toml", "2027-06-10"),
    ] {
        for seconds in [40.0, 65.0, 90.0, 150.0, 240.0] {
            let folder = Project::new();
            match segment(tag, case, week, seconds, SILENT, folder.folder()) {
                Ok(length) => {
                    assert!((length - seconds).abs() <= 0.5, "{tag} {case} {seconds}: {length}");
                    made += 1;
                }
                Err(refusal) => {
                    assert_eq!(fs::read_dir(folder.folder()).unwrap().count(), 0, "something was written");
                    let lengths = named(&refusal);
                    assert!(!lengths.is_empty(), "{refusal}");
                    let too_long = lengths.iter().all(|length| *length < seconds);
                    assert_eq!(refusal.contains("too little to say"), too_long, "{refusal}");
                    for length in lengths {
                        assert!((length - seconds).abs() > 0.5, "{refusal}");
                        let reached = segment(tag, case, week, length, SILENT, folder.folder());
                        let reached = reached.unwrap_or_else(|other| panic!("{refusal}\nbut: {other}"));
                        assert!((reached - length).abs() <= 0.11, "{refusal}: {reached}");
                    }
                    refused += 1;
                }
            }
        }
    }
    assert!(made >= 5 && refused >= 2, "{made} made, {refused} refused: no proof of both");
}

/// Rows of a cue sheet: from, to, words, clip.
fn cues(folder: &Path) -> Vec<(f64, f64, String, String)> {
    let file = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let file = file.into_iter().find(|path| path.to_string_lossy().ends_with(".cue.txt")).unwrap();
    let clock = |text: &str| {
        let (minutes, seconds) = text.split_once(':')?;
        Some(minutes.parse::<f64>().ok()? * 60.0 + seconds.parse::<f64>().ok()?)
    };
    let text = fs::read_to_string(file).unwrap();
    text.lines()
        .filter_map(|line| {
            let cells: Vec<&str> = line.split("  ").map(str::trim).filter(|cell| !cell.is_empty()).collect();
            let (from, to) = (clock(cells.first()?)?, clock(cells.get(1)?)?);
            Some((from, to, cells[2].to_owned(), cells.get(3).unwrap_or(&"").to_string()))
        })
        .collect()
}

/// Between two segments of the same words only pauses differ, and those within their bounds.
#[test]
fn pauses_stretch_and_speech_does_not() {
    let say = |seconds| {
        let folder = Project::new();
        assert!(
            segment("en", "zone.toml", "2027-05-12", seconds, SILENT, folder.folder()).is_ok(),
            "{seconds}"
        );
        cues(folder.folder())
    };
    let folder = Project::new();
    // The shortest segment of the week, and one a little longer of the same items.
    let shortest =
        named(&segment("en", "zone.toml", "2027-05-12", 20.0, SILENT, folder.folder()).unwrap_err())[0];
    let (tight, loose) = (say(shortest), say(shortest + 3.0));
    let words =
        |cues: &[(f64, f64, String, String)]| cues.iter().map(|cue| cue.3.clone()).collect::<Vec<_>>();
    assert_eq!(words(&tight), words(&loose));
    let mut stretched = 0;
    for (a, b) in tight.windows(2).zip(loose.windows(2)) {
        assert!(((a[0].1 - a[0].0) - (b[0].1 - b[0].0)).abs() < 0.0015, "{a:?} {b:?}");
        let (short, long) = (a[1].0 - a[0].1, b[1].0 - b[0].1);
        let (least, most) = match a[0].2.chars().last() {
            Some('.') => (0.350, 1.440),
            Some(',' | ':') => (0.140, 0.320),
            _ => (0.0, 0.0),
        };
        for pause in [short, long] {
            assert!(least - 0.002 <= pause && pause <= most + 0.002, "{pause} after {:?}", a[0].2);
        }
        stretched += usize::from(long > short + 0.002);
    }
    assert!(stretched > 5, "only {stretched} pauses differ");
}

// Music

fn sine(frequency: f64, amplitude: f64, seconds: f64) -> Vec<f32> {
    let wave = |index: usize| (std::f64::consts::TAU * frequency * index as f64 / 48_000.0).sin() * amplitude;
    (0..(seconds * 48_000.0) as usize).map(|index| wave(index) as f32).collect()
}

/// The amplitude of a frequency, by correlation over whole periods.
fn amplitude(samples: &[f32], frequency: f64) -> f64 {
    let period = (48_000.0 / frequency).round() as usize;
    let samples = &samples[..samples.len() / period * period];
    let (mut re, mut im) = (0.0, 0.0);
    for (index, sample) in samples.iter().enumerate() {
        let angle = std::f64::consts::TAU * frequency * index as f64 / 48_000.0;
        re += f64::from(*sample) * angle.cos();
        im += f64::from(*sample) * angle.sin();
    }
    2.0 * (re * re + im * im).sqrt() / samples.len() as f64
}

/// A voice of 1000 Hz from second 2 to second 12 of 15, at -23 LUFS.
fn voice() -> Spoken {
    let mut samples = vec![0f32; 15 * 48_000];
    let tone = sine(1_000.0, 0.1, 10.0);
    samples[2 * 48_000..12 * 48_000].copy_from_slice(&tone);
    let line = Timed {
        from: Frames(2 * 48_000),
        to: Frames(12 * 48_000),
        words: "tone".to_owned(),
        clip: String::new(),
        pause: Some(Pause::Statement),
    };
    let info = Bank::load(&Embedded, "en", "stand-in").unwrap().voice().clone();
    let loudness = Loudness { integrated_lufs: -23.0, true_peak_dbtp: -20.0, ..Loudness::default() };
    Spoken { samples, lines: vec![line], loudness, limited: false, voice: info }
}

/// A sine of `frequency` that measures -23 LUFS as one channel.
fn at_level(frequency: f64, seconds: f64) -> Vec<f32> {
    let loud = measure(&sine(frequency, 0.1, 10.0)).unwrap().integrated_lufs;
    sine(frequency, 0.1 * 10f64.powf((-23.0 - loud) / 20.0), seconds)
}

/// 200 Hz and 1000 Hz stand for bed and voice: they can be told apart in the mix by correlation, without our meter.
#[test]
fn the_bed_lies_as_far_below_the_voice_as_is_said() {
    for below in [12.0, 18.0, 20.0, 30.0] {
        // The bed is shorter than the voice, so that it comes again.
        let music = Music { bed: Some(at_level(200.0, 6.0)), ..Music::default() };
        let options = MixOptions { bed_below: below, ..MixOptions::default() };
        let mixed = mix(voice(), &music, &options).unwrap();
        let at =
            |from: f64, to: f64| &mixed.spoken.samples[(from * 48_000.0) as usize..(to * 48_000.0) as usize];
        let bed_alone = amplitude(&at_level(200.0, 1.0), 200.0);
        let voice_alone = amplitude(&voice().samples[3 * 48_000..4 * 48_000], 1_000.0);
        // The whole may be raised or lowered; voice and bed together.
        let gain = amplitude(at(3.0, 4.0), 1_000.0) / voice_alone;
        let db = |from, to| 20.0 * (amplitude(at(from, to), 200.0) / gain / bed_alone).log10();
        for (from, to) in [(2.0, 2.5), (3.0, 4.0), (8.0, 9.0), (11.5, 12.0)] {
            let measured = db(from, to);
            assert!((measured + below).abs() < 0.5, "{below}: {measured} from {from} to {to}");
        }
        // Before and after the words it swells, and it is gone at the end.
        assert!((db(0.6, 1.1) + 6.0).abs() < 0.6 && (db(13.0, 13.5) + 6.0).abs() < 0.6, "{below}");
        assert!(db(14.95, 15.0) < -35.0);
        // No jump: neither at the seam of the loop nor where it sinks.
        let step = mixed.spoken.samples.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0f32, f32::max);
        let tone_step = sine(1_000.0, 0.1 * gain, 1.0)
            .windows(2)
            .map(|pair| (pair[1] - pair[0]).abs())
            .fold(0f32, f32::max);
        assert!(step < tone_step * 1.3, "{below}: {step} against {tone_step}");
        assert!((mixed.spoken.loudness.integrated_lufs + 23.0).abs() <= 0.2);
    }
}

#[test]
fn signatures_stand_before_and_after_and_count_in_the_length() {
    let folder = Project::new();
    let signature = |name: &str| repository().join("audio/signature").join(name);
    let (opening, closing, bed) =
        (signature("opening.flac"), signature("closing.flac"), signature("bed.flac"));
    let music =
        MusicFiles { opening: Some(&opening), closing: Some(&closing), bed: Some(&bed), bed_below: 20.0 };
    let length = segment("sw", "zone.toml", "2027-05-12", 120.0, music, folder.folder()).unwrap();
    assert_eq!(length, 120.0);
    let cues = cues(folder.folder());
    assert_eq!((cues[0].0, cues[0].1), (0.0, 4.0), "{:?}", cues[0]);
    let last = cues.last().unwrap();
    assert_eq!((last.0, last.1), (117.0, 120.0), "{last:?}");
    let bed = cues.iter().find(|cue| cue.2.starts_with("Muziki")).unwrap();
    assert_eq!((bed.0, bed.1), (4.0, 117.0), "{bed:?}");
    // Measured in the file as written.
    let wave = fs::read_dir(folder.folder()).unwrap().map(|entry| entry.unwrap().path());
    let wave = wave.into_iter().find(|path| path.extension().is_some_and(|of| of == "wav")).unwrap();
    let samples = hound::WavReader::open(wave).unwrap().into_samples::<i16>();
    let samples: Vec<f32> = samples.map(|sample| f32::from(sample.unwrap()) / 32_768.0).collect();
    let loudness = measure(&samples).unwrap();
    assert!(
        (loudness.integrated_lufs + 23.0).abs() <= 0.2 && loudness.true_peak_dbtp <= -1.0,
        "{loudness:?}"
    );
}

// Wrong files, missing phrases

/// A segment into the folder `out` of a project.
fn kabla(project: &Project, arguments: &[&str]) -> Run {
    project.kabla(&[&["segment"], arguments, &["--out", "out"]].concat())
}

/// What standard error says of arguments that are refused with exit code 2; nothing is written then.
fn refused(arguments: &[&str]) -> String {
    let project = Project::new();
    let refused = kabla(&project, arguments).ended(2);
    assert!(project.files().is_empty(), "{}", refused.err);
    refused.err
}

fn wave(channels: u16, samples: impl Iterator<Item = f32>) -> Vec<u8> {
    let spec = hound::WavSpec {
        channels,
        sample_rate: 48_000,
        bits_per_sample: 32,
        sample_format: hound::SampleFormat::Float,
    };
    let mut bytes = std::io::Cursor::new(Vec::new());
    let mut writer = hound::WavWriter::new(&mut bytes, spec).unwrap();
    samples.for_each(|sample| writer.write_sample(sample).unwrap());
    writer.finalize().unwrap();
    bytes.into_inner()
}

#[test]
fn hostile_sounds_are_all_reported_at_once() {
    let sounds = Project::new();
    let file = |name: &str, bytes: Vec<u8>| sounds.write(name, bytes);
    let tone = || sine(440.0, 0.2, 3.0).into_iter();
    let whole = wave(1, tone());
    let empty = file("empty.wav", Vec::new());
    let words = file("words.mp3", b"this is no sound".repeat(100));
    let cut = file("cut.wav", whole[..whole.len() / 2].to_vec());
    let silent = file("silent.wav", wave(1, std::iter::repeat_n(0.0, 96_000)));
    let nan = file("nan.wav", wave(1, tone().map(|sample| if sample > 0.19 { f32::NAN } else { sample })));
    let six = file("six.wav", wave(6, tone()));
    let short = file("short.wav", wave(1, tone().take(9_000)));
    let brief = file("brief.wav", wave(1, tone().take(60_000)));
    let long = file("long.wav", wave(1, sine(440.0, 0.2, 61.0).into_iter()));
    let absent = text(&sounds.path("absent.wav"));
    let zone = example("zone.toml");
    let at = [&zone, "--language", "en", "--week", "2027-05-12", "--fit", "2m"];
    for (trio, problems) in [
        ([&empty, &words, &cut], ["is empty", "cannot be decoded", "its end is missing"]),
        ([&silent, &nan, &six], ["is silent", "no numbers", "6 channels"]),
        ([&short, &long, &brief], ["is 0.19 s long", "longer than 60 seconds", "at least 2 s"]),
        ([&absent, &short, &empty], ["cannot be read", "at least 0.4 s", "is empty"]),
    ] {
        let [opening, closing, bed] = trio.map(String::as_str);
        let arguments = [&at[..], &["--opening", opening, "--closing", closing, "--music", bed]].concat();
        let report = refused(&arguments);
        assert_eq!(report.matches("error: ").count(), 3, "{report}");
        for (path, problem) in trio.iter().zip(problems) {
            assert!(report.contains(problem) && report.contains(path.as_str()), "{problem}: {report}");
        }
        assert!(
            ["--opening", "--closing", "--music"].iter().all(|option| report.contains(option)),
            "{report}"
        );
    }
    // A broken case and a broken sound come together.
    let case = file("case.toml", b"kind = \"zone\"\n".to_vec());
    let report = refused(&[&case, "--week", "2027-05-12", "--fit", "2m", "--opening", &empty]);
    assert!(report.contains("case.toml") && report.contains("empty.wav"), "{report}");
}

#[test]
fn without_a_voice_there_is_a_script_to_read_and_no_sound() {
    let zone = example("zone.toml");
    let at = [&zone, "--week", "2027-05-12", "--fit", "3m", "--language"];
    for tag in ["ha", "ny"] {
        let project = Project::new();
        let run = kabla(&project, &[&at[..], &[tag]].concat()).ended(3);
        assert!(run.err.contains("no sound was written"), "{}", run.err);
        assert!(run.err.matches("\" (final)").count() > 10, "{}", run.err);
        assert!(run.out.contains("no sound was made; read aloud it takes about"), "{}", run.out);
        let made = ["pdf", "txt"].map(|ending| format!("{tag}-segment-2027-05-10.{ending}"));
        assert_eq!(project.files_in("out"), made);
        let script = || project.read(&format!("out/{tag}-segment-2027-05-10.txt"));
        let pack = Pack::load(&Embedded, tag).unwrap();
        let no_voice = pack.label(Label::SegmentNoVoice, &[]).unwrap();
        assert!(script().contains(&no_voice), "{}", script());
        // Said for live reading on purpose, it is no failure.
        kabla(&project, &[&at[..], &[tag, "--live"]].concat()).done();
        assert!(!script().contains(&no_voice) && script().contains(" // "), "{}", script());
    }
}

/// A bank that lacks one phrase of the week: the phrase is named on screen and in the script, and there is no sound.
#[test]
fn a_missing_phrase_is_named_and_never_becomes_silence() {
    let project = Project::new();
    project.copy_to("audio/en/stand-in", "data/audio/en/stand-in");
    let bank = project.read("data/audio/en/stand-in/bank.toml");
    let (head, clips) = bank.split_once("[[clip]]").unwrap();
    let kept = clips
        .split("[[clip]]")
        .filter(|clip| !clip.contains("\"Push a stick into the soil beside each one\""));
    let kept = kept.collect::<Vec<_>>().join("[[clip]]");
    project.write("data/audio/en/stand-in/bank.toml", format!("{head}[[clip]]{kept}"));
    let zone = example("zone.toml");
    let at = [&zone, "--language", "en", "--week", "2027-05-12", "--fit", "2m", "--data", "data"];
    let error = kabla(&project, &at).ended(3).err;
    assert!(error.contains("\"Push a stick into the soil beside each one.\""), "{error}");
    assert_eq!(error.matches("(final)").count() + error.matches("(medial)").count(), 1, "{error}");
    assert!(!project.has("out/en-segment-2027-05-10.wav"));
    let script = project.read("out/en-segment-2027-05-10.txt");
    assert!(
        script.contains("PHRASES WITHOUT A RECORDING\n\n- Push a stick into the soil beside each one.\n"),
        "{script}"
    );
}

#[test]
fn reading_time_follows_syllables_and_pauses() {
    let pack = Pack::load(&Embedded, "sw").unwrap();
    let (_, case) = examples().remove(2);
    let statements = tell(&case, &make(&case).unwrap());
    let pieces = pack.say(&statements[0]).unwrap();
    // Every Swahili syllable ends with a vowel, so that vowels that touch none count them, but for pairs of vowels.
    let text: String = pieces
        .iter()
        .filter_map(|piece| match piece {
            Piece::Words(words) => Some(format!("{} ", words.text.to_lowercase())),
            Piece::Pause(_) => None,
        })
        .collect();
    let groups = text.split(|c: char| !"aeiou".contains(c)).filter(|group| !group.is_empty()).count();
    let slow = estimate(&pieces, 2.0);
    let fast = estimate(&pieces, 4.0);
    assert!(slow.speech.0.abs_diff(fast.speech.0 * 2) <= 2);
    // Three of a hundred: pairs of vowels are rarer or more often by the text.
    let syllables = fast.speech.seconds() * 4.0;
    assert!((syllables - groups as f64).abs() <= 0.03 * groups as f64, "{syllables} {groups}");
    let sentences = pieces.iter().filter(|piece| **piece == Piece::Pause(Pause::Sentence)).count() as u64;
    assert_eq!((fast.sentences, fast.statements), (sentences, 1));
}

// The season

#[test]
fn the_season_has_every_week_from_the_first_preparation_to_the_planting() {
    let project = Project::new();
    let zone = example("zone.toml");
    let plan = app::plan(Path::new(&zone), Overrides::default()).unwrap();
    for tag in Pack::tags(&Embedded) {
        kabla(&project, &[&zone, "--season", "--language", &tag]).done();
        let mut table = csv::Reader::from_path(project.path(&format!("out/{tag}-segments.csv"))).unwrap();
        assert_eq!(table.headers().unwrap(), vec!["from", "to", "segment", "when", "topic", "title"]);
        let mut weeks: BTreeMap<NaiveDate, Vec<(String, String)>> = BTreeMap::new();
        for row in table.records() {
            let row = row.unwrap();
            assert_eq!(day(&row[1]) - day(&row[0]), chrono::TimeDelta::days(6));
            assert_eq!(row[2].is_empty(), &row[3] == "nothing");
            assert!(!row[5].is_empty());
            weeks.entry(day(&row[0])).or_default().push((row[3].to_owned(), row[4].to_owned()));
        }
        // Of the plan's own steps, not of our guidance: each week that a step touches tells it as due.
        let steps = || plan.now.steps.iter().filter(|step| step.kind.name() != "first-harvest");
        let mut week = week_of(steps().map(|step| step.when.from).min().unwrap());
        let end = steps().map(|step| step.when.to).max().unwrap();
        let mut count = 0;
        while week.from <= end {
            let told = weeks.get(&week.from).unwrap_or_else(|| panic!("{tag}: no {week:?}"));
            for step in steps() {
                let touches = step.when.from <= week.to && step.when.to >= week.from;
                let due = told.contains(&("due".to_owned(), step.kind.name().to_owned()));
                let other = steps()
                    .any(|of| of.kind == step.kind && of.when.from <= week.to && of.when.to >= week.from);
                assert_eq!(due, touches || other, "{tag} {week:?} {}", step.kind.name());
            }
            count += 1;
            week = week_of(week.to + chrono::Days::new(1));
        }
        assert_eq!(weeks.len(), count, "{tag}");
    }
}

#[test]
fn scripts_and_plans_have_no_english_of_their_own() {
    let project = Project::new();
    let zone = example("zone.toml");
    let at = [&zone, "--language", "en-XA"];
    kabla(&project, &[&at[..], &["--live", "--week", "2027-06-10", "--fit", "2m"]].concat()).done();
    kabla(&project, &[&at[..], &["--season"]].concat()).done();
    let plain = |text: &str| {
        let text = text.replace("Eastern lowlands", "");
        let words = text.split(|c: char| !c.is_alphabetic()).filter(|word| word.len() > 1);
        words
            .filter(|word| word.chars().all(|c| c.is_ascii_alphabetic()))
            .map(str::to_owned)
            .collect::<Vec<_>>()
    };
    let script = project.read("out/en-XA-segment-2027-06-07.txt");
    // What is said stands indented; spoken text is not accented.
    let labels: String =
        script.lines().filter(|line| !line.starts_with("   ")).map(|line| format!("{line}\n")).collect();
    assert!(labels.lines().count() > 20);
    assert_eq!(plain(&labels), [""; 0], "{labels}");
    let mut table = csv::Reader::from_path(project.path("out/en-XA-segments.csv")).unwrap();
    let titles: Vec<String> = table.records().map(|row| row.unwrap()[5].to_owned()).collect();
    assert!(titles.len() > 20, "{titles:?}");
    assert_eq!(titles.iter().flat_map(|title| plain(title)).collect::<Vec<_>>(), [""; 0]);
    let calendar = project.read("out/en-XA-segments.ics").replace("\r\n ", "");
    let worded: Vec<&str> = worded_lines(&calendar).collect();
    assert!(worded.len() > 20, "{worded:?}");
    for line in worded {
        assert_eq!(plain(&line.split_once(':').unwrap().1.replace("\\n", " ")), [""; 0]);
    }
}
