//! Which radio segment airs in which week of the season.

use chrono::Days;
use icalendar::{Calendar, Component, Event, EventLike, Property};
use serde::Serialize;
use uuid::Uuid;

use super::ics::{in_language, stamp, written};
use crate::guidance::DateSpan;
use crate::language::Pack;

/// The facts of a season's plan of segments, all in the pack's words.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Airings {
    /// Language tag.
    pub language: String,
    /// `ltr` or `rtl`.
    pub direction: &'static str,
    /// Its title.
    pub title: String,
    /// The name of the zone, farm or group.
    pub name: String,
    /// The place's name.
    pub place: String,
    /// Its words.
    pub labels: AiringLabels,
    /// Every week of the season.
    pub weeks: Vec<Airing>,
    /// Local advice comes first.
    pub closing: String,
    /// How far the wording may be trusted.
    pub status: String,
}

/// The words of a plan of segments.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct AiringLabels {
    /// Over the weeks.
    pub week: String,
    /// Over what is told.
    pub topics: String,
    /// In a week without anything to tell.
    pub nothing: String,
    /// Before a page number.
    pub page: String,
    /// The sign between a label and its value.
    pub colon: String,
}

/// A week and what is told in it.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Airing {
    /// From Monday to Sunday.
    #[serde(skip)]
    pub days: DateSpan,
    /// The same in words.
    pub week: String,
    /// The name of the segment's files, without ending; empty where there is nothing to say.
    pub segment: String,
    /// What is told: work of the week, what comes soon, what still holds; empty where nothing is.
    pub told: Vec<Told>,
}

/// Topics that stand alike to their week.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Told {
    /// `due`, `soon` or `past`.
    pub timing: &'static str,
    /// How they stand to the week, in words.
    pub label: String,
    /// The topics' names and titles.
    pub topics: Vec<(&'static str, String)>,
}

/// The plan as a table (CSV): a row for each topic of each week, and one for a week without any.
pub fn airings_table(airings: &Airings) -> Vec<u8> {
    let mut table = csv::Writer::from_writer(Vec::new());
    // Writing to memory cannot fail.
    let mut write = |row: [&str; 6]| {
        let _ = table.write_record(row);
    };
    write(["from", "to", "segment", "when", "topic", "title"]);
    for airing in &airings.weeks {
        let (from, to) = (airing.days.from.to_string(), airing.days.to.to_string());
        for told in &airing.told {
            for (topic, title) in &told.topics {
                write([&from, &to, &airing.segment, told.timing, topic, title]);
            }
        }
        if airing.told.is_empty() {
            write([&from, &to, "", "nothing", "", &airings.labels.nothing]);
        }
    }
    table.into_inner().unwrap_or_default()
}

/// The plan as a calendar file (RFC 5545): an event for each week. The same plan gives the same ids.
pub fn airings_calendar(airings: &Airings, pack: &Pack) -> Vec<u8> {
    let mut calendar = Calendar::empty();
    calendar.append_property(Property::new("VERSION", "2.0"));
    calendar.append_property(Property::new("PRODID", "-//Kabla//Kabla//EN"));
    calendar.name(&format!("{} – {}", airings.title, airings.name));
    calendar.description(&format!("{} {}", airings.closing, airings.status));
    for airing in &airings.weeks {
        let id = format!("{}\n{}\nsegment\n{}", airings.name, airings.place, airing.days.from);
        let mut event = Event::with_uid(&Uuid::new_v5(&Uuid::NAMESPACE_OID, id.as_bytes()).to_string());
        event.timestamp(stamp(airing.days.from));
        event.starts(airing.days.from);
        // The last day of an event over whole days is the first one after it.
        event.ends(airing.days.to.checked_add_days(Days::new(1)).unwrap_or(airing.days.to));
        event.append_property(in_language("SUMMARY", &summary(airing, &airings.labels), pack));
        event.append_property(in_language("DESCRIPTION", &description(airing, &airings.labels), pack));
        event.append_property(in_language("LOCATION", &airings.place, pack));
        event.append_property(Property::new("TRANSP", "TRANSPARENT"));
        calendar.push(event.done());
    }
    written(&calendar)
}

/// The first group of topics is what the week is about.
fn summary(airing: &Airing, labels: &AiringLabels) -> String {
    airing.told.first().map_or(labels.nothing.clone(), |told| titles(told).join("; "))
}

fn description(airing: &Airing, labels: &AiringLabels) -> String {
    let line = |told: &Told| format!("{}{} {}", told.label, labels.colon, titles(told).join("; "));
    let lines: Vec<String> = airing.told.iter().map(line).collect();
    if lines.is_empty() { labels.nothing.clone() } else { lines.join("\n") }
}

fn titles(told: &Told) -> Vec<&str> {
    told.topics.iter().map(|(_, title)| title.as_str()).collect()
}
