//! The texts of a pack, and of the language that all others are translated from.

use super::limits::within_limits;
use super::names;
use crate::data::{Data, Embedded};

/// The files with texts.
pub const TEXT_FILES: [&str; 2] = ["written.ftl", "spoken.ftl"];
/// The language that all others are translated from.
pub const SOURCE: &str = "en";

/// A file of a pack; of the source language the program's own where `data` has none. `None` where there is none that
/// can be read. Texts have the names of CLDR that
/// they do not give themselves.
pub(super) fn text_of(data: &dyn Data, tag: &str, file: &str) -> Option<String> {
    let path = format!("locales/{tag}/{file}");
    let own = data.read(&path).or_else(|| (tag == SOURCE).then(|| Embedded.read(&path)).flatten())?;
    let text = within_limits(&path, String::from_utf8(own.into_owned()).ok()?).ok()?;
    Some(if TEXT_FILES.contains(&file) { names::with_names(tag, file, text) } else { text })
}
