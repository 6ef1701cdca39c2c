"""Remakes cases.csv from the weather table of the PyPI package vega-datasets.

    pip install numpy vega-datasets
    python remake.py

An independent reading of the rule, in numpy: boolean arrays over whole years
instead of a search day by day.
"""

import csv
import datetime as dt
import pathlib

import numpy as np
import vega_datasets

here = pathlib.Path(__file__).parent
source = pathlib.Path(vega_datasets.__file__).parent / "_data" / "seattle-weather.csv"
(here / "seattle-weather.csv").write_bytes(source.read_bytes())
rows = list(csv.DictReader(source.open()))
first = dt.datetime.strptime(rows[0]["date"], "%Y/%m/%d").date()
rain = np.array([float(row["precipitation"]) for row in rows])
index = {first + dt.timedelta(days=i): i for i in range(len(rain))}


def onset(year, total):
    """First day from 1 August with 1 mm, `total` mm in it and the next two days,
    and no run of 7 or more days under 1 mm in the 30 days after it."""
    days = np.arange(index[dt.date(year, 8, 1)], index[dt.date(year, 12, 31)] + 1)
    for day in days[(rain[days] >= 1.0)]:
        if rain[day : day + 3].sum() < total:
            continue
        dry = (rain[day + 1 : day + 31] < 1.0).astype(int)
        runs = np.convolve(dry, np.ones(7, int), "valid") if len(dry) >= 7 else np.array([0])
        if runs.max() < 7:
            return (first + dt.timedelta(days=int(day))).isoformat()
    return "none"


with (here / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["year", "total_mm", "onset_20mm", "onset_25mm"])
    for year in range(2012, 2016):
        of_year = [i for day, i in index.items() if day.year == year]
        table.writerow([year, f"{rain[of_year].sum():.1f}", onset(year, 20), onset(year, 25)])
