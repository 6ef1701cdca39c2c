//! `kabla plan`

use std::path::Path;

use crate::app::{self, Block, Data, Error, Outline, Overrides, Table};

pub(super) fn run(
    data: &dyn Data,
    case: &Path,
    language: &str,
    (overrides, farm): (Overrides, Option<&str>),
    json: bool,
) -> Result<(), Error> {
    if json {
        return super::print_json(&app::plan_json(case, overrides, farm)?);
    }
    let outline = app::outline(data, case, language, overrides, farm)?;
    if let Some(name) = &outline.lacking {
        eprintln!(
            "note: {name} has no words for plans yet, so they stand in English; kabla language check {language} lists what is missing"
        );
    }
    super::print(&in_words(&outline))
}

/// How wide a line is where the terminal does not say.
const WIDTH: usize = 110;
/// The least room for a text beside its row.
const LEAST_ROOM: usize = 30;
/// Spaces between two columns.
const GAP: &str = "  ";

/// The plan as a short calendar, the amounts with their reasons, the remarks last.
fn in_words(outline: &Outline) -> String {
    let width = std::env::var("COLUMNS").ok().and_then(|columns| columns.parse().ok()).unwrap_or(WIDTH);
    let mut page = Page { text: String::new(), width };
    page.line(&outline.title);
    page.beside(&format!("{}{} ", outline.rains.label, outline.colon), &outline.rains.text);
    page.line("");
    let (band, signs) = super::band::season(&outline.band);
    page.text.push_str(&band);
    page.beside("", &signs);
    for block in &outline.blocks {
        page.block(block, &outline.colon);
    }
    if !outline.findings.is_empty() || !outline.remarks.is_empty() {
        page.line("");
    }
    for finding in &outline.findings {
        page.line(&finding.to_string());
    }
    let colon = &outline.colon;
    for remark in &outline.remarks {
        let field = remark.field.map(|field| format!("{field}{colon} ")).unwrap_or_default();
        page.line(&format!("{}{colon} {field}{}", remark.severity, remark.message));
        page.line(&format!("    {}{colon} {}", remark.advice.label, remark.advice.text));
    }
    page.text
}

/// The text so far.
struct Page {
    text: String,
    width: usize,
}

impl Page {
    fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    /// An empty line and what there is of a block.
    fn block(&mut self, block: &Block, colon: &str) {
        self.line("");
        if !block.heading.is_empty() {
            self.line(&block.heading);
        }
        for line in &block.lines {
            self.beside(&format!("{}{colon} ", line.label), &line.text);
        }
        if !block.table.rows.is_empty() {
            self.table(&block.table);
        }
    }

    /// Columns as wide as what they hold; numbers stand to the right, and the last column goes on under itself.
    fn table(&mut self, table: &Table) {
        let heads: Vec<String> = table.columns.iter().map(|(head, _)| head.clone()).collect();
        let rows = || [&heads].into_iter().chain(&table.rows);
        let width = |column: usize| {
            let cells = rows().filter_map(|row| row.get(column));
            cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
        };
        for row in rows() {
            let mut line = String::new();
            for (column, ((_, numbers), cell)) in table.columns.iter().zip(row).enumerate() {
                let last = column + 1 == table.columns.len();
                match (last, *numbers) {
                    (true, false) => self.beside(&line, cell),
                    (_, true) => line.push_str(&format!("{cell:>width$}{GAP}", width = width(column))),
                    (false, false) => line.push_str(&format!("{cell:<width$}{GAP}", width = width(column))),
                }
            }
            if table.columns.last().is_some_and(|(_, numbers)| *numbers) {
                self.line(&line);
            }
        }
    }

    /// A row with its text, which goes on under itself.
    fn beside(&mut self, row: &str, text: &str) {
        let indent = row.chars().count();
        let (indent, room) = match self.width.checked_sub(indent).filter(|room| *room >= LEAST_ROOM) {
            Some(room) => (indent, room),
            None => (4, self.width.saturating_sub(4).max(LEAST_ROOM)),
        };
        let mut left = row.to_owned();
        if indent < row.chars().count() {
            self.line(row);
            left = " ".repeat(indent);
        }
        // Dates have hyphens, and stay whole.
        let options = textwrap::Options::new(room).word_splitter(textwrap::WordSplitter::NoHyphenation);
        for line in text.trim_end().lines().flat_map(|part| textwrap::wrap(part, &options)) {
            self.line(&format!("{left}{line}"));
            left = " ".repeat(indent);
        }
    }
}
