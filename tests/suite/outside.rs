//! What other people's programs say of our files. Where a program is not
//! installed, its test says so and is skipped; `.ci/run` installs them all and
//! sets `KABLA_OUTSIDE=required`, so that nothing is skipped there.

use std::fs;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::LazyLock;

use kabla::data::Embedded;
use kabla::guidance::tell;
use kabla::language::Pack;
use kabla::plan::make;
use kabla::sheet::{Facts, Paper, Printer, html};

use crate::examples;
use crate::paper::{PAPERS, drawn, farm};

/// The program, or `None` after saying why the test is skipped.
pub(crate) fn program(name: &str) -> Option<&str> {
    let found = Command::new("sh")
        .args(["-c", &format!("command -v {name}")])
        .output()
        .is_ok_and(|output| output.status.success());
    if !found {
        skip(name);
    }
    found.then_some(name)
}

/// A file that a package of Debian's brings, or `None` after saying why the test is skipped.
pub(crate) fn file<'p>(path: &'p str, package: &str) -> Option<&'p str> {
    let found = fs::exists(path).unwrap();
    if !found {
        skip(package);
    }
    found.then_some(path)
}

fn skip(name: &str) {
    assert!(
        std::env::var_os("KABLA_OUTSIDE").is_none(),
        "{name} is not installed, and KABLA_OUTSIDE asks for it"
    );
    // Not eprintln!, which the test runner would swallow.
    let _ = writeln!(std::io::stderr(), "skipped: a test that needs {name}, which is not installed");
}

/// A Python that has a module, or `None` after saying why the test is skipped. Debian's own has Debian's modules.
pub(crate) fn python_with(module: &str) -> Option<&'static str> {
    let has = |python: &&str| {
        let tried = Command::new(python).args(["-c", &format!("import {module}")]).output();
        tried.is_ok_and(|output| output.status.success())
    };
    let found = ["/usr/bin/python3", "python3"].into_iter().find(|python| has(python));
    if found.is_none() {
        program(&format!("the Python module {module}"));
    }
    found
}

/// One demo for all tests of this module.
static DEMO: LazyLock<tempfile::TempDir> = LazyLock::new(|| {
    let folder = tempfile::tempdir().unwrap();
    let output = Command::new(env!("CARGO_BIN_EXE_kabla"))
        .args(["demo", "--out"])
        .arg(folder.path())
        .output()
        .unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    folder
});

fn demo_files(ending: &str) -> Vec<PathBuf> {
    let mut files: Vec<PathBuf> = fs::read_dir(DEMO.path())
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.to_string_lossy().ends_with(ending))
        .collect();
    files.sort();
    assert!(files.len() >= 2, "{files:?}");
    files
}

pub(crate) fn number_after(text: &str, label: &str) -> f64 {
    let at = text.rfind(label).unwrap_or_else(|| panic!("no {label} in {text}"));
    text[at + label.len()..].split_whitespace().next().unwrap().parse().unwrap()
}

/// EBU R 128 as ffmpeg's ebur128 filter measures it, on every radio file.
#[test]
fn ffmpeg_measures_our_loudness() {
    let Some(ffmpeg) = program("ffmpeg") else { return };
    for wave in demo_files(".wav") {
        let output = Command::new(ffmpeg)
            .args(["-nostats", "-hide_banner", "-i"])
            .arg(&wave)
            .args(["-af", "ebur128=peak=true", "-f", "null", "-"])
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stderr).into_owned();
        let (loudness, peak) = (number_after(&said, "I:"), number_after(&said, "Peak:"));
        assert!((loudness + 23.0).abs() <= 0.3, "{}: {loudness} LUFS", wave.display());
        assert!(peak <= -0.9, "{}: {peak} dBTP", wave.display());
        assert!(said.contains("48000 Hz, mono") || said.contains("48000 Hz, 1 channels"), "{said}");
        assert!(said.contains("pcm_s16le"), "{said}");
    }
}

