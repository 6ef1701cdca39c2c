//! Plans for many: the shares of a group's farms, and a zone's table by field size.

use super::field::{Field, Spacing};
use super::multiply::{self, Rate, Sizing};
use super::units::{whole_down, whole_up};
use super::{Assumptions, SquareMetres};

/// A farm of a group.
#[derive(Debug, Clone, PartialEq)]
pub struct Member {
    /// Its name.
    pub name: String,
    /// Its field.
    pub field: Field,
}

/// A farm's part of what the group does together. The parts add to the group's totals.
#[derive(Debug, Clone, PartialEq)]
pub struct Share {
    /// The farm.
    pub name: String,
    /// Its field.
    pub area: SquareMetres,
    /// Cuttings that plant it.
    pub cuttings: u32,
    /// Plants it marks.
    pub plants: u32,
    /// Roots it brings to the store.
    pub roots: u32,
}

/// Parts of `roots` and `plants` for each farm, by the cuttings its field takes.
pub(super) fn shares(farms: &[Member], (roots, plants): (u32, u32), assumptions: &Assumptions) -> Vec<Share> {
    let cuttings: Vec<u32> = farms.iter().map(|farm| farm.field.cuttings_with_gaps(assumptions)).collect();
    let roots = divide(roots, &cuttings);
    let plants = divide(plants, &cuttings);
    let parts = cuttings.into_iter().zip(plants.into_iter().zip(roots));
    let share = |(farm, (cuttings, (plants, roots))): (&Member, _)| Share {
        name: farm.name.clone(),
        area: farm.field.area,
        cuttings,
        plants,
        roots,
    };
    farms.iter().zip(parts).map(share).collect()
}

/// Divides a whole number by weights, so that the parts add up to it: what is
/// left over goes to the largest fractions.
pub fn divide(whole: u32, weights: &[u32]) -> Vec<u32> {
    let sum: f64 = weights.iter().map(|weight| f64::from(*weight)).sum();
    let exact = |weight: &u32| if sum > 0.0 { f64::from(whole) * f64::from(*weight) / sum } else { 0.0 };
    let mut parts: Vec<u32> = weights.iter().map(|weight| whole_down(exact(weight))).collect();
    let given: u32 = parts.iter().sum();
    let mut order: Vec<usize> = (0..weights.len()).collect();
    let fraction = |index: usize| weights.get(index).map_or(0.0, |weight| exact(weight).fract());
    order.sort_by(|one, other| fraction(*other).total_cmp(&fraction(*one)).then(one.cmp(other)));
    for index in order.into_iter().take(whole.saturating_sub(given) as usize) {
        if let Some(part) = parts.get_mut(index) {
            *part += 1;
        }
    }
    parts
}

/// What a field of some size takes.
#[derive(Debug, Clone, PartialEq)]
pub struct FieldSize {
    /// The field.
    pub area: SquareMetres,
    /// Cuttings that plant it.
    pub cuttings: u32,
    /// Roots to store.
    pub roots: u32,
    /// Plants to mark.
    pub plants: u32,
    /// The bed.
    pub bed: SquareMetres,
    /// Jerrycans of water a day when the bed needs most.
    pub jerrycans_per_day: u32,
}

/// The table by field size. `litres` is what a square metre of bed needs a day when it needs most.
pub(super) fn by_field(
    sizes: &[SquareMetres],
    spacing: Spacing,
    (sizing, rate): (Sizing, &Rate),
    litres: f64,
    assumptions: &Assumptions,
) -> Vec<FieldSize> {
    let row = |area: &SquareMetres| {
        let cuttings = Field::of(*area, spacing).cuttings_with_gaps(assumptions);
        let roots = rate.roots_for(cuttings, sizing);
        let bed = f64::from(roots) * assumptions.bed_area_per_root_m2;
        FieldSize {
            area: *area,
            cuttings,
            roots,
            plants: multiply::plants_for(roots, assumptions),
            bed: SquareMetres((bed * 10.0).ceil() / 10.0),
            jerrycans_per_day: whole_up(bed * litres / assumptions.jerrycan_l),
        }
    };
    sizes.iter().map(row).collect()
}
