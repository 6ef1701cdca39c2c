//! What a plan says: codes with values, which packs word.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use kabla::data::{Data, Embedded};
use kabla::guidance::{Consequence, Subject, consequence_examples, tell};
use kabla::language::{ACCENTED, PLANS, Pack, Piece, Pseudo, SOURCE, check, new_pack};
use kabla::plan::after::{Maturity, Variety};
use kabla::plan::field::{Field, Spacing};
use kabla::plan::group::Member;
use kabla::plan::multiply::Sizing;
use kabla::plan::progress::Check;
use kabla::plan::season::{
    EndRule, MonthDay, ObservedRains, OnsetRule, Rains, RainsEnd, Risk, SeasonRule, Window,
};
use kabla::plan::seedbed::{Air, Climate, Source};
use kabla::plan::store::{Container, Shape};
use kabla::plan::{
    AtHand, Case, Celsius, Centimetres, Hands, Kind, Litres, Metres, MetresPerSecond, Millimetres, Plan,
    Refusal, Remark, Severity, SquareMetres, StepKind, Worded, make, plan_of_farm, wordings,
};

use crate::examples;
use crate::plan::{date, farm};
use crate::project::{Project, example};
use crate::pseudo::plain_words;

fn english() -> Pack {
    Pack::load(&Embedded, "en").unwrap()
}

const RIDGES: Spacing = Spacing::Ridges { between: Metres(1.0), along: Metres(0.3) };

fn at_hand(roots: Option<u32>, plants: Option<u32>, bed: Option<f64>) -> Option<AtHand> {
    Some(AtHand { roots, plants, bed: bed.map(SquareMetres), sand: None, spacing: RIDGES })
}

/// The rains of the example record by a rule; with `gaps` some days of one year are missing.
fn observed(rule: OnsetRule, gaps: bool) -> Rains {
    let csv = Embedded.read("examples/rain-eastern-lowlands.csv").unwrap();
    let text = String::from_utf8(csv.into_owned()).unwrap();
    let kept: Vec<&str> = text.lines().filter(|line| !(gaps && line.starts_with("2010-10"))).collect();
    let (record, _) = kabla::case::read_rain("rain.csv", kept.join("\n").as_bytes(), None);
    let window = Window { from: MonthDay::new(9, 20).unwrap(), until: MonthDay::new(12, 31).unwrap() };
    let rule = SeasonRule { onset: rule, window, end: EndRule::RAINLESS, end_from: window.until };
    Rains::Observed(ObservedRains::find(&record, rule, None))
}

