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
