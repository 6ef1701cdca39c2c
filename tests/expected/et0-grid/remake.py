"""Remakes cases.csv: radiation, daylight and reference evapotranspiration by pyet, checked with three other packages.

    pip install pyet==1.5.0 refet==0.5.0 fao56==1.2.0 eto==2.2.1
    python remake.py

The weather of each row is made up by weather(); it is no place's record. Only
the last four columns are expected values. Nothing is written when a check fails.
"""

import csv
import math
import pathlib

import eto
import fao56.chap2 as chap2
import fao56.chap3 as chap3
import numpy as np
import pandas as pd
import pyet
import refet

LATITUDES = range(-50, 51, 10)
DAYS = [1, 32, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335]
ELEVATIONS = [2, 60, 340, 790, 1180, 1650, 2240, 2980]
FIRST = pd.Timestamp("2001-01-01")  # a year of 365 days


def weather(i, latitude, day):
    """Inputs of row i, rounded as they stand in the table: all else is computed from the rounded values."""
    summer = math.cos(2 * math.pi * (day - (200 if latitude >= 0 else 17)) / 365)
    elevation = ELEVATIONS[(i * 5 + i // 8) % len(ELEVATIONS)]
    mean = 27 - 0.22 * abs(latitude) + 0.2 * abs(latitude) * summer - 0.004 * elevation
    spread = 4 + (i * 11 % 29) / 2  # 4 to 18 degrees between night and noon
    tmax, tmin = round(mean + spread / 2, 1), round(mean - spread / 2, 1)
    ea = round(chap3.eq11(tmin) * (0.45 + (i * 7 % 23) / 40), 3)  # 45 to 100 % at the coldest hour
    wind = round(0.4 + (i * 13 % 31) / 5, 1)
    return elevation, tmax, tmin, ea, wind


def clearness(i):
    """Solar radiation over Ra: 0.31 to 0.73, so that neither limit of Rs/Rso (0.3 below, 1 above) is met."""
    return 0.31 + (i * 17 % 43) / 100


lines, worst = [], {}


def agree(name, ours, theirs, within):
    difference = abs(float(ours) - float(theirs))
    worst[name] = max(worst.get(name, 0.0), difference)
    assert difference <= within, (name, i, ours, theirs)


for i, (latitude, day) in enumerate((lat, day) for lat in LATITUDES for day in DAYS):
    phi = math.radians(latitude)
    index = pd.DatetimeIndex([FIRST + pd.Timedelta(days=day - 1)])
    assert index.dayofyear[0] == day
    series = lambda value: pd.Series([float(value)], index)

    elevation, tmax, tmin, ea, wind = weather(i, latitude, day)
    ra = float(pyet.meteo_utils.extraterrestrial_r(index, phi).iloc[0])
    daylight = float(pyet.meteo_utils.daylight_hours(index, phi)[0])
    solar = round(clearness(i) * ra, 2)
    tmean = series((tmax + tmin) / 2)

    # pyet divides Ra by the latent heat at the day's temperature, FAO-56 eq. 52
    # multiplies by 0.408. pyet's coefficient k (0.0135 by default) takes that up.
    latent = pyet.meteo_utils.calc_lambda(tmean)
    as_is = float(pyet.hargreaves(tmean, series(tmax), series(tmin), phi).iloc[0])
    hargreaves = float(pyet.hargreaves(tmean, series(tmax), series(tmin), phi, k=0.0135 * 0.408 * latent).iloc[0])
    worst["hargreaves of pyet as it is, relative"] = max(
        worst.get("hargreaves of pyet as it is, relative", 0), abs(as_is / hargreaves - 1))
    assert abs(as_is / hargreaves - 1 / (0.408 * float(latent.iloc[0]))) < 1e-12

    pm = float(pyet.pm_fao56(
        tmean, series(wind), rs=series(solar), g=0, tmax=series(tmax), tmin=series(tmin),
        ea=series(ea), elevation=float(elevation), lat=phi).iloc[0])
    assert hargreaves > 0 and pm > 0  # pyet would have set negative values to 0

    # fao56 has one function for each equation of the paper, given 273.16 here
    dr, delta = chap3.eq23(day), chap3.eq24(day)
    omega = chap3.eq25(phi, delta)
    agree("Ra, fao56", ra, chap3.eq21(dr, omega, phi, delta), 1e-7)
    agree("daylight, fao56", daylight, chap3.eq34(omega), 1e-9)
    rso = chap3.eq37(ra, elevation)
    assert 0.3 < solar / rso < 1 and solar < 0.75 * ra
    rnl = chap3.eq39(tmin + 273.16, tmax + 273.16, ea, solar, rso)
    middle = (tmax + tmin) / 2
    agree("Penman-Monteith, fao56", pm, chap2.eq6(
        chap3.eq38(solar) - rnl, 0.0, middle, wind, (chap3.eq11(tmax) + chap3.eq11(tmin)) / 2, ea,
        chap3.eq13(middle), chap3.eq8(chap3.eq7(elevation))), 1e-7)

    # refet follows ASCE-EWRI 2005: 4.901e-9, slope 2503, the logarithmic wind profile at 2 m too
    asce = refet.Daily(tmin=[tmin], tmax=[tmax], ea=[ea], rs=[solar], uz=[wind], zw=2.0,
                       elev=[float(elevation)], lat=[float(latitude)], doy=day, method="asce")
    agree("Ra, refet", ra, asce.ra[0], 1e-7)
    agree("Penman-Monteith, refet", pm, asce.eto()[0], 0.003)

    # eto has the constants of the paper, but the logarithmic wind profile at 2 m too; its Hargreaves has two decimals
    other = eto.ETo({"T_min": np.array([tmin]), "T_max": np.array([tmax]), "R_s": np.array([solar]),
                     "e_a": np.array([ea]), "U_z": np.array([wind])},
                    "D", z_msl=float(elevation), lat=float(latitude), day_of_year=np.array([day]), z_u=2)
    agree("Ra, eto", ra, other.ts_param["R_a"][0], 1e-7)
    agree("Hargreaves, eto", hargreaves, other.eto_hargreaves()[0], 0.005 + 1e-7)
    agree("Penman-Monteith, eto", pm, other.eto_fao(decimals=None)[0], 0.002)

    lines.append([latitude, day, elevation, tmax, tmin, f"{ea:.3f}", wind, f"{solar:.2f}",
                  f"{ra:.6f}", f"{daylight:.6f}", f"{hargreaves:.6f}", f"{pm:.6f}"])

assert len(lines) == 132
with (pathlib.Path(__file__).parent / "cases.csv").open("w", newline="") as out:
    table = csv.writer(out, lineterminator="\n")
    table.writerow(["latitude_deg", "day_of_year", "elevation_m", "tmax_c", "tmin_c", "vapour_pressure_kpa",
                    "wind_2m_m_s", "solar_mj", "ra_mj", "daylight_h", "hargreaves_mm", "penman_monteith_mm"])
    table.writerows(lines)
for name, difference in worst.items():
    print(f"{name}: at most {difference:.2g}")
