//! What is sure and what a person must confirm, in plain words.

use super::super::super::spelling::key;
use super::HeardRecording;
use super::acoustic_model::{Alphabet, features};
use super::cuts::{Cut, CutVerdict};
use super::listen::{Frame, STEP};
use super::matching::{self, Heard, Matched, Take, lay};
use super::names::{self, Named};
use super::pace::{Measure, Pace};
use super::script::Line;
use super::speech::Span;
use crate::finding::Finding;
use crate::language::Intonation;

/// Silence kept before and after a phrase, in seconds.
const LEAD_IN_S: f64 = 0.15;
const TAIL_S: f64 = 0.25;
/// How much of the weight must agree for a line to be sure.
const SURE: f64 = 0.98;
/// Lengths within these of what the words should take are nothing strange.
const SHORTEST: f64 = 0.55;
const LONGEST: f64 = 1.8;
/// Words as like as "container" and "containers".
const KIN: f64 = 0.6;
const UNLIKE: f64 = -1.5;
/// How far from a line that does not sound like its words others may be shifted by one: seen in sessions with a
/// line that was skipped behind one that was parted at a pause.
const SHIFTED: usize = 2;
/// Speech nearer to the noise than this is hard to hear.
const FAINT_DB: f32 = 17.0;
/// A sound that is nearer than this, in seconds, may be a phrase's own.
const NEAR_S: f64 = 1.0;
/// A pause that belongs into no phrase.
const LONG_PAUSE_S: f64 = 0.6;

/// All recordings one after the other.
struct Session<'a> {
    recordings: &'a [HeardRecording],
    spans: Vec<Span>,
    /// The recording of each span.
    owners: Vec<usize>,
    /// The first frame of each recording.
    starts: Vec<usize>,
    gaps: Vec<f64>,
}

impl<'a> Session<'a> {
    fn new(recordings: &'a [HeardRecording]) -> Self {
        let mut session = Session {
            recordings,
            spans: Vec::new(),
            owners: Vec::new(),
            starts: Vec::new(),
            gaps: Vec::new(),
        };
        let mut start = 0;
        for (owner, recording) in recordings.iter().enumerate() {
            let mut before: Option<usize> = None;
            for span in &recording.spans {
                session.gaps.push(before.map_or(f64::INFINITY, |before| (span.from - before) as f64 * STEP));
                session.spans.push(Span { from: span.from + start, to: span.to + start, ..*span });
                session.owners.push(owner);
                before = Some(span.to);
            }
            session.starts.push(start);
            start += recording.frames.len();
        }
        session
    }

    fn span(&self, index: usize) -> Option<(&Span, usize)> {
        self.spans.get(index).zip(self.owners.get(index).copied())
    }

    /// Recording, from and to in seconds: with its lead-in and tail, and never into a neighbour.
    fn place(&self, first: usize, count: usize) -> Option<(String, f64, f64)> {
        let last = first + count - 1;
        let ((span, owner), (end, _)) = self.span(first).zip(self.span(last))?;
        let (recording, start) = self.recordings.get(owner).zip(self.starts.get(owner).copied())?;
        let seconds = |frame: usize| (frame - start) as f64 * STEP;
        let room =
            |gap: Option<&f64>| gap.filter(|gap| gap.is_finite()).map_or(f64::INFINITY, |gap| gap / 2.0);
        let from = seconds(span.from) - LEAD_IN_S.min(room(self.gaps.get(first)));
        let to = seconds(end.to) + TAIL_S.min(room(self.gaps.get(last + 1)));
        Some((recording.name.clone(), from.max(0.0), to.min(recording.seconds)))
    }
}

fn measure(line: &Line, letters: usize) -> Measure {
    Measure { letters, ends: line.intonation == Intonation::Final }
}

