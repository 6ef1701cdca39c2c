//! What other people's programs say of the files of each channel.

use std::fs;
use std::io::Write as _;
use std::process::Command;
use std::sync::LazyLock;

use kabla::guidance::StepKind;
use kabla::voice::channel::{self, Section, meeting, phone};
use kabla::voice::level::measure_interleaved;
use kabla::voice::write::{Law, OpusOptions, WavOptions, opus, telephone_pcm, telephone_wav, wav};
use kabla::voice::{Frames, Loudness, Spoken};

use super::channels::{beginnings, chunks, messages, speak_with};
use super::expected::rows;
use super::outside::{ask, file, loudness_by, number_after, program, python_with};
use super::project::{Project, Run, text};

/// 25 messages in a language: every other step from one on, of four kinds of case, whole and their first sentences.
fn twenty_five(tag: &str, skip: usize) -> Vec<(String, Spoken)> {
    let topics: Vec<StepKind> = StepKind::ALL.into_iter().skip(skip).step_by(2).collect();
    let all: Vec<_> = beginnings(tag, &topics, &[2, 4, usize::MAX]).into_iter().take(25).collect();
    assert_eq!(all.len(), 25);
    all
}

fn run(program: &str, arguments: &[&str]) -> Vec<u8> {
    let output = Command::new(program).args(arguments).output().unwrap();
    assert!(output.status.success(), "{program}: {}", String::from_utf8_lossy(&output.stderr));
    output.stdout
}

fn ffmpeg_says(ffmpeg: &str, path: &str) -> Loudness {
    let said = loudness_by(ffmpeg, path);
    Loudness {
        integrated_lufs: number_after(&said, "I:"),
        true_peak_dbtp: number_after(&said, "Peak:"),
        ..Loudness::default()
    }
}

#[test]
fn ffmpeg_agrees_on_english_messages_in_every_channel() {
    ffmpeg_agrees(&twenty_five("en", 0));
}

#[test]
fn ffmpeg_agrees_on_swahili_messages_in_every_channel() {
    ffmpeg_agrees(&twenty_five("sw", 1));
}

/// ffmpeg's ebur128 on messages in every channel, fifty in all: within 0.2 LU and 0.3 dB of what we say.
fn ffmpeg_agrees(messages: &[(String, Spoken)]) {
    let (Some(ffmpeg), Some(opusdec)) = (program("ffmpeg"), program("opusdec")) else { return };
    let project = Project::new();
    let agree = |what: &str, ending: &str, bytes: &[u8], ours: Loudness| {
        let theirs = ffmpeg_says(ffmpeg, &project.write(&format!("sound.{ending}"), bytes));
        let off = (ours.integrated_lufs - theirs.integrated_lufs).abs();
        assert!(off <= 0.2, "{what}: {ours:?}, ffmpeg {theirs:?}");
        assert!(
            (ours.true_peak_dbtp - theirs.true_peak_dbtp).abs() <= 0.3,
            "{what}: {ours:?}, ffmpeg {theirs:?}"
        );
        theirs
    };
    for (what, spoken) in messages {
        let bytes = wav(&spoken.samples, &WavOptions::default()).unwrap();
        let theirs = agree(&format!("{what} radio"), "wav", &bytes, spoken.loudness);
        assert!(
            (theirs.integrated_lufs + 23.0).abs() <= 0.2 && theirs.true_peak_dbtp <= -1.0,
            "{what}: {theirs:?}"
        );

        let sound = phone(spoken).unwrap();
        let ours = measure_interleaved(&sound.samples, 1, 8000).unwrap();
        agree(&format!("{what} phone"), "wav", &telephone_pcm(&sound.samples).unwrap(), ours);

        let loud = channel::chat(spoken).unwrap();
        let options = OpusOptions { kbit: 20, tags: vec![], chapters: vec![] };
        let note = opus(&loud.samples, &options).unwrap();
        // Decoded by the reference decoder: ffmpeg's own resamples in another way, which moves peaks by half a decibel.
        let (coded, plain) = (project.write("note.opus", &note.bytes), text(&project.path("note.wav")));
        run(opusdec, &["--quiet", "--float", &coded, &plain]);
        let theirs = agree(&format!("{what} chat"), "wav", &project.bytes("note.wav"), note.loudness);
        assert!(theirs.true_peak_dbtp <= -0.9, "{what}: {theirs:?}");

        let talk = Frames::from_millis(1000);
        let made =
            meeting(&[Section { title: Some(what.clone()), spoken: spoken.clone(), talk }]).unwrap().unwrap();
        let bytes = wav(&made.spoken.samples, &WavOptions::default()).unwrap();
        let theirs = agree(&format!("{what} meeting"), "wav", &bytes, made.spoken.loudness);
        assert!(
            (theirs.integrated_lufs + 16.0).abs() <= 0.2 && theirs.true_peak_dbtp <= -1.0,
            "{what}: {theirs:?}"
        );
    }
}

