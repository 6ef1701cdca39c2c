//! What is to be recorded.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::path::{Path, PathBuf};

use serde::Serialize;

use super::super::output::Output;
use super::super::{Code, Data, Embedded, Error, Finding, Length, Made, ReadCase, StepKind, load_pack};
use crate::guidance::{
    Statement, Subject, Variable, chapter, consequence_examples, every_framing, for_step, told_in, week_of,
};
use crate::language::{Direction, Intonation, Label, Pack, Phrase, WordingError};

use crate::sheet::{self, Printer, SheetError};
use crate::voice::record::{self, Carriers, Group, Line, Material, Needed, Pace, Script, WantedMessage};
use crate::voice::{Bank, ClipState};

/// What script is asked for.
#[derive(Debug, Clone, Copy)]
pub struct ScriptRequest<'a> {
    /// Its language.
    pub language: &'a str,
    /// The voice; the pack's own where none is named. One that is not there yet has everything to record.
    pub voice: Option<&'a str>,
    /// The cases whose messages are wanted: nothing else is listed. Where none is named, the example cases
    /// decide what is useful, and all phrases of the language are listed.
    pub cases: &'a [PathBuf],
    /// Also what is recorded already.
    pub all: bool,
}

/// The example cases that tell what is useful where no case is named.
const EXAMPLES: [&str; 4] = ["farm", "group", "zone", "village"];

/// A recording script with the words around it.
#[derive(Debug)]
pub struct RecordingScript {
    /// Its lines.
    pub script: Script,
    pack: Pack,
    voice: String,
    /// Whether there is such a voice yet.
    begun: bool,
    /// Whether it was asked for by name.
    named: bool,
    messages: Vec<WantedMessage>,
    cases: Vec<String>,
    titles: BTreeMap<Subject, String>,
    pace: Pace,
}

/// Makes the script of what a voice has still to record.
///
/// # Errors
/// All problems of the pack, the cases and the bank.
pub fn script(data: &dyn Data, request: &ScriptRequest<'_>) -> Result<RecordingScript, Error> {
    let pack = load_pack(data, request.language)?;
    let phrases = pack.phrases().map_err(Error::Input)?;
    let examples = EXAMPLES.map(|name| ReadCase::from_data(&Embedded, &format!("examples/{name}.toml")));
    let examples: Vec<Told> = all_of(examples.into_iter().map(|read| read.and_then(Told::of)))?;
    let cases = all_of(request.cases.iter().map(|path| ReadCase::from_disk(path).and_then(Told::of)))?;
    let useful = if cases.is_empty() { &examples } else { &cases };

    let voice = request.voice.unwrap_or(pack.voice()).to_owned();
    let begun = Bank::voices(data, &pack.tag()).contains(&voice);
    let bank = begun.then(|| Bank::load(data, &pack.tag(), &voice)).transpose().map_err(Error::Input)?;
    let states = bank.as_ref().map(|bank| bank.statuses(&phrases)).unwrap_or_default();
    let needed = Needed { recorded: request.all, only_messages: !cases.is_empty() };

    let statements: Vec<Statement> = useful
        .iter()
        .chain(&examples)
        .flat_map(|told| told.statements.iter().chain(&told.again))
        .cloned()
        .chain(useful.iter().chain(&examples).flat_map(|told| every_framing(&told.statements)))
        .chain(consequence_examples())
        .collect();
    let messages = useful.iter().map(|told| told.messages(&pack)).collect::<Result<Vec<_>, _>>()?.concat();
    let pace = bank.as_ref().map_or(Pace::default(), Pace::of);
    let listed = listed(&phrases, &states, needed);
    // What messages need, their own statements say.
    let carriers = match needed.only_messages {
        true => Carriers::among(&pack, &statements, &listed)?,
        false => Carriers::find(&pack, &statements, &listed)?,
    };
    let material = Material {
        phrases: &phrases,
        states: &states,
        messages: &messages,
        carriers: &carriers,
        numerals: pack.numerals(),
        pace,
    };
    Ok(RecordingScript {
        script: record::script(&material, needed),
        titles: titles(&pack, &statements)?,
        cases: useful.iter().map(|told| told.name.clone()).collect(),
        pack,
        voice,
        begun,
        named: request.voice.is_some(),
        messages,
        pace,
    })
}

