//! A translator's way from an empty folder to a pack that has been read.

use std::fs;
use std::path::Path;
use std::process::{Command, Output};

fn kabla(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_kabla")).current_dir(folder).args(arguments).output().unwrap()
}

fn out(output: &Output) -> String {
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn err(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).unwrap()
}

/// A folder with a copy of the Swahili pack, to be changed.
fn swahili() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    let pack = folder.path().join("locales/sw");
    fs::create_dir_all(&pack).unwrap();
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("locales/sw");
    for entry in fs::read_dir(source).unwrap() {
        let entry = entry.unwrap();
        fs::copy(entry.path(), pack.join(entry.file_name())).unwrap();
    }
    folder
}

/// How many written texts a pack wants, as a check of the program's own pack says.
fn texts() -> usize {
    let checked = out(&kabla(Path::new("."), &["language", "check", "sw"]));
    let line = checked.lines().find(|line| line.contains("written.ftl ")).unwrap();
    let (before, _) = line.split_once(" translated").unwrap();
    before.rsplit(' ').next().unwrap().parse().unwrap()
}

fn change(folder: &Path, file: &str, from: &str, to: &str) {
    let path = folder.join("locales/sw").join(file);
    let text = fs::read_to_string(&path).unwrap();
    assert!(text.contains(from), "{from}");
    fs::write(path, text.replacen(from, to, 1)).unwrap();
}

fn check(folder: &Path) -> String {
    out(&kabla(folder, &["language", "check", "sw", "--data", "."]))
}

#[test]
fn a_new_pack_has_every_text_with_its_help_and_is_not_begun_twice() {
    let folder = tempfile::tempdir().unwrap();
    out(&kabla(folder.path(), &["language", "new", "om", "--data", "mine"]));
    let pack = folder.path().join("mine/locales/om");
    let written = fs::read_to_string(pack.join("written.ftl")).unwrap();
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
    let checked = out(&kabla(folder.path(), &["language", "check", "om", "--data", "mine"]));
    assert!(checked.contains("is still the English text"), "{checked}");
    assert!(
        !checked.contains("error:"),
        "a new pack has nothing wrong but what is not translated: {checked}"
    );
    assert!(checked.contains("the form cardinal has no words for 0"), "{checked}");
    // How to write a doubt is told at the head of each file; that is none.
    assert!(written.contains("# doubt:") && !checked.contains("for a reviewer"), "{checked}");
    fs::write(pack.join("written.ftl"), format!("{written}\n# doubt: which word\n")).unwrap();
    let checked = out(&kabla(folder.path(), &["language", "check", "om", "--data", "mine"]));
    let line = written.lines().count() + 2;
    assert!(checked.contains(&format!("written.ftl:{line}: which word")), "{checked}");
    let again = kabla(folder.path(), &["language", "new", "om", "--data", "mine"]);
    assert_eq!(again.status.code(), Some(2));
    assert!(err(&again).contains("is there already"), "{}", err(&again));
    let wrong = kabla(folder.path(), &["language", "new", "pt_mz", "--data", "mine"]);
    assert!(err(&wrong).contains("pt-MZ"), "{}", err(&wrong));
}

