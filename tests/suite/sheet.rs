//! Sheets: what they hold, and what no name can do to them.

use kabla::data::Embedded;
use kabla::guidance::tell;
use kabla::language::Pack;
use kabla::plan::{Case, make};
use kabla::sheet::{Facts, Printer, html, text};

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
            let pdf = printer.print(&facts(&tag, &case)).unwrap();
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
    let named = |name: String| printer.print(&facts("en", &Case { name, ..case.clone() }));
    assert_eq!(named("x".repeat(300)).unwrap().overflows, Vec::<String>::new());
    let error = named("a ሰላም farm".to_owned()).unwrap_err().to_string();
    assert!(error.contains("ሰላም") && error.contains("hint"), "{error}");
}

/// The check on overflow itself: a word wider than the paper must be seen.
#[test]
fn an_overflow_is_seen() {
    let (_, case) = examples().remove(0);
    let mut facts = facts("en", &case);
    facts.steps[0].text = "endless".repeat(60);
    let pdf = Printer::new(&Embedded).unwrap().print(&facts).unwrap();
    assert_eq!(pdf.overflows.len(), 1, "{:?}", pdf.overflows);
}

#[test]
fn names_print_as_themselves() {
    let printer = Printer::new(&Embedded).unwrap();
    let (_, case) = examples().remove(0);
    let plain_pages = printer.print(&facts("en", &case)).unwrap().pages;
    for name in [
        "#panic()",
        "<script>alert(1)</script>",
        "{{ 7 * 7 }}",
        "$x^2$ *bold* _it_ \\",
        "]) #import \"x\"",
        "a & b \" '",
    ] {
        let facts = facts("en", &Case { name: name.to_owned(), ..case.clone() });
        assert_eq!(printer.print(&facts).unwrap().pages, plain_pages, "{name}");
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
        assert_eq!(page.matches("<svg").count(), facts.steps.len() + facts.cautions.len());
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
    let data = Broken("templates/sheet.typ", "#let s = 1\n#s.nothing\n");
    let error = Printer::new(&data).unwrap().print(&facts).unwrap_err().to_string();
    assert!(error.contains("templates/sheet.typ") && error.contains("line 2"), "{error}");
    let data = Broken("templates/sheet.html", "<p>\n{{ nobody }}");
    let error = html(&facts, &data).unwrap_err().to_string();
    assert!(error.contains("templates/sheet.html") && error.contains("nobody"), "{error}");
    let data = Broken("templates/sheet.txt", "{% for %}");
    assert!(text(&facts, &data).unwrap_err().to_string().contains("templates/sheet.txt"));
}
