//! Water for the bed, against FAO Irrigation and Drainage Paper 56.

use chrono::NaiveDate;
use kabla::plan::seedbed::{Air, Bed, Climate, Soil, Source, et0, kc, schedule};
use kabla::plan::{
    Assumptions, Celsius, DateSpan, Kilopascals, Litres, Megajoules, Metres, MetresPerSecond, Millimetres,
    Place, SquareMetres,
};
use proptest::prelude::*;

use crate::expected::rows;

/// The weather of an example, from its inputs as the paper states them.
fn weather_of(example: &str, latitude: f64, day: u32) -> et0::Weather {
    let extraterrestrial = et0::extraterrestrial_radiation(latitude, day);
    let daylight = et0::daylight_hours(latitude, day);
    if example == "18" {
        let (tmax, tmin) = (Celsius(21.5), Celsius(12.3));
        return et0::Weather {
            tmax,
            tmin,
            vapour_pressure: et0::vapour_pressure(tmax, tmin, 84.0, 63.0),
            wind: et0::wind_at_two_metres(MetresPerSecond(10.0 / 3.6), Metres(10.0)),
            extraterrestrial,
            solar: et0::solar_radiation(9.25, daylight, extraterrestrial),
            soil_heat: Megajoules(0.0),
            elevation: Metres(100.0),
        };
    }
    let (tmax, tmin) = (Celsius(34.8), Celsius(25.6));
    et0::Weather {
        tmax,
        tmin,
        vapour_pressure: Kilopascals(2.85),
        wind: MetresPerSecond(2.0),
        extraterrestrial,
        solar: et0::solar_radiation(8.5, daylight, extraterrestrial),
        soil_heat: et0::soil_heat_of_month(Celsius((34.8 + 25.6) / 2.0), Celsius(29.2)),
        elevation: Metres(2.0),
    }
}

#[test]
fn examples_of_fao_56() {
    let mut checked = 0;
    for row in rows("fao56", "cases.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let (latitude, day) = (number("latitude_degrees"), row["day_of_year"].parse().unwrap());
        let weather = weather_of(&row["example"], latitude, day);
        let computed = match row["quantity"].as_str() {
            "inverse_distance" => et0::inverse_distance(day),
            "declination_rad" => et0::declination(day),
            "sunset_hour_angle_rad" => et0::sunset_hour_angle(latitude, day),
            "extraterrestrial_radiation_mj" => et0::extraterrestrial_radiation(latitude, day).0,
            "daylight_hours" => et0::daylight_hours(latitude, day),
            "hargreaves_mm" => {
                let radiation = et0::extraterrestrial_radiation(latitude, day);
                et0::hargreaves(Celsius(number("tmax_c")), Celsius(number("tmin_c")), radiation).0
            }
            "solar_radiation_mj" => weather.solar.0,
            "net_radiation_mj" => weather.net_radiation().0,
            "soil_heat_mj" => weather.soil_heat.0,
            "wind_2m" => weather.wind.0,
            "vapour_pressure_kpa" => weather.vapour_pressure.0,
            "penman_monteith_mm" => weather.penman_monteith().0,
            other => panic!("{other} is not computed"),
        };
        let published = number("published");
        assert!(
            (computed - published).abs() <= number("tolerance"),
            "example {}: {computed} is not {published}",
            row["example"]
        );
        checked += 1;
    }
    assert_eq!(checked, 17);
}

#[test]
fn polar_night_and_day_have_an_answer() {
    assert_eq!(et0::daylight_hours(80.0, 355), 0.0);
    assert_eq!(et0::daylight_hours(80.0, 172), 24.0);
    assert_eq!(et0::extraterrestrial_radiation(80.0, 355).0, 0.0);
}