/// All results, or all problems of all of them.
fn all_of<T>(results: impl Iterator<Item = Result<T, Error>>) -> Result<Vec<T>, Error> {
    let (mut done, mut findings) = (Vec::new(), Vec::new());
    for result in results {
        match result {
            Ok(one) => done.push(one),
            Err(Error::Input(problems)) => findings.extend(problems),
            Err(error) => return Err(error),
        }
    }
    if findings.is_empty() { Ok(done) } else { Err(Error::Input(findings)) }
}

/// The phrases that need a sentence around them.
fn listed(phrases: &[Phrase], states: &[ClipState], needed: Needed) -> Vec<Phrase> {
    let is_recorded = |index| states.get(index) == Some(&ClipState::Recorded);
    let listed = phrases.iter().enumerate().filter(|(index, _)| needed.recorded || !is_recorded(*index));
    listed.map(|(_, phrase)| phrase.clone()).collect()
}

/// A case in statements.
struct Told {
    name: String,
    statements: Vec<Statement>,
    /// Steps as a segment tells them when they come again.
    again: Vec<Statement>,
}

impl Told {
    fn of(read: ReadCase) -> Result<Told, Error> {
        let mut statements = read.statements()?;
        let times = statements.iter().flat_map(|of| of.when.iter().skip(1).map(move |span| (of, span)));
        let again = times.flat_map(|(of, span)| told_in(std::slice::from_ref(of), week_of(span.from)));
        let again = again.collect();
        // A meeting asks something after each step.
        let asked = StepKind::ALL.map(|topic| chapter(&statements, topic).pop());
        statements.extend(asked.into_iter().flatten());
        Ok(Told { statements, again, name: read.case.name })
    }

    /// The messages that can be spoken for the case: one for each topic, and one for each spoken statement
    /// that belongs to none.
    fn messages(&self, pack: &Pack) -> Result<Vec<WantedMessage>, WordingError> {
        let by_topic = StepKind::ALL.map(|topic| (Subject::Step(topic), for_step(&self.statements, topic)));
        let told: Vec<Subject> = by_topic.iter().flat_map(|(_, of)| of).map(|of| of.subject).collect();
        let others =
            self.statements.iter().filter(|of| of.subject.is_spoken() && !told.contains(&of.subject));
        let others = others.map(|statement| (statement.subject, vec![statement.clone()]));
        let again = StepKind::ALL.map(|topic| {
            let subject = Subject::Step(topic);
            (subject, self.again.iter().filter(|of| of.subject == subject).cloned().collect())
        });
        let all =
            by_topic.into_iter().chain(again).chain(others).filter(|(_, statements)| !statements.is_empty());
        all.map(|(subject, statements)| self.message(pack, subject, &statements)).collect()
    }

    fn message(
        &self,
        pack: &Pack,
        subject: Subject,
        statements: &[Statement],
    ) -> Result<WantedMessage, WordingError> {
        let mut pieces = Vec::new();
        for statement in statements {
            pieces.extend(pack.say(statement)?);
        }
        let own = statements.iter().find(|statement| statement.subject == subject);
        let title = own.map(|own| title(pack, own)).transpose()?.unwrap_or_default();
        Ok(WantedMessage { title, case: self.name.clone(), pieces })
    }
}

/// The title of a statement, in the words of the pack.
fn title(pack: &Pack, statement: &Statement) -> Result<String, WordingError> {
    match statement.subject {
        Subject::Opening => pack.label(Label::ScriptOpening, &[]),
        Subject::Closing => pack.label(Label::ScriptClosing, &[]),
        Subject::Consequence(_) => pack.label(Label::SheetConsequences, &[]),
        // It is asked about the step, and has no title of its own.
        Subject::Question(topic) => {
            pack.write_title(&Statement { subject: Subject::Step(topic), ..statement.clone() })
        }
        _ => pack.write_title(statement),
    }
}

fn titles(pack: &Pack, statements: &[Statement]) -> Result<BTreeMap<Subject, String>, WordingError> {
    let mut titles = BTreeMap::new();
    for statement in statements.iter().filter(|statement| statement.subject.is_spoken()) {
        if let Entry::Vacant(place) = titles.entry(statement.subject) {
            place.insert(title(pack, statement)?);
        }
    }
    Ok(titles)
}

