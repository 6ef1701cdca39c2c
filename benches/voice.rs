//! A long radio message: chosen, joined and levelled, and written.

#![allow(clippy::expect_used, missing_docs)]

mod common;

use criterion::{Criterion, criterion_group, criterion_main};
use kabla::data::{CacheFolder, Cached, Embedded};
use kabla::guidance::{StepKind, for_step};
use kabla::language::{Pack, Piece};
use kabla::voice::choose::choose;
use kabla::voice::level::{LevelOptions, to_target};
use kabla::voice::write::{WavOptions, wav};
use kabla::voice::{Bank, SpeakOptions, speak};

fn voices(c: &mut Criterion) {
    let statements = common::statements();
    let pack = Pack::load(&Embedded, "en").expect("a right pack");
    let message = for_step(&statements, StepKind::FillContainer);
    let pieces: Vec<Piece> =
        message.iter().flat_map(|statement| pack.say(statement).expect("words")).collect();
    let bank = Bank::load(&Embedded, "en", "stand-in").expect("the stand-in bank");
    let spoken = speak(&pieces, &bank, &SpeakOptions::default()).expect("a message");
    let mut group = c.benchmark_group(format!("a message of {:.0} s", spoken.length().seconds()));
    group.sample_size(20);
    group.bench_function("load the bank", |b| b.iter(|| Bank::load(&Embedded, "en", "stand-in")));
    group.bench_function("choose", |b| b.iter(|| choose(&pieces, &bank)));
    group.bench_function("level", |b| b.iter(|| to_target(spoken.samples.clone(), &LevelOptions::default())));
    group.bench_function("join and level, clips decoded before", |b| {
        b.iter(|| speak(&pieces, &bank, &SpeakOptions::default()))
    });
    group.bench_function("decode, join and level", |b| {
        b.iter(|| {
            speak(
                &pieces,
                &Bank::load(&Embedded, "en", "stand-in").expect("a bank"),
                &SpeakOptions::default(),
            )
        });
    });
    let folder = tempfile::tempdir().expect("a folder");
    let cached = Cached { data: &Embedded, folder: CacheFolder(folder.path().to_owned()) };
    group.bench_function("read kept clips, join and level", |b| {
        b.iter(|| {
            let bank = Bank::load(&cached, "en", "stand-in").expect("a bank");
            speak(&pieces, &bank, &SpeakOptions::default())
        });
    });
    group.bench_function("write", |b| b.iter(|| wav(&spoken.samples, &WavOptions::default())));
    group.finish();
}

criterion_group!(benches, voices);
criterion_main!(benches);