/// Example 17 again, through a climate of monthly means: the humidity that gives its vapour pressure, the same sun and wind.
#[test]
fn a_climate_with_air_uses_penman_monteith() {
    let place = Place {
        name: "the place of example 17".to_owned(),
        latitude: 13.7333,
        longitude: 100.5,
        elevation: Metres(2.0),
    };
    let mut climate = Climate::constant(Celsius(34.8), Celsius(25.6));
    climate.tmax[2] = Celsius(33.8);
    climate.tmin[2] = Celsius(24.6);
    let day = "2021-04-15".parse().unwrap();
    let by_hargreaves = climate.et0_on(day, &place).0;
    assert_eq!(climate.method(), "hargreaves");
    let saturated = (et0::saturation_vapour_pressure(Celsius(34.8)).0
        + et0::saturation_vapour_pressure(Celsius(25.6)).0)
        / 2.0;
    climate.air = Some(Air {
        humidity: [2.85 / saturated * 100.0; 12],
        wind: [MetresPerSecond(2.0); 12],
        sunshine_hours: [8.5; 12],
    });
    assert_eq!(climate.method(), "penman-monteith");
    let et0 = climate.et0_on(day, &place).0;
    assert!((et0 - 5.72).abs() <= 0.01, "{et0}");
    assert!((et0 - by_hargreaves).abs() > 0.1, "{by_hargreaves}");
}

/// 132 days and latitudes by pyet, checked there against three other libraries.
#[test]
fn a_grid_of_latitudes_and_days() {
    let cases = rows("et0-grid", "cases.csv");
    assert_eq!(cases.len(), 132);
    for row in cases {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let (latitude, day) = (number("latitude_deg"), row["day_of_year"].parse().unwrap());
        let extraterrestrial = et0::extraterrestrial_radiation(latitude, day);
        let (tmax, tmin) = (Celsius(number("tmax_c")), Celsius(number("tmin_c")));
        let weather = et0::Weather {
            tmax,
            tmin,
            vapour_pressure: Kilopascals(number("vapour_pressure_kpa")),
            wind: MetresPerSecond(number("wind_2m_m_s")),
            extraterrestrial,
            solar: Megajoules(number("solar_mj")),
            soil_heat: Megajoules(0.0),
            elevation: Metres(number("elevation_m")),
        };
        for (computed, name) in [
            (extraterrestrial.0, "ra_mj"),
            (et0::daylight_hours(latitude, day), "daylight_h"),
            (et0::hargreaves(tmax, tmin, extraterrestrial).0, "hargreaves_mm"),
            (weather.penman_monteith().0, "penman_monteith_mm"),
        ] {
            assert!((computed - number(name)).abs() <= 1e-6, "{name}: {computed} in {row:?}");
        }
    }
}

/// The stages and values of FAO-56 and pyfao56's own curve through them.
#[test]
fn crop_coefficients_by_stage() {
    let a = Assumptions::default();
    let table = rows("crop-coefficients", "cases.csv");
    let value = |name: &str| {
        let row = table.iter().find(|row| row["value_name"] == name).unwrap_or_else(|| panic!("{name}"));
        row["value"].parse::<f64>().unwrap()
    };
    for (ours, theirs) in [
        (a.kc_initial_days, "tropics_initial_days"),
        (a.kc_development_days, "tropics_development_days"),
        (a.kc_middle_days, "tropics_mid_days"),
        (a.kc_late_days, "tropics_late_days"),
        (a.kc_initial, "kc_initial"),
        (a.kc_middle, "kc_mid"),
        (a.kc_end, "kc_end"),
    ] {
        assert_eq!(ours, value(theirs), "{theirs}");
    }
    let curve = rows("crop-coefficients", "curve.csv");
    assert_eq!(curve.len(), 125);
    for row in curve {
        let (day, expected): (f64, f64) = (row["day"].parse().unwrap(), row["kc"].parse().unwrap());
        let found = kc::by_stage(day, &a);
        assert!((found - expected).abs() <= 1e-6, "day {day}: {found}, not {expected}");
    }
}

