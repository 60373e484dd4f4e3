//! What a hand does to bring a control into a position, in words; and which of these acts touch a line.
//!
//! Whether a line is live then is never said: the mark of an act is the same whatever is true.
//! It does not cover where two positions lie more than one move apart, as those of grounds: they are named as they then stand.

use crate::site::{Control, Kind};
use crate::words::{Message, name_of};

/// Positions of a plug that is in nothing.
const LOOSE: [&str; 2] = ["stowed", "unplugged"];

/// How a control stands, in words: a plug that is in something says so, beside one that is unplugged or put away.
pub(super) fn stands_said(control: &Control, position: &str) -> Message {
    if control.kind == Kind::Plug && !LOOSE.contains(&position) {
        Message::new("close-choice-plug").name("position", control.said(position))
    } else {
        name_of(control.said(position))
    }
}

/// What is done to make it stand otherwise: what a hand does where there is a word for that, else how it then stands.
pub(super) fn act_said(control: &Control, position: &str) -> Message {
    match control.kind {
        Kind::Gfci => Message::new("close-choice-reset").name("position", control.said(position)),
        Kind::Plug if !LOOSE.contains(&position) => {
            Message::new("close-act-plug").name("position", control.said(position))
        }
        Kind::Line => {
            on_line(control, position).map_or_else(|| stands_said(control, position), Message::new)
        }
        Kind::Breaker
        | Kind::Output
        | Kind::Main
        | Kind::Backfed
        | Kind::Lock
        | Kind::Plug
        | Kind::Placement
        | Kind::Engine
        | Kind::Switch
        | Kind::Disconnect
        | Kind::Transfer
        | Kind::Lay
        | Kind::Opening
        | Kind::People => stands_said(control, position),
    }
}

/// What a line worker does.
fn on_line(control: &Control, position: &str) -> Option<&'static str> {
    let named = match (control.name.as_str(), position) {
        ("broken-span", "whole") => "act-join-line",
        ("broken-span", "broken") => "act-part-line",
        ("crew", "away") => "act-leave-line",
        ("crew", "testing") => "act-go-to-pole",
        ("crew", "hands-on") => "act-take-line",
        ("crew", "clear") => "act-step-clear",
        ("feeder", "open") => "act-order-open",
        ("feeder", "closed") => "act-order-closed",
        (_, "open") => "act-open",
        (_, "closed") => "act-close",
        (_, "absent") => "act-take-off",
        (_, "present") => "act-put-on",
        (tag, "off") if tag.starts_with("tag-") => "act-take-off",
        (tag, "on") if tag.starts_with("tag-") => "act-put-on",
        _ => return None,
    };
    Some(named)
}

/// Whether bare hands are on a line while this is done.
pub(super) fn touches(control: &Control, position: &str) -> bool {
    match control.name.as_str() {
        "crew" => position == "hands-on",
        "broken-span" => true,
        _ => false,
    }
}
