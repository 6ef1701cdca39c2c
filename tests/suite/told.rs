//! One truth on paper, on air and on the phone: what is told of a case is what its plan holds now.

use std::collections::{BTreeMap, BTreeSet, HashMap, HashSet};

use chrono::{Days, NaiveDate};
use kabla::data::Embedded;
use kabla::guidance::{Consequence, Standing, Statement, Subject, Tip, Variable, for_step, tell};
use kabla::language::{Pack, Piece, Role};
use kabla::plan::field::{Field, Spacing};
use kabla::plan::multiply::Sizing;
use kabla::plan::progress::Check;
use kabla::plan::season::{MonthDay, RainsEnd};
use kabla::plan::seedbed::Source;
use kabla::plan::store::{Container, Shape};
use kabla::plan::ways::WayKind;
use kabla::plan::{
    Case, Centimetres, Hands, Kind, Litres, Metres, Plan, PlanBy, Quantity, Remark, SquareMetres, StepKind,
    Value, Worded, make, plan_of_farm,
};
use kabla::sheet::{self, Facts, SmsOptions, ics, sms};

use crate::plan::{date, farm};
use crate::plan_words::cases;
use crate::project::repository;

/// Cases of every kind, with the farms of groups, that leave something to plant.
fn plans() -> Vec<(Case, Plan)> {
    let mut all: Vec<(Case, Plan)> = Vec::new();
    for case in cases() {
        let Ok(plan) = make(&case) else { continue };
        let farms = case.farms.iter().filter_map(|of| plan_of_farm(&case, &plan, &of.name));
        all.extend(farms.collect::<Vec<_>>());
        all.push((case, plan));
    }
    for case in more_cases() {
        all.push((case.clone(), make(&case).unwrap()));
    }
    all.retain(|(_, plan)| plan.now.bed.roots > 0);
    assert!(all.len() >= 40, "only {} cases", all.len());
    all
}

/// Small containers, little water and few hands together; late, rotting and with rains that have begun; by print.
fn more_cases() -> Vec<Case> {
    let round = |width, depth, count| Container {
        shape: Shape::Round { top: Centimetres(width), bottom: Centimetres(width) },
        depth: Centimetres(depth),
        count: Some(count),
    };
    let well = Source { name: "the well".to_owned(), daily: Some([Litres(60.0); 12]), stored: None };
    let print = |area| Case { plan_by: PlanBy::Print, sizing: Sizing::InTime, ..farm(area) };
    let check = |day, healthy| Check { date: date(day), healthy, thrown_away: None, sprouted: None };
    let bound = Case {
        containers: vec![round(35.0, 30.0, 3)],
        source: Some(well),
        hands: Some(Hands { people: 1, hours_per_day: 1.0 }),
        ..print(300.0)
    };
    let late = Case { today: Some(date("2027-11-08")), done: Some(StepKind::LastCheck), ..print(300.0) };
    let checks = vec![check("2027-06-24", 30), check("2027-07-24", 19)];
    let rotting = Case { store_checks: checks, today: Some(date("2027-07-25")), ..print(300.0) };
    let began =
        Case { rains_began: Some(date("2027-11-15")), today: Some(date("2027-11-16")), ..print(300.0) };
    let mounds = Spacing::Mounds { between: Metres(1.0), cuttings: 3.0 };
    let field = Some(Field::of(SquareMetres(300.0), mounds));
    let short = Case { rains_end: MonthDay::new(4, 20).map(RainsEnd::Usual), ..print(450.0) };
    vec![
        Case { today: Some(date("2027-07-01")), done: Some(StepKind::FillContainer), ..bound.clone() },
        bound,
        late,
        rotting,
        began,
        Case { field, ..print(300.0) },
        short,
        Case { confidence_percent: Some(80.0), ..print(200.0) },
        Case { kind: Kind::Group { members: 8 }, ..print(1200.0) },
    ]
}

fn packs() -> Vec<Pack> {
    Pack::tags(&Embedded).iter().map(|tag| Pack::load(&Embedded, tag).unwrap()).collect()
}

/// What a plan holds: its numbers, and its days.
#[derive(Default)]
struct Held {
    numbers: BTreeSet<String>,
    days: BTreeSet<NaiveDate>,
}

