//! HTML and plain text by Tera. Names ending in `.html` are escaped.

use std::sync::Arc;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde::Serialize;
use tera::{Context, Tera};

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

fn read(data: &dyn Data, path: &str) -> Result<String, SheetError> {
    let bytes = data.read(path).ok_or_else(|| SheetError::Missing(path.to_owned()))?;
    String::from_utf8(bytes.into_owned())
        .map_err(|_| SheetError::Template { file: data.shown(path), message: "is not UTF-8 text".to_owned() })
}

/// A template read by Tera; remembered, since reading takes longer than filling it in.
#[comemo::memoize]
fn parsed(name: &str, text: &str) -> Result<Arc<Tera>, Arc<tera::Error>> {
    let mut tera = Tera::default();
    tera.autoescape_on(vec![".html", ".svg"]);
    tera.add_raw_template(name, text).map_err(Arc::new)?;
    Ok(Arc::new(tera))
}

/// What a template of the templates folder makes of `page`; escaped where its
/// name ends in `.html` or `.svg`.
///
/// # Errors
/// A missing or broken template.
pub fn render(name: &str, page: &impl Serialize, data: &dyn Data) -> Result<Vec<u8>, SheetError> {
    let path = format!("templates/{name}");
    let text = read(data, &path)?;
    let broken =
        |error: &tera::Error| SheetError::Template { file: data.shown(&path), message: told(error, &text) };
    let tera = parsed(name, &text).map_err(|error| broken(&error))?;
    let context = Context::from_serialize(page).map_err(|error| broken(&error))?;
    let rendered = tera.render(name, &context).map_err(|error| broken(&error))?;
    Ok(rendered.into_bytes())
}

/// What went wrong, with its line where it can be found.
fn told(error: &tera::Error, template: &str) -> String {
    // Tera tells it in the last of the causes, not on top.
    let mut cause: &dyn std::error::Error = error;
    while let Some(deeper) = cause.source() {
        cause = deeper;
    }
    let message = cause.to_string();
    // A slip in the template comes with a picture of its place, a name without a value in quotes.
    if let Some((_, place)) = message.split_once("--> ") {
        let line = place.split(':').next().unwrap_or_default();
        let what = message.rsplit("= ").next().unwrap_or_default().trim();
        return format!("line {line}: {what}");
    }
    let name = message.split('`').nth(1).filter(|name| !name.is_empty());
    let line = name.and_then(|name| template.find(name)).map(|at| crate::finding::line_of(template, at));
    line.map_or_else(|| message.clone(), |line| format!("line {line}: {message}"))
}
