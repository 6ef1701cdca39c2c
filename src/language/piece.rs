//! What is spoken, in the order in which it is spoken.

/// A part of a spoken message.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece {
    /// Words that a recording covers.
    Words(Words),
    /// A pause.
    Pause(Pause),
}

/// Words between two boundaries of the message they come from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Words {
    /// The words as written, with the punctuation that follows them.
    pub text: String,
    /// What kind of words they are.
    pub role: Role,
    /// How the voice ends.
    pub intonation: Intonation,
}

/// What kind of words a piece is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// Literal text of a message.
    Phrase,
    /// A word of a number.
    Number,
    /// Text of a date or span.
    Date,
    /// Text of a measure.
    Unit,
}

/// How the voice ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Intonation {
    /// It goes on.
    Medial,
    /// It falls, as at the end of a sentence.
    Final,
}

impl Intonation {
    /// It in one word.
    pub fn name(self) -> &'static str {
        match self {
            Intonation::Medial => "medial",
            Intonation::Final => "final",
        }
    }
}

/// A pause, by what it stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pause {
    /// Within a sentence.
    Comma,
    /// After a sentence.
    Sentence,
    /// After a statement.
    Statement,
}

/// Words and marks of a literal text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Bit<'t> {
    Words(&'t str),
    /// The mark as written, and its pause.
    Mark(char, Pause),
}

fn pause_of(mark: char) -> Option<Pause> {
    match mark {
        '.' | '!' | '?' | '…' | '։' | '።' | '؟' | '।' => Some(Pause::Sentence),
        ',' | ';' | ':' | '،' | '؛' | '፣' | '፤' | '፥' => Some(Pause::Comma),
        _ => None,
    }
}

/// Cuts a literal text after each sentence, and takes the marks off its ends.
/// A comma with words on both sides stays in the words: one recording says both.
pub(super) fn bits(text: &str) -> Vec<Bit<'_>> {
    let mut bits = Vec::new();
    let mut rest = text.trim();
    while let Some(first) = rest.chars().next() {
        if let Some(pause) = pause_of(first) {
            bits.push(Bit::Mark(first, pause));
            rest = rest.get(first.len_utf8()..).unwrap_or_default().trim_start();
            continue;
        }
        let ends_here = |index: usize, mark: char| {
            let after = rest.get(index + mark.len_utf8()..).unwrap_or_default();
            match pause_of(mark) {
                Some(Pause::Comma) => after.trim().is_empty(),
                Some(_) => {
                    after.is_empty()
                        || after.starts_with(|c: char| c.is_whitespace() || pause_of(c).is_some())
                }
                None => false,
            }
        };
        let end = rest
            .char_indices()
            .find(|(index, c)| ends_here(*index, *c))
            .map_or(rest.len(), |(index, _)| index);
        bits.push(Bit::Words(rest.get(..end).unwrap_or_default().trim_end()));
        rest = rest.get(end..).unwrap_or_default();
    }
    bits
}

/// Puts runs of words and marks in order and settles how each ends.
#[derive(Debug, Default)]
pub(super) struct Assembly {
    pieces: Vec<Piece>,
}

impl Assembly {
    pub(super) fn text(&mut self, text: &str, role: Role) {
        for bit in bits(text) {
            match bit {
                Bit::Words(words) => self.words(words, role),
                Bit::Mark(mark, pause) => self.mark(mark, pause),
            }
        }
    }

    pub(super) fn words(&mut self, text: &str, role: Role) {
        let begins =
            matches!(self.pieces.last(), None | Some(Piece::Pause(Pause::Sentence | Pause::Statement)));
        let text = if begins { capitalized(text) } else { text.to_owned() };
        self.pieces.push(Piece::Words(Words { text, role, intonation: Intonation::Medial }));
    }

    fn mark(&mut self, mark: char, pause: Pause) {
        match self.pieces.last_mut() {
            Some(Piece::Words(words)) => {
                words.text.push(mark);
                if pause == Pause::Sentence {
                    words.intonation = Intonation::Final;
                }
                self.pieces.push(Piece::Pause(pause));
            }
            // Of two marks in a row the stronger one counts.
            Some(Piece::Pause(before)) => *before = pause.max(*before),
            None => {}
        }
    }

    /// The pieces, with the pause of a statement at the end.
    pub(super) fn finish(mut self) -> Vec<Piece> {
        if let Some(Piece::Pause(_)) = self.pieces.last() {
            self.pieces.pop();
        }
        if let Some(Piece::Words(words)) = self.pieces.last_mut() {
            words.intonation = Intonation::Final;
            self.pieces.push(Piece::Pause(Pause::Statement));
        }
        self.pieces
    }
}

/// A sentence may begin with a date or a number, which packs write in small letters.
fn capitalized(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_cut_after_sentences_and_keeps_inner_commas() {
        assert_eq!(
            bits(". Dig gently, and lift. Go on, "),
            [
                Bit::Mark('.', Pause::Sentence),
                Bit::Words("Dig gently, and lift"),
                Bit::Mark('.', Pause::Sentence),
                Bit::Words("Go on"),
                Bit::Mark(',', Pause::Comma),
            ]
        );
        assert_eq!(bits("  \n "), []);
        assert_eq!(bits("ቆፍር። አንሳ"), [Bit::Words("ቆፍር"), Bit::Mark('።', Pause::Sentence), Bit::Words("አንሳ")]);
    }

    #[test]
    fn marks_join_the_words_before_them_even_across_placeables() {
        let mut assembly = Assembly::default();
        assembly.text("Mark", Role::Phrase);
        assembly.words("five", Role::Number);
        assembly.text(". Go", Role::Phrase);
        let words =
            |text: &str, role, intonation| Piece::Words(Words { text: text.to_owned(), role, intonation });
        assert_eq!(
            assembly.finish(),
            [
                words("Mark", Role::Phrase, Intonation::Medial),
                words("five.", Role::Number, Intonation::Final),
                Piece::Pause(Pause::Sentence),
                words("Go", Role::Phrase, Intonation::Final),
                Piece::Pause(Pause::Statement),
            ]
        );
    }
}
