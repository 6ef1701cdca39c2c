//! A case, and after a line `---` the rainfall record that it names.
#![no_main]

use std::io;
use std::sync::LazyLock;

use kabla::data::Embedded;
use kabla::finding::Finding;
use kabla::language::Pack;
use kabla::plan::Assumptions;
use libfuzzer_sys::{fuzz_mutator, fuzz_target, fuzzer_mutate};

/// The record of a case that brings none: two years are enough for onsets, and quick to read.
static RAIN: LazyLock<String> = LazyLock::new(|| {
    let whole = include_str!("../../examples/rain-eastern-lowlands.csv");
    whole.split_inclusive('\n').take(1 + 2 * 365).collect()
});

/// Every plan can be told in English.
static ENGLISH: LazyLock<Pack> = LazyLock::new(|| Pack::load(&Embedded, "en").expect("the English pack"));

fuzz_target!(|data: &[u8]| {
    let Ok(input) = std::str::from_utf8(data) else { return };
    let (text, rain) = input.split_once("\n---\n").unwrap_or((input, &RAIN));
    let open = |_: &str| -> io::Result<Vec<u8>> { Ok(rain.as_bytes().to_vec()) };
    let (case, findings) = match kabla::case::read("case.toml", text, &open) {
        Ok(read) => read,
        Err(findings) => return must_say_why(&findings),
    };
    assert!(!findings.iter().any(Finding::is_error), "a case was read in spite of {findings:?}");
    assert!(text.parse::<toml::Table>().is_ok(), "a case was read that is no TOML: {findings:?}");
    let plan = match kabla::plan::make(&case) {
        Ok(plan) => plan,
        Err(refusal) => {
            ENGLISH.write_remark(&refusal).expect("words for a refusal");
            return;
        }
    };
    for amount in &plan.now.amounts.0 {
        // The sign tells -0 as well, which would be printed as such.
        assert!(amount.value.is_finite() && amount.value.is_sign_positive(), "{amount:?}");
        assert!(amount.range.is_none_or(|(least, most)| 0.0 <= least && least <= most), "{amount:?}");
        let why = ENGLISH.write_reason(&amount.why).expect("words for a reason");
        assert!(!why.contains("NaN") && !why.contains("inf"), "{amount:?}");
    }
    assert!(plan.now.steps.iter().all(|step| step.when.from <= step.when.to), "{:?}", plan.now.steps);
    assert!(plan.now.steps.is_sorted_by_key(|step| step.when.from), "{:?}", plan.now.steps);
    for remark in &plan.remarks {
        ENGLISH.write_remark(remark).expect("words for a remark");
        ENGLISH.say_remark(remark).expect("spoken words for a remark");
    }
});

fn must_say_why(findings: &[Finding]) {
    assert!(findings.iter().any(Finding::is_error), "nothing says why there is no plan");
    for finding in findings {
        assert!(!finding.to_string().is_empty());
    }
}

/// Values that some field takes at its end, or just beyond it.
const VALUES: [&str; 32] = [
    "0",
    "1",
    "2",
    "5",
    "12",
    "90",
    "99",
    "500",
    "-66.5",
    "0.01",
    "0.05",
    "0.2",
    "5.0",
    "10000",
    "100000",
    "1e6",
    "1e7",
    "2027-05-25",
    "2027-12-31",
    "2028-02-29",
    "2199-12-31",
    "\"02-29\"",
    "\"12-31\"",
    "\"late\"",
    "\"box\"",
    "\"pot\"",
    "\"first-planting\"",
    "\"zone\"",
    "\"group\"",
    "\"harvest\"",
    "\"plant-bed\"",
    "[20, 30, 50]",
];

/// Lines of the root, which stand before all tables.
const OF_ROOT: [&str; 6] = [
    "today = 2027-06-01",
    "today = 2027-10-20",
    "done = \"harvest\"",
    "done = \"monthly-check\"",
    "kind = \"zone\"",
    "harvest_until = 2027-06-09",
];

