//! Which clips say a message: the fewest, then the best matching.
//!
//! Between two pauses stands a run of words. A clip may say one word of it,
//! several pieces, or all of it. The cheapest cover of each run is found by
//! dynamic programming over its words, from the back. Covers compare by, in
//! this order: pieces left uncovered, clips, clips with another intonation
//! than wanted, and last the length of the first clip that differs.

use std::collections::BTreeSet;

use super::bank::Bank;
use super::spelling::{Token, join_keys, key, tokens};
use crate::language::{Intonation, Pause, Piece};

/// A clip chosen for a place in a message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Choice {
    /// Its place in [`Bank::clips`].
    pub clip: usize,
    /// The words it covers, as the message writes them.
    pub words: String,
    /// The pause that follows; none where the next clip joins on.
    pub pause: Option<Pause>,
}

/// A piece of a message that no clips say.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Gap {
    /// The words, as the message writes them.
    pub words: String,
    /// How the voice is to end.
    pub intonation: Intonation,
}

/// Chooses the clips of a message, in the order in which they are heard.
///
/// # Errors
/// The pieces without clips, each once, in the order of the message.
pub fn choose(pieces: &[Piece], bank: &Bank<'_>) -> Result<Vec<Choice>, Vec<Gap>> {
    let mut choices: Vec<Choice> = Vec::new();
    let mut gaps: Vec<Gap> = Vec::new();
    for (run, pause) in runs(pieces) {
        for link in run.cover(bank) {
            match link {
                Link::Clip { clip, words } => choices.push(Choice { clip, words, pause: None }),
                Link::Gap(gap) => gaps.push(gap),
            }
        }
        if let Some(choice) = choices.last_mut() {
            choice.pause = pause;
        }
    }
    let mut seen = BTreeSet::new();
    gaps.retain(|gap| seen.insert((key(&gap.words), gap.intonation)));
    if gaps.is_empty() { Ok(choices) } else { Err(gaps) }
}

/// Words between two pauses.
#[derive(Default)]
struct Run<'t> {
    tokens: Vec<Token<'t>>,
    /// For each token, how the voice ends if a clip ends with it.
    wanted: Vec<Intonation>,
    /// Where a piece begins, its length in tokens, and what is missing without it.
    pieces: Vec<(usize, usize, Gap)>,
}

/// The runs of a message, each with the pause after it.
fn runs(pieces: &[Piece]) -> Vec<(Run<'_>, Option<Pause>)> {
    let mut runs: Vec<(Run<'_>, Option<Pause>)> = Vec::new();
    for piece in pieces {
        match piece {
            // Of two pauses in a row the stronger one counts; before all words none does.
            Piece::Pause(pause) => {
                if let Some((_, after)) = runs.last_mut() {
                    *after = (*after).max(Some(*pause));
                }
            }
            Piece::Words(words) => {
                let tokens = tokens(&words.text);
                if tokens.is_empty() {
                    continue;
                }
                if runs.last().is_none_or(|(_, after)| after.is_some()) {
                    runs.push((Run::default(), None));
                }
                if let Some((run, _)) = runs.last_mut() {
                    run.wanted.extend(tokens.iter().skip(1).map(|_| Intonation::Medial));
                    run.wanted.push(words.ending);
                    let gap = Gap { words: words.text.trim().to_owned(), intonation: words.ending };
                    run.pieces.push((run.tokens.len(), tokens.len(), gap));
                    run.tokens.extend(tokens);
                }
            }
        }
    }
    runs
}

/// What a cover costs; less is better.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Cost {
    gaps: usize,
    clips: usize,
    mismatches: usize,
}

/// What covers some words.
enum Link {
    Clip { clip: usize, words: String },
    Gap(Gap),
}

/// The best cover from a token to the end of the run.
#[derive(Clone, Copy)]
struct Best {
    cost: Cost,
    /// How many tokens its first link covers.
    length: usize,
    /// The clip of its first link; none for a gap.
    clip: Option<usize>,
}

impl Run<'_> {
    fn cover(&self, bank: &Bank<'_>) -> Vec<Link> {
        let count = self.tokens.len();
        // best[token]; none where no cover starts there.
        let mut best: Vec<Option<Best>> = vec![None; count];
        best.push(Some(Best { cost: Cost::default(), length: 0, clip: None }));
        for start in (0..count).rev() {
            let found = self.best_from(start, bank, &best);
            if let Some(slot) = best.get_mut(start) {
                *slot = found;
            }
        }
        let mut links = Vec::new();
        let mut at = 0;
        while let Some(Best { length, clip, .. }) =
            best.get(at).copied().flatten().filter(|best| best.length > 0)
        {
            match clip {
                Some(clip) => {
                    let written = self.tokens.iter().skip(at).take(length).map(|token| token.written);
                    links.push(Link::Clip { clip, words: written.collect::<Vec<_>>().join(" ") });
                }
                None => links.extend(self.piece_at(at).map(|(_, gap)| Link::Gap(gap.clone()))),
            }
            at += length;
        }
        links
    }

    fn best_from(&self, start: usize, bank: &Bank<'_>, best: &[Option<Best>]) -> Option<Best> {
        let longest = bank.longest().min(self.tokens.len() - start);
        let clips = (1..=longest).rev().filter_map(|length| {
            let rest = best.get(start + length).copied().flatten()?;
            let saying = bank.saying(&join_keys(self.tokens.get(start..start + length)?))?;
            let fitting = bank.with_intonation(saying, *self.wanted.get(start + length - 1)?);
            let cost = Cost {
                clips: rest.cost.clips + 1,
                mismatches: rest.cost.mismatches + usize::from(fitting.is_none()),
                ..rest.cost
            };
            Some(Best { cost, length, clip: Some(fitting.or(saying.first().copied())?) })
        });
        let gap = self.piece_at(start).and_then(|(length, _)| {
            let rest = best.get(start + length).copied().flatten()?;
            Some(Best { cost: Cost { gaps: rest.cost.gaps + 1, ..rest.cost }, length, clip: None })
        });
        // Of equals the first is kept, which is the longest clip.
        clips.chain(gap).min_by_key(|best| best.cost)
    }

    fn piece_at(&self, start: usize) -> Option<(usize, &Gap)> {
        let index = self.pieces.binary_search_by_key(&start, |(start, ..)| *start).ok()?;
        self.pieces.get(index).map(|(_, length, gap)| (*length, gap))
    }
}
