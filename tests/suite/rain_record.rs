//! Rainfall tables as people keep them.

use chrono::NaiveDate;
use kabla::case::{DateLayout, read_rain};
use kabla::finding::{Finding, Severity};

fn day(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

fn errors(findings: &[Finding]) -> Vec<(u32, String)> {
    let errors = findings.iter().filter(|finding| finding.is_error());
    errors.map(|finding| (finding.place.line.unwrap(), finding.message.clone())).collect()
}

#[test]
fn layouts_that_can_mean_one_thing_only_are_read() {
    for table in [
        "date,mm\n2019-04-03,1.5\n2019-04-30,2\n",
        "Date;Rain\n3/4/2019;1,5\n30/4/2019;2,0\n",
        "date\trainfall\n03.04.2019\t1,5\n30.04.2019\t2\n",
        "year,month,day,precipitation\n2019,4,3,1.5\n2019,4,30,2\n",
        "station,date,mm\nA,4/3/2019,1.5\nA,4/30/2019,2\n",
        "\u{feff}date,mm\r\n\"2019/04/03\",\"1.5\"\r\n2019/04/30,2\r\n",
    ] {
        let (record, findings) = read_rain("rain.csv", table.as_bytes(), None);
        assert_eq!(errors(&findings), [], "{table}");
        assert_eq!(record.on(day("2019-04-03")), Some(1.5), "{table}");
        assert_eq!(record.on(day("2019-04-30")), Some(2.0), "{table}");
    }
}

#[test]
fn dates_that_could_mean_two_things_are_not_guessed() {
    let table = "date,mm\n3/4/2019,1\n4/4/2019,2\n";
    let (_, findings) = read_rain("rain.csv", table.as_bytes(), None);
    assert_eq!(errors(&findings).len(), 1, "{findings:?}");
    assert!(findings[0].hint.contains("day-first"));
    let read = |layout| read_rain("rain.csv", table.as_bytes(), Some(layout)).0;
    assert_eq!(read(DateLayout::DayFirst).on(day("2019-04-03")), Some(1.0));
    assert_eq!(read(DateLayout::MonthFirst).on(day("2019-03-04")), Some(1.0));

    let both = "date,mm\n30/4/2019,1\n4/30/2019,2\n";
    let (_, findings) = read_rain("rain.csv", both.as_bytes(), None);
    assert!(
        errors(&findings)[0].1.contains("row 2") && errors(&findings)[0].1.contains("row 3"),
        "{findings:?}"
    );
    let (_, findings) = read_rain("rain.csv", both.as_bytes(), Some(DateLayout::DayFirst));
    assert_eq!(errors(&findings).len(), 1, "{findings:?}");
}

#[test]
fn what_is_missing_stays_unknown_and_is_said() {
    let table = "date,mm\n2019-01-01,T\n2019-01-02,-99\n2019-01-03,\n2019-01-04,0\n2019-01-09,3\n2019-01-09,3\n2019-01-10,512\n";
    let (record, findings) = read_rain("rain.csv", table.as_bytes(), None);
    assert_eq!(errors(&findings), []);
    assert_eq!(record.on(day("2019-01-01")), Some(0.0), "a trace");
    for unknown in ["2019-01-02", "2019-01-03", "2019-01-05", "2019-01-08"] {
        assert_eq!(record.on(day(unknown)), None, "{unknown}");
    }
    let said: Vec<(Severity, u32, &str)> = findings
        .iter()
        .map(|finding| (finding.severity, finding.place.line.unwrap(), finding.message.as_str()))
        .collect();
    insta::assert_debug_snapshot!(said);
}

#[test]
fn the_same_day_twice_is_an_error_where_the_amounts_differ() {
    let table = "date,mm\n2019-01-01,1\n2019-01-01,2\n2019-01-02,-1\n2019-01-03,12 mm\n2019-02-29,1\nx\n";
    let (_, findings) = read_rain("rain.csv", table.as_bytes(), None);
    let lines: Vec<u32> = errors(&findings).into_iter().map(|(line, _)| line).collect();
    assert_eq!(lines, [3, 4, 5, 6, 7]);
    assert!(findings.iter().all(|finding| finding.place.file.as_deref() == Some("rain.csv")));
}

/// A decimal comma in a table parted by commas would be two cells.
#[test]
fn a_comma_is_a_decimal_only_where_it_does_not_part_cells() {
    let (record, findings) = read_rain("rain.csv", b"date;mm\n2019-01-01;1,5\n", None);
    assert_eq!((record.on(day("2019-01-01")), errors(&findings).len()), (Some(1.5), 0));
    let (_, findings) = read_rain("rain.csv", b"date,mm\n2019-01-01,\"1,5\"\n", None);
    assert_eq!(errors(&findings).len(), 1);
}

/// What stands above the row that names the columns is a title; rows keep their numbers in the file.
#[test]
fn titles_and_headings_as_people_write_them() {
    for table in [
        "Rainfall at Kisima,,\nobserver: N. Baraka,,\n\nDate,Rain (mm),Remarks\n2019-04-03,1.5,\n2019-04-30,2,\n",
        "sep=;\nKisima\nDATE;RAINFALL mm\n03/04/2019;1,5\n30/04/2019;2\n",
        "\u{feff}Station\tKisima\r\nYear\tMonth\tDay\tDaily rainfall [mm/day]\r\n2019\t4\t3\t1.5\r\n2019\t4\t30\t2\r\n",
        "Day date,Rainfall amount in millimetres\n2019-04-03,1.5\n2019-04-30,2\n",
        "\"Date\n(observed)\",x\nDate,\"Rain\n(mm)\"\n2019-04-03,1.5\n2019-04-30,2\n",
        "Year/Month/Day,Precip_mm\n2019/04/03,1.5\n2019/04/30,2\n",
        // Here no row tells day from month; the heading does.
        "Date (dd/mm/yyyy),Rain(mm)\n3/4/2019,1.5\n3/5/2019,2\n",
        "mm/dd/yyyy,mm\n4/3/2019,1.5\n5/3/2019,2\n",
    ] {
        let (record, findings) = read_rain("rain.csv", table.as_bytes(), None);
        assert_eq!(errors(&findings), [], "{table}");
        assert_eq!(record.on(day("2019-04-03")), Some(1.5), "{table}");
        let second = [day("2019-04-30"), day("2019-05-03")];
        assert!(second.into_iter().any(|day| record.on(day) == Some(2.0)), "{table}");
    }
    let broken = "Kisima\n\nPrinted,2019-05-01\nDate,Rain (mm)\n2019-04-03,x\n\n\n2019-04-31,2\n2019-05-01\n2019-04-04,1\n2019-04-04,2\n";
    let (_, findings) = read_rain("rain.csv", broken.as_bytes(), None);
    let lines: Vec<u32> = errors(&findings).into_iter().map(|(line, _)| line).collect();
    assert_eq!(lines, [5, 8, 9, 11], "{findings:?}");
    assert!(errors(&findings)[3].1.contains("row 10"), "{findings:?}");
}

/// A heading that could mean something else is not taken for rain in millimetres.
#[test]
fn headings_that_mean_something_else_are_not_taken() {
    for heading in [
        "Rain (in)",
        "Rainfall (inches)",
        "Rain days",
        "Rain gauge",
        "Rain cm",
        "Max rain",
        "mm Hg",
        "Rain in",
    ] {
        let table = format!("Kisima\nDate,{heading}\n2019-04-03,1.5\n");
        let (_, findings) = read_rain("rain.csv", table.as_bytes(), None);
        let told = errors(&findings);
        assert_eq!(told.len(), 1, "{heading}: {findings:?}");
        assert_eq!(told[0].0, 2, "{heading}: the row that comes nearest");
        assert!(told[0].1.contains(heading), "{heading}: {told:?}");
    }
    // Two columns of rain: which is meant?
    let (_, findings) = read_rain("rain.csv", b"Date,Rain (mm),Precipitation\n2019-04-03,1.5,2\n", None);
    let told = errors(&findings);
    assert_eq!((told.len(), told[0].0), (1, 1), "{findings:?}");
    assert!(told[0].1.contains("Rain (mm)") && told[0].1.contains("Precipitation"), "{told:?}");
    // Neither a date nor rain anywhere.
    let (_, findings) = read_rain("rain.csv", b"a,b\n1,2\n", None);
    assert_eq!(errors(&findings).len(), 1);
    assert_eq!(errors(&findings)[0].0, 1);
    // Days above the row with the names, as a sorted sheet has them, are not lost in silence.
    let (_, findings) = read_rain("rain.csv", b"2019-04-03,1.5\n2019-04-04,2\nDate,mm\n", None);
    assert!(errors(&findings).len() >= 2, "{findings:?}");
    // The heading's layout does not hide rows that cannot be in it.
    let (_, findings) = read_rain("rain.csv", b"Date (dd/mm/yyyy),mm\n3/4/2019,1\n4/30/2019,2\n", None);
    assert_eq!(errors(&findings).iter().map(|(line, _)| *line).collect::<Vec<_>>(), [3], "{findings:?}");
}

#[test]
fn temperatures_are_headed_in_words_too() {
    let table = "Date,Max temp (°C),Minimum temperature (ºC)\n2019-04-03,31,19\n";
    let (days, findings) = kabla::case::read_temperatures("t.csv", table.as_bytes(), None);
    assert_eq!(errors(&findings), []);
    assert_eq!((days[0].1.0, days[0].2.0), (31.0, 19.0));
    let fahrenheit = "Date,Tmax (F),Tmin (F)\n2019-04-03,88,66\n";
    let (_, findings) = kabla::case::read_temperatures("t.csv", fahrenheit.as_bytes(), None);
    assert_eq!(errors(&findings).len(), 1, "{findings:?}");
}
