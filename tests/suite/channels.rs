//! What each channel asks of the sound, and its files.

use std::f64::consts::TAU;
use std::io::Cursor;

use kabla::data::Embedded;
use kabla::guidance::{StepKind, Subject, chapter, for_step, tell};
use kabla::language::{Pack, Pause, Piece};
use kabla::plan::make;
use kabla::voice::active::active_level;
use kabla::voice::channel::{self, Section, meeting, narrow, phone, phone_clips, room_tone};
use kabla::voice::level::measure;
use kabla::voice::write::{
    BroadcastOptions, BroadcastWav, CaptionOptions, Law, OpusOptions, Stitch, StitchOptions, WavOptions,
    opus, playlist, subrip, telephone_pcm, telephone_wav, voicexml,
};
use kabla::voice::{Bank, Frames, SpeakOptions, Spoken, speak};

use super::expected::rows;
use super::voice_bank::sine;
use crate::examples;
use crate::project::{Project, Run, example};

/// Messages of one language: the example's name with the topic, and the sound.
pub(crate) fn messages(tag: &str, topics: &[StepKind]) -> Vec<(String, Spoken)> {
    beginnings(tag, topics, &[usize::MAX])
}

/// The same, of which each ends after as many sentences as `sentences` says in turn.
pub(crate) fn beginnings(tag: &str, topics: &[StepKind], sentences: &[usize]) -> Vec<(String, Spoken)> {
    let pack = Pack::load(&Embedded, tag).unwrap();
    let bank = Bank::load(&Embedded, tag, pack.voice()).unwrap();
    let mut made = Vec::new();
    let mut lengths = sentences.iter().cycle();
    for (name, case) in examples() {
        let statements = tell(&case, &make(&case).unwrap());
        for topic in topics {
            let chosen = for_step(&statements, *topic);
            let pieces: Vec<Piece> = chosen.iter().flat_map(|of| pack.say(of).unwrap()).collect();
            if !pieces.is_empty() {
                let most = *lengths.next().unwrap();
                let pieces: Vec<Piece> = pieces
                    .split_inclusive(|piece| {
                        matches!(piece, Piece::Pause(Pause::Sentence | Pause::Statement))
                    })
                    .take(most)
                    .flatten()
                    .cloned()
                    .collect();
                let spoken = speak(&pieces, &bank, &SpeakOptions::default()).unwrap();
                made.push((format!("{tag}-{name}-{}", topic.name()), spoken));
            }
        }
    }
    made
}

const SOME: [StepKind; 3] = [StepKind::FillContainer, StepKind::MonthlyCheck, StepKind::PlantField];

#[test]
fn active_levels_are_those_of_an_independent_implementation() {
    let mut cases = 0;
    for row in rows("active-speech-level", "cases.csv") {
        let mut samples: Vec<f32> = Vec::new();
        for step in row["steps"].split(' ') {
            let (level, seconds) = step.split_once('@').unwrap();
            let peak = if level == "-" { 0.0 } else { 10f64.powf(level.parse::<f64>().unwrap() / 20.0) };
            let from = samples.len();
            let length = (seconds.parse::<f64>().unwrap() * 8000.0).round() as usize;
            samples.extend((from..from + length).map(|n| {
                let swing = 0.55 - 0.45 * (TAU * 4.0 * n as f64 / 8000.0).cos();
                (peak * swing * (TAU * 300.0 * n as f64 / 8000.0).sin()) as f32
            }));
        }
        let level = active_level(&samples, 8000).unwrap();
        let wanted: f64 = row["dbov"].parse().unwrap();
        assert!((level.dbov - wanted).abs() < 0.05, "{}: {level:?}, not {wanted}", row["name"]);
        let whole = level.dbov + 10.0 * level.activity.log10();
        assert!(
            (whole - row["long_term_dbov"].parse::<f64>().unwrap()).abs() < 0.01,
            "{}: {whole}",
            row["name"]
        );
        cases += 1;
    }
    assert!(cases >= 7);
    assert_eq!(active_level(&[0.0; 8000], 8000), None);
    assert_eq!(active_level(&[], 8000), None);
    assert_eq!(active_level(&[f32::NAN; 800], 8000), None);
}