/// What the templates `script.typ` and `script.txt` are given.
#[derive(Debug, Serialize)]
struct Page {
    language: String,
    direction: &'static str,
    title: String,
    name: String,
    voice: String,
    status: String,
    head: Vec<Row>,
    labels: BTreeMap<&'static str, String>,
    how: Vec<String>,
    parts: Vec<PagePart>,
}

#[derive(Debug, Serialize)]
struct Row {
    label: String,
    value: String,
}

#[derive(Debug, Serialize)]
struct PagePart {
    title: String,
    about: String,
    groups: Vec<PageGroup>,
}

#[derive(Debug, Serialize)]
struct PageGroup {
    title: String,
    lines: Vec<PageLine>,
}

#[derive(Debug, Serialize)]
struct PageLine {
    number: usize,
    words: String,
    before: String,
    after: String,
    falls: bool,
    /// What else is to be known of it.
    notes: Vec<String>,
    /// What is complete with it.
    complete: Vec<String>,
}

/// What a speaker is told before the first line, in this order; how the words to say are shown depends on the format.
const HOW: [Label; 8] = [
    Label::ScriptHowRoom,
    Label::ScriptHowDistance,
    Label::ScriptHowTone,
    Label::ScriptHowPause,
    Label::ScriptHowOrder,
    Label::ScriptHowSlip,
    Label::ScriptHowMedial,
    Label::ScriptHowFinal,
];
/// The rule on the words to say aloud stands before the last two.
const WORDS_AT: usize = 6;

impl RecordingScript {
    /// What a user should know who reads only the lines.
    pub fn remarks(&self) -> Vec<String> {
        let mut remarks = super::super::remarks_on(&self.pack);
        let (voice, name) = (&self.voice, self.pack.name());
        if !self.begun {
            remarks.push(format!("there is no voice {voice} in {name} yet: everything is to be recorded"));
        } else if self.is_complete() {
            remarks.push(format!("the voice {voice} in {name} has everything"));
        }
        remarks
    }

    /// Whether the voice has all that was asked for.
    pub fn is_complete(&self) -> bool {
        self.begun && self.script.lines.is_empty()
    }

    /// The lines as JSON, one object a line.
    pub fn json_lines(&self) -> String {
        self.script.json_lines()
    }

    /// The script as plain text.
    ///
    /// # Errors
    /// A label that cannot be worded, or a broken template.
    pub fn text(&self, data: &dyn Data) -> Result<Vec<u8>, Error> {
        Ok(sheet::render("script.txt", &self.page(Label::ScriptHowBrackets)?, data)?)
    }

    /// The script as PDF, with its number of pages.
    ///
    /// # Errors
    /// A label that cannot be worded, letters that no font has, or a page too small for its words.
    pub fn pdf(&self, data: &dyn Data) -> Result<(Vec<u8>, usize), Error> {
        let pdf =
            Printer::new(data)?.set("script.typ", &self.page(Label::ScriptHowGrey)?, BTreeMap::new())?;
        match pdf.overflows.first() {
            Some(what) => {
                let file = data.shown("templates/script.typ");
                Err(SheetError::TooFull { file, what: what.clone() }.into())
            }
            None => Ok((pdf.bytes, pdf.pages)),
        }
    }

    /// Writes the script into files: `.pdf`, `.txt` or `.jsonl`, as their names end.
    ///
    /// # Errors
    /// Names that end otherwise, and what can go wrong with each format; nothing is written then.
    pub fn write(&self, data: &dyn Data, files: &[PathBuf]) -> Result<Vec<Made>, Error> {
        let kinds = all_of(files.iter().map(|file| Kind::of(file)))?;
        let mut output = Output::default();
        let mut made = Vec::new();
        for (path, kind) in files.iter().zip(kinds) {
            let (bytes, length) = match kind {
                Kind::Pdf => self.pdf(data).map(|(bytes, pages)| (bytes, Length::Pages(pages)))?,
                Kind::Text => (self.text(data)?, Length::Unmeasured),
                Kind::JsonLines => (self.json_lines().into_bytes(), Length::Unmeasured),
            };
            output.add(path, &bytes)?;
            let what = format!("{} lines to record, {}", self.script.lines.len(), self.pack.name());
            made.push(Made {
                path: path.clone(),
                what,
                audience: kind.audience(),
                length,
                remarks: self.remarks(),
            });
        }
        output.commit()?;
        Ok(made)
    }

