//! Statements, dates and numbers in writing.

use chrono::NaiveDate;

use super::{Pack, WordingError};
use crate::guidance::{Column, Statement, Subject, Value, Variable};
use crate::language::labels::{Attribute, MessageId, Part};
use crate::language::numerals::{Number, NumeralError};
use crate::language::wording::{Arguments, write_runs};
use crate::plan::DateSpan;

/// A statement in writing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// What it is about.
    pub subject: Subject,
    /// Its title; of what has none, such as the opening and a tip, the whole text.
    pub title: String,
    /// The sentences below the title.
    pub text: String,
    /// The same in a few words, for a sheet with little room; empty but for steps and cautions.
    pub short: String,
    /// Its picture in words.
    pub alt: String,
    /// What a meeting is shown; empty but for steps.
    pub show: String,
    /// What a meeting is asked; empty but for steps.
    pub ask: String,
    /// When it applies, one entry for each time.
    pub when: Vec<String>,
    /// The same without years and weekdays.
    pub brief: Vec<String>,
}

impl Pack {
    /// A wording by its id, such as a [`Label`](crate::language::Label)'s.
    ///
    /// # Errors
    /// The message is missing or cannot be resolved.
    pub fn label(&self, id: impl Into<MessageId>, values: &[(&str, Value)]) -> Result<String, WordingError> {
        self.with(values).label(id)
    }

    /// The value of a column that has a message for it; empty where it has none.
    ///
    /// # Errors
    /// As [`Pack::label`].
    pub fn cell(&self, column: Column, values: &[(&str, Value)]) -> Result<String, WordingError> {
        MessageId::cell_of(column).map_or(Ok(String::new()), |id| self.label(id, values))
    }

