//! Which fields of the views are texts.
//!
//! Ids are the same in all languages and could be joined without harm; naming them apart says what is meant.
//! It does not cover shelf and debrief, nor the sheet that goes home, of which there is one in each language.

use super::Beside;
use crate::session::view::{
    AnswerView, ApplianceView, AskedView, BarView, ChoiceView, CloseView, CompareView,
    ConsequenceView, ControlView, DeedView, DeviceView, DifferView, EndView, EquipmentView,
    FaceView, GaugeView, GeneratorView, LessonView, LightView, LogLine, LogView, MomentView,
    NeighborView, ObjectiveView, PersonView, PhaseView, PhasorView, PlaceView, PoleView,
    RevealView, SessionPlanView, ShownView, SocketView, StageView, StepView, StreetView, TradeView,
    TurnedView, WaitView, WireView,
};

/// A view: fields with texts, and after the bar those without. Every field is named, so that a new one has to be put on either side.
macro_rules! texts {
    ($($view:ident: $($text:ident)* | $($other:ident)*;)*) => {$(
        impl Beside for $view {
            fn beside(&mut self, other: &Self) {
                let Self { $($text: _,)* $($other: _,)* } = other;
                $(self.$text.beside(&other.$text);)*
            }
        }
    )*};
}

texts! {
    AnswerView: label | id;
    ApplianceView: label word sentence | id kind room state worry glow;
    AskedView: moment question known number choices | name sure;
    BarView: label | count share right;
    ChoiceView: label caution | id current cord;
    CloseView: title description test controls deeds readings phasors tag faces | place interlock;
    CompareView: was tried positions volts people gone come |;
    ConsequenceView: title now heading stages others why | n_told harm;
    ControlView: label position rating choices sentence | id kind position_id slot poles tagged;
    DeedView: label known point shown | line;
    DeviceView: label sentence | id kind pole span state jumped tagged;
    DifferView: label was tried |;
    EndView: label word | fed;
    EquipmentView: label word sentence | id kind place sides active level tagged;
    FaceView: title lights gauges sockets ends notes tag | id kind controls jacket;
    GaugeView: label value | share limit;
    GeneratorView: place_words word load_words sentence opening_words | place form second stands opening_ft running load fuel;
    LessonView: title about audience minutes objectives prepare prebrief sessions debrief | name track handout;
    LightView: label sentence | lit warns;
    LogLine: clock text | kind;
    LogView: clock lines | clock_ms begun over goal_met;
    MomentView: when ask | reached;
    NeighborView: label sentence | id glow;
    ObjectiveView: text | outcome drills;
    PersonView: label word sentence | id place state;
    PhaseView: title prompts |;
    PhasorView: sentence amps uneven | legs_v degrees;
    PlaceView: label sentence | id;
    PoleView: label | id at_ft transformer;
    RevealView: question said truth stages bars | right;
    SessionPlanView: title minutes steps |;
    ShownView: volts word at | last;
    SocketView: label rating plugged | id both_legs taken breaker gfci user;
    StageView: text value | at;
    StepView: minutes title say ask note moments | begins ends kind drill;
    StreetView: title goal hint hint_wait seed variation poles wires devices people neighbors appliances equipment generator places progress air
        | hint_line broken_spans fallen_spans outlets alarm minute_of_day storm window_open
          garage_door house_door building;
    TurnedView: sentence | leg amps degrees;
    WaitView: label | time;
    WireView: label word volts amps sentence | id kind from to fed flow;
}

/// Words of the trade stand by the alphabet, which is another one in each language: those of the second follow.
impl Beside for TradeView {
    fn beside(&mut self, other: &Self) {
        let Self { here, others } = other;
        self.here.extend(here.iter().cloned());
        self.others.extend(others.iter().cloned());
    }
}