impl Held {
    /// A number as it is, whole up and down, in tenths, and to two figures up and down.
    fn number(&mut self, value: f64) {
        let scale = 10f64.powi((value.abs().max(1.0).log10().floor() as i32 - 1).max(0));
        let whole = [value.floor(), value.round(), value.ceil()];
        let figures = whole.iter().flat_map(|v| [(v / scale).floor() * scale, (v / scale).ceil() * scale]);
        let tenths = [(value * 10.0).floor() / 10.0, (value * 10.0).round() / 10.0];
        for number in whole.into_iter().chain(figures).chain(tenths) {
            self.numbers.insert(format!("{number:.1}"));
        }
    }

    fn values(&mut self, worded: &dyn Worded) {
        for (_, value) in worded.values() {
            match value {
                Value::Number(number, _) => self.number(number),
                Value::Date(day) => {
                    self.days.insert(day);
                }
                Value::Span(span) => self.days.extend([span.from, span.to]),
                Value::Name(_) | Value::Text(_) => {}
            }
        }
    }

    fn state(&mut self, state: &kabla::plan::State, plan: &Plan) {
        for amount in &state.amounts.0 {
            self.number(amount.value);
            self.number(amount.told());
            let range = [amount.range, amount.told_range()].into_iter().flatten();
            range.for_each(|(low, high)| [low, high].into_iter().for_each(|value| self.number(value)));
        }
        let a = &plan.assumptions;
        self.number(state.amounts.get(Quantity::SandLitres).unwrap_or_default() / a.bucket_l);
        for filled in &state.containers {
            self.number(filled.container.volume_to(filled.container.depth).0);
        }
        self.number(state.cuts.len() as f64);
        for cut in &state.cuts {
            let told = cut.cuttings.told();
            [told.low, told.middle, told.high].into_iter().for_each(|count| self.number(f64::from(count)));
            let field = state.amounts.told(Quantity::CuttingsNeeded).unwrap_or(f64::INFINITY);
            self.number(f64::from(told.middle).min(field));
            self.number(cut.area.0);
            self.days.extend([cut.when.from, cut.when.to]);
        }
        for step in &state.steps {
            self.days.extend([step.when.from, step.when.to]);
        }
        self.number(state.bed.between_rows.0);
        self.number(state.bed.along_row.0);
        self.number(f64::from(state.bed.strips));
        let young = state.amounts.told(Quantity::WaterUntilShoots).unwrap_or_default();
        self.number((young / a.jerrycan_l).round().max(1.0));
        self.days.extend([state.harvest.first, state.harvest.last]);
        for farm in &state.farms {
            self.number(farm.area.0);
            [farm.cuttings, farm.plants, farm.roots].into_iter().for_each(|n| self.number(f64::from(n)));
        }
        for row in &state.by_field {
            [row.area.0, row.bed.0].into_iter().for_each(|value| self.number(value));
            let counts = [row.cuttings, row.roots, row.plants, row.jerrycans_per_day];
            counts.into_iter().for_each(|count| self.number(f64::from(count)));
        }
    }

    fn of(case: &Case, plan: &Plan, done: bool) -> Held {
        let mut held = Held::default();
        held.state(&plan.now, plan);
        held.days.extend([plan.rains, plan.usual_rains(), plan.rains_span().from, plan.rains_span().to]);
        held.days.extend(case.today.into_iter().chain([case.harvest]));
        plan.remarks.iter().for_each(|remark| held.values(remark));
        plan.advice.iter().for_each(|advice| held.values(advice));
        if let Some(group) = &plan.together {
            held.state(&group.now, plan);
            group.remarks.iter().for_each(|remark| held.values(remark));
        }
        // What is done is told as it was planned.
        if done {
            let planned = plan.together.as_ref().and_then(|group| group.planned.as_ref());
            [plan.planned.as_ref(), planned].into_iter().flatten().for_each(|state| held.state(state, plan));
        }
        for way in &plan.ways {
            let told = way.told();
            let counts = [told.low, told.middle, told.high, way.trips, way.roots, way.days];
            counts.into_iter().for_each(|count| held.number(f64::from(count)));
            held.number(way.water.0);
        }
        for delay in &plan.planting_delays {
            held.days.extend(delay.from.nearest(plan.rains));
            held.number(delay.planted_years as f64);
            let share = delay.false_start_share.unwrap_or_default();
            held.number(share * delay.planted_years as f64);
            held.number(delay.median_days_left.unwrap_or_default());
        }
        // Sizes of the trade, which the case may change.
        plan.assumptions.values().for_each(|value| held.number(value));
        for (centimetres, measure) in [
            (plan.assumptions.stem_left_cm, 15.0),
            (plan.assumptions.cutting_length_cm, 15.0),
            (plan.assumptions.base_sand_cm, 2.5),
        ] {
            held.number((centimetres / measure * 2.0).round() / 2.0);
        }
        for field in case.fields() {
            match field.spacing {
                Spacing::Ridges { between, along } => [between.0, along.0].map(|m| held.number(m * 100.0)),
                Spacing::Mounds { between, cuttings } => {
                    [between.0 * 100.0, cuttings].map(|value| held.number(value))
                }
            };
        }
        held
    }
}

