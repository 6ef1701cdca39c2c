//! A case read and planned, and a rainfall record analysed.

#![allow(clippy::expect_used, missing_docs)]

use criterion::{Criterion, criterion_group, criterion_main};
use kabla::case::{read, read_rain};
use kabla::plan::make;
use kabla::plan::season::{OnsetRule, Window};

const FARM: &str = include_str!("../examples/farm.toml");
const RAIN: &[u8] = include_bytes!("../examples/rain-eastern-lowlands.csv");

fn plans(c: &mut Criterion) {
    let nothing = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    let (case, _) = read("farm.toml", FARM, &nothing).expect("the example is right");
    c.bench_function("read a case", |b| b.iter(|| read("farm.toml", FARM, &nothing)));
    c.bench_function("make a plan", |b| b.iter(|| make(&case)));
    let (record, _) = read_rain("rain.csv", RAIN, None);
    let day = |text: &str| text.parse().expect("a day of the year");
    let window = Window { from: day("09-20"), until: day("12-31") };
    c.bench_function("read 20 years of rain", |b| b.iter(|| read_rain("rain.csv", RAIN, None)));
    c.bench_function("onsets of 20 years", |b| b.iter(|| record.onsets(&OnsetRule::THREE_DAY, &window)));
}

criterion_group!(benches, plans);
criterion_main!(benches);
