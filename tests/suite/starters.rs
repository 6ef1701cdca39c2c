//! Cases to begin from, and what else the program gives to those who have it alone.

use std::path::Path;

use kabla::case::{self, Starter};

use crate::cli::commands;
use crate::project::Project;

const STARTERS: [(&str, Starter); 3] =
    [("farm", Starter::Farm), ("group", Starter::Group), ("zone", Starter::Zone)];

/// Whether a line is a field or a table that is switched off.
fn is_off(line: &str) -> bool {
    line.strip_prefix('#').is_some_and(|rest| rest.starts_with(|c: char| c.is_ascii_lowercase() || c == '['))
}

/// A run of lines that are switched off, with what its comment says: which fields it stands in the
/// place of, and which it goes with.
#[derive(Debug)]
struct Run {
    lines: Vec<usize>,
    instead: Vec<String>,
    with: Option<String>,
}

fn runs(lines: &[&str]) -> Vec<Run> {
    let mut runs = Vec::new();
    let mut at = 0;
    while at < lines.len() {
        if !is_off(lines[at]) {
            at += 1;
            continue;
        }
        let run: Vec<usize> = (at..lines.len()).take_while(|line| is_off(lines[*line])).collect();
        let comment: Vec<&str> = lines[..at]
            .iter()
            .rev()
            .take_while(|line| line.starts_with("# "))
            .map(|line| &line[2..])
            .collect();
        let comment = comment.into_iter().rev().collect::<Vec<_>>().join(" ");
        let head = |word: &str| Some(comment.strip_prefix(word)?.split_once(':')?.0.to_owned());
        let instead = head("Instead of ").unwrap_or_default();
        let instead = instead.split(", ").filter(|name| !name.is_empty()).map(str::to_owned).collect();
        assert!(!comment.is_empty(), "nothing says what this is: {}", lines[at]);
        at += run.len();
        runs.push(Run { lines: run, instead, with: head("With ") });
    }
    runs
}

/// The text with a run switched on, what it goes with as well, and what it replaces taken out.
fn switched_on(lines: &[&str], runs: &[Run], run: &Run) -> String {
    let sets = |line: &str, name: &str| {
        line.split_once('=').is_some_and(|(key, _)| key.trim_start_matches('#').trim() == name)
    };
    let mut on: Vec<&Run> = vec![run];
    while let Some(name) = &on.last().unwrap().with {
        let other = runs.iter().find(|run| run.lines.iter().any(|line| sets(lines[*line], name)));
        on.push(other.unwrap_or_else(|| panic!("no field {name} is switched off")));
    }
    let text = lines.iter().enumerate().map(|(at, line)| {
        let replaced = |run: &&Run| run.instead.iter().any(|name| sets(line, name));
        match () {
            _ if on.iter().any(|run| run.lines.contains(&at)) => &line[1..],
            _ if on.iter().any(replaced) => "",
            _ => line,
        }
    });
    text.collect::<Vec<_>>().join("\n")
}

/// The records that a case may name: rain of the examples, and temperatures of a year.
fn open(name: &str) -> std::io::Result<Vec<u8>> {
    if name == "rain.csv" {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        return std::fs::read(root.join("examples/rain-eastern-lowlands.csv"));
    }
    let first = chrono::NaiveDate::from_ymd_opt(2025, 1, 1).unwrap();
    let days = first.iter_days().take(365).map(|day| format!("{day},30,17\n"));
    Ok(format!("date,tmax,tmin\n{}", days.collect::<String>()).into_bytes())
}

fn planned(name: &str, text: &str) -> Result<(), String> {
    let told = |findings: Vec<kabla::finding::Finding>| {
        findings.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")
    };
    let (case, _) = case::read(name, text, &open).map_err(told)?;
    kabla::plan::make(&case).map(drop).map_err(|findings| format!("{findings:?}"))
}

#[test]
fn each_is_read_and_planned_without_remark() {
    for (name, starter) in STARTERS {
        let (case, findings) = case::read(name, starter.text(), &open).unwrap();
        assert!(findings.is_empty(), "{name}: {findings:?}");
        assert!(kabla::plan::make(&case).is_ok(), "{name}");
    }
}

#[test]
fn each_is_read_with_any_field_switched_on() {
    for (name, starter) in STARTERS {
        let lines: Vec<&str> = starter.text().lines().collect();
        let runs = runs(&lines);
        assert!(runs.len() >= 15, "{name}: only {} fields are switched off", runs.len());
        for run in &runs {
            let text = switched_on(&lines, &runs, run);
            if let Err(problems) = planned(name, &text) {
                panic!("{name} with {}:\n{problems}", lines[run.lines[0]]);
            }
        }
    }
}

/// What the fields of all three are, against the fields that a case may have.
#[test]
fn together_they_show_every_field() {
    let shown: std::collections::BTreeSet<String> = STARTERS
        .iter()
        .flat_map(|(_, starter)| starter.text().lines())
        .filter_map(|line| Some(line.trim_start_matches('#').split_once('=')?.0.trim().to_owned()))
        .collect();
    let document =
        std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join("docs/case-file.md")).unwrap();
    // The first column of the tables: `name`, `[group] members`, `tmax_c`, `tmin_c`.
    let rows = document.lines().filter_map(|line| line.strip_prefix("| `"));
    let cells = rows.filter_map(|row| row.split_once(" | ")).map(|(cell, _)| cell);
    let names: Vec<&str> = cells
        .flat_map(|cell| cell.split('`'))
        .map(|part| part.rsplit(' ').next().unwrap())
        .filter(|name| name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_'))
        .filter(|name| name.len() > 3 && !["with", "from", "date"].contains(name))
        .collect();
    assert!(names.len() > 40, "only {} fields found in the document: {names:?}", names.len());
    let absent: Vec<&&str> = names.iter().filter(|name| !shown.contains(**name)).collect();
    assert!(absent.is_empty(), "no case to begin from shows {absent:?}");
}

#[test]
fn a_case_is_printed_or_written_but_never_written_over() {
    let project = Project::new();
    assert_eq!(project.kabla(&["case", "zone"]).done().out, Starter::Zone.text());

    project.kabla(&["case", "farm", "--out", "mine.toml"]).done();
    assert_eq!(project.read("mine.toml"), Starter::Farm.text());
    project.kabla(&["plan", "mine.toml"]).done();

    project.write("mine.toml", "mine");
    let told = project.kabla(&["case", "group", "--out", "mine.toml"]).ended(2).err;
    assert!(told.contains("mine.toml") && told.contains("already exists"), "{told}");
    assert_eq!(project.read("mine.toml"), "mine");
}

/// Each command's page, against what the program's own help lists.
#[test]
fn every_command_has_its_manual_page() {
    let project = Project::new();
    project.kabla(&["man", "--out", "pages"]).done();
    for command in commands(&project.kabla(&["--help"]).done().out) {
        let page = project.read(&format!("pages/kabla-{command}.1"));
        assert!(page.contains(".SH SYNOPSIS"), "{command}: {page}");
    }
    assert!(project.has("pages/kabla-clips-import.1"), "no page for a command of clips");
    let plan = project.read("pages/kabla-plan.1");
    assert!(plan.contains("today") && plan.contains(".TH kabla-plan 1"), "{plan}");
    assert_eq!(project.kabla(&["man"]).done().out, project.read("pages/kabla.1"));
}

#[test]
fn shells_complete_commands_and_options() {
    let project = Project::new();
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let script = project.kabla(&["completions", shell]).done().out;
        for word in ["kabla", "segment", "music-below"] {
            assert!(script.contains(word), "{shell} does not know {word}");
        }
    }
}
