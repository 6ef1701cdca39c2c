//! Water for the bed, against FAO Irrigation and Drainage Paper 56.

use kabla::plan::Celsius;
use kabla::plan::seedbed::et0;

use crate::expected::rows;

#[test]
fn examples_of_fao_56() {
    let mut checked = 0;
    for row in rows("fao56", "cases.csv") {
        let number = |name: &str| row[name].parse::<f64>().unwrap();
        let (latitude, day) = (number("latitude_degrees"), row["day_of_year"].parse().unwrap());
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
    assert_eq!(checked, 6);
}

#[test]
fn polar_night_and_day_have_an_answer() {
    assert_eq!(et0::daylight_hours(80.0, 355), 0.0);
    assert_eq!(et0::daylight_hours(80.0, 172), 24.0);
    assert_eq!(et0::extraterrestrial_radiation(80.0, 355).0, 0.0);
}
