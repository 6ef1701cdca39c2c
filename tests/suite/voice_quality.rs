//! Clips measured and repaired. The truth is known by construction: a voice of
//! tones in bursts, with faults of known size put in; levels and responses
//! come from numpy and scipy.

use std::f64::consts::TAU;

use kabla::data::{Data, Embedded};
use kabla::language::{Intonation, Pack, Phrase, Role};
use kabla::voice::record::picture::{COLUMNS, ROWS, spectrogram, waveform};
use kabla::voice::record::quality::{Fault, Measures, Norms, Verdict, judge, letters, measure, read};
use kabla::voice::record::words::{Use, uses};
use kabla::voice::repair::{Needs, repair};
use kabla::voice::{Bank, Clip};

use crate::expected::rows;
use crate::project::{Project, Run};

const RATE: u32 = 48_000;

fn db(power: f64) -> f64 {
    10.0 * power.log10()
}

fn power(samples: &[f32]) -> f64 {
    samples.iter().map(|sample| f64::from(*sample).powi(2)).sum::<f64>() / samples.len() as f64
}

/// Noise as `tests/expected/noise-levels/remake.py` makes it.
fn noise(seed: u32, gain: f64) -> impl Iterator<Item = f64> {
    let mut state = seed;
    std::iter::repeat_with(move || {
        state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        gain * (f64::from(state) / 2f64.powi(31) - 1.0)
    })
}

/// Four bursts of a voice at 130 Hz with eight harmonics, 200 ms each, 100 ms
/// apart, and a third of a second of silence at both ends: the sound and the power of a burst.
fn voice(peak: f64) -> (Vec<f32>, f64) {
    let lead = 16_000;
    let mut samples = vec![0f32; 2 * lead + 4 * 14_400 - 4_800];
    let burst: Vec<f32> = (0..9_600)
        .map(|n| {
            let time = f64::from(n) / f64::from(RATE);
            let tones: f64 = (1..=8).map(|k| (TAU * 130.0 * f64::from(k) * time).sin() / f64::from(k)).sum();
            // 5 ms of rise and fall: no click, and hardly any power lost.
            let edge = f64::from(n.min(9_599 - n)) / 240.0;
            (peak / 2.0 * tones * edge.min(1.0)) as f32
        })
        .collect();
    for start in (0..4).map(|burst| lead + burst * 14_400) {
        samples[start..start + burst.len()].copy_from_slice(&burst);
    }
    (samples, power(&burst))
}

fn add(samples: &mut [f32], other: impl Iterator<Item = f64>) {
    samples.iter_mut().zip(other).for_each(|(sample, other)| *sample += other as f32);
}

fn hum(hz: f64, peak: f64) -> impl Iterator<Item = f64> {
    (0..).map(move |n| peak * (TAU * hz * f64::from(n) / f64::from(RATE) + 0.7).sin())
}

/// What is usual where nothing is known of other clips.
fn alone() -> Norms {
    Norms { level_dbfs: None, pace: None }
}

fn faults(measures: &Measures) -> Vec<(Fault, Verdict)> {
    judge(measures, 10, &alone()).iter().map(|found| (found.fault, found.verdict)).collect()
}

#[test]
fn a_clean_voice_has_no_faults() {
    let (mut samples, level) = voice(0.5);
    add(&mut samples, noise(7, 0.0003));
    let measures = measure(RATE, &samples);
    assert_eq!(faults(&measures), []);
    assert!((measures.level_dbfs - db(level)).abs() < 0.5, "{} {}", measures.level_dbfs, db(level));
    assert!((measures.speech_seconds - 1.1).abs() < 0.05, "{}", measures.speech_seconds);
    assert!((measures.seconds - samples.len() as f64 / 48_000.0).abs() < 1e-9);
}

#[test]
fn levels_are_those_of_numpy() {
    for row in rows("noise-levels", "cases.csv") {
        let [seed, gain, expected] =
            ["seed", "gain", "rms_dbfs"].map(|name| row[name].parse::<f64>().unwrap());
        let whole: Vec<f32> = noise(seed as u32, gain).take(24_000).map(|sample| sample as f32).collect();
        let level = measure(RATE, &whole).level_dbfs;
        assert!((level - expected).abs() < 0.05, "{level} instead of {expected}");
        if gain < 0.1 {
            let (mut samples, _) = voice(0.9);
            add(&mut samples, noise(seed as u32, gain));
            let measured = measure(RATE, &samples).noise_dbfs.unwrap();
            assert!((measured - expected).abs() < 1.0, "noise at {measured} instead of {expected}");
        }
    }
}

