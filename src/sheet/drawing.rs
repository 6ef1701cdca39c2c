//! Drawings computed from a plan: this file finds every coordinate, the
//! templates in `drawings/` only paint. A unit is a point (1/72 inch) when the
//! drawing is set as wide as [`WIDTH`], [`HALF`] or [`BAND`] points.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use chrono::{Datelike, Months, NaiveDate};
use serde::Serialize;

use super::SheetError;
use super::template::render;
use crate::data::Data;
use crate::guidance::Value;
use crate::guidance::shapes::{Area, BedShape, LayerShape, Rows, SeasonBand, Shapes, StoreShape};
use crate::language::{Direction, Filled, Pack, WordingError};

/// A drawing of a plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Drawing {
    /// Its name: `store`, `layers`, `bed`, `rows` or `season`, with a number where there are more.
    pub name: String,
    /// Where a template finds it.
    pub file: String,
    /// Its title.
    pub title: String,
    /// What it shows, in words.
    pub alt: String,
    /// Its width, in its own units.
    pub width: f64,
    /// The size of its letters, in the same.
    #[serde(rename = "letters")]
    pub font_size: f64,
    /// Its words.
    pub labels: Vec<Label>,
    /// All of it but its words, SVG: paper sets those in its own letters.
    #[serde(skip)]
    pub svg: String,
}

impl Drawing {
    /// The drawing with its words, SVG.
    pub fn worded(&self) -> String {
        let word = |label: &Label| {
            let Label { x, y, anchor, text } = label;
            let text = tera::escape_html(text);
            format!("<text x=\"{x}\" y=\"{y}\" text-anchor=\"{anchor}\">{text}</text>\n")
        };
        let words: String = self.labels.iter().map(word).collect();
        let end = self.svg.rfind("</svg>").unwrap_or(self.svg.len());
        let (shapes, end) = self.svg.split_at(end);
        format!("{shapes}{words}{end}")
    }
}

/// The width of a drawing that stands in a column.
const WIDTH: f64 = 250.0;
/// The width of a drawing of which two stand side by side.
const HALF: f64 = 125.0;
/// The width of the season's band.
const BAND: f64 = 525.0;
/// The size of letters, and of the room that a line of them takes.
const FONT_SIZE: f64 = 12.0;
const LINE: f64 = 15.0;
/// Kinds of containers that are drawn; more would fill the paper.
const MOST_STORES: usize = 2;
/// Layers drawn of one container; those above look like the topmost.
const MOST_LAYERS: usize = 6;

/// Draws what the shapes of a plan show, in the pack's words.
///
/// # Errors
/// A wording or a template that is missing or broken.
pub fn drawings(pack: &Pack, shapes: &Shapes, data: &dyn Data) -> Result<Vec<Drawing>, SheetError> {
    let words = Words { pack, filled: pack.with(&shapes.values), shapes };
    let mut all = Vec::new();
    let mut add = |name: &str, number: usize, width: f64, labels: Vec<Label>, svg: String| {
        let of = |what: &str| words.label(&format!("drawing-{name}{what}"));
        let name = if number > 0 { format!("{name}-{}", number + 1) } else { name.to_owned() };
        let file = format!("/drawings/{name}.svg");
        let (title, alt) = (of("")?, of("-alt")?);
        all.push(Drawing { name, file, title, alt, width, font_size: FONT_SIZE, labels, svg });
        Ok::<(), SheetError>(())
    };
    let (shapes, labels) = season(&shapes.season, &words)?;
    add("season", 0, shapes.width, labels, paint("season", &shapes, data)?)?;
    for (number, store) in words.shapes.stores.iter().take(MOST_STORES).enumerate() {
        let (shapes, labels) = side(store, &words)?;
        add("store", number, shapes.width, labels, paint("store", &shapes, data)?)?;
        let (shapes, labels) = from_above(store, &words);
        add("layers", number, shapes.width, labels, paint("layers", &shapes, data)?)?;
    }
    let (shapes, labels) = bed(&words.shapes.bed, &words)?;
    add("bed", 0, shapes.width, labels, paint("bed", &shapes, data)?)?;
    let (shapes, labels) = rows(&words.shapes.rows, &words)?;
    add("rows", 0, shapes.width, labels, paint("rows", &shapes, data)?)?;
    Ok(all)
}

