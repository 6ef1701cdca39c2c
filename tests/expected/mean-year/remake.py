"""Remakes records.csv and seasons.csv.

    pip install numpy
    python remake.py

Made-up daily rain of six years with one or two wet seasons, and an independent reading of the rule in numpy: the
mean of each calendar day, its harmonics by the fast Fourier transform, the smoothed year by a circular convolution, the
seasons by cumulative sums and run-length codes. The records of Seattle and of examples/ are read as well.
"""

import csv
import datetime as dt
import pathlib

import numpy as np

here = pathlib.Path(__file__).parent
DAYS = 365


def made(name, humps, seed):
    """Rain on some days, more of it and more often near the middle of each hump (day of year, width, mm)."""
    rng = np.random.default_rng(seed)
    day, rows = dt.date(2013, 1, 1), []
    while day < dt.date(2019, 1, 1):
        of_year = day.timetuple().tm_yday
        chance, size = 0.01, 1.0
        for middle, width, mm in humps:
            away = min(abs(of_year - middle), 365 - abs(of_year - middle))
            near = np.exp(-0.5 * (away / width) ** 2)
            chance += 0.5 * near
            size += mm * near
        wet = rng.random() < chance
        rows.append((day, round(float(rng.exponential(size)), 1) if wet else 0.0))
        day += dt.timedelta(days=1)
    return name, rows


def read(path, name, fmt, column):
    with path.open() as source:
        return name, [(dt.datetime.strptime(r["date"], fmt).date(), float(r[column])) for r in csv.DictReader(source)]


def mean_year(rows):
    sums, counts = np.zeros(DAYS), np.zeros(DAYS)
    for day, mm in rows:
        index = dt.date(2001, day.month, 28 if (day.month, day.day) == (2, 29) else day.day).timetuple().tm_yday - 1
        sums[index] += mm
        counts[index] += 1
    return sums / counts


def month_day(index):
    return (dt.date(2001, 1, 1) + dt.timedelta(days=int(index) % DAYS)).strftime("%m-%d")


def seasons(rows):
    mean = mean_year(rows)
    waves = np.abs(np.fft.rfft(mean))
    anomaly = mean - mean.mean()
    if waves[2] <= waves[1]:
        # Two years on end, so that the season may run over the year's end.
        total = np.cumsum(np.tile(anomaly, 2))
        low = int(np.argmin(total[:DAYS]))
        high = low + int(np.argmax(total[low : low + DAYS]))
        found = [(low + 1, high - low)]
    else:
        kernel = np.zeros(DAYS)
        kernel[np.arange(-15, 16)] = 1 / 31
        smooth = np.real(np.fft.ifft(np.fft.fft(mean) * np.fft.fft(kernel))) - mean.mean()
        wet = smooth > 0
        starts = np.flatnonzero(wet & ~np.roll(wet, 1))
        stretches = []
        for start in starts:
            turned = np.roll(wet, -start)
            length = DAYS if turned.all() else int(np.argmin(turned))
            stretches.append((np.roll(smooth, -start)[:length].sum(), int(start), length))
        found = [(start, length) for _, start, length in sorted(stretches)[::-1][:2]]
    rows = []
    for start, length in found:
        rain = np.take(mean, range(start, start + length), mode="wrap").sum()
        rows.append((month_day(start), month_day(start + length - 1), f"{rain:.1f}"))
    return waves[2] / waves[1], sorted(rows)


records = [
    made("one-over-the-year's-end", [(20, 35, 8)], 1),
    made("one-in-the-middle", [(200, 40, 9)], 2),
    made("two-equal", [(110, 25, 9), (320, 22, 8)], 3),
    made("two-close-together", [(100, 28, 10), (355, 20, 7)], 4),
    read(here / "../seattle-onset/seattle-weather.csv", "seattle", "%Y/%m/%d", "precipitation"),
    read(here / "../../../examples/rain-eastern-lowlands.csv", "eastern-lowlands", "%Y-%m-%d", "mm"),
]
with (here / "records.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["record", "date", "mm"])
    for name, rows in records[:4]:
        table.writerows((name, day.isoformat(), mm) for day, mm in rows if mm > 0 or day.day == 1 or day == dt.date(2018, 12, 31))
with (here / "seasons.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["record", "half_yearly_over_yearly", "from", "until", "mm"])
    for name, rows in records:
        ratio, found = seasons(rows)
        table.writerows((name, f"{ratio:.6f}", *row) for row in found)
