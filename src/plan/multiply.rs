//! From the cuttings a field needs back to roots and plants, and forward again.

use chrono::{Days, NaiveDate};

use super::units::{whole_down, whole_up};
use super::{Assumptions, DateSpan, SquareMetres};

/// What the number of stored roots is sized for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sizing {
    /// The cuttings of the whole bed season plant the field: the round figures
    /// of common practice. The last part of the field waits for the later cuts.
    #[default]
    BedSeason,
    /// The first cut alone plants the whole field.
    FirstPlanting,
}

/// The mean length of a month.
const DAYS_A_MONTH: f64 = 365.25 / 12.0;

/// Days in so many months.
pub(super) fn days_in(months: f64) -> f64 {
    months * DAYS_A_MONTH
}

/// Months between two days.
pub fn months_between(from: NaiveDate, to: NaiveDate) -> f64 {
    (to - from).num_days().max(0) as f64 / DAYS_A_MONTH
}

/// The share of roots that is left after `months` in sand when `share` is left after a season.
pub fn surviving(share: f64, months: f64, assumptions: &Assumptions) -> f64 {
    share.powf(months / assumptions.survival_months)
}

/// Cuttings that a root gives which survives in store and sprouts.
pub fn per_sprouted(sizing: Sizing, assumptions: &Assumptions) -> f64 {
    match sizing {
        // The season's figure counts roots stored, usual losses included.
        Sizing::BedSeason => assumptions.cuttings_per_root_season / assumptions.survival_share,
        Sizing::FirstPlanting => assumptions.cuttings_per_root_first_cut,
    }
}

/// Cuttings that a root gives which is put into sand for `months`, losses included.
pub fn per_stored(sizing: Sizing, months: f64, assumptions: &Assumptions) -> f64 {
    let left = surviving(assumptions.survival_share, months, assumptions);
    per_sprouted(sizing, assumptions) * left * assumptions.sprout_share
}

/// Roots to store for `months` for `cuttings`.
pub fn roots_for(cuttings: u32, sizing: Sizing, months: f64, assumptions: &Assumptions) -> u32 {
    whole_up(f64::from(cuttings) / per_stored(sizing, months, assumptions))
}

/// Cuttings that `roots` stored for `months` give.
pub fn cuttings_of(roots: u32, sizing: Sizing, months: f64, assumptions: &Assumptions) -> u32 {
    whole_down(f64::from(roots) * per_stored(sizing, months, assumptions))
}

/// The fewest roots to store for `months` so that `cuttings` come with a chance of at
/// least `confidence` (0 to 1): roots that survive and sprout are beta-binomial. The share
/// differs from season to season as a beta distribution; in one season each
/// root is on its own with that share. The mean is what is left after so many months
/// of what sprouts; the standard deviation is `survival_spread`, carried over to
/// so many months by the slope of that (the delta method). `None` where the
/// spread is wider than any share from 0 to 1 can have.
pub fn roots_for_confidence(
    cuttings: u32,
    confidence: f64,
    sizing: Sizing,
    months: f64,
    assumptions: &Assumptions,
) -> Option<u32> {
    let wanted = whole_up(f64::from(cuttings) / per_sprouted(sizing, assumptions));
    let seasons = months / assumptions.survival_months;
    let left = surviving(assumptions.survival_share, months, assumptions);
    let mean = left * assumptions.sprout_share;
    let slope = seasons * left / assumptions.survival_share;
    let deviation = assumptions.survival_spread * slope * assumptions.sprout_share;
    let (alpha, beta) = beta_of(mean, deviation)?;
    // The first chance alone takes a step for each root.
    if wanted > MOST_ROOTS {
        return None;
    }
    let enough = |roots: u32| at_least(roots, wanted, alpha, beta) >= confidence;
    let mut high = wanted.max(1);
    while !enough(high) {
        high = high.checked_mul(2).filter(|roots| *roots <= MOST_ROOTS)?;
    }
    let mut low = wanted;
    while low < high {
        let middle = low + (high - low) / 2;
        if enough(middle) {
            high = middle;
        } else {
            low = middle + 1;
        }
    }
    Some(high)
}

/// No group stores more; bounds the work.
const MOST_ROOTS: u32 = 4_000_000;

/// The parameters of a beta distribution by its mean and standard deviation;
/// `None` where there is no such distribution.
pub fn beta_of(mean: f64, deviation: f64) -> Option<(f64, f64)> {
    // A share that is certain is a distribution as narrow as numbers allow.
    let (mean, deviation) = (mean.min(1.0 - 1e-6), deviation.max(1e-6));
    let size = mean * (1.0 - mean) / (deviation * deviation) - 1.0;
    (size > 0.0 && size.is_finite()).then_some((mean * size, (1.0 - mean) * size))
}

/// The chance that at least `k` of `n` survive, for a beta-binomial with `alpha` and `beta`.
pub fn at_least(n: u32, k: u32, alpha: f64, beta: f64) -> f64 {
    if k == 0 {
        return 1.0;
    }
    if k > n {
        return 0.0;
    }
    // From all survive downwards, each chance from the one before, in logarithms
    // as the first ones may be too small for a number.
    let count = f64::from(n);
    let mut chance: f64 = (0..n).map(|i| ((alpha + f64::from(i)) / (alpha + beta + f64::from(i))).ln()).sum();
    let mut sum = chance.exp();
    for j in (k..n).rev() {
        let j = f64::from(j);
        chance += ((j + 1.0) * (beta + count - j - 1.0) / ((count - j) * (alpha + j))).ln();
        sum += chance.exp();
    }
    sum.min(1.0)
}

/// Plants that give `roots` where none is found sick.
pub fn plants_without_spare(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_up(f64::from(roots) / assumptions.roots_per_plant)
}

/// Plants to mark for `roots`: some are found sick later and give none.
pub fn plants_for(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_up(f64::from(roots) / (assumptions.roots_per_plant * (1.0 - assumptions.sick_share)))
}

/// Roots fit to store from `plants` marked.
pub fn roots_from(plants: u32, assumptions: &Assumptions) -> u32 {
    whole_down(f64::from(plants) * assumptions.roots_per_plant * (1.0 - assumptions.sick_share))
}

/// One cut of vines from the bed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cut {
    /// When.
    pub when: DateSpan,
    /// Cuttings it gives.
    pub cuttings: u32,
    /// Field that they plant.
    pub area: SquareMetres,
}

/// The cuts of a bed: the first gives `first` cuttings, those after it share
/// what is left of `season`. `density` is cuttings on a square metre.
pub fn cuts(
    when: DateSpan,
    (first, season): (u32, u32),
    density: f64,
    assumptions: &Assumptions,
) -> Vec<Cut> {
    let more = whole_down(assumptions.cuts).saturating_sub(1);
    let left = season.saturating_sub(first);
    let after = |day: NaiveDate, days: f64, times: u32| {
        let days = Days::new((days.max(0.0) * f64::from(times)).round() as u64);
        day.checked_add_days(days).unwrap_or(day)
    };
    let cut = |when, cuttings: u32| {
        let area = (f64::from(cuttings) / density * 10.0).floor() / 10.0;
        Cut { when, cuttings, area: SquareMetres(area) }
    };
    let later = (1..=more).map(|times| {
        // What the number of cuts does not divide goes to the earlier ones.
        let cuttings = left / more + u32::from(times <= left % more);
        let from = after(when.from, assumptions.next_cut_days_first, times);
        cut(DateSpan::new(from, after(when.to, assumptions.next_cut_days_last, times)), cuttings)
    });
    [cut(when, first)].into_iter().chain(later).filter(|cut| cut.cuttings > 0).collect()
}