/// Tables, which may stand after all others.
const TABLES: [&str; 15] = [
    "[at_hand]\nroots = 7\nplants = 4\nbed_area_m2 = 9\nsand_litres = 20",
    "[group]\nmembers = 12",
    "[[event]]\nname = \"the maize feast\"\ndate = 2027-10-01",
    "[zone]\nfield_sizes_m2 = [1, 450, 1e6]",
    "[[farm]]\nname = \"B\"\nlength_m = 30\nwidth_m = 15\nmound_spacing_m = 1",
    "[[container]]\nshape = \"round\"\ntop_width_cm = 60\nbottom_width_cm = 50\ndepth_cm = 40\ncount = 2",
    "[[container]]\nshape = \"box\"\nlength_cm = 90\nwidth_cm = 60\ndepth_cm = 50",
    "[[container]]\nshape = \"pot\"\nband = [{ height_cm = 20, width_cm = 30 }, { height_cm = 20, width_cm = 50 }]",
    "[[kept]]\ndate = 2027-06-24\nhealthy = 38\nthrown_away = 2",
    "[climate]\ntmax_c = 32\ntmin_c = 20\nrain_mm = 40\nhumidity_percent = 60\nwind_m_s = 2\nsunshine_h = 8",
    "[climate]\ntemperature_record = \"days.csv\"",
    "[bed]\nsoil = \"clay\"",
    "[hands]\npeople = 2\nhours_per_day = 1.5",
    "[water]\nsource = \"the dug well\"\nlitres_per_day = 60\nstored_litres = 900",
    "[variety]\nmaturity = \"late\"\ncarotene_ug_per_100g = 9000",
];

// A changed byte mostly breaks the TOML or names no field, and the planner is never reached:
// every other change keeps the layout and changes what is said.
fuzz_mutator!(|data: &mut [u8], size: usize, max_size: usize, seed: u32| {
    let varied = match data.get(..size).map(std::str::from_utf8) {
        Some(Ok(text)) if seed % 2 == 0 => vary(text, seed / 2),
        _ => None,
    };
    match varied {
        Some(text) if text.len() <= max_size => {
            data[..text.len()].copy_from_slice(text.as_bytes());
            text.len()
        }
        _ => fuzzer_mutate(data, size, max_size),
    }
});

/// The text with another value in a field, another assumption, or a line or table more or fewer;
/// `None` where there is nothing to vary.
fn vary(text: &str, seed: u32) -> Option<String> {
    let mut state = u64::from(seed) + 1;
    let mut pick = move |count: usize| {
        // Knuth's generator: all that is wanted are different numbers from one seed.
        state = state.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407);
        ((state >> 33) as usize).checked_rem(count)
    };
    let (case, record) = match text.split_once("\n---\n") {
        Some((case, record)) => (case, Some(record)),
        None => (text, None),
    };
    let mut lines: Vec<String> = case.lines().map(str::to_owned).collect();
    match pick(8)? {
        0 => lines.insert(0, OF_ROOT[pick(OF_ROOT.len())?].to_owned()),
        1 => lines.push(TABLES[pick(TABLES.len())?].to_owned()),
        2 => drop(lines.remove(pick(lines.len())?)),
        3 | 4 => {
            let entry = &Assumptions::TABLE[pick(Assumptions::TABLE.len())?];
            let value = [entry.least, entry.greatest, (entry.least + entry.greatest) / 2.0][pick(3)?];
            lines.retain(|line| !line.starts_with(entry.name));
            let head = lines.iter().position(|line| line == "[assumptions]").unwrap_or_else(|| {
                lines.push("[assumptions]".to_owned());
                lines.len() - 1
            });
            lines.insert(head + 1, format!("{} = {value}", entry.name));
        }
        _ => {
            let fields: Vec<usize> = (0..lines.len()).filter(|at| lines[*at].contains('=')).collect();
            let line = &mut lines[fields[pick(fields.len())?]];
            let key = line.split('=').next()?.trim().to_owned();
            *line = format!("{key} = {}", VALUES[pick(VALUES.len())?]);
        }
    }
    let case = lines.join("\n");
    Some(record.map_or(format!("{case}\n"), |record| format!("{case}\n---\n{record}")))
}
