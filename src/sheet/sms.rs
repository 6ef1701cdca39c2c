//! Text messages for phones, counted as the networks count them (3GPP TS 23.038).

use chrono::NaiveDate;

use crate::guidance::{Priority, Standing, Statement, Subject, Value, Variable};
use crate::language::{Pack, WordingError};

/// The letters of the 7-bit default alphabet (3GPP TS 23.038, clause 6.2.1), its escape left out.
const GSM_7: &str = "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";
/// Those of its extension table (clause 6.2.1.1): an escape goes before each.
const GSM_7_EXTENDED: &str = "\u{c}^{}\\[~]|€";

/// How a text is coded on its way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Alphabet {
    /// Seven bits a letter: 160 in a message, 153 in each part of a longer one.
    Gsm7,
    /// Sixteen bits a letter: 70 in a message, 67 in each part; forced by these letters.
    Ucs2 {
        /// The letters that the 7-bit alphabet lacks, each once.
        forced_by: Vec<char>,
    },
}

/// What a text costs to send.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cost {
    /// How it is coded.
    pub alphabet: Alphabet,
    /// Septets, or 16-bit units.
    pub units: usize,
    /// Parts it is sent in.
    pub parts: usize,
}

/// Counts a text.
pub fn cost(text: &str) -> Cost {
    let septets = |c: char| match c {
        c if GSM_7.contains(c) => Some(1),
        c if GSM_7_EXTENDED.contains(c) => Some(2),
        _ => None,
    };
    let mut forced_by: Vec<char> = text.chars().filter(|c| septets(*c).is_none()).collect();
    forced_by.sort_unstable();
    forced_by.dedup();
    let (widths, one, each): (Vec<usize>, usize, usize) = if forced_by.is_empty() {
        (text.chars().filter_map(septets).collect(), 160, 153)
    } else {
        (text.chars().map(char::len_utf16).collect(), 70, 67)
    };
    let units = widths.iter().sum();
    let parts = if units <= one { usize::from(units > 0) } else { split(&widths, each) };
    let alphabet = if forced_by.is_empty() { Alphabet::Gsm7 } else { Alphabet::Ucs2 { forced_by } };
    Cost { alphabet, units, parts }
}

/// Parts of `room` units; an escaped letter, or one of two 16-bit units, stays whole.
fn split(widths: &[usize], room: usize) -> usize {
    let (mut parts, mut left) = (1, room);
    for width in widths {
        if *width > left {
            parts += 1;
            left = room;
        }
        left -= width;
    }
    parts
}

/// A message to send.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TextMessage {
    /// The day to send it.
    pub date: NaiveDate,
    /// What it is about.
    pub subject: Subject,
    /// Its text.
    pub text: String,
    /// What it costs.
    pub cost: Cost,
}

/// What is asked of messages.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SmsOptions {
    /// The most messages a day; what is left goes out the day after.
    pub most_a_day: usize,
    /// Of which work.
    pub work: Work,
}

/// The work that messages tell of, where a group shares a store and a bed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Work {
    /// All of it.
    #[default]
    All,
    /// What each farm does by itself.
    ByItself,
    /// What the farms do together, with the cautions and local advice, which are for all.
    Together,
}

impl Work {
    fn includes(self, subject: Subject) -> bool {
        match (self, subject) {
            (Work::All, _) => true,
            (Work::ByItself, Subject::Step(kind)) => !kind.together(),
            (Work::ByItself, _) => false,
            (Work::Together, Subject::Step(kind)) => kind.together(),
            (Work::Together, _) => true,
        }
    }
}

impl Default for SmsOptions {
    fn default() -> SmsOptions {
        SmsOptions { most_a_day: 2, work: Work::All }
    }
}

