//! Which file of a Rust source tree names what of which other.
//!
//! Read without a compiler: paths of `use` and of the code, each resolved to the file that declares
//! what it names, through re-exports. A re-export (`pub use`) is no dependency of its own, so that a
//! module's `mod.rs` may show what its children declare; a `mod.rs` that also uses it depends on them.
//! Methods are not seen: their type is.

use std::collections::{BTreeMap, BTreeSet};

/// A path of Rust: `crate::plan::Plan` as its names.
pub(super) type Path = Vec<String>;

/// For each file, the files that it uses, each with the names of what it uses.
pub(super) type Dependencies = BTreeMap<Path, BTreeMap<Path, BTreeSet<String>>>;

/// A source file, by what stands in it.
#[derive(Debug, Default)]
pub(super) struct File {
    /// Names that `use` brings in, with what they stand for.
    imports: BTreeMap<String, Import>,
    /// Paths of the code outside `use`, single names among them.
    paths: BTreeSet<Path>,
}

#[derive(Debug)]
struct Import {
    path: Path,
    is_exported: bool,
}

/// The files of a source tree, by the path of their module; the root's is empty.
#[derive(Debug, Default)]
pub(super) struct Files(BTreeMap<Path, File>);

impl Files {
    /// Reads files, each by its path below the source folder and its text.
    pub(super) fn read<'t>(files: impl IntoIterator<Item = (&'t str, &'t str)>) -> Files {
        Files(files.into_iter().map(|(path, text)| (module_of(path), File::read(text))).collect())
    }

    /// For each file, the paths from the root that it names, before any re-export is followed.
    pub(super) fn named(&self) -> impl Iterator<Item = (&Path, BTreeSet<Path>)> {
        self.0.iter().map(|(module, file)| {
            let imported = file.imports.values().map(|import| &import.path);
            let paths = imported.chain(&file.paths).filter_map(|path| self.path_from_root(module, path));
            (module, paths.collect())
        })
    }

    /// For each file, the files that declare what it uses, with the names of it.
    pub(super) fn dependencies(&self) -> Dependencies {
        let of = |module: &Path, file: &File| {
            let private = file.imports.values().filter(|import| !import.is_exported);
            let imported = private.filter_map(|import| self.declaring(module, &import.path, false));
            let used = file.paths.iter().filter_map(|path| self.declaring(module, path, true));
            let mut found: BTreeMap<Path, BTreeSet<String>> = BTreeMap::new();
            for (other, name) in imported.chain(used).filter(|(other, _)| other != module) {
                found.entry(other).or_default().insert(name);
            }
            found
        };
        self.0.iter().map(|(module, file)| (module.clone(), of(module, file))).collect()
    }

    /// Circles between files: each as the dependencies among its files.
    pub(super) fn circles(&self) -> Vec<Dependencies> {
        let dependencies = self.dependencies();
        let reached: BTreeMap<&Path, BTreeSet<&Path>> =
            dependencies.keys().map(|from| (from, reachable(&dependencies, from))).collect();
        let mut circles: Vec<Dependencies> = Vec::new();
        for (from, to) in &reached {
            let others = to.iter().filter(|other| reached[*other].contains(from));
            let mut circle: Dependencies =
                others.map(|other| ((*other).clone(), dependencies[*other].clone())).collect();
            let members: BTreeSet<Path> = circle.keys().cloned().collect();
            circle.values_mut().for_each(|uses| uses.retain(|other, _| members.contains(other)));
            if !circle.is_empty() && !circles.contains(&circle) {
                circles.push(circle);
            }
        }
        circles
    }

    /// A path as written in a module, from the root; none where it leads out of the tree.
    fn path_from_root(&self, module: &Path, path: &Path) -> Option<Path> {
        let (first, rest) = path.split_first()?;
        let mut base = module.clone();
        match first.as_str() {
            "crate" => base.clear(),
            "self" => {}
            "super" => {
                base.pop();
                let mut rest = rest;
                while let [first, further @ ..] = rest
                    && first == "super"
                {
                    base.pop();
                    rest = further;
                }
                base.extend_from_slice(rest);
                return Some(base);
            }
            name => {
                let child = [module.as_slice(), std::slice::from_ref(first)].concat();
                if self.0.contains_key(&child) && !rest.is_empty() {
                    base = child;
                } else {
                    let import = self.0.get(module)?.imports.get(name)?;
                    // Like `include_dir::include_dir`: of another library.
                    let leads_to_itself = import.path.first() == Some(first);
                    base = (!leads_to_itself).then(|| self.path_from_root(module, &import.path))??;
                }
            }
        }
        base.extend_from_slice(rest);
        Some(base)
    }

    /// The module whose file declares what a path names, and its name there. A path that ends at a
    /// module names nothing in a `use`; in the code it stands for a function of the same name.
    fn declaring(&self, module: &Path, path: &Path, in_code: bool) -> Option<(Path, String)> {
        let mut wanted = self.path_from_root(module, path)?;
        // Re-exports of re-exports end some day; a circle of them does not compile.
        loop {
            let depth = (0..=wanted.len()).rev().find(|depth| self.0.contains_key(&wanted[..*depth]))?;
            let (module, items) = wanted.split_at(depth);
            let Some(item) = items.first() else {
                let name = module.last()?.clone();
                return in_code.then(|| (module.to_vec(), name));
            };
            let Some(import) = self.0[module].imports.get(item) else {
                return Some((module.to_vec(), item.clone()));
            };
            let mut next = self.path_from_root(&module.to_vec(), &import.path)?;
            next.extend_from_slice(&items[1..]);
            wanted = next;
        }
    }
}