/// MP3, where it is built in: as loud as the WAV beside it, and longer by no more than the coder's frames.
#[cfg(feature = "mp3")]
#[test]
fn ffmpeg_plays_our_mp3_as_loud_and_as_long_as_the_wav() {
    const FRAME: usize = 1152;
    let Some(ffmpeg) = program("ffmpeg") else { return };
    let project = Project::new();
    let topics = ["--topic", "harvest", "--topic", "fill-container"];
    speak_with(&project, &[&["--language", "sw", "--for", "radio", "--mp3"], &topics[..]].concat()).done();
    for topic in ["harvest", "fill-container"] {
        let [wave, coded] =
            ["wav", "mp3"].map(|ending| text(&project.path(&format!("out/sw-{topic}.{ending}"))));
        let [ours, theirs] = [&wave, &coded].map(|path| ffmpeg_says(ffmpeg, path));
        assert!((ours.integrated_lufs - theirs.integrated_lufs).abs() <= 0.2, "{ours:?} {theirs:?}");
        assert!(theirs.true_peak_dbtp <= -1.0, "{theirs:?}");
        let [long, longer] = [&wave, &coded].map(|path| {
            let raw = ["-v", "error", "-i", path, "-f", "s16le", "-"];
            run(ffmpeg, &raw).len() / 2
        });
        assert!((long..=long + 3 * FRAME).contains(&longer), "{topic}: {long} {longer}");
    }
}

/// sox decodes our G.711 to the values of the tables, sample for sample.
#[test]
fn sox_decodes_our_telephone_files() {
    let Some(sox) = program("sox") else { return };
    let project = Project::new();
    let table = rows("g711", "decode.csv");
    for (what, spoken) in messages("sw", &[StepKind::FillContainer]) {
        let sound = phone(&spoken).unwrap();
        for (law, column) in [(Law::A, "a"), (Law::Mu, "mu")] {
            let file = telephone_wav(&sound.samples, law).unwrap();
            let raw = run(sox, &[&project.write("phone.wav", &file), "-t", "s16", "-"]);
            let decoded: Vec<i16> = raw.chunks(2).map(|two| i16::from_le_bytes([two[0], two[1]])).collect();
            let data = chunks(&file).remove(2).1;
            assert_eq!(decoded.len(), data.len(), "{what}");
            for (code, value) in data.iter().zip(&decoded) {
                assert_eq!(table[*code as usize][column].parse::<i16>().unwrap(), *value, "{what}: {code}");
            }
        }
    }
}

/// Mean distance of two sounds in dB, over forty bands from 100 to 7000 Hz as the ear spaces them, where the first
/// one is no quieter than 40 dB below its loudest frame.
fn spectral_distance(one: &[f32], other: &[f32]) -> f64 {
    const FRAME: usize = 960;
    let mut planner = realfft::RealFftPlanner::<f32>::new();
    let fft = planner.plan_fft_forward(FRAME);
    let mel = |hz: f64| 2595.0 * (1.0 + hz / 700.0).log10();
    let band = |bin: usize| {
        let (low, high) = (mel(100.0), mel(7000.0));
        ((mel(bin as f64 * 50.0) - low) / (high - low) * 40.0).floor()
    };
    let spectrum = |frame: &[f32]| {
        let window = |n: usize| 0.5 - 0.5 * (std::f32::consts::TAU * n as f32 / FRAME as f32).cos();
        let mut input: Vec<f32> = frame.iter().enumerate().map(|(n, sample)| sample * window(n)).collect();
        let mut output = fft.make_output_vec();
        fft.process(&mut input, &mut output).unwrap();
        let mut bands = [1e-3f64; 40];
        for (bin, value) in output.iter().enumerate() {
            if (0.0..40.0).contains(&band(bin)) {
                bands[band(bin) as usize] += f64::from(value.norm_sqr());
            }
        }
        bands.map(|power| 10.0 * power.log10())
    };
    let frames = |sound: &[f32]| sound.chunks_exact(FRAME).map(spectrum).collect::<Vec<_>>();
    let (one, other) = (frames(one), frames(other));
    let level = |bands: &[f64; 40]| bands.iter().sum::<f64>() / 40.0;
    let loudest = one.iter().map(level).fold(f64::MIN, f64::max);
    let (mut sum, mut count) = (0.0, 0);
    for (a, b) in one.iter().zip(&other).filter(|(a, _)| level(a) > loudest - 40.0) {
        sum += (a.iter().zip(b).map(|(a, b)| (a - b).powi(2)).sum::<f64>() / 40.0).sqrt();
        count += 1;
    }
    sum / f64::from(count)
}