/// Cases that between them need every reason, remark and refusal.
pub(crate) fn cases() -> Vec<Case> {
    let today = |day: &str, done| Case { today: Some(date(day)), done, ..farm(450.0) };
    let check =
        |day: &str, healthy, sprouted| Check { date: date(day), healthy, thrown_away: None, sprouted };
    let round = |width: f64, depth: f64, count| Container {
        shape: Shape::Round { top: Centimetres(width), bottom: Centimetres(width) },
        depth: Centimetres(depth),
        count,
    };
    let small = Container {
        shape: Shape::Round { top: Centimetres(60.0), bottom: Centimetres(40.0) },
        ..round(1.0, 40.0, Some(1))
    };
    let air = Air { humidity: [60.0; 12], wind: [MetresPerSecond(2.0); 12], sunshine_hours: [8.0; 12] };
    let mild = Climate {
        air: Some(air),
        rain: Some([Millimetres(40.0); 12]),
        ..Climate::constant(Celsius(32.0), Celsius(20.0))
    };
    let well = Source { name: "the well".to_owned(), daily: Some([Litres(20.0); 12]), stored: None };
    let mut months = [Litres(1000.0); 12];
    months[11] = Litres(50.0);
    let drying = Source { name: "the pond".to_owned(), daily: Some(months), stored: None };
    let sides = Some((Metres(15.0), Metres(30.0)));
    let mut losses = farm(450.0);
    losses.assumptions.gap_share = 0.1;
    losses.assumptions.sick_share = 0.1;
    losses.assumptions.sprout_share = 0.5;
    losses.assumptions.survival_spread = 0.9;
    losses.confidence_percent = Some(99.0);
    let member =
        |name: &str, area| Member { name: name.to_owned(), field: Field::of(SquareMetres(area), RIDGES) };
    let mut all = vec![
        losses,
        Case {
            confidence_percent: Some(90.0),
            field: Some(Field { area: SquareMetres(450.0), sides, spacing: RIDGES }),
            ..farm(450.0)
        },
        Case {
            sizing: Sizing::FirstPlanting,
            containers: vec![small],
            climate: Some(mild),
            source: Some(well),
            ..farm(2000.0)
        },
        Case { field: None, at_hand: at_hand(Some(60), None, None), ..farm(1.0) },
        Case {
            field: None,
            at_hand: at_hand(None, Some(25), None),
            sizing: Sizing::FirstPlanting,
            ..farm(1.0)
        },
        Case { at_hand: at_hand(None, None, Some(9.0)), ..farm(450.0) },
        Case { field: None, at_hand: at_hand(Some(0), None, None), ..farm(1.0) },
        Case { kind: Kind::Group { members: 5 }, ..farm(450.0) },
        Case {
            kind: Kind::Group { members: 2 },
            field: None,
            farms: vec![member("A", 100.0), member("B", 50.0)],
            ..farm(1.0)
        },
        Case { kind: Kind::Zone, field: None, rains: observed(OnsetRule::THREE_DAY, false), ..farm(1.0) },
        Case { rains: observed(OnsetRule::THREE_DAY_21, true), risk: Risk::Middle, ..farm(450.0) },
        Case { rains: observed(OnsetRule::DEKAD, false), ..farm(450.0) },
        Case {
            rains: observed(
                OnsetRule::Total {
                    name: "flood",
                    total_mm: 5000.0,
                    days: 3,
                    rain_days: 2,
                    look_ahead: 0,
                    dry_spell: 0,
                    rain_day_mm: 1.0,
                },
                false,
            ),
            ..farm(450.0)
        },
        Case { rains: Rains::Usual(MonthDay::new(11, 25).unwrap()), ..farm(450.0) },
        Case { rains_end: MonthDay::new(2, 20).map(RainsEnd::Usual), ..farm(450.0) },
        Case { rains: Rains::On(date("2027-06-10")), ..farm(450.0) },
        Case { harvest: date("2027-03-31"), ..farm(450.0) },
        Case { harvest: date("2026-12-20"), ..farm(450.0) },
        Case { rains_began: Some(date("2027-09-10")), ..farm(450.0) },
        Case { store_checks: vec![check("2027-06-24", 34, None)], ..farm(450.0) },
        Case {
            store_checks: vec![check("2027-06-24", 55, None), check("2027-09-30", 53, Some(52))],
            ..farm(450.0)
        },
        Case { variety: Variety { maturity: Some(Maturity::Late), carotene_ug: None }, ..farm(450.0) },
        Case { containers: vec![round(10.0, 12.0, None)], ..farm(450.0) },
        Case {
            at_hand: Some(AtHand { sand: Some(Litres(40.0)), ..at_hand(None, None, None).unwrap() }),
            ..farm(450.0)
        },
        Case { containers: vec![round(50.0, 40.0, Some(1))], ..farm(2000.0) },
        Case { hands: Some(Hands { people: 1, hours_per_day: 0.5 }), ..farm(450.0) },
        // The rains of another year leave a drier month than the plan counted on.
        Case {
            source: Some(drying),
            today: Some(date("2027-11-08")),
            done: Some(StepKind::LastCheck),
            ..farm(450.0)
        },
        farm(3600.0),
        today("2028-06-01", None),
        today("2027-05-22", Some(StepKind::MarkPlants)),
        today("2027-06-15", Some(StepKind::FillContainer)),
        today("2027-11-08", Some(StepKind::LastCheck)),
    ];
    all.extend(examples().into_iter().map(|(_, case)| case));
    all
}

