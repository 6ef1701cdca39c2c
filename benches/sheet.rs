//! A plan's words put on paper.

#![allow(clippy::expect_used, missing_docs)]

mod common;

use criterion::{Criterion, criterion_group, criterion_main};
use kabla::data::Embedded;
use kabla::language::Pack;
use kabla::sheet::{Facts, Paper, Printer, html, text};

fn sheets(c: &mut Criterion) {
    let statements = common::statements();
    let pack = Pack::load(&Embedded, "sw").expect("a right pack");
    let facts = Facts::of(&pack, &statements).expect("words for all");
    let printer = Printer::new(&Embedded).expect("fonts");
    let mut group = c.benchmark_group("sheet");
    group.sample_size(20);
    group.bench_function("load fonts", |b| b.iter(|| Printer::new(&Embedded)));
    let mut number = 0;
    group.bench_function("pdf, another farm each time", |b| {
        b.iter(|| {
            number += 1;
            let facts = Facts { name: format!("farm {number}"), ..facts.clone() };
            printer.print(Paper::Farm, &facts)
        });
    });
    group.bench_function("html", |b| b.iter(|| html(&facts, &Embedded)));
    group.bench_function("text", |b| b.iter(|| text(&facts, &Embedded)));
    group.finish();
}

criterion_group!(benches, sheets);
criterion_main!(benches);
