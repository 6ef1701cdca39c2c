//! Clips one after the other, as if spoken in one breath.
//!
//! Each clip loses the silence at its edges, is brought near the common level,
//! and is faded in and out with raised cosines. Clips of one run overlap where
//! they differ least (`crossfade`); between runs lies a pause. A low
//! room tone runs through all, so that no pause is dead.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::f64::consts::PI;
use std::ops::Range;

use super::cache::Prepared;
use super::clip_loudness::{ClipLoudness, GRAIN};
use super::meter::{HOP, LoudnessReading};
use super::pcm16::Stretch;
use super::room_tone::RoomTone;
use super::sound::Sound;
use super::{Frames, crossfade, simd};
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

/// A clip to be joined.
#[derive(Debug, Clone)]
pub struct Part<'a> {
    /// What is left of it without the silence at its edges.
    sounding: Stretch<'a>,
    /// What that amounts to.
    loudness: Cow<'a, ClipLoudness>,
    /// Its level in dBFS; minus infinity for silence.
    level_db: f64,
    /// The pause that follows; none where the next clip joins on.
    pause: Option<Pause>,
}

impl<'a> Part<'a> {
    /// A clip of mono samples at [`SAMPLE_RATE`](super::SAMPLE_RATE), and the pause that follows;
    /// none where the next clip joins on.
    pub fn new(samples: &[f32], pause: Option<Pause>) -> Part<'static> {
        let Prepared { sound, shape, loudness, .. } = Prepared::of(samples);
        let steps = sound.steps.get(shape.range).unwrap_or_default().to_vec();
        Part {
            sounding: Stretch { steps: Cow::Owned(steps), unit: sound.unit },
            loudness: Cow::Owned(loudness),
            level_db: shape.level_db,
            pause,
        }
    }

    /// A clip that has been measured.
    pub(super) fn prepared(clip: &'a Prepared, pause: Option<Pause>) -> Part<'a> {
        let Prepared { sound, shape, loudness, .. } = clip;
        let steps = sound.steps.get(shape.range.clone()).unwrap_or_default();
        Part {
            sounding: Stretch { steps: Cow::Borrowed(steps), unit: sound.unit },
            loudness: Cow::Borrowed(loudness),
            level_db: shape.level_db,
            pause,
        }
    }

    fn len(&self) -> Frames {
        Frames::of(self.sounding.steps.len())
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
pub fn join(parts: Vec<Part<'_>>, options: &JoinOptions) -> Joined {
    let mix = Mix::new(parts, options, None);
    Joined { samples: mix.samples(), spans: mix.spans }
}

/// Clips in their places, with pauses and room tone, of which any stretch can be made.
#[derive(Debug, Clone)]
pub struct Mix<'a> {
    layers: Vec<Layer<'a>>,
    spans: Vec<Span>,
    room_tone: RoomTone,
    /// By their length.
    fades: BTreeMap<usize, Fade>,
    length: usize,
}

/// A clip in its place; it begins and ends no earlier than the one before.
#[derive(Debug, Clone)]
struct Layer<'a> {
    clip: Cow<'a, [i16]>,
    loudness: Cow<'a, ClipLoudness>,
    gain: f32,
    /// What a step of the clip is worth after the gain.
    step: f32,
    start: usize,
    fade_in: usize,
    fade_out: usize,
}

impl<'a> Mix<'a> {
    /// A room as recorded is heard in place of the synthetic one; it is raised or lowered as the median clip is.
    pub(super) fn new(parts: Vec<Part<'a>>, options: &JoinOptions, recorded: Option<&RoomTone>) -> Mix<'a> {
        let levels = parts.iter().map(|part| part.level_db).filter(|level| level.is_finite());
        let median = median(levels.collect());
        let gain = |part: &Part<'_>| {
            let evened = (median - part.level_db).clamp(-options.evening_db, options.evening_db);
            let gain_db = options.speech_dbfs - median + evened;
            if gain_db.is_finite() { 10f64.powf(gain_db / 20.0) as f32 } else { 0.0 }
        };
        let gains: Vec<f32> = parts.iter().map(gain).collect();
        let (layers, spans, length) = places(parts, &gains, options);
        let room_tone = match recorded {
            Some(tone) if !tone.is_empty() => {
                tone.clone().raised(10f64.powf((options.speech_dbfs - median) / 20.0))
            }
            _ => RoomTone::quiet(options.room_tone_dbfs),
        };
        let fades = layers.iter().flat_map(|layer| [layer.fade_in, layer.fade_out]);
        let fades = fades.collect::<BTreeSet<_>>().into_iter().map(|length| (length, Fade::of(length)));
        Mix { fades: fades.collect(), layers, spans, room_tone, length: length.len() }
    }