/// Everything that a plan has to say.
fn said(plan: &Plan) -> Vec<&dyn Worded> {
    let mut said: Vec<&dyn Worded> = vec![&plan.rains_why, &plan.now.harvest.why];
    said.extend(plan.now.harvest.yield_why.iter().map(|why| why as &dyn Worded));
    said.extend(plan.now.steps.iter().map(|step| &step.why as &dyn Worded));
    said.extend(plan.now.amounts.0.iter().map(|amount| &amount.why as &dyn Worded));
    said.extend(plan.overdue.iter().map(|late| late as &dyn Worded));
    said.extend(plan.remarks.iter().map(|remark| remark as &dyn Worded));
    said.extend(plan.advice.iter().map(|advice| advice as &dyn Worded));
    said
}

fn check_text(code: &str, text: &str) {
    assert!(text.chars().filter(|c| c.is_alphabetic()).count() > 3, "{code}: {text:?}");
    assert!(
        !text.contains(['{', '}', '$']) && !text.contains("NaN") && !text.contains("  "),
        "{code}: {text}"
    );
    assert!(!text.contains(" ,") && !text.contains(" ."), "{code}: {text}");
}

/// Every code comes up in some plan, has exactly the values it declares, and English has words for it.
#[test]
fn every_code_is_worded_with_the_values_it_has() {
    let english = english();
    let declared: BTreeMap<&str, BTreeSet<&str>> = wordings()
        .map(|wording| (wording.code, wording.values.iter().map(|(name, _)| *name).collect()))
        .collect();
    let mut seen: BTreeSet<&str> = BTreeSet::new();
    let mut word = |worded: &dyn Worded| {
        let code = worded.code();
        let values: BTreeSet<&str> = worded.values().iter().map(|(name, _)| *name).collect();
        assert_eq!(declared.get(code), Some(&values), "{code}");
        seen.insert(code);
        if code.starts_with("remark-") || code.starts_with("refusal-") {
            let (message, advice) = english.write_remark(worded).unwrap();
            check_text(code, &message);
            check_text(code, &advice);
        } else {
            check_text(code, &english.write_reason(worded).unwrap());
        }
    };
    for rule in OnsetRule::ALL {
        word(&rule.asks());
    }
    for case in cases() {
        match make(&case) {
            Ok(plan) => {
                said(&plan).into_iter().for_each(&mut word);
                plan.overdue.iter().for_each(|late| word(&late.cost()));
                plan.now.rains_length.iter().for_each(|length| word(&length.told()));
                for farm in &case.farms {
                    let (_, own) = plan_of_farm(&case, &plan, &farm.name).unwrap();
                    said(&own).into_iter().for_each(&mut word);
                }
            }
            Err(refusal) => word(&refusal),
        }
    }
    let unseen: Vec<&str> = declared.keys().copied().filter(|code| !seen.contains(code)).collect();
    // Watering belongs to the bed, and is never overdue by itself.
    assert_eq!(unseen, ["late-water-bed"], "no case needs these: take them out, or add a case");
}

/// The messages of a file: id to text, attributes with theirs.
fn messages(text: &str) -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    let mut id = String::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        if let Some((name, _)) = line
            .split_once(" =")
            .filter(|(name, _)| name.starts_with(|c: char| c.is_ascii_alphabetic()) && !name.contains(' '))
        {
            id = name.to_owned();
        }
        let text: &mut String = found.entry(id.clone()).or_default();
        text.push_str(line);
        text.push('\n');
    }
    found
}

/// The values that a message uses, those of messages that it refers to among them.
fn variables(id: &str, messages: &BTreeMap<String, String>) -> BTreeSet<String> {
    let text = &messages[id];
    let name = |text: &str| -> String {
        text.chars().take_while(|c| c.is_ascii_alphanumeric() || matches!(c, '_' | '-')).collect()
    };
    let mut found: BTreeSet<String> = text.split('$').skip(1).map(name).collect();
    for reference in text.split("{ ").skip(1).map(name).filter(|of| messages.contains_key(of)) {
        found.extend(variables(&reference, messages));
    }
    found
}

