//! Sessions are cut into clips: synthesised ones, whose truth is known, and files of every kind and state.

use std::collections::BTreeMap;
use std::io::{Cursor, Write as _};
use std::process::Command;

use kabla::app::ScriptRequest;
use kabla::data::Embedded;
use kabla::finding::Finding;
use kabla::language::Intonation;
use kabla::voice::record::import::{
    Consent, Cut, CutVerdict, Line, NewClip, Recording, file_name, listen, match_session, read_cuts,
    read_script, update_bank, write_cuts,
};

use crate::outside::program;
use crate::voice_bank::{HEADER, sine, wav_of};

/// What a run measured, for those who look: `cargo test -- --nocapture`.
macro_rules! say_of {
    ($($what:tt)*) => { let _ = writeln!(std::io::stdout(), $($what)*); };
}

const RATE: u32 = 22_050;
/// hound says that a single channel is the left one, which not every encoder takes.
const ONE: &str = "pan=mono|c0=c0";
/// The same sound on both sides; ffmpeg's `-ac 2` would lower it by 3 dB.
const BOTH: &str = "pan=stereo|c0=c0|c1=c0";

fn recording(name: &str, bytes: Vec<u8>) -> Recording<'static> {
    let open = Box::new(move || Ok(Box::new(Cursor::new(bytes.clone())) as _));
    Recording { path: name.to_owned(), name: name.to_owned(), open }
}

/// All that a voice lacks that has nothing yet, in the order in which it is to be read.
fn script(language: &str) -> Vec<Line> {
    let request = ScriptRequest { language, voice: Some("nobody"), cases: &[], all: false };
    let lines = kabla::app::script(&Embedded, &request).unwrap().script.lines.into_iter().map(|line| Line {
        number: line.number as u32,
        id: line.id,
        words: line.words,
        intonation: line.intonation,
    });
    lines.collect()
}

/// Numbers from 0 to 1 that are the same on every run (Knuth's generator).
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> f32 {
        self.0 = self.0.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
        (self.0 >> 40) as f32 / (1u64 << 24) as f32
    }

    fn between(&mut self, least: f32, most: f32) -> f32 {
        least + (most - least) * self.next()
    }

    /// Nearly normal, with spread 1.
    fn noise(&mut self) -> f32 {
        (0..4).map(|_| self.next() - 0.5).sum::<f32>() * 1.732
    }
}

/// A session with its truth: for each line where its last take is, or that it was left out.
struct Session {
    samples: Vec<f32>,
    truth: BTreeMap<u32, Option<(f64, f64)>>,
    /// From and to of all that sounds: earlier takes and coughs too.
    sounding: Vec<(f64, f64)>,
}

fn say(voice: &str, pace: f32, pitch: f32, line: &Line) -> Vec<f32> {
    let mark = if line.intonation == Intonation::Final { "." } else { "," };
    let output = Command::new("espeak-ng")
        .args(["-v", voice, "-s", &format!("{pace:.0}"), "-p", &format!("{pitch:.0}"), "--stdout"])
        .arg(format!("{}{mark}", line.words))
        .output()
        .unwrap();
    let samples = output.stdout.get(44..).unwrap_or_default().chunks_exact(2);
    let samples: Vec<f32> =
        samples.map(|pair| f32::from(i16::from_le_bytes([pair[0], pair[1]])) / 32768.0).collect();
    let loud = |sample: &f32| sample.abs() > 0.002;
    let (from, to) = (samples.iter().position(loud).unwrap(), samples.iter().rposition(loud).unwrap());
    samples[from..to].to_vec()
}

fn read_aloud(lines: &[Line], voice: &str, pace: f32, slips: bool, seed: u64) -> Session {
    let mut chance = Chance(seed);
    let mut session =
        Session { samples: vec![0.0; RATE as usize], truth: BTreeMap::new(), sounding: Vec::new() };
    for line in lines {
        let slip = if slips { chance.next() } else { 0.5 };
        if slip < 0.02 {
            session.truth.insert(line.number, None);
            continue;
        }
        if slip > 0.95 && slip <= 0.97 {
            let cough = (0..4000).map(|at| chance.noise() * 0.2 * (1.0 - at as f32 / 4000.0));
            session.add(&cough.collect::<Vec<_>>());
            session.pause(&mut chance);
        }
        for _ in 0..if slip > 0.97 { 2 } else { 1 } {
            let (pace, pitch) = (pace * chance.between(0.93, 1.07), chance.between(44.0, 56.0));
            let (sound, gain) = (say(voice, pace, pitch, line), chance.between(0.5, 0.8));
            let sound: Vec<f32> = sound.iter().map(|sample| sample * gain).collect();
            let place = session.add(&sound);
            session.truth.insert(line.number, Some(place));
            session.pause(&mut chance);
        }
    }
    session
}

