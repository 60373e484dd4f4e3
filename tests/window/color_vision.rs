//! The colors that say what feeds a conductor, as people with three kinds of color vision see them.
//!
//! Simulation: matrices for full protanopia, deuteranopia and tritanopia on linear RGB, Machado, Oliveira and Fernandes 2009, from memory; that each row adds up to one is checked.
//! Difference: CIE 1976 L*a*b* under D65, from memory, checked against white and black.
//! It does not cover shapes: patterns and words tell the states apart as well, and are tested beside the palette.

use outage_drill::session::view::Fed;
use outage_drill::window::theme::fed_ink;

type Matrix = [[f32; 3]; 3];

const KINDS: [(&str, Matrix); 4] = [
    (
        "all colors",
        [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
    ),
    (
        "protanopia",
        [
            [0.152_286, 1.052_583, -0.204_868],
            [0.114_503, 0.786_281, 0.099_216],
            [-0.003_882, -0.048_116, 1.051_998],
        ],
    ),
    (
        "deuteranopia",
        [
            [0.367_322, 0.860_646, -0.227_968],
            [0.280_085, 0.672_501, 0.047_413],
            [-0.011_820, 0.042_940, 0.968_881],
        ],
    ),
    (
        "tritanopia",
        [
            [1.255_528, -0.076_749, -0.178_779],
            [-0.078_411, 0.930_809, 0.147_602],
            [0.004_733, 0.691_367, 0.303_900],
        ],
    ),
];

/// The least difference of two states: five times what a trained eye sees side by side, from memory.
const LEAST: f32 = 12.0;

fn seen(kind: &Matrix, fed: Fed) -> [f32; 3] {
    let [r, g, b, _] = fed_ink(fed).linear();
    kind.map(|row| (row[0] * r + row[1] * g + row[2] * b).clamp(0.0, 1.0))
}

fn lab([r, g, b]: [f32; 3]) -> [f32; 3] {
    let x = 0.4124 * r + 0.3576 * g + 0.1805 * b;
    let y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    let z = 0.0193 * r + 0.1192 * g + 0.9505 * b;
    let f = |t: f32| {
        if t > 0.008_856 {
            t.cbrt()
        } else {
            7.787 * t + 16.0 / 116.0
        }
    };
    let (x, y, z) = (f(x / 0.950_47), f(y), f(z / 1.088_83));
    [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
}

fn difference(one: [f32; 3], other: [f32; 3]) -> f32 {
    let squares = one.iter().zip(other).map(|(a, b)| (a - b) * (a - b));
    squares.sum::<f32>().sqrt()
}

#[test]
fn states_of_conductors_are_told_apart_by_every_kind_of_color_vision() {
    let mut close = Vec::new();
    for (name, kind) in &KINDS {
        for (i, one) in Fed::ALL.iter().enumerate() {
            for other in Fed::ALL.iter().skip(i + 1) {
                let apart = difference(lab(seen(kind, *one)), lab(seen(kind, *other)));
                if apart < LEAST {
                    close.push(format!(
                        "{name}: {one:?} and {other:?} are {apart:.1} apart"
                    ));
                }
            }
        }
    }
    assert!(close.is_empty(), "{}", close.join("\n"));
}

#[test]
fn the_simulation_leaves_white_white() {
    for (name, kind) in &KINDS {
        for row in kind {
            assert!(
                (row.iter().sum::<f32>() - 1.0).abs() < 1e-3,
                "{name}: {row:?}"
            );
        }
    }
}

#[test]
fn white_and_black_are_a_hundred_apart() {
    let apart = difference(lab([1.0; 3]), lab([0.0; 3]));
    assert!((apart - 100.0).abs() < 0.1, "{apart}");
}