fn read_wav(path: &str) -> Vec<f32> {
    let reader = hound::WavReader::open(path).unwrap();
    assert_eq!((reader.spec().channels, reader.spec().sample_rate), (1, 48_000));
    reader.into_samples::<i16>().map(|sample| f32::from(sample.unwrap()) / 32_768.0).collect()
}

/// opusdec gives back exactly as many frames, and a sound as near to the message as the reference encoder's is at the same rate.
#[test]
fn opusdec_decodes_our_voice_notes() {
    let (Some(opusdec), Some(opusenc)) = (program("opusdec"), program("opusenc")) else { return };
    let project = Project::new();
    let path = |name: &str| text(&project.path(name));
    let all = [messages("en", &[StepKind::MarkPlants]), messages("sw", &[StepKind::LastCheck])].concat();
    for (what, spoken) in all.into_iter().step_by(2) {
        let loud = channel::chat(&spoken).unwrap();
        let input = project.write("in.wav", wav(&loud.samples, &WavOptions::default()).unwrap());
        for kbit in [16u32, 20, 24] {
            let options = OpusOptions { kbit, tags: vec![("TITLE", what.clone())], chapters: vec![] };
            let file = opus(&loud.samples, &options).unwrap();
            run(opusdec, &["--quiet", &project.write("ours.opus", &file.bytes), &path("ours.wav")]);
            let ours = read_wav(&path("ours.wav"));
            assert_eq!(ours.len(), loud.samples.len(), "{what} at {kbit}");
            let rate = kbit.to_string();
            let theirs = path("theirs.opus");
            run(opusenc, &["--quiet", "--speech", "--vbr", "--bitrate", &rate, &input, &theirs]);
            run(opusdec, &["--quiet", &theirs, &path("theirs.wav")]);
            let reference = spectral_distance(&loud.samples, &read_wav(&path("theirs.wav")));
            let distance = spectral_distance(&loud.samples, &ours);
            let sizes = (file.bytes.len(), project.bytes("theirs.opus").len());
            // Figures for whoever runs it with --nocapture.
            let said = format!(
                "{what} at {kbit}: {distance:.2} dB, the reference {reference:.2} dB; {sizes:?} bytes"
            );
            let _ = writeln!(std::io::stderr(), "{said}");
            assert!(
                distance < 4.0 && distance <= reference + 0.5,
                "{what} at {kbit}: {distance}, {reference}"
            );
            assert!(sizes.0 as f64 <= sizes.1 as f64 * 1.1, "{what} at {kbit}: {sizes:?}");
        }
    }
}

/// One set of files of each channel, made by the program.
static MADE: LazyLock<Project> = LazyLock::new(|| {
    let project = Project::new();
    let message = ["--language", "sw", "--topic", "plant-field", "--today", "2027-04-20", "--for"];
    for channel in ["radio", "phone", "chat", "meeting"] {
        speak_with(&project, &[&message[..], &[channel]].concat()).done();
    }
    project
});

fn made(name: &str) -> String {
    text(&MADE.path(&format!("out/{name}")))
}

#[test]
fn mediainfo_reads_our_files() {
    let Some(mediainfo) = program("mediainfo") else { return };
    for (name, wanted) in [
        ("sw-plant-field.wav", &["PCM", "48000", "16"][..]),
        ("sw-plant-field-phone.wav", &["A-Law", "8000"]),
        ("sw-plant-field-phone.pcm.wav", &["PCM", "8000", "16"]),
        ("sw-plant-field-chat.opus", &["Opus", "sw"]),
        ("sw-meeting.opus", &["Opus", "00:00:00.000"]),
    ] {
        let said = ask(mediainfo, &["--Full", &made(name)]).out;
        for wanted in wanted {
            assert!(said.contains(wanted), "{name}: no {wanted} in {said}");
        }
    }
    let said = ask(mediainfo, &["--Full", &made("sw-plant-field.wav")]).out;
    // mediainfo shows what bext says: who made it and when.
    assert!(said.contains("Kabla") && said.contains("2027-04-20"), "{said}");
}

