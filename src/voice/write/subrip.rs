//! SubRip (.srt): the same captions for players that know no other.

use super::captions::{CaptionOptions, captions, clock};
use crate::voice::{Sound, Spoken};

/// The captions of a message, numbered from 1.
pub fn subrip<S: Sound>(spoken: &Spoken<S>, options: &CaptionOptions) -> String {
    let mut text = String::new();
    for (index, caption) in captions(spoken, options).iter().enumerate() {
        let (from, to) = (clock(caption.from, ','), clock(caption.to, ','));
        // The format has no escapes; players take what stands in < > for markup.
        let words = caption.lines.join("\n").replace('<', "‹").replace('>', "›");
        text.push_str(&format!("{}\n{from} --> {to}\n{words}\n\n", index + 1));
    }
    text
}
