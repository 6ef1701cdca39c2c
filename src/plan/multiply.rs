//! From the cuttings a field needs back to roots and plants, and forward again.

use super::Assumptions;
use super::units::{whole_down, whole_up};

/// What the number of stored roots is sized for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Sizing {
    /// The cuttings of the whole bed season plant the field: the round figures
    /// of common practice. The last part of the field waits for the second cut.
    #[default]
    BedSeason,
    /// The first cut alone plants the whole field.
    FirstPlanting,
}

/// Roots to store for `cuttings`.
pub fn roots_for(cuttings: u32, sizing: Sizing, assumptions: &Assumptions) -> u32 {
    let per_root = match sizing {
        Sizing::BedSeason => assumptions.cuttings_per_root_season,
        Sizing::FirstPlanting => assumptions.cuttings_per_root_first_cut * assumptions.survival_share,
    };
    whole_up(f64::from(cuttings) / per_root)
}

/// Cuttings that a root gives which survives in store.
pub fn per_survivor(sizing: Sizing, assumptions: &Assumptions) -> f64 {
    match sizing {
        // The season's figure counts roots stored, usual losses included.
        Sizing::BedSeason => assumptions.cuttings_per_root_season / assumptions.survival_share,
        Sizing::FirstPlanting => assumptions.cuttings_per_root_first_cut,
    }
}

/// The fewest roots to store so that `cuttings` come with a chance of at
/// least `sure` (0 to 1): survivors are beta-binomial. The share that survives
/// differs from season to season as a beta distribution with the mean
/// `survival_share` and the standard deviation `survival_spread`; in one
/// season each root survives on its own with that share. `None` where the
/// spread is wider than any share from 0 to 1 can have.
pub fn roots_to_be_sure(cuttings: u32, sure: f64, sizing: Sizing, assumptions: &Assumptions) -> Option<u32> {
    let (alpha, beta) = beta_of(assumptions.survival_share, assumptions.survival_spread)?;
    let survivors = whole_up(f64::from(cuttings) / per_survivor(sizing, assumptions));
    let enough = |roots: u32| at_least(roots, survivors, alpha, beta) >= sure;
    let mut high = survivors.max(1);
    while !enough(high) {
        high = high.checked_mul(2).filter(|roots| *roots <= MOST_ROOTS)?;
    }
    let mut low = survivors;
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

/// The parameters of a beta distribution by its mean and standard deviation.
fn beta_of(mean: f64, deviation: f64) -> Option<(f64, f64)> {
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

/// Plants to mark for `roots`.
pub fn plants_for(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_up(f64::from(roots) / assumptions.roots_per_plant)
}

/// Cuttings that `roots` stored give over the whole bed season.
pub fn cuttings_of_season(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_down(f64::from(roots) * assumptions.cuttings_per_root_season)
}

/// Cuttings that the first cut gives when `roots` were stored, losses in store taken off.
pub fn cuttings_of_first_cut(roots: u32, assumptions: &Assumptions) -> u32 {
    whole_down(f64::from(roots) * assumptions.survival_share * assumptions.cuttings_per_root_first_cut)
}
