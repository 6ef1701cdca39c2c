//! Which items of a segment are said.
//!
//! Of each class as many as can be said in the time, the first class first: no
//! item is left out so that one of a later class has room, or so that the time
//! is filled better. Which ones of a class are said is free, and there the
//! length decides, then the order. Fillers only bring what is said to its length.

use std::cmp::Reverse;

use super::fit::Range;
use crate::voice::Frames;

/// Some of the items, and the lengths they can be said in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Set {
    /// The items, a bit for each: the first item is bit 0.
    pub items: u32,
    /// From the shortest pauses over the usual ones to the longest.
    pub length: Range,
}

/// What is to be said in a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Choice {
    /// These items can be said in just that time.
    Fits(Set),
    /// No choice comes to that time.
    Between {
        /// What should be said, did its longest pauses suffice: they make the nearest length below.
        below: Option<Set>,
        /// What is said with the shortest pauses at the nearest length above.
        above: Option<Set>,
    },
}

/// Bits of the number of items of one class.
const CLASS_BITS: u32 = 5;

/// Chooses among at most 16 items, given by their classes in order of importance; fillers, which have none,
/// come last. Something that is no filler is always said. `length` tells the lengths of a set, which grow with every item.
pub fn choose<C: PartialEq>(classes: &[Option<C>], length: impl Fn(u32) -> Range, target: Frames) -> Choice {
    let worths = worths(classes);
    let important = worths.iter().filter(|worth| **worth > 0).count();
    // Less for sets with earlier items, then for those with natural pauses.
    let order = |set: &Set| {
        let first = set.items & ((1 << important) - 1);
        (
            Reverse(first.reverse_bits()),
            set.length.usual.0.abs_diff(target.0),
            Reverse(set.items.reverse_bits()),
        )
    };
    let mut sets: Vec<(u128, Set)> = (0..1u32 << classes.len())
        .map(|items| {
            let chosen = (0u32..).zip(&worths).filter(|(bit, _)| items >> bit & 1 == 1);
            (chosen.map(|(_, worth)| worth).sum(), Set { items, length: length(items) })
        })
        .filter(|(worth, _)| *worth > 0)
        .collect();
    // Of equally long ones the best comes first.
    sets.sort_by_key(|(worth, set)| (set.length.least, Reverse(*worth), order(set)));
    let (within, beyond) = sets.split_at(sets.partition_point(|(_, set)| set.length.least <= target));
    let best = within.iter().map(|(worth, _)| *worth).max();
    let equal = || within.iter().filter(|(worth, _)| Some(*worth) == best).map(|(_, set)| *set);
    if let Some(set) = equal().filter(|set| set.length.most >= target).min_by_key(order) {
        return Choice::Fits(set);
    }
    // As the time grows, the first set that is worth as much becomes the right choice, and just reaches it.
    let above = beyond.iter().find(|(worth, _)| Some(*worth) >= best).map(|(_, set)| *set);
    Choice::Between { below: equal().max_by_key(|set| set.length.most), above }
}

/// What an item of each class counts: one more of a class outweighs all of those after it. A filler counts nothing.
fn worths<C: PartialEq>(classes: &[Option<C>]) -> Vec<u128> {
    let mut place = 0;
    let mut after: Option<&C> = None;
    let mut worths: Vec<u128> = Vec::with_capacity(classes.len());
    for class in classes.iter().rev() {
        let Some(class) = class else {
            worths.push(0);
            continue;
        };
        place += u32::from(after.is_some_and(|after| after != class));
        after = Some(class);
        worths.push(1 << (CLASS_BITS * place));
    }
    worths.reverse();
    worths
}
