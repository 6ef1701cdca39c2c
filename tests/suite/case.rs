//! Cases as people write them, wrong ones above all.

use std::io;

use kabla::case::{read, read_rain};
use kabla::finding::Finding;
use kabla::plan::after::Maturity;
use kabla::plan::field::Spacing;
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
    assert_eq!(good(&fine).store_checks.len(), 2);
    // Of 38 roots nobody finds 37 healthy ones and throws away 2.
    let grown = fine.replace("healthy = 37\n", "healthy = 37\nthrown_away = 2\n");
    let fields: Vec<_> = problems(&grown).into_iter().map(|finding| finding.place.field.unwrap()).collect();
    assert_eq!(fields, ["kept[2].healthy"]);
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
fn farms_of_a_group_are_read() {
    let farms = "\n[[farm]]\nname = \"one\"\narea_m2 = 100\n[[farm]]\nname = \"two\"\nlength_m = 20\nwidth_m = 10\nplant_spacing_m = 0.5\n";
    let without = GOOD.replace("area_m2 = 450", "ridge_spacing_m = 0.8");
    let group = good(&format!("{without}{farms}"));
    assert_eq!((group.kind, group.field, group.farms.len()), (Kind::Group { members: 2 }, None, 2));
    let along = |index: usize| match group.farms[index].field.spacing {
        Spacing::Ridges { between, along } => (between.0, along.0),
        Spacing::Mounds { .. } => unreachable!(),
    };
    assert_eq!((along(0), along(1)), ((0.8, 0.3), (1.0, 0.5)), "a farm has the common spacing, or its own");
    let both = problems(&format!("{GOOD}{farms}"));
    assert!(shown(&both).contains("a common field and farms"), "{}", shown(&both));
    let counted = problems(&format!("{without}{farms}[group]\nmembers = 5\n"));
    assert_eq!(counted[0].place.field.as_deref(), Some("group.members"));
    let twice = problems(&format!("{without}{}", farms.replace("two", "one")));
    assert_eq!(twice[0].place.field.as_deref(), Some("farm[2].name"));
}

#[test]
fn what_is_at_hand_stands_for_the_field() {
    let text = GOOD.replace("[field]\narea_m2 = 450", "[at_hand]\nroots = 60\nbed_area_m2 = 9");
    let case = good(&text);
    let at_hand = case.at_hand.unwrap();
    assert_eq!(
        (case.field, at_hand.roots, at_hand.plants, at_hand.bed.map(|bed| bed.0)),
        (None, Some(60), None, Some(9.0))
    );
    let empty = problems(&text.replace("roots = 60\nbed_area_m2 = 9", ""));
    assert_eq!(empty[0].place.field.as_deref(), Some("at_hand.roots"));
    let zone = problems(&format!("kind = \"zone\"\n{text}"));
    assert_eq!(zone[0].place.field.as_deref(), Some("at_hand"));
}

#[test]
fn containers_of_all_shapes() {
    let with = |container: &str| good(&format!("{GOOD}\n{container}")).containers.remove(0);
    let pot = with(
        "[[container]]\nshape = \"pot\"\n[[container.band]]\nheight_cm = 10\nwidth_cm = 30\n[[container.band]]\nheight_cm = 25\nwidth_cm = 50\n",
    );
    assert_eq!((pot.depth.0, pot.count), (35.0, None));
    let round = with("[[container]]\nshape = \"round\"\ntop_width_cm = 50\ndepth_cm = 30\ncount = 2\n");
    assert_eq!((round.depth.0, round.count), (30.0, Some(2)));
    for (wrong, field) in [
        ("[[container]]\nshape = \"pot\"\n", "container[1].band"),
        (
            "[[container]]\nshape = \"pot\"\n[[container.band]]\nheight_cm = 10\n",
            "container[1].band[1].width_cm",
        ),
        (
            "[[container]]\nshape = \"pot\"\ndepth_cm = 30\n[[container.band]]\nheight_cm = 10\nwidth_cm = 20\n",
            "container[1].depth_cm",
        ),
        ("[[container]]\nshape = \"box\"\nlength_cm = 50\ndepth_cm = 30\n", "container[1].width_cm"),
    ] {
        let findings = problems(&format!("{GOOD}\n{wrong}"));
        assert_eq!(findings.len(), 1, "{}", shown(&findings));
        assert_eq!(findings[0].place.field.as_deref(), Some(field));
    }
}

