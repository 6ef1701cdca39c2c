//! Sheets: what they hold, and what no name can do to them.

use kabla::data::Embedded;
use kabla::guidance::{StepKind, Subject, tell};
use kabla::language::Pack;
use kabla::plan::{Case, make};
use kabla::sheet::{Alphabet, Facts, Paper, Printer, SmsOptions, cost, html, ics, sms, text};

use crate::examples;

fn facts(tag: &str, case: &Case) -> Facts {
    let pack = Pack::load(&Embedded, tag).unwrap();
    Facts::of(&pack, &tell(case, &make(case).unwrap())).unwrap()
}

#[test]
fn sheets_of_all_examples_and_packs_fit_their_paper() {
    let printer = Printer::new(&Embedded).unwrap();
    for tag in Pack::tags(&Embedded) {
        for (name, case) in examples() {
            let pdf = printer.print(Paper::Farm, &facts(&tag, &case)).unwrap();
            assert!(pdf.bytes.starts_with(b"%PDF-"));
            assert!((2..=8).contains(&pdf.pages), "{tag} {name}: {} pages", pdf.pages);
            assert_eq!(pdf.overflows, Vec::<String>::new(), "{tag} {name}");
            assert!(pdf.bytes.len() < 400_000, "{tag} {name}: {} bytes", pdf.bytes.len());
        }
    }
}

#[test]
fn long_names_break_and_letters_without_a_font_are_named() {
    let printer = Printer::new(&Embedded).unwrap();
    let (_, case) = examples().remove(0);
    let named = |name: String| printer.print(Paper::Farm, &facts("en", &Case { name, ..case.clone() }));
    assert_eq!(named("x".repeat(300)).unwrap().overflows, Vec::<String>::new());
    let error = named("a 汉字 farm".to_owned()).unwrap_err().to_string();
    assert!(error.contains("汉字") && error.contains("hint"), "{error}");
}

/// The check on overflow itself: a word wider than the paper must be seen.
#[test]
fn an_overflow_is_seen() {
    let (_, case) = examples().remove(0);
    let mut facts = facts("en", &case);
    facts.steps[0].text = "endless".repeat(60);
    let pdf = Printer::new(&Embedded).unwrap().print(Paper::Guide, &facts).unwrap();
    assert_eq!(pdf.overflows.len(), 1, "{:?}", pdf.overflows);
}

#[test]
fn names_print_as_themselves() {
    let printer = Printer::new(&Embedded).unwrap();
    let (_, case) = examples().remove(0);
    let plain_pages = printer.print(Paper::Farm, &facts("en", &case)).unwrap().pages;
    for name in [
        "#panic()",
        "<script>alert(1)</script>",
        "{{ 7 * 7 }}",
        "$x^2$ *bold* _it_ \\",
        "]) #import \"x\"",
        "a & b \" '",
    ] {
        let facts = facts("en", &Case { name: name.to_owned(), ..case.clone() });
        assert_eq!(printer.print(Paper::Farm, &facts).unwrap().pages, plain_pages, "{name}");
        let page = String::from_utf8(html(&facts, &Embedded).unwrap()).unwrap();
        let escaped = name
            .replace('&', "&amp;")
            .replace('<', "&lt;")
            .replace('>', "&gt;")
            .replace('"', "&quot;")
            .replace('\'', "&#x27;")
            .replace('/', "&#x2F;");
        assert!(page.contains(&format!("<dd>{escaped}</dd>")), "{name}");
        assert!(!page.contains("<script"), "{name}");
        let sheet = String::from_utf8(text(&facts, &Embedded).unwrap()).unwrap();
        assert!(sheet.contains(name), "{name}");
    }
}

#[test]
fn html_is_whole_and_needs_nothing_else() {
    for tag in ["en", "sw"] {
        let (_, case) = examples().remove(0);
        let facts = facts(tag, &case);
        let page = String::from_utf8(html(&facts, &Embedded).unwrap()).unwrap();
        assert!(page.contains(&format!("<html lang=\"{tag}\" dir=\"ltr\">")));
        let measures: usize = facts.steps.iter().map(|step| step.measures.len()).sum();
        assert_eq!(page.matches("<svg").count(), facts.steps.len() + facts.cautions.len() + measures);
        for outside in ["src=", "href=", "@import", "url("] {
            assert!(!page.contains(outside), "{outside}");
        }
        for entry in facts.steps.iter().chain(&facts.cautions) {
            assert!(page.contains(&tera_escape(&entry.title)), "{}", entry.title);
            assert!(page.contains(&format!("aria-label=\"{}\"", tera_escape(&entry.alt))), "{}", entry.alt);
        }
        assert!(page.contains(&tera_escape(&facts.status)));
    }
}

