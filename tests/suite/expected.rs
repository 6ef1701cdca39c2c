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
    lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            assert_eq!(cells.len(), header.len(), "{source}/{file}: {line}");
            header.iter().zip(cells).map(|(name, cell)| ((*name).to_owned(), cell.to_owned())).collect()
        })
        .collect()
}

/// Every folder of expected values says where they come from.
#[test]
fn every_source_is_named() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/expected");
    let mut sources = 0;
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let source = fs::read_to_string(path.join("SOURCE.toml"))
            .unwrap_or_else(|_| panic!("{} has no SOURCE.toml", path.display()));
        let source: toml::Table = source.parse().unwrap();
        for key in ["title", "edition", "licence", "obtained", "tolerance", "why"] {
            assert!(source.contains_key(key), "{}: {key} is missing", path.display());
        }
        sources += 1;
    }
    assert!(sources >= 5, "only {sources} sources");
}
