//! Networks that tests and timings share: a split-phase service forwards and backwards, and a lateral of houses.
//!
//! The networks and their values are invented for this project.

use outage_drill::circuit::{
    BranchId, CenterTapped, Conductor, Group, Load, Network, NodeId, Port, SourceSpec, Windings,
};
use outage_drill::units::Complex;

/// A complex number.
pub(crate) fn c(re: f64, im: f64) -> Complex {
    Complex::new(re, im)
}

const UNGROUNDED: Conductor = Conductor::Ungrounded;
const GROUNDED: Conductor = Conductor::Grounded;

/// A fixed EMF from `a` to `b`.
pub(crate) fn fixed(a: NodeId, b: NodeId, emf_v: f64, z: Complex) -> SourceSpec {
    SourceSpec {
        ports: vec![Port {
            a,
            b,
            emf_v: c(emf_v, 0.0),
            z,
        }],
        group: Group(0),
        on: true,
        ceiling: None,
    }
}

/// The 25 kVA transformer, from the leakage between its three windings.
pub(crate) fn transformer(
    primary: (NodeId, NodeId),
    secondary: (NodeId, NodeId, NodeId),
) -> Windings {
    Windings::center_tapped(CenterTapped {
        primary,
        secondary,
        va: 25_000.0,
        primary_v: 7200.0,
        half_v: 120.0,
        r_pu: 0.012,
        x_pu: 0.017,
    })
}

/// Core loss and magnetizing current of that transformer, on the primary.
pub(crate) fn excite(network: &mut Network, a: NodeId, n: NodeId) -> [BranchId; 2] {
    [
        network.shunt(a, n, c(1_036_800.0, 0.0), true),
        network.shunt(a, n, c(0.0, 414_720.0), true),
    ]
}

/// What the cases of the split-phase service differ in.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Case {
    pub(crate) utility: bool,
    pub(crate) drop_neutral_open: bool,
    pub(crate) main_open: bool,
    pub(crate) neighbors: bool,
    pub(crate) body: bool,
    pub(crate) protective_grounds: bool,
}

/// The split-phase service: its nodes and the elements that the cases change.
#[derive(Debug, Clone)]
pub(crate) struct SplitPhase {
    pub(crate) network: Network,
    pub(crate) panel: [NodeId; 3],
    pub(crate) pole: [NodeId; 2],
    pub(crate) generator: [NodeId; 3],
    pub(crate) loads: [BranchId; 3],
    pub(crate) wires: Vec<BranchId>,
    pub(crate) body: BranchId,
    pub(crate) utility_source: BranchId,
    pub(crate) generator_source: BranchId,
    pub(crate) main: [BranchId; 2],
}

/// Where the two lines of a case differ: a wire that is there or not, as a switch of its own would change the answer.
fn wire_if(
    network: &mut Network,
    present: bool,
    a: NodeId,
    b: NodeId,
    z: Complex,
) -> Option<BranchId> {
    present.then(|| network.series(a, b, z))
}

/// Builds a case of the split-phase service.
pub(crate) fn split_phase(case: Case) -> SplitPhase {
    let mut n = Network::new();
    let mut wires = Vec::new();
    let (src_a, src_n) = (n.node(7200.0, UNGROUNDED), n.node(7200.0, GROUNDED));
    let (pole_a, pole_n) = (n.node(7200.0, UNGROUNDED), n.node(7200.0, GROUNDED));
    let [sec_1, sec_2, svc_1, svc_2] = core::array::from_fn(|_| n.node(120.0, UNGROUNDED));
    let [panel_1, panel_2, gen_1, gen_2] = core::array::from_fn(|_| n.node(120.0, UNGROUNDED));
    let [sec_n, panel_n, gen_n] = core::array::from_fn(|_| n.node(120.0, GROUNDED));
    let earth = NodeId::EARTH;

    let mut utility = fixed(src_a, src_n, 7200.0, c(0.1, 1.0));
    utility.on = case.utility;
    let utility_source = n.source(utility);
    n.shunt(src_n, earth, c(1.0, 0.0), true);
    wires.extend(wire_if(&mut n, case.utility, src_a, pole_a, c(1.38, 0.76)));
    wires.push(n.series(src_n, pole_n, c(1.38, 0.76)));
    n.shunt(pole_n, earth, c(25.0, 0.0), true);
    n.windings(transformer((pole_a, pole_n), (sec_1, sec_n, sec_2)));
    excite(&mut n, pole_a, pole_n);
    wires.push(n.series(pole_n, sec_n, c(0.001, 0.0)));
    wires.push(n.series(sec_1, svc_1, c(0.0168, 0.003)));
    wires.push(n.series(sec_2, svc_2, c(0.0168, 0.003)));
    wires.extend(wire_if(
        &mut n,
        !case.drop_neutral_open,
        sec_n,
        panel_n,
        c(0.0268, 0.003),
    ));
    let main = [
        n.switch(svc_1, panel_1, 0.001, !case.main_open),
        n.switch(svc_2, panel_2, 0.001, !case.main_open),
    ];
    n.shunt(panel_n, earth, c(25.0, 0.0), true);
    let loads = [
        n.load(panel_1, panel_n, Load::Impedance(c(9.6, 0.0))),
        n.load(panel_2, panel_n, Load::Impedance(c(48.0, 0.0))),
        n.load(panel_1, panel_2, Load::Impedance(c(14.4, 0.0))),
    ];
    let half = |a, b| Port {
        a,
        b,
        emf_v: c(120.0, 0.0),
        z: c(0.115, 0.23),
    };
    let ports = vec![half(gen_1, gen_n), half(gen_n, gen_2)];
    let generator_source = n.source(SourceSpec {
        ports,
        group: Group(0),
        on: !case.utility,
        ceiling: None,
    });
    if !case.utility {
        for (a, b) in [(gen_1, panel_1), (gen_2, panel_2), (gen_n, panel_n)] {
            wires.push(n.series(a, b, c(0.025, 0.002)));
        }
    }
    if case.neighbors {
        for _ in 0..2 {
            n.load(sec_1, sec_n, Load::Impedance(c(14.4, 0.0)));
            n.load(sec_n, sec_2, Load::Impedance(c(14.4, 0.0)));
        }
    }
    let w = n.node(7200.0, UNGROUNDED);
    let body = n.shunt(pole_a, w, c(1000.0, 0.0), case.body);
    n.shunt(w, earth, c(200.0, 0.0), case.body);
    n.switch(pole_a, pole_n, 0.001, case.protective_grounds);
    SplitPhase {
        network: n,
        panel: [panel_1, panel_2, panel_n],
        pole: [pole_a, pole_n],
        generator: [gen_1, gen_2, gen_n],
        loads,
        wires,
        body,
        utility_source,
        generator_source,
        main,
    }
}

