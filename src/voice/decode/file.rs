//! What a sound file is, and why it cannot be used.

/// A minute of stereo at 192 kHz and 24 bits.
pub(super) const MOST_BYTES: usize = 70_000_000;
/// The longest phrase that anybody speaks in one breath is far shorter.
pub(super) const MOST_SECONDS: u64 = 60;

/// Why a sound file cannot be used.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub(in crate::voice) enum Problem {
    #[error("is empty")]
    Empty,
    #[error("is larger than {} MB", MOST_BYTES / 1_000_000)]
    TooLarge,
    #[error("cannot be decoded ({0})")]
    Broken(String),
    #[error("has {0} channels")]
    Channels(usize),
    #[error("has {0} samples a second")]
    Rate(u32),
    #[error("is longer than {0} seconds")]
    TooLong(u64),
    #[error("has samples that are no numbers")]
    NotFinite,
    #[error("has samples a thousand times beyond full scale")]
    TooLoud,
    #[error("is silent")]
    Silent,
}

impl Problem {
    pub(in crate::voice) fn hint(&self) -> &'static str {
        match self {
            Problem::Empty | Problem::Silent => "record it again",
            Problem::TooLong(seconds) if *seconds > MOST_SECONDS => "cut it into several recordings",
            Problem::TooLarge | Problem::TooLong(_) => "cut the recording to the phrase",
            Problem::Broken(_) | Problem::NotFinite | Problem::TooLoud => {
                "export it again as FLAC or 16-bit WAV"
            }
            Problem::Channels(_) => "export it in mono",
            Problem::Rate(_) => "export it at 48000 samples a second",
        }
    }
}

/// The kinds of file that can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::voice) enum Kind {
    Wav,
    Flac,
    Mp3,
    /// In MP4, or bare (ADTS).
    Aac,
    Vorbis,
    Opus,
    OggFlac,
}

impl Kind {
    /// By the first bytes of a file; `None` where they are of no known kind.
    pub(super) fn of(head: &[u8]) -> Option<Kind> {
        let at = |place: usize, mark: &[u8]| head.get(place..place + mark.len()) == Some(mark);
        match head {
            _ if at(0, b"RIFF") || at(0, b"RF64") => Some(Kind::Wav),
            _ if at(0, b"fLaC") => Some(Kind::Flac),
            _ if at(0, b"OggS") && at(28, b"OpusHead") => Some(Kind::Opus),
            _ if at(0, b"OggS") && at(28, b"\x7fFLAC") => Some(Kind::OggFlac),
            _ if at(0, b"OggS") && at(28, b"\x01vorbis") => Some(Kind::Vorbis),
            _ if at(4, b"ftyp") => Some(Kind::Aac),
            _ if at(0, b"ID3") => Some(Kind::Mp3),
            [0xFF, second, ..] if second & 0xF6 == 0xF0 => Some(Kind::Aac),
            [0xFF, second, ..] if second & 0xE0 == 0xE0 => Some(Kind::Mp3),
            _ => None,
        }
    }

    /// What users call it.
    pub(in crate::voice) fn name(self) -> &'static str {
        match self {
            Kind::Wav => "WAV",
            Kind::Flac => "FLAC",
            Kind::Mp3 => "MP3",
            Kind::Aac => "AAC",
            Kind::Vorbis => "Ogg Vorbis",
            Kind::Opus => "Ogg Opus",
            Kind::OggFlac => "Ogg FLAC",
        }
    }

    /// Whether a file's ending belongs to it.
    pub(in crate::voice) fn goes_by(self, ending: &str) -> bool {
        let endings: &[&str] = match self {
            Kind::Wav => &["wav", "wave", "bwf"],
            Kind::Flac => &["flac"],
            Kind::Mp3 => &["mp3"],
            Kind::Aac => &["m4a", "mp4", "aac", "m4b"],
            Kind::Vorbis => &["ogg", "oga"],
            Kind::Opus => &["opus", "ogg", "oga"],
            Kind::OggFlac => &["oga", "ogg", "flac"],
        };
        endings.contains(&ending)
    }

    /// Whether a length that differs from the promised one means that sound is missing.
    pub(super) fn is_exact(self) -> bool {
        matches!(self, Kind::Wav | Kind::Flac | Kind::OggFlac)
    }
}

/// What a decoded file was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::voice) struct Sound {
    pub(in crate::voice) kind: Kind,
    /// Frames a second, as they were handed over.
    pub(in crate::voice) rate: u32,
    /// 1 or 2; two are averaged.
    pub(in crate::voice) channels: usize,
    /// Bits of a sample, where the file says.
    pub(in crate::voice) bits: Option<u32>,
    /// Frames handed over.
    pub(in crate::voice) frames: u64,
}
