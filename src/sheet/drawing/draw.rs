//! The drawings of a plan, one after the other.

use serde::Serialize;

use super::parts::{BAND, FONT_SIZE, HALF, WIDTH};
use super::words::{Caption, Words};
use super::{bed, layers, rows, season, store};
use crate::catalogue::catalogue;
use crate::data::Data;
use crate::guidance::shapes::Shapes;
use crate::language::{Label, Pack};
use crate::sheet::SheetError;
use crate::sheet::template::render;

catalogue! {
    /// What is drawn of a plan.
    pub enum DrawingKind: DrawingEntry {
        /// Its title.
        title: Label,
        /// What it shows, in words.
        alt: Label,
        /// The template that paints it.
        template: &'static str,
    }
    /// The season as a band of days.
    Season = "season" {
        title: Label::DrawingSeason,
        alt: Label::DrawingSeasonAlt,
        template: "drawings/season.svg",
    };
    /// A container cut through its middle.
    Store = "store" {
        title: Label::DrawingStore,
        alt: Label::DrawingStoreAlt,
        template: "drawings/store.svg",
    };
    /// Its layers from above.
    Layers = "layers" {
        title: Label::DrawingLayers,
        alt: Label::DrawingLayersAlt,
        template: "drawings/layers.svg",
    };
    /// The bed from above.
    Bed = "bed" {
        title: Label::DrawingBed,
        alt: Label::DrawingBedAlt,
        template: "drawings/bed.svg",
    };
    /// How cuttings stand in the field.
    Rows = "rows" {
        title: Label::DrawingRows,
        alt: Label::DrawingRowsAlt,
        template: "drawings/rows.svg",
    };
}

/// A drawing of a plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Drawing {
    /// The name of its kind, with a number where there are more.
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
    pub labels: Vec<Caption>,
    /// All of it but its words, SVG: paper sets those in its own letters.
    #[serde(skip)]
    pub svg: String,
}

impl Drawing {
    /// The drawing with its words, SVG.
    pub fn worded(&self) -> String {
        let word = |label: &Caption| {
            let Caption { x, y, anchor, text } = label;
            let text = tera::escape_html(text);
            format!("<text x=\"{x}\" y=\"{y}\" text-anchor=\"{anchor}\">{text}</text>\n")
        };
        let words: String = self.labels.iter().map(word).collect();
        let end = self.svg.rfind("</svg>").unwrap_or(self.svg.len());
        let (shapes, end) = self.svg.split_at(end);
        format!("{shapes}{words}{end}")
    }
}

/// Kinds of containers that are drawn; more would fill the paper.
const MOST_STORES: usize = 2;

/// Draws what the shapes of a plan show, in the pack's words.
///
/// # Errors
/// A wording or a template that is missing or broken.
pub fn drawings(pack: &Pack, shapes: &Shapes, data: &dyn Data) -> Result<Vec<Drawing>, SheetError> {
    let words = Words { pack, filled: pack.with(&shapes.values) };
    let mut sheet = Sheet { words: &words, data, drawings: Vec::new() };
    for kind in DrawingKind::ALL {
        match kind {
            DrawingKind::Season => sheet.add(kind, 0, BAND, season::draw(&shapes.season, &words)?)?,
            DrawingKind::Store => {
                for (number, shape) in shapes.stores.iter().take(MOST_STORES).enumerate() {
                    sheet.add(kind, number, WIDTH, store::draw(shape, &words)?)?;
                    sheet.add(DrawingKind::Layers, number, WIDTH, layers::draw(shape, &words)?)?;
                }
            }
            // Each stands behind its container.
            DrawingKind::Layers => {}
            DrawingKind::Bed => sheet.add(kind, 0, HALF, bed::draw(&shapes.bed, &words)?)?,
            DrawingKind::Rows => sheet.add(kind, 0, HALF, rows::draw(&shapes.rows, &words)?)?,
        }
    }
    Ok(sheet.drawings)
}

/// The drawings of one plan as they are made.
struct Sheet<'a> {
    words: &'a Words<'a>,
    data: &'a dyn Data,
    drawings: Vec<Drawing>,
}

impl Sheet<'_> {
    /// Adds the one of this number from 0 among those of a kind.
    fn add(
        &mut self,
        kind: DrawingKind,
        number: usize,
        width: f64,
        (shapes, labels): (impl Serialize, Vec<Caption>),
    ) -> Result<(), SheetError> {
        let name = match number {
            0 => kind.name().to_owned(),
            _ => format!("{}-{}", kind.name(), number + 1),
        };
        let svg = String::from_utf8(render(kind.template(), &shapes, self.data)?)
            .map_err(|_| SheetError::Missing(kind.template().to_owned()))?;
        self.drawings.push(Drawing {
            file: format!("/drawings/{name}.svg"),
            name,
            title: self.words.label(kind.title())?,
            alt: self.words.label(kind.alt())?,
            width,
            font_size: FONT_SIZE,
            labels,
            svg,
        });
        Ok(())
    }
}
