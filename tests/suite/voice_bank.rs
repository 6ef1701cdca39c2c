//! Banks read and clips decoded.
use kabla::data::Data;
use kabla::voice::Bank;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::f64::consts::TAU;

/// Files in memory.
#[derive(Default)]
pub(super) struct Files(BTreeMap<String, Vec<u8>>);

impl Files {
    pub(super) fn with(mut self, path: &str, bytes: impl Into<Vec<u8>>) -> Self {
        self.0.insert(path.to_owned(), bytes.into());
        self
    }
}

impl Data for Files {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        self.0.get(path).map(|bytes| Cow::Borrowed(bytes.as_slice()))
    }
    fn list(&self, folder: &str) -> Vec<String> {
        let prefix = format!("{folder}/");
        let names =
            self.0.keys().filter_map(|path| path.strip_prefix(&prefix)?.split('/').next().map(str::to_owned));
        names.collect::<std::collections::BTreeSet<_>>().into_iter().collect()
    }
}

pub(super) const HEADER: &str = "language = \"en\"\nvoice = \"v\"\nstatus = \"stand-in\"\nspeaker = \"a tone\"\nrights = \"none\"\nmade_by = \"a test\"\n";

pub(super) fn bank_of(clips: &[(&str, &str)], bytes: impl Fn(usize) -> Vec<u8>) -> Files {
    let mut text = HEADER.to_owned();
    let mut files = Files::default();
    for (index, (words, intonation)) in clips.iter().enumerate() {
        text += &format!(
            "[[clip]]\nfile = \"{index}.wav\"\nwords = \"{words}\"\nintonation = \"{intonation}\"\n"
        );
        files = files.with(&format!("audio/en/v/{index}.wav"), bytes(index));
    }
    files.with("audio/en/v/bank.toml", text)
}

pub(super) fn wav_of(rate: u32, channels: u16, samples: impl Iterator<Item = f32>) -> Vec<u8> {
    let spec = hound::WavSpec {
        channels,
        sample_rate: rate,
        bits_per_sample: 32,
        sample_format: hound::SampleFormat::Float,
    };
    let mut file = std::io::Cursor::new(Vec::new());
    let mut writer = hound::WavWriter::new(&mut file, spec).unwrap();
    samples.for_each(|sample| writer.write_sample(sample).unwrap());
    writer.finalize().unwrap();
    file.into_inner()
}

pub(super) fn sine(rate: u32, hz: f64, peak: f64, seconds: f64) -> impl Iterator<Item = f32> {
    (0..(f64::from(rate) * seconds) as usize)
        .map(move |n| (peak * (std::f64::consts::TAU * hz * n as f64 / f64::from(rate)).sin()) as f32)
}

/// Peak of one frequency in the middle of a sound.
fn tone(samples: &[f32], hz: f64) -> f64 {
    let middle = &samples[12_000..36_000];
    let (mut re, mut im) = (0.0, 0.0);
    for (n, sample) in middle.iter().enumerate() {
        let window = 1.0 - (TAU * n as f64 / 24_000.0).cos();
        let (sin, cos) = (TAU * hz * n as f64 / 48_000.0).sin_cos();
        re += f64::from(*sample) * window * cos;
        im += f64::from(*sample) * window * sin;
    }
    2.0 * re.hypot(im) / 24_000.0
}

#[test]
fn tones_keep_level_and_frequency_and_have_no_images() {
    for rate in [8_000, 16_000, 22_050, 24_000, 44_100, 96_000] {
        let files = bank_of(&[("a", "final")], |_| wav_of(rate, 1, sine(rate, 1000.0, 0.5, 1.0)));
        let bank = Bank::load(&files, "en", "v").unwrap();
        let sound = bank.sound(0).unwrap();
        assert!(sound.len().abs_diff(48_000) <= 1, "{rate}: {}", sound.len());
        assert!((20.0 * (tone(&sound, 1000.0) / 0.5).log10()).abs() < 0.01, "{rate}");
        let image = f64::from(rate) - 1000.0;
        if image < 24_000.0 {
            let db = 20.0 * (tone(&sound, image) / 0.5).log10();
            assert!(db < -80.0, "{rate}: image at {db}");
        }
    }
}

