//! Cases as people write them: a TOML text, and the records it names.

mod area;
mod daily;
mod fields;
mod given;
mod headings;
mod records;
mod season;
mod starter;
mod store;
mod water;

pub use given::Open;
pub use headings::DateLayout;
pub use records::{TemperatureDay, read_rain, read_temperatures};
pub use season::found_in_words;
pub use starter::Starter;

use given::required;

use crate::finding::{Code, Finding};
use crate::plan::after::{Maturity, Variety};
use crate::plan::{Assumptions, Case, Event, Kind, Metres, Place, PlanBy, StepKind};
use crate::toml_reader::{self, Source, TomlTable};

/// Reads a case.
///
/// `name` is the file's name as the user knows it; `open` reads files the
/// case names.
///
/// ```
/// let no_files = |_: &str| Err(std::io::Error::from(std::io::ErrorKind::NotFound));
/// let text = "name = \"A farm\"\nharvest = \"2027-02-30\"";
/// let findings = kabla::case::read("farm.toml", text, &no_files).unwrap_err();
/// let mistake = findings.iter().find(|finding| finding.code == kabla::finding::Code::NOT_A_DATE);
/// assert_eq!(mistake.expect("no such day").place.line, Some(2));
/// ```
///
/// # Errors
/// All problems of the case and of the records it names, each with its line,
/// field and a hint. Warnings alone do not fail: they come with the case.
pub fn read(name: &str, text: &str, open: Open<'_>) -> Result<(Case, Vec<Finding>), Vec<Finding>> {
    let (case, findings) = toml_reader::read(name, text, |source, root| read_root(source, root, open));
    match case {
        Some(case) if !findings.iter().any(Finding::is_error) => Ok((case, findings)),
        _ => Err(findings),
    }
}

/// The line of a field in the text of a case that can be read, by the field's dotted name.
pub fn line_of_field(text: &str, field: &str) -> Option<u32> {
    toml_reader::line_of_field(text, field)
}

fn read_root(source: &Source<'_>, root: &TomlTable<'_>, open: Open<'_>) -> Option<Case> {
    let name =
        required(root, "name", "write the farm's, group's or zone's name: name = \"…\"", root.text("name"));
    let language = root.text("language");
    let today = root.date("today");
    let harvest = required(
        root,
        "harvest",
        "write the day the roots are dug: harvest = 2027-04-30",
        root.date("harvest"),
    );
    let harvest_until = root.date("harvest_until");
    let topics = StepKind::ALL.map(|topic| (topic.name(), topic));
    let done = root.choice("done", &topics);
    if done.is_some() && !root.has("today") {
        root.problem(
            Code::MISSING_FIELD,
            "done",
            "what is done tells nothing without a day",
            "write today = … as well",
        );
    }

    let plan_by = root.choice("plan_by", &PlanBy::NAMED).unwrap_or_default();
    let assumptions = read_assumptions(root);
    let fields = fields::read(root, &assumptions);
    let kind = fields.kind;
    if root.has("harvest_until") && !matches!(kind, Some(Kind::Zone) | None) {
        root.problem(Code::NO_USE, "harvest_until", "only a zone digs on many days", "take the line out");
    }
    if harvest.zip(harvest_until).is_some_and(|(first, last)| last < first) {
        root.problem(
            Code::WRONG_ORDER,
            "harvest_until",
            "lies before the harvest begins",
            "check the two dates",
        );
    }
    let place = read_place(root.table("place"));
    let table = root.table("season");
    let rains = season::read(source, &table, harvest, open);
    table.finish();

    let store_checks = store::read_checks(root, harvest);
    let containers = root.tables("container").into_iter().filter_map(store::read_container).collect();
    let climate = water::read_climate(source, root.table("climate"), open);
    let soil = water::read_soil(root.table("bed"));
    let spring = water::read_source(root.table("water"));
    let hands = water::read_hands(root.table("hands"), &assumptions);
    let variety = read_variety(root.table("variety"));
    let events = root.tables("event").into_iter().filter_map(read_event).collect();
    let rains = rains?;
    Some(Case {
        name: name?,
        kind: kind?,
        place: place?,
        rains: rains.rains,
        rains_end: rains.end,
        risk: rains.risk,
        rains_began: rains.began,
        harvest: harvest?,
        harvest_until,
        field: fields.field,
        farms: fields.farms,
        at_hand: fields.at_hand,
        field_sizes: fields.sizes,
        sizing: fields.sizing,
        plan_by,
        confidence_percent: fields.confidence_percent,
        store_checks,
        done,
        containers,
        climate,
        soil,
        hands,
        source: spring,
        variety,
        events,
        language,
        today,
        assumptions,
    })
}

