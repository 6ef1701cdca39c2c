//! The season's plan: which segment airs in which week.

use chrono::{Days, NaiveDate};

use super::script::text_of;
use super::{SegmentRequest, season_path, stem};
use crate::app::output::Output;
use crate::app::{Code, Data, Error, Finding, Length, Made, ReadCase, led_to, remarks_on};
use crate::guidance::{Statement, Subject, Timing, Values, Variable, for_week, week_of};
use crate::language::{Direction, Label, Pack, WordingError};
use crate::plan::DateSpan;
use crate::sheet::{
    Airing, AiringLabels, Airings, Printer, SheetError, Told, airings_calendar, airings_table,
};

/// Makes the plan of a season's segments, from the preparations of the harvest to the planting: to print,
/// as a table and as a calendar.
///
/// # Errors
/// Problems of the case, the pack or the templates; nothing is written then.
pub fn season(data: &dyn Data, request: SegmentRequest<'_>) -> Result<Vec<Made>, Error> {
    let read = ReadCase::from_disk(request.case)?.with(request.overrides)?;
    let pack = read.pack(data, request.language)?;
    let statements = read.statements()?;
    let Some(airings) = airings(&pack, &statements)? else {
        let finding = Finding::error(Code::NOT_IN_PLAN, "the plan has no steps to tell of").file(&read.name);
        return Err(Error::Input(vec![finding]));
    };
    let pdf = Printer::new(data)?.set("airings.typ", &airings, std::collections::BTreeMap::new())?;
    if let Some(overflow) = pdf.overflows.first() {
        let message = format!("the plan does not fit on its paper: {overflow}");
        return Err(SheetError::Template { file: "templates/airings.typ".to_owned(), message }.into());
    }
    let mut remarks = remarks_on(&pack);
    remarks.extend(led_to(&pack, &statements)?);
    let mut output = Output::default();
    let mut made = Vec::new();
    for (ending, bytes, what, length) in [
        ("pdf", pdf.bytes, "plan of the season's segments to print", Length::Pages(pdf.pages)),
        ("csv", airings_table(&airings), "the same as a table", Length::Unmeasured),
        ("ics", airings_calendar(&airings, &pack), "the same as a calendar", Length::Unmeasured),
    ] {
        let path = season_path(request.out, &pack, ending);
        output.add(&path, &bytes)?;
        let what = format!("{what}, {}", pack.name());
        made.push(Made { path, what, audience: "radio producer", length, remarks: remarks.clone() });
    }
    output.commit()?;
    Ok(made)
}

/// Every week from the first preparation to the last planting; none where there is no step.
fn airings(pack: &Pack, statements: &[Statement]) -> Result<Option<Airings>, WordingError> {
    let opening = statements.iter().find(|statement| statement.subject == Subject::Opening);
    let values: Values = opening.map(|statement| statement.values.clone()).unwrap_or_default();
    let label = |id| pack.label(id, &values);
    let Some(season) = season_of(statements) else { return Ok(None) };
    let weeks = weeks_of(season).map(|week| airing(pack, statements, week)).collect::<Result<_, _>>()?;
    Ok(Some(Airings {
        language: pack.tag(),
        direction: match pack.direction() {
            Direction::LeftToRight => "ltr",
            Direction::RightToLeft => "rtl",
        },
        title: label(Label::SegmentSeason)?,
        name: text_of(&values, Variable::Name),
        place: text_of(&values, Variable::Place),
        labels: AiringLabels {
            week: label(Label::SegmentWeek)?,
            topics: label(Label::SegmentTopics)?,
            nothing: label(Label::SegmentNothing)?,
            page: label(Label::SheetPage)?,
            colon: label(Label::Colon)?,
        },
        weeks,
        closing: pack.label(Subject::Closing, &values)?,
        status: label(pack.status().label())?,
    }))
}

/// From the first day of the preparations to the last of the planting.
fn season_of(statements: &[Statement]) -> Option<DateSpan> {
    let of_season = |statement: &&Statement| match statement.subject {
        Subject::Step(kind) => kind.airs(),
        _ => false,
    };
    let spans = || statements.iter().filter(of_season).flat_map(|statement| &statement.when);
    let first = spans().map(|span| span.from).min()?;
    Some(DateSpan::new(first, spans().map(|span| span.to).max()?))
}

fn weeks_of(season: DateSpan) -> impl Iterator<Item = DateSpan> {
    let next = |week: &DateSpan| -> Option<NaiveDate> { week.to.checked_add_days(Days::new(1)) };
    let first = week_of(season.from);
    std::iter::successors(Some(first), move |week| next(week).map(week_of))
        .take_while(move |week| week.from <= season.to)
}

fn airing(pack: &Pack, statements: &[Statement], week: DateSpan) -> Result<Airing, WordingError> {
    let items = for_week(statements, week);
    let mut told = Vec::new();
    for (timing, name, id) in [
        (Timing::Due, "due", Label::SegmentDue),
        (Timing::Past, "past", Label::SegmentPast),
        (Timing::Soon, "soon", Label::SegmentSoon),
    ] {
        let of_timing = items.iter().filter(|item| item.timing == timing);
        let topics: Vec<_> = of_timing
            .map(|item| Ok((item.statement.subject.name(), pack.write_title(item.statement)?)))
            .collect::<Result<_, WordingError>>()?;
        if !topics.is_empty() {
            told.push(Told { timing: name, label: pack.label(id, &[])?, topics });
        }
    }
    let segment = if told.is_empty() { String::new() } else { stem(pack, week) };
    Ok(Airing { days: week, week: pack.write_span(week)?, segment, told })
}
