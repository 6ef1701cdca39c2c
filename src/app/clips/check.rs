//! How well a voice is recorded.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::thread;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD as BASE64;
use serde::Serialize;

use super::super::output::Output;
use super::super::{Code, Data, Error, Finding};
use crate::catalogue::catalogue;
use crate::guidance::{Value, Variable};
use crate::language::{Direction, Label, Pack};
use crate::sheet;
use crate::voice::record::picture::{COLUMNS, HEIGHT, ROWS, spectrogram, waveform};
use crate::voice::record::quality::{Found, Measures, Norms, Verdict, judge, letters, measure, read};
use crate::voice::record::words::{Use, uses};
use crate::voice::{Bank, Clip, ClipState};

/// What is to be checked.
#[derive(Debug, Clone, Copy)]
pub struct CheckRequest<'a> {
    /// The language.
    pub language: &'a str,
    /// The recorded voice; the pack's own where none is named.
    pub voice: Option<&'a str>,
    /// The HTML page to write.
    pub page: Option<&'a Path>,
    /// The folder on disk that the data come from, so that the page can name clips in it.
    pub root: Option<&'a Path>,
}

/// A bank, checked.
#[derive(Debug, Clone, PartialEq)]
pub struct ClipsChecked {
    /// The voice.
    pub voice: String,
    /// The clips, the worst first.
    pub clips: Vec<ClipChecked>,
    /// Phrases that no clip says, in the order of the pack.
    pub missing: Vec<String>,
    /// Phrases that are recorded with the other intonation only.
    pub other_intonation: usize,
}

/// A clip, checked.
#[derive(Debug, Clone, PartialEq)]
pub struct ClipChecked {
    /// Its file, by its path in the data folder.
    pub path: String,
    /// The words it says.
    pub words: String,
    /// What is to be done.
    pub outcome: Outcome,
    /// What is wrong with it, the worst first.
    pub faults: Vec<Found>,
    /// The same for its speaker, in the language of the pack.
    pub reasons: Vec<String>,
    /// What was measured; none where the file cannot be read.
    pub measures: Result<Measures, Finding>,
    /// How many times faster than usual it is spoken, where that can be told.
    pub pace: Option<f64>,
}

catalogue! {
    /// What is to be done with a clip, the most urgent first.
    pub enum Outcome: OutcomeEntry {
        /// The heading of such clips.
        heading: Label,
    }
    /// It is to be recorded again.
    Again = "again" { heading: Label::ClipsAgain };
    /// It may be used.
    Usable = "usable" { heading: Label::ClipsUsable };
    /// Nothing is wrong with it.
    Good = "good" { heading: Label::ClipsGood };
    /// Nobody needs it.
    Unused = "unused" { heading: Label::ClipsUnused };
}

impl From<Verdict> for Outcome {
    fn from(verdict: Verdict) -> Outcome {
        match verdict {
            Verdict::Again => Outcome::Again,
            Verdict::Usable => Outcome::Usable,
            Verdict::Good => Outcome::Good,
        }
    }
}