    fn page(&self, words: Label) -> Result<Page, WordingError> {
        let label = |id| self.pack.label(id, &[]);
        let mut labels = BTreeMap::new();
        for (name, id) in [
            ("colon", Label::Colon),
            ("semicolon", Label::Semicolon),
            ("page", Label::SheetPage),
            ("how", Label::ScriptHow),
            ("medial", Label::ScriptMedial),
            ("final", Label::ScriptFinal),
            ("nothing", Label::ScriptNothing),
            ("complete", Label::ScriptComplete),
        ] {
            labels.insert(name, label(id)?);
        }
        let mut how = HOW.to_vec();
        how.insert(WORDS_AT, words);
        let page = Page {
            language: self.pack.tag(),
            direction: match self.pack.direction() {
                Direction::LeftToRight => "ltr",
                Direction::RightToLeft => "rtl",
            },
            title: label(Label::ScriptTitle)?,
            name: self.pack.name().to_owned(),
            voice: self.voice_name()?,
            status: label(self.pack.status().label())?,
            head: self.head()?,
            how: how.into_iter().map(label).collect::<Result<_, _>>()?,
            labels,
            parts: self.parts()?,
        };
        Ok(page)
    }

    fn voice_name(&self) -> Result<String, WordingError> {
        match self.begun || self.named {
            true => Ok(self.voice.clone()),
            false => self.pack.label(Label::ScriptNewVoice, &[]),
        }
    }

    fn head(&self) -> Result<Vec<Row>, WordingError> {
        let lines = &self.script.lines;
        let list = self.pack.label(Label::Semicolon, &[])? + " ";
        let count = |count: usize| self.pack.write_number(count as f64, 0);
        let time = if self.pace.measured { Label::ScriptTimeMeasured } else { Label::ScriptTime };
        let rows = [
            (Label::CueLanguage, self.pack.name().to_owned()),
            (Label::CueVoice, self.voice_name()?),
            (Label::SheetFor, self.cases.join(&list)),
            (Label::ScriptLines, count(lines.len())),
            (time, self.about(lines)?),
            (Label::ScriptReady, format!("{} / {}", self.script.complete.len(), self.messages.len())),
        ];
        rows.into_iter().map(|(id, value)| Ok(Row { label: self.pack.label(id, &[])?, value })).collect()
    }

    /// How long lines take, in whole minutes.
    fn about(&self, lines: &[Line]) -> Result<String, WordingError> {
        let minutes = Script::minutes(lines).ceil();
        self.pack.label(Label::ScriptMinutes, &[Variable::Minutes.number(minutes)])
    }

    fn parts(&self) -> Result<Vec<PagePart>, WordingError> {
        let parts = self.script.lines.chunk_by(|a, b| a.part == b.part);
        parts.map(|lines| self.part(lines)).collect()
    }

    fn part(&self, lines: &[Line]) -> Result<PagePart, WordingError> {
        let number = lines.first().map_or(0, |line| line.part);
        let title = match self.script.rest == Some(number) {
            true => self.pack.label(Label::ScriptRest, &[])?,
            false => self.pack.label(Label::ScriptPart, &[Variable::Part.number(number as f64)])?,
        };
        let of = |variable: Variable, line: Option<&Line>| {
            variable.number(line.map_or(0, |line| line.number) as f64)
        };
        let ends = [of(Variable::FirstLine, lines.first()), of(Variable::LastLine, lines.last())];
        let span = self.pack.label(Label::ScriptPartLines, &ends)?;
        let about = format!("{span}{} {}", self.pack.label(Label::Semicolon, &[])?, self.about(lines)?);
        let groups = lines.chunk_by(|a, b| a.group == b.group).map(|lines| self.group(lines));
        Ok(PagePart { title, about, groups: groups.collect::<Result<_, _>>()? })
    }

