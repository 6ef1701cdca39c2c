//! Which clips say a message: the fewest, then the best matching.
//!
//! A clip may say one word of a message, several pieces, or all that stands
//! between two pauses; it never reaches over a pause. Covers compare by, in
//! this order: pieces left uncovered, clips, clips with another intonation
//! than wanted, and roughness: what is measured between each clip's end and
//! the next one's start ([`Joint`]). Where a pause lies between, a tenth of
//! it counts. Of equals the one with the longer clips first is taken, then the
//! clip that stands first in the bank.
//!
//! Two passes find the cheapest cover. The first goes over the words and counts
//! pieces, clips and intonations: it leaves the links that are part of any of
//! the best covers. Only where these leave a choice are clips listened to: the
//! second pass goes over the links from the back and weighs how they meet.

use std::collections::BTreeSet;
use std::ops::Add;

use super::bank::Bank;
use super::edge::Joint;
use super::spelling::{Token, join_keys, key, tokens};
use crate::language::{Intonation, Pause, Piece};

/// A pause hides all but this part of a joint's roughness.
const PAUSE_HIDES: u64 = 10;
/// The roughness of a joint that cannot be measured, since a clip cannot be
/// decoded: a take that can is preferred.
const UNKNOWN: u64 = 100_000;

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

/// A choice, and what it was chosen among.
#[derive(Debug, Clone, PartialEq)]
pub struct Explained {
    /// What was chosen.
    pub choice: Choice,
    /// The other clips with the same words, by their place in [`Bank::clips`].
    pub others: Vec<usize>,
    /// How the message wants the voice to end.
    pub wanted: Intonation,
    /// How it meets the next clip; none after the last, or where it cannot be measured.
    pub meets: Option<Joint>,
    /// The roughness that counts at this place, in thousandths.
    pub roughness: u64,
}

/// Chooses the clips of a message, in the order in which they are heard.
///
/// # Errors
/// The pieces without clips, each once, in the order of the message.
pub fn choose(pieces: &[Piece], bank: &Bank<'_>) -> Result<Vec<Choice>, Vec<Gap>> {
    let message = MessageTokens::of(pieces);
    Ok(message.cover(bank)?.iter().filter_map(|link| message.choice(link)).collect())
}

/// Chooses as [`choose`] does, and tells what each choice was made among.
///
/// # Errors
/// As [`choose`].
pub fn explain(pieces: &[Piece], bank: &Bank<'_>) -> Result<Vec<Explained>, Vec<Gap>> {
    let message = MessageTokens::of(pieces);
    let links = message.cover(bank)?;
    let next = links.iter().skip(1).map(Some).chain([None]);
    let explained = links.iter().zip(next).filter_map(|(link, next)| {
        let choice = message.choice(link)?;
        let clip = bank.clips().get(choice.clip)?;
        let others = bank.saying(&key(&clip.words)).unwrap_or_default().iter();
        let meets = next.and_then(|next| bank.joint(link.clip?, next.clip?));
        Some(Explained {
            others: others.copied().filter(|other| *other != choice.clip).collect(),
            wanted: message.wanted.get(link.end - 1).copied()?,
            meets,
            roughness: next.map_or(0, |next| message.roughness(link, next, bank)),
            choice,
        })
    });
    Ok(explained.collect())
}

/// The words of a message.
#[derive(Default)]
struct MessageTokens<'t> {
    tokens: Vec<Token<'t>>,
    /// For each token, how the voice ends if a clip ends with it.
    wanted: Vec<Intonation>,
    /// For each token, the pause after it.
    pauses: Vec<Option<Pause>>,
    /// Where a piece begins, its length in tokens, and what is missing without it.
    pieces: Vec<(usize, usize, Gap)>,
}

/// What a cover costs; less is better.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord)]
struct Cost {
    gaps: usize,
    clips: usize,
    mismatches: usize,
}

impl Add for Cost {
    type Output = Cost;
    fn add(self, other: Cost) -> Cost {
        Cost {
            gaps: self.gaps + other.gaps,
            clips: self.clips + other.clips,
            mismatches: self.mismatches + other.mismatches,
        }
    }
}

/// What may cover some words.
#[derive(Debug, Clone, Copy)]
struct Link {
    start: usize,
    end: usize,
    /// None for a gap.
    clip: Option<usize>,
    cost: Cost,
}

/// A link on a best cover, with the best way on from it.
struct Step {
    link: Link,
    /// The roughness from here to the end.
    roughness: u64,
    /// The next link, by its place among those that begin where this one ends.
    next: usize,
}

