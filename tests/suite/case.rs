//! Cases as people write them, wrong ones above all.

use std::io;

use kabla::case::{read, read_rain};
use kabla::finding::{Code, Finding, Severity};
use kabla::plan::after::Maturity;
use kabla::plan::field::Spacing;
use kabla::plan::season::Rains;
use kabla::plan::seedbed::Soil;
use kabla::plan::{Case, Hands, Kind, Litres};

fn nothing(_: &str) -> io::Result<Vec<u8>> {
    Err(io::Error::from(io::ErrorKind::NotFound))
}

/// What is wrong. That most cases here leave the spacing to Kabla is no mistake.
fn problems(text: &str) -> Vec<Finding> {
    let mut findings = read("case.toml", text, &nothing).unwrap_err();
    findings.retain(|finding| finding.code != Code::SPACING_TAKEN);
    findings
}

/// The line, field, message and hint of the only thing that is wrong.
fn only_problem(text: &str) -> (u32, String, String, String) {
    let findings = problems(text);
    assert_eq!(findings.len(), 1, "{}", shown(&findings));
    let Finding { place, message, hint, .. } = findings[0].clone();
    (place.line.unwrap(), place.field.unwrap(), message, hint)
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

/// By hand: an acre is 4840 square yards of 0.9144 m × 0.9144 m, 4840 × 0.83612736 = 4046.8564224 m²; a hectare is
/// 100 m × 100 m.
#[test]
fn areas_in_hectares_and_acres() {
    let area = |written: &str| good(&GOOD.replace("area_m2 = 450", written)).field.unwrap().area.0;
    assert_eq!(area("area_m2 = 450"), 450.0);
    assert!((area("area_ha = 0.045") - 450.0).abs() < 1e-9);
    assert!((area("area_acres = 1") - 4046.8564224).abs() < 1e-9);
    assert!((area("area_acres = 0.5") - 2023.4282112).abs() < 1e-9);
    // A tenth of an acre and of a hectare: 404.69 and 1,000 m².
    let farms = "\n[[farm]]\nname = \"one\"\narea_acres = 0.1\n[[farm]]\nname = \"two\"\narea_ha = 0.1\n";
    let group = good(&format!("{}{farms}", GOOD.replace("area_m2 = 450", "")));
    let areas: Vec<f64> = group.farms.iter().map(|farm| farm.field.area.0).collect();
    assert!((areas[0] - 404.68564224).abs() < 1e-9 && areas[1] == 1000.0, "{areas:?}");
    let zone = |sizes: &str| {
        let text = GOOD.replace("[field]\narea_m2 = 450", &format!("[zone]\n{sizes}"));
        format!("kind = \"zone\"\n{text}")
    };
    let sizes =
        |written: &str| good(&zone(written)).field_sizes.iter().map(|size| size.0).collect::<Vec<_>>();
    assert_eq!(sizes("field_sizes_ha = [0.05, 0.1]"), [500.0, 1000.0]);
    assert_eq!(sizes("field_sizes_acres = [1]"), [4046.8564224]);
    assert_eq!(sizes(""), [100.0, 250.0, 500.0, 1000.0, 2500.0]);
    let twice = only_problem(&zone("field_sizes_m2 = [100]\nfield_sizes_ha = [0.1]"));
    assert_eq!((twice.0, twice.1.as_str()), (17, "zone.field_sizes_ha"));
}

/// What is told of a field's size, or none: a smallholder plants neither 0.5 m² nor 300 ha.
#[test]
fn a_size_that_nobody_has_is_asked_about() {
    let wrong = |written: &str| only_problem(&GOOD.replace("area_m2 = 450", written));
    let (line, field, message, hint) = wrong("area_m2 = 0.5");
    assert_eq!((line, field.as_str()), (15, "field.area_m2"));
    assert_eq!(message, "0.5 m² is less than a field of sweet potato");
    assert_eq!(
        hint,
        "was another unit meant? write area_acres = 0.5 or area_ha = 0.5; for so small a plot, write its sides: length_m, width_m"
    );
    let (_, field, message, hint) = wrong("area_ha = 300");
    assert_eq!(
        (field.as_str(), message.as_str()),
        ("field.area_ha", "300 ha is more than a smallholder's field")
    );
    // 300 acres are 121 ha: no more likely.
    assert_eq!(hint, "was another unit meant? write area_m2 = 300");
    // 3,000,000 of any unit are too many.
    assert_eq!(wrong("area_m2 = 3000000").3, "write a number from 10 to 1000000");
    for nonsense in ["0", "-3", "nan", "inf"] {
        let (_, _, message, hint) = wrong(&format!("area_acres = {nonsense}"));
        assert!(message.ends_with("is not possible"), "{message}");
        // 10 and 1,000,000 m² by 4,046.86.
        assert_eq!(hint, "write a number from 0.0025 to 247.1054");
    }
    let (_, field, _, _) = wrong("area_m2 = 450\narea_ha = 0.045");
    assert_eq!(field, "field.area_ha");
    let (_, field, message, _) = wrong("area_acres = 1\nlength_m = 3");
    assert_eq!(field, "field.area_acres");
    assert_eq!(message, "area_acres and length_m or width_m both stand here");
    // A small plot that is measured is a plot, and 10 m² are a field.
    assert_eq!(
        good(&GOOD.replace("area_m2 = 450", "length_m = 2\nwidth_m = 0.25")).field.unwrap().area.0,
        0.5
    );
    assert_eq!(good(&GOOD.replace("area_m2 = 450", "area_m2 = 10")).field.unwrap().area.0, 10.0);
    // Large but possible: a question that hinders nobody. For twelve farms it is none.
    let warned = |text: &str| {
        let (_, findings) = read("case.toml", text, &nothing).unwrap();
        findings.into_iter().find(|finding| finding.severity == Severity::Warning)
    };
    let large = GOOD.replace("area_m2 = 450", "area_ha = 20");
    let asked = warned(&large).unwrap();
    assert_eq!((asked.code, asked.place.field.as_deref()), (Code::UNUSUAL, Some("field.area_ha")));
    assert!(asked.hint.contains("area_m2 = 20"), "{asked}");
    assert_eq!(warned(&format!("{large}\n[group]\nmembers = 12\n")), None);
    assert_eq!(warned(GOOD), None);
}

/// Centimetres where metres are wanted, and metres where centimetres are.
#[test]
fn lengths_in_another_unit_are_asked_about() {
    for (more, field, asked) in [
        (
            "ridge_spacing_m = 100",
            "field.ridge_spacing_m",
            "measured in centimetres? then write ridge_spacing_m = 1",
        ),
        (
            "plant_spacing_m = 30",
            "field.plant_spacing_m",
            "measured in centimetres? then write plant_spacing_m = 0.3",
        ),
        (
            "mound_spacing_m = 90",
            "field.mound_spacing_m",
            "measured in centimetres? then write mound_spacing_m = 0.9",
        ),
    ] {
        let (_, found, _, hint) =
            only_problem(&GOOD.replace("area_m2 = 450", &format!("area_m2 = 450\n{more}")));
        assert_eq!(found, field);
        assert!(hint.starts_with("write a number from ") && hint.ends_with(asked), "{hint}");
    }
    let round = "[[container]]\nshape = \"round\"\ntop_width_cm = 0.5\ndepth_cm = 300\n";
    let (_, field, _, hint) = only_problem(&format!("{GOOD}\n{round}"));
    assert_eq!(field, "container[1].top_width_cm");
    assert!(hint.ends_with("was it measured in metres? then write top_width_cm = 50"), "{hint}");
    let (_, _, _, hint) =
        only_problem(&format!("{GOOD}\n{}", round.replace("300", "9000").replace("0.5", "50")));
    assert_eq!(hint, "write a number from 5 to 500", "90 m and 9 m are no depth either: 9,000 mm are 900 cm");
}

#[test]
fn a_decimal_comma_is_named_with_its_line_and_field() {
    let with = |more: &str| format!("{GOOD}\n{more}\n");
    for (text, line, field, message, hint) in [
        (
            GOOD.replace("-6.2", "-6,2"),
            7,
            "place.latitude",
            "-6,2 is written with a comma",
            "write the decimal with a point: -6.2",
        ),
        (
            with("[climate]\ntmax_c = 31,5 # hot\ntmin_c = 16"),
            18,
            "climate.tmax_c",
            "31,5 is written with a comma",
            "write the decimal with a point: 31.5",
        ),
        (
            with(
                "[[container]]\nshape = \"pot\"\n[[container.band]]\nheight_cm = 10\nwidth_cm = 30\n[[container.band]]\nheight_cm = 12,25\nwidth_cm = 30",
            ),
            23,
            "container[1].band[2].height_cm",
            "12,25 is written with a comma",
            "write the decimal with a point: 12.25",
        ),
        (
            GOOD.replace("area_m2 = 450", "area_m2 = 1,200"),
            15,
            "field.area_m2",
            "1,200 is written with a comma",
            "write the decimal with a point: 1.200; or thousands without a mark: 1200",
        ),
        (
            GOOD.replace("area_m2 = 450", "area_m2 = \"450,5\""),
            15,
            "field.area_m2",
            "450,5 is written with a comma",
            "write the decimal with a point: 450.5, and take the quotes away",
        ),
    ] {
        let found = problems(&text);
        let found: Vec<_> = found
            .iter()
            .filter(|of| of.place.line == Some(line))
            .map(|of| (of.place.field.as_deref().unwrap(), of.message.as_str(), of.hint.as_str()))
            .collect();
        assert_eq!(found, [(field, message, hint)], "{}", shown(&problems(&text)));
    }
    // Twelve months with commas are twenty-four numbers.
    let months = ["29,5"; 12].join(", ");
    let (_, field, message, hint) =
        only_problem(&with(&format!("[climate]\ntmax_c = [{months}]\ntmin_c = 16")));
    assert_eq!((field.as_str(), message.as_str()), ("climate.tmax_c", "has 24 values"));
    assert!(hint.ends_with("if commas stand for decimal points, write points"), "{hint}");
}

/// A number in quotes, and one that its comma has parted into two cells. In a table parted by semicolons it is a number.
#[test]
fn decimal_commas_of_records_are_named() {
    let errors = |csv: &str| {
        let (_, findings) = read_rain("rain.csv", csv.as_bytes(), None);
        let errors = findings.into_iter().filter(Finding::is_error);
        errors.map(|of| (of.place.line.unwrap(), of.place.field.unwrap(), of.hint)).collect::<Vec<_>>()
    };
    let at = |line, hint: &str| (line, "mm".to_owned(), hint.to_owned());
    assert_eq!(
        errors("date,mm\n2019-01-01,\"31,5\"\n2019-01-02,0\n"),
        [at(2, "write the decimal with a point: 31.5")]
    );
    assert_eq!(
        errors("date,mm\n2019-01-01,4\n2019-01-02,31,5\n2019-01-03,0,\n"),
        [at(3, "write the decimal with a point: 31.5")]
    );
    assert_eq!(errors("date,mm\n2019-01-01,4,by the school\n"), [], "a remark is no number");
    let (record, findings) = read_rain("rain.csv", b"date;mm\n2019-01-01;31,5\n", None);
    assert!(!findings.iter().any(Finding::is_error), "{}", shown(&findings));
    assert_eq!(record.on("2019-01-01".parse().unwrap()), Some(31.5));
    let open = |_: &str| Ok(b"date,tmax,tmin\n2020-01-01,31,5,18,5\n".to_vec());
    let text = format!("{GOOD}\n[climate]\ntemperature_record = \"t.csv\"\n");
    let findings = read("case.toml", &text, &open).unwrap_err();
    let parted = findings.iter().find(|finding| finding.place.line == Some(2)).unwrap();
    assert_eq!(parted.place.file.as_deref(), Some("t.csv"));
    assert_eq!(parted.hint, "write decimals with a point, such as 31.5");
}

/// What is taken as usual is said; what is written is not.
#[test]
fn a_spacing_that_was_taken_is_told() {
    let notes = |text: &str| {
        let (_, findings) = read("case.toml", text, &nothing).unwrap();
        let taken = findings.into_iter().filter(|finding| finding.code == Code::SPACING_TAKEN);
        taken.map(|of| (of.severity, of.place.field.unwrap(), of.message)).collect::<Vec<_>>()
    };
    let note = |field: &str, message: &str| (Severity::Note, field.to_owned(), message.to_owned());
    let with = |more: &str| GOOD.replace("area_m2 = 450", &format!("area_m2 = 450\n{more}"));
    let unsaid = "the spacing is not given in full: ";
    assert_eq!(
        notes(GOOD),
        [note("field", &format!("{unsaid}ridges 1 m apart with a cutting every 0.3 m are taken"))]
    );
    assert_eq!(
        notes(&with("ridge_spacing_m = 0.8")),
        [note("field", &format!("{unsaid}a cutting every 0.3 m along the ridge is taken"))]
    );
    assert_eq!(
        notes(&with("plant_spacing_m = 0.4")),
        [note("field", &format!("{unsaid}ridges 1 m apart are taken"))]
    );
    assert_eq!(
        notes(&with("mound_spacing_m = 0.9")),
        [note("field", &format!("{unsaid}3 cuttings on each mound are taken"))]
    );
    assert_eq!(notes(&with("ridge_spacing_m = 0.8\nplant_spacing_m = 0.4")), []);
    assert_eq!(notes(&with("mound_spacing_m = 0.9\ncuttings_per_mound = 3")), []);
    let at_hand = GOOD.replace("[field]\narea_m2 = 450", "[at_hand]\nroots = 60");
    assert_eq!(notes(&at_hand)[0].1, "at_hand");
    let zone = format!("kind = \"zone\"\n{}", GOOD.replace("[field]\narea_m2 = 450", ""));
    assert_eq!(notes(&zone), [], "a zone has no field");
    let farms = |field: &str| {
        let own = ["", "mound_spacing_m = 1", "", "ridge_spacing_m = 0.8\nplant_spacing_m = 0.4"];
        let farms = own
            .iter()
            .zip(1..)
            .map(|(own, number)| format!("[[farm]]\nname = \"{number}\"\narea_m2 = 90\n{own}\n"));
        notes(&format!("{}{}", GOOD.replace("[field]\narea_m2 = 450", field), farms.collect::<String>()))
    };
    let of = |farms: u32, taken: &str| {
        note("farm", &format!("the spacing is not given in full for {farms} of 4 farms: {taken}"))
    };
    let mounds = of(1, "3 cuttings on each mound are taken");
    assert_eq!(farms(""), [of(2, "ridges 1 m apart with a cutting every 0.3 m are taken"), mounds.clone()]);
    assert_eq!(farms("[field]\nridge_spacing_m = 0.9\nplant_spacing_m = 0.3"), [mounds]);
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
fn soil_sand_and_hands_are_read() {
    let text = format!(
        "{GOOD}\n[at_hand]\nsand_litres = 80.5\n\n[bed]\nsoil = \"clay\"\n\n[hands]\npeople = 3\nhours_per_day = 1.5\n"
    );
    let case = good(&text);
    assert_eq!(case.at_hand.unwrap().sand, Some(Litres(80.5)));
    assert_eq!(case.soil, Some(Soil::Clay));
    assert_eq!(case.hands, Some(Hands { people: 3, hours_per_day: 1.5 }));
    // What is not said is as usual: two people, two hours each.
    let people = good(&format!("{GOOD}\n[hands]\npeople = 3\n"));
    assert_eq!(people.hands, Some(Hands { people: 3, hours_per_day: 2.0 }));
    let hours = good(&format!("{GOOD}\n[hands]\nhours_per_day = 1\n"));
    assert_eq!(hours.hands, Some(Hands { people: 2, hours_per_day: 1.0 }));
    assert_eq!((good(GOOD).soil, good(GOOD).hands), (None, None));
    for (table, field) in [
        ("[bed]\nsoil = \"silt\"", "bed.soil"),
        ("[bed]", "bed.soil"),
        ("[hands]", "hands.people"),
        ("[hands]\npeople = 0", "hands.people"),
        ("[hands]\nhours_per_day = 25", "hands.hours_per_day"),
    ] {
        let found = problems(&format!("{GOOD}\n{table}\n"));
        assert_eq!(found[0].place.field.as_deref(), Some(field), "{table}: {found:?}");
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

/// The rains end after they begin, and within a year; a record tells it itself.
#[test]
fn the_end_of_the_rains_is_checked() {
    let with_end = |begin: &str, end: &str| {
        let lines = format!("rains_begin = {begin}\nrains_end = {end}");
        GOOD.replace("rains_begin = \"11-25\"", &lines)
    };
    for (begin, end, wanted) in [
        ("\"11-25\"", "\"04-20\"", "2028-04-20"),
        ("2027-11-25", "\"04-20\"", "2028-04-20"),
        ("\"11-25\"", "2028-04-20", "2028-04-20"),
        // Rains that are over within the year.
        ("\"09-25\"", "\"12-20\"", "2027-12-20"),
    ] {
        let case = good(&with_end(begin, end));
        let onset = begin.trim_matches('"');
        let onset = if onset.len() == 5 { format!("2027-{onset}") } else { onset.to_owned() };
        let found = case.rains_end.unwrap().after(onset.parse().unwrap()).unwrap();
        assert_eq!(found.to_string(), wanted);
    }
    for (text, code) in [
        (with_end("\"11-25\"", "2027-11-25"), "wrong-order"),
        (with_end("\"11-25\"", "2027-06-01"), "wrong-order"),
        (with_end("\"11-25\"", "2028-12-01"), "out-of-range"),
        (with_end("\"11-25\"", "\"11-25\""), "out-of-range"),
        (with_end("\"11-25\"", "\"02-31\""), "not-a-date"),
        (
            GOOD.replace("rains_begin = \"11-25\"", "rainfall_record = \"r.csv\"\nrains_end = \"04-20\""),
            "conflict",
        ),
    ] {
        let findings = problems(&text);
        let of_end: Vec<_> =
            findings.iter().filter(|of| of.place.field.as_deref() == Some("season.rains_end")).collect();
        assert_eq!(of_end.len(), 1, "{text}\n{}", shown(&findings));
        assert_eq!(of_end[0].code.name(), code, "{text}");
        assert!(of_end[0].place.line.is_some());
    }
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
        let seasons = remarks.iter().filter(|remark| remark.code == Code::SEASON_TAKEN).count();
        (observed.rule.window.from.to_string(), seasons)
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
    assert!(!kabla::plan::make(&case).unwrap().now.steps.is_empty());
    // What stands there as a comment is known as well: every field named in one line is a field of ours.
    let mut named = 0;
    for line in text.lines().filter_map(|line| line.strip_prefix("# ")) {
        let Some((key, _)) = line.split_once(" = ") else { continue };
        if key.chars().all(|c| c.is_ascii_lowercase() || c == '_' || c.is_ascii_digit()) {
            let source = [
                include_str!("../../src/case/season.rs"),
                include_str!("../../src/case/fields.rs"),
                include_str!("../../src/case/area.rs"),
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
            .replace("area_m2 = 450", "length_m = 0.1\nwidth_m = 0.1"),
    );
    for amount in kabla::plan::make(&least).unwrap().now.amounts.0 {
        assert!(amount.value.is_sign_positive(), "{amount:?}");
    }
}
