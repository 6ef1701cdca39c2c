//! WebVTT: captions for those who watch where they cannot hear, and chapters.

use super::captions::{CaptionOptions, captions, clock, words_of};
use crate::voice::channel::Chapter;
use crate::voice::{Frames, Sound, Spoken, Status};

/// How captions are written.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct VttOptions {
    /// A sentence for whoever opens the file: this is a stand-in voice.
    pub stand_in_remark: String,
    /// How lines are broken.
    pub captions: CaptionOptions,
}

/// The captions of a message: one for each sentence, or more where it is long.
pub fn webvtt<S: Sound>(spoken: &Spoken<S>, options: &VttOptions) -> String {
    let mut blocks = vec!["WEBVTT".to_owned()];
    if spoken.voice.status == Status::StandIn && !options.stand_in_remark.trim().is_empty() {
        blocks.push(format!("NOTE {}", escape(&words_of(&options.stand_in_remark).join(" "))));
    }
    for caption in captions(spoken, &options.captions) {
        blocks.push(cue(caption.from, caption.to, &escape(&caption.lines.join("\n"))));
    }
    blocks.join("\n\n") + "\n"
}

/// A track of chapters.
pub fn chapters_vtt(chapters: &[Chapter]) -> String {
    let mut blocks = vec!["WEBVTT".to_owned()];
    let title = |chapter: &Chapter| escape(&words_of(&chapter.title).join(" "));
    blocks.extend(chapters.iter().map(|chapter| cue(chapter.from, chapter.to, &title(chapter))));
    blocks.join("\n\n") + "\n"
}

fn cue(from: Frames, to: Frames, text: &str) -> String {
    format!("{} --> {}\n{text}", clock(from, '.'), clock(to, '.'))
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}
