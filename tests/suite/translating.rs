//! A translator's way from an empty folder to a pack that has been read.

use crate::project::Project;

/// A project with a copy of the Swahili pack, to be changed.
fn swahili() -> Project {
    let project = Project::new();
    project.copy("locales/sw");
    project
}

/// How many written texts a pack wants, as a check of the program's own pack says.
fn texts() -> usize {
    let checked = Project::new().kabla(&["language", "check", "sw"]).done().out;
    let line = checked.lines().find(|line| line.contains("written.ftl ")).unwrap();
    let (before, _) = line.split_once(" translated").unwrap();
    before.rsplit(' ').next().unwrap().parse().unwrap()
}

fn change(project: &Project, file: &str, from: &str, to: &str) {
    project.change(&format!("locales/sw/{file}"), from, to);
}

fn check(project: &Project) -> String {
    project.kabla(&["language", "check", "sw", "--data", "."]).done().out
}

#[test]
fn a_new_pack_has_every_text_with_its_help_and_is_not_begun_twice() {
    let project = Project::new();
    project.kabla(&["language", "new", "om", "--data", "mine"]).done();
    let written = project.read("mine/locales/om/written.ftl");
    for wanted in [
        "# en: ",
        "# sw: ",
        "$plants: plants to mark, e.g. 25",
        "at most 160 letters",
        "mark-plants = ",
        ".sms = ",
    ] {
        assert!(written.contains(wanted), "{wanted}");
    }
    let checked = project.kabla(&["language", "check", "om", "--data", "mine"]).done().out;
    assert!(checked.contains("is still the English text"), "{checked}");
    assert!(
        !checked.contains("error:"),
        "a new pack has nothing wrong but what is not translated: {checked}"
    );
    assert!(checked.contains("the form cardinal has no words for 0"), "{checked}");
    // How to write a doubt is told at the head of each file; that is none.
    assert!(written.contains("# doubt:") && !checked.contains("for a reviewer"), "{checked}");
    project.write("mine/locales/om/written.ftl", format!("{written}\n# doubt: which word\n"));
    let checked = project.kabla(&["language", "check", "om", "--data", "mine"]).done().out;
    let line = written.lines().count() + 2;
    assert!(checked.contains(&format!("written.ftl:{line}: which word")), "{checked}");
    let again = project.kabla(&["language", "new", "om", "--data", "mine"]);
    assert_eq!(again.code, 2);
    assert!(again.err.contains("is there already"), "{}", again.err);
    let wrong = project.kabla(&["language", "new", "pt_mz", "--data", "mine"]);
    assert!(wrong.err.contains("pt-MZ"), "{}", wrong.err);
}

/// Months and weekdays of a new pack are there already where CLDR has them, in both calendars; elsewhere they are to be
/// translated like any other text. Either way there is no name of another language.
#[test]
fn a_new_pack_has_the_names_of_cldr() {
    let project = Project::new();
    let made = |tag: &str| {
        project.kabla(&["language", "new", tag, "--data", "mine"]).done();
        let text = |file: &str| project.read(&format!("mine/locales/{tag}/{file}"));
        (text("written.ftl"), text("spoken.ftl"))
    };
    let mut names = 0;
    let mut packs: std::collections::BTreeMap<String, (String, String)> = Default::default();
    for row in crate::expected::rows("cldr-calendar", "cases.csv") {
        if row["new"] != "yes" {
            continue;
        }
        let tag = row["tag"].clone();
        let (written, spoken) = packs.entry(tag.clone()).or_insert_with(|| made(&tag));
        let line = format!("[{}] {}\n", row["number"], row["in_date"]);
        let list = row["what"].replace('_', "-");
        for (file, text) in [("written.ftl", written), ("spoken.ftl", spoken)] {
            let list = text
                .split_once(&format!("\n# {list} = {{"))
                .unwrap_or_else(|| panic!("{tag} {file} {list}"))
                .1;
            let list = list.split_once("\n#  }").unwrap().0.to_owned() + "\n";
            assert!(list.contains(&line), "{tag} {file}: {line}{list}");
        }
        names += 1;
    }
    assert_eq!((packs.len(), names), (20, 20 * 19 + 3 * 13));
    let day = ["language", "date", "2027-08-24", "--data", "mine", "--language", "zu"];
    let refused = project.kabla(&day);
    assert_eq!(refused.code, 2, "a pack without number words says no day");
    assert!(
        refused.err.contains("zu: DAY: the rules of the form `day` have no words for 24"),
        "{}",
        refused.err
    );
    let (written, spoken) = made("tum");
    for text in [written, spoken] {
        assert!(text.contains("\nmonth = { $month ->\n") && text.contains("    [1] January\n"), "{text}");
    }
    let report = project.kabla(&["language", "check", "tum", "--data", "mine"]).done().out;
    assert!(report.contains("month: is still the English text"), "{report}");
}

