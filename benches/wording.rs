//! A pack loaded, and a plan put into written and spoken words.

#![allow(clippy::expect_used, missing_docs)]

mod common;

use criterion::{Criterion, criterion_group, criterion_main};
use kabla::data::Embedded;
use kabla::language::Pack;

fn wordings(c: &mut Criterion) {
    let statements = common::statements();
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
