//! The bed from above.

use serde::Serialize;

use super::parts::{FONT_SIZE, Frame, HALF, LINE, Line, Root, across, lines, tenth};
use super::words::{Caption, Words};
use crate::guidance::shapes::BedShape;
use crate::language::WordingError;

#[derive(Serialize)]
pub(super) struct BedPlan {
    width: f64,
    height: f64,
    #[serde(rename = "letters")]
    font_size: f64,
    frame: Frame,
    roots: String,
    /// How thick the lines are that show them.
    thick: f64,
    marks: Vec<Line>,
}

/// Roots drawn one by one; a bed for more shows its rows as lines.
const MOST_ROOTS: u32 = 400;

/// The bed from above, with its rows.
pub(super) fn draw(bed: &BedShape, words: &Words<'_>) -> Result<(BedPlan, Vec<Caption>), WordingError> {
    const HIGH: f64 = 58.0;
    let side = words.metres(bed.width)?;
    let wide = (HALF - 18.0 - across(&side)).clamp(30.0, 80.0);
    let scale = (wide / bed.length.max(1.0)).min(HIGH / bed.width.max(1.0));
    let frame = Frame { x: 2.0, y: 4.0, width: tenth(bed.length * scale), height: tenth(bed.width * scale) };
    let (row, place) =
        (frame.height / f64::from(bed.rows.max(1)), frame.width / f64::from(bed.roots_per_row.max(1)));
    let mut roots = Vec::new();
    let length = (place * 0.64).min(18.0);
    let thick = tenth((row * 0.4).min(length * 0.6).min(8.0));
    if bed.roots <= MOST_ROOTS {
        // The rows share the roots evenly; the first ones have one more where they do not divide.
        let (each, more) = (bed.roots / bed.rows.max(1), bed.roots % bed.rows.max(1));
        for line in 0..bed.rows {
            for root in 0..each + u32::from(line < more) {
                let (x, y) =
                    (frame.x + (f64::from(root) + 0.5) * place, frame.y + (f64::from(line) + 0.5) * row);
                roots.push(Root::level(x, y, length, thick));
            }
        }
    }
    let (right, foot) = (frame.x + frame.width, frame.y + frame.height);
    let marks = vec![
        Line { x1: frame.x, y1: tenth(foot + 8.0), x2: tenth(right), y2: tenth(foot + 8.0) },
        Line { x1: tenth(right + 8.0), y1: frame.y, x2: tenth(right + 8.0), y2: tenth(foot) },
    ];
    let labels = vec![
        Caption {
            x: tenth((frame.x + right) / 2.0),
            y: tenth(foot + 10.0 + LINE),
            anchor: "middle",
            text: words.metres(bed.length)?,
        },
        Caption {
            x: tenth(right + 14.0),
            y: tenth((frame.y + foot) / 2.0 + FONT_SIZE * 0.35),
            anchor: "start",
            text: side,
        },
    ];
    let height = tenth(foot + 16.0 + LINE);
    Ok((
        BedPlan { width: HALF, height, font_size: FONT_SIZE, frame, roots: lines(roots), thick, marks },
        labels,
    ))
}
