//! The command as its users meet it.

use std::fs;

use kabla::data::Embedded;

use crate::project::{Project, Run, example, repository, text};

#[test]
fn the_demo_needs_only_the_program() {
    let project = Project::new();
    let output = project.kabla(&["demo"]).done();
    let made = project.files_in("kabla-demo");
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
    let table = output.out;
    // Cue sheets and captions share the line of their sound.
    for name in made.iter().filter(|name| ![".cue.txt", ".vtt", ".srt"].iter().any(|end| name.ends_with(end)))
    {
        assert!(table.contains(name.as_str()), "the table does not name {name}:\n{table}");
    }
    assert!(table.contains("stand-in voice"), "{table}");
    assert!(!table.contains('\u{1b}') && !output.err.contains('\u{1b}'), "no bar where nobody watches");
}

#[test]
fn a_second_demo_makes_the_same_bytes() {
    let project = Project::new();
    for name in ["a", "b"] {
        project.kabla(&["demo", "--out", name]).done();
    }
    let made = project.files_in("a");
    assert!(!made.is_empty());
    assert_eq!(made, project.files_in("b"));
    for name in made {
        let [a, b] = ["a", "b"].map(|folder| project.bytes(&format!("{folder}/{name}")));
        assert!(a == b, "{name} differs");
    }
}

#[test]
fn data_from_a_folder_gives_the_same_as_the_program() {
    let project = Project::new();
    let data = text(repository());
    let case = example("farm.toml");
    for arguments in [&["--out", "a.txt"][..], &["--out", "b.txt", "--data", &data]] {
        project.kabla(&[&["sheet", &case, "--language", "en", "--as", "text"], arguments].concat()).done();
    }
    assert_eq!(project.read("a.txt"), project.read("b.txt"));
}

/// A translator's folder holds only what they work on; a part that it has is
/// read from there alone.
#[test]
fn a_data_folder_may_hold_a_part_only() {
    let project = Project::new();
    project.copy_to("locales/en", "locales/lg");
    project.change("locales/lg/pack.toml", "tag = \"en\"", "tag = \"lg\"");
    let case = example("farm.toml");
    let sheet = |tag: &str| project.kabla(&["sheet", &case, "--language", tag, "--as", "pdf", "--data", "."]);
    sheet("lg").done();
    assert_eq!(sheet("sw").code, 2, "the folder has locales, and no sw among them");
    fs::remove_file(project.path("locales/lg/spoken.ftl")).unwrap();
    let report = sheet("lg").ended(2).err;
    assert!(report.contains("locales/lg/spoken.ftl: is missing"), "{report}");
}

#[test]
fn a_step_the_plan_does_not_have_is_said() {
    let project = Project::new();
    project.copy_to("examples/farm.toml", "short.toml");
    project.change("short.toml", "\"11-25\"", "2027-06-25");
    let speak = ["speak", "short.toml", "--language", "en", "--for", "radio", "--out", "x"];
    let output = project.kabla(&[&speak[..], &["--topic", "monthly-check"]].concat()).ended(2);
    assert!(output.err.contains("no step monthly-check"), "{}", output.err);
}

#[test]
fn rains_in_json_and_in_words() {
    let project = Project::new();
    let record = example("rain-eastern-lowlands.csv");
    let window = ["rains", &record, "--from", "09-20", "--until", "12-31", "--end-from", "12-01"];
    let rains = project.kabla(&[&window[..], &["--json"]].concat()).json();
    assert_eq!(rains["schema"], "kabla-rains/1");
    assert_eq!(rains["years"].as_array().unwrap().len(), 19);
    for key in ["p20", "p50", "p80", "none_share", "judged_years"] {
        assert!(!rains["onset"][key].is_null(), "{key}");
    }
    for key in ["year", "onset", "end", "longest_dry_spell_days", "false_starts"] {
        assert!(rains["years"][0].as_object().unwrap().contains_key(key), "{key}");
    }
    insta::assert_snapshot!("rains", project.kabla(&window).out);
    // A later onset where more rain is asked for; the same as the case's own plan where it is not.
    let plan = project.kabla(&["plan", &example("zone.toml"), "--json"]).json();
    assert!(plan["rains"].as_str().unwrap().ends_with(rains["onset"]["p20"].as_str().unwrap()));
    for (day, percentile) in [("rains_early", "p20"), ("rains_usual", "p50"), ("rains_late", "p80")] {
        let (day, percentile) = (plan[day].as_str().unwrap(), rains["onset"][percentile].as_str().unwrap());
        assert!(day.ends_with(percentile), "{day} {percentile}");
    }
    assert_eq!(plan["rains_none_share"], 0.0);
    let farm = project.kabla(&["plan", &example("farm.toml"), "--json"]).json();
    assert!(farm["rains_early"].is_null(), "a stated day is one day");
    let wetter = project.kabla(&[&window[..], &["--json", "--total", "45"]].concat()).json();
    assert!(wetter["onset"]["p50"].as_str().unwrap() > rains["onset"]["p50"].as_str().unwrap());
    for wrong in [
        &["--rule", "monsoon"][..],
        &["--total", "-3"],
        &["--rule", "dekad", "--days", "4"],
        &["--end-from", "02-30"],
    ] {
        let output = project.kabla(&[&window[..6], wrong].concat());
        assert_eq!(output.code, 2, "{wrong:?}: {}", output.err);
    }
}

