//! The field and how many cuttings plant it.

use super::units::whole_up;
use super::{Assumptions, Metres, SquareMetres};

/// How cuttings stand in the field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spacing {
    /// On ridges.
    Ridges {
        /// From ridge to ridge.
        between: Metres,
        /// From cutting to cutting along the ridge.
        along: Metres,
    },
    /// On mounds in a square.
    Mounds {
        /// From mound to mound.
        between: Metres,
        /// Cuttings on each.
        cuttings: f64,
    },
}

impl Spacing {
    /// Cuttings on a square metre.
    pub fn density(&self) -> f64 {
        match *self {
            Spacing::Ridges { between, along } => 1.0 / (between.0 * along.0),
            Spacing::Mounds { between, cuttings } => cuttings / (between.0 * between.0),
        }
    }
}

/// The field to plant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Field {
    /// Its area.
    pub area: SquareMetres,
    /// Its sides, where they are known; rows run along the longer one.
    pub sides: Option<(Metres, Metres)>,
    /// How cuttings stand in it.
    pub spacing: Spacing,
}

/// Rows of ridges or mounds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rows {
    /// How many.
    pub count: u32,
    /// Cuttings in each.
    pub cuttings: u32,
}

impl Field {
    /// A field of which only the area is known.
    pub fn of(area: SquareMetres, spacing: Spacing) -> Field {
        Field { area, sides: None, spacing }
    }

    /// Its rows, where its sides are known; what is left of a row at an edge counts as one.
    pub fn rows(&self) -> Option<Rows> {
        let (one, other) = self.sides?;
        let (length, width) = (one.0.max(other.0), one.0.min(other.0));
        Some(match self.spacing {
            Spacing::Ridges { between, along } => {
                Rows { count: whole_up(width / between.0), cuttings: whole_up(length / along.0) }
            }
            Spacing::Mounds { between, cuttings } => Rows {
                count: whole_up(width / between.0),
                cuttings: whole_up(f64::from(whole_up(length / between.0)) * cuttings),
            },
        })
    }

    /// Cuttings that plant the whole field once.
    pub fn cuttings(&self) -> u32 {
        match self.rows() {
            Some(rows) => rows.count.saturating_mul(rows.cuttings),
            None => whole_up(self.area.0 * self.spacing.density()),
        }
    }

    /// Cuttings that plant the field, and once more the gaps where some have failed.
    pub fn cuttings_with_gaps(&self, assumptions: &Assumptions) -> u32 {
        whole_up(f64::from(self.cuttings()) * (1.0 + assumptions.gap_share))
    }
}
