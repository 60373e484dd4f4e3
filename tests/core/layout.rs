//! The fence: who may import whom, checked on the source text.
//!
//! It reads every file under `src/` and reports `file:line: what` for each breach of the map in [`map`].
//! It also holds the tree tidy: each file opens with what it is for, none is too long, none carries an unfinished
//! mark, and no scenario or asset lies unused.
//! It judges what is written, not what a name resolves to; the build without the window is the second fence.

mod map;
mod source;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use map::{COLORLESS, COLORS, FENCES, LINES_MAX, MAP, Module, THEME};
use source::{Named, code_only, paths};

/// Marks of unfinished work, put together so that this file does not carry them.
const UNFINISHED: &[&str] = &[
    concat!("TO", "DO"),
    concat!("FIX", "ME"),
    concat!("XX", "X"),
];

/// Attributes that hide a fault instead of naming it.
const HIDING: &[&str] = &[
    concat!("#[", "ignore"),
    concat!("#[", "allow("),
    concat!("#![", "allow("),
];

/// A file of the tree: its path from the root of the package, and its text.
struct Source {
    path: String,
    text: String,
}

/// What one source file under `src/` does against the map, one line each.
fn breaches(path: &str, text: &str) -> Vec<String> {
    let place = path.trim_start_matches("src/").trim_end_matches(".rs");
    let name = place.split('/').next().unwrap_or(place);
    let Some(module) = MAP.iter().find(|module| module.name == name) else {
        return vec![format!(
            "{path}:1: `{name}` is not on the map in tests/core/layout/map.rs"
        )];
    };
    let mut found = Vec::new();
    for named in paths(&code_only(text)) {
        let mut tell = |what: String| found.push(format!("{path}:{}: {what}", named.line));
        if let Some(what) = own_breach(module, &named) {
            tell(what);
        }
        if let Some(what) = outside_breach(module, &named) {
            tell(what);
        }
        if let Some(what) = fence_breach(place, &named) {
            tell(what);
        }
        if let Some(what) = color_breach(place, &named) {
            tell(what);
        }
    }
    found.dedup();
    found
}

/// A module of ours that this one may not know, or a way of importing that hides which.
fn own_breach(module: &Module, named: &Named) -> Option<String> {
    let [root, target, ..] = named.segments.as_slice() else {
        return None;
    };
    match root.as_str() {
        "super" if target == "super" => {
            Some("`super::super` hides the module: write the path from `crate`".to_owned())
        }
        "crate" | "outage_drill" => {
            if named.grouped_at_root || target == "*" {
                return Some(
                    "one module for each `use`: no group or `*` right after the crate's name"
                        .to_owned(),
                );
            }
            let known = MAP.iter().any(|other| other.name == target);
            let allowed = target == module.name || module.imports.contains(&target.as_str());
            (known && !allowed).then(|| format!("`{}` may not import `{target}`", module.name))
        }
        _ => None,
    }
}

/// An outside package used where another module is its only place.
fn outside_breach(module: &Module, named: &Named) -> Option<String> {
    let root = named.segments.first()?.as_str();
    let fenced = MAP.iter().any(|other| other.outside.contains(&root)) || root.starts_with("bevy_");
    (fenced && !module.outside.contains(&root))
        .then(|| format!("`{}` may not use the package `{root}`", module.name))
}

/// A part of the outside world touched where it may not be.
fn fence_breach(place: &str, named: &Named) -> Option<String> {
    let fence = FENCES.iter().find(|fence| {
        let wanted: Vec<&str> = fence.path.split("::").collect();
        named
            .segments
            .windows(wanted.len())
            .any(|window| window == wanted)
    })?;
    let allowed = fence.places.iter().any(|allowed| is_within(place, allowed));
    (!allowed).then(|| format!("`{}` here: {}", fence.path, fence.why))
}

/// A color made outside the theme.
fn color_breach(place: &str, named: &Named) -> Option<String> {
    let made = named.segments.windows(2).find(|pair| {
        COLORS.contains(&pair[0].as_str())
            && pair[1] != "*"
            && !COLORLESS.contains(&pair[1].as_str())
    })?;
    (!is_within(place, THEME)).then(|| {
        format!(
            "`{}::{}`: colors are made only in src/{THEME}",
            made[0], made[1]
        )
    })
}

