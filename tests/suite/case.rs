//! Cases as people write them, wrong ones above all.

use std::io;

use kabla::case::{read, read_rain};
use kabla::finding::Finding;
use kabla::plan::season::Rains;
use kabla::plan::{Case, Kind};

fn nothing(_: &str) -> io::Result<Vec<u8>> {
    Err(io::Error::from(io::ErrorKind::NotFound))
}

fn problems(text: &str) -> Vec<Finding> {
    read("case.toml", text, &nothing).unwrap_err()
}

fn good(text: &str) -> Case {
    read("case.toml", text, &nothing).unwrap().0
}

const GOOD: &str = r#"
name = "A farm"
harvest = 2027-05-24

[place]
name = "Somewhere"
latitude = -6.2
longitude = 36.1
elevation_m = 1080

[season]
rains_begin = "11-25"

[field]
area_m2 = 450
"#;

fn shown(findings: &[Finding]) -> String {
    findings.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")
}

#[test]
fn all_problems_come_together_with_line_field_and_hint() {
    let text = r#"
name = ""
harvets = 2027-05-24
today = 2027-04-31

[place]
name = "Somewhere"
latitude = 96.2
longitude = nan
elevation_m = "high"

[season]
rains_begin = "13-45"
risk = "daring"

[field]
area_m2 = -450
ridge_spacing_m = 0
length_m = 3

[[container]]
shape = "round"
depth_cm = 25

[[container]]
shape = "sack"
depth_cm = inf

[climate]
tmax_c = [30, 31]

[assumptions]
roots_per_plants = 2
survival_share = 1.5
"#;
    let findings = problems(text);
    insta::assert_snapshot!(shown(&findings));
    for finding in &findings {
        assert!(finding.place.line.is_some() && finding.place.field.is_some(), "{finding}");
        assert!(!finding.hint.is_empty(), "{finding} has no hint");
    }
}

#[test]
fn lines_and_fields_point_at_the_mistake() {
    let wrong = |from: &str, to: &str| {
        let text = GOOD.replace(from, to);
        assert_ne!(text, GOOD);
        let findings = problems(&text);
        assert_eq!(findings.len(), 1, "{}", shown(&findings));
        let place = findings[0].place.clone();
        (place.line.unwrap(), place.field.unwrap_or_default())
    };
    assert_eq!(wrong("area_m2 = 450", "area_m2 = 0"), (15, "field.area_m2".to_owned()));
    assert_eq!(wrong("area_m2 = 450", "area_m2 = nan"), (15, "field.area_m2".to_owned()));
    assert_eq!(wrong("area_m2 = 450", "area_m2 = 450\ncolour = \"red\""), (16, "field.colour".to_owned()));
    assert_eq!(wrong("\"11-25\"", "2027-05-01"), (12, "season.rains_begin".to_owned()));
    assert_eq!(wrong("\"11-25\"", "\"2027-05-01\""), (12, "season.rains_begin".to_owned()));
    assert_eq!(wrong("\"11-25\"", "\"02-30\""), (12, "season.rains_begin".to_owned()));
    assert_eq!(
        wrong(
            "rains_begin = \"11-25\"",
            "rainfall_record = \"gone.csv\"\nwindow_from=\"10-01\"\nwindow_until=\"12-01\""
        ),
        (12, "season.rainfall_record".to_owned())
    );
    assert_eq!(
        wrong("[field]\narea_m2 = 450", "[climate]\ntmax_c = 30\ntmin_c = 20"),
        (1, "field".to_owned())
    );
    assert_eq!(wrong("name = \"A farm\"", "name = \"A \u{E000}farm\""), (2, "name".to_owned()));
}

#[test]
fn the_thirty_first_of_april_is_no_date() {
    for written in ["2027-04-31", "\"2027-04-31\"", "2027-02-29", "\"soon\"", "2027"] {
        let findings = problems(&GOOD.replace("2027-05-24", written));
        let at_harvest = findings.iter().any(|finding| finding.place.line == Some(3));
        assert!(at_harvest, "{written}: {}", shown(&findings));
    }
}