/// Missing days leave years open, with bounds; the plan says between which days its dates lie. In 2008 the rains began on
/// 30 November. Without any day of that November and December they may have on 31 October, which had 7.9 mm after 12 dry
/// days, or later, or never.
#[test]
fn years_with_missing_days_are_told_with_their_bounds() {
    let project = Project::new();
    project.copy_to("examples/zone.toml", "zone.toml");
    project.copy_to("examples/rain-eastern-lowlands.csv", "rain-eastern-lowlands.csv");
    let record = project.read("rain-eastern-lowlands.csv");
    let whole = record.lines().filter(|line| !line.starts_with("2008-11") && !line.starts_with("2008-12"));
    let gaps: Vec<&str> = whole.collect();
    project.write("rain-eastern-lowlands.csv", gaps.join("\n"));
    let window = ["rains", "rain-eastern-lowlands.csv", "--from", "09-20", "--until", "12-31"];
    let rains = project.kabla(&[&window[..], &["--json"]].concat()).json();
    let year = rains["years"].as_array().unwrap().iter().find(|year| year["year"] == 2008).unwrap();
    assert_eq!((&year["onset"], &year["onset_unknown"]), (&serde_json::Value::Null, &true.into()));
    assert_eq!(year["onset_between"]["from"], "2008-10-31");
    assert!(year["onset_between"]["to"].is_null(), "{year}");
    assert_eq!((&rains["onset"]["judged_years"], &rains["onset"]["open_years"]), (&18.into(), &1.into()));
    for percentile in ["p20", "p50", "p80"] {
        let bounds = &rains["onset"]["between"][percentile];
        let [from, told, to] = [&bounds["from"], &rains["onset"][percentile], &bounds["to"]];
        assert!(
            from.as_str() <= told.as_str() && told.as_str() <= to.as_str(),
            "{percentile} {bounds} {told}"
        );
    }
    let words = project.kabla(&window).done().out;
    assert!(words.contains("2008  open") && words.contains("or later, or never"), "{words}");
    assert!(words.contains("Missing days leave 1 more year open."), "{words}");
    let plan = project.kabla(&["plan", "zone.toml", "--language", "en"]).done().out;
    assert!(plan.contains("Rains may begin from"), "{plan}");
    let plan = plan.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(plan.contains("In one year missing days leave the onset open (2008)."), "{plan}");
    assert!(plan.contains("the early onset lies between"), "{plan}");
}

/// Of two same runs of years the trend's interval holds zero: it is called no clear trend, with its bounds.
#[test]
fn a_trend_is_told_with_its_doubt() {
    let project = Project::new();
    let record = std::fs::read_to_string(example("rain-eastern-lowlands.csv")).unwrap();
    let rows: Vec<&str> = record.lines().skip(1).collect();
    let twenty_years_before = |row: &&str| {
        let (year, rest) = row.split_at(4);
        format!("{}{rest}", year.parse::<i32>().unwrap() - 20)
    };
    let before: Vec<String> = rows.iter().map(twenty_years_before).collect();
    project.write("rain.csv", format!("date,mm\n{}\n{}\n", before.join("\n"), rows.join("\n")));
    let window = ["rains", "rain.csv", "--from", "09-20", "--until", "12-31"];
    let onset = project.kabla(&[&window[..], &["--json"]].concat()).json()["onset"].clone();
    let number = |value: &serde_json::Value| value.as_f64().unwrap();
    let (low, high) = (number(&onset["trend_between"]["from"]), number(&onset["trend_between"]["to"]));
    // By scipy.stats.theilslopes of the 38 onsets, read from the record with numpy.
    let trend = number(&onset["trend_days_per_decade"]);
    for (found, expected) in [(trend, -0.476190476), (low, -6.666666667), (high, 3.928571429)] {
        assert!((found - expected).abs() < 1e-6, "{onset}");
    }
    assert_eq!(onset["trend_clear"], false);
    let words = project.kabla(&window).done().out;
    let trend = words.lines().find(|line| line.starts_with("Trend: ")).unwrap();
    assert!(trend.starts_with("Trend: no clear trend; "), "{trend}");
    assert!(trend.contains(&format!("with 95 % between {:.1} days earlier", low.abs())), "{trend}");
    assert!(trend.ends_with(&format!("and {high:.1} days later.")), "{trend}");
}

