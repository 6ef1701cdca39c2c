//! How a speaker's letters sound, learnt from the session itself.
//!
//! Nobody has a speech recogniser for these languages. But a session is long,
//! and its words are known: each letter comes many times. So each gets a mean
//! sound, first from cutting every phrase evenly into its letters, then from
//! the best places of the letters, several times. Whether a stretch of speech
//! goes with a line's letters is always asked of a model that has not heard
//! that stretch: what was learnt from a mistake must not confirm it.

use std::collections::BTreeMap;

use super::listen::{Frame, SHAPE};
use super::speech::Span;

/// The shape and how it changes.
const SIZE: usize = 2 * SHAPE;
/// One frame as the model sees it: mean 0 and spread 1 over the session.
pub(super) type FeatureVector = [f32; SIZE];

/// The frames of all speech, evened over the session.
pub(super) fn features(heard: &[Frame], spans: &[Span]) -> Vec<FeatureVector> {
    let at =
        |index: usize| heard.get(index.min(heard.len().saturating_sub(1))).map_or([0.0; SHAPE], |f| f.shape);
    let vector = |index: usize| -> FeatureVector {
        let (before, now, after) = (at(index.saturating_sub(2)), at(index), at(index + 2));
        let mut vector = [0.0; SIZE];
        let change = before.iter().zip(after).map(|(before, after)| after - before);
        vector.iter_mut().zip(now.into_iter().chain(change)).for_each(|(to, from)| *to = from);
        vector
    };
    let mut all: Vec<FeatureVector> = (0..heard.len()).map(vector).collect();
    let mut of_speech = Sums::default();
    for span in spans {
        all.get(span.from..span.to).unwrap_or_default().iter().for_each(|vector| of_speech.add(vector));
    }
    let (mean, variance) = of_speech.moments();
    for vector in &mut all {
        for ((value, mean), variance) in vector.iter_mut().zip(&mean).zip(&variance) {
            *value = (*value - mean) / variance.max(1e-6).sqrt();
        }
    }
    all
}

/// The letters that are heard in some words, as numbers of a session's alphabet.
#[derive(Debug, Default)]
pub(super) struct Alphabet(BTreeMap<char, usize>);

impl Alphabet {
    pub(super) fn spell(&mut self, words: &str) -> Vec<usize> {
        let letters = words.chars().flat_map(char::to_lowercase).filter(|c| c.is_alphabetic());
        let mut spelt = Vec::new();
        for letter in letters {
            for part in parts(letter).into_iter().flatten() {
                let next = self.0.len();
                spelt.push(*self.0.entry(part).or_insert(next));
            }
        }
        spelt
    }
}

/// An Ethiopic letter is a consonant and a vowel: its row and its place in it.
fn parts(letter: char) -> [Option<char>; 2] {
    match u32::from(letter) {
        code @ 0x1200..=0x135A => [char::from_u32(code & !7), char::from_u32(0xE000 + (code & 7))],
        _ => [Some(letter), None],
    }
}

#[derive(Debug, Clone)]
struct Sums {
    count: f32,
    sum: FeatureVector,
    squares: FeatureVector,
}

impl Default for Sums {
    fn default() -> Self {
        Sums { count: 0.0, sum: [0.0; SIZE], squares: [0.0; SIZE] }
    }
}

impl Sums {
    fn add(&mut self, vector: &FeatureVector) {
        self.count += 1.0;
        for ((sum, square), value) in self.sum.iter_mut().zip(&mut self.squares).zip(vector) {
            *sum += value;
            *square += value * value;
        }
    }

    fn add_all(&mut self, other: &Sums) {
        self.count += other.count;
        self.sum.iter_mut().zip(other.sum).for_each(|(to, from)| *to += from);
        self.squares.iter_mut().zip(other.squares).for_each(|(to, from)| *to += from);
    }

    fn moments(&self) -> (FeatureVector, FeatureVector) {
        let count = self.count.max(1.0);
        let mean = self.sum.map(|sum| sum / count);
        let mut variance = self.squares.map(|square| square / count);
        variance.iter_mut().zip(mean).for_each(|(variance, mean)| *variance -= mean * mean);
        (mean, variance)
    }
}

