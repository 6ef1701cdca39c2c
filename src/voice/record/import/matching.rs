//! Which stretch of speech is which line.
//!
//! A session is read in the script's order, but lines are said again, left
//! out, or read two in one breath, and somebody coughs. All ways of laying
//! the stretches along the lines are weighed together, by dynamic
//! programming forwards and backwards: a line is sure only where nearly all
//! the weight agrees. Three witnesses weigh each way: lengths, letters, and
//! whether neighbours sound alike.

use super::acoustic_model::{self, AcousticModel, Alphabet, Example, FOLDS, FeatureVector};
use super::pace::{Measure, Pace, normal};
use super::speech::Span;

/// What the lines are, for matching.
pub(super) struct Line {
    pub(super) measure: Measure,
    pub(super) letters: Vec<usize>,
    pub(super) has_comma: bool,
    /// Lines with the same words have the same number.
    pub(super) words: usize,
    /// Its words are much like those of the line before, as of one in the plural.
    pub(super) is_kin: bool,
}

/// What was heard.
pub(super) struct Heard<'a> {
    pub(super) spans: &'a [Span],
    /// The silence before each span in seconds; endless where another recording begins.
    pub(super) gaps: &'a [f64],
    pub(super) features: &'a [FeatureVector],
}

/// One saying of a line: neighbouring stretches.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Take {
    pub(super) first: usize,
    pub(super) count: usize,
    /// How much of the weight agrees, from 0 to 1.
    pub(super) agreed: f64,
    /// Whether the next line is in it as well.
    pub(super) shared: bool,
}

/// A line with its takes, in the order in which they were said; none where it was left out.
#[derive(Debug, Clone, Default)]
pub(super) struct Matched {
    pub(super) takes: Vec<Take>,
    /// How its last take goes with its letters: above 0 rather well, below rather badly.
    pub(super) likeness: f64,
    /// Its last take's length over the length expected.
    pub(super) factor: f64,
}

/// What became of everything.
pub(super) struct Matching {
    pub(super) lines: Vec<Matched>,
    /// Stretches that belong to no line.
    pub(super) extra: Vec<usize>,
}

const MOST_PARTS: usize = 3;
const SKIP: f64 = 0.01;
/// At the end of a session all that follows is left out.
const STOPPED: f64 = 0.1;
const EXTRA: f64 = 0.01;
/// A stretch with little voice in it is mostly a cough or a knock.
const NOISE: f64 = 0.3;
const REPEAT: f64 = 0.03;
const IN_ONE_BREATH: f64 = 0.003;
/// Lines looked at before and after a stretch's likely place.
const BAND: usize = 24;
/// Where letters were not compared at all.
const FAR: f64 = -6.0;
/// No single witness may outweigh everything.
const MOST_SAID: f64 = 8.0;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Move {
    Skip,
    Extra,
    Say(usize),
    Again(usize),
    Both,
}

/// Lays the stretches along the lines.
pub(super) fn lay(lines: &[Line], heard: &Heard<'_>, alphabet: &Alphabet) -> Matching {
    let speech: f64 = heard.spans.iter().map(Span::length).sum();
    let measures: Vec<Measure> = lines.iter().map(|line| line.measure).collect();
    let mut weigher = Weigher::new(lines, heard, Pace::roughly(&measures, speech, heard.spans.len()));
    for _ in 0..3 {
        let path = weigher.best_path();
        weigher.refit(&path);
    }
    for _ in 0..3 {
        let path = weigher.best_path();
        weigher.learn_letters(&path, alphabet);
        let path = weigher.best_path();
        weigher.refit(&path);
    }
    weigher.conclude()
}

struct Weigher<'a> {
    lines: &'a [Line],
    heard: &'a Heard<'a>,
    pace: Pace,
    /// Mean and spread of the logarithm of all lengths.
    any_length: (f64, f64),
    /// For each line, stretch and number of parts, what the letters say.
    letters: Vec<f32>,
    /// For each stretch, how much it sounds like the one before.
    alike: Vec<f64>,
    /// How likely each stretch goes on from the one before.
    joined: Vec<f64>,
}

/// A step of a path: from a number of lines and of stretches done, by a move.
type Step = (usize, usize, Move);

