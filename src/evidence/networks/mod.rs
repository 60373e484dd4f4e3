//! Whole networks: what other solvers and published tables say of them, against our solver.
//!
//! The rows are `tests/networks/<file>.ron`, built into the program; they are written and judged as those of single figures are.
//! A row asks a network that is built here from the same data, and is NaN where our solver finds no answer.
//! Networks drawn at random come whole, with the answers of another solver; see [`Drawn`].
//!
//! **To add a network**, add its file here with what can be read of it, one variant of `Ask`, and one line of `FILES`.

mod drawn;
mod four_node;
mod service;

use serde::Deserialize;

use crate::circuit::{Network, Solution, Solver};
use crate::file::Diagnostic;

pub use drawn::{Answer, Built, Drawn, Element, Pair, drawn};
pub use four_node::{Bank, FourNode, Loading, four_node};
pub use service::{Case, SplitPhase, excite, fixed, split_phase, transformer};

use super::row::Compared;
use super::row::RowFile;
use super::row::Standing;
use super::row::Tolerance;
use super::row::ask_all;
use super::section::Section;

/// Every file of rows.
const FILES: &[RowFile<'_>] = &[
    (
        "tests/networks/split-phase.ron",
        Section::SplitPhase,
        include_str!("../../../tests/networks/split-phase.ron"),
    ),
    (
        "tests/networks/four-node.ron",
        Section::FourNode,
        include_str!("../../../tests/networks/four-node.ron"),
    ),
];

/// Above this the currents of a node don't add up, per unit.
const KIRCHHOFF_MOST: f64 = 1e-9;

/// What a row asks of a network.
#[derive(Debug, Deserialize)]
enum Ask {
    Service {
        case: Case,
        read: service::Read,
    },
    Feeder {
        loading: Loading,
        bank: Bank,
        node: usize,
        phase: four_node::Phase,
        read: four_node::Read,
    },
}

impl Ask {
    fn ours(&self) -> f64 {
        match self {
            Self::Service { case, read } => service::ours(*case, read),
            Self::Feeder {
                loading,
                bank,
                node,
                phase,
                read,
            } => four_node::ours(*loading, *bank, *node, *phase, *read),
        }
    }
}

/// Every row, asked and compared, section by section.
///
/// # Errors
/// Every file that isn't a list of rows, with the place of its first fault.
pub fn networks() -> Result<Vec<Compared>, Vec<Diagnostic>> {
    let mut rows = ask_all(FILES, Ask::ours)?;
    rows.append(&mut drawn::compared()?);
    Ok(rows)
}

/// What is read of the answer to a network; NaN unless it settled and its currents and powers add up.
fn converged(network: Network, read: impl FnOnce(&Solution) -> f64) -> f64 {
    let Ok(mut solver) = Solver::new(network) else {
        return f64::NAN;
    };
    let solution = solver.solve();
    let adds_up = solution.kirchhoff_residual() <= KIRCHHOFF_MOST
        && solution.power_imbalance() <= KIRCHHOFF_MOST;
    if solution.converged() && adds_up {
        read(solution)
    } else {
        f64::NAN
    }
}