#[test]
fn speech_to_noise_is_met_within_two_db() {
    // None within the tolerance of a limit, 15 dB or 28 dB: there either verdict would do.
    for wanted in [8.0, 12.0, 20.0, 25.0, 31.0, 40.0, 50.0] {
        let (mut samples, level) = voice(0.5);
        let gain = (level * 3.0 * 10f64.powf(-wanted / 10.0)).sqrt();
        add(&mut samples, noise(11, gain));
        let measures = measure(RATE, &samples);
        let measured = measures.speech_to_noise_db().unwrap();
        assert!((measured - wanted).abs() < 2.0, "{measured} instead of {wanted}");
        let verdict = faults(&measures).into_iter().find(|(fault, _)| *fault == Fault::Noise);
        let expected = match wanted {
            ..15.0 => Some((Fault::Noise, Verdict::Again)),
            15.0..28.0 => Some((Fault::Noise, Verdict::Usable)),
            _ => None,
        };
        assert_eq!(verdict, expected, "at {wanted} dB");
    }
}

#[test]
fn noise_is_not_made_up_where_nobody_pauses() {
    let (samples, _) = voice(0.5);
    let burst = &samples[16_000..25_600];
    let with_edges: Vec<f32> = [&samples[15_000..16_000], burst, &samples[25_600..26_600]].concat();
    assert_eq!(measure(RATE, burst).speech_to_noise_db(), None);
    assert!(faults(&measure(RATE, &with_edges)).iter().all(|(fault, _)| *fault != Fault::Noise));
}

#[test]
fn hum_is_found_at_its_level_and_taken_out() {
    for (hz, mains) in [(50.0, 50.0), (60.0, 60.0), (49.8, 49.8), (100.0, 50.0), (120.0, 60.0)] {
        for level in [-30.0, -40.0, -50.0] {
            let (clean, _) = voice(0.5);
            let mut samples = clean.clone();
            add(&mut samples, noise(3, 0.0005));
            add(&mut samples, hum(hz, 10f64.powf(level / 20.0) * 2f64.sqrt()));
            let measures = measure(RATE, &samples);
            let found = measures.hum.clone().unwrap_or_else(|| panic!("no hum at {hz} Hz, {level} dBFS"));
            assert!((found.dbfs - level).abs() < 1.0, "{hz} Hz: {} instead of {level}", found.dbfs);
            assert!((found.mains_hz - mains).abs() < 0.15, "{} instead of {mains}", found.mains_hz);
            repair(&mut samples, &Needs { hum: Some(found), ..Needs::default() });
            let left: Vec<f32> = samples.iter().zip(&clean).map(|(now, was)| now - was).collect();
            let left = db(power(&left));
            assert!(left < level - 20.0 || left < -65.0, "{hz} Hz at {level} dBFS leaves {left}");
        }
    }
}

#[test]
fn what_does_not_hum_has_no_hum() {
    for seed in 1..=40 {
        let (mut samples, _) = voice(0.5);
        add(&mut samples, noise(seed, 0.02));
        assert_eq!(measure(RATE, &samples).hum, None, "seed {seed}");
    }
}

#[test]
fn an_offset_is_found_and_put_right() {
    for offset in [0.05, -0.02, 0.005] {
        let (clean, _) = voice(0.5);
        let mut samples = clean.clone();
        add(&mut samples, noise(5, 0.001).map(|sample| sample + offset));
        let measures = measure(RATE, &samples);
        assert!((measures.dc - offset).abs() < 0.0005, "{} instead of {offset}", measures.dc);
        let remarked = faults(&measures).contains(&(Fault::Offset, Verdict::Usable));
        assert_eq!(remarked, offset.abs() > 0.01, "{offset}");
        let needs = Needs::of(&measures);
        assert!(needs.high_pass);
        repair(&mut samples, &needs);
        assert_eq!(samples.len(), clean.len());
        assert!(measure(RATE, &samples).dc.abs() < 0.0005);
    }
}

#[test]
fn clipping_is_found_at_full_scale_and_below() {
    for gain in [1.5, 2.0, 4.0] {
        let (samples, _) = voice(0.5);
        let loudest = samples.iter().fold(0f32, |most, sample| most.max(sample.abs()));
        let loud: Vec<f32> = samples.iter().map(|sample| sample / loudest * gain).collect();
        let cut: Vec<f32> = loud.iter().map(|sample| sample.clamp(-1.0, 1.0)).collect();
        let truth = loud.iter().filter(|sample| sample.abs() >= 1.0).count() as f64 / loud.len() as f64;
        for later in [1.0, 0.3] {
            // As a file of 16 bits stores it.
            let stored: Vec<f32> =
                cut.iter().map(|sample| (sample * later * 32_767.0).round() / 32_768.0).collect();
            let measures = measure(RATE, &stored);
            let share = measures.clipped / truth;
            assert!((0.8..=1.1).contains(&share), "{gain}: {} instead of {truth}", measures.clipped);
            assert!(faults(&measures).contains(&(Fault::Clipped, Verdict::Again)), "{gain}");
        }
    }
    let (whole, _) = voice(0.9);
    assert_eq!(measure(RATE, &whole).clipped, 0.0);
}

