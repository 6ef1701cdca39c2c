//! How long a person takes to read a text aloud.

use super::Measure;
use crate::language::{Pause, Piece};
use crate::voice::{Frames, SAMPLE_RATE};

/// What reading pieces aloud comes to, at so many syllables a second.
///
/// A run of vowels counts as one syllable, as does each letter of a script
/// whose letters are syllables; numbers are counted in words. An estimate.
pub fn estimate(pieces: &[Piece], syllables_per_second: f64) -> Measure {
    let mut measure = Measure { statements: 1, ..Measure::default() };
    let mut syllables = 0;
    for piece in pieces {
        match piece {
            Piece::Words(words) => syllables += count(&words.text),
            Piece::Pause(Pause::Comma) => measure.commas += 1,
            Piece::Pause(Pause::Sentence) => measure.sentences += 1,
            Piece::Pause(Pause::Statement) => {}
        }
    }
    let seconds = syllables as f64 / syllables_per_second.max(0.1);
    measure.speech = Frames((seconds * f64::from(SAMPLE_RATE)).round() as u64);
    measure
}

fn count(text: &str) -> usize {
    text.split_whitespace().map(|word| in_word(word).max(1)).sum()
}

fn in_word(word: &str) -> usize {
    let mut syllables = 0;
    let mut after_vowel = false;
    for letter in word.chars().flat_map(char::to_lowercase) {
        let whole = ('\u{1200}'..='\u{135a}').contains(&letter);
        let vowel = "aeiouyáàâãäéèêëíìîïóòôõöúùûüœæ".contains(letter);
        syllables += usize::from(whole || vowel && !after_vowel);
        after_vowel = vowel;
    }
    syllables
}
