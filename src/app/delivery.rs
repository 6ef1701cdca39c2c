//! Spoken messages as the files of a channel.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use super::message::Message;
use super::output::Output;
use super::{Code, Error, Finding, Length, Made, ReadCase};
use crate::guidance::{Subject, Variable};
use crate::language::{Label, Pack, Pause, WordingError};
use crate::voice::channel::{self, Meeting, PHONE_RATE, Section, room_tone};
use crate::voice::write::{
    BroadcastOptions, BroadcastWav, CaptionOptions, CueLabels, CueOptions, Law, Mark, OpusOptions, Stitch,
    StitchOptions, VttOptions, WavOptions, chapters_vtt, cue_sheet, mp3, opus, playlist, subrip,
    telephone_pcm, telephone_wav, voicexml, webvtt,
};
use crate::voice::{Bank, Composed, Frames, JoinOptions, Sound, Spoken, Status, Timed, VoiceError};

/// What messages are for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Channel {
    /// A station: 48 kHz WAV at -23 LUFS.
    Radio {
        /// MP3 besides.
        mp3: bool,
    },
    /// A telephone service: 8 kHz, with what it needs to stitch the clips itself.
    Phone {
        /// How it compands.
        law: Law,
    },
    /// Voice notes: Ogg Opus.
    Chat {
        /// Thousands of bits a second.
        kbit: u32,
    },
    /// One file for a meeting, with chapters and time to talk.
    Meeting {
        /// Thousands of bits a second.
        kbit: u32,
        /// How long the people talk after each chapter, in seconds.
        talk: u32,
    },
}

impl Channel {
    /// Checks what is asked for.
    ///
    /// # Errors
    /// What no file can be made with.
    pub(super) fn check(self) -> Result<(), Finding> {
        let (kbit, talk) = match self {
            Channel::Radio { .. } | Channel::Phone { .. } => return Ok(()),
            Channel::Chat { kbit } => (kbit, 0),
            Channel::Meeting { kbit, talk } => (kbit, talk),
        };
        if !(16..=24).contains(&kbit) {
            let finding =
                Finding::error(Code::OUT_OF_RANGE, format!("{kbit} kbit/s is not possible")).argument("kbit");
            return Err(finding.hint("write a number from 16 to 24"));
        }
        if talk > 600 {
            let finding = Finding::error(Code::OUT_OF_RANGE, format!("{talk} seconds are too long to talk"))
                .argument("talk");
            return Err(finding.hint("write at most 600; the player can be stopped for longer"));
        }
        Ok(())
    }
}

/// Where spoken messages become files.
pub(super) struct Delivery<'a> {
    pub(super) pack: &'a Pack,
    pub(super) read: &'a ReadCase,
    pub(super) bank: &'a Bank<'a>,
    pub(super) out: &'a Path,
    pub(super) output: &'a mut Output,
}

type Voiced<'b> = (Message, Composed<'b>);

impl<'b> Delivery<'b> {
    /// Makes the files of messages. Where each stands alone, it is written before the next is spoken.
    pub(super) fn deliver(
        mut self,
        channel: Channel,
        voiced: impl Iterator<Item = Result<Voiced<'b>, Error>>,
    ) -> Result<Vec<Made>, Error> {
        match channel {
            Channel::Radio { mp3 } => voiced.map(|voiced| self.radio(&voiced?, mp3)).collect(),
            Channel::Phone { law } => self.phones(&voiced.collect::<Result<Vec<_>, _>>()?, law),
            Channel::Chat { kbit } => voiced.map(|voiced| self.chat(&voiced?, kbit)).collect(),
            Channel::Meeting { kbit, talk } => {
                self.meeting(&voiced.collect::<Result<Vec<_>, _>>()?, kbit, talk)
            }
        }
    }

    fn radio(&mut self, (message, spoken): &Voiced<'_>, with_mp3: bool) -> Result<Made, Error> {
        let stem = format!("{}-{}", self.pack.tag(), message.name);
        let markers = spoken.lines.iter().map(|line| (line.from, line.words.clone())).collect();
        self.broadcast(&stem, &message.title, spoken, markers)?;
        if with_mp3 {
            self.add(&stem, "mp3", &mp3(&spoken.samples.samples()).map_err(VoiceError::from)?)?;
        }
        self.words(&stem, &message.title, spoken, None, Vec::new())?;
        let also = if with_mp3 { "MP3 (.mp3), " } else { "" };
        let what = format!("radio message, with {also}cue sheet (.cue.txt) and captions (.vtt, .srt)");
        Ok(self.made(&stem, "wav", &what, "radio producer", Length::Seconds(spoken.length().seconds())))
    }

