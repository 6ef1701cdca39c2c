//! Which cuts of the bed are counted on: those whose crop is ripe before the rains end, in most years.

use chrono::{Days, NaiveDate};

use super::case::Case;
use super::defaults::Assumptions;
use super::multiply::{Sizing, cut_days};
use super::remarks::Remark;
use super::season::{End, Planting, RainsLength, Ripening};
use super::span::DateSpan;
use super::timeline::SeasonInputs;
use super::units::whole_down;

/// A cut of the bed that is not counted on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LateCut {
    /// When it would be.
    pub when: DateSpan,
    /// How often what it plants is ripe before the rains end.
    pub ripening: Ripening,
}

/// The cuts of a bed beside the end of the rains.
pub(super) struct InTime<'a> {
    end: Option<End<'a>>,
    /// All cuts: the days of each, and how often what it plants ripens in time, where that is known.
    cuts: Vec<(DateSpan, Option<Ripening>)>,
    /// How many of them ripen in time in most years, or are not known not to. The first one is always counted:
    /// without it there is no plan.
    in_time: usize,
    /// How many are counted on.
    counted: usize,
}

impl<'a> InTime<'a> {
    /// Of a bed whose first cut is in the days of `first`.
    pub(super) fn of(case: &'a Case, inputs: &SeasonInputs<'_>, first: DateSpan) -> InTime<'a> {
        let a = &case.assumptions;
        let end = End::known(&case.rains, case.rains_end, inputs.rains, inputs.began.is_some());
        let ripening = |days: DateSpan| {
            let later_days = (days.from - first.from).num_days() as f64;
            let growing_days = growing(inputs.maturity.1, a);
            end.as_ref()?.ripening(Planting { first: first.from, later_days, growing_days })
        };
        let cuts: Vec<_> = cut_days(first, a).map(|days| (days, ripening(days))).collect();
        let in_most_years = |(_, ripening): &&(DateSpan, Option<Ripening>)| {
            ripening.is_none_or(|ripening| ripening.share >= a.ripe_share_least)
        };
        let in_time = cuts.iter().take_while(in_most_years).count().max(1);
        let counted = match case.sizing {
            Sizing::BedSeason => cuts.len(),
            Sizing::InTime | Sizing::FirstPlanting => in_time,
        };
        InTime { end, cuts, in_time, counted }
    }

    /// The cuts that are counted on.
    pub(super) fn counted(&self) -> &[(DateSpan, Option<Ripening>)] {
        self.cuts.get(..self.counted).unwrap_or(&self.cuts)
    }

    /// Whether what the first of them plants ripens in most years, as far as is known.
    pub(super) fn first_ripens(&self, assumptions: &Assumptions) -> bool {
        let first = self.cuts.first().and_then(|(_, ripening)| *ripening);
        first.is_none_or(|ripening| ripening.share >= assumptions.ripe_share_least)
    }

    /// How many these are.
    pub(super) fn count(&self) -> u32 {
        u32::try_from(self.counted).unwrap_or(u32::MAX)
    }

    /// The others.
    pub(super) fn late(&self) -> Vec<LateCut> {
        let late = self.cuts.iter().skip(self.counted);
        late.filter_map(|(when, ripening)| Some(LateCut { when: *when, ripening: (*ripening)? })).collect()
    }

    /// How long the rains last, where that is known.
    pub(super) fn length(&self) -> Option<RainsLength> {
        self.end.as_ref()?.length()
    }

    /// What must be noticed: rains that are too short for the crop, cuts that come too late, and an end that is
    /// not known although the field waits for later cuts.
    pub(super) fn remarks(&self, case: &Case, inputs: &SeasonInputs<'_>, waits: bool) -> Vec<Remark> {
        let a = &case.assumptions;
        let mut remarks = Vec::new();
        let Some((first, ripening)) = self.cuts.first() else { return remarks };
        let growing_days = growing(inputs.maturity.1, a);
        if let (Some(end), Some(ripening)) = (&self.end, ripening)
            && ripening.share < a.ripe_share_least
        {
            let often = |first, growing_days| {
                let planting = Planting { first, later_days: 0.0, growing_days };
                end.ripening(planting).map_or(0.0, |ripening| ripening.share)
            };
            let on_time = often(inputs.rains.onset, growing_days);
            let early_days = a.early_maturity_days_last;
            let early = often(first.from, growing(early_days, a));
            let helps = match inputs.began {
                None if on_time >= a.ripe_share_least => "on-time",
                _ if early > ripening.share => "quicker",
                _ => "neither",
            };
            let told = Told::of(end, first.from);
            remarks.push(Remark::RainsTooShort {
                planted: first.from,
                most_days: inputs.maturity.1,
                of_100: of_100(ripening.share),
                known: told.known,
                usual_days: told.usual_days,
                end: told.end,
                helps,
                early_days,
                early_of_100: of_100(early),
            });
        }
        if let (Some(end), Some((when, Some(ripening)))) = (&self.end, self.cuts.get(self.in_time)) {
            let told = Told::of(end, first.from);
            let counted = if self.counted > self.in_time { "yes" } else { "no" };
            remarks.push(Remark::CutsTooLate {
                cut: number(self.in_time + 1),
                more: number(self.cuts.len() - self.in_time - 1),
                from: when.from,
                to: when.to,
                ripe: after(when.from, inputs.maturity.1),
                of_100: of_100(ripening.share),
                known: told.known,
                end: told.end,
                counted,
            });
        }
        if let (true, Some((last, None))) = (waits && self.counted > 1, self.counted().last()) {
            remarks.push(Remark::EndUnknown {
                planted: last.from,
                ripe: after(last.from, inputs.maturity.1),
                known: if self.end.is_some() { "open" } else { "nothing" },
            });
        }
        remarks
    }
}

/// What remarks tell of the end of the rains.
struct Told {
    known: &'static str,
    usual_days: f64,
    end: NaiveDate,
}

impl Told {
    /// Where no year tells the end, `planted` stands for it, and words do not name it.
    fn of(end: &End<'_>, planted: NaiveDate) -> Told {
        match end.length() {
            Some(length) => Told {
                known: if length.years.is_some() { "record" } else { "case" },
                usual_days: length.usual_days.floor(),
                end: length.usual_end,
            },
            None => Told { known: "open", usual_days: 0.0, end: planted },
        }
    }
}

/// Days for which a crop needs the rains.
fn growing(ripe_days: f64, assumptions: &Assumptions) -> f64 {
    (ripe_days - assumptions.dry_ripening_days).max(0.0)
}

fn after(day: NaiveDate, days: f64) -> NaiveDate {
    day.checked_add_days(Days::new(days.max(0.0).round() as u64)).unwrap_or(day)
}

/// A share as so many of 100, never more than it is.
fn of_100(share: f64) -> f64 {
    f64::from(whole_down(share * 100.0))
}

fn number(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}