    fn group(&self, lines: &[Line]) -> Result<PageGroup, WordingError> {
        let title = lines.first().map_or(Ok(String::new()), |line| self.group_title(line.group))?;
        let lines = lines.iter().map(|line| self.line(line)).collect::<Result<_, _>>()?;
        Ok(PageGroup { title, lines })
    }

    fn group_title(&self, group: Group) -> Result<String, WordingError> {
        let colon = self.pack.label(Label::Colon, &[])?;
        let of = |label: String, subject: Option<Subject>| match subject
            .and_then(|subject| self.titles.get(&subject))
        {
            Some(title) => format!("{label}{colon} {title}"),
            None => label,
        };
        Ok(match group {
            Group::Sentences(subject) => of(self.pack.label(Label::ScriptSentences, &[])?, subject),
            Group::Parts(subject) => of(self.pack.label(Label::ScriptParts, &[])?, subject),
            Group::Numbers(form) => {
                self.pack.label(Label::ScriptNumbers, &[Variable::Form.number(form as f64)])?
            }
            Group::Dates => self.pack.label(Label::ScriptDates, &[])?,
            Group::Months => self.pack.label(Label::ScriptMonths, &[])?,
            Group::Units => self.pack.label(Label::ScriptUnits, &[])?,
        })
    }

    fn line(&self, line: &Line) -> Result<PageLine, WordingError> {
        let colon = self.pack.label(Label::Colon, &[])?;
        let mut notes = Vec::new();
        if line.unlocks > 0 {
            let count = self.pack.write_number(line.unlocks as f64, 0);
            notes.push(format!("{}{colon} {count}", self.pack.label(Label::ScriptUnlocks, &[])?));
        }
        match &line.state {
            ClipState::Stale { recorded } => {
                notes.push(format!("{}{colon} {recorded}", self.pack.label(Label::ScriptStale, &[])?));
            }
            ClipState::OtherIntonation => notes.push(self.pack.label(Label::ScriptOtherEnding, &[])?),
            ClipState::Recorded => notes.push(self.pack.label(Label::ScriptRecorded, &[])?),
            ClipState::Missing => {}
        }
        if !line.said {
            notes.push(self.pack.label(Label::ScriptUnsaid, &[])?);
        }
        Ok(PageLine {
            number: line.number,
            words: line.words.clone(),
            before: line.before.clone(),
            after: line.after.clone(),
            falls: line.intonation == Intonation::Final,
            notes,
            complete: self.complete(line)?,
        })
    }

    /// The messages that a line completes: each title with the cases for which it is.
    fn complete(&self, line: &Line) -> Result<Vec<String>, WordingError> {
        let list = self.pack.label(Label::Semicolon, &[])? + " ";
        let mut titles: Vec<(&str, Vec<&str>)> = Vec::new();
        for message in line.completes.iter().filter_map(|index| self.messages.get(*index)) {
            match titles.iter_mut().find(|(title, _)| *title == message.title) {
                Some((_, cases)) => cases.push(&message.case),
                None => titles.push((&message.title, vec![&message.case])),
            }
        }
        Ok(titles.into_iter().map(|(title, cases)| format!("{title} ({})", cases.join(&list))).collect())
    }
}

/// A file's format.
#[derive(Debug, Clone, Copy)]
enum Kind {
    Pdf,
    Text,
    JsonLines,
}

impl Kind {
    fn of(file: &Path) -> Result<Kind, Error> {
        match file
            .extension()
            .map(|extension| extension.to_ascii_lowercase())
            .as_ref()
            .and_then(|e| e.to_str())
        {
            Some("pdf") => Ok(Kind::Pdf),
            Some("txt") => Ok(Kind::Text),
            Some("jsonl") => Ok(Kind::JsonLines),
            _ => {
                let finding = Finding::error(Code::UNKNOWN_NAME, "its ending tells no format")
                    .file(file.display().to_string());
                let hint = "end it with .pdf, .txt or .jsonl";
                Err(Error::Input(vec![finding.argument("out").hint(hint)]))
            }
        }
    }

    fn audience(self) -> &'static str {
        match self {
            Kind::Pdf | Kind::Text => "speaker",
            Kind::JsonLines => "programs",
        }
    }
}
