//! Every format holds what it is meant to hold of every subject of a case, in every language.

use kabla::app::SheetFormat;
use kabla::data::Embedded;
use kabla::guidance::{Priority, Statement, Subject, tell};
use kabla::language::{Pack, Written};
use kabla::plan::{Case, make};
use kabla::sheet::{Entry, Facts, Month, Paper, Printer, SmsOptions, html, ics, sms, sms_left_out, text};

use crate::examples;
use crate::paper::{PAPERS, assert_fits, drawn, farm};

const FORMATS: [SheetFormat; 9] = [
    SheetFormat::Pdf(Paper::Farm),
    SheetFormat::Pdf(Paper::Guide),
    SheetFormat::Pdf(Paper::Calendar),
    SheetFormat::Pdf(Paper::Card),
    SheetFormat::Pdf(Paper::Record),
    SheetFormat::Html,
    SheetFormat::Text,
    SheetFormat::Calendar,
    SheetFormat::Sms { most_parts: 2 },
];

/// A part of what a pack writes of a subject.
#[derive(Debug, Clone, Copy)]
enum Part {
    Title,
    When,
    Brief,
    Short,
    Text,
    Show,
    Ask,
    /// The text message, or the subject's name among those that no message tells.
    Sms,
}

/// What each format is meant to hold of a subject.
fn meant(format: SheetFormat, subject: Subject) -> &'static [Part] {
    use Part::{Ask, Brief, Short, Show, Sms, Text, Title, When};
    use SheetFormat::{Calendar, Html, Pdf, Sms as Messages, Text as Plain};
    match (subject, format) {
        (Subject::Step(_), Pdf(Paper::Farm | Paper::Card)) => &[Title, Brief, Short],
        (Subject::Step(_), Pdf(Paper::Guide)) => &[Title, When, Text, Show, Ask],
        (Subject::Step(_), Pdf(Paper::Calendar)) => &[Title, Brief],
        (Subject::Step(_), Html | Plain) => &[Title, When, Text],
        (Subject::Step(_), Calendar) => &[Title, Text],
        // It is filled in by pen at the checks of the store, and has their days.
        (Subject::Step(_), Pdf(Paper::Record)) => match subject.name() {
            "monthly-check" | "last-check" => &[When],
            _ => &[],
        },

        (Subject::Caution(_), Pdf(Paper::Farm | Paper::Calendar | Paper::Card)) => &[Title, Short],
        (Subject::Caution(_), Pdf(Paper::Guide) | Html | Plain | Calendar) => &[Title, Text],
        // What to do with rotten roots stands over its table, in words of its own.
        (Subject::Caution(_), Pdf(Paper::Record)) => &[],

        (Subject::Step(_) | Subject::Caution(_) | Subject::Closing, Messages { .. }) => &[Sms],
        (Subject::Closing, Pdf(_) | Html | Plain | Calendar) => &[Title],

        // Whose sheet it is stands in rows instead on those that have few words.
        (Subject::Opening, Pdf(Paper::Guide) | Html | Plain) => &[Title],
        (Subject::Opening, Pdf(_) | Calendar | Messages { .. }) => &[],

        // Tables are for who sits down to plan, not for a pocket, a wall or a phone's bell.
        (Subject::Table(_), Pdf(Paper::Guide) | Html | Plain) => &[Title, Text],
        (Subject::Table(_), Pdf(Paper::Farm)) => &[Title],
        (Subject::Table(_), Pdf(Paper::Calendar | Paper::Card | Paper::Record)) => &[],
        (Subject::Table(_), Calendar | Messages { .. }) => &[],

        // The record card is for the checks alone.
        (Subject::Consequence(_), Pdf(Paper::Record)) => &[],
        (Subject::Consequence(_), Pdf(_) | Html | Plain | Calendar) => &[Title],
        (Subject::Consequence(_), Messages { .. }) => &[Sms],

        // The important ones go home with the farm.
        (Subject::Tip(_), Pdf(Paper::Guide) | Html | Plain | Calendar) => &[Title],
        (Subject::Tip(tip), Pdf(Paper::Farm)) if tip.priority() <= Priority::Important => &[Title],
        (Subject::Tip(_), Pdf(_) | Messages { .. }) => &[],

        // Asked aloud at a meeting; the guide has it with its step.
        (Subject::Question(_), _) => &[],
    }
}

/// What the words of a part are, as the pack writes them.
fn words(pack: &Pack, statement: &Statement, written: &Written, part: Part) -> Vec<String> {
    match part {
        Part::Title => vec![written.title.clone()],
        Part::When => written.when.clone(),
        Part::Brief => written.brief.clone(),
        Part::Short => vec![written.short.clone()],
        Part::Text => vec![written.text.clone()],
        Part::Show => vec![written.show.clone()],
        Part::Ask => vec![written.ask.clone()],
        Part::Sms => match pack.write_sms(statement).unwrap() {
            // A step that comes several times has other days in each of its messages.
            Some(_) if statement.when.len() > 1 => {
                vec![format!("{} {}", statement.subject.name(), statement.when.len())]
            }
            Some(text) => vec![pack.for_sms(&text)],
            None => vec![format!("{} is left out", statement.subject.name())],
        },
    }
}

