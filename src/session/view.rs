//! What a front end may show: plain data, complete, already in the learner's language.
//!
//! A screen reader, a text drill and a picture can be made from these alone.
//! No color, no pixel, no egui and no Bevy name: the window decides how a thing looks, never what is true.
//! Ids are those of the site and are stable; every other text is finished and in the session's language.

mod asked;
mod debrief;
mod face;
mod lesson;
mod scene;
mod shelf;
mod trade;

pub use asked::{AnswerView, AskedView, BarView, CalibrationView, PredictionLine, RevealView};
pub use debrief::{
    AgainView, CompareView, CriterionView, DebriefView, DifferView, FindingView, NextView, PHASES,
    PageView, Phase, PinView, SeriesView, StoodView, TrackView,
};
pub use face::{
    EndView, EquipmentKind, EquipmentView, FaceKind, FaceView, GaugeView, Jacket, LightView, Side,
    SocketView,
};
pub use lesson::{
    HandoutView, LessonView, MomentView, ObjectiveView, PhaseView, SessionPlanView, StepView,
};
pub use scene::{
    ApplianceKind, Building, DeviceKind, DeviceState, DeviceView, Doorway, GeneratorForm,
    OutletView, Room, StandView, WireKind,
};
pub use shelf::{DrillCard, LessonCard, PartView, ShelfView, SittingView, TrackCard};
pub use trade::{TermView, TradeView};

use crate::units::DrillTime;

/// A language that can be spoken.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LanguageView {
    /// Tag.
    pub tag: String,
    /// Its name in itself.
    pub name: String,
    /// Whether it is spoken now.
    pub current: bool,
}

/// What energises a conductor, as far as this learner may be shown it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Fed {
    /// Nothing feeds it, and that has been shown or tested.
    #[default]
    Dead,
    /// The utility feeds it.
    Utility,
    /// The generator feeds it.
    Generator,
    /// The solar inverter feeds it.
    Solar,
    /// The battery feeds it.
    Battery,
    /// Two sources feed it, or more.
    Both,
    /// Protective grounds hold it near earth.
    Grounded,
    /// This learner has not tested it and is not shown the truth.
    Unknown,
}

impl Fed {
    /// All states, in the order in which a legend explains them.
    pub const ALL: [Self; 8] = [
        Self::Utility,
        Self::Generator,
        Self::Solar,
        Self::Battery,
        Self::Both,
        Self::Grounded,
        Self::Unknown,
        Self::Dead,
    ];
}

/// Which way power goes along a conductor, seen from the conductor's first end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Flow {
    /// No current worth showing.
    #[default]
    None,
    /// From the first end to the second.
    Forward,
    /// From the second end to the first.
    Backward,
}

/// A conductor, or a run of conductors that always share one state.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct WireView {
    /// Id: `span-1`, `span-2`, …, `drop`, `drop-neighbor-1`, `service`, `bus`, `branch-fridge`, `inlet-wire`, `cord`, `two-plug-cord`, `extension-a`, …
    pub id: String,
    /// Label.
    pub label: String,
    /// What part of the way of energy it is.
    pub kind: WireKind,
    /// Id of what its first end is at; empty where that end lies loose.
    pub from: String,
    /// Id of what its second end is at; empty where that end lies loose.
    pub to: String,
    /// What feeds it.
    pub fed: Fed,
    /// The word for what feeds it.
    pub word: String,
    /// Which way power goes.
    pub flow: Flow,
    /// Volts to neutral or to earth, formatted with its unit; empty when not known or not defined.
    pub volts: String,
    /// Amps, formatted with its unit; empty when not known or nothing flows.
    pub amps: String,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// How a thing that uses power is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum ApplianceState {
    /// Has no power.
    #[default]
    NoPower,
    /// Has power and is idle.
    Ready,
    /// A motor is coming up to speed.
    Starting,
    /// Runs.
    Running,
    /// Runs or glows with too little or too much voltage.
    Strained,
    /// Stands still though it has power: its motor hums, or its own protector is open.
    Still,
    /// Damaged.
    Broken,
}

