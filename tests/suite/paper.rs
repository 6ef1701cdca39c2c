//! Every format on paper: that it fits, in every language; what a folder of own templates changes.

use std::borrow::Cow;
use std::fs;
use std::process::Command;

use kabla::data::{Data, Embedded, Templates};
use kabla::guidance::{shapes::Shapes, tell};
use kabla::language::{ACCENTED, MIRRORED, Pack, Pseudo};
use kabla::plan::{Case, StepKind, make};
use kabla::sheet::{Facts, Paper, Pdf, Printer, html};

use crate::examples;

pub(crate) const PAPERS: [Paper; 5] =
    [Paper::Farm, Paper::Guide, Paper::Calendar, Paper::Card, Paper::Record];

/// What a sheet of a case says and draws.
pub(crate) fn drawn(tag: &str, case: &Case) -> Facts {
    let pack = Pack::load(&Pseudo::new(&Embedded), tag).unwrap();
    let plan = make(case).unwrap();
    let facts = Facts::of(&pack, &tell(case, &plan)).unwrap();
    facts.drawn(&pack, &Shapes::of(case, &plan), &Embedded).unwrap()
}

pub(crate) fn farm() -> Case {
    examples().remove(0).1
}

/// A farm and a group take home two pages, where all is still to be done three; calendar, card and record stay on one.
pub(crate) fn assert_fits(pdf: &Pdf, paper: Paper, example: &str, what: &str) {
    assert_eq!(pdf.overflows, Vec::<String>::new(), "{what}");
    assert!(pdf.bytes.len() < 400_000, "{what}: {} bytes", pdf.bytes.len());
    let most = match paper {
        Paper::Calendar | Paper::Card | Paper::Record => 1,
        Paper::Farm if ["farm", "group"].contains(&example) => 3,
        Paper::Farm => 4,
        Paper::Guide => 14,
    };
    assert!(pdf.pages <= most, "{what}: {} pages", pdf.pages);
}

/// Once the roots lie in sand, a farm's steps, remarks and cautions have room on two pages in every language.
#[test]
fn a_season_that_has_begun_takes_two_pages() {
    let printer = Printer::new(&Embedded).unwrap();
    let (today, done) = (Some(crate::plan::date("2027-06-30")), Some(StepKind::FillContainer));
    let case = Case { today, done, ..farm() };
    for tag in Pack::tags(&Embedded) {
        let pdf = printer.print(Paper::Farm, &drawn(&tag, &case)).unwrap();
        assert_eq!((pdf.pages, pdf.overflows), (2, Vec::new()), "{tag}");
    }
}

/// Words of a language are often longer than the English ones.
#[test]
fn every_format_fits_in_longer_words() {
    let printer = Printer::new(&Embedded).unwrap();
    for (name, case) in examples() {
        let facts = drawn(ACCENTED, &case);
        for paper in PAPERS {
            let pdf = printer.print(paper, &facts).unwrap();
            assert_fits(&pdf, paper, &name, &format!("{name} {paper:?}"));
        }
    }
}

#[test]
fn every_format_runs_from_right_to_left() {
    let data = crate::pseudo::WithArabic;
    let printer = Printer::new(&data).unwrap();
    let facts = drawn(MIRRORED, &farm());
    for paper in PAPERS {
        assert_eq!(printer.print(paper, &facts).unwrap().overflows, Vec::<String>::new(), "{paper:?}");
    }
}

/// A name of one endless word breaks in every format.
#[test]
fn long_names_break_in_every_format() {
    let printer = Printer::new(&Embedded).unwrap();
    let case = Case { name: "x".repeat(120), ..farm() };
    let facts = drawn("en", &case);
    for paper in PAPERS {
        assert_eq!(printer.print(paper, &facts).unwrap().overflows, Vec::<String>::new(), "{paper:?}");
    }
    let booklet = printer.booklet(vec![facts.clone(), facts]).unwrap();
    assert_eq!(booklet.overflows, Vec::<String>::new());
}