/// Captions as ffmpeg reads WebVTT: as many cues, ending within the sound.
#[test]
fn ffmpeg_reads_our_captions() {
    let Some(ffmpeg) = program("ffmpeg") else { return };
    for captions in demo_files(".vtt") {
        let output = Command::new(ffmpeg)
            .args(["-v", "error", "-i"])
            .arg(&captions)
            .args(["-f", "srt", "-"])
            .output()
            .unwrap();
        assert!(
            output.status.success() && output.stderr.is_empty(),
            "{}: {}",
            captions.display(),
            String::from_utf8_lossy(&output.stderr)
        );
        let cues = String::from_utf8(output.stdout).unwrap().matches(" --> ").count();
        let ours = fs::read_to_string(&captions).unwrap().matches(" --> ").count();
        assert!(cues > 3 && cues == ours, "{}: {cues} of {ours} cues", captions.display());
    }
}

fn text_of_pdf(pdftotext: &str, path: &Path) -> String {
    // In the order in which it is written: what lies side by side is not put in between.
    let output = Command::new(pdftotext).arg("-raw").arg(path).arg("-").output().unwrap();
    assert!(output.status.success());
    // A date may be broken over two lines.
    plain_spaces(&String::from_utf8(output.stdout).unwrap())
}

pub(crate) fn plain_spaces(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// pdftotext finds every date and every amount of every example's plan: on the farm sheet those that a farm needs, in the guide
/// all that are printed anywhere, and dates with their years.
#[test]
fn pdftotext_finds_dates_and_amounts() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let printer = Printer::new(&Embedded).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sheet.pdf");
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let plan = make(&case).unwrap();
            let facts = drawn(&tag, &case);
            for paper in [Paper::Farm, Paper::Guide] {
                fs::write(&path, printer.print(paper, &facts).unwrap().bytes).unwrap();
                let text = text_of_pdf(pdftotext, &path);
                let what = format!("{tag} {name} {paper:?}");
                for step in &plan.steps {
                    for day in [step.when.from, step.when.to] {
                        let function = if paper == Paper::Farm { "BRIEF" } else { "DAY" };
                        let date = pack.write_day(day, function).unwrap();
                        assert!(
                            text.contains(&plain_spaces(&date)),
                            "{what}: {date} of {}",
                            step.topic.name()
                        );
                    }
                }
                let left_out = |quantity: &str| {
                    UNPRINTED.contains(&quantity) || (paper == Paper::Farm && DRAWN.contains(&quantity))
                };
                for amount in plan.amounts.0.iter().filter(|amount| !left_out(amount.quantity.name())) {
                    let decimals = u8::from(amount.value.fract() != 0.0);
                    let digits = pack.write_number(amount.value, decimals);
                    assert!(stands_in(&digits, &text), "{what}: {digits} ({})", amount.quantity.name());
                }
                for cut in plan.cuts.iter().map(|cut| f64::from(cut.cuttings)) {
                    let digits = pack.write_number(cut, 0);
                    assert!(stands_in(&digits, &text), "{what}: {digits} of a cut");
                }
                for entry in facts.steps.iter().chain(&facts.cautions) {
                    assert!(text.contains(&plain_spaces(&entry.title)), "{what}: {}", entry.title);
                }
                assert!(text.contains(&plain_spaces(&facts.status)), "{what}");
            }
        }
    }
}

/// Whether a number stands in a text, and not as a part of a longer one.
fn stands_in(digits: &str, text: &str) -> bool {
    // A no-break space between digits is a space in the page's text.
    let digits = digits.replace(char::is_whitespace, " ");
    (digits.contains(' ') && text.contains(&digits))
        || text.split(' ').any(|word| word.trim_matches(|c: char| !c.is_ascii_digit()) == digits)
}

/// How full a layer may be at most is drawn on the farm sheet as it comes out.
const DRAWN: [&str; 2] = ["roots_per_layer", "roots_in_top_layer"];