impl<'t> MessageTokens<'t> {
    fn of(pieces: &'t [Piece]) -> MessageTokens<'t> {
        let mut message = MessageTokens::default();
        for piece in pieces {
            match piece {
                // Of two pauses in a row the stronger one counts; before all words none does.
                Piece::Pause(pause) => {
                    if let Some(after) = message.pauses.last_mut() {
                        *after = (*after).max(Some(*pause));
                    }
                }
                Piece::Words(words) => {
                    let tokens = tokens(&words.text);
                    if tokens.is_empty() {
                        continue;
                    }
                    message.wanted.extend(tokens.iter().skip(1).map(|_| Intonation::Medial));
                    message.wanted.push(words.intonation);
                    let gap = Gap { words: words.text.trim().to_owned(), intonation: words.intonation };
                    message.pieces.push((message.tokens.len(), tokens.len(), gap));
                    message.tokens.extend(tokens);
                    message.pauses.resize(message.tokens.len(), None);
                }
            }
        }
        message
    }

    fn choice(&self, link: &Link) -> Option<Choice> {
        let written = self.tokens.get(link.start..link.end)?.iter().map(|token| token.written);
        Some(Choice {
            clip: link.clip?,
            words: written.collect::<Vec<_>>().join(" "),
            pause: self.pause_before(link.end),
        })
    }

    fn pause_before(&self, token: usize) -> Option<Pause> {
        self.pauses.get(token.checked_sub(1)?).copied().flatten()
    }

    /// The cheapest cover; it has no gaps.
    fn cover(&self, bank: &Bank<'_>) -> Result<Vec<Link>, Vec<Gap>> {
        let best = self.smoothest(self.cheapest(bank), bank);
        let gaps = best.iter().filter(|link| link.clip.is_none());
        let mut gaps: Vec<Gap> =
            gaps.filter_map(|link| self.piece_at(link.start)).map(|(_, gap)| gap.clone()).collect();
        let mut seen = BTreeSet::new();
        gaps.retain(|gap| seen.insert((key(&gap.words), gap.intonation)));
        if gaps.is_empty() { Ok(best) } else { Err(gaps) }
    }

    /// For each token, the links from it that lie on a best cover of all that
    /// follows; the longest first.
    fn cheapest(&self, bank: &Bank<'_>) -> Vec<Vec<Link>> {
        let count = self.tokens.len();
        let mut links: Vec<Vec<Link>> = vec![Vec::new(); count];
        // What the words from each token on cost; none where no cover starts there.
        let mut rest: Vec<Option<Cost>> = vec![None; count];
        rest.push(Some(Cost::default()));
        for (start, best) in links.iter_mut().enumerate().rev() {
            let found = self.links_from(start, bank);
            let total = |link: &Link| Some(link.cost + rest.get(link.end).copied().flatten()?);
            let least = found.iter().filter_map(total).min();
            *best = found.iter().filter(|link| least.is_some() && total(link) == least).copied().collect();
            if let Some(rest) = rest.get_mut(start) {
                *rest = least;
            }
        }
        keep_reachable(&mut links);
        links
    }

    /// All that may stand from a token on; the longest clips first, gaps last.
    fn links_from(&self, start: usize, bank: &Bank<'_>) -> Vec<Link> {
        let until = self.pauses.iter().skip(start).position(Option::is_some);
        let until = until.map_or(self.tokens.len(), |place| start + place + 1);
        let longest = bank.longest().min(until - start);
        let mut links = Vec::new();
        for end in (start + 1..=start + longest).rev() {
            let (Some(words), Some(wanted)) = (self.tokens.get(start..end), self.wanted.get(end - 1)) else {
                continue;
            };
            for clip in bank.saying(&join_keys(words)).unwrap_or_default() {
                let fits = bank.clips().get(*clip).is_some_and(|clip| clip.intonation == *wanted);
                let cost = Cost { gaps: 0, clips: 1, mismatches: usize::from(!fits) };
                links.push(Link { start, end, clip: Some(*clip), cost });
            }
        }
        let gap = self.piece_at(start).map(|(length, _)| Link {
            start,
            end: start + length,
            clip: None,
            cost: Cost { gaps: 1, ..Cost::default() },
        });
        links.extend(gap);
        links
    }

    /// Of the links left, those that meet best, in the order of the message.
    fn smoothest(&self, links: Vec<Vec<Link>>, bank: &Bank<'_>) -> Vec<Link> {
        let mut steps: Vec<Vec<Step>> = Vec::new();
        steps.resize_with(links.len() + 1, Vec::new);
        let open = links.iter().any(|links| links.len() > 1);
        for (start, links) in links.into_iter().enumerate().rev() {
            let best = links.into_iter().map(|link| {
                let ways = steps.get(link.end).into_iter().flatten().enumerate().map(|(next, step)| {
                    let here = if open { self.roughness(&link, &step.link, bank) } else { 0 };
                    (here + step.roughness, next)
                });
                let (roughness, next) = ways.min().unwrap_or_default();
                Step { link, roughness, next }
            });
            let best = best.collect();
            if let Some(place) = steps.get_mut(start) {
                *place = best;
            }
        }
        let first = steps.first().into_iter().flatten().enumerate().min_by_key(|(_, step)| step.roughness);
        let mut at = first.map(|(index, step)| (step.link.start, index));
        let mut cover = Vec::new();
        while let Some(step) = at.and_then(|(start, index)| steps.get(start)?.get(index)) {
            cover.push(step.link);
            at = Some((step.link.end, step.next));
        }
        cover
    }

    /// How much is heard where two links meet, in thousandths.
    fn roughness(&self, before: &Link, after: &Link, bank: &Bank<'_>) -> u64 {
        let (Some(from), Some(to)) = (before.clip, after.clip) else { return 0 };
        let all = bank.joint(from, to).map_or(UNKNOWN, |joint| joint.roughness());
        if self.pause_before(before.end).is_some() { all / PAUSE_HIDES } else { all }
    }

    fn piece_at(&self, start: usize) -> Option<(usize, &Gap)> {
        let index = self.pieces.binary_search_by_key(&start, |(start, ..)| *start).ok()?;
        self.pieces.get(index).map(|(_, length, gap)| (*length, gap))
    }
}

/// Takes out the links that no cover from the first word on comes to.
fn keep_reachable(links: &mut [Vec<Link>]) {
    let mut reached = BTreeSet::from([0]);
    for (start, links) in links.iter_mut().enumerate() {
        if reached.contains(&start) {
            reached.extend(links.iter().map(|link| link.end));
        } else {
            links.clear();
        }
    }
}
