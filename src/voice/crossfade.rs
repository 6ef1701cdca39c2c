//! How far two clips that join on overlap.
//!
//! The overlap is the one, of 5 to 20 ms, within which the ending and the
//! beginning differ least. Where the clips end and begin in quiet, that is the
//! quiet; where both still sound, it is where their waves run alike, so that
//! periods of a voice meet in step and none is doubled or halved.

use fearless_simd::{Level, Simd, dispatch};

use super::SAMPLE_RATE;

/// The shortest overlap, in frames: 5 ms.
pub(super) const LEAST: usize = SAMPLE_RATE as usize / 200;
/// The longest: 20 ms.
pub(super) const MOST: usize = SAMPLE_RATE as usize / 50;
/// Overlaps that are tried lie this many frames apart: a quarter of a millisecond,
/// a tenth of the shortest period of a voice.
const STEP: usize = SAMPLE_RATE as usize / 4000;
/// Of so many frames one is compared: differences above 8 kHz are not waited for.
const THIN: usize = 3;

/// The overlap of a clip in 16 bits, times a gain, with the next, times its own, in frames;
/// no longer than `most`.
pub(super) fn overlap(before: (&[i16], f32), after: (&[i16], f32), most: usize) -> usize {
    let lengths = || (LEAST..=MOST.min(most)).step_by(STEP);
    let Some(longest) = lengths().last() else { return LEAST.min(most) };
    // Every overlap begins a multiple of `THIN` after the longest, so that the same frames are compared.
    let thin = |(clip, gain): (&[i16], f32), from: usize| -> Vec<f32> {
        let frames = clip.get(from..).unwrap_or_default().iter().take(longest);
        frames.step_by(THIN).map(|step| gain * f32::from(*step)).collect()
    };
    let ending = thin(before, before.0.len().saturating_sub(longest));
    let beginning = thin(after, 0);
    let mut best = (f32::INFINITY, LEAST.min(most));
    for length in lengths() {
        let ending = ending.get((longest - length) / THIN..).unwrap_or_default();
        let difference = dispatch!(Level::new(), simd => difference(simd, ending, &beginning));
        if difference < best.0 {
            best = (difference, length);
        }
    }
    best.1
}

/// Frames whose differences are summed side by side.
const SIDE: usize = 16;

/// The mean square of what differs between an ending and as much of a beginning. The middle counts most: towards
/// the ends only one of the two is heard.
#[inline(always)]
fn difference<S: Simd>(_: S, ending: &[f32], beginning: &[f32]) -> f32 {
    let length = ending.len().min(beginning.len());
    let mut sums = [0f32; SIDE];
    let part = 1.0 / length.max(1) as f32;
    let mut at: [f32; SIDE] = std::array::from_fn(|place| (place as f32 + 0.5) * part);
    let mut add = |ending: &[f32; SIDE], beginning: &[f32; SIDE]| {
        let places = sums.iter_mut().zip(&mut at).zip(ending.iter().zip(beginning));
        for ((sum, at), (ending, beginning)) in places {
            let off = ending - beginning;
            *sum += *at * (1.0 - *at) * off * off;
            *at += SIDE as f32 * part;
        }
    };
    let (endings, last_ending) = ending.as_chunks::<SIDE>();
    let (beginnings, _) = beginning.as_chunks::<SIDE>();
    endings.iter().zip(beginnings).for_each(|(ending, beginning)| add(ending, beginning));
    // What is left, in a room of its own, where nothing differs beyond it.
    let (mut one, mut other) = ([0f32; SIDE], [0f32; SIDE]);
    one.iter_mut().zip(last_ending).for_each(|(place, sample)| *place = *sample);
    let last_beginning = beginning.get(endings.len() * SIDE..).unwrap_or_default().iter();
    other.iter_mut().zip(last_beginning.take(last_ending.len())).for_each(|(place, sample)| *place = *sample);
    add(&one, &other);
    // The sum of all weights.
    let weights = length as f32 / 6.0 + part / 12.0;
    sums.iter().sum::<f32>() / weights
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tone(hz: f32, from: f32, length: usize) -> Vec<i16> {
        let wave =
            |n: usize| (30_000.0 * (std::f32::consts::TAU * (hz * n as f32 / 48_000.0 + from)).sin()) as i16;
        (0..length).map(wave).collect()
    }

    #[test]
    fn waves_meet_in_step() {
        // Wherever in its period the one ends and the other begins, they overlap by what brings them together.
        for hz in [110.0, 160.0, 230.0, 390.0] {
            for from in [0.0, 0.2, 0.5, 0.9] {
                let (before, after) = (tone(hz, 0.0, 4800), tone(hz, from, 4800));
                let length = overlap((&before, 1.0), (&after, 1.0), usize::MAX);
                assert!((LEAST..=MOST).contains(&length));
                // The phase of the ending where the overlap begins, against that of the beginning.
                let ending = hz * (4800 - length) as f32 / 48_000.0;
                let off = (ending - from).rem_euclid(1.0);
                let off = off.min(1.0 - off);
                // Half a step, at this pitch.
                assert!(off <= hz * STEP as f32 / 2.0 / 48_000.0 + 0.001, "{hz} Hz, {from}: {off}");
            }
        }
    }

    #[test]
    fn quiet_edges_overlap_in_their_quiet() {
        for quiet in [300usize, 480, 700] {
            let mut before = tone(200.0, 0.0, 4800);
            before.extend(vec![0; quiet]);
            let mut after = vec![0; quiet];
            after.extend(tone(330.0, 0.0, 4800));
            let length = overlap((&before, 1.0), (&after, 1.0), usize::MAX);
            assert!(length <= quiet + STEP, "{quiet}: {length}");
        }
    }

    #[test]
    fn short_clips_overlap_by_no_more_than_they_may() {
        let short = tone(200.0, 0.0, 100);
        assert_eq!(overlap((&short, 1.0), (&short, 1.0), 50), 50);
        assert_eq!(overlap((&[], 1.0), (&[], 1.0), 0), 0);
    }
}
