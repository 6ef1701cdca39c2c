//! What a speaker reads, in which order.
//!
//! The messages decide: the one that lacks the fewest phrases comes first,
//! then the one that then lacks the fewest, and so on. Their phrases are put
//! into parts of some minutes. Within a part they stand so that they are read
//! with ease: whole sentences by topic, parts of sentences by topic, numbers
//! as they are counted, dates, months as they follow, measures. What no
//! message needs comes last.
//!
//! The same phrases, clips and messages give the same script.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Serialize, Serializer};

use super::super::bank::ClipState;
use super::super::spelling::key;
use super::{Carriers, Pace};
use crate::guidance::Subject;
use crate::language::numerals::{Number, Numerals, words_in};
use crate::language::{Intonation, Phrase, Piece, Role};

/// A message that the recordings are for.
#[derive(Debug, Clone, PartialEq)]
pub struct WantedMessage {
    /// Its title.
    pub title: String,
    /// The case it is told for.
    pub case: String,
    /// What it says.
    pub pieces: Vec<Piece>,
}

/// Which phrases are on the script.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Needed {
    /// Also those that are recorded.
    pub recorded: bool,
    /// Only those that the messages need.
    pub only_messages: bool,
}

/// What a script is made from.
#[derive(Debug, Clone, Copy)]
pub struct Material<'a> {
    /// All phrases of the language.
    pub phrases: &'a [Phrase],
    /// What the voice has of each; all count as missing where there are none.
    pub states: &'a [ClipState],
    /// The messages that decide what is useful.
    pub messages: &'a [WantedMessage],
    /// The sentences of the phrases.
    pub carriers: &'a Carriers,
    /// How numbers are counted.
    pub numerals: &'a Numerals,
    /// How fast the speaker reads.
    pub pace: Pace,
}

/// What stands together on the script, in this order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Group {
    /// Whole sentences of a topic; of none where several share them.
    Sentences(Option<Subject>),
    /// Parts of sentences of a topic.
    Parts(Option<Subject>),
    /// Numbers in one form: the how manieth form of the language, from 1.
    Numbers(usize),
    /// What dates are put together from.
    Dates,
    /// The months.
    Months,
    /// Measures.
    Units,
}

impl Group {
    /// The group in one word, such as `sentences/harvest` or `numbers/2`.
    pub fn name(self) -> String {
        let of = |subject: Option<Subject>| subject.map_or("shared", Subject::name);
        match self {
            Group::Sentences(subject) => format!("sentences/{}", of(subject)),
            Group::Parts(subject) => format!("parts/{}", of(subject)),
            Group::Numbers(form) => format!("numbers/{form}"),
            Group::Dates => "dates".to_owned(),
            Group::Months => "months".to_owned(),
            Group::Units => "units".to_owned(),
        }
    }
}

impl Serialize for Group {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.name())
    }
}

/// A line of the script: one phrase to record.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Line {
    /// Its number, from 1, without gaps.
    pub number: usize,
    /// Where the phrase stands in the pack.
    pub id: String,
    /// The words to say aloud.
    pub words: String,
    /// `medial` where the sentence goes on after it, `final` where it ends.
    #[serde(serialize_with = "as_name")]
    pub intonation: Intonation,
    /// `phrase`, `number`, `date` or `unit`.
    #[serde(serialize_with = "as_kind")]
    pub kind: Role,
    /// What it stands with.
    pub group: Group,
    /// What stands before it in its sentence.
    pub before: String,
    /// The marks and words after it in its sentence.
    pub after: String,
    /// How many messages need it, of those that decide what is useful.
    pub unlocks: usize,
    /// How long the words take to say, in seconds to a tenth, without silence; an estimate.
    pub seconds: f64,
    /// What the voice has of it.
    #[serde(skip)]
    pub state: ClipState,
    /// Whether a sentence is known that says it so; the list of phrases is longer than what is ever said.
    #[serde(skip)]
    pub said: bool,
    /// The part of the script, from 1.
    #[serde(skip)]
    pub part: usize,
    /// The messages, by their place, that have all their phrases once this line is recorded and all before it.
    #[serde(skip)]
    pub completes: Vec<usize>,
}

