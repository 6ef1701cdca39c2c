//! What may be said in a week, and how long each part of it is.

use std::collections::BTreeSet;

use super::{Error, Progress};
use crate::guidance::{Item, Priority, Statement, Subject, Timing, for_week, in_order};
use crate::language::{Pack, Piece};
use crate::plan::DateSpan;
use crate::voice::segment::{Measure, PauseRanges, Range, estimate};
use crate::voice::{self, Bank, Frames, JoinOptions, MissingPhrase, SpeakOptions, VoiceError, Why};

/// Syllables a second of somebody who reads aloud for listeners who want to remember: common practice, no source.
pub(super) const READING_RATE: f64 = 4.0;

/// What may be said in a week, with what each statement comes to.
pub(super) struct Pool<'s> {
    pub(super) items: Vec<Item<'s>>,
    /// Opening and closing first, then all that belongs to an item, each once.
    statements: Vec<(&'s Statement, Vec<Piece>)>,
    measures: Vec<Measure>,
}

impl<'s> Pool<'s> {
    pub(super) fn of(pack: &Pack, statements: &'s [Statement], week: DateSpan) -> Result<Pool<'s>, Error> {
        let items = for_week(statements, week);
        let all: Vec<&Item<'_>> = items.iter().collect();
        let said = in_order(statements, &all).into_iter();
        let said = said.map(|statement| Ok::<_, Error>((statement, pack.say(statement)?)));
        Ok(Pool { statements: said.collect::<Result<_, _>>()?, items, measures: Vec::new() })
    }

    /// How much each item matters; those that only fill time are of no class.
    pub(super) fn classes(&self) -> Vec<Option<(Timing, Priority)>> {
        let class = |item: &Item<'_>| (item.timing != Timing::Ahead).then(|| item.class());
        self.items.iter().map(class).collect()
    }

    /// The items of a set.
    pub(super) fn chosen(&self, set: u32) -> Vec<&Item<'s>> {
        (0..).zip(&self.items).filter(|(bit, _)| set >> bit & 1 == 1).map(|(_, item)| item).collect()
    }

    /// What a set of items comes to, with opening and closing.
    pub(super) fn measure(&self, set: u32) -> Measure {
        let chosen = self.chosen(set);
        let says = |statement: &Statement| {
            matches!(statement.subject, Subject::Opening | Subject::Closing)
                || chosen.iter().any(|item| item.statement == statement || item.beside.contains(&statement))
        };
        let measures = self.statements.iter().zip(&self.measures);
        measures
            .filter(|((statement, _), _)| says(statement))
            .fold(Measure::default(), |sum, (_, measure)| sum + *measure)
    }

    /// How long a set of items can be, signatures included.
    pub(super) fn lengths(
        &self,
        set: u32,
        ranges: &PauseRanges,
        join: &JoinOptions,
        signatures: Frames,
    ) -> Range {
        let Range { least, usual, most } = self.measure(set).lengths(ranges, join);
        Range { least: least + signatures, usual: usual + signatures, most: most + signatures }
    }

    pub(super) fn pieces(&self, statement: &Statement) -> &[Piece] {
        let found = self.statements.iter().find(|(of, _)| *of == statement);
        found.map_or(&[], |(_, pieces)| pieces.as_slice())
    }

    pub(super) fn estimate(&mut self) {
        self.measures = self.statements.iter().map(|(_, pieces)| estimate(pieces, READING_RATE)).collect();
    }
}

/// Measures each statement as it is spoken; returns what has no fresh recording.
pub(super) fn measure_all(
    pool: &mut Pool<'_>,
    bank: &Bank<'_>,
    options: &SpeakOptions,
    progress: Progress<'_>,
) -> Result<Vec<MissingPhrase>, Error> {
    let mut missing: Vec<MissingPhrase> = Vec::new();
    let all = pool.statements.len();
    for (done, (statement, pieces)) in pool.statements.iter().enumerate() {
        progress(done, all + 1, statement.subject.name());
        match voice::speak(pieces, bank, options) {
            Ok(spoken) => pool.measures.push(Measure::of(&spoken, &options.join)),
            Err(VoiceError::Missing { phrases, .. }) => missing.extend(phrases),
            Err(error) => return Err(error.into()),
        }
    }
    progress(all, all + 1, "segment");
    let mut seen = BTreeSet::new();
    missing.retain(|phrase| seen.insert(phrase.to_string()));
    Ok(missing)
}

/// All phrases of the pool, for a language without a voice.
pub(super) fn every_phrase(pool: &Pool<'_>) -> Vec<MissingPhrase> {
    let mut seen = BTreeSet::new();
    let pieces = pool.statements.iter().flat_map(|(_, pieces)| pieces);
    let phrases = pieces.filter_map(|piece| match piece {
        Piece::Words(words) => {
            Some(MissingPhrase { words: words.text.clone(), intonation: words.intonation, why: Why::Missing })
        }
        Piece::Pause(_) => None,
    });
    phrases.filter(|phrase| seen.insert(phrase.to_string())).collect()
}
