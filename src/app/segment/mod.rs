//! A radio segment of exact length for a week, and the season's plan of segments.

mod airings;
mod pool;
mod script;

use std::path::{Path, PathBuf};

use chrono::NaiveDate;

use super::delivery::Delivery;
use super::output::Output;
use super::{Code, Data, Error, Finding, Length, Made, Overrides, Progress, ReadCase};
use crate::guidance::{Item, Statement, Timing, in_order, told_in, week_of};
use crate::language::{Label, Pack, Pause, Piece};
use crate::plan::DateSpan;
use crate::sheet::{Printer, SheetError};
use crate::voice::join::Span;
use crate::voice::segment::{Choice, Measure, MixOptions, Mixed, Music, PauseRanges, Set, Use};
use crate::voice::segment::{choose, estimate, fit, mix, read as read_sound};
use crate::voice::{
    self, Bank, Frames, JoinOptions, MissingPhrase, SAMPLE_RATE, SpeakOptions, Spoken, Status, Timed,
    VoiceError,
};

pub use airings::season;

use pool::{Pool, READING_RATE, every_phrase, measure_all};
use script::{Heard, What};

/// What segment is asked for.
#[derive(Debug, Clone, Copy)]
pub struct SegmentRequest<'a> {
    /// The case's file.
    pub case: &'a Path,
    /// What goes before the case's own.
    pub overrides: Overrides,
    /// Its language; the case's own where none is named.
    pub language: Option<&'a str>,
    /// The recorded voice; the pack's own where none is named.
    pub voice: Option<&'a str>,
    /// The station's sounds.
    pub music: MusicFiles<'a>,
    /// Whether a presenter reads it live: then no sound is made.
    pub live: bool,
    /// The folder it goes to.
    pub out: &'a Path,
}

/// A station's sound files.
#[derive(Debug, Clone, Copy)]
pub struct MusicFiles<'a> {
    /// Before the voice.
    pub opening: Option<&'a Path>,
    /// After the voice.
    pub closing: Option<&'a Path>,
    /// Under the voice.
    pub bed: Option<&'a Path>,
    /// How far the bed lies below the voice, in dB.
    pub bed_below: f64,
}

/// When a segment airs, and how long it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SegmentTime {
    /// A day of its week.
    pub week: NaiveDate,
    /// Its length in seconds, with opening and closing.
    pub seconds: f64,
}

/// A segment that was made.
#[derive(Debug)]
pub struct Segment {
    /// Its files.
    pub made: Vec<Made>,
    /// Why there is a script to read live in place of sound, where there is: the phrases without a fresh recording.
    pub missing: Option<Error>,
}

/// A length this near to the one asked for, in seconds, is taken for it.
const TOLERANCE: f64 = 0.5;

/// Makes the segment of a week: sound with cue sheet and captions, and the presenter's script. Where a phrase has no
/// fresh recording there is the script alone, for live reading.
///
/// # Errors
/// Problems of the case, the pack, the bank or the sounds; a week with nothing to say; a length
/// that cannot be had, with the nearest ones. Nothing is written then.
pub fn segment(
    data: &dyn Data,
    request: SegmentRequest<'_>,
    time: SegmentTime,
    progress: Progress<'_>,
) -> Result<Segment, Error> {
    let read = ReadCase::from_disk(request.case).and_then(|read| read.with(request.overrides));
    let open = |path: &Path| std::fs::read(path);
    let music = read_music(&request.music, &open);
    let (read, music) = match (read, music) {
        (Ok(read), Ok(music)) => (read, music),
        // One report of all.
        (Err(Error::Input(mut findings)), Err(more)) => {
            findings.extend(more);
            return Err(Error::Input(findings));
        }
        (Err(error), _) => return Err(error),
        (_, Err(findings)) => return Err(Error::Input(findings)),
    };
    let mut output = Output::default();
    let segment = make(data, &read, &request, (time, &music), &mut output, progress)?;
    output.commit()?;
    Ok(segment)
}

