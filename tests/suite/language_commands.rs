//! `kabla language` as its users meet it.
//!
//! Words that are expected here stand in `tests/expected/cldr-spellout` and `tests/expected/swahili-concord`, or are those
//! that everybody counts with.

use crate::project::Project;

fn say(arguments: &[&str]) -> (i32, String, String) {
    let said = Project::new().kabla(&[&["language", "say"], arguments].concat());
    (said.code, said.out, said.err)
}

#[test]
fn a_number_is_said_as_a_cardinal_or_in_the_form_named() {
    for (arguments, words) in [
        (["21", "--language", "sw"].as_slice(), "ishirini na moja\n"),
        (&["--language", "sw", "21"], "ishirini na moja\n"),
        (&["21", "--language", "sw", "--form", "class-4"], "ishirini na mmoja\n"),
        (&["342", "--language", "en"], "three hundred and forty-two\n"),
        (&["342", "--language", "en", "--form", "ordinal"], "three hundred and forty-second\n"),
        (&["2.5", "--language", "en"], "two point five\n"),
        (&["2,5", "--language", "en"], "two point five\n"),
        (&["0,125", "--language", "en"], "zero point one two five\n"),
        (&["-0", "--language", "en"], "zero\n"),
    ] {
        assert_eq!(say(arguments), (0, words.to_owned(), String::new()), "{arguments:?}");
    }
}

/// Chichewa counts only with a noun's class.
#[test]
fn a_language_without_a_cardinal_lists_its_forms() {
    let plain = say(&["5", "--language", "ny"]);
    assert_eq!(plain, say(&["5", "--language", "ny", "--all-forms"]));
    assert_eq!(plain.0, 0);
    assert!(plain.1.lines().count() > 5 && plain.1.contains("class-2 "), "{}", plain.1);
    let (code, out, error) = say(&["99999999999", "--language", "ny"]);
    assert_eq!((code, out.as_str()), (2, ""));
    assert!(error.contains("99999999999"), "{error}");
}

#[test]
fn all_forms_are_listed_with_their_names() {
    let (code, out, _) = say(&["2", "--language", "sw", "--all-forms"]);
    let lines: Vec<Vec<&str>> = out.lines().map(|line| line.split_whitespace().collect()).collect();
    let expected = [
        ["cardinal", "mbili"],
        ["class-2", "wawili"],
        ["class-4", "miwili"],
        ["class-6", "mawili"],
        ["class-8", "viwili"],
        ["class-10", "mbili"],
        ["date", "pili"],
        ["ordinal", "pili"],
    ];
    assert_eq!((code, lines), (0, expected.map(Vec::from).to_vec()));

    // No month has 45 days.
    let (code, out, _) = say(&["45", "--language", "sw", "--all-forms"]);
    assert_eq!(code, 0);
    assert!(out.lines().any(|line| line.starts_with("date ") && line.ends_with(" (no words)")), "{out}");
    assert!(
        out.lines().any(|line| line.starts_with("cardinal ") && line.ends_with(" arobaini na tano")),
        "{out}"
    );
}

#[test]
fn what_has_no_words_is_refused_by_number_form_and_language() {
    for (arguments, named) in [
        (["1000000", "--language", "sw"].as_slice(), ["1000000", "`cardinal`", "(sw)"]),
        (&["32", "--language", "sw", "--form", "date"], ["32", "`date`", "(sw)"]),
        (&["2.5", "--language", "sw", "--form", "class-4"], ["2.5", "`class-4`", "(sw)"]),
        (&["-3", "--language", "en"], ["-3", "`cardinal`", "(en)"]),
        (&["-3,5", "--language", "en"], ["-3.5", "`cardinal`", "(en)"]),
        (&["\u{2212}3", "--language", "en"], ["-3", "`cardinal`", "(en)"]),
        (&["1000000", "--language", "en", "--all-forms"], ["1000000", "`cardinal`", "(en)"]),
        (&["5", "--language", "sw", "--form", "class-3"], ["`class-3`", "class-4", "(sw)"]),
    ] {
        let (code, out, err) = say(arguments);
        assert_eq!((code, out.as_str()), (2, ""), "{arguments:?}");
        assert!(named.iter().all(|part| err.contains(part)), "{arguments:?}: {err}");
    }
}

#[test]
fn what_is_no_number_or_may_be_two_is_refused() {
    for text in ["", "twelve", "1.2.3", "1,2,3", "--5", "1e3", "1,500", "12,000", "99999999999999999999"] {
        let (code, out, err) = say(&[text, "--language", "en"]);
        assert_eq!((code, out.as_str()), (2, ""), "{text}");
        assert!(err.contains(text), "{text}: {err}");
    }
    assert_eq!(say(&["1.500", "--language", "en"]).1, "one point five zero zero\n");
    assert_eq!(say(&["1500,125", "--language", "en"]).0, 0);
}

#[test]
fn no_other_language_takes_the_place_of_a_missing_one() {
    for tag in ["lg", "zu", "sw-CD", "../en"] {
        let (code, out, err) = say(&["5", "--language", tag]);
        assert_eq!((code, out.as_str()), (2, ""), "{tag}");
        assert!(err.contains(&format!("there is no language pack {tag}")), "{tag}: {err}");
    }
}

/// A pack whose rules choose by plural category and say thousands with a comma, in CLDR's own text.
#[test]
fn a_pack_may_have_the_rules_of_cldr() {
    let project = Project::new();
    for file in ["pack.toml", "written.ftl", "spoken.ftl"] {
        project.copy_to(&format!("locales/en/{file}"), &format!("locales/pt/{file}"));
    }
    project.copy_to("tests/expected/cldr-spellout/pt.rbnf", "locales/pt/numbers.rbnf");
    for (from, to) in [
        ("tag = \"en\"", "tag = \"pt\""),
        ("group = \",\"", "group = \".\""),
        ("decimal = \".\"", "decimal = \",\""),
    ] {
        project.change("locales/pt/pack.toml", from, to);
    }
    let form = ["--language", "pt", "--form", "spellout-cardinal-feminine", "--data", "."];
    let said = |number: &str| {
        let run = project.kabla(&[&["language", "say", number], form.as_slice()].concat());
        (run.code, run.out)
    };
    assert_eq!(said("2000001"), (0, "dois milhões e uma\n".to_owned()));
    assert_eq!(said("1,5"), (0, "uma vírgula cinco\n".to_owned()));
    assert_eq!(said("1.500"), (2, String::new()));
}