#[test]
fn wet_soil_by_annex_7() {
    let a = Assumptions::default();
    for row in rows("kc-wet-soil", "cases.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let found = kc::wet_soil(Millimetres(number("et0_mm")), number("interval_days"), &a);
        assert!((found - number("kc_ini")).abs() <= 1e-6, "{row:?}: {found}");
    }
    // Example 23 as remembered: 0.85 read from figure 29.
    assert!((kc::wet_soil(Millimetres(4.0), 2.0, &a) - 0.85).abs() < 0.05);
}

fn lowland() -> Place {
    Place { name: "a place".to_owned(), latitude: -6.0, longitude: 36.0, elevation: Metres(600.0) }
}

fn span(from: &str, to: &str) -> DateSpan {
    DateSpan::new(from.parse().unwrap(), to.parse().unwrap())
}

/// By hand for the dekad with all values named: litres = m² × (Kc·ET₀ − rain) / efficiency, rounded up;
/// the total is the sum of days times litres; the dekads meet without gap or overlap. Shoots show 14 days after
/// 28 September, on 12 October: there a dekad is parted.
#[test]
fn water_is_counted_dekad_by_dekad() {
    let a = Assumptions::default();
    let mut climate = Climate::constant(Celsius(32.0), Celsius(18.0));
    // 100 mm in November: 0.8 × 100 − 25 = 55 mm are effective, 55 / 30.4375 = 1.807 mm a day.
    let mut rain = [Millimetres(0.0); 12];
    rain[10] = Millimetres(100.0);
    climate.rain = Some(rain);
    let when = span("2027-09-28", "2027-11-25");
    let days = (when.from, when);
    let periods: Vec<_> =
        schedule(SquareMetres(15.0), &lowland(), &climate, days, Some(Soil::Loam), &a).collect();
    let spans: Vec<String> = periods.iter().map(|p| format!("{} {}", p.when.from, p.when.to)).collect();
    assert_eq!(
        spans,
        [
            "2027-09-28 2027-09-30",
            "2027-10-01 2027-10-10",
            "2027-10-11 2027-10-11",
            "2027-10-12 2027-10-20",
            "2027-10-21 2027-10-31",
            "2027-11-01 2027-11-10",
            "2027-11-11 2027-11-20",
            "2027-11-21 2027-11-25"
        ]
    );
    for period in &periods {
        let in_november = period.when.from >= "2027-11-01".parse::<NaiveDate>().unwrap();
        assert!((period.rain.0 - if in_november { 55.0 / 30.4375 } else { 0.0 }).abs() < 1e-3);
        let litres = 15.0 * (period.kc * period.et0.0 - period.rain.0) / 0.8;
        assert_eq!(period.daily.0, litres.ceil(), "{period:?}");
        let before_shoots = period.when.from < "2027-10-12".parse::<NaiveDate>().unwrap();
        assert_eq!(period.every_days, if before_shoots { 3.0 } else { 1.0 });
        assert_eq!(period.each_time.0, (litres * period.every_days).ceil(), "{period:?}");
    }
    // Each has the weather of its middle day.
    let middle = "2027-10-26".parse().unwrap();
    assert_eq!(periods[4].et0, climate.et0_on(middle, &lowland()), "21 to 31 October");
    // Until shoots show, what watering every third day keeps wet counts, then what daily watering does.
    assert_eq!(periods[1].kc, kc::wet_soil(periods[1].et0, 3.0, &a));
    assert!(periods[3].kc > 0.9 && periods[3].kc < 1.15, "{}", periods[3].kc);
    assert_eq!(periods[6].kc, 1.15, "the middle stage, 48 days after planting");
    assert_eq!(periods.iter().map(|period| period.days()).sum::<i64>(), 59);
}

