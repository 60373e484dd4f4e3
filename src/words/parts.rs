//! Names made of other names: the breaker of a circuit, the plug of an appliance, the ends of a cord.
//!
//! A house has hundreds of such things, and a word file needs only the name of what they belong to.
//! A name that a word file gives in full comes first; this is for those it doesn't give.

/// What stands before a thing's own name, and the message that puts the two together.
const BEFORE: [(&str, &str); 8] = [
    ("breaker-", "part-breaker"),
    ("circuit-", "part-circuit"),
    ("outlet-", "part-outlet"),
    ("gfci-", "part-gfci"),
    ("branch-", "part-branch"),
    ("feeder-", "part-feeder"),
    ("bus-", "part-bus"),
    ("drop-", "part-drop"),
];

/// What stands after it.
const AFTER: [(&str, &str); 11] = [
    ("-generator-end", "part-generator-end"),
    ("-house-end", "part-house-end"),
    ("-far-end", "part-far-end"),
    ("-near-end", "part-near-end"),
    ("-plug", "part-plug"),
    ("-switch", "part-switch"),
    ("-frame", "part-frame"),
    ("-lay", "part-lay"),
    ("-lock", "part-lock"),
    ("-breaker", "part-breaker"),
    ("-gfci", "part-gfci"),
];

/// The message that makes a name of another, and the other's id; `None` for a name that has no such parts.
pub(super) fn parts(id: &str) -> Option<(&'static str, String)> {
    let thing = id.strip_prefix("name-")?;
    let before = BEFORE
        .iter()
        .find_map(|(p, m)| Some((*m, thing.strip_prefix(p)?)));
    let after = || {
        AFTER
            .iter()
            .find_map(|(p, m)| Some((*m, thing.strip_suffix(p)?)))
    };
    let (message, of) = before.or_else(after)?;
    Some((message, format!("name-{of}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_part_is_told_from_what_it_belongs_to() {
        let told = |id: &str| parts(id).map(|(m, of)| format!("{m} {of}"));
        assert_eq!(
            told("name-breaker-well").as_deref(),
            Some("part-breaker name-well")
        );
        assert_eq!(
            told("name-cord-a-generator-end").as_deref(),
            Some("part-generator-end name-cord-a")
        );
        assert_eq!(told("name-well"), None);
        assert_eq!(told("breaker-well"), None);
    }
}
