//! The field and how many cuttings plant it.

use super::units::whole_up;
use super::{Metres, SquareMetres};

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
    /// How cuttings stand in it.
    pub spacing: Spacing,
}

impl Field {
    /// Cuttings that plant the whole field once.
    pub fn cuttings(&self) -> u32 {
        whole_up(self.area.0 * self.spacing.density())
    }
}