#[test]
fn messages_use_no_value_that_their_code_lacks() {
    let mut used = 0;
    for file in ["written.ftl", "spoken.ftl"] {
        let text = fs::read_to_string(root().join("locales/en").join(file)).unwrap();
        let messages = messages(&text);
        for wording in
            wordings().filter(|wording| file == "written.ftl" || messages.contains_key(wording.code))
        {
            let known: BTreeSet<String> = wording.values.iter().map(|(name, _)| (*name).to_owned()).collect();
            let variables = variables(wording.code, &messages);
            let strange: Vec<_> = variables.difference(&known).collect();
            assert!(strange.is_empty(), "{file}: {} uses {strange:?}", wording.code);
            used += variables.len();
        }
    }
    assert!(used > 150, "only {used} values seen");
}

/// Whoever begins a pack reads above each text what its values mean.
#[test]
fn translators_read_the_meaning_of_every_value() {
    let files = new_pack(&Embedded, &"om".parse().unwrap());
    for (name, text) in files.iter().filter(|(name, _)| name.ends_with(".ftl")) {
        let mut help = String::new();
        for line in text.lines() {
            if line.starts_with('#') {
                help.push_str(line);
                help.push('\n');
                continue;
            }
            for variable in line.split('$').skip(1) {
                let variable: String =
                    variable.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '_').collect();
                assert!(
                    help.contains(&format!("${variable}: ")),
                    "{name}: nothing says what ${variable} is in: {line}"
                );
            }
            if line.is_empty() {
                help.clear();
            }
        }
    }
    for wording in wordings() {
        for (value, meaning) in wording.values {
            assert!(meaning.ends_with('.') && meaning.len() > 5, "{}: {value}: {meaning}", wording.code);
        }
    }
}

/// By what a farmer or a helper must do: to be looked at, but for seven that are only worth knowing.
#[test]
fn remarks_tell_how_much_they_matter_and_what_they_concern() {
    let notes = [
        "remark-by-print",
        "remark-end-unknown",
        "remark-enough",
        "remark-field-waits",
        "remark-no-container",
        "remark-no-temperatures",
        "remark-rains-may-be-late",
    ];
    let mut seen = BTreeSet::new();
    for case in cases() {
        let Ok(plan) = make(&case) else { continue };
        for remark in &plan.remarks {
            let severity = if notes.contains(&remark.code()) { Severity::Note } else { Severity::Warning };
            assert_eq!(remark.severity(), severity, "{}", remark.code());
            for quantity in remark.amounts() {
                let stored = plan.now.amounts.get(kabla::plan::Quantity::RootsToStore);
                let told = plan.now.amounts.get(*quantity).is_some();
                assert!(
                    told || stored == Some(0.0),
                    "{}: the plan has no {}",
                    remark.code(),
                    quantity.name()
                );
            }
            seen.insert(remark.code());
        }
    }
    assert_eq!(seen.len(), Remark::WORDINGS.len());
    assert_eq!(Refusal::NoOnset.field(), "season");
}

/// Each consequence has an example for who records it, and all are on the list to record, in every pack.
#[test]
fn consequences_are_on_the_list_to_record() {
    let bare = |words: &str| words.trim_end_matches(|c: char| !c.is_alphanumeric()).to_lowercase();
    let examples = consequence_examples();
    let with_example: BTreeSet<_> = examples.iter().map(|of| of.subject.name()).collect();
    assert_eq!(with_example, Consequence::ALL.map(Consequence::name).into());
    for tag in Pack::tags(&Embedded) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let phrases = pack.phrases().unwrap();
        let listed: BTreeSet<_> =
            phrases.iter().map(|phrase| (bare(&phrase.words), phrase.intonation)).collect();
        let told = cases().into_iter().filter_map(|case| Some((make(&case).ok()?, case)));
        let told = told.flat_map(|(plan, case)| tell(&case, &plan));
        let led_to = told.filter(|of| matches!(of.subject, Subject::Consequence(_)));
        for statement in led_to.chain(examples.clone()) {
            for piece in pack.say(&statement).unwrap() {
                if let Piece::Words(words) = piece {
                    let wanted = (bare(&words.text), words.intonation);
                    let name = statement.subject.name();
                    assert!(listed.contains(&wanted), "{tag}: {name} says {wanted:?}, which nobody records");
                }
            }
        }
    }
}