#[test]
fn the_telephone_band_is_as_designed_and_within_the_mask() {
    let gain = |hz: f64| {
        let passed = narrow(&sine(48_000, hz, 0.5, 2.0).collect::<Vec<f32>>());
        let middle = &passed[4000..12_000];
        let power = middle.iter().map(|sample| f64::from(*sample).powi(2)).sum::<f64>() / middle.len() as f64;
        10.0 * (power / 0.125).log10()
    };
    let reference = gain(1020.0);
    let mut masked = 0;
    for row in rows("telephone-band", "cases.csv") {
        let (hz, wanted): (f64, f64) = (row["hz"].parse().unwrap(), row["gain_db"].parse().unwrap());
        let found = gain(hz);
        let near = if wanted > -40.0 { (found - wanted).abs() < 0.05 } else { found < -40.0 };
        assert!(near, "{hz} Hz: {found} dB, not {wanted}");
        if let (Ok(least), Ok(most)) =
            (row["least_loss_db"].parse::<f64>(), row["most_loss_db"].parse::<f64>())
        {
            let loss = reference - found;
            assert!((least - 1e-9..=most + 1e-9).contains(&loss), "{hz} Hz: a loss of {loss} dB");
            masked += 1;
        }
    }
    assert!(masked >= 5, "{masked} frequencies of the mask");
    // What would fold back into the band is gone.
    for hz in [4600.0, 5000.0, 7000.0, 12_000.0] {
        assert!(gain(hz) < -55.0, "{hz} Hz: {}", gain(hz));
    }
}

/// The chunks of a RIFF file, read anew here.
pub(crate) fn chunks(file: &[u8]) -> Vec<(String, Vec<u8>)> {
    assert_eq!((&file[..4], &file[8..12]), (&b"RIFF"[..], &b"WAVE"[..]));
    assert_eq!(u32::from_le_bytes(file[4..8].try_into().unwrap()) as usize, file.len() - 8);
    let (mut at, mut chunks) = (12, Vec::new());
    while at < file.len() {
        let length = u32::from_le_bytes(file[at + 4..at + 8].try_into().unwrap()) as usize;
        let name = String::from_utf8(file[at..at + 4].to_vec()).unwrap();
        chunks.push((name, file[at + 8..at + 8 + length].to_vec()));
        at += 8 + length + length % 2;
    }
    chunks
}

#[test]
fn telephone_files_hold_the_codes_of_the_recommendation() {
    let table = rows("g711", "decode.csv");
    for (law, column, tag) in [(Law::A, "a", 6u8), (Law::Mu, "mu", 7)] {
        let decoded: Vec<i32> = table.iter().map(|row| row[column].parse().unwrap()).collect();
        // Every step of 16 bits gets the code whose value is nearest, up to half a step of where it lies.
        let all: Vec<f32> = (-32_768..=32_767).map(|step| step as f32 / 32_768.0).collect();
        let file = telephone_wav(&all, law).unwrap();
        let parts = chunks(&file);
        let names: Vec<&str> = parts.iter().map(|(name, _)| name.as_str()).collect();
        assert_eq!(names, ["fmt ", "fact", "data"]);
        let format = &parts[0].1;
        assert_eq!(format.len(), 18);
        assert_eq!(format[..], [tag, 0, 1, 0, 0x40, 0x1F, 0, 0, 0x40, 0x1F, 0, 0, 1, 0, 8, 0, 0, 0]);
        assert_eq!(parts[1].1, 65_536u32.to_le_bytes());
        for (step, code) in (-32_768i32..=32_767).zip(&parts[2].1) {
            let value = decoded[*code as usize];
            let off = (value - step).abs();
            // Half of the wider gap to the values beside it, and the bits that encoders do not look at.
            let gap = |beside: Option<i32>| beside.map_or(i32::MAX, |beside| (beside - value).abs());
            let above = gap(decoded.iter().copied().filter(|other| *other > value).min());
            let below = gap(decoded.iter().copied().filter(|other| *other < value).max());
            // Beyond the last value all is cut off.
            let most = if above.max(below) == i32::MAX { 1300 } else { above.max(below) };
            assert!(off <= most / 2 + 16, "{column}: {step} became {value}, {off} away");
        }
        // What has been decoded is encoded as it was; µ-law has two zeros.
        let again =
            telephone_wav(&decoded.iter().map(|v| *v as f32 / 32_768.0).collect::<Vec<_>>(), law).unwrap();
        for (code, found) in chunks(&again)[2].1.iter().enumerate() {
            let same = *found as usize == code || decoded[*found as usize] == decoded[code];
            assert!(same, "{column}: code {code} became {found}");
        }
    }
}

