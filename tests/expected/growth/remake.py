"""Remakes sure.csv and ranges.csv: roots to store, and ranges of cuttings, by scipy.

    pip install scipy
    python remake.py
"""

import csv
import pathlib

import numpy as np
from scipy.optimize import brentq
from scipy.stats import beta, betabinom, norm

TENTH = norm.ppf(0.9)
DAYS = np.array([30.0, 42, 56, 70, 84])
# Cuttings a sprouted root: 10, 50 and 90 % points, as src/plan/defaults.rs has them.
CURVE = np.array([[0.0, 1, 4], [2, 5, 12], [4, 10, 24], [6, 14, 31], [7, 18, 39]])
LATER = np.array([2.0, 6, 12])
SPROUTING = np.array([0.70, 0.90, 0.98])
FAILING = np.array([0.02, 0.10, 0.15])
SURVIVAL, SPREAD, MONTHS = 0.88, 0.055, 4.0
YIELDS, FAILS = 512, 16


def split_normal(points, z):
    """A value z standard deviations from the middle, with one width below it and one above."""
    low, middle, high = points
    return np.maximum(0, middle + z / TENTH * np.where(z < 0, middle - low, high - middle))


def grown(days, cuts, z):
    """Cuttings of a sprouted root over so many cuts, for an array of seasons."""
    points = np.maximum.accumulate(np.array([split_normal(p, z) for p in CURVE]), axis=0)
    first = np.array([np.interp(days, DAYS, points[:, i]) for i in range(len(z))])
    return first + (cuts - 1) * split_normal(LATER, z)


def share(months):
    """alpha and beta of the share that survives so many months and sprouts."""
    left = SURVIVAL ** (months / MONTHS)
    spread = SPREAD * months / MONTHS * left / SURVIVAL
    sprouts, sprouts_spread = SPROUTING[1], (SPROUTING[2] - SPROUTING[0]) / 2 / TENTH
    mean = left * sprouts
    # The variance of a product of two independent shares.
    variance = (spread * sprouts) ** 2 + (left * sprouts_spread) ** 2 + (spread * sprouts_spread) ** 2
    size = mean * (1 - mean) / variance - 1
    return mean * size, (1 - mean) * size


def middle_seasons(count):
    return norm.ppf((np.arange(count) + 0.5) / count)


def chance(roots, places, days, cuts, months, yields, fails):
    """That so many roots are enough, over so many seasons of equal chance."""
    a, b = share(months)
    y = grown(days, cuts, middle_seasons(yields))
    f = split_normal(FAILING, middle_seasons(fails))
    with np.errstate(divide="ignore"):
        wanted = np.ceil(places * (1 + f[None, :]) / y[:, None] - 1e-9)
    tail = np.append(betabinom.sf(np.arange(-1, roots), roots, a, b), 0.0)
    return float(tail[np.minimum(wanted, roots + 1).astype(int)].mean())


def fewest(places, sure, *season):
    low, high = 0, 1
    while chance(high, places, *season, YIELDS, FAILS) < sure:
        low, high = high, 2 * high
        if high > 200_000:
            return None
    while high - low > 1:
        middle = (low + high) // 2
        if chance(middle, places, *season, YIELDS, FAILS) >= sure:
            high = middle
        else:
            low = middle
    return high


lines, closest, furthest = [], 1.0, 0.0
cases = [
    (places, sure, days, cuts, months)
    for i, (days, cuts) in enumerate([(56, 3), (56, 1), (42, 3), (70, 1), (84, 2), (63, 1), (30, 3), (49, 2)])
    for places, sure, months in [
        (1500, 50, 4), (1500, 80, 4), ([334, 90, 1000, 5000][i % 4], [60, 90, 75, 95][i % 4], [5, 4, 8, 6][i % 4])
    ]
]
for places, sure, days, cuts, months in cases:
    season = (days, cuts, months)
    roots = fewest(places, sure / 100, *season)
    if roots is None:
        continue
    for n in (roots - 1, roots):
        closest = min(closest, abs(chance(n, places, *season, YIELDS, FAILS) - sure / 100))
    # The seasons stand for all: many more of them hardly change the chance.
    furthest = max(furthest, abs(chance(roots, places, *season, 8192, 64) - chance(roots, places, *season, YIELDS, FAILS)))
    lines.append([places, sure, days, cuts, months, roots])
print(f"{len(lines)} cases, nearest to a tie {closest:.2g}, by many more seasons {furthest:.2g}")
assert len(lines) >= 20 and closest > 1e-6 and furthest < 2e-3

here = pathlib.Path(__file__).parent
with (here / "sure.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["places", "sure_percent", "days", "cuts", "months", "roots"])
    table.writerows(lines)

rows = []
for days, cuts, months in [(42, 1, 4), (56, 1, 4), (70, 1, 4), (84, 1, 4), (49, 1, 4), (56, 3, 4), (42, 3, 4), (84, 2, 4), (56, 3, 6), (56, 1, 8)]:
    a, b = share(months)
    y = grown(days, cuts, middle_seasons(8192))
    y = y[y > 0]

    def below(x):
        """The chance that a stored root gives at most x on average: many roots, so that none stands for itself."""
        return float((beta.cdf(x / y, a, b).sum() + 8192 - len(y)) / 8192)

    ends = [brentq(lambda x, q=q: below(x) - q, 1e-3, 200) for q in (0.1, 0.9)]
    rows.append([days, cuts, months, f"{ends[0]:.5f}", f"{ends[1]:.5f}"])
with (here / "ranges.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["days", "cuts", "months", "low", "high"])
    table.writerows(rows)