/// Without a window the seasons are found from the record, and said; the one with most rain counts, or the one asked for.
#[test]
fn rainy_seasons_are_found_and_said() {
    let project = Project::new();
    let record = example("rain-eastern-lowlands.csv");
    let json =
        |arguments: &[&str]| project.kabla(&[&["rains", &record, "--json"], arguments].concat()).json();
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
        let output = project.kabla(&[&["rains", &record], wrong].concat());
        assert_eq!(output.code, 2, "{wrong:?}: {}", output.err);
    }
}

/// The risk sets the dates; a step that is not done moves them; both are refused where they mean nothing.
#[test]
fn risks_and_steps_done_set_the_dates() {
    let project = Project::new();
    let plan = |name: &str, arguments: &[&str]| {
        project.kabla(&[&["plan", &example(name), "--json"], arguments].concat())
    };
    let json = |name: &str, arguments: &[&str]| plan(name, arguments).json();
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
        assert_eq!(plan(name, wrong).code, 2, "{wrong:?}");
    }
}

/// Who reads only the first lines of a plan is no failure.
#[test]
fn a_closed_pipe_is_no_failure() {
    use std::io::Read as _;
    use std::process::Stdio;
    let project = Project::new();
    let mut child = project
        .command()
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
    let project = Project::new();
    for name in ["farm.toml", "group.toml", "zone.toml", "village.toml"] {
        let plan = project.kabla(&["plan", &example(name), "--json"]).json();
        assert_eq!(plan["schema"], "kabla-plan/2");
        let words = project.kabla(&["plan", &example(name), "--today", "2027-06-01"]);
        let words = words.out.replace(&text(repository()), "");
        for step in plan["steps"].as_array().unwrap() {
            assert!(words.contains(step["from"].as_str().unwrap()), "{step}\n{words}");
        }
        insta::assert_snapshot!(format!("plan_{}", name.trim_end_matches(".toml")), words);
    }
    assert!(project.files().is_empty());
}

#[test]
fn wrong_input_is_code_2_and_leaves_nothing_behind() {
    let project = Project::new();
    let bad = project.write("bad.toml", "name = 3\nharvest = 2027-04-31\n[field]\narea_m2 = nan\n");
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
        let output = project.kabla(arguments);
        assert_eq!(output.code, 2, "{arguments:?}: {}", output.err);
        assert!(output.err.contains("hint:"), "{arguments:?}: {}", output.err);
        assert!(output.out.is_empty());
        assert_eq!(project.files(), ["bad.toml"], "{arguments:?}");
    }
    let report = project.kabla(&["plan", &bad]).err;
    for field in ["name", "harvest", "place.name", "season.rains_begin", "field.area_m2"] {
        assert!(report.contains(&format!(" {field}: ")), "{field}:\n{report}");
    }
}

/// A year too late: 285 days in sand, as counted in `plan_dates`. The harvest is named, whether a stated day or a
/// record tells the rains; the record's early onset of 16 October puts the bed on 21 August, 245 days on.
#[test]
fn a_harvest_far_from_the_rains_is_refused_with_its_line() {
    let project = Project::new();
    let record = std::fs::read_to_string(example("rain-eastern-lowlands.csv")).unwrap();
    project.write("rain-eastern-lowlands.csv", record);
    for (name, harvest, line, days) in
        [("farm.toml", "harvest = 2027-05-24", 4, 285), ("zone.toml", "harvest = 2027-06-10", 6, 245)]
    {
        let text = std::fs::read_to_string(example(name)).unwrap();
        assert!(text.contains(harvest));
        let case = project.write(name, text.replace(harvest, "harvest = 2027-12-20"));
        for arguments in [
            &["plan", &case][..],
            &["plan", &case, "--json"],
            &["sheet", &case, "--language", "sw", "--out", "x.pdf"],
            &["speak", &case, "--language", "en", "--for", "radio", "--out", "x"],
        ] {
            let told = project.kabla(arguments).ended(2).err;
            let finding = format!("{name}:{line}: harvest: The roots would lie {days} days in sand");
            assert!(told.contains(&finding), "{arguments:?}: {told}");
            assert!(told.contains("hint: Is the date of the harvest right"), "{told}");
            assert!(told.contains("keep vines growing in a small watered plot"), "{told}");
        }
    }
    assert_eq!(project.files(), ["farm.toml", "rain-eastern-lowlands.csv", "zone.toml"]);
}