/// A step that is too long for a small page is told, and has that page for itself.
#[test]
fn a_small_page_that_is_too_full_is_told() {
    let mut facts = drawn("en", &farm());
    let harvest = facts.steps.iter_mut().find(|step| step.subject == "harvest").unwrap();
    harvest.title = "Dig and choose. ".repeat(50).trim_end().to_owned();
    let long = harvest.title.clone();
    let pdf = Printer::new(&Embedded).unwrap().print(Paper::Card, &facts).unwrap();
    // What reaches beyond the paper is told besides.
    let full: Vec<&String> = pdf.overflows.iter().filter(|of| of.contains(" of the card, ")).collect();
    let [told] = full.as_slice() else { panic!("{:?}", pdf.overflows) };
    let title = told.strip_prefix("page ").and_then(|told| told.split_once(" of the card, with ")).unwrap().1;
    assert_eq!(title, long);
}

/// The room that drawings leave for the sizes beside them: a letter is on average not wider than two thirds of its height.
#[test]
fn sizes_beside_drawings_have_room() {
    for tag in Pack::tags(&Embedded).into_iter().chain([ACCENTED.to_owned()]) {
        for (name, case) in examples() {
            for drawing in drawn(&tag, &case).drawings {
                for label in &drawing.labels {
                    let words = &label.text;
                    let long = words.chars().filter(|c| c.is_alphanumeric() || c.is_whitespace()).count();
                    let long = long as f64 * drawing.font_size * 0.55;
                    let share = if label.anchor == "start" { 1.0 } else { 0.5 };
                    let (from, to) = (label.x - (1.0 - share) * long, label.x + share * long);
                    assert!(
                        from > -4.0 && to < drawing.width + 4.0,
                        "{tag} {name} {}: {words}",
                        drawing.name
                    );
                }
            }
        }
    }
}

#[test]
fn steps_that_name_a_measure_show_it() {
    for tag in Pack::tags(&Embedded) {
        let facts = drawn(&tag, &farm());
        let shown = |subject: &str| -> Vec<(&str, &str)> {
            let step = facts.steps.iter().find(|step| step.subject == subject).unwrap();
            step.measures.iter().map(|measure| (measure.picture, measure.text.as_str())).collect()
        };
        let step = |subject: &str| facts.steps.iter().find(|step| step.subject == subject).unwrap();
        for (subject, picture) in [
            ("cut-vines", "measure-hand"),
            ("fill-container", "measure-thumb"),
            ("cut-for-planting", "measure-hand"),
            ("water-bed", "measure-jerrycan"),
        ] {
            let measures = shown(subject);
            let [(of, text)] = measures.as_slice() else { panic!("{tag} {subject}: {measures:?}") };
            assert_eq!(*of, picture, "{tag} {subject}");
            assert!(step(subject).text.contains(text), "{tag} {subject}: {text} in {}", step(subject).text);
        }
        assert_eq!(shown("plant-field").first().map(|(picture, _)| *picture), Some("measure-bundle"));
        assert_eq!(shown("harvest"), []);
        let page = String::from_utf8(html(&facts, &Embedded).unwrap()).unwrap();
        assert_eq!(page.matches("class=\"measure\"").count(), 5, "{tag}");
    }
}

/// The guide has something to show and to ask at each step, in each pack its own.
#[test]
fn a_guide_shows_and_asks() {
    let english = drawn("en", &farm());
    for tag in Pack::tags(&Embedded) {
        let facts = drawn(&tag, &farm());
        for (step, original) in facts.steps.iter().zip(&english.steps) {
            for (text, other) in [(&step.show, &original.show), (&step.ask, &original.ask)] {
                assert!(text.chars().count() > 8, "{tag} {}: {text}", step.subject);
                assert_eq!(text == other, tag == "en", "{tag} {}: {text}", step.subject);
            }
            assert!(step.ask.trim_end().ends_with(['?', '፧']), "{tag} {}: {}", step.subject, step.ask);
        }
    }
}

/// The numbers behind each `before` of a drawing, up to what is no number.
fn numbers_after(svg: &str, before: &str) -> Vec<f64> {
    let number = |rest: &str| {
        let end = rest.find(|letter: char| !letter.is_ascii_digit() && letter != '.').unwrap_or(rest.len());
        rest[..end].parse().unwrap()
    };
    svg.split(before).skip(1).map(number).collect()
}

