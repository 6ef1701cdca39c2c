//! The command as its users meet it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use kabla::data::{Data, Embedded};

fn kabla(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_kabla")).current_dir(folder).args(arguments).output().unwrap()
}

fn out(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn err(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).unwrap()
}

fn example(name: &str) -> String {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("examples").join(name).display().to_string()
}

fn files(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[test]
fn the_demo_needs_only_the_program() {
    let folder = tempfile::tempdir().unwrap();
    let output = kabla(folder.path(), &["demo"]);
    assert!(output.status.success(), "{}", err(&output));
    let made = files(&folder.path().join("kabla-demo"));
    for tag in ["en", "sw"] {
        for ending in ["plan.json", "sheet.pdf", "sheet.html", "sheet.txt"] {
            let name = if ending == "plan.json" { ending.to_owned() } else { format!("{tag}-{ending}") };
            assert!(made.contains(&name), "{name} in {made:?}");
        }
        let waves: Vec<_> =
            made.iter().filter(|name| name.starts_with(tag) && name.ends_with(".wav")).collect();
        assert!(!waves.is_empty(), "{made:?}");
        for wave in waves {
            let stem = wave.trim_end_matches(".wav");
            assert!(
                made.contains(&format!("{stem}.cue.txt")) && made.contains(&format!("{stem}.vtt")),
                "{stem}"
            );
        }
    }
    let table = out(&output);
    // Cue sheets and captions share the line of their sound.
    for name in made.iter().filter(|name| ![".cue.txt", ".vtt", ".srt"].iter().any(|end| name.ends_with(end)))
    {
        assert!(table.contains(name.as_str()), "the table does not name {name}:\n{table}");
    }
    assert!(table.contains("stand-in voice"), "{table}");
    assert!(!table.contains('\u{1b}') && !err(&output).contains('\u{1b}'), "no bar where nobody watches");
}

#[test]
fn a_second_demo_makes_the_same_bytes() {
    let folder = tempfile::tempdir().unwrap();
    for name in ["a", "b"] {
        assert!(kabla(folder.path(), &["demo", "--out", name]).status.success());
    }
    let (a, b) = (folder.path().join("a"), folder.path().join("b"));
    assert_eq!(files(&a), files(&b));
    for name in files(&a) {
        assert!(fs::read(a.join(&name)).unwrap() == fs::read(b.join(&name)).unwrap(), "{name} differs");
    }
}

#[test]
fn data_from_a_folder_gives_the_same_as_the_program() {
    let folder = tempfile::tempdir().unwrap();
    let data = env!("CARGO_MANIFEST_DIR");
    let case = example("farm.toml");
    for arguments in [&["--out", "a.txt"][..], &["--out", "b.txt", "--data", data]] {
        let output = kabla(
            folder.path(),
            &[&["sheet", &case, "--language", "en", "--as", "text"], arguments].concat(),
        );
        assert!(output.status.success(), "{}", err(&output));
    }
    assert_eq!(
        fs::read(folder.path().join("a.txt")).unwrap(),
        fs::read(folder.path().join("b.txt")).unwrap()
    );
}

/// A translator's folder holds only what they work on; a part that it has is
/// read from there alone.
#[test]
fn a_data_folder_may_hold_a_part_only() {
    let folder = tempfile::tempdir().unwrap();
    copy("locales/en", folder.path());
    fs::rename(folder.path().join("locales/en"), folder.path().join("locales/lg")).unwrap();
    let pack = folder.path().join("locales/lg/pack.toml");
    fs::write(&pack, fs::read_to_string(&pack).unwrap().replace("tag = \"en\"", "tag = \"lg\"")).unwrap();
    let case = example("farm.toml");
    let sheet =
        |tag: &str| kabla(folder.path(), &["sheet", &case, "--language", tag, "--as", "pdf", "--data", "."]);
    assert!(sheet("lg").status.success(), "{}", err(&sheet("lg")));
    assert_eq!(sheet("sw").status.code(), Some(2), "the folder has locales, and no sw among them");
    fs::remove_file(folder.path().join("locales/lg/spoken.ftl")).unwrap();
    let report = err(&sheet("lg"));
    assert!(report.contains("locales/lg/spoken.ftl: is missing"), "{report}");
}

#[test]
fn a_step_the_plan_does_not_have_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let text = fs::read_to_string(example("farm.toml")).unwrap().replace("\"11-25\"", "2027-06-25");
    fs::write(folder.path().join("short.toml"), text).unwrap();
    let output = kabla(
        folder.path(),
        &[
            "speak",
            "short.toml",
            "--language",
            "en",
            "--for",
            "radio",
            "--out",
            "x",
            "--topic",
            "monthly-check",
        ],
    );
    assert_eq!(output.status.code(), Some(2), "{}", err(&output));
    assert!(err(&output).contains("no step monthly-check"), "{}", err(&output));
}