/// What stands in two places is rounded once: the field of the first cut in remarks and in the table of cuts, the
/// cuttings in a remark and the same table, and vines to be found as a way and as what is short.
#[test]
fn what_stands_twice_is_told_alike() {
    let mut compared = [0; 3];
    for (case, plan) in plans() {
        let Some(first) = plan.now.cuts.first() else { continue };
        let roots = plan.now.amounts.get(Quantity::RootsToStore).map(|roots| roots as u32);
        for remark in &plan.remarks {
            let planted = match *remark {
                Remark::FieldWaits { area_m2, .. } | Remark::CuttingsShort { area_m2, .. } => Some(area_m2),
                Remark::ContainersTooSmall { fit, first_m2, .. }
                | Remark::SandShort { fit, first_m2, .. }
                | Remark::WaterLimits { fit, first_m2, .. }
                | Remark::HandsShort { fit, first_m2, .. }
                | Remark::LimitedAtHand { roots: fit, first_m2, .. } => {
                    Some(first_m2).filter(|_| roots == Some(fit))
                }
                _ => None,
            };
            if let Some(planted) = planted {
                assert_eq!(planted, first.told_area().0, "{remark:?} of {case:?}");
                compared[0] += 1;
            }
            if let Remark::ByPrint { first: told, .. } | Remark::ByPractice { first: told, .. } = *remark {
                assert_eq!(told, first.cuttings.told().middle, "{remark:?} of {case:?}");
                compared[1] += 1;
            }
            if let Remark::CuttingsShort { short, .. } = *remark {
                for way in plan.ways.iter().filter(|way| way.kind == WayKind::Buy) {
                    assert_eq!(way.told().middle, short, "{remark:?} of {case:?}");
                    compared[2] += 1;
                }
            }
        }
    }
    assert!(compared.iter().all(|count| *count > 0), "{compared:?}");
}

/// How a pack writes days and numbers.
struct Written {
    /// The days that a text may stand for.
    days: HashMap<String, BTreeSet<NaiveDate>>,
    lengths: BTreeSet<usize>,
    /// Numbers that the pack's own texts hold, such as "300" in a sentence.
    own: HashSet<String>,
    starts: HashSet<char>,
}

impl Written {
    fn of(pack: &Pack) -> Written {
        let mut days: HashMap<String, BTreeSet<NaiveDate>> = HashMap::new();
        for number in 0..4 * 365 {
            let day = date("2026-01-01") + Days::new(number);
            for function in ["DAY", "BRIEF"] {
                let text = pack.write_day(day, function).unwrap();
                days.entry(pack.for_sms(&text)).or_default().insert(day);
                days.entry(text).or_default().insert(day);
            }
        }
        let text = std::fs::read_to_string(repository().join("locales").join(pack.tag()).join("written.ftl"));
        let text = text.unwrap();
        let lines = text.lines().filter(|line| !line.trim_start().starts_with('#'));
        let literals = lines.flat_map(|line| line.split('{').map(|part| part.rsplit('}').next().unwrap()));
        let own = literals.flat_map(|text| text.split(|c: char| !c.is_ascii_digit()).map(str::to_owned));
        let own = own.filter(|digits| !digits.is_empty()).collect();
        Written {
            lengths: days.keys().map(String::len).collect(),
            starts: days.keys().filter_map(|text| text.chars().next()).collect(),
            days,
            own,
        }
    }