/// Reads a station's sounds, and finds all that is wrong with them.
pub(super) fn read_music(
    files: &MusicFiles<'_>,
    open: &dyn Fn(&Path) -> std::io::Result<Vec<u8>>,
) -> Result<Music, Vec<Finding>> {
    let mut findings = Vec::new();
    let mut read = |path: Option<&Path>, of, argument| {
        let path = path?;
        let name = path.display().to_string();
        let bytes = open(path).map_err(|error| {
            let finding = Finding::error(Code::CANNOT_READ, format!("cannot be read: {error}")).file(&name);
            finding.hint("check the name and the folder")
        });
        let sound = bytes.and_then(|bytes| read_sound(&bytes, &name, of));
        sound.map_err(|finding| findings.push(finding.argument(argument))).ok()
    };
    let music = Music {
        opening: read(files.opening, Use::Signature, "opening"),
        closing: read(files.closing, Use::Signature, "closing"),
        bed: read(files.bed, Use::Bed, "music"),
    };
    if findings.is_empty() { Ok(music) } else { Err(findings) }
}

/// Makes a segment ready to be written.
pub(super) fn make(
    data: &dyn Data,
    read: &ReadCase,
    request: &SegmentRequest<'_>,
    (time, music): (SegmentTime, &Music),
    output: &mut Output,
    progress: Progress<'_>,
) -> Result<Segment, Error> {
    let pack = read.pack(data, request.language)?;
    let week = week_of(time.week);
    let statements = told_in(&read.statements()?, week);
    let mut pool = Pool::of(&pack, &statements, week)?;
    if pool.classes().iter().flatten().next().is_none() {
        let message = format!("there is nothing to say in the week from {} to {}", week.from, week.to);
        let finding = Finding::error(Code::NOT_IN_PLAN, message).file(&read.name).argument("week");
        return Err(Error::Input(vec![finding.hint("choose a week in which something is told")]));
    }
    let options = SpeakOptions { phrases: pack.phrases().map_err(Error::Input)?, ..SpeakOptions::default() };
    let voice = request.voice.unwrap_or(pack.voice());
    let bank = match request.live {
        true => None,
        // Without any voice there is the script; one that is named and broken, or not there, is a mistake.
        false if request.voice.is_none() && Bank::voices(data, &pack.tag()).is_empty() => None,
        false => Some(Bank::load(data, &pack.tag(), voice).map_err(Error::Input)?),
    };
    let mut missing = Vec::new();
    if let Some(bank) = &bank {
        missing = measure_all(&mut pool, bank, &options, progress)?;
    }
    let job = Job { data, read, pack: &pack, statements: &statements, week, out: request.out };
    match bank {
        Some(bank) if missing.is_empty() => {
            let bed_below = request.music.bed_below;
            let made = job.sound(&pool, &bank, &options, (time, music, bed_below), output)?;
            Ok(Segment { made, missing: None })
        }
        bank => {
            pool.estimate();
            let no_voice = bank.is_none() && !request.live;
            if no_voice {
                missing = every_phrase(&pool);
            }
            let made = job.live(&pool, (time, music), (&missing, no_voice), output)?;
            let (language, voice) = (pack.tag(), voice.to_owned());
            let missing = (!missing.is_empty())
                .then(|| VoiceError::Missing { language, voice, phrases: missing }.into());
            Ok(Segment { made, missing })
        }
    }
}

/// What all files of a segment are made from.
struct Job<'a, 's> {
    data: &'a dyn Data,
    read: &'a ReadCase,
    pack: &'a Pack,
    statements: &'s [Statement],
    week: DateSpan,
    out: &'a Path,
}