#[test]
fn rains_in_json_and_in_words() {
    let folder = tempfile::tempdir().unwrap();
    let record = example("rain-eastern-lowlands.csv");
    let window = ["rains", &record, "--from", "09-20", "--until", "12-31", "--end-from", "12-01"];
    let json = kabla(folder.path(), &[&window[..], &["--json"]].concat());
    let rains: serde_json::Value = serde_json::from_str(&out(&json)).unwrap();
    assert_eq!(rains["schema"], "kabla-rains/1");
    assert_eq!(rains["years"].as_array().unwrap().len(), 19);
    for key in ["p20", "p50", "p80", "none_share", "judged_years"] {
        assert!(!rains["onset"][key].is_null(), "{key}");
    }
    for key in ["year", "onset", "end", "longest_dry_spell_days", "false_starts"] {
        assert!(rains["years"][0].as_object().unwrap().contains_key(key), "{key}");
    }
    insta::assert_snapshot!("rains", out(&kabla(folder.path(), &window)));
    // A later onset where more rain is asked for; the same as the case's own plan where it is not.
    let plan = kabla(folder.path(), &["plan", &example("zone.toml"), "--json"]);
    let plan: serde_json::Value = serde_json::from_str(&out(&plan)).unwrap();
    assert!(plan["rains"].as_str().unwrap().ends_with(rains["onset"]["p20"].as_str().unwrap()));
    let wetter = kabla(folder.path(), &[&window[..], &["--json", "--total", "45"]].concat());
    let wetter: serde_json::Value = serde_json::from_str(&out(&wetter)).unwrap();
    assert!(wetter["onset"]["p50"].as_str().unwrap() > rains["onset"]["p50"].as_str().unwrap());
    for wrong in [
        &["--rule", "monsoon"][..],
        &["--total", "-3"],
        &["--rule", "dekad", "--days", "4"],
        &["--end-from", "02-30"],
    ] {
        let output = kabla(folder.path(), &[&window[..6], wrong].concat());
        assert_eq!(output.status.code(), Some(2), "{wrong:?}: {}", err(&output));
    }
}

/// Without a window the seasons are found from the record, and said; the one with most rain counts, or the one asked for.
#[test]
fn rainy_seasons_are_found_and_said() {
    let folder = tempfile::tempdir().unwrap();
    let record = example("rain-eastern-lowlands.csv");
    let json = |arguments: &[&str]| -> serde_json::Value {
        let output = kabla(folder.path(), &[&["rains", &record, "--json"], arguments].concat());
        serde_json::from_str(&out(&output)).unwrap()
    };
    let main = json(&[]);
    assert_eq!(main["seasons_found"].as_array().unwrap().len(), 2);
    assert_eq!(main["rule"]["from"], main["seasons_found"][1]["window"]["from"]);
    assert!(main["findings"][0]["message"].as_str().unwrap().contains("two rainy seasons"));
    assert_eq!(json(&["--season", "1"])["rule"]["from"], main["seasons_found"][0]["window"]["from"]);
    let (dry, wet) = (json(&["--outlook-rain", "80/15/5"]), json(&["--outlook-rain", "5/15/80"]));
    assert_ne!(dry["onset"], wet["onset"]);
    let second = json(&["--from", "09-20", "--until", "12-31"]);
    assert!(second["seasons_found"].is_null());
    for wrong in [
        &["--from", "09-20"][..],
        &["--season", "3"],
        &["--outlook", "1/2/3"],
        &["--season", "1", "--from", "01-01", "--until", "02-01"],
    ] {
        let output = kabla(folder.path(), &[&["rains", &record], wrong].concat());
        assert_eq!(output.status.code(), Some(2), "{wrong:?}: {}", err(&output));
    }
}