impl Session {
    fn add(&mut self, sound: &[f32]) -> (f64, f64) {
        let from = self.samples.len() as f64 / f64::from(RATE);
        self.samples.extend(sound);
        let place = (from, self.samples.len() as f64 / f64::from(RATE));
        self.sounding.push(place);
        place
    }

    /// Whether a cut has the whole of a sound, and nothing of those beside it.
    fn is_cut_well(&self, (from, to): (f64, f64), (start, end): (f64, f64)) -> bool {
        let beside = |place: &&(f64, f64)| place.0 != start;
        let clear = self.sounding.iter().filter(beside).all(|(start, end)| *end <= from || *start >= to);
        from < start + 0.05 && to > end - 0.1 && clear
    }

    fn pause(&mut self, chance: &mut Chance) {
        let frames = chance.between(0.6, 1.3) * RATE as f32;
        self.samples.extend(std::iter::repeat_n(0.0, frames as usize));
    }

    /// With noise so many dB below the speech, and hum of 50 Hz and its harmonics.
    fn heard(&self, snr_db: f32, hum: f32) -> Vec<u8> {
        let mut chance = Chance(99);
        let speech: Vec<f32> = self.samples.iter().copied().filter(|sample| sample.abs() > 0.006).collect();
        let rms = (speech.iter().map(|sample| sample * sample).sum::<f32>() / speech.len() as f32).sqrt();
        let noise = rms * 10f32.powf(-snr_db / 20.0);
        let samples = self.samples.iter().enumerate().map(|(at, sample)| {
            let turn = std::f32::consts::TAU * 50.0 * at as f32 / RATE as f32;
            let hum = hum * (turn.sin() + 0.4 * (2.0 * turn).sin() + 0.3 * (3.0 * turn).sin());
            sample + noise * chance.noise() + hum
        });
        wav_of(RATE, 1, samples)
    }
}

/// All rows of a line: place, verdict, remark.
fn of_line(cuts: &[Cut], number: u32) -> Vec<String> {
    let rows = cuts.iter().filter(|cut| cut.line == Some(number));
    rows.map(|cut| format!("{:?} {} {} {}", cut.place, cut.words, cut.verdict.name(), cut.remark)).collect()
}

/// How a matching did: lines sure and right, sure and wrong, put up.
fn judge(name: &str, lines: &[Line], session: &Session, wav: Vec<u8>) -> (usize, usize, usize) {
    let (heard, _) = listen(&[recording("session.wav", wav)]).unwrap();
    let cuts = match_session(lines, &heard);
    let of = |number: u32| {
        cuts.iter().find(|cut| cut.line == Some(number) && cut.verdict != CutVerdict::Skip).unwrap()
    };
    let is_right = |cut: &Cut, truth: Option<(f64, f64)>| match (&cut.place, truth) {
        (Some((_, from, to)), Some(place)) => session.is_cut_well((*from, *to), place),
        (None, None) => true,
        _ => false,
    };
    let (mut right, mut wrong, mut put_up) = (0, 0, 0);
    for (number, truth) in &session.truth {
        let cut = of(*number);
        match cut.verdict {
            CutVerdict::Confirm => put_up += 1,
            _ if is_right(cut, *truth) => right += 1,
            _ => {
                wrong += 1;
                say_of!("{name}: wrong and sure: {cut:?}, truly {truth:?}");
                for near in number.saturating_sub(2)..number + 3 {
                    say_of!(
                        "    {near}: truly {:?}, found {:?}",
                        session.truth.get(&near),
                        of_line(&cuts, near)
                    );
                }
            }
        }
    }
    say_of!("{name}: {} lines, {right} sure and right, {wrong} sure and wrong, {put_up} put up", lines.len());
    (right, wrong, put_up)
}

/// The same with the echo of a room, by sox.
fn in_a_room(wav: &[u8]) -> Vec<u8> {
    let folder = tempfile::tempdir().unwrap();
    let (dry, wet) = (folder.path().join("dry.wav"), folder.path().join("wet.wav"));
    std::fs::write(&dry, wav).unwrap();
    let done = Command::new("sox").arg(&dry).args(["-b", "16"]).arg(&wet).args(["reverb", "30"]).status();
    assert!(done.unwrap().success());
    std::fs::read(wet).unwrap()
}

#[test]
fn synthesised_sessions_in_english_are_never_wrong_silently() {
    never_wrong_silently("en", "en-gb", 145.0);
}