fn reachable<'d>(dependencies: &'d Dependencies, from: &Path) -> BTreeSet<&'d Path> {
    let mut found = BTreeSet::new();
    let mut open: Vec<&Path> = dependencies[from].keys().collect();
    while let Some(next) = open.pop() {
        if found.insert(next) {
            open.extend(dependencies[next].keys());
        }
    }
    found
}

/// `voice/decode.rs` and `voice/decode/mod.rs` are the module `voice::decode`.
fn module_of(path: &str) -> Path {
    let path = path.trim_end_matches(".rs");
    let path = path.strip_suffix("/mod").unwrap_or(path);
    if matches!(path, "lib") { Path::new() } else { path.split('/').map(str::to_owned).collect() }
}

impl File {
    fn read(text: &str) -> File {
        // Tests of a file stand at its end and may use what they like.
        let text = text.split("#[cfg(test)]").next().unwrap_or_default();
        let tokens = tokens(text);
        let mut file = File::default();
        let mut at = 0;
        let mut is_exported = false;
        let until =
            |at: usize, sign: &str| at + tokens[at..].iter().position(|token| token == sign).unwrap_or(0);
        while let Some(token) = tokens.get(at) {
            let was_exported = std::mem::take(&mut is_exported);
            match token.as_str() {
                "pub" => {
                    is_exported = true;
                    // pub(in crate::cli)
                    if tokens.get(at + 1).is_some_and(|next| next == "(") {
                        at = until(at, ")");
                    }
                }
                "use" => {
                    let end = until(at, ";");
                    file.import(&mut &tokens[at + 1..end], &Path::new(), was_exported);
                    at = end;
                }
                // What a macro names by `$crate` is a dependency of those who call it.
                "$" => at += path_at(&tokens[at + 1..]).len().saturating_sub(1) * 2 + 1,
                // A name after these is declared or belongs to a value.
                "." | "fn" | "mod" | "let" => {
                    at += usize::from(tokens.get(at + 1).is_some_and(|next| is_name(next)))
                }
                name if is_name(name) => {
                    let path = path_at(&tokens[at..]);
                    at += (path.len() - 1) * 2;
                    let next = tokens.get(at + 1).map_or("", String::as_str);
                    // Fields and variables share their names with functions; types do not, but with `Item = …`.
                    let is_type = name.starts_with(char::is_uppercase) && next != "=";
                    if path.len() > 1 || is_type || next == "(" {
                        file.paths.insert(path);
                    }
                }
                _ => {}
            }
            at += 1;
        }
        file
    }

