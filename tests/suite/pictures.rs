//! Pictures: one for each step and caution, plain enough for a photocopy.

use std::collections::BTreeSet;

use kabla::data::{Data, Embedded};
use kabla::guidance::{Caution, tell};
use kabla::language::Pack;
use kabla::plan::{StepKind, make};
use kabla::sheet::{Facts, Paper, Printer};

use crate::examples;

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
        if !["svg", "g", "path"].contains(&element) {
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