/// Names of a pack's own are told beside those of CLDR.
#[test]
fn names_of_a_packs_own_are_remarked() {
    let project = swahili();
    change(
        &project,
        "written.ftl",
        "date-short =",
        "weekday = { $weekday ->\n    [1] Juma tatu\n    [2] Jumanne\n    [3] Jumatano\n    [4] Alhamisi\n    [5] Ijumaa\n    [6] Jumamosi\n   *[7] Jumapili\n }\ndate-short =",
    );
    let report = check(&project);
    assert!(report.contains("weekday: the pack's own names: Juma tatu (CLDR: Jumatatu)\n"), "{report}");
    assert!(!check(&swahili()).contains("own names"));
}

/// One mistake of each kind, and all are told at once, each with its line.
#[test]
fn a_check_tells_all_that_is_wrong_at_once() {
    let project = swahili();
    change(&project, "written.ftl", "sheet-place = Mahali", "sheet-place = Place");
    change(&project, "written.ftl", "sheet-harvest = Kuvuna", "sheet-harvest = { $rotes } Kuvuna");
    change(&project, "written.ftl", "[zone] Mpango", "[village] Mpango");
    change(&project, "written.ftl", "sheet-when = Lini", "sheet-when = Lini 汉");
    change(&project, "written.ftl", "sheet-amounts = ", "sheet-unused = Bure\nsheet-amounts = ");
    change(&project, "spoken.ftl", "caution-virus = ", "caution-virus = Tumia kg kadhaa. ");
    change(
        &project,
        "spoken.ftl",
        "caution-store-dry = ",
        &format!("caution-store-dry = {}. ", "neno ".repeat(40).trim()),
    );
    change(&project, "numbers.rbnf", "40: arobaini[ na >>];", "40: =#,##0=;");
    let report = check(&project);
    for wanted in [
        "sheet-place: is still the English text",
        "$rotes is not a value",
        "the variant [village] of $kind is never chosen",
        "no font has 汉",
        "sheet-unused: nothing uses this message",
        "\"kg\" looks like an abbreviation",
        "a sentence has about 40 words",
        "the form cardinal has no words for 40",
    ] {
        assert!(report.contains(wanted), "{wanted}\n{report}");
    }
    assert!(report.contains(&format!("{} of {} translated", texts() - 1, texts())), "{report}");
    let unharmed = project.kabla(&["language", "check", "sw"]).done().out;
    assert!(!unharmed.contains("warning:") && !unharmed.contains("error:"), "{unharmed}");
}

/// A review holds for the words that were read, and for no others; a text is old once its source has changed.
#[test]
fn reviews_and_sources_are_remembered() {
    let project = swahili();
    project.kabla(&["language", "keep", "sw", "--data", "."]).done();
    assert!(check(&project).contains("0 reviewed"));
    let review = ["language", "review", "sw", "--data", ".", "--role", "agronomist", "--on", "2026-11-25"];
    project.kabla(&review).done();
    let report = check(&project);
    assert!(report.contains(&format!("{0} of {0} translated, {0} reviewed", texts())), "{report}");
    assert!(report.contains("read by agronomist, last on 2026-11-25"), "{report}");
    change(&project, "written.ftl", "sheet-place = Mahali", "sheet-place = Sehemu");
    let report = check(&project);
    assert!(report.contains("sheet-place: the text has changed since it was reviewed"), "{report}");
    assert!(
        report.contains(&format!("{0} of {0} translated, {1} reviewed", texts(), texts() - 1)),
        "{report}"
    );
    project
        .kabla(&[
            "language",
            "review",
            "sw",
            "--data",
            ".",
            "--role",
            "teacher",
            "--on",
            "2026-11-26",
            "--text",
            "sheet-place",
        ])
        .done();
    let list = project.kabla(&["language", "list", "--data", "."]).done().out;
    assert!(list.contains("agronomist 2026-11-25, teacher 2026-11-26"), "{list}");
    // Another English text: the folder's own goes before the program's.
    project.copy("locales/en");
    project.change("locales/en/written.ftl", "sheet-place = Place", "sheet-place = Village");
    let report = check(&project);
    assert!(
        report.contains("sheet-place: the English text has changed since this was translated"),
        "{report}"
    );
    assert!(report.contains(&format!("{} of {} translated", texts() - 1, texts())), "{report}");
    project.kabla(&["language", "keep", "sw", "--data", "."]).done();
    assert!(!check(&project).contains("has changed since this was translated"));
}

