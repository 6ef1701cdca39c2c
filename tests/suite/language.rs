//! Packs, wording, and the phrases a speaker records.

use std::collections::BTreeSet;

use chrono::{Days, NaiveDate};
use kabla::data::{Data, Embedded};
use kabla::guidance::{Audience, Priority, Statement, Subject, Value, ValueInfo, ValueKind, tell};
use kabla::language::{Intonation, Pack, Pause, Piece, check};
use kabla::plan::{DateSpan, Quantity, make};
use proptest::prelude::*;

use crate::examples;
use crate::record_script::plain;

fn pack(tag: &str) -> Pack {
    Pack::load(&Embedded, tag).unwrap_or_else(|findings| panic!("{tag}: {findings:#?}"))
}

fn packs() -> Vec<Pack> {
    let tags = Pack::tags(&Embedded);
    assert!(tags.contains(&"en".to_owned()) && tags.contains(&"sw".to_owned()));
    tags.iter().map(|tag| pack(tag)).collect()
}

#[test]
fn every_statement_of_every_example_is_worded() {
    for pack in packs() {
        for (name, case) in examples() {
            for statement in tell(&case, &make(&case).unwrap()) {
                let written = pack.write(&statement).unwrap();
                assert!(!written.title.is_empty(), "{} {name} {:?}", pack.tag(), statement.subject);
                if statement.subject.is_spoken() {
                    let spoken = pack.say(&statement).unwrap();
                    assert!(matches!(spoken.last(), Some(Piece::Pause(Pause::Statement))));
                }
                for text in [&written.title, &written.text, &written.alt] {
                    let private = text.chars().any(|c| ('\u{E000}'..='\u{F8FF}').contains(&c));
                    assert!(!private && !text.contains('{'), "{}: {text}", pack.tag());
                }
            }
        }
    }
}

/// Days are told from a local event near to them, before and after it; far ones are left out.
#[test]
fn days_are_counted_from_local_events() {
    let (_, mut case) = examples().remove(0);
    // The harvest is on 24 May 2027, the first roots to the bed on 30 September.
    let event =
        |name: &str, date: &str| kabla::plan::Event { name: name.to_owned(), date: date.parse().unwrap() };
    case.events = vec![
        event("the feast", "2027-05-22"),
        event("the fair", "2027-10-01"),
        event("the new year", "2028-01-01"),
    ];
    let told = tell(&case, &make(&case).unwrap());
    let when = |subject: &str, tag: &str| {
        let statement = told.iter().find(|statement| statement.subject.name() == subject).unwrap();
        pack(tag).write(statement).unwrap().when.remove(0)
    };
    assert_eq!(when("harvest", "en"), "Monday, 24 May 2027 (2 days after the feast)");
    assert!(when("last-check", "en").ends_with("(1 day before the fair)"));
    assert!(when("check-plants", "en").ends_with("(5 days before the feast)"));
    assert!(when("harvest", "sw").ends_with("(siku 2 baada ya the feast)"));
    assert!(!when("first-harvest", "en").contains('('), "{}", when("first-harvest", "en"));
}

/// Two centuries of Ethiopian months by an independent library.
#[test]
fn ethiopian_dates_of_two_centuries() {
    let cases = crate::expected::rows("ethiopian-dates", "cases.csv");
    assert!(cases.len() > 3000);
    for row in cases {
        let found = kabla::language::dates::ethiopic(row["gregorian"].parse().unwrap()).unwrap();
        let found = [found.year.to_string(), found.month.to_string(), found.day.to_string()];
        assert_eq!(found, ["year", "month", "day"].map(|name| row[name].clone()), "{row:?}");
    }
}

/// Months and weekdays of the packs are those of CLDR; Chichewa has no names there.
#[test]
fn months_and_weekdays_as_cldr_has_them() {
    let plain = |text: &str| text.to_lowercase().replace(['ʼ', '’'], "'");
    let mut checked = 0;
    for row in crate::expected::rows("cldr-calendar", "cases.csv") {
        if row["new"] == "yes" {
            continue;
        }
        let pack = pack(&row["tag"]);
        let number: u32 = row["number"].parse().unwrap();
        // 1 March 2027 is a Monday; 11 September 2027 is within Pagume, whose 13 months before began each 30 days earlier.
        let (date, function) = match row["what"].as_str() {
            "month" => (NaiveDate::from_ymd_opt(2027, number, 12).unwrap(), "DAY"),
            "weekday" => (NaiveDate::from_ymd_opt(2027, 3, number).unwrap(), "WEEKDAY"),
            _ => (
                NaiveDate::from_ymd_opt(2026, 9, 12).unwrap() + Days::new(u64::from(30 * (number - 1))),
                "DAY",
            ),
        };
        let written = plain(&pack.write_day(date, function).unwrap());
        let named = [&row["alone"], &row["in_date"]].into_iter().any(|name| written.contains(&plain(name)));
        assert!(named, "{row:?}: {written}");
        checked += 1;
    }
    assert_eq!(checked, 6 * 19 + 13);
}

