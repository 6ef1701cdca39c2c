//! Clips one after the other, as if spoken in one breath.
//!
//! Each clip loses the silence at its edges, is brought near the common level,
//! and is faded in and out with raised cosines. Clips of one run overlap by
//! the length of a fade; between runs lies a pause. A low room tone runs
//! through all, so that no pause is dead.

use std::f64::consts::PI;
use std::ops::Range;

use super::edge::Edges;
use super::noise::Noise;
use super::{Frames, SAMPLE_RATE};
use crate::language::Pause;

/// How clips are joined.
#[derive(Debug, Clone, PartialEq)]
pub struct JoinOptions {
    /// Pause within a sentence.
    pub comma: Frames,
    /// Pause after a sentence.
    pub sentence: Frames,
    /// Pause after a statement.
    pub statement: Frames,
    /// Room tone before the first clip.
    pub lead: Frames,
    /// Room tone after the last clip, in place of its pause.
    pub tail: Frames,
    /// Fades, and the overlap of clips that join on.
    pub fade: Frames,
    /// What is kept of the silence at either edge of a clip.
    pub keep: Frames,
    /// How far below a clip's own level its edges count as silence, in dB.
    pub edge_db: f64,
    /// How far a clip is raised or lowered towards the median, in dB.
    pub evening_db: f64,
    /// The level that the median clip is brought to, in dBFS RMS. Near the
    /// final loudness, so that the room tone ends up near its own level.
    pub speech_dbfs: f64,
    /// The level of the synthetic room tone, in dBFS RMS.
    pub room_tone_dbfs: f64,
    /// The room as recorded with the clips, to be heard in place of the
    /// synthetic tone; it is raised or lowered as the median clip is.
    pub room_tone: Option<Vec<f32>>,
}

impl Default for JoinOptions {
    fn default() -> Self {
        JoinOptions {
            comma: Frames::from_millis(200),
            sentence: Frames::from_millis(500),
            statement: Frames::from_millis(900),
            lead: Frames::from_millis(250),
            tail: Frames::from_millis(500),
            fade: Frames(360),
            keep: Frames::from_millis(10),
            edge_db: 40.0,
            evening_db: 6.0,
            speech_dbfs: -23.0,
            room_tone_dbfs: -75.0,
            room_tone: None,
        }
    }
}

impl JoinOptions {
    /// The length of a pause.
    pub fn pause(&self, pause: Pause) -> Frames {
        match pause {
            Pause::Comma => self.comma,
            Pause::Sentence => self.sentence,
            Pause::Statement => self.statement,
        }
    }
}

/// A clip in its place.
#[derive(Debug, Clone, Copy)]
pub struct Part<'a> {
    /// Its samples, mono at [`SAMPLE_RATE`].
    pub samples: &'a [f32],
    /// The pause that follows; none where the next clip joins on.
    pub pause: Option<Pause>,
}

/// Where a clip lies in the joined sound.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Span {
    /// Its first frame; within a crossfade, the middle.
    pub from: Frames,
    /// The frame after its last; within a crossfade, the middle.
    pub to: Frames,
}

/// Clips in one.
#[derive(Debug, Clone, PartialEq)]
pub struct Joined {
    /// Mono samples at [`SAMPLE_RATE`], not yet at their final level.
    pub samples: Vec<f32>,
    /// Where each part lies.
    pub spans: Vec<Span>,
}

/// Frames over which a clip's level is taken: 5 ms.
const WINDOW: usize = SAMPLE_RATE as usize / 200;
/// Windows this far below the mean of all are pauses within the clip.
const GATE: f64 = 0.1;
/// A clip's own noise lies below this share of its windows.
const NOISE_SHARE: usize = 10;
/// Edges this near to a clip's noise are silence.
const ABOVE_NOISE: f64 = 4.0;
/// Nothing louder than this, below the clip's level, is ever taken for silence.
const MOST_EDGE: f64 = 3.2e-3;
/// Frames of room tone before it repeats: 2.7 s, too long to be heard as a pattern.
const TONE: usize = 1 << 17;
/// Frames over which a recorded room fades into itself: 50 ms.
const SEAM: usize = SAMPLE_RATE as usize / 20;
/// What the low-pass of the room tone, near 1200 Hz, lets in of each new value.
const TONE_PASS: f64 = 0.15;