/// Whether a place is the named file or folder, or inside it.
fn is_within(place: &str, folder: &str) -> bool {
    place
        .strip_prefix(folder)
        .is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
}

/// What keeps any Rust file, source or test, from being tidy.
fn untidy(path: &str, text: &str) -> Vec<String> {
    let mut found = Vec::new();
    if !text.starts_with("//!") {
        found.push(format!(
            "{path}:1: open with `//!`: what it does, what not, how accurate, source"
        ));
    }
    let length = text.lines().count();
    if length > LINES_MAX {
        found.push(format!(
            "{path}:{length}: more than {LINES_MAX} lines: cut it where it changes subject"
        ));
    }
    for (index, line) in text.lines().enumerate() {
        let words = || line.split(|letter: char| !letter.is_alphanumeric());
        if let Some(mark) = UNFINISHED
            .iter()
            .find(|mark| words().any(|word| word == **mark))
        {
            found.push(format!(
                "{path}:{}: `{mark}`: finish it or leave it out",
                index + 1
            ));
        }
        if let Some(mark) = HIDING.iter().find(|mark| line.contains(**mark)) {
            found.push(format!(
                "{path}:{}: `{mark}` hides a fault: use `expect` with a reason",
                index + 1
            ));
        }
    }
    found
}

/// Rust files that no file beside or above them declares: they are never compiled.
fn undeclared(files: &[Source]) -> Vec<&str> {
    let declares = |path: &str, name: &str| {
        files.iter().any(|file| {
            file.path == path && code_only(&file.text).contains(&format!("mod {name};"))
        })
    };
    let is_declared = |file: &str| {
        let module = file.trim_end_matches(".rs").trim_end_matches("/mod");
        let Some((folder, name)) = module.rsplit_once('/') else {
            return true;
        };
        let beside = ["mod.rs", "lib.rs", "main.rs"]
            .iter()
            .map(|parent| format!("{folder}/{parent}"));
        beside
            .chain([format!("{folder}.rs")])
            .any(|parent| declares(&parent, name))
    };
    // A module may also be declared by the path of its file, seen from the declaring one.
    let has_path = |file: &str| {
        let mut lines = files.iter().flat_map(|other| other.text.lines());
        lines.any(|line| {
            let path = line.trim().strip_prefix("#[path = \"");
            path.and_then(|rest| rest.strip_suffix("\"]"))
                .is_some_and(|path| path.trim_start_matches("../") == file)
        })
    };
    let is_root = |file: &str| {
        file.ends_with("/main.rs")
            || file == "src/lib.rs"
            || file.starts_with("benches/") && file.matches('/').count() == 1
    };
    files
        .iter()
        .map(|file| file.path.as_str())
        .filter(|file| !is_root(file) && !is_declared(file) && !has_path(file))
        .collect()
}

/// Files that no other file names, by the name they are asked for.
fn unused<'a>(files: &'a [String], readers: &[Source]) -> Vec<&'a str> {
    let is_named = |file: &str| {
        let stem = Path::new(file)
            .file_stem()
            .map_or_else(String::new, |stem| stem.to_string_lossy().into_owned());
        readers
            .iter()
            .any(|reader| reader.path != file && reader.text.contains(&stem))
    };
    files
        .iter()
        .map(String::as_str)
        .filter(|file| !is_named(file))
        .collect()
}

/// Paths of all files under a folder of the package, sorted; none if there is no such folder.
fn files_under(folder: &str) -> Vec<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut waiting = vec![root.join(folder)];
    let mut found = BTreeSet::new();
    while let Some(folder) = waiting.pop() {
        for entry in fs::read_dir(folder).into_iter().flatten() {
            let path = entry.expect("a folder of the package can be listed").path();
            if path.is_dir() {
                waiting.push(path);
            } else {
                let inside = path
                    .strip_prefix(root)
                    .expect("the walk starts at the root");
                found.insert(inside.to_string_lossy().into_owned());
            }
        }
    }
    found.into_iter().collect()
}

fn read(path: String) -> Source {
    let text = fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join(&path))
        .expect("a source file is text");
    Source { path, text }
}

