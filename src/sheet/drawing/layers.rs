//! The layers of a container from above.

use serde::Serialize;

use super::parts::{FONT_SIZE, Frame, LINE, Oval, Root, WIDTH, lines, path, tenth};
use super::words::{Caption, Words};
use crate::guidance::shapes::{Area, LayerShape, StoreShape};
use crate::language::WordingError;

/// Layers drawn of one container; those above look like the topmost.
const MOST_LAYERS: usize = 6;

#[derive(Serialize)]
pub(super) struct Above {
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
pub(super) fn draw(store: &StoreShape, words: &Words<'_>) -> Result<(Above, Vec<Caption>), WordingError> {
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
        labels.push(Caption {
            x: tenth(middle - reach(layer).0 / 2.0 * scale),
            y: tenth(centre - down * scale / 2.0 + FONT_SIZE * 0.7),
            anchor: "start",
            text: words.count(index + 1),
        });
        signs.push(Root::level(middle - 10.0, foot - FONT_SIZE * 0.35, 16.0, 8.0));
        labels.push(Caption {
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
    Ok((above, labels))
}