/// A pack may lack the words of plans. It says so in one finding a file, and goes on.
#[test]
fn packs_without_words_for_plans_say_so_once() {
    assert!(english().words_plan());
    let texts = |tag: &str| -> Vec<String> {
        let report = check(&Embedded, tag, &|_| true);
        let lacks = report.findings.iter().filter(|finding| finding.message.contains("texts of plans"));
        lacks.map(|finding| format!("{} {}", finding.message, finding.hint)).collect()
    };
    assert_eq!(texts(SOURCE), [""; 0]);
    let plans = |tag: &str| {
        let report = check(&Embedded, tag, &|_| true);
        report.coverage.into_iter().find(|of| of.file == PLANS).unwrap()
    };
    assert_eq!(plans(SOURCE).done, plans(SOURCE).all);
    assert!(plans(SOURCE).all > wordings().count());
    for tag in Pack::tags(&Embedded).into_iter().filter(|tag| tag != SOURCE) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        let lacks = texts(&tag);
        if pack.words_plan() {
            continue;
        }
        assert_eq!(lacks.len(), 1, "{tag}: {lacks:?}");
        let coverage = plans(&tag);
        assert!(coverage.done < coverage.all && coverage.all == plans(SOURCE).all, "{tag}: {coverage:?}");
        // Advice is told to farmers, so that every pack has it.
        let lackable = || wordings().filter(|wording| !wording.code.starts_with("advice-"));
        let written = lackable().filter(|wording| lacks[0].contains(wording.code)).count();
        assert_eq!(written, lackable().count(), "{tag}: {}", lacks[0]);
        let plan = make(&farm(450.0)).unwrap();
        let error = pack.write_reason(&plan.rains_why).unwrap_err().to_string();
        assert!(error.contains("why-rains-named"), "nothing is put in its place: {error}");
    }
}

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

fn plan_in(tag: &str, case: &str, more: &[&str]) -> (String, String) {
    let path = example(case);
    let run = Project::new().kabla(&[&["plan", &path, "--language", tag], more].concat()).done();
    (run.out, run.err)
}

/// In the language made from English nothing is left in English but the names that people write themselves.
#[test]
fn the_whole_plan_is_told_through_the_pack() {
    let by_name = |name: &str| examples().into_iter().find(|(of, _)| of == name).unwrap().1;
    for (name, more) in [
        ("farm", &[][..]),
        ("farm", &["--today", "2027-11-08"]),
        ("farm", &["--today", "2027-11-08", "--done", "last-check"]),
        ("group", &["--sure", "90"]),
        ("zone", &["--today", "2027-06-01"]),
    ] {
        let case = by_name(name);
        let (out, err) = plan_in(ACCENTED, &format!("{name}.toml"), more);
        assert_eq!(err, "", "{name}");
        let mut text = out;
        let overridden = Case { today: Some(date("2028-06-01")), ..case.clone() };
        let plan = make(&overridden).unwrap();
        let steps = StepKind::ALL.map(|kind| kind.name().to_owned());
        let assumed = plan.defaults().into_iter().map(|used| used.name.to_owned());
        let fields = [
            "field.sizing",
            "plan_by",
            "climate",
            "done",
            "hands",
            "season",
            "season.rainfall_record",
            "variety.maturity",
        ]
        .map(str::to_owned);
        let mut names: Vec<String> = steps.into_iter().chain(assumed).chain(fields).collect();
        names.push("--done".to_owned());
        // Some are the end of others.
        names.sort_by_key(|name| std::cmp::Reverse(name.len()));
        names.iter().for_each(|name| text = text.replace(name, ""));
        assert_eq!(plain_words(&text, &case), [""; 0], "{name} {more:?}");
    }
    // And the other way round: a word left in English is seen.
    assert_eq!(plain_words("ŴĤÝ so", &by_name("farm")), ["so"]);
    assert!(Pack::load(&Pseudo::new(&Embedded), ACCENTED).unwrap().words_plan());
}