fn sources(folder: &str, ending: &str) -> Vec<Source> {
    files_under(folder)
        .into_iter()
        .filter(|path| path.ends_with(ending))
        .map(read)
        .collect()
}

fn assert_none(found: &[String]) {
    assert!(found.is_empty(), "\n{}\n", found.join("\n"));
}

#[test]
fn imports_only_point_down_the_map() {
    let files = sources("src", ".rs");
    assert!(files.len() > 3, "the source tree was not found");
    let found: Vec<String> = files
        .iter()
        .flat_map(|file| breaches(&file.path, &file.text))
        .collect();
    assert_none(&found);
}

#[test]
fn every_file_is_tidy() {
    let files = sources("src", ".rs")
        .into_iter()
        .chain(sources("tests", ".rs"))
        .chain(sources("benches", ".rs"));
    let found: Vec<String> = files
        .flat_map(|file| untidy(&file.path, &file.text))
        .collect();
    assert_none(&found);
}

#[test]
fn every_file_is_compiled() {
    let files: Vec<Source> = ["src", "tests", "benches"]
        .iter()
        .flat_map(|folder| sources(folder, ".rs"))
        // A package of its own.
        .filter(|file| !file.path.starts_with("tests/second-opinion/"))
        .collect();
    let found: Vec<String> = undeclared(&files)
        .iter()
        .map(|path| format!("{path}:1: no `mod` declares it, so it is never compiled"))
        .collect();
    assert_none(&found);
}

#[test]
fn no_site_and_no_asset_lies_unused() {
    let mut readers: Vec<Source> = ["src", "tests"]
        .iter()
        .flat_map(|folder| sources(folder, ".rs"))
        .chain(sources("scenarios", ".ron"))
        .collect();
    readers.extend(sources(".ci", "run"));
    let files: Vec<String> = files_under("scenarios/sites")
        .into_iter()
        .chain(
            files_under("assets")
                .into_iter()
                .filter(|path| !path.starts_with("assets/words/")),
        )
        .collect();
    let found: Vec<String> = unused(&files, &readers)
        .iter()
        .map(|path| format!("{path}:1: no test, source or scenario names it"))
        .collect();
    assert_none(&found);
}

#[test]
fn every_package_has_its_place_on_the_map() {
    let manifest = read("Cargo.toml".to_owned()).text;
    let packages = manifest
        .lines()
        .skip_while(|line| *line != "[dependencies]")
        .skip(1)
        .take_while(|line| !line.starts_with('['))
        .filter(|line| {
            line.contains('=') && line.starts_with(|letter: char| letter.is_ascii_lowercase())
        })
        .filter_map(|line| line.split([' ', '=']).next())
        .map(|name| name.replace('-', "_"));
    let found: Vec<String> = packages
        .filter(|name| {
            !MAP.iter()
                .any(|module| module.outside.contains(&name.as_str()))
        })
        .map(|name| format!("Cargo.toml:1: `{name}` has no place in tests/core/layout/map.rs"))
        .collect();
    assert_none(&found);
}

#[test]
fn the_map_itself_only_points_down() {
    for (index, module) in MAP.iter().enumerate() {
        for import in module.imports {
            let below = MAP[..index].iter().any(|other| other.name == *import);
            assert!(
                below,
                "{} imports {import}, which is not before it",
                module.name
            );
        }
    }
}