/// The risk sets the dates; a step that is not done moves them; both are refused where they mean nothing.
#[test]
fn risks_and_steps_done_set_the_dates() {
    let folder = tempfile::tempdir().unwrap();
    let plan = |name: &str, arguments: &[&str]| {
        kabla(folder.path(), &[&["plan", &example(name), "--json"], arguments].concat())
    };
    let json = |name: &str, arguments: &[&str]| -> serde_json::Value {
        serde_json::from_str(&out(&plan(name, arguments))).unwrap()
    };
    let rains = |risk: &str| json("zone.toml", &["--risk", risk])["rains"].as_str().unwrap().to_owned();
    assert!(rains("early") < rains("middle") && rains("middle") < rains("late"));
    assert_eq!(rains("early"), rains("20"));
    let late = json("farm.toml", &["--today", "2027-11-08", "--done", "last-check"]);
    assert_eq!(late["overdue"][0]["topic"], "plant-bed");
    for (name, wrong) in [
        ("farm.toml", &["--risk", "late"][..]),
        ("farm.toml", &["--done", "harvest"]),
        ("zone.toml", &["--risk", "sometimes"]),
        ("zone.toml", &["--risk", "100"]),
        ("farm.toml", &["--today", "2027-11-08", "--done", "rest"]),
    ] {
        assert_eq!(plan(name, wrong).status.code(), Some(2), "{wrong:?}");
    }
}