/// Titles in the pack's words; whole lines in English where it has none, and one note that says so.
#[test]
fn a_pack_without_the_words_has_whole_lines_in_english() {
    let (english, _) = plan_in("en", "farm.toml", &["--today", "2027-11-08"]);
    for tag in Pack::tags(&Embedded).into_iter().filter(|tag| tag != SOURCE) {
        let pack = Pack::load(&Embedded, &tag).unwrap();
        if pack.words_plan() {
            continue;
        }
        let (out, err) = plan_in(&tag, "farm.toml", &["--today", "2027-11-08"]);
        assert_eq!(err.lines().count(), 1, "{tag}: {err}");
        assert!(err.contains(pack.name()) && err.contains(&format!("kabla language check {tag}")), "{err}");
        for line in ["AMOUNT", "Cuttings for the field", "CONTAINERS, from the bottom up"] {
            assert!(english.contains(line) && out.contains(line), "{tag}: {line}");
        }
        let (_, case) = examples().remove(0);
        let plan = make(&case).unwrap();
        let statements = kabla::guidance::tell(&case, &plan);
        let harvest = statements
            .iter()
            .find(|of| of.subject == kabla::guidance::Subject::Step(StepKind::Harvest))
            .unwrap();
        let title = pack.write_title(harvest).unwrap();
        assert!(out.lines().any(|line| line.trim_end().ends_with(&title)), "{tag}: {title} stands alone");
    }
}

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(rust_files(&path));
        } else {
            found.push(path);
        }
    }
    found
}

/// String literals in code that look like sentences: a space and a word in lower case after it.
fn sentences(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for line in text.lines().filter(|line| !line.trim_start().starts_with("//")) {
        for literal in line.split('"').skip(1).step_by(2) {
            let words = literal.split(' ').skip(1);
            if words.into_iter().any(|word| word.starts_with(|c: char| c.is_ascii_lowercase())) {
                found.push(literal.to_owned());
            }
        }
    }
    found
}

#[test]
fn nothing_in_the_planner_is_a_sentence() {
    for path in rust_files(&root().join("src/plan")) {
        // Sources are citations: whoever checks a value or an advice looks for them as they stand.
        // What a quantity means is told to translators.
        if ["defaults.rs", "advice.rs", "quantities.rs"].iter().any(|name| path.ends_with(name)) {
            continue;
        }
        let found = sentences(&fs::read_to_string(&path).unwrap());
        assert!(found.is_empty(), "{}: {found:?} belongs into the packs", path.display());
    }
    assert_eq!(sentences("say(\"the rains came\", \"ridges\");"), ["the rains came"]);
}

/// A leaflet's words are not ours: the weeks are values, and the day is counted back.
#[test]
fn the_weeks_before_the_rains_are_told_in_our_own_words() {
    let folders = ["src", "locales", "docs", "templates", "examples"];
    for path in folders.iter().flat_map(|folder| rust_files(&root().join(folder))) {
        let Ok(text) = fs::read_to_string(&path) else { continue };
        let text = text.to_lowercase();
        for phrase in ["weeks before the rain", "six to eight weeks before"] {
            assert!(!text.contains(phrase), "{}: {phrase}", path.display());
        }
    }
    let (out, _) = plan_in("en", "farm.toml", &[]);
    let line = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(line.contains("counted back from 25 November 2027"), "{out}");
    assert!(!line.contains("weeks before"), "{out}");
}
