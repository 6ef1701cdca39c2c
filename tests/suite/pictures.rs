//! Pictures: one for each step and caution, plain enough for a photocopy.

use std::borrow::Cow;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::process::Command;

use kabla::data::{Data, Embedded};
use kabla::guidance::{Caution, tell};
use kabla::language::Pack;
use kabla::plan::{StepKind, make};
use kabla::sheet::{Facts, Paper, Printer};
use sha2::{Digest as _, Sha256};

use crate::examples;
use crate::outside::program;

/// Pictures of body measures, vessels, the season and marks, which stand beside words of their own.
const BESIDE_WORDS: [&str; 18] = [
    "measure-hand",
    "measure-finger",
    "measure-thumb",
    "measure-jerrycan",
    "measure-basin",
    "measure-bundle",
    "measure-step",
    "season-dry",
    "season-rain",
    "season-harvest",
    "season-food",
    "season-store",
    "season-bed",
    "soil-moist",
    "calendar-day",
    "mark-draft",
    "tick-box",
    "tick-done",
];

/// The side of a picture as it is written, and what a unit of that is on paper: 3 cm is 480 units.
const VIEW_BOX: &str = "viewBox=\"0 0 480 480\"";
const POINTS_A_UNIT: f64 = 30.0 / 25.4 * 72.0 / 480.0;
const MOST_BYTES: usize = 8192;
const LEAST_POINTS: f64 = 0.5;

fn subjects() -> Vec<&'static str> {
    StepKind::ALL.map(StepKind::name).into_iter().chain(Caution::ALL.map(Caution::name)).collect()
}

fn drawn() -> BTreeSet<String> {
    let names = Embedded.list("templates/pictures");
    names.iter().filter_map(|name| name.strip_suffix(".svg")).map(str::to_owned).collect()
}

fn picture(name: &str) -> String {
    let path = format!("templates/pictures/{name}.svg");
    let bytes = Embedded.read(&path).unwrap_or_else(|| panic!("{path} is missing"));
    String::from_utf8(bytes.into_owned()).unwrap()
}

/// What a copier would spoil or a sheet could not set, one text for each.
fn faults(svg: &str) -> Vec<String> {
    let mut faults = Vec::new();
    if svg.len() > MOST_BYTES {
        faults.push(format!("{} bytes", svg.len()));
    }
    if !svg.contains(VIEW_BOX) {
        faults.push("another size".to_owned());
    }
    for tag in svg.split('<').skip(1).filter(|tag| !tag.starts_with('/')) {
        let (tag, text) = tag.split_once('>').unwrap_or((tag, "no end"));
        if !text.trim().is_empty() {
            faults.push(format!("text: {text}"));
        }
        let (element, attributes) = tag.split_once(' ').unwrap_or((tag, ""));
        if !["svg", "rect", "g", "path"].contains(&element) {
            faults.push(format!("element {element}"));
        }
        let words: Vec<&str> = attributes.split('"').collect();
        for pair in words.chunks_exact(2) {
            let (name, value) = (pair[0].trim().trim_end_matches('='), pair[1]);
            if name == "d"
                && value.split('M').any(|line| line.split_once('L').is_some_and(|(from, to)| from == to))
            {
                faults.push(format!("a line without length, which paper leaves out: {value}"));
            }
            let good = match name {
                "fill" | "stroke" => ["none", "#000", "#fff"].contains(&value),
                "stroke-width" => value.parse::<f64>().is_ok_and(|w| w * POINTS_A_UNIT >= LEAST_POINTS),
                "xmlns" | "viewBox" | "width" | "height" | "d" => true,
                "stroke-linecap" | "stroke-linejoin" => value == "round",
                _ => false,
            };
            if !good {
                faults.push(format!("{name}=\"{value}\""));
            }
        }
    }
    faults
}

#[test]
fn every_step_and_caution_has_its_picture_and_none_is_left_over() {
    let wanted: BTreeSet<String> =
        subjects().into_iter().chain(BESIDE_WORDS).chain(["bars"]).map(str::to_owned).collect();
    assert_eq!(drawn(), wanted);
}

#[test]
fn pictures_are_black_and_white_in_lines_that_a_copier_keeps() {
    for name in subjects().into_iter().chain(BESIDE_WORDS) {
        assert_eq!(faults(&picture(name)), Vec::<String>::new(), "{name}");
    }
}

