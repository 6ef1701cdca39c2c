//! What a case must say, and the files that it names.

use std::io;

use crate::finding::Code;
use crate::toml_reader::TomlTable;

/// Reads files that a case names, relative to the case.
pub type Open<'a> = &'a dyn Fn(&str) -> io::Result<Vec<u8>>;

/// Reports a field that is absent; a field that is there but wrong has been reported.
pub(super) fn required<T>(
    table: &TomlTable<'_>,
    key: &'static str,
    hint: &str,
    value: Option<T>,
) -> Option<T> {
    required_if(true, table, key, hint, value)
}

pub(super) fn required_if<T>(
    wanted: bool,
    table: &TomlTable<'_>,
    key: &'static str,
    hint: &str,
    value: Option<T>,
) -> Option<T> {
    if wanted && value.is_none() && !table.has(key) {
        table.missing(key, hint);
    }
    value
}

/// The bytes of a file that a field names.
pub(super) fn open_named(
    table: &TomlTable<'_>,
    key: &'static str,
    path: &str,
    open: Open<'_>,
) -> Option<Vec<u8>> {
    match open(path) {
        Ok(bytes) => Some(bytes),
        Err(error) => {
            table.problem(
                Code::CANNOT_READ,
                key,
                format!("{path} cannot be read: {error}"),
                "name the file relative to the case",
            );
            None
        }
    }
}