/// A name prints as itself: every letter of it is in the PDF, unbroken, whatever markup it looks like.
#[test]
fn pdftotext_finds_hostile_names_as_they_are() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let printer = Printer::new(&Embedded).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let (_, case) = examples().remove(0);
    for tag in ["en", "sw"] {
        let pack = Pack::load(&Embedded, tag).unwrap();
        for name in [
            "#panic()",
            "<script>alert(1)</script>",
            "{{ 7 * 7 }}",
            "$x^2$ *bold* _it_",
            "Mwanakijiji-Mshamba wa Kijiji",
        ] {
            let case = kabla::plan::Case { name: name.to_owned(), ..case.clone() };
            let facts = Facts::of(&pack, &tell(&case, &make(&case).unwrap())).unwrap();
            let path = folder.path().join("sheet.pdf");
            fs::write(&path, printer.print(Paper::Guide, &facts).unwrap().bytes).unwrap();
            assert!(text_of_pdf(pdftotext, &path).contains(name), "{tag}: {name}");
        }
    }
}

/// The bed is printed by its sides; the season's cuttings, rows and trips are for those who plan.
const UNPRINTED: [&str; 5] =
    ["bed_area_m2", "cuttings_over_season", "field_rows", "cuttings_per_row", "water_trips_per_day"];

#[test]
fn pdfinfo_says_tagged_with_title_and_language() {
    let Some(pdfinfo) = program("pdfinfo") else { return };
    for sheet in demo_files(".pdf") {
        let output = Command::new(pdfinfo).arg(&sheet).output().unwrap();
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        let value = |label: &str| {
            let line = said
                .lines()
                .find(|line| line.starts_with(label))
                .unwrap_or_else(|| panic!("no {label}\n{said}"));
            line[label.len()..].trim().to_owned()
        };
        assert_eq!(value("Tagged:"), "yes");
        let of_zone = sheet.to_string_lossy().contains("-segment-");
        let name = if of_zone { "Eastern lowlands" } else { "Neema" };
        assert!(value("Title:").contains(name), "{said}");
        assert!(value("Page size:").contains("A4"), "{said}");
        let fonts = Command::new("pdffonts").arg(&sheet).output().unwrap();
        for line in String::from_utf8_lossy(&fonts.stdout).lines().skip(2) {
            assert!(
                line.contains("KablaSans") && line.contains(" yes yes "),
                "a font that is not embedded: {line}"
            );
        }
    }
}

fn chromium(arguments: &[&str]) -> std::process::Output {
    let profile = tempfile::tempdir().unwrap();
    let profile = format!("--user-data-dir={}", profile.path().display());
    let quiet = [
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ];
    Command::new("chromium").args(quiet).arg(profile).args(arguments).output().unwrap()
}

/// On a phone 320 px wide nothing reaches beyond the screen.
#[test]
fn chromium_shows_the_page_on_a_small_phone() {
    if program("chromium").is_none() {
        return;
    }
    let cases = examples();
    let pages: Vec<_> = cases
        .iter()
        .flat_map(|(name, case)| {
            ["en", "ny", "en-XA"].map(|tag| (format!("{tag}-{name}"), drawn_page(tag, case)))
        })
        .collect();
    // Each in a frame of its own, and all in one run of the browser: starting it takes longer than a page.
    let mut frames = "<!DOCTYPE html><title>waiting</title>".to_owned();
    for (name, page) in &pages {
        let inside = page.replace('&', "&amp;").replace('"', "&quot;");
        frames += &format!(
            "<iframe width=320 height=800 style=\"border:0\" srcdoc=\"{inside}\" onload=\"const e=this.contentDocument.documentElement,p=document.createElement('p');p.textContent='{name} beyond '+(e.scrollWidth-e.clientWidth)+' height '+e.scrollHeight;document.body.append(p)\"></iframe>"
        );
    }
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("pages.html");
    fs::write(&path, frames).unwrap();
    let output =
        chromium(&["--dump-dom", "--virtual-time-budget=20000", &format!("file://{}", path.display())]);
    let dom = String::from_utf8_lossy(&output.stdout).into_owned();
    for (name, _) in &pages {
        let said = dom.split_once(&format!("<p>{name} ")).unwrap_or_else(|| panic!("{name} was not shown")).1;
        assert!(said.starts_with("beyond 0 height "), "{name}: {}", &said[..said.len().min(40)]);
        assert!(number_after(&said[..said.find("</p>").unwrap()], "height ") > 800.0);
    }
}