fn as_name<S: Serializer>(intonation: &Intonation, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(intonation.name())
}

fn as_kind<S: Serializer>(role: &Role, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(match role {
        Role::Phrase => "phrase",
        Role::Number => "number",
        Role::Date => "date",
        Role::Unit => "unit",
    })
}

/// What a speaker reads.
#[derive(Debug, Clone, PartialEq)]
pub struct Script {
    /// The lines, in the order in which they are read.
    pub lines: Vec<Line>,
    /// The messages, by their place, that lack nothing as it is.
    pub complete: Vec<usize>,
    /// The part that holds what no message needs, where there is one.
    pub rest: Option<usize>,
}

/// Seconds that a line takes besides its words: silence before and after it, and a look at the next one.
const BETWEEN_LINES: f64 = 4.0;
/// A part is closed once it takes so many seconds: then there is time for a rest.
const PART: f64 = 300.0;

impl Script {
    /// How long some of its lines take to read, with the silence around each, in minutes.
    pub fn minutes<'l>(lines: impl IntoIterator<Item = &'l Line>) -> f64 {
        lines.into_iter().fold(0.0, |seconds, line| seconds + line.seconds + BETWEEN_LINES) / 60.0
    }

    /// The lines as JSON, one object a line.
    pub fn json_lines(&self) -> String {
        self.lines.iter().map(|line| format!("{}\n", serde_json::json!(line))).collect()
    }
}

/// A phrase by what is heard of it.
type Heard = (String, Intonation);

/// Makes the script.
pub fn script(material: &Material<'_>, needed: Needed) -> Script {
    let builder = ScriptBuilder::new(material);
    let needs: Vec<BTreeSet<usize>> =
        material.messages.iter().map(|message| builder.needs(message, needed)).collect();
    let mut parts = builder.parts_of(&needs);
    let placed: BTreeSet<usize> = parts.iter().flatten().copied().collect();
    let rest: Vec<usize> =
        builder.listed(needed).filter(|phrase| !needed.only_messages && !placed.contains(phrase)).collect();
    let rest = (!rest.is_empty()).then(|| parts.push(rest)).map(|()| parts.len());
    let mut lines = Vec::new();
    for (part, mut phrases) in (1..).zip(parts) {
        phrases.sort_by_cached_key(|phrase| builder.place(*phrase));
        for phrase in builder.apart(phrases) {
            lines.extend(builder.line(phrase, part, lines.len() + 1, &needs));
        }
    }
    complete(&mut lines, &needs, &builder);
    let lacks_nothing = |message: &usize| needs.get(*message).is_some_and(BTreeSet::is_empty);
    Script { complete: (0..needs.len()).filter(lacks_nothing).collect(), lines, rest }
}

/// Notes with each line which messages it completes.
fn complete(lines: &mut [Line], needs: &[BTreeSet<usize>], builder: &ScriptBuilder<'_>) {
    let mut open = needs.to_vec();
    for line in lines {
        let Some(phrase) = builder.by_sound.get(&(key(&line.words), line.intonation)) else { continue };
        for (message, lacking) in open.iter_mut().enumerate() {
            if lacking.remove(phrase) && lacking.is_empty() {
                line.completes.push(message);
            }
        }
    }
}

/// Everything at hand, by the place of a phrase.
struct ScriptBuilder<'a> {
    material: &'a Material<'a>,
    /// The first phrase of each sound: others differ from it only in case or marks.
    by_sound: BTreeMap<Heard, usize>,
    /// Forms of numbers, in the order of the language's rules.
    forms: Vec<&'a str>,
    /// Where in counting a word of a form is first heard.
    counted: BTreeMap<(usize, String), usize>,
}

