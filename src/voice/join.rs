//! Clips one after the other, as if spoken in one breath.
//!
//! Each clip loses the silence at its edges, is brought near the common level,
//! and is faded in and out with raised cosines. Clips of one run overlap where
//! they differ least (`seam`); between runs lies a pause. A low
//! room tone runs through all, so that no pause is dead.

use std::f64::consts::PI;
use std::ops::Range;

use super::shape::Shape;
use super::{Frames, seam, tone, wide};
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
    /// Fades beside a pause.
    pub fade: Frames,
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
#[derive(Debug, Clone)]
pub struct Part<'a> {
    /// Its sounding samples.
    sounding: &'a [f32],
    /// Their level in dBFS; minus infinity for silence.
    level_db: f64,
    /// The pause that follows; none where the next clip joins on.
    pause: Option<Pause>,
}

impl<'a> Part<'a> {
    /// A clip of mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE), and the pause that follows;
    /// none where the next clip joins on.
    pub fn new(samples: &'a [f32], pause: Option<Pause>) -> Part<'a> {
        Part::shaped(samples, &Shape::of(samples), pause)
    }

    /// A clip whose sounding part is known.
    pub(super) fn shaped(samples: &'a [f32], shape: &Shape, pause: Option<Pause>) -> Part<'a> {
        let sounding = samples.get(shape.range.clone()).unwrap_or_default();
        Part { sounding, level_db: shape.level_db, pause }
    }

    fn len(&self) -> Frames {
        Frames::of(self.sounding.len())
    }
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
    /// Mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE), not yet at their final level.
    pub samples: Vec<f32>,
    /// Where each part lies.
    pub spans: Vec<Span>,
}

/// Joins clips, with pauses and room tone.
pub fn join(parts: &[Part<'_>], options: &JoinOptions) -> Joined {
    let median = median(parts.iter().map(|part| part.level_db).filter(|level| level.is_finite()).collect());
    let gain = |part: &Part<'_>| {
        let evened = (median - part.level_db).clamp(-options.evening_db, options.evening_db);
        let gain_db = options.speech_dbfs - median + evened;
        if gain_db.is_finite() { 10f64.powf(gain_db / 20.0) as f32 } else { 0.0 }
    };
    let gains: Vec<f32> = parts.iter().map(gain).collect();
    let (places, spans, length) = places(parts, &gains, options);
    let room = match &options.room_tone {
        Some(recorded) if !recorded.is_empty() => {
            tone::recorded_room(recorded, 10f64.powf((options.speech_dbfs - median) / 20.0) as f32)
        }
        _ => tone::quiet_room(options.room_tone_dbfs),
    };
    let mut sound = Sound { samples: Vec::with_capacity(length.len()), room };
    for ((part, gain), place) in parts.iter().zip(gains).zip(places) {
        sound.mix(part.sounding, gain, place);
    }
    sound.room_until(length.len());
    Joined { samples: sound.samples, spans }
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

fn places(parts: &[Part<'_>], gains: &[f32], options: &JoinOptions) -> (Vec<Place>, Vec<Span>, Frames) {
    let half = |part: &Part<'_>| Frames(part.len().0 / 2);
    let fade = |part: &Part<'_>| half(part).min(options.fade).len();
    let mut places: Vec<Place> = Vec::with_capacity(parts.len());
    let mut spans: Vec<Span> = Vec::with_capacity(parts.len());
    let mut at = options.lead;
    let mut overlap = None;
    let nexts = parts.iter().zip(gains).skip(1).map(Some).chain([None]);
    for ((part, gain), next) in parts.iter().zip(gains).zip(nexts) {
        let before = overlap.unwrap_or_default();
        overlap = next.filter(|_| part.pause.is_none()).map(|(next, next_gain)| {
            let most = half(part).min(half(next)).len();
            Frames::of(seam::overlap((part.sounding, *gain), (next.sounding, *next_gain), most))
        });
        let (start, end) = (at - before, at - before + part.len());
        let joined_on = before > Frames(0);
        places.push(Place {
            start,
            fade_in: if joined_on { before.len() } else { fade(part) },
            fade_out: overlap.map_or(fade(part), Frames::len),
        });
        let to = end - Frames(overlap.unwrap_or_default().0 / 2);
        // A clip begins where the one before it ended, in the middle of their overlap.
        let from = if joined_on { spans.last().map_or(start, |span| span.to) } else { start };
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

/// What has been joined so far: the room, with clips in it.
struct Sound {
    samples: Vec<f32>,
    /// Heard again and again.
    room: Vec<f32>,
}

impl Sound {
    /// The room goes on.
    fn room_until(&mut self, end: usize) {
        while self.samples.len() < end && !self.room.is_empty() {
            let next = self.room.get(self.samples.len() % self.room.len()..).unwrap_or_default();
            let wanted = next.len().min(end - self.samples.len());
            self.samples.extend_from_slice(next.get(..wanted).unwrap_or_default());
        }
    }

    /// The room goes on while a clip is heard, from where the sound ends.
    fn append(&mut self, mut clip: &[f32], gain: f32) {
        while !clip.is_empty() && !self.room.is_empty() {
            let next = self.room.get(self.samples.len() % self.room.len()..).unwrap_or_default();
            wide::append_sum(&mut self.samples, next, clip, gain);
            clip = clip.get(next.len()..).unwrap_or_default();
        }
    }

    /// Adds a clip that begins no earlier than the one before, with fades at its ends.
    fn mix(&mut self, clip: &[f32], gain: f32, place: Place) {
        let Place { start, fade_in, fade_out } = place;
        let (start, last) = (start.len(), clip.len().saturating_sub(fade_out));
        let body = fade_in.min(clip.len())..last.max(fade_in).min(clip.len());
        self.room_until(start + body.start);
        self.fade(clip, start, 0..body.start, |index| gain * raised_cosine(index, fade_in));
        // Of the body, what the clip before still reaches into is there already.
        let there = (self.samples.len() - start).clamp(body.start, body.end);
        if let (Some(target), Some(clip)) =
            (self.samples.get_mut(start + body.start..), clip.get(body.start..there))
        {
            wide::add(target, clip, gain);
        }
        self.append(clip.get(there..body.end).unwrap_or_default(), gain);
        self.room_until(start + clip.len());
        let falling = |index: usize| gain * raised_cosine(clip.len() - 1 - index, fade_out);
        self.fade(clip, start, body.end..clip.len(), falling);
    }

    /// Adds a stretch of a clip, each sample with a gain of its own.
    fn fade(&mut self, clip: &[f32], start: usize, stretch: Range<usize>, gain: impl Fn(usize) -> f32) {
        let target = self.samples.get_mut(start..).unwrap_or_default();
        let sums = target.iter_mut().zip(clip).enumerate().take(stretch.end).skip(stretch.start);
        for (index, (sum, sample)) in sums {
            *sum += gain(index) * sample;
        }
    }
}

/// Rises from 0 to 1; with its mirror image it sums to 1.
fn raised_cosine(index: usize, length: usize) -> f32 {
    (0.5 - 0.5 * (PI * (index as f64 + 0.5) / length as f64).cos()) as f32
}
