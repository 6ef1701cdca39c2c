//! How well a clip is recorded.
//!
//! [`measure`] tells what is in the sound, [`Norms`] what is usual in a voice's
//! bank, and [`judge`] what a clip's speaker should do about it. Sound is mono
//! at any rate, in samples from -1 to 1; levels are RMS in dBFS, where a square
//! wave at full scale has 0.

use super::super::decode::stored;
use super::super::hum::Hum;
use super::super::simd;
use crate::catalogue::catalogue;
use crate::finding::{Code, Finding};
use crate::language::Label;

/// Where a fault begins. None of these has a source that measured farmers'
/// radio; where nothing is named, it is common practice and was tried on
/// machine voices with faults added.
mod limits {
    /// Speech to noise, in dB, below which a clip is to be recorded again. Words
    /// are still understood far below; listeners tire. Common practice, no source.
    pub(super) const NOISE_AGAIN_DB: f64 = 15.0;
    /// The same, below which noise is remarked on. Common practice, no source.
    pub(super) const NOISE_DB: f64 = 30.0;
    /// Speech to hum, in dB: hum can be taken out, up to a point. Common practice, no source.
    pub(super) const HUM_AGAIN_DB: f64 = 10.0;
    /// The same, below which hum is remarked on. Common practice, no source.
    pub(super) const HUM_DB: f64 = 40.0;
    /// Share of samples held at their extreme that is to be recorded again. Common practice, no source.
    pub(super) const CLIPPED_AGAIN: f64 = 2e-3;
    /// The same, above which it is remarked on. Common practice, no source.
    pub(super) const CLIPPED: f64 = 2e-4;
    /// Distance from the bank's median level, in dB, that joining does not even out: see `JoinOptions::evening_db`, and a
    /// listener's step beyond it.
    pub(super) const LEVEL_AGAIN_DB: f64 = 12.0;
    /// Distance that joining evens out: `JoinOptions::evening_db`.
    pub(super) const LEVEL_DB: f64 = 6.0;
    /// An edge this far below the clip's speech, in dB, or less, is speech cut off. Common practice, no source.
    pub(super) const EDGE_DB: f64 = 22.0;
    /// And this far above the clip's noise, in dB. Common practice, no source.
    pub(super) const EDGE_OVER_NOISE_DB: f64 = 6.0;
    /// Offset, as a share of full scale: a hundredth is -40 dBFS. Common practice, no source.
    pub(super) const DC: f64 = 0.01;
    /// Reverberation time in seconds above which a clip is to be recorded again. Rooms for speech have 0.2
    /// to 0.8 s (memory); a word that fades by itself may read as one second.
    pub(super) const ROOM_AGAIN_S: f64 = 1.5;
    /// The same, above which it is remarked on.
    pub(super) const ROOM_S: f64 = 1.0;
    /// Times the speaker's usual pace, or its inverse. Common practice, no source.
    pub(super) const PACE_AGAIN: f64 = 2.0;
    /// The same, remarked on. Common practice, no source.
    pub(super) const PACE: f64 = 1.6;
    /// Letters from which pace tells something: a lone syllable is long or short as it pleases. Common practice, no source.
    pub(super) const LEAST_LETTERS: usize = 8;
    /// Clips from which a median tells what is usual. Common practice, no source.
    pub(super) const LEAST_CLIPS: usize = 5;
}

/// A clip's samples as they are stored, at their own rate in Hz.
///
/// # Errors
/// What is wrong with the file.
pub fn read(bytes: &[u8]) -> Result<(u32, Vec<f32>), Finding> {
    stored(bytes)
        .map_err(|problem| Finding::error(Code::BROKEN_SOUND, problem.to_string()).hint(problem.hint()))
}

/// What is in a clip.
#[derive(Debug, Clone, PartialEq)]
pub struct Measures {
    /// How long it is, in seconds.
    pub seconds: f64,
    /// How long its speech is, from first sound to last, in seconds.
    pub speech_seconds: f64,
    /// Its level without pauses, in dBFS.
    pub level_dbfs: f64,
    /// The level of what is left where the speaker is silent, hum apart, in dBFS; none where the
    /// speaker never is.
    pub noise_dbfs: Option<f64>,
    /// Hum of the mains, where there is any.
    pub hum: Option<Hum>,
    /// The level of what lies below 40 Hz, in dBFS: rumble of wind, hands and traffic.
    pub rumble_dbfs: f64,
    /// The mean of all samples.
    pub dc: f64,
    /// The share of samples held at their extreme.
    pub clipped: f64,
    /// The level of the first 5 ms, in dBFS.
    pub start_dbfs: f64,
    /// The level of the last 5 ms, in dBFS.
    pub end_dbfs: f64,
    /// Reverberation time (60 dB) in seconds as the fastest decay tells it; none where nothing decays
    /// far enough to tell. Words that fade by themselves make it longer, no room makes it shorter.
    pub room_seconds: Option<f64>,
}