    /// The wordings of a sheet with their values; for many of them.
    pub fn with<'a>(&'a self, values: &[(&'a str, Value)]) -> Filled<'a> {
        Filled { pack: self, arguments: Arguments::of(values) }
    }

    /// A text for a phone: with the letters replaced that the pack lets go, and plain spaces for those that
    /// only keep words together on paper.
    pub fn for_sms(&self, text: &str) -> String {
        let replaced = |c: char| match self.header.replace.iter().find(|(from, _)| *from == c) {
            Some((_, to)) => *to,
            None if matches!(c, '\u{a0}' | '\u{202f}' | '\u{2009}') => ' ',
            None => c,
        };
        text.chars().map(replaced).collect()
    }

    /// A date in writing.
    pub fn write_date(&self, date: NaiveDate) -> Result<String, WordingError> {
        self.write_day(date, "DAY")
    }

    /// A day in writing by one of the functions of messages: `DAY`, `BRIEF`, `WEEKDAY` or `WEEK`.
    pub fn write_day(&self, date: NaiveDate, function: &str) -> Result<String, WordingError> {
        let runs =
            self.written.format_day(date, function).map_err(|problem| self.error(function, &problem))?;
        Ok(write_runs(&runs, |value, decimals| self.write_number(value, decimals)))
    }

    /// A span in writing; of one day, its date.
    pub fn write_span(&self, span: DateSpan) -> Result<String, WordingError> {
        self.label(Part::of_span(&span), &span_values(span))
    }

    /// A number in digits, as the language writes it.
    pub fn write_number(&self, value: f64, decimals: u8) -> String {
        let plain = format!("{value:.*}", usize::from(decimals));
        let (whole, fraction) = plain.split_once('.').unwrap_or((&plain, ""));
        let (sign, digits) = whole.strip_prefix('-').map_or(("", whole), |digits| ("-", digits));
        let mut grouped = String::with_capacity(plain.len() + 4);
        let long_enough = digits.len() >= 3 + self.header.least_before_group;
        for (index, digit) in digits.chars().enumerate() {
            if index > 0 && long_enough && (digits.len() - index).is_multiple_of(3) {
                grouped.push_str(&self.header.group);
            }
            grouped.push(digit);
        }
        let point = if fraction.is_empty() { "" } else { &self.header.decimal };
        format!("{sign}{grouped}{point}{fraction}")
    }

    /// A number as people write it: with a minus sign, and with a decimal point or comma.
    ///
    /// # Errors
    /// [`NumeralError::NotANumber`]; [`NumeralError::Doubtful`] where the language groups digits by the sign that may be
    /// meant as decimal point.
    pub fn read_number(&self, text: &str) -> Result<Number, NumeralError> {
        let plain = text.replace('\u{2212}', "-").replace(',', ".");
        let number: Number = plain.parse().map_err(|_| NumeralError::NotANumber { text: text.to_owned() })?;
        let group = &self.header.group;
        let grouped = !group.is_empty() && text.contains(group.as_str());
        if grouped && number.decimals().len() == 3 && (1..1_000).contains(&number.whole()) {
            return Err(NumeralError::Doubtful { text: text.to_owned() });
        }
        Ok(number)
    }

    /// A statement in writing.
    ///
    /// ```
    /// # use kabla::{case, data::Embedded, guidance, language::Pack, plan};
    /// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    /// # let (case, _) = case::read("farm.toml", case::Starter::Farm.text(), &no_files).unwrap();
    /// # let statements = guidance::tell(&case, &plan::make(&case).unwrap());
    /// # let pack = Pack::load(&Embedded, "en").unwrap();
    /// let written = pack.write(&statements[1])?;
    /// assert_eq!(written.title, "Mark 66 healthy plants");
    /// # Ok::<(), kabla::language::WordingError>(())
    /// ```
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved.
    pub fn write(&self, statement: &Statement) -> Result<Written, WordingError> {
        let values = self.with(&statement.values);
        let text = |attribute: Attribute| match attribute.is_of(statement.subject) {
            true => values.attribute(statement.subject, attribute),
            false => Ok(String::new()),
        };
        let spans = statement.when.iter();
        let mut when: Vec<String> =
            spans.clone().map(|span| self.write_span(*span)).collect::<Result<_, _>>()?;
        let mut brief: Vec<String> = spans.map(|span| self.write_briefly(*span)).collect::<Result<_, _>>()?;
        if let Some((event, days)) = &statement.near {
            let near = self.write_event(event, *days)?;
            for first in [when.first_mut(), brief.first_mut()].into_iter().flatten() {
                *first = format!("{first} ({near})");
            }
        }
        Ok(Written {
            subject: statement.subject,
            title: values.title(statement.subject)?,
            text: text(Attribute::Text)?,
            short: text(Attribute::Short)?,
            alt: text(Attribute::Alt)?,
            show: text(Attribute::Show)?,
            ask: text(Attribute::Ask)?,
            when,
            brief,
        })
    }

    /// The title alone of a statement in writing.
    ///
    /// # Errors
    /// As [`Pack::write`].
    pub fn write_title(&self, statement: &Statement) -> Result<String, WordingError> {
        self.with(&statement.values).title(statement.subject)
    }

    /// A statement as a text message for phones; nothing where none is sent of its subject.
    ///
    /// # Errors
    /// As [`Pack::write`].
    pub fn write_sms(&self, statement: &Statement) -> Result<Option<String>, WordingError> {
        let attribute = match statement.subject {
            Subject::Consequence(_) => Attribute::Text,
            subject if Attribute::Sms.is_of(subject) => Attribute::Sms,
            _ => return Ok(None),
        };
        self.with(&statement.values).attribute(statement.subject, attribute).map(Some)
    }

    /// A span in writing, without years and weekdays.
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved.
    pub fn write_briefly(&self, span: DateSpan) -> Result<String, WordingError> {
        match span.is_day() {
            true => self.write_day(span.from, "BRIEF"),
            false => self.label(Part::SpanBrief, &span_values(span)),
        }
    }

    /// How far a day lies from an event, in writing: after it where `days` is positive.
    fn write_event(&self, event: &str, days: i64) -> Result<String, WordingError> {
        let id = match days {
            0 => Part::EventOn,
            days if days < 0 => Part::EventBefore,
            _ => Part::EventAfter,
        };
        let days = Variable::Days.number(days.unsigned_abs() as f64);
        self.label(id, &[Variable::Event.with(Value::Text(event.to_owned())), days])
    }
}

fn span_values(span: DateSpan) -> [(&'static str, Value); 2] {
    [Variable::From.with(Value::Date(span.from)), Variable::To.with(Value::Date(span.to))]
}

/// Wordings of a pack with the values they may use.
#[derive(Debug)]
pub struct Filled<'a> {
    pack: &'a Pack,
    arguments: Arguments<'a>,
}

impl Filled<'_> {
    /// A wording, by its id.
    ///
    /// # Errors
    /// The message is missing or cannot be resolved.
    pub fn label(&self, id: impl Into<MessageId>) -> Result<String, WordingError> {
        self.message(id.into().name(), None)
    }

    /// A subject's title, or the whole text of what has none.
    fn title(&self, subject: Subject) -> Result<String, WordingError> {
        match subject {
            Subject::Consequence(_) => self.attribute(subject, Attribute::Text),
            _ => self.label(subject),
        }
    }

    fn attribute(&self, subject: Subject, attribute: Attribute) -> Result<String, WordingError> {
        self.message(subject.name(), Some(attribute.name()))
    }

    pub(super) fn message(&self, id: &str, attribute: Option<&str>) -> Result<String, WordingError> {
        let pack = self.pack;
        let runs = pack.written.format(id, attribute, &self.arguments);
        let runs = runs.map_err(|problem| pack.error(id, &problem))?;
        Ok(write_runs(&runs, |value, decimals| pack.write_number(value, decimals)))
    }
}