/// A letter as a normal distribution.
#[derive(Debug, Clone)]
struct LetterModel {
    mean: FeatureVector,
    precision: FeatureVector,
    constant: f32,
}

impl LetterModel {
    /// Few examples say little: they are drawn to what all letters have in common (mean 0, spread 1).
    fn new(sums: &Sums) -> LetterModel {
        let (mean, variance) = sums.moments();
        let trust = sums.count / (sums.count + 8.0);
        let variance = variance.map(|value| (trust * value.max(0.05) + 1.0 - trust).max(0.1));
        LetterModel {
            mean: mean.map(|value| trust * value),
            precision: variance.map(|value| 1.0 / value),
            constant: -0.5 * variance.iter().map(|value| value.ln()).sum::<f32>(),
        }
    }

    fn score(&self, vector: &FeatureVector) -> f32 {
        let off = vector.iter().zip(&self.mean).zip(&self.precision);
        self.constant
            - 0.5 * off.map(|((x, mean), precision)| (x - mean) * (x - mean) * precision).sum::<f32>()
    }
}

/// A take used for learning: which stretch, which letters, and in which fold.
pub(super) struct Example<'a> {
    pub(super) features: Vec<&'a [FeatureVector]>,
    pub(super) letters: &'a [usize],
    pub(super) fold: usize,
}

/// How many models there are, each deaf to one part of the session.
pub(super) const FOLDS: usize = 5;
/// Rounds of finding the letters' places and learning from them.
const ROUNDS: usize = 4;
/// The furthest step from one heard letter to the next: with two between that are not.
const REACH: usize = 3;
/// A letter that is not heard (as e at the end in English), in nats.
const SILENT: f32 = -3.0;

/// For each fold, the letters learnt from the others.
pub(super) struct AcousticModel(Vec<Vec<LetterModel>>);