/// The messages of a plan: each step that is not done on its first day, the checks each time, what the plan leads to
/// with the first step that it belongs to, the caution about rotten roots with the harvest, and local advice with
/// the first. Letters that the pack lets go are replaced by those it names.
///
/// # Errors
/// The wording that is missing or cannot be resolved.
pub fn sms(
    pack: &Pack,
    statements: &[Statement],
    options: SmsOptions,
) -> Result<Vec<TextMessage>, WordingError> {
    let mut wanted: Vec<(NaiveDate, Priority, Subject, String)> = Vec::new();
    let open = |statement: &&Statement| statement.standing != Some(Standing::Done);
    let told = |statement: &&Statement| options.work.includes(statement.subject) && open(statement);
    let steps = |statement: &&Statement| matches!(statement.subject, Subject::Step(_));
    for statement in statements.iter().filter(told).filter(steps) {
        for span in &statement.when {
            let mut once = statement.clone();
            once.set(Variable::First, Value::Date(span.from));
            once.set(Variable::Last, Value::Date(span.to));
            if let Some(text) = pack.write_sms(&once)? {
                wanted.push((span.from, once.priority, once.subject, text));
            }
        }
    }
    let day_of = |kind| {
        let step = statements.iter().find(|statement| statement.subject == Subject::Step(kind));
        step.filter(open).and_then(|step| step.when.first()).map(|span| span.from)
    };
    let first = wanted.iter().map(|(day, ..)| *day).min();
    for statement in statements.iter().filter(told) {
        let day = match statement.subject {
            Subject::Caution(caution) => caution.sms_with().and_then(day_of),
            Subject::Consequence(consequence) => {
                consequence.steps().iter().filter_map(|kind| day_of(*kind)).min().or(first)
            }
            Subject::Closing => first,
            _ => None,
        };
        if let (Some(day), Some(text)) = (day, pack.write_sms(statement)?) {
            wanted.push((day, statement.priority, statement.subject, text));
        }
    }
    // What names its day goes out on it; what always holds can wait a day.
    let dated = |subject: &Subject| matches!(subject, Subject::Step(_));
    wanted.sort_by_key(|(day, priority, subject, _)| (*day, !dated(subject), *priority, *subject));
    Ok(spread(pack, wanted, options.most_a_day.max(1)))
}

/// Gives each message its day: not more than so many on one.
fn spread(
    pack: &Pack,
    wanted: Vec<(NaiveDate, Priority, Subject, String)>,
    most_a_day: usize,
) -> Vec<TextMessage> {
    let mut messages: Vec<TextMessage> = Vec::with_capacity(wanted.len());
    for (mut date, _, subject, text) in wanted {
        while messages.iter().filter(|message| message.date == date).count() >= most_a_day {
            let Some(next) = date.succ_opt() else { break };
            date = next;
        }
        let text = pack.for_sms(&text);
        let cost = cost(&text);
        messages.push(TextMessage { date, subject, text, cost });
    }
    messages.sort_by_key(|message| message.date);
    messages
}

/// The steps and cautions of a plan that have no message of their own in packs.
pub fn sms_left_out(statements: &[Statement], messages: &[TextMessage]) -> Vec<Subject> {
    let told = |subject| messages.iter().any(|message| message.subject == subject);
    let open = statements.iter().filter(|statement| statement.standing != Some(Standing::Done));
    let subjects = open.map(|statement| statement.subject);
    subjects
        .filter(|subject| matches!(subject, Subject::Step(_) | Subject::Caution(_)) && !told(*subject))
        .collect()
}

/// The messages as a table (CSV): the day, whom it is for, the topic, the text, and what it costs.
pub fn sms_table(messages: &[(&str, TextMessage)]) -> Vec<u8> {
    let mut table = csv::Writer::from_writer(Vec::new());
    let header = ["date", "for", "about", "text", "alphabet", "units", "parts"].map(str::to_owned);
    let rows = messages.iter().map(|(name, message)| {
        let alphabet = match message.cost.alphabet {
            Alphabet::Gsm7 => "GSM 7-bit",
            Alphabet::Ucs2 { .. } => "UCS-2",
        };
        [
            message.date.to_string(),
            (*name).to_owned(),
            message.subject.name().to_owned(),
            message.text.clone(),
            alphabet.to_owned(),
            message.cost.units.to_string(),
            message.cost.parts.to_string(),
        ]
    });
    for row in std::iter::once(header).chain(rows) {
        // Writing to memory cannot fail.
        let _ = table.write_record(&row);
    }
    table.into_inner().unwrap_or_default()
}