/// All that a format says, in one text.
fn said(
    format: SheetFormat,
    printer: &Printer<'_>,
    pack: &Pack,
    (example, facts): (&str, &Facts),
    statements: &[Statement],
) -> String {
    let utf8 = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    match format {
        SheetFormat::Pdf(paper) => {
            let pdf = printer.print(paper, facts).unwrap();
            assert_fits(&pdf, paper, example, &format!("{} {example} {paper:?}", facts.language));
            pdf.text
        }
        SheetFormat::Html => plain(&utf8(html(facts, &Embedded).unwrap())),
        SheetFormat::Text => utf8(text(facts, &Embedded).unwrap()),
        // Long lines are folded, and some signs have a backslash before them.
        SheetFormat::Calendar => {
            let file = utf8(ics(pack, statements).unwrap());
            assert!(file.lines().all(|line| line.len() <= 75), "{}: {file}", facts.language);
            file.replace("\r\n ", "").replace("\\n", " ").replace('\\', "")
        }
        SheetFormat::Sms { .. } => {
            let messages = sms(pack, statements, SmsOptions::default()).unwrap();
            let mut lines: Vec<String> = messages.iter().map(|message| message.text.clone()).collect();
            for statement in statements {
                let name = statement.subject.name();
                let count = messages.iter().filter(|message| message.subject == statement.subject).count();
                lines.push(format!("{name} {count}"));
            }
            let left_out = sms_left_out(statements, &messages);
            lines.extend(left_out.iter().map(|subject| format!("{} is left out", subject.name())));
            lines.join("\n")
        }
    }
}

/// The text of a page without its tags.
fn plain(page: &str) -> String {
    let body = page.split_once("<body>").unwrap().1;
    let texts = body.split('<').map(|piece| piece.split_once('>').map_or(piece, |(_, text)| text));
    texts
        .collect::<String>()
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#x27;", "'")
        .replace("&#x2F;", "/")
        .replace("&amp;", "&")
}

/// Where lines end, and where words may break, is the page's affair. In Portuguese a hyphen at the end of a line
/// comes again at the beginning of the next.
fn squeezed(text: &str) -> String {
    let letters = text.chars().filter(|letter| !letter.is_whitespace() && *letter != '\u{200b}');
    letters.collect::<String>().replace("--", "-")
}

/// What of a case's subjects a format should hold and does not.
fn missing(
    format: SheetFormat,
    printer: &Printer<'_>,
    pack: &Pack,
    (example, case): (&str, &Case),
    facts: &Facts,
) -> Vec<String> {
    let statements = tell(case, &make(case).unwrap());
    let said = squeezed(&said(format, printer, pack, (example, facts), &statements));
    let mut missing = Vec::new();
    for statement in &statements {
        let written = pack.write(statement).unwrap();
        for part in meant(format, statement.subject) {
            for words in words(pack, statement, &written, *part) {
                if words.is_empty() || !said.contains(&squeezed(&words)) {
                    missing.push(format!("{} {part:?}: {words}", statement.subject.name()));
                }
            }
        }
    }
    missing
}

#[test]
fn every_format_holds_every_subject_in_every_language() {
    let printer = Printer::new(&Embedded).unwrap();
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let facts = drawn(&tag, &case);
            for format in FORMATS {
                let missing = missing(format, &printer, &pack, (&name, &case), &facts);
                assert_eq!(missing, Vec::<String>::new(), "{tag} {name} {format:?}");
            }
        }
    }
}

/// The check itself: a step, a caution or a closing that a format lost is told.
#[test]
fn a_lost_subject_is_seen() {
    let printer = Printer::new(&Embedded).unwrap();
    let pack = Pack::load(&Embedded, "en").unwrap();
    let case = farm();
    let mut facts = drawn("en", &case);
    let step = facts.steps.remove(3);
    let caution = facts.cautions.pop().unwrap();
    facts.closing.clear();
    facts.months.iter_mut().for_each(|month| month.times.retain(|(number, _)| *number <= facts.steps.len()));
    for format in FORMATS {
        let missing = missing(format, &printer, &pack, ("farm", &case), &facts);
        let told = |subject: &str| missing.iter().any(|missing| missing.starts_with(subject));
        match format {
            // Both are made of the statements, which have lost nothing.
            SheetFormat::Calendar | SheetFormat::Sms { .. } => assert_eq!(missing, Vec::<String>::new()),
            SheetFormat::Pdf(Paper::Record) => assert!(told("closing") && missing.len() == 1, "{missing:?}"),
            _ => assert!(
                told(step.subject) && told(caution.subject) && told("closing"),
                "{format:?} {missing:?}"
            ),
        }
    }
}