#[test]
fn folders_that_cannot_be_written_are_said() {
    let project = Project::new();
    project.write("file", "in the way");
    let output = project.kabla(&["sheet", &example("farm.toml"), "--as", "text", "--out", "file/sheet.txt"]);
    assert_eq!(output.code, 1, "{}", output.err);
    assert!(output.err.contains("cannot be written"), "{}", output.err);
    assert_eq!(project.read("file"), "in the way");
}

fn speak(project: &Project, topic: &str) -> Run {
    let case = example("farm.toml");
    let at = ["speak", &case, "--language", "en", "--for", "radio", "--out", "out", "--data", "data"];
    project.kabla(&[&at[..], &["--topic", topic]].concat())
}

/// A missing or stale clip never becomes silence: refused with code 3, the
/// phrases named, no audio written.
#[test]
fn missing_and_stale_clips_are_refused() {
    let project = Project::new();
    for part in ["locales/en", "audio/en/stand-in"] {
        project.copy_to(part, &format!("data/{part}"));
    }

    // The words change: what was recorded is stale.
    let (old, new) =
        ("Push a stick into the soil beside each one.", "Push two sticks into the soil beside each one.");
    project.change("data/locales/en/spoken.ftl", old, new);
    let stale = speak(&project, "mark-plants").ended(3);
    assert!(stale.err.contains(new.trim_end_matches('.')), "{}", stale.err);
    assert!(stale.err.contains(old.trim_end_matches('.')), "the old words are named too: {}", stale.err);
    assert_eq!(project.files(), ["data"]);

    // Another topic is not touched by it.
    speak(&project, "harvest").done();

    // All of the words are missing: all of them are named at once.
    let bank = "data/audio/en/stand-in/bank.toml";
    let header = project.read(bank).split("[[clip]]").next().unwrap().to_owned();
    project.write(bank, header);
    fs::remove_dir_all(project.path("out")).unwrap();
    let missing = speak(&project, "mark-plants").ended(3);
    for phrase in ["Choose healthy sweet potato plants for seed roots", "twenty", "April", "plants."] {
        assert!(missing.err.contains(phrase), "{phrase}: {}", missing.err);
    }
    assert_eq!(project.files(), ["data"]);
}

#[test]
fn a_language_without_a_voice_is_not_spoken_by_another() {
    let project = Project::new();
    for tag in ["ha", "ny"] {
        let speak = ["speak", &example("farm.toml"), "--language", tag, "--for", "radio", "--out", "made"];
        let refused = project.kabla(&speak);
        assert_eq!(refused.code, 2);
        for words in [format!("no voice speaks {tag} yet"), format!("kabla clips script --language {tag}")] {
            assert!(refused.err.contains(&words), "{}", refused.err);
        }
        assert!(!project.has("made"));
    }
}

#[test]
fn the_script_lists_every_phrase() {
    let project = Project::new();
    for tag in ["en", "sw", "am", "ha", "pt-MZ", "fr", "ny"] {
        let output = project.kabla(&["clips", "script", "--language", tag, "--all", "--json"]).done();
        let lines: Vec<serde_json::Value> =
            output.out.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
        let pack = kabla::language::Pack::load(&Embedded, tag).unwrap();
        // Words that differ in case alone are recorded once.
        let phrases = pack.phrases().unwrap();
        let distinct = phrases.iter().map(|phrase| (phrase.words.to_lowercase(), phrase.intonation));
        assert_eq!(lines.len(), distinct.collect::<std::collections::BTreeSet<_>>().len());
        assert!(lines.iter().all(|line| line["words"].is_string() && line["intonation"].is_string()));
    }
}

/// The commands that the program's help lists: each begins two letters from the edge, and its text may go on below.
pub(crate) fn commands(help: &str) -> Vec<&str> {
    let (_, rest) = help.split_once("Commands:\n").unwrap();
    let (list, _) = rest.split_once("\n\n").unwrap();
    let names = list.lines().filter_map(|line| line.strip_prefix("  ")?.split(' ').next());
    names.filter(|name| !name.is_empty()).collect()
}

