//! Languages that nobody speaks, made from English: what stays plain in them is not translatable yet.

use std::borrow::Cow;

use super::texts::{SOURCE, text_of};
use super::wording::rewrite;
use crate::data::Data;

/// English with accents on every letter, two fifths longer.
pub const ACCENTED: &str = "en-XA";
/// English in Arabic letters, from right to left.
pub const MIRRORED: &str = "ar-XB";

/// Data in which the two languages have packs.
pub struct Pseudo<'d>(&'d dyn Data);

impl<'d> Pseudo<'d> {
    /// The data with the two languages besides its own.
    pub fn new(data: &'d dyn Data) -> Pseudo<'d> {
        Pseudo(data)
    }
}

impl Data for Pseudo<'_> {
    fn read(&self, path: &str) -> Option<Cow<'_, [u8]>> {
        let made = [ACCENTED, MIRRORED].into_iter().find_map(|tag| {
            Some((tag, path.strip_prefix("locales/")?.strip_prefix(tag)?.strip_prefix('/')?))
        });
        let Some((tag, file)) = made else { return self.0.read(path) };
        let english = text_of(self.0, SOURCE, file)?;
        let text = match file {
            "written.ftl" => rewrite(&english, if tag == ACCENTED { accented } else { mirrored }),
            "pack.toml" => {
                let text = english.replace("tag = \"en\"", &format!("tag = \"{tag}\""));
                let text = text.replace("name = \"English\"", &format!("name = \"{}\"", accented("Pseudo")));
                if tag == MIRRORED {
                    text.replace("\"ltr\"", "\"rtl\"").replace("\"Latn\"", "\"Arab\"")
                } else {
                    text
                }
            }
            "review.toml" => return None,
            _ => english,
        };
        Some(Cow::Owned(text.into_bytes()))
    }

    fn list(&self, folder: &str) -> Vec<String> {
        let mut names = self.0.list(folder);
        if folder == "locales" {
            names.extend([ACCENTED, MIRRORED].map(str::to_owned));
        }
        names
    }
}

fn accented(text: &str) -> String {
    let mut out = String::with_capacity(text.len() * 2);
    for c in text.chars() {
        match c {
            'a' => out.push_str("áå"),
            'e' => out.push_str("éê"),
            'i' => out.push_str("íï"),
            'o' => out.push_str("óö"),
            'u' => out.push_str("úü"),
            'A'..='Z' | 'b'..='z' => {
                out.push(ACCENTS.iter().find(|(of, _)| *of == c).map_or('Ž', |(_, to)| *to))
            }
            other => out.push(other),
        }
    }
    out
}

const ACCENTS: [(char, char); 47] = [
    ('b', 'ƀ'),
    ('c', 'ç'),
    ('d', 'ð'),
    ('f', 'ƒ'),
    ('g', 'ĝ'),
    ('h', 'ĥ'),
    ('j', 'ĵ'),
    ('k', 'ķ'),
    ('l', 'ļ'),
    ('m', 'ṁ'),
    ('n', 'ñ'),
    ('p', 'þ'),
    ('q', 'ɋ'),
    ('r', 'ŕ'),
    ('s', 'š'),
    ('t', 'ţ'),
    ('v', 'ṽ'),
    ('w', 'ŵ'),
    ('x', 'ẋ'),
    ('y', 'ý'),
    ('z', 'ž'),
    ('A', 'Å'),
    ('B', 'Ɓ'),
    ('C', 'Ç'),
    ('D', 'Ð'),
    ('E', 'É'),
    ('F', 'Ƒ'),
    ('G', 'Ĝ'),
    ('H', 'Ĥ'),
    ('I', 'Î'),
    ('J', 'Ĵ'),
    ('K', 'Ķ'),
    ('L', 'Ļ'),
    ('M', 'Ṁ'),
    ('N', 'Ñ'),
    ('O', 'Ö'),
    ('P', 'Þ'),
    ('Q', 'Ɋ'),
    ('R', 'Ŕ'),
    ('S', 'Š'),
    ('T', 'Ţ'),
    ('U', 'Û'),
    ('V', 'Ṽ'),
    ('W', 'Ŵ'),
    ('X', 'Ẋ'),
    ('Y', 'Ý'),
    ('Z', 'Ž'),
];

/// Each letter as one of the 28 of the Arabic alphabet.
fn mirrored(text: &str) -> String {
    const LETTERS: [char; 26] = [
        'ا', 'ب', 'ت', 'ث', 'ج', 'ح', 'خ', 'د', 'ذ', 'ر', 'ز', 'س', 'ش', 'ص', 'ض', 'ط', 'ظ', 'ع', 'غ', 'ف',
        'ق', 'ك', 'ل', 'م', 'ن', 'ه',
    ];
    let letter = |c: char| {
        let index = (c.to_ascii_lowercase() as usize).checked_sub('a' as usize)?;
        LETTERS.get(index).copied().filter(|_| c.is_ascii_alphabetic())
    };
    text.chars().map(|c| letter(c).unwrap_or(c)).collect()
}