/// A lateral of houses, for timing and growth.
#[derive(Debug, Clone)]
pub(crate) struct Lateral {
    pub(crate) network: Network,
    pub(crate) nodes: Vec<NodeId>,
    pub(crate) loads: Vec<BranchId>,
    pub(crate) branches: Vec<BranchId>,
    /// The span phases, as switches' places for switching tests: one for each house.
    pub(crate) spans: Vec<BranchId>,
}

/// Builds a lateral of `houses`, each with its own transformer, drop and four branches.
pub(crate) fn lateral(houses: usize) -> Lateral {
    let mut n = Network::new();
    let earth = NodeId::EARTH;
    let mut at = (n.node(7200.0, UNGROUNDED), n.node(7200.0, GROUNDED));
    let mut nodes = vec![at.0, at.1];
    let mut branches = vec![
        n.source(fixed(at.0, at.1, 7200.0, c(0.1, 1.0))),
        n.shunt(at.1, earth, c(1.0, 0.0), true),
    ];
    let (mut loads, mut spans) = (Vec::new(), Vec::new());
    for _ in 0..houses {
        let (a, g) = (n.node(7200.0, UNGROUNDED), n.node(7200.0, GROUNDED));
        let [s_1, s_2, panel_1, panel_2] = core::array::from_fn(|_| n.node(120.0, UNGROUNDED));
        let (s_n, panel_n) = (n.node(120.0, GROUNDED), n.node(120.0, GROUNDED));
        nodes.extend([a, g, s_1, s_2, panel_1, panel_2, s_n, panel_n]);
        spans.push(n.series(at.0, a, c(0.138, 0.076)));
        branches.push(*spans.last().unwrap());
        branches.push(n.series(at.1, g, c(0.138, 0.076)));
        branches.push(n.shunt(g, earth, c(25.0, 0.0), true));
        branches.push(n.windings(transformer((a, g), (s_1, s_n, s_2))));
        branches.extend(excite(&mut n, a, g));
        branches.push(n.series(g, s_n, c(0.001, 0.0)));
        branches.push(n.series(s_1, panel_1, c(0.0168, 0.003)));
        branches.push(n.series(s_2, panel_2, c(0.0168, 0.003)));
        branches.push(n.series(s_n, panel_n, c(0.0268, 0.003)));
        branches.push(n.shunt(panel_n, earth, c(25.0, 0.0), true));
        for (j, leg) in [panel_1, panel_2, panel_1, panel_2].into_iter().enumerate() {
            let end = n.node(120.0, UNGROUNDED);
            nodes.push(end);
            branches.push(n.series(leg, end, c(0.1, 0.01)));
            loads.push(n.load(
                end,
                panel_n,
                Load::Impedance(c(f64::from(20 + u8::try_from(j).unwrap()), 0.0)),
            ));
            branches.push(*loads.last().unwrap());
        }
        at = (a, g);
    }
    Lateral {
        network: n,
        nodes,
        loads,
        branches,
        spans,
    }
}
