//! Number words.
//!
//! What is expected comes from Unicode CLDR's rules as ICU says them (`tests/expected/cldr-spellout`), from the Swahili
//! concord table (`tests/expected/swahili-concord`), or is written out by hand here.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

use std::cell::Cell;
use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;

use kabla::language::numerals::{Language, Number, NumeralError, Numerals, RuleProblem, words_in};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;

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

/// Languages whose rules CLDR has, and how many public forms there are.
const CLDR: [(&str, usize); 7] =
    [("en", 7), ("sw", 4), ("fr", 8), ("pt", 6), ("pt-PT", 6), ("am", 4), ("ee", 4)];

fn in_language(tag: &str, text: &str) -> Result<Numerals, Vec<RuleProblem>> {
    let decimal_comma = ["ar", "fr", "pt", "pt-PT", "ru"].contains(&tag);
    Numerals::parse_in(text, Language { tag, decimal_comma })
}

fn cldr(tag: &str) -> Numerals {
    let text = read(&format!("tests/expected/cldr-spellout/{tag}.rbnf"));
    in_language(tag, &text).unwrap_or_else(|problems| panic!("{tag}: {problems:#?}"))
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
    let rows: Vec<_> = lines.map(|line| keys.iter().cloned().zip(cells(line)).collect()).collect();
    assert!(!rows.is_empty(), "{path} has no rows, and would prove nothing");
    rows
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
        let numerals = cldr(language);
        let expected = column(&format!("{language}.csv"), form);
        assert_eq!(expected.len(), count, "{language} {form}");
        for (number, words) in expected {
            assert_eq!(numerals.say(number, form).as_ref(), Ok(&words), "{language} {form} {number}");
        }
    }
}

#[test]
fn every_form_of_cldr_says_what_icu_says() {
    for (tag, forms) in CLDR {
        let numerals = cldr(tag);
        assert_eq!(numerals.forms().len(), forms, "{tag}");
        let rows = rows(&format!("tests/expected/cldr-spellout/{tag}.few.csv"));
        assert_eq!(rows.len(), 224, "{tag}");
        for form in numerals.forms() {
            let mut said = 0;
            for row in &rows {
                let number = number(&row["number"]);
                let words = &row[form];
                // What ICU writes in digits has no words.
                if words.contains(|c: char| c.is_ascii_digit()) {
                    let error = NumeralError::BeyondRules { number, form: form.into() };
                    assert_eq!(numerals.say(number, form), Err(error), "{tag} {form} {number}");
                } else {
                    said += 1;
                    assert_eq!(numerals.say(number, form).as_ref(), Ok(words), "{tag} {form} {number}");
                }
            }
            assert!(said > 200, "{tag} {form}: {said}");
        }
    }
}

/// All numbers up to 9,999 and many more, negative ones and decimals, by a hash of their words.
#[test]
fn every_form_of_cldr_says_many_numbers_as_icu_does() {
    for (tag, forms) in CLDR {
        let numerals = cldr(tag);
        let rows = rows(&format!("tests/expected/cldr-spellout/{tag}.many.csv"));
        assert_eq!(rows.len(), 116, "{tag}");
        let mut hashes = 0;
        for row in rows {
            let [places, first, last, step] =
                ["places", "first", "last", "step"].map(|key| row[key].parse::<i64>().unwrap());
            let numbers: Vec<Number> = (first..=last)
                .step_by(step.try_into().unwrap())
                .filter(|n| places == 0 || n % 10 != 0)
                .map(|n| scaled(n, places.try_into().unwrap()))
                .collect();
            for form in numerals.forms() {
                let line = |n: &Number| match numerals.say(*n, form) {
                    Ok(words) => words + "\n",
                    Err(NumeralError::BeyondRules { .. }) => "\n".to_owned(),
                    Err(error) => panic!("{tag} {form} {n}: {error}"),
                };
                let lines: String = numbers.iter().map(line).collect();
                assert_eq!(
                    fnv1a(&lines),
                    row[form],
                    "{tag} {form} {first} to {last}, {places} places:\n{lines}"
                );
                hashes += 1;
            }
        }
        assert_eq!(hashes, 116 * forms, "{tag}");
    }
}

/// `n` divided by a power of ten.
fn scaled(n: i64, places: usize) -> Number {
    let digits = format!("{:0width$}", n.unsigned_abs(), width = places + 1);
    let (whole, decimals) = digits.split_at(digits.len() - places);
    let sign = if n < 0 { "-" } else { "" };
    number(&if places == 0 { format!("{sign}{whole}") } else { format!("{sign}{whole}.{decimals}") })
}

