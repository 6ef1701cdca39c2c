//! Words that depend on a plural category.

use icu_locale_core::LanguageIdentifier;
use icu_plurals::{PluralCategory, PluralRuleType, PluralRules, PluralRulesPreferences};

use super::fault::{Fault, fault};

/// The plural rules of a language.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Plurals {
    language: PluralRulesPreferences,
}

/// `$(cardinal,one{…}other{…})$`
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Choice {
    plurals: Plurals,
    kind: PluralRuleType,
    texts: Vec<(PluralCategory, String)>,
    other: String,
}

impl Plurals {
    pub(super) fn of(tag: &str) -> Option<Plurals> {
        let language = LanguageIdentifier::try_from_str(tag).ok()?;
        Some(Plurals { language: (&language).into() })
    }

    // Made anew for each use, as ICU's rules cannot be shared between threads; it is a look-up in compiled data.
    fn rules(self, kind: PluralRuleType) -> Option<PluralRules> {
        PluralRules::try_new(self.language, kind.into()).ok()
    }
}

impl Choice {
    /// Reads what stands between `$(` and `)$`.
    ///
    /// A category that the language does not have is refused: either its text could never be said, or nothing is known
    /// of the language's plurals and every number would be said as `other`.
    pub(super) fn read(text: &str, plurals: Plurals) -> Result<Choice, Fault> {
        let hint = "write `$(cardinal,one{…}other{…})$` with the plural categories of the language";
        let (kind, mut rest) = text.split_once(',').unwrap_or((text, ""));
        let kind = match kind.trim() {
            "cardinal" => PluralRuleType::Cardinal,
            "ordinal" => PluralRuleType::Ordinal,
            other => return Err(fault(format!("`{other}` is neither `cardinal` nor `ordinal`"), hint)),
        };
        let rules = plurals.rules(kind).ok_or_else(|| fault("there are no plural rules at hand", hint))?;
        let mut texts: Vec<(PluralCategory, String)> = Vec::new();
        while !rest.trim().is_empty() {
            let branch =
                rest.split_once('{').and_then(|(name, rest)| Some((name.trim(), rest.split_once('}')?)));
            let Some((name, (words, behind))) = branch else {
                return Err(fault(format!("`{}` has no text in braces", rest.trim()), hint));
            };
            if words.contains(['{', '#', '\'']) {
                return Err(fault(
                    format!("`{words}` is not plain text"),
                    "write words only between the braces",
                ));
            }
            let category = PluralCategory::get_for_cldr_string(name)
                .filter(|category| rules.categories().any(|known| known == *category))
                .ok_or_else(|| fault(format!("the language has no plural category `{name}`"), hint))?;
            if texts.iter().any(|(known, _)| *known == category) {
                return Err(fault(format!("`{name}` is there twice"), "keep one of the two"));
            }
            texts.push((category, words.to_owned()));
            rest = behind;
        }
        let other = texts.iter().position(|(category, _)| *category == PluralCategory::Other);
        let (_, other) = texts.remove(other.ok_or_else(|| fault("there is no `other{…}`", hint))?);
        Ok(Choice { plurals, kind, texts, other })
    }

    /// The text that goes with `n`.
    pub(super) fn text_for(&self, n: u64) -> &str {
        let category = self.plurals.rules(self.kind).map(|rules| rules.category_for(n));
        let text = self.texts.iter().find(|(known, _)| Some(*known) == category);
        text.map_or(&self.other, |(_, text)| text)
    }

    /// All texts.
    pub(super) fn texts(&self) -> impl Iterator<Item = &str> {
        self.texts.iter().map(|(_, text)| text).chain([&self.other]).map(String::as_str)
    }
}