/// Recordings read in the order of the script, cut by it.
pub fn match_session(script: &[Line], recordings: &[HeardRecording]) -> Vec<Cut> {
    let session = Session::new(recordings);
    let mut alphabet = Alphabet::default();
    let words: Vec<String> = script.iter().map(|line| key(&line.words)).collect();
    let before = [""].into_iter().chain(words.iter().map(String::as_str));
    let lines: Vec<matching::Line> = script
        .iter()
        .zip(&words)
        .zip(before)
        .map(|((line, own), before)| {
            let letters = alphabet.spell(&line.words);
            matching::Line {
                measure: measure(line, letters.len()),
                has_comma: own.contains([',', ';', ':', '፣', '–']),
                words: words.iter().position(|other| other == own).unwrap_or(0),
                is_kin: strsim::normalized_levenshtein(own, before) > KIN,
                letters,
            }
        })
        .collect();
    let frames: Vec<Frame> =
        recordings.iter().flat_map(|recording| recording.frames.iter().copied()).collect();
    let heard =
        Heard { spans: &session.spans, gaps: &session.gaps, features: &features(&frames, &session.spans) };
    let matching = lay(&lines, &heard, &alphabet);
    let mut rows: Vec<(usize, Cut)> = Vec::new();
    let mut so_far = 0;
    for (place, (line, matched)) in script.iter().zip(&matching.lines).enumerate() {
        let near = Near {
            slip: near_slip(place, &lines, &matching.lines),
            unlike: near_unlike(place, &matching.lines),
        };
        let of_line = rows_of(line, matched, near, (&session, &matching.extra));
        so_far = of_line.last().map_or(so_far, |(at, _)| *at);
        match of_line.is_empty() {
            true => rows.push((so_far, Cut::missing(line))),
            false => rows.extend(of_line),
        }
    }
    rows.extend(matching.extra.iter().filter_map(|span| Some((*span, stray(&session, *span)?))));
    rows.sort_by_key(|(at, _)| *at);
    rows.into_iter().map(|(_, cut)| cut).collect()
}

/// Whether a neighbour of like words was left out or said again: then nothing but the
/// voice's fall may tell which of the two was heard.
fn near_slip(place: usize, lines: &[matching::Line], matched: &[Matched]) -> bool {
    let slipped = |place: usize| matched.get(place).is_some_and(|matched| matched.takes.len() != 1);
    let is_kin = |place: usize| lines.get(place).is_some_and(|line| line.is_kin);
    (is_kin(place + 1) && slipped(place + 1)) || (is_kin(place) && place > 0 && slipped(place - 1))
}

/// Whether a line nearby does not sound like its words: then what was heard there may be this one's, and so on.
fn near_unlike(place: usize, matched: &[Matched]) -> bool {
    let near = place.saturating_sub(SHIFTED)..=place + SHIFTED;
    near.filter(|other| *other != place)
        .filter_map(|other| matched.get(other))
        .any(|other| !other.takes.is_empty() && other.likeness < UNLIKE)
}

/// What is doubtful beside a line.
#[derive(Clone, Copy)]
struct Near {
    slip: bool,
    unlike: bool,
}