/// Letters that a device may lack come with the page, and with no page that has none of them.
#[test]
fn chromium_shows_letters_with_the_font_in_the_page() {
    let pages: Vec<(String, String)> = Pack::tags(&Embedded)
        .into_iter()
        .map(|tag| (String::from_utf8(html(&drawn(&tag, &farm()), &Embedded).unwrap()).unwrap(), tag))
        .collect();
    for (page, tag) in &pages {
        let ethiopic = page.chars().any(|c| ('\u{1200}'..='\u{137F}').contains(&c));
        assert_eq!(page.contains("unicode-range: U+1200-137F;"), ethiopic, "{tag}");
        assert!(page.len() < 400_000, "{tag}: {}", page.len());
    }
    let (Some(pdffonts), Some(_)) = (program("pdffonts"), program("chromium")) else { return };
    let folder = tempfile::tempdir().unwrap();
    let (source, printed) = (folder.path().join("sheet.html"), folder.path().join("sheet.pdf"));
    let (page, _) = pages.iter().find(|(_, tag)| tag == "am").unwrap();
    fs::write(&source, page).unwrap();
    chromium(&[
        "--no-pdf-header-footer",
        &format!("--print-to-pdf={}", printed.display()),
        &format!("file://{}", source.display()),
    ]);
    let listed = Command::new(pdffonts).arg(&printed).output().unwrap();
    let listed = String::from_utf8_lossy(&listed.stdout).into_owned();
    assert!(listed.contains("NotoSansEthiopic"), "{listed}");
}

/// Printed from a browser, the page holds the same steps as the sheet.
#[test]
fn chromium_prints_the_page() {
    if program("chromium").is_none() {
        return;
    }
    let Some(pdftotext) = program("pdftotext") else { return };
    let folder = tempfile::tempdir().unwrap();
    let (source, printed) = (folder.path().join("sheet.html"), folder.path().join("sheet.pdf"));
    let facts = drawn("sw", &farm());
    fs::write(&source, html(&facts, &Embedded).unwrap()).unwrap();
    chromium(&[
        "--no-pdf-header-footer",
        &format!("--print-to-pdf={}", printed.display()),
        &format!("file://{}", source.display()),
    ]);
    let text = text_of_pdf(pdftotext, &printed);
    for entry in facts.steps.iter().chain(&facts.cautions) {
        assert!(text.contains(&plain_spaces(&entry.title)), "{}", entry.title);
        assert!(text.contains(&plain_spaces(&entry.text)), "{}", entry.text);
        for when in &entry.when {
            assert!(text.contains(when), "{when}");
        }
    }
    for row in facts.amounts.iter().chain(&facts.head) {
        assert!(
            text.contains(&plain_spaces(&row.label)) && text.contains(&plain_spaces(&row.value)),
            "{row:?}"
        );
    }
    for drawing in &facts.drawings {
        assert!(text.contains(&plain_spaces(&drawing.title)), "{}", drawing.title);
    }
}

/// Calendar files as an independent reader (Debian's python3-icalendar) takes them: each step with its days, and an alarm two days before.
#[test]
fn an_independent_reader_reads_calendars() {
    const READER: &str = r#"
import sys, icalendar
for event in icalendar.Calendar.from_ical(open(sys.argv[1], "rb").read()).walk("VEVENT"):
    alarms = event.walk("VALARM")
    print(event["DTSTART"].dt, event["DTEND"].dt, len(alarms), alarms[0]["TRIGGER"].dt.total_seconds(), event["SUMMARY"], sep="|")
"#;
    let Some(python) = python_with("icalendar") else { return };
    let folder = tempfile::tempdir().unwrap();
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let plan = make(&case).unwrap();
            let statements = tell(&case, &plan);
            let path = folder.path().join(format!("{tag}-{name}.ics"));
            fs::write(&path, kabla::sheet::ics(&pack, &statements).unwrap()).unwrap();
            let output = Command::new(python).args(["-c", READER]).arg(&path).output().unwrap();
            assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
            let read = String::from_utf8(output.stdout).unwrap();
            let mut events: Vec<&str> = read.lines().collect();
            events.sort_unstable();
            let title = |step: &kabla::plan::Step| {
                let statement = statements.iter().find(|of| of.subject.name() == step.topic.name()).unwrap();
                pack.write(statement).unwrap().title
            };
            let after = |day: chrono::NaiveDate| day + chrono::Days::new(1);
            let mut expected: Vec<String> = plan
                .steps
                .iter()
                .map(|step| format!("{}|{}|1|-172800.0|{}", step.when.from, after(step.when.to), title(step)))
                .collect();
            expected.sort_unstable();
            assert_eq!(events, expected, "{tag} {name}");
        }
    }
}

