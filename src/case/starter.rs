//! Cases to begin from, with a line on every field.

/// Whom a case to begin from is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Starter {
    /// A farm.
    Farm,
    /// A group of farmers.
    Group,
    /// A rain zone.
    Zone,
}

impl Starter {
    /// A case with a comment on every field that it may have. Name, place and dates are invented;
    /// what may be left out is switched off by a `#` before its name.
    ///
    /// ```
    /// use kabla::case::{self, Starter};
    ///
    /// let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    /// let read = case::read("farm.toml", Starter::Farm.text(), &no_files);
    /// let (case, findings) = read.expect("a case without mistakes");
    /// assert_eq!(case.name, "Neema's farm");
    /// assert!(findings.is_empty());
    /// ```
    pub fn text(self) -> &'static str {
        match self {
            Starter::Farm => include_str!("starters/farm.toml"),
            Starter::Group => include_str!("starters/group.toml"),
            Starter::Zone => include_str!("starters/zone.toml"),
        }
    }
}
