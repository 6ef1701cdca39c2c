//! Captions: a message's words in short lines, with their times. WebVTT and
//! SubRip write the same ones.

use crate::language::Pause;
use crate::voice::{Frames, Sound, Spoken, Timed};

/// How captions are broken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CaptionOptions {
    /// Characters to a line; a longer word stands alone.
    pub line: usize,
    /// Lines to a caption.
    pub lines: usize,
}

impl Default for CaptionOptions {
    fn default() -> Self {
        CaptionOptions { line: 42, lines: 2 }
    }
}

/// Some lines, and when they are shown.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Caption {
    pub(super) from: Frames,
    pub(super) to: Frames,
    pub(super) lines: Vec<String>,
}

/// The captions of a message: one for each sentence, or more where it is long.
pub(super) fn captions<S: Sound>(spoken: &Spoken<S>, options: &CaptionOptions) -> Vec<Caption> {
    let mut captions = Vec::new();
    let ends_sentence = |line: &Timed| matches!(line.pause, Some(Pause::Sentence | Pause::Statement));
    for sentence in spoken.lines.split_inclusive(ends_sentence) {
        let words: Vec<Word<'_>> = sentence.iter().flat_map(words_in).collect();
        for caption in break_lines(&words, options.line).chunks(options.lines.max(1)) {
            let first = caption.first().and_then(|line| line.first());
            let last = caption.last().and_then(|line| line.last());
            let (Some(first), Some(last)) = (first, last) else { continue };
            let lines = caption.iter().map(|line| text_of(line)).collect();
            captions.push(Caption { from: first.from, to: last.to, lines });
        }
    }
    captions
}

/// A word and when it is said.
#[derive(Debug, Clone, Copy)]
struct Word<'t> {
    text: &'t str,
    from: Frames,
    to: Frames,
}

impl Word<'_> {
    fn width(&self) -> usize {
        self.text.chars().count()
    }
}

/// The words of a clip, which share its time by their lengths.
fn words_in(line: &Timed) -> Vec<Word<'_>> {
    let texts = words_of(&line.words);
    let width = |text: &str| text.chars().count() as u64 + 1;
    let all: u64 = texts.iter().map(|text| width(text)).sum();
    let mut said = 0;
    let time = |said: u64| line.from + Frames((line.to - line.from).0 * said / all.max(1));
    let word = |text| {
        let from = time(said);
        said += width(text);
        Word { text, from, to: time(said) }
    };
    texts.into_iter().map(word).collect()
}

pub(super) fn words_of(text: &str) -> Vec<&str> {
    text.split_whitespace().collect()
}

fn text_of(line: &[Word<'_>]) -> String {
    line.iter().map(|word| word.text).collect::<Vec<_>>().join(" ")
}

/// Breaks words into lines of at most `width` characters: as few as can be,
/// and of those the most even ones.
fn break_lines<'w, 't>(words: &'w [Word<'t>], width: usize) -> Vec<&'w [Word<'t>]> {
    // best[start]: lines and squared room left from there to the end, and the end of the first line.
    let mut best: Vec<(usize, usize, usize)> = vec![(0, 0, 0); words.len() + 1];
    for start in (0..words.len()).rev() {
        let mut used = 0;
        let mut least = (usize::MAX, usize::MAX, start + 1);
        for (index, word) in words.iter().enumerate().skip(start) {
            used += word.width() + usize::from(index > start);
            if used > width && index > start {
                break;
            }
            let (lines, room, _) = best.get(index + 1).copied().unwrap_or_default();
            least = least.min((lines + 1, room + width.saturating_sub(used).pow(2), index + 1));
        }
        if let Some(slot) = best.get_mut(start) {
            *slot = least;
        }
    }
    let mut lines = Vec::new();
    let mut at = 0;
    while let Some((_, _, end)) = best.get(at).filter(|(lines, ..)| *lines > 0) {
        lines.extend(words.get(at..*end));
        at = *end;
    }
    lines
}

/// Hours, minutes, seconds and milliseconds, with a mark before the last.
pub(super) fn clock(frames: Frames, mark: char) -> String {
    let millis = frames.millis();
    let (minutes, seconds) = (millis / 60_000, millis / 1000 % 60);
    format!("{:02}:{:02}:{seconds:02}{mark}{:03}", minutes / 60, minutes % 60, millis % 1000)
}
