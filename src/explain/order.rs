//! An order in which what ran can be brought on after all, and what has to be left out of it.
//!
//! Found by trying each step on the solver; what starts by itself on the same source is counted in, since no order works that forgets it.
//! Not covered: time between the steps, which is taken as long enough.

use crate::drill::{Drill, Moment, TooMuch};
use crate::site::Demand;
use crate::words::{Arg, Message, Unit};

use super::{Stage, value};

/// What ran, and what will start by itself on the same source: no order works that forgets it.
fn with_those_that_start(drill: &Drill, moment: &Moment, ran: &[usize]) -> Vec<usize> {
    let by_itself = |index: &usize| {
        let built = drill.site().appliances.get(*index);
        let waits = built.is_some_and(|a| matches!(a.demand, Demand::Reservoir(_)));
        waits && !ran.contains(index) && moment.readings.appliance(*index).fed.customer()
    };
    let others = (0..drill.site().appliances.len()).filter(by_itself);
    ran.iter().copied().chain(others).collect()
}

/// An order that works, and what has to be left out.
pub(super) fn stages(drill: &Drill, moment: &Moment, ran: &[usize]) -> Vec<Stage> {
    let found = drill.one_by_one(moment, &with_those_that_start(drill, moment, ran));
    let site = drill.site();
    let name = |index: usize| site.appliances.get(index).map_or("", |a| a.name.as_str());
    let stage = |index: usize, text: Message, shown: Message| Stage {
        at: name(index).to_owned(),
        text: text.name("name", name(index)),
        value: shown,
    };
    let brought = (1..).zip(&found.order).map(|(number, brought)| {
        let id = match brought.at_start_w {
            Some(_) if brought.then_w > 0.0 => "stage-order-motor",
            None if brought.then_w > 0.0 => "stage-order",
            _ => "stage-order-utility",
        };
        let text = Message::new(id)
            .with("number", Arg::Count(number))
            .quantity("start", brought.at_start_w.unwrap_or_default(), Unit::Watts)
            .quantity("then", brought.then_w, Unit::Watts);
        stage(brought.appliance, text, value(brought.then_w, Unit::Watts))
    });
    let left_out = found.left_out.iter().map(|(index, why)| {
        let (text, shown) = match *why {
            TooMuch::Asked(watts) => (
                Message::new("stage-leave-asked").quantity("asked", watts, Unit::Watts),
                value(watts, Unit::Watts),
            ),
            TooMuch::AskedAgain(motor, watts) => (
                Message::new("stage-leave-restart")
                    .quantity("asked", watts, Unit::Watts)
                    .name("starts", name(motor)),
                value(watts, Unit::Watts),
            ),
            TooMuch::Through(control, amps) => (
                Message::new("stage-leave-through")
                    .name(
                        "guard",
                        site.control(control).map_or("", |c| c.name.as_str()),
                    )
                    .quantity("amps", amps, Unit::Amps),
                value(amps, Unit::Amps),
            ),
            TooMuch::Starves(pu) => (
                Message::new("stage-leave-starves").quantity("share", 100.0 * pu, Unit::Percent),
                value(100.0 * pu, Unit::Percent),
            ),
            TooMuch::Stands(pu) => (
                Message::new("stage-leave-stands").quantity("share", 100.0 * pu, Unit::Percent),
                value(100.0 * pu, Unit::Percent),
            ),
        };
        stage(*index, text, shown)
    });
    brought.chain(left_out).collect()
}