/// Facts of so many steps and cautions, each with a title and words of its own.
fn many(mut facts: Facts, steps: usize, cautions: usize) -> Facts {
    let copies = |of: &[Entry], count: usize, mark: &str| -> Vec<Entry> {
        let numbered = of.iter().cycle().zip(1..=count);
        numbered
            .map(|(entry, number)| Entry {
                number,
                title: format!("{} ({mark}{number})", entry.title),
                short: format!("{} [{mark}{number}]", entry.short),
                text: format!("{} [{mark}{number}]", entry.text),
                ..entry.clone()
            })
            .collect()
    };
    facts.steps = copies(&facts.steps, steps, "s");
    facts.cautions = copies(&facts.cautions, cautions, "c");
    let times = (1..=steps).map(|number| (number, "5 May".to_owned())).collect();
    facts.months = vec![Month { label: "May".to_owned(), times }];
    facts
}

/// A sixteenth step and a tenth caution are there as the first ones are, whole.
#[test]
fn formats_hold_more_steps_and_cautions_than_there_are_today() {
    let printer = Printer::new(&Embedded).unwrap();
    for tag in Pack::tags(&Embedded) {
        let facts = many(drawn(&tag, &farm()), 16, 10);
        for paper in PAPERS.into_iter().filter(|paper| *paper != Paper::Record) {
            let pdf = printer.print(paper, &facts).unwrap();
            let said = squeezed(&pdf.text);
            for entry in facts.steps.iter().chain(&facts.cautions) {
                assert!(said.contains(&squeezed(&entry.title)), "{tag} {paper:?} {}", entry.title);
            }
            let shorts: Vec<&Entry> = match paper {
                Paper::Farm | Paper::Card => facts.steps.iter().chain(&facts.cautions).collect(),
                Paper::Calendar => facts.cautions.iter().collect(),
                Paper::Guide | Paper::Record => Vec::new(),
            };
            for entry in shorts {
                assert!(said.contains(&squeezed(&entry.short)), "{tag} {paper:?} {}", entry.short);
            }
            assert_eq!(pdf.overflows, Vec::<String>::new(), "{tag} {paper:?}");
        }
        let page = plain(&String::from_utf8(html(&facts, &Embedded).unwrap()).unwrap());
        let sheet = String::from_utf8(text(&facts, &Embedded).unwrap()).unwrap();
        for entry in facts.steps.iter().chain(&facts.cautions) {
            for words in [&entry.title, &entry.text] {
                assert!(page.contains(words) && sheet.contains(words), "{tag} {words}");
            }
        }
    }
}

/// What stands on the first page of a card.
const FIRST_PAGE: [&str; 10] = [
    "sheet-for",
    "sheet-place",
    "sheet-harvest",
    "sheet-rains",
    "amount-cuttings",
    "amount-roots",
    "amount-sand",
    "amount-plants",
    "amount-bed",
    "amount-jerrycans",
];

/// Where a card is too small for its words, it says which pages are too full, and of what.
#[test]
fn a_card_loses_nothing_in_silence() {
    let printer = Printer::new(&Embedded).unwrap();
    for (steps, cautions, fits) in [
        (1, 1, Some(true)),
        (3, 9, Some(true)),
        (14, 9, Some(true)),
        (15, 9, Some(true)),
        (16, 10, Some(true)),
        (20, 12, None),
        (30, 20, None),
        (60, 9, Some(false)),
    ] {
        let facts = many(drawn("sw", &farm()), steps, cautions);
        let pdf = printer.print(Paper::Card, &facts).unwrap();
        let said = squeezed(&pdf.text);
        let what = format!("{steps} {cautions}: {:?}", pdf.overflows);
        for entry in facts.steps.iter().chain(&facts.cautions) {
            let whole = [&entry.title, &entry.short].into_iter().all(|words| said.contains(&squeezed(words)));
            assert!(
                whole || pdf.overflows.iter().any(|told| told.contains(&entry.title)),
                "{}: {what}",
                entry.title
            );
        }
        assert!(
            said.contains(&squeezed(&facts.closing)) && said.contains(&squeezed(&facts.status)),
            "{what}"
        );
        for row in facts.head.iter().chain(&facts.amounts).filter(|row| FIRST_PAGE.contains(&row.name)) {
            assert!(
                said.contains(&squeezed(&format!("{}: {}", row.label, row.value))),
                "{}: {what}",
                row.label
            );
        }
        let first = pdf.overflows.first();
        let full = first.is_none_or(|told| told.starts_with("page ") && told.contains(" of the card, with "));
        assert!(full && fits.is_none_or(|fits| fits == first.is_none()), "{what}");
    }
}
