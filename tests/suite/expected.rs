//! Values from outside, read from `tests/expected/<source>/`.

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;

/// Rows of a table, by column name.
pub(crate) fn rows(source: &str, file: &str) -> Vec<BTreeMap<String, String>> {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/expected").join(source);
    let text = fs::read_to_string(folder.join(file)).unwrap();
    let mut lines = text.lines();
    let header: Vec<&str> = lines.next().unwrap().split(',').collect();
    let rows: Vec<_> = lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            assert_eq!(cells.len(), header.len(), "{source}/{file}: {line}");
            header.iter().zip(cells).map(|(name, cell)| ((*name).to_owned(), cell.to_owned())).collect()
        })
        .collect();
    assert!(!rows.is_empty(), "{source}/{file} has no rows, and would prove nothing");
    rows
}

/// Every folder of expected values says where they come from, and some test reads it.
#[test]
fn every_source_is_named_and_read() {
    let tests = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests");
    let folder = tests.join("expected");
    let suite: String = fs::read_dir(tests.join("suite"))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "rs"))
        .flat_map(|path| fs::read_to_string(path).unwrap().lines().map(str::to_owned).collect::<Vec<_>>())
        // A comment reads nothing.
        .filter(|line| !line.trim_start().starts_with("//"))
        .map(|line| line + "\n")
        .collect();
    let mut sources = 0;
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let source = fs::read_to_string(path.join("SOURCE.toml"))
            .unwrap_or_else(|_| panic!("{} has no SOURCE.toml", path.display()));
        let source: toml::Table = source.parse().unwrap();
        for key in ["title", "edition", "licence", "obtained", "tolerance", "why"] {
            assert!(source.contains_key(key), "{}: {key} is missing", path.display());
        }
        let name = path.file_name().unwrap().to_str().unwrap();
        let is_fixture = fs::read_dir(&path).unwrap().count() > 1;
        let read = [format!("\"{name}\""), format!("{name}/")].iter().any(|name| suite.contains(name));
        assert!(read || !is_fixture, "no test reads {name}");
        sources += 1;
    }
    assert!(sources >= 5, "only {sources} sources");
}