/// The check itself: each fault must be seen.
#[test]
fn a_picture_that_a_copier_would_spoil_is_seen() {
    let with = |inner: &str| format!("<svg xmlns=\"http://www.w3.org/2000/svg\" {VIEW_BOX}>{inner}</svg>");
    assert_eq!(
        faults(&with("<path d=\"M0 0L9 9\" stroke=\"#000\" stroke-width=\"3\"/>")),
        Vec::<String>::new()
    );
    for bad in [
        "<text>A</text>",
        "<path d=\"M0 0\" fill=\"#bbb\"/>",
        "<path d=\"M0 0\" stroke-width=\"2.8\"/>",
        "<path d=\"M0 0\" transform=\"scale(0.1)\"/>",
        "<path d=\"M0 0\" class=\"fine\"/>",
        "<path d=\"M9 9L9 9\"/>",
        "<image href=\"photo.png\"/>",
        "<path d=\"M0 0\" opacity=\"0.5\"/>",
        "<style>path { fill: red }</style>",
    ] {
        assert!(!faults(&with(bad)).is_empty(), "{bad}");
    }
    assert!(!faults(&with(&"<path d=\"M0 0L240 240\"/>".repeat(400))).is_empty());
    assert!(!faults("<svg viewBox=\"0 0 24 24\"></svg>").is_empty());
}

/// What a sheet says where each picture takes the place of a step's.
fn all_pictures() -> Facts {
    let pack = Pack::load(&Embedded, "en").unwrap();
    let (_, case) = examples().remove(0);
    let mut facts = Facts::of(&pack, &tell(&case, &make(&case).unwrap())).unwrap();
    let step = facts.steps[0].clone();
    facts.steps = subjects()
        .into_iter()
        .chain(BESIDE_WORDS)
        .map(|subject| {
            let mut step = step.clone();
            step.subject = subject;
            step
        })
        .collect();
    facts
}

#[test]
fn all_pictures_can_be_set() {
    let pdf = Printer::new(&Embedded).unwrap().print(Paper::Farm, &all_pictures()).unwrap();
    assert_eq!(pdf.overflows, Vec::<String>::new());
}

/// Each picture is also a letter, made of the picture as it is now; `fonts/make_pictures` makes them anew.
#[test]
fn every_picture_has_its_letter() {
    let listed = Embedded.read("fonts/pictures.json").unwrap();
    let listed: Vec<serde_json::Value> = serde_json::from_slice(&listed).unwrap();
    let listed: Vec<(&str, &str)> = listed
        .iter()
        .map(|letter| (letter["name"].as_str().unwrap(), letter["sha256"].as_str().unwrap()))
        .collect();
    let wanted: BTreeSet<&str> = subjects().into_iter().chain(BESIDE_WORDS).collect();
    assert_eq!(listed.iter().map(|(name, _)| *name).collect::<BTreeSet<_>>(), wanted);
    for (name, sha256) in listed {
        let now: String = Sha256::digest(picture(name)).iter().map(|byte| format!("{byte:02x}")).collect();
        assert_eq!(sha256, now, "{name}: run fonts/make_pictures");
    }
}

/// Data with the picture font alone, or with all others.
struct Fonts {
    of_pictures: bool,
}

impl Data for Fonts {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        Embedded.read(path)
    }
    fn list(&self, folder: &str) -> Vec<String> {
        Embedded
            .list(folder)
            .into_iter()
            .filter(|name| name.contains("Pictures") == self.of_pictures)
            .collect()
    }
}

/// The letter that stands for pictures is none that words may have.
#[test]
fn no_words_are_set_in_pictures() {
    let alone = Printer::new(&Fonts { of_pictures: true }).unwrap();
    assert!(['\u{fffc}', 'a'].into_iter().all(|letter| !alone.covers(letter)));
    assert!(Printer::new(&Embedded).unwrap().covers('a'));
}

/// A folder with fonts of its own may have none of pictures: they are set from their files.
#[test]
fn without_their_font_pictures_are_files() {
    let data = Fonts { of_pictures: false };
    let has_font = |pdf: &[u8]| pdf.windows(13).any(|name| name == b"KablaPictures");
    let plain = Printer::new(&Embedded).unwrap().print(Paper::Farm, &all_pictures()).unwrap();
    let without = Printer::new(&data).unwrap().print(Paper::Farm, &all_pictures()).unwrap();
    assert!(has_font(&plain.bytes) && !has_font(&without.bytes));
    assert_eq!((without.pages, without.overflows), (plain.pages, Vec::new()));
}