#[test]
fn local_days_are_read() {
    let case = good(&format!("{GOOD}\n[[event]]\nname = \"the maize feast\"\ndate = 2027-05-20\n"));
    assert_eq!(case.events[0].name, "the maize feast");
    let findings = problems(&format!("{GOOD}\n[[event]]\nname = \"the maize feast\"\n"));
    assert_eq!(findings[0].place.field.as_deref(), Some("event[1].date"));
}

#[test]
fn sources_varieties_and_outlooks() {
    let case = good(&format!(
        "{GOOD}\n[water]\nsource = \"the well\"\nlitres_per_day = 90\nstored_litres = 4000\n[variety]\nmaturity = \"late\"\ncarotene_ug_per_100g = 9180\n"
    ));
    let source = case.source.unwrap();
    assert_eq!(
        (source.name.as_str(), source.daily.unwrap()[6].0, source.stored.unwrap().0),
        ("the well", 90.0, 4000.0)
    );
    assert_eq!((case.variety.maturity, case.variety.carotene_ug), (Some(Maturity::Late), Some(9180.0)));
    for (wrong, field) in [
        ("[water]\nlitres_per_day = 90\n", "water.source"),
        ("[water]\nsource = \"the well\"\n", "water.litres_per_day"),
        ("[water]\nsource = \"the well\"\nlitres_per_day = [1, 2]\n", "water.litres_per_day"),
        ("[variety]\nmaturity = \"slow\"\n", "variety.maturity"),
        ("[climate]\ntmax_c = 30\n", "climate.tmin_c"),
        ("[zone]\nfield_sizes_m2 = [100]\n", "zone"),
    ] {
        let findings = problems(&format!("{GOOD}\n{wrong}"));
        assert_eq!(findings.len(), 1, "{}", shown(&findings));
        assert_eq!(findings[0].place.field.as_deref(), Some(field));
    }
    let needless = problems(&GOOD.replace("[field]", "outlook_rain = [30, 40, 30]\n[field]"));
    assert_eq!(needless[0].place.field.as_deref(), Some("season.outlook_rain"));
    let unsaid = problems(&format!("done = \"harvest\"\n{GOOD}"));
    assert_eq!(unsaid[0].place.field.as_deref(), Some("done"));
    let before = problems(
        &GOOD.replace("rains_begin = \"11-25\"", "rains_begin = \"11-25\"\nrains_began = 2027-05-01"),
    );
    assert_eq!(before[0].place.field.as_deref(), Some("season.rains_began"));
}

/// A case whose record has no window named: the seasons are found, the first one after the harvest is taken.
#[test]
fn seasons_are_found_from_a_record() {
    let record = |name: &str| {
        assert_eq!(name, "rain.csv");
        Ok(include_bytes!("../../examples/rain-eastern-lowlands.csv").to_vec())
    };
    let text = |harvest: &str, more: &str| {
        GOOD.replace("2027-05-24", harvest)
            .replace("rains_begin = \"11-25\"", &format!("rainfall_record = \"rain.csv\"\n{more}"))
    };
    let window = |harvest: &str, more: &str| {
        let (case, remarks) = read("case.toml", &text(harvest, more), &record).unwrap();
        let Rains::Observed(observed) = case.rains else { unreachable!() };
        (observed.rule.window.from.to_string(), remarks.len())
    };
    assert_eq!(window("2027-06-10", ""), ("09-16".to_owned(), 1));
    assert_eq!(
        window("2027-12-29", ""),
        ("02-13".to_owned(), 1),
        "the long rains come first after a December harvest"
    );
    assert_eq!(window("2027-06-10", "season = 1"), ("02-13".to_owned(), 1));
    assert_eq!(
        window("2027-06-10", "window_from = \"10-01\"\nwindow_until = \"12-01\""),
        ("10-01".to_owned(), 0)
    );
    let wrong = |more: &str| {
        let findings = read("case.toml", &text("2027-06-10", more), &record).unwrap_err();
        findings.iter().find(|finding| finding.is_error()).unwrap().place.field.clone().unwrap()
    };
    assert_eq!(wrong("window_from = \"10-01\""), "season.window_until");
    assert_eq!(wrong("season = 2\nwindow_from = \"10-01\"\nwindow_until = \"12-01\""), "season.season");
    assert_eq!(wrong("outlook_onset = [50, 50]"), "season.outlook_onset");
    assert_eq!(wrong("outlook_onset = [50, 40, 30]"), "season.outlook_onset");
}

