//! Advice beside the steps, and what calls for it.

use kabla::plan::after::Variety;
use kabla::plan::season::{MonthDay, ObservedRains, OnsetRule, RainRecord, Rains, SeasonRule, Window};
use kabla::plan::{Advice, Case, StepKind, make};

use crate::plan::{date, farm};

fn given(case: &Case, code: fn(&Advice) -> bool) -> bool {
    make(case).unwrap().advice.iter().any(code)
}

/// Advice is there until its step is done.
#[test]
fn advice_goes_with_its_step() {
    let chosen = |advice: &Advice| matches!(advice, Advice::RootsNotChosen);
    let field = |advice: &Advice| matches!(advice, Advice::CleanField { .. });
    let before = farm(450.0);
    assert!(given(&before, chosen) && given(&before, field));
    let dug = Case { today: Some(date("2027-06-01")), done: Some(StepKind::FillContainer), ..before };
    assert!(!given(&dug, chosen) && given(&dug, field));
}

/// Nobody is told of orange roots whose colour is not known.
#[test]
fn children_are_spoken_of_where_the_carotene_is_known() {
    let children = |advice: &Advice| matches!(advice, Advice::Children { .. });
    assert!(!given(&farm(450.0), children));
    let variety = Variety { carotene_ug: Some(5000.0), ..Variety::default() };
    assert!(given(&Case { variety, ..farm(450.0) }, children));
}

/// A record of rain on every day of its wet months knows no dry spell; without a record one may come.
#[test]
fn a_dry_spell_after_planting_is_spoken_of_unless_a_record_knows_none() {
    let dry = |advice: &Advice| matches!(advice, Advice::DryAfterPlanting { .. });
    assert!(given(&farm(450.0), dry));
    let window = Window { from: MonthDay::new(10, 1).unwrap(), until: MonthDay::new(12, 31).unwrap() };
    let rule = SeasonRule {
        onset: OnsetRule::THREE_DAY,
        window,
        end: kabla::plan::season::EndRule::RAINLESS,
        end_from: MonthDay::new(3, 1).unwrap(),
    };
    let observed = |gap: bool| {
        let days = date("2000-01-01").iter_days().take_while(|day| *day < date("2012-01-01"));
        let record = RainRecord::from_days(days.map(|day| {
            use chrono::Datelike;
            let wet = day.month() >= 10 || day.month() <= 2;
            // In some years the rains stop for two weeks after the first ones.
            let stopped = gap && day.month() == 10 && day.year() % 3 == 0 && (8..25).contains(&day.day());
            (day, if wet && !stopped { 10.0 } else { 0.0 })
        }));
        Rains::Observed(ObservedRains::find(&record, rule, None))
    };
    let case = |gap| Case { rains: observed(gap), ..farm(450.0) };
    assert!(given(&case(true), dry));
    assert!(!given(&case(false), dry));
}