#[test]
fn near_the_edge_of_the_band_no_image_passes() {
    let files = bank_of(&[("a", "final")], |_| wav_of(16_000, 1, sine(16_000, 7_900.0, 0.5, 1.0)));
    let bank = Bank::load(&files, "en", "v").unwrap();
    let sound = bank.sound(0).unwrap();
    let image = 20.0 * (tone(&sound, 8_100.0) / 0.5).log10();
    assert!(image < -80.0);
}

#[test]
fn stereo_is_averaged() {
    let files = bank_of(&[("a", "final")], |_| {
        wav_of(48_000, 2, sine(48_000, 1000.0, 0.5, 1.0).flat_map(|s| [s, 0.0]))
    });
    let bank = Bank::load(&files, "en", "v").unwrap();
    assert!((tone(&bank.sound(0).unwrap(), 1000.0) - 0.25).abs() < 1e-4);
}

#[test]
fn broken_clips_are_told_not_panicked_at() {
    let whole = wav_of(16_000, 1, sine(16_000, 500.0, 0.5, 0.5));
    let cases: Vec<(Vec<u8>, &str)> = vec![
        (vec![], "is empty"),
        (b"not a sound at all".to_vec(), "cannot be decoded"),
        (whole[..whole.len() / 2].to_vec(), "cannot be decoded"),
        (wav_of(16_000, 1, std::iter::repeat_n(f32::NAN, 800)), "no numbers"),
        (wav_of(16_000, 1, std::iter::repeat_n(1e30, 800)), "beyond full scale"),
        (wav_of(16_000, 1, std::iter::repeat_n(0.0, 800)), "is silent"),
        (wav_of(16_000, 1, std::iter::empty()), "is empty"),
        (wav_of(4_000, 1, sine(4_000, 500.0, 0.5, 0.5)), "4000 samples a second"),
        (wav_of(16_000, 3, sine(16_000, 500.0, 0.5, 0.6)), "3 channels"),
        (wav_of(8_000, 1, sine(8_000, 500.0, 0.5, 61.0)), "longer than 60"),
    ];
    for (bytes, message) in cases {
        let files = bank_of(&[("a", "final")], |_| bytes.clone());
        let bank = Bank::load(&files, "en", "v").unwrap();
        let finding = bank.sound(0).unwrap_err();
        assert!(finding.message.contains(message), "{finding} instead of {message}");
        assert!(!finding.hint.is_empty());
    }
}

#[test]
fn all_problems_of_a_bank_come_together() {
    let text = HEADER.replace("rights = \"none\"\n", "")
        + r#"
[[clip]]
file = "a.wav"
words = "one"
intonation = "rising"
[[clip]]
file = "../a.wav"
words = "two"
intonation = "final"
[[clip]]
file = "b.wav"
words = "three."
intonation = "final"
loud = true
[[clip]]
file = "a.wav"
words = "Three"
intonation = "final"
"#;
    let files = Files::default().with("audio/en/v/a.wav", "").with("audio/en/v/bank.toml", text);
    let findings = Bank::load(&files, "en", "v").unwrap_err();
    let found: Vec<_> =
        findings.iter().map(|f| (f.place.line.unwrap(), f.place.field.clone().unwrap())).collect();
    for wanted in [
        (1, "rights"),
        (10, "clip[1].intonation"),
        (12, "clip[2].file"),
        (16, "clip[3].file"),
        (19, "clip[3].loud"),
        (21, "clip[4].file"),
        (22, "clip[4].words"),
    ] {
        assert!(found.contains(&(wanted.0, wanted.1.to_owned())), "{wanted:?} is not in {found:?}");
    }
    assert_eq!(found.len(), 7, "{findings:#?}");
}