/// A thing in the house that uses power.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct ApplianceView {
    /// Id: `fridge`, `furnace`, `sump`, `kitchen-lights`, `bedroom-lights`, `microwave`, `dryer`, `air-conditioner`, `water-heater`, …
    pub id: String,
    /// Label.
    pub label: String,
    /// What it is drawn as.
    pub kind: ApplianceKind,
    /// The room it stands in.
    pub room: Room,
    /// State.
    pub state: ApplianceState,
    /// The word for the state, with numbers where they help.
    pub word: String,
    /// How brightly it would shine if it is a lamp, 0 dark to 1 as it should be: by its volts, and 0 while no current goes through it.
    pub glow: f32,
    /// Fraction that matters to the household: water in the sump pit or warmth of the fridge, 0 good to 1 bad; 0 when not applicable.
    pub worry: f32,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// How a person is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum PersonState {
    /// Well.
    #[default]
    Well,
    /// At work on the line, hands on it.
    Working,
    /// Warned and standing back.
    Back,
    /// Feels unwell.
    Unwell,
    /// Harmed.
    Harmed,
}

/// A person or a group who can be harmed.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PersonView {
    /// Id: `crew`, `household`, `learner`.
    pub id: String,
    /// Label.
    pub label: String,
    /// Where: a pole's id, `house`, `outside`.
    pub place: String,
    /// State.
    pub state: PersonState,
    /// The word for it.
    pub word: String,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// A pole of the line.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PoleView {
    /// Id: `pole-1`, `pole-2`, …
    pub id: String,
    /// Label.
    pub label: String,
    /// Feet from the start of the drawn line.
    pub at_ft: f32,
    /// Whether the transformer hangs here.
    pub transformer: bool,
}

/// A house on the same transformer.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct NeighborView {
    /// Id: `neighbor-1`, `neighbor-2`.
    pub id: String,
    /// Label.
    pub label: String,
    /// How brightly its lights shine, 0 dark to 1 as they should: by the same rule as lamps in the house.
    pub glow: f32,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// The generator as it stands in the yard.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct GeneratorView {
    /// Where it stands, as a position id: `shed`, `garage`, `patio`, `yard`.
    pub place: String,
    /// What it is drawn as.
    pub form: GeneratorForm,
    /// A second set beside it, and whether it runs.
    pub second: Option<bool>,
    /// Every place where it can stand.
    pub stands: Vec<StandView>,
    /// The words for the place, with the distance to the nearest opening.
    pub place_words: String,
    /// Distance to the nearest opening, feet; 0 indoors.
    pub opening_ft: f32,
    /// The same with its unit; empty indoors.
    pub opening_words: String,
    /// Whether the engine turns.
    pub running: bool,
    /// The words for its state, complete in themselves: engine stopped, engine warming up.
    pub word: String,
    /// Load as a fraction of rated watts.
    pub load: f32,
    /// Load and rating in words with numbers.
    pub load_words: String,
    /// Fuel left, fraction of the tank.
    pub fuel: f32,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// A wait that is one press.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct WaitView {
    /// What its button says.
    pub label: String,
    /// How long it is.
    pub time: DrillTime,
}

/// The street in one section.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StreetView {
    /// Title of the drill.
    pub title: String,
    /// What to reach, in a sentence or two.
    pub goal: String,
    /// What to do next, as far as this way of practising offers it; empty when nothing is offered.
    pub hint: String,
    /// What is to be typed for it; empty where nothing is.
    pub hint_line: String,
    /// The wait that the hint asks for, where it asks for one.
    pub hint_wait: Option<WaitView>,
    /// The number under which exactly this drill can be asked for again.
    pub seed: String,
    /// What is varied in it, as far as the learner is told; empty when nothing is.
    pub variation: String,
    /// Poles, from the substation end on.
    pub poles: Vec<PoleView>,
    /// Conductors.
    pub wires: Vec<WireView>,
    /// Ids of the spans that are broken.
    pub broken_spans: Vec<String>,
    /// Those of them that lie there for somebody who is no line worker: never known to be dead.
    pub fallen_spans: Vec<String>,
    /// What is mounted on the poles to open the line.
    pub devices: Vec<DeviceView>,
    /// People.
    pub people: Vec<PersonView>,
    /// Houses on the same transformer.
    pub neighbors: Vec<NeighborView>,
    /// Things that use power in the house.
    pub appliances: Vec<ApplianceView>,
    /// Ends of the branch circuits.
    pub outlets: Vec<OutletView>,
    /// Panels, transfer switches, solar and battery.
    pub equipment: Vec<EquipmentView>,
    /// The generator.
    pub generator: GeneratorView,
    /// Things to open as a close view.
    pub places: Vec<PlaceView>,
    /// How far the goal's appliances have come since the outage, and what time is left; empty before it and where it names none.
    pub progress: String,
    /// Carbon monoxide indoors, in words with its number; empty while there is none worth saying.
    pub air: String,
    /// Whether the carbon monoxide alarm sounds.
    pub alarm: bool,
    /// Local time of day at the drill's start plus the drill's clock, minutes after midnight.
    pub minute_of_day: u32,
    /// Whether a storm hangs over the street.
    pub storm: bool,
    /// Windows near the patio stand open.
    pub window_open: bool,
    /// How the garage's big door stands.
    pub garage_door: Doorway,
    /// How the door between garage and house stands.
    pub house_door: Doorway,
    /// What kind of building it is.
    pub building: Building,
}