fn paint(name: &str, facts: &impl Serialize, data: &dyn Data) -> Result<String, SheetError> {
    let template = format!("drawings/{name}.svg");
    let bytes = render(&template, facts, data)?;
    String::from_utf8(bytes).map_err(|_| SheetError::Missing(template))
}

/// The words of a pack for a plan.
struct Words<'a> {
    pack: &'a Pack,
    filled: Filled<'a>,
    shapes: &'a Shapes,
}

impl Words<'_> {
    fn label(&self, id: &str) -> Result<String, WordingError> {
        self.filled.label(id)
    }

    fn centimetres(&self, value: f64) -> Result<String, WordingError> {
        self.pack.label("size-cm", &[("cm", Value::Number(value.round(), 0))])
    }

    fn metres(&self, centimetres: f64) -> Result<String, WordingError> {
        let metres = (centimetres / 10.0).round() / 10.0;
        let decimals = u8::from(metres.fract() != 0.0);
        self.pack.label("size-m", &[("m", Value::Number(metres, decimals))])
    }

    fn count(&self, count: usize) -> String {
        self.pack.write_number(count as f64, 0)
    }

    fn day(&self, day: NaiveDate) -> Result<String, WordingError> {
        self.pack.write_day(day, "BRIEF")
    }
}

/// Words of a drawing with their place.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Label {
    /// How far they are from the left.
    pub x: f64,
    /// How far the line they stand on is from the top.
    pub y: f64,
    /// What of them is at `x`, as in SVG: `start` or `middle`.
    pub anchor: &'static str,
    /// The words.
    pub text: String,
}

/// An oval; `turn` in radians.
struct Oval {
    x: f64,
    y: f64,
    rx: f64,
    ry: f64,
    turn: f64,
}

impl Oval {
    fn disc(x: f64, y: f64, radius: f64) -> Oval {
        Oval { x, y, rx: radius, ry: radius, turn: 0.0 }
    }
}

/// A root: where its middle is, how far from there the line reaches that its round ends close, and
/// its turn in radians.
struct Root {
    x: f64,
    y: f64,
    reach: f64,
    turn: f64,
}

impl Root {
    /// One that lies along the page, as long and as thick as this.
    fn level(x: f64, y: f64, length: f64, thick: f64) -> Root {
        Root { x, y, reach: (length - thick).max(0.0) / 2.0, turn: 0.0 }
    }
}