    /// The first day or number of a text that the plan does not hold.
    fn stranger(&self, pack: &Pack, text: &str, held: &Held) -> Option<String> {
        let numbers: BTreeSet<String> = held
            .numbers
            .iter()
            .flat_map(|number| {
                let value: f64 = number.parse().unwrap();
                [0, 1].map(|decimals| pack.write_number(value, decimals))
            })
            .flat_map(|number| [pack.for_sms(&number), number])
            .collect();
        let mut at = 0;
        let mut before = ' ';
        while let Some(c) = text[at..].chars().next() {
            if self.starts.contains(&c) && !(c.is_ascii_digit() && before.is_ascii_digit()) {
                let fits = |length: &&usize| {
                    text.get(at..at + **length).is_some_and(|part| self.days.contains_key(part))
                        && !text[at + **length..].starts_with(|c: char| c.is_ascii_digit())
                };
                if let Some(length) = self.lengths.iter().rev().find(fits) {
                    let part = &text[at..at + length];
                    if self.days[part].is_disjoint(&held.days) {
                        return Some(part.to_owned());
                    }
                    (at, before) = (at + length, ' ');
                    continue;
                }
            }
            if c.is_ascii_digit() {
                let end = |number: &&String| {
                    text[at..].starts_with(number.as_str())
                        && !text[at + number.len()..].starts_with(|c: char| c.is_ascii_digit())
                };
                let known = numbers.iter().filter(end).max_by_key(|number| number.len());
                let digits: String = text[at..].chars().take_while(char::is_ascii_digit).collect();
                let length = match known {
                    Some(number) => number.len(),
                    None if self.own.contains(&digits) => digits.len(),
                    None => return Some(text[at..].chars().take(20).collect()),
                };
                (at, before) = (at + length, '0');
                continue;
            }
            (at, before) = (at + c.len_utf8(), c);
        }
        None
    }
}

/// What the sheet, the messages and the calendar say of a case, by where it stands, and whether it tells of what is done.
fn texts(pack: &Pack, statements: &[Statement]) -> Vec<(String, String, bool)> {
    let facts = Facts::of(pack, statements).unwrap();
    let mut texts = vec![("opening".to_owned(), format!("{} {}", facts.opening, facts.made), false)];
    texts.extend(facts.head.iter().skip(2).map(|row| (row.name.to_owned(), row.value.clone(), false)));
    texts.extend(facts.amounts.iter().map(|row| (row.name.to_owned(), row.value.clone(), false)));
    texts.extend(facts.consequences.iter().map(|text| ("consequence".to_owned(), text.clone(), false)));
    for step in &facts.steps {
        let tips = step.tips.iter().map(|tip| tip.text.as_str());
        let all = [&step.title, &step.text, &step.short].map(String::as_str).into_iter().chain(tips);
        let when = step.when.iter().chain(&step.brief).map(String::as_str);
        let text = all.chain(when).collect::<Vec<_>>().join(" | ");
        texts.push((step.subject.to_owned(), text, step.standing == "done"));
    }
    for table in &facts.tables {
        let rows = table.rows.iter().chain(&table.brief).flatten().cloned().collect::<Vec<_>>();
        texts.push((table.subject.to_owned(), format!("{} | {}", table.text, rows.join(" | ")), false));
    }
    texts.extend(facts.cautions.iter().map(|of| (of.subject.to_owned(), of.text.clone() + &of.short, false)));
    for message in sms(pack, statements, SmsOptions::default()).unwrap() {
        texts.push((format!("{}.sms", message.subject.name()), message.text, false));
    }
    texts
}

#[test]
fn every_amount_and_day_is_in_the_present_plan() {
    for pack in packs() {
        let written = Written::of(&pack);
        let mut strangers = Vec::new();
        for (number, (case, plan)) in plans().iter().enumerate() {
            let statements = tell(case, plan);
            for (place, text, done) in texts(&pack, &statements) {
                // Farms and events are texts of the case.
                let held = Held::of(case, plan, done);
                if let Some(stranger) = written.stranger(&pack, &text, &held) {
                    strangers.push(format!("case {number}, {place}: {stranger:?} in {text}"));
                }
            }
        }
        let shown: Vec<&String> = strangers.iter().take(20).collect();
        assert!(strangers.is_empty(), "{}: {} strangers: {shown:#?}", pack.tag(), strangers.len());
    }
}

