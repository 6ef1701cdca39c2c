//! `kabla speak`

use std::path::{Path, PathBuf};

use clap::{Args, ValueEnum};

use super::overrides::{OverrideArguments, topic};
use super::progress::Bar;
use crate::app::{
    self, Channel, ChosenClip, Code, Data, Error, Finding, Law, MessageClips, SpeakRequest, StepKind,
};

#[derive(Debug, Args)]
pub(super) struct Arguments {
    /// The case, a TOML file.
    case: PathBuf,
    /// Language tag, e.g. sw; the case's own where none is given.
    #[arg(long, value_name = "TAG")]
    language: Option<String>,
    #[command(flatten)]
    overrides: OverrideArguments,
    /// What the sound is for.
    #[arg(long = "for", value_enum)]
    channel: For,
    /// The recorded voice; the pack's own where none is given.
    #[arg(long, value_name = "NAME")]
    voice: Option<String>,
    /// Only this topic, e.g. mark-plants; may be given again. Without it, every topic.
    #[arg(long = "topic", value_name = "TOPIC", value_parser = topic)]
    topics: Vec<StepKind>,
    /// For the radio: MP3 besides (in programs built with it).
    #[arg(long)]
    mp3: bool,
    /// For phones: how the telephone network compands, a in most countries; mu in North America and Japan.
    #[arg(long, value_enum)]
    law: Option<LawName>,
    /// For chat and meetings: thousands of bits a second, 16 to 24; 20 where none is given, 24 for meetings.
    #[arg(long, value_name = "KBIT")]
    kbit: Option<u32>,
    /// For meetings: seconds to talk after each chapter; 20 where none is given.
    #[arg(long, value_name = "SECONDS")]
    talk: Option<u32>,
    /// Folder for the messages, their cue sheets and captions.
    #[arg(long, value_name = "DIR", required_unless_present = "explain")]
    out: Option<PathBuf>,
    /// Tells which clips would be chosen, among which others, and how they meet; writes nothing.
    #[arg(long, conflicts_with = "out")]
    explain: bool,
    /// With --explain: as JSON.
    #[arg(long, requires = "explain")]
    json: bool,
}

#[derive(Debug, Clone, Copy, PartialEq, ValueEnum)]
enum For {
    /// 48 kHz WAV at -23 LUFS, with what stations read beside the sound.
    Radio,
    /// 8 kHz G.711 and 16-bit WAV, VoiceXML and playlists with their clips.
    Phone,
    /// Voice notes (Ogg Opus), small enough for poor data.
    Chat,
    /// One file with chapters, questions and time to talk (Ogg Opus and WAV).
    Meeting,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum LawName {
    /// A-law.
    A,
    /// µ-law.
    Mu,
}

impl Arguments {
    /// The channel with its settings.
    fn channel(&self) -> Result<Channel, Error> {
        let given = [
            ("--mp3", self.mp3, &[For::Radio][..]),
            ("--law", self.law.is_some(), &[For::Phone]),
            ("--kbit", self.kbit.is_some(), &[For::Chat, For::Meeting]),
            ("--talk", self.talk.is_some(), &[For::Meeting]),
        ];
        let stray = given.iter().filter(|(_, given, channels)| *given && !channels.contains(&self.channel));
        let finding = |(option, ..): &(&str, bool, &[For])| {
            Finding::error(Code::NO_USE, "does nothing for this channel")
                .field(*option)
                .hint("leave it out; see --help")
        };
        let findings: Vec<Finding> = stray.map(finding).collect();
        if !findings.is_empty() {
            return Err(Error::Input(findings));
        }
        Ok(match self.channel {
            For::Radio => Channel::Radio { mp3: self.mp3 },
            For::Phone => Channel::Phone { law: self.law.map_or(Law::A, Law::from) },
            For::Chat => Channel::Chat { kbit: self.kbit.unwrap_or(20) },
            For::Meeting => Channel::Meeting { kbit: self.kbit.unwrap_or(24), talk: self.talk.unwrap_or(20) },
        })
    }
}

impl From<LawName> for Law {
    fn from(name: LawName) -> Law {
        match name {
            LawName::A => Law::A,
            LawName::Mu => Law::Mu,
        }
    }
}

pub(super) fn run(data: &dyn Data, arguments: Arguments) -> Result<(), Error> {
    let channel = arguments.channel()?;
    let request = SpeakRequest {
        case: &arguments.case,
        overrides: arguments.overrides.into(),
        language: arguments.language.as_deref(),
        voice: arguments.voice.as_deref(),
        topics: &arguments.topics,
        channel,
        out: arguments.out.as_deref().unwrap_or(Path::new("")),
    };
    if arguments.explain {
        let messages = app::explain(data, request)?;
        return match arguments.json {
            true => super::print_json(&serde_json::json!(messages)),
            false => super::print(&messages.iter().map(table).collect::<Vec<_>>().join("\n")),
        };
    }
    let mut bar = Bar::new();
    let made = app::speak(data, request, &mut bar.callback())?;
    drop(bar);
    super::table(&made)
}

/// A message's clips, a line each.
fn table(message: &MessageClips) -> String {
    let header = ["WORDS", "CLIP", "ENDS", "MEETS THE NEXT", "INSTEAD OF"].map(str::to_owned);
    let rows: Vec<[String; 5]> = [header].into_iter().chain(message.clips.iter().map(row)).collect();
    format!("{}\n{}", message.message, super::columns(&rows))
}

fn row(clip: &ChosenClip) -> [String; 5] {
    let ends = match clip.wanted == clip.intonation {
        true => clip.intonation.to_owned(),
        false => format!("{}, wanted {}", clip.intonation, clip.wanted),
    };
    let meets = clip.meets.map(|meets| {
        let behind = clip.pause_s.map(|pause| format!(", {pause:.1} s later")).unwrap_or_default();
        format!(
            "{:.2} (level {:.1} dB, pitch {:.1} semitones, spectrum {:.1} dB{behind})",
            meets.roughness, meets.level_db, meets.pitch_semitones, meets.spectrum_db
        )
    });
    let others = clip.others.join(", ");
    [clip.words.clone(), clip.clip.clone(), ends, meets.unwrap_or_default(), others]
}
