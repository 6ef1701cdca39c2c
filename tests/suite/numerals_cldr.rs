//! Every spell-out file of Unicode CLDR 48.2, read as it is and said as ICU says it (`tests/expected/cldr-spellout-all`).

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::PathBuf;

use kabla::language::numerals::{Language, Number, NumeralError, Numerals};

const FEW: [&str; 6] = ["21", "172", "1999", "2000005", "-3", "2.5"];

/// Languages that write decimals with another sign than a point, as CLDR's numbers have it.
const COMMA: &str = "af az be bg bs ca cs da de el eo es et fa fa-AF ff fi fo fr fr-BE fr-CH hr hu hy id is it ka kk \
     kl ky lb lo lrc lt lv mk nl nn no pl pt pt-PT ro ru se sk sl sq sr sr-Latn su sv tr uk vec vi";

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/expected/cldr-spellout-all/rules")
}

fn tags() -> BTreeSet<String> {
    let files = fs::read_dir(folder()).unwrap().map(|entry| entry.unwrap().path());
    files.map(|file| file.file_stem().unwrap().to_str().unwrap().to_owned()).collect()
}

fn numerals(tag: &str) -> Numerals {
    let text = fs::read_to_string(folder().join(format!("{tag}.rbnf"))).unwrap();
    let decimal_comma = COMMA.split_whitespace().any(|of| of == tag);
    Numerals::parse_in(&text, Language { tag, decimal_comma })
        .unwrap_or_else(|problems| panic!("{tag}: {problems:#?}"))
}

/// Where rules have none for a sign or for decimals: ICU repeats or drops the sign, or rounds; here some of the numbers
/// are refused.
const REFUSED: [(&str, &str, &str); 11] = [
    ("el", "spellout-ordinal-neuter", "decimal"),
    ("he", "spellout-construct-masculine", "decimal"),
    ("he", "spellout-construct-feminine", "decimal"),
    ("ja", "spellout-numbering-year", "negative"),
    ("ko", "spellout-ordinal-sinokorean", "negative"),
    ("lt", "spellout-ordinal-masculine", "negative"),
    ("lt", "spellout-ordinal-feminine-plural-accusative", "negative"),
    ("yue", "spellout-numbering-year", "negative"),
    ("yue-Hans", "spellout-numbering-year", "negative"),
    ("zh", "spellout-numbering-year", "negative"),
    ("zh-Hant", "spellout-numbering-year", "negative"),
];

/// Rows of words.tsv, by column name.
fn rows() -> Vec<BTreeMap<String, String>> {
    let text = fs::read_to_string(folder().with_file_name("words.tsv")).unwrap();
    let mut lines = text.lines();
    let header: Vec<&str> = lines.next().unwrap().split('\t').collect();
    let row = |line: &str| {
        let cells = line.split('\t').map(str::to_owned);
        header.iter().map(|name| (*name).to_owned()).zip(cells).collect()
    };
    lines.map(row).collect()
}

/// The numbers of each hash, as `remake.py` has them.
fn many() -> BTreeMap<&'static str, Vec<String>> {
    let whole = |from: i64, to: i64, step: usize| (from..to).step_by(step).map(|n| n.to_string());
    let places = |to: i64, step: usize, places: usize| {
        (1..to).step_by(step).filter(|n| n % 10 != 0).map(move |n| {
            let digits = format!("{n:0width$}", width = places + 1);
            let (whole, decimals) = digits.split_at(digits.len() - places);
            format!("{whole}.{decimals}")
        })
    };
    BTreeMap::from([
        ("to_199", whole(0, 200, 1).collect()),
        ("to_9999", whole(200, 10_000, 97).collect()),
        ("to_999999", whole(10_000, 1_000_000, 9_973).collect()),
        (
            "large",
            whole(1_000_000, 1_000_000_000_000, 17_000_000_003)
                .chain(whole(1_000_000_000_000, 1_000_000_000_000_000_000, 31_000_000_000_000_037))
                .collect::<Vec<_>>(),
        ),
        ("negative", whole(-1_199, 0, 17).collect()),
        ("decimal", places(400, 7, 1).chain(places(2_000, 37, 2)).collect()),
    ])
}

fn fnv1a(text: &str) -> String {
    let step = |hash: u64, byte: u8| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
    format!("{:016x}", text.bytes().fold(0xcbf2_9ce4_8422_2325, step))
}

/// The words; nothing where there are none, as the fixture has it where ICU writes digits.
fn say(numerals: &Numerals, number: &str, form: &str) -> String {
    let number: Number = number.parse().unwrap();
    match numerals.say(number, form) {
        Ok(words) => words,
        Err(NumeralError::BeyondRules { .. }) => String::new(),
        Err(error) => panic!("{form} {number}: {error}"),
    }
}

#[test]
fn every_language_of_cldr_is_said_as_icu_says_it() {
    let many = many();
    let mut wrong = Vec::new();
    let mut seen: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut known: BTreeMap<String, Numerals> = BTreeMap::new();
    for row in rows() {
        let (tag, form) = (row["language"].clone(), &row["form"]);
        let numerals = known.entry(tag.clone()).or_insert_with(|| numerals(&tag));
        let refused = |block: &str| REFUSED.contains(&(tag.as_str(), form.as_str(), block));
        for number in FEW {
            let said = say(numerals, number, form);
            let may_refuse = said.is_empty() && number == "2.5" && refused("decimal");
            if said != row[number] && !may_refuse {
                wrong.push(format!("{tag} {form} {number}: {said:?} for {:?}", row[number]));
            }
        }
        for (name, numbers) in &many {
            let lines: String = numbers.iter().map(|number| say(numerals, number, form) + "\n").collect();
            if refused(name) {
                assert!(
                    lines.starts_with('\n') || lines.contains("\n\n"),
                    "{tag} {form}: nothing is refused"
                );
            } else if fnv1a(&lines) != row[*name] {
                wrong.push(format!("{tag} {form}: {name}"));
            }
        }
        seen.entry(tag).or_default().insert(form.clone());
    }
    assert!(wrong.is_empty(), "{} differ:\n{}", wrong.len(), wrong.join("\n"));
    assert_eq!(seen.keys().cloned().collect::<BTreeSet<_>>(), tags());
    for (tag, forms) in seen {
        assert_eq!(
            known[&tag].forms().into_iter().map(str::to_owned).collect::<BTreeSet<_>>(),
            forms,
            "{tag}"
        );
    }
}

/// CLDR has no spell-out rules for Zulu, which were asked for, nor for Hausa or Chichewa; those it has are kept here whole.
#[test]
fn what_cldr_has_is_here_and_zulu_is_not_in_it() {
    let list = fs::read_to_string(folder().with_file_name("files.txt")).unwrap();
    let listed: BTreeSet<String> = list
        .lines()
        .filter_map(|file| file.strip_suffix("-SpelloutRules.txt"))
        .map(|tag| tag.replace('_', "-"))
        .collect();
    assert_eq!(listed.len(), 88);
    assert_eq!(listed, tags());
    for tag in ["zu", "ha", "ny", "om", "ti", "so", "lg", "rw", "yo", "ig"] {
        assert!(!listed.contains(tag), "{tag}");
    }
    for tag in ["en", "sw", "fr", "pt", "pt-PT", "am", "ee"] {
        let file = format!("{tag}.rbnf");
        let other = folder().join("../../cldr-spellout").join(&file);
        assert_eq!(fs::read(folder().join(&file)).unwrap(), fs::read(other).unwrap(), "{tag}");
    }
}