#[test]
fn cut_edges_are_found() {
    let (mut samples, _) = voice(0.5);
    add(&mut samples, noise(9, 0.001));
    let edges = |samples: &[f32]| {
        let mut found = faults(&measure(RATE, samples));
        found.retain(|(fault, _)| matches!(fault, Fault::CutStart | Fault::CutEnd));
        found
    };
    let length = samples.len();
    assert_eq!(edges(&samples), []);
    assert_eq!(edges(&samples[15_000..length - 15_000]), [], "tight is not cut");
    assert_eq!(edges(&samples[18_000..]), [(Fault::CutStart, Verdict::Again)]);
    assert_eq!(edges(&samples[..length - 18_000]), [(Fault::CutEnd, Verdict::Again)]);
    let both = [(Fault::CutStart, Verdict::Again), (Fault::CutEnd, Verdict::Again)];
    assert_eq!(edges(&samples[18_000..length - 18_000]), both);
}

/// A decay of known length: noise that dies exponentially, 60 dB in so many seconds.
#[test]
fn a_rooms_decay_is_told_within_a_quarter() {
    for seconds in [0.3, 0.6, 1.2, 2.0] {
        let speech = noise(13, 0.5).take(24_000);
        let tail = noise(17, 0.5).take(96_000).enumerate();
        let tail = tail.map(|(n, sample)| sample * 10f64.powf(-3.0 * n as f64 / (48_000.0 * seconds)));
        let silence = std::iter::repeat_n(0.0, 4_800);
        let samples: Vec<f32> = silence.chain(speech).chain(tail).map(|sample| sample as f32).collect();
        let measured = measure(RATE, &samples).room_seconds.unwrap();
        assert!((measured / seconds - 1.0).abs() < 0.25, "{measured} instead of {seconds}");
    }
}

#[test]
fn level_and_pace_are_held_against_the_bank() {
    let measured = |peak| measure(RATE, &voice(peak).0);
    let usual: Vec<Measures> = (0..9).map(|_| measured(0.3)).collect();
    let norms = Norms::of(usual.iter().map(|measures| (measures, 20)));
    let judged = |measures: &Measures, letters| -> Vec<(Fault, Verdict, f64)> {
        let found = judge(measures, letters, &norms).into_iter();
        found.map(|found| (found.fault, found.verdict, (found.amount * 10.0).round() / 10.0)).collect()
    };
    assert_eq!(judged(&measured(0.3), 20), []);
    assert_eq!(judged(&measured(0.12), 20), [(Fault::Quiet, Verdict::Usable, -8.0)]);
    assert_eq!(judged(&measured(0.06), 20), [(Fault::Quiet, Verdict::Again, -14.0)]);
    assert_eq!(judged(&measured(0.75), 20), [(Fault::Loud, Verdict::Usable, 8.0)]);
    assert_eq!(judged(&measured(0.3), 50), [(Fault::Fast, Verdict::Again, 2.5)]);
    assert_eq!(judged(&measured(0.3), 10), [(Fault::Slow, Verdict::Usable, 2.0)]);
    assert_eq!(judged(&measured(0.3), 3), [], "a syllable has no pace");
    assert_eq!(letters("Chagua mimea 12, na…"), 15);
    let few = Norms::of(usual.iter().take(2).map(|measures| (measures, 20)));
    assert_eq!(few, alone(), "two clips have no median to speak of");
}

#[test]
fn the_high_pass_is_scipys() {
    for row in rows("high-pass", "cases.csv") {
        let [hz, expected] = ["hz", "db"].map(|name| row[name].parse::<f64>().unwrap());
        let tone: Vec<f32> =
            (0..96_000).map(|n| (0.5 * (TAU * hz * f64::from(n) / 48_000.0).sin()) as f32).collect();
        let mut passed = tone.clone();
        repair(&mut passed, &Needs { high_pass: true, ..Needs::default() });
        // A whole number of periods of every frequency of the table.
        let gain = db(power(&passed[48_000..]) / power(&tone[48_000..]));
        assert!((gain - expected).abs() < 0.05, "{hz} Hz: {gain} instead of {expected}");
    }
}