#[test]
fn temperature_records_make_a_climate() {
    let first = chrono::NaiveDate::from_ymd_opt(2020, 1, 1).unwrap();
    let rows: String = (0..366u64)
        .map(|day| first + chrono::Days::new(day))
        .map(|day| format!("{};{},5;{}\n", day.format("%d/%m/%Y"), 30, 18))
        .collect();
    let with = |csv: String| {
        let open = move |_: &str| Ok(csv.clone().into_bytes());
        read("case.toml", &format!("{GOOD}\n[climate]\ntemperature_record = \"t.csv\"\n"), &open)
    };
    let climate = with(format!("date;tmax;tmin\n{rows}")).unwrap().0.climate.unwrap();
    assert!(climate.tmax.iter().all(|tmax| (tmax.0 - 30.5).abs() < 1e-9));
    let crossed = with(format!("date;tmin;tmax\n{rows}")).unwrap_err();
    assert!(shown(&crossed).contains("below the least"), "{}", shown(&crossed));
    let thin = with("date;tmax;tmin\n01/01/2020;30;18\n31/01/2020;30;18\n".to_owned()).unwrap_err();
    let error = thin.iter().find(|finding| finding.is_error()).unwrap();
    assert_eq!(error.place.field.as_deref(), Some("climate.temperature_record"), "{}", shown(&thin));
    let words = with("date;tmax;tmin\n01/01/2020;hot;18\n31/01/2020;30;-99\n".to_owned()).unwrap_err();
    assert!(shown(&words).contains("t.csv:2: tmax: hot is not a greatest temperature"), "{}", shown(&words));
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

/// The case that the documents show can be read and planned, comments and all.
#[test]
fn the_documented_case_is_right() {
    let document = include_str!("../../docs/case-file.md");
    let (_, rest) = document.split_once("## The case file").unwrap();
    let (text, _) = rest.split_once("```toml\n").unwrap().1.split_once("```").unwrap();
    let case = good(text);
    assert!(!kabla::plan::make(&case).unwrap().steps.is_empty());
    // What stands there as a comment is known as well: every field named in one line is a field of ours.
    let mut named = 0;
    for line in text.lines().filter_map(|line| line.strip_prefix("# ")) {
        let Some((key, _)) = line.split_once(" = ") else { continue };
        if key.chars().all(|c| c.is_ascii_lowercase() || c == '_' || c.is_ascii_digit()) {
            let source = [
                include_str!("../../src/case/season.rs"),
                include_str!("../../src/case/fields.rs"),
                include_str!("../../src/case/mod.rs"),
            ];
            assert!(source.iter().any(|source| source.contains(&format!("\"{key}\""))), "{key}");
            named += 1;
        }
    }
    assert!(named > 10, "{named} fields in comments");
}

/// What the fuzz targets in `fuzz/` have found, each mended since.
#[test]
fn slips_that_fuzzing_has_found() {
    let (_, findings) = read_rain("rain.csv", b"date,mm\n2019-01-01,1\n8010-01-02,2\n", None);
    assert!(
        findings.iter().any(|finding| finding.is_error() && finding.place.line == Some(3)),
        "{}",
        shown(&findings)
    );
    let (_, findings) = read_rain("rain.csv", b"date,mm\n2019-01-01,\n2019-01-02,-99\n", None);
    assert!(findings.iter().any(Finding::is_error), "a record without a single amount: {}", shown(&findings));
    let wide = problems(&GOOD.replace("area_m2 = 450", "length_m = 9000\nwidth_m = 9000"));
    assert_eq!(wide[0].place.field.as_deref(), Some("field.length_m"));
    let pot = |height: u32| {
        format!(
            "{GOOD}\n[[container]]\nshape = \"pot\"\nband = [{{ height_cm = {height}, width_cm = 30 }}, {{ height_cm = {height}, width_cm = 30 }}]\n"
        )
    };
    assert_eq!(good(&pot(20)).containers[0].depth.0, 40.0);
    assert_eq!(problems(&pot(300))[0].place.field.as_deref(), Some("container[1].band"));
    let many = problems(&format!("{GOOD}\n{}", "= \n".repeat(5000)));
    assert!(many.len() <= 110, "{} findings", many.len());
    let least = good(
        &format!("{GOOD}\n[assumptions]\ncuttings_per_root_season = 200\nzone_roots = 1\n")
            .replace("area_m2 = 450", "area_m2 = 0.01"),
    );
    for amount in kabla::plan::make(&least).unwrap().amounts.0 {
        assert!(amount.value.is_sign_positive(), "{amount:?}");
    }
}