    /// A tree of `use`: a path, and after it nothing, another name, or a group of trees.
    fn import(&mut self, tree: &mut &[String], before: &Path, is_exported: bool) {
        let mut path = before.clone();
        while let Some((token, rest)) = tree.split_first() {
            *tree = rest;
            match token.as_str() {
                "::" => {}
                "{" => {
                    while tree.first().is_some_and(|token| token != "}") {
                        self.import(tree, &path, is_exported);
                    }
                    *tree = &tree[1.min(tree.len())..];
                    if tree.first().is_some_and(|token| token == ",") {
                        *tree = &tree[1..];
                    }
                    return;
                }
                "," => break,
                "as" => {
                    let name = tree[0].clone();
                    *tree = &tree[1..];
                    self.imports.insert(name, Import { path: path.clone(), is_exported });
                    path.clear();
                }
                // `{self, …}`
                "self" if !path.is_empty() => {}
                name => path.push(name.to_owned()),
            }
            if tree.first().is_some_and(|token| token == "}") {
                break;
            }
        }
        if let Some(name) = path.last().cloned() {
            self.imports.insert(name, Import { path, is_exported });
        }
    }
}

/// The path at the start of tokens.
fn path_at(tokens: &[String]) -> Path {
    let mut path: Path = tokens.iter().take(1).cloned().collect();
    let mut rest = &tokens[1.min(tokens.len())..];
    while let [colons, name, further @ ..] = rest
        && colons == "::"
        && is_name(name)
    {
        path.push(name.clone());
        rest = further;
    }
    path
}

fn is_name(token: &str) -> bool {
    token.starts_with(|c: char| c.is_alphabetic() || c == '_')
}

/// Names, `::` and single signs; without comments, texts and numbers.
fn tokens(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(c) = rest.chars().next() {
        let name = rest.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap_or(rest.len());
        let length = if rest.starts_with("//") {
            rest.find('\n').unwrap_or(rest.len())
        } else if rest.starts_with("/*") {
            rest.find("*/").map_or(rest.len(), |end| end + 2)
        } else if let Some(hashes) = raw_text(rest) {
            let end = format!("\"{}", "#".repeat(hashes));
            let start = rest.find('"').unwrap() + 1;
            rest[start..].find(&end).map_or(rest.len(), |at| start + at + end.len())
        } else if c == '"' {
            1 + quoted(&rest[1..], '"')
        } else if let Some(letter) = letter(rest) {
            letter
        } else if rest.starts_with("::") {
            found.push("::".to_owned());
            2
        } else if name > 0 {
            if is_name(rest) {
                found.push(rest[..name].to_owned());
            }
            name
        } else {
            if !c.is_whitespace() {
                found.push(c.to_string());
            }
            c.len_utf8()
        };
        rest = &rest[length..];
    }
    found
}

/// The number of hashes, where a raw text begins.
fn raw_text(text: &str) -> Option<usize> {
    let rest = text.strip_prefix("br").or_else(|| text.strip_prefix('r'))?;
    let hashes = rest.len() - rest.trim_start_matches('#').len();
    rest[hashes..].starts_with('"').then_some(hashes)
}

/// The length of a letter in single quotes; a lifetime is none.
fn letter(text: &str) -> Option<usize> {
    let rest = text.strip_prefix('\'')?;
    let first = rest.chars().next()?;
    if first == '\\' {
        return Some(1 + quoted(rest, '\''));
    }
    rest[first.len_utf8()..].starts_with('\'').then(|| first.len_utf8() + 2)
}

/// The length up to and with the closing quote.
fn quoted(text: &str, quote: char) -> usize {
    let mut escaped = false;
    for (at, c) in text.char_indices() {
        if c == quote && !escaped {
            return at + 1;
        }
        escaped = c == '\\' && !escaped;
    }
    text.len()
}
