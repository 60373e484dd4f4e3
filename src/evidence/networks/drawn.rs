//! Networks drawn at random from realistic values, and what an analog circuit simulator says of them.
//!
//! `tests/networks/compare.py` draws them and has the simulator solve them, which works by another method (modified nodal analysis with currents as unknowns, LU factors with pivoting); its answers are kept beside each network.
//! Every node voltage and the current of every EMF is compared as a phasor, group by group; the table shows of each network the one that is furthest apart.
//! Allowed are 1e-8 of the number itself, and 1e-11 of the largest of its kind in the network, which counts where a neutral carries microvolts beside 7 200 V.

use std::collections::BTreeMap;

use serde::Deserialize;

use crate::circuit::{
    BranchId, CenterTapped, Conductor, Group, Load, Network, NodeId, Port, Solution, Solver,
    SourceSpec, Windings,
};
use crate::file::Diagnostic;
use crate::file::Source;
use crate::units::Complex;
use crate::units::portable::magnitude;

use super::Compared;
use super::Section;
use super::Standing;
use super::Tolerance;

/// Allowed of a number itself.
const RELATIVE: f64 = 1e-8;
/// Allowed of the largest number of its kind in the network.
const OF_LARGEST: f64 = 1e-11;
const SOURCE: &str = "an analog circuit simulator (ngspice 39, AC analysis) on the same data";

/// A file of `tests/networks/drawn`, built in.
macro_rules! drawn {
    ($($name:literal),* $(,)?) => {
        &[$((
            concat!("tests/networks/drawn/", $name, ".ron"),
            include_str!(concat!("../../../tests/networks/drawn/", $name, ".ron")),
        )),*]
    };
}

/// Path and text of every network.
const FILES: &[(&str, &str)] = drawn![
    "backfed_1",
    "backfed_2",
    "backfed_3",
    "backfed_4",
    "cords_1",
    "cords_2",
    "cords_3",
    "cords_4",
    "grounded_line_1",
    "grounded_line_2",
    "grounded_line_3",
    "grounded_line_4",
    "island_1",
    "island_2",
    "island_3",
    "island_4",
    "open_neutral_1",
    "open_neutral_2",
    "open_neutral_3",
    "open_neutral_4",
    "out_of_step_1",
    "out_of_step_2",
    "out_of_step_3",
    "out_of_step_4",
    "service_1",
    "service_2",
    "service_3",
    "service_4",
];

/// A network and what the simulator says of it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Drawn {
    /// Name: what it is of, and a number.
    pub name: String,
    /// What it was drawn from.
    pub seed: u32,
    /// Name, class in volts, whether ungrounded.
    pub nodes: Vec<(String, f64, bool)>,
    /// What stands between the nodes.
    pub elements: Vec<Element>,
    /// The simulator's answer for each group of sources.
    pub answers: Vec<Answer>,
}

/// An element between named nodes, in ohms and volts.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub enum Element {
    /// An impedance along a wire.
    Series {
        /// One end.
        a: String,
        /// The other end.
        b: String,
        /// Resistance, ohms.
        r: f64,
        /// Reactance, ohms.
        x: f64,
    },
    /// An impedance to earth or neutral.
    Shunt {
        /// One end.
        a: String,
        /// The other end.
        b: String,
        /// Resistance, ohms.
        r: f64,
        /// Reactance, ohms.
        x: f64,
    },
    /// A load as an impedance.
    Load {
        /// One end.
        a: String,
        /// The other end.
        b: String,
        /// Resistance, ohms.
        r: f64,
        /// Reactance, ohms.
        x: f64,
    },
    /// A switch.
    Switch {
        /// One end.
        a: String,
        /// The other end.
        b: String,
        /// Resistance, ohms.
        r: f64,
        /// Whether it is closed.
        closed: bool,
    },
    /// Conductors side by side.
    Coupled {
        /// Ends of each conductor.
        ends: Vec<(String, String)>,
        /// Resistance, ohms.
        r: Vec<Vec<f64>>,
        /// Reactance, ohms.
        x: Vec<Vec<f64>>,
    },
    /// A transformer with a center-tapped secondary.
    CenterTapped {
        /// Ends of the primary.
        primary: (String, String),
        /// First end, tap, last end of the secondary.
        secondary: (String, String, String),
        /// Rating, volt-amps.
        va: f64,
        /// Rated volts of the primary.
        primary_v: f64,
        /// Rated volts of one half.
        half_v: f64,
        /// Resistance, per unit.
        r_pu: f64,
        /// Reactance, per unit.
        x_pu: f64,
    },
    /// EMFs of one source.
    Source {
        /// What it is synchronized with.
        group: u8,
        /// Ends, EMF in volts, resistance and reactance in ohms of each.
        ports: Vec<(String, String, (f64, f64), f64, f64)>,
    },
}