    /// A segment for a station, with what is heard beside the words.
    pub(super) fn segment(
        mut self,
        stem: &str,
        title: &str,
        spoken: &Spoken,
        music: Vec<Timed>,
    ) -> Result<(), Error> {
        let mut markers: Vec<(Frames, String)> =
            spoken.lines.iter().chain(&music).map(|line| (line.from, line.words.clone())).collect();
        markers.sort_by_key(|(from, _)| *from);
        self.broadcast(stem, title, spoken, markers)?;
        let marks = music.into_iter().map(|line| Mark { from: line.from, to: line.to, words: line.words });
        self.words(stem, title, spoken, None, marks.collect())
    }

    /// Adds a WAV file that says of itself what stations ask for.
    fn broadcast<S: Sound>(
        &mut self,
        stem: &str,
        title: &str,
        spoken: &Spoken<S>,
        markers: Vec<(Frames, String)>,
    ) -> Result<(), Error> {
        let stand_in = if spoken.voice.status == Status::StandIn { "; stand-in voice" } else { "" };
        let options = BroadcastOptions {
            description: format!("{title} ({}{stand_in})", self.pack.tag()),
            date: self.read.case.today,
            loudness: spoken.loudness,
            tool: format!("kabla {}", env!("CARGO_PKG_VERSION")),
            markers,
            wav: WavOptions::default(),
        };
        let wave = BroadcastWav::new(&spoken.samples, &options).map_err(VoiceError::from)?;
        self.output.add_with(&self.path(stem, "wav"), |file| wave.write(file))
    }