#[test]
fn help_names_every_command() {
    let project = Project::new();
    let help = project.kabla(&["--help"]).out;
    let users = ["demo", "case", "plan", "rains", "sheet", "speak", "segment", "clips", "language"];
    assert_eq!(commands(&help), [&users[..], &["completions", "man"]].concat());
    let unknown = project.kabla(&["speak", "x", "--for", "radio", "--out", "y", "--topic", "weeding"]);
    assert_eq!(unknown.code, 2);
}

/// `kabla plan` has a sheet's words in the language asked for, and the season to scale.
#[test]
fn plans_in_the_terminal_speak_each_language() {
    let project = Project::new();
    let plan = project.kabla(&["plan", &example("farm.toml"), "--json"]).json();
    let data = kabla::data::Embedded;
    let (_, case) = crate::examples().remove(0);
    let statements = kabla::guidance::tell(&case, &kabla::plan::make(&case).unwrap());
    for tag in kabla::language::Pack::tags(&data) {
        let pack = kabla::language::Pack::load(&data, &tag).unwrap();
        let arguments = ["plan", &example("farm.toml"), "--language", &tag];
        let text = Run::of(project.command().args(arguments).env("COLUMNS", "240")).done().out;
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
        assert_eq!(band.matches('+').count(), 4, "{tag}: an early check and one each month in {band}");
        assert!(band.chars().count() <= 80, "{band}");
        // Days to scale: 185 from the harvest on 24 May to the rains on 25 November, 90 from there to the first roots.
        assert_eq!(plan["rains"], "2027-11-25");
        let ratio = (rains - harvest) as f64 / (food - rains) as f64;
        assert!((ratio - 185.0 / 90.0).abs() < 0.2, "{tag}: {ratio:.2}");
        for label in [
            kabla::language::Label::SeasonStore,
            kabla::language::Label::SeasonBed,
            kabla::language::Label::SeasonField,
            kabla::language::Label::SeasonOnRains,
        ] {
            assert!(text.contains(&pack.label(label, &[]).unwrap()), "{tag}: {label:?}");
        }
    }
    let unknown = project.kabla(&["plan", &example("farm.toml"), "--language", "xx"]);
    assert_eq!(unknown.code, 2);
    assert!(unknown.err.contains("packs at hand"), "{}", unknown.err);
}

/// `kabla rains` draws each year's wet season in dekads: as many blocks as its dates span.
#[test]
fn rains_in_the_terminal_are_drawn_to_scale() {
    let project = Project::new();
    let record = example("rain-eastern-lowlands.csv");
    let window = ["rains", &record, "--from", "09-20", "--until", "12-31", "--end-from", "12-01"];
    let text = project.kabla(&window).done().out;
    let (head, rows) = text.split_once("DEKADS FROM 09-20").unwrap_or_else(|| panic!("{text}"));
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
    let project = Project::new();
    let case = example("farm.toml");
    let asked = ["speak", &case, "--language", "en", "--for", "radio", "--topic", "water-bed"];
    project.kabla(&[&asked[..], &["--out", "made"]].concat()).done();
    let sheet = project.read("made/en-water-bed.cue.txt");
    let heard: Vec<&str> = sheet
        .lines()
        .filter(|line| line.starts_with(|c: char| c.is_ascii_digit()))
        .map(|line| line.split_whitespace().next_back().unwrap())
        .collect();
    fs::remove_dir_all(project.path("made")).unwrap();
    let told = project.kabla(&[&asked[..], &["--explain", "--json"]].concat()).json();
    let clips = told[0]["clips"].as_array().unwrap();
    assert_eq!(told[0]["message"], "water-bed");
    assert_eq!(clips.iter().map(|clip| clip["clip"].as_str().unwrap()).collect::<Vec<_>>(), heard);
    assert!(clips.iter().rev().skip(1).all(|clip| clip["meets"]["roughness"].is_number()));
    assert!(clips.last().unwrap()["meets"].is_null());
    let table = project.kabla(&[&asked[..], &["--explain"]].concat()).out;
    assert!(heard.iter().all(|clip| table.contains(clip)), "{table}");
    assert!(project.files().is_empty(), "{:?}", project.files());
    // What has no clips is refused as it is when it is to be spoken.
    let refused = project.kabla(&["speak", &case, "--language", "ha", "--for", "radio", "--explain"]);
    assert_eq!(refused.code, 2);
    let stray = project.kabla(&[&asked[..], &["--json"]].concat());
    assert_eq!(stray.code, 2);
}