fn tera_escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('\'', "&#x27;").replace('/', "&#x2F;").replace('"', "&quot;")
}

#[test]
fn text_sheets() {
    for tag in ["en", "sw"] {
        for (name, case) in examples() {
            let sheet = String::from_utf8(text(&facts(tag, &case), &Embedded).unwrap()).unwrap();
            insta::assert_snapshot!(format!("sheet_{tag}_{name}"), sheet);
        }
    }
}

/// Every caution stands on every sheet, whatever the case.
#[test]
fn no_sheet_leaves_a_caution_out() {
    for tag in ["en", "sw"] {
        for (name, case) in examples() {
            let facts = facts(tag, &case);
            let subjects: Vec<_> = facts.cautions.iter().map(|caution| caution.subject).collect();
            for caution in kabla::guidance::Caution::ALL {
                assert!(subjects.contains(&caution.name()), "{tag} {name}: {}", caution.name());
            }
            assert!(!facts.closing.is_empty() && !facts.status.is_empty());
        }
    }
}

/// A broken template names its file and line.
#[test]
fn a_broken_template_is_named() {
    struct Broken(&'static str, &'static str);
    impl kabla::data::Data for Broken {
        fn read(&self, path: &str) -> Option<std::borrow::Cow<'_, [u8]>> {
            if path == self.0 { Some(self.1.as_bytes().into()) } else { Embedded.read(path) }
        }
        fn list(&self, folder: &str) -> Vec<String> {
            Embedded.list(folder)
        }
    }
    let (_, case) = examples().remove(0);
    let facts = facts("en", &case);
    let data = Broken("templates/farm.typ", "#let s = 1\n#s.nothing\n");
    let error = Printer::new(&data).unwrap().print(Paper::Farm, &facts).unwrap_err().to_string();
    assert!(error.contains("templates/farm.typ") && error.contains("line 2"), "{error}");
    let data = Broken("templates/sheet.html", "<p>\n{{ nobody }}");
    let error = html(&facts, &data).unwrap_err().to_string();
    assert!(error.contains("templates/sheet.html") && error.contains("nobody"), "{error}");
    let data = Broken("templates/sheet.txt", "{% for %}");
    assert!(text(&facts, &data).unwrap_err().to_string().contains("templates/sheet.txt"));
}

fn text_of(codepoints: &str) -> String {
    codepoints
        .split(' ')
        .map(|code| char::from_u32(u32::from_str_radix(code, 16).unwrap()).unwrap())
        .collect()
}

/// Alphabet and parts by an independent package.
#[test]
fn text_messages_are_counted_as_networks_do() {
    let cases = crate::expected::rows("gsm-7bit", "cases.csv");
    assert!(cases.len() > 300);
    for row in cases {
        let text = text_of(&row["codepoints"]);
        let cost = cost(&text);
        let coded = if cost.alphabet == Alphabet::Gsm7 { "gsm0338" } else { "utf_16_be" };
        assert_eq!(
            (coded, cost.parts.to_string()),
            (row["encoding"].as_str(), row["parts"].clone()),
            "{text:?}"
        );
    }
}

/// The limits of the standard: 160 and 153 letters, 70 and 67; the letter that forces 16 bits is named.
#[test]
fn limits_of_text_messages() {
    let parts = |letter: &str, count| cost(&letter.repeat(count)).parts;
    assert_eq!([parts("a", 160), parts("a", 161), parts("a", 306), parts("a", 307)], [1, 2, 2, 3]);
    assert_eq!([parts("ɗ", 70), parts("ɗ", 71), parts("ɗ", 134), parts("ɗ", 135)], [1, 2, 2, 3]);
    assert_eq!([parts("€", 80), parts("€", 81)], [1, 2], "an escape and the letter");
    assert_eq!(cost("ƙasa da ruwa, ŵ").alphabet, Alphabet::Ucs2 { forced_by: vec!['ŵ', 'ƙ'] });
    assert_eq!(cost("").parts, 0);
}

