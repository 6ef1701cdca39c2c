//! Packs that are broken or made to do harm end in findings, soon.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

use std::borrow::Cow;
use std::time::{Duration, Instant};

use kabla::app::check_packs;
use kabla::data::{Data, Embedded};

/// The Swahili pack with one file in place of its own.
struct Changed {
    file: &'static str,
    bytes: Vec<u8>,
}

impl Data for Changed {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        match path.strip_prefix("locales/sw/") {
            Some(file) if file == self.file => Some(Cow::Borrowed(&self.bytes)),
            _ => Embedded.read(path),
        }
    }

    fn list(&self, folder: &str) -> Vec<String> {
        Embedded.list(folder)
    }
}

fn own(file: &str) -> String {
    String::from_utf8(Embedded.read(&format!("locales/sw/{file}")).unwrap().into_owned()).unwrap()
}

/// The file with something behind it.
fn with(file: &'static str, behind: &str) -> Changed {
    Changed { file, bytes: (own(file) + "\n" + behind + "\n").into_bytes() }
}

/// The file with a closing of other words, and something behind it.
fn closing(file: &'static str, words: &str, behind: &str) -> Changed {
    let text = own(file).replacen("\nclosing = ", &format!("\nclosing = {words} "), 1);
    Changed { file, bytes: (text + behind).into_bytes() }
}

/// Messages that say each other many times over.
fn laughs() -> (String, String) {
    let times = |name: &str| format!("{{ {name} }} ").repeat(500);
    let messages = format!("\na1 = {}\na2 = {}\na3 = {}\na4 = x\n", times("a2"), times("a3"), times("a4"));
    (times("a1"), messages)
}

#[test]
fn hostile_packs_end_in_findings() {
    let (many, laugh) = laughs();
    let circle = "\na1 = { a2 }\na2 = { a1 }\n";
    let repeated = |text: &str, bytes: usize| text.repeat(bytes / text.len());
    let sets = |count: u32| (0..count).map(|set| format!("%f{set}:\n0: a;\n")).collect::<String>();
    let doubling = (0..60).map(|set| format!("%r{set}:\n0: =%r{0}==%r{0}=;\n", set + 1)).collect::<String>();
    let numbered = (0..20_000).map(|n| format!("m{n} = x\n")).collect::<String>();
    let cases: Vec<(Changed, &str)> = vec![
        (
            with("written.ftl", &format!("z = {}\"a\"{}", "{ ".repeat(50_000), " }".repeat(50_000))),
            "braces stand deeper",
        ),
        (
            with("spoken.ftl", &format!("z = {{ {}{} }}", "SAY(".repeat(50_000), ")".repeat(50_000))),
            "braces stand deeper",
        ),
        (
            with(
                "spoken.ftl",
                &format!("z = {}x{}", "{ $a ->\n *[b] ".repeat(20_000), "\n }".repeat(20_000)),
            ),
            "braces stand deeper",
        ),
        (closing("spoken.ftl", &many, &laugh), "a sentence has about"),
        (closing("written.ftl", &many, &laugh), "Too many placeables"),
        (closing("spoken.ftl", "{ a1 }", circle), "refers to itself without end"),
        (closing("written.ftl", "{ a1 }", circle), "Cyclical"),
        (closing("written.ftl", &"word ".repeat(2_000_000), ""), "more than 1000000"),
        (closing("spoken.ftl", &"word ".repeat(2_000_000), ""), "more than 1000000"),
        (with("written.ftl", &numbered), "nothing uses this message"),
        (with("written.ftl", &repeated("z = x\n", 200_000)), "stands here twice"),
        (with("written.ftl", &repeated("a\n", 200_000)), "more messages cannot be read"),
        (Changed { file: "written.ftl", bytes: vec![0; 10_000_000] }, "more than 1000000"),
        (Changed { file: "spoken.ftl", bytes: vec![0; 900_000] }, "cannot be read"),
        (Changed { file: "spoken.ftl", bytes: b"a = \xff\xfe".to_vec() }, "is not UTF-8"),
        (
            Changed { file: "pack.toml", bytes: format!("x = {}", "[".repeat(100_000)).into_bytes() },
            "unclosed array",
        ),
        (with("numbers.rbnf", "%x:\n0: =%y=;\n%y:\n0: =%x=;"), "the form x has no words for 0"),
        (with("numbers.rbnf", &(doubling + "%r60:\n0: a;")), "the form r0 has no words for 0"),
        (with("numbers.rbnf", &sets(20_000)), "more than 500"),
        (with("numbers.rbnf", &sets(480).replace("0: a", "1: a")), "the form f0 has no words for 0"),
        (with("numbers.rbnf", &format!("%w:\n0: {};", "[".repeat(100_000))), "has no partner"),
        (with("numbers.rbnf", &format!("%w:\n0: {}; =%w=;", "x".repeat(900_000))), "no words for"),
    ];
    for (place, (data, wanted)) in cases.into_iter().enumerate() {
        let begun = Instant::now();
        let states = check_packs(&data, Some("sw")).unwrap();
        let findings: Vec<String> = states[0].report.findings.iter().map(ToString::to_string).collect();
        let begin: Vec<&String> = findings.iter().take(5).collect();
        assert!(findings.iter().any(|finding| finding.contains(wanted)), "{place} {wanted}: {begin:?}");
        assert!(begun.elapsed() < Duration::from_secs(20), "{place} {wanted}: {:?}", begun.elapsed());
    }
}
