//! Whom a case is about, and what is to be planted.

use super::area;
use super::given::{required, required_if};
use crate::finding::Code;
use crate::plan::field::{Field, Spacing};
use crate::plan::group::Member;
use crate::plan::multiply::Sizing;
use crate::plan::{Assumptions, AtHand, Kind, Litres, Metres, SquareMetres};
use crate::toml_reader::TomlTable;

/// What a case says of them.
pub(super) struct Fields {
    pub(super) kind: Option<Kind>,
    pub(super) field: Option<Field>,
    pub(super) farms: Vec<Member>,
    pub(super) at_hand: Option<AtHand>,
    pub(super) sizes: Vec<SquareMetres>,
    pub(super) sizing: Sizing,
    pub(super) confidence_percent: Option<f64>,
}

/// The fields of a zone's table where the case names none, m².
const ZONE_FIELDS: [f64; 5] = [100.0, 250.0, 500.0, 1000.0, 2500.0];

pub(super) fn read(root: &TomlTable<'_>, assumptions: &Assumptions) -> Fields {
    let group = root.table("group");
    let members = group.whole("members", 1..=100_000);
    let zone = root.table("zone");
    let sizes = area::read_list(&zone);
    let table = root.table("field");
    let usual = Spacing::Ridges {
        between: Metres(assumptions.ridge_spacing_m),
        along: Metres(assumptions.plant_spacing_m),
    };
    let (spacing, taken) = read_spacing(&table, usual, assumptions);
    let farms: Vec<_> = root.tables("farm").into_iter().collect();
    let names_farms = root.has("farm");
    let kind = read_kind(root, &group, members, farms.len());
    let at_hand = root.table("at_hand");
    let stock = read_at_hand(&at_hand, spacing);
    let counted_forward = stock.is_some() || at_hand.is_given();

    let measured = !area::given(&table).is_empty() || SIDES.iter().any(|side| table.has(side));
    let may_lack = counted_forward || names_farms;
    let sharing = match kind {
        Some(Kind::Group { members }) => members,
        _ => 1,
    };
    let field =
        if measured || (table.is_given() && !may_lack) { read_field(&table, spacing, sharing) } else { None };
    if let (false, false, Some(taken)) = (kind == Some(Kind::Zone), names_farms, &taken) {
        let key = if table.is_given() { "field" } else { "at_hand" };
        let message = format!("the spacing is not given in full: {}", taken.in_words());
        root.note(Code::SPACING_TAKEN, key, message, HOW_TO_SPACE);
    }
    match kind {
        Some(Kind::Zone) if measured => {
            root.problem(
                Code::NO_USE,
                "field",
                "a zone has no field",
                "take its sizes out, or write kind = \"farm\"",
            );
        }
        Some(Kind::Zone) if at_hand.is_given() => {
            root.problem(
                Code::NO_USE,
                "at_hand",
                "a zone has nothing at hand",
                "take it out, or write kind = \"farm\"",
            );
        }
        Some(Kind::Farm | Kind::Group { .. }) if !table.is_given() && !may_lack => {
            root.missing("field", &format!("add [field] with {}, or with length_m and width_m", area::HOW));
        }
        _ => {}
    }
    if measured && names_farms {
        root.problem(
            Code::CONFLICT,
            "farm",
            "a common field and farms with fields both stand here",
            "keep one of them",
        );
    }
    if zone.is_given() && !matches!(kind, Some(Kind::Zone) | None) {
        root.problem(
            Code::NO_USE,
            "zone",
            "only a zone has a table [zone]",
            "write kind = \"zone\", or take it out",
        );
    }
    let farms = read_farms(root, farms, (spacing, taken), assumptions);
    if !farms.is_empty() && matches!(kind, Some(Kind::Farm | Kind::Zone)) {
        root.problem(Code::NO_USE, "farm", "only a group has farms", "write kind = \"group\"");
    }

    let sizings = [
        ("in-time", Sizing::InTime),
        ("bed-season", Sizing::BedSeason),
        ("first-planting", Sizing::FirstPlanting),
    ];
    let sizing = table.choice("sizing", &sizings).unwrap_or_default();
    let confidence_percent = table.number("sure_percent", 1.0..=99.0);
    for table in [group, zone, table, at_hand] {
        table.finish();
    }
    let sizes = sizes.unwrap_or_else(|| ZONE_FIELDS.map(SquareMetres).to_vec());
    Fields { kind, field, farms, at_hand: stock, sizes, sizing, confidence_percent }
}