/// Checks the clips of a voice, and writes the page where one is asked for.
///
/// # Errors
/// Problems of the pack or of `bank.toml`; a page that cannot be made or written. A clip that cannot
/// be read is no error here: it is to be recorded again.
pub fn check_clips(data: &dyn Data, request: CheckRequest<'_>) -> Result<ClipsChecked, Error> {
    let pack = Pack::load(data, request.language).map_err(Error::Input)?;
    let phrases = pack.phrases().map_err(Error::Input)?;
    let bank = Bank::load(data, &pack.tag(), request.voice.unwrap_or(pack.voice())).map_err(Error::Input)?;
    let voice = &bank.voice().voice;
    let folder = format!("audio/{}/{voice}", pack.tag());
    let heard = hear(data, &folder, bank.clips(), request.page.is_some());
    let measured = bank.clips().iter().zip(&heard).filter_map(|(clip, heard)| {
        let (measures, _) = heard.as_ref().ok()?;
        Some((measures, letters(&clip.words)))
    });
    let norms = Norms::of(measured);
    let mut clips = Vec::with_capacity(heard.len());
    for ((clip, used), heard) in bank.clips().iter().zip(uses(bank.clips(), &phrases)).zip(heard) {
        let path = format!("{folder}/{}", clip.file);
        let (measures, pictures) = match heard {
            Ok((measures, pictures)) => (Ok(measures), pictures),
            Err(finding) => (Err(finding.file(&path)), None),
        };
        clips.push((checked(&pack, clip, path, used, measures, &norms)?, pictures));
    }
    clips.sort_by_key(|(clip, _)| (clip.outcome, clip.faults.first().map(|found| found.fault)));
    let states = phrases.iter().zip(bank.statuses(&phrases));
    let unsaid = |state: &ClipState| matches!(state, ClipState::Missing | ClipState::Stale { .. });
    let mut missing: Vec<String> =
        states.filter(|(_, state)| unsaid(state)).map(|(phrase, _)| phrase.words.clone()).collect();
    missing.dedup();
    let other = bank.statuses(&phrases).into_iter().filter(|state| *state == ClipState::OtherIntonation);
    let other_intonation = other.count();
    if let Some(page) = request.page {
        let page = Page::of(&pack, bank.voice(), &clips, &missing, &Sounds::new(data, request.root, page))?;
        let mut output = Output::default();
        output.add(request.page.unwrap_or(Path::new("")), &sheet::render("clips.html", &page, data)?)?;
        output.commit()?;
    }
    let clips = clips.into_iter().map(|(clip, _)| clip).collect();
    Ok(ClipsChecked { voice: voice.clone(), clips, missing, other_intonation })
}

/// A clip drawn: path of its waveform, PNG picture of its spectrogram.
type Pictures = (String, Vec<u8>);
type Heard = Result<(Measures, Option<Pictures>), Finding>;

/// Measures all clips, on all cores.
fn hear(data: &dyn Data, folder: &str, clips: &[Clip], draw: bool) -> Vec<Heard> {
    let cores = thread::available_parallelism().map_or(1, usize::from);
    let share = clips.len().div_ceil(cores).max(1);
    thread::scope(|scope| {
        let hear_all = |clips: &[Clip]| clips.iter().map(|clip| hear_one(data, folder, clip, draw)).collect();
        let at_work: Vec<_> =
            clips.chunks(share).map(|clips| (clips, scope.spawn(move || hear_all(clips)))).collect();
        let done = at_work.into_iter().flat_map(|(clips, work): (&[Clip], _)| -> Vec<Heard> {
            // One that broke down is done again here, so that its failure is seen.
            work.join().unwrap_or_else(|_| hear_all(clips))
        });
        done.collect()
    })
}

fn hear_one(data: &dyn Data, folder: &str, clip: &Clip, draw: bool) -> Heard {
    let bytes = data.read(&format!("{folder}/{}", clip.file)).ok_or_else(|| {
        Finding::error(Code::CANNOT_READ, "cannot be read").hint("check the file and its rights")
    })?;
    let (rate, samples) = read(&bytes)?;
    let pictures = || Some((waveform(&samples), spectrogram(rate, &samples)?));
    Ok((measure(rate, &samples), draw.then(pictures).flatten()))
}

fn checked(
    pack: &Pack,
    clip: &Clip,
    path: String,
    used: Use,
    measures: Result<Measures, Finding>,
    norms: &Norms,
) -> Result<ClipChecked, Error> {
    let letters = letters(&clip.words);
    let mut faults = measures.as_ref().map(|measures| judge(measures, letters, norms)).unwrap_or_default();
    // Where nobody needs the words, it does not matter how they sound.
    if used != Use::Wanted {
        faults.clear();
    }
    let pace = measures.as_ref().ok().and_then(|measures| norms.pace_of(measures, letters));
    let mut reasons = Vec::new();
    let mut outcome = faults.first().map_or(Outcome::Good, |found| found.verdict.into());
    if measures.is_err() {
        reasons.push(pack.label(Label::ClipBroken, &[])?);
        outcome = Outcome::Again;
    }
    for found in &faults {
        reasons.push(pack.label(found.fault.label(), &[])?);
    }
    match used {
        Use::Wanted => {}
        Use::Replaced { now } => {
            outcome = Outcome::Again;
            reasons = vec![pack.label(Label::ClipStale, &[Variable::Words.with(Value::Text(now))])?];
        }
        Use::Unused => {
            outcome = Outcome::Unused;
            reasons = vec![pack.label(Label::ClipUnused, &[])?];
        }
    }
    Ok(ClipChecked { path, words: clip.words.clone(), outcome, faults, reasons, measures, pace })
}

