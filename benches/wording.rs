//! A pack loaded, and a plan put into written and spoken words.

#![allow(clippy::expect_used, missing_docs)]

use criterion::{Criterion, criterion_group, criterion_main};
use kabla::data::Embedded;
use kabla::guidance::tell;
use kabla::language::Pack;

fn wordings(c: &mut Criterion) {
    let nothing = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    let (case, _) = kabla::case::read("farm.toml", include_str!("../examples/farm.toml"), &nothing)
        .expect("a right case");
    let statements = tell(&case, &kabla::plan::make(&case).expect("a plan"));
    for tag in ["en", "sw"] {
        let pack = Pack::load(&Embedded, tag).expect("a right pack");
        c.bench_function(&format!("load pack {tag}"), |b| b.iter(|| Pack::load(&Embedded, tag)));
        c.bench_function(&format!("write all statements, {tag}"), |b| {
            b.iter(|| statements.iter().map(|statement| pack.write(statement)).collect::<Vec<_>>());
        });
        c.bench_function(&format!("say all statements, {tag}"), |b| {
            b.iter(|| statements.iter().map(|statement| pack.say(statement)).collect::<Vec<_>>());
        });
        c.bench_function(&format!("list phrases, {tag}"), |b| b.iter(|| pack.phrases()));
    }
}

criterion_group!(benches, wordings);
criterion_main!(benches);
