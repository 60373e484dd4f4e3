//! The map of the source tree: which module may know which, and what only one of them may touch.
//!
//! Order is reading order, and arrows only point upwards in this list: a module imports modules named before it.
//! DEVELOPERS.md gives the reason for each line in words.

/// One module directly under `src/`.
pub(crate) struct Module {
    /// Folder or file name under `src/`.
    pub(crate) name: &'static str,
    /// Modules of ours that it may import.
    pub(crate) imports: &'static [&'static str],
    /// Outside packages that it may use, by the name the compiler knows.
    pub(crate) outside: &'static [&'static str],
}

const fn module(
    name: &'static str,
    imports: &'static [&'static str],
    outside: &'static [&'static str],
) -> Module {
    Module {
        name,
        imports,
        outside,
    }
}

/// Every module, lowest first.
pub(crate) const MAP: &[Module] = &[
    module("lib", &[], &[]),
    module("units", &[], &["libm", "num_complex"]),
    module("shipped", &[], &[]),
    module(
        "words",
        &["units", "shipped"],
        &[
            "fixed_decimal",
            "fluent",
            "fluent_langneg",
            "fluent_syntax",
            "icu_decimal",
            "icu_locale_core",
            "unic_langid",
        ],
    ),
    module("circuit", &["units"], &[]),
    module("apparatus", &["units", "circuit"], &[]),
    module("hazard", &["units", "circuit"], &[]),
    module("site", &["units", "circuit", "apparatus", "hazard"], &[]),
    module("scenario", &["units", "words", "site"], &["rand"]),
    module(
        "drill",
        &[
            "units",
            "words",
            "circuit",
            "apparatus",
            "hazard",
            "site",
            "scenario",
        ],
        &[],
    ),
    module(
        "marking",
        &[
            "units",
            "words",
            "circuit",
            "apparatus",
            "hazard",
            "site",
            "scenario",
            "drill",
        ],
        &[],
    ),
    module(
        "explain",
        &[
            "units", "words", "circuit", "hazard", "site", "drill", "marking",
        ],
        &[],
    ),
    module(
        "file",
        &[
            "shipped",
            "units",
            "words",
            "apparatus",
            "hazard",
            "site",
            "scenario",
            "drill",
        ],
        &["ron", "serde", "serde_json", "sha2", "strsim"],
    ),
    module(
        "proof",
        &["units", "circuit", "site", "scenario", "drill", "marking"],
        &[],
    ),
    // The questions of the rows are their format: nothing is stored in it.
    module(
        "evidence",
        &[
            "shipped",
            "units",
            "words",
            "circuit",
            "apparatus",
            "hazard",
            "site",
            "scenario",
            "drill",
            "marking",
            "file",
            "proof",
        ],
        &["serde"],
    ),
    module(
        "session",
        &[
            "units",
            "words",
            "circuit",
            "apparatus",
            "hazard",
            "site",
            "scenario",
            "drill",
            "marking",
            "explain",
            "file",
            "proof",
        ],
        &[],
    ),
    module(
        "terminal",
        &["units", "words", "file", "evidence", "session"],
        &[
            "clap",
            "csv",
            "etcetera",
            "serde_json",
            "strsim",
            "sys_locale",
        ],
    ),
    module(
        "window",
        &["units", "words", "session"],
        &[
            "bevy",
            "bevy_egui",
            "egui",
            "egui_plot",
            "image",
            "image_compare",
            "lyon_tessellation",
            "wgpu",
            "x11rb",
        ],
    ),
    module("main", &["session", "terminal", "window"], &[]),
];

/// Something that only some places may touch.
pub(crate) struct Fence {
    /// The path, or a part of one, as written in the source.
    pub(crate) path: &'static str,
    /// Places under `src/` that may write it; empty means none.
    pub(crate) places: &'static [&'static str],
    /// Why, for the message.
    pub(crate) why: &'static str,
}

const fn fence(path: &'static str, places: &'static [&'static str], why: &'static str) -> Fence {
    Fence { path, places, why }
}

/// Every fence on the standard library, and the one around the second judge.
pub(crate) const FENCES: &[Fence] = &[
    fence(
        "std::fs",
        &["file", "terminal", "window"],
        "a run is played and marked without a disk",
    ),
    fence(
        "std::io",
        &["file", "terminal", "window", "main"],
        "the core neither reads nor prints",
    ),
    fence(
        "std::env",
        &["main", "terminal"],
        "the environment is handed in by the front end",
    ),
    fence(
        "std::process",
        &["main"],
        "only the binary ends the process",
    ),
    fence("std::net", &[], "the program never goes on the network"),
    fence(
        "std::thread",
        &["terminal", "window"],
        "the core runs where there are no threads",
    ),
    fence(
        "Instant::now",
        &["terminal", "window"],
        "the core has one clock, the drill's",
    ),
    fence("SystemTime", &[], "nothing here depends on the date"),
    fence(
        "crate::marking",
        &[
            "marking",
            "explain",
            "proof",
            "evidence/learners",
            "evidence/mistakes",
            "session",
        ],
        "the second judge never asks the marking",
    ),
];

/// Types whose constructors make a color, allowed only in [`THEME`].
pub(crate) const COLORS: &[&str] = &[
    "Color",
    "Color32",
    "Hsla",
    "Hsva",
    "LinearRgba",
    "Oklcha",
    "Rgba",
    "Srgba",
];

/// What a color type may still be asked for elsewhere: nothing drawn, and conversions.
pub(crate) const COLORLESS: &[&str] = &[
    "NONE",
    "PLACEHOLDER",
    "TRANSPARENT",
    "from",
    "to_srgba",
    "to_linear",
];

/// The only place where colors are made.
pub(crate) const THEME: &str = "window/theme";

/// The longest file that is still read as one thing.
pub(crate) const LINES_MAX: usize = 600;