/// Every step has its message, the checks each time; not more than two a day, in order, none lost.
#[test]
fn text_messages_of_a_plan() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        for (name, case) in examples() {
            let plan = make(&case).unwrap();
            let statements = tell(&case, &plan);
            let led_to = statements.iter().filter(|of| matches!(of.subject, Subject::Consequence(_))).count();
            let messages = sms(&pack, &statements, SmsOptions::default()).unwrap();
            assert_eq!(
                messages.len(),
                plan.now.steps.len() + led_to + 2,
                "{tag} {name}: what it leads to, the caution and the closing besides"
            );
            assert!(messages.windows(2).all(|pair| pair[0].date <= pair[1].date));
            for message in &messages {
                let same_day = messages.iter().filter(|other| other.date == message.date).count();
                assert!(same_day <= 2, "{tag} {name}: {same_day} on {}", message.date);
                assert!((1..=2).contains(&message.cost.parts), "{tag} {name}: {}", message.text);
                assert!(
                    !message.text.contains(['{', '\u{a0}', '\u{202f}']),
                    "{tag} {name}: {}",
                    message.text
                );
            }
        }
    }
}

/// Letters are replaced only where the pack says so.
#[test]
fn letters_are_replaced_where_the_pack_lets_them_go() {
    struct Willing(&'static str);
    impl kabla::data::Data for Willing {
        fn read(&self, path: &str) -> Option<std::borrow::Cow<'_, [u8]>> {
            let bytes = Embedded.read(path)?;
            if path != "locales/ha/pack.toml" {
                return Some(bytes);
            }
            let text = String::from_utf8(bytes.into_owned()).unwrap();
            let (before, _) = text.split_once("[sms]").unwrap_or((&text, ""));
            Some(format!("{before}\n[sms]\nreplace = [{}]\n", self.0).into_bytes().into())
        }
        fn list(&self, folder: &str) -> Vec<String> {
            Embedded.list(folder)
        }
    }
    let (_, case) = examples().remove(0);
    let dear = |data: &dyn kabla::data::Data| {
        let pack = Pack::load(data, "ha").unwrap();
        let messages = sms(&pack, &tell(&case, &make(&case).unwrap()), SmsOptions::default()).unwrap();
        messages.iter().filter(|message| message.cost.alphabet != Alphabet::Gsm7).count()
    };
    assert!(dear(&Willing("")) > 0);
    assert_eq!(dear(&Willing("\"ɓ b\", \"ɗ d\", \"ƙ k\", \"ƴ y\", \"Ɓ B\", \"Ɗ D\", \"Ƙ K\", \"² 2\"")), 0);
}

/// The same plan gives the same calendar, byte for byte; each event its own id.
#[test]
fn calendars_are_stable() {
    let (_, case) = examples().remove(0);
    let pack = Pack::load(&Embedded, "en").unwrap();
    let statements = tell(&case, &make(&case).unwrap());
    let first = String::from_utf8(ics(&pack, &statements).unwrap()).unwrap();
    assert_eq!(first, String::from_utf8(ics(&pack, &statements).unwrap()).unwrap());
    let ids: Vec<&str> = first.lines().filter(|line| line.starts_with("UID:")).collect();
    let different: std::collections::BTreeSet<&&str> = ids.iter().collect();
    assert_eq!(ids.len(), different.len());
    // The check of the store comes early, and then three times.
    let times = StepKind::ALL.len() + 3;
    assert_eq!(first.matches("BEGIN:VEVENT").count(), times);
    assert_eq!(first.matches("BEGIN:VALARM").count(), times);
    assert!(first.lines().all(|line| line.len() <= 75), "lines are folded");
    let moved = tell(
        &case,
        &make(&Case { rains: kabla::plan::season::Rains::On("2027-11-28".parse().unwrap()), ..case.clone() })
            .unwrap(),
    );
    let later = String::from_utf8(ics(&pack, &moved).unwrap()).unwrap();
    let again: Vec<&str> = later.lines().filter(|line| line.starts_with("UID:")).collect();
    assert_eq!(ids, again, "other dates renew the same events");
}