#[test]
fn synthesised_sessions_in_swahili_are_never_wrong_silently() {
    never_wrong_silently("sw", "sw+f2", 160.0);
}

/// Truth: where the synthesiser was placed. Noise, hum, coughs, repeats and skips.
fn never_wrong_silently(language: &str, voice: &str, pace: f32) {
    if program("espeak-ng").is_none() {
        return;
    }
    let lines = script(language);
    let clean = read_aloud(&lines, voice, pace, false, 1);
    let (right, wrong, _) = judge(&format!("{language} clean"), &lines, &clean, clean.heard(60.0, 0.0));
    assert_eq!(wrong, 0);
    assert!(right * 10 > lines.len() * 9, "{language}: only {right} of {} are sure", lines.len());
    let slips = read_aloud(&lines, voice, pace, true, 2);
    let other = read_aloud(&lines, voice, pace, true, 7);
    let (_, wrong, _) =
        judge(&format!("{language} other slips 20 dB"), &lines, &other, other.heard(20.0, 0.0));
    assert_eq!(wrong, 0, "{language}, other slips");
    if program("sox").is_some() {
        let wav = in_a_room(&slips.heard(40.0, 0.0));
        let (_, wrong, _) = judge(&format!("{language} slips room"), &lines, &slips, wav);
        assert_eq!(wrong, 0, "{language} room");
    }
    for (name, snr, hum) in
        [("30 dB", 30.0, 0.0), ("20 dB", 20.0, 0.0), ("10 dB", 10.0, 0.0), ("hum", 40.0, 0.05)]
    {
        let (_, wrong, _) = judge(&format!("{language} slips {name}"), &lines, &slips, slips.heard(snr, hum));
        assert_eq!(wrong, 0, "{language} {name}");
    }
}

/// Two lines of a session are read without a pause between them.
#[test]
fn lines_read_in_one_breath_are_put_up() {
    if program("espeak-ng").is_none() {
        return;
    }
    let lines: Vec<Line> = script("en").into_iter().take(24).collect();
    let mut chance = Chance(3);
    let mut session =
        Session { samples: vec![0.0; RATE as usize], truth: BTreeMap::new(), sounding: Vec::new() };
    for line in &lines {
        let place = session.add(&say("en", 150.0, 50.0, line));
        session.truth.insert(line.number, Some(place));
        if line.number != 11 {
            session.pause(&mut chance);
        }
    }
    let (heard, _) = listen(&[recording("breath.wav", session.heard(40.0, 0.0))]).unwrap();
    let cuts = match_session(&lines, &heard);
    for number in [11, 12] {
        let of_line: Vec<&Cut> = cuts.iter().filter(|cut| cut.line == Some(number)).collect();
        let [cut] = of_line.as_slice() else { panic!("{number}: {of_line:?}") };
        assert_eq!(cut.verdict, CutVerdict::Confirm, "{cut:?}");
        assert!(cut.remark.contains("in one breath"), "{cut:?}");
    }
    let sure = cuts.iter().filter(|cut| cut.verdict == CutVerdict::Sure).count();
    assert!(sure >= 12, "{sure} of {} are sure", lines.len());
}