impl Measures {
    /// Speech to noise in dB, where noise could be measured.
    pub fn speech_to_noise_db(&self) -> Option<f64> {
        let noise = self.noise_dbfs?;
        let speech = to_power(self.level_dbfs) - to_power(noise);
        Some((10.0 * speech.max(1e-12).log10() - noise).max(0.0))
    }

    /// Speech to hum in dB, where there is hum.
    pub fn speech_to_hum_db(&self) -> Option<f64> {
        self.hum.as_ref().map(|hum| self.level_dbfs - hum.dbfs)
    }
}

/// Windows in which levels are taken, in seconds: a period of a low voice.
const WINDOW: f64 = 0.01;
/// An edge, in seconds.
const EDGE: f64 = 0.005;
/// Noise is taken where it is quietest for so many windows.
const QUIET_WINDOWS: usize = 5;
/// Noise keeps its level: within the quiet, windows differ by no more than this factor of power.
const STEADY: f64 = 5.0;
/// Quiet lies at least this factor of power below speech.
const BELOW_SPEECH: f64 = 2.0;
/// The power of silence that no microphone makes.
const NOTHING: f64 = 1e-12;
/// Windows this far below the mean of all are pauses.
const GATE: f64 = 0.1;
/// Windows above noise by this factor of power are speech.
const OVER_NOISE: f64 = 2.0;

fn to_power(db: f64) -> f64 {
    10f64.powf(db / 10.0)
}

/// In dBFS; 0 becomes the noise of 24 bits.
fn to_db(power: f64) -> f64 {
    10.0 * power.max(1e-15).log10()
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len().max(1) as f64
}

/// Measures a clip: mono samples at a rate in Hz.
pub fn measure(rate: u32, samples: &[f32]) -> Measures {
    let hertz = f64::from(rate);
    let window = ((hertz * WINDOW) as usize).max(1);
    let dc = offset(samples, window);
    let clipped = clipped(rate, samples);
    let mut clean: Vec<f32> = samples.iter().map(|sample| sample - dc as f32).collect();
    let hum = Hum::find(rate, &clean);
    if let Some(hum) = &hum {
        hum.take_out(rate, &mut clean);
    }
    let powers: Vec<f64> = clean.chunks_exact(window).map(simd::power).collect();
    let all = active_power(&powers, 0.0);
    let noise = noise(&powers, all);
    let level = active_power(&powers, noise.unwrap_or(0.0) * OVER_NOISE);
    let floor = noise.unwrap_or(0.0);
    let sounds = |power: &f64| *power > (level * 1e-3).max(floor * 4.0);
    let speech = match (powers.iter().position(sounds), powers.iter().rposition(sounds)) {
        (Some(first), Some(last)) => last + 1 - first,
        _ => 0,
    };
    let edge = ((hertz * EDGE) as usize).clamp(1, clean.len().max(1));
    let start = clean.get(..edge.min(clean.len())).unwrap_or_default();
    let end = clean.get(clean.len().saturating_sub(edge)..).unwrap_or_default();
    Measures {
        seconds: samples.len() as f64 / hertz,
        speech_seconds: speech as f64 * WINDOW,
        level_dbfs: to_db(level),
        noise_dbfs: noise.map(to_db),
        hum,
        rumble_dbfs: to_db(rumble(rate, &clean)),
        dc,
        clipped,
        start_dbfs: to_db(simd::power(start)),
        end_dbfs: to_db(simd::power(end)),
        room_seconds: room(&powers, level, floor),
    }
}

/// The mean of all windows, each weighing the more the quieter it is: a voice pushes more to one side than to the other.
fn offset(samples: &[f32], window: usize) -> f64 {
    let (mut sum, mut weights) = (0.0, 0.0);
    for chunk in samples.chunks(window) {
        let mean = simd::mean(chunk);
        let weight = 1.0 / ((simd::power(chunk) - mean * mean).max(0.0) + 1e-9);
        sum += weight * mean;
        weights += weight;
    }
    if weights > 0.0 { sum / weights } else { 0.0 }
}

