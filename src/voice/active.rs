//! Active speech level, measured in the style of ITU-T P.56 (method B).
//!
//! Written from the method's description: the level of speech while somebody
//! speaks, pauses left out. An envelope (two exponential averages in a row)
//! is held against thresholds a factor of two apart; speech is active while
//! the envelope is above, and a hangover longer. The threshold that lies a
//! fixed margin below the level found with it settles what counts as active.

/// Time constant of each of the two averages, in seconds.
const TIME_CONSTANT_S: f64 = 0.03;
/// How long speech counts as active after the envelope has fallen, in seconds.
const HANGOVER_S: f64 = 0.2;
/// How far the threshold lies below the active level, in dB.
const MARGIN_DB: f64 = 15.9;
/// Thresholds from half of full scale down, each half of the one before.
const THRESHOLDS: i32 = 15;

/// The level of speech while it is active.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ActiveLevel {
    /// The level in dBov: 0 is the power of a square wave at full scale.
    pub dbov: f64,
    /// The share of the time in which speech is active, from 0 to 1.
    pub activity: f64,
}

/// Measures mono samples at `rate` Hz; `None` where no speech stands out.
pub fn active_level(samples: &[f32], rate: u32) -> Option<ActiveLevel> {
    let keep = (-1.0 / (f64::from(rate) * TIME_CONSTANT_S)).exp();
    let hangover = (f64::from(rate) * HANGOVER_S).round() as u64;
    let mut gates: Vec<Gate> = (1..=THRESHOLDS).map(|step| Gate::new(2f64.powi(-step), hangover)).collect();
    let (mut first, mut second, mut energy) = (0f64, 0f64, 0f64);
    for sample in samples {
        let sample = f64::from(*sample);
        energy += sample * sample;
        first = keep * first + (1.0 - keep) * sample.abs();
        second = keep * second + (1.0 - keep) * first;
        gates.iter_mut().for_each(|gate| gate.hear(second, hangover));
    }
    let mut above: Option<(f64, f64)> = None;
    // From the highest threshold down, the level falls more slowly than the threshold.
    for gate in gates.iter().filter(|gate| gate.active > 0) {
        let level = 10.0 * (energy / gate.active as f64).log10();
        let over = level - 20.0 * gate.threshold.log10() - MARGIN_DB;
        if over >= 0.0 {
            // Where the highest gate that opens has the margin already, there is nothing to interpolate.
            let (before, before_over) = above.unwrap_or((level, over));
            let share = if over > before_over { -before_over / (over - before_over) } else { 0.0 };
            let dbov = before + (level - before) * share.clamp(0.0, 1.0);
            let activity = energy / samples.len() as f64 / 10f64.powf(dbov / 10.0);
            return dbov.is_finite().then_some(ActiveLevel { dbov, activity });
        }
        above = Some((level, over));
    }
    None
}

/// What lies above one threshold.
struct Gate {
    threshold: f64,
    /// Samples since the envelope fell below; the hangover at most.
    below: u64,
    active: u64,
}

impl Gate {
    fn new(threshold: f64, hangover: u64) -> Gate {
        Gate { threshold, below: hangover, active: 0 }
    }

    fn hear(&mut self, envelope: f64, hangover: u64) {
        if envelope >= self.threshold {
            self.below = 0;
            self.active += 1;
        } else if self.below < hangover {
            self.below += 1;
            self.active += 1;
        }
    }
}