    /// All of it louder or quieter.
    pub(super) fn raised(mut self, gain: f32) -> Mix<'a> {
        self.room_tone.gain *= gain;
        for layer in &mut self.layers {
            layer.gain *= gain;
            layer.step *= gain;
        }
        self
    }

    /// Where each clip lies.
    pub(super) fn spans(&self) -> &[Span] {
        &self.spans
    }

    /// The room, for as long as the stretch from a frame on, and over it a clip where one is heard.
    fn lay(&self, from: usize, into: &mut [f32], clip: Option<(&[i16], f32)>) {
        let mut at = 0;
        while let Some(rest) = into.get_mut(at..).filter(|rest| !rest.is_empty()) {
            let tone = self.room_tone.from(from + at);
            match clip {
                Some((clip, step)) => {
                    let clip = clip.get(at..).unwrap_or_default();
                    simd::set_sum(rest, [tone, clip], [self.room_tone.step(), step]);
                }
                None => simd::set(rest, tone, self.room_tone.step()),
            }
            // No room tone is empty.
            at += tone.len().max(1);
        }
    }

    /// Adds how a clip rises and falls, in a stretch from a frame on.
    fn add_fades(&self, layer: &Layer<'_>, from: usize, into: &mut [f32]) {
        let Range { start: rise, end: fall } = layer.body();
        let (rises, falls) = (self.fades.get(&layer.fade_in), self.fades.get(&layer.fade_out));
        let fades =
            [(0..rise, rises.map(|fade| &fade.rise)), (fall..layer.clip.len(), falls.map(|fade| &fade.fall))];
        for (faded, curve) in fades {
            let heard = layer.heard(faded.clone(), from, into.len());
            let place = (layer.start + heard.start).saturating_sub(from);
            let curve = curve.and_then(|curve| curve.get(heard.start - faded.start..)).unwrap_or_default();
            let clip = layer.clip.get(heard).unwrap_or_default();
            simd::add_shaped(into.get_mut(place..).unwrap_or_default(), clip, curve, layer.step);
        }
    }
}

impl Layer<'_> {
    /// What of the clip is heard at its full gain.
    fn body(&self) -> Range<usize> {
        let rise = self.fade_in.min(self.clip.len());
        rise..self.clip.len().saturating_sub(self.fade_out).max(rise)
    }

    /// What of some of its frames lies in a stretch of the mix.
    fn heard(&self, frames: Range<usize>, from: usize, length: usize) -> Range<usize> {
        let within = |at: usize| at.saturating_sub(self.start).clamp(frames.start, frames.end);
        within(from)..within(from + length)
    }
}

/// So much may the room add to the highest peak before a mix must be measured: 0.1 dB.
const ROOM_ADDS: f64 = 1.0116;

/// What is known of a mix before it is made.
pub(super) struct Known {
    pub(super) reading: LoudnessReading,
    /// No peak lies further out than this, as a factor of full scale.
    pub(super) bound: f64,
}

impl Mix<'_> {
    /// What it measures, as far as its clips tell: none where its highest peak is faded, or the room adds to it.
    pub(super) fn known(&self) -> Option<Known> {
        let mut sums = vec![self.room_tone.weighted_power() * HOP as f64; self.length / HOP];
        let mut highest = (0f64, true);
        for layer in &self.layers {
            let gain = f64::from(layer.gain);
            let body = layer.body();
            for (grain, sum) in layer.loudness.sums.iter().enumerate() {
                let frames = grain * GRAIN..((grain + 1) * GRAIN).min(layer.clip.len());
                let inside = body.start <= frames.start && frames.end <= body.end;
                let faded = if inside { 1.0 } else { self.faded_power(layer, frames.clone()) };
                add_over_hops(&mut sums, layer.start + frames.start, gain * gain * faded * f64::from(*sum));
            }
            let peak = gain * f64::from(layer.loudness.peak);
            if peak > highest.0 {
                highest = (peak, body.contains(&layer.loudness.peak_at));
            }
        }
        let (peak, heard_whole) = highest;
        let bound = peak + self.room_tone.peak();
        (heard_whole && bound <= peak * ROOM_ADDS)
            .then(|| Known { reading: LoudnessReading::known(sums, peak), bound })
    }

    /// The mean square of a clip's fades over some of its frames.
    fn faded_power(&self, layer: &Layer<'_>, frames: Range<usize>) -> f64 {
        let Range { start: rise, end: fall } = layer.body();
        let (rises, falls) = (self.fades.get(&layer.fade_in), self.fades.get(&layer.fade_out));
        let power = |at: usize| {
            let gain = if at < rise {
                rises.and_then(|fade| fade.rise.get(at))
            } else if at >= fall {
                falls.and_then(|fade| fade.fall.get((at + layer.fade_out).saturating_sub(layer.clip.len())))
            } else {
                None
            };
            gain.map_or(1.0, |gain| f64::from(gain * gain))
        };
        frames.clone().map(power).sum::<f64>() / frames.len().max(1) as f64
    }
}

/// Adds a grain's sum to the hops that it lies in.
fn add_over_hops(sums: &mut [f64], from: usize, sum: f64) {
    let (hop, into) = (from / HOP, from % HOP);
    let next = (into + GRAIN).saturating_sub(HOP) as f64 / GRAIN as f64;
    for (hop, part) in [(hop, 1.0 - next), (hop + 1, next)] {
        if let Some(place) = sums.get_mut(hop) {
            *place += part * sum;
        }
    }
}