impl<'s> Job<'_, 's> {
    fn path(&self, ending: &str) -> PathBuf {
        self.out.join(format!("{}.{ending}", stem(self.pack, self.week)))
    }

    fn sound(
        &self,
        pool: &Pool<'s>,
        bank: &Bank<'_>,
        options: &SpeakOptions,
        (time, music, bed_below): (SegmentTime, &Music, f64),
        output: &mut Output,
    ) -> Result<Vec<Made>, Error> {
        let signatures = music.signatures();
        let with = (music.opening.is_some(), music.closing.is_some());
        let ranges = PauseRanges::around(&options.join, with, music.bed.is_some());
        let lengths = |set| pool.lengths(set, &ranges, &options.join, signatures);
        let (set, target) = match choose(&pool.classes(), lengths, frames(time.seconds)) {
            Choice::Fits(set) => (set, frames(time.seconds)),
            Choice::Between { below, above } => {
                near(below, above, time.seconds).ok_or_else(|| self.refusal(pool, time, below, above))?
            }
        };
        let chosen = pool.chosen(set.items);
        let ordered = in_order(self.statements, &chosen);
        let pieces: Vec<Piece> =
            ordered.iter().flat_map(|statement| pool.pieces(statement).iter().cloned()).collect();
        let spoken =
            spoken_in(&pieces, bank, options, (pool.measure(set.items), target - signatures, &ranges))?
                .ok_or_else(|| self.refusal(pool, time, None, None))?;
        let mixed = mix(spoken, music, &MixOptions { bed_below, ..MixOptions::default() })
            .map_err(VoiceError::from)?;
        let music_lines = self.music_lines(&mixed)?;
        let heard = self.heard(&ordered, &mixed)?;
        let seconds = mixed.spoken.length().seconds();
        let script = script::Facts {
            heard: &heard,
            length: mixed.spoken.length(),
            voice: Some(bank.voice()),
            bed_below: mixed.bed.is_some().then_some(bed_below),
            left_out: &self.left_out(pool, set.items)?,
            missing: &[],
            live: None,
        };
        let mut remarks = self.remarks(pool, set.items)?;
        if bank.voice().status == Status::StandIn {
            remarks.push(format!(
                "{}: a stand-in voice made by a machine, to be replaced by a person",
                self.pack.name()
            ));
        }
        if (seconds - time.seconds).abs() > 0.001 {
            remarks
                .push(format!("{seconds:.1} s is the length nearest to the {:.1} s asked for", time.seconds));
        }
        let title = self.pack.label(Label::SegmentTitle, &[])?;
        let delivery = Delivery { pack: self.pack, read: self.read, bank, out: self.out, output };
        delivery.segment(&stem(self.pack, self.week), &title, &mixed.spoken, music_lines)?;
        let mut made = vec![Made {
            path: self.path("wav"),
            what: format!(
                "radio segment (mono), with cue sheet (.cue.txt) and captions (.vtt, .srt), {}",
                self.pack.name()
            ),
            audience: "radio producer",
            length: Length::Seconds(seconds),
            remarks,
        }];
        made.extend(self.write_script(&script, output)?);
        Ok(made)
    }

    /// The script of a segment that is read live, with estimated times.
    fn live(
        &self,
        pool: &Pool<'s>,
        (time, music): (SegmentTime, &Music),
        (missing, no_voice): (&[MissingPhrase], bool),
        output: &mut Output,
    ) -> Result<Vec<Made>, Error> {
        let join = JoinOptions::default();
        let ranges = PauseRanges::around(&join, (false, false), false);
        // Signatures are played beside the reader.
        let signatures = music.signatures();
        let lengths = |set| pool.lengths(set, &ranges, &join, signatures);
        // A reader keeps no exact time: what can be said in it is said, and the rest is the presenter's.
        let (set, target) = match choose(&pool.classes(), lengths, frames(time.seconds)) {
            Choice::Fits(set) => (set, frames(time.seconds)),
            Choice::Between { below: Some(set), .. } => (set, set.length.most),
            Choice::Between { below: None, above } => return Err(self.refusal(pool, time, None, above)),
        };
        let reading = target - signatures;
        let join = fit(&pool.measure(set.items), reading, &ranges, &join).unwrap_or(join);
        let heard = self.read_aloud(pool, &pool.chosen(set.items), &join, music)?;
        let script = script::Facts {
            heard: &heard,
            length: target,
            voice: None,
            bed_below: None,
            left_out: &self.left_out(pool, set.items)?,
            missing,
            live: Some(script::Live { rate: READING_RATE, without_voice: no_voice }),
        };
        let mut made = self.write_script(&script, output)?;
        if let Some(first) = made.first_mut() {
            first.remarks = self.remarks(pool, set.items)?;
            let about = target.seconds();
            first.remarks.push(format!(
                "no sound was made; read aloud it takes about {about:.0} of {:.0} s, at {READING_RATE} syllables a second",
                time.seconds
            ));
        }
        Ok(made)
    }

    /// Where a reader is expected to be when.
    fn read_aloud(
        &self,
        pool: &Pool<'s>,
        chosen: &[&Item<'s>],
        join: &JoinOptions,
        music: &Music,
    ) -> Result<Vec<Heard<'s>>, Error> {
        let signature = |from: Frames, sound: &Option<Vec<f32>>, id| {
            let heard = sound.as_ref().map(|samples| {
                let to = from + Frames(samples.len() as u64);
                Ok::<_, Error>(Heard { from, to, what: What::Music(self.pack.label(id, &[])?) })
            });
            heard.transpose()
        };
        let mut heard: Vec<Heard<'s>> =
            signature(Frames(0), &music.opening, Label::SegmentOpening)?.into_iter().collect();
        let mut at = heard.last().map_or(Frames(0), |heard| heard.to) + join.lead;
        let bare = JoinOptions { lead: Frames(0), tail: Frames(0), ..join.clone() };
        for statement in in_order(self.statements, chosen) {
            let pieces = pool.pieces(statement);
            let to = at + estimate(pieces, READING_RATE).length(&bare);
            heard.push(Heard { from: at, to, what: What::Words(statement, script::text(pieces, true)) });
            at = to + join.statement;
        }
        heard.extend(signature(at - join.statement + join.tail, &music.closing, Label::SegmentClosing)?);
        Ok(heard)
    }

    fn remarks(&self, pool: &Pool<'_>, set: u32) -> Result<Vec<String>, Error> {
        let mut remarks = super::remarks_on(self.pack);
        remarks.extend(super::led_to(self.pack, self.statements)?);
        let left: Vec<&str> = self.left(pool, set).map(|item| item.statement.subject.name()).collect();
        if !left.is_empty() {
            remarks.push(format!("no time was left for: {}", left.join(", ")));
        }
        Ok(remarks)
    }

    /// What of this or the next weeks is not said; views further ahead only fill time.
    fn left<'p>(&self, pool: &'p Pool<'s>, set: u32) -> impl Iterator<Item = &'p Item<'s>> {
        let told = pool.chosen(set);
        let said = in_order(self.statements, &told);
        let left = (0..).zip(&pool.items).filter(move |(bit, _)| set >> bit & 1 == 0).map(|(_, item)| item);
        left.filter(move |item| item.timing != Timing::Ahead && !said.contains(&item.statement))
    }

    fn left_out(&self, pool: &Pool<'s>, set: u32) -> Result<Vec<String>, Error> {
        self.left(pool, set).map(|item| Ok(self.pack.write_title(item.statement)?)).collect()
    }

    /// Signatures and bed as lines of the cue sheet.
    fn music_lines(&self, mixed: &Mixed) -> Result<Vec<Timed>, Error> {
        let music = [
            (mixed.opening, Label::SegmentOpening),
            (mixed.bed, Label::SegmentBed),
            (mixed.closing, Label::SegmentClosing),
        ];
        let heard = music.into_iter().filter_map(|(span, id)| Some((span?, id)));
        heard
            .map(|(Span { from, to }, id)| {
                let words = self.pack.label(id, &[])?;
                Ok(Timed { from, to, words, clip: String::new(), pause: None })
            })
            .collect()
    }

    /// What is heard one after the other: signatures and statements.
    fn heard(&self, ordered: &[&'s Statement], mixed: &Mixed) -> Result<Vec<Heard<'s>>, Error> {
        let music = |span: Option<Span>, id| {
            let heard = span.map(|Span { from, to }| {
                Ok::<_, Error>(Heard { from, to, what: What::Music(self.pack.label(id, &[])?) })
            });
            heard.transpose()
        };
        let mut heard: Vec<Heard<'s>> = music(mixed.opening, Label::SegmentOpening)?.into_iter().collect();
        let ends = |line: &Timed| line.pause == Some(Pause::Statement);
        for (lines, statement) in mixed.spoken.lines.split_inclusive(ends).zip(ordered) {
            if let (Some(first), Some(last)) = (lines.first(), lines.last()) {
                let text = lines.iter().map(|line| line.words.as_str()).collect::<Vec<_>>().join(" ");
                heard.push(Heard { from: first.from, to: last.to, what: What::Words(statement, text) });
            }
        }
        heard.extend(music(mixed.closing, Label::SegmentClosing)?);
        Ok(heard)
    }

    fn write_script(&self, facts: &script::Facts<'_>, output: &mut Output) -> Result<Vec<Made>, Error> {
        let script = script::of(self.pack, self.statements, self.week, facts)?;
        let pdf = Printer::new(self.data)?.set("segment.typ", &script, std::collections::BTreeMap::new())?;
        if let Some(overflow) = pdf.overflows.first() {
            let message = format!("the script does not fit on its paper: {overflow}");
            return Err(SheetError::Template { file: "templates/segment.typ".to_owned(), message }.into());
        }
        let text = crate::sheet::render("segment.txt", &script, self.data)?;
        output.add(&self.path("pdf"), &pdf.bytes)?;
        output.add(&self.path("txt"), &text)?;
        let made = |ending, what: &str, length| Made {
            path: self.path(ending),
            what: format!("{what}, {}", self.pack.name()),
            audience: "presenter",
            length,
            remarks: Vec::new(),
        };
        let kind = if facts.live.is_some() { "script to read live" } else { "presenter's script" };
        Ok(vec![
            made("pdf", kind, Length::Pages(pdf.pages)),
            made("txt", &format!("{kind} as plain text"), Length::Unmeasured),
        ])
    }

    fn refusal(&self, pool: &Pool<'_>, time: SegmentTime, below: Option<Set>, above: Option<Set>) -> Error {
        let told = |set: Set| {
            let names: Vec<&str> =
                pool.chosen(set.items).iter().map(|item| item.statement.subject.name()).collect();
            names.join(", ")
        };
        // Rounded towards what can be reached.
        let shorter = below
            .map(|set| format!("{}s ({})", tenths((set.length.most.seconds() * 10.0).floor()), told(set)));
        let longer = above
            .map(|set| format!("{}s ({})", tenths((set.length.least.seconds() * 10.0).ceil()), told(set)));
        let (week, wanted) = (self.week, tenths((time.seconds * 10.0).round()));
        let of_week = format!("in the week from {} to {}", week.from, week.to);
        let (message, hint) = match (shorter, longer) {
            (Some(shorter), None) => (
                format!("there is too little to say {of_week} for {wanted} s"),
                format!("the longest is {shorter}; ask for that, or for a longer opening or closing"),
            ),
            (None, Some(longer)) => (
                format!("what matters {of_week} cannot be said in {wanted} s"),
                format!("the shortest is {longer}"),
            ),
            (shorter, longer) => (
                format!("no choice of statements and pauses {of_week} takes {wanted} s"),
                match shorter.zip(longer) {
                    Some((shorter, longer)) => format!("the nearest lengths are {shorter} and {longer}"),
                    None => "choose another length".to_owned(),
                },
            ),
        };
        Error::Input(vec![
            Finding::error(Code::DOES_NOT_FIT, message).file(&self.read.name).argument("seconds").hint(hint),
        ])
    }
}

fn frames(seconds: f64) -> Frames {
    Frames((seconds * f64::from(SAMPLE_RATE)).round().max(0.0) as u64)
}

/// A number of tenths with a point.
fn tenths(count: f64) -> String {
    format!("{:.1}", count / 10.0)
}

/// The name of a week's files, without ending.
fn stem(pack: &Pack, week: DateSpan) -> String {
    format!("{}-segment-{}", pack.tag(), week.from)
}

/// A length that is near enough.
fn near(below: Option<Set>, above: Option<Set>, seconds: f64) -> Option<(Set, Frames)> {
    let within = |length: Frames| (length.seconds() - seconds).abs() <= TOLERANCE;
    let below = below.map(|set| (set, set.length.most)).filter(|(_, length)| within(*length));
    below.or(above.map(|set| (set, set.length.least)).filter(|(_, length)| within(*length)))
}

/// Speech of just the length `target`; none where that is out of reach.
fn spoken_in(
    pieces: &[Piece],
    bank: &Bank<'_>,
    options: &SpeakOptions,
    (mut measure, target, ranges): (Measure, Frames, &PauseRanges),
) -> Result<Option<Spoken>, Error> {
    // Joined as a whole, clips may come a little closer than statement by statement: then it is measured again.
    for _ in 0..2 {
        let Some(join) = fit(&measure, target, ranges, &options.join) else { return Ok(None) };
        let options = SpeakOptions { join, ..options.clone() };
        let spoken = voice::speak(pieces, bank, &options)?;
        if spoken.length() == target {
            return Ok(Some(spoken));
        }
        measure = Measure::of(&spoken, &options.join);
    }
    Ok(None)
}

/// Where a week's and a season's files go.
fn season_path(out: &Path, pack: &Pack, ending: &str) -> PathBuf {
    out.join(format!("{}-segments.{ending}", pack.tag()))
}