/// Months and weekdays of a new pack are there already where CLDR has them, in both calendars; elsewhere they are to be
/// translated like any other text. Either way there is no name of another language.
#[test]
fn a_new_pack_has_the_names_of_cldr() {
    let folder = tempfile::tempdir().unwrap();
    let made = |tag: &str| {
        out(&kabla(folder.path(), &["language", "new", tag, "--data", "mine"]));
        let pack = folder.path().join("mine/locales").join(tag);
        let text = |file: &str| fs::read_to_string(pack.join(file)).unwrap();
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
    let refused = kabla(folder.path(), &day);
    assert!(!refused.status.success(), "a pack without number words says no day");
    assert!(
        err(&refused).contains("zu: DAY: the rules of the form `day` have no words for 24"),
        "{}",
        err(&refused)
    );
    let (written, spoken) = made("tum");
    for text in [written, spoken] {
        assert!(text.contains("\nmonth = { $month ->\n") && text.contains("    [1] January\n"), "{text}");
    }
    let report = out(&kabla(folder.path(), &["language", "check", "tum", "--data", "mine"]));
    assert!(report.contains("month: is still the English text"), "{report}");
}

/// Names of a pack's own are told beside those of CLDR.
#[test]
fn names_of_a_packs_own_are_remarked() {
    let folder = swahili();
    change(
        folder.path(),
        "written.ftl",
        "date-short =",
        "weekday = { $weekday ->\n    [1] Juma tatu\n    [2] Jumanne\n    [3] Jumatano\n    [4] Alhamisi\n    [5] Ijumaa\n    [6] Jumamosi\n   *[7] Jumapili\n }\ndate-short =",
    );
    let report = check(folder.path());
    assert!(report.contains("weekday: the pack's own names: Juma tatu (CLDR: Jumatatu)\n"), "{report}");
    assert!(!check(swahili().path()).contains("own names"));
}

/// One mistake of each kind, and all are told at once, each with its line.
#[test]
fn a_check_tells_all_that_is_wrong_at_once() {
    let folder = swahili();
    let path = folder.path();
    change(path, "written.ftl", "sheet-place = Mahali", "sheet-place = Place");
    change(path, "written.ftl", "sheet-harvest = Kuvuna", "sheet-harvest = { $rotes } Kuvuna");
    change(path, "written.ftl", "[zone] Mpango", "[village] Mpango");
    change(path, "written.ftl", "sheet-when = Lini", "sheet-when = Lini 汉");
    change(path, "written.ftl", "sheet-amounts = ", "sheet-unused = Bure\nsheet-amounts = ");
    change(path, "spoken.ftl", "caution-virus = ", "caution-virus = Tumia kg kadhaa. ");
    change(
        path,
        "spoken.ftl",
        "caution-store-dry = ",
        &format!("caution-store-dry = {}. ", "neno ".repeat(40).trim()),
    );
    change(path, "numbers.rbnf", "40: arobaini[ na >>];", "40: =#,##0=;");
    let report = check(path);
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
    let unharmed = out(&kabla(path, &["language", "check", "sw"]));
    assert!(!unharmed.contains("warning:") && !unharmed.contains("error:"), "{unharmed}");
}

/// A review holds for the words that were read, and for no others; a text is old once its source has changed.
#[test]
fn reviews_and_sources_are_remembered() {
    let folder = swahili();
    let path = folder.path();
    out(&kabla(path, &["language", "keep", "sw", "--data", "."]));
    assert!(check(path).contains("0 reviewed"));
    let review = ["language", "review", "sw", "--data", ".", "--role", "agronomist", "--on", "2026-11-25"];
    out(&kabla(path, &review));
    let report = check(path);
    assert!(report.contains(&format!("{0} of {0} translated, {0} reviewed", texts())), "{report}");
    assert!(report.contains("read by agronomist, last on 2026-11-25"), "{report}");
    change(path, "written.ftl", "sheet-place = Mahali", "sheet-place = Sehemu");
    let report = check(path);
    assert!(report.contains("sheet-place: the text has changed since it was reviewed"), "{report}");
    assert!(
        report.contains(&format!("{0} of {0} translated, {1} reviewed", texts(), texts() - 1)),
        "{report}"
    );
    out(&kabla(
        path,
        &[
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
        ],
    ));
    let list = out(&kabla(path, &["language", "list", "--data", "."]));
    assert!(list.contains("agronomist 2026-11-25, teacher 2026-11-26"), "{list}");
    // Another English text: the folder's own goes before the program's.
    let english = path.join("locales/en");
    fs::create_dir_all(&english).unwrap();
    for entry in fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("locales/en")).unwrap() {
        let entry = entry.unwrap();
        let text = fs::read_to_string(entry.path()).unwrap();
        fs::write(
            english.join(entry.file_name()),
            text.replace("sheet-place = Place", "sheet-place = Village"),
        )
        .unwrap();
    }
    let report = check(path);
    assert!(
        report.contains("sheet-place: the English text has changed since this was translated"),
        "{report}"
    );
    assert!(report.contains(&format!("{} of {} translated", texts() - 1, texts())), "{report}");
    out(&kabla(path, &["language", "keep", "sw", "--data", "."]));
    assert!(!check(path).contains("has changed since this was translated"));
}

/// Nobody can have read a translation that is not there.
#[test]
fn a_review_leaves_out_what_is_not_translated() {
    let folder = swahili();
    let path = folder.path();
    change(path, "written.ftl", "sheet-place = Mahali", "sheet-place = Place");
    let review = ["language", "review", "sw", "--data", ".", "--role", "teacher", "--on", "2026-11-25"];
    out(&kabla(path, &review));
    let report = check(path);
    assert!(
        report.contains(&format!("{1} of {0} translated, {1} reviewed", texts(), texts() - 1)),
        "{report}"
    );
    let memory = fs::read_to_string(path.join("locales/sw/review.toml")).unwrap();
    let named = kabla(path, &[&review[..], &["--text", "sheet-place", "--text", "sheet-for"]].concat());
    assert_eq!(named.status.code(), Some(2), "{}", err(&named));
    assert!(err(&named).contains("sheet-place is still the English text"), "{}", err(&named));
    assert_eq!(fs::read_to_string(path.join("locales/sw/review.toml")).unwrap(), memory);
}

/// What a pack cannot say yet is its translator's to mend, and is told as such.
#[test]
fn a_pack_without_number_words_says_what_to_do() {
    let folder = tempfile::tempdir().unwrap();
    out(&kabla(folder.path(), &["language", "new", "om", "--data", "."]));
    let day = ["language", "date", "2027-05-24", "--language", "om", "--data", "."];
    let output = kabla(folder.path(), &day);
    assert_eq!(output.status.code(), Some(2), "{}", err(&output));
    for wanted in ["`day` have no words for 24", "hint: kabla language check om"] {
        assert!(err(&output).contains(wanted), "{}", err(&output));
    }
}

#[test]
fn what_cannot_be_done_is_said() {
    let folder = swahili();
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
        let output = kabla(folder.path(), arguments);
        assert_eq!(output.status.code(), Some(code), "{arguments:?}: {}", err(&output));
        assert!(err(&output).contains(wanted), "{arguments:?}: {}", err(&output));
    }
}

/// Every pack that comes with the program is complete and has no finding; none claims a reader it has not had.
#[test]
fn the_programs_packs_are_whole_drafts() {
    let list = out(&kabla(Path::new("."), &["language", "list"]));
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
    let checked = out(&kabla(Path::new("."), &["language", "check"]));
    assert!(!checked.contains("error:") && !checked.contains("warning:"), "{checked}");
}

/// Days of packs with their own calendars and orders, as their files say them.
#[test]
fn days_in_words() {
    let day = |tag: &str| out(&kabla(Path::new("."), &["language", "date", "2027-05-24", "--language", tag]));
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
