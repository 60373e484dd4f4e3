//! The report of published figures, or of whole networks: a table of rows, then what was counted in each section.
//!
//! Quantities and sources stand in the language of the publications, and numbers with their decimal point.
//!
//! The `--json` document has `version`, `rows`, `sections` and `total`.
//! Each of `rows` has `section`, `quantity`, `published`, `ours`, `difference`, `tolerance` (`kind`: `absolute`, `relative`, `at-least` or `at-most`, and `value`, null for the last two), `source`, `standing`, `judgement`, `why` (null unless a difference is stated) and `follows` (the formula that it and others follow from, or null).
//! A figure without an end is null, and so is ours where the model has no answer.
//! `total`, and each of `sections` beside its `section`, has `rows`, `counted`, `within`, `differ` and `wrong`.

use serde_json::Value;
use serde_json::json;

use crate::evidence::{Compared, Judgement, Standing, Tolerance, Total};
use crate::evidence::{networks, published, total, totals};
use crate::words::{Arg, Message, Words};

use super::arguments::Evidence;
use super::output::Output;
use super::{DONE, JSON_VERSION, NOT_PASSED, faults, learners, mistakes, table};

/// Columns of the table: the message of the heading, and whether numbers stand in it.
const COLUMNS: [(&str, bool); 8] = [
    ("evidence-section", false),
    ("evidence-quantity", false),
    ("evidence-published", true),
    ("evidence-ours", true),
    ("evidence-difference", true),
    ("evidence-tolerance", true),
    ("evidence-source", false),
    ("evidence-standing", false),
];
/// Digits of a figure that mean something here.
const SIGNIFICANT: i32 = 6;
/// Digits of a difference that mean something here.
const DIFFERENCE_DIGITS: i32 = 3;

/// Asks every row and prints how ours compares; not passed if one row doesn't hold.
pub(super) fn run(what: &Evidence, output: &mut Output<'_>) -> u8 {
    let (rows, as_json) = match what {
        Evidence::Published { json } => (published(), *json),
        Evidence::Networks { json } => (networks(), *json),
        Evidence::Mistakes { json } => return mistakes::run(*json, output),
        Evidence::Learners { runs, seed, json } => {
            return learners::run(*runs, *seed, *json, output);
        }
    };
    match rows {
        Ok(rows) => report(&rows, as_json, output),
        Err(found) => faults::print_and_stop(&found, output),
    }
}

fn report(rows: &[Compared], as_json: bool, output: &mut Output<'_>) -> u8 {
    if as_json {
        let document = document(rows);
        output.line(&format!("{document:#}"));
    } else {
        let lines = table(rows, &output.words);
        output.lines(&lines);
        output.blank();
        say_totals(rows, output);
    }
    let wrong: Vec<&Compared> = rows.iter().filter(|r| !r.judgement().holds()).collect();
    for row in &wrong {
        let message = Message::new("evidence-wrong")
            .said("section", Message::new(row.section.title_id()))
            .with("quantity", Arg::Verbatim(row.quantity.clone()))
            .with("published", Arg::Verbatim(figure(row.published)))
            .with("ours", Arg::Verbatim(figure(row.ours)));
        output.say_error(&message);
    }
    if wrong.is_empty() { DONE } else { NOT_PASSED }
}

/// Every row as a line under the headings, and below it what is to be said of it.
fn table(rows: &[Compared], words: &Words) -> Vec<String> {
    let heads = COLUMNS.map(|(id, _)| words.say_id(id));
    let cells = rows.iter().map(|row| cells(row, words));
    let cells: Vec<[String; 8]> = [heads].into_iter().chain(cells).collect();
    let aligned = table::aligned(&cells, COLUMNS.map(|(_, number)| number));
    let remarks = rows.iter().map(|row| remark(row, words));
    let remarks = [None].into_iter().chain(remarks);
    let lines = aligned.into_iter().zip(remarks);
    lines
        .flat_map(|(line, remark)| [Some(line), remark])
        .flatten()
        .collect()
}