/// Aloud, numbers are words: each is one of the plan's, or a day of a month.
#[test]
fn every_number_aloud_is_in_the_present_plan() {
    for pack in packs() {
        let numerals = pack.numerals();
        let mut said: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for (number, (case, plan)) in plans().iter().enumerate() {
            let statements = tell(case, plan);
            let done = statements.iter().any(|of| of.standing == Some(Standing::Done));
            let held = Held::of(case, plan, done);
            let days = (1..=31).map(|day| format!("{day}.0"));
            let halves = held.numbers.iter().map(|of| format!("{:.1}", of.parse::<f64>().unwrap().trunc()));
            let known: BTreeSet<String> = held.numbers.iter().cloned().chain(days).chain(halves).collect();
            let words: HashSet<String> = numerals
                .forms()
                .into_iter()
                .flat_map(|form| {
                    known.iter().flat_map(move |of| {
                        let value: f64 = of.parse().unwrap();
                        let decimals = if value.fract() == 0.0 { 0 } else { 1 };
                        let number = kabla::language::numerals::Number::rounded(value, decimals)?;
                        Some(plain(&numerals.say(number, form).ok()?))
                    })
                })
                .collect();
            for kind in StepKind::ALL {
                for statement in for_step(&statements, kind) {
                    for run in runs(&pack.say(&statement).unwrap()) {
                        if !words.contains(&run) {
                            let place = format!("case {number}, {}", statement.subject.name());
                            said.entry(run).or_default().insert(place);
                        }
                    }
                }
            }
        }
        assert!(said.is_empty(), "{}: no number of the plan is said as {said:#?}", pack.tag());
    }
}

/// Words of numbers that follow each other.
fn runs(pieces: &[Piece]) -> Vec<String> {
    let mut runs = Vec::new();
    let mut run: Vec<String> = Vec::new();
    for piece in pieces {
        match piece {
            Piece::Words(words) if words.role == Role::Number => run.push(plain(&words.text)),
            _ if !run.is_empty() => runs.push(std::mem::take(&mut run).join(" ")),
            _ => {}
        }
    }
    runs.extend((!run.is_empty()).then(|| run.join(" ")));
    runs
}

