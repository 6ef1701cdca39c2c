//! Number words of the packs, against grammars, CLDR and other packages.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

use icu_plurals::{PluralCategory, PluralRules};
use kabla::data::{Data, Embedded};
use kabla::guidance::Value;
use kabla::language::numerals::Number;
use kabla::language::{Label, Pack};

use crate::expected::rows;

/// The packs with a folder of expected words of their own.
const SOURCES: [(&str, &str, usize); 5] = [
    ("am", "amharic-numbers", 1100),
    ("fr", "french-numbers", 20_000),
    ("ha", "hausa-numbers", 90),
    ("ny", "chichewa-numbers", 110),
    ("pt-MZ", "portuguese-numbers", 20_000),
];

#[test]
fn words_of_the_packs_numbers() {
    // English and Swahili are held against CLDR in numerals.rs.
    let checked: BTreeSet<String> =
        SOURCES.iter().map(|(tag, ..)| *tag).chain(["en", "sw"]).map(str::to_owned).collect();
    assert_eq!(checked, Pack::tags(&Embedded).into_iter().collect(), "every pack has words from outside");
    for (tag, folder, least) in SOURCES {
        let pack = Pack::load(&Embedded, tag).unwrap();
        let spelling = |words: &str| {
            let Ok(aliases) = std::fs::read_to_string(format!(
                "{}/tests/expected/{folder}/aliases.csv",
                env!("CARGO_MANIFEST_DIR")
            )) else {
                return words.to_owned();
            };
            let pairs: BTreeMap<&str, &str> = aliases
                .lines()
                .skip(1)
                .filter_map(|line| line.split_once(','))
                .map(|(ours, alias)| (alias, ours))
                .collect();
            words.split(' ').map(|word| *pairs.get(word).unwrap_or(&word)).collect::<Vec<_>>().join(" ")
        };
        let cases = rows(folder, "cases.csv");
        assert!(cases.len() >= least, "{tag}: {}", cases.len());
        let (mut wrong, mut shown) = (0, String::new());
        for row in &cases {
            let number = &row["number"];
            let decimals = number.split_once('.').map_or(0, |(_, fraction)| fraction.len() as u8);
            let number = Number::rounded(number.parse().unwrap(), decimals).unwrap();
            let said = pack.numerals().say(number, &row["form"]).map_err(|error| error.to_string());
            if said.as_deref() != Ok(spelling(&row["words"]).as_str()) {
                wrong += 1;
                if wrong < 8 {
                    shown.push_str(&format!("\n{row:?}: {said:?}"));
                }
            }
        }
        assert_eq!(wrong, 0, "{tag}: of {}{shown}", cases.len());
    }
}

/// Every whole number up to 999,999 that a sentence may hold has words in every form of every pack, told apart from all others nearby.
#[test]
fn no_pack_has_gaps_in_its_numbers() {
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        assert!(!pack.numerals().forms().is_empty(), "{tag}");
        for form in pack.numerals().forms() {
            let mut before: Option<String> = None;
            let day = form == "day" || form == "date" || form.starts_with("ordinal");
            let numbers: Vec<u32> = if day {
                (1..32).collect()
            } else {
                (0..2_000).chain((2_000..1_000_000).step_by(7_919)).collect()
            };
            for number in numbers {
                let said = pack.numerals().say(Number::rounded(f64::from(number), 0).unwrap(), form);
                let said = said.unwrap_or_else(|error| panic!("{tag} {form}: {error}"));
                assert!(!said.contains(|c: char| c.is_ascii_digit()), "{tag} {form} {number}: {said}");
                assert_ne!(before.as_deref(), Some(said.as_str()), "{tag} {form} {number}");
                before = Some(said);
            }
        }
    }
}

/// A pack in which one label tells the plural category of $n.
struct Telling<'t>(&'t str);

impl Data for Telling<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        let bytes = Embedded.read(path)?;
        if path != format!("locales/{}/written.ftl", self.0) {
            return Some(bytes);
        }
        let text = String::from_utf8(bytes.into_owned()).unwrap();
        let (before, rest) = text.split_once("\nstatus-draft = ").unwrap();
        let (_, after) = rest.split_once('\n').unwrap();
        let selector = "{ $n ->\n    [zero] zero\n    [one] one\n    [two] two\n    [few] few\n    [many] many\n   *[other] other\n }";
        Some(format!("{before}\nstatus-draft = {selector}\n{after}").into_bytes().into())
    }
    fn list(&self, folder: &str) -> Vec<String> {
        Embedded.list(folder)
    }
}

/// The plural categories that selectors see are those of CLDR, through an independent library, below a million (above it
/// Fluent's own table is of an older CLDR); for Portuguese outside Brazil those of Portugal.
#[test]
fn plural_categories_of_all_packs() {
    for tag in Pack::tags(&Embedded) {
        // The library's data leave Chichewa out; CLDR lists it among those with `one` for 1 (from memory).
        let known = tag != "ny";
        let pack = Pack::load(&Telling(&tag), &tag).unwrap();
        let category = |number: usize| {
            let n = Value::Number(number as f64, 0);
            pack.label(Label::StatusDraft, &[("n", n)]).unwrap()
        };
        let locale = if tag == "pt-MZ" { "pt-PT" } else { tag.as_str() };
        let rules = PluralRules::try_new(
            locale.parse::<icu_locale_core::Locale>().unwrap().into(),
            Default::default(),
        )
        .unwrap();
        for number in (0..=1200usize).chain([9_999, 100_000, 999_999]) {
            let expected = match rules.category_for(number) {
                _ if !known && number == 1 => "one",
                PluralCategory::Zero => "zero",
                PluralCategory::One => "one",
                PluralCategory::Two => "two",
                PluralCategory::Few => "few",
                PluralCategory::Many => "many",
                PluralCategory::Other => "other",
            };
            assert_eq!(category(number), expected, "{tag} {number}");
        }
    }
}
