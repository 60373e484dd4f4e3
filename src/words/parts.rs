//! Names made of other names: the breaker of a circuit, the plug of an appliance, the ends of a cord; and that what a machine guards is lost.
//!
//! A house has hundreds of such things, and a word file needs only the name of what they belong to.
//! A name that a word file gives in full comes first; this is for those it doesn't give.

/// What stands before a thing's own name, and the message that puts the two together.
const BEFORE: [(&str, &str); 15] = [
    ("breaker-", "part-breaker"),
    ("fuse-", "part-fuse"),
    ("circuit-", "part-circuit"),
    ("outlet-", "part-outlet"),
    ("gfci-", "part-gfci"),
    ("branch-", "part-branch"),
    ("neutral-", "part-neutral"),
    ("feeder-", "part-feeder"),
    ("bus-", "part-bus"),
    ("drop-", "part-drop"),
    ("handle-", "part-handle"),
    ("tag-", "part-tag"),
    ("jumper-", "part-jumper"),
    ("cutout-", "part-cutout"),
    ("grounds-", "part-grounds"),
];

/// What stands after it.
const AFTER: [(&str, &str); 15] = [
    ("-generator-end", "part-generator-end"),
    ("-house-end", "part-house-end"),
    ("-second-plug", "part-second-plug"),
    ("-far-end", "part-far-end"),
    ("-near-end", "part-near-end"),
    ("-plug", "part-plug"),
    ("-switch", "part-switch"),
    ("-frame", "part-frame"),
    ("-joint", "part-joint"),
    ("-ground", "part-ground"),
    ("-lay", "part-lay"),
    ("-lock", "part-lock"),
    ("-breaker", "part-own-breaker"),
    ("-gfci", "part-gfci"),
    ("-battery", "part-battery"),
];

/// Each way to take a name apart: the message that makes it, and the thing that has the other name.
pub(super) fn parts(id: &str) -> impl Iterator<Item = (&'static str, &str)> {
    let lost = id.strip_prefix("event-lost-");
    let thing = id.strip_prefix("name-").unwrap_or_default();
    let after = AFTER
        .iter()
        .filter_map(|(p, m)| Some((*m, thing.strip_suffix(p)?)));
    let before = BEFORE
        .iter()
        .filter_map(|(p, m)| Some((*m, thing.strip_prefix(p)?)));
    let lost = lost.map(|thing| ("event-lost-anything", thing));
    after.chain(before).chain(lost)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_part_is_told_from_what_it_belongs_to() {
        let told = |id: &str| parts(id).next().map(|(m, of)| format!("{m} {of}"));
        assert_eq!(
            told("name-breaker-well").as_deref(),
            Some("part-breaker well")
        );
        assert_eq!(
            told("name-cord-a-generator-end").as_deref(),
            Some("part-generator-end cord-a")
        );
        assert_eq!(told("name-well"), None);
        assert_eq!(told("breaker-well"), None);
        let lost = told("event-lost-heat-pump");
        assert_eq!(lost.as_deref(), Some("event-lost-anything heat-pump"));
    }
}
