"""Remakes trade.csv and outlook.csv, an independent reading in numpy.

    pip install numpy
    python remake_trade.py
"""

import csv
import datetime as dt
import pathlib

import numpy as np

here = pathlib.Path(__file__).parent
rows = list(csv.DictReader((here / "../../../examples/rain-eastern-lowlands.csv").open()))
first = dt.date.fromisoformat(rows[0]["date"])
rain = np.array([float(row["mm"]) for row in rows])
wet = rain >= 1.0
# Sums of a day and the two after it, in tenths so that nothing hangs on rounding.
tenths = np.rint(rain * 10).astype(int)
sums = np.convolve(tenths, np.ones(3, int))[2:]


def at(day):
    return (day - first).days


def is_window(i):
    return bool(wet[i] and sums[i] >= 200)


def dry_run(a, b):
    """Longest run of dry days among a..b-1."""
    padded = np.concatenate(([1], wet[a:b].astype(int), [1]))
    ones = np.flatnonzero(padded)
    return int(np.diff(ones).max() - 1)


def end(i, search):
    i = max(i + 1, search)
    while i + 20 <= len(rain):
        if not wet[i : i + 20].any():
            return i
        i += 1
    return None


years = range(2007, 2026)
with (here / "trade.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["from", "planted_years", "false_starts", "median_days_left"])
    for wait in range(0, 103, 10):
        planted, failed, left = 0, 0, []
        for year in years:
            days = range(at(dt.date(year, 9, 20)) + wait, at(dt.date(year, 12, 31)) + 1)
            day = next((i for i in days if is_window(i)), None)
            if day is None:
                continue
            planted += 1
            failed += dry_run(day + 1, day + 31) > 7
            last = end(day, at(dt.date(year, 12, 1)))
            if last is not None:
                left.append(last - day)
        label = (dt.date(2007, 9, 20) + dt.timedelta(days=wait)).strftime("%m-%d")
        table.writerow([label, planted, failed, float(np.median(left))])

with (here / "outlook.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["values", "chances", "percent", "expected"])
    for values in ([5, 1, 9, 3, 7, 11], [135, 142, 150, 151, 158, 160, 163, 170, 175, 181], [4, 8, 2, 6, 10, 12, 14]):
        for chances in ([1, 1, 1], [20, 30, 50], [70, 20, 10]):
            n = len(values)
            outer = int(np.floor(n / 3 + 0.5))
            groups = np.array([0] * outer + [1] * (n - 2 * outer) + [2] * outer)
            weights = np.array([chances[g] / np.sum(groups == g) for g in groups])
            shares = np.cumsum(weights) / weights.sum() * 100
            for percent in (20, 50, 80):
                if np.abs(shares - percent).min() < 1e-9:
                    continue  # exactly between two values, where numpy's own rounding decides
                got = np.percentile(np.sort(values), percent, weights=weights, method="inverted_cdf")
                table.writerow([";".join(map(str, values)), ";".join(map(str, chances)), percent, got])
