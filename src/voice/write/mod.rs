//! Spoken messages as files: one file of code for each format. Everything
//! here is a plain function from a message and options to bytes or text; a
//! broadcast WAV, which is large, goes to wherever it is written piece by piece.

mod broadcast;
mod captions;
mod cue_sheet;
mod mp3;
mod opus;
mod riff;
mod stitched;
mod subrip;
mod telephone;
mod wav;
mod webvtt;

pub use broadcast::{BroadcastOptions, BroadcastWav};
pub use captions::CaptionOptions;
pub use cue_sheet::{CueLabels, CueOptions, Mark, cue_sheet};
pub use mp3::{MP3_BUILT_IN, mp3};
pub use opus::{OpusFile, OpusOptions, opus};
pub use stitched::{Stitch, StitchOptions, playlist, voicexml};
pub use subrip::subrip;
pub use telephone::{Law, telephone_pcm, telephone_wav};
pub use wav::{WavOptions, wav};
pub use webvtt::{VttOptions, chapters_vtt, webvtt};

/// Why a format cannot hold a message.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
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
    /// The encoder failed.
    #[error("Opus: {0}")]
    Opus(String),
    /// The encoder failed.
    #[error("MP3: {0}")]
    Mp3(String),
    /// MP3 was not built in.
    #[error("this program was built without MP3")]
    WithoutMp3,
}
