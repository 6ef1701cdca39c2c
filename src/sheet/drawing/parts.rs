//! What drawings are made of, as SVG has it.

use std::fmt::Write as _;

use serde::Serialize;

/// The width of a drawing that stands in a column.
pub(super) const WIDTH: f64 = 250.0;
/// The width of a drawing of which two stand side by side.
pub(super) const HALF: f64 = 125.0;
/// The width of the season's band.
pub(super) const BAND: f64 = 525.0;
/// The size of letters, and of the room that a line of them takes.
pub(super) const FONT_SIZE: f64 = 12.0;
pub(super) const LINE: f64 = 15.0;
/// An oval; `turn` in radians.
pub(super) struct Oval {
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) rx: f64,
    pub(super) ry: f64,
    pub(super) turn: f64,
}

impl Oval {
    pub(super) fn disc(x: f64, y: f64, radius: f64) -> Oval {
        Oval { x, y, rx: radius, ry: radius, turn: 0.0 }
    }
}

/// A root: where its middle is, how far from there the line reaches that its round ends close, and
/// its turn in radians.
pub(super) struct Root {
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) reach: f64,
    pub(super) turn: f64,
}

impl Root {
    /// One that lies along the page, as long and as thick as this.
    pub(super) fn level(x: f64, y: f64, length: f64, thick: f64) -> Root {
        Root { x, y, reach: (length - thick).max(0.0) / 2.0, turn: 0.0 }
    }
}

/// Ovals as one SVG path: what is painted in one stroke takes a tenth of the work.
pub(super) fn path(ovals: impl IntoIterator<Item = Oval>) -> String {
    // How far a curve's handles are from a quarter's ends, for a radius of 1.
    const HANDLE: f64 = 0.552_285;
    let quarters = [
        [(1.0, HANDLE), (HANDLE, 1.0), (0.0, 1.0)],
        [(-HANDLE, 1.0), (-1.0, HANDLE), (-1.0, 0.0)],
        [(-1.0, -HANDLE), (-HANDLE, -1.0), (0.0, -1.0)],
        [(HANDLE, -1.0), (1.0, -HANDLE), (1.0, 0.0)],
    ];
    let mut path = String::new();
    for Oval { x, y, rx, ry, turn } in ovals {
        let (sin, cos) = turn.sin_cos();
        let at = |(across, down): (f64, f64)| {
            let (across, down) = (across * rx, down * ry);
            (x + across * cos - down * sin, y + across * sin + down * cos)
        };
        path.push('M');
        write_points(&mut path, [at((1.0, 0.0))]);
        for quarter in quarters {
            path.push('C');
            write_points(&mut path, quarter.map(at));
        }
        path.push('Z');
    }
    path
}

/// Roots as lines with round ends, as they are packed: four numbers each, where an oval takes 26. That of a
/// round root has a length too: paper leaves out a path of one line that has none.
pub(super) fn lines(roots: impl IntoIterator<Item = Root>) -> String {
    let mut path = String::new();
    for Root { x, y, reach, turn } in roots {
        let (sin, cos) = turn.sin_cos();
        let reach = reach.max(0.1);
        let (across, down) = (reach * cos, reach * sin);
        path.push('M');
        write_points(&mut path, [(x - across, y - down), (x + across, y + down)]);
    }
    path
}

/// A line from one point to another, with marks at its ends where it measures.
#[derive(Serialize)]
pub(super) struct Line {
    pub(super) x1: f64,
    pub(super) y1: f64,
    pub(super) x2: f64,
    pub(super) y2: f64,
}

/// A box.
#[derive(Serialize)]
pub(super) struct Frame {
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) width: f64,
    pub(super) height: f64,
}

/// The room that a text takes across: as wide as letters usually are; no font is asked.
pub(super) fn across(text: &str) -> f64 {
    text.chars().count() as f64 * FONT_SIZE * 0.6
}

/// A tenth of a unit is finer than any printer.
pub(super) fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0 + 0.0
}

pub(super) fn points(points: impl IntoIterator<Item = (f64, f64)>) -> String {
    let mut text = String::new();
    write_points(&mut text, points);
    text
}

pub(super) fn write_points(text: &mut String, points: impl IntoIterator<Item = (f64, f64)>) {
    for (number, (x, y)) in points.into_iter().enumerate() {
        if number > 0 {
            text.push(' ');
        }
        // Into a text it cannot fail.
        let _ = write!(text, "{},{}", tenth(x), tenth(y));
    }
}