fn cells(row: &Compared, words: &Words) -> [String; 8] {
    let number = |value: f64| {
        if value.is_nan() {
            words.say_id("evidence-no-answer")
        } else if value.is_infinite() {
            words.say_id("evidence-no-end")
        } else {
            figure(value)
        }
    };
    let standing = match row.standing {
        Standing::Checked => "evidence-checked",
        Standing::Computed => "evidence-computed",
        Standing::FromMemory => "evidence-from-memory",
    };
    [
        words.say_id(row.section.title_id()),
        row.quantity.clone(),
        number(row.published),
        number(row.ours),
        if row.difference().is_finite() {
            rounded(row.difference(), DIFFERENCE_DIGITS)
        } else {
            number(row.difference())
        },
        tolerance(row.tolerance, words),
        row.source.clone(),
        match &row.follows {
            Some(formula) => format!("{} ({formula})", words.say_id(standing)),
            None => words.say_id(standing),
        },
    ]
}

fn tolerance(tolerance: Tolerance, words: &Words) -> String {
    match tolerance {
        Tolerance::Absolute(most) => format!("±{}", figure(most)),
        Tolerance::Relative(most) => format!("±{} %", figure(most * 100.0)),
        Tolerance::AtLeast => words.say_id("evidence-at-least"),
        Tolerance::AtMost => words.say_id("evidence-at-most"),
    }
}

/// What is said under a row; nothing where ours is within the tolerance.
fn remark(row: &Compared, words: &Words) -> Option<String> {
    let id = match row.judgement() {
        Judgement::Within => return None,
        Judgement::DiffersAsStated => "evidence-differs",
        Judgement::Beyond => "evidence-beyond",
        Judgement::DiffersOtherwise => "evidence-differs-otherwise",
        Judgement::DifferenceHealed => "evidence-healed",
    };
    let mut message = Message::new(id);
    if let Some(stated) = &row.differs {
        message = message
            .with(
                "why",
                Arg::Verbatim(stated.why.trim_end_matches('.').to_owned()),
            )
            .with("stated", Arg::Verbatim(figure(stated.ours)));
    }
    Some(format!("  {}", words.say(&message)))
}

fn say_totals(rows: &[Compared], output: &mut Output<'_>) {
    output.say_id("evidence-counted");
    for (section, total) in totals(rows) {
        let message = with_counts(Message::new("evidence-total"), total);
        let message = message.said("section", Message::new(section.title_id()));
        let text = output.words.say(&message);
        output.line(&format!("  {text}"));
    }
    output.say(&with_counts(
        Message::new("evidence-total-all"),
        total(rows),
    ));
}

fn with_counts(message: Message, total: Total) -> Message {
    let count = |n: usize| Arg::Count(i64::try_from(n).unwrap_or(i64::MAX));
    message
        .with("counted", count(total.counted))
        .with("rows", count(total.rows))
        .with("differ", count(total.differ))
        .with("wrong", count(total.wrong))
}

/// A figure with as many digits as mean something.
fn figure(value: f64) -> String {
    rounded(value, SIGNIFICANT)
}

/// A number with so many digits, without trailing zeros; whole digits are all kept.
fn rounded(value: f64, digits: i32) -> String {
    let mut decimals = digits - 1;
    let mut size = value.abs();
    while size >= 10.0 && decimals > 0 {
        size /= 10.0;
        decimals -= 1;
    }
    while size > 0.0 && size < 1.0 && decimals < 2 * SIGNIFICANT {
        size *= 10.0;
        decimals += 1;
    }
    let decimals = usize::try_from(decimals).unwrap_or(0);
    let mut text = format!("{value:.decimals$}");
    if text.contains('.') {
        text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    }
    if text == "-0" { "0".to_owned() } else { text }
}

fn document(rows: &[Compared]) -> Value {
    let sections: Vec<Value> = totals(rows)
        .into_iter()
        .map(|(section, total)| {
            let mut counts = counts(total);
            counts["section"] = json!(section.id());
            counts
        })
        .collect();
    json!({
        "version": JSON_VERSION, "rows": rows.iter().map(row_json).collect::<Vec<Value>>(),
        "sections": sections, "total": counts(total(rows)),
    })
}

fn row_json(row: &Compared) -> Value {
    let (kind, value) = match row.tolerance {
        Tolerance::Absolute(most) => ("absolute", Some(most)),
        Tolerance::Relative(most) => ("relative", Some(most)),
        Tolerance::AtLeast => ("at-least", None),
        Tolerance::AtMost => ("at-most", None),
    };
    json!({
        "section": row.section.id(), "quantity": row.quantity, "published": row.published,
        "ours": row.ours, "difference": row.difference(),
        "tolerance": { "kind": kind, "value": value }, "source": row.source,
        "standing": row.standing.id(), "judgement": row.judgement().id(),
        "why": row.differs.as_ref().map(|stated| &stated.why), "follows": row.follows,
    })
}

