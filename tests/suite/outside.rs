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

/// The program, or `None` after saying why the test is skipped.
pub(crate) fn program(name: &str) -> Option<&str> {
    let found = Command::new("sh")
        .args(["-c", &format!("command -v {name}")])
        .output()
        .is_ok_and(|output| output.status.success());
    if found {
        return Some(name);
    }
    assert!(
        std::env::var_os("KABLA_OUTSIDE").is_none(),
        "{name} is not installed, and KABLA_OUTSIDE asks for it"
    );
    // Not eprintln!, which the test runner would swallow.
    let _ = writeln!(std::io::stderr(), "skipped: a test that needs {name}, which is not installed");
    None
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
    let output = Command::new(pdftotext).arg(path).arg("-").output().unwrap();
    assert!(output.status.success());
    // A date may be broken over two lines.
    plain_spaces(&String::from_utf8(output.stdout).unwrap())
}

pub(crate) fn plain_spaces(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// pdftotext finds every date and every amount of every example's plan.
#[test]
fn pdftotext_finds_dates_and_amounts() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let printer = Printer::new(&Embedded).unwrap();
    let folder = tempfile::tempdir().unwrap();
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let plan = make(&case).unwrap();
            let facts = Facts::of(&pack, &tell(&case, &plan)).unwrap();
            let path = folder.path().join(format!("{tag}-{name}.pdf"));
            fs::write(&path, printer.print(Paper::Farm, &facts).unwrap().bytes).unwrap();
            let text = text_of_pdf(pdftotext, &path);
            for step in &plan.steps {
                for day in [step.when.from, step.when.to] {
                    let date = pack.write_date(day).unwrap();
                    assert!(
                        text.contains(&plain_spaces(&date)),
                        "{tag} {name}: {date} of {}",
                        step.topic.name()
                    );
                }
            }
            let shown = text.split(' ').collect::<Vec<_>>();
            for amount in plan.amounts.0.iter().filter(|amount| !UNPRINTED.contains(&amount.quantity.name()))
            {
                let decimals = if amount.value.fract() == 0.0 { 0 } else { 1 };
                // A no-break space between digits is a space in the page's text.
                let digits = pack.write_number(amount.value, decimals).replace(char::is_whitespace, " ");
                let found = (digits.contains(' ') && text.contains(&digits))
                    || shown.iter().any(|word| word.trim_matches(|c: char| !c.is_ascii_digit()) == digits);
                assert!(found, "{tag} {name}: {digits} ({})", amount.quantity.name());
            }
            for entry in facts.steps.iter().chain(&facts.cautions) {
                assert!(text.contains(&plain_spaces(&entry.title)), "{tag} {name}: {}", entry.title);
            }
            assert!(text.contains(&plain_spaces(&facts.status)), "{tag} {name}");
        }
    }
}

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
            fs::write(&path, printer.print(Paper::Farm, &facts).unwrap().bytes).unwrap();
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
                line.contains("Andika") && line.contains(" yes yes "),
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

fn page(tag: &str) -> String {
    let pack = Pack::load(&Embedded, tag).unwrap();
    let (_, case) = examples().remove(0);
    let facts = Facts::of(&pack, &tell(&case, &make(&case).unwrap())).unwrap();
    String::from_utf8(html(&facts, &Embedded).unwrap()).unwrap()
}

/// On a phone 320 px wide nothing reaches beyond the screen.
#[test]
fn chromium_shows_the_page_on_a_small_phone() {
    if program("chromium").is_none() {
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    for tag in ["en", "sw"] {
        let inside = page(tag).replace('&', "&amp;").replace('"', "&quot;");
        let frame = format!(
            "<!DOCTYPE html><title>waiting</title><iframe width=320 height=800 style=\"border:0\" srcdoc=\"{inside}\" onload=\"const e=this.contentDocument.documentElement;document.title='beyond '+(e.scrollWidth-e.clientWidth)+' height '+e.scrollHeight\"></iframe>"
        );
        let path = folder.path().join(format!("{tag}.html"));
        fs::write(&path, frame).unwrap();
        let output =
            chromium(&["--dump-dom", "--virtual-time-budget=5000", &format!("file://{}", path.display())]);
        let dom = String::from_utf8_lossy(&output.stdout).into_owned();
        assert!(dom.contains("<title>beyond 0 height "), "{tag}: {}", &dom[..dom.len().min(200)]);
        assert!(number_after(&dom[..dom.find("</title>").unwrap()], "height ") > 800.0);
    }
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
    fs::write(&source, page("sw")).unwrap();
    chromium(&[
        "--no-pdf-header-footer",
        &format!("--print-to-pdf={}", printed.display()),
        &format!("file://{}", source.display()),
    ]);
    let text = text_of_pdf(pdftotext, &printed);
    let pack = Pack::load(&Embedded, "sw").unwrap();
    let (_, case) = examples().remove(0);
    let facts = Facts::of(&pack, &tell(&case, &make(&case).unwrap())).unwrap();
    for entry in facts.steps.iter().chain(&facts.cautions) {
        assert!(text.contains(&plain_spaces(&entry.title)), "{}", entry.title);
        for when in &entry.when {
            assert!(text.contains(when), "{when}");
        }
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
        edges("ltr.pdf", &Printer::new(&Embedded).unwrap().print(Paper::Farm, &facts).unwrap().bytes);
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
