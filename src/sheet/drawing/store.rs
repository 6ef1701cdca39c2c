//! A container cut through its middle.

use serde::Serialize;

use super::parts::{FONT_SIZE, Line, Oval, WIDTH, across, path, points, tenth};
use super::words::{Caption, Words};
use crate::guidance::shapes::StoreShape;
use crate::language::WordingError;

#[derive(Serialize)]
pub(super) struct Side {
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
pub(super) fn draw(store: &StoreShape, words: &Words<'_>) -> Result<(Side, Vec<Caption>), WordingError> {
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
        labels.push(Caption { x: 10.0, y: tenth(centre + FONT_SIZE * 0.35), anchor: "middle", text });
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
        labels.push(Caption {
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
