"""Remakes seasons.csv, dry_runs.csv and trend.csv.

    pip install numpy scipy xarray pandas xclim==0.62.0
    python remake.py

The seasons are read in numpy, with sliding windows and run-length codes over
the whole record instead of a search day by day; rain is counted in whole tenths
of a millimetre, so no comparison hangs on rounding. The dry runs are those of
xclim, checked against numpy; the slopes are those of scipy.
"""

import csv
import datetime as dt
import itertools
import pathlib
import warnings

import numpy as np
import pandas as pd
import xarray as xr
from numpy.lib.stride_tricks import sliding_window_view
from scipy.stats import theilslopes

warnings.simplefilter("ignore")
from xclim.indices import maximum_consecutive_dry_days

here = pathlib.Path(__file__).parent
with (here / ".." / "seattle-onset" / "seattle-weather.csv").open() as source:
    rows = list(csv.DictReader(source))
days = np.array([row["date"].replace("/", "-") for row in rows], "datetime64[D]")
assert (np.diff(days) == np.timedelta64(1, "D")).all(), "a day is missing"
tenths = np.array([round(10 * float(row["precipitation"])) for row in rows])

WET = 10  # 1 mm, in tenths
dry = tenths < WET


def at(year, month, day):
    """The place of a date in the record."""
    return int((np.datetime64(dt.date(year, month, day)) - days[0]).astype(int))


def longest(flags):
    """The longest run of True."""
    return max((len(list(run)) for true, run in itertools.groupby(flags.tolist()) if true), default=0)


# For every day of the record for which the days ahead are known: the wet start
# (1 mm, and 20 mm with the next two days) and a run of 8 or more days under
# 1 mm that lies wholly within days d+1 to d+30.
sums = sliding_window_view(tenths, 3).sum(axis=1)
start = (tenths[: len(sums)] >= WET) & (sums >= 200)
eight = sliding_window_view(dry, 8).all(axis=1)  # a run of 8 starts here
broken = sliding_window_view(eight, 23).any(axis=1)[1:]  # at one of d+1 .. d+23
known = min(len(start), len(broken))
start, broken = start[:known], broken[:known]
twenty = sliding_window_view(dry, 20).all(axis=1)


def season(year):
    window = np.arange(at(year, 8, 1), at(year, 12, 31) + 1)
    good = window[start[window] & ~broken[window]]
    onset = int(good[0]) if len(good) else None
    before = window if onset is None else window[window < onset]
    false = start[before] & broken[before]
    # a day right after another such day is not counted again
    false_starts = int((false & ~np.concatenate([[False], false[:-1]])).sum())

    later = np.arange(at(year + 1, 5, 1), at(year + 1, 12, 31) + 1)
    inside = later[later < len(twenty)]  # the 20 days must be in the record
    rainless = inside[twenty[inside]]
    rainless = int(rainless[0]) if len(rainless) else None

    # The store at the end of each day; the first day's own rain counts.
    store, empty = 0, None
    for day in range(window[0] if onset is None else onset, later[-1] + 1):
        store = min(1000, max(0, store + int(tenths[day]) - 50))
        if day >= later[0] and store == 0:
            empty = day
            break

    spell = "none"
    if onset is not None and rainless is not None:
        spell = longest(dry[onset + 1 : rainless])
    date = lambda place: "none" if place is None else str(days[place])
    return [year, date(onset), false_starts, date(rainless), date(empty), spell]


def write(name, header, lines):
    with (here / name).open("w", newline="") as out:
        table = csv.writer(out, lineterminator="\n")
        table.writerow(header)
        table.writerows(lines)


write(
    "seasons.csv",
    ["year", "onset", "false_starts", "end_rainless", "end_soil_store", "longest_dry_spell_days"],
    [season(year) for year in (2012, 2013, 2014)],
)

rain = xr.DataArray(
    tenths / 10, coords={"time": pd.DatetimeIndex(days)}, dims="time", attrs={"units": "mm/day"}
)
# The default cuts a run at the year's end (resample_before_rl=True); without
# the cut the whole run goes to the year in which it begins.
cut = maximum_consecutive_dry_days(rain, thresh="1 mm/day", freq="YS")
whole = maximum_consecutive_dry_days(rain, thresh="1 mm/day", freq="YS", resample_before_rl=False)
runs = []
for year, a, b in zip(range(2012, 2016), cut.values, whole.values, strict=True):
    assert a == longest(dry[at(year, 1, 1) : at(year, 12, 31) + 1]), year
    runs.append([year, int(a), int(b)])
write("dry_runs.csv", ["year", "longest_dry_run_days", "longest_dry_run_days_uncut"], runs)

# Made up. "none" is a year without an onset, which gives no point; a year may
# also be left out of the series.
SERIES = {
    "straight": {2001: 280, 2002: 282, 2003: 284, 2004: 286, 2005: 288},
    "flat": {2001: 290, 2002: 290, 2003: 290, 2004: 290},
    "one_outlier": {2001: 300, 2002: 301, 2003: 350, 2004: 303, 2005: 304, 2006: 305, 2007: 306},
    "year_left_out": {2010: 285, 2011: 291, 2013: 288, 2014: 297, 2015: 299, 2016: 294},
    "year_none": {2010: 310, 2011: 305, 2012: None, 2013: 307, 2014: 298, 2015: 301, 2016: 296, 2017: 299},
    "earlier": {1991: 322, 1992: 315, 1994: 318, 1997: 306, 1998: 309, 2003: 297, 2004: 301},
    "even_count": {2001: 270, 2002: 277, 2004: 281, 2009: 286},
    "two_points": {2001: 275, 2004: 285},
}
lines = []
for name, series in SERIES.items():
    points = [(year, day) for year, day in series.items() if day is not None]
    slope = theilslopes([day for _, day in points], [year for year, _ in points]).slope
    # the same, as the middle of the slopes of all pairs
    pairs = [(v - u) / (b - a) for (a, u), (b, v) in itertools.combinations(points, 2)]
    assert abs(slope - np.median(pairs)) < 1e-12, name
    lines.append([
        name,
        " ".join(str(year) for year in series),
        " ".join("none" if day is None else str(day) for day in series.values()),
        f"{slope:.6f}",
    ])
write("trend.csv", ["series", "years", "onset_days", "slope_per_year"], lines)
