//! Whether anybody still needs what a clip says.

use std::collections::{BTreeMap, BTreeSet};

use super::super::bank_file::Clip;
use super::super::spelling::{key, tokens};
use crate::language::Phrase;

/// What the words of a clip are to the language pack as it is now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Use {
    /// A phrase has them, or several phrases one after the other.
    Wanted,
    /// The phrase that had them has other words now.
    Replaced {
        /// Its words.
        now: String,
    },
    /// No phrase has them.
    Unused,
}

/// The use of each clip, in their order.
pub fn uses(clips: &[Clip], phrases: &[Phrase]) -> Vec<Use> {
    let wanted: BTreeSet<String> = phrases.iter().map(|phrase| key(&phrase.words)).collect();
    let said: BTreeSet<String> = clips.iter().map(|clip| key(&clip.words)).collect();
    let mut unsaid: BTreeMap<&str, BTreeMap<String, &str>> = BTreeMap::new();
    for phrase in phrases.iter().filter(|phrase| !said.contains(&key(&phrase.words))) {
        unsaid.entry(&phrase.id).or_default().insert(key(&phrase.words), &phrase.words);
    }
    let use_of = |clip: &Clip| {
        if is_said_of(&clip.words, &wanted) {
            return Use::Wanted;
        }
        let replaced = clip.id.as_deref().and_then(|id| unsaid.get(id));
        // Many numbers share an id: there, nothing tells which became which.
        match replaced.map(|phrases| phrases.values().collect::<Vec<_>>()).as_deref() {
            Some([now]) => Use::Replaced { now: (**now).to_owned() },
            _ => Use::Unused,
        }
    };
    clips.iter().map(use_of).collect()
}

/// Whether words are one phrase, or several one after the other.
fn is_said_of(words: &str, wanted: &BTreeSet<String>) -> bool {
    let words: Vec<String> = tokens(words).into_iter().map(|token| token.key).collect();
    // The numbers of words after which a phrase may end.
    let mut ends = BTreeSet::from([0]);
    for to in 1..=words.len() {
        let phrase = |from: &usize| words.get(*from..to).map(|words| words.join(" "));
        if ends.iter().filter_map(phrase).any(|phrase| wanted.contains(&phrase)) {
            ends.insert(to);
        }
    }
    ends.contains(&words.len())
}
