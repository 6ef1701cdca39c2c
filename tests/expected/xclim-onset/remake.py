"""Remakes cases.csv: when the rains begin and end, by xclim, on two daily records.

    pip install xclim==0.62.0
    python remake.py

Reads ../seattle-onset/seattle-weather.csv and the invented record
../../../examples/rain-eastern-lowlands.csv. Both are in whole tenths of a
millimetre, so that limits halfway between two tenths (0.95 and 19.95 mm) leave
nothing to rounding and make xclim's "at most the limit" the same as "under 1 mm".

How the first day is found from xclim's date:

- xclim.indices.rain_season gives the LAST day L of the three wet days. The rule
  here wants the FIRST, itself a rain day: the first of L-2, L-1 and L that has
  1 mm or more and, with the two days after it, 20 mm or more.
- The window of the search is moved by two days with it: xclim's first total is
  two days after its date_min_start, and its date_max_start is 2 January.
- A dry spell of w days within the N days after the first day must begin on one of
  the days L-1 to L+N-w-1. xclim asks that none begins on one of the days L to
  L+2+window_not_dry_start. So window_not_dry_start = N-w-3, not N: the rules
  named "-literal" leave it at N.
- In the rules named "-runs" there is no date of rain_season: the wet days are taken
  in turn, and xclim's run_length.longest_run is asked for the longest dry run of
  the N days after each. Its date is the first day already.
- The end by run_length.first_run_after_date is the first day of the 20 already;
  rain_season's own end is the first day of a whole dry run, and only if that day
  is in its window.

Each date of rain_season that does not lead to the day of the "-runs" row has the
reason beside it and no expected day.
"""

import csv
import pathlib
import warnings

import numpy as np
import pandas as pd
import xarray as xr

warnings.simplefilter("ignore")
from xclim.indices import rain_season
from xclim.indices import run_length as rl

here = pathlib.Path(__file__).parent


def load(path, column):
    rows = list(csv.DictReader((here / path).open()))
    days = pd.DatetimeIndex([row["date"].replace("/", "-") for row in rows])
    assert (days[1:] - days[:-1] == pd.Timedelta(days=1)).all(), "a day is missing"
    mm = np.array([float(row[column]) for row in rows])
    assert np.allclose(10 * mm, np.rint(10 * mm), atol=1e-9), "not whole tenths"
    return xr.DataArray(mm, coords={"time": days}, dims="time", attrs={"units": "mm/day"})


# record: rain, years, first day of the search for the onset, first day of the search for the end
RECORDS = {
    "seattle": (load("../seattle-onset/seattle-weather.csv", "precipitation"), range(2012, 2016), "08-01", "05-01"),
    "eastern-lowlands": (load("../../../examples/rain-eastern-lowlands.csv", "mm"), range(2007, 2026), "09-20", "12-01"),
}
RULES = {"onset-8-dry-in-30": (30, 8), "onset-10-dry-in-21": (21, 10)}
DAY = pd.Timedelta(days=1)


def text(date):
    return "none" if date is None else f"{date:%Y-%m-%d}"


def dates(of_year, years):
    """xclim's days of the year as dates: a period runs from July to June and is named by its first day."""
    found = {}
    for start, number in zip(of_year.time.values, of_year.values, strict=True):
        year = pd.Timestamp(start).year
        if year in years and not np.isnan(number):
            date = pd.Timestamp(f"{year}-01-01") + (int(number) - 1) * DAY
            if date < pd.Timestamp(f"{year}-07-01"):
                date = pd.Timestamp(f"{year + 1}-01-01") + (int(number) - 1) * DAY
            found[year] = date
    return {year: found.get(year) for year in years}


def season(rain, first, not_dry, spell, years, method="per_day"):
    """Start and end by xclim's rain_season."""
    start, end, _ = rain_season(
        rain, thresh_wet_start="19.95 mm", window_wet_start=3, window_not_dry_start=not_dry,
        thresh_dry_start="0.95 mm", window_dry_start=spell, method_dry_start=method,
        date_min_start=first, date_max_start="01-02",
        thresh_dry_end="0.95 mm", window_dry_end=20, method_dry_end="per_day",
        date_min_end="12-01", date_max_end="06-30", freq="YS-JUL")
    return dates(start, years), dates(end, years)