/// Phasors of one group: of every node, and of every EMF's current out of its positive terminal.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// The group.
    pub group: u8,
    /// Real and imaginary volts of every node, in the order of the nodes.
    pub volts: Vec<(f64, f64)>,
    /// Real and imaginary amps of every EMF, in the order of sources and ports.
    pub amps: Vec<(f64, f64)>,
}

/// A network with what is asked of it.
#[derive(Debug, Clone)]
pub struct Built {
    /// All of it.
    pub network: Network,
    /// Its nodes, in order.
    pub nodes: Vec<NodeId>,
    /// Its EMFs, as source and port.
    pub emfs: Vec<(BranchId, usize)>,
}

/// One phasor of ours beside the simulator's.
#[derive(Debug, Clone, PartialEq)]
pub struct Pair {
    /// What it is of.
    pub what: String,
    /// Ours.
    pub ours: Complex,
    /// The simulator's.
    pub theirs: Complex,
    /// How far apart they may be.
    pub allowed: f64,
}

impl Pair {
    /// How far apart they are, in parts of what is allowed.
    pub fn apart(&self) -> f64 {
        magnitude(self.ours - self.theirs) / self.allowed
    }
}

/// Every drawn network.
///
/// # Errors
/// Every file that can't be read, with the place of its first fault.
pub fn drawn() -> Result<Vec<Drawn>, Vec<Diagnostic>> {
    let mut found = Vec::new();
    let mut faults = Vec::new();
    for (file, text) in FILES {
        match (Source { file, text }).data::<Drawn>() {
            Ok(drawn) => found.push(drawn),
            Err(mut wrong) => faults.append(&mut wrong),
        }
    }
    if faults.is_empty() {
        Ok(found)
    } else {
        Err(faults)
    }
}

/// Of each network and group the volts and amps that are furthest apart, as rows that count once a network.
///
/// # Errors
/// As [`drawn()`].
pub(super) fn compared() -> Result<Vec<Compared>, Vec<Diagnostic>> {
    let mut rows = Vec::new();
    for drawn in drawn()? {
        let furthest = drawn.furthest();
        if furthest.is_empty() {
            rows.extend(drawn.parts(&drawn.unanswered()));
        }
        rows.extend(furthest.iter().flat_map(|pair| drawn.parts(pair)));
    }
    Ok(rows)
}

impl Drawn {
    /// The network; none if an element hangs on a node that isn't there.
    pub fn build(&self) -> Option<Built> {
        let mut network = Network::new();
        let mut named = BTreeMap::from([("earth", NodeId::EARTH)]);
        let mut nodes = Vec::new();
        for (name, base_v, is_ungrounded) in &self.nodes {
            let conductor = if *is_ungrounded {
                Conductor::Ungrounded
            } else {
                Conductor::Grounded
            };
            let node = network.node(*base_v, conductor);
            named.insert(name, node);
            nodes.push(node);
        }
        let mut emfs = Vec::new();
        for element in &self.elements {
            add(&mut network, &named, element, &mut emfs)?;
        }
        Some(Built {
            network,
            nodes,
            emfs,
        })
    }

    /// Every phasor that the simulator gave, beside ours; none if our solver found no answer.
    pub fn pairs(&self) -> Vec<Pair> {
        let Some(built) = self.build() else {
            return Vec::new();
        };
        let Ok(mut solver) = Solver::new(built.network.clone()) else {
            return Vec::new();
        };
        let solution = solver.solve();
        if !solution.converged() {
            return Vec::new();
        }
        let answers = self.answers.iter();
        answers
            .flat_map(|answer| {
                let [volts, amps] = self.sides(&built, solution, answer);
                volts.into_iter().chain(amps)
            })
            .collect()
    }

    fn sides(&self, built: &Built, solution: &Solution, answer: &Answer) -> [Vec<Pair>; 2] {
        let group = Group(answer.group);
        let about = |unit: &str, of: &str| {
            let Self { name, nodes, .. } = self;
            format!(
                "{name}, {} nodes, group {}: {unit} of {of}",
                nodes.len(),
                answer.group
            )
        };
        let volts = built.nodes.iter().zip(&self.nodes);
        let volts =
            volts.map(|(node, (name, ..))| (about("V", name), solution.phasor(*node, group)));
        let amps = built
            .emfs
            .iter()
            .enumerate()
            .map(|(index, (source, port))| {
                let ours = solution.current_phasor(*source, *port, group);
                (about("A", &format!("EMF {}", index + 1)), ours)
            });
        [
            beside(volts.collect(), &answer.volts),
            beside(amps.collect(), &answer.amps),
        ]
    }

