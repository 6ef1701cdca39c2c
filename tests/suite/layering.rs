//! Which module of the library may depend on which.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// Modules with those they may import. Findings, the error and the data trait are for all but the planner,
/// which knows nothing of files.
const DEPENDENCIES: &[(&str, &[&str])] = &[
    ("plan", &[]),
    ("case", &["plan", "toml_reader"]),
    ("guidance", &["plan"]),
    ("language", &["guidance", "plan", "toml_reader"]),
    ("sheet", &["language", "guidance"]),
    ("voice", &["language", "guidance", "toml_reader"]),
    ("app", &["case", "plan", "guidance", "language", "sheet", "voice"]),
    ("cli", &["app"]),
    ("catalogue", &[]),
    ("toml_reader", &[]),
    ("finding", &[]),
    ("data", &[]),
    ("error", &["language", "sheet", "voice"]),
];
const FOR_ALL: &[&str] = &["catalogue", "finding", "data", "error"];
const FOR_THE_PLANNER: &[&str] = &["catalogue"];

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
    found
}

/// The first names after `crate::`, also inside braces.
fn imports(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for (at, _) in text.match_indices("crate::") {
        let rest = &text[at + "crate::".len()..];
        let name =
            |text: &str| text.chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect::<String>();
        if let Some(group) = rest.strip_prefix('{') {
            let mut depth = 0;
            let mut item = String::new();
            for c in group.chars() {
                match c {
                    '{' => depth += 1,
                    '}' if depth == 0 => break,
                    '}' => depth -= 1,
                    ',' if depth == 0 => found.push(name(std::mem::take(&mut item).trim())),
                    _ => item.push(c),
                }
            }
            found.push(name(item.trim()));
        } else {
            found.push(name(rest));
        }
    }
    found.retain(|name| !name.is_empty());
    found
}

/// Everything in `text` that `dependencies` do not allow for `module`.
fn strays(module: &str, text: &str, dependencies: &BTreeMap<&str, &[&str]>) -> Vec<String> {
    let code: String =
        text.lines().filter(|line| !line.trim_start().starts_with("//")).collect::<Vec<_>>().join("\n");
    let allowed = dependencies
        .get(module)
        .copied()
        .unwrap_or_else(|| panic!("the module {module} has no dependencies listed"));
    let for_all = if module == "plan" { FOR_THE_PLANNER } else { FOR_ALL };
    let fine = |name: &String| {
        name == module || allowed.contains(&name.as_str()) || for_all.contains(&name.as_str())
    };
    imports(&code).into_iter().filter(|name| !fine(name)).collect()
}

#[test]
fn imports_follow_the_dependencies() {
    let dependencies: BTreeMap<&str, &[&str]> = DEPENDENCIES.iter().copied().collect();
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut wrong = Vec::new();
    let mut seen = 0;
    for path in sources(&root) {
        let inside = path.strip_prefix(&root).unwrap();
        let module = inside
            .components()
            .next()
            .unwrap()
            .as_os_str()
            .to_str()
            .unwrap()
            .trim_end_matches(".rs")
            .to_owned();
        if matches!(module.as_str(), "lib" | "main") {
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        seen += imports(&text).len();
        wrong.extend(
            strays(&module, &text, &dependencies)
                .into_iter()
                .map(|name| format!("{} imports {name}", inside.display())),
        );
    }
    assert!(wrong.is_empty(), "dependencies go one way only:\n{}", wrong.join("\n"));
    assert!(seen > 50, "only {seen} imports seen: the scan is broken");
}

#[test]
fn a_forbidden_import_is_seen() {
    let dependencies: BTreeMap<&str, &[&str]> = DEPENDENCIES.iter().copied().collect();
    assert_eq!(strays("plan", "use crate::language::Pack;", &dependencies), ["language"]);
    assert_eq!(
        strays("sheet", "use crate::{voice::Bank, language::{Pack, Status}};", &dependencies),
        ["voice"]
    );
    assert_eq!(strays("cli", "fn f(x: crate::plan::Plan) {}", &dependencies), ["plan"]);
    assert_eq!(strays("plan", "use crate::finding::Finding;", &dependencies), ["finding"]);
    assert!(strays("case", "// crate::voice\nuse crate::finding::Finding;", &dependencies).is_empty());
}

/// Each library is named in one module only, so that it can be changed there.
#[test]
fn libraries_stay_in_their_modules() {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src");
    let modules = [
        ("fluent_bundle", "language/wording"),
        ("fluent_syntax", "language/wording"),
        ("icu_plurals", "language/numerals"),
        ("tera::", "sheet"),
        ("typst", "sheet"),
        ("hound::", "voice"),
        ("ebur128::", "voice"),
        ("symphonia::", "voice"),
        ("realfft::", "voice"),
        ("png::", "voice"),
        ("nnnoiseless::", "voice"),
        ("clap::", "cli"),
    ];
    for path in sources(&root) {
        let inside = path.strip_prefix(&root).unwrap();
        let text = fs::read_to_string(&path).unwrap();
        for (library, module) in modules {
            assert!(
                !text.contains(library) || inside.starts_with(module),
                "{} names {library}, which belongs to {module}",
                inside.display()
            );
        }
    }
}