/// The same sound through other people's encoders: decoded by us as ffmpeg decodes it.
#[test]
fn every_format_is_decoded() {
    let Some(ffmpeg) = program("ffmpeg") else { return };
    let folder = tempfile::tempdir().unwrap();
    let source = folder.path().join("source.wav");
    // A rising tone, so that a shift in time cannot hide.
    let sound = (0..96_000).map(|at| {
        let t = f64::from(at) / 48_000.0;
        (0.4 * (std::f64::consts::TAU * (200.0 * t + 700.0 * t * t)).sin()) as f32
    });
    std::fs::write(&source, wav_of(48_000, 1, sound)).unwrap();
    let run = |arguments: &[&std::ffi::OsStr]| {
        let done = Command::new(ffmpeg).args(["-v", "error", "-y", "-i"]).args(arguments).output().unwrap();
        assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    };
    // Name, encoder's arguments, frames by which ours comes later, the largest relative rms of what differs.
    // MP4 is read with its coder's delay of 1024 frames, which its edit list would take away.
    let formats: [(&str, &[&str], usize, f32); 11] = [
        ("16.wav", &["-c:a", "pcm_s16le"], 0, 1e-4),
        ("24.wav", &["-c:a", "pcm_s24le"], 0, 1e-4),
        ("f.wav", &["-c:a", "pcm_f32le"], 0, 1e-4),
        ("x.flac", &[], 0, 1e-4),
        ("stereo.flac", &["-af", BOTH], 0, 1e-4),
        ("x.mp3", &["-af", ONE, "-b:a", "128k"], 0, 1e-4),
        ("x.m4a", &["-af", ONE, "-b:a", "128k"], 1024, 1e-4),
        ("x.ogg", &["-af", ONE, "-c:a", "libvorbis", "-q:a", "6"], 0, 1e-4),
        ("celt.opus", &["-af", ONE, "-c:a", "libopus", "-b:a", "96k"], 0, 1e-3),
        ("stereo.opus", &["-af", BOTH, "-c:a", "libopus", "-b:a", "96k"], 0, 1e-3),
        ("voip.opus", &["-af", ONE, "-c:a", "libopus", "-b:a", "12k", "-application", "voip"], 0, 1e-3),
    ];
    for (name, encoder, shift, tolerance) in formats {
        let path = folder.path().join(name);
        let encode: Vec<&std::ffi::OsStr> = [source.as_os_str()]
            .into_iter()
            .chain(encoder.iter().map(|a| a.as_ref()))
            .chain([path.as_os_str()])
            .collect();
        run(&encode);
        // ffmpeg's own Opus decoder is not the reference one.
        let decoder: &[&str] = if name.ends_with(".opus") { &["-c:a", "libopus"] } else { &[] };
        let decode = Command::new(ffmpeg)
            .args(["-v", "error"])
            .args(decoder)
            .arg("-i")
            .arg(&path)
            .args(["-f", "f32le", "-"])
            .output()
            .unwrap();
        let theirs: Vec<f32> =
            decode.stdout.chunks_exact(4).map(|b| f32::from_le_bytes([b[0], b[1], b[2], b[3]])).collect();
        // An encoder may make two channels of one.
        let channels = (theirs.len() + 48_000) / 96_000;
        let theirs: Vec<f32> =
            theirs.chunks_exact(channels).map(|frame| frame.iter().sum::<f32>() / channels as f32).collect();
        // As stored: a bank would take out what it takes for hum.
        let (rate, ours) = kabla::voice::record::quality::read(&std::fs::read(&path).unwrap()).unwrap();
        assert_eq!(rate, 48_000, "{name}");
        let pairs = theirs.iter().zip(ours.iter().skip(shift)).skip(4800).take(86_000);
        let (off, all) = pairs.fold((0f32, 0f32), |(off, all), (a, b)| (off + (a - b).powi(2), all + a * a));
        let differs = (off / all).sqrt();
        say_of!("{name}: ours {} frames, theirs {}, differs by {differs:.6}", ours.len(), theirs.len());
        assert!(differs < tolerance, "{name}: differs by {differs}");
        if shift == 0 {
            assert_eq!(ours.len(), theirs.len(), "{name}");
        }
    }
}

fn refusal(bytes: Vec<u8>) -> String {
    let findings = listen(&[recording("bad.wav", bytes)]).unwrap_err();
    assert!(findings.iter().all(|finding: &Finding| !finding.hint.is_empty()), "{findings:?}");
    findings[0].to_string()
}

#[test]
fn bad_recordings_are_refused_with_a_reason() {
    let second = |sample: f32| wav_of(16_000, 1, std::iter::repeat_n(sample, 16_000));
    assert!(refusal(Vec::new()).contains("is empty"));
    assert!(refusal(b"This is a letter and not a recording.".to_vec()).contains("neither WAV"));
    assert!(refusal(second(0.0)).contains("is silent"));
    assert!(refusal(second(f32::NAN)).contains("no numbers"));
    assert!(refusal(wav_of(16_000, 3, std::iter::repeat_n(0.1, 16_000 * 3))).contains("3 channels"));
    assert!(refusal(wav_of(4_000, 1, sine(4_000, 300.0, 0.3, 1.0))).contains("4000 samples a second"));
    let whole = wav_of(16_000, 1, sine(16_000, 300.0, 0.3, 1.0));
    assert!(refusal(whole[..whole.len() / 2].to_vec()).contains("end is missing"));
    assert!(refusal(b"OggS".to_vec()).contains("neither WAV"));
}