#[test]
fn rarer_watering_needs_less_at_first() {
    let mut a = Assumptions::default();
    let daily = kc::of_bed(5.0, Millimetres(5.0), &a);
    a.water_every_days = 3.0;
    let rarer = kc::of_bed(5.0, Millimetres(5.0), &a);
    assert!(rarer < daily, "{rarer} and {daily}");
    assert_eq!(kc::of_bed(60.0, Millimetres(5.0), &a), 1.15);
}

/// By hand with ET₀ 5 mm (annex 7, light wettings): 6 / √5 = 2.683 mm go readily, at 1.15 × 5 = 5.75 mm a day for
/// 0.467 days; of the other 7.317 mm the share exp(−5.75 × (t − 0.467) × (1 + 2.683 / 7.317) / 10) stays until day t:
/// 0.2999, 0.1367 and 0.0623 for 2, 3 and 4 days. So sand takes (10 − 2.194) / 2 = 3.90, loam
/// (10 − 1.000) / 3 = 3.00 and clay (10 − 0.456) / 4 = 2.39 mm a day, where daily watering takes 5.1 mm.
/// A fifth runs off.
/// Print has 2.7 to 3.6 L/m² a day for a young seedbed (Peace Corps manual, 1986).
#[test]
fn roots_without_shoots_are_kept_moist_not_wet() {
    let a = Assumptions::default();
    for (soil, days, net) in [(Soil::Sand, 2.0, 3.90), (Soil::Loam, 3.0, 3.00), (Soil::Clay, 4.0, 2.39)] {
        assert_eq!(soil.every_days(&a), days);
        let found = kc::wet_soil(Millimetres(5.0), days, &a) * 5.0;
        assert!((found - net).abs() < 0.005, "{soil:?}: {found}");
    }
    let climate = Climate::constant(Celsius(32.0), Celsius(18.0));
    let first = |soil| {
        let when = span("2027-09-28", "2027-11-25");
        let days = (when.from, when);
        schedule(SquareMetres(10.0), &lowland(), &climate, days, Some(soil), &a).nth(1).unwrap()
    };
    let [sand, loam, clay] = [Soil::Sand, Soil::Loam, Soil::Clay].map(first);
    // Sand is watered more often, and with less at a time; clay less often, and never with more than its top holds:
    // no light watering leaves more than 10 mm, 12.5 with what runs off.
    assert!(sand.every_days < loam.every_days && loam.every_days < clay.every_days);
    assert!(sand.each_time.0 < loam.each_time.0 && loam.each_time.0 < clay.each_time.0);
    assert!(sand.daily.0 > loam.daily.0 && loam.daily.0 > clay.daily.0);
    assert!(clay.each_time.0 <= 125.0, "{clay:?}");
}

#[test]
fn rows_of_the_bed_to_scale() {
    // 40 roots on 15 m²: 12.5 m of strip, in two strips of 6.5 m, as 10 m are the most. 1.2 m take 2 rows 60 cm apart;
    // 4 rows with 10 roots each, 6.5 m / 10 = 65 cm apart.
    let bed = Bed::for_roots(40, &Assumptions::default());
    assert_eq!((bed.strips, bed.strip_length.0, bed.strip_width.0), (2, 6.5, 1.2));
    assert_eq!((bed.rows_per_strip, bed.rows(), bed.roots_per_row), (2, 4, 10));
    assert_eq!((bed.between_rows.0, bed.along_row.0), (60.0, 65.0));
    assert_eq!((bed.length().0, bed.width().0), (6.5, 2.9), "1.2 + 0.5 + 1.2 m across");
    // 32 roots on 12 m² are one strip of 10 m.
    let long = Bed::for_roots(32, &Assumptions::default());
    assert_eq!((long.strips, long.length().0, long.width().0), (1, 10.0, 1.2));
    let one = Bed::for_roots(1, &Assumptions::default());
    assert_eq!((one.strips, one.rows(), one.roots_per_row), (1, 1, 1));
    // 0.375 m²: as wide as long, 0.7 m, and a metre long.
    assert_eq!((one.strip_width.0, one.strip_length.0), (0.7, 1.0));
}