/// Who reads only the first lines of a plan is no failure.
#[test]
fn a_closed_pipe_is_no_failure() {
    use std::io::Read as _;
    use std::process::Stdio;
    let mut child = Command::new(env!("CARGO_BIN_EXE_kabla"))
        .args(["rains", &example("rain-eastern-lowlands.csv"), "--json"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let mut said = String::new();
    child.stderr.take().unwrap().read_to_string(&mut said).unwrap();
    assert!(child.wait().unwrap().success(), "{said}");
    assert_eq!(said, "");
}

#[test]
fn plans_in_json_and_in_words() {
    let folder = tempfile::tempdir().unwrap();
    for name in ["farm.toml", "group.toml", "zone.toml", "village.toml"] {
        let json = kabla(folder.path(), &["plan", &example(name), "--json"]);
        let plan: serde_json::Value = serde_json::from_str(&out(&json)).unwrap();
        assert_eq!(plan["schema"], "kabla-plan/2");
        let words = kabla(folder.path(), &["plan", &example(name), "--today", "2027-06-01"]);
        let text = out(&words).replace(env!("CARGO_MANIFEST_DIR"), "");
        for step in plan["steps"].as_array().unwrap() {
            assert!(text.contains(step["from"].as_str().unwrap()), "{step}\n{text}");
        }
        insta::assert_snapshot!(format!("plan_{}", name.trim_end_matches(".toml")), text);
    }
    assert!(files(folder.path()).is_empty());
}

#[test]
fn wrong_input_is_code_2_and_leaves_nothing_behind() {
    let folder = tempfile::tempdir().unwrap();
    let bad = folder.path().join("bad.toml");
    fs::write(&bad, "name = 3\nharvest = 2027-04-31\n[field]\narea_m2 = nan\n").unwrap();
    let bad = bad.display().to_string();
    for arguments in [
        &["plan", &bad][..],
        &["sheet", &bad, "--language", "en", "--out", "x.pdf"],
        &["speak", &bad, "--language", "en", "--for", "radio", "--out", "x"],
        &["plan", "gone.toml"],
        &["sheet", &example("farm.toml"), "--language", "xx", "--out", "x.pdf"],
        &[
            "speak",
            &example("farm.toml"),
            "--language",
            "en",
            "--voice",
            "nobody",
            "--for",
            "radio",
            "--out",
            "x",
        ],
        &["clips", "script", "--language", "../en"],
        &["sheet", &example("farm.toml"), "--data", "nowhere"],
    ] {
        let output = kabla(folder.path(), arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {}", err(&output));
        assert!(err(&output).contains("hint:"), "{arguments:?}: {}", err(&output));
        assert!(out(&output).is_empty());
        assert_eq!(files(folder.path()), ["bad.toml"], "{arguments:?}");
    }
    let report = err(&kabla(folder.path(), &["plan", &bad]));
    for field in ["name", "harvest", "place.name", "season.rains_begin", "field.area_m2"] {
        assert!(report.contains(&format!(" {field}: ")), "{field}:\n{report}");
    }
}

#[test]
fn folders_that_cannot_be_written_are_said() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("file"), "in the way").unwrap();
    let output =
        kabla(folder.path(), &["sheet", &example("farm.toml"), "--as", "text", "--out", "file/sheet.txt"]);
    assert_eq!(output.status.code(), Some(1), "{}", err(&output));
    assert!(err(&output).contains("cannot be written"), "{}", err(&output));
    assert_eq!(fs::read_to_string(folder.path().join("file")).unwrap(), "in the way");
}

/// Copies the embedded files of a folder to disk.
fn copy(from: &str, to: &Path) {
    for name in Embedded.list(from) {
        let path = format!("{from}/{name}");
        match Embedded.read(&path) {
            Some(bytes) => {
                fs::create_dir_all(to.join(from)).unwrap();
                fs::write(to.join(&path), bytes).unwrap();
            }
            None => copy(&path, to),
        }
    }
}

fn speak(folder: &Path, data: &Path, topic: &str) -> Output {
    let (case, data) = (example("farm.toml"), data.display().to_string());
    kabla(
        folder,
        &[
            "speak",
            &case,
            "--language",
            "en",
            "--for",
            "radio",
            "--out",
            "out",
            "--topic",
            topic,
            "--data",
            &data,
        ],
    )
}

/// A missing or stale clip never becomes silence: refused with code 3, the
/// phrases named, no audio written.
#[test]
fn missing_and_stale_clips_are_refused() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    for part in ["locales/en", "audio/en/stand-in"] {
        copy(part, &data);
    }
    let work = folder.path().join("work");
    fs::create_dir(&work).unwrap();

    // The words change: what was recorded is stale.
    let spoken = data.join("locales/en/spoken.ftl");
    let text = fs::read_to_string(&spoken).unwrap();
    fs::write(&spoken, text.replace("Put a stick beside each one.", "Put two sticks beside each one."))
        .unwrap();
    let stale = speak(&work, &data, "mark-plants");
    assert_eq!(stale.status.code(), Some(3), "{}", err(&stale));
    assert!(err(&stale).contains("Put two sticks beside each one"), "{}", err(&stale));
    assert!(
        err(&stale).contains("Put a stick beside each one"),
        "the old words are named too: {}",
        err(&stale)
    );
    assert!(files(&work).is_empty(), "{:?}", files(&work));

    // Another topic is not touched by it.
    assert!(speak(&work, &data, "harvest").status.success());

    // All of the words are missing: all of them are named at once.
    let bank = data.join("audio/en/stand-in/bank.toml");
    let header: String = fs::read_to_string(&bank).unwrap().split("[[clip]]").next().unwrap().to_owned();
    fs::write(&bank, header).unwrap();
    fs::remove_dir_all(work.join("out")).unwrap();
    let missing = speak(&work, &data, "mark-plants");
    assert_eq!(missing.status.code(), Some(3), "{}", err(&missing));
    for phrase in ["Choose your mother plants", "twenty", "April", "strong plants"] {
        assert!(err(&missing).contains(phrase), "{phrase}: {}", err(&missing));
    }
    assert!(files(&work).is_empty());
}

