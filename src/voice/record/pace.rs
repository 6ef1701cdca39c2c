//! How long words take to say.

use super::super::bank::Bank;

/// How fast a speaker reads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pace {
    /// Letters a second, one that stands for a whole syllable counted as two.
    pub letters_per_second: f64,
    /// Whether it was measured on the speaker's own recordings.
    pub measured: bool,
}

/// Careful reading: about 150 English words a minute, with the letters that words have in common text.
const CAREFUL: f64 = 12.0;
/// So many of the longest clips tell a speaker's pace: in short ones the ends weigh too much.
const CLIPS_HEARD: usize = 25;

impl Default for Pace {
    fn default() -> Pace {
        Pace { letters_per_second: CAREFUL, measured: false }
    }
}

impl Pace {
    /// The median pace of a voice's longest clips; of a voice without clips, that of careful reading.
    pub fn of(bank: &Bank<'_>) -> Pace {
        let mut clips: Vec<(usize, usize)> =
            bank.clips().iter().map(|clip| letters(&clip.words)).zip(0..).collect();
        clips.sort_by(|a, b| b.cmp(a));
        let heard = clips.into_iter().take(CLIPS_HEARD).filter_map(|(letters, clip)| {
            let samples = bank.sound(clip).ok()?.len();
            (samples > 0).then(|| letters as f64 * f64::from(super::super::SAMPLE_RATE) / samples as f64)
        });
        let mut paces: Vec<f64> = heard.filter(|pace| *pace > 0.0).collect();
        paces.sort_by(f64::total_cmp);
        let median = paces.get(paces.len() / 2);
        median.map_or(Pace::default(), |pace| Pace { letters_per_second: *pace, measured: true })
    }

    /// How long words take to say, in seconds, without any silence around them.
    pub fn seconds(&self, words: &str) -> f64 {
        letters(words) as f64 / self.letters_per_second
    }
}

/// The letters of a text. One that stands for a whole syllable, as in the Ethiopic script, counts as two.
fn letters(text: &str) -> usize {
    let weight = |c: char| if matches!(c, '\u{1200}'..='\u{139F}' | '\u{2D80}'..='\u{2DDF}') { 2 } else { 1 };
    text.chars().filter(|c| c.is_alphabetic()).map(weight).sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_count_and_spaces_and_marks_do_not() {
        assert_eq!(letters("Dig, and lift!"), 10);
        assert_eq!(letters("ng'ombe"), 6);
        // Four signs, each a consonant with its vowel.
        assert_eq!(letters("አስራ አንድ።"), 12);
    }

    #[test]
    fn time_is_letters_over_pace() {
        let pace = Pace { letters_per_second: 5.0, measured: true };
        assert_eq!(pace.seconds("Dig, and lift"), 2.0);
    }
}