/// On a page from right to left the lines begin at the right edge, on an English one at the left.
#[test]
fn pdftotext_finds_lines_from_right_to_left() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let folder = tempfile::tempdir().unwrap();
    let edges = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        let output = Command::new(pdftotext)
            .args(["-bbox-layout", "-f", "1", "-l", "1"])
            .arg(&path)
            .arg("-")
            .output()
            .unwrap();
        let text = String::from_utf8(output.stdout).unwrap();
        let of = |line: &str, name: &str| -> f64 {
            line.split_once(&format!("{name}=\"")).unwrap().1.split('"').next().unwrap().parse().unwrap()
        };
        // The title is the first line, and shorter than the page is wide.
        let title = text.lines().find(|line| line.contains("<line ")).unwrap();
        (of(title, "xMin"), of(title, "xMax"))
    };
    const PAPER: f64 = 595.0;
    const MARGIN: f64 = 17.0 * 72.0 / 25.4;
    let (_, right) = edges("rtl.pdf", &crate::pseudo::right_to_left());
    assert!((PAPER - MARGIN - right).abs() < 6.0, "the title ends at {right}");
    let (_, case) = examples().remove(0);
    let pack = Pack::load(&Embedded, "en").unwrap();
    let facts = Facts::of(&pack, &tell(&case, &make(&case).unwrap())).unwrap();
    let (left, _) =
        edges("ltr.pdf", &Printer::new(&Embedded).unwrap().print(Paper::Guide, &facts).unwrap().bytes);
    assert!((left - MARGIN).abs() < 6.0, "the title begins at {left}");
}

/// The pictures are as their program draws them.
#[test]
fn pictures_are_as_they_are_drawn() {
    let Some(python) = program("python3") else { return };
    let draw = Path::new(env!("CARGO_MANIFEST_DIR")).join("templates/pictures/draw.py");
    let output = Command::new(python).arg(draw).arg("--check").output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
}

/// The season's plan of segments as an independent reader takes it: a week from Monday on for each event, in every language,
/// as many as the table has.
#[test]
fn an_independent_reader_reads_the_plan_of_segments() {
    const READER: &str = r#"
import sys, icalendar
for event in icalendar.Calendar.from_ical(open(sys.argv[1], "rb").read()).walk("VEVENT"):
    begin, end = event["DTSTART"].dt, event["DTEND"].dt
    assert begin.weekday() == 0 and (end - begin).days == 7 and event["UID"] and event["DTSTAMP"] and event["DESCRIPTION"]
    print(begin, event["SUMMARY"], sep="|")
"#;
    let Some(python) = python_with("icalendar") else { return };
    let folder = tempfile::tempdir().unwrap();
    for tag in Pack::tags(&Embedded) {
        let made = Command::new(env!("CARGO_BIN_EXE_kabla"))
            .args(["segment", "examples/zone.toml", "--season", "--language", &tag, "--out"])
            .arg(folder.path())
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .output()
            .unwrap();
        assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
        let path = |ending: &str| folder.path().join(format!("{tag}-segments.{ending}"));
        let output = Command::new(python).args(["-c", READER]).arg(path("ics")).output().unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        let read = String::from_utf8(output.stdout).unwrap();
        let table = fs::read_to_string(path("csv")).unwrap();
        let mut weeks: Vec<&str> = table.lines().skip(1).map(|line| &line[..10]).collect();
        weeks.dedup();
        let events: Vec<&str> = read.lines().map(|line| line.split_once('|').unwrap().0).collect();
        assert_eq!(events, weeks, "{tag}");
        // The first topic of each week stands in its summary.
        for line in read.lines() {
            let (from, summary) = line.split_once('|').unwrap();
            let mut rows = csv::Reader::from_reader(table.as_bytes());
            let first = rows.records().map(Result::unwrap).find(|row| &row[0] == from).unwrap();
            assert!(summary.starts_with(&first[5]), "{tag}: {line}");
        }
    }
}