fn rows_of(
    line: &Line,
    matched: &Matched,
    near: Near,
    (session, extra): (&Session<'_>, &[usize]),
) -> Vec<(usize, Cut)> {
    let last = matched.takes.len().saturating_sub(1);
    let row = |(at, take): (usize, &Take)| {
        let (recording, from, to) = session.place(take.first, take.count)?;
        let (verdict, remark) = match at == last {
            true => judge(matched, take, near, (session, extra)),
            false => (CutVerdict::Skip, format!("said again later (take {} of {})", at + 1, last + 1)),
        };
        Some((take.first, Cut::new(line, (recording, from, to), verdict, remark)))
    };
    matched.takes.iter().enumerate().filter_map(row).collect()
}

/// Whether a line's last take is sure; if not, why.
fn judge(
    matched: &Matched,
    take: &Take,
    beside: Near,
    (session, extra): (&Session<'_>, &[usize]),
) -> (CutVerdict, String) {
    let mut doubts = Vec::new();
    if matched.takes.len() > 1 {
        doubts.push(format!("said {} times, the last is taken", matched.takes.len()));
    }
    if beside.slip {
        doubts.push("may be its neighbour, which has like words and was left out or said again".to_owned());
    }
    if beside.unlike {
        doubts.push("may be shifted: a line beside it does not sound like its words".to_owned());
    }
    if take.shared {
        doubts.push("read in one breath with its neighbour: set the times of both".to_owned());
    }
    if take.agreed < SURE {
        doubts.push(format!(
            "may be another line: its length and sound speak for this one with {:.0} %",
            (take.agreed * 100.0).floor()
        ));
    }
    doubts.extend(strange_length(matched.factor));
    if matched.likeness < UNLIKE {
        doubts.push("does not sound like its words".to_owned());
    }
    let inner = session.gaps.get(take.first + 1..take.first + take.count).unwrap_or_default();
    if let Some(pause) = inner.iter().find(|pause| **pause > LONG_PAUSE_S) {
        doubts.push(format!("has a pause of {pause:.1} s in it"));
    }
    let after = take.first + take.count;
    let near = |gap: usize| session.gaps.get(gap).is_some_and(|gap| *gap < NEAR_S);
    let before = take.first.checked_sub(1).is_some_and(|span| extra.contains(&span)) && near(take.first);
    if before || (extra.contains(&after) && near(after)) {
        doubts.push("has a sound beside it that may belong to it".to_owned());
    }
    let parts = session.spans.get(take.first..take.first + take.count).unwrap_or_default();
    if parts.iter().any(|span| span.above_noise < FAINT_DB) {
        doubts.push("is so near to the noise that a soft beginning or end may be lost".to_owned());
    }
    decide(doubts)
}

fn strange_length(factor: f64) -> Option<String> {
    (!(SHORTEST..=LONGEST).contains(&factor))
        .then(|| format!("takes {factor:.1} times as long as its words should"))
}

fn decide(doubts: Vec<String>) -> (CutVerdict, String) {
    let verdict = if doubts.is_empty() { CutVerdict::Sure } else { CutVerdict::Confirm };
    (verdict, doubts.join("; "))
}

fn stray(session: &Session<'_>, index: usize) -> Option<Cut> {
    let place = session.place(index, 1)?;
    let (span, _) = session.span(index)?;
    let (verdict, remark) = match span.voiced < 0.35 {
        true => (CutVerdict::Skip, "a noise"),
        false => (CutVerdict::Confirm, "belongs to no line: write skip, or the number of its line and keep"),
    };
    Some(Cut::stray(place, verdict, remark))
}

/// Files of one phrase each, cut by their names.
///
/// # Errors
/// Every file whose name says no line.
pub fn match_files(script: &[Line], recordings: &[HeardRecording]) -> Result<Vec<Cut>, Vec<Finding>> {
    let named: Vec<Named> = recordings.iter().map(|recording| names::find(&recording.name, script)).collect();
    let wrong: Vec<Finding> = recordings
        .iter()
        .zip(&named)
        .filter_map(|(recording, named)| named.finding(&recording.name))
        .collect();
    if !wrong.is_empty() {
        return Err(wrong);
    }
    let lines: Vec<usize> = named.iter().filter_map(Named::line).collect();
    let letters = |line: &Line| line.words.chars().filter(|c| c.is_alphabetic()).count();
    let length = |recording: &HeardRecording| {
        let all = recording.spans.first().zip(recording.spans.last());
        all.map_or(0.0, |(first, last)| Span { from: first.from, ..*last }.length())
    };
    let examples: Vec<(Measure, f64)> = recordings
        .iter()
        .zip(&lines)
        .filter_map(|(recording, line)| {
            let line = script.get(*line)?;
            Some((measure(line, letters(line)), length(recording)))
        })
        .collect();
    let measures: Vec<Measure> = examples.iter().map(|(measure, _)| *measure).collect();
    let speech = examples.iter().map(|(_, seconds)| seconds).sum();
    let pace = Pace::roughly(&measures, speech, examples.len()).fitted(&examples);
    let mut cuts = Vec::new();
    for (at, ((recording, place), (measure, seconds))) in
        recordings.iter().zip(&lines).zip(&examples).enumerate()
    {
        let Some(line) = script.get(*place) else { continue };
        let takes = lines.iter().filter(|other| *other == place).count();
        let is_last = !lines.iter().skip(at + 1).any(|other| other == place);
        let mut doubts: Vec<String> = strange_length(seconds / pace.expects(*measure)).into_iter().collect();
        if takes > 1 {
            doubts.push(format!("has {takes} files, the last is taken"));
        }
        let (verdict, remark) = match is_last {
            true => decide(doubts),
            false => (CutVerdict::Skip, "another file says it again".to_owned()),
        };
        let session = Session::new(std::slice::from_ref(recording));
        if let Some(place) = session.place(0, session.spans.len()) {
            cuts.push(Cut::new(line, place, verdict, remark));
        }
    }
    Ok(cuts)
}
