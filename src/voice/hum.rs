//! Hum of the mains: steady tones at 50 or 60 Hz and their multiples.
//!
//! A clip lasts a second or two, too short for a filter narrow enough to spare
//! the voice. So the tones are learnt by weighted least squares, where the
//! speaker is silent above all, and taken away as the sines they are.

use std::f64::consts::{PI, TAU};

use fearless_simd::{Level, Simd, dispatch};

use super::simd;

/// The mains of the world.
const MAINS_HZ: [f64; 2] = [50.0, 60.0];
/// How far a network strays from its frequency, in steps of 0.1 Hz. EN 50160 (memory): 1 % for 99.5 % of a year.
const STRAY_STEPS: i32 = 5;
/// Multiples of the mains that are looked for.
const MULTIPLES: u32 = 6;
/// Where tones are learnt, samples are about this many a second.
const SLOW_RATE: u32 = 1_600;
/// What lies this far beside a tone, in Hz, tells how much is there without one.
const BESIDE_HZ: [f64; 8] = [-19.0, -15.0, -11.0, -7.0, 7.0, 11.0, 15.0, 19.0];
/// A tone stands out by this factor of power; noise alone does so once in 100,000 times.
const STANDS_OUT: f64 = 12.0;
/// The quiet that it takes to tell tones 7 Hz apart, in seconds.
const LEAST_QUIET: f64 = 0.2;
/// Stretches over which loudness is taken to weigh them, in seconds.
const STRETCH: f64 = 0.02;

/// Hum found in a clip.
#[derive(Debug, Clone, PartialEq)]
pub struct Hum {
    /// The mains' frequency in Hz, near 50 or 60.
    pub mains_hz: f64,
    /// RMS of all its tones, in dBFS.
    pub dbfs: f64,
    tones: Vec<Tone>,
}

/// A tone `cos · cos(2πft) + sin · sin(2πft)`, with t in seconds from the first sample.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Tone {
    hz: f64,
    cos: f64,
    sin: f64,
}

impl Tone {
    fn power(&self) -> f64 {
        0.5 * (self.cos * self.cos + self.sin * self.sin)
    }
}

impl Hum {
    /// Looks for hum; none is found where there is too little quiet to tell.
    pub(super) fn find(rate: u32, samples: &[f32]) -> Option<Hum> {
        let slow = Slow::of(rate, samples);
        if slow.quiet_seconds() < LEAST_QUIET {
            return None;
        }
        MAINS_HZ
            .into_iter()
            .filter_map(|mains| slow.hum(mains))
            .max_by(|one, other| one.dbfs.total_cmp(&other.dbfs))
    }

    /// Takes the hum away.
    pub(super) fn take_out(&self, rate: u32, samples: &mut [f32]) {
        for tone in &self.tones {
            let (step_sin, step_cos) = (TAU * tone.hz / f64::from(rate)).sin_cos();
            let (mut sin, mut cos) = (0.0, 1.0);
            for sample in samples.iter_mut() {
                *sample -= (tone.cos * cos + tone.sin * sin) as f32;
                (sin, cos) = (sin * step_cos + cos * step_sin, cos * step_cos - sin * step_sin);
            }
        }
    }
}

/// A sound at few samples a second, each with its weight.
struct Slow {
    /// Value and weight.
    samples: Vec<(f64, f64)>,
    rate: f64,
    /// Samples that each value is the mean of, and their rate.
    of: (usize, f64),
    weight: f64,
}

impl Slow {
    fn of(rate: u32, samples: &[f32]) -> Slow {
        let width = (rate / SLOW_RATE).max(1) as usize;
        let means: Vec<f64> = samples.chunks_exact(width).map(simd::mean).collect();
        let slow = f64::from(rate) / width as f64;
        let stretch = ((slow * STRETCH) as usize).max(1);
        let mut weighted = Vec::with_capacity(means.len());
        for chunk in means.chunks(stretch) {
            let power = chunk.iter().map(|value| value * value).sum::<f64>() / chunk.len() as f64;
            // 16 bits have noise of their own.
            let weight = 1.0 / (power + 1e-10);
            weighted.extend(chunk.iter().map(|value| (*value, weight)));
        }
        let weight = weighted.iter().map(|(_, weight)| weight).sum();
        Slow { samples: weighted, rate: slow, of: (width, f64::from(rate)), weight }
    }

    /// How long the stretches last that count.
    fn quiet_seconds(&self) -> f64 {
        let squares: f64 = self.samples.iter().map(|(_, weight)| weight * weight).sum();
        if squares > 0.0 { self.weight * self.weight / squares / self.rate } else { 0.0 }
    }

    /// The weighted part of the sound that each of some tones explains, up to a factor common to all.
    fn parts<const TONES: usize>(&self, hertz: [f64; TONES]) -> [f64; TONES] {
        dispatch!(Level::new(), simd => self.parts_with(simd, hertz))
    }

