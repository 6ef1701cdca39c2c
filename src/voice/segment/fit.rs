//! Pauses that bring a segment to its length.

use std::ops::Add;

use crate::language::Pause;
use crate::voice::{Frames, JoinOptions, Spoken};

/// How long a pause, or a whole message, may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Range {
    /// The shortest.
    pub least: Frames,
    /// As spoken where there is no length to keep.
    pub usual: Frames,
    /// The longest.
    pub most: Frames,
}

impl Range {
    /// Seven to sixteen tenths of the usual pause: shorter sounds breathless, longer as if the speaker had lost the thread.
    pub fn around(usual: Frames) -> Range {
        Range { least: Frames(usual.0 * 7 / 10), usual, most: Frames(usual.0 * 16 / 10) }
    }

    /// From -1, the shortest, over 0, the usual one, to 1, the longest.
    fn at(&self, stretch: f64) -> Frames {
        let room = if stretch < 0.0 { self.usual - self.least } else { self.most - self.usual };
        let moved = (stretch.abs().min(1.0) * room.0 as f64).floor();
        if stretch < 0.0 { self.usual - Frames(moved as u64) } else { self.usual + Frames(moved as u64) }
    }
}

/// How long each kind of pause may be.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PauseRanges {
    /// Within a sentence.
    pub comma: Range,
    /// After a sentence.
    pub sentence: Range,
    /// After a statement.
    pub statement: Range,
    /// Before the voice.
    pub lead: Range,
    /// After the voice.
    pub tail: Range,
}

impl PauseRanges {
    /// Around the pauses of `join`. Music under the voice may be heard alone for some seconds
    /// before and after it; beside a signature the voice waits a little longer than at the file's edge.
    pub fn around(join: &JoinOptions, signature: (bool, bool), bed: bool) -> PauseRanges {
        let alone = |least, usual, most| Range {
            least: Frames::from_millis(least),
            usual: Frames::from_millis(usual),
            most: Frames::from_millis(most),
        };
        let edge = |usual, signature, bed_range| match (bed, signature) {
            (true, _) => bed_range,
            (false, true) => alone(300, 600, 1_200),
            (false, false) => Range::around(usual),
        };
        PauseRanges {
            comma: Range::around(join.comma),
            sentence: Range::around(join.sentence),
            statement: Range::around(join.statement),
            lead: edge(join.lead, signature.0, alone(1_000, 2_000, 4_000)),
            tail: edge(join.tail, signature.1, alone(2_000, 3_000, 6_000)),
        }
    }

    /// All pauses stretched alike, from -1, the shortest, to 1, the longest.
    fn at(&self, stretch: f64, join: &JoinOptions) -> JoinOptions {
        JoinOptions {
            comma: self.comma.at(stretch),
            sentence: self.sentence.at(stretch),
            statement: self.statement.at(stretch),
            lead: self.lead.at(stretch),
            tail: self.tail.at(stretch),
            ..join.clone()
        }
    }
}

/// What the length of speech is made of. Sums are spoken one after the other.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Measure {
    /// Speech without its pauses.
    pub speech: Frames,
    /// Pauses within sentences.
    pub commas: u64,
    /// Pauses after sentences.
    pub sentences: u64,
    /// Statements; between two of them lies a pause.
    pub statements: u64,
}

impl Add for Measure {
    type Output = Measure;
    fn add(self, other: Measure) -> Measure {
        Measure {
            speech: self.speech + other.speech,
            commas: self.commas + other.commas,
            sentences: self.sentences + other.sentences,
            statements: self.statements + other.statements,
        }
    }
}

impl Measure {
    /// What a message that was joined with `join` is made of.
    pub fn of(spoken: &Spoken, join: &JoinOptions) -> Measure {
        let inner = spoken.lines.len().saturating_sub(1);
        let count = |pause| spoken.lines.iter().take(inner).filter(|line| line.pause == Some(pause)).count();
        let counted = Measure {
            speech: Frames(0),
            commas: count(Pause::Comma) as u64,
            sentences: count(Pause::Sentence) as u64,
            statements: count(Pause::Statement) as u64 + 1,
        };
        Measure { speech: spoken.length() - counted.length(join), ..counted }
    }

    /// How long it is with the pauses of `join`.
    pub fn length(&self, join: &JoinOptions) -> Frames {
        let between = self.statements.saturating_sub(1);
        let pauses =
            self.commas * join.comma.0 + self.sentences * join.sentence.0 + between * join.statement.0;
        self.speech + Frames(pauses) + join.lead + join.tail
    }

    /// How long it can be.
    pub fn lengths(&self, ranges: &PauseRanges, join: &JoinOptions) -> Range {
        let length = |stretch| self.length(&ranges.at(stretch, join));
        Range { least: length(-1.0), usual: length(0.0), most: length(1.0) }
    }
}

/// The pauses with which speech has just the length `target`; all are stretched alike. None where that is out of reach.
pub fn fit(
    measure: &Measure,
    target: Frames,
    ranges: &PauseRanges,
    join: &JoinOptions,
) -> Option<JoinOptions> {
    let Range { least, usual, most } = measure.lengths(ranges, join);
    if target < least || target > most {
        return None;
    }
    let share = |part: Frames, of: Frames| part.0 as f64 / of.0.max(1) as f64;
    let stretch = if target < usual {
        -share(usual - target, usual - least)
    } else {
        share(target - usual, most - usual)
    };
    let mut fitted = ranges.at(stretch, join);
    // What whole frames leave over, well below 2 ms, goes behind the last word.
    let length = measure.length(&fitted);
    fitted.tail = fitted.tail + (target - length) - (length - target);
    Some(fitted)
}
