//! What a presenter needs of a radio segment: what is heard when, what to read live, what to take care of.

use serde::Serialize;

use super::Row;

/// The facts of a presenter's script, all in the pack's words.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Script {
    /// Language tag.
    pub language: String,
    /// `ltr` or `rtl`.
    pub direction: &'static str,
    /// The script's title.
    pub title: String,
    /// Whose segment it is: the name of the zone, farm or group.
    pub name: String,
    /// Headings of the script's parts.
    pub labels: ScriptLabels,
    /// Week, length, voice and the like.
    pub head: Vec<Row>,
    /// What its user must know before it goes on air.
    pub notices: Vec<String>,
    /// Lines to be read live before the segment.
    pub intro: String,
    /// Lines to be read live after it.
    pub outro: String,
    /// What is heard, in order.
    pub passages: Vec<Passage>,
    /// What there was no time for, and phrases without a recording; each list that is not empty.
    pub lists: Vec<Listed>,
    /// How far the wording may be trusted.
    pub status: String,
}

/// Headings of a script's parts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ScriptLabels {
    /// Of what is heard.
    pub said: String,
    /// Of the lines to be read before it.
    pub intro: String,
    /// Of the lines to be read after it.
    pub outro: String,
    /// Beside a caution.
    pub caution: String,
    /// Before a page number.
    pub page: String,
    /// The sign between a label and its value.
    pub colon: String,
}

/// Something that is heard.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Passage {
    /// When it begins, in minutes and seconds.
    pub from: String,
    /// When it ends.
    pub to: String,
    /// What it is about; empty for opening and closing words.
    pub title: String,
    /// The words; empty for music.
    pub text: String,
    /// Whether it is a caution.
    pub caution: bool,
}

/// A list with its heading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Listed {
    /// The heading.
    pub title: String,
    /// The items.
    pub items: Vec<String>,
}
