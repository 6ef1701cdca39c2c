//! What other people's programs say of our files. Where a program is not
//! installed, its test says so and is skipped; `.ci/run` installs them all and
//! sets `KABLA_OUTSIDE=required`, so that nothing is skipped there.

use std::fs;
use std::io::Write as _;
use std::process::Command;
use std::sync::LazyLock;

use kabla::data::Embedded;
use kabla::guidance::tell;
use kabla::language::Pack;
use kabla::plan::{Quantity, make};
use kabla::sheet::{Facts, Paper, Printer, TipFacts, html};

use crate::examples;
use crate::paper::{PAPERS, drawn, farm};
use crate::project::{Project, Run, example, repository, text};

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

/// What a program that must succeed says.
#[track_caller]
pub(crate) fn ask(program: &str, arguments: &[&str]) -> Run {
    Run::of(Command::new(program).args(arguments)).done()
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
static DEMO: LazyLock<Project> = LazyLock::new(|| {
    let project = Project::new();
    project.kabla(&["demo", "--out", "."]).done();
    project
});

fn demo_files(ending: &str) -> Vec<String> {
    let files = DEMO.files().into_iter().filter(|name| name.ends_with(ending));
    let files: Vec<String> = files.map(|name| text(&DEMO.path(&name))).collect();
    assert!(files.len() >= 2, "{files:?}");
    files
}

pub(crate) fn number_after(text: &str, label: &str) -> f64 {
    let at = text.rfind(label).unwrap_or_else(|| panic!("no {label} in {text}"));
    text[at + label.len()..].split_whitespace().next().unwrap().parse().unwrap()
}

/// What ffmpeg's ebur128 filter says of a file.
pub(crate) fn loudness_by(ffmpeg: &str, path: &str) -> String {
    let filter = ["-af", "ebur128=peak=true", "-f", "null", "-"];
    ask(ffmpeg, &[&["-nostats", "-hide_banner", "-i", path], &filter[..]].concat()).err
}

/// EBU R 128 as ffmpeg's ebur128 filter measures it, on every radio file.
#[test]
fn ffmpeg_measures_our_loudness() {
    let Some(ffmpeg) = program("ffmpeg") else { return };
    for wave in demo_files(".wav") {
        let said = loudness_by(ffmpeg, &wave);
        let (loudness, peak) = (number_after(&said, "I:"), number_after(&said, "Peak:"));
        assert!((loudness + 23.0).abs() <= 0.3, "{wave}: {loudness} LUFS");
        assert!(peak <= -0.9, "{wave}: {peak} dBTP");
        assert!(said.contains("48000 Hz, mono") || said.contains("48000 Hz, 1 channels"), "{said}");
        assert!(said.contains("pcm_s16le"), "{said}");
    }
}

/// Captions as ffmpeg reads WebVTT: as many cues, ending within the sound.
#[test]
fn ffmpeg_reads_our_captions() {
    let Some(ffmpeg) = program("ffmpeg") else { return };
    for captions in demo_files(".vtt") {
        let read = ask(ffmpeg, &["-v", "error", "-i", &captions, "-f", "srt", "-"]);
        assert_eq!(read.err, "", "{captions}");
        let cues = read.out.matches(" --> ").count();
        let ours = fs::read_to_string(&captions).unwrap().matches(" --> ").count();
        assert!(cues > 3 && cues == ours, "{captions}: {cues} of {ours} cues");
    }
}

/// A PDF's text in the order in which it is written: what lies side by side is not put in between, and a date may be
/// broken over two lines.
pub(crate) fn text_of_pdf(pdftotext: &str, path: &str) -> String {
    plain_spaces(&ask(pdftotext, &["-raw", path, "-"]).out)
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
    let project = Project::new();
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let plan = make(&case).unwrap();
            let facts = drawn(&tag, &case);
            for paper in [Paper::Farm, Paper::Guide] {
                let path = project.write("sheet.pdf", printer.print(paper, &facts).unwrap().bytes);
                let text = text_of_pdf(pdftotext, &path);
                let what = format!("{tag} {name} {paper:?}");
                for step in &plan.now.steps {
                    for day in [step.when.from, step.when.to] {
                        let function = if paper == Paper::Farm { "BRIEF" } else { "DAY" };
                        let date = pack.write_day(day, function).unwrap();
                        assert!(
                            text.contains(&plain_spaces(&date)),
                            "{what}: {date} of {}",
                            step.kind.name()
                        );
                    }
                }
                let left_out = |quantity: &str| {
                    UNPRINTED.contains(&quantity) || (paper == Paper::Farm && DRAWN.contains(&quantity))
                };
                for amount in plan.now.amounts.0.iter().filter(|amount| !left_out(amount.quantity.name())) {
                    // The first cut is printed as a range.
                    let range =
                        amount.told_range().filter(|_| amount.quantity == Quantity::CuttingsAtFirstCut);
                    let told = range.map_or(vec![amount.told()], |(low, high)| vec![low, high]);
                    for value in told {
                        let digits = pack.write_number(value, u8::from(value.fract() != 0.0));
                        assert!(stands_in(&digits, &text), "{what}: {digits} ({})", amount.quantity.name());
                    }
                }
                let cuts = plan.now.cuts.iter().map(|cut| cut.cuttings.told());
                for cut in cuts.flat_map(|cut| [cut.low, cut.high]) {
                    let digits = pack.write_number(f64::from(cut), 0);
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

/// Whether a number stands in a text, by itself or in a range, and not as a part of a longer one.
fn stands_in(digits: &str, text: &str) -> bool {
    // A no-break space between digits is a space in the page's text.
    let digits = digits.replace(char::is_whitespace, " ");
    (digits.contains(' ') && text.contains(&digits))
        || text.split([' ', '–']).any(|word| word.trim_matches(|c: char| !c.is_ascii_digit()) == digits)
}

/// How full a layer may be at most is drawn on the farm sheet as it comes out.
const DRAWN: [&str; 3] = ["roots_per_layer", "roots_in_top_layer", "bed_strips"];

/// A name prints as itself: every letter of it is in the PDF, unbroken, whatever markup it looks like.
#[test]
fn pdftotext_finds_hostile_names_as_they_are() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let printer = Printer::new(&Embedded).unwrap();
    let project = Project::new();
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
            let path = project.write("sheet.pdf", printer.print(Paper::Guide, &facts).unwrap().bytes);
            assert!(text_of_pdf(pdftotext, &path).contains(name), "{tag}: {name}");
        }
    }
}

/// The bed is printed by its sides; the season's cuttings, rows and trips are for those who plan.
const UNPRINTED: [&str; 14] = [
    "bed_area_m2",
    "cuttings_over_season",
    "field_rows",
    "cuttings_per_row",
    "water_trips_per_day",
    "water_hours_per_day",
    "water_l_until_shoots",
    "watering_days_until_shoots",
    "work_ridging_days",
    "work_bed_days",
    "work_watering_days",
    "work_cutting_days",
    "work_planting_days",
    "work_days",
];

#[test]
fn pdfinfo_says_tagged_with_title_and_language() {
    let Some(pdfinfo) = program("pdfinfo") else { return };
    for sheet in demo_files(".pdf") {
        let said = ask(pdfinfo, &[&sheet]).out;
        let value = |label: &str| {
            let line = said
                .lines()
                .find(|line| line.starts_with(label))
                .unwrap_or_else(|| panic!("no {label}\n{said}"));
            line[label.len()..].trim().to_owned()
        };
        assert_eq!(value("Tagged:"), "yes");
        let of_zone = sheet.contains("-segment-");
        let name = if of_zone { "Eastern lowlands" } else { "Neema" };
        assert!(value("Title:").contains(name), "{said}");
        assert!(value("Page size:").contains("A4"), "{said}");
        let fonts = ask("pdffonts", &[&sheet]).out;
        assert!(fonts.lines().count() > 2, "{fonts}");
        for line in fonts.lines().skip(2) {
            assert!(
                line.contains("KablaSans") && line.contains(" yes yes "),
                "a font that is not embedded: {line}"
            );
        }
    }
}

/// What the browser says of a page.
fn chromium(page: &str, arguments: &[&str]) -> String {
    let profile = Project::new();
    let profile = format!("--user-data-dir={}", profile.folder().display());
    let quiet = [
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        &profile,
    ];
    ask("chromium", &[&quiet[..], arguments, &[&format!("file://{page}")]].concat()).out
}

/// A page as a browser prints it: the path of the PDF.
fn printed_by_chromium(project: &Project, page: impl AsRef<[u8]>) -> String {
    let printed = text(&project.path("sheet.pdf"));
    let page = project.write("sheet.html", page);
    chromium(&page, &["--no-pdf-header-footer", &format!("--print-to-pdf={printed}")]);
    printed
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
    let project = Project::new();
    let dom = chromium(&project.write("pages.html", frames), &["--dump-dom", "--virtual-time-budget=20000"]);
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
    let project = Project::new();
    let (page, _) = pages.iter().find(|(_, tag)| tag == "am").unwrap();
    let listed = ask(pdffonts, &[&printed_by_chromium(&project, page)]).out;
    assert!(listed.contains("NotoSansEthiopic"), "{listed}");
}

/// Printed from a browser, the page holds the same steps as the sheet.
#[test]
fn chromium_prints_the_page() {
    if program("chromium").is_none() {
        return;
    }
    let Some(pdftotext) = program("pdftotext") else { return };
    let project = Project::new();
    let facts = drawn("sw", &farm());
    let printed = printed_by_chromium(&project, html(&facts, &Embedded).unwrap());
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
    let project = Project::new();
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let plan = make(&case).unwrap();
            let statements = tell(&case, &plan);
            let path = project.write("season.ics", kabla::sheet::ics(&pack, &statements).unwrap());
            let read = ask(python, &["-c", READER, &path]).out;
            let mut events: Vec<&str> = read.lines().collect();
            events.sort_unstable();
            let title = |step: &kabla::plan::Step| {
                let statement = statements.iter().find(|of| of.subject.name() == step.kind.name()).unwrap();
                pack.write(statement).unwrap().title
            };
            let after = |day: chrono::NaiveDate| day + chrono::Days::new(1);
            let mut expected: Vec<String> = plan
                .now
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
    let project = Project::new();
    let edges = |name: &str, bytes: &[u8]| {
        let path = project.write(name, bytes);
        let text = ask(pdftotext, &["-bbox-layout", "-f", "1", "-l", "1", &path, "-"]).out;
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
    ask(python, &[&text(&repository().join("templates/pictures/draw.py")), "--check"]);
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
    let project = Project::new();
    let zone = example("zone.toml");
    for tag in Pack::tags(&Embedded) {
        let season = ["segment", &zone, "--season", "--language", &tag, "--out", "."];
        project.kabla(&season).done();
        let path = |ending: &str| text(&project.path(&format!("{tag}-segments.{ending}")));
        let read = ask(python, &["-c", READER, &path("ics")]).out;
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
fn placed(path: &str) -> (Vec<Placed>, Vec<String>) {
    let xml = ask("pdftohtml", &["-xml", "-i", "-stdout", "-zoom", "1", "-fontfullname", path]).out;
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
    let project = Project::new();
    for tag in Pack::tags(&Embedded) {
        for (name, case) in examples() {
            let facts = drawn(&tag, &case);
            for paper in [Paper::Farm, Paper::Guide] {
                let path = project.write("sheet.pdf", printer.print(paper, &facts).unwrap().bytes);
                let (texts, marks) = placed(&path);
                let what = format!("{tag} {name} {paper:?}");
                // What is to be done now and next is marked before the number.
                let marked = |text: &str| if text.is_empty() { String::new() } else { format!("{text} ") };
                let titles = facts
                    .steps
                    .iter()
                    .map(|step| format!("{}{}. {}", marked(&step.standing_text), step.number, step.title));
                let titles = titles.chain(facts.cautions.iter().map(|caution| caution.title.clone()));
                let headings = [&facts.labels["steps"], &facts.labels["amounts"], &facts.labels["cautions"]];
                let marks_of = |title: &str| facts.steps.iter().find(|step| title.ends_with(&step.title));
                for title in titles.chain(headings.into_iter().cloned()).map(|title| plain_spaces(&title)) {
                    assert!(marks.contains(&title), "{what}: no bookmark {title} in {marks:?}");
                    // Its mark is set apart, or read in one with it.
                    let whole = title.clone();
                    let mark = marks_of(&title).map(|step| marked(&step.standing_text)).unwrap_or_default();
                    let title = title.strip_prefix(&mark).unwrap_or(&title).to_owned();
                    // Of a title on two lines, the first.
                    let heading = texts.iter().find(|text| {
                        let begins = |title: &str| title.starts_with(&text.text);
                        text.text.len() > 5 && (begins(&title) || begins(&whole))
                    });
                    let heading = heading.unwrap_or_else(|| panic!("{what}: {title}"));
                    let follows = texts.iter().any(|text| {
                        text.page == heading.page
                            && text.top > heading.top
                            && text.top < heading.top + 90.0
                            && (text.left - heading.left).abs() < 110.0
                            && !whole.contains(&text.text)
                            && text.size > 10.5
                    });
                    assert!(follows, "{what}: {title} stands alone");
                }
                if paper == Paper::Farm {
                    for entry in facts.steps.iter().chain(&facts.cautions) {
                        let short = plain_spaces(&entry.short);
                        let lines = texts.iter().filter(|text| {
                            // What is good to know stands below in smaller letters, and may end in the same words.
                            let of_tip = |tip: &TipFacts| plain_spaces(&tip.text).contains(&text.text);
                            let long = text.text.chars().count() > 12;
                            long && short.contains(text.text.as_str()) && !entry.tips.iter().any(of_tip)
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
    let project = Project::new();
    for (tag, language) in [("sw", "sw"), ("pt-MZ", "pt-MZ"), ("en-XA", "en-XA")] {
        let facts = drawn(tag, &farm());
        for paper in PAPERS {
            let bytes = printer.print(paper, &facts).unwrap().bytes;
            let path = project.write("sheet.pdf", &bytes);
            let said = ask(pdfinfo, &[&path]).out;
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
            let fonts = ask("pdffonts", &[&path]).out;
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
    let project = Project::new();
    project.write("header.typ", "#let header(s) = block[Growers of Kisima]");
    let data = kabla::data::Templates::over(&Embedded, project.folder()).unwrap();
    let facts = drawn("en", &farm());
    let printer = Printer::new(&data).unwrap();
    for paper in PAPERS {
        let path = project.write("sheet.pdf", printer.print(paper, &facts).unwrap().bytes);
        let found = text_of_pdf(pdftotext, &path).contains("Growers of Kisima");
        assert_eq!(found, paper != Paper::Card, "{paper:?}");
    }
    let path = project.write("sheet.pdf", printer.booklet(vec![facts.clone(), facts]).unwrap().bytes);
    assert_eq!(text_of_pdf(pdftotext, &path).matches("Growers of Kisima").count(), 2);
}

/// The index of a booklet is by name, and each number is the page where the farm's sheet begins.
#[test]
fn a_booklet_leads_to_its_farms() {
    let Some(pdftotext) = program("pdftotext") else { return };
    let project = Project::new();
    let names = ["Zuri", "amani", "Mwangaza", "Baraka"];
    let farms = names.map(|name| drawn("sw", &kabla::plan::Case { name: name.to_owned(), ..farm() }));
    let made = Printer::new(&Embedded).unwrap().booklet(farms.to_vec()).unwrap();
    assert_eq!(made.overflows, Vec::<String>::new());
    let path = project.write("booklet.pdf", made.bytes);
    let page = |number: usize| {
        let number = number.to_string();
        ask(pdftotext, &["-layout", "-f", &number, "-l", &number, &path, "-"]).out
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
    let project = Project::new();
    for (name, case) in examples() {
        for (tag, dark) in [("en", false), ("sw", true), ("am", true)] {
            let run = "axe.run().then(r=>document.title='axe '+JSON.stringify({passes:r.passes.length,dark:matchMedia('(prefers-color-scheme: dark)').matches,bad:r.violations.map(v=>[v.impact,v.id,v.nodes.map(n=>n.html.slice(0,120))])}))";
            let page = drawn_page(tag, &case)
                .replace("</body>", &format!("<script>{axe}</script><script>{run}</script></body>"));
            let path = project.write("page.html", page);
            let scheme = if dark {
                "--blink-settings=preferredColorScheme=0"
            } else {
                "--blink-settings=preferredColorScheme=1"
            };
            let dom = chromium(&path, &[scheme, "--dump-dom", "--virtual-time-budget=10000"]);
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
