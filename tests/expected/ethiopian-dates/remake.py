"""Remakes cases.csv.

    pip install convertdate==2.5.1 PyICU
    python remake.py

The Coptic calendar of convertdate has the Ethiopian months and days, its years are 276 fewer. Every day from 1900 to 2100 is
held against ICU's Ethiopic calendar as well; the table has the first day of each month, and all of the thirteenth.
"""

import csv
import datetime as dt
import pathlib

import icu
from convertdate import coptic

calendar = icu.Calendar.createInstance(icu.TimeZone.getGMT(), icu.Locale("am@calendar=ethiopic"))
day, rows = dt.date(1900, 1, 1), []
while day <= dt.date(2100, 12, 31):
    year, month, of_month = coptic.from_gregorian(day.year, day.month, day.day)
    year += 276
    calendar.setTime(int((dt.datetime(day.year, day.month, day.day, 12) - dt.datetime(1970, 1, 1)).total_seconds()) * 1.0)
    fields = [icu.UCalendarDateFields.EXTENDED_YEAR, icu.UCalendarDateFields.MONTH, icu.UCalendarDateFields.DAY_OF_MONTH]
    other = [calendar.get(field) for field in fields]
    assert [year, month - 1, of_month] == other, (day, (year, month, of_month), other)
    if of_month == 1 or month == 13:
        rows.append((day.isoformat(), year, month, of_month))
    day += dt.timedelta(days=1)
with (pathlib.Path(__file__).parent / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["gregorian", "year", "month", "day"])
    table.writerows(rows)