/// Names that nobody has written into a pack are said and listed to record as well; a pack's own come before them.
#[test]
fn names_of_cldr_are_written_said_and_listed() {
    for (tag, month) in [("en", "August"), ("sw", "Agosti"), ("fr", "août"), ("ha", "Agusta")] {
        let file = Embedded.read(&format!("locales/{tag}/spoken.ftl")).unwrap();
        assert!(!String::from_utf8_lossy(&file).contains("\nmonth ="), "{tag}");
        let pack = pack(tag);
        let day = NaiveDate::from_ymd_opt(2027, 8, 24).unwrap();
        assert!(pack.say_day(day, "DAY").unwrap().contains(month), "{tag}");
        assert!(pack.phrases().unwrap().iter().any(|phrase| phrase.words == month), "{tag}");
    }
    let day = NaiveDate::from_ymd_opt(2027, 8, 24).unwrap();
    assert!(pack("pt-MZ").write_date(day).unwrap().contains("Agosto"), "a capital, as the pack has it");
    let amharic: Vec<String> = pack("am").phrases().unwrap().into_iter().map(|phrase| phrase.words).collect();
    assert!(amharic.iter().any(|words| words == "ነሐሴ") && amharic.iter().all(|words| words != "ኦገስት"));
}

/// 24 May 2027 in both calendars: 16 Ginbot 2019, since Ginbot begins on 9 May in years after a common year.
#[test]
fn the_week_of_the_month_and_the_ethiopian_day() {
    use kabla::language::dates::{ethiopic, week_of_month};
    let day = |text: &str| text.parse::<NaiveDate>().unwrap();
    for (date, week) in
        [("2027-05-01", 1), ("2027-05-07", 1), ("2027-05-08", 2), ("2027-05-28", 4), ("2027-05-31", 5)]
    {
        assert_eq!(week_of_month(day(date)), week, "{date}");
    }
    let found = ethiopic(day("2027-05-24")).unwrap();
    assert_eq!((found.year, found.month, found.day), (2019, 9, 16));
}

#[test]
fn what_is_said_is_what_is_written() {
    for tag in ["en", "sw"] {
        let pack = pack(tag);
        let (_, case) = examples().remove(0);
        let mut said = String::new();
        let told = tell(&case, &make(&case).unwrap());
        for statement in told.into_iter().filter(|statement| statement.subject.is_spoken()) {
            said.push_str(&format!("{}:", statement.subject.name()));
            for piece in pack.say(&statement).unwrap() {
                match piece {
                    Piece::Words(words) => said.push_str(&format!(" {}", words.text)),
                    Piece::Pause(Pause::Statement) => said.push('\n'),
                    Piece::Pause(_) => {}
                }
            }
        }
        insta::assert_snapshot!(format!("spoken_{tag}"), said);
    }
}

