//! The sentence in which a phrase is thought while it is recorded.
//!
//! It is a real one: what the language pack makes of a statement. First the
//! statements that are given are tried; for phrases that none of them says,
//! one value of a statement after the other is changed.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;

use super::super::spelling::{key, part_marks};
use crate::guidance::{Statement, Value};
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
    /// Finds the shortest sentence for each of `phrases`, with the ending it
    /// asks for: in `statements`, else in what changing their values makes of them.
    ///
    /// # Errors
    /// A statement that cannot be said.
    pub fn find(pack: &Pack, statements: &[Statement], phrases: &[Phrase]) -> Result<Carriers, WordingError> {
        let mut search = Search {
            pack,
            wanted: phrases.iter().map(|phrase| (key(&phrase.words), phrase.ending)).collect(),
            found: BTreeMap::new(),
        };
        let mut seen = BTreeSet::new();
        let mut told = Vec::new();
        for statement in statements.iter().filter(|statement| statement.subject.is_spoken()) {
            let pieces = pack.say(statement)?;
            search.offer(&pieces);
            if seen.insert(text_of(&pieces)) {
                told.push((statement.clone(), pieces));
            }
        }
        search.close();
        for (statement, _) in told.clone() {
            for other in renamed(&statement, &names_of(statements)) {
                search.try_another(other, &mut seen, &mut told);
            }
        }
        search.close();
        for (statement, pieces) in &told {
            search.vary(statement, pieces);
        }
        search.close();
        Ok(Carriers { found: search.found })
    }

    /// The sentence of a phrase; `None` where no statement says it so.
    pub fn of(&self, phrase: &Phrase) -> Option<&Carrier> {
        self.found.get(&(key(&phrase.words), phrase.ending))
    }
}

struct Search<'a> {
    pack: &'a Pack,
    /// Phrases that have no sentence yet.
    wanted: BTreeSet<(String, Intonation)>,
    found: BTreeMap<(String, Intonation), Carrier>,
}

impl Search<'_> {
    /// Takes the sentences of a message for the phrases wanted, where they are the shortest so far.
    fn offer(&mut self, pieces: &[Piece]) {
        for sentence in sentences(pieces) {
            let length = sentence.iter().map(|words| words.text.split_whitespace().count()).sum();
            for (index, words) in sentence.iter().enumerate() {
                let place = (key(&words.text), words.ending);
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

    /// Tries a changed statement, and keeps it for more changes if it says something new. Values may come
    /// together that no case has, and that a pack cannot say; then it is passed over.
    fn try_another(
        &mut self,
        statement: Statement,
        seen: &mut BTreeSet<String>,
        told: &mut Vec<(Statement, Vec<Piece>)>,
    ) {
        let Ok(pieces) = self.pack.say(&statement) else { return };
        if !self.wanted.is_empty() && seen.insert(text_of(&pieces)) {
            self.offer(&pieces);
            told.push((statement, pieces));
        }
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
            for value in &others {
                if self.wanted.iter().all(|place| self.found.contains_key(place)) {
                    return;
                }
                if let Ok(pieces) = self.pack.say(&with(statement, index, value.clone())) {
                    self.offer(&pieces);
                }
            }
        }
    }
}

/// So many other values tell whether a statement uses a value.
const PROBES: usize = 2;

fn with(statement: &Statement, index: usize, value: Value) -> Statement {
    let mut changed = statement.clone();
    if let Some((_, slot)) = changed.values.get_mut(index) {
        *slot = value;
    }
    changed
}

/// The names that values have in any of the statements.
fn names_of(statements: &[Statement]) -> BTreeMap<&'static str, BTreeSet<&'static str>> {
    let mut names: BTreeMap<&'static str, BTreeSet<&'static str>> = BTreeMap::new();
    for (of, value) in statements.iter().flat_map(|statement| &statement.values) {
        if let Value::Name(name) = value {
            names.entry(of).or_default().insert(name);
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
            let mut all = Vec::new();
            for day in days(span.from) {
                let (mut alone, mut last) = (*span, *span);
                (alone.from, alone.to) = (day, day);
                last.to = day;
                all.extend([Value::Span(alone), Value::Span(last)]);
            }
            all
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

fn text_of(pieces: &[Piece]) -> String {
    let text = pieces.iter().map(|piece| match piece {
        Piece::Words(words) => words.text.as_str(),
        Piece::Pause(_) => "/",
    });
    text.collect::<Vec<_>>().join(" ")
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
