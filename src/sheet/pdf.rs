//! PDF by Typst, compiled in this process.
//!
//! A template asks for `/facts.json` and gets the facts; pictures come from the
//! templates folder, drawings from the facts. Nothing else can be reached from it.

use std::borrow::Cow;
use std::collections::{BTreeMap, HashMap};
use std::sync::Mutex;

use serde::Serialize;
use typst::diag::{FileError, FileResult, Severity, SourceDiagnostic};
use typst::foundations::{Bytes, Content, Datetime, Duration, Label, Selector, Smart, Value};
use typst::introspection::Introspector as _;
use typst::layout::{Abs, Frame, FrameItem, Point, Size, Transform};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::{LazyHash, PicoStr};
use typst::{Library, LibraryExt, World, WorldExt};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use super::{Facts, SheetError};
use crate::data::Data;

const FACTS: &str = "/facts.json";
/// The label of what does not fit.
const OVERFLOW: &str = "overflow";

/// What a case is set as.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// Two pages of A4 that a farm takes home.
    Farm,
    /// Every step in full, for whoever holds the meeting.
    Guide,
    /// A3 for the wall, month by month.
    Calendar,
    /// One side of A4 that folds to eight small pages.
    Card,
    /// A4 to fill in by pen at the checks of the store.
    Record,
}

impl Paper {
    /// Its template.
    pub fn template(self) -> &'static str {
        match self {
            Paper::Farm => "farm.typ",
            Paper::Guide => "guide.typ",
            Paper::Calendar => "calendar.typ",
            Paper::Card => "card.typ",
            Paper::Record => "record.typ",
        }
    }
}

/// What the template of a booklet sees.
#[derive(Serialize)]
struct Booklet<'a> {
    farms: &'a [Facts],
    /// The farms by name: each with its place among `farms`.
    index: Vec<(usize, &'a str)>,
}

fn drawn(facts: &Facts) -> impl Iterator<Item = (String, Vec<u8>)> {
    facts.drawings.iter().map(|of| (of.file.clone(), of.svg.clone().into_bytes()))
}

/// Sets sheets; keeps fonts and library between them.
pub struct Printer<'d> {
    data: &'d dyn Data,
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    fonts: Vec<Font>,
    /// By code point, whether some font has the letter.
    letters: Vec<bool>,
    /// Templates and pictures read so far.
    read: Mutex<HashMap<FileId, Bytes>>,
    /// Templates parsed so far.
    parsed: Mutex<HashMap<FileId, Source>>,
}

impl std::fmt::Debug for Printer<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Printer").field("fonts", &self.fonts.len()).finish_non_exhaustive()
    }
}

/// A sheet as PDF.
#[derive(Clone, PartialEq)]
pub struct Pdf {
    /// The file.
    pub bytes: Vec<u8>,
    /// Its pages.
    pub pages: usize,
    /// The words on it, a line for each run of letters, in the order in which they are read.
    pub text: String,
    /// Texts and pictures that reach beyond the paper; none on a good sheet.
    pub overflows: Vec<String>,
}

impl std::fmt::Debug for Pdf {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let bytes = self.bytes.len();
        f.debug_struct("Pdf")
            .field("bytes", &bytes)
            .field("pages", &self.pages)
            .field("overflows", &self.overflows)
            .finish()
    }
}