#[test]
fn phone_messages_have_their_level_and_never_clip() {
    for (what, spoken) in messages("sw", &SOME).into_iter().chain(messages("en", &SOME)) {
        let sound = phone(&spoken).unwrap();
        let level = active_level(&sound.samples, 8000).unwrap().dbov;
        assert!((level + 26.0).abs() <= 0.1, "{what}: {level} dBov");
        let highest = sound.samples.iter().map(|sample| sample.abs()).fold(0f32, f32::max);
        assert!(highest < 0.9, "{what}: {highest}");
        let wanted = spoken.length().seconds();
        assert!((sound.samples.len() as f64 / 8000.0 - wanted).abs() <= 0.000_2, "{what}");
        let file = telephone_pcm(&sound.samples).unwrap();
        let reader = hound::WavReader::new(file.as_slice()).unwrap();
        assert_eq!((reader.spec().sample_rate, reader.spec().bits_per_sample), (8000, 16));
        let written: Vec<i16> = reader.into_samples::<i16>().map(Result::unwrap).collect();
        assert_eq!(written.len(), sound.samples.len());
        let silent = written.chunk_by(|a, b| a == b && *a == 0).map(<[i16]>::len).max().unwrap();
        assert!(silent < 80, "{what}: {silent} samples of digital silence");
    }
}

#[test]
fn a_phone_system_gets_clips_that_match() {
    let bank = Bank::load(&Embedded, "en", "stand-in").unwrap();
    let clips: Vec<usize> = (0..bank.clips().len()).step_by(5).collect();
    let sounds = phone_clips(&bank, &clips).unwrap();
    assert_eq!(sounds.len(), clips.len());
    let all = sounds.concat();
    assert!((active_level(&all, 8000).unwrap().dbov + 26.0).abs() <= 0.1);
    assert!(all.iter().all(|sample| sample.abs() < 0.9));
    let pause = room_tone(Frames::from_millis(500));
    assert_eq!(pause.len(), 4000);
    let power = pause.iter().map(|sample| f64::from(*sample).powi(2)).sum::<f64>() / 4000.0;
    assert!((-90.0..-70.0).contains(&(10.0 * power.log10())), "{}", 10.0 * power.log10());
}

fn broadcast_wav(samples: &[f32], options: &BroadcastOptions) -> Vec<u8> {
    let mut file = Cursor::new(Vec::new());
    BroadcastWav::new(samples, options).unwrap().write(&mut file).unwrap();
    file.into_inner()
}

