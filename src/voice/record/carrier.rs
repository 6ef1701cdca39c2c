//! The sentence in which a phrase is thought while it is recorded.
//!
//! It is a real one: what the language pack makes of a statement. First the
//! statements that are given are tried; for phrases that none of them says,
//! one value of a statement after the other is changed.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;

use super::super::spelling::{key, part_marks};
use crate::guidance::{Statement, Subject, Value, ValueInfo, ValueKind};
use crate::language::{Intonation, Pack, Pause, Phrase, Piece, WordingError, Words};

/// What stands around a phrase in a sentence.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Carrier {
    /// The words before it; empty where it begins the sentence.
    pub before: String,
    /// Marks and words after it. Words stand after a space, marks join on.
    pub after: String,
    /// The words of the sentence, for choosing the shortest.
    length: usize,
}

impl Carrier {
    /// Whether the phrase is the whole sentence.
    pub fn is_whole(&self) -> bool {
        self.before.is_empty() && !self.after.chars().any(char::is_alphabetic)
    }
}

/// The sentences for phrases of a pack.
#[derive(Debug, Clone, Default)]
pub struct Carriers {
    found: BTreeMap<(String, Intonation), Carrier>,
}

impl Carriers {
    /// The shortest sentence for each of `phrases` that `statements` say, with the ending it asks for.
    ///
    /// # Errors
    /// A statement that cannot be said.
    pub fn among(
        pack: &Pack,
        statements: &[Statement],
        phrases: &[Phrase],
    ) -> Result<Carriers, WordingError> {
        let mut search = Search::new(pack, phrases);
        search.given(statements)?;
        Ok(Carriers { found: search.found })
    }

    /// As [`Carriers::among`]; what `statements` do not say is looked for in what changing their values makes
    /// of them.
    ///
    /// # Errors
    /// A statement that cannot be said as it is.
    pub fn find(pack: &Pack, statements: &[Statement], phrases: &[Phrase]) -> Result<Carriers, WordingError> {
        let mut search = Search::new(pack, phrases);
        let mut told = search.given(statements)?;
        search.rename(&mut told, &names_of(statements));
        for (statement, pieces) in &told {
            search.vary(statement, pieces);
        }
        Ok(Carriers { found: search.found })
    }

    /// The sentence of a phrase; `None` where no statement says it so.
    pub fn of(&self, phrase: &Phrase) -> Option<&Carrier> {
        self.found.get(&(key(&phrase.words), phrase.intonation))
    }
}

struct Search<'a> {
    pack: &'a Pack,
    /// Phrases that have no sentence yet.
    wanted: BTreeSet<(String, Intonation)>,
    found: BTreeMap<(String, Intonation), Carrier>,
}

/// A statement and what is said of it.
type Told = (Statement, Vec<Piece>);

