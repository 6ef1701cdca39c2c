//! Signature before and after the voice, music under it. All of it in mono.

use std::f64::consts::FRAC_PI_2;

use crate::voice::join::Span;
use crate::voice::level::{LevelOptions, to_target};
use crate::voice::{Frames, LevelError, Sound as _, Spoken};

/// A station's sounds, each mono at [`SAMPLE_RATE`](crate::voice::SAMPLE_RATE) and at -23 LUFS.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Music {
    /// Before the voice.
    pub opening: Option<Vec<f32>>,
    /// After the voice.
    pub closing: Option<Vec<f32>>,
    /// Under the voice.
    pub bed: Option<Vec<f32>>,
}

impl Music {
    /// How long the signatures are together.
    pub fn signatures(&self) -> Frames {
        length(&self.opening) + length(&self.closing)
    }
}

/// How music is mixed in.
#[derive(Debug, Clone, PartialEq)]
pub struct MixOptions {
    /// How far the bed lies below the voice while it speaks, in LU.
    pub bed_below: f64,
    /// How far below the voice's loudness it lies where nobody speaks, in LU.
    pub swell_below: f64,
    /// Over which it sinks before the first word.
    pub attack: Frames,
    /// Over which it rises after the last word.
    pub release: Frames,
    /// Over which it begins.
    pub fade_in: Frames,
    /// Over which it ends.
    pub fade_out: Frames,
    /// The overlap with itself where it is shorter than the voice.
    pub loop_fade: Frames,
    /// The level of the whole.
    pub level: LevelOptions,
}

impl MixOptions {
    /// 20 dB below the voice: the least distance at which WCAG 2 (success criterion 1.4.7) still
    /// counts speech as free of background. Many listen to a small loudspeaker in a noisy place.
    pub const BED_BELOW: f64 = 20.0;
}

impl Default for MixOptions {
    fn default() -> Self {
        MixOptions {
            bed_below: MixOptions::BED_BELOW,
            swell_below: 6.0,
            attack: Frames::from_millis(500),
            release: Frames::from_millis(800),
            fade_in: Frames::from_millis(300),
            fade_out: Frames::from_millis(1_200),
            loop_fade: Frames::from_millis(500),
            level: LevelOptions::default(),
        }
    }
}

/// A segment with its music.
#[derive(Debug, Clone, PartialEq)]
pub struct Mixed {
    /// The whole, at its final level.
    pub spoken: Spoken,
    /// Where the opening signature lies.
    pub opening: Option<Span>,
    /// Where the closing signature lies.
    pub closing: Option<Span>,
    /// Where the bed lies.
    pub bed: Option<Span>,
}

/// Click-free edges of signatures, in frames: 10 ms.
const EDGE: usize = 480;

/// Mixes a spoken message with a station's sounds: opening, voice, closing one after the other, and the bed under the voice.
///
/// # Errors
/// The whole cannot be brought to its level.
pub fn mix(mut spoken: Spoken, music: &Music, options: &MixOptions) -> Result<Mixed, LevelError> {
    let start = length(&music.opening);
    let end = start + spoken.length();
    let whole = Span { from: start, to: end };
    let words = match (spoken.lines.first(), spoken.lines.last()) {
        (Some(first), Some(last)) => Span { from: first.from, to: last.to },
        _ => Span { from: Frames(0), to: spoken.length() },
    };
    if let Some(bed) = &music.bed {
        lay_under(&mut spoken.samples, bed, words, options);
    }
    let mut samples = faded(&music.opening);
    samples.append(&mut spoken.samples);
    samples.append(&mut faded(&music.closing));
    for line in &mut spoken.lines {
        line.from += start;
        line.to += start;
    }
    let closing = Span { from: end, to: Frames(samples.len() as u64) };
    if music != &Music::default() {
        let levelled = to_target(samples, &options.level)?;
        spoken.limited |= levelled.limited;
        spoken.loudness = levelled.loudness;
        samples = levelled.sound.samples();
    }
    spoken.samples = samples;
    Ok(Mixed {
        spoken,
        opening: music.opening.is_some().then_some(Span { from: Frames(0), to: start }),
        closing: music.closing.is_some().then_some(closing),
        bed: music.bed.is_some().then_some(whole),
    })
}

fn length(sound: &Option<Vec<f32>>) -> Frames {
    Frames(sound.as_ref().map_or(0, |samples| samples.len() as u64))
}

fn faded(sound: &Option<Vec<f32>>) -> Vec<f32> {
    let mut samples = sound.clone().unwrap_or_default();
    let edge = EDGE.min(samples.len() / 2);
    let factor = |index: usize| rise(index as f64 + 0.5, edge as f64) as f32;
    samples.iter_mut().take(edge).enumerate().for_each(|(index, sample)| *sample *= factor(index));
    samples.iter_mut().rev().take(edge).enumerate().for_each(|(index, sample)| *sample *= factor(index));
    samples
}

/// Adds the bed to the voice, ducked while words are said.
fn lay_under(voice: &mut [f32], bed: &[f32], words: Span, options: &MixOptions) {
    let length = voice.len() as f64;
    let [from, to, attack, release] =
        [words.from, words.to, options.attack, options.release].map(|frames| frames.0 as f64);
    let swell = options.swell_below.min(options.bed_below);
    let (fade_in, fade_out) = (options.fade_in.0 as f64, options.fade_out.0 as f64);
    let looped = looped(bed, voice.len(), options.loop_fade.len());
    for (index, (sample, music)) in voice.iter_mut().zip(looped).enumerate() {
        let at = index as f64 + 0.5;
        // 1 while words are said, 0 far from them; the way between in decibels.
        let ducked = rise(at - (from - attack), attack).min(1.0 - rise(at - to, release));
        let below = swell + (options.bed_below - swell) * ducked;
        let edges = rise(at, fade_in) * rise(length - at, fade_out);
        *sample += (f64::from(music) * edges * 10f64.powf(-below / 20.0)) as f32;
    }
}

/// As much of a sound as is wanted: cut, or again and again with its end laid over its beginning at even power.
fn looped(sound: &[f32], wanted: usize, fade: usize) -> Vec<f32> {
    let fade = fade.min(sound.len() / 4);
    let mut samples = sound.to_vec();
    while samples.len() < wanted && sound.len() > fade {
        let seam = samples.len() - fade;
        let tail = samples.iter_mut().skip(seam);
        for (index, (ending, beginning)) in tail.zip(sound).enumerate() {
            let angle = (index as f64 + 0.5) / fade as f64 * FRAC_PI_2;
            *ending = (f64::from(*ending) * angle.cos() + f64::from(*beginning) * angle.sin()) as f32;
        }
        samples.extend_from_slice(sound.get(fade..).unwrap_or_default());
    }
    samples.truncate(wanted);
    samples
}

/// A raised cosine from 0 to 1 over `length`.
fn rise(at: f64, length: f64) -> f64 {
    if at >= length { 1.0 } else { 0.5 - 0.5 * (std::f64::consts::PI * (at / length).max(0.0)).cos() }
}
