//! Spoken messages as files: one file of code for each format. Everything
//! here is a plain function from a message and options to bytes or text.

mod cue_sheet;
mod wav;
mod webvtt;

pub use cue_sheet::{CueLabels, CueOptions, cue_sheet};
pub use wav::{WavOptions, wav};
pub use webvtt::{VttOptions, webvtt};

/// Why a format cannot hold a message.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum WriteError {
    /// The format ends before the message does.
    #[error("{frames} frames are too many for a WAV file")]
    TooLong {
        /// The message's frames.
        frames: usize,
    },
    /// The writer failed.
    #[error("WAV: {0}")]
    Wav(String),
}