fn read_kind(
    root: &TomlTable<'_>,
    group: &TomlTable<'_>,
    members: Option<u32>,
    farms: usize,
) -> Option<Kind> {
    // Farms that are named need not be counted.
    let counted = u32::try_from(farms).ok().filter(|farms| *farms > 0);
    let named = root
        .choice("kind", &[("farm", Kind::Farm), ("group", Kind::Group { members: 0 }), ("zone", Kind::Zone)]);
    let wanted = group.is_given() && counted.is_none();
    let members = required_if(wanted, group, "members", "write how many members: members = 12", members);
    if let (Some(members), Some(farms)) = (members, counted)
        && members != farms
    {
        group.problem(
            Code::MISMATCH,
            "members",
            format!("{farms} farms are named, not {members}"),
            "take members out",
        );
    }
    match (named, group.is_given()) {
        (Some(Kind::Group { .. }), _) if counted.is_some() => counted.map(|members| Kind::Group { members }),
        (Some(Kind::Group { .. }), true) | (None, true) => {
            members.or(counted).map(|members| Kind::Group { members })
        }
        (Some(Kind::Group { .. }), false) => {
            root.problem(
                Code::MISSING_FIELD,
                "kind",
                "a group needs its table [group], or its farms",
                "add [group] with members = …, or a [[farm]] for each",
            );
            None
        }
        (Some(_), true) => {
            root.problem(
                Code::NO_USE,
                "kind",
                "only a group has a table [group]",
                "write kind = \"group\", or take [group] out",
            );
            None
        }
        (Some(kind), false) => Some(kind),
        (None, false) if root.has("kind") => None,
        (None, false) if counted.is_some() => counted.map(|members| Kind::Group { members }),
        (None, false) => Some(Kind::Farm),
    }
}

fn read_at_hand(table: &TomlTable<'_>, spacing: Option<Spacing>) -> Option<AtHand> {
    let roots = table.whole("roots", 0..=10_000_000);
    let plants = table.whole("plants", 0..=10_000_000);
    let bed = table.number("bed_area_m2", 0.0..=100_000.0);
    let sand = table.number("sand_litres", 0.0..=1e6);
    if !table.is_given() {
        return None;
    }
    if !["roots", "plants", "bed_area_m2", "sand_litres"].iter().any(|key| table.has(key)) {
        table.missing("roots", "write roots = …, plants = …, bed_area_m2 = … or sand_litres = …");
    }
    let (bed, sand) = (bed.map(SquareMetres), sand.map(Litres));
    Some(AtHand { roots, plants, bed, sand, spacing: spacing? })
}

fn read_farms(
    root: &TomlTable<'_>,
    tables: Vec<TomlTable<'_>>,
    (usual, usual_taken): (Option<Spacing>, Option<Taken>),
    assumptions: &Assumptions,
) -> Vec<Member> {
    let mut farms: Vec<Member> = Vec::with_capacity(tables.len());
    let count = tables.len();
    let mut taken: Vec<(Taken, usize)> = Vec::new();
    for table in tables {
        let name = required(&table, "name", "write the farm's name: name = \"…\"", table.text("name"));
        let (spacing, own_taken) = match usual {
            Some(usual) => read_spacing(&table, usual, assumptions),
            None => (None, None),
        };
        // What the common [field] says is said.
        let unsaid = match own_taken {
            Some(Taken::All(_)) => usual_taken,
            own => own,
        };
        match taken.iter_mut().find(|(other, _)| Some(*other) == unsaid) {
            Some((_, farms)) => *farms += 1,
            None => taken.extend(unsaid.map(|unsaid| (unsaid, 1))),
        }
        let field = read_field(&table, spacing, 1);
        if let Some(name) = &name
            && farms.iter().any(|farm| farm.name == *name)
        {
            table.problem(Code::DUPLICATE, "name", "another farm has the same name", "tell the two apart");
        }
        table.finish();
        farms.extend(name.zip(field).map(|(name, field)| Member { name, field }));
    }
    for (taken, farms) in taken {
        let message =
            format!("the spacing is not given in full for {farms} of {count} farms: {}", taken.in_words());
        root.note(Code::SPACING_TAKEN, "farm", message, HOW_TO_SPACE);
    }
    farms
}

/// The sides of a field.
const SIDES: [&str; 2] = ["length_m", "width_m"];

