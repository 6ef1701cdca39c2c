//! The codes of findings.

use std::collections::BTreeSet;

use kabla::finding::Code;

#[test]
fn each_code_has_a_name_and_a_meaning_of_its_own() {
    let names: BTreeSet<&str> = Code::ALL.iter().map(|(code, _)| code.name()).collect();
    let meanings: BTreeSet<&str> = Code::ALL.iter().map(|(_, meaning)| *meaning).collect();
    assert_eq!(names.len(), Code::ALL.len(), "two codes share a name");
    assert_eq!(meanings.len(), Code::ALL.len(), "two codes share a meaning");
    for (code, meaning) in Code::ALL {
        let name = code.name();
        let is_plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
        assert!(name.chars().all(is_plain) && !name.starts_with('-') && !name.ends_with('-'), "{name}");
        assert!(meaning.starts_with(char::is_uppercase) && meaning.ends_with('.'), "{name}: {meaning}");
    }
}

#[test]
fn the_document_lists_each_code() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    let document = std::fs::read_to_string(root.join("docs/json.md")).unwrap();
    let section = document.split("## Codes of findings").nth(1).unwrap();
    let rows: Vec<&str> = section.lines().filter(|line| line.starts_with("| `")).collect();
    let told = |(code, meaning): &(Code, &str)| format!("| `{}` | {meaning} |", code.name());
    let expected: Vec<String> = Code::ALL.iter().map(told).collect();
    assert_eq!(rows, expected, "docs/json.md and src/finding.rs differ");
}

/// A code that nothing has would be told of in vain.
#[test]
fn each_code_is_used() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let code: String = crate::layering::sources(&root)
        .iter()
        .filter(|path| !path.ends_with("src/finding.rs"))
        .map(|path| std::fs::read_to_string(path).unwrap())
        .collect();
    let unused: Vec<&str> = Code::ALL
        .iter()
        .map(|(code, _)| code.name())
        .filter(|name| !code.contains(&format!("Code::{},", name.to_uppercase().replace('-', "_"))))
        .collect();
    assert!(unused.is_empty(), "no finding has the codes {unused:?}");
}

/// Mistakes of a case, each made by hand, with the code that a program would act on.
#[test]
fn mistakes_of_a_case_have_their_codes() {
    let farm = kabla::case::Starter::Farm.text();
    for (right, wrong, code) in [
        ("area_m2 = 450", "aera_m2 = 450", "unknown-field"),
        ("name = \"Neema's farm\"", "", "missing-field"),
        ("harvest = 2027-05-24", "harvest = \"2027-02-30\"", "not-a-date"),
        ("harvest = 2027-05-24", "harvest = 5", "wrong-type"),
        ("latitude = -6.2", "latitude = -96.2", "out-of-range"),
        ("kind = \"farm\"", "kind = \"village\"", "unknown-name"),
        ("area_m2 = 450", "area_m2 = 450\nlength_m = 3\nwidth_m = 2", "conflict"),
        ("area_m2 = 450", "area_m2 = [", "syntax"),
        ("rains_begin = \"11-25\"", "rainfall_record = \"rain.csv\"", "cannot-read"),
        ("rains_begin = \"11-25\"", "rains_begin = \"11-25\"\nrule = \"dekad\"", "no-use"),
    ] {
        assert!(farm.contains(right), "the case has no line {right}");
        let text = farm.replacen(right, wrong, 1);
        let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
        let findings = kabla::case::read("farm.toml", &text, &no_files).unwrap_err();
        let codes: Vec<&str> = findings.iter().map(|finding| finding.code.name()).collect();
        assert!(codes.contains(&code), "{wrong}: {codes:?}");
    }
}

#[test]
fn a_finding_in_json_tells_its_code() {
    let finding = kabla::finding::Finding::warning(Code::GAP, "3 days have no row").line(7);
    assert_eq!(
        serde_json::to_value(finding).unwrap(),
        serde_json::json!({
            "code": "gap", "severity": "warning", "place": {"line": 7}, "message": "3 days have no row"
        })
    );
}