/// Something that opens as a close view: `panel`, `generator`, `cords`, `line`, `house`, `phone`.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct PlaceView {
    /// Id.
    pub id: String,
    /// Label.
    pub label: String,
    /// One sentence that says what can be done there.
    pub sentence: String,
}

/// What kind of thing a control is, for how it is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum ControlKind {
    /// A breaker with a handle: `off`, `on`, `tripped`.
    #[default]
    Breaker,
    /// The main breaker.
    Main,
    /// The breaker that the inlet feeds.
    BackfedBreaker,
    /// A lock on a handle.
    Lock,
    /// A plug: each position is a place it can be in.
    Plug,
    /// A thing that stands somewhere.
    Placement,
    /// An engine switch.
    Engine,
    /// A valve.
    Valve,
    /// A switch of an appliance or a lamp.
    Switch,
    /// A cord that lies coiled or flat.
    Lay,
    /// A window or a door.
    Opening,
    /// Where people are.
    People,
    /// A ground-fault device: `tripped`, `set`.
    Gfci,
    /// The handle of a transfer switch: `utility`, `off`, `generator`.
    Transfer,
    /// A switch that only parts things.
    Disconnect,
    /// A fuse that can be pulled.
    Fuse,
    /// What a controller is set to.
    Mode,
}

/// One position of a control that the learner may choose.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ChoiceView {
    /// Position id.
    pub id: String,
    /// What doing it is called: "Turn off", "Plug into the inlet"; of the one it stands in, how it stands.
    pub label: String,
    /// What whoever does it comes to touch, whether that is live or not; empty for most.
    pub caution: String,
    /// Whether the control stands so now.
    pub current: bool,
    /// Whether it is at another cord's end.
    pub cord: bool,
}

/// Something to operate.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ControlView {
    /// Id, as in action files.
    pub id: String,
    /// Label.
    pub label: String,
    /// Kind.
    pub kind: ControlKind,
    /// The words for how it stands now.
    pub position: String,
    /// The position id it stands in now.
    pub position_id: String,
    /// Amps rating, poles and the like, as text; empty if none.
    pub rating: String,
    /// Positions to choose from.
    pub choices: Vec<ChoiceView>,
    /// Column and row where a panel has such; both 0 otherwise.
    pub slot: (u8, u8),
    /// How many slots it takes.
    pub poles: u8,
    /// Whether a lock and tag hang on it.
    pub tagged: bool,
    /// One sentence for pointer, focus and screen reader.
    pub sentence: String,
}

/// Something else that can be done at a place: look, test here, call, tell, refuel.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct DeedView {
    /// The action, as one line of the action-file grammar.
    pub line: String,
    /// Label of the button.
    pub label: String,
    /// What is known from it so far, if anything.
    pub known: String,
    /// The point of the circuit, if it is a test; else empty.
    pub point: String,
    /// What the tester showed there, as far as nothing has been moved since.
    pub shown: Option<ShownView>,
}

/// What a tester showed at a point.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ShownView {
    /// Volts with their unit.
    pub volts: String,
    /// The word for it: live or not.
    pub word: String,
    /// When it was, on the drill's clock.
    pub at: String,
    /// Whether its probes were put nowhere else since.
    pub last: bool,
}