    /// Of each unit in each group the pair that is furthest apart.
    fn furthest(&self) -> Vec<Pair> {
        let mut furthest: Vec<Pair> = Vec::new();
        for pair in self.pairs() {
            let kind = |pair: &Pair| pair.what.split(" of ").next().map(str::to_owned);
            match furthest.iter_mut().find(|known| kind(known) == kind(&pair)) {
                Some(known) if known.apart() < pair.apart() => *known = pair,
                Some(_) => {}
                None => furthest.push(pair),
            }
        }
        furthest
    }

    /// What stands for a network on which our solver found no answer.
    fn unanswered(&self) -> Pair {
        Pair {
            what: self.name.clone(),
            ours: Complex::new(f64::NAN, f64::NAN),
            theirs: Complex::ZERO,
            allowed: 0.0,
        }
    }

    /// A pair as two rows: the real part and the imaginary part.
    fn parts(&self, pair: &Pair) -> [Compared; 2] {
        [
            ("real", pair.ours.re, pair.theirs.re),
            ("imaginary", pair.ours.im, pair.theirs.im),
        ]
        .map(|(part, ours, theirs)| Compared {
            section: Section::DrawnNetworks,
            quantity: format!("{}, {part} part", pair.what),
            published: theirs,
            ours,
            tolerance: Tolerance::Absolute(pair.allowed),
            source: SOURCE.to_owned(),
            standing: Standing::Computed,
            differs: None,
            follows: Some(self.name.clone()),
        })
    }
}

/// Ours beside the simulator's numbers of one kind; an answer that is missing is no pair, and its absence shows in their count.
fn beside(ours: Vec<(String, Complex)>, theirs: &[(f64, f64)]) -> Vec<Pair> {
    let theirs: Vec<Complex> = theirs
        .iter()
        .map(|(re, im)| Complex::new(*re, *im))
        .collect();
    let largest = theirs.iter().copied().map(magnitude).fold(0.0, f64::max);
    let pairs = ours.into_iter().zip(theirs);
    pairs
        .map(|((what, ours), theirs)| Pair {
            what,
            ours,
            theirs,
            allowed: RELATIVE * magnitude(theirs) + OF_LARGEST * largest,
        })
        .collect()
}

fn add(
    network: &mut Network,
    named: &BTreeMap<&str, NodeId>,
    element: &Element,
    emfs: &mut Vec<(BranchId, usize)>,
) -> Option<()> {
    let at = |name: &String| named.get(name.as_str()).copied();
    let z = |&r: &f64, &x: &f64| Complex::new(r, x);
    match element {
        Element::Series { a, b, r, x } => {
            network.series(at(a)?, at(b)?, z(r, x));
        }
        Element::Shunt { a, b, r, x } => {
            network.shunt(at(a)?, at(b)?, z(r, x), true);
        }
        Element::Load { a, b, r, x } => {
            network.load(at(a)?, at(b)?, Load::Impedance(z(r, x)));
        }
        Element::Switch { a, b, r, closed } => {
            network.switch(at(a)?, at(b)?, *r, *closed);
        }
        Element::Coupled { ends, r, x } => {
            let from: Option<Vec<NodeId>> = ends.iter().map(|(a, _)| at(a)).collect();
            let to: Option<Vec<NodeId>> = ends.iter().map(|(_, b)| at(b)).collect();
            let pairs = r.iter().flatten().zip(x.iter().flatten());
            let matrix: Vec<Complex> = pairs.map(|(r, x)| z(r, x)).collect();
            network.coupled(&from?, &to?, &matrix, true);
        }
        Element::CenterTapped {
            primary,
            secondary,
            va,
            primary_v,
            half_v,
            r_pu,
            x_pu,
        } => {
            network.windings(Windings::center_tapped(CenterTapped {
                primary: (at(&primary.0)?, at(&primary.1)?),
                secondary: (at(&secondary.0)?, at(&secondary.1)?, at(&secondary.2)?),
                va: *va,
                primary_v: *primary_v,
                half_v: *half_v,
                r_pu: *r_pu,
                x_pu: *x_pu,
            }));
        }
        Element::Source { group, ports } => {
            let spec = ports.iter().map(|(a, b, emf, r, x)| {
                Some(Port {
                    a: at(a)?,
                    b: at(b)?,
                    emf_v: z(&emf.0, &emf.1),
                    z: z(r, x),
                })
            });
            let source = network.source(SourceSpec {
                ports: spec.collect::<Option<Vec<Port>>>()?,
                group: Group(*group),
                on: true,
                ceiling: None,
            });
            emfs.extend((0..ports.len()).map(|port| (source, port)));
        }
    }
    Some(())
}