fn plain(text: &str) -> String {
    let parts = kabla::language::numerals::words_in(text);
    let bare = parts.map(|word| word.trim_matches(|c: char| !c.is_alphanumeric()).to_owned());
    bare.filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// A consequence stands in every format, and beside its step in what is sent and said.
#[test]
fn consequences_reach_every_format() {
    let pack = Pack::load(&Embedded, "en").unwrap();
    let mut seen = BTreeSet::new();
    for (case, plan) in plans() {
        let statements = tell(&case, &plan);
        let facts = Facts::of(&pack, &statements).unwrap();
        let text = String::from_utf8(sheet::text(&facts, &Embedded).unwrap()).unwrap();
        let calendar = String::from_utf8(ics(&pack, &statements).unwrap()).unwrap();
        let calendar = calendar.replace("\r\n ", "").replace('\\', "");
        let messages = sms(&pack, &statements, SmsOptions::default()).unwrap();
        for statement in &statements {
            let Subject::Consequence(consequence) = statement.subject else { continue };
            let words = pack.write_title(statement).unwrap();
            assert!(facts.consequences.iter().any(|of| of.ends_with(&words)), "{words}");
            assert!(text.contains(&words), "plain text lacks: {words}");
            assert!(calendar.contains(&words), "the calendar lacks: {words}");
            assert!(messages.iter().any(|of| of.subject == statement.subject), "no message: {words}");
            let open = |kind: &StepKind| statements.iter().any(|of| of.subject == Subject::Step(*kind));
            for kind in consequence.steps().iter().filter(|kind| open(kind)) {
                let spoken = for_step(&statements, *kind);
                assert!(spoken.iter().any(|of| of.subject == statement.subject), "{}: {words}", kind.name());
            }
            seen.insert(consequence);
        }
    }
    let all: BTreeSet<Consequence> = Consequence::ALL.into_iter().collect();
    let missing: Vec<_> = all.difference(&seen).map(|of| of.name()).collect();
    assert!(missing.is_empty(), "no case leads to {missing:?}");
}

#[test]
fn consequences_and_tips_are_codes_of_the_plan() {
    let codes: BTreeSet<&str> = kabla::plan::wordings().map(|wording| wording.code).collect();
    for name in Consequence::ALL.map(Consequence::name) {
        assert!(codes.contains(name), "src/guidance/subjects.rs: the plan has no {name}");
    }
    for name in Tip::ALL.map(Tip::name) {
        assert!(codes.contains(name), "src/guidance/subjects.rs: the plan has no {name}");
    }
    let told: BTreeSet<&str> = Tip::ALL.map(Tip::name).into();
    let advice: BTreeSet<&str> = codes.into_iter().filter(|code| code.starts_with("advice-")).collect();
    assert_eq!(told, advice, "each advice is told");
}

/// A farm on 30 June whose roots lie in sand: what is done is ticked, checking is due, the bed comes next.
#[test]
fn a_sheet_knows_what_is_done_what_is_now_and_what_is_next() {
    let case = Case { today: Some(date("2027-06-30")), done: Some(StepKind::FillContainer), ..farm(450.0) };
    let pack = Pack::load(&Embedded, "en").unwrap();
    let statements = tell(&case, &make(&case).unwrap());
    let facts = Facts::of(&pack, &statements).unwrap();
    let standing = |name: &str| {
        let step = facts.steps.iter().find(|step| step.subject == name).unwrap();
        (step.standing, step.standing_text.as_str())
    };
    for done in ["mark-plants", "gather-sand", "check-plants", "cut-vines", "harvest", "fill-container"] {
        assert_eq!(standing(done), ("done", "Done"));
    }
    assert_eq!(standing("monthly-check"), ("now", "Now"));
    assert_eq!(standing("prepare-bed"), ("next", "Next"));
    assert_eq!(standing("plant-bed"), ("", ""));
    assert_eq!(facts.made, "Made on 30 June 2027. It replaces every older sheet of this season.");
    // What is done has no message any more.
    let sent: BTreeSet<&str> =
        sms(&pack, &statements, SmsOptions::default()).unwrap().iter().map(|of| of.subject.name()).collect();
    assert!(!sent.contains("harvest") && sent.contains("prepare-bed"), "{sent:?}");
    // Without a day nothing is marked.
    let facts = Facts::of(&pack, &tell(&farm(450.0), &make(&farm(450.0)).unwrap())).unwrap();
    assert!(facts.made.is_empty() && facts.steps.iter().all(|step| step.standing.is_empty()));
}

/// Opening and closing know the season. By hand: rains of 25 November are near from 11 November on.
#[test]
fn openings_know_how_the_day_stands_to_the_rains() {
    let case = farm(450.0);
    let statements = tell(&case, &make(&case).unwrap());
    let season = |kind| match for_step(&statements, kind)[0].value(Variable::Season.name()) {
        Some(Value::Name(season)) => *season,
        other => panic!("{other:?}"),
    };
    assert_eq!(season(StepKind::Harvest), "before");
    assert_eq!(season(StepKind::PlantField), "near");
    assert_eq!(season(StepKind::FirstHarvest), "later");
    let began =
        Case { rains_began: Some(date("2027-11-20")), today: Some(date("2027-11-21")), ..farm(450.0) };
    let statements = tell(&began, &make(&began).unwrap());
    let season = |kind| for_step(&statements, kind)[0].value(Variable::Season.name()).cloned();
    assert_eq!(season(StepKind::PlantField), Some(Value::Name("after")));
    // Two messages in weeks that follow each other do not begin in the same words.
    let pack = Pack::load(&Embedded, "en").unwrap();
    let opening = |kind| pack.say(&for_step(&statements, kind)[0]).unwrap();
    let openings: BTreeSet<String> = [StepKind::GatherSand, StepKind::CheckPlants, StepKind::FillContainer]
        .map(|kind| format!("{:?}", opening(kind)))
        .into();
    assert!(openings.len() > 1, "{openings:?}");
}

/// Fifteen words a sentence on average in speech, twenty at most: what a listener follows.
#[test]
fn english_sentences_are_short_in_speech() {
    let pack = Pack::load(&Embedded, "en").unwrap();
    let mut sentences: BTreeSet<String> = BTreeSet::new();
    for (case, plan) in plans() {
        for statement in tell(&case, &plan).iter().filter(|of| of.subject.is_spoken()) {
            let pieces = pack.say(statement).unwrap();
            let words = pieces.iter().filter_map(|piece| match piece {
                Piece::Words(words) => Some(words.text.as_str()),
                Piece::Pause(_) => None,
            });
            let text = words.collect::<Vec<_>>().join(" ");
            let ends = |c: char| matches!(c, '.' | '!' | '?' | ':');
            sentences.extend(text.split(ends).map(|of| of.trim().to_owned()).filter(|of| !of.is_empty()));
        }
    }
    let count = |sentence: &String| sentence.split_whitespace().count();
    let long: Vec<&String> = sentences.iter().filter(|sentence| count(sentence) > 20).collect();
    let average = sentences.iter().map(count).sum::<usize>() as f64 / sentences.len() as f64;
    assert!(long.is_empty(), "longer than twenty words: {long:#?}");
    assert!(average <= 15.0, "{average:.1} words a sentence on average");
}