/// A place seen close: what can be operated, tested and asked there.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct CloseView {
    /// Place id, as in [`PlaceView`].
    pub place: String,
    /// Title.
    pub title: String,
    /// What one sees.
    pub description: String,
    /// In a test, that it is one and what is shown in it; empty otherwise.
    pub test: String,
    /// Controls.
    pub controls: Vec<ControlView>,
    /// Other deeds.
    pub deeds: Vec<DeedView>,
    /// Whether an interlock slide is fitted between main and backfed breaker.
    pub interlock: bool,
    /// Meter and gauge readings in sight.
    pub readings: Vec<String>,
    /// Phasors at its points, as far as they may be seen.
    pub phasors: Vec<PhasorView>,
    /// The words on a tag that hangs on the main handle; empty if none does.
    pub tag: String,
    /// Faces of equipment there; controls that sit on one are among [`Self::controls`] too.
    pub faces: Vec<FaceView>,
}

/// Both legs at a point, as phasors.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PhasorView {
    /// Volts of each leg to the neutral; 0 for one that is dead or isn't there.
    pub legs_v: [f64; 2],
    /// How far leg 2 stands counterclockwise of leg 1, degrees above -180 up to 180; none unless both are live and of one frequency.
    pub degrees: Option<f64>,
    /// The same in words.
    pub sentence: String,
    /// The amps of each leg that carries any.
    pub amps: Vec<TurnedView>,
    /// Why one leg has fewer volts, where the amps show it; empty otherwise.
    pub uneven: String,
}

/// The amps of a leg, as a phasor.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct TurnedView {
    /// The leg, 1 or 2.
    pub leg: usize,
    /// Amps, the way that power goes.
    pub amps: f64,
    /// How far they stand counterclockwise of the volts of leg 1, degrees above -180 up to 180.
    pub degrees: f64,
    /// The same in words, against the volts of its own leg.
    pub sentence: String,
}

/// What sort of line the log has.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum LogKind {
    /// The learner did it.
    #[default]
    Did,
    /// The world refused it.
    Refused,
    /// It happened.
    Happened,
    /// It was seen, tested or told.
    Learnt,
    /// It is a mistake, explained at once in coached practice.
    Mistake,
    /// Somebody is harmed.
    Harm,
}

/// A line of the log.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LogLine {
    /// Drill clock.
    pub clock: String,
    /// Kind.
    pub kind: LogKind,
    /// Text.
    pub text: String,
}

/// Log and clock.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct LogView {
    /// Drill clock, minutes and seconds.
    pub clock: String,
    /// Drill clock in milliseconds.
    pub clock_ms: u64,
    /// Lines, oldest first.
    pub lines: Vec<LogLine>,
    /// Whether anything was done or waited for yet: a drill that was opened by mistake is left without a debrief.
    pub begun: bool,
    /// Whether the drill is over and the debrief can be opened.
    pub over: bool,
    /// Whether every goal is met, so that finishing makes sense.
    pub goal_met: bool,
}

/// One stage of the way energy takes from source to harm.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct StageView {
    /// Id of the thing it passes, as drawn: a wire's, a person's, an appliance's id.
    pub at: String,
    /// What happens there, one sentence with its numbers.
    pub text: String,
    /// The number that matters there, short.
    pub value: String,
}

/// A consequence, held and told stage by stage.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct ConsequenceView {
    /// What happened, in a sentence.
    pub title: String,
    /// What to do now.
    pub now: String,
    /// What the stages are headed with.
    pub heading: String,
    /// Stages in the order in which one follows from the other.
    pub stages: Vec<StageView>,
    /// How many of the first stages the consequence before has told.
    pub n_told: usize,
    /// How to leave the consequences that wait behind this one for the debrief; empty when none does.
    pub others: String,
    /// Why it matters.
    pub why: String,
    /// Whether somebody is harmed.
    pub harm: bool,
}

/// What is wrong with the scenarios that an author is writing.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct FaultsView {
    /// How many there are, and what is shown meanwhile.
    pub title: String,
    /// Each fault.
    pub faults: Vec<FaultView>,
}

/// A fault of a file.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct FaultView {
    /// File, line and column.
    pub place: String,
    /// What is wrong.
    pub what: String,
    /// The line: before the offending text, that text, after it; none if the fault is the file's as a whole.
    pub line: Option<[String; 3]>,
    /// What to do.
    pub hint: Option<String>,
}
