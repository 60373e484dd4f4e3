//! The table of mistakes: which drill shows each, by which list of actions, what is found and how it is put right.
//!
//! It is printed as a table that `scenarios/MISTAKES.md` keeps, and not passed if one mistake isn't shown as it should be.
//!
//! The `--json` document has `version`, `mistakes`, `held` and `all`.
//! Each of `mistakes` has `name`, `mistake` (in words), `risks`, `holds` and `shown`; each of `shown` has `drill`, `list`, `finds` (names of rules), `recovers` or `rewinds` (a list, or null) and `holds`.

use serde_json::{Value, json};

use crate::evidence::mistakes::{Mistake, Remedy, Risk, Shown, mistakes};
use crate::words::{Arg, Message, Words};

use super::output::Output;
use super::{DONE, JSON_VERSION, NOT_PASSED, faults};

/// Headings of the columns.
const COLUMNS: [&str; 6] = [
    "mistakes-mistake",
    "mistakes-risks",
    "mistakes-drill",
    "mistakes-list",
    "mistakes-finds",
    "mistakes-remedy",
];

/// Plays the lists of all mistakes and prints what comes of them.
pub(super) fn run(as_json: bool, output: &mut Output<'_>) -> u8 {
    let all = match mistakes() {
        Ok(all) => all,
        Err(found) => return faults::print_and_stop(&found, output),
    };
    if as_json {
        let document = document(&all, &output.words);
        output.line(&format!("{document:#}"));
    } else {
        let lines = table(&all, &output.words);
        output.lines(&lines);
        output.blank();
        output.say(&total(&all));
    }
    for mistake in all.iter().filter(|m| !m.holds()) {
        output.say_error(
            &Message::new("mistakes-wrong").with("mistake", Arg::Verbatim(mistake.name.to_owned())),
        );
    }
    if all.iter().all(Mistake::holds) {
        DONE
    } else {
        NOT_PASSED
    }
}

fn total(all: &[Mistake]) -> Message {
    let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
    Message::new("mistakes-total")
        .with("held", count(all.iter().filter(|m| m.holds()).count()))
        .with("all", count(all.len()))
}

/// A row for each list of each mistake, between bars.
fn table(all: &[Mistake], words: &Words) -> Vec<String> {
    let heads = COLUMNS.map(|head| words.say_id(head));
    let mut lines = vec![
        row(&heads),
        row(&heads.each_ref().map(|_| "---".to_owned())),
    ];
    for mistake in all {
        let own = [in_words(mistake, words), risks(mistake, words).join(", ")];
        let of = |cells: [String; 4]| {
            let [drill, list, finds, remedy] = cells;
            let [name, risks] = own.clone();
            row(&[name, risks, drill, list, finds, remedy])
        };
        if mistake.shown.is_empty() {
            let none = words.say_id("mistakes-none");
            lines.push(of([String::new(), String::new(), String::new(), none]));
        }
        for shown in &mistake.shown {
            lines.push(of([
                shown.drill.clone(),
                shown.list.clone(),
                finds(shown).join(", "),
                remedy(shown, words),
            ]));
        }
    }
    lines
}

fn row(cells: &[String]) -> String {
    format!("| {} |", cells.join(" | "))
}

fn in_words(mistake: &Mistake, words: &Words) -> String {
    words.say_id(&format!("mistake-{}", mistake.name))
}

fn risks(mistake: &Mistake, words: &Words) -> Vec<String> {
    let risk = |risk: &Risk| match risk {
        Risk::Life => words.say_id("mistakes-life"),
        Risk::Fire => words.say_id("mistakes-fire"),
        Risk::Equipment => words.say_id("mistakes-equipment"),
        Risk::Service => words.say_id("mistakes-service"),
    };
    mistake.risks.iter().map(risk).collect()
}

fn finds(shown: &Shown) -> Vec<&'static str> {
    shown.finds.iter().map(|r| r.name()).collect()
}

fn remedy(shown: &Shown, words: &Words) -> String {
    let say = |id: &'static str, list: &String| {
        words.say(&Message::new(id).with("list", Arg::Verbatim(list.clone())))
    };
    match &shown.remedy {
        Some(Remedy::Recovers(list)) => say("mistakes-recovers", list),
        Some(Remedy::Rewinds(list)) => say("mistakes-rewinds", list),
        None => String::new(),
    }
}

fn document(all: &[Mistake], words: &Words) -> Value {
    let shown = |shown: &Shown| {
        let list = |of: fn(&Remedy) -> Option<&String>| shown.remedy.as_ref().and_then(of);
        json!({
            "drill": shown.drill,
            "list": shown.list,
            "finds": finds(shown),
            "recovers": list(|r| if let Remedy::Recovers(list) = r { Some(list) } else { None }),
            "rewinds": list(|r| if let Remedy::Rewinds(list) = r { Some(list) } else { None }),
            "holds": shown.holds,
        })
    };
    let mistake = |mistake: &Mistake| {
        json!({
            "name": mistake.name,
            "mistake": in_words(mistake, words),
            "risks": risks(mistake, words),
            "holds": mistake.holds(),
            "shown": mistake.shown.iter().map(shown).collect::<Vec<_>>(),
        })
    };
    json!({
        "version": JSON_VERSION,
        "mistakes": all.iter().map(mistake).collect::<Vec<_>>(),
        "held": all.iter().filter(|m| m.holds()).count(),
        "all": all.len(),
    })
}
