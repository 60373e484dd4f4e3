//! The IEEE 4 Node Test Feeder: what its loads take, and the rectangular form of its answer.
//!
//! Its published table stands in `tests/networks/four-node.ron`.

use crate::circuit_networks::c;
use outage_drill::circuit::{Group, Solver};
use outage_drill::evidence::networks::{Bank, Loading, four_node};

#[test]
fn constant_power_is_taken_to_the_watt_well_below_rated_volts() {
    for bank in [Bank::WyeWye, Bank::DeltaWye] {
        for loading in [Loading::Balanced, Loading::Unbalanced] {
            let built = four_node(loading, bank);
            let mut solver = Solver::new(built.network).unwrap();
            let s = solver.solve();
            assert!(s.converged());
            assert!(s.kirchhoff_residual() <= 1e-9 && s.power_imbalance() <= 1e-9);
            let taken: f64 = built.loads.iter().map(|&load| s.power(load).re).sum();
            let wanted = match loading {
                Loading::Balanced => 5_400_000.0,
                Loading::Unbalanced => 5_450_000.0,
            };
            assert!(
                (taken - wanted).abs() < 1e-2,
                "{bank:?} {loading:?}: {taken} W"
            );
            assert!(built.loads.iter().all(|&load| !s.load_fell_back(load)));
        }
    }
}

#[test]
fn node_4_unbalanced_agrees_with_every_digit_of_its_rectangular_form() {
    let built = four_node(Loading::Unbalanced, Bank::WyeWye);
    let mut solver = Solver::new(built.network).unwrap();
    let s = solver.solve();
    // of the same open test data
    for (node, by_table) in built.nodes[2].into_iter().zip([
        c(2169.34, -156.39),
        c(-1155.95, -1545.31),
        c(-407.43, 1786.80),
    ]) {
        let ours = s.phasor(node, Group(0));
        let apart = ours - by_table;
        assert!(
            apart.re.abs() <= 0.005 && apart.im.abs() <= 0.005,
            "{ours}, table {by_table}"
        );
    }
}