#[test]
fn a_language_without_a_voice_is_not_spoken_by_another() {
    let folder = tempfile::tempdir().unwrap();
    for tag in ["ha", "ny"] {
        let speak = ["speak", &example("farm.toml"), "--language", tag, "--for", "radio", "--out", "made"];
        let refused = kabla(folder.path(), &speak);
        assert_eq!(refused.status.code(), Some(2));
        for words in [format!("no voice speaks {tag} yet"), format!("kabla clips script --language {tag}")] {
            assert!(err(&refused).contains(&words), "{}", err(&refused));
        }
        assert!(!folder.path().join("made").exists());
    }
}

#[test]
fn the_script_lists_every_phrase() {
    let folder = tempfile::tempdir().unwrap();
    for tag in ["en", "sw", "am", "ha", "pt-MZ", "fr", "ny"] {
        let output = kabla(folder.path(), &["clips", "script", "--language", tag, "--all", "--json"]);
        assert!(output.status.success(), "{}", err(&output));
        let lines: Vec<serde_json::Value> =
            out(&output).lines().map(|line| serde_json::from_str(line).unwrap()).collect();
        let pack = kabla::language::Pack::load(&Embedded, tag).unwrap();
        // Words that differ in case alone are recorded once.
        let phrases = pack.phrases().unwrap();
        let distinct = phrases.iter().map(|phrase| (phrase.words.to_lowercase(), phrase.intonation));
        assert_eq!(lines.len(), distinct.collect::<std::collections::BTreeSet<_>>().len());
        assert!(lines.iter().all(|line| line["words"].is_string() && line["intonation"].is_string()));
    }
}

#[test]
fn help_names_every_command() {
    let folder = tempfile::tempdir().unwrap();
    let help = out(&kabla(folder.path(), &["--help"]));
    for command in ["demo", "plan", "sheet", "speak", "clips"] {
        assert!(help.contains(command), "{command}:\n{help}");
    }
    assert_eq!(
        kabla(folder.path(), &["speak", "x", "--for", "radio", "--out", "y", "--topic", "weeding"])
            .status
            .code(),
        Some(2)
    );
}

/// `kabla plan` has a sheet's words in the language asked for, and the season to scale.
#[test]
fn plans_in_the_terminal_speak_each_language() {
    let folder = tempfile::tempdir().unwrap();
    let json = out(&kabla(folder.path(), &["plan", &example("farm.toml"), "--json"]));
    let plan: serde_json::Value = serde_json::from_str(&json).unwrap();
    let data = kabla::data::Embedded;
    let (_, case) = crate::examples().remove(0);
    let statements = kabla::guidance::tell(&case, &kabla::plan::make(&case).unwrap());
    for tag in kabla::language::Pack::tags(&data) {
        let pack = kabla::language::Pack::load(&data, &tag).unwrap();
        let output = Command::new(env!("CARGO_BIN_EXE_kabla"))
            .args(["plan", &example("farm.toml"), "--language", &tag])
            .env("COLUMNS", "240")
            .output()
            .unwrap();
        let text = out(&output);
        for statement in &statements {
            if matches!(statement.subject, kabla::guidance::Subject::Step(_)) {
                let title = pack.write(statement).unwrap().title;
                assert!(text.contains(&title), "{tag}: {title}\n{text}");
            }
        }
        let band = text.lines().find(|line| line.trim_start().starts_with('H')).unwrap();
        let at = |sign: char| {
            assert_eq!(band.matches(sign).count(), 1, "{tag}: {sign} in {band}");
            band.chars().position(|c| c == sign).unwrap() as i64
        };
        let (harvest, rains, food) = (at('H'), at('R'), at('F'));
        assert_eq!(band.matches('+').count(), 3, "{tag}: a check each month in {band}");
        assert!(band.chars().count() <= 80, "{band}");
        // Days to scale: 185 from the harvest on 24 May to the rains on 25 November, 90 from there to the first roots.
        assert_eq!(plan["rains"], "2027-11-25");
        let ratio = (rains - harvest) as f64 / (food - rains) as f64;
        assert!((ratio - 185.0 / 90.0).abs() < 0.2, "{tag}: {ratio:.2}");
        for id in ["season-store", "season-bed", "season-field", "season-on-rains"] {
            assert!(text.contains(&pack.label(id, &[]).unwrap()), "{tag}: {id}");
        }
    }
    let unknown = kabla(folder.path(), &["plan", &example("farm.toml"), "--language", "xx"]);
    assert_eq!(unknown.status.code(), Some(2));
    assert!(err(&unknown).contains("packs at hand"), "{}", err(&unknown));
}