#[test]
fn radio_files_carry_broadcast_fields_and_markers() {
    let (_, spoken) = messages("sw", &[StepKind::FillContainer]).remove(0);
    let loudness = measure(&spoken.samples).unwrap();
    let options = BroadcastOptions {
        description: "Viazi – mchanga".into(),
        date: chrono::NaiveDate::from_ymd_opt(2027, 4, 20),
        loudness,
        tool: "kabla".into(),
        markers: spoken.lines.iter().map(|line| (line.from, line.words.clone())).collect(),
        wav: WavOptions::default(),
    };
    let file = broadcast_wav(&spoken.samples, &options);
    let parts = chunks(&file);
    let names: Vec<&str> = parts.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(names, ["bext", "fmt ", "data", "cue ", "LIST"]);
    let bext = &parts[0].1;
    let text = |from: usize, length: usize| {
        String::from_utf8(bext[from..from + length].to_vec()).unwrap().trim_end_matches('\0').to_owned()
    };
    assert_eq!(text(0, 256), "Viazi ? mchanga");
    assert_eq!(text(256, 32), "Kabla");
    let reference = text(288, 32);
    assert!(reference.len() == 32 && reference.bytes().all(|byte| byte.is_ascii_hexdigit()), "{reference}");
    let referred = |samples: &[f32], title: &str| {
        let options = BroadcastOptions { description: title.into(), ..options.clone() };
        broadcast_wav(samples, &options)[12 + 8 + 288..][..32].to_vec()
    };
    assert_eq!(referred(&spoken.samples, "another title"), reference.as_bytes());
    let mut other = spoken.samples.clone();
    other[1000] += 0.01;
    assert_ne!(referred(&other, "Viazi"), reference.as_bytes());
    assert_eq!((text(320, 10), text(330, 8)), ("2027-04-20".into(), "00:00:00".into()));
    assert_eq!((bext[346], bext[347]), (2, 0));
    let field = |index: usize| i16::from_le_bytes([bext[412 + 2 * index], bext[413 + 2 * index]]);
    assert_eq!(field(0), (loudness.integrated_lufs * 100.0).round() as i16);
    assert_eq!(field(2), (loudness.true_peak_dbtp * 100.0).round() as i16);
    assert!(
        (-2500..-1000).contains(&field(3)) && (-2500..-1500).contains(&field(4)),
        "{} {}",
        field(3),
        field(4)
    );
    assert!((10..2000).contains(&field(1)), "{}", field(1));
    assert_eq!(text(602, bext.len() - 602), "A=PCM,F=48000,W=16,M=mono,T=kabla\r\n");
    let cue = &parts[3].1;
    assert_eq!(cue.len(), 4 + 24 * spoken.lines.len());
    for (line, point) in spoken.lines.iter().zip(cue[4..].chunks(24)) {
        assert_eq!(u64::from(u32::from_le_bytes(point[20..24].try_into().unwrap())), line.from.0);
    }
    let labels = String::from_utf8_lossy(&parts[4].1).into_owned();
    for line in &spoken.lines {
        assert!(labels.contains(&format!("{}\0", line.words)), "{}", line.words);
    }
    // A reader that knows none of it still finds the sound.
    assert_eq!(hound::WavReader::new(file.as_slice()).unwrap().len() as usize, spoken.samples.len());
}

#[test]
fn short_sounds_leave_open_what_they_are_too_short_for() {
    let samples: Vec<f32> = sine(48_000, 1000.0, 0.1, 2.0).collect();
    let loudness = measure(&samples).unwrap();
    assert_eq!((loudness.short_term_lufs, loudness.range_lu), (None, None));
    assert!((loudness.momentary_lufs.unwrap() + 23.0).abs() < 0.1);
}

#[test]
fn voice_notes_end_where_the_message_ends_and_say_their_gain() {
    let (_, spoken) = messages("sw", &[StepKind::MonthlyCheck]).remove(0);
    let loud = channel::chat(&spoken).unwrap();
    let options = OpusOptions {
        kbit: 20,
        tags: vec![("TITLE", "A\nB".into()), ("LANGUAGE", "sw".into())],
        chapters: vec![],
    };
    let file = opus(&loud.samples, &options).unwrap();
    let mut reader = ogg::PacketReader::new(std::io::Cursor::new(&file.bytes));
    let head = reader.read_packet().unwrap().unwrap();
    assert_eq!(&head.data[..10], b"OpusHead\x01\x01");
    let pre_skip = u16::from_le_bytes([head.data[10], head.data[11]]);
    assert_eq!((head.data[18], head.data.len()), (0, 19));
    let header_gain = f32::from(i16::from_le_bytes([head.data[16], head.data[17]])) / 256.0;
    assert!((-4.0..=0.0).contains(&header_gain), "{header_gain} dB");
    let tags = reader.read_packet().unwrap().unwrap();
    let said = String::from_utf8_lossy(&tags.data).into_owned();
    assert!(
        said.starts_with("OpusTags") && said.contains("TITLE=A B") && said.contains("LANGUAGE=sw"),
        "{said}"
    );
    let mut decoder = opus_rs::OpusDecoder::new(48_000, 1).unwrap();
    let (mut sound, mut last, mut bytes) = (Vec::new(), 0, 0);
    while let Some(packet) = reader.read_packet().unwrap() {
        let mut frames = [0f32; 960];
        assert_eq!(decoder.decode(&packet.data, 960, &mut frames).unwrap(), 960);
        sound.extend(frames);
        bytes += packet.data.len();
        last = packet.absgp_page();
    }
    let length = spoken.samples.len();
    assert_eq!(last, length as u64 + u64::from(pre_skip));
    let kbit = bytes as f64 * 8.0 / 1000.0 / spoken.length().seconds();
    assert!((17.0..=20.5).contains(&kbit), "{kbit} kbit/s");
    let played = &sound[pre_skip as usize..pre_skip as usize + length];
    let played: Vec<f32> = played.iter().map(|sample| sample * 10f32.powf(header_gain / 20.0)).collect();
    let measured = measure(&played).unwrap();
    assert!(
        (-19.5..=-15.5).contains(&measured.integrated_lufs) && measured.true_peak_dbtp <= -0.99,
        "{measured:?}"
    );
    let gain: f64 = said.split("R128_TRACK_GAIN=").nth(1).unwrap().parse().unwrap();
    assert!((gain / 256.0 - (-23.0 - measured.integrated_lufs)).abs() < 0.01, "{gain}");
}

