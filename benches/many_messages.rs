//! Many different radio messages in one process, the bank read once: CPU time of each.
//!
//!     cargo bench -p kabla-benches --profile dev --bench many_messages -- 400
//!
//! Each is planned, worded, chosen, joined, levelled and written as a broadcast WAV of its own.

#![allow(clippy::expect_used, clippy::indexing_slicing, clippy::print_stdout)]

#[path = "common/process.rs"]
mod process;

use std::cell::Cell;
use std::fs::File;
use std::io::BufWriter;
use std::time::{Duration, Instant};

use kabla::data::{CacheFolder, Cached, Embedded};
use kabla::guidance::{StepKind, for_step, tell};
use kabla::language::{Pack, Piece};
use kabla::voice::write::{BroadcastOptions, BroadcastWav, WavOptions};
use kabla::voice::{Bank, SpeakOptions, choose_clips, compose};
use process::{cpu_ms, peak_mb};

fn main() {
    let count = std::env::args().skip(1).find_map(|argument| argument.parse().ok()).unwrap_or(100u32);
    let folder = tempfile::tempdir().expect("a folder");
    let data = Cached { data: &Embedded, folder: CacheFolder(folder.path().join("cache")) };
    let text = include_str!("../examples/farm.toml");
    let (case, _) =
        kabla::case::read("farm.toml", text, &|_| unreachable!("no record")).expect("the example");
    let pack = Pack::load(&Embedded, "en").expect("the pack");
    let bank = Bank::load(&data, "en", "stand-in").expect("the bank");
    let options = SpeakOptions::default();
    // What words and clips, composing and writing the file take.
    let shares = Cell::new([Duration::ZERO; 3]);
    let wave = |number: u32| folder.path().join(format!("{number}.wav"));
    let message = |number: u32| {
        let mut marks = vec![Instant::now()];
        let mut case = case.clone();
        case.harvest = case.harvest + chrono::Days::new(u64::from(number % 40));
        if let Some(field) = &mut case.field {
            field.sides = None;
            field.area.0 = 200.0 + f64::from(number % 97) * 7.0;
        }
        let statements = tell(&case, &kabla::plan::make(&case).expect("a plan"));
        let topic =
            *StepKind::ALL.iter().cycle().nth(number as usize % StepKind::ALL.len()).expect("a topic");
        let told = for_step(&statements, topic);
        let pieces: Vec<Piece> = told.iter().flat_map(|told| pack.say(told).expect("words")).collect();
        let clips = choose_clips(&pieces, &bank, &options).expect("clips");
        marks.push(Instant::now());
        let spoken = compose(clips, &bank, &options).expect("a message");
        marks.push(Instant::now());
        let options = BroadcastOptions {
            description: topic.name().to_owned(),
            date: None,
            loudness: spoken.loudness,
            tool: "bench".to_owned(),
            markers: spoken.lines.iter().map(|line| (line.from, line.words.clone())).collect(),
            wav: WavOptions::default(),
        };
        // Over an older file, whose room the system takes back: so it does when the program puts a new file in its place.
        let file = File::create(wave(number % 20)).expect("a file");
        let mut file = BufWriter::with_capacity(1 << 18, file);
        BroadcastWav::new(&spoken.samples, &options)
            .expect("short enough")
            .write(&mut file)
            .expect("written");
        marks.push(Instant::now());
        let mut taken = shares.get();
        for (share, mark) in taken.iter_mut().zip(marks.windows(2)) {
            *share += mark[1] - mark[0];
        }
        shares.set(taken);
        spoken.length().seconds()
    };
    let all = || {
        let before = cpu_ms();
        let seconds = (0..count).map(message).sum::<f64>();
        (seconds, cpu_ms() - before)
    };
    // Every clip is decoded before the clock starts.
    all();
    shares.take();
    let (seconds, taken) = all();
    let each = taken / f64::from(count);
    let length = seconds / f64::from(count);
    println!(
        "{count} messages of {length:.1} s: {each:.2} ms of CPU each, {:.1} ms for 200 s, peak {} MB",
        each / length * 200.0,
        peak_mb()
    );
    let [words, composing, writing] =
        shares.get().map(|share| share.as_secs_f64() * 1000.0 / f64::from(count));
    println!(
        "of the time: words and clips {words:.1} ms, composing {composing:.1} ms, writing the file {writing:.1} ms"
    );
}
