//! Published values and whole networks against ours: every row is asked by the program's own runner.

use std::fs;
use std::path::PathBuf;

use outage_drill::evidence::{
    Compared, Difference, Judgement, Section, Standing, Tolerance, compare, networks, published,
    total, totals,
};

fn rows() -> Vec<Compared> {
    published().unwrap()
}

/// A row on the ampacity of a cord, for which ours gives 30 A.
fn row(published: f64, more: &str) -> String {
    format!(
        "(quantity: \"10 AWG cord, A\", ask: Cord(AmpacityA(awg: \"10\", loaded: Two)), published: {published:?}, tolerance: Absolute(0.5), source: \"a table\", standing: Checked{more})"
    )
}

fn compared(rows: &[String]) -> Vec<Compared> {
    compare(
        "cords.ron",
        Section::Cords,
        &format!("[{}]", rows.join(",")),
    )
    .unwrap()
}

fn judged(published: f64, more: &str) -> Judgement {
    compared(&[row(published, more)])[0].judgement()
}

fn assert_all_hold(rows: &[Compared]) {
    let wrong: Vec<&Compared> = rows.iter().filter(|row| !row.judgement().holds()).collect();
    assert!(wrong.is_empty(), "{} rows fail:\n{wrong:#?}", wrong.len());
}

/// How many rows are written in the files of a folder.
fn written(folder: &str) -> usize {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(folder);
    fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "ron"))
        .map(|path| fs::read_to_string(path).unwrap())
        .map(|text| text.matches("(quantity:").count())
        .sum()
}

#[test]
fn every_published_value_is_met_or_its_difference_is_explained() {
    assert_all_hold(&rows());
}

#[test]
fn whole_networks_agree_with_published_tables_and_other_solvers() {
    assert_all_hold(&networks().unwrap());
}

#[test]
fn every_file_of_rows_is_asked() {
    assert_eq!(rows().len(), written("tests/published"));
    let networks = networks().unwrap();
    let is_written = |row: &&Compared| row.section != Section::DrawnNetworks;
    assert_eq!(
        networks.iter().filter(is_written).count(),
        written("tests/networks")
    );
}

#[test]
fn every_section_counts_eight_figures_or_more_and_all_count_180() {
    let rows = rows();
    for (section, total) in totals(&rows) {
        assert!(total.counted >= 8, "{section:?}: {total:?}");
    }
    let all = total(&rows);
    assert!(all.counted >= 180, "{all:?}");
}

#[test]
fn a_row_is_judged_by_its_tolerance_and_by_the_difference_it_states() {
    let differs = |ours: f64| format!(", differs: Some((ours: {ours:?}, why: \"a reason\"))");
    assert_eq!(judged(30.4, ""), Judgement::Within);
    assert_eq!(judged(33.0, ""), Judgement::Beyond);
    assert_eq!(judged(33.0, &differs(30.0)), Judgement::DiffersAsStated);
    assert_eq!(judged(33.0, &differs(31.0)), Judgement::DiffersOtherwise);
    assert_eq!(judged(30.0, &differs(30.0)), Judgement::DifferenceHealed);
}

#[test]
fn rows_of_one_formula_count_once_and_a_difference_not_at_all() {
    let formula = ", follows: Some(\"a formula\")";
    let differs = ", differs: Some((ours: 30.0, why: \"a reason\"))";
    let total = total(&compared(&[
        row(30.0, ""),
        row(30.0, formula),
        row(30.1, formula),
        row(33.0, differs),
        row(34.0, ""),
    ]));
    assert_eq!(
        (
            total.rows,
            total.counted,
            total.within,
            total.differ,
            total.wrong
        ),
        (5, 2, 3, 1, 1)
    );
}

#[test]
fn a_row_keeps_everything_needed_to_judge_it() {
    let differs = ", differs: Some((ours: 30.0, why: \"a reason\"))";
    let expected = Compared {
        section: Section::Cords,
        quantity: "10 AWG cord, A".to_owned(),
        published: 33.0,
        ours: 30.0,
        tolerance: Tolerance::Absolute(0.5),
        source: "a table".to_owned(),
        standing: Standing::Checked,
        differs: Some(Difference {
            ours: 30.0,
            why: "a reason".to_owned(),
        }),
        follows: None,
    };
    assert_eq!(compared(&[row(33.0, differs)]), [expected]);
}

#[test]
fn a_row_that_asks_for_what_is_not_there_is_refused_with_its_place() {
    let text = format!("[\n{},\n]", row(30.0, "").replace("\"10\"", "\"11x\""));
    let faults = compare("cords.ron", Section::Cords, &text).unwrap_err();
    assert_eq!(faults.len(), 1);
    assert_eq!((faults[0].file.as_str(), faults[0].line), ("cords.ron", 2));
}

#[test]
fn no_answer_is_within_no_tolerance() {
    for tolerance in [
        Tolerance::Absolute(f64::INFINITY),
        Tolerance::Relative(1.0),
        Tolerance::AtLeast,
        Tolerance::AtMost,
    ] {
        assert!(!tolerance.admits(f64::NAN, 1.0), "{tolerance:?}");
    }
}