/// In the corner of a field that a sheet draws, each ridge has two plants at least and no leaf beyond its ends, and
/// the measure goes from one plant to the next; with room for little beside it, too.
#[test]
fn ridges_are_drawn_with_plants_to_measure_between() {
    // Half of a leaf's span, with its outline.
    const LEAF: f64 = 7.8;
    let farm = include_str!("../../examples/farm.toml");
    for (between, along) in
        [("0.6", "0.1"), ("0.6", "1.5"), ("1.0", "0.3"), ("3", "0.25"), ("3", "2"), ("0.3", "2")]
    {
        let text = farm.replace("ridge_spacing_m = 1.0", &format!("ridge_spacing_m = {between}"));
        let text = text.replace("plant_spacing_m = 0.3", &format!("plant_spacing_m = {along}"));
        let case = kabla::case::read("farm.toml", &text, &|_| unreachable!()).unwrap().0;
        for tag in ["sw", "am", "en-XA"] {
            let facts = drawn(tag, &case);
            let svg = &facts.drawings.iter().find(|drawing| drawing.name == "rows").unwrap().svg;
            let what = format!("{between} {along} {tag}: {svg}");
            let (left, wide) = (numbers_after(svg, "<rect x=\"")[0], numbers_after(svg, "width=\"")[0]);
            let before: Vec<&str> = svg.split("v-7m0").collect();
            let plants: Vec<f64> = before[..before.len() - 1]
                .iter()
                .map(|text| text.rsplit('M').next().unwrap().split(' ').next().unwrap().parse().unwrap())
                .collect();
            let (upper, lower) = plants.split_at(plants.len() / 2);
            assert_eq!(upper, lower, "{what}");
            assert!(upper.len() >= 2 && upper.is_sorted(), "{what}");
            assert!(upper[0] - LEAF >= left && upper[upper.len() - 1] + LEAF <= left + wide, "{what}");
            let (marks, to) = (numbers_after(svg, "<path d=\"M"), numbers_after(svg, "H")[0]);
            let from = marks[marks.len() - 1];
            assert!((from - upper[0]).abs() < 0.11 && (to - upper[1]).abs() < 0.11, "{what}");
        }
    }
}

/// The page setter leaves out a path of one line that has no length: the only check of a short store, the only root of
/// a small one where roots are as thick as long.
#[test]
fn drawings_have_no_lines_without_length() {
    let text = include_str!("../../examples/farm.toml")
        .replace("harvest = 2027-05-24", "harvest = 2027-09-01")
        .replace("length_m = 30\nwidth_m = 15", "area_m2 = 10");
    let text = format!("{text}\n[assumptions]\nroot_length_mm = 61\nroot_diameter_mm = 61\n");
    let case = kabla::case::read("farm.toml", &text, &|_| unreachable!()).unwrap().0;
    let facts = drawn("en", &case);
    assert_eq!(facts.steps.iter().find(|step| step.subject == "monthly-check").unwrap().when.len(), 1);
    let names: Vec<&str> = facts.drawings.iter().map(|drawing| drawing.name.as_str()).collect();
    assert!(["season", "layers", "bed"].iter().all(|name| names.contains(name)), "{names:?}");
    for drawing in &facts.drawings {
        for line in drawing.svg.split('M').skip(1) {
            let line = line.split('"').next().unwrap();
            assert!(!line.ends_with("h0") && !line.ends_with("v0"), "{}: {line}", drawing.name);
            let ends: Vec<&str> = line.split(' ').collect();
            assert!(ends.len() != 2 || ends[0] != ends[1], "{}: {line}", drawing.name);
        }
    }
}

/// Data with one template in another's place.
struct With(&'static str, &'static str);

impl Data for With {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        if path == self.0 { Some(self.1.as_bytes().into()) } else { Embedded.read(path) }
    }
    fn list(&self, folder: &str) -> Vec<String> {
        Embedded.list(folder)
    }
}

