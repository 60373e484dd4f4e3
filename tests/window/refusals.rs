//! What the window says when something is missing: a display, a screen of a name, a folder that can be written.

use std::fs;

use outage_drill::window::{self, Options, WindowError};

#[test]
fn without_a_display_no_window_opens_and_words_say_why() {
    let options = Options {
        display: false,
        ..Options::default()
    };
    let why = window::run(crate::session(), options).expect_err("no display was offered");
    assert_eq!(why, WindowError::NoDisplay);
    let said = crate::session().say_message(&why.message());
    assert!(said.contains("display"), "{said}");
}

#[test]
fn an_unknown_screen_is_refused_with_the_names_that_there_are() {
    let folder = tempfile::tempdir().expect("a folder");
    let screens = ["shelf".to_owned(), "attic".to_owned()];
    let why = window::pictures(&crate::session(), &screens, folder.path())
        .expect_err("there is no attic");
    let said = crate::session().say_message(&why.message());
    assert!(said.contains("attic") && said.contains("shelf"), "{said}");
}

#[test]
fn a_folder_that_cannot_be_written_is_named() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("taken");
    fs::write(&file, "a file where a folder should be").expect("a file");
    let why = window::pictures(&crate::session(), &["shelf".to_owned()], &file)
        .expect_err("a file is no folder");
    assert!(
        matches!(&why, WindowError::Unwritable(path, _) if *path == file),
        "{why:?}"
    );
    let said = crate::session().say_message(&why.message());
    assert!(said.contains("taken"), "{said}");
}