/// Joins clips, with pauses and room tone.
pub fn join(parts: &[Part<'_>], options: &JoinOptions) -> Joined {
    let shapes: Vec<Shape> = parts.iter().map(|part| Shape::of(part.samples, options)).collect();
    let median =
        median(shapes.iter().map(|shape| shape.level_db).filter(|level| level.is_finite()).collect());
    let (places, spans, length) = places(parts, &shapes, options);
    let mut samples = vec![0f32; length.len()];
    for ((part, shape), place) in parts.iter().zip(&shapes).zip(places) {
        let evened = (median - shape.level_db).clamp(-options.evening_db, options.evening_db);
        let gain_db = options.speech_dbfs - median + evened;
        let gain = if gain_db.is_finite() { 10f64.powf(gain_db / 20.0) } else { 0.0 };
        let clip = part.samples.get(shape.range.clone()).unwrap_or_default();
        let target = samples.get_mut(place.start.len()..).unwrap_or_default();
        mix(target, clip, gain as f32, place.fade_in, place.fade_out);
    }
    let tone = match &options.room_tone {
        Some(recorded) if !recorded.is_empty() => {
            looped(recorded, 10f64.powf((options.speech_dbfs - median) / 20.0) as f32)
        }
        _ => room_tone(options.room_tone_dbfs),
    };
    for (sample, noise) in samples.iter_mut().zip(tone.iter().cycle()) {
        *sample += noise;
    }
    Joined { samples, spans }
}

/// The sounding part of a clip.
struct Shape {
    range: Range<usize>,
    /// RMS without pauses, in dBFS; minus infinity for silence.
    level_db: f64,
}

impl Shape {
    fn of(samples: &[f32], options: &JoinOptions) -> Shape {
        let powers: Vec<f64> = samples.chunks(WINDOW).map(power).collect();
        let level = active_power(&powers);
        let mut sorted = powers.clone();
        sorted.sort_by(f64::total_cmp);
        let noise = sorted.get(sorted.len() / NOISE_SHARE).copied().unwrap_or(0.0);
        let edge = level * 10f64.powf(-options.edge_db / 10.0);
        let edge = edge.max((noise * ABOVE_NOISE).min(level * MOST_EDGE));
        let sounds = |power: &f64| *power > edge;
        let keep = options.keep.len();
        let range = match (powers.iter().position(sounds), powers.iter().rposition(sounds)) {
            (Some(first), Some(last)) => {
                (first * WINDOW).saturating_sub(keep)..((last + 1) * WINDOW + keep).min(samples.len())
            }
            _ => 0..samples.len(),
        };
        Shape { range, level_db: 10.0 * level.log10() }
    }

    fn len(&self) -> Frames {
        Frames::of(self.range.len())
    }
}

/// The edges of a clip's sounding part.
pub(super) fn edges(samples: &[f32], options: &JoinOptions) -> Edges {
    let shape = Shape::of(samples, options);
    Edges::of(samples.get(shape.range).unwrap_or_default(), shape.level_db)
}

fn power(samples: &[f32]) -> f64 {
    // Four sums, since a single one waits for each addition.
    let mut sums = [0f32; 4];
    let quads = samples.chunks_exact(4);
    let rest: f32 = quads.remainder().iter().map(|sample| sample * sample).sum();
    for quad in quads {
        for (sum, sample) in sums.iter_mut().zip(quad) {
            *sum += sample * sample;
        }
    }
    f64::from(sums.iter().sum::<f32>() + rest) / samples.len().max(1) as f64
}

/// Mean power of the windows that are no pauses.
fn active_power(powers: &[f64]) -> f64 {
    let mean = |powers: &[f64]| powers.iter().sum::<f64>() / powers.len().max(1) as f64;
    let gate = mean(powers) * GATE;
    let active: Vec<f64> = powers.iter().copied().filter(|power| *power > gate).collect();
    mean(&active)
}

/// The lower median; 0 where there is nothing.
fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len().saturating_sub(1) / 2).copied().unwrap_or(0.0)
}

/// Where a clip is mixed in.
struct Place {
    start: Frames,
    fade_in: usize,
    fade_out: usize,
}

