//! Where somebody speaks.

use super::listen::{Frame, STEP};

/// A stretch of speech, in frames; the end is not part of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Span {
    /// Its first frame.
    pub(super) from: usize,
    /// The frame after its last.
    pub(super) to: usize,
    /// How much of it is surely a voice, from 0 to 1.
    pub(super) voiced: f32,
    /// Its level above the noise around it, in dB.
    pub(super) above_noise: f32,
}

impl Span {
    /// In seconds.
    pub(super) fn length(&self) -> f64 {
        (self.to - self.from) as f64 * STEP
    }
}

/// A closed mouth before p, t or k, or a breath between words: not the end of a phrase.
const CLOSURE_S: f64 = 0.2;
/// Clicks are shorter than any word.
const SHORTEST_S: f64 = 0.1;
/// How far a quiet beginning or end may reach beyond what is surely speech.
const REACH_S: f64 = 0.24;
/// Frames over which the noise is taken to stay the same: about 10 s.
const STRETCH: usize = 625;

fn frames(seconds: f64) -> usize {
    (seconds / STEP).round() as usize
}

/// All stretches of speech, in order.
pub(super) fn find(heard: &[Frame]) -> Vec<Span> {
    let floor = noise(heard);
    let voiced = heard.iter().filter(|frame| frame.voice > 0.6).map(|frame| frame.level).collect::<Vec<_>>();
    let Some(loud) = percentile(&voiced, 0.8) else { return Vec::new() };
    let is_speech = |(frame, floor): (&Frame, &f32)| {
        let range = (loud - floor).max(3.0);
        let share = (frame.level - floor) / range;
        (frame.voice > 0.5 && share > 0.2) || (frame.voice > 0.15 && share > 0.45)
    };
    let speech: Vec<bool> = heard.iter().zip(&floor).map(is_speech).collect();
    let runs = joined(&runs(&speech), frames(CLOSURE_S));
    let long = runs.into_iter().filter(|(from, to)| to - from >= frames(SHORTEST_S));
    let mut spans: Vec<Span> = long.map(|(from, to)| describe(heard, &floor, from, to)).collect();
    spread(&mut spans, heard, &floor, loud);
    spans
}

/// The level of the noise at each frame.
fn noise(heard: &[Frame]) -> Vec<f32> {
    let quiet = |stretch: &[Frame]| {
        let levels: Vec<f32> = stretch.iter().map(|frame| frame.level).collect();
        percentile(&levels, 0.1).unwrap_or(-100.0)
    };
    let quiets: Vec<f32> = heard.chunks(STRETCH).map(quiet).collect();
    // A stretch of digital silence is no measure of the room.
    let around = |at: usize| percentile(quiets.get(at.saturating_sub(2)..(at + 3).min(quiets.len()))?, 0.5);
    (0..heard.len()).map(|frame| around(frame / STRETCH).unwrap_or(-100.0).max(-95.0)).collect()
}

/// The value below which such a share of them lies.
pub(super) fn percentile(values: &[f32], share: f32) -> Option<f32> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f32::total_cmp);
    sorted.get((sorted.len().saturating_sub(1) as f32 * share).round() as usize).copied()
}

fn runs(speech: &[bool]) -> Vec<(usize, usize)> {
    let mut runs = Vec::new();
    let mut from = None;
    for (at, speaks) in speech.iter().chain([&false]).enumerate() {
        match (from, speaks) {
            (None, true) => from = Some(at),
            (Some(start), false) => {
                runs.push((start, at));
                from = None;
            }
            _ => {}
        }
    }
    runs
}

fn joined(runs: &[(usize, usize)], gap: usize) -> Vec<(usize, usize)> {
    let mut joined: Vec<(usize, usize)> = Vec::new();
    for (from, to) in runs {
        match joined.last_mut() {
            Some(last) if from - last.1 < gap => last.1 = *to,
            _ => joined.push((*from, *to)),
        }
    }
    joined
}

fn describe(heard: &[Frame], floor: &[f32], from: usize, to: usize) -> Span {
    let within = heard.get(from..to).unwrap_or_default();
    let voiced = within.iter().filter(|frame| frame.voice > 0.5).count() as f32 / within.len().max(1) as f32;
    let levels: Vec<f32> = within.iter().map(|frame| frame.level).collect();
    let loud = percentile(&levels, 0.8).unwrap_or(-100.0);
    Span { from, to, voiced, above_noise: loud - floor.get(from).copied().unwrap_or(-100.0) }
}

/// Takes in quiet beginnings and ends (f, s, a dying vowel), never up to the neighbour.
fn spread(spans: &mut [Span], heard: &[Frame], floor: &[f32], loud: f32) {
    let sounds = |at: usize| {
        let (Some(frame), Some(floor)) = (heard.get(at), floor.get(at)) else { return false };
        frame.level > floor + (0.12 * (loud - floor)).max(3.0)
    };
    let reach = frames(REACH_S);
    let starts: Vec<usize> = spans.iter().map(|span| span.from).collect();
    let mut before = 0;
    for (index, span) in spans.iter_mut().enumerate() {
        let after = starts.get(index + 1).map_or(heard.len(), |from| from.saturating_sub(2));
        let earliest = span.from.saturating_sub(reach).max(before).min(span.from);
        while span.from > earliest && sounds(span.from - 1) {
            span.from -= 1;
        }
        let latest = (span.to + reach).min(after.max(span.to));
        while span.to < latest && sounds(span.to) {
            span.to += 1;
        }
        // The next one begins later, if only by a frame.
        before = span.to + 1;
    }
}

/// The longest stretch of at most so many seconds without speech, in frames.
pub(super) fn quietest(spans: &[Span], end: usize, most_seconds: f64) -> Option<(usize, usize)> {
    let margin = frames(0.3);
    let starts = [0].into_iter().chain(spans.iter().map(|span| span.to));
    let ends = spans.iter().map(|span| span.from).chain([end]);
    let gaps = starts.zip(ends).map(|(from, to)| (from + margin, to.saturating_sub(margin)));
    let (from, to) = gaps.filter(|(from, to)| to > from).max_by_key(|(from, to)| to - from)?;
    (to - from >= frames(0.5)).then(|| (from, to.min(from + frames(most_seconds))))
}
