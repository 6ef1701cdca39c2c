//! The season as one line of the terminal.

use chrono::{Datelike, Days, NaiveDate};

use crate::app::Band;

/// Letters to the line: two weeks or less to each over a season of a year.
const LETTERS: usize = 60;

/// The season from one harvest to the next: a line of months and a line of what lies where; and what its signs mean.
pub(super) fn season(of: &Band) -> (String, String) {
    let days = (of.to - of.from).num_days().max(1);
    let place = |day: NaiveDate| {
        let at = (day - of.from).num_days().clamp(0, days) * (LETTERS as i64 - 1) / days;
        usize::try_from(at).unwrap_or_default()
    };
    let mut line = vec![' '; LETTERS];
    for part in &of.parts {
        for slot in line.iter_mut().take(place(part.when.to) + 1).skip(place(part.when.from)) {
            *slot = part.sign;
        }
    }
    for (_, sign, day) in &of.days {
        if let Some(slot) = line.get_mut(place(*day)) {
            *slot = *sign;
        }
    }
    let mut months = vec![' '; LETTERS];
    let mut day = of.from;
    while day <= of.to {
        // A month's number, where there is room for it.
        if day.day() == 1 || day == of.from {
            let at = place(day);
            for (slot, letter) in months.iter_mut().skip(at).zip(day.month().to_string().chars()) {
                *slot = letter;
            }
        }
        let Some(next) = day.checked_add_days(Days::new(1)) else { break };
        day = next;
    }
    let mut signs: Vec<String> = of.parts.iter().map(|part| format!("{} {}", part.sign, part.name)).collect();
    let mut told: Vec<char> = Vec::new();
    for (name, sign, day) in &of.days {
        match of.days.iter().filter(|(_, other, _)| other == sign).count() {
            1 => signs.push(format!("{sign} {name} {day}")),
            _ if !told.contains(sign) => signs.push(format!("{sign} {name}")),
            _ => {}
        }
        told.push(*sign);
    }
    let text = |line: Vec<char>| line.into_iter().collect::<String>().trim_end().to_owned();
    (format!("{}\n{}\n", text(months), text(line)), signs.join("   "))
}

/// A wet season from its onset to its end, in dekads from a day on.
pub(super) fn rains(
    from: NaiveDate,
    onset: Option<NaiveDate>,
    end: Option<NaiveDate>,
    dekads: usize,
) -> String {
    let Some(onset) = onset else { return "·".repeat(dekads) };
    let dekad = |day: NaiveDate| usize::try_from((day - from).num_days() / 10).unwrap_or_default();
    let last = end.map_or(dekads, dekad);
    let sign = |at: usize| if (dekad(onset)..=last).contains(&at) { '█' } else { '·' };
    (0..dekads).map(sign).collect()
}
