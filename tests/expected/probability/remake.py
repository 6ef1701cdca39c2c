"""Remakes sure.csv: how many roots to store to be so sure of enough survivors, by scipy's beta-binomial.

    pip install scipy
    python remake.py
"""

import csv
import pathlib

import numpy as np
from scipy.special import roots_jacobi
from scipy.stats import beta, betabinom, binom

NEEDED = [1, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 18, 20, 24, 25, 30, 36, 40, 40, 50, 60, 75, 90, 100, 120, 150, 180, 200,
          250, 300, 400, 500, 640, 800, 1000, 1250, 1500, 2000, 2500, 3000]
MEANS = [0.88, 0.81, 0.95, 0.57, 0.7, 0.9, 0.16, 0.75, 0.85, 0.62, 0.97]
DEVIATIONS = [0.055, 0.1, 0.02, 0.15, 0.06, 0.03, 0.08]
SURE = [90, 80, 95, 50, 99, 75, 85, 60, 97.5]


def shape(mean, deviation):
    """alpha and beta, by moments; see ../beta-moments, where they are found without the formula."""
    size = mean * (1 - mean) / deviation**2 - 1
    a, b = mean * size, (1 - mean) * size
    assert abs(beta.mean(a, b) - mean) < 1e-12 and abs(beta.std(a, b) - deviation) < 1e-12
    return a, b


def chance(k, n, a, b):
    """At least k of n."""
    return float(betabinom.sf(k - 1, n, a, b))


def chance_by_integral(k, n, a, b):
    """The same, as the binomial's tail averaged over the beta distribution.

    The tail is a polynomial of degree n in the share, so that the rule of
    Gauss and Jacobi with n/2 + 1 points is exact but for rounding.
    """
    places, weights = roots_jacobi(n // 2 + 1, b - 1, a - 1)
    return float(np.sum(weights / weights.sum() * binom.sf(k - 1, n, (1 + places) / 2)))


lines, closest, furthest = [], 1.0, 0.0
for i, k in enumerate(NEEDED):
    mean, deviation, sure = MEANS[i % 11], DEVIATIONS[i * 3 % 7], SURE[i * 5 % 9]
    if mean >= 0.95 or mean < 0.2:
        deviation = min(deviation, 0.04)
    a, b = shape(mean, deviation)
    wanted = sure / 100
    # One root more never lowers the chance, so the smallest number is found by halving.
    low, high = k - 1, k  # low is too few
    while chance(k, high, a, b) < wanted:
        low, high = high, 2 * high
    while high - low > 1:
        middle = (low + high) // 2
        if chance(k, middle, a, b) >= wanted:
            high = middle
        else:
            low = middle
    assert high == k or chance(k, high - 1, a, b) < wanted
    for n in (high - 1, high, high + 1):
        if n >= k:
            closest = min(closest, abs(chance(k, n, a, b) - wanted))
            furthest = max(furthest, abs(chance(k, n, a, b) - chance_by_integral(k, n, a, b)))
    lines.append([k, mean, deviation, sure, high])
assert len(lines) == 40 and closest > 1e-6 and furthest < 1e-9, (closest, furthest)
print(f"nearest to a tie: {closest:.2g}; sum and integral differ by at most {furthest:.2g}")

with (pathlib.Path(__file__).parent / "sure.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["survivors_needed", "mean", "deviation", "sure_percent", "roots"])
    table.writerows(lines)