fn read_place(place: TomlTable<'_>) -> Option<Place> {
    let name = required(&place, "name", "add [place] with name = \"…\"", place.text("name"));
    let degrees = "write degrees with a decimal point, south and west negative";
    let latitude = required(&place, "latitude", degrees, place.number("latitude", -90.0..=90.0));
    let longitude = required(&place, "longitude", degrees, place.number("longitude", -180.0..=180.0));
    let elevation = required(
        &place,
        "elevation_m",
        "write metres above the sea",
        place.number("elevation_m", -430.0..=6000.0),
    );
    place.finish();
    Some(Place { name: name?, latitude: latitude?, longitude: longitude?, elevation: Metres(elevation?) })
}

fn read_event(table: TomlTable<'_>) -> Option<Event> {
    let name = required(
        &table,
        "name",
        "write what people call the day: name = \"the maize feast\"",
        table.text("name"),
    );
    let date = required(&table, "date", "write the day: date = 2027-10-01", table.date("date"));
    table.finish();
    Some(Event { name: name?, date: date? })
}

fn read_variety(table: TomlTable<'_>) -> Variety {
    let classes = [("early", Maturity::Early), ("medium", Maturity::Medium), ("late", Maturity::Late)];
    let maturity = table.choice("maturity", &classes);
    let carotene_ug = table.number("carotene_ug_per_100g", 0.0..=50_000.0);
    table.finish();
    Variety { maturity, carotene_ug }
}

fn read_assumptions(root: &TomlTable<'_>) -> Assumptions {
    let table = root.table("assumptions");
    let mut assumptions = Assumptions::default();
    for entry in Assumptions::TABLE {
        if let Some(value) = table.number(entry.name, entry.least..=entry.greatest) {
            assumptions.set(entry.name, value);
        }
    }
    for (first, last) in [
        ("check_days_before_harvest_last", "check_days_before_harvest_first"),
        ("early_check_days_first", "early_check_days_last"),
        ("cut_vines_days_before_harvest_last", "cut_vines_days_before_harvest_first"),
        ("bed_weeks_before_rains_last", "bed_weeks_before_rains_first"),
        ("next_cut_days_first", "next_cut_days_last"),
        ("first_harvest_days_first", "first_harvest_days_last"),
        ("early_maturity_days_first", "early_maturity_days_last"),
        ("medium_maturity_days_first", "medium_maturity_days_last"),
        ("late_maturity_days_first", "late_maturity_days_last"),
        ("survival_low", "survival_high"),
        ("cuttings_per_root_day_30", "cuttings_per_root_day_42"),
        ("cuttings_per_root_day_42", "cuttings_per_root_day_56"),
        ("cuttings_per_root_day_56", "cuttings_per_root_day_70"),
        ("cuttings_per_root_day_70", "cuttings_per_root_day_84"),
        ("yield_low_t_per_ha", "yield_high_t_per_ha"),
        ("onset_early_percent", "onset_late_percent"),
    ] {
        if assumptions.get(first) > assumptions.get(last) {
            table.problem(
                Code::WRONG_ORDER,
                first,
                format!("is greater than {last}"),
                "swap the two, or give both",
            );
        }
    }
    table.finish();
    assumptions
}