fn counts(total: Total) -> Value {
    json!({
        "rows": total.rows, "counted": total.counted, "within": total.within,
        "differ": total.differ, "wrong": total.wrong,
    })
}

#[cfg(test)]
mod tests {
    use crate::evidence::{Section, compare};

    use super::*;

    /// What is printed of rows on the ampacity of a cord, for which ours gives 30 A: the status and both streams.
    fn reported(rows: &[(f64, &str)], as_json: bool) -> (u8, String, String) {
        let rows: Vec<String> = rows
            .iter()
            .map(|(published, more)| {
                format!("(quantity: \"10 AWG cord, A\", ask: Cord(AmpacityA(awg: \"10\", loaded: Two)), published: {published:?}, tolerance: Absolute(0.5), source: \"a table\", standing: Checked{more})")
            })
            .collect();
        let rows = compare(
            "cords.ron",
            Section::Cords,
            &format!("[{}]", rows.join(",")),
        )
        .unwrap();
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let mut output = Output::new(&mut out, &mut err, Words::new("en"));
        let status = report(&rows, as_json, &mut output);
        let text = |bytes| String::from_utf8(bytes).unwrap();
        (status, text(out), text(err))
    }

    const DIFFERS: &str = ", differs: (ours: 30.0, why: \"a reason\")";

    #[test]
    fn rows_that_hold_are_done_and_one_that_does_not_is_named_and_not_passed() {
        let (status, out, err) = reported(&[(30.4, ""), (33.0, DIFFERS)], false);
        assert_eq!((status, err.as_str()), (DONE, ""));
        assert!(out.contains("Ours differs, as stated: a reason."), "{out}");
        for (published, more) in [
            (33.0, ""),
            (30.0, DIFFERS),
            (33.0, ", differs: (ours: 31, why: \"a reason\")"),
        ] {
            let (status, _, err) = reported(&[(30.0, ""), (published, more)], false);
            assert_eq!(status, NOT_PASSED);
            let named = format!("Flexible cords: 10 AWG cord, A: published {published}, ours 30.");
            assert!(err.contains(&named), "{err}");
            assert_eq!(reported(&[(published, more)], true).0, NOT_PASSED);
        }
    }

    #[test]
    fn a_row_shows_all_that_is_needed_to_judge_it_in_one_line() {
        let (_, out, _) = reported(&[(30.4, ", follows: \"a formula\"")], false);
        let row = out.lines().nth(1).unwrap();
        let cells: Vec<&str> = row
            .split("  ")
            .map(str::trim)
            .filter(|cell| !cell.is_empty())
            .collect();
        let expected = [
            "Flexible cords",
            "10 AWG cord, A",
            "30.4",
            "30",
            "-0.4",
            "±0.5",
            "a table",
            "checked (a formula)",
        ];
        assert_eq!(cells, expected);
    }

    #[test]
    fn the_document_counts_as_the_text_does() {
        let formula = ", follows: \"a formula\"";
        let (_, out, _) = reported(&[(30.0, formula), (30.4, formula), (33.0, DIFFERS)], true);
        let document: Value = serde_json::from_str(&out).unwrap();
        let counts = json!({ "rows": 3, "counted": 1, "within": 2, "differ": 1, "wrong": 0 });
        assert_eq!(document["total"], counts);
        assert_eq!(document["sections"][0]["section"], json!("cords"));
        let row = &document["rows"][2];
        assert_eq!(row["judgement"], json!("differs-as-stated"));
        assert_eq!(row["difference"], json!(-3.0));
        assert_eq!(
            row["tolerance"],
            json!({ "kind": "absolute", "value": 0.5 })
        );
    }

    #[test]
    fn a_number_keeps_the_digits_that_mean_something_and_no_more() {
        for (value, text) in [
            (0.0, "0"),
            (-0.0, "0"),
            (20.9478, "20.9478"),
            (2_592_000.0, "2592000"),
            (0.000_5, "0.0005"),
            (-1.5, "-1.5"),
            (7_163.729_9, "7163.73"),
        ] {
            assert_eq!(figure(value), text);
        }
    }
}
