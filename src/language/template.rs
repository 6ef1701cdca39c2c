//! The files of a new pack: every text to translate, with what a translator must know above it.

use unic_langid::LanguageIdentifier;

use super::glossary::{self, Term};
use super::labels::most_letters;
use super::names;
use super::pack::wanted;
use super::texts::{SOURCE, text_of};
use super::wording::{Unit, units};
use crate::data::{Data, Embedded};
use crate::guidance::ValueInfo;
use crate::plan::wordings;

/// Shown beside English, for those who read it better.
const BESIDE: &str = "sw";

/// The files of a new pack, by name. English texts stand where translations belong.
pub fn new_pack(data: &dyn Data, tag: &LanguageIdentifier) -> Vec<(&'static str, String)> {
    let (terms, _) = glossary::load(data, SOURCE);
    let written = texts(data, "written.ftl", tag, &terms);
    let spoken = texts(data, "spoken.ftl", tag, &terms);
    let pack = format!(
        "# The pack of {tag}.\ntag = \"{tag}\"\n# The language's name in itself.\nname = \"{tag}\"\n# The script's code (ISO 15924), and which way it runs: ltr or rtl.\nscript = \"Latn\"\ndirection = \"ltr\"\n# gregorian, ethiopic or both.\ncalendar = \"gregorian\"\n# draft: nobody fluent has read it; read: a fluent speaker has; approved: it may go out.\nstatus = \"draft\"\nvoice = \"stand-in\"\n\n[numbers]\n# The signs in numbers such as 1,500.5, and how many digits must stand before the first sign.\ngroup = \",\"\ndecimal = \".\"\nleast_before_group = 1\n\n# Letters that text messages may replace to stay cheap, e.g. replace = [\"ŵ w\"].\n[sms]\nreplace = []\n"
    );
    let numbers = "# Number words in the Unicode rule syntax (UTS #35, part 3). Start from the rules of CLDR where your language has them.\n# A rule set for each form that your sentences ask for with SAY, e.g. for noun classes or genders.\n#\n# 0 to 9 are listed one after the other; \"20: twenty[-→→];\" says the tens and, if there is one, the unit after them.\n%cardinal:\n0: =#,##0=; # no words yet: write such as 0: zero; one; two; and so on to nine, and this rule behind them from where words end\n%day:\n0: =#,##0=; # days of the month\n%ordinal:\n0: =#,##0=;\n".replace('→', ">");
    vec![
        ("pack.toml", pack),
        ("written.ftl", written),
        ("spoken.ftl", spoken),
        ("numbers.rbnf", numbers),
        (glossary::FILE, glossary::new_file(&terms)),
    ]
}

fn texts(data: &dyn Data, file: &str, tag: &LanguageIdentifier, terms: &[Term]) -> String {
    let source = units(&text_of(data, SOURCE, file).unwrap_or_default());
    let other = data
        .read(&format!("locales/{BESIDE}/{file}"))
        .or_else(|| Embedded.read(&format!("locales/{BESIDE}/{file}")));
    let other = units(&other.map(|bytes| String::from_utf8_lossy(&bytes).into_owned()).unwrap_or_default());
    let mut text = format!(
        "### {tag}, {file}: write your translation over each English text. What stands behind # is for you, and is not shown to anybody.\n### Leave {{ … }} in place, moved to where your language wants it. Where you doubt, write a line: # doubt: why\n"
    );
    let language = tag.to_string();
    let wanted = wanted(file);
    let needed =
        |id: &String| !names::is_name(id) || wanted.contains(id) && names::cldr(&language, id).is_none();
    for unit in source.iter().filter(|unit| !unit.id.contains('.') && needed(&unit.id)) {
        let attributes: Vec<&Unit> = source
            .iter()
            .filter(|of| of.id.strip_prefix(&unit.id).is_some_and(|rest| rest.starts_with('.')))
            .collect();
        text.push('\n');
        for part in [unit].into_iter().chain(attributes.iter().copied()) {
            text.push_str(&help(part, &other));
        }
        let words: String =
            [unit].into_iter().chain(attributes.iter().copied()).map(|of| of.text.as_str()).collect();
        text.push_str(&glossary::help(terms, &words));
        text.push_str(&format!("{} = {}\n", unit.id, unit.text));
        for attribute in attributes {
            let name = attribute.id.rsplit('.').next().unwrap_or_default();
            text.push_str(&format!("    .{name} = {}\n", attribute.text.replace('\n', "\n    ")));
        }
    }
    text.push_str(&names_at_hand(&language, file));
    text
}

/// The names of months and weekdays that need no translation.
fn names_at_hand(language: &str, file: &str) -> String {
    let names: Vec<String> = names::messages(language, file)
        .iter()
        .map(|(_, message)| format!("\n# {}\n", message.trim_end().replace('\n', "\n# ")))
        .collect();
    if names.is_empty() {
        return String::new();
    }
    format!(
        "\n## Names of months and weekdays are there already, from Unicode CLDR. To have others, take the # away from a message and change it.\n{}",
        names.concat()
    )
}

/// What a translator must know of a text.
fn help(unit: &Unit, other: &[Unit]) -> String {
    let mut help = String::new();
    let part = unit.id.split_once('.').map_or(String::new(), |(_, name)| format!(".{name} "));
    let commented = |text: &str| text.replace('\n', "\n#     ");
    help.push_str(&format!("# {part}en: {}\n", commented(&unit.text)));
    if let Some(beside) = other.iter().find(|of| of.id == unit.id) {
        help.push_str(&format!("# {part}{BESIDE}: {}\n", commented(&beside.text)));
    }
    for variable in &unit.variables {
        let code = unit.id.split('.').next().unwrap_or(&unit.id);
        if let Some(meaning) = of_plan(variable, |of| of == code) {
            help.push_str(&format!("#     ${variable}: {meaning}\n"));
        } else if let Some(ValueInfo { name, meaning, example, .. }) = ValueInfo::of(variable) {
            help.push_str(&format!("#     ${name}: {meaning}, e.g. {example}\n"));
        } else if let Some(meaning) = of_plan(variable, |_| true) {
            // Of a message that others refer to.
            help.push_str(&format!("#     ${variable}: {meaning}\n"));
        }
    }
    if let Some(most) = most_letters(&unit.id) {
        help.push_str(&format!("#     at most {most} letters\n"));
    }
    help
}

/// What a value means in the plan's reasons and remarks with such a code.
fn of_plan(variable: &str, code: impl Fn(&str) -> bool) -> Option<String> {
    let values = wordings().filter(|wording| code(wording.code)).flat_map(|wording| wording.values);
    let (_, meaning) = values.into_iter().find(|(name, _)| *name == variable)?;
    let mut letters = meaning.trim_end_matches('.').chars();
    Some(letters.next()?.to_lowercase().chain(letters).collect())
}
