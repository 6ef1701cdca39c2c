//! Files of a message.
use super::voice_bank::sine;
use kabla::language::Pause;
use kabla::voice::level::measure;
use kabla::voice::write::{CueLabels, CueOptions, VttOptions, WavOptions, cue_sheet, wav, webvtt};
use kabla::voice::{Frames, Loudness, Spoken, Status, Timed, VoiceInfo};

fn spoken(samples: Vec<f32>, words: &[(&str, u64, u64)]) -> Spoken {
    let lines = words.iter().map(|(words, from, to)| Timed {
        from: Frames::from_millis(*from),
        to: Frames::from_millis(*to),
        words: (*words).to_owned(),
        clip: "a.flac".to_owned(),
        pause: Some(Pause::Sentence),
    });
    let info = VoiceInfo {
        language: "en".into(),
        voice: "v".into(),
        status: Status::StandIn,
        speaker: "s".into(),
        rights: "r".into(),
        made_by: "m".into(),
        consent: None,
        room_tone: None,
        note: None,
    };
    Spoken {
        lines: lines.collect(),
        samples,
        loudness: Loudness { integrated_lufs: -23.0, true_peak_dbtp: -1.1, ..Loudness::default() },
        limited: false,
        voice: info,
    }
}

#[test]
fn sixteen_bits_stay_under_the_ceiling() {
    let peak = 10f64.powf(-1.02 / 20.0);
    let samples: Vec<f32> = sine(48_000, 997.0, peak, 2.0).collect();
    let bytes = wav(&samples, &WavOptions::default()).unwrap();
    let mut reader = hound::WavReader::new(std::io::Cursor::new(bytes)).unwrap();
    assert_eq!(
        (reader.spec().sample_rate, reader.spec().channels, reader.spec().bits_per_sample),
        (48_000, 1, 16)
    );
    let back: Vec<f32> = reader.samples::<i16>().map(|s| f32::from(s.unwrap()) / 32_768.0).collect();
    assert!(measure(&back).unwrap().true_peak_dbtp <= -1.0);
    assert!(samples.iter().zip(&back).all(|(a, b)| (a - b).abs() <= 1.5 / 32_768.0));
}

#[test]
fn captions_escape_and_break() {
    let long =
        "Take coarse, clean sand and dry it under cover and let it cool before you lay the roots in it";
    let text = webvtt(
        &spoken(vec![], &[("a < b & c --> d", 250, 1250), (long, 2000, 6000)]),
        &VttOptions { stand_in_remark: "A machine --> speaks".into(), ..VttOptions::default() },
    );
    assert!(text.starts_with("WEBVTT\n\nNOTE A machine --&gt; speaks\n\n00:00:00.250 --> 00:00:01.250\na &lt; b &amp; c --&gt; d\n\n00:00:02.000 --> "), "{text}");
    assert!(text.ends_with('\n') && text.contains("--> 00:00:06.000\n"));
    for block in text.trim_end().split("\n\n").skip(2) {
        let lines: Vec<_> = block.lines().skip(1).collect();
        assert!(
            (1..=2).contains(&lines.len()) && lines.iter().all(|line| line.len() <= 42 || line.contains('&')),
            "{block}"
        );
    }
    let said: Vec<_> =
        text.trim_end().split("\n\n").skip(3).flat_map(|block| block.lines().skip(1)).collect();
    assert_eq!(said.join(" "), long);
}

#[test]
fn the_cue_sheet_adds_up_to_the_length() {
    use super::voice_bank::bank_of;
    use kabla::language::{Intonation, Piece, Role, Words};
    use kabla::voice::{Bank, JoinOptions, SpeakOptions, speak};
    let files = bank_of(&[("one", "medial"), ("two", "final"), ("three", "final")], |n| {
        super::voice_bank::wav_of(48_000, 1, sine(48_000, 400.0, 0.3, 0.5 + 0.1 * n as f64))
    });
    let bank = Bank::load(&files, "en", "v").unwrap();
    let words =
        |text: &str, intonation| Piece::Words(Words { text: text.into(), role: Role::Phrase, intonation });
    let message = [
        words("One", Intonation::Medial),
        words("two.", Intonation::Final),
        Piece::Pause(Pause::Sentence),
        words("Three.", Intonation::Final),
        Piece::Pause(Pause::Statement),
    ];
    let spoken = speak(&message, &bank, &SpeakOptions::default()).unwrap();
    let label = |text: &str| text.to_owned();
    let labels = CueLabels {
        title: label("Kichwa"),
        language: label("Lugha"),
        voice: label("Sauti"),
        rights: label("Haki"),
        status: label("Hali"),
        status_stand_in: label("ya muda"),
        status_draft: label("rasimu"),
        status_approved: label("imekubaliwa"),
        stand_in_remark: label("Sauti ya mashine."),
        length: label("Muda"),
        loudness: label("Ukubwa"),
        true_peak: label("Kilele"),
        active_level: label("Maneno"),
        from: label("Kuanzia"),
        to: label("Hadi"),
        words: label("Maneno"),
        clip: label("Faili"),
    };
    let sheet = cue_sheet(
        &spoken,
        &CueOptions {
            title: "A\nB".into(),
            language: "English".into(),
            labels,
            active_dbov: None,
            marks: vec![],
        },
    );
    assert!(sheet.starts_with("Kichwa: A B\nLugha: English (en)\n"), "{sheet}");
    assert!(
        sheet.contains("Hali: ya muda\nSauti ya mashine.\n") && sheet.contains("Ukubwa: -23.0 LUFS"),
        "{sheet}"
    );
    let seconds = |text: &str| {
        let (minutes, seconds) = text.split_once(':').unwrap();
        minutes.parse::<f64>().unwrap() * 60.0 + seconds.parse::<f64>().unwrap()
    };
    let length = seconds(sheet.lines().find_map(|line| line.strip_prefix("Muda: ")).unwrap());
    let rows: Vec<Vec<&str>> = sheet
        .lines()
        .skip_while(|line| !line.starts_with("Kuanzia"))
        .skip(1)
        .map(|line| line.split_whitespace().collect())
        .collect();
    assert_eq!(
        rows.iter().map(|row| (row[2], row[3])).collect::<Vec<_>>(),
        [("One", "0.wav"), ("two.", "1.wav"), ("Three.", "2.wav")]
    );
    let said: f64 = rows.iter().map(|row| seconds(row[1]) - seconds(row[0])).sum();
    // 0.5, 0.6 and 0.7 s of tone, of which two clips share 5 to 20 ms.
    assert!((1.8 - 0.0215..=1.8 - 0.0035).contains(&said), "{said}");
    let JoinOptions { lead, sentence, tail, .. } = JoinOptions::default();
    let silent = (lead + sentence + tail).seconds();
    assert!((said + silent - length).abs() < 0.001, "{said} {silent} {length}");
    assert!((length - spoken.samples.len() as f64 / 48_000.0).abs() <= 0.000_501);
}