lines = []
for record, (rain, years, first, ending) in RECORDS.items():
    tenths = pd.Series(np.rint(10 * rain.values).astype(int), rain.indexes["time"])
    dry = rain <= 0.95

    def wet_start(day):
        return tenths[day] >= 10 and tenths[day : day + 2 * DAY].sum() >= 200

    def first_of(last):
        """The first rain day of xclim's three that begins 20 mm in three days."""
        return next((day for day in (last - 2 * DAY, last - DAY, last) if wet_start(day)), None)

    def dry_runs(day, ahead):
        """xclim's run lengths of the days after `day`, at the first day of each run."""
        return rl.rle(dry.sel(time=slice(day + DAY, day + ahead * DAY)))

    onsets = {}
    for rule, (ahead, spell) in RULES.items():
        by_runs = {}
        for year in years:
            by_runs[year] = None
            for day in pd.date_range(f"{year}-{first}", f"{year}-12-31"):
                if wet_start(day):
                    after = dry.sel(time=slice(day + DAY, day + ahead * DAY))
                    assert after.size == ahead, "the days after are not in the record"
                    if int(rl.longest_run(after)) < spell:
                        by_runs[year] = day
                        break
        onsets[rule] = by_runs

        by_season = {}
        for name, not_dry in ((rule, ahead - spell - 3), (f"{rule}-literal", ahead)):
            by_season[name], _ = season(rain, first, not_dry, spell, years)
            for year in years:
                last, ours, why = by_season[name][year], by_runs[year], ""
                day = None if last is None else first_of(last)
                if day is not None and (ours is None or day < ours):
                    # xclim takes a day that the rule refuses
                    runs = dry_runs(day, ahead)
                    assert int(runs[0]) >= spell and last == day + 2 * DAY, (record, name, year)
                    why = (f"xclim sees dry spells only from the last wet day on; here {int(runs[0])} dry days begin "
                           "on the second")
                elif day != ours:
                    # xclim refuses a day that the rule takes
                    assert name != rule, (record, name, year)
                    runs = dry_runs(ours, ahead + 4 + spell)
                    late = [i for i, n in enumerate(runs.values) if n >= spell]
                    assert ahead - spell + 1 <= late[0] <= ahead + 3, (record, name, year, late)
                    why = (f"xclim looks further: {int(runs[late[0]])} dry days begin {late[0] + 1} days after our first "
                           f"day and do not lie wholly within the {ahead}")
                lines.append([record, name, year, text(last), text(None if why else day), why])
        # a dry spell by its total (under 1 mm in all its days) makes no difference in these records
        assert season(rain, first, ahead - spell - 3, spell, years, "total")[0] == by_season[rule]
        for year in years:
            lines.append([record, f"{rule}-runs", year, text(by_runs[year]), text(by_runs[year]), ""])

    # The end. No onset falls after the first day of this search.
    by_runs = {}
    for year in years:
        year_of_end = year + 1 if ending < "07-01" else year
        from_day = pd.Timestamp(f"{year_of_end}-{ending}")
        if from_day > rain.indexes["time"][-1]:
            continue
        assert all(onsets[rule][year] is None or onsets[rule][year] < from_day for rule in RULES)
        # from the first of the month before, so that runs under way on the first day are there to be cut
        part = dry.sel(time=slice(from_day - 30 * DAY, from_day + 364 * DAY))
        found = rl.first_run_after_date(part, window=20, date=ending, coord=True).values
        day = None if pd.isnull(found) else pd.Timestamp(found)
        by_runs[year] = day
        lines.append([record, "end-20-dry", year, text(day), text(day), ""])
    if record == "eastern-lowlands":
        # rain_season works within periods of twelve months, so only where start and end share one
        _, end = season(rain, first, 19, 8, years)
        assert end == by_runs
        lines += [[record, "end-20-dry-season", year, text(end[year]), text(end[year]), ""] for year in years]
    else:
        # the same seasons read in numpy
        for row in csv.DictReader((here / "../rain-season/seasons.csv").open()):
            year = int(row["year"])
            assert row["onset"] == text(onsets["onset-8-dry-in-30"][year]), year
            assert row["end_rainless"] == text(by_runs[year]), year

assert all("," not in str(cell) for line in lines for cell in line)
with (here / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["record", "rule", "year", "xclim_date", "expected_first_day", "why_differs"])
    table.writerows(lines)