/// A text as pdftohtml reads it from a page.
struct Placed {
    page: usize,
    left: f64,
    top: f64,
    right: f64,
    /// Of the smallest letters.
    size: f64,
    text: String,
}

/// The texts of a PDF with place and size in points, and its bookmarks.
fn placed(path: &Path) -> (Vec<Placed>, Vec<String>) {
    let output = Command::new("pdftohtml")
        .args(["-xml", "-i", "-stdout", "-zoom", "1", "-fontfullname"])
        .arg(path)
        .output()
        .unwrap();
    let xml = String::from_utf8(output.stdout).unwrap();
    let of = |tag: &str, name: &str| -> f64 {
        tag.split_once(&format!("{name}=\"")).unwrap().1.split('"').next().unwrap().parse().unwrap()
    };
    let unmarked = |text: &str| -> String {
        let mut text = text.to_owned();
        while let (Some(from), Some(to)) = (text.find('<'), text.find('>')) {
            text.replace_range(from..=to, "");
        }
        text.replace('\u{200b}', "").replace("&amp;", "&").replace("&#39;", "'").replace("&quot;", "\"")
    };
    let (mut page, mut fonts, mut texts, mut marks) = (0, std::collections::BTreeMap::new(), vec![], vec![]);
    for line in xml.lines() {
        if line.starts_with("<page ") {
            page += 1;
        } else if let Some(at) = line.find("<fontspec ") {
            fonts.insert(of(&line[at..], "id") as usize, of(&line[at..], "size"));
        } else if line.starts_with("<text ") {
            let (tag, text) = line.split_once('>').unwrap();
            let size = fonts[&(of(tag, "font") as usize)];
            let (left, top) = (of(tag, "left"), of(tag, "top"));
            let right = left + of(tag, "width");
            // A line in letters of several fonts comes in parts.
            match texts.last_mut() {
                Some(Placed { page: of, top: at, right: end, size: least, text: line, .. })
                    if *of == page && (*at - top).abs() < 2.5 && (left - *end).abs() < 2.5 =>
                {
                    line.push_str(&unmarked(text));
                    (*end, *least) = (right, least.min(size));
                }
                _ => texts.push(Placed { page, left, top, right, size, text: unmarked(text) }),
            }
        } else if line.starts_with("<item ") {
            marks.push(plain_spaces(&unmarked(line)));
        }
    }
    for placed in &mut texts {
        placed.text = plain_spaces(&placed.text);
    }
    (texts, marks)
}

/// The steps of a farm sheet are set in 14 pt; no heading of any format stands alone at the foot of a page or column;
/// each title of a step is a bookmark.
#[test]
fn letters_are_large_and_headings_keep_with_their_text() {
    if program("pdftohtml").is_none() {
        return;
    }
    let printer = Printer::new(&Embedded).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sheet.pdf");
    for tag in Pack::tags(&Embedded) {
        for (name, case) in examples() {
            let facts = drawn(&tag, &case);
            for paper in [Paper::Farm, Paper::Guide] {
                fs::write(&path, printer.print(paper, &facts).unwrap().bytes).unwrap();
                let (texts, marks) = placed(&path);
                let what = format!("{tag} {name} {paper:?}");
                let titles = facts.steps.iter().map(|step| format!("{}. {}", step.number, step.title));
                let titles = titles.chain(facts.cautions.iter().map(|caution| caution.title.clone()));
                let headings = [&facts.labels["steps"], &facts.labels["amounts"], &facts.labels["cautions"]];
                for title in titles.chain(headings.into_iter().cloned()).map(|title| plain_spaces(&title)) {
                    assert!(marks.contains(&title), "{what}: no bookmark {title} in {marks:?}");
                    // Of a title on two lines, the first.
                    let heading =
                        texts.iter().find(|text| text.text.len() > 5 && title.starts_with(&text.text));
                    let heading = heading.unwrap_or_else(|| panic!("{what}: {title}"));
                    let follows = texts.iter().any(|text| {
                        text.page == heading.page
                            && text.top > heading.top
                            && text.top < heading.top + 90.0
                            && (text.left - heading.left).abs() < 110.0
                            && !title.contains(&text.text)
                            && text.size > 10.5
                    });
                    assert!(follows, "{what}: {title} stands alone");
                }
                if paper == Paper::Farm {
                    for entry in facts.steps.iter().chain(&facts.cautions) {
                        let short = plain_spaces(&entry.short);
                        let lines = texts.iter().filter(|text| {
                            text.text.chars().count() > 12 && short.contains(text.text.as_str())
                        });
                        let sizes: Vec<f64> = lines.map(|text| text.size).collect();
                        assert!(!sizes.is_empty(), "{what}: {short}");
                        assert!(sizes.iter().all(|size| *size >= 14.0), "{what}: {sizes:?} of {short}");
                    }
                }
            }
        }
    }
}

