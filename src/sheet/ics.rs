//! The steps as a calendar file (RFC 5545).

use chrono::{Days, Duration, NaiveDate, NaiveTime};
use icalendar::{Alarm, Calendar, Component, Event, EventLike, Property, Trigger};
use uuid::Uuid;

use crate::guidance::{Statement, Subject, Value, Variable};
use crate::language::{Label, Pack, WordingError};

/// Days before a step on which the calendar reminds of it.
const REMIND_BEFORE: i64 = 2;

/// The steps of a plan, one event for each time, over whole days, with what belongs beside them: consequences, tips
/// and cautions. The same plan gives the same ids, so that a file that is read again renews its events
/// instead of doubling them.
///
/// # Errors
/// The wording that is missing or cannot be resolved.
pub fn ics(pack: &Pack, statements: &[Statement]) -> Result<Vec<u8>, WordingError> {
    let opening = statements.iter().find(|statement| statement.subject == Subject::Opening);
    let text = |variable: Variable| match opening.and_then(|opening| opening.value(variable.name())) {
        Some(Value::Text(text)) => text.clone(),
        _ => String::new(),
    };
    let (name, place) = (text(Variable::Name), text(Variable::Place));
    let values = opening.map(|opening| opening.values.clone()).unwrap_or_default();
    let mut calendar = Calendar::empty();
    calendar.append_property(Property::new("VERSION", "2.0"));
    calendar.append_property(Property::new("PRODID", "-//Kabla//Kabla//EN"));
    calendar.name(&format!("{} – {name}", pack.label(Label::SheetTitle, &values)?));
    let colon = pack.label(Label::Colon, &values)?;
    let beside = statements.iter().filter(|statement| {
        matches!(statement.subject, Subject::Consequence(_) | Subject::Tip(_) | Subject::Caution(_))
    });
    let mut beside: Vec<Told> = beside.map(|of| Told::of(pack, of, &colon)).collect::<Result<_, _>>()?;
    let mut events = Vec::new();
    for statement in statements {
        let Subject::Step(topic) = statement.subject else { continue };
        let written = pack.write(statement)?;
        let mut description = written.text;
        for told in beside.iter_mut().filter(|told| told.subject.is_beside(topic)) {
            description = format!("{description}\n\n{}", told.text);
            told.told = true;
        }
        for (span, time) in statement.when.iter().zip(1..) {
            let id = format!("{name}\n{place}\n{}\n{}\n{time}", season(statements), statement.subject.name());
            let mut event = Event::with_uid(&Uuid::new_v5(&Uuid::NAMESPACE_OID, id.as_bytes()).to_string());
            event.timestamp(stamp(span.from));
            event.starts(span.from);
            // The last day of an event over whole days is the first one after it.
            event.ends(span.to.checked_add_days(Days::new(1)).unwrap_or(span.to));
            event.append_property(in_language("SUMMARY", &written.title, pack));
            event.append_property(in_language("DESCRIPTION", &description, pack));
            event.append_property(in_language("LOCATION", &place, pack));
            event.append_property(Property::new("TRANSP", "TRANSPARENT"));
            let mut alarm =
                Alarm::display(&written.title, Trigger::before_start(Duration::days(REMIND_BEFORE)));
            // The library would take both from the clock and from chance.
            alarm.uid(&Uuid::new_v5(&Uuid::NAMESPACE_OID, format!("{id}\nalarm").as_bytes()).to_string());
            alarm.timestamp(stamp(span.from));
            event.alarm(alarm);
            events.push(event.done());
        }
    }
    // What belongs to no step of this plan stands over all.
    let mut about = vec![pack.label(Subject::Closing, &values)?, pack.label(pack.status().label(), &values)?];
    about.extend(beside.into_iter().filter(|told| !told.told).map(|told| told.text));
    calendar.description(&about.join(" "));
    calendar.extend(events);
    Ok(written(&calendar))
}

/// What belongs beside steps in words, and whether it stands beside one.
struct Told {
    subject: Subject,
    text: String,
    told: bool,
}

impl Told {
    fn of(pack: &Pack, statement: &Statement, colon: &str) -> Result<Told, WordingError> {
        let written = pack.write(statement)?;
        let text = match statement.subject {
            Subject::Caution(_) => format!("{}{colon} {}", written.title, written.text),
            _ => written.title,
        };
        Ok(Told { subject: statement.subject, text, told: false })
    }
}

/// The most bytes of a line (RFC 5545, 3.1).
const LONGEST_LINE: usize = 75;

/// The calendar's file. The library leaves the last line of a folded text one byte too long at times.
pub(super) fn written(calendar: &Calendar) -> Vec<u8> {
    let text = calendar.to_string();
    let folded = |line: &str| match line.split_at_checked(line.floor_char_boundary(LONGEST_LINE)) {
        Some((fits, rest)) if !rest.is_empty() => format!("{fits}\r\n {rest}"),
        _ => line.to_owned(),
    };
    text.split("\r\n").map(folded).collect::<Vec<_>>().join("\r\n").into_bytes()
}

pub(super) fn in_language(key: &str, text: &str, pack: &Pack) -> Property {
    let mut property = Property::new(key, text);
    property.add_parameter("LANGUAGE", &pack.tag());
    property
}

/// The year that tells a farm's seasons apart.
fn season(statements: &[Statement]) -> i32 {
    let first = statements.iter().flat_map(|statement| &statement.when).map(|span| span.from).min();
    first.map_or(0, |day| chrono::Datelike::year(&day))
}

/// A stamp that does not depend on the clock: a plan is the same whenever it is made.
pub(super) fn stamp(day: NaiveDate) -> chrono::DateTime<chrono::Utc> {
    day.and_time(NaiveTime::MIN).and_utc()
}
