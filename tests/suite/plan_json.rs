//! The layout `kabla-plan/2`, as docs/json.md describes it.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use kabla::app::{Overrides, StepKind, plan_json};
use kabla::plan::Assumptions;
use serde_json::Value;

use crate::plan::date;
use crate::project::{Project, example, repository};

fn planned(name: &str, overrides: Overrides) -> Value {
    plan_json(Path::new(&example(name)), overrides, None).unwrap()
}

fn of_text(text: &str) -> Value {
    let project = Project::new();
    plan_json(Path::new(&project.write("case.toml", text)), Overrides::default(), None).unwrap()
}

/// Plans that have every part between them.
fn plans() -> Vec<Value> {
    let late = Overrides {
        today: Some(date("2027-11-08")),
        done: Some(StepKind::LastCheck),
        ..Overrides::default()
    };
    let farm = fs::read_to_string(example("farm.toml")).unwrap();
    let checked = "\n[[kept]]\ndate = 2027-06-24\nhealthy = 38\nthrown_away = 2\n[variety]\nmaturity = \"late\"\ncarotene_ug_per_100g = 9000\n[at_hand]\nbed_area_m2 = 9\n";
    let boxes = "[[container]]\nshape = \"box\"\nlength_cm = 90\nwidth_cm = 60\ndepth_cm = 40\n";
    let (before, _) = farm.split_once("[[container]]").unwrap();
    vec![
        planned("farm.toml", late),
        planned("group.toml", Overrides::default()),
        planned("zone.toml", Overrides::default()),
        planned("village.toml", Overrides::default()),
        of_text(&(farm.clone() + checked)),
        of_text(&format!("{before}{boxes}")),
    ]
}

/// The words in backticks of a part of the page.
fn documented(part: &str) -> BTreeSet<String> {
    part.split('`').skip(1).step_by(2).map(str::to_owned).collect()
}

/// All keys; of `values` and `amounts` only that they are there: a code says what is in them, and a label what
/// each amount is.
fn keys(value: &Value, found: &mut BTreeSet<String>) {
    match value {
        Value::Object(map) => {
            for (key, inside) in map {
                found.insert(key.clone());
                match (key.as_str(), inside) {
                    ("values", _) => {}
                    ("amounts", Value::Object(amounts)) => {
                        amounts.values().for_each(|amount| keys(amount, found));
                    }
                    _ => keys(inside, found),
                }
            }
        }
        Value::Array(all) => all.iter().for_each(|one| keys(one, found)),
        _ => {}
    }
}

#[test]
fn every_key_is_documented_and_every_documented_key_is_there() {
    let page = fs::read_to_string(repository().join("docs/json.md")).unwrap();
    let (_, rest) = page.split_once("## Reasons and findings").unwrap();
    let (part, _) = rest.split_once("## The rains").unwrap();
    let known = documented(part);
    let mut found = BTreeSet::new();
    plans().iter().for_each(|plan| keys(plan, &mut found));
    let unknown: Vec<_> = found.difference(&known).collect();
    assert!(unknown.is_empty(), "docs/json.md does not tell of {unknown:?}");
    // What the page names but keys: names of steps, shapes and the like.
    let (_, table) = part.split_once("| Key | What it is |\n|---|---|\n| `schema` |").unwrap();
    let (table, _) = table.split_once("\n\n").unwrap();
    let top = table
        .lines()
        .filter_map(|line| line.strip_prefix("| "))
        .flat_map(|line| documented(line.split('|').next().unwrap()));
    let missing: Vec<String> = top.filter(|key| !found.contains(key)).collect();
    assert!(missing.is_empty(), "no plan has {missing:?}, which docs/json.md promises");
}

#[test]
fn reasons_and_findings_have_code_values_and_text() {
    let (mut reasons, mut remarks) = (0, 0);
    for plan in plans() {
        assert_eq!(plan["schema"], "kabla-plan/2");
        let steps = plan["steps"].as_array().unwrap().iter().map(|step| &step["why"]);
        let amounts = plan["amounts"].as_object().unwrap().values().map(|amount| &amount["why"]);
        let others = [&plan["rains_why"], &plan["harvest"]["why"], &plan["harvest"]["yield_why"]];
        for why in steps.chain(amounts).chain(others).filter(|why| !why.is_null()) {
            assert!(why["code"].as_str().unwrap().starts_with("why-"), "{why}");
            assert!(why["values"].is_object() && !why["text"].as_str().unwrap().is_empty(), "{why}");
            reasons += 1;
        }
        for finding in plan["findings"].as_array().unwrap() {
            assert!(!finding["message"].as_str().unwrap().is_empty(), "{finding}");
            assert!(finding["severity"].is_string() && finding["place"].is_object(), "{finding}");
            if finding["values"].is_object() {
                assert!(finding["code"].as_str().unwrap().starts_with("remark-"), "{finding}");
                assert!(finding["amounts"].is_array(), "{finding}");
                remarks += 1;
            } else {
                assert!(finding["place"]["file"].is_string(), "a remark on the plan has values: {finding}");
            }
        }
    }
    assert!(reasons > 200 && remarks > 5, "only {reasons} reasons and {remarks} remarks seen");
}