/// Every format: tagged, with title and language, every font in it; in the pseudo-language, no plain word.
#[test]
fn every_format_is_tagged_and_holds_its_fonts() {
    let (Some(pdfinfo), Some(pdftotext)) = (program("pdfinfo"), program("pdftotext")) else { return };
    let printer = Printer::new(&Embedded).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sheet.pdf");
    for (tag, language) in [("sw", "sw"), ("pt-MZ", "pt-MZ"), ("en-XA", "en-XA")] {
        let facts = drawn(tag, &farm());
        for paper in PAPERS {
            let bytes = printer.print(paper, &facts).unwrap().bytes;
            fs::write(&path, &bytes).unwrap();
            let said = Command::new(pdfinfo).arg(&path).output().unwrap();
            let said = String::from_utf8_lossy(&said.stdout).into_owned();
            let value = |label: &str| -> String {
                let line = said.lines().find(|line| line.starts_with(label)).unwrap_or_default();
                line.trim_start_matches(label).trim().to_owned()
            };
            assert_eq!(value("Tagged:"), "yes", "{tag} {paper:?}");
            assert!(value("Title:").contains("Neema"), "{tag} {paper:?}: {said}");
            let lang = format!("/Lang({language})");
            assert!(
                bytes.windows(lang.len()).any(|window| window == lang.as_bytes()),
                "{tag} {paper:?}: {lang}"
            );
            let fonts = Command::new("pdffonts").arg(&path).output().unwrap();
            let fonts = String::from_utf8_lossy(&fonts.stdout).into_owned();
            assert!(fonts.lines().count() > 2);
            for line in fonts.lines().skip(2) {
                assert!(line.contains(" yes yes "), "a font that is not embedded: {line}");
            }
            if tag == "en-XA" {
                let text = text_of_pdf(pdftotext, &path);
                assert!(text.contains("Þ"), "{text}");
                // Signs of units stay as they are.
                let words = crate::pseudo::plain_words(&text, &farm());
                let words: Vec<_> =
                    words.iter().filter(|word| !["kg", "cm"].contains(&word.as_str())).collect();
                assert!(words.is_empty(), "{paper:?}: {words:?}");
            }
        }
    }
}

/// An own header stands on every format that has room for one, and in a booklet.
#[test]
fn an_own_header_is_printed() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("sheet.pdf");
    fs::write(folder.path().join("header.typ"), "#let header(s) = block[Growers of Kisima]").unwrap();
    let data = kabla::data::Templates::over(&Embedded, folder.path()).unwrap();
    let facts = drawn("en", &farm());
    let printer = Printer::new(&data).unwrap();
    for paper in PAPERS {
        fs::write(&path, printer.print(paper, &facts).unwrap().bytes).unwrap();
        let found = text_of_pdf(pdftotext, &path).contains("Growers of Kisima");
        assert_eq!(found, paper != Paper::Card, "{paper:?}");
    }
    fs::write(&path, printer.booklet(vec![facts.clone(), facts]).unwrap().bytes).unwrap();
    assert_eq!(text_of_pdf(pdftotext, &path).matches("Growers of Kisima").count(), 2);
}