#[test]
fn checks_come_in_order_and_never_grow() {
    let kept = |checks: &str| format!("{GOOD}\n{checks}");
    let fine = kept(
        "[[kept]]\ndate = 2027-06-24\nhealthy = 38\nthrown_away = 2\n[[kept]]\ndate = 2027-07-24\nhealthy = 37\nsprouted = 30\n",
    );
    assert_eq!(good(&fine).kept.len(), 2);
    let wrong = kept(
        "[[kept]]\ndate = 2027-05-01\nhealthy = 38\n[[kept]]\ndate = 2027-07-24\nhealthy = 39\nsprouted = 41\nrotten = 3\n[[kept]]\nhealthy = -1\n",
    );
    let fields: Vec<_> = problems(&wrong).into_iter().map(|finding| finding.place.field.unwrap()).collect();
    assert_eq!(
        fields,
        [
            "kept[1].date",
            "kept[2].healthy",
            "kept[2].sprouted",
            "kept[2].rotten",
            "kept[3].date",
            "kept[3].healthy"
        ]
    );
}

#[test]
fn humidity_wind_and_sunshine_come_together() {
    let climate = |more: &str| format!("{GOOD}\n[climate]\ntmax_c = 30\ntmin_c = 20\n{more}");
    assert!(good(&climate("")).climate.unwrap().air.is_none());
    let all = climate("humidity_percent = 60\nwind_m_s = 2\nsunshine_h = [8,8,8,8,8,8,8,8,8,8,8,9]\n");
    assert_eq!(good(&all).climate.unwrap().air.unwrap().sunshine_hours[11], 9.0);
    let fields: Vec<_> = problems(&climate("wind_m_s = 2\n"))
        .into_iter()
        .map(|finding| finding.place.field.unwrap())
        .collect();
    assert_eq!(fields, ["climate.humidity_percent", "climate.sunshine_h"]);
}

#[test]
fn broken_syntax_is_reported_and_the_rest_still_read() {
    let text = GOOD.replace("latitude = -6.2", "latitude = = -6.2").replace("area_m2 = 450", "area_m2 = -1");
    let findings = problems(&text);
    let lines: Vec<_> = findings.iter().filter_map(|finding| finding.place.line).collect();
    assert!(lines.contains(&7) && lines.contains(&15), "{}", shown(&findings));
}

#[test]
fn kinds_and_units() {
    assert_eq!(good(GOOD).kind, Kind::Farm);
    let group = format!("{GOOD}\n[group]\nmembers = 12\n");
    assert_eq!(good(&group).kind, Kind::Group { members: 12 });
    let sides = good(&GOOD.replace("area_m2 = 450", "length_m = 30\nwidth_m = 15"));
    assert_eq!(sides.field.unwrap().area, good(GOOD).field.unwrap().area);
    assert!(matches!(good(GOOD).rains, Rains::Usual(_)));
    let findings = problems(&format!("kind = \"zone\"\n{GOOD}"));
    assert_eq!(findings[0].place.field.as_deref(), Some("field"));
}

#[test]
fn rain_records_report_every_bad_row() {
    let csv = "date,mm\n2019-01-01,3.2\n2019-01-01,4\n2019-02-30,1\n2019-01-03,-5\n2019-01-04,\n2019-01-05,wet\n2019-01-06\n1/7/2019,2\n";
    let (record, findings) = read_rain("rain.csv", csv.as_bytes(), None);
    let rows: Vec<_> = findings
        .iter()
        .filter(|finding| finding.is_error())
        .map(|finding| finding.place.line.unwrap())
        .collect();
    assert_eq!(rows, [3, 4, 5, 7, 8, 9], "{}", shown(&findings));
    assert!(findings.iter().filter(|finding| finding.is_error()).all(|finding| !finding.hint.is_empty()));
    assert_eq!(record.on("2019-01-04".parse().unwrap()), None, "an empty cell is not a dry day");
    for bad in [&b"\xff\xfe"[..], b"", b"date,mm\n", b"day;rain\n2019-01-01;3"] {
        assert!(read_rain("rain.csv", bad, None).1.iter().any(Finding::is_error));
    }
}

proptest::proptest! {
    #[test]
    fn no_text_makes_the_reader_panic(text in "(\\PC|\n){0,300}") {
        let _ = read("case.toml", &text, &nothing);
        let _ = read_rain("rain.csv", text.as_bytes(), None);
    }

    #[test]
    fn no_change_of_a_good_case_makes_it_panic(cut in 0usize..200, insert in "[\\[\\]=\"{}0-9a-z.\n-]{0,6}") {
        let at = GOOD.char_indices().map(|(at, _)| at).nth(cut).unwrap_or(0);
        let mut text = GOOD.to_owned();
        text.insert_str(at, &insert);
        if let Ok((case, _)) = read("case.toml", &text, &nothing) {
            let _ = kabla::plan::make(&case);
        }
    }
}
