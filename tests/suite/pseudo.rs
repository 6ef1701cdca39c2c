//! Languages made from English: text that no pack has, places too narrow, and right to left.

use std::borrow::Cow;

use kabla::data::{Data, Embedded};
use kabla::guidance::{Value, tell};
use kabla::language::{ACCENTED, Label, MIRRORED, Pack, Pseudo};
use kabla::plan::{Case, make};
use kabla::sheet::{Facts, Paper, Printer, SmsOptions, html, ics, sms, text};

use crate::examples;

/// The program's data with a font for Arabic letters, which no pack needs yet.
pub(crate) struct WithArabic;

impl Data for WithArabic {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        match path {
            "fonts/NotoNaskhArabic-Regular.ttf" => {
                Some(include_bytes!("../fonts/NotoNaskhArabic-Regular.ttf").as_slice().into())
            }
            path => Embedded.read(path),
        }
    }
    fn list(&self, folder: &str) -> Vec<String> {
        let mut names = Embedded.list(folder);
        if folder == "fonts" {
            names.push("NotoNaskhArabic-Regular.ttf".to_owned());
        }
        names
    }
}

fn facts(tag: &str, case: &Case) -> (Pack, Facts) {
    let pack = Pack::load(&Pseudo::new(&Embedded), tag).unwrap();
    let facts = Facts::of(&pack, &tell(case, &make(case).unwrap())).unwrap();
    (pack, facts)
}

/// Runs of plain letters that stand in an output and in no text of the case.
pub(crate) fn plain_words(output: &str, case: &Case) -> Vec<String> {
    let mut from_case: Vec<String> = vec![case.name.clone(), case.place.name.clone()];
    from_case.extend(case.farms.iter().map(|farm| farm.name.clone()));
    let mut output = output.to_owned();
    for text in from_case {
        output = output.replace(&text, "").replace(&text.replace('\'', "&#x27;"), "");
    }
    let words = output.split(|c: char| !c.is_alphabetic()).filter(|word| word.len() > 1);
    words.filter(|word| word.chars().all(|c| c.is_ascii_alphabetic())).map(str::to_owned).collect()
}

/// The lines of an unfolded calendar that hold text to read.
pub(crate) fn worded_lines(calendar: &str) -> impl Iterator<Item = &str> {
    calendar.lines().filter(|line| line.starts_with("SUMMARY") || line.starts_with("DESCRIPTION;"))
}

/// What a browser would show: no tags, styles or drawings, but their labels.
fn shown(page: &str) -> String {
    let (_, body) = page.split_once("<body>").unwrap();
    let mut out = String::new();
    let mut rest = body;
    while let Some((before, tag)) = rest.split_once('<') {
        out.push_str(before);
        out.push(' ');
        let (inside, after) = tag.split_once('>').unwrap();
        if let Some((_, label)) = inside.split_once("aria-label=\"") {
            out.push_str(label.split('"').next().unwrap());
        }
        rest = if inside.starts_with("svg") && !after.starts_with("<defs") {
            after.split_once("</svg>").unwrap().1
        } else {
            after
        };
    }
    out + rest
}

/// The farm's guide from right to left, as PDF.
pub(crate) fn right_to_left() -> Vec<u8> {
    let (_, case) = examples().remove(0);
    let (_, facts) = facts(MIRRORED, &case);
    Printer::new(&WithArabic).unwrap().print(Paper::Guide, &facts).unwrap().bytes
}

#[test]
fn nothing_is_left_in_english() {
    for (name, case) in examples() {
        let (pack, facts) = facts(ACCENTED, &case);
        let sheet = String::from_utf8(text(&facts, &Embedded).unwrap()).unwrap();
        assert_eq!(plain_words(&sheet, &case), [""; 0], "{name}: text");
        let page = shown(&String::from_utf8(html(&facts, &Embedded).unwrap()).unwrap());
        let page = page.replace("&quot;", "").replace("&amp;", "");
        assert_eq!(plain_words(&page, &case), [""; 0], "{name}: HTML");
        let statements = tell(&case, &make(&case).unwrap());
        let messages = sms(&pack, &statements, SmsOptions::default()).unwrap();
        assert!(messages.len() > 10, "{name}: {} text messages", messages.len());
        for message in messages {
            assert_eq!(plain_words(&message.text, &case), [""; 0], "{name}: text message");
        }
        let calendar = String::from_utf8(ics(&pack, &statements).unwrap()).unwrap().replace("\r\n ", "");
        let worded: Vec<&str> = worded_lines(&calendar).collect();
        assert!(worded.len() > 20, "{name}: {} worded lines of the calendar", worded.len());
        for line in worded {
            let (_, words) = line.split_once(':').unwrap();
            assert_eq!(plain_words(&words.replace("\\n", ""), &case), [""; 0], "{name}: calendar");
        }
    }
}

/// The test itself: a word that no pack has is seen.
#[test]
fn a_word_left_in_english_is_seen() {
    let (_, case) = examples().remove(0);
    let (_, mut facts) = facts(ACCENTED, &case);
    facts.steps[0].text.push_str(" and this one");
    let sheet = String::from_utf8(text(&facts, &Embedded).unwrap()).unwrap();
    assert_eq!(plain_words(&sheet, &case), ["and", "this", "one"]);
}

#[test]
fn longer_languages_fit_their_paper() {
    let printer = Printer::new(&Embedded).unwrap();
    let (mut longer, mut plain) = (0, 0);
    for (name, case) in examples() {
        let (_, facts) = facts(ACCENTED, &case);
        assert_eq!(printer.print(Paper::Farm, &facts).unwrap().overflows, Vec::<String>::new(), "{name}");
        longer += facts.steps.iter().map(|step| step.text.chars().count()).sum::<usize>();
        let english = Pack::load(&Embedded, "en").unwrap();
        let facts = Facts::of(&english, &tell(&case, &make(&case).unwrap())).unwrap();
        plain += facts.steps.iter().map(|step| step.text.chars().count()).sum::<usize>();
    }
    let ratio = longer as f64 / plain as f64;
    assert!(ratio > 1.25, "only {ratio:.2} times as long");
}

#[test]
fn right_to_left_prints_and_reads() {
    let data = WithArabic;
    let printer = Printer::new(&data).unwrap();
    for (name, case) in examples() {
        let (pack, facts) = facts(MIRRORED, &case);
        assert_eq!(facts.direction, "rtl", "{name}");
        assert_eq!(printer.print(Paper::Farm, &facts).unwrap().overflows, Vec::<String>::new(), "{name}");
        let page = String::from_utf8(html(&facts, &data).unwrap()).unwrap();
        assert!(page.contains(&format!("<html lang=\"{MIRRORED}\" dir=\"rtl\">")), "{name}");
        assert!(
            !page.contains("text-align: left")
                && !page.contains("margin-left")
                && !page.contains("padding-left")
        );
        assert!(pack.label(Label::SheetTitle, &[("kind", Value::Name("farm"))]).unwrap().contains('ش'));
    }
    // Without the font it is refused, not printed as boxes.
    let (_, case) = examples().remove(0);
    let (_, facts) = facts(MIRRORED, &case);
    assert!(
        Printer::new(&Embedded)
            .unwrap()
            .print(Paper::Farm, &facts)
            .unwrap_err()
            .to_string()
            .contains("no font has")
    );
}
