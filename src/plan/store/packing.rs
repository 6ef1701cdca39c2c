//! One layer of roots seen from above.
//!
//! A root lying flat is a capsule: a straight line with a half circle at each
//! end. Roots lie in straight rows, all in one direction; the rows are shifted
//! sideways until most roots fit. Every root keeps the gap to every other and
//! to the side.

use super::super::units::whole_down;
use super::{Assumptions, Centimetres};

/// The size of a root and the gap it keeps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Root {
    /// From tip to tip.
    pub length: Centimetres,
    /// Across.
    pub diameter: Centimetres,
    /// To the next root and to the side.
    pub gap: Centimetres,
}

impl Root {
    /// The root of the assumptions.
    pub fn of(assumptions: &Assumptions) -> Root {
        Root {
            length: Centimetres(assumptions.root_length_mm / 10.0),
            diameter: Centimetres(assumptions.root_diameter_mm / 10.0),
            gap: Centimetres(assumptions.root_gap_cm),
        }
    }

    /// Length of the straight line in the capsule.
    fn spine(&self) -> f64 {
        (self.length.0 - self.diameter.0).max(0.0)
    }
}

/// What a layer lies on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Floor {
    /// A disc of this width.
    Round {
        /// Inner width.
        width: Centimetres,
    },
    /// A rectangle.
    Rectangle {
        /// Inner length.
        length: Centimetres,
        /// Inner width.
        width: Centimetres,
    },
}

/// Where a root lies: its middle, measured from the middle of the floor, in
/// centimetres. It points along `x`, or along `y` where `across`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Position {
    /// Along the floor's length.
    pub x: f64,
    /// Along the floor's width.
    pub y: f64,
    /// Whether the root points along `y`.
    pub across: bool,
}

/// Steps by which the rows are shifted in search of the best place.
const SHIFTS: u32 = 64;

/// Bounds the work for sizes no container has.
const MOST_ROWS: u32 = 1_000;

/// The positions of as many roots as rows allow; empty where none fits.
pub fn pack(floor: &Floor, root: &Root) -> Vec<Position> {
    match *floor {
        Floor::Round { width } => best_rows(root, width.0 / 2.0, |y, radius| {
            let half = radius * radius - y * y;
            (half >= 0.0).then(|| half.sqrt())
        }),
        Floor::Rectangle { length, width } => {
            let lengthwise = rectangle_rows(root, length.0, width.0);
            let crosswise = rectangle_rows(root, width.0, length.0);
            if crosswise.len() > lengthwise.len() {
                crosswise.into_iter().map(|at| Position { x: at.y, y: at.x, across: true }).collect()
            } else {
                lengthwise
            }
        }
    }
}

/// Rows in a shape `half_height` high to either side of its middle; `reach`
/// says how far from the middle line the end of a spine may lie at height `y`,
/// in the shape shrunk by gap and root.
fn best_rows(root: &Root, half_height: f64, reach: impl Fn(f64, f64) -> Option<f64>) -> Vec<Position> {
    let inner = half_height - root.gap.0 - root.diameter.0 / 2.0;
    if !inner.is_finite() || inner < 0.0 {
        return Vec::new();
    }
    let pitch = root.diameter.0 + root.gap.0;
    (0..SHIFTS)
        .map(|shift| {
            let first = pitch * f64::from(shift) / f64::from(SHIFTS);
            let lowest = first - f64::from(whole_down((inner + first) / pitch)) * pitch;
            (0..MOST_ROWS)
                .map(|row| lowest + f64::from(row) * pitch)
                .take_while(|y| *y <= inner)
                .flat_map(|y| row_of(root, y, reach(y, inner).unwrap_or(-1.0)))
                .collect::<Vec<_>>()
        })
        .fold(Vec::new(), |best, rows| if rows.len() > best.len() { rows } else { best })
}

fn rectangle_rows(root: &Root, length: f64, width: f64) -> Vec<Position> {
    let reach = length / 2.0 - root.gap.0 - root.diameter.0 / 2.0;
    best_rows(root, width / 2.0, |_, _| Some(reach))
}

/// A row of roots end to end at height `y`, spine ends at most `reach` from the middle.
fn row_of(root: &Root, y: f64, reach: f64) -> impl Iterator<Item = Position> {
    let step = root.spine() + root.diameter.0 + root.gap.0;
    let count =
        if reach < 0.0 { 0 } else { whole_down((2.0 * reach - root.spine()) / step + 1.0).min(MOST_ROWS) };
    let middle = (f64::from(count) - 1.0) / 2.0;
    (0..count).map(move |index| Position { x: (f64::from(index) - middle) * step, y, across: false })
}
