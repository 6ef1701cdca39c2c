//! Statements and dates aloud.

use chrono::NaiveDate;

use super::{Pack, WordingError};
use crate::finding::Finding;
use crate::guidance::{Statement, Subject};
use crate::language::numerals::{Number, words_in};
use crate::language::piece::{Assembly, Piece, Role};
use crate::language::wording::{Arguments, Phrase, Problem, Run, collect_phrases};
use crate::plan::Values;

impl Pack {
    /// A statement as it is spoken: its words with their pauses.
    ///
    /// ```
    /// use kabla::language::Piece;
    /// # use kabla::{case, data::Embedded, guidance, language::Pack, plan};
    /// # let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
    /// # let (case, _) = case::read("farm.toml", case::Starter::Farm.text(), &no_files).unwrap();
    /// # let statements = guidance::tell(&case, &plan::make(&case).unwrap());
    /// # let pack = Pack::load(&Embedded, "en").unwrap();
    /// let pieces = pack.say(&statements[1])?;
    /// let words = pieces.iter().filter(|piece| matches!(piece, Piece::Words(_)));
    /// assert!(words.count() > 5);
    /// # Ok::<(), kabla::language::WordingError>(())
    /// ```
    ///
    /// # Errors
    /// The message that is missing or cannot be resolved, or the number that
    /// the rules have no words for.
    pub fn say(&self, statement: &Statement) -> Result<Vec<Piece>, WordingError> {
        self.say_message(statement.subject.name(), &statement.values)
    }

    /// A message in spoken pieces.
    pub(super) fn say_message(&self, id: &str, values: &Values) -> Result<Vec<Piece>, WordingError> {
        let runs = self
            .spoken
            .format(id, None, &Arguments::of(values))
            .map_err(|problem| self.error(id, &problem))?;
        let mut assembly = Assembly::default();
        for run in runs {
            match run {
                Run::Text(text, role) => assembly.text(&text, role),
                Run::Said(value, decimals, form) => {
                    let words = self.say_number(value, decimals, &form).map_err(|problem| WordingError {
                        language: self.tag(),
                        id: id.to_owned(),
                        problem,
                    })?;
                    words_in(&words).for_each(|word| assembly.words(word, Role::Number));
                }
                Run::Plain(value, _) => {
                    let problem =
                        Problem::Unresolved(format!("the number {value} stands in spoken text without SAY"));
                    return Err(self.error(id, &problem));
                }
            }
        }
        Ok(assembly.finish())
    }

    /// A day in spoken words by one of the functions of spoken messages: `DAY` or `WEEK`.
    ///
    /// # Errors
    /// The message that is missing, or the number without words.
    pub fn say_day(&self, date: NaiveDate, function: &str) -> Result<String, WordingError> {
        let runs =
            self.spoken.format_day(date, function).map_err(|problem| self.error(function, &problem))?;
        let mut words = String::new();
        for run in runs {
            match run {
                Run::Text(text, _) => words.push_str(&text),
                Run::Said(value, decimals, form) => {
                    let said = self.say_number(value, decimals, &form);
                    words.push_str(
                        &said.map_err(|problem| self.error(function, &Problem::Unresolved(problem)))?,
                    );
                }
                Run::Plain(value, _) => {
                    let problem =
                        Problem::Unresolved(format!("the number {value} stands in spoken text without SAY"));
                    return Err(self.error(function, &problem));
                }
            }
        }
        Ok(words.trim().to_owned())
    }

    fn say_number(&self, value: f64, decimals: u8, form: &str) -> Result<String, String> {
        let number = Number::rounded(value, decimals)
            .ok_or_else(|| format!("{value} is not a number that can be said"))?;
        self.numerals.say(number, form).map_err(|error| error.to_string())
    }

    /// Every phrase that speech may need, each with its endings.
    ///
    /// # Errors
    /// Findings about spoken text that nobody can record.
    pub fn phrases(&self) -> Result<Vec<Phrase>, Vec<Finding>> {
        let file = format!("locales/{}/spoken.ftl", self.tag());
        let subjects = Subject::all().filter(|subject| subject.is_spoken()).map(Subject::name);
        let roots: Vec<&str> = subjects.collect();
        let (phrases, findings) =
            collect_phrases(&file, self.spoken.normalized(), (&self.numerals, &self.header.whole), &roots);
        if findings.is_empty() { Ok(phrases) } else { Err(findings) }
    }
}
