//! The proof of the shipped drills: what holds of each over everything that can be reached.

use outage_drill::drill::write_action;
use outage_drill::file::Library;
use outage_drill::proof::{marked, prove};

#[test]
fn the_shipped_drills_are_sound() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    for scenario in &library.scenarios {
        let started = std::time::Instant::now();
        let proof = prove(scenario, &marked).unwrap();
        println!("{} {:?} {:?}", scenario.name, proof.figures, started.elapsed());
        for (property, standing) in &proof.properties {
            let ways = match standing {
                outage_drill::proof::Standing::Broken(way) | outage_drill::proof::Standing::Declared(way) => way.iter().map(|a| write_action(&scenario.site, a)).collect::<Vec<_>>(),
                _ => Vec::new(),
            };
            println!("  {property:?} {standing:?} {ways:?}");
        }
    }
}