/// What the page's template sees.
#[derive(Serialize)]
struct Page {
    language: String,
    direction: &'static str,
    title: String,
    /// Whose recordings.
    voice: String,
    intro: String,
    columns: usize,
    height: usize,
    rows: usize,
    groups: Vec<Group>,
    missing: Missing,
    status: String,
}

#[derive(Serialize)]
struct Group {
    name: &'static str,
    heading: String,
    clips: Vec<Card>,
}

#[derive(Serialize)]
struct Missing {
    heading: String,
    words: Vec<String>,
}

#[derive(Serialize)]
struct Card {
    words: String,
    file: String,
    reasons: Vec<String>,
    figures: Vec<(String, String)>,
    alt: String,
    waveform: Option<String>,
    spectrogram: Option<String>,
    sound: Option<String>,
}

impl Page {
    fn of(
        pack: &Pack,
        voice: &crate::voice::VoiceInfo,
        clips: &[(ClipChecked, Option<Pictures>)],
        missing: &[String],
        sounds: &Sounds<'_>,
    ) -> Result<Page, Error> {
        let mut room = MOST_INSIDE;
        let mut groups = Vec::new();
        for outcome in Outcome::ALL {
            let of_group = clips.iter().filter(|(clip, _)| clip.outcome == outcome);
            let clips: Vec<Card> = of_group
                .map(|(clip, pictures)| Card::of(pack, clip, pictures.as_ref(), sounds.of(clip, &mut room)))
                .collect::<Result<_, Error>>()?;
            let heading = pack.label(outcome.heading(), &[])?;
            groups.push(Group { name: outcome.name(), heading, clips });
        }
        Ok(Page {
            language: pack.tag(),
            direction: match pack.direction() {
                Direction::LeftToRight => "ltr",
                Direction::RightToLeft => "rtl",
            },
            title: pack.label(Label::ClipsTitle, &[])?,
            voice: format!("{} · {} · {}", pack.name(), voice.voice, voice.speaker),
            intro: pack.label(Label::ClipsIntro, &[])?,
            columns: COLUMNS,
            height: HEIGHT,
            rows: ROWS,
            groups,
            missing: Missing { heading: pack.label(Label::ClipsMissing, &[])?, words: missing.to_vec() },
            status: pack.label(pack.status().label(), &[])?,
        })
    }
}

impl Card {
    fn of(
        pack: &Pack,
        clip: &ClipChecked,
        pictures: Option<&Pictures>,
        sound: Option<String>,
    ) -> Result<Card, Error> {
        let mut figures = Vec::new();
        if let Ok(measures) = &clip.measures {
            let mut add = |label: Label, value: Option<f64>, decimals: u8, unit: &str| -> Result<(), Error> {
                if let Some(value) = value {
                    let value = format!("{}\u{a0}{unit}", pack.write_number(value, decimals));
                    figures.push((pack.label(label, &[])?, value));
                }
                Ok(())
            };
            add(Label::ClipsLength, Some(measures.seconds), 1, "s")?;
            add(Label::ClipsLevel, Some(measures.level_dbfs), 0, "dBFS")?;
            add(Label::ClipsNoise, measures.speech_to_noise_db(), 0, "dB")?;
            add(Label::ClipsHum, measures.speech_to_hum_db(), 0, "dB")?;
            add(Label::ClipsPace, clip.pace.map(|pace| 100.0 * pace), 0, "%")?;
        }
        Ok(Card {
            words: clip.words.clone(),
            file: clip.path.rsplit('/').next().unwrap_or_default().to_owned(),
            reasons: clip.reasons.clone(),
            figures,
            alt: pack.label(Label::ClipsPicture, &[Variable::Words.with(Value::Text(clip.words.clone()))])?,
            waveform: pictures.map(|(waveform, _)| waveform.clone()),
            spectrogram: pictures.map(|(_, png)| format!("data:image/png;base64,{}", BASE64.encode(png))),
            sound,
        })
    }
}