impl AcousticModel {
    pub(super) fn learn(examples: &[Example<'_>], alphabet: &Alphabet) -> AcousticModel {
        let size = alphabet.0.len();
        let mut sums = vec![vec![Sums::default(); size]; FOLDS];
        for example in examples {
            let frames = example.features.iter().map(|part| part.len()).sum::<usize>();
            let letters = example.letters.len();
            let evenly: Vec<usize> = (0..frames).map(|at| at * letters / frames.max(1)).collect();
            learn_from(&mut sums, example, &evenly);
        }
        let mut model = AcousticModel::from(&sums);
        for _ in 0..ROUNDS {
            let all = model.0.pop().unwrap_or_default();
            sums.iter_mut().for_each(|fold| fold.fill(Sums::default()));
            for example in examples {
                let table = table(&all, &example.features);
                let (_, places) = best_path(&table, example.letters, true);
                learn_from(&mut sums, example, &places);
            }
            model = AcousticModel::from(&sums);
        }
        model
    }

    /// One model for each fold, and last one that has heard all.
    fn from(sums: &[Vec<Sums>]) -> AcousticModel {
        let size = sums.first().map_or(0, Vec::len);
        let without = |deaf: usize| {
            let letters = (0..size).map(|letter| {
                let mut sum = Sums::default();
                let folds = sums.iter().enumerate().filter(|(fold, _)| *fold != deaf);
                folds.filter_map(|(_, fold)| fold.get(letter)).for_each(|fold| sum.add_all(fold));
                LetterModel::new(&sum)
            });
            letters.collect()
        };
        AcousticModel((0..=FOLDS).map(without).collect())
    }

    /// How each frame goes with each letter, and with any letter.
    pub(super) fn table(&self, fold: usize, features: &[&[FeatureVector]]) -> Vec<Vec<f32>> {
        self.0.get(fold).map(|letters| table(letters, features)).unwrap_or_default()
    }
}

/// How much better the frames go with these letters in a row than with any letters, in nats a frame.
pub(super) fn fit(table: &[Vec<f32>], letters: &[usize]) -> f64 {
    let (score, _) = best_path(table, letters, false);
    f64::from(score) / table.len().max(1) as f64
}

fn learn_from(sums: &mut [Vec<Sums>], example: &Example<'_>, places: &[usize]) {
    let Some(fold) = sums.get_mut(example.fold) else { return };
    for (vector, place) in example.features.iter().copied().flatten().zip(places) {
        let letter = example.letters.get(*place).and_then(|letter| fold.get_mut(*letter));
        if let Some(sum) = letter {
            sum.add(vector);
        }
    }
}

/// Each letter's score less that of the best letters on the average: what is left tells letters apart.
fn table(letters: &[LetterModel], features: &[&[FeatureVector]]) -> Vec<Vec<f32>> {
    let row = |vector: &FeatureVector| {
        let mut row: Vec<f32> = letters.iter().map(|letter| letter.score(vector)).collect();
        let best = row.iter().copied().fold(f32::MIN, f32::max);
        let any =
            best + (row.iter().map(|score| (score - best).exp()).sum::<f32>() / row.len().max(1) as f32).ln();
        // No single frame decides: one click must not.
        row.iter_mut().for_each(|score| *score = (*score - any).max(-12.0));
        row
    };
    features.iter().copied().flatten().map(row).collect()
}

/// The best way through the letters, in order, and the place of each frame in them if asked for.
fn best_path(table: &[Vec<f32>], letters: &[usize], trace: bool) -> (f32, Vec<usize>) {
    let heard = |row: &[f32], letter: usize| row.get(letter).copied().unwrap_or(-12.0);
    // Each place is reached from itself and those before it; before the first there are none.
    let mut before = vec![f32::NEG_INFINITY; REACH + letters.len()];
    let starts = [0.0, SILENT].into_iter().chain(std::iter::repeat(f32::NEG_INFINITY));
    if let Some(row) = table.first() {
        for ((score, letter), start) in before.iter_mut().skip(REACH).zip(letters).zip(starts) {
            *score = start + heard(row, *letter);
        }
    }
    let mut now = before.clone();
    // The step taken to each place in each frame but the first.
    let mut steps: Vec<u8> = Vec::new();
    for row in table.iter().skip(1) {
        for ((score, letter), from) in now.iter_mut().skip(REACH).zip(letters).zip(before.windows(REACH + 1))
        {
            let &[third, second, first, same] = from else { continue };
            let mut best = (same, 0u8);
            for other in [(first, 1), (second + SILENT, 2), (third + 2.0 * SILENT, 3)] {
                best = if other.0 > best.0 { other } else { best };
            }
            *score = best.0 + heard(row, *letter);
            if trace {
                steps.push(best.1);
            }
        }
        std::mem::swap(&mut before, &mut now);
    }
    let before = before.get(REACH..).unwrap_or_default();
    let ends = before.iter().enumerate().rev().take(3);
    let ends = ends.map(|(place, score)| (score + SILENT * (letters.len() - 1 - place) as f32, place));
    let Some((score, mut place)) = ends.max_by(|a, b| a.0.total_cmp(&b.0)) else { return (-1e6, Vec::new()) };
    if !trace || !score.is_finite() {
        return (score.max(-1e6), Vec::new());
    }
    let mut places = Vec::with_capacity(table.len());
    for taken in steps.chunks(letters.len()).rev() {
        places.push(place);
        place = place.saturating_sub(usize::from(taken.get(place).copied().unwrap_or(0)));
    }
    places.push(place);
    places.reverse();
    (score, places)
}

/// How far two stretches are from each other, a frame, along the best way through both (time warping).
pub(super) fn distance(one: &[FeatureVector], other: &[FeatureVector]) -> f64 {
    let apart = |a: &FeatureVector, b: &FeatureVector| {
        a.iter().zip(b).take(SHAPE).map(|(a, b)| (a - b) * (a - b)).sum::<f32>().sqrt()
    };
    let mut before: Vec<f32> = vec![f32::INFINITY; other.len() + 1];
    if let Some(first) = before.first_mut() {
        *first = 0.0;
    }
    for a in one {
        let mut now = Vec::with_capacity(before.len());
        let mut left = f32::INFINITY;
        now.push(left);
        for (pair, b) in before.windows(2).zip(other) {
            let [diagonal, above] = *pair else { continue };
            let cost = apart(a, b);
            left = (diagonal + 2.0 * cost).min(above + cost).min(left + cost);
            now.push(left);
        }
        before = now;
    }
    f64::from(before.last().copied().unwrap_or(f32::INFINITY)) / (one.len() + other.len()).max(1) as f64
}