#[test]
fn a_list_of_cuts_comes_back_as_it_was() {
    let lines = script("en");
    let (name, lengths) = ("s.wav".to_owned(), BTreeMap::from([("s.wav".to_owned(), 10.0)]));
    let cut = |line: &Line, from: f64| Cut {
        place: Some((name.clone(), from, from + 1.0)),
        line: Some(line.number),
        words: line.words.clone(),
        intonation: Some(line.intonation),
        verdict: CutVerdict::Sure,
        remark: String::new(),
    };
    let cuts = vec![cut(&lines[0], 0.5), cut(&lines[1], 2.25)];
    let text = write_cuts(&cuts);
    assert_eq!(read_cuts("c.csv", text.as_bytes(), &lines, &lengths).unwrap(), cuts);
    let semicolons = "recording;from;to;line;verdict\ns.wav;0,5;1,5;1;keep\n";
    let read = read_cuts("c.csv", semicolons.as_bytes(), &lines, &lengths).unwrap();
    assert_eq!(read[0].place, Some((name, 0.5, 1.5)));
}

#[test]
fn all_mistakes_of_a_list_are_told_at_once() {
    let lines = script("en");
    let lengths = BTreeMap::from([("s.wav".to_owned(), 10.0)]);
    let text = "recording,from,to,line,verdict,remark\n\
        s.wav,1,2,1,keep,\n\
        s.wav,3,2,2,keep,\n\
        other.wav,1,2,3,keep,\n\
        s.wav,1,2,9999,keep,\n\
        s.wav,1,20,4,keep,\n\
        s.wav,x,2,5,keep,\n\
        s.wav,1,2,6,perhaps,\n\
        s.wav,1,2,7,confirm,said 2 times\n\
        s.wav,4,5,1,keep,\n";
    let findings = read_cuts("c.csv", text.as_bytes(), &lines, &lengths).unwrap_err();
    let rows: Vec<u32> = findings.iter().filter_map(|finding| finding.place.line).collect();
    assert_eq!(rows, [3, 4, 5, 6, 7, 8, 9, 10], "{findings:#?}");
}

#[test]
fn scripts_tell_their_mistakes() {
    let good = r#"{"id":"a#1","words":"Dig","intonation":"final","seconds":1.5}"#;
    assert_eq!(read_script("s", good).unwrap()[0].number, 1);
    let bad = format!("{good}\n{{\"id\":1}}\n{}\n", good.replace("final", "rising"));
    assert_eq!(read_script("s", &bad).unwrap_err().len(), 2);
}

fn consent() -> Consent {
    let text = |text: &str| Some(text.to_owned());
    Consent {
        speaker: text("S01"),
        rights: text("free for this project"),
        consent: text("signed on 2 May 2027"),
        made_by: text("a phone in a quiet room"),
    }
}

fn clip(words: &str) -> NewClip {
    let file = file_name(words, Intonation::Final);
    NewClip { file, words: words.to_owned(), intonation: Intonation::Final, id: "x#1".to_owned() }
}

#[test]
fn a_first_import_demands_consent_and_later_ones_keep_it() {
    let findings = update_bank(("en", "v"), None, &Consent::default(), &[clip("Dig")], None).unwrap_err();
    assert_eq!(findings.len(), 4, "{findings:?}");
    let named = Consent { speaker: Some("Amina Said".to_owned()), ..consent() };
    assert!(
        update_bank(("en", "v"), None, &named, &[], None).unwrap_err()[0].to_string().contains("not a code")
    );
    let first = update_bank(("en", "v"), None, &consent(), &[clip("Dig")], Some("room-tone.wav")).unwrap();
    let noted = format!("# by hand\n{first}");
    let second = update_bank(("en", "v"), Some(&noted), &Consent::default(), &[clip("Plant")], None).unwrap();
    assert!(second.starts_with("# by hand") && second.contains("signed on 2 May 2027"), "{second}");
    assert_eq!(second.matches("[[clip]]").count(), 2);
    let again =
        update_bank(("en", "v"), Some(&second), &consent(), &[clip("plant"), clip("Dig")], None).unwrap();
    assert_eq!(again.matches("[[clip]]").count(), 2, "{again}");
    // The same words with the voice held up are another clip, and take no other's place.
    let held =
        NewClip { file: file_name("Dig", Intonation::Medial), intonation: Intonation::Medial, ..clip("Dig") };
    let both = update_bank(("en", "v"), Some(&again), &consent(), &[held], None).unwrap();
    assert_eq!(both.matches("[[clip]]").count(), 3, "{both}");
    for intonation in [Intonation::Final, Intonation::Medial] {
        assert!(both.contains(&format!("file = \"{}\"", file_name("Dig", intonation))), "{both}");
    }
}

#[test]
fn a_stand_in_voice_takes_no_recordings() {
    let findings = update_bank(("en", "v"), Some(HEADER), &consent(), &[], None).unwrap_err();
    assert!(findings[0].to_string().contains("stand-in"), "{findings:?}");
}