/// Nobody can have read a translation that is not there.
#[test]
fn a_review_leaves_out_what_is_not_translated() {
    let project = swahili();
    change(&project, "written.ftl", "sheet-place = Mahali", "sheet-place = Place");
    let review = ["language", "review", "sw", "--data", ".", "--role", "teacher", "--on", "2026-11-25"];
    project.kabla(&review).done();
    let report = check(&project);
    assert!(
        report.contains(&format!("{1} of {0} translated, {1} reviewed", texts(), texts() - 1)),
        "{report}"
    );
    let memory = project.read("locales/sw/review.toml");
    let named = project.kabla(&[&review[..], &["--text", "sheet-place", "--text", "sheet-for"]].concat());
    assert_eq!(named.code, 2, "{}", named.err);
    assert!(named.err.contains("sheet-place is still the English text"), "{}", named.err);
    assert_eq!(project.read("locales/sw/review.toml"), memory);
}

/// What a pack cannot say yet is its translator's to mend, and is told as such.
#[test]
fn a_pack_without_number_words_says_what_to_do() {
    let project = Project::new();
    project.kabla(&["language", "new", "om", "--data", "."]).done();
    let day = ["language", "date", "2027-05-24", "--language", "om", "--data", "."];
    let output = project.kabla(&day);
    assert_eq!(output.code, 2, "{}", output.err);
    for wanted in ["`day` have no words for 24", "hint: kabla language check om"] {
        assert!(output.err.contains(wanted), "{}", output.err);
    }
}

#[test]
fn what_cannot_be_done_is_said() {
    let project = swahili();
    for (arguments, code, wanted) in [
        (&["language", "check", "xx"][..], 2, "there is no pack xx"),
        (&["language", "keep", "en", "--data", "."], 2, "is not there"),
        (
            &["language", "review", "sw", "--data", ".", "--role", "a", "--text", "nothing"],
            2,
            "nothing is not a text of sw",
        ),
        (&["language", "review", "sw", "--data", ".", "--role", "\"x\""], 2, "plain words"),
        (&["language", "date", "2027-02-30", "--language", "sw"], 2, "2027-02-30"),
        (&["language", "date", "2027-02-28", "--language", "xx"], 2, "xx"),
    ] {
        let output = project.kabla(arguments);
        assert_eq!(output.code, code, "{arguments:?}: {}", output.err);
        assert!(output.err.contains(wanted), "{arguments:?}: {}", output.err);
    }
}

/// Every pack that comes with the program is complete and has no finding; none claims a reader it has not had.
#[test]
fn the_programs_packs_are_whole_drafts() {
    let list = Project::new().kabla(&["language", "list"]).done().out;
    let (rows, silent): (Vec<&str>, Vec<&str>) =
        list.lines().skip(1).partition(|line| !line.contains("no voice speaks it yet"));
    assert_eq!(rows.len(), 7, "{list}");
    let tags = |lines: &[&str]| lines.iter().map(|line| line[..2].to_owned()).collect::<Vec<_>>();
    assert_eq!(tags(&silent), ["ha", "ny"], "{list}");
    for row in &rows {
        let (recorded, all) = row.split_whitespace().find_map(|cell| cell.split_once('/')).unwrap();
        assert_eq!(
            recorded == all,
            !["ha", "ny"].contains(&&row[..2]),
            "a voice is whole or there is none: {row}"
        );
    }
    for row in rows {
        assert!(row.contains("draft") && row.matches("100 %").count() == 2 && row.ends_with('–'), "{row}");
    }
    let checked = Project::new().kabla(&["language", "check"]).done().out;
    assert!(!checked.contains("error:") && !checked.contains("warning:"), "{checked}");
}

/// Days of packs with their own calendars and orders, as their files say them.
#[test]
fn days_in_words() {
    let day =
        |tag: &str| Project::new().kabla(&["language", "date", "2027-05-24", "--language", tag]).done().out;
    assert!(day("am").contains("ግንቦት 16 ቀን 2019"), "{}", day("am"));
    assert!(
        day("sw").contains("tarehe ishirini na nne Mei") && day("sw").contains("wiki ya nne"),
        "{}",
        day("sw")
    );
    assert!(
        day("en").contains("Monday, 24 May 2027") && day("en").contains("the twenty-fourth of May"),
        "{}",
        day("en")
    );
}
