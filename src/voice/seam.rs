//! How far two clips that join on overlap.
//!
//! The overlap is the one, of 5 to 20 ms, within which the ending and the
//! beginning differ least. Where the clips end and begin in quiet, that is the
//! quiet; where both still sound, it is where their waves run alike, so that
//! periods of a voice meet in step and none is doubled or halved.

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
    let mut best = (f32::INFINITY, LEAST.min(most));
    for length in (LEAST..=MOST.min(most)).step_by(STEP) {
        let difference = difference(before, after, length);
        if difference < best.0 {
            best = (difference, length);
        }
    }
    best.1
}

/// The mean square of what differs in an overlap. The middle counts most: towards
/// the ends only one of the two is heard.
fn difference((before, gain): (&[i16], f32), (after, next_gain): (&[i16], f32), length: usize) -> f32 {
    let ending = before.get(before.len().saturating_sub(length)..).unwrap_or_default();
    let (mut sum, mut weights, mut index) = (0f32, 0f32, 0);
    while let (Some(ending), Some(beginning)) = (ending.get(index), after.get(index)) {
        let at = (index as f32 + 0.5) / length as f32;
        let weight = at * (1.0 - at);
        let off = gain * f32::from(*ending) - next_gain * f32::from(*beginning);
        sum += weight * off * off;
        weights += weight;
        index += THIN;
    }
    sum / weights.max(f32::MIN_POSITIVE)
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