/// Mean power of the windows that are no pauses, nor below `least`.
fn active_power(powers: &[f64], least: f64) -> f64 {
    let gate = least.max(mean(powers) * GATE);
    mean(&powers.iter().copied().filter(|power| *power > gate).collect::<Vec<_>>())
}

/// The power of the quietest stretch that is long and steady enough to be no speech.
fn noise(powers: &[f64], speech: f64) -> Option<f64> {
    let steady = |stretch: &&[f64]| {
        let most = stretch.iter().copied().fold(0.0, f64::max);
        let least = stretch.iter().copied().fold(f64::INFINITY, f64::min);
        most <= STEADY * least.max(1e-12)
    };
    // Where a program has put silence in, no edge is left to tell noise from a sound that is held.
    let put_in = powers.iter().any(|power| *power <= NOTHING);
    let windows = if put_in { 4 * QUIET_WINDOWS } else { QUIET_WINDOWS };
    let quiet = powers.windows(windows).filter(steady).map(mean).min_by(f64::total_cmp)?;
    // Noise is everywhere: where it is quieter still, this was speech. Silence put in by a program tells nothing.
    let quietest = powers.iter().copied().filter(|power| *power > NOTHING).min_by(f64::total_cmp)?;
    (quiet * BELOW_SPEECH < speech && quiet < STEADY * quietest).then_some(quiet)
}

/// Power below 40 Hz: means over 12 ms thrice, which leave nothing of a voice.
fn rumble(rate: u32, samples: &[f32]) -> f64 {
    let width = (f64::from(rate) * 0.002) as usize;
    let mut slow: Vec<f64> = samples.chunks_exact(width.max(1)).map(simd::mean).collect();
    for _ in 0..3 {
        slow = slow.windows(6).map(mean).collect();
    }
    slow.iter().map(|value| value * value).sum::<f64>() / slow.len().max(1) as f64
}

/// A peak is held for this long where it is cut off, in seconds, and for three samples at least.
const HELD: f64 = 6e-5;
/// Samples are held where they differ by less than this from one to the next: three steps of 16 bits.
const HELD_STEP: f32 = 1e-4;
/// Extremes lie above this share of the highest.
const EXTREME: f32 = 0.97;
/// Samples that are passed over together where none is extreme.
const LOOKED_AT: usize = 256;

/// The share of samples in runs held at the extreme of their sign, wherever a gain has put it since.
fn clipped(rate: u32, samples: &[f32]) -> f64 {
    let (lowest, highest) = simd::extremes(samples);
    let (low, high) = (EXTREME * lowest.min(-0.02), EXTREME * highest.max(0.02));
    let shortest = ((f64::from(rate) * HELD) as usize).max(3);
    let (mut held, mut run, mut last) = (0, 0, 0f32);
    let mut see = |sample: f32| {
        let goes_on = run > 0 && (sample - last).abs() < HELD_STEP;
        if !goes_on {
            held += if run >= shortest { run } else { 0 };
            run = 0;
        }
        if sample >= high || sample <= low {
            run += 1;
        }
        last = sample;
        run
    };
    for stretch in samples.chunks(LOOKED_AT) {
        let (lowest, highest) = simd::extremes(stretch);
        let extreme = highest >= high || lowest <= low;
        for sample in stretch {
            // Where none is extreme, nothing begins once a run that came before has ended.
            if see(*sample) == 0 && !extreme {
                break;
            }
        }
    }
    see(0.0);
    held as f64 / samples.len().max(1) as f64
}

/// A decay is followed from this far below where it begins, in dB: ISO 3382 (memory) begins at 5 dB.
const DECAY_FROM_DB: f64 = 5.0;
/// To so far below, in dB, or to the noise: what is left of the room is quieter than the voice.
const DECAY_TO_DB: f64 = 35.0;
/// A shorter decay tells nothing, in dB.
const LEAST_DECAY_DB: f64 = 15.0;
/// Decays end this far above the noise, in dB.
const OVER_NOISE_DB: f64 = 6.0;
/// What rises by this much from one window to the next has not decayed, in dB.
const RISE_DB: f64 = 2.0;
/// Windows over which a decay is smoothed: the echoes of a room come in bunches.
const SMOOTHED: usize = 5;