/// The index of a booklet is by name, and each number is the page where the farm's sheet begins.
#[test]
fn a_booklet_leads_to_its_farms() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("booklet.pdf");
    let names = ["Zuri", "amani", "Mwangaza", "Baraka"];
    let farms = names.map(|name| drawn("sw", &kabla::plan::Case { name: name.to_owned(), ..farm() }));
    let made = Printer::new(&Embedded).unwrap().booklet(farms.to_vec()).unwrap();
    assert_eq!(made.overflows, Vec::<String>::new());
    fs::write(&path, made.bytes).unwrap();
    let page = |number: usize| {
        let number = number.to_string();
        let output = Command::new(pdftotext)
            .args(["-layout", "-f", &number, "-l", &number])
            .arg(&path)
            .arg("-")
            .output()
            .unwrap();
        String::from_utf8(output.stdout).unwrap()
    };
    let index = page(1);
    let found: Vec<(String, usize)> = index
        .lines()
        .filter_map(|line| {
            let (name, number) = line.trim().rsplit_once(' ')?;
            let name = name.trim();
            names.contains(&name).then(|| (name.to_owned(), number.parse().unwrap()))
        })
        .collect();
    let order: Vec<&str> = found.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(order, ["amani", "Baraka", "Mwangaza", "Zuri"], "{index}");
    for (name, number) in found {
        assert!(page(number).trim_start().starts_with(&name), "{name} is not on page {number}");
    }
}

/// The page with its drawings, as `kabla sheet --as html` makes it.
fn drawn_page(tag: &str, case: &kabla::plan::Case) -> String {
    String::from_utf8(html(&drawn(tag, case), &Embedded).unwrap()).unwrap()
}

/// axe-core (npm), the path of whose `axe.min.js` `KABLA_AXE` names, finds nothing serious in light or dark.
#[test]
fn axe_finds_nothing_serious() {
    if program("chromium").is_none() {
        return;
    }
    let Some(axe) = std::env::var_os("KABLA_AXE") else {
        program("axe-core by KABLA_AXE");
        return;
    };
    let axe = fs::read_to_string(axe).unwrap().replace("</script", "<\\/script");
    let folder = tempfile::tempdir().unwrap();
    for (name, case) in examples() {
        for (tag, dark) in [("en", false), ("sw", true), ("am", true)] {
            let run = "axe.run().then(r=>document.title='axe '+JSON.stringify({passes:r.passes.length,dark:matchMedia('(prefers-color-scheme: dark)').matches,bad:r.violations.map(v=>[v.impact,v.id,v.nodes.map(n=>n.html.slice(0,120))])}))";
            let page = drawn_page(tag, &case)
                .replace("</body>", &format!("<script>{axe}</script><script>{run}</script></body>"));
            let path = folder.path().join("page.html");
            fs::write(&path, page).unwrap();
            let scheme = if dark {
                "--blink-settings=preferredColorScheme=0"
            } else {
                "--blink-settings=preferredColorScheme=1"
            };
            let address = format!("file://{}", path.display());
            let output = chromium(&[scheme, "--dump-dom", "--virtual-time-budget=10000", &address]);
            let dom = String::from_utf8_lossy(&output.stdout).into_owned();
            let title = dom.split_once("<title>").unwrap().1.split("</title>").next().unwrap().to_owned();
            let said = title.strip_prefix("axe ").unwrap_or_else(|| panic!("axe did not end: {title}"));
            let said: serde_json::Value =
                serde_json::from_str(&said.replace("&amp;", "&").replace("&lt;", "<").replace("&gt;", ">"))
                    .unwrap();
            assert_eq!(said["dark"], dark, "{tag} {name}");
            assert!(said["passes"].as_u64().unwrap() > 15, "{said}");
            let serious = |of: &&serde_json::Value| matches!(of[0].as_str(), Some("serious" | "critical"));
            let bad: Vec<_> = said["bad"].as_array().unwrap().iter().filter(serious).collect();
            assert!(bad.is_empty(), "{tag} {name}: {bad:?}");
        }
    }
}
