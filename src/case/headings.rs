//! What the headings of a daily record name.
//!
//! People write `mm`, `Rain (mm)`, `Daily rainfall [mm/day]` or `Date (dd/mm/yyyy)`. A heading is understood
//! word by word; a unit that it names has to be the one that is read.

/// How dates with the year last are read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateLayout {
    /// 30/4/2019
    DayFirst,
    /// 4/30/2019
    MonthFirst,
}

/// Names and units by which a column tells what was measured.
#[derive(Clone, Copy)]
pub(super) struct Headings {
    /// Names, in small letters, their words parted by spaces.
    pub(super) names: &'static [&'static str],
    /// Units, of one word each.
    pub(super) units: &'static [&'static str],
    /// Whether a unit alone is a name.
    pub(super) unit_alone: bool,
}

impl Headings {
    /// Whether a heading names it.
    pub(super) fn name(&self, heading: &str) -> bool {
        let words = words(heading);
        let rest = |after: &[String]| self.is_rest(after);
        let plain = words.strip_prefix(&["daily".to_owned()]).unwrap_or(&words);
        let named = |name: &&str| {
            let name: Vec<String> = name.split(' ').map(str::to_owned).collect();
            plain.strip_prefix(name.as_slice()).is_some_and(rest)
        };
        self.names.iter().any(named) || (self.unit_alone && !words.is_empty() && self.is_unit(&words))
    }

    /// What may follow the name: `total` or `amount`, and the unit.
    fn is_rest(&self, words: &[String]) -> bool {
        let words = match words.split_first() {
            Some((word, rest)) if matches!(word.as_str(), "total" | "amount") => rest,
            _ => words,
        };
        match words.split_first() {
            None => true,
            Some((word, rest)) if word == "in" => self.is_unit(rest),
            Some(_) => self.is_unit(words),
        }
    }

    /// A unit, and that it is one a day: `mm`, `mm/day`, `mm d-1`.
    fn is_unit(&self, words: &[String]) -> bool {
        let Some((unit, rest)) = words.split_first() else { return false };
        let rest: Vec<&str> = rest.iter().map(String::as_str).collect();
        let a_day = matches!(rest.as_slice(), [] | ["per", "day"] | ["day" | "d"] | ["day" | "d", "1"]);
        self.units.contains(&unit.as_str()) && a_day
    }
}

/// Whether a heading names a date, and the layout where it tells one with the year last.
pub(super) fn date(heading: &str) -> Option<Option<DateLayout>> {
    let words = words(heading);
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let layout = match words.as_slice() {
        ["date", layout @ ..] | ["day", "date", layout @ ..] => layout,
        layout @ [_, _, _] => layout,
        _ => return None,
    };
    let parts: Vec<char> = layout.iter().map_while(|word| part_of_date(word)).collect();
    match (layout.len(), parts.as_slice()) {
        (0, _) | (3, ['y', 'm', 'd']) => Some(None),
        (3, ['d', 'm', 'y']) => Some(Some(DateLayout::DayFirst)),
        (3, ['m', 'd', 'y']) => Some(Some(DateLayout::MonthFirst)),
        _ => None,
    }
}

/// Year, month or day.
fn part_of_date(word: &str) -> Option<char> {
    match word {
        "y" | "yy" | "yyyy" | "year" => Some('y'),
        "m" | "mm" | "month" => Some('m'),
        "d" | "dd" | "day" => Some('d'),
        _ => None,
    }
}

/// Whether a heading is this one word.
pub(super) fn is(heading: &str, word: &str) -> bool {
    words(heading) == [word]
}

/// The words of a heading in small letters; all but letters and digits parts them.
fn words(heading: &str) -> Vec<String> {
    // A degree sign is often typed as the ordinal sign, which is a letter.
    let parts = heading.split(|letter: char| !letter.is_alphanumeric() || letter == 'º');
    parts.filter(|word| !word.is_empty()).map(str::to_lowercase).collect()
}