/// A spoken statement of any subject, with any value there is of every kind that may be spoken. Those that have values
/// of their own, `plan_words.rs` tries with those of plans.
fn any_statement() -> impl Strategy<Value = Statement> {
    let of_code = |subject: &Subject| matches!(subject, Subject::Consequence(_));
    let spoken = Subject::all().filter(|subject| subject.is_spoken() && !of_code(subject));
    let subjects: Vec<Subject> = spoken.collect();
    let day = (0u64..20_000).prop_map(|days| NaiveDate::from_ymd_opt(2000, 1, 1).unwrap() + Days::new(days));
    let spoken: Vec<ValueInfo> = ValueInfo::all().filter(|value| value.is_spoken).collect();
    let quantities = Quantity::ALL.into_iter().filter_map(Quantity::in_messages);
    let measured: Vec<&str> = quantities.map(|value| value.name).collect();
    let numbers = prop::collection::vec(0u32..1_000_000, spoken.len());
    (prop::sample::select(subjects), day, 0u64..90, numbers).prop_map(
        move |(subject, from, length, numbers)| {
            let span = DateSpan::new(from, from + Days::new(length));
            let values = spoken.iter().zip(numbers).map(|(value, number)| {
                let any = match value.kind {
                    // Tenths only of what a plan measures. A case may give tenths of other values too: a
                    // language without words for those, as Swahili for tenths of nodes, refuses to say them.
                    ValueKind::Number(1) if number % 10 != 0 && measured.contains(&value.name) => {
                        Value::Number(f64::from(number % 10_000) / 10.0, 1)
                    }
                    ValueKind::Number(_) => Value::Number(f64::from(number), 0),
                    ValueKind::Day => Value::Date(if number % 2 == 0 { span.from } else { span.to }),
                    ValueKind::Span => Value::Span(span),
                    ValueKind::Choice(names) => Value::Name(names[number as usize % names.len()]),
                    ValueKind::Text => panic!("{} is a text, which nobody can say", value.name),
                };
                (value.name, any)
            });
            Statement {
                rows: Vec::new(),
                near: None,
                standing: None,
                subject,
                values: values.collect(),
                when: vec![span],
                audience: Audience::Farmers,
                priority: Priority::Important,
                together: None,
            }
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    /// One source for text and recording: formatting can never say words that
    /// are not on the list of phrases to record, in the intonation they need.
    #[test]
    fn nothing_is_said_that_is_not_on_the_list(statement in any_statement(), which in 0..Pack::tags(&Embedded).len()) {
        thread_local! {
            static LISTS: Vec<(Pack, BTreeSet<(String, Intonation)>)> = packs().into_iter().map(|pack| {
                let list = pack.phrases().unwrap().into_iter().map(|phrase| (plain(&phrase.words), phrase.intonation)).collect();
                (pack, list)
            }).collect();
        }
        LISTS.with(|lists| {
            let (pack, list) = &lists[which];
            for piece in pack.say(&statement).unwrap() {
                if let Piece::Words(words) = piece {
                    let wanted = (plain(&words.text), words.intonation);
                    prop_assert!(list.contains(&wanted), "{} says {wanted:?}, which nobody records", pack.tag());
                }
            }
            Ok(())
        })?;
    }
}

#[test]
fn phrases_hold_nothing_that_cannot_be_read_aloud() {
    for pack in packs() {
        for phrase in pack.phrases().unwrap() {
            let fine = |c: char| {
                !c.is_numeric() && !"{}$%&/=*#_|<>".contains(c) && !('\u{E000}'..='\u{F8FF}').contains(&c)
            };
            assert!(!phrase.words.is_empty() && phrase.words.chars().all(fine), "{}: {phrase:?}", pack.tag());
        }
    }
}

/// The embedded files with one of them replaced.
struct Changed(&'static str, String);

impl Data for Changed {
    fn read(&self, path: &str) -> Option<std::borrow::Cow<'_, [u8]>> {
        if path == self.0 { Some(self.1.as_bytes().into()) } else { Embedded.read(path) }
    }

    fn list(&self, folder: &str) -> Vec<String> {
        Embedded.list(folder)
    }
}

fn changed(path: &'static str, from: &str, to: &str) -> Changed {
    let text = String::from_utf8(Embedded.read(path).unwrap().into_owned()).unwrap();
    assert!(text.contains(from), "{path} has no {from}");
    Changed(path, text.replacen(from, to, 1))
}

#[test]
fn broken_packs_are_reported_with_file_and_place() {
    let findings_of = |data: &Changed| Pack::load(data, "sw").unwrap_err();
    let spoken = "locales/sw/spoken.ftl";
    let missing = findings_of(&changed(spoken, "\nclosing =", "\nclosed ="));
    assert_eq!(missing[0].place.file.as_deref(), Some(spoken));
    assert_eq!(missing[0].place.field.as_deref(), Some("closing"));
    let syntax = findings_of(&changed(spoken, "\nclosing =", "\nclosing { ="));
    assert!(syntax[0].place.line.is_some(), "{syntax:?}");
    let double = findings_of(&changed(spoken, "\nclosing =", "\nclosing = Mwisho.\nclosing ="));
    assert!(double[0].message.contains("twice"), "{double:?}");
    let header = findings_of(&changed(
        "locales/sw/pack.toml",
        "status = \"draft\"",
        "status = \"perfect\"\nmotto = \"haraka\"",
    ));
    assert_eq!(header.len(), 2, "{header:?}");
    let numbers = findings_of(&changed("locales/sw/numbers.rbnf", "%cardinal", "%cardinal: >>;\n%cardinal"));
    assert_eq!(numbers[0].place.file.as_deref(), Some("locales/sw/numbers.rbnf"));
    assert!(Pack::load(&Embedded, "xx").unwrap_err()[0].hint.contains("sw"));
}

#[test]
fn spoken_text_that_nobody_can_record_is_found() {
    let spoken = "locales/en/spoken.ftl";
    for (to, said) in [
        ("closing = Ask at 9 in the morning.", "digit"),
        ("closing = Ask { $roots } people.", "as it is"),
        ("closing = Ask { SAY($roots, form: \"class-99\") } people.", "class-99"),
        ("closing = Ask { closing }.", "without end"),
        ("closing = Ask { \"somebody\" }.", "nobody can record"),
    ] {
        let data = changed(spoken, "\nclosing = {", &format!("\n{to}\nclosed = {{"));
        let findings = Pack::load(&data, "en").unwrap().phrases().unwrap_err();
        assert!(findings.iter().any(|finding| finding.message.contains(said)), "{to}: {findings:?}");
    }
}

/// A number beyond the rules is an error that names language and number, never another language's word.
#[test]
fn nothing_falls_back() {
    let (_, case) = examples().remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    for pack in packs() {
        let mut statement =
            statements.iter().find(|statement| statement.subject.name() == "mark-plants").unwrap().clone();
        statement.values.retain(|(name, _)| *name != "plants");
        let missing = pack.say(&statement).unwrap_err();
        assert!(missing.to_string().contains(&pack.tag()), "{missing}");
        statement.values.push(("plants", Value::Number(7_000_000.0, 0)));
        let beyond = pack.say(&statement).unwrap_err();
        assert!(beyond.to_string().contains("7000000"), "{beyond}");
    }
}

/// Swahili counts agree with what is counted (the pack's own nouns, table of the concord fixture).
#[test]
fn swahili_numbers_agree_with_their_nouns() {
    let pack = pack("sw");
    let (_, mut case) = examples().remove(0);
    let mut said = Vec::new();
    for containers in [1, 2] {
        case.containers[0].count = Some(containers);
        case.assumptions.survival_share = 0.9;
        let statements = tell(&case, &make(&case).unwrap());
        let fill = statements.iter().find(|statement| statement.subject.name() == "fill-container").unwrap();
        let mut fill = fill.clone();
        for (name, value) in &mut fill.values {
            if *name == "containers" {
                *value = Value::Number(f64::from(containers), 0);
            }
        }
        let words: Vec<String> = pack
            .say(&fill)
            .unwrap()
            .into_iter()
            .filter_map(|piece| match piece {
                Piece::Words(words) => Some(plain(&words.text)),
                Piece::Pause(_) => None,
            })
            .collect();
        said.push(words.join(" "));
    }
    assert!(said[0].contains("kimoja") && said[1].contains("viwili"), "{said:?}");
}

/// What must be told at every length cannot be left out of a pack.
#[test]
fn a_length_that_loses_a_fact_is_an_error() {
    let fact_lost = |data: &dyn Data, tag: &str| -> Vec<String> {
        let findings = check(data, tag, &|_| true).findings.into_iter();
        let lost = findings.filter(|finding| finding.code == kabla::finding::Code::FACT_LOST);
        lost.filter_map(|finding| finding.place.field).collect()
    };
    for tag in Pack::tags(&Embedded) {
        assert!(fact_lost(&Embedded, &tag).is_empty(), "{tag}");
    }
    let written = "locales/en/written.ftl";
    for (from, to, field) in [
        (".sms = { -bad-roots-sms }", ".sms = Never eat rotten roots.", "caution-rot.sms"),
        (".short = { -moist-soil-short } Bury", ".short = Bury", "plant-field.short"),
    ] {
        assert_eq!(fact_lost(&changed(written, from, to), "en"), [field]);
    }
    let spoken = changed(
        "locales/en/spoken.ftl",
        "caution-riverbed = Take care at rivers. { -dry-riverbed }",
        "caution-riverbed = Take care at rivers.",
    );
    assert_eq!(fact_lost(&spoken, "en"), ["caution-riverbed"]);
}

/// By hand: people pace beds to half metres, and a strip of 1.2 m is no metre.
#[test]
fn measures_are_said_in_halves() {
    let (_, case) = examples().remove(0);
    let statements = tell(&case, &make(&case).unwrap());
    let bed = statements.iter().find(|of| of.subject.name() == "prepare-bed").unwrap();
    let said = |length: f64| {
        let mut bed = bed.clone();
        let (_, value) = bed.values.iter_mut().find(|(name, _)| *name == "bed_length_m").unwrap();
        *value = Value::Number(length, if length.fract() == 0.0 { 0 } else { 1 });
        let pieces = pack("en").say(&bed).unwrap();
        let words = pieces.into_iter().filter_map(|piece| match piece {
            Piece::Words(words) => Some(plain(&words.text)),
            Piece::Pause(_) => None,
        });
        words.collect::<Vec<_>>().join(" ")
    };
    for (length, words) in [
        (17.5, "seventeen and a half metres long"),
        (4.6, "five metres long"),
        (2.1, "two and a half metres long"),
        (1.5, "one and a half metres long"),
        (1.2, "one point two metres long"),
        (1.0, "one metre long"),
    ] {
        assert!(said(length).contains(words), "{length}: {}", said(length));
    }
}

/// Numbers that a pack names are recorded whole besides their words; how it names none is a mistake.
#[test]
fn numbers_may_be_recorded_whole() {
    let whole = |data: &dyn Data| -> BTreeSet<String> {
        let phrases = Pack::load(data, "en").unwrap().phrases().unwrap();
        phrases.into_iter().filter(|of| of.id.starts_with("number/")).map(|of| plain(&of.words)).collect()
    };
    let with = |numbers: &str| {
        let record = format!("[record]\nwhole = [\"{numbers}\"]\n\n[numbers]");
        changed("locales/en/pack.toml", "[numbers]", &record)
    };
    assert!(!whole(&Embedded).contains("ninety-nine") && whole(&Embedded).contains("ninety"));
    let said = whole(&with("cardinal 1-99"));
    assert!(said.contains("ninety-nine") && said.contains("ninety") && !said.contains("one hundred and one"));
    let said = whole(&with("cardinal 100-101"));
    assert!(said.contains("one hundred and one") && !said.contains("ninety-nine"));
    for wrong in ["cardinal", "cardinal 5-1", "cardinal 1-100000"] {
        let findings = Pack::load(&with(wrong), "en").unwrap_err();
        assert!(findings[0].message.contains(wrong) && findings[0].hint.contains("1-99"), "{findings:?}");
    }
}

/// A bound word is recorded with its day, by a message of the pack's own.
#[test]
fn days_are_told_in_forms_of_the_packs_own() {
    let spoken = "locales/en/spoken.ftl";
    let data = changed(
        spoken,
        "Dig the last ones by { DAY($last_harvest) }.",
        "Dig { DAY($last_harvest, form: \"by\") }.",
    );
    assert!(Pack::load(&data, "en").unwrap().phrases().unwrap_err()[0].message.contains("date-by"));
    let Changed(path, text) = data;
    let data = Changed(path, text + "\ndate-by = by the { SAY($day, form: \"day\") } of { month }\n");
    let phrases = Pack::load(&data, "en").unwrap().phrases().unwrap();
    assert!(phrases.iter().any(|phrase| phrase.id.starts_with("date-by#") && phrase.words == "by the"));
    let unused = check(&data, "en", &|_| true).findings;
    assert!(!unused.iter().any(|of| of.place.field.as_deref() == Some("date-by")), "{unused:?}");
}

/// Each pack has its words of the trade, and a new one begins with the list.
#[test]
fn packs_have_their_words_of_the_trade() {
    let terms = |tag: &str| -> Vec<String> {
        let text = Embedded.read(&format!("locales/{tag}/glossary.toml")).unwrap_or_else(|| panic!("{tag}"));
        let text = String::from_utf8(text.into_owned()).unwrap();
        let english = text.lines().filter_map(|line| line.strip_prefix("english = "));
        english.map(str::to_owned).collect()
    };
    let english = terms("en");
    assert!(english.len() >= 25);
    for tag in Pack::tags(&Embedded) {
        let own = terms(&tag);
        let missing: Vec<&String> = english.iter().filter(|term| !own.contains(term)).collect();
        assert!(missing.len() <= english.len() / 3, "{tag} has no word for {missing:?}");
        let findings = check(&Embedded, &tag, &|_| true).findings;
        let wrong = findings
            .iter()
            .find(|of| of.place.file.as_deref().is_some_and(|of| of.ends_with("glossary.toml")));
        assert_eq!(wrong, None, "{tag}");
    }
    let files = kabla::language::new_pack(&Embedded, &"om".parse().unwrap());
    let file = |name: &str| files.iter().find(|(of, _)| *of == name).unwrap().1.clone();
    assert!(file("glossary.toml").contains("english = \"leaf joint\""));
    let help = "“leaf joint” (not node): where a leaf grows from the vine, and roots when it is buried";
    assert!(file("spoken.ftl").contains(help), "the words of the trade stand above the texts that have them");
    let broken = changed("locales/sw/glossary.toml", "english = ", "englisch = ");
    let findings = check(&broken, "sw", &|_| true).findings;
    assert!(findings.iter().any(|of| of.place.field.as_deref() == Some("term[1].english")), "{findings:?}");
}