fn places(parts: &[Part<'_>], shapes: &[Shape], options: &JoinOptions) -> (Vec<Place>, Vec<Span>, Frames) {
    let half = |shape: &Shape| Frames(shape.len().0 / 2).min(options.fade);
    let mut places: Vec<Place> = Vec::with_capacity(parts.len());
    let mut spans: Vec<Span> = Vec::with_capacity(parts.len());
    let mut at = options.lead;
    let mut overlap = None;
    for (index, (part, shape)) in parts.iter().zip(shapes).enumerate() {
        let before = overlap.unwrap_or_default();
        let next = shapes.get(index + 1);
        let joins_on = part.pause.is_none() && next.is_some();
        overlap = next.filter(|_| joins_on).map(|next| half(shape).min(half(next)));
        let (start, end) = (at - before, at - before + shape.len());
        places.push(Place {
            start,
            fade_in: if index > 0 && before > Frames(0) { before } else { half(shape) }.len(),
            fade_out: overlap.unwrap_or_else(|| half(shape)).len(),
        });
        let to = end - Frames(overlap.unwrap_or_default().0 / 2);
        // A clip begins where the one before it ended, in the middle of their overlap.
        let from = if before > Frames(0) { spans.last().map_or(start, |span| span.to) } else { start };
        spans.push(Span { from, to });
        at = end
            + match (next, part.pause) {
                (None, _) => options.tail,
                (Some(_), Some(pause)) => options.pause(pause),
                (Some(_), None) => Frames(0),
            };
    }
    if parts.is_empty() {
        at += options.tail;
    }
    (places, spans, at)
}

/// Adds a clip with fades at its ends.
fn mix(target: &mut [f32], clip: &[f32], gain: f32, fade_in: usize, fade_out: usize) {
    let last = clip.len().saturating_sub(fade_out);
    for (index, (sum, sample)) in target.iter_mut().zip(clip).enumerate() {
        let mut factor = gain;
        if index < fade_in {
            factor *= raised_cosine(index, fade_in);
        }
        if index >= last {
            factor *= raised_cosine(clip.len() - 1 - index, fade_out);
        }
        *sum += factor * sample;
    }
}

/// Rises from 0 to 1; with its mirror image it sums to 1.
fn raised_cosine(index: usize, length: usize) -> f32 {
    (0.5 - 0.5 * (PI * (index as f64 + 0.5) / length as f64).cos()) as f32
}

/// A recorded room that repeats without a seam: its end is faded into its beginning.
fn looped(recorded: &[f32], gain: f32) -> Vec<f32> {
    let seam = (recorded.len() / 4).min(SEAM);
    let (body, end) = recorded.split_at(recorded.len() - seam);
    let fading = end.iter().enumerate().map(|(index, sample)| {
        // Two stretches of noise are not alike: their powers are to sum to one, not their values.
        let rising = PI / 2.0 * (index as f64 + 0.5) / seam as f64;
        (rising.sin() as f32, rising.cos() as f32 * sample)
    });
    let start = body.iter().zip(fading).map(|(sample, (rising, ending))| gain * (rising * sample + ending));
    let rest = body.iter().skip(seam).map(|sample| gain * sample);
    start.collect::<Vec<_>>().into_iter().chain(rest).collect()
}

/// Noise as of a quiet room, that repeats without a seam.
fn room_tone(dbfs: f64) -> Vec<f32> {
    let mut noise = Noise::new(0x5EED);
    let white: Vec<f32> = (0..TONE).map(|_| noise.triangular()).collect();
    let mut low = 0f64;
    let mut pass = |value: &f32| {
        low += TONE_PASS * (f64::from(*value) - low);
        low
    };
    // A first stretch brings the filter to where the end of the tone leaves it.
    white.iter().skip(TONE - 1024).for_each(|value| {
        pass(value);
    });
    let tone: Vec<f64> = white.iter().map(pass).collect();
    let power = tone.iter().map(|value| value * value).sum::<f64>() / TONE as f64;
    let gain = 10f64.powf(dbfs / 20.0) / power.sqrt();
    tone.into_iter().map(|value| (value * gain) as f32).collect()
}