/// Ovals as one SVG path: what is painted in one stroke takes a tenth of the work.
fn path(ovals: impl IntoIterator<Item = Oval>) -> String {
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
fn lines(roots: impl IntoIterator<Item = Root>) -> String {
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
struct Line {
    x1: f64,
    y1: f64,
    x2: f64,
    y2: f64,
}

/// A box.
#[derive(Serialize)]
struct Frame {
    x: f64,
    y: f64,
    width: f64,
    height: f64,
}

/// The room that a text takes across: as wide as letters usually are; no font is asked.
fn across(text: &str) -> f64 {
    text.chars().count() as f64 * FONT_SIZE * 0.6
}

/// A tenth of a unit is finer than any printer.
fn tenth(value: f64) -> f64 {
    (value * 10.0).round() / 10.0 + 0.0
}

fn points(points: impl IntoIterator<Item = (f64, f64)>) -> String {
    let mut text = String::new();
    write_points(&mut text, points);
    text
}

fn write_points(text: &mut String, points: impl IntoIterator<Item = (f64, f64)>) {
    for (number, (x, y)) in points.into_iter().enumerate() {
        if number > 0 {
            text.push(' ');
        }
        // Into a text it cannot fail.
        let _ = write!(text, "{},{}", tenth(x), tenth(y));
    }
}

#[derive(Serialize)]
struct Side {
    width: f64,
    height: f64,
    #[serde(rename = "letters")]
    font_size: f64,
    outline: String,
    sand: String,
    roots: String,
    marks: Vec<Line>,
}

/// A container cut through its middle: sand and roots to scale, with the depth of each sand.
fn side(store: &StoreShape, words: &Words<'_>) -> Result<(Side, Vec<Label>), WordingError> {
    const HIGH: f64 = 84.0;
    const LEFT: f64 = 24.0;
    const TOP: f64 = 4.0;
    let (below, between, above) = store.sand_between;
    let mut room: f64 = 0.0;
    for depth in [below, between, above] {
        room = room.max(across(&words.centimetres(depth)?));
    }
    let wide = (WIDTH - LEFT - 20.0 - room).clamp(60.0, 160.0);
    let widest = store.profile.iter().map(|(half, _)| *half).fold(1.0, f64::max);
    let scale = (wide / (2.0 * widest)).min(HIGH / store.depth.max(1.0));
    let (middle, floor) = (LEFT + widest * scale, TOP + store.depth * scale);
    let x = |across: f64| middle + across * scale;
    let y = |height: f64| floor - height * scale;
    let ring = |profile: &[(f64, f64)]| {
        let right = profile.iter().map(|(half, height)| (x(*half), y(*height)));
        let left = profile.iter().rev().map(|(half, height)| (x(-half), y(*height)));
        points(left.chain(right))
    };
    let mut roots = Vec::new();
    let mut labels = Vec::new();
    for (index, layer) in store.layers.iter().enumerate() {
        let centre = y(layer.height + store.root / 2.0);
        roots.extend(store.cut(layer).into_iter().map(|(across, half)| Oval {
            x: x(across),
            y: centre,
            rx: half * scale,
            // Near its tip a root is as high as it is wide.
            ry: half.min(store.root / 2.0) * scale,
            turn: 0.0,
        }));
        let text = words.count(index + 1);
        labels.push(Label { x: 10.0, y: tenth(centre + FONT_SIZE * 0.35), anchor: "middle", text });
    }
    let edge = tenth(middle + widest * scale + 10.0);
    let top = store.layers.last().map_or(0.0, |layer| layer.height + store.root);
    let mut depths = vec![(0.0, below), (top, above)];
    if let [.., lower, _] = store.layers.as_slice() {
        depths.push((lower.height + store.root, between));
    }
    let mut marks = Vec::new();
    for (from, depth) in depths {
        let (low, high) = (tenth(y(from)), tenth(y(from + depth)));
        marks.push(Line { x1: edge, y1: low, x2: edge, y2: high });
        labels.push(Label {
            x: edge + 8.0,
            y: tenth((low + high) / 2.0 + FONT_SIZE * 0.35),
            anchor: "start",
            text: words.centimetres(depth)?,
        });
    }
    let side = Side {
        width: WIDTH,
        height: tenth(floor + 3.0),
        font_size: FONT_SIZE,
        outline: ring(&store.profile),
        sand: ring(&below_height(&store.profile, store.sand)),
        roots: path(roots),
        marks,
    };
    Ok((side, labels))
}

/// The part of a profile that lies below a height.
fn below_height(profile: &[(f64, f64)], height: f64) -> Vec<(f64, f64)> {
    let mut below: Vec<(f64, f64)> = Vec::new();
    for (half, at) in profile {
        if *at <= height {
            below.push((*half, *at));
            continue;
        }
        if let Some((before, from)) = below.last().copied() {
            let share = if at > &from { (height - from) / (at - from) } else { 0.0 };
            below.push((before + (half - before) * share, height));
        }
        break;
    }
    below
}

#[derive(Serialize)]
struct Above {
    width: f64,
    height: f64,
    #[serde(rename = "letters")]
    font_size: f64,
    discs: String,
    boxes: Vec<Frame>,
    roots: String,
    /// How thick the lines are that show them.
    thick: f64,
    /// A root beside its count.
    signs: String,
}

/// Each layer from above, all to one scale.
fn from_above(store: &StoreShape, words: &Words<'_>) -> (Above, Vec<Label>) {
    let layers = store.layers.get(..store.layers.len().min(MOST_LAYERS)).unwrap_or_default();
    // Three stand side by side, four two and two.
    let columns = if layers.len() == 4 { 2 } else { layers.len().clamp(1, 3) };
    let cell = WIDTH / columns as f64;
    let reach = |layer: &LayerShape| match layer.floor {
        Area::Disc(width) => (width, width),
        Area::Rectangle(length, width) => (length, width),
    };
    let across = layers.iter().map(|layer| reach(layer).0).fold(1.0, f64::max);
    let down = layers.iter().map(|layer| reach(layer).1).fold(1.0, f64::max);
    let scale = ((cell - 10.0) / across).min(if columns == 1 { 110.0 } else { 74.0 } / down);
    let row = down * scale + LINE + 7.0;
    let (mut discs, mut boxes, mut roots, mut signs, mut labels) =
        (Vec::new(), Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for (index, layer) in layers.iter().enumerate() {
        let middle = (index % columns) as f64 * cell + cell / 2.0;
        let centre = (index / columns) as f64 * row + 4.0 + down * scale / 2.0;
        match layer.floor {
            Area::Disc(width) => {
                discs.push(Oval::disc(middle, centre, width / 2.0 * scale));
            }
            Area::Rectangle(length, width) => boxes.push(Frame {
                x: tenth(middle - length / 2.0 * scale),
                y: tenth(centre - width / 2.0 * scale),
                width: tenth(length * scale),
                height: tenth(width * scale),
            }),
        }
        roots.extend(layer.roots.iter().map(|(x, y, angle)| Root {
            x: middle + x * scale,
            // Seen from above, the floor's second direction points up the page.
            y: centre - y * scale,
            reach: (store.root_length - store.root).max(0.0) / 2.0 * scale,
            turn: -angle,
        }));
        let foot = tenth(centre + down * scale / 2.0 + LINE);
        // The layer's number at its corner, and below it a root beside how many there are.
        labels.push(Label {
            x: tenth(middle - reach(layer).0 / 2.0 * scale),
            y: tenth(centre - down * scale / 2.0 + FONT_SIZE * 0.7),
            anchor: "start",
            text: words.count(index + 1),
        });
        signs.push(Root::level(middle - 10.0, foot - FONT_SIZE * 0.35, 16.0, 8.0));
        labels.push(Label {
            x: tenth(middle + 3.0),
            y: foot,
            anchor: "start",
            text: words.count(layer.roots.len()),
        });
    }
    let above = Above {
        width: WIDTH,
        height: tenth(row * layers.len().div_ceil(columns).max(1) as f64),
        font_size: FONT_SIZE,
        discs: path(discs),
        boxes,
        roots: lines(roots),
        thick: tenth(store.root * scale),
        signs: lines(signs),
    };
    (above, labels)
}

#[derive(Serialize)]
struct BedPlan {
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
fn bed(bed: &BedShape, words: &Words<'_>) -> Result<(BedPlan, Vec<Label>), WordingError> {
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
        Label {
            x: tenth((frame.x + right) / 2.0),
            y: tenth(foot + 10.0 + LINE),
            anchor: "middle",
            text: words.metres(bed.length)?,
        },
        Label {
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

#[derive(Serialize)]
struct FieldRows {
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
fn rows(of: &Rows, words: &Words<'_>) -> Result<(FieldRows, Vec<Label>), WordingError> {
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
            labels.push(Label {
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
    labels.push(Label {
        x: tenth(wide + 16.0),
        y: tenth((first + last) / 2.0 + FONT_SIZE * 0.35),
        anchor: "start",
        text: between_text,
    });
    drawn.mounds = path(mounds);
    Ok((drawn, labels))
}

#[derive(Serialize)]
struct Band {
    width: f64,
    height: f64,
    #[serde(rename = "letters")]
    font_size: f64,
    /// The band's parts by what fills them: `store`, `bed`, `field`.
    parts: BTreeMap<&'static str, Frame>,
    /// First days of months.
    months: Vec<f64>,
    /// Monthly checks.
    checks: Vec<f64>,
    /// From a day of the band down to its date.
    stems: Vec<Line>,
    /// Behind the dates, so that no stem runs through one.
    blanks: Vec<Frame>,
    top: f64,
    foot: f64,
}

/// The season from one harvest to the next, days to scale.
fn season(season: &SeasonBand, words: &Words<'_>) -> Result<(Band, Vec<Label>), WordingError> {
    const HIGH: f64 = 26.0;
    let days = (season.to - season.from).num_days().max(1) as f64;
    let backwards = words.pack.direction() == Direction::RightToLeft;
    let x = |day: NaiveDate| {
        let share = ((day - season.from).num_days() as f64 / days).clamp(0.0, 1.0);
        let share = if backwards { 1.0 - share } else { share };
        tenth(2.0 + share * (BAND - 4.0))
    };
    let (top, foot) = (LINE + 4.0, LINE + 4.0 + HIGH);
    let mut parts = BTreeMap::new();
    // The parts' names over their middles, and the dates.
    let mut labels = Vec::new();
    for (name, span) in [("store", season.store), ("bed", season.bed), ("field", Some(season.field))] {
        let Some(span) = span else { continue };
        let (one, other) = (x(span.from), x(span.to));
        let (left, right) = (one.min(other), one.max(other));
        parts.insert(name, Frame { x: left, y: top, width: tenth(right - left), height: HIGH });
        let text = words.label(&format!("season-{name}"))?;
        labels.push(Label { x: tenth((left + right) / 2.0), y: LINE - 2.0, anchor: "middle", text });
    }
    let mut months = Vec::new();
    let mut day = season.from.with_day(1);
    while let Some(first) = day.filter(|first| *first <= season.to) {
        if first > season.from {
            months.push(x(first));
        }
        day = first.checked_add_months(Months::new(1));
    }
    let mut stems = Vec::new();
    let mut blanks = Vec::new();
    let mut told = vec![("harvest", season.harvest), ("rains", season.rains), ("food", season.food)];
    told.extend(season.bed.map(|bed| ("sprout", bed.from)));
    told.sort_by_key(|(_, day)| *day);
    let mut levels: Vec<(f64, f64)> = Vec::new();
    for (name, day) in told {
        let text = format!("{} {}", words.label(&format!("season-on-{name}"))?, words.day(day)?);
        // As wide as its letters usually are; no font is asked.
        let half = text.chars().count() as f64 * FONT_SIZE * 0.3;
        let at = x(day).clamp(half, BAND - half);
        let level = levels.iter().position(|(from, to)| at - half > *to + 6.0 || at + half < *from - 6.0);
        let level = level.unwrap_or(levels.len());
        match levels.get_mut(level) {
            Some((from, to)) => (*from, *to) = (from.min(at - half), to.max(at + half)),
            None => levels.push((at - half, at + half)),
        }
        let y = tenth(foot + 8.0 + LINE * (level + 1) as f64);
        stems.push(Line { x1: x(day), y1: foot, x2: x(day), y2: tenth(y - FONT_SIZE) });
        blanks.push(Frame {
            x: tenth(at - half),
            y: tenth(y - FONT_SIZE * 0.9),
            width: tenth(2.0 * half),
            height: tenth(FONT_SIZE * 1.2),
        });
        labels.push(Label { x: tenth(at), y, anchor: "middle", text });
    }
    let band = Band {
        width: BAND,
        height: tenth(foot + 14.0 + LINE * levels.len() as f64),
        font_size: FONT_SIZE,
        parts,
        months,
        checks: season.checks.iter().map(|day| x(*day)).collect(),
        stems,
        blanks,
        top,
        foot,
    };
    Ok((band, labels))
}
