//! Every screen against its accepted picture, by a perceptual measure.
//!
//! Pictures are drawn without a window, on whatever adapter there is; the accepted ones were drawn on the software adapter of Debian 12 (llvmpipe).
//! Each is cut into tiles, so that a small change counts as much as a large one: the worst tile decides.
//! With `OUTAGE_DRILL_ACCEPT` set, new pictures replace the accepted ones instead of being judged.
//! It does not cover screens of more than one pixel a point.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use image::codecs::png::{CompressionType, FilterType, PngEncoder};
use image::{GenericImageView as _, RgbImage};
use outage_drill::window;

/// The least likeness of a tile, from 0 to 1.
/// Two runs on one adapter give 1; a handle that moves gives less than 0.9.
const LEAST: f64 = 0.95;
/// Size of a tile in pixels.
const TILE: (u32, u32) = (80, 45);

fn accepted_folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/pictures")
}

fn drawn_folder() -> PathBuf {
    let temporary = Path::new(env!("CARGO_TARGET_TMPDIR"));
    temporary.parent().unwrap_or(temporary).join("pictures")
}

fn names(folder: &Path) -> BTreeSet<String> {
    let entries = fs::read_dir(folder).expect("the folder of pictures is there");
    let names = entries.filter_map(|entry| entry.ok()?.file_name().into_string().ok());
    names
        .filter(|name| Path::new(name).extension().is_some_and(|e| e == "png"))
        .collect()
}

fn open(path: &Path) -> RgbImage {
    match image::open(path) {
        Ok(image) => image.to_rgb8(),
        Err(why) => panic!("{}: {why}", path.display()),
    }
}

/// Writes a picture as small as it can be without a loss.
fn keep(picture: &RgbImage, path: &Path) {
    let mut bytes = Vec::new();
    let encoder =
        PngEncoder::new_with_quality(&mut bytes, CompressionType::Best, FilterType::Adaptive);
    picture
        .write_with_encoder(encoder)
        .expect("a picture can be encoded");
    fs::write(path, bytes).expect("a picture can be accepted");
}

/// The likeness of the worst tile, and where it is.
fn worst_tile(one: &RgbImage, other: &RgbImage) -> (f64, (u32, u32)) {
    assert_eq!(one.dimensions(), other.dimensions());
    let (width, height) = one.dimensions();
    let mut worst = (1.0, (0, 0));
    for y in (0..height).step_by(TILE.1 as usize) {
        for x in (0..width).step_by(TILE.0 as usize) {
            let cut = |image: &RgbImage| {
                let size = (TILE.0.min(width - x), TILE.1.min(height - y));
                image.view(x, y, size.0, size.1).to_image()
            };
            let likeness = image_compare::rgb_hybrid_compare(&cut(one), &cut(other))
                .expect("tiles of one size")
                .score;
            if likeness < worst.0 {
                worst = (likeness, (x, y));
            }
        }
    }
    worst
}

#[test]
fn pictures_of_all_screens_are_as_accepted() {
    let (accepted, drawn) = (accepted_folder(), drawn_folder());
    if drawn.exists() {
        fs::remove_dir_all(&drawn).expect("old pictures can be removed");
    }
    window::pictures(&crate::session(), &["all".to_owned()], &drawn).unwrap_or_else(|why| {
        panic!("{}", crate::session().say_message(&why.message()));
    });
    if std::env::var_os("OUTAGE_DRILL_ACCEPT").is_some() {
        for name in names(&accepted) {
            fs::remove_file(accepted.join(name)).expect("an accepted picture can be replaced");
        }
        for name in names(&drawn) {
            keep(&open(&drawn.join(&name)), &accepted.join(&name));
        }
    }
    assert_eq!(
        names(&drawn),
        names(&accepted),
        "screens and accepted pictures"
    );
    let mut changed = Vec::new();
    for name in names(&drawn) {
        let (likeness, (x, y)) =
            worst_tile(&open(&drawn.join(&name)), &open(&accepted.join(&name)));
        println!("{name}: {likeness:.4}");
        if likeness < LEAST {
            changed.push(format!("{name}: {likeness:.4} in the tile at {x}, {y}"));
        }
    }
    assert!(
        changed.is_empty(),
        "these differ from {}:\n{}\nThe new ones are in {}.",
        accepted.display(),
        changed.join("\n"),
        drawn.display()
    );
}

#[test]
fn pictures_of_different_screens_are_told_apart() {
    let accepted = accepted_folder();
    let open = |name: &str| open(&accepted.join(format!("{name}.png")));
    for (one, other) in [
        ("street-before", "street-dark"),
        ("street-dark", "panel-main-off"),
        ("line-fed-first", "line-fed-last"),
        ("debrief-passed", "debrief-not-passed"),
    ] {
        let (likeness, _) = worst_tile(&open(one), &open(other));
        assert!(likeness < LEAST, "{one} and {other}: {likeness:.4}");
    }
}

#[test]
fn pictures_that_differ_by_a_breakers_handle_are_told_apart() {
    let before = open(&accepted_folder().join("panel-main-off.png"));
    let mut after = before.clone();
    // The knob of a handle is 25 by 16 pixels.
    for (x, y) in (0..25).flat_map(|x| (0..16).map(move |y| (1060 + x, 330 + y))) {
        let pixel = after.get_pixel_mut(x, y);
        pixel.0 = pixel.0.map(|channel| 255 - channel);
    }
    let (likeness, _) = worst_tile(&before, &after);
    assert!(likeness < LEAST, "{likeness:.4}");
}

#[test]
fn pictures_are_two_hundred_at_most_and_take_less_than_twenty_megabytes() {
    let folder = accepted_folder();
    let size = |name: &String| fs::metadata(folder.join(name)).map_or(0, |file| file.len());
    let bytes: u64 = names(&folder).iter().map(size).sum();
    assert!(bytes < 20_000_000, "{bytes} bytes");
    assert!(names(&folder).len() <= 200);
}