impl<'d> Printer<'d> {
    /// Loads the fonts.
    ///
    /// # Errors
    /// No font at all.
    pub fn new(data: &'d dyn Data) -> Result<Printer<'d>, SheetError> {
        let files =
            data.list("fonts").into_iter().filter(|name| name.ends_with(".ttf") || name.ends_with(".otf"));
        let fonts: Vec<Font> = files
            .filter_map(|name| data.read(&format!("fonts/{name}")).map(Cow::into_owned))
            .flat_map(|bytes| Font::iter(Bytes::new(bytes)).collect::<Vec<_>>())
            .collect();
        if fonts.is_empty() {
            return Err(SheetError::Missing("a font in fonts/".to_owned()));
        }
        Ok(Printer {
            data,
            library: LazyHash::new(Library::default()),
            book: LazyHash::new(FontBook::from_fonts(&fonts)),
            letters: letters_of(&fonts),
            fonts,
            read: Mutex::default(),
            parsed: Mutex::default(),
        })
    }

    /// Sets a case on paper.
    ///
    /// ```
    /// use kabla::sheet::{Facts, Paper, Printer};
    /// # use kabla::{case, data::Embedded, guidance, language::Pack, plan};
    /// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    /// # let (case, _) = case::read("farm.toml", case::Starter::Farm.text(), &no_files).unwrap();
    /// # let statements = guidance::tell(&case, &plan::make(&case).unwrap());
    /// # let pack = Pack::load(&Embedded, "en").unwrap();
    /// let pdf = Printer::new(&Embedded)?.print(Paper::Farm, &Facts::of(&pack, &statements)?)?;
    /// assert!(pdf.bytes.starts_with(b"%PDF-"));
    /// assert!(pdf.overflows.is_empty());
    /// # Ok::<(), kabla::sheet::SheetError>(())
    /// ```
    ///
    /// # Errors
    /// As [`Printer::set`].
    pub fn print(&self, paper: Paper, facts: &Facts) -> Result<Pdf, SheetError> {
        let charts = super::html::charts(facts, self.data)?.into_iter();
        let charts = charts.map(|(subject, svg)| (format!("/charts/{subject}.svg"), svg.into_bytes()));
        self.set(paper.template(), facts, charts.chain(drawn(facts)).collect())
    }

    /// Sets the sheets of many farms in one, with an index by name. The
    /// words beside them are those of the first.
    ///
    /// # Errors
    /// As [`Printer::set`].
    pub fn booklet(&self, mut farms: Vec<Facts>) -> Result<Pdf, SheetError> {
        for (number, farm) in farms.iter_mut().enumerate() {
            for drawing in &mut farm.drawings {
                drawing.file = format!("/farms/{number}{}", drawing.file);
            }
        }
        let drawings = farms.iter().flat_map(drawn).collect();
        let mut index: Vec<(usize, &str)> = farms.iter().map(|farm| farm.name.as_str()).enumerate().collect();
        index.sort_by_key(|(_, name)| name.to_lowercase());
        self.set("booklet.typ", &Booklet { farms: &farms, index }, drawings)
    }

    /// Sets what a template of the templates folder makes of `facts`, as a
    /// tagged PDF/UA-1. `drawings` are files, by their path from the
    /// template, that are made for these facts.
    ///
    /// # Errors
    /// What the template, or the standard, finds wrong: with file and line.
    pub fn set(
        &self,
        template: &str,
        facts: &impl Serialize,
        drawings: BTreeMap<String, Vec<u8>>,
    ) -> Result<Pdf, SheetError> {
        let main = format!("/{template}");
        let inner = |error: serde_json::Error| SheetError::Template {
            file: FACTS.to_owned(),
            message: error.to_string(),
        };
        let drawings = drawings.into_iter().map(|(path, bytes)| (path, Bytes::new(bytes))).collect();
        let written = serde_json::to_string(facts).map_err(inner)?;
        // JSON writes letters as they are, but for those that no text should have; and fonts have what it adds.
        if written.contains("\\u") || !written.chars().all(|letter| self.sets(letter)) {
            self.check_letters(&serde_json::to_value(facts).map_err(inner)?)?;
        }
        let world =
            SheetWorld { printer: self, facts: Bytes::from_string(written), drawings, main: id(&main)? };
        let compiled = typst::compile::<PagedDocument>(&world);
        let document = compiled.output.map_err(|errors| world.broken(&errors))?;
        if let Some(warning) = compiled.warnings.first() {
            return Err(world.broken(std::slice::from_ref(warning)));
        }
        let standards = PdfStandards::new(&[PdfStandard::Ua_1]).map_err(|error| SheetError::Template {
            file: main.clone(),
            message: error.message().to_string(),
        })?;
        let options = PdfOptions {
            standards,
            creator: Smart::Custom(Some("Kabla".to_owned())),
            ..PdfOptions::default()
        };
        let bytes = typst_pdf::pdf(&document, &options).map_err(|errors| world.broken(&errors))?;
        let (text, beyond) = seen(&document);
        // What a template says of itself says more.
        let overflows = noted(&document).into_iter().chain(beyond).collect();
        // Sheets differ; what Typst remembers of old ones only takes memory.
        typst::comemo::evict(2);
        Ok(Pdf { bytes, pages: document.pages().len(), text, overflows })
    }
}

impl Printer<'_> {
    /// Whether a font has a letter.
    pub fn covers(&self, letter: char) -> bool {
        self.letters.get(letter as usize).is_some_and(|has| *has)
    }