#[test]
fn a_clean_clip_is_not_touched() {
    let (mut samples, _) = voice(0.5);
    add(&mut samples, noise(7, 0.0003));
    let needs = Needs::of(&measure(RATE, &samples));
    assert_eq!(needs, Needs::default());
    let before = samples.clone();
    repair(&mut samples, &needs);
    assert_eq!(samples, before);
}

#[test]
fn rumble_asks_for_the_high_pass() {
    let (mut samples, _) = voice(0.5);
    add(&mut samples, hum(18.0, 0.05));
    let needs = Needs::of(&measure(RATE, &samples));
    assert!(needs.high_pass);
    repair(&mut samples, &needs);
    let left = measure(RATE, &samples).rumble_dbfs;
    assert!(left < -45.0, "rumble left at {left}");
}

#[cfg(feature = "denoise")]
#[test]
fn noise_is_taken_out_and_the_voice_stays_in_its_place() {
    let (clean, level) = voice(0.5);
    let mut samples = clean.clone();
    add(&mut samples, noise(21, (level * 3.0 * 0.01).sqrt()));
    let needs = Needs::of(&measure(RATE, &samples));
    assert!(needs.denoise);
    let before = db(power(&samples[2_400..14_400]));
    repair(&mut samples, &needs);
    assert_eq!(samples.len(), clean.len());
    let after = db(power(&samples[2_400..14_400]));
    assert!(after < before - 6.0, "noise from {before} to {after}");
    let alike = |shift: usize| -> f64 {
        samples[shift..].iter().zip(&clean).map(|(now, was)| f64::from(now * was)).sum()
    };
    let best = (0..960).max_by(|one, other| alike(*one).total_cmp(&alike(*other))).unwrap();
    assert!(best <= 24, "the voice lies {best} samples late");
}

fn clip(words: &str, id: &str) -> Clip {
    Clip {
        file: "a.wav".into(),
        words: words.into(),
        intonation: Intonation::Final,
        id: Some(id.into()),
        take: 1,
    }
}

#[test]
fn words_that_nobody_has_any_more_are_told() {
    let phrase = |words: &str, id: &str| Phrase {
        id: id.into(),
        words: words.into(),
        intonation: Intonation::Final,
        role: Role::Phrase,
    };
    let phrases = [
        phrase("Dig now", "harvest#1"),
        phrase("twenty", "n"),
        phrase("roots", "unit"),
        phrase("thirty", "n"),
        phrase("forty", "n"),
    ];
    let clips = [
        clip("dig now.", "harvest#1"),
        clip("twenty roots", "x"),
        clip("Dig at once", "harvest#1"),
        clip("twainty", "n"),
        clip("Sing", "song#1"),
    ];
    assert_eq!(uses(&clips, &phrases), [Use::Wanted, Use::Wanted, Use::Unused, Use::Unused, Use::Unused]);
    let replaced = Use::Replaced { now: "Dig now".into() };
    assert_eq!(uses(&clips[2..3], &phrases), [replaced]);
}

#[test]
fn pictures_show_time_and_frequency() {
    // A second of silence, then a tone at 2 kHz: a quarter of the way up.
    let samples: Vec<f32> = (0..96_000)
        .map(
            |n| if n < 48_000 { 0.0 } else { (0.5 * (TAU * 2_000.0 * f64::from(n) / 48_000.0).sin()) as f32 },
        )
        .collect();
    let png = spectrogram(RATE, &samples).unwrap();
    let mut reader = png::Decoder::new(std::io::Cursor::new(png)).read_info().unwrap();
    let mut pixels = vec![0; reader.output_buffer_size().unwrap()];
    let info = reader.next_frame(&mut pixels).unwrap();
    assert_eq!((info.width as usize, info.height as usize), (COLUMNS, ROWS));
    let shade = |column: usize, row: usize| {
        let pair = pixels[row * info.line_size + column / 2];
        if column.is_multiple_of(2) { pair >> 4 } else { pair & 15 }
    };
    let darkest = (0..ROWS).min_by_key(|row| shade(200, *row)).unwrap();
    assert!(darkest.abs_diff(ROWS - ROWS / 4) <= 1, "row {darkest}");
    assert_eq!(shade(200, darkest), 0);
    assert!((0..ROWS).all(|row| shade(40, row) == 15), "silence is white");
    let path = waveform(&samples);
    assert_eq!(path.matches('M').count(), COLUMNS);
    assert!(path.starts_with("M0 40.0v0.5M1 40.0v0.5") && path.contains("M239 20.0v40.0"), "{path}");
}

