//! When two texts are the same words.

/// Marks that do not change what is said before them.
const FINAL_MARKS: &[char] = &[
    '.', ',', ';', ':', '!', '?', '…', '"', '”', '»', ')', ']', '։', '؟', '،', '؛', '።', '፣', '፤', '፥', '፦',
    '።', '।',
];

/// A word as written and as compared.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Token<'t> {
    pub(super) written: &'t str,
    pub(super) key: String,
}

/// The words of a text. Case, spaces and the marks at the text's end do not
/// count; everything else does.
pub(super) fn tokens(text: &str) -> Vec<Token<'_>> {
    let bare = text.trim_end_matches(|c: char| c.is_whitespace() || FINAL_MARKS.contains(&c));
    let keys = bare.split_whitespace().map(str::to_lowercase);
    let mut tokens: Vec<Token<'_>> =
        keys.zip(text.split_whitespace()).map(|(key, written)| Token { written, key }).collect();
    // A mark that stands alone at the end belongs to the last word's place, not to a word.
    tokens.retain(|token| !token.key.is_empty());
    tokens
}

/// The words of a text as one comparable string; empty where there are none.
pub(super) fn key(text: &str) -> String {
    join_keys(&tokens(text))
}

/// A text without the marks at its end, and these.
pub(super) fn part_marks(text: &str) -> (&str, &str) {
    text.split_at(text.trim_end_matches(|c: char| c.is_whitespace() || FINAL_MARKS.contains(&c)).len())
}

pub(super) fn join_keys(tokens: &[Token<'_>]) -> String {
    tokens.iter().map(|token| token.key.as_str()).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_spaces_and_final_marks_do_not_count() {
        for same in [
            "Dig only in dry soil, and lift",
            "  dig  ONLY in dry\tsoil, and lift.",
            "Dig only in dry soil, and lift …»",
        ] {
            assert_eq!(key(same), "dig only in dry soil, and lift");
        }
        assert_eq!(key("ሃያ አምስት።"), "ሃያ አምስት");
        assert_eq!(key(" … "), "");
    }

    #[test]
    fn inner_marks_and_accents_count() {
        assert_ne!(key("soil, and lift"), key("soil and lift"));
        assert_ne!(key("ọ̀kan"), key("ọkan"));
        assert_ne!(key("ng'"), key("ng"));
    }

    #[test]
    fn words_keep_their_spelling() {
        let words: Vec<_> =
            tokens("Mark Five.").into_iter().map(|token| (token.written, token.key)).collect();
        assert_eq!(words, [("Mark", "mark".to_owned()), ("Five.", "five".to_owned())]);
    }
}
