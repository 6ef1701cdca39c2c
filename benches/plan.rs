//! A case read and planned, a container packed, and a rainfall record analysed.

#![allow(clippy::expect_used, missing_docs)]

use std::hint::black_box;

use chrono::{Days, Months, NaiveDate};
use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use kabla::case::{read, read_rain};
use kabla::plan::field::Field;
use kabla::plan::season::{
    EndRule, ObservedRains, OnsetRule, RainRecord, Rains, SeasonRule, Window, wet_seasons,
};
use kabla::plan::seedbed::Source;
use kabla::plan::store::{Container, Packings, fill};
use kabla::plan::{Assumptions, AtHand, Case, Hands, Litres, Planner, SquareMetres, make};

/// As in the program.
#[global_allocator]
static MEMORY: mimalloc::MiMalloc = mimalloc::MiMalloc;

const FARM: &str = include_str!("../examples/farm.toml");
const RAIN: &[u8] = include_bytes!("../examples/rain-eastern-lowlands.csv");

fn farm() -> Case {
    let nothing = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    read("farm.toml", FARM, &nothing).expect("the example is right").0
}

fn plans(c: &mut Criterion) {
    let nothing = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    let case = farm();
    c.bench_function("read a case", |b| b.iter(|| read("farm.toml", FARM, &nothing)));
    c.bench_function("make one plan, its container packed anew", |b| b.iter(|| make(&case)));
    // Farms of an area: other fields, other days of rain, other latitudes; basins of the market.
    let farms: Vec<Case> = (0u32..1000)
        .map(|index| {
            let mut case = case.clone();
            let rains =
                NaiveDate::from_ymd_opt(2027, 10, 1).expect("a day") + Days::new(u64::from(index % 90));
            case.rains = Rains::On(rains);
            case.field = Some(Field {
                sides: None,
                area: SquareMetres(100.0 + f64::from(index)),
                ..case.field.expect("a field")
            });
            case.place.latitude = -10.0 + f64::from(index % 17);
            case
        })
        .collect();
    let bound: Vec<Case> = farms.iter().cloned().map(bind).collect();
    let rains = observed();
    let dry: Vec<Case> = bound.iter().map(|case| Case { rains: rains.clone(), ..case.clone() }).collect();
    let mut group = c.benchmark_group("many");
    group.sample_size(10).throughput(Throughput::Elements(100_000));
    for (name, farms) in [
        ("100,000 plans", farms),
        ("100,000 plans, bound by containers, sand, water and hands", bound),
        ("100,000 plans, as bound, their rains from a record", dry),
    ] {
        group.bench_function(name, |b| {
            b.iter(|| {
                let mut planner = Planner::default();
                for _ in 0..100 {
                    for case in &farms {
                        black_box(planner.plan(case)).expect("a plan");
                    }
                }
            });
        });
    }
    group.finish();
}

/// Leaves a farm too little of everything. Where water is short, ways stand beside each other as well.
fn bind(case: Case) -> Case {
    let sand = Some(Litres(100.0));
    let spacing = case.spacing();
    let daily = Some([Litres(40.0); 12]);
    let counted = |container: Container| Container { count: Some(1), ..container };
    Case {
        containers: case.containers.into_iter().map(counted).collect(),
        at_hand: Some(AtHand { roots: None, plants: None, bed: None, sand, spacing }),
        source: Some(Source { name: "well".to_owned(), daily, stored: None }),
        hands: Some(Hands { people: 1, hours_per_day: 0.5 }),
        ..case
    }
}

/// The rains of the example's record.
fn observed() -> Rains {
    let (record, _) = read_rain("rain.csv", RAIN, None);
    let day = |text: &str| text.parse().expect("a day of the year");
    let window = Window { from: day("09-20"), until: day("12-31") };
    let rule =
        SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from: day("12-01") };
    Rains::Observed(ObservedRains::find(&record, rule, None))
}

fn containers(c: &mut Criterion) {
    let a = Assumptions::default();
    let containers = farm().containers;
    c.bench_function("pack two tapered basins", |b| {
        b.iter(|| fill(200, &containers, &a, &mut Packings::default()))
    });
}

fn rains(c: &mut Criterion) {
    let (record, _) = read_rain("rain.csv", RAIN, None);
    let day = |text: &str| text.parse().expect("a day of the year");
    let window = Window { from: day("09-20"), until: day("12-31") };
    // Forty years: the twenty of the example, and the same again before them.
    let (first, last) = record.span().expect("days");
    let length = u32::try_from((last - first).num_days() + 1).expect("a length");
    let dated = || {
        (0u64..)
            .zip(record.days(first, length))
            .filter_map(|(ahead, mm)| Some((first + Days::new(ahead), mm?)))
    };
    let before = dated().map(|(day, mm)| (day - Months::new(240), mm));
    let years = RainRecord::from_days(before.chain(dated()));
    let text: String = std::iter::once("date,mm\n".to_owned())
        .chain({
            let (first, last) = years.span().expect("days");
            let length = u32::try_from((last - first).num_days() + 1).expect("a length");
            let days: Vec<_> = years.days(first, length).collect();
            (0u64..)
                .zip(days)
                .filter_map(move |(ahead, mm)| Some(format!("{},{:.1}\n", first + Days::new(ahead), mm?)))
                .collect::<Vec<_>>()
        })
        .collect();
    let rule =
        SeasonRule { onset: OnsetRule::THREE_DAY, window, end: EndRule::RAINLESS, end_from: day("12-01") };
    c.bench_function("read 40 years of rain", |b| b.iter(|| read_rain("rain.csv", text.as_bytes(), None)));
    c.bench_function("rainy seasons of 40 years", |b| b.iter(|| wet_seasons(&years)));
    c.bench_function("analyse 40 years", |b| {
        b.iter(|| {
            let seasons = rule.seasons(&years);
            (rule.outlook(&seasons, None), rule.planting_delays(&years), seasons)
        });
    });
}

criterion_group!(benches, plans, containers, rains);
criterion_main!(benches);