    fn phones(&mut self, voiced: &[Voiced<'_>], law: Law) -> Result<Vec<Made>, Error> {
        let folder = format!("{}-phone-clips", self.pack.tag());
        let files = self.clip_files(voiced);
        let mut made = Vec::new();
        for (message, spoken) in voiced {
            let stem = format!("{}-{}-phone", self.pack.tag(), message.name);
            let sound = channel::phone(spoken).map_err(VoiceError::from)?;
            self.add(&stem, "wav", &telephone_wav(&sound.samples, law).map_err(VoiceError::from)?)?;
            self.add(&stem, "pcm.wav", &telephone_pcm(&sound.samples).map_err(VoiceError::from)?)?;
            let stitches = stitches(spoken, &folder, &files);
            let options = StitchOptions {
                id: message.name.to_owned(),
                language: self.pack.tag(),
                title: message.title.clone(),
                remark: self.stand_in_remark()?,
            };
            self.add(&stem, "vxml", voicexml(&stitches, &options).as_bytes())?;
            self.add(&stem, "m3u8", playlist(&stitches, &message.title).as_bytes())?;
            self.words(&stem, &message.title, spoken, Some(sound.level.dbov), Vec::new())?;
            let what = "phone message in G.711, with 16 bits (.pcm.wav), VoiceXML (.vxml), playlist (.m3u8), cue sheet (.cue.txt) and captions (.vtt, .srt)";
            let seconds = sound.samples.len() as f64 / f64::from(PHONE_RATE);
            made.push(self.made(&stem, "wav", what, "phone service", Length::Seconds(seconds)));
        }
        let count = self.phone_clips(&folder, &files, law)?;
        let what = format!("{count} clips and pauses in G.711, for VoiceXML and playlists");
        made.push(Made {
            path: self.out.join(&folder),
            ..self.made("", "", &what, "phone service", Length::Unmeasured)
        });
        Ok(made)
    }

    /// By clip, the name of its file for phones.
    fn clip_files(&self, voiced: &[Voiced<'_>]) -> BTreeMap<String, String> {
        let clips: BTreeSet<&str> =
            voiced.iter().flat_map(|(_, spoken)| &spoken.lines).map(|line| line.clip.as_str()).collect();
        let mut taken: BTreeSet<String> = pauses().map(pause_file).into();
        let mut named = |clip: &str| {
            let plain = clip.replace('/', "-");
            let short = plain.rsplit_once('.').map_or(plain.as_str(), |(name, _)| name);
            // Two clips may differ in their folder's dash or their ending only.
            let mut name = format!("{short}.wav");
            while !taken.insert(name.to_lowercase()) {
                name = format!("x-{name}");
            }
            name
        };
        clips.into_iter().map(|clip| (clip.to_owned(), named(clip))).collect()
    }

    fn phone_clips(
        &mut self,
        folder: &str,
        files: &BTreeMap<String, String>,
        law: Law,
    ) -> Result<usize, Error> {
        let place = |file: &str| self.bank.clips().iter().position(|clip| clip.file == file);
        let wanted: Vec<(usize, &String)> =
            files.iter().filter_map(|(clip, name)| Some((place(clip)?, name))).collect();
        let places: Vec<usize> = wanted.iter().map(|(place, _)| *place).collect();
        let sounds = channel::phone_clips(self.bank, &places).map_err(VoiceError::Bank)?;
        let clips = wanted.iter().map(|(_, name)| (*name).clone()).zip(sounds);
        let silences =
            pauses().map(|pause| (pause_file(pause), room_tone(JoinOptions::default().pause(pause))));
        let mut count = 0;
        for (name, samples) in clips.chain(silences) {
            let wave = telephone_wav(&samples, law).map_err(VoiceError::from)?;
            self.output.add(&self.out.join(folder).join(name), &wave)?;
            count += 1;
        }
        Ok(count)
    }

    fn chat(&mut self, (message, spoken): &Voiced<'_>, kbit: u32) -> Result<Made, Error> {
        let stem = format!("{}-{}-chat", self.pack.tag(), message.name);
        let loud = channel::chat(spoken).map_err(VoiceError::from)?;
        let played = self.opus(&stem, &message.title, &loud, kbit, Vec::new())?;
        self.words(&stem, &message.title, &played, None, Vec::new())?;
        let what = "voice note, with cue sheet (.cue.txt) and captions (.vtt, .srt)";
        Ok(self.made(&stem, "opus", what, "farmers' phones", Length::Seconds(played.length().seconds())))
    }

    /// Adds an Opus file, and gives back the message with the loudness at which it is played.
    fn opus(
        &mut self,
        stem: &str,
        title: &str,
        spoken: &Spoken,
        kbit: u32,
        chapters: Vec<channel::Chapter>,
    ) -> Result<Spoken, Error> {
        let voice = &spoken.voice;
        let mut tags = vec![
            ("TITLE", title.to_owned()),
            ("LANGUAGE", self.pack.tag()),
            ("ARTIST", voice.speaker.clone()),
            ("COPYRIGHT", voice.rights.clone()),
        ];
        let remark = self.stand_in_remark()?;
        tags.extend((!remark.is_empty()).then_some(("COMMENT", remark)));
        tags.extend(self.read.case.today.map(|day| ("DATE", day.to_string())));
        let file = opus(&spoken.samples, &OpusOptions { kbit, tags, chapters }).map_err(VoiceError::from)?;
        self.add(stem, "opus", &file.bytes)?;
        Ok(Spoken { loudness: file.loudness, ..spoken.clone() })
    }

    fn meeting(&mut self, voiced: &[Voiced<'_>], kbit: u32, talk: u32) -> Result<Vec<Made>, Error> {
        let stem = format!("{}-meeting", self.pack.tag());
        let sections: Vec<Section> = voiced
            .iter()
            .map(|(message, spoken)| Section {
                // The closing has no chapter of its own.
                title: (!message.title.is_empty()).then(|| message.title.clone()),
                spoken: spoken.made(),
                talk: talk_after(message.name, talk),
            })
            .collect();
        let Some(meeting) = channel::meeting(&sections).map_err(VoiceError::from)? else {
            return Ok(Vec::new());
        };
        let title = format!("{} ({})", self.pack.label(Label::SheetTitle, &[])?, self.read.case.name);
        let marks = self.marks(&meeting, talk)?;
        let Meeting { spoken, chapters, .. } = meeting;
        let markers = chapters.iter().map(|chapter| (chapter.from, chapter.title.clone())).collect();
        self.broadcast(&stem, &title, &spoken, markers)?;
        self.add(&stem, "chapters.vtt", chapters_vtt(&chapters).as_bytes())?;
        self.opus(&stem, &title, &spoken, kbit, chapters)?;
        self.words(&stem, &title, &spoken, None, marks)?;
        let what = "meeting with chapters and time to talk, with WAV (.wav), chapters (.chapters.vtt), cue sheet (.cue.txt) and captions (.vtt, .srt)";
        let length = Length::Seconds(spoken.length().seconds());
        Ok(vec![self.made(&stem, "opus", what, "extension worker", length)])
    }

    /// Chapters and times to talk, for the cue sheet.
    fn marks(&self, meeting: &Meeting, talk: u32) -> Result<Vec<Mark>, WordingError> {
        let chapter = self.pack.label(Label::CueChapter, &[])?;
        let time = self.pack.label(Label::CueTalk, &[Variable::Seconds.number(f64::from(talk))])?;
        let chapters = meeting.chapters.iter().map(|of| Mark {
            from: of.from,
            to: of.to,
            words: format!("{chapter}: {}", of.title),
        });
        let talks = meeting.talks.iter().map(|(from, to)| Mark { from: *from, to: *to, words: time.clone() });
        Ok(chapters.chain(talks).collect())
    }

    /// What is said, in cue sheet and captions.
    fn words<S: Sound>(
        &mut self,
        stem: &str,
        title: &str,
        spoken: &Spoken<S>,
        active_dbov: Option<f64>,
        marks: Vec<Mark>,
    ) -> Result<(), Error> {
        let labels = self.labels()?;
        let captions = CaptionOptions::default();
        let vtt = VttOptions { stand_in_remark: labels.stand_in_remark.clone(), captions: captions.clone() };
        let cues = CueOptions {
            title: format!("{title} ({})", self.read.case.name),
            language: format!("{}. {}", self.pack.name(), self.pack.label(self.pack.status().label(), &[])?),
            labels,
            active_dbov,
            marks,
        };
        self.add(stem, "cue.txt", cue_sheet(spoken, &cues).as_bytes())?;
        self.add(stem, "vtt", webvtt(spoken, &vtt).as_bytes())?;
        self.add(stem, "srt", subrip(spoken, &captions).as_bytes())
    }

    fn labels(&self) -> Result<CueLabels, WordingError> {
        let label = |id| self.pack.label(id, &[]);
        Ok(CueLabels {
            title: label(Label::CueTitle)?,
            language: label(Label::CueLanguage)?,
            voice: label(Label::CueVoice)?,
            rights: label(Label::CueRights)?,
            status: label(Label::CueStatus)?,
            status_stand_in: label(Label::VoiceStandIn)?,
            status_draft: label(Label::VoiceDraft)?,
            status_approved: label(Label::VoiceApproved)?,
            stand_in_remark: label(Label::VoiceStandInRemark)?,
            length: label(Label::CueLength)?,
            loudness: label(Label::CueLoudness)?,
            true_peak: label(Label::CueTruePeak)?,
            active_level: label(Label::CueActiveLevel)?,
            from: label(Label::CueFrom)?,
            to: label(Label::CueTo)?,
            words: label(Label::CueWords)?,
            clip: label(Label::CueClip)?,
        })
    }

    /// That a machine speaks, where one does; else nothing.
    fn stand_in_remark(&self) -> Result<String, WordingError> {
        match self.bank.voice().status {
            Status::StandIn => self.pack.label(Label::VoiceStandInRemark, &[]),
            _ => Ok(String::new()),
        }
    }

    fn path(&self, stem: &str, ending: &str) -> PathBuf {
        self.out.join(format!("{stem}.{ending}"))
    }

    fn add(&mut self, stem: &str, ending: &str, bytes: &[u8]) -> Result<(), Error> {
        self.output.add(&self.path(stem, ending), bytes)
    }

    fn made(&self, stem: &str, ending: &str, what: &str, audience: &'static str, length: Length) -> Made {
        let name = self.pack.name();
        let mut remarks = super::remarks_on(self.pack);
        if self.bank.voice().status == Status::StandIn {
            remarks.push(format!("{name}: a stand-in voice made by a machine, to be replaced by a person"));
        }
        Made { path: self.path(stem, ending), what: format!("{what}, {name}"), audience, length, remarks }
    }
}

/// After a step the people talk; opening and closing frame the meeting.
fn talk_after(name: &str, seconds: u32) -> Frames {
    let framing = [Subject::Opening, Subject::Closing].map(Subject::name).contains(&name);
    if framing { Frames(0) } else { Frames::from_millis(u64::from(seconds) * 1000) }
}

/// What a phone system plays, one after the other.
fn stitches(spoken: &Composed<'_>, folder: &str, files: &BTreeMap<String, String>) -> Vec<Stitch> {
    let mut stitches = Vec::new();
    for line in &spoken.lines {
        let name = files.get(&line.clip).cloned().unwrap_or_default();
        let millis = (line.to - line.from).millis();
        stitches.push(Stitch { file: format!("{folder}/{name}"), millis, words: Some(line.words.clone()) });
        stitches.extend(line.pause.map(|pause| Stitch {
            file: format!("{folder}/{}", pause_file(pause)),
            millis: JoinOptions::default().pause(pause).millis(),
            words: None,
        }));
    }
    // Nothing comes after the last pause.
    stitches.pop_if(|stitch| stitch.words.is_none());
    stitches
}

fn pauses() -> [Pause; 3] {
    [Pause::Comma, Pause::Sentence, Pause::Statement]
}

fn pause_file(pause: Pause) -> String {
    format!("pause-{}.wav", JoinOptions::default().pause(pause).millis())
}