/// The players' own view of chapters.
#[test]
fn ffprobe_finds_the_chapters_of_a_meeting() {
    let Some(ffprobe) = program("ffprobe") else { return };
    let path = made("sw-meeting.opus");
    let said = ask(ffprobe, &["-v", "error", "-show_chapters", "-of", "csv", &path]).out;
    assert_eq!(said.lines().count(), 2, "{said}");
    let vtt = fs::read_to_string(made("sw-meeting.chapters.vtt")).unwrap();
    assert_eq!(vtt.matches(" --> ").count(), 2);
    let duration = ["-v", "error", "-show_entries", "format=duration", "-of", "csv=p=0", &path];
    let length: f64 = ask(ffprobe, &duration).out.trim().parse().unwrap();
    let last = vtt.rsplit("--> ").next().unwrap().lines().next().unwrap();
    let (minutes, seconds) = last[3..].split_once(':').unwrap();
    let end = minutes.parse::<f64>().unwrap() * 60.0 + seconds.parse::<f64>().unwrap();
    // ffprobe counts the part that is skipped, 6.5 ms.
    assert!((length - end).abs() < 0.008, "{length} {end}");
}

/// VoiceXML against its own document type, and as an XML parser reads it.
#[test]
fn our_voicexml_is_valid_against_its_document_type() {
    const DTD: &str = "/usr/share/xml/w3c-sgml-lib/schema/dtd/REC-voicexml21-20070619/vxml.dtd";
    let Some(xmllint) = program("xmllint") else { return };
    let Some(dtd) = file(DTD, "w3c-sgml-lib") else { return };
    let valid = ["--noout", "--nonet", "--dtdvalid", dtd];
    let path = made("sw-plant-field-phone.vxml");
    run(xmllint, &[&valid[..], &[&path]].concat());
    let words = ask(xmllint, &["--xpath", "string(//*[local-name()='prompt'])", &path]).out;
    let cue = fs::read_to_string(made("sw-plant-field-phone.cue.txt")).unwrap();
    assert!(words.split_whitespace().count() > 30);
    for word in words.split_whitespace().filter(|word| word.chars().all(char::is_alphanumeric)) {
        assert!(cue.contains(word), "{word}");
    }
    // It is no rubber stamp: what is misspelt, misplaced or missing is seen.
    let document = fs::read_to_string(&path).unwrap();
    for (right, wrong) in
        [("<exit/>", "<leave/>"), (" time=", " length="), ("<block>", ""), (" src=", " file=")]
    {
        assert!(document.contains(right));
        let text = document.replace(right, wrong);
        let broken =
            MADE.write("broken.xml", if wrong.is_empty() { text.replace("</block>", "") } else { text });
        let checked = Run::of(Command::new(xmllint).args(valid).arg(&broken));
        assert_ne!(checked.code, 0, "{right} became {wrong}");
    }
}

/// Independent readers of PyPI: wavinfo for bext and markers, webvtt-py and srt for captions.
#[test]
fn independent_readers_read_markers_and_captions() {
    const READER: &str = r#"
import sys, srt, webvtt, wavinfo
radio, vtt, sub = sys.argv[1:]
wave = wavinfo.WavInfoReader(radio)
bext = wave.bext
print(bext.originator, bext.originator_date, bext.version, round(bext.loudness_value, 2), len(wave.cues.cues), len(wave.cues.labels), wave.cues.labels[0].text, sep="|")
captions, subtitles = list(webvtt.read(vtt)), list(srt.parse(open(sub, encoding="utf-8").read()))
assert len(captions) == len(subtitles) > 5
for a, b in zip(captions, subtitles):
    assert a.text == b.content, (a.text, b.content)
    assert abs(a.start_in_seconds - int(b.start.total_seconds())) <= 1
print(len(captions))
"#;
    let Some(python) = ["wavinfo", "webvtt", "srt"].into_iter().map(python_with).collect::<Option<Vec<_>>>()
    else {
        return;
    };
    let files = ["sw-plant-field.wav", "sw-plant-field.vtt", "sw-plant-field.srt"].map(made);
    let arguments: Vec<&str> = ["-c", READER].into_iter().chain(files.iter().map(String::as_str)).collect();
    let said = ask(python[0], &arguments).out;
    let fields: Vec<&str> = said.lines().next().unwrap().split('|').collect();
    assert_eq!(fields[..3], ["Kabla", "2027-04-20", "2"], "{said}");
    assert!((fields[3].parse::<f64>().unwrap() + 23.0).abs() <= 0.2, "{said}");
    assert_eq!(fields[4], fields[5], "{said}");
    let cue = fs::read_to_string(made("sw-plant-field.cue.txt")).unwrap();
    assert!(cue.contains(fields[6].trim_end_matches('\0')), "{said}");
}