/// Data with something after each picture: other files than the letters were made of.
struct With(&'static str);

impl Data for With {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        let file = Embedded.read(path)?;
        if !path.starts_with("templates/pictures/") {
            return Some(file);
        }
        let text = String::from_utf8(file.into_owned()).unwrap();
        Some(text.replace("</svg>", &format!("{}</svg>", self.0)).into_bytes().into())
    }
    fn list(&self, folder: &str) -> Vec<String> {
        Embedded.list(folder)
    }
}

/// A page in shades of grey: its width, and all its dots line by line.
struct Page {
    wide: usize,
    dots: Vec<u8>,
}

impl Page {
    /// Reads a binary PGM as pdftoppm writes it.
    fn read(path: &Path) -> Page {
        let bytes = fs::read(path).unwrap();
        let ends: Vec<usize> = (0..bytes.len()).filter(|at| bytes[*at] == b'\n').take(3).collect();
        let head = std::str::from_utf8(&bytes[..ends[2]]).unwrap();
        let words: Vec<&str> = head.split_whitespace().collect();
        assert!(words[0] == "P5" && words[3] == "255", "{head}");
        let (wide, dots) = (words[1].parse().unwrap(), bytes[ends[2] + 1..].to_vec());
        assert_eq!(dots.len(), wide * words[2].parse::<usize>().unwrap());
        Page { wide, dots }
    }

    /// How many black dots of this page have nothing near them on the other that is darker than light grey.
    fn missing_on(&self, other: &Page) -> usize {
        let near = |at: usize| {
            let rows = [at.wrapping_sub(self.wide), at, at + self.wide];
            rows.into_iter().flat_map(|row| [row.wrapping_sub(1), row, row + 1])
        };
        let missing = |at: &usize| {
            self.dots[*at] < 48 && near(*at).all(|at| other.dots.get(at).is_none_or(|dot| *dot > 208))
        };
        (0..self.dots.len()).filter(missing).count()
    }
}

fn pages_of(data: &dyn Data, pdftoppm: &str) -> Vec<Page> {
    let folder = tempfile::tempdir().unwrap();
    let sheet = folder.path().join("guide.pdf");
    fs::write(&sheet, Printer::new(data).unwrap().print(Paper::Guide, &all_pictures()).unwrap().bytes)
        .unwrap();
    let done = Command::new(pdftoppm)
        .args(["-r", "150", "-gray"])
        .arg(&sheet)
        .arg(folder.path().join("page"))
        .status();
    assert!(done.unwrap().success());
    let mut pages: Vec<_> = fs::read_dir(folder.path()).unwrap().map(|entry| entry.unwrap().path()).collect();
    pages.retain(|path| path.extension().is_some_and(|ending| ending == "pgm"));
    pages.sort();
    assert!(pages.len() > 5, "{}", pages.len());
    pages.iter().map(|path| Page::read(path)).collect()
}

/// As poppler paints them: the letters are black where the files are, and nowhere else. A file that has been changed
/// is painted as it is now.
#[test]
fn letters_look_as_the_pictures_they_are_made_of() {
    let Some(pdftoppm) = program("pdftoppm") else { return };
    let letters = pages_of(&Embedded, pdftoppm);
    let compared = |files: &'static str| {
        let files = pages_of(&With(files), pdftoppm);
        assert_eq!(letters.len(), files.len());
        let both = letters.iter().zip(&files);
        both.map(|(letter, file)| (letter.missing_on(file), file.missing_on(letter)))
            .fold((0, 0), |a, b| (a.0 + b.0, a.1 + b.1))
    };
    assert_eq!(compared("\n"), (0, 0));
    let (less, more) = compared(
        "<path d=\"M40 40L440 440M40 440L440 40\" fill=\"none\" stroke=\"#fff\" stroke-width=\"30\"/>",
    );
    assert!(less > 1000 && more == 0, "{less} {more}");
}

/// Every pack says in words what each picture shows, in its own words.
#[test]
fn every_picture_is_told_in_words() {
    for (_, case) in examples() {
        let statements = tell(&case, &make(&case).unwrap());
        let english = Facts::of(&Pack::load(&Embedded, "en").unwrap(), &statements).unwrap();
        for tag in Pack::tags(&Embedded) {
            let facts = Facts::of(&Pack::load(&Embedded, &tag).unwrap(), &statements).unwrap();
            let pairs =
                facts.steps.iter().zip(&english.steps).chain(facts.cautions.iter().zip(&english.cautions));
            for (entry, original) in pairs {
                assert!(entry.alt.chars().count() > 20, "{tag} {}: {}", entry.subject, entry.alt);
                assert_eq!(entry.alt == original.alt, tag == "en", "{tag} {}", entry.subject);
            }
        }
    }
}