#[test]
fn the_stand_in_voices_raise_no_alarm() {
    for tag in ["en", "sw"] {
        let bank = Bank::load(&Embedded, tag, "stand-in").unwrap();
        let clips: Vec<(Measures, usize)> = bank
            .clips()
            .iter()
            .map(|clip| {
                let bytes = Embedded.read(&format!("audio/{tag}/stand-in/{}", clip.file)).unwrap();
                let (rate, samples) = read(&bytes).unwrap();
                (measure(rate, &samples), letters(&clip.words))
            })
            .collect();
        let norms = Norms::of(clips.iter().map(|(measures, letters)| (measures, *letters)));
        let found: Vec<_> =
            clips.iter().flat_map(|(measures, letters)| judge(measures, *letters, &norms)).collect();
        // Lone words are spoken faster by their script; those with many letters for their syllables show it.
        assert!(
            found.iter().all(|found| found.fault == Fault::Fast && found.verdict == Verdict::Usable),
            "{found:?}"
        );
        assert!(found.len() * 50 < clips.len(), "{found:?}");
        let phrases = Pack::load(&Embedded, tag).unwrap().phrases().unwrap();
        assert!(uses(bank.clips(), &phrases).iter().all(|used| *used == Use::Wanted));
    }
}

/// A data folder with a bank of the stand-in voice's first clips, some of them spoilt.
fn spoilt_bank() -> Project {
    let project = Project::new();
    let bank = Bank::load(&Embedded, "en", "stand-in").unwrap();
    let mut text = "language = \"en\"\nvoice = \"tried\"\nstatus = \"draft\"\nspeaker = \"<script>alert(1)</script>\"\nrights = \"none\"\nmade_by = \"a test\"\n".to_owned();
    for (index, clip) in bank.clips().iter().take(12).enumerate() {
        let bytes = Embedded.read(&format!("audio/en/stand-in/{}", clip.file)).unwrap();
        let (rate, samples) = read(&bytes).unwrap();
        let bytes = match index {
            0 => b"this is no sound".to_vec(),
            1 => crate::voice_bank::wav_of(rate, 1, samples.into_iter().skip(4_000)),
            _ => crate::voice_bank::wav_of(rate, 1, samples.into_iter()),
        };
        project.write(&format!("audio/en/tried/{index}.wav"), bytes);
        let intonation = if clip.intonation == Intonation::Final { "final" } else { "medial" };
        let words = if index == 2 { "Nobody says this" } else { &clip.words };
        text += &format!(
            "[[clip]]\nfile = \"{index}.wav\"\nwords = \"{words}\"\nintonation = \"{intonation}\"\n"
        );
    }
    project.write("audio/en/tried/bank.toml", text);
    project
}

fn check(project: &Project, arguments: &[&str]) -> Run {
    let check = ["clips", "check", "--language", "en", "--voice", "tried", "--data", "."];
    project.kabla(&[&check[..], arguments].concat())
}

#[test]
fn the_command_names_what_is_to_be_recorded_again() {
    let project = spoilt_bank();
    let told = check(&project, &["--out", "page.html"]).done().out;
    for wanted in
        ["the file cannot be read", "0.wav", "the beginning is cut off", "1.wav", "No longer needed"]
    {
        assert!(told.contains(wanted), "no {wanted} in {told}");
    }
    let html = project.read("page.html");
    assert!(!html.contains("<script"), "a speaker's name is text");
    assert!(html.contains("&lt;script&gt;"));
    assert!(html.contains("data:image/png;base64,iVBOR") && html.contains("data:audio/wav;base64,UklGR"));
    assert!(html.find("1.wav") < html.find("5.wav"), "the worst come first");
    assert!(html.contains("The first sound is cut off.") && html.contains("href=\"#again\""));
    let told = check(&project, &["--strict"]).ended(2).err;
    assert!(told.contains("audio/en/tried/0.wav") && told.contains("audio/en/tried/1.wav"), "{told}");
    assert!(told.contains("phrases have no clip") && !told.contains("5.wav"), "{told}");
    let json = check(&project, &["--json"]).json();
    let verdict = |file: &str| {
        let clips = json["clips"].as_array().unwrap();
        let clip = clips.iter().find(|clip| clip["file"].as_str().unwrap().ends_with(file)).unwrap();
        clip["verdict"].as_str().unwrap().to_owned()
    };
    assert_eq!(["/0.wav", "/1.wav", "/2.wav", "/5.wav"].map(verdict), ["again", "again", "unused", "good"]);
}
