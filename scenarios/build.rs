//! Lists what lies in the folders of scenarios, words and played lists, so that the program carries them all and no list has to be kept by hand.
//!
//! It looks at names only: a file that is wrong is told where it is read.

use std::env;
use std::error::Error;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

fn main() -> Result<(), Box<dyn Error>> {
    let root = PathBuf::from(env::var("CARGO_MANIFEST_DIR")?);
    let mut code = String::new();
    let words = |language: &str| {
        [
            format!("assets/words/{language}"),
            format!("scenarios/words/{language}"),
        ]
    };
    let plain = |folder: &str| [folder.to_owned()];
    list(
        &root,
        "APPARATUS",
        &plain("scenarios/apparatus"),
        "ron",
        &mut code,
    )?;
    list(&root, "SITES", &plain("scenarios/sites"), "ron", &mut code)?;
    list(
        &root,
        "DRILLS",
        &plain("scenarios/drills"),
        "ron",
        &mut code,
    )?;
    list(
        &root,
        "LESSONS",
        &plain("scenarios/lessons"),
        "ron",
        &mut code,
    )?;
    list(&root, "LOCAL", &plain("scenarios"), "ron", &mut code)?;
    list(&root, "WORDS_EN", &words("en"), "ftl", &mut code)?;
    list(&root, "WORDS_ES", &words("es"), "ftl", &mut code)?;
    list(&root, "LISTS", &plain("tests/drills"), "actions", &mut code)?;
    fs::write(Path::new(&env::var("OUT_DIR")?).join("shipped.rs"), code)?;
    Ok(())
}

/// A constant with each file of some folders: its path from the root of the package, and its text.
fn list(
    root: &Path,
    name: &str,
    folders: &[String],
    ending: &str,
    code: &mut String,
) -> Result<(), Box<dyn Error>> {
    let all = folders.join("` and `");
    writeln!(
        code,
        "/// The files of `{all}`.\npub const {name}: &[(&str, &str)] = &["
    )?;
    for folder in folders {
        println!("cargo::rerun-if-changed={folder}");
        let mut files: Vec<PathBuf> = Vec::new();
        for entry in fs::read_dir(root.join(folder))? {
            let path = entry?.path();
            if path.extension().is_some_and(|e| e == ending) {
                files.push(path);
            }
        }
        files.sort();
        for file in files {
            let short = file
                .strip_prefix(root)?
                .to_string_lossy()
                .replace('\\', "/");
            writeln!(
                code,
                "    ({short:?}, include_str!({:?})),",
                file.to_string_lossy()
            )?;
        }
    }
    writeln!(code, "];")?;
    Ok(())
}
