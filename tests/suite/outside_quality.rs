//! Clips with faults made by espeak-ng and sox, whose sizes sox knows.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use kabla::voice::record::quality::{Fault, Measures, Norms, Verdict, judge, letters, measure, read};

use crate::outside::program;
use crate::project::{Project, Run};

const PHRASES: [&str; 6] = [
    "Choose your mother plants and mark them",
    "Dig only in dry soil, and lift without wounding",
    "Cover the roots with sand",
    "Water the bed every day",
    "Cut the vines and leave the stubs",
    "Plant the whole field when the rains come",
];

fn run(program: &str, arguments: &[&str], folder: &Path) -> String {
    Run::of(Command::new(program).args(arguments).current_dir(folder)).done().err
}

/// A phrase at a pace, between silences: its file.
fn say(words: &str, pace: u32, name: &str, folder: &Path) -> PathBuf {
    let pace = pace.to_string();
    run("espeak-ng", &["-v", "en-gb", "-s", &pace, "-w", "raw.wav", words], folder);
    let trim = ["silence", "1", "0.005", "0.3%", "reverse"];
    let convert = ["-R", "raw.wav", "-b", "16", "-r", "16000", name, "norm", "-6"];
    let pad = ["pad", "0.3", "0.3"];
    run("sox", &[&convert[..], &trim, &trim, &pad].concat(), folder);
    folder.join(name)
}

fn measured(path: &Path) -> Measures {
    let (rate, samples) = read(&fs::read(path).unwrap()).unwrap();
    measure(rate, &samples)
}

fn faults(measures: &Measures) -> Vec<(Fault, Verdict)> {
    let norms = Norms { level_dbfs: None, pace: None };
    judge(measures, 30, &norms).iter().map(|found| (found.fault, found.verdict)).collect()
}

#[test]
fn sox_knows_the_noise_and_its_distance_to_speech() {
    let (Some(_), Some(_)) = (program("espeak-ng"), program("sox")) else { return };
    let project = Project::new();
    let folder = project.folder();
    let clean = measured(&say(PHRASES[0], 145, "dry.wav", folder));
    for gain in ["-25", "-35", "-45"] {
        let make =
            ["-R", "-r", "16000", "-n", "-b", "16", "noise.wav", "synth", "10", "pinknoise", "gain", gain];
        run("sox", &make, folder);
        let stat = run("sox", &["noise.wav", "-n", "stat"], folder);
        let line = stat.lines().find(|line| line.starts_with("RMS     amplitude")).unwrap();
        let noise = 20.0 * line.split_whitespace().last().unwrap().parse::<f64>().unwrap().log10();
        run("sox", &["-R", "-m", "-v", "1", "dry.wav", "-v", "1", "noise.wav", "mixed.wav"], folder);
        run("sox", &["-R", "mixed.wav", "cut.wav", "trim", "0", &format!("{:.3}", clean.seconds)], folder);
        let measures = measured(&folder.join("cut.wav"));
        // Pink noise has much of its power below 20 Hz and wanders there; the clip holds a part of it only.
        let (found, truth) = (measures.speech_to_noise_db().unwrap(), clean.level_dbfs - noise);
        assert!((found - truth).abs() < 3.0, "{found} dB instead of {truth}");
    }
}

#[test]
fn sox_cuts_shifts_clips_and_fills_the_room() {
    let (Some(_), Some(_)) = (program("espeak-ng"), program("sox")) else { return };
    let project = Project::new();
    let folder = project.folder();
    for (index, words) in PHRASES.iter().enumerate() {
        let dry = measured(&say(words, 145, "dry.wav", folder));
        assert_eq!(faults(&dry), [], "{index}");
        let fault = |effects: &[&str]| {
            run("sox", &[&["-R", "dry.wav", "wet.wav"], effects].concat(), folder);
            faults(&measured(&folder.join("wet.wav")))
        };
        let has = |found: &[(Fault, Verdict)], wanted| found.iter().any(|(fault, _)| *fault == wanted);
        assert!(has(&fault(&["trim", "0.4"]), Fault::CutStart), "{index}");
        let end = format!("{:.3}", dry.seconds / 2.0);
        // In the middle of a phrase lies a sound more often than a pause between words.
        let middle = fault(&["trim", "0", &end]);
        let pause = fault(&["trim", "0", &format!("{:.3}", dry.seconds / 2.0 + 0.06)]);
        assert!(has(&middle, Fault::CutEnd) || has(&pause, Fault::CutEnd), "{index}");
        assert!(has(&fault(&["gain", "14"]), Fault::Clipped), "{index}");
        assert!(has(&fault(&["gain", "14", "gain", "-8"]), Fault::Clipped), "{index}");
        assert!(has(&fault(&["dcshift", "0.05"]), Fault::Offset), "{index}");
        assert!(has(&fault(&["pad", "0", "1.5", "reverb", "90"]), Fault::Room), "{index}");
        assert!(!has(&fault(&["pad", "0", "0.5", "reverb", "10", "50", "10"]), Fault::Room), "{index}");
    }
}

#[test]
fn twice_the_pace_is_told() {
    let (Some(_), Some(_)) = (program("espeak-ng"), program("sox")) else { return };
    let project = Project::new();
    let usual: Vec<(Measures, usize)> = PHRASES
        .iter()
        .map(|words| (measured(&say(words, 130, "a.wav", project.folder())), letters(words)))
        .collect();
    let norms = Norms::of(usual.iter().map(|(measures, letters)| (measures, *letters)));
    for (words, (measures, letters)) in PHRASES.iter().zip(&usual) {
        let of_pace = |measures: &Measures| {
            judge(measures, *letters, &norms)
                .into_iter()
                .map(|found| found.fault)
                .filter(|fault| matches!(fault, Fault::Fast | Fault::Slow))
                .collect::<Vec<_>>()
        };
        assert_eq!(of_pace(measures), [], "{words}");
        let fast = measured(&say(words, 260, "fast.wav", project.folder()));
        assert_eq!(of_pace(&fast), [Fault::Fast], "{words}");
    }
}