/// `kabla rains` draws each year's wet season in dekads: as many blocks as its dates span.
#[test]
fn rains_in_the_terminal_are_drawn_to_scale() {
    let folder = tempfile::tempdir().unwrap();
    let record = example("rain-eastern-lowlands.csv");
    let window = ["rains", &record, "--from", "09-20", "--until", "12-31", "--end-from", "12-01"];
    let output = kabla(folder.path(), &window);
    let text = out(&output);
    let (head, rows) =
        text.split_once("DEKADS FROM 09-20").unwrap_or_else(|| panic!("{text}{}", err(&output)));
    assert!(head.contains("ONSET"));
    let mut years = 0;
    for line in rows.lines().filter(|line| line.contains('█')) {
        let mut cells = line.split_whitespace();
        let Ok(year) = cells.next().unwrap().parse::<i32>() else { continue };
        let day = |text: &str| text.parse::<chrono::NaiveDate>().unwrap();
        let (onset, end) = (day(cells.next().unwrap()), day(cells.next().unwrap()));
        let start = chrono::NaiveDate::from_ymd_opt(year, 9, 20).unwrap();
        let dekad = |day: chrono::NaiveDate| (day - start).num_days() / 10;
        let drawn = line.split_whitespace().find(|cell| cell.contains('█')).unwrap();
        let first = drawn.chars().position(|c| c == '█').unwrap() as i64;
        let count = drawn.matches('█').count() as i64;
        assert_eq!((first, first + count - 1), (dekad(onset), dekad(end)), "{line}");
        years += 1;
    }
    assert!(years >= 15, "{text}");
}

#[test]
fn explain_tells_the_clips_that_are_heard_and_writes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let case = example("farm.toml");
    let asked = ["speak", &case, "--language", "en", "--for", "radio", "--topic", "water-bed"];
    let spoken = kabla(folder.path(), &[&asked[..], &["--out", "made"]].concat());
    assert!(spoken.status.success(), "{}", err(&spoken));
    let sheet = fs::read_to_string(folder.path().join("made/en-water-bed.cue.txt")).unwrap();
    let heard: Vec<&str> = sheet
        .lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_digit()))
        .map(|line| line.split_whitespace().next_back().unwrap())
        .collect();
    fs::remove_dir_all(folder.path().join("made")).unwrap();
    let told = kabla(folder.path(), &[&asked[..], &["--explain", "--json"]].concat());
    let told: serde_json::Value = serde_json::from_str(&out(&told)).unwrap();
    let clips = told[0]["clips"].as_array().unwrap();
    assert_eq!(told[0]["message"], "water-bed");
    assert_eq!(clips.iter().map(|clip| clip["clip"].as_str().unwrap()).collect::<Vec<_>>(), heard);
    assert!(clips.iter().rev().skip(1).all(|clip| clip["meets"]["roughness"].is_number()));
    assert!(clips.last().unwrap()["meets"].is_null());
    let table = out(&kabla(folder.path(), &[&asked[..], &["--explain"]].concat()));
    assert!(heard.iter().all(|clip| table.contains(clip)), "{table}");
    assert!(files(folder.path()).is_empty(), "{:?}", files(folder.path()));
    // What has no clips is refused as it is when it is to be spoken.
    let refused = kabla(folder.path(), &["speak", &case, "--language", "ha", "--for", "radio", "--explain"]);
    assert_eq!(refused.status.code(), Some(2));
    let stray = kabla(folder.path(), &[&asked[..], &["--json"]].concat());
    assert_eq!(stray.status.code(), Some(2));
}
