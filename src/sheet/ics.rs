//! The steps as a calendar file (RFC 5545).

use chrono::{Days, Duration, NaiveDate, NaiveTime};
use icalendar::{Alarm, Calendar, Component, Event, EventLike, Property, Trigger};
use uuid::Uuid;

use crate::guidance::{Statement, Subject, Value, Variable};
use crate::language::{Label, Pack, WordingError};

/// Days before a step on which the calendar reminds of it.
const REMIND_BEFORE: i64 = 2;

/// The steps of a plan, one event for each time, over whole days. The same plan gives the same
/// ids, so that a file that is read again renews its events instead of doubling them.
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
    calendar.description(&format!(
        "{} {}",
        pack.label(Subject::Closing, &values)?,
        pack.label(pack.status().label(), &values)?
    ));
    for statement in statements.iter().filter(|statement| matches!(statement.subject, Subject::Step(_))) {
        let written = pack.write(statement)?;
        for (span, time) in statement.when.iter().zip(1..) {
            let id = format!("{name}\n{place}\n{}\n{}\n{time}", season(statements), statement.subject.name());
            let mut event = Event::with_uid(&Uuid::new_v5(&Uuid::NAMESPACE_OID, id.as_bytes()).to_string());
            event.timestamp(stamp(span.from));
            event.starts(span.from);
            // The last day of an event over whole days is the first one after it.
            event.ends(span.to.checked_add_days(Days::new(1)).unwrap_or(span.to));
            event.append_property(in_language("SUMMARY", &written.title, pack));
            event.append_property(in_language("DESCRIPTION", &written.text, pack));
            event.append_property(in_language("LOCATION", &place, pack));
            event.append_property(Property::new("TRANSP", "TRANSPARENT"));
            let mut alarm =
                Alarm::display(&written.title, Trigger::before_start(Duration::days(REMIND_BEFORE)));
            // The library would take both from the clock and from chance.
            alarm.uid(&Uuid::new_v5(&Uuid::NAMESPACE_OID, format!("{id}\nalarm").as_bytes()).to_string());
            alarm.timestamp(stamp(span.from));
            event.alarm(alarm);
            calendar.push(event.done());
        }
    }
    Ok(calendar.to_string().into_bytes())
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
