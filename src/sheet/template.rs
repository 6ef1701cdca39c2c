//! Templates filled in by Tera. Names ending in `.html` or `.svg` are escaped.

use std::sync::Arc;

use serde::Serialize;
use tera::{Context, Tera};

use super::SheetError;
use crate::data::Data;

/// A file of the templates folder as text.
pub(super) fn read(data: &dyn Data, path: &str) -> Result<String, SheetError> {
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