/// By hand: "a_late_bed_costs_what_has_not_grown" in growth.rs tells why; 680 are told as they are.
#[test]
fn late_work_is_told_twice_as_words_and_as_data() {
    let late = &plans()[0]["overdue"][0];
    assert_eq!(late["topic"], "plant-bed");
    assert_eq!(late["code"], "late-plant-bed");
    assert!(late["still_possible"].as_str().unwrap().contains("today"), "{late}");
    assert_eq!(late["values"]["days_later"], 13);
    assert_eq!(late["values"]["fewer"], 680);
    assert_eq!(late["values"]["field_from"], "2027-12-08");
}

#[test]
fn the_json_has_its_promised_shape() {
    let plan = planned("farm.toml", Overrides::default());
    for (name, amount) in plan["amounts"].as_object().unwrap() {
        assert!(amount["label"].as_str().is_some_and(|label| !label.is_empty()), "{name} has no label");
    }
    for name in [
        "cuttings_needed",
        "roots_to_store",
        "plants_to_mark",
        "roots_per_layer",
        "layers",
        "containers",
        "sand_l",
        "sand_kg",
        "bed_area_m2",
        "bed_length_m",
        "bed_width_m",
        "water_l_per_day",
        "jerrycans_per_day",
        "water_trips_per_day",
        "water_total_l",
        "lining_m2",
        "bundles",
        "bed_rows",
    ] {
        let amount = &plan["amounts"][name];
        assert!(amount["value"].is_number() && amount["unit"].is_string(), "{name}: {amount}");
        assert!(!amount["why"]["text"].as_str().unwrap().is_empty(), "{name} has no reason");
    }
    for key in ["from", "to", "et0_mm_per_day", "kc", "rain_mm_per_day", "l_per_day"] {
        assert!(!plan["water"][0][key].is_null(), "water: {key}");
    }
    let places = plan["containers"][0]["layers"][0]["places"].as_array().unwrap();
    assert_eq!(places.len() as u64, plan["containers"][0]["layers"][0]["roots"].as_u64().unwrap());
    assert!(
        places.iter().all(|place| ["x_cm", "y_cm", "angle_deg"].iter().all(|key| place[key].is_number()))
    );
    for key in ["from", "to", "cuttings", "area_m2"] {
        assert!(!plan["cuts"][0][key].is_null(), "cuts: {key}");
    }
    for key in ["first", "last", "why", "yield_low_kg", "yield_high_kg", "yield_why"] {
        assert!(!plan["harvest"][key].is_null(), "harvest: {key}");
    }
    assert!(plan["vitamin_a"].is_null(), "nothing is said of vitamin A where the carotene is not known");
    let topics: Vec<_> =
        plan["steps"].as_array().unwrap().iter().map(|step| step["topic"].as_str().unwrap()).collect();
    for topic in StepKind::ALL {
        assert!(topics.contains(&topic.name()), "{} is missing", topic.name());
    }
    for step in plan["steps"].as_array().unwrap() {
        assert!(step["from"].as_str().unwrap() <= step["to"].as_str().unwrap());
        assert!(!step["why"]["text"].as_str().unwrap().is_empty());
    }
    let defaults = plan["defaults"].as_array().unwrap();
    assert_eq!(defaults.len(), Assumptions::TABLE.len());
    assert!(defaults.iter().all(|used| !used["source"].as_str().unwrap().is_empty()));
}

/// The amounts stand in the order in which they follow from each other.
#[test]
fn amounts_stand_in_order() {
    let plan = planned("farm.toml", Overrides::default());
    let names: Vec<_> = plan["amounts"].as_object().unwrap().keys().map(String::as_str).collect();
    let place = |name: &str| names.iter().position(|of| *of == name).unwrap();
    assert!(place("cuttings_needed") < place("roots_to_store") && place("roots_to_store") < place("sand_l"));
}

/// A case without a plan is refused in words, with the file, the line and the field.
#[test]
fn a_refusal_names_the_file_and_the_field() {
    let project = Project::new();
    let farm = fs::read_to_string(example("farm.toml")).unwrap();
    let (before, _) = farm.split_once("[[container]]").unwrap();
    let small = "[[container]]\nshape = \"box\"\nlength_cm = 10\nwidth_cm = 10\ndepth_cm = 12\n";
    let path = project.write("case.toml", format!("{before}{small}"));
    let said = plan_json(Path::new(&path), Overrides::default(), None).unwrap_err().to_string();
    let line = before.lines().count() + 1;
    assert!(said.contains(&format!("case.toml:{line}: container: No root fits.")), "{said}");
    assert!(said.contains("hint: Use a deeper or wider container."), "{said}");
}

/// Amounts and values that are not certain, as `growth.rs` has them by hand.
#[test]
fn ranges_stand_as_low_and_high() {
    let plan = planned("farm.toml", Overrides::default());
    let first = &plan["amounts"]["cuttings_at_first_cut"];
    assert_eq!((&first["low"], &first["high"]), (&Value::from(289), &Value::from(1819)));
    assert_eq!(plan["plan_by"], "print");
    let cut = &plan["cuts"][0];
    assert_eq!(
        (&cut["cuttings"], &cut["low"], &cut["high"]),
        (&first["value"], &first["low"], &first["high"])
    );
    let default = |name: &str| {
        let all = plan["defaults"].as_array().unwrap();
        all.iter().find(|used| used["name"] == name).unwrap().clone()
    };
    let survival = default("survival_share");
    assert_eq!((survival["low"].as_f64(), survival["high"].as_f64()), (Some(0.81), Some(0.95)));
    assert!(default("roots_per_plant")["low"].is_null());
}
