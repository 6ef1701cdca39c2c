//! Every command that README and docs show: each is read as the program reads it, and those in fences marked
//! `sh run` run, one after the other, in a folder of their own.

use std::fs;
use std::path::Path;

use crate::project::{Project, repository};

/// Lines of a fence, each split into its words.
#[derive(Debug, Default)]
struct Fence {
    place: String,
    run: bool,
    commands: Vec<Vec<String>>,
}

/// The words of a line as a shell splits them; a comment ends it.
fn words(line: &str) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    let (mut word, mut quoted) = (None::<String>, false);
    for c in line.chars() {
        match c {
            '"' => {
                quoted = !quoted;
                word.get_or_insert_default();
            }
            '#' if !quoted && word.is_none() => break,
            c if c.is_whitespace() && !quoted => words.extend(word.take()),
            c => word.get_or_insert_default().push(c),
        }
    }
    words.extend(word);
    words
}

fn fences(file: &str, text: &str) -> Vec<Fence> {
    let mut fences: Vec<Fence> = Vec::new();
    let mut open = false;
    for (line, number) in text.lines().zip(1..) {
        match line.trim().strip_prefix("```") {
            Some(kind) if !open && (kind == "sh" || kind == "sh run") => {
                open = true;
                let place = format!("{file}:{number}");
                fences.push(Fence { place, run: kind == "sh run", commands: Vec::new() });
            }
            Some(_) => open = false,
            None if open => {
                let words = words(line);
                if let (false, Some(fence)) = (words.is_empty(), fences.last_mut()) {
                    fence.commands.push(words);
                }
            }
            None => {}
        }
    }
    fences
}

fn documents() -> Vec<Fence> {
    let mut files = vec!["README.md".to_owned(), "DEVELOPERS.md".to_owned()];
    let docs = fs::read_dir(repository().join("docs")).unwrap();
    let mut names: Vec<String> =
        docs.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.retain(|name| name.ends_with(".md"));
    names.sort();
    files.extend(names.iter().map(|name| format!("docs/{name}")));
    files
        .iter()
        .flat_map(|file| fences(file, &fs::read_to_string(repository().join(file)).unwrap()))
        .collect()
}

/// What is wrong with a line as a command; other people's programs are not ours to judge.
fn mistake(command: &[String]) -> Option<String> {
    match command.first().map(String::as_str) {
        Some("kabla") => kabla::cli::parse(command).err().map(|error| error.to_string()),
        Some("cargo" | "pip" | "python3") => None,
        other => Some(format!("{other:?} is no program that a reader has")),
    }
}

#[test]
fn every_command_in_the_documents_can_be_read() {
    let fences = documents();
    let commands: Vec<_> = fences
        .iter()
        .flat_map(|fence| fence.commands.iter().map(|command| (&fence.place, command)))
        .collect();
    assert!(commands.len() > 60, "only {} commands found: the scan is broken", commands.len());
    let wrong: Vec<String> = commands
        .into_iter()
        .filter_map(|(place, command)| Some(format!("{place}: {}: {}", command.join(" "), mistake(command)?)))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn commands_marked_to_run_do() {
    let fences = documents();
    let mut ran = 0;
    for fence in fences.iter().filter(|fence| fence.run) {
        let project = Project::new();
        for command in &fence.commands {
            let arguments: Vec<&str> = command.iter().skip(1).map(String::as_str).collect();
            let run = project.kabla(&arguments);
            assert_eq!(run.code, 0, "{}: {}: {}{}", fence.place, command.join(" "), run.out, run.err);
            ran += 1;
        }
    }
    assert!(ran > 30, "only {ran} commands ran: the scan is broken");
}

#[test]
fn a_command_that_does_not_exist_is_seen() {
    let wrong =
        "```sh\nkabla sheet farm.toml --colour\nkabla plan \"my farm.toml\"    # fine\nkable plan\n```\n";
    let fences = fences("README.md", wrong);
    assert_eq!(fences[0].commands[1], ["kabla", "plan", "my farm.toml"]);
    let seen: Vec<bool> = fences[0].commands.iter().map(|command| mistake(command).is_some()).collect();
    assert_eq!(seen, [true, false, true]);
}

/// The files that documents point to.
#[test]
fn every_link_in_the_documents_leads_somewhere() {
    let mut links = 0;
    for file in ["README.md", "DEVELOPERS.md", "CHANGELOG.md"]
        .into_iter()
        .map(str::to_owned)
        .chain(
            fs::read_dir(repository().join("docs"))
                .unwrap()
                .map(|entry| format!("docs/{}", entry.unwrap().file_name().into_string().unwrap())),
        )
        .filter(|file| file.ends_with(".md"))
    {
        let text = fs::read_to_string(repository().join(&file)).unwrap();
        for rest in text.split("](").skip(1) {
            let link = rest.split(')').next().unwrap().split('#').next().unwrap();
            if link.is_empty() || link.contains("://") {
                continue;
            }
            let target = repository().join(Path::new(&file).parent().unwrap()).join(link);
            assert!(target.exists(), "{file} points to {link}");
            links += 1;
        }
    }
    assert!(links > 20, "only {links} links found");
}

#[test]
fn the_front_door_is_short() {
    let size = fs::metadata(repository().join("README.md")).unwrap().len();
    assert!(size <= 6 * 1024, "README.md has {size} bytes");
}