/// The hash FNV-1a of 64 bits, as `remake.py` has it.
fn fnv1a(text: &str) -> String {
    let step = |hash: u64, byte: u8| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
    format!("{:016x}", text.bytes().fold(0xcbf2_9ce4_8422_2325, step))
}

/// The test values that the hash's authors published.
#[test]
fn the_hash_is_the_one_that_is_named() {
    assert_eq!(fnv1a(""), "cbf29ce484222325");
    assert_eq!(fnv1a("foobar"), "85944171f73967e8");
}

#[test]
fn every_word_of_cldr_is_listed() {
    for (tag, _) in CLDR {
        let numerals = cldr(tag);
        for form in numerals.forms() {
            let listed = numerals.words(form).unwrap();
            for row in rows(&format!("tests/expected/cldr-spellout/{tag}.few.csv")) {
                if !row[form].contains(|c: char| c.is_ascii_digit()) {
                    let missing = words_in(&row[form]).find(|word| !listed.contains(*word));
                    assert_eq!(missing, None, "{tag} {form} {}", row["number"]);
                }
            }
        }
    }
}

#[test]
fn each_part_of_the_syntax_does_what_it_does_in_icu() {
    let rows = rows("tests/expected/cldr-spellout/syntax.csv");
    assert!(rows.len() > 370);
    let mut with_a_list = 0;
    for row in rows {
        let numerals = in_language(&row["language"], &row["rules"]).unwrap();
        let said = numerals.say(number(&row["number"]), "a");
        assert_eq!(said.as_ref(), Ok(&row["words"]), "{} of {}", row["number"], row["rules"]);
        // Rules that glue all parts of a number have no list.
        if let Ok(listed) = numerals.words("a") {
            let missing = words_in(&row["words"]).find(|word| !listed.contains(*word));
            assert_eq!(missing, None, "{} of {}", row["number"], row["rules"]);
            with_a_list += 1;
        }
    }
    assert!(with_a_list > 250, "{with_a_list}");
}

/// Ours leave out the comma that CLDR writes behind the thousands (English: above 100,000), as it is not said. Swahili
/// says "na" before a rest below 100 behind one to nine thousand, which CLDR lacks: by a reader's usage, from memory.
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
            let (thousands, rest) = (number.whole() / 1_000, number.whole() % 1_000);
            let mut words = words.replace(',', "");
            if language == "sw" && (1..=9).contains(&thousands) && (1..=99).contains(&rest) {
                let all_thousands =
                    kabla::language::numerals::Number::rounded((thousands * 1_000) as f64, 0).unwrap();
                let before = numerals.say(all_thousands, "cardinal").unwrap();
                words = words.replacen(&format!("{before} "), &format!("{before} na "), 1);
            }
            assert_eq!(numerals.say(number, "cardinal"), Ok(words), "{language} {number}");
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

/// ICU would take the nearest fraction.
#[test]
fn decimals_that_are_no_fraction_of_the_rules_are_not_rounded() {
    let fractions =
        "%a: 0: z; 1: =%%n=; x.x: << and >%%tenths>; %%n: 1: i; 10: no; %%tenths: 10: <%%n< tenths;";
    let numerals = Numerals::parse(fractions).unwrap();
    assert_eq!(numerals.say(number("0.5"), "a").as_deref(), Ok("z and i tenths"));
    for text in ["0.55", "0.05", "-0.5"] {
        let error = NumeralError::BeyondRules { number: number(text), form: "a".into() };
        assert_eq!(numerals.say(number(text), "a"), Err(error));
    }
}

/// Numbers of a language whose plurals nobody knows would all be said as `other`.
#[test]
fn a_choice_needs_a_language_with_its_plurals() {
    let rules = "%a:\n0: z;\n1: x$(cardinal,one{a}other{b})$;\n";
    let without = Numerals::parse(rules).unwrap_err();
    assert_eq!((without.len(), without[0].line), (1, 3), "{without:?}");
    for (tag, message) in [
        ("qqx", "the language has no plural category `one`"),
        ("no tag", "this choice by plural category is in no known language"),
    ] {
        let problems = in_language(tag, rules).unwrap_err();
        assert_eq!((problems[0].line, problems[0].message.as_str()), (3, message), "{tag}");
    }
    let numerals = in_language("en-ZA", rules).unwrap();
    assert_eq!(numerals.say(1.into(), "a").as_deref(), Ok("xa"));
    assert_eq!(numerals.say(2.into(), "a").as_deref(), Ok("xb"));
    assert_eq!(numerals.words("a").unwrap(), ["xa", "xb", "z"].map(str::to_owned).into());
}