    #[inline(always)]
    #[allow(clippy::indexing_slicing)] // Arrays of one length, in plain loops, which surely become vector code.
    fn parts_with<S: Simd, const TONES: usize>(&self, _: S, hertz: [f64; TONES]) -> [f64; TONES] {
        let steps = hertz.map(|hz| (TAU * hz / self.rate).sin_cos());
        let (step_sin, step_cos) = (steps.map(|(sin, _)| sin), steps.map(|(_, cos)| cos));
        let (mut sin, mut cos) = ([0.0; TONES], [1.0; TONES]);
        let (mut by_sin, mut by_cos) = ([0.0; TONES], [0.0; TONES]);
        for (value, weight) in &self.samples {
            let weighted = value * weight;
            for tone in 0..TONES {
                by_cos[tone] += weighted * cos[tone];
                by_sin[tone] += weighted * sin[tone];
                let next = sin[tone] * step_cos[tone] + cos[tone] * step_sin[tone];
                cos[tone] = cos[tone] * step_cos[tone] - sin[tone] * step_sin[tone];
                sin[tone] = next;
            }
        }
        std::array::from_fn(|tone| by_cos[tone] * by_cos[tone] + by_sin[tone] * by_sin[tone])
    }

    fn hum(&self, mains: f64) -> Option<Hum> {
        let stands_out = |multiple: &u32| {
            let hz = mains * f64::from(*multiple);
            let strays = f64::from(STRAY_STEPS) * 0.1 * f64::from(*multiple);
            // Four at a time, as vectors have them: the tone itself is there twice.
            let [low, middle, again, high] = [-strays, 0.0, 0.0, strays].map(|off| hz + off);
            let [a, b, c, d, e, f, g, h] = BESIDE_HZ.map(|off| hz + off);
            let [low, middle, _, high, beside @ ..] =
                self.parts([low, middle, again, high, a, b, c, d, e, f, g, h]);
            let beside = beside.iter().sum::<f64>() / beside.len() as f64;
            low.max(middle).max(high) > STANDS_OUT * beside
        };
        let multiples: Vec<u32> = (1..=MULTIPLES).filter(stands_out).collect();
        if multiples.is_empty() {
            return None;
        }
        let part = |hz: f64| self.parts([hz]).iter().sum::<f64>();
        let total = |mains: f64| multiples.iter().map(|n| part(mains * f64::from(*n))).sum::<f64>();
        let steps = (-STRAY_STEPS..=STRAY_STEPS).map(|step| mains + 0.1 * f64::from(step));
        let (_, mains_hz) =
            steps.map(|mains| (total(mains), mains)).max_by(|one, other| one.0.total_cmp(&other.0))?;
        let tones = self.fit(&multiples.iter().map(|n| mains_hz * f64::from(*n)).collect::<Vec<_>>())?;
        let power: f64 = tones.iter().map(Tone::power).sum();
        Some(Hum { mains_hz, dbfs: 10.0 * power.log10(), tones })
    }

    /// The tones that together explain most of the quiet.
    fn fit(&self, hertz: &[f64]) -> Option<Vec<Tone>> {
        let size = 2 * hertz.len();
        let mut rows = vec![vec![0.0; size + 1]; size];
        let mut waves = vec![0.0; size];
        for (index, (value, weight)) in self.samples.iter().enumerate() {
            let time = self.time(index);
            for (wave, hz) in waves.chunks_exact_mut(2).zip(hertz) {
                let (sin, cos) = (TAU * hz * time).sin_cos();
                wave.iter_mut().zip([cos, sin]).for_each(|(wave, now)| *wave = now);
            }
            for (row, left) in rows.iter_mut().zip(&waves) {
                for (cell, right) in row.iter_mut().zip(waves.iter().chain([value])) {
                    *cell += weight * left * right;
                }
            }
        }
        let solved = solve(rows)?;
        let tones = hertz.iter().zip(solved.chunks_exact(2)).filter_map(|(hz, pair)| match pair {
            [cos, sin] => {
                let gain = self.gain(*hz);
                Some(Tone { hz: *hz, cos: cos / gain, sin: sin / gain })
            }
            _ => None,
        });
        Some(tones.collect())
    }

    /// The middle of the samples that a value is the mean of, in seconds.
    fn time(&self, index: usize) -> f64 {
        let (width, rate) = self.of;
        ((index * width) as f64 + (width - 1) as f64 / 2.0) / rate
    }

    /// What taking means leaves of a tone.
    fn gain(&self, hz: f64) -> f64 {
        let (width, rate) = self.of;
        let half = PI * hz / rate;
        (half * width as f64).sin() / (width as f64 * half.sin())
    }
}

/// Solves linear equations, the right side last in each row, by Gauss; none where they have no one solution.
fn solve(mut rows: Vec<Vec<f64>>) -> Option<Vec<f64>> {
    let size = rows.len();
    for column in 0..size {
        let size_of = |row: &Vec<f64>| row.get(column).map_or(0.0, |cell| cell.abs());
        let pivot = (column..size).max_by(|one, other| {
            let (one, other) = (rows.get(*one).map(size_of), rows.get(*other).map(size_of));
            one.unwrap_or(0.0).total_cmp(&other.unwrap_or(0.0))
        })?;
        rows.swap(column, pivot);
        let mut leading = rows.get(column)?.clone();
        let factor = *leading.get(column)?;
        if factor.abs() < 1e-12 {
            return None;
        }
        leading.iter_mut().for_each(|cell| *cell /= factor);
        for (index, row) in rows.iter_mut().enumerate() {
            let factor = if index == column { 0.0 } else { *row.get(column)? };
            row.iter_mut().zip(&leading).for_each(|(cell, leads)| *cell -= factor * leads);
        }
        *rows.get_mut(column)? = leading;
    }
    rows.iter().map(|row| row.last().copied()).collect()
}