impl<'a> Weigher<'a> {
    fn new(lines: &'a [Line], heard: &'a Heard<'a>, pace: Pace) -> Self {
        let logs: Vec<f64> = heard.spans.iter().map(|span| span.length().ln()).collect();
        let (mean, spread) = moments(&logs);
        Weigher {
            lines,
            heard,
            pace,
            any_length: (mean, spread.max(0.3)),
            letters: Vec::new(),
            alike: likenesses(heard),
            joined: joined(heard.gaps),
        }
    }

    fn place(&self, line: usize, span: usize, count: usize) -> usize {
        (line * self.heard.spans.len() + span) * MOST_PARTS + count - 1
    }

    fn parts(&self, first: usize, count: usize) -> &'a [Span] {
        self.heard.spans.get(first..first + count).unwrap_or_default()
    }

    /// The seconds of speech: a pause at a comma is as long as the speaker likes.
    fn length(&self, first: usize, count: usize) -> f64 {
        self.parts(first, count).iter().map(Span::length).sum()
    }

    /// What length and letters say for a line being these stretches, against any other speech.
    fn evidence(&self, line: usize, first: usize, count: usize) -> f64 {
        let Some(measure) = self.lines.get(line).map(|line| line.measure) else { return f64::NEG_INFINITY };
        let seconds = self.length(first, count);
        let (mean, spread) = self.any_length;
        let length = self.pace.fits(measure, seconds) - normal(seconds.ln() - mean, spread).ln();
        let letters = self.letters.get(self.place(line, first, count)).copied().unwrap_or(0.0);
        let voiced = self.parts(first, count).iter().map(|span| f64::from(span.voiced)).fold(0.0, f64::max);
        let noise = if voiced < 0.35 { -3.0 } else { 0.0 };
        length.clamp(-MOST_SAID, MOST_SAID) + f64::from(letters) + noise
    }

    fn evidence_for_both(&self, line: usize, span: usize) -> f64 {
        let Some([one, other]) = self.lines.get(line..line + 2) else { return f64::NEG_INFINITY };
        let seconds = self.length(span, 1);
        let measure =
            Measure { letters: one.measure.letters + other.measure.letters, ends: other.measure.ends };
        let (mean, spread) = self.any_length;
        let length = self.pace.fits(measure, seconds) - normal(seconds.ln() - mean, spread).ln();
        length.clamp(-MOST_SAID, MOST_SAID)
    }

    /// The weight of stretches `first..first + count` being one saying, or several.
    fn oneness(&self, first: usize, count: usize, comma: bool) -> f64 {
        let joined = |span: usize| {
            let joined = self.joined.get(span).copied().unwrap_or(0.0);
            if comma && joined > 0.0 { joined.max(0.3) } else { joined }
        };
        let inner: f64 = (first + 1..first + count).map(|span| joined(span).ln()).sum();
        inner + (1.0 - self.joined.get(first).copied().unwrap_or(0.0)).ln()
    }

    /// All moves from a place, with where they lead and their weights.
    fn moves(&self, line: usize, span: usize, visit: &mut dyn FnMut(Move, usize, usize, f64)) {
        let (lines, spans) = (self.lines.len(), self.heard.spans.len());
        if line < lines {
            let outside = span == spans || span == 0;
            visit(Move::Skip, line + 1, span, if outside { STOPPED } else { SKIP }.ln());
        }
        let Some(here) = self.heard.spans.get(span) else { return };
        let extra = if here.voiced < 0.35 || here.length() < 0.2 { NOISE } else { EXTRA };
        visit(Move::Extra, line, span + 1, extra.ln() + self.oneness(span, 1, false));
        let alike = self.alike.get(span).copied().unwrap_or(0.0);
        let is_kin = |line: usize| self.lines.get(line).is_some_and(|line| line.is_kin);
        for count in 1..=MOST_PARTS.min(spans - span) {
            if let Some(next) = self.lines.get(line) {
                let strange = if is_kin(line) { 0.0 } else { -alike.max(0.0) };
                let weight = self.evidence(line, span, count) + self.oneness(span, count, next.has_comma);
                visit(Move::Say(count), line + 1, span + count, weight + strange);
            }
            if let Some(last) = line.checked_sub(1).and_then(|line| self.lines.get(line)) {
                // Where a neighbouring line has such words, being alike tells nothing.
                let tells = count == 1 && !is_kin(line) && !is_kin(line - 1);
                let alike = if tells { alike } else { 0.0 };
                let weight = self.evidence(line - 1, span, count) + self.oneness(span, count, last.has_comma);
                visit(Move::Again(count), line, span + count, REPEAT.ln() + weight + alike);
            }
        }
        if line + 2 <= lines {
            let weight =
                IN_ONE_BREATH.ln() + self.evidence_for_both(line, span) + self.oneness(span, 1, false);
            visit(Move::Both, line + 2, span + 1, weight);
        }
    }

    fn width(&self) -> usize {
        self.heard.spans.len() + 1
    }

    /// The single way with the most weight.
    fn best_path(&self) -> Vec<Step> {
        let width = self.width();
        let size = (self.lines.len() + 1) * width;
        let mut best = vec![(f64::NEG_INFINITY, Move::Skip); size];
        if let Some(start) = best.first_mut() {
            start.0 = 0.0;
        }
        for line in 0..=self.lines.len() {
            for span in 0..width {
                let Some(&(so_far, _)) = best.get(line * width + span) else { continue };
                self.moves(line, span, &mut |by, to_line, to_span, weight| {
                    if let Some(target) = best.get_mut(to_line * width + to_span)
                        && so_far + weight > target.0
                    {
                        *target = (so_far + weight, by);
                    }
                });
            }
        }
        let (mut line, mut span) = (self.lines.len(), self.heard.spans.len());
        let mut path = Vec::new();
        while (line, span) != (0, 0) {
            let Some((_, by)) = best.get(line * width + span) else { break };
            let (lines, spans) = match by {
                Move::Skip => (1, 0),
                Move::Extra => (0, 1),
                Move::Say(count) => (1, *count),
                Move::Again(count) => (0, *count),
                Move::Both => (2, 1),
            };
            if lines > line || spans > span {
                break;
            }
            (line, span) = (line - lines, span - spans);
            path.push((line, span, *by));
        }
        path.reverse();
        path
    }

    /// All sayings of a path: line, first stretch, number of stretches.
    fn sayings(path: &[Step]) -> Vec<(usize, usize, usize)> {
        let saying = |(line, span, by): &Step| match by {
            Move::Say(count) => Some((*line, *span, *count)),
            Move::Again(count) => Some((line.saturating_sub(1), *span, *count)),
            _ => None,
        };
        path.iter().filter_map(saying).collect()
    }

    fn refit(&mut self, path: &[Step]) {
        let measured = Self::sayings(path).into_iter().filter_map(|(line, first, count)| {
            Some((self.lines.get(line)?.measure, self.length(first, count)))
        });
        self.pace = self.pace.fitted(&measured.collect::<Vec<_>>());
    }

    fn fold(&self, span: usize) -> usize {
        span * FOLDS / self.heard.spans.len().max(1)
    }

    fn features(&self, first: usize, count: usize) -> Vec<&'a [FeatureVector]> {
        let parts = self.parts(first, count).iter();
        parts.map(|span| self.heard.features.get(span.from..span.to).unwrap_or_default()).collect()
    }

    /// Learns the letters from a path, and asks them about all likely pairs.
    fn learn_letters(&mut self, path: &[Step], alphabet: &Alphabet) {
        let sayings = Self::sayings(path);
        let examples: Vec<Example<'_>> = sayings
            .iter()
            .filter_map(|(line, first, count)| {
                let letters = self.lines.get(*line)?.letters.as_slice();
                let features = self.features(*first, *count);
                Some(Example { features, letters, fold: self.fold(*first) })
            })
            .filter(|example| !example.letters.is_empty())
            .collect();
        let model = AcousticModel::learn(&examples, alphabet);
        let places = likely_places(path, self.heard.spans.len());
        let mut fits = vec![f32::NAN; self.lines.len() * self.heard.spans.len() * MOST_PARTS];
        for (span, place) in places.iter().enumerate() {
            for count in 1..=MOST_PARTS.min(self.heard.spans.len() - span) {
                if (span + 1..span + count)
                    .any(|inner| self.heard.gaps.get(inner).is_none_or(|gap| *gap > 1.5))
                {
                    break;
                }
                let table = model.table(self.fold(span), &self.features(span, count));
                let seconds = self.length(span, count);
                for line in place.saturating_sub(BAND)..(place + BAND).min(self.lines.len()) {
                    let Some(of_line) = self.lines.get(line) else { continue };
                    let expected = self.pace.expects(of_line.measure);
                    if (seconds / expected).ln().abs() < 1.0 && !of_line.letters.is_empty() {
                        let place = self.place(line, span, count);
                        if let Some(fit) = fits.get_mut(place) {
                            *fit = acoustic_model::fit(&table, &of_line.letters) as f32;
                        }
                    }
                }
            }
        }
        self.letters = self.calibrated(&fits, &sayings);
    }

    /// Turns fits into weights by comparing those of the lines said with those of lines near by.
    fn calibrated(&self, fits: &[f32], sayings: &[(usize, usize, usize)]) -> Vec<f32> {
        let fit = |line: usize, span: usize, count: usize| {
            fits.get(self.place(line, span, count)).copied().filter(|fit| fit.is_finite()).map(f64::from)
        };
        let words = |line: usize| self.lines.get(line).map(|line| line.words);
        let (mut right, mut wrong, mut lengths) = (Vec::new(), Vec::new(), Vec::new());
        for &(line, span, count) in sayings {
            right.extend(fit(line, span, count));
            lengths.push(self.length(span, count));
            for off in 2..9 {
                let others = [line.checked_sub(off), Some(line + off)].into_iter().flatten();
                let others = others.filter(|other| *other < self.lines.len() && words(*other) != words(line));
                wrong.extend(others.filter_map(|other| fit(other, span, count)));
            }
        }
        if right.len() < 8 || wrong.len() < 8 {
            return Vec::new();
        }
        let ((said, said_spread), (other, other_spread)) = (robust(&mut right), robust(&mut wrong));
        let variance = 0.5 * (said_spread * said_spread + other_spread * other_spread);
        let slope = 0.8 * ((said - other) / variance.max(1e-6)).max(0.0);
        let usual = lengths.iter().sum::<f64>() / lengths.len().max(1) as f64;
        let mut weights = Vec::with_capacity(fits.len());
        for (at, fit) in fits.iter().enumerate() {
            let (span, count) = (at / MOST_PARTS % self.heard.spans.len().max(1), at % MOST_PARTS + 1);
            let short = (self.length(span, count) / usual).min(1.0);
            let weight = match fit.is_finite() {
                true => {
                    (short * slope * (f64::from(*fit) - 0.5 * (said + other))).clamp(-MOST_SAID, MOST_SAID)
                }
                false => FAR,
            };
            weights.push(weight as f32);
        }
        weights
    }

    /// Weighs all ways, and keeps with each line of the best how much of the weight agrees.
    fn conclude(&self) -> Matching {
        let width = self.width();
        let size = (self.lines.len() + 1) * width;
        let mut forward = vec![f64::NEG_INFINITY; size];
        if let Some(start) = forward.first_mut() {
            *start = 0.0;
        }
        for at in 0..size {
            let Some(&so_far) = forward.get(at) else { continue };
            self.moves(at / width, at % width, &mut |_, line, span, weight| {
                if let Some(target) = forward.get_mut(line * width + span) {
                    *target = add(*target, so_far + weight);
                }
            });
        }
        // What comes after a place; and the same where the line before it is not said again.
        let mut backward = vec![f64::NEG_INFINITY; size];
        let mut settled = backward.clone();
        for end in [backward.last_mut(), settled.last_mut()].into_iter().flatten() {
            *end = 0.0;
        }
        for at in (0..size - 1).rev() {
            let (mut sum, mut without) = (f64::NEG_INFINITY, f64::NEG_INFINITY);
            self.moves(at / width, at % width, &mut |by, line, span, weight| {
                let rest = |of: &[f64]| of.get(line * width + span).copied().unwrap_or(f64::NEG_INFINITY);
                sum = add(sum, weight + rest(&backward));
                without = match by {
                    Move::Again(_) => without,
                    Move::Extra => add(without, weight + rest(&settled)),
                    _ => add(without, weight + rest(&backward)),
                };
            });
            for (of, value) in [(&mut backward, sum), (&mut settled, without)] {
                if let Some(target) = of.get_mut(at) {
                    *target = value;
                }
            }
        }
        let all = backward.first().copied().unwrap_or(0.0);
        let agreed = |line: usize, span: usize, by: Move| {
            let mut share = 0.0;
            let before = forward.get(line * width + span).copied().unwrap_or(f64::NEG_INFINITY);
            self.moves(line, span, &mut |other, to_line, to_span, weight| {
                // A take is the one to keep only where no other follows.
                let rest = settled.get(to_line * width + to_span).copied().unwrap_or(f64::NEG_INFINITY);
                if other == by {
                    share = (before + weight + rest - all).exp();
                }
            });
            share
        };
        self.verdicts(&self.best_path(), &agreed)
    }

    fn verdicts(&self, path: &[Step], agreed: &dyn Fn(usize, usize, Move) -> f64) -> Matching {
        let mut lines = vec![Matched::default(); self.lines.len()];
        let mut extra = Vec::new();
        for &(line, first, by) in path {
            let agreed = agreed(line, first, by);
            let (owners, count) = match by {
                Move::Skip => (line..line, 0),
                Move::Extra => {
                    extra.push(first);
                    (line..line, 1)
                }
                Move::Say(count) => (line..line + 1, count),
                Move::Again(count) => (line.saturating_sub(1)..line, count),
                Move::Both => (line..line + 2, 1),
            };
            for owner in owners {
                let Some(matched) = lines.get_mut(owner) else { continue };
                matched.takes.push(Take { first, count, agreed, shared: by == Move::Both });
                let letters = self.letters.get(self.place(owner, first, count)).copied().unwrap_or(0.0);
                matched.likeness = f64::from(letters);
                let expected = self.lines.get(owner).map_or(1.0, |line| self.pace.expects(line.measure));
                matched.factor = self.length(first, count) / expected;
            }
        }
        Matching { lines, extra }
    }
}