#[test]
fn choices_and_fractions_that_mean_nothing_are_refused() {
    for (rule, message) in [
        ("$(cardinal,one{x})$", "there is no `other{…}`"),
        ("$(cardinal,one{x}one{y}other{z})$", "`one` is there twice"),
        ("$(cardinal,few{x}other{z})$", "the language has no plural category `few`"),
        ("$(cardinal,=1{x}other{z})$", "the language has no plural category `=1`"),
        ("$(cardinal,one x other{z})$", "the language has no plural category `one x other`"),
        ("$(cardinal,one{x}other)$", "`other` has no text in braces"),
        ("$(cardinal,one{#}other{z})$", "`#` is not plain text"),
        ("$(plural,one{x}other{z})$", "`plural` is neither `cardinal` nor `ordinal`"),
        ("$(cardinal,one{x}other{z}", "this `$(` has no end"),
        ("<%a<<", "`<<` behind a name means something in a rule set of fractions only"),
        ("y; %%f: 10: <%a<[ >%a>]", "`>` and brackets mean nothing in a rule set of fractions"),
    ] {
        let rules = format!("%a: 0: z; 1: {rule}; %b: x.x: << >%%f>; 0: y;");
        let rules = if rule.contains("%%f:") { rules } else { rules + "%%f: 10: <%a<;" };
        let problems = in_language("en", &rules).unwrap_err();
        assert!(problems.iter().any(|problem| problem.message == message), "{rule}: {problems:?}");
    }
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
    for n in 1..400 {
        doubling +=
            &format!("%s{n}: 0: {};\n", if n < 50 { format!("=%s{0}==%s{0}=", n + 1) } else { "x".into() });
        chain += &format!("%s{n}: 0: =%s{}=;\n", (n + 1).min(399));
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
        1 => Just("$(cardinal,one{k}other{l m})$"), 1 => Just("$(ordinal,two{-}few{}other{n})$"),
    ];
    // A soft hyphen is not said; it keeps `>>` and `>%%b>` apart.
    let body = prop::collection::vec(part, 0..4).prop_map(|parts| parts.join("\u{ad}"));
    let rule = (2..60u64, prop_oneof![Just(""), Just("/2"), Just("/7"), Just("/20")], body);
    let special = prop_oneof![
        Just(""),
        Just("x.x: << p >>; "),
        Just("-x: m >>; 0.x: q>>; "),
        Just("x.0: <<; x.x: [<< ]>>>; "),
        Just("x.x: [<<, ]>%%f>; "),
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
    prop::collection::vec(set, 3).prop_map(|sets| {
        let fractions = "%%f: 4: <%%b< t$(cardinal,one{}other{u})$; 10: <%%c<<; 100: <%a<< v; 1000: =%%b=;";
        format!(
            "%a: {}\n%%b: {}\n%%c: {}\n{fractions}\n%g: 0: =%a=; x.x: >%%f>;\n",
            sets[0], sets[1], sets[2]
        )
    })
}

fn any_number() -> impl Strategy<Value = Number> {
    let digits = prop_oneof![Just(String::new()), "\\.[0-9]{1,3}"];
    let whole = prop_oneof![0..30u64, 0..1_000u64, 0..1_000_000u64, any::<u64>()];
    (prop::bool::weighted(0.2), whole, digits).prop_map(|(negative, whole, digits)| {
        number(&format!("{}{whole}{digits}", if negative { "-" } else { "" }))
    })
}

#[test]
fn every_word_said_is_listed_under_any_rules() {
    let cases = (any_rules(), prop::collection::vec(any_number(), 40));
    let (said, listed_whole) = (Cell::new(0), Cell::new(0));
    let run = TestRunner::default().run(&cases, |(text, numbers)| {
        let numerals = in_language("en", &text).unwrap();
        let Ok(listed) = numerals.words("a") else { return Ok(()) };
        listed_whole.set(listed_whole.get() + 1);
        for words in numbers.into_iter().filter_map(|number| numerals.say(number, "a").ok()) {
            let missing = words_in(&words).find(|word| !listed.contains(*word));
            prop_assert_eq!(missing, None, "{} by {}", words, text);
            said.set(said.get() + 1);
        }
        Ok(())
    });
    run.unwrap();
    let seen = (listed_whole.get(), said.get());
    assert!(seen.0 > 50 && seen.1 > 500, "too few lists and numbers to prove anything: {seen:?}");
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
    fn any_text_is_read_without_a_panic(text in "[%a-c:0-9;<>=←→\\[\\]|'#x.,/$(){}\u{ad}\n -]{0,200}", more in any::<String>(), n in any_number()) {
        for text in [&text, &more, &format!("%a: 0: {text};"), &format!("%a:\n{text}")] {
            match in_language("en", text) {
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
