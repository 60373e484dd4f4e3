//! A folder that is written in while a drill is open: read again, told what is wrong, never taken away.

use std::fs;
use std::path::Path;

use outage_drill::file::{Library, Watched};
use outage_drill::session::{Command, Notice, Practice, Session};

const DRILL: &str = "there-and-back";

/// A folder with one shipped drill, and a session in which it is open and its first action is done.
fn open() -> (tempfile::TempDir, Watched, Session) {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("scenarios");
    let folder = tempfile::tempdir().unwrap();
    for file in ["sites/two-gables.ron", "drills/there-and-back.ron"] {
        let to = folder.path().join(file);
        fs::create_dir_all(to.parent().unwrap()).unwrap();
        fs::copy(root.join(file), to).unwrap();
    }
    fs::create_dir_all(folder.path().join("words")).unwrap();
    let watched = Watched::new(folder.path());
    let (library, faults) = Library::load(folder.path());
    assert_eq!(faults, []);
    let mut session = Session::new(library, "en");
    session.apply(Command::Open {
        drill: DRILL.to_owned(),
        practice: Practice::Coached,
        seed: 1,
    });
    session.apply(Command::Do("set main off".to_owned()));
    (folder, watched, session)
}

fn rewrite(folder: &Path, file: &str, from: &str, to: &str) {
    let file = folder.join(file);
    let text = fs::read_to_string(&file).unwrap();
    assert!(text.contains(from));
    fs::write(&file, text.replacen(from, to, 1)).unwrap();
}

fn deeds(session: &Session) -> usize {
    session.drill().map_or(0, |drill| drill.run().actions.len())
}

#[test]
fn a_folder_at_rest_is_not_read_again() {
    let (_folder, mut watched, _) = open();
    assert!(watched.changed().is_none());
}

#[test]
fn a_fault_is_told_with_its_place_and_the_open_drill_stays() {
    let (folder, mut watched, mut session) = open();
    rewrite(
        folder.path(),
        "drills/there-and-back.ron",
        "site: \"two-gables\"",
        "site: \"two-gabels\"",
    );
    assert_eq!(session.renew(watched.changed().unwrap()), []);
    let faults = session.faults().unwrap();
    let [fault] = faults.faults.as_slice() else {
        panic!("{faults:?}");
    };
    assert!(
        fault.place.ends_with("there-and-back.ron:14:9"),
        "{}",
        fault.place
    );
    let marked = fault.line.as_ref().map(|[_, text, _]| text.as_str());
    assert_eq!(marked, Some("\"two-gabels\""));
    assert!(
        fault
            .hint
            .as_ref()
            .is_some_and(|h| h.contains("two-gables"))
    );
    assert_eq!(deeds(&session), 1);

    rewrite(
        folder.path(),
        "drills/there-and-back.ron",
        "site: \"two-gabels\"",
        "site: \"two-gables\"",
    );
    assert_eq!(session.renew(watched.changed().unwrap()).len(), 1);
    assert_eq!(session.faults(), None);
    assert_eq!(deeds(&session), 1, "the drill is as it was written");
}

#[test]
fn a_drill_whose_house_was_changed_begins_again() {
    let (folder, mut watched, mut session) = open();
    rewrite(folder.path(), "sites/two-gables.ron", "(\n", "(\n\n");
    let told = session.renew(watched.changed().unwrap());
    assert!(matches!(told.as_slice(), [Notice::Happened(_)]), "{told:?}");
    assert_eq!(deeds(&session), 0);
}

#[test]
fn a_drill_that_was_taken_away_is_left_for_the_shelf() {
    let (folder, mut watched, mut session) = open();
    fs::remove_file(folder.path().join("drills/there-and-back.ron")).unwrap();
    session.renew(watched.changed().unwrap());
    assert!(session.drill().is_none());
    assert!(session.shelf().drills.is_empty());
}
