//! While an author writes: the scenarios read again, or what is wrong with them.
//!
//! What was sound stays until all of it is sound again, so that a half-written line never takes a drill away.
//! A drill whose own files have changed begins again: its actions were done to another house.

use std::sync::Arc;

use crate::file::{Diagnostic, Library};
use crate::words::{Arg, Message, Words};

use super::view::{FaultView, FaultsView};
use super::{Notice, Session};

impl Session {
    /// Takes scenarios that were read again, or keeps those it has and tells the faults.
    pub fn renew(&mut self, (library, faults): (Library, Vec<Diagnostic>)) -> Vec<Notice> {
        self.revision += 1;
        self.faults = faults;
        if !self.faults.is_empty() {
            return Vec::new();
        }
        self.words = Words::new(self.words.tag()).with(&library.words);
        self.library = Arc::new(library);
        let Some(open) = self.open.take() else {
            return vec![Notice::Happened(self.words.say_id("session-renewed"))];
        };
        let name = open.drill.run().scenario.clone();
        match self.scenario(&name) {
            Some(scenario) if scenario.digest == open.drill.scenario().digest => {
                self.open = Some(open);
                vec![Notice::Happened(self.words.say_id("session-renewed"))]
            }
            Some(_) => {
                let told = self.words.say_id("session-renewed-drill");
                let mut notices = self.open(&name, open.practice, open.drill.run().seed);
                notices.push(Notice::Happened(told));
                notices
            }
            None => {
                let gone = Message::new("session-renewed-gone").with("name", Arg::Verbatim(name));
                vec![Notice::Happened(self.words.say(&gone))]
            }
        }
    }

    /// What is wrong with the scenarios since they were last sound.
    pub fn faults(&self) -> Option<FaultsView> {
        if self.faults.is_empty() {
            return None;
        }
        let count = Arg::Count(i64::try_from(self.faults.len()).unwrap_or(i64::MAX));
        let title = Message::new("session-faults").with("count", count);
        Some(FaultsView {
            title: self.words.say(&title),
            faults: self.faults.iter().map(|f| self.fault(f)).collect(),
        })
    }

    fn fault(&self, fault: &Diagnostic) -> FaultView {
        FaultView {
            place: fault.place(),
            what: self.words.say(&fault.message),
            line: fault.marked().map(|parts| parts.map(str::to_owned)),
            hint: fault.hint.as_ref().map(|hint| self.words.say(hint)),
        }
    }
}