/// A field that so many farms share.
fn read_field(table: &TomlTable<'_>, spacing: Option<Spacing>, farms: u32) -> Option<Field> {
    let sides = 0.1..=10_000.0;
    let areas = 0.01..=1_000_000.0;
    let area = area::read(table, farms);
    let length = table.number("length_m", sides.clone());
    let width = table.number("width_m", sides);
    let has_side = SIDES.iter().any(|side| table.has(side));
    match (area::given(table).first(), has_side) {
        (Some(field), true) => {
            table.problem(
                Code::CONFLICT,
                field,
                format!("{field} and length_m or width_m both stand here"),
                "keep the area, or the two sides",
            );
            None
        }
        (Some(_), false) => Some(Field::of(area?, spacing?)),
        (None, true) => {
            let length = required(table, "length_m", "write both sides", length);
            let width = required(table, "width_m", "write both sides", width);
            let (length, width) = (length?, width?);
            if !areas.contains(&(length * width)) {
                let message = format!("{length} m by {width} m is more than any field");
                table.problem(Code::OUT_OF_RANGE, "length_m", message, "check the two sides");
                return None;
            }
            let sides = Some((Metres(length), Metres(width)));
            Some(Field { sides, ..Field::of(SquareMetres(length * width), spacing?) })
        }
        (None, false) => {
            table.missing("area_m2", &format!("write {}, or length_m and width_m", area::HOW));
            None
        }
    }
}

/// How to say how cuttings stand.
const HOW_TO_SPACE: &str =
    "write ridge_spacing_m and plant_spacing_m, or mound_spacing_m and cuttings_per_mound";

/// What was taken as usual, since the case does not say it.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Taken {
    /// All of it.
    All(Spacing),
    /// Metres from ridge to ridge.
    Between(f64),
    /// Metres along the ridge.
    Along(f64),
    /// Cuttings on a mound.
    OnMound(f64),
}

impl Taken {
    fn in_words(self) -> String {
        match self {
            Taken::All(Spacing::Ridges { between, along }) => {
                format!("ridges {} m apart with a cutting every {} m are taken", between.0, along.0)
            }
            Taken::All(Spacing::Mounds { between, cuttings }) => {
                format!("mounds {} m apart with {cuttings} cuttings on each are taken", between.0)
            }
            Taken::Between(metres) => format!("ridges {metres} m apart are taken"),
            Taken::Along(metres) => format!("a cutting every {metres} m along the ridge is taken"),
            Taken::OnMound(cuttings) => format!("{cuttings} cuttings on each mound are taken"),
        }
    }
}

/// How cuttings stand: as the table says, or as usual where it says nothing; and what was taken as usual.
fn read_spacing(
    table: &TomlTable<'_>,
    usual: Spacing,
    assumptions: &Assumptions,
) -> (Option<Spacing>, Option<Taken>) {
    let metres = |key, range| table.number_or_unit(key, range, &[("centimetres", 0.01)]);
    let ridge = metres("ridge_spacing_m", 0.2..=5.0);
    let along = metres("plant_spacing_m", 0.05..=5.0);
    let mound = metres("mound_spacing_m", 0.2..=5.0);
    let on_mound = table.number("cuttings_per_mound", 1.0..=20.0);
    let mounds = table.has("mound_spacing_m") || table.has("cuttings_per_mound");
    let ridges = table.has("ridge_spacing_m") || table.has("plant_spacing_m");
    match (ridges, mounds) {
        (true, true) => {
            table.problem(
                Code::CONFLICT,
                "mound_spacing_m",
                "ridges and mounds both stand here",
                "keep the ridge and plant spacing, or the mounds",
            );
            (None, None)
        }
        (false, true) => {
            let between = required(table, "mound_spacing_m", "write the metres from mound to mound", mound);
            let usual = assumptions.cuttings_per_mound;
            let spacing = between.map(|between| Spacing::Mounds {
                between: Metres(between),
                cuttings: on_mound.unwrap_or(usual),
            });
            (spacing, (!table.has("cuttings_per_mound")).then_some(Taken::OnMound(usual)))
        }
        (true, false) => {
            let (usual_ridge, usual_along) = (assumptions.ridge_spacing_m, assumptions.plant_spacing_m);
            let spacing = Spacing::Ridges {
                between: Metres(ridge.unwrap_or(usual_ridge)),
                along: Metres(along.unwrap_or(usual_along)),
            };
            let taken = match (table.has("ridge_spacing_m"), table.has("plant_spacing_m")) {
                (true, true) => None,
                (true, false) => Some(Taken::Along(usual_along)),
                _ => Some(Taken::Between(usual_ridge)),
            };
            (Some(spacing), taken)
        }
        (false, false) => (Some(usual), Some(Taken::All(usual))),
    }
}