/// Reverberation time by the fastest decay after speech: no room lets a sound die faster than its own.
fn room(powers: &[f64], speech: f64, noise: f64) -> Option<f64> {
    let levels: Vec<f64> = powers.windows(SMOOTHED).map(|powers| to_db(mean(powers))).collect();
    let (loud, quiet) = (to_db(speech) - 10.0, to_db(noise) + OVER_NOISE_DB);
    let times = levels.windows(2).enumerate().filter_map(|(at, pair)| match pair {
        [now, next] if *now > loud && next < now => decay(levels.get(at..)?, quiet),
        _ => None,
    });
    times.min_by(f64::total_cmp)
}

/// Seconds for 60 dB of a decay from the first level on.
fn decay(levels: &[f64], quiet: f64) -> Option<f64> {
    let first = *levels.first()?;
    let falls = |pair: &&[f64]| matches!(pair, [now, next] if *next <= now + RISE_DB);
    let falling = levels.get(..levels.windows(2).take_while(falls).count() + 1)?;
    let last = falling.iter().copied().fold(f64::INFINITY, f64::min);
    // A clip may end before its sound does; where the voice sets in again, nothing is told.
    let to = (first - DECAY_TO_DB).max(quiet);
    let to = if falling.len() == levels.len() { to.max(last) } else { to };
    let from = first - DECAY_FROM_DB;
    let below = |level: f64| {
        let at = falling.iter().position(|now| *now <= level)?;
        let (before, after) = (falling.get(at.checked_sub(1)?)?, falling.get(at)?);
        Some((at - 1) as f64 + (before - level) / (before - after).max(1e-9))
    };
    let lasts = (below(to)? - below(from)?) * WINDOW;
    (from - to >= LEAST_DECAY_DB).then_some(lasts * 60.0 / (from - to))
}

/// What is usual in a voice's bank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Norms {
    /// Median level in dBFS; none in a bank too small for one.
    pub level_dbfs: Option<f64>,
    /// Seconds that a clip of no letters would last, and seconds a letter: a line through the medians
    /// of short and of long clips. None in a bank too small.
    pub pace: Option<(f64, f64)>,
}

impl Norms {
    /// Of clips with their letters.
    pub fn of<'m>(clips: impl Iterator<Item = (&'m Measures, usize)>) -> Norms {
        let clips: Vec<(&Measures, usize)> = clips.collect();
        let levels = clips.iter().map(|(measures, _)| measures.level_dbfs).collect();
        let mut long: Vec<(usize, f64)> = clips
            .iter()
            .filter(|(_, letters)| *letters >= limits::LEAST_LETTERS)
            .map(|(measures, letters)| (*letters, measures.speech_seconds))
            .collect();
        long.sort_by(|one, other| one.0.cmp(&other.0).then(one.1.total_cmp(&other.1)));
        let enough = clips.len() >= limits::LEAST_CLIPS;
        Norms { level_dbfs: median(levels).filter(|_| enough), pace: line(&long) }
    }

    /// How many times faster than usual a clip is spoken; none where that cannot be told.
    pub fn pace_of(&self, measures: &Measures, letters: usize) -> Option<f64> {
        let (start, letter) = self.pace?;
        let usual = start + letter * letters as f64;
        let tells = letters >= limits::LEAST_LETTERS && measures.speech_seconds > 0.0 && usual > 0.0;
        tells.then(|| usual / measures.speech_seconds)
    }
}

/// The line through the medians of the lower and the upper third (a resistant line); through the origin where letters
/// hardly differ.
fn line(sorted: &[(usize, f64)]) -> Option<(f64, f64)> {
    if sorted.len() < limits::LEAST_CLIPS {
        return None;
    }
    let third = sorted.len().div_ceil(3);
    let medians = |part: &[(usize, f64)]| {
        let letters = median(part.iter().map(|(letters, _)| *letters as f64).collect())?;
        Some((letters, median(part.iter().map(|(_, seconds)| *seconds).collect())?))
    };
    let (low, low_seconds) = medians(sorted.get(..third)?)?;
    let (high, high_seconds) = medians(sorted.get(sorted.len() - third..)?)?;
    let slope = (high_seconds - low_seconds) / (high - low);
    if high < 1.5 * low || slope <= 0.0 {
        let (letters, seconds) = medians(sorted)?;
        return Some((0.0, seconds / letters));
    }
    Some((low_seconds - slope * low, slope))
}