#[test]
fn meetings_have_chapters_questions_and_time_to_talk() {
    let talk = Frames::from_millis(5000);
    for tag in ["en", "sw"] {
        let pack = Pack::load(&Embedded, tag).unwrap();
        let bank = Bank::load(&Embedded, tag, pack.voice()).unwrap();
        let (_, case) = examples().remove(0);
        let statements = tell(&case, &make(&case).unwrap());
        let sections: Vec<Section> = SOME
            .iter()
            .map(|topic| {
                let chosen = chapter(&statements, *topic);
                assert_eq!(chosen.last().unwrap().subject, Subject::Question(*topic));
                let pieces: Vec<Piece> = chosen.iter().flat_map(|of| pack.say(of).unwrap()).collect();
                let spoken = speak(&pieces, &bank, &SpeakOptions::default()).unwrap();
                Section { title: Some(topic.name().to_owned()), spoken, talk }
            })
            .collect();
        let made = meeting(&sections).unwrap().unwrap();
        let measured = measure(&made.spoken.samples).unwrap();
        assert!((measured.integrated_lufs + 16.0).abs() <= 0.2, "{tag}: {measured:?}");
        assert!(measured.true_peak_dbtp <= -1.0, "{tag}: {measured:?}");
        assert_eq!(made.chapters.len(), 3);
        assert_eq!(made.chapters[0].from, Frames(0));
        assert!(made.chapters.windows(2).all(|pair| pair[0].to == pair[1].from));
        assert_eq!(made.chapters[2].to, made.spoken.length());
        assert_eq!(made.talks.len(), 3);
        for (from, to) in &made.talks {
            assert_eq!(*to - *from, talk);
            let tone = &made.spoken.samples[from.0 as usize..to.0 as usize];
            let silent = tone.chunk_by(|a, b| a == b && *a == 0.0).map(<[f32]>::len).max().unwrap();
            assert!(silent < 48, "{tag}: {silent} samples of digital silence");
            assert!(tone.iter().all(|sample| sample.abs() < 0.02), "{tag}: the room is loud");
        }
        let asked = pack.label(Subject::Question(SOME[0]), &[]).unwrap();
        let said: Vec<&str> = made.spoken.lines.iter().map(|line| line.words.as_str()).collect();
        assert!(said.join(" ").contains(asked.split(['?', ',']).next().unwrap()), "{tag}: {asked}");
    }
    assert_eq!(meeting(&[]).unwrap(), None);
}

#[test]
fn every_step_has_its_question_in_every_language() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let (_, case) = examples().remove(0);
        let statements = tell(&case, &make(&case).unwrap());
        for topic in StepKind::ALL {
            let question = chapter(&statements, topic).pop().unwrap();
            let written = pack.write(&question).unwrap().title;
            assert!(written.trim_end().ends_with(['?', '።', '؟']), "{tag}: {written}");
            let spoken: String = pack
                .say(&question)
                .unwrap()
                .iter()
                .filter_map(|piece| match piece {
                    Piece::Words(words) => Some(format!("{} ", words.text)),
                    Piece::Pause(_) => None,
                })
                .collect();
            // French writes a narrow space before the mark.
            let bare = |text: &str| text.replace(char::is_whitespace, "");
            assert_eq!(bare(&spoken), bare(&written), "{tag}");
        }
    }
}

