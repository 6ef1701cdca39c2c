//! How cuttings stand in the field.

use serde::Serialize;

use super::parts::{FONT_SIZE, Frame, HALF, LINE, Line, Oval, across, path, tenth};
use super::words::{Caption, Words};
use crate::guidance::shapes::Rows;
use crate::language::WordingError;

#[derive(Serialize)]
pub(super) struct FieldRows {
    width: f64,
    height: f64,
    #[serde(rename = "letters")]
    font_size: f64,
    /// Ridges as boxes, seen from above.
    ridges: Vec<Frame>,
    /// Mounds, seen from above.
    mounds: String,
    /// Where a cutting stands.
    plants: Vec<(f64, f64)>,
    marks: Vec<Line>,
}

/// A corner of the field from above: ridges or mounds with their cuttings, to scale.
pub(super) fn draw(of: &Rows, words: &Words<'_>) -> Result<(FieldRows, Vec<Caption>), WordingError> {
    const TOP: f64 = 4.0;
    let (Rows::Ridges(between, _) | Rows::Mounds(between, _)) = *of;
    let between_text = words.centimetres(between)?;
    let wide = (HALF - 18.0 - across(&between_text)).clamp(30.0, 74.0);
    let mut drawn = FieldRows {
        width: HALF,
        height: 0.0,
        font_size: FONT_SIZE,
        ridges: Vec::new(),
        mounds: String::new(),
        plants: Vec::new(),
        marks: Vec::new(),
    };
    let (mut mounds, mut labels) = (Vec::new(), Vec::new());
    let plant = |x: f64, y: f64| (tenth(x), tenth(y));
    let (first, row) = match *of {
        Rows::Ridges(_, along) => {
            // Two plants have room, with no leaf beyond the ridge: the mark goes from one to the other.
            const LEAF: f64 = 9.0;
            let longest = (wide / 2.0).min(wide - 2.0 * LEAF);
            let scale = (40.0 / between.max(1.0)).min(longest / along.max(1.0));
            let (row, step) = (between * scale, along * scale);
            let first = (step / 2.0).max(LEAF);
            let places = 1 + ((wide - 2.0 * first) / step + 0.01).max(1.0) as u32;
            for line in 0..2 {
                let y = TOP + f64::from(line) * row;
                drawn.ridges.push(Frame { x: 2.0, y: tenth(y), width: wide, height: tenth(row * 0.6) });
                for place in 0..places {
                    drawn.plants.push(plant(2.0 + first + f64::from(place) * step, y + row * 0.3));
                }
            }
            let foot = TOP + row * 1.6 + 8.0;
            let from = 2.0 + first;
            drawn.marks.push(Line {
                x1: tenth(from),
                y1: tenth(foot),
                x2: tenth(from + step),
                y2: tenth(foot),
            });
            labels.push(Caption {
                x: tenth(from + step + 7.0),
                y: tenth(foot + FONT_SIZE * 0.35),
                anchor: "start",
                text: words.centimetres(along)?,
            });
            drawn.height = tenth(foot + LINE - 4.0);
            (TOP + row * 0.3, row)
        }
        Rows::Mounds(_, cuttings) => {
            let row = 40.0_f64.min(wide / 1.9);
            let radius = row * 0.42;
            for line in 0..2 {
                for place in 0..2 {
                    let (x, y) =
                        (3.0 + radius + f64::from(place) * row, TOP + radius + f64::from(line) * row);
                    mounds.push(Oval::disc(x, y, radius));
                    for index in 0..cuttings {
                        let turn = std::f64::consts::TAU * f64::from(index) / f64::from(cuttings)
                            - std::f64::consts::FRAC_PI_2;
                        let off = if cuttings > 1 { radius * 0.55 } else { 0.0 };
                        drawn.plants.push(plant(x + off * turn.cos(), y + off * turn.sin()));
                    }
                }
            }
            drawn.height = tenth(TOP + row + 2.0 * radius + 4.0);
            (TOP + radius, row)
        }
    };
    // From the middle of a row to the middle of the next.
    let last = first + row;
    drawn.marks.push(Line {
        x1: tenth(wide + 10.0),
        y1: tenth(first),
        x2: tenth(wide + 10.0),
        y2: tenth(last),
    });
    labels.push(Caption {
        x: tenth(wide + 16.0),
        y: tenth((first + last) / 2.0 + FONT_SIZE * 0.35),
        anchor: "start",
        text: between_text,
    });
    drawn.mounds = path(mounds);
    Ok((drawn, labels))
}