/// The sum of two weights given by their logarithms.
fn add(a: f64, b: f64) -> f64 {
    let (more, less) = if a > b { (a, b) } else { (b, a) };
    if less == f64::NEG_INFINITY || more - less > 40.0 { more } else { more + (less - more).exp().ln_1p() }
}

fn moments(values: &[f64]) -> (f64, f64) {
    let count = values.len().max(1) as f64;
    let mean = values.iter().sum::<f64>() / count;
    (mean, (values.iter().map(|value| (value - mean).powi(2)).sum::<f64>() / count).sqrt())
}

/// The middle, and the spread that a normal distribution with such quartiles has.
fn robust(values: &mut [f64]) -> (f64, f64) {
    values.sort_by(f64::total_cmp);
    let at = |share: f64| values.get(((values.len() - 1) as f64 * share) as usize).copied().unwrap_or(0.0);
    (at(0.5), ((at(0.75) - at(0.25)) / 1.35).max(1e-3))
}

/// The line that each stretch is at on a path.
fn likely_places(path: &[Step], spans: usize) -> Vec<usize> {
    let mut places = vec![0; spans];
    for (line, span, _) in path {
        places.iter_mut().skip(*span).for_each(|place| *place = *line);
    }
    places
}

/// How likely each stretch goes on from the one before: after a silence much shorter than usual.
fn joined(gaps: &[f64]) -> Vec<f64> {
    let mut silences: Vec<f64> = gaps.iter().copied().filter(|gap| gap.is_finite()).collect();
    silences.sort_by(f64::total_cmp);
    let usual = silences.get(silences.len() / 2).copied().unwrap_or(1.0);
    let likely = |gap: &f64| match gap.is_finite() {
        true => (1.0 / (1.0 + ((gap - 0.45 * usual) / 0.1).exp())).clamp(0.01, 0.9),
        false => 0.0,
    };
    gaps.iter().map(likely).collect()
}

/// For each stretch, whether it sounds like the one before: against what stretches have in common anyway.
fn likenesses(heard: &Heard<'_>) -> Vec<f64> {
    let features = |span: &Span| heard.features.get(span.from..span.to).unwrap_or_default();
    let apart = |a: usize, b: usize| {
        let (a, b) = heard.spans.get(a).zip(heard.spans.get(b))?;
        let near = (a.length() / b.length()).ln().abs() < 0.45;
        near.then(|| acoustic_model::distance(features(a), features(b)).max(1e-6).ln())
    };
    let count = heard.spans.len();
    let mut strangers: Vec<f64> =
        (0..count).flat_map(|a| [apart(a, a + 3), apart(a, a + 5)]).flatten().collect();
    if strangers.len() < 6 {
        return vec![0.0; count];
    }
    let (usual, spread) = robust(&mut strangers);
    let spread = spread.max(0.05);
    let alike = |span: usize| match span.checked_sub(1).map(|before| apart(before, span)) {
        None | Some(None) => -2.0,
        Some(Some(apart)) => (2.0 * ((usual - apart) / spread - 2.5)).clamp(-4.0, MOST_SAID),
    };
    (0..count).map(alike).collect()
}
