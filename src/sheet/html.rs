//! HTML and plain text by Tera. Names ending in `.html` are escaped.

use std::sync::Arc;

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
    render("sheet.html", &Page { facts, pictures, charts: charts(facts, data)?, drawn }, data)
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