impl Sound for Mix<'_> {
    fn frames(&self) -> usize {
        self.length
    }

    fn make(&self, from: usize, into: &mut [f32]) {
        let end = from + into.len();
        let first = self.layers.partition_point(|layer| layer.start + layer.clip.len() <= from);
        let layers = self.layers.get(first..).unwrap_or_default();
        let layers = layers.iter().take_while(|layer| layer.start < end);
        // Where a clip is at its gain no other is heard: it and the room go down together.
        let mut laid = 0;
        for layer in layers.clone() {
            let body = layer.heard(layer.body(), from, into.len());
            if !body.is_empty() {
                let place = layer.start + body.start - from;
                self.lay(from + laid, into.get_mut(laid..place).unwrap_or_default(), None);
                laid = place + body.len();
                let clip = layer.clip.get(body).unwrap_or_default();
                let into = into.get_mut(place..laid).unwrap_or_default();
                self.lay(from + place, into, Some((clip, layer.step)));
            }
        }
        self.lay(from + laid, into.get_mut(laid..).unwrap_or_default(), None);
        layers.for_each(|layer| self.add_fades(layer, from, into));
    }
}

/// The lower median; 0 where there is nothing.
fn median(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(values.len().saturating_sub(1) / 2).copied().unwrap_or(0.0)
}

fn places<'a>(
    parts: Vec<Part<'a>>,
    gains: &[f32],
    options: &JoinOptions,
) -> (Vec<Layer<'a>>, Vec<Span>, Frames) {
    let half = |part: &Part<'_>| Frames(part.len().0 / 2);
    let fade = |part: &Part<'_>| half(part).min(options.fade).len();
    let mut places = Vec::with_capacity(parts.len());
    let mut spans: Vec<Span> = Vec::with_capacity(parts.len());
    let mut at = options.lead;
    let mut overlap = None;
    let nexts = parts.iter().zip(gains).skip(1).map(Some).chain([None]);
    for ((part, gain), next) in parts.iter().zip(gains).zip(nexts) {
        let before = overlap.unwrap_or_default();
        overlap = next.filter(|_| part.pause.is_none()).map(|(next, next_gain)| {
            let most = half(part).min(half(next)).len();
            let sides = [(&part.sounding, gain), (&next.sounding, next_gain)];
            let [ending, beginning] = sides.map(|(clip, gain)| (&*clip.steps, gain * clip.unit));
            Frames::of(crossfade::overlap(ending, beginning, most))
        });
        let (start, end) = (at - before, at - before + part.len());
        let joined_on = before > Frames(0);
        let fade_in = if joined_on { before.len() } else { fade(part) };
        places.push((start.len(), fade_in, overlap.map_or(fade(part), Frames::len)));
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
    let layers = parts.into_iter().zip(gains).zip(places);
    let layers = layers.map(|((part, gain), (start, fade_in, fade_out))| Layer {
        clip: part.sounding.steps,
        loudness: part.loudness,
        gain: *gain,
        step: gain * part.sounding.unit,
        start,
        fade_in,
        fade_out,
    });
    (layers.collect(), spans, at)
}

/// How clips begin and end; where they overlap the two sum to 1.
#[derive(Debug, Clone)]
struct Fade {
    /// A raised cosine from 0 to 1.
    rise: Vec<f32>,
    /// Its mirror image.
    fall: Vec<f32>,
}

impl Fade {
    fn of(length: usize) -> Fade {
        let at = |index: usize| (0.5 - 0.5 * (PI * (index as f64 + 0.5) / length as f64).cos()) as f32;
        let rise: Vec<f32> = (0..length).map(at).collect();
        Fade { fall: rise.iter().rev().copied().collect(), rise }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whichever stretches are asked for, and in whichever order: they are those of the whole.
    #[test]
    fn stretches_are_those_of_the_whole() {
        let tone = |hz: f32, length: usize| -> Vec<f32> {
            (0..length).map(|at| (hz * at as f32 / 48_000.0 * std::f32::consts::TAU).sin()).collect()
        };
        let clips = [tone(200.0, 9600), tone(330.0, 30), tone(250.0, 700), tone(180.0, 20_000)];
        let pauses = [None, Some(Pause::Comma), None, None];
        let parts: Vec<Part<'_>> =
            clips.iter().zip(pauses).map(|(clip, pause)| Part::new(clip, pause)).collect();
        let mix = Mix::new(parts, &JoinOptions::default(), None);
        let whole = mix.samples();
        assert_eq!(whole.len(), mix.frames());
        for length in [1, 7, 100, 480, 4800, 4801] {
            for from in (0..whole.len()).step_by(977) {
                let frames = from..(from + length).min(whole.len());
                let mut buffer = vec![9.0; frames.len()];
                assert_eq!(mix.stretch(frames.clone(), &mut buffer), &whole[frames.clone()], "{frames:?}");
            }
        }
    }
}