/// Sound that goes into a page, in bytes: more is too much to send to a phone.
const MOST_INSIDE: usize = 3_000_000;
/// And of one clip.
const MOST_OF_ONE: usize = 200_000;

/// Where a page finds the clips themselves.
struct Sounds<'a> {
    data: &'a dyn Data,
    /// The data folder, as seen from the page.
    root: Option<String>,
}

impl<'a> Sounds<'a> {
    fn new(data: &'a dyn Data, root: Option<&Path>, page: &Path) -> Sounds<'a> {
        Sounds { data, root: root.and_then(|root| way(page.parent()?, root)) }
    }

    /// The clip inside the page while there is `room`, the worst first; else beside it, where it lies on disk.
    fn of(&self, clip: &ClipChecked, room: &mut usize) -> Option<String> {
        clip.measures.as_ref().ok()?;
        let bytes = self.data.read(&clip.path)?;
        if bytes.len() <= MOST_OF_ONE.min(*room) {
            *room -= bytes.len();
            let extension = Path::new(&clip.path).extension().and_then(|of| of.to_str());
            let kind = match extension.map(str::to_ascii_lowercase).as_deref() {
                Some("wav") => "wav",
                Some("opus") => "ogg",
                _ => "flac",
            };
            return Some(format!("data:audio/{kind};base64,{}", BASE64.encode(bytes)));
        }
        // A part that the folder lacks comes from the program, and lies nowhere.
        matches!(bytes, Cow::Owned(_)).then_some(())?;
        self.root.as_ref().map(|root| address(&format!("{root}/{}", clip.path)))
    }
}

/// The way from one folder to another, with forward slashes.
fn way(from: &Path, to: &Path) -> Option<String> {
    let from = std::path::absolute(if from.as_os_str().is_empty() { Path::new(".") } else { from }).ok()?;
    let to = std::path::absolute(to).ok()?;
    let common = from.components().zip(to.components()).take_while(|(one, other)| one == other).count();
    let up = from.components().skip(common).map(|_| "..");
    let parts: Vec<PathBuf> = up
        .map(PathBuf::from)
        .chain(to.components().skip(common).map(|part| part.as_os_str().into()))
        .collect();
    let parts: Option<Vec<&str>> = parts.iter().map(|part| part.to_str()).collect();
    Some(if parts.as_ref()?.is_empty() { ".".to_owned() } else { parts?.join("/") })
}

/// A path as an address: all but plain letters, digits and `/._-~` as bytes in hexadecimal.
fn address(path: &str) -> String {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"/._-~".contains(&byte);
    path.bytes()
        .map(|byte| if plain(byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") })
        .collect()
}

impl Serialize for ClipChecked {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map: BTreeMap<&str, serde_json::Value> = BTreeMap::new();
        map.insert("file", self.path.clone().into());
        map.insert("words", self.words.clone().into());
        map.insert("verdict", self.outcome.name().into());
        map.insert("reasons", self.reasons.clone().into());
        let faults = self.faults.iter().map(|found| {
            serde_json::json!({ "fault": found.fault.name(), "verdict": Outcome::from(found.verdict).name(), "amount": found.amount })
        });
        map.insert("faults", faults.collect());
        match &self.measures {
            Ok(measures) => {
                let hum = measures.hum.as_ref();
                let figures = serde_json::json!({
                    "seconds": measures.seconds, "speech_seconds": measures.speech_seconds,
                    "level_dbfs": measures.level_dbfs, "noise_dbfs": measures.noise_dbfs,
                    "speech_to_noise_db": measures.speech_to_noise_db(),
                    "hum_hz": hum.map(|hum| hum.mains_hz), "hum_dbfs": hum.map(|hum| hum.dbfs),
                    "rumble_dbfs": measures.rumble_dbfs, "dc": measures.dc,
                    "clipped_share": measures.clipped,
                    "start_dbfs": measures.start_dbfs, "end_dbfs": measures.end_dbfs,
                    "room_seconds": measures.room_seconds, "pace": self.pace,
                });
                map.insert("measures", figures);
            }
            Err(finding) => {
                map.insert("finding", serde_json::json!(finding));
            }
        }
        map.serialize(serializer)
    }
}
