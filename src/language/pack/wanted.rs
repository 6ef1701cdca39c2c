//! The texts that a pack must have.

use std::collections::BTreeSet;

use super::plan::may_lack;
use crate::finding::Finding;
use crate::guidance::{Caution, Subject, Table as SheetTable};
use crate::language::names;
use crate::language::wording::Messages;

/// The wordings of sheets that belong to no statement.
pub const LABELS: &[&str] = &[
    "sheet-title",
    "sheet-for",
    "sheet-place",
    "sheet-rains",
    "sheet-harvest",
    "sheet-amounts",
    "sheet-steps",
    "sheet-cautions",
    "sheet-when",
    "colon",
    "semicolon",
    "sheet-page",
    "status-draft",
    "status-read",
    "status-approved",
    "cue-title",
    "cue-language",
    "cue-voice",
    "cue-rights",
    "cue-status",
    "cue-length",
    "cue-loudness",
    "cue-true-peak",
    "cue-from",
    "cue-to",
    "cue-words",
    "cue-clip",
    "voice-stand-in",
    "voice-draft",
    "voice-approved",
    "voice-stand-in-remark",
    "amount-plants",
    "amount-plants-each",
    "amount-roots",
    "amount-cuttings",
    "amount-first-cuttings",
    "amount-containers",
    "amount-layers",
    "amount-roots-per-layer",
    "amount-roots-top-layer",
    "amount-bundles",
    "amount-lining",
    "amount-water-total",
    "bundles-value",
    "lining-value",
    "water-total-value",
    "false-starts-value",
    "column-when",
    "column-farm",
    "column-area",
    "column-cuttings",
    "column-plants",
    "column-roots",
    "column-bed",
    "column-jerrycans",
    "column-from",
    "column-false-starts",
    "column-days-left",
    "amount-sand",
    "amount-loads",
    "amount-bed",
    "amount-water",
    "amount-jerrycans",
    "sand-value",
    "bed-value",
    "water-value",
    "roots-for-zone",
    "span-brief",
    "month-year",
    // Of formats.
    "calendar-title",
    "guide-title",
    "guide-show",
    "guide-ask",
    "card-fold",
    "record-title",
    "record-how",
    "record-planned",
    "record-done",
    "record-healthy",
    "record-thrown-away",
    "record-sprouted",
    "record-remark",
    "record-stored",
    "booklet-index",
    // Of drawings.
    "size-cm",
    "size-m",
    "drawing-season",
    "drawing-season-alt",
    "season-store",
    "season-bed",
    "season-field",
    "season-on-harvest",
    "season-on-sprout",
    "season-on-rains",
    "season-on-food",
    "drawing-store",
    "drawing-store-alt",
    "drawing-layers",
    "drawing-layers-alt",
    "drawing-bed",
    "drawing-bed-alt",
    "drawing-rows",
    "drawing-rows-alt",
    "script-title",
    "script-new-voice",
    "script-lines",
    "script-time",
    "script-time-measured",
    "script-minutes",
    "script-ready",
    "script-how",
    "script-how-room",
    "script-how-distance",
    "script-how-tone",
    "script-how-pause",
    "script-how-order",
    "script-how-slip",
    "script-how-grey",
    "script-how-brackets",
    "script-how-medial",
    "script-how-final",
    "script-medial",
    "script-final",
    "script-part",
    "script-part-lines",
    "script-rest",
    "script-opening",
    "script-closing",
    "script-sentences",
    "script-parts",
    "script-numbers",
    "script-dates",
    "script-months",
    "script-units",
    "script-unlocks",
    "script-complete",
    "script-stale",
    "script-other-ending",
    "script-recorded",
    "script-unsaid",
    "script-nothing",
    "clips-title",
    "clips-intro",
    "clips-again",
    "clips-usable",
    "clips-good",
    "clips-unused",
    "clips-missing",
    "clips-picture",
    "clips-length",
    "clips-level",
    "clips-noise",
    "clips-hum",
    "clips-pace",
    "clip-clipped",
    "clip-cut-start",
    "clip-cut-end",
    "clip-noise",
    "clip-hum",
    "clip-room",
    "clip-quiet",
    "clip-loud",
    "clip-fast",
    "clip-slow",
    "clip-offset",
    "clip-broken",
    "clip-stale",
    "clip-unused",
    "segment-title",
    "segment-season",
    "segment-week",
    "segment-topics",
    "segment-nothing",
    "segment-due",
    "segment-past",
    "segment-soon",
    "segment-opening",
    "segment-closing",
    "segment-bed",
    "segment-bed-value",
    "segment-said",
    "segment-read-before",
    "segment-read-after",
    "segment-intro",
    "segment-outro",
    "segment-reading-time",
    "segment-read-live",
    "segment-pauses",
    "segment-no-sound",
    "segment-no-voice",
    "segment-left-out",
    "segment-missing",
    "cue-active-level",
    "cue-chapter",
    "cue-talk",
];

