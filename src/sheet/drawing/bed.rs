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
    /// The strips, and how thick their outline is.
    frames: Vec<Frame>,
    outline: f64,
    roots: String,
    /// How thick the lines are that show them.
    thick: f64,
    marks: Vec<Line>,
}

/// Roots drawn one by one; a bed for more shows its strips alone.
const MOST_ROOTS: u32 = 400;

/// The bed from above: its strips, with their rows.
pub(super) fn draw(bed: &BedShape, words: &Words<'_>) -> Result<(BedPlan, Vec<Caption>), WordingError> {
    const HIGH: f64 = 58.0;
    const TOP: f64 = 4.0;
    // Across a bed of one strip its width; elsewhere the width of a strip, and of a path.
    let sides = if bed.strips > 1 { vec![bed.strip_width, bed.path] } else { vec![bed.width] };
    let sides = sides.into_iter().map(|side| Ok((side, words.metres(side)?)));
    let sides = sides.collect::<Result<Vec<(f64, String)>, WordingError>>()?;
    let widest = sides.iter().map(|(_, text)| across(text)).fold(0.0, f64::max);
    let wide = (HALF - 18.0 - widest).clamp(30.0, 80.0);
    let scale = (wide / bed.length.max(1.0)).min(HIGH / bed.width.max(1.0));
    let (length, strip) = (bed.length * scale, bed.strip_width * scale);
    let top_of = |index: u32| TOP + f64::from(index) * (bed.strip_width + bed.path) * scale;
    let frames: Vec<Frame> = (0..bed.strips)
        .map(|index| Frame { x: 2.0, y: tenth(top_of(index)), width: tenth(length), height: tenth(strip) })
        .collect();
    let row = strip / f64::from(bed.rows_per_strip.max(1));
    let place = length / f64::from(bed.roots_per_row.max(1));
    let mut roots = Vec::new();
    let drawn = (place * 0.64).min(18.0);
    let thick = tenth((row * 0.4).min(drawn * 0.6).min(8.0));
    if bed.roots <= MOST_ROOTS {
        // The rows share the roots evenly; the first ones have one more where they do not divide.
        let rows = bed.rows_per_strip.saturating_mul(bed.strips).max(1);
        let (each, more) = (bed.roots / rows, bed.roots % rows);
        for line in 0..rows {
            let (index, in_strip) = (line / bed.rows_per_strip.max(1), line % bed.rows_per_strip.max(1));
            for root in 0..each + u32::from(line < more) {
                let x = 2.0 + (f64::from(root) + 0.5) * place;
                let y = top_of(index) + (f64::from(in_strip) + 0.5) * row;
                roots.push(Root::level(x, y, drawn, thick));
            }
        }
    }
    let (right, foot) = (2.0 + length, TOP + bed.width * scale);
    let mut marks = vec![Line { x1: 2.0, y1: tenth(foot + 8.0), x2: tenth(right), y2: tenth(foot + 8.0) }];
    let mut labels = vec![Caption {
        x: tenth(2.0 + length / 2.0),
        y: tenth(foot + 10.0 + LINE),
        anchor: "middle",
        text: words.metres(bed.length)?,
    }];
    let (mut from, mut free) = (TOP, 0.0);
    for (side, text) in sides {
        let to = from + side * scale;
        let x = tenth(right + 8.0);
        marks.push(Line { x1: x, y1: tenth(from), x2: x, y2: tenth(to) });
        // A path is often narrower than the words beside it.
        let y = ((from + to) / 2.0 + FONT_SIZE * 0.35).max(free);
        labels.push(Caption { x: tenth(right + 14.0), y: tenth(y), anchor: "start", text });
        (from, free) = (to, y + FONT_SIZE);
    }
    let drawn = BedPlan {
        width: HALF,
        height: tenth(foot + 16.0 + LINE),
        font_size: FONT_SIZE,
        frames,
        outline: tenth((strip * 0.25).clamp(0.1, 2.5)),
        roots: lines(roots),
        thick,
        marks,
    };
    Ok((drawn, labels))
}