    /// Whether a letter can be set.
    fn sets(&self, letter: char) -> bool {
        letter.is_whitespace() || self.covers(letter)
    }

    /// Finds the first text with letters that no font has.
    fn check_letters(&self, facts: &serde_json::Value) -> Result<(), SheetError> {
        match facts {
            serde_json::Value::String(text) => {
                let mut letters: Vec<char> = text.chars().filter(|letter| !self.sets(*letter)).collect();
                letters.dedup();
                if letters.is_empty() {
                    Ok(())
                } else {
                    Err(SheetError::NoFont { letters: letters.iter().collect(), text: text.clone() })
                }
            }
            serde_json::Value::Array(items) => items.iter().try_for_each(|item| self.check_letters(item)),
            serde_json::Value::Object(fields) => {
                fields.values().try_for_each(|field| self.check_letters(field))
            }
            _ => Ok(()),
        }
    }
}

/// By code point, whether some font has the letter. Fonts themselves are slow to tell.
fn letters_of(fonts: &[Font]) -> Vec<bool> {
    let mut letters = Vec::new();
    for letter in fonts.iter().flat_map(|font| font.info().coverage.iter()) {
        let at = letter as usize;
        if letters.len() <= at {
            letters.resize(at + 1, false);
        }
        if let Some(has) = letters.get_mut(at) {
            *has = true;
        }
    }
    letters
}

fn id(path: &str) -> Result<FileId, SheetError> {
    let wrong = |error: &dyn std::fmt::Debug| SheetError::Template {
        file: path.to_owned(),
        message: format!("{error:?}"),
    };
    let path = VirtualPath::new(path).map_err(|error| wrong(&error))?;
    Ok(RootedPath::new(VirtualRoot::Project, path).intern())
}

/// What Typst may read for one sheet.
struct SheetWorld<'a> {
    printer: &'a Printer<'a>,
    facts: Bytes,
    /// Pictures drawn from the facts.
    drawings: BTreeMap<String, Bytes>,
    main: FileId,
}

/// What was made for a file before, or is made now and kept for the next sheet.
fn kept<T: Clone>(
    all: &Mutex<HashMap<FileId, T>>,
    id: FileId,
    make: impl FnOnce() -> FileResult<T>,
) -> FileResult<T> {
    let known = all.lock().ok().and_then(|all| all.get(&id).cloned());
    if let Some(known) = known {
        return Ok(known);
    }
    let made = make()?;
    if let Ok(mut all) = all.lock() {
        all.insert(id, made.clone());
    }
    Ok(made)
}

