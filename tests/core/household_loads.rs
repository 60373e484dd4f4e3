//! The loads of the shipped houses beside the published charts: each within a factor of what the charts print.

use outage_drill::apparatus::household::Household;
use outage_drill::file::Library;
use outage_drill::site::{Appliance, Work};

/// Appliances whose name tells their chart.
const CHARTS: [(&str, Household); 7] = [
    ("fridge", Household::Refrigerator),
    ("furnace", Household::FurnaceFan),
    ("sump", Household::SumpPump),
    ("microwave", Household::Microwave),
    ("water-heater", Household::WaterHeater),
    ("well", Household::WellPump),
    ("washer", Household::ClothesWasher),
];

fn running_w(appliance: &Appliance) -> f64 {
    match &appliance.work {
        Work::Resistive { watts } | Work::Electronic { watts, .. } => *watts,
        Work::Motor(motor) => motor.running_w,
    }
}

#[test]
fn shipped_appliances_take_what_charts_print_for_them_or_less_by_a_third_of_it_at_most() {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty());
    let mut compared = 0;
    for scenario in &library.scenarios {
        for appliance in &scenario.site.appliances {
            let Some((_, chart)) = CHARTS.iter().find(|(name, _)| *name == appliance.name) else {
                continue;
            };
            let watts = running_w(appliance);
            let printed = chart.chart_watts().running;
            // Charts print old machines generously: a fridge of today takes a third of the least they print.
            assert!(
                watts >= printed.start() / 3.0 && watts <= *printed.end(),
                "{} in {}: {watts} W, charts {printed:?}",
                appliance.name,
                scenario.site.name
            );
            compared += 1;
        }
    }
    assert!(compared >= 10, "{compared}");
}