#[test]
fn a_broken_drawing_names_file_and_line() {
    let case = farm();
    let plan = make(&case).unwrap();
    let pack = Pack::load(&Embedded, "en").unwrap();
    let facts = || Facts::of(&pack, &tell(&case, &plan)).unwrap();
    for (template, text, told) in [
        (
            "templates/drawings/bed.svg",
            "<svg>\n\n{{ nothing.at_all }}</svg>",
            "line 3: Variable `nothing.at_all`",
        ),
        ("templates/drawings/season.svg", "<svg>\n{% for part in %}</svg>", "line 2: expected"),
    ] {
        let error = facts().drawn(&pack, &Shapes::of(&case, &plan), &With(template, text)).unwrap_err();
        let error = error.to_string();
        assert!(error.starts_with(&format!("{template}: {told}")), "{error}");
        assert!(error.contains("hint: "), "{error}");
    }
}

/// The command with a folder of own templates: its findings name the file of that folder.
#[test]
fn a_folder_of_templates_is_read_first_and_its_slips_are_told() {
    let folder = tempfile::tempdir().unwrap();
    let out = folder.path().join("sheet.pdf");
    let run = |kind: &str| {
        Command::new(env!("CARGO_BIN_EXE_kabla"))
            .arg("--templates")
            .arg(folder.path())
            .args(["sheet", "examples/farm.toml", "--language", "en", "--as", kind, "--out"])
            .arg(&out)
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .output()
            .unwrap()
    };
    for (file, kind, text, line) in [
        ("header.typ", "pdf", "#let header(s) = {\n  s.nothing\n}\n", "line 2"),
        ("header.typ", "pdf", "\n\n#let header(s) = block(\n", "line 3"),
        ("pictures/harvest.svg", "pdf", "<svg>no end", "harvest"),
        ("sheet.html", "html", "<p>\n\n{{ nobody }}</p>", "line 3"),
    ] {
        let path = folder.path().join(file);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, text).unwrap();
        let output = run(kind);
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(output.status.code(), Some(2), "{file}: {said}");
        assert!(said.contains(line) && said.contains("hint: "), "{file}: {said}");
        if !file.ends_with(".svg") {
            assert!(said.contains(&path.display().to_string()), "{said}");
        }
        assert!(!out.exists(), "nothing is left half-written");
        fs::remove_file(&path).unwrap();
    }
    assert!(run("pdf").status.success(), "an empty folder changes nothing");
    let missing = Command::new(env!("CARGO_BIN_EXE_kabla"))
        .args(["--templates", "nowhere", "sheet", "examples/farm.toml"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&missing.stderr).into_owned();
    assert!(missing.status.code() == Some(2) && said.contains("nowhere") && said.contains("hint"), "{said}");
}

/// An own header and an own picture are on the sheet; everything else stays the program's.
#[test]
fn an_own_header_and_picture_are_printed() {
    let folder = tempfile::tempdir().unwrap();
    let square = |text: &str| {
        format!("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 240\">{text}</svg>")
    };
    fs::create_dir(folder.path().join("pictures")).unwrap();
    fs::write(folder.path().join("pictures/harvest.svg"), square("<rect width=\"9\" height=\"9\"/>"))
        .unwrap();
    fs::write(folder.path().join("logo.svg"), square("<circle r=\"90\"/>")).unwrap();
    let header = "#let header(s) = block(image(\"/logo.svg\", height: 12mm, alt: \"Union of growers\"))";
    fs::write(folder.path().join("header.typ"), header).unwrap();
    let data = Templates::over(&Embedded, folder.path()).unwrap();
    let facts = drawn("en", &farm());
    let page = String::from_utf8(html(&facts, &data).unwrap()).unwrap();
    assert!(page.contains("<rect width=\"9\" height=\"9\"/>"));
    let plain = Printer::new(&Embedded).unwrap();
    let own = Printer::new(&data).unwrap();
    for paper in PAPERS {
        let (own, plain) = (own.print(paper, &facts).unwrap(), plain.print(paper, &facts).unwrap());
        assert_eq!(own.overflows, Vec::<String>::new(), "{paper:?}");
        assert!(own.bytes != plain.bytes, "{paper:?}");
    }
}