proptest! {
    /// All roots lie inside, in rows that have room; no strip is wider or longer than arms and feet like.
    #[test]
    fn all_roots_lie_in_the_bed(roots in 0u32..20_000) {
        let a = Assumptions::default();
        let bed = Bed::for_roots(roots, &a);
        prop_assert!(bed.rows() * bed.roots_per_row >= roots);
        prop_assert!(f64::from(bed.rows_per_strip) * bed.between_rows.0 <= bed.strip_width.0 * 100.0 + 1e-6);
        prop_assert!(f64::from(bed.roots_per_row) * bed.along_row.0 <= bed.strip_length.0 * 100.0 + 1e-6);
        prop_assert!(bed.strip_width.0 <= 1.2 && bed.strip_length.0 <= 10.0, "{bed:?}");
        prop_assert!(f64::from(bed.strips) * bed.strip_width.0 * bed.strip_length.0 >= bed.area.0 - 1e-6);
        prop_assert!((bed.area.0 - f64::from(roots) * 0.375).abs() < 1e-9);
    }
}

#[test]
fn a_source_is_held_against_the_need() {
    let a = Assumptions::default();
    let climate = Climate::constant(Celsius(32.0), Celsius(18.0));
    let when = span("2027-10-01", "2027-11-30");
    let days = (when.from, when);
    let periods: Vec<_> =
        schedule(SquareMetres(15.0), &lowland(), &climate, days, Some(Soil::Loam), &a).collect();
    let most = periods.iter().map(|period| period.daily.0).fold(0.0, f64::max);
    let source = |daily: Option<[Litres; 12]>, stored: Option<f64>| Source {
        name: "the well".to_owned(),
        daily,
        stored: stored.map(Litres),
    };
    assert_eq!(source(Some([Litres(most); 12]), None).shortage(&periods), None);
    let half = source(Some([Litres(most / 2.0); 12]), None).shortage(&periods).unwrap();
    // Until shoots show, half is enough.
    assert_eq!(half.first.from.to_string(), "2027-10-15");
    assert_eq!((half.gives.0, half.needs.0, half.of_all), (most / 2.0, most, false));
    assert!((half.share - 0.5).abs() < 1e-9);
    // A well that is dry in November only is short from the 1st on.
    let mut drying = [Litres(most); 12];
    drying[10] = Litres(0.0);
    let dry = source(Some(drying), None).shortage(&periods).unwrap();
    assert_eq!((dry.first.from.to_string().as_str(), dry.share), ("2027-11-01", 0.0));
    // A tank is short once the sum of all days exceeds it.
    let total: f64 = periods.iter().map(|period| period.total().0).sum();
    assert_eq!(source(None, Some(total)).shortage(&periods), None);
    let tank = source(None, Some(total - 1.0)).shortage(&periods).unwrap();
    assert_eq!(tank.first, periods.last().unwrap().when);
    assert_eq!((tank.gives.0, tank.needs.0, tank.of_all), (total - 1.0, total, true));
}

/// Monthly means of a record, and the months that are too thin.
#[test]
fn climates_of_daily_records() {
    let first = NaiveDate::from_ymd_opt(2020, 1, 1).unwrap();
    let days: Vec<_> = (0..731u64)
        .map(|day| first + chrono::Days::new(day))
        .map(|day| {
            let month = f64::from(chrono::Datelike::month(&day));
            (day, Celsius(20.0 + month), Celsius(10.0 + month))
        })
        .collect();
    let climate = Climate::of_days(&days).unwrap();
    for month in 0..12 {
        assert!((climate.tmax[month].0 - (21.0 + month as f64)).abs() < 1e-9);
        assert!((climate.tmin[month].0 - (11.0 + month as f64)).abs() < 1e-9);
    }
    assert_eq!(Climate::of_days(&days[..40]).unwrap_err(), [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
}