impl<'a> Search<'a> {
    fn new(pack: &'a Pack, phrases: &[Phrase]) -> Search<'a> {
        let wanted = phrases.iter().map(|phrase| (key(&phrase.words), phrase.intonation)).collect();
        Search { pack, wanted, found: BTreeMap::new() }
    }

    /// Tries the statements as they are. Of those that differ only in numbers and days the first is given back: one
    /// will do for changes.
    fn given(&mut self, statements: &[Statement]) -> Result<Vec<Told>, WordingError> {
        let mut told: Vec<Told> = Vec::new();
        let mut seen = BTreeSet::new();
        for statement in statements.iter().filter(|statement| statement.subject.is_spoken()) {
            let pieces = self.pack.say(statement)?;
            self.offer(&pieces);
            if seen.insert(kind_of(statement)) {
                told.push((statement.clone(), pieces));
            }
        }
        self.close();
        Ok(told)
    }

    /// Tries the statements with other names among their values, and adds what says something new.
    fn rename(&mut self, told: &mut Vec<Told>, names: &BTreeMap<&'static str, BTreeSet<&'static str>>) {
        let mut seen: BTreeSet<_> = told.iter().map(|(statement, _)| kind_of(statement)).collect();
        for (statement, pieces) in told.clone() {
            for other in renamed(&statement, names) {
                // Values may come together that no case has, and that the pack cannot say.
                match self.pack.say(&other) {
                    Ok(said) if said != pieces && seen.insert(kind_of(&other)) => {
                        self.offer(&said);
                        told.push((other, said));
                    }
                    _ => {}
                }
            }
        }
        self.close();
    }

    /// Takes the sentences of a message for the phrases wanted, where they are the shortest so far.
    fn offer(&mut self, pieces: &[Piece]) {
        for sentence in sentences(pieces) {
            let length = sentence.iter().map(|words| words.text.split_whitespace().count()).sum();
            for (index, words) in sentence.iter().enumerate() {
                let place = (key(&words.text), words.intonation);
                let shorter = self.found.get(&place).is_none_or(|carrier| length < carrier.length);
                if self.wanted.contains(&place) && shorter {
                    self.found.insert(place, carrier(&sentence, index, length));
                }
            }
        }
    }

    /// What has a sentence by now keeps it.
    fn close(&mut self) {
        self.wanted.retain(|place| !self.found.contains_key(place));
    }

    /// Tries other numbers and days in a statement.
    fn vary(&mut self, statement: &Statement, pieces: &[Piece]) {
        for (index, (_, value)) in statement.values.iter().enumerate() {
            let others = others(value);
            let say = |value: &Value| self.pack.say(&with(statement, index, value.clone())).ok();
            // A value that makes no difference is not in the sentence.
            if others.iter().take(PROBES).all(|value| say(value).is_none_or(|said| said == pieces)) {
                continue;
            }
            if self.wanted.iter().all(|place| self.found.contains_key(place)) {
                return;
            }
            for value in &others {
                if let Ok(pieces) = self.pack.say(&with(statement, index, value.clone())) {
                    self.offer(&pieces);
                }
            }
        }
    }
}

/// So many other values tell whether a statement uses a value.
const PROBES: usize = 2;

/// Of so many days one is tried as a span of its own.
const ALONE: usize = 6;

fn with(statement: &Statement, index: usize, value: Value) -> Statement {
    let mut changed = statement.clone();
    if let Some((_, slot)) = changed.values.get_mut(index) {
        *slot = value;
    }
    changed
}

/// The names that values of the statements may have.
fn names_of(statements: &[Statement]) -> BTreeMap<&'static str, BTreeSet<&'static str>> {
    let mut names: BTreeMap<&'static str, BTreeSet<&'static str>> = BTreeMap::new();
    for (of, value) in statements.iter().flat_map(|statement| &statement.values) {
        if let Value::Name(name) = value {
            names.entry(of).or_default().insert(name);
            if let Some(ValueKind::Choice(others)) = ValueInfo::of(of).map(|value| value.kind) {
                names.entry(of).or_default().extend(others);
            }
        }
    }
    names
}

/// The statement with another name in the place of each of its names.
fn renamed(statement: &Statement, names: &BTreeMap<&'static str, BTreeSet<&'static str>>) -> Vec<Statement> {
    let mut all = Vec::new();
    for (index, (of, value)) in statement.values.iter().enumerate() {
        let others = names.get(of).into_iter().flatten().map(|name| Value::Name(name));
        let others = others.filter(|other| matches!(value, Value::Name(_)) && other != value);
        all.extend(others.map(|other| with(statement, index, other)));
    }
    all
}

/// Other values of the same kind. The first ones differ most.
fn others(value: &Value) -> Vec<Value> {
    match value {
        Value::Number(_, decimals) => {
            let whole = [1, 2, 0].into_iter().chain(3..=31).chain((40..=90).step_by(10));
            let large = [100, 101].into_iter().chain((200..=1_000).step_by(100)).chain([2_000, 1_000_000]);
            let whole = whole.chain(large).map(|number| Value::Number(f64::from(number), *decimals));
            whole.chain((1..=9).map(|tenth| Value::Number(f64::from(tenth) / 10.0, 1))).collect()
        }
        Value::Date(of) => days(*of).into_iter().map(Value::Date).collect(),
        Value::Span(span) => {
            let between = |(from, to)| {
                let mut other = *span;
                (other.from, other.to) = (from, to);
                Value::Span(other)
            };
            let days = days(span.from);
            // One day alone is said in another way than several.
            let alone = days.iter().step_by(ALONE).map(|day| (*day, *day));
            alone.chain(days.iter().map(|last| (span.from, *last))).map(between).collect()
        }
        Value::Name(_) | Value::Text(_) => Vec::new(),
    }
}

/// Days of the same year: each month has its first days of every week, and one has all its days.
fn days(like: NaiveDate) -> Vec<NaiveDate> {
    use chrono::Datelike;
    let every_month = (1..=12).flat_map(|month| [1, 6, 8, 15, 22, 29].map(|day| (month, day)));
    let all = every_month.chain((1..=31).map(|day| (1, day))).chain((5..=13).map(|day| (9, day)));
    all.filter_map(|(month, day)| NaiveDate::from_ymd_opt(like.year(), month, day)).collect()
}

/// What kind of statement it is: its subject, the names among its values, and which other values there are.
fn kind_of(statement: &Statement) -> (Subject, Vec<(&'static str, Option<&'static str>)>) {
    let values = statement.values.iter().map(|(of, value)| match value {
        Value::Name(name) => (*of, Some(*name)),
        _ => (*of, None),
    });
    (statement.subject, values.collect())
}

/// The words of each sentence.
fn sentences(pieces: &[Piece]) -> Vec<Vec<&Words>> {
    let ends = |piece: &Piece| matches!(piece, Piece::Pause(Pause::Sentence | Pause::Statement));
    pieces.split(ends).map(|sentence| sentence.iter().filter_map(words_of).collect()).collect()
}

fn words_of(piece: &Piece) -> Option<&Words> {
    match piece {
        Piece::Words(words) => Some(words),
        Piece::Pause(_) => None,
    }
}

fn carrier(sentence: &[&Words], index: usize, length: usize) -> Carrier {
    let text = |words: &[&Words]| words.iter().map(|words| words.text.as_str()).collect::<Vec<_>>().join(" ");
    let before = text(sentence.get(..index).unwrap_or_default());
    let mut after = String::new();
    if let Some(words) = sentence.get(index) {
        after.push_str(part_marks(&words.text).1);
    }
    let rest = text(sentence.get(index + 1..).unwrap_or_default());
    if !rest.is_empty() {
        after.push(' ');
        after.push_str(&rest);
    }
    Carrier { before, after, length }
}
