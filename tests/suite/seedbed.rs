//! Water for the bed, against FAO Irrigation and Drainage Paper 56.

use kabla::plan::seedbed::{Air, Climate, et0};
use kabla::plan::{Celsius, Kilopascals, Megajoules, Metres, MetresPerSecond, Place};

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
    assert_eq!(climate.method(), "Hargreaves");
    let saturated = (et0::saturation_vapour_pressure(Celsius(34.8)).0
        + et0::saturation_vapour_pressure(Celsius(25.6)).0)
        / 2.0;
    climate.air = Some(Air {
        humidity: [2.85 / saturated * 100.0; 12],
        wind: [MetresPerSecond(2.0); 12],
        sunshine_hours: [8.5; 12],
    });
    assert_eq!(climate.method(), "Penman–Monteith");
    let et0 = climate.et0_on(day, &place).0;
    assert!((et0 - 5.72).abs() <= 0.01, "{et0}");
    assert!((et0 - by_hargreaves).abs() > 0.1, "{by_hargreaves}");
}
