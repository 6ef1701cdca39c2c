//! HTML and plain text.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde::Serialize;

use super::template::{read, render};
use super::{Facts, SheetError, TableFacts};
use crate::data::Data;

/// What the templates see: the facts, and each picture's drawing by its subject.
#[derive(Serialize)]
struct Page<'a> {
    #[serde(flatten)]
    facts: &'a Facts,
    pictures: std::collections::BTreeMap<&'a str, String>,
    charts: std::collections::BTreeMap<&'a str, String>,
    /// Each drawing by its name.
    drawn: std::collections::BTreeMap<&'a str, String>,
    fonts: Vec<WebFont>,
}

/// A font that goes with the page, for letters that not every phone has.
#[derive(Serialize)]
struct WebFont {
    /// The code points it is for, as CSS writes them, e.g. `U+1200-137F`.
    range: String,
    /// WOFF2 in Base64.
    data: String,
}

/// The sheet as one HTML page that needs nothing else.
///
/// # Errors
/// A missing or broken template or picture.
pub fn html(facts: &Facts, data: &dyn Data) -> Result<Vec<u8>, SheetError> {
    let mut pictures = std::collections::BTreeMap::new();
    let entries = || facts.steps.iter().chain(&facts.cautions);
    let measures = entries().flat_map(|entry| &entry.measures).map(|measure| measure.picture);
    for name in entries().map(|entry| entry.subject).chain(measures) {
        pictures.insert(name, read(data, &format!("templates/pictures/{name}.svg"))?);
    }
    let drawn = facts.drawings.iter().map(|of| (of.name.as_str(), of.worded())).collect();
    let charts = charts(facts, data)?;
    render("sheet.html", &Page { facts, pictures, charts, drawn, fonts: web_fonts(facts, data) }, data)
}

/// The fonts of `fonts/web` with letters that the sheet has; each file is named after its code points.
fn web_fonts(facts: &Facts, data: &dyn Data) -> Vec<WebFont> {
    let text = serde_json::to_string(facts).unwrap_or_default();
    let number = |digits: &str| u32::from_str_radix(digits, 16).ok();
    let wanted = |name: String| {
        let range = name.strip_suffix(".woff2")?;
        let (from, to) = range.strip_prefix("U+")?.split_once('-')?;
        let points = number(from)?..=number(to)?;
        let bytes = text
            .chars()
            .any(|c| points.contains(&u32::from(c)))
            .then(|| data.read(&format!("fonts/web/{name}")))??;
        Some(WebFont { range: range.to_owned(), data: STANDARD.encode(bytes) })
    };
    data.list("fonts/web").into_iter().filter_map(wanted).collect()
}

/// The pictures of tables, by subject: drawn from their numbers by `pictures/bars.svg`.
pub(super) fn charts<'f>(
    facts: &'f Facts,
    data: &dyn Data,
) -> Result<std::collections::BTreeMap<&'f str, String>, SheetError> {
    let drawn = facts.tables.iter().filter(|table| !table.bars.is_empty());
    drawn.map(|table| Ok((table.subject, picture(table, data)?))).collect()
}

fn picture(table: &TableFacts, data: &dyn Data) -> Result<String, SheetError> {
    let bytes = render("pictures/bars.svg", table, data)?;
    String::from_utf8(bytes).map_err(|_| SheetError::Missing("pictures/bars.svg".to_owned()))
}

/// The sheet as plain text.
///
/// # Errors
/// A missing or broken template.
pub fn text(facts: &Facts, data: &dyn Data) -> Result<Vec<u8>, SheetError> {
    render("sheet.txt", facts, data)
}