impl SheetWorld<'_> {
    fn broken(&self, diagnostics: &[SourceDiagnostic]) -> SheetError {
        let mut files: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for diagnostic in diagnostics {
            let id = diagnostic.span.id();
            let file = id.unwrap_or(self.main).vpath().get_with_slash().to_owned();
            let source = id.and_then(|id| self.source(id).ok());
            let line = self.range(diagnostic.span).zip(source).map(|(range, source)| {
                format!("line {}: ", crate::finding::line_of(source.text(), range.start))
            });
            let kind = if diagnostic.severity == Severity::Warning { "warning: " } else { "" };
            let hints =
                diagnostic.hints.iter().map(|hint| format!(" (hint: {})", hint.v)).collect::<String>();
            files.entry(file).or_default().push(format!(
                "{}{kind}{}{hints}",
                line.unwrap_or_default(),
                diagnostic.message
            ));
        }
        let (file, messages) = files.into_iter().next().unwrap_or_default();
        SheetError::Template {
            file: self.printer.data.shown(&format!("templates{file}")),
            message: messages.join("; "),
        }
    }

    fn bytes(&self, id: FileId) -> FileResult<Bytes> {
        let path = id.vpath().get_with_slash();
        if path == FACTS {
            return Ok(self.facts.clone());
        }
        if let Some(drawing) = self.drawings.get(path) {
            return Ok(drawing.clone());
        }
        kept(&self.printer.read, id, || {
            let bytes = self.printer.data.read(&format!("templates{path}"));
            bytes.map(|bytes| Bytes::new(bytes.into_owned())).ok_or_else(|| FileError::NotFound(path.into()))
        })
    }
}

impl World for SheetWorld<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &self.printer.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.printer.book
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        kept(&self.printer.parsed, id, || {
            let bytes = self.bytes(id)?;
            let text = std::str::from_utf8(&bytes).map_err(|_| FileError::InvalidUtf8)?;
            Ok(Source::new(id, text.to_owned()))
        })
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        self.bytes(id)
    }

    fn font(&self, index: usize) -> Option<Font> {
        self.printer.fonts.get(index).cloned()
    }

    /// A sheet shows the case's dates, never the clock's.
    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        None
    }
}

/// What a template says of itself: `metadata("page 3") <overflow>` where a place is too small for its content.
fn noted(document: &PagedDocument) -> Vec<String> {
    let Some(label) = Label::new(PicoStr::intern(OVERFLOW)) else { return Vec::new() };
    let notes = document.introspector().query(&Selector::Label(label));
    let text = |note: &Content| match note.get_by_name("value") {
        Ok(Value::Str(text)) => text.to_string(),
        _ => "a place too small".to_owned(),
    };
    notes.iter().map(text).collect()
}

/// The words on all pages, and the texts and pictures that reach beyond the paper.
fn seen(document: &PagedDocument) -> (String, Vec<String>) {
    let (mut words, mut beyond) = (String::new(), Vec::new());
    for (page, number) in document.pages().iter().zip(1..) {
        let paper = page.frame.size();
        let slack = Abs::pt(0.5);
        visit(&page.frame, Transform::identity(), &mut |text, corners| {
            if let Some(text) = text {
                words.push_str(text);
                words.push('\n');
            }
            let inside = corners.iter().all(|at| {
                let along = at.x >= -slack && at.x <= paper.x + slack;
                along && at.y >= -slack && at.y <= paper.y + slack
            });
            if !inside {
                beyond.push(format!("page {number}: {}", text.unwrap_or("picture")));
            }
        });
    }
    (words, beyond)
}

/// Shows each text, and each picture as no text, with its corners on the page.
fn visit(frame: &Frame, placed: Transform, see: &mut impl FnMut(Option<&str>, [Point; 4])) {
    for (at, item) in frame.items() {
        let corners = |at: Point, size: Size| {
            let (right, foot) = (Point::with_x(size.x), Point::with_y(size.y));
            [at, at + right, at + foot, at + right + foot].map(|corner| corner.transform(placed))
        };
        match item {
            FrameItem::Group(group) => {
                let moved = Transform::translate(at.x, at.y).pre_concat(group.transform);
                visit(&group.frame, placed.pre_concat(moved), see);
            }
            // Text is placed by its baseline.
            FrameItem::Text(text) => {
                let above = Point::with_y(text.size);
                see(Some(&text.text), corners(*at - above, Size::new(text.width(), text.size)));
            }
            FrameItem::Image(_, size, _) => see(None, corners(*at, *size)),
            _ => {}
        }
    }
}
