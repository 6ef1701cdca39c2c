//! Containers by their inner sizes.

use std::f64::consts::PI;

use super::{Centimetres, Floor, Litres, SquareMetres};

/// A container at hand.
#[derive(Debug, Clone, PartialEq)]
pub struct Container {
    /// Its shape and inner sizes across.
    pub shape: Shape,
    /// Inner depth.
    pub depth: Centimetres,
    /// How many there are; `None` for as many as needed.
    pub count: Option<u32>,
}

/// Shape and inner sizes across.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A basin or bucket; straight-sided where both widths are equal.
    Round {
        /// Inner width at the top.
        top: Centimetres,
        /// Inner width at the bottom.
        bottom: Centimetres,
    },
    /// A pot: straight-sided bands one above the other, from the bottom up.
    Pot {
        /// The bands; together they are as high as the container is deep.
        bands: Vec<Band>,
    },
    /// A box.
    Box {
        /// Inner length.
        length: Centimetres,
        /// Inner width.
        width: Centimetres,
    },
}

/// A straight-sided part of a pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band {
    /// How high it is.
    pub height: Centimetres,
    /// Inner width.
    pub width: Centimetres,
}

impl Container {
    /// The floor that a layer has which reaches from `low` to `high` above the
    /// bottom: as wide as the narrowest place between the two.
    pub fn floor_between(&self, low: Centimetres, high: Centimetres) -> Floor {
        match &self.shape {
            Shape::Round { top, bottom } => {
                let at = |height| self.width_at(*top, *bottom, height);
                Floor::Round { width: Centimetres(at(low).0.min(at(high).0)) }
            }
            Shape::Pot { bands } => {
                let width = banded(bands)
                    .filter(|(from, band)| from + band.height.0 > low.0 && *from < high.0)
                    .map(|(_, band)| band.width.0)
                    .fold(f64::INFINITY, f64::min);
                Floor::Round { width: Centimetres(if width.is_finite() { width } else { 0.0 }) }
            }
            Shape::Box { length, width } => Floor::Rectangle { length: *length, width: *width },
        }
    }

    fn width_at(&self, top: Centimetres, bottom: Centimetres, height: Centimetres) -> Centimetres {
        let share = if self.depth.0 > 0.0 { (height.0 / self.depth.0).clamp(0.0, 1.0) } else { 0.0 };
        Centimetres(bottom.0 + (top.0 - bottom.0) * share)
    }

    /// Volume from the bottom to `height`, at most the whole.
    pub fn volume_to(&self, height: Centimetres) -> Litres {
        let height = Centimetres(height.0.clamp(0.0, self.depth.0));
        let cubic_cm = match &self.shape {
            Shape::Round { top, bottom } => {
                let low = bottom.0 / 2.0;
                let high = self.width_at(*top, *bottom, height).0 / 2.0;
                PI * height.0 * (low * low + low * high + high * high) / 3.0
            }
            Shape::Pot { bands } => banded(bands)
                .map(|(from, band)| {
                    PI * band.width.0.powi(2) / 4.0 * (height.0 - from).clamp(0.0, band.height.0)
                })
                .sum(),
            Shape::Box { length, width } => length.0 * width.0 * height.0,
        };
        Litres(cubic_cm / 1000.0)
    }

    /// Paper that lines the bottom and the sides up to `height`, without overlap.
    pub fn lining_to(&self, height: Centimetres) -> SquareMetres {
        let height = Centimetres(height.0.clamp(0.0, self.depth.0));
        let square_cm = match &self.shape {
            Shape::Round { top, bottom } => {
                let low = bottom.0 / 2.0;
                let high = self.width_at(*top, *bottom, height).0 / 2.0;
                PI * low * low + PI * (low + high) * height.0.hypot(high - low)
            }
            Shape::Pot { bands } => {
                let disc = |width: f64| PI * width * width / 4.0;
                let bottom = bands.first().map_or(0.0, |band| disc(band.width.0));
                let sides: f64 = banded(bands)
                    .map(|(from, band)| PI * band.width.0 * (height.0 - from).clamp(0.0, band.height.0))
                    .sum();
                let shoulders: f64 = banded(bands)
                    .zip(bands.iter().skip(1))
                    .filter(|((from, band), _)| from + band.height.0 < height.0)
                    .map(|((_, below), above)| (disc(above.width.0) - disc(below.width.0)).abs())
                    .sum();
                bottom + sides + shoulders
            }
            Shape::Box { length, width } => length.0 * width.0 + 2.0 * (length.0 + width.0) * height.0,
        };
        SquareMetres(square_cm / 10_000.0)
    }
}

/// Bands with the height at which each begins.
fn banded(bands: &[Band]) -> impl Iterator<Item = (f64, &Band)> {
    bands.iter().scan(0.0, |from, band| {
        let here = *from;
        *from += band.height.0;
        Some((here, band))
    })
}
