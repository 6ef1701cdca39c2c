//! Containers by their inner sizes.

use std::f64::consts::PI;

use super::{Centimetres, Floor, Litres};

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
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shape {
    /// A basin, bucket or pot; straight-sided where both are equal.
    Round {
        /// Inner width at the top.
        top: Centimetres,
        /// Inner width at the bottom.
        bottom: Centimetres,
    },
    /// A box.
    Box {
        /// Inner length.
        length: Centimetres,
        /// Inner width.
        width: Centimetres,
    },
}

impl Container {
    /// The floor on which roots lie at `height` above the bottom.
    pub fn floor_at(&self, height: Centimetres) -> Floor {
        match self.shape {
            Shape::Round { top, bottom } => Floor::Round { width: self.width_at(top, bottom, height) },
            Shape::Box { length, width } => Floor::Rectangle { length, width },
        }
    }

    fn width_at(&self, top: Centimetres, bottom: Centimetres, height: Centimetres) -> Centimetres {
        let share = if self.depth.0 > 0.0 { (height.0 / self.depth.0).clamp(0.0, 1.0) } else { 0.0 };
        Centimetres(bottom.0 + (top.0 - bottom.0) * share)
    }

    /// Volume from the bottom to `height`, at most the whole.
    pub fn volume_to(&self, height: Centimetres) -> Litres {
        let height = Centimetres(height.0.clamp(0.0, self.depth.0));
        let cubic_cm = match self.shape {
            Shape::Round { top, bottom } => {
                let low = bottom.0 / 2.0;
                let high = self.width_at(top, bottom, height).0 / 2.0;
                PI * height.0 * (low * low + low * high + high * high) / 3.0
            }
            Shape::Box { length, width } => length.0 * width.0 * height.0,
        };
        Litres(cubic_cm / 1000.0)
    }
}
