//! Number words.
//!
//! What is expected comes from Unicode CLDR's rules as ICU says them (`tests/expected/cldr-spellout`), from the Swahili
//! concord table (`tests/expected/swahili-concord`), or is written out by hand here.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

use kabla::language::numerals::{Number, NumeralError, Numerals, words_in};
use proptest::prelude::*;

fn read(path: &str) -> String {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(path);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

fn rules(path: &str) -> Numerals {
    Numerals::parse(&read(path)).unwrap_or_else(|problems| panic!("{path}: {problems:#?}"))
}

fn ours(language: &str) -> Numerals {
    rules(&format!("locales/{language}/numbers.rbnf"))
}

fn number(text: &str) -> Number {
    text.parse().unwrap()
}

/// Rows of a CSV file with its first row as keys. No cell holds a quote or a line break.
fn rows(path: &str) -> Vec<BTreeMap<String, String>> {
    let text = read(path);
    let cells = |line: &str| -> Vec<String> {
        let mut cells = vec![String::new()];
        let mut quoted = false;
        for c in line.chars() {
            match c {
                '"' => quoted = !quoted,
                ',' if !quoted => cells.push(String::new()),
                _ => cells.last_mut().unwrap().push(c),
            }
        }
        cells
    };
    let mut lines = text.lines();
    let keys = cells(lines.next().unwrap());
    lines.map(|line| keys.iter().cloned().zip(cells(line)).collect()).collect()
}

/// Number and words of one column, where there are any.
fn column(file: &str, form: &str) -> Vec<(Number, String)> {
    let rows = rows(&format!("tests/expected/cldr-spellout/{file}"));
    let cells = rows.into_iter().map(|row| (number(&row["number"]), row[form].clone()));
    cells.filter(|(_, words)| !words.is_empty()).collect()
}

#[test]
fn cldr_rules_say_what_icu_says() {
    let columns = [
        ("en", "spellout-cardinal", 11_000),
        ("en", "spellout-cardinal-verbose", 11_000),
        ("en", "spellout-ordinal", 1_124),
        ("en", "spellout-ordinal-verbose", 1_124),
        ("en", "spellout-numbering-year", 1_100),
        ("sw", "spellout-cardinal", 11_000),
        ("sw", "spellout-ordinal", 131),
    ];
    for (language, form, count) in columns {
        let numerals = rules(&format!("tests/expected/cldr-spellout/{language}.rbnf"));
        let expected = column(&format!("{language}.csv"), form);
        assert_eq!(expected.len(), count, "{language} {form}");
        for (number, words) in expected {
            assert_eq!(numerals.say(number, form).as_ref(), Ok(&words), "{language} {form} {number}");
        }
    }
}

#[test]
fn each_part_of_the_syntax_does_what_it_does_in_icu() {
    let rows = rows("tests/expected/cldr-spellout/syntax.csv");
    assert!(rows.len() > 50);
    for row in rows {
        let numerals = Numerals::parse(&row["rules"]).unwrap();
        let said = numerals.say(number(&row["number"]), "a");
        assert_eq!(said.as_ref(), Ok(&row["words"]), "{} of {}", row["number"], row["rules"]);
    }
}

/// Ours leave out the comma that CLDR writes behind the thousands (English: above 100,000), as it is not said.
#[test]
fn our_cardinals_are_those_of_cldr() {
    for (language, form, ordinals) in [
        ("en", "spellout-cardinal-verbose", Some("spellout-ordinal-verbose")),
        ("sw", "spellout-cardinal", None),
    ] {
        let numerals = ours(language);
        let file = format!("{language}.csv");
        for (number, words) in column(&file, form) {
            if language == "en" && number.whole() < 100_000 {
                assert!(!words.contains(','), "{words}");
            }
            assert_eq!(numerals.say(number, "cardinal"), Ok(words.replace(',', "")), "{language} {number}");
        }
        for (number, words) in ordinals.map_or(vec![], |form| column(&file, form)) {
            assert_eq!(numerals.say(number, "ordinal"), Ok(words.replace(',', "")), "{language} {number}");
        }
    }
}

/// CLDR writes the connecting "wa" into the ordinal from three on; with us the sentence supplies it.
#[test]
fn our_swahili_ordinals_are_those_of_cldr() {
    let numerals = ours("sw");
    for (number, words) in column("sw.csv", "spellout-ordinal").into_iter().skip(1) {
        let words = words.strip_prefix("wa ").unwrap_or(&words).to_owned();
        assert_eq!(numerals.say(number, "ordinal"), Ok(words), "{number}");
    }
    assert_eq!(
        numerals.say(0.into(), "ordinal").unwrap_err().to_string(),
        "the rules of the form `ordinal` have no words for 0"
    );
}

#[test]
fn swahili_numbers_agree_with_their_noun() {
    let numerals = ours("sw");
    let rows = rows("tests/expected/swahili-concord/cases.csv");
    assert_eq!(rows.iter().filter(|row| row["basis"] == "table").count(), 30);
    for row in rows {
        let said = numerals.say(number(&row["number"]), &row["form"]);
        assert_eq!(said.as_ref(), Ok(&row["words"]), "{} {}", row["form"], row["number"]);
    }
}

/// Only the last unit agrees: all before it is said as in counting.
#[test]
fn swahili_class_forms_differ_from_counting_in_the_last_word_only() {
    let numerals = ours("sw");
    for form in ["class-2", "class-4", "class-6", "class-8"] {
        for n in (0..=2_500u64).chain((10_000..1_000_000).step_by(9_973)) {
            let counted = numerals.say(n.into(), "cardinal").unwrap();
            let agreeing = numerals.say(n.into(), form).unwrap();
            if matches!(n % 10, 0 | 6 | 7 | 9) {
                assert_eq!(agreeing, counted, "{form} {n}");
                continue;
            }
            let (counted, last) = counted.rsplit_once(' ').unwrap_or(("", &counted));
            let (same, agreeing) = agreeing.rsplit_once(' ').unwrap_or(("", &agreeing));
            assert_eq!(same, counted, "{form} {n}");
            assert_eq!(agreeing == last, form == "class-6" && n % 10 == 1, "{form} {n}: {agreeing}");
        }
    }
}

#[test]
fn swahili_days_of_the_month_are_counted_but_for_the_first_two() {
    let numerals = ours("sw");
    for n in 3..=31u64 {
        assert_eq!(numerals.say(n.into(), "date"), numerals.say(n.into(), "cardinal"));
    }
    assert_eq!(numerals.say(21.into(), "date").as_deref(), Ok("ishirini na moja"));
    assert_eq!(numerals.say(31.into(), "date").as_deref(), Ok("thelathini na moja"));
    for n in [0, 32] {
        assert!(matches!(numerals.say(n.into(), "date"), Err(NumeralError::BeyondRules { .. })), "{n}");
    }
}

#[test]
fn the_forms_are_the_public_sets() {
    assert_eq!(ours("en").forms(), ["cardinal", "ordinal", "day"]);
    let swahili = ["cardinal", "class-2", "class-4", "class-6", "class-8", "class-10", "date", "ordinal"];
    assert_eq!(ours("sw").forms(), swahili);
    let error = ours("en").say(1.into(), "after-thousand").unwrap_err();
    assert_eq!(
        error.to_string(),
        "there are no rules for the form `after-thousand`; there are cardinal, ordinal, day"
    );
}

#[test]
fn a_number_beyond_the_rules_is_named_with_its_form() {
    for (language, form) in
        [("en", "cardinal"), ("en", "ordinal"), ("sw", "cardinal"), ("sw", "class-4"), ("sw", "class-10")]
    {
        let numerals = ours(language);
        assert!(numerals.say(999_999.into(), form).is_ok(), "{language} {form}");
        for beyond in [Number::from(1_000_000), Number::from(u64::MAX), number("-1")] {
            let error = numerals.say(beyond, form).unwrap_err();
            assert_eq!(error, NumeralError::BeyondRules { number: beyond, form: form.into() });
            let text = error.to_string();
            assert!(text.contains(&beyond.to_string()) && text.contains(form), "{text}");
        }
    }
    let error = ours("sw").say(number("5.5"), "class-4").unwrap_err();
    assert_eq!(error.to_string(), "the rules of the form `class-4` have no words for 5.5");
}

/// ICU would say "one" and "six" here.
#[test]
fn signs_and_decimals_without_a_rule_are_not_dropped() {
    let numerals =
        Numerals::parse("%a: 0: zero; one; two; three; four; five; six; 10: << tens[ >>];").unwrap();
    for text in ["-1", "5.5", "-5.5", "15.5"] {
        let error = numerals.say(number(text), "a").unwrap_err();
        assert_eq!(error, NumeralError::BeyondRules { number: number(text), form: "a".into() });
    }
}

#[test]
fn what_cannot_be_said_is_named() {
    let plural = Numerals::parse("%a: 0: z; 1: x$(cardinal,one{a}other{b})$;").unwrap();
    assert_eq!(
        plural.say(1.into(), "a").unwrap_err().to_string(),
        "the rules of the form `a` need a choice by plural category for 1, which cannot be said"
    );
    let fractions = Numerals::parse("%a: 0: z; x.x: << and >%%tenths>; %%tenths: 10: << tenths;").unwrap();
    assert!(matches!(
        fractions.say(number("0.5"), "a"),
        Err(NumeralError::Unsupported { construct: "a rule set of fractions", .. })
    ));
}

#[test]
fn brackets_take_an_alternative_for_what_is_left_out() {
    let numerals =
        Numerals::parse("%a: 0: no; one; two; 10: [ten >>|tenth]!; x.0: << sharp; x.x: << and >>;").unwrap();
    for (text, words) in [("10", "tenth!"), ("11", "ten one!"), ("2.0", "two sharp"), ("2.1", "two and one")]
    {
        assert_eq!(numerals.say(number(text), "a").as_deref(), Ok(words));
    }
}

#[test]
fn arrows_comments_and_soft_hyphens_are_read() {
    let arrows = "\u{feff}# a comment\n%a: # another; with a semicolon\n\n0: ze\u{ad}ro; 1: o\u{ad}ne; # one\n10: ←← ten[ →%a→];\n100: →→→ ←%a← =%%b=; %%b@noparse: 0: b;\n%%lenient-parse:\n&[last primary ignorable ] ←← ' ' ←← ',';\n%c:\n0: c;\n";
    let numerals = Numerals::parse(arrows).unwrap();
    assert_eq!(numerals.forms(), ["a", "c"]);
    assert_eq!(numerals.say(11.into(), "a").as_deref(), Ok("one ten one"));
    assert_eq!(numerals.say(110.into(), "a").as_deref(), Ok("one ten zero one b"));
}

#[test]
fn all_problems_are_reported_with_their_lines() {
    let text = "\
0: too early;
%cardinal:
0: zero; 0: again;
5: five
x: what;
10: =%missing=; 11: >%%gone>;
12: [open;
13: closed];
14: =oops=; 15: <<;
abc/3: no;
20/1: no;
21>>>: no;
-x: <<;
30: [ >>]; next;
40: $(cardinal,one{a};
50: =%cardinal
%cardinal:
1: one;
%empty:
%bad name: 0: x;
%unended
";
    let problems = Numerals::parse(text).unwrap_err();
    let lines: Vec<u32> = problems.iter().map(|problem| problem.line).collect();
    assert_eq!(lines, [1, 3, 4, 5, 6, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 16, 17, 19, 20, 21]);
    for (line, part) in [
        (1, "before any rule set"),
        (4, "no end"),
        (6, "%missing"),
        (6, "%%gone"),
        (17, "twice"),
        (20, "%bad name"),
    ] {
        let found = problems.iter().any(|problem| problem.line == line && problem.message.contains(part));
        assert!(found, "line {line} {part}: {problems:#?}");
    }
    assert!(problems.iter().all(|problem| !problem.hint.is_empty()));
    assert_eq!(Numerals::parse("# nothing").unwrap_err()[0].line, 1);
    assert_eq!(Numerals::parse("%%private: 0: x;").unwrap_err()[0].message, "there is no public rule set");
}

#[test]
fn circles_and_doubling_rules_end_in_an_error() {
    let circle = Numerals::parse("%a: 0: x; 5: =%%b=; %%b: 0: =%a=;").unwrap();
    assert_eq!(circle.say(4.into(), "a").as_deref(), Ok("x"));
    assert_eq!(circle.say(5.into(), "a"), Err(NumeralError::Endless { number: 5.into(), form: "a".into() }));
    assert!(matches!(circle.words("a"), Err(NumeralError::Endless { .. })));

    let undivided = Numerals::parse("%a: 0: x; 1: <<;").unwrap();
    assert!(matches!(undivided.say(1.into(), "a"), Err(NumeralError::Endless { .. })));

    let mut doubling = String::from("%s0: 0: =%s1==%s1=;\n");
    let mut chain = String::from("%s0: 0: =%s1=;\n");
    for n in 1..10_000 {
        doubling +=
            &format!("%s{n}: 0: {};\n", if n < 50 { format!("=%s{0}==%s{0}=", n + 1) } else { "x".into() });
        chain += &format!("%s{n}: 0: =%s{}=;\n", (n + 1).min(9_999));
    }
    for text in [doubling, chain] {
        let numerals = Numerals::parse(&text).unwrap();
        assert!(matches!(numerals.say(0.into(), "s0"), Err(NumeralError::Endless { .. })));
    }
}

#[test]
fn numbers_are_rounded_as_they_are_written() {
    for (value, decimals, text) in [
        (1575.0, 0, "1575"),
        (5.5, 1, "5.5"),
        (5.5, 3, "5.5"),
        (2.5, 0, "3"),
        (0.15, 1, "0.2"),
        (2.675, 2, "2.68"),
        (-2.675, 2, "-2.68"),
        (9.96, 1, "10"),
        (-0.04, 1, "0"),
        (5.05, 2, "5.05"),
        (1e-30, 18, "0"),
        (0.1, 255, "0.1"),
    ] {
        assert_eq!(Number::rounded(value, decimals).unwrap().to_string(), text, "{value} {decimals}");
    }
    for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e20] {
        assert_eq!(Number::rounded(value, 1), None, "{value}");
    }
    for text in
        ["", "-", "5.", ".5", "+5", "1e3", "1,5", "٣", "18446744073709551616", "0.0000000000000000001"]
    {
        assert!(text.parse::<Number>().is_err(), "{text}");
    }
    assert_eq!(number("-0"), 0.into());
    assert_eq!(number("5.50").to_string(), "5.50");
}

#[test]
fn words_of_a_form_are_listed_once_each() {
    let expected = "sifuri moja mbili tatu nne tano sita saba nane tisa kumi ishirini thelathini arobaini hamsini sitini \
                    sabini themanini tisini mia elfu na nukta";
    let expected: BTreeSet<String> = expected.split_whitespace().map(str::to_owned).collect();
    assert_eq!(ours("sw").words("cardinal").unwrap(), expected);

    let expected = "mosi pili tatu nne tano sita saba nane tisa kumi ishirini thelathini na moja mbili";
    let expected: BTreeSet<String> = expected.split_whitespace().map(str::to_owned).collect();
    assert_eq!(ours("sw").words("date").unwrap(), expected);

    assert!(matches!(ours("sw").words("class-3"), Err(NumeralError::UnknownForm { .. })));
}

/// Glued parts ("twent" and "ieth") come out whole, and only in words that are said.
#[test]
fn no_word_is_listed_that_is_never_said() {
    for language in ["en", "sw"] {
        let numerals = ours(language);
        for form in numerals.forms() {
            let whole = (0..10_000u64).chain((10_000..1_000_000).step_by(1_000)).map(Number::from);
            let decimals = (0..100).map(|n| number(&format!("{}.{n:02}", n % 30)));
            let mut said = BTreeSet::new();
            for number in whole.chain(decimals) {
                if let Ok(words) = numerals.say(number, form) {
                    said.extend(words_in(&words).map(str::to_owned));
                }
            }
            assert_eq!(numerals.words(form).unwrap(), said, "{language} {form}");
        }
    }
}

#[test]
fn a_language_that_glues_its_numbers_has_too_many_words() {
    let glued = "%a: 0: n; 1: a; 2: b; 3: c; 4: d; 5: e; 6: f; 7: g; 8: h; 9: i; 10: <<x>>; 100: <<y>>; 1000: <<z>>; 1000000: <<w>>;";
    let numerals = Numerals::parse(glued).unwrap();
    assert_eq!(numerals.words("a"), Err(NumeralError::TooManyWords { form: "a".into() }));
}

/// A rule file of three sets that call each other at will.
fn any_rules() -> impl Strategy<Value = String> {
    let part = prop_oneof![
        3 => Just("x"), 3 => Just(" "), 2 => Just("y-"), 2 => Just("<<"), 2 => Just(">>"), 1 => Just("<%%b<"),
        1 => Just(">%%b>"), 1 => Just("=%%c="), 1 => Just(">%%c>"), 1 => Just(">>>"), 1 => Just("[ >>]"),
        1 => Just("[z<<|w]"), 1 => Just("=0="), 1 => Just("<%a<"),
    ];
    // A soft hyphen is not said; it keeps `>>` and `>%%b>` apart.
    let body = prop::collection::vec(part, 0..4).prop_map(|parts| parts.join("\u{ad}"));
    let rule = (2..60u64, prop_oneof![Just(""), Just("/2"), Just("/7"), Just("/20")], body);
    let special = prop_oneof![
        Just(""),
        Just("x.x: << p >>; "),
        Just("-x: m >>; 0.x: q>>; "),
        Just("x.0: <<; x.x: [<< ]>>>; ")
    ];
    let set = (special, prop::collection::vec(rule, 0..6)).prop_map(|(special, rules)| {
        let mut base = 0;
        let mut text = format!("{special}0: o; 1: i{};", if rules.len() % 2 == 0 { " u" } else { "" });
        for (gap, radix, body) in rules {
            base += gap;
            text += &format!("{base}{radix}: '{body};");
        }
        text
    });
    prop::collection::vec(set, 3)
        .prop_map(|sets| format!("%a: {}\n%%b: {}\n%%c: {}\n", sets[0], sets[1], sets[2]))
}

fn any_number() -> impl Strategy<Value = Number> {
    let digits = prop_oneof![Just(String::new()), "\\.[0-9]{1,3}"];
    let whole = prop_oneof![0..30u64, 0..1_000u64, 0..1_000_000u64, any::<u64>()];
    (prop::bool::weighted(0.2), whole, digits).prop_map(|(negative, whole, digits)| {
        number(&format!("{}{whole}{digits}", if negative { "-" } else { "" }))
    })
}

proptest! {
    #[test]
    fn every_word_said_is_listed(n in 0..1_000_000u64, tenths in 0..10u8) {
        for language in ["en", "sw"] {
            let numerals = ours(language);
            for form in numerals.forms() {
                let listed = numerals.words(form).unwrap();
                for number in [n.into(), number(&format!("{n}.{tenths}"))] {
                    match numerals.say(number, form) {
                        Ok(words) => {
                            let missing = words_in(&words).find(|word| !listed.contains(*word));
                            prop_assert_eq!(missing, None, "{} {} {}", language, form, number);
                        }
                        Err(error) => prop_assert_eq!(error, NumeralError::BeyondRules { number, form: form.into() }),
                    }
                }
            }
        }
    }

    #[test]
    fn every_word_said_is_listed_under_any_rules(text in any_rules(), numbers in prop::collection::vec(any_number(), 40)) {
        let numerals = Numerals::parse(&text).unwrap();
        let listed = numerals.words("a");
        for number in numbers {
            if let (Ok(words), Ok(listed)) = (numerals.say(number, "a"), &listed) {
                let missing = words_in(&words).find(|word| !listed.contains(*word));
                prop_assert_eq!(missing, None, "{} in {} by {}", number, words, text);
            }
        }
    }

    #[test]
    fn any_text_is_read_without_a_panic(text in "[%a-c:0-9;<>=←→\\[\\]|'#x.,/$(){}\u{ad}\n -]{0,200}", more in any::<String>(), n in any_number()) {
        for text in [&text, &more, &format!("%a: 0: {text};"), &format!("%a:\n{text}")] {
            match Numerals::parse(text) {
                Ok(numerals) => {
                    for form in numerals.forms() {
                        if let (Ok(said), Ok(listed)) = (numerals.say(n, form), numerals.words(form)) {
                            prop_assert!(words_in(&said).all(|word| listed.contains(word)), "{} by {}", said, text);
                        }
                    }
                }
                Err(problems) => {
                    prop_assert!(!problems.is_empty());
                    prop_assert!(problems.iter().all(|p| p.line >= 1 && p.line as usize <= text.lines().count().max(1)));
                }
            }
        }
    }

    #[test]
    fn a_number_is_the_number_it_prints(number in any_number()) {
        prop_assert_eq!(number.to_string().parse::<Number>().unwrap(), number);
    }

    #[test]
    fn rounding_moves_a_value_by_half_a_place_at_most(value in -1e6..1e6f64, decimals in 0..6u8) {
        let rounded: f64 = Number::rounded(value, decimals).unwrap().to_string().parse().unwrap();
        let place = 10f64.powi(-i32::from(decimals));
        prop_assert!((rounded - value).abs() <= place / 2.0 + 1e-9, "{} {} {}", value, decimals, rounded);
    }
}