impl<'a> ScriptBuilder<'a> {
    fn new(material: &'a Material<'a>) -> ScriptBuilder<'a> {
        let mut by_sound = BTreeMap::new();
        for (index, phrase) in material.phrases.iter().enumerate() {
            by_sound.entry((key(&phrase.words), phrase.intonation)).or_insert(index);
        }
        let used: BTreeSet<&str> =
            material.phrases.iter().filter_map(|phrase| phrase.id.strip_prefix("number/")).collect();
        let forms: Vec<&str> =
            material.numerals.forms().into_iter().filter(|form| used.contains(form)).collect();
        let counted = (0..).zip(&forms).flat_map(|(index, form)| {
            count(material.numerals, form).into_iter().map(move |(word, at)| ((index, word), at))
        });
        ScriptBuilder { material, by_sound, counted: counted.collect(), forms }
    }

    fn state(&self, phrase: usize) -> ClipState {
        self.material.states.get(phrase).cloned().unwrap_or(ClipState::Missing)
    }

    fn is_listed(&self, phrase: usize, needed: Needed) -> bool {
        needed.recorded || self.state(phrase) != ClipState::Recorded
    }

    /// The phrases that may be on the script, each once.
    fn listed(&self, needed: Needed) -> impl Iterator<Item = usize> {
        let first: BTreeSet<usize> = self.by_sound.values().copied().collect();
        first.into_iter().filter(move |phrase| self.is_listed(*phrase, needed))
    }

    /// The phrases of a message that are on the script.
    fn needs(&self, message: &WantedMessage, needed: Needed) -> BTreeSet<usize> {
        let sounds = message.pieces.iter().filter_map(|piece| match piece {
            Piece::Words(words) => self.by_sound.get(&(key(&words.text), words.intonation)).copied(),
            Piece::Pause(_) => None,
        });
        sounds.filter(|phrase| self.is_listed(*phrase, needed)).collect()
    }

    fn seconds(&self, phrase: usize) -> f64 {
        let words = self.material.phrases.get(phrase).map_or("", |phrase| &phrase.words);
        (self.material.pace.seconds(words) * 10.0).round() / 10.0
    }

    /// The phrases of the messages, in parts of some minutes: message by message, always the one that lacks fewest.
    fn parts_of(&self, needs: &[BTreeSet<usize>]) -> Vec<Vec<usize>> {
        let mut open: Vec<BTreeSet<usize>> = needs.iter().filter(|of| !of.is_empty()).cloned().collect();
        let mut parts: Vec<Vec<usize>> = Vec::new();
        let mut left = 0.0;
        while let Some(next) = open.iter().min_by_key(|lacking| lacking.len()).cloned() {
            if left <= 0.0 {
                parts.push(Vec::new());
                left = PART;
            }
            left -= next.iter().map(|phrase| self.seconds(*phrase) + BETWEEN_LINES).sum::<f64>();
            open.iter_mut().for_each(|lacking| lacking.retain(|phrase| !next.contains(phrase)));
            open.retain(|lacking| !lacking.is_empty());
            if let Some(part) = parts.last_mut() {
                part.extend(next);
            }
        }
        parts
    }

    fn group(&self, phrase: &Phrase) -> Group {
        let message = phrase.id.split('#').next().unwrap_or_default();
        match phrase.role {
            Role::Number => Group::Numbers(self.form(phrase) + 1),
            Role::Unit => Group::Units,
            Role::Date if message == "month" => Group::Months,
            Role::Date => Group::Dates,
            Role::Phrase => {
                let subject = Subject::all().find(|subject| subject.name() == message);
                match self.material.carriers.of(phrase) {
                    Some(carrier) if carrier.is_whole() => Group::Sentences(subject),
                    _ => Group::Parts(subject),
                }
            }
        }
    }

    fn form(&self, phrase: &Phrase) -> usize {
        let of = phrase.id.strip_prefix("number/").unwrap_or_default();
        self.forms.iter().position(|form| *form == of).unwrap_or(self.forms.len())
    }

    /// Where a phrase stands among others: by group; of single words first all that go on, then all that
    /// end; then as it is counted or as it stands in the pack.
    fn place(&self, phrase: usize) -> Option<(Group, Option<Intonation>, String, usize, Intonation)> {
        let of = self.material.phrases.get(phrase)?;
        let group = self.group(of);
        let (message, number) = of.id.split_once('#').unwrap_or((&of.id, ""));
        let counted = self.counted.get(&(self.form(of), of.words.clone())).copied();
        let position = counted.or_else(|| number.parse().ok()).unwrap_or(usize::MAX);
        let series = matches!(group, Group::Numbers(_) | Group::Months | Group::Units | Group::Dates);
        let series = series.then_some(of.intonation);
        Some((group, series, message.to_owned(), position, of.intonation))
    }

    /// The phrases with the two endings of the same words not side by side, as far as their group has
    /// others: one said twice and the other skipped could not be told from both said once.
    fn apart(&self, mut phrases: Vec<usize>) -> Vec<usize> {
        let about = |phrase: &usize| {
            let of = self.material.phrases.get(*phrase)?;
            Some((self.group(of), key(&of.words)))
        };
        for at in 1..phrases.len() {
            let (before, here) = (phrases.get(at - 1).and_then(about), phrases.get(at).and_then(about));
            if before != here {
                continue;
            }
            let Some((group, words)) = here else { continue };
            let other = |phrase: &usize| about(phrase).is_some_and(|(of, says)| of == group && says != words);
            let later = phrases.iter().skip(at).position(other).map(|place| at + place);
            // Where none comes later, the one here goes before an earlier one, whose neighbours are others too.
            let pairs = phrases.iter().zip(phrases.iter().skip(1)).take(at - 1);
            let earlier = || pairs.map(|(one, next)| other(one) && other(next)).position(|fits| fits);
            if let Some(later) = later {
                phrases.get_mut(at..=later).unwrap_or_default().rotate_right(1);
            } else if let Some(place) = earlier() {
                phrases.get_mut(place + 1..=at).unwrap_or_default().rotate_right(1);
            }
        }
        phrases
    }

    fn line(&self, phrase: usize, part: usize, number: usize, needs: &[BTreeSet<usize>]) -> Option<Line> {
        let of = self.material.phrases.get(phrase)?;
        let carrier = self.material.carriers.of(of);
        let said = carrier.is_some();
        let carrier = carrier.cloned().unwrap_or_default();
        Some(Line {
            number,
            id: of.id.clone(),
            words: of.words.clone(),
            intonation: of.intonation,
            kind: of.role,
            group: self.group(of),
            before: carrier.before,
            after: carrier.after,
            unlocks: needs.iter().filter(|message| message.contains(&phrase)).count(),
            seconds: self.seconds(phrase),
            state: self.state(phrase),
            said,
            part,
            completes: Vec::new(),
        })
    }
}

/// The words of numbers in a form, each with its place in counting: by ones to a hundred and ten, then by rounder
/// steps, then tenths. A word that is heard in none of them has no place.
fn count(numerals: &Numerals, form: &str) -> BTreeMap<String, usize> {
    let ones = (0..=110).chain((200..=1_000).step_by(100));
    let whole = ones.chain([2_000, 10_000, 100_000, 1_000_000]).map(|number| (f64::from(number), 0));
    let tenths = (1..=9).map(|tenth| (f64::from(tenth) / 10.0, 1));
    let mut places = BTreeMap::new();
    for (value, decimals) in whole.chain(tenths) {
        let said = Number::rounded(value, decimals).and_then(|number| numerals.say(number, form).ok());
        for word in words_in(&said.unwrap_or_default()) {
            let next = places.len();
            places.entry(word.to_owned()).or_insert(next);
        }
    }
    places
}