#[test]
fn markup_in_words_stays_words() {
    let stitches = [
        Stitch {
            file: "a b/ñ&\".wav".into(), millis: 1250, words: Some("a < b & \"c\"\u{1}\nd ]]>".into())
        },
        Stitch { file: "pause-500.wav".into(), millis: 500, words: None },
    ];
    let options = StitchOptions {
        id: "fill-container".into(),
        language: "sw".into(),
        title: "<T> & \"U\"".into(),
        remark: String::new(),
    };
    let document = voicexml(&stitches, &options);
    assert!(
        document
            .contains("<audio src=\"a%20b/%C3%B1%26%22.wav\">a &lt; b &amp; &quot;c&quot; d ]]&gt;</audio>")
    );
    assert!(document.contains("<audio src=\"pause-500.wav\"><break time=\"500ms\"/></audio>"), "{document}");
    assert!(document.contains("content=\"&lt;T&gt; &amp; &quot;U&quot;\""), "{document}");
    let list = playlist(&stitches, "T\nU");
    assert_eq!(
        list,
        "#EXTM3U\n#PLAYLIST:T U\n#EXTINF:1.250,a < b & \"c\"\u{1} d ]]>\na b/ñ&\".wav\n#EXTINF:0.500,\npause-500.wav\n"
    );
}

#[test]
fn subrip_numbers_its_captions() {
    let (_, spoken) = messages("en", &[StepKind::PlantField]).remove(0);
    let text = subrip(&spoken, &CaptionOptions::default());
    let blocks: Vec<&str> = text.trim_end().split("\n\n").collect();
    assert!(blocks.len() > 5);
    for (index, block) in blocks.iter().enumerate() {
        let lines: Vec<&str> = block.lines().collect();
        assert_eq!(lines[0], (index + 1).to_string());
        assert_eq!((lines[1].len(), &lines[1][8..9], &lines[1][12..17]), (29, ",", " --> "), "{block}");
        assert!((3..=4).contains(&lines.len()), "{block}");
    }
}

/// The example farm's messages into the folder `out` of a project.
pub(crate) fn speak_with(project: &Project, arguments: &[&str]) -> Run {
    project.kabla(&[&["speak", &example("farm.toml")], arguments, &["--out", "out"]].concat())
}

#[test]
fn each_channel_writes_its_files_under_names_of_its_own() {
    let project = Project::new();
    let topic = ["--language", "en", "--topic", "plant-bed"];
    for (channel, wanted) in [
        ("radio", "en-plant-bed: cue.txt srt vtt wav"),
        ("phone", "en-plant-bed-phone: cue.txt m3u8 pcm.wav srt vtt vxml wav"),
        ("chat", "en-plant-bed-chat: cue.txt opus srt vtt"),
        ("meeting", "en-meeting: chapters.vtt cue.txt opus srt vtt wav"),
    ] {
        speak_with(&project, &[&topic[..], &["--for", channel]].concat()).done();
        let (stem, endings) = wanted.split_once(": ").unwrap();
        for ending in endings.split(' ') {
            assert!(project.has(&format!("out/{stem}.{ending}")), "{channel}: {ending}");
        }
    }
    let made = project.files_in("out");
    assert_eq!(made.len(), 4 + 7 + 4 + 6 + 1, "{made:?}");
    // What the documents name is there.
    let list = project.read("out/en-plant-bed-phone.m3u8");
    let files: Vec<&str> = list.lines().filter(|line| !line.starts_with('#')).collect();
    assert!(files.len() > 10 && files.iter().all(|file| project.has(&format!("out/{file}"))), "{list}");
}

#[test]
fn options_of_other_channels_are_refused_together() {
    let project = Project::new();
    let refused = |arguments: &[&str]| speak_with(&project, arguments).ended(2).err;
    let said = refused(&["--for", "radio", "--law", "mu", "--kbit", "20", "--talk", "5"]);
    for option in ["--law", "--kbit", "--talk"] {
        assert!(said.contains(option), "{said}");
    }
    for arguments in [&["--for", "chat", "--kbit", "64"][..], &["--for", "meeting", "--talk", "601"]] {
        let said = refused(arguments);
        assert!(said.contains("hint:"), "{said}");
    }
    if cfg!(not(feature = "mp3")) {
        let said = refused(&["--for", "radio", "--mp3"]);
        assert!(said.contains("--features mp3"), "{said}");
    }
    assert!(project.files().is_empty());
}