/// A file, its text, and what has to be found in it.
const PLANTED: [(&str, &str, &str); 14] = [
    (
        "src/circuit/solve.rs",
        "//! x\nuse crate::apparatus::Breaker;",
        ":2: `circuit` may not import `apparatus`",
    ),
    (
        "src/window/mod.rs",
        "\nfn f() { crate::drill::advance(); }",
        ":2: `window` may not import `drill`",
    ),
    (
        "src/main.rs",
        "use outage_drill::marking::Verdict;",
        ":1: `main` may not import `marking`",
    ),
    (
        "src/site/mod.rs",
        "use crate::{circuit::Network, units::Volts};",
        "one module for each `use`",
    ),
    (
        "src/site/a.rs",
        "use super::super::file::read;",
        "`super::super` hides",
    ),
    (
        "src/hazard/body.rs",
        "use num_complex::Complex64;",
        "`hazard` may not use the package `num_complex`",
    ),
    (
        "src/drill/run.rs",
        "#[derive(serde::Serialize)]\nstruct Run;",
        "`drill` may not use the package `serde`",
    ),
    (
        "src/session/view.rs",
        "use bevy_ecs::prelude::*;",
        "`session` may not use the package `bevy_ecs`",
    ),
    ("src/site/b.rs", "use std::{fmt, fs};", "`std::fs` here"),
    (
        "src/drill/clock.rs",
        "use std::time::Instant;\n\nlet a = Instant::now();",
        ":3: `Instant::now` here",
    ),
    (
        "src/window/link.rs",
        "let t = std::time::SystemTime::now();",
        "`SystemTime` here",
    ),
    (
        "src/window/panels/log.rs",
        "let c = Color32::from_rgb(1, 2, 3);",
        "colors are made only in src/window/theme",
    ),
    (
        "src/window/scene.rs",
        "let c = Color::WHITE;",
        "colors are made only",
    ),
    ("src/widgets/mod.rs", "//! x", "`widgets` is not on the map"),
];

#[test]
fn each_planted_breach_is_found_with_its_line() {
    for (path, text, expected) in PLANTED {
        let found = breaches(path, text);
        assert!(
            found.len() == 1 && found[0].contains(expected),
            "{path}: expected {expected}, found {found:?}"
        );
    }
}

#[test]
fn what_is_allowed_is_not_reported() {
    let allowed = [
        (
            "src/window/theme/palette.rs",
            "const A: Color32 = Color32::from_rgb(1, 2, 3);",
        ),
        ("src/window/theme.rs", "let c = Color::srgb(0.0, 0.0, 0.0);"),
        (
            "src/window/scene.rs",
            "fill(Color32::TRANSPARENT, Color::from(theme.live));",
        ),
        (
            "src/file/read.rs",
            "use std::fs;\nuse crate::site::{Site, Positions};",
        ),
        (
            "src/circuit/a.rs",
            "// crate::window, std::fs\nlet a = \"use crate::window;\"; use super::factor::Factor;",
        ),
        (
            "src/terminal/mod.rs",
            "use std::time::Instant;\nlet a = Instant::now();",
        ),
    ];
    for (path, text) in allowed {
        assert_none(&breaches(path, text));
    }
}

#[test]
fn untidy_files_are_found() {
    let long = format!("//! x\n{}", "\n".repeat(LINES_MAX));
    let marked = format!("//! x\n// {}: later", UNFINISHED[0]);
    let hidden = format!("//! x\n{}dead_code)]", HIDING[1]);
    for (text, expected) in [
        ("fn f() {}", "open with"),
        (&long, "more than"),
        (&marked, ":2: "),
        (&hidden, "hides a fault"),
    ] {
        let found = untidy("src/units/mod.rs", text);
        assert!(
            found.len() == 1 && found[0].contains(expected),
            "expected {expected}, found {found:?}"
        );
    }
    assert_none(&untidy("src/units/mod.rs", "//! x\nfn todo_list() {}"));
}

#[test]
fn a_file_without_a_declaration_is_found() {
    let file = |path: &str, text: &str| Source {
        path: path.to_owned(),
        text: text.to_owned(),
    };
    let files = [
        file("src/lib.rs", "pub mod a;\n// mod lost;"),
        file("src/a/mod.rs", "mod b;"),
        file("src/a/b.rs", ""),
        file("src/lost.rs", ""),
        file("tests/core/main.rs", "mod c;"),
        file("tests/core/c.rs", "mod d;"),
        file("tests/core/c/d.rs", ""),
    ];
    assert_eq!(undeclared(&files), ["src/lost.rs"]);
}

#[test]
fn a_file_that_only_names_itself_is_unused() {
    let file = |path: &str, text: &str| Source {
        path: path.to_owned(),
        text: text.to_owned(),
    };
    let readers = [
        file("scenarios/a.ron", "site: \"b\""),
        file("scenarios/c.ron", "name: \"c\""),
    ];
    let files = ["scenarios/b.ron".to_owned(), "scenarios/c.ron".to_owned()];
    assert_eq!(unused(&files, &readers), ["scenarios/c.ron"]);
}
