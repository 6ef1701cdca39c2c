//! Which module of the library may depend on which.

mod files;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use files::{Dependencies, Files};

/// Modules with those they may name. Catalogues, findings, the error and the data trait are for all.
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
/// The planner knows nothing of files.
const FOR_THE_PLANNER: &[&str] = &["catalogue"];

pub(crate) fn sources(folder: &Path) -> Vec<PathBuf> {
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

/// The files of the library, by their paths below `src`.
fn library() -> Vec<(String, String)> {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src");
    let inside = |path: &Path| path.strip_prefix(&root).unwrap().to_str().unwrap().to_owned();
    let found = sources(&root).into_iter().map(|path| (inside(&path), fs::read_to_string(&path).unwrap()));
    found.filter(|(path, _)| path != "main.rs").collect()
}

fn files(texts: &[(String, String)]) -> Files {
    Files::read(texts.iter().map(|(path, text)| (path.as_str(), text.as_str())))
}

/// A tree that is made up.
fn tree(texts: &[(&'static str, &'static str)]) -> Files {
    Files::read(texts.iter().copied())
}

/// Everything that files name and that `DEPENDENCIES` do not allow for their module.
fn strays(files: &Files) -> Vec<String> {
    let dependencies: BTreeMap<&str, &[&str]> = DEPENDENCIES.iter().copied().collect();
    let mut strays = Vec::new();
    for (module, paths) in files.named() {
        let Some(top) = module.first() else { continue };
        let allowed = dependencies
            .get(top.as_str())
            .unwrap_or_else(|| panic!("the module {top} has no dependencies listed"));
        let for_all = if top == "plan" { FOR_THE_PLANNER } else { FOR_ALL };
        let fine = |name: &str| name == top || allowed.contains(&name) || for_all.contains(&name);
        let named: BTreeSet<&String> = paths.iter().filter_map(|path| path.first()).collect();
        let stray = named.into_iter().filter(|name| !fine(name));
        strays.extend(stray.map(|name| format!("{} names {name}", module.join("::"))));
    }
    strays
}

#[test]
fn dependencies_go_one_way() {
    let files = files(&library());
    let seen: usize = files.dependencies().values().map(|dependencies| dependencies.len()).sum();
    assert!(seen > 500, "only {seen} dependencies seen: the scan is broken");
    let strays = strays(&files);
    assert!(strays.is_empty(), "dependencies go one way only:\n{}", strays.join("\n"));
}

#[test]
fn no_files_depend_on_each_other_in_a_circle() {
    let circles: Vec<String> = files(&library()).circles().iter().map(in_words).collect();
    assert!(
        circles.is_empty(),
        "files of a circle; give what they share a file of its own:\n{}",
        circles.join("\n")
    );
}

/// A line for each dependency of a circle.
fn in_words(circle: &Dependencies) -> String {
    let uses = circle.iter().flat_map(|(from, uses)| uses.iter().map(move |(to, names)| (from, to, names)));
    let line = |(from, to, names): (&Vec<String>, &Vec<String>, &BTreeSet<String>)| {
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        format!("  {} uses {} of {}\n", from.join("::"), names.join(", "), to.join("::"))
    };
    uses.map(line).collect()
}

#[test]
fn a_circle_between_files_is_seen() {
    let circle = |texts| tree(texts).circles().iter().map(in_words).collect::<String>();
    // Between siblings, one of them by the name that their parent shows.
    assert_eq!(
        circle(&[
            ("voice/mod.rs", "mod level;\nmod meter;\npub use level::{Loudness, LevelError as Refused};"),
            ("voice/level.rs", "use super::meter::Meter;\npub struct Loudness;"),
            ("voice/meter.rs", "pub struct Meter;\nfn of(x: &super::Loudness) {}"),
        ]),
        "  voice::level uses Meter of voice::meter\n  voice::meter uses Loudness of voice::level\n"
    );
    // Between a parent that uses what it shows and its child.
    assert_eq!(
        circle(&[
            ("app/mod.rs", "mod demo;\npub use demo::Demo;\npub struct Made;\nfn f(x: Demo) {}"),
            ("app/demo.rs", "use crate::app::Made;\npub struct Demo;"),
        ]),
        "  app uses Demo of app::demo\n  app::demo uses Made of app\n"
    );
    // Of three, by a module's name, by a name of its own, and within a group.
    assert_eq!(
        circle(&[
            ("a.rs", "use crate::{b, d::D};\nfn f() { b::go() }"),
            ("b/mod.rs", "use crate::c::{C as Other};\npub(crate) fn go() -> Other { todo!() }"),
            ("c.rs", "pub(crate) type C = crate::a::A<'static>;"),
            ("d.rs", "pub struct D;"),
        ]),
        "  a uses go of b\n  b uses C of c\n  c uses A of a\n"
    );
}

#[test]
fn what_is_no_circle_is_not_taken_for_one() {
    let circles = tree(&[
        // A parent that shows what its child declares, and declares what its child uses.
        ("app/mod.rs", "mod demo;\npub use demo::{Demo, Item};\npub struct Made;\nfn f(i: impl Iterator<Item = u8>) {}"),
        ("app/demo.rs", "use super::Made;\npub struct Demo;"),
        // Comments, texts, tests, other libraries, and what a macro leaves to its callers.
        ("a.rs", "// crate::b::B\n/* crate::b::B */\nconst T: &str = \"crate::b::B\";\nconst R: &str = r#\"\"crate::b::B\"#;\nconst Q: char = '\"';\nmacro_rules! m { () => { $crate::b::B } }\n#[cfg(test)]\nmod tests { use crate::b::B; }"),
        ("b.rs", "use crate::a::T;\nuse b::B as Foreign;\nuse chrono;\npub struct B<'a>(&'a str);"),
    ])
    .circles();
    assert!(circles.is_empty(), "{}", circles.iter().map(in_words).collect::<String>());
}

#[test]
fn a_forbidden_dependency_is_seen() {
    let stray = |path, text| strays(&tree(&[("lib.rs", ""), (path, text)]));
    assert_eq!(stray("plan/make.rs", "use crate::language::Pack;"), ["plan::make names language"]);
    let group = "use crate::{voice::Bank, language::{Pack, Status}};";
    assert_eq!(stray("sheet/mod.rs", group), ["sheet names voice"]);
    assert_eq!(stray("cli/mod.rs", "fn f(x: crate::plan::Plan) {}"), ["cli names plan"]);
    assert_eq!(stray("plan/mod.rs", "use crate::finding::Finding;"), ["plan names finding"]);
    assert_eq!(stray("case/mod.rs", "// crate::voice\nuse crate::finding::Finding;"), [""; 0]);
}

/// Each library is named in one module only, so that it can be changed there.
#[test]
fn libraries_stay_in_their_modules() {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src");
    let modules = [
        ("libm::", "plan"),
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