/// The middle value; the mean of both where there are two.
fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    let upper = values.get(values.len() / 2)?;
    let lower = values.get((values.len() - 1) / 2)?;
    Some((lower + upper) / 2.0)
}

/// How many letters and digits words have.
pub fn letters(words: &str) -> usize {
    words.chars().filter(|c| c.is_alphanumeric()).count()
}

catalogue! {
    /// What can be wrong with a clip.
    pub enum Fault: FaultEntry {
        /// The label that names it to the speaker.
        label: Label,
    }
    /// Peaks are cut off.
    Clipped = "clipped" { label: Label::ClipClipped };
    /// The beginning is cut off.
    CutStart = "cut-start" { label: Label::ClipCutStart };
    /// The end is cut off.
    CutEnd = "cut-end" { label: Label::ClipCutEnd };
    /// There is noise.
    Noise = "noise" { label: Label::ClipNoise };
    /// There is hum of the mains.
    Hum = "hum" { label: Label::ClipHum };
    /// There is too much of the room.
    Room = "room" { label: Label::ClipRoom };
    /// It is quieter than the others.
    Quiet = "quiet" { label: Label::ClipQuiet };
    /// It is louder than the others.
    Loud = "loud" { label: Label::ClipLoud };
    /// It is spoken faster than the others.
    Fast = "fast" { label: Label::ClipFast };
    /// It is spoken more slowly than the others.
    Slow = "slow" { label: Label::ClipSlow };
    /// Its middle lies off zero.
    Offset = "offset" { label: Label::ClipOffset };
}

/// What is to be done with a clip, the worst first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Verdict {
    /// It is to be recorded again.
    Again,
    /// It may be used; the next recording can be better.
    Usable,
    /// Nothing is wrong with it.
    Good,
}

/// A fault found, and what it means for the clip.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// What.
    pub fault: Fault,
    /// What is to be done.
    pub verdict: Verdict,
    /// How much: dB, seconds, times or shares, as the fault has it.
    pub amount: f64,
}

/// The faults of a clip with so many letters, the worst first.
pub fn judge(measures: &Measures, letters: usize, norms: &Norms) -> Vec<Found> {
    use limits::*;
    let mut found = Vec::new();
    let mut add = |fault, amount: f64, noted: bool, again: bool| {
        if noted {
            let verdict = if again { Verdict::Again } else { Verdict::Usable };
            found.push(Found { fault, verdict, amount });
        }
    };
    add(Fault::Clipped, measures.clipped, measures.clipped > CLIPPED, measures.clipped > CLIPPED_AGAIN);
    let noise = measures.noise_dbfs.unwrap_or(f64::NEG_INFINITY);
    for (fault, edge) in [(Fault::CutStart, measures.start_dbfs), (Fault::CutEnd, measures.end_dbfs)] {
        let below = measures.level_dbfs - edge;
        let cut = below < EDGE_DB && edge > noise + EDGE_OVER_NOISE_DB;
        add(fault, below, cut, cut);
    }
    if let Some(db) = measures.speech_to_noise_db() {
        add(Fault::Noise, db, db < NOISE_DB, db < NOISE_AGAIN_DB);
    }
    if let Some(db) = measures.speech_to_hum_db() {
        add(Fault::Hum, db, db < HUM_DB, db < HUM_AGAIN_DB);
    }
    if let Some(seconds) = measures.room_seconds {
        add(Fault::Room, seconds, seconds > ROOM_S, seconds > ROOM_AGAIN_S);
    }
    if let Some(usual) = norms.level_dbfs {
        let off = measures.level_dbfs - usual;
        let fault = if off < 0.0 { Fault::Quiet } else { Fault::Loud };
        add(fault, off, off.abs() > LEVEL_DB, off.abs() > LEVEL_AGAIN_DB);
    }
    if let Some(times) = norms.pace_of(measures, letters) {
        let (fault, off) = if times > 1.0 { (Fault::Fast, times) } else { (Fault::Slow, 1.0 / times) };
        add(fault, off, off > PACE, off > PACE_AGAIN);
    }
    add(Fault::Offset, measures.dc, measures.dc.abs() > DC, false);
    found.sort_by_key(|found| (found.verdict, found.fault));
    found
}