/// Messages of both files through which dates, spans and measures are said.
const PARTS: &[&str] = &[
    "month",
    "date",
    "week",
    "span",
    "span-day",
    "unit-kilogram",
    "unit-litre",
    "unit-metre",
    "unit-centimetre",
    "unit-hand",
    "unit-thumb-joint",
    "unit-jerrycan",
    "unit-bundle",
];

/// What only written messages are put together from.
const WRITTEN_PARTS: &[&str] =
    &["date-short", "month-short", "weekday", "event-before", "event-on", "event-after"];

/// Whether a subject has a text message for phones.
pub(super) fn has_sms(subject: Subject) -> bool {
    matches!(subject, Subject::Step(_) | Subject::Caution(Caution::Rot) | Subject::Closing)
}

pub(super) type Wanted = (&'static str, Option<&'static str>);

pub(super) fn written_wanted() -> Vec<Wanted> {
    let mut wanted: Vec<Wanted> =
        LABELS.iter().chain(PARTS).chain(WRITTEN_PARTS).map(|id| (*id, None)).collect();
    for subject in Subject::all() {
        wanted.push((subject.name(), None));
        if matches!(subject, Subject::Step(_) | Subject::Caution(_)) {
            wanted.extend(["short", "text", "alt"].map(|part| (subject.name(), Some(part))));
        }
        if matches!(subject, Subject::Step(_)) {
            wanted.extend(["show", "ask"].map(|part| (subject.name(), Some(part))));
        }
        if has_sms(subject) {
            wanted.push((subject.name(), Some("sms")));
        }
        if let Subject::Table(table) = subject {
            wanted.push((subject.name(), Some("text")));
            if table == SheetTable::PlantLater {
                wanted.push((subject.name(), Some("alt")));
            }
        }
    }
    wanted
}

pub(super) fn spoken_wanted() -> Vec<Wanted> {
    let subjects = Subject::all().filter(|subject| subject.is_spoken()).map(Subject::name);
    subjects.chain(PARTS.iter().copied()).map(|id| (id, None)).collect()
}

/// The texts that a file should have, such as `mark-plants` and `mark-plants.text`; those of plans may be lacking.
pub(in crate::language) fn wanted(file: &str) -> Vec<String> {
    let wanted = if file == "spoken.ftl" { spoken_wanted() } else { written_wanted() };
    wanted.into_iter().chain(may_lack(file)).map(name).collect()
}

pub(super) fn name((id, attribute): Wanted) -> String {
    attribute.map_or(id.to_owned(), |attribute| format!("{id}.{attribute}"))
}

pub(super) fn missing(messages: &Messages, file: &str, wanted: Vec<Wanted>) -> Vec<Finding> {
    let absent: BTreeSet<Wanted> =
        wanted.into_iter().filter(|(id, attribute)| !messages.has(id, *attribute)).collect();
    let finding = |wanted: Wanted| {
        let hint = match names::is_name(wanted.0) {
            true => "write the names: Unicode CLDR has none in this language",
            false => "translate it",
        };
        Finding::error("the message is missing").file(file).field(name(wanted)).hint(hint)
    };
    absent.into_iter().map(finding).collect()
}
