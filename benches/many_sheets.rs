//! Many different farm sheets in one process: CPU time of each and the peak of memory.
//!
//!     cargo bench -p kabla-benches --profile dev --bench many_sheets -- 1000

#![allow(clippy::expect_used, clippy::print_stdout)]

#[path = "common/process.rs"]
mod process;

use std::time::{Duration, Instant};

use kabla::app::{Embedded, Paper};
use kabla::guidance::{shapes::Shapes, tell};
use kabla::language::Pack;
use kabla::sheet::{Facts, Printer};
use process::{cpu_ms, peak_mb};

fn main() {
    let count = std::env::args().skip(1).find_map(|argument| argument.parse().ok()).unwrap_or(100u32);
    let text = include_str!("../examples/farm.toml");
    let (case, _) =
        kabla::case::read("farm.toml", text, &|_| unreachable!("no record")).expect("the example");
    let pack = Pack::load(&Embedded, "sw").expect("the pack");
    let printer = Printer::new(&Embedded).expect("fonts");
    let started = Instant::now();
    let before = cpu_ms();
    let mut bytes = 0;
    // What words, drawings and setting take.
    let mut shares = [Duration::ZERO; 3];
    for number in 0..count {
        let mut case = case.clone();
        case.name = format!("Shamba {number}");
        case.harvest = case.harvest + chrono::Days::new(u64::from(number % 40));
        if let Some(field) = &mut case.field {
            field.sides = None;
            field.area.0 = 200.0 + f64::from(number % 97) * 7.0;
        }
        let begun = Instant::now();
        let plan = kabla::plan::make(&case).expect("a plan");
        let facts = Facts::of(&pack, &tell(&case, &plan)).expect("words");
        let worded = begun.elapsed();
        let facts = facts.drawn(&pack, &Shapes::of(&case, &plan), &Embedded).expect("drawings");
        let drawn = begun.elapsed();
        bytes += printer.print(Paper::Farm, &facts).expect("a sheet").bytes.len();
        for (share, took) in shares.iter_mut().zip([worded, drawn - worded, begun.elapsed() - drawn]) {
            *share += took;
        }
    }
    let each = (cpu_ms() - before) / f64::from(count);
    println!(
        "{count} sheets: {each:.1} ms of CPU each, {:.1} ms of time, {} KB each, peak {} MB",
        started.elapsed().as_secs_f64() * 1000.0 / f64::from(count),
        bytes / count as usize / 1000,
        peak_mb()
    );
    let [words, drawings, setting] = shares.map(|share| share.as_secs_f64() * 1000.0 / f64::from(count));
    println!("of the time: words {words:.1} ms, drawings {drawings:.1} ms, setting {setting:.1} ms");
}
