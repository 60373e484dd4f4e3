//! A finding: a rule, the moment, the evidence.

use crate::hazard::shock::Zone;
use crate::scenario::Criterion;
use crate::units::DrillTime;
use crate::words::Arg;

/// What the rules look for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Rule {
    /// A customer's source reaches the utility's side.
    LineFed,
    /// A customer's source feeds the house wiring with nothing but one handle, or nothing at all, to keep it off the line.
    NoTransferEquipment,
    /// Two sources out of step are tied together.
    Collision,
    /// A neighbor's set and the house's own feed one place.
    SourcesMeet,
    /// Current through a person.
    Shock,
    /// Current through somebody who handles a thing.
    Touch,
    /// A set feeds the house while nothing joins its neutral to ground.
    NothingBonds,
    /// Bare contacts are live within reach.
    LiveBlades,
    /// A hand goes to a panel that stands in water.
    WetPanel,
    /// The engine runs indoors.
    Indoors,
    /// The carbon monoxide alarm sounds.
    Gas,
    /// People are overcome by gas.
    Overcome,
    /// The alarm next door sounds.
    GasNextDoor,
    /// The engine runs while no carbon monoxide alarm can sound.
    NoAlarm,
    /// Somebody stays in bad air after a sign of it, or goes back into it.
    StayedIn,
    /// Fuel is kept indoors.
    FuelIndoors,
    /// Fuel burns.
    FuelFire,
    /// Hands are in a set that can start by itself or is live.
    NotLockedOut,
    /// The engine turns by itself while hands are in it.
    CaughtByEngine,
    /// The cover of a transfer switch is open while lugs behind it are live.
    LiveLugs,
    /// The contacts of an automatic transfer switch are moved by hand while a source is on.
    HandTransferLive,
    /// The line is taken in hand or grounded without having been tested dead.
    NotTested,
    /// The tester that said so proves nothing: not tried on a known source before and after, flat, or blind to low volts.
    TesterUnproved,
    /// Hands are on the line without grounds on it.
    NotGrounded,
    /// Grounds are clamped in the wrong order, or elsewhere than at the work.
    GroundsWrong,
    /// Hands are on the line without a break that is open for all to see and tagged.
    NoVisibleBreak,
    /// A broken line is joined by hand while its far end is live.
    LiveEnd,
    /// The utility feeds into grounds that hang on the line.
    GroundsLeft,
    /// The line is alive again before customers have said that they are off their own sources.
    NotAsked,
    /// A cord is mated or parted while it carries load.
    PlugUnderLoad,
    /// A cord is mated or parted while it is live.
    LivePlug,
    /// A cord with two plugs is taken away wrong end first, or from an outlet or a set that can become live.
    WrongEndFirst,
    /// The engine is started into a load.
    StartUnderLoad,
    /// Load is taken before the engine has settled.
    NotSettled,
    /// Several motors start at once.
    AllAtOnce,
    /// The engine is stopped hot, without running unloaded.
    NoCoolDown,
    /// The house goes back to the utility with no sign that the utility is back.
    BlindReturn,
    /// The engine is asked for more than it is rated for.
    Overload,
    /// A motor that is too large for the set is tried again and again.
    TooSmallForMotor,
    /// The electronics of a set shut their output off.
    ShutOff,
    /// The engine stops because its fuel or its oil ran out.
    RanDry,
    /// A breaker trips.
    Tripped,
    /// A fuse blows.
    FuseBlown,
    /// A ground-fault device opens because of worn insulation or a body.
    GroundFault,
    /// A ground-fault device was set again with the fault still there.
    ResetIntoFault,
    /// A ground-fault device opens because the neutral is bonded at both ends.
    TwoBonds,
    /// The ground of a cord carries a share of the load's current.
    GroundCarries,
    /// Electronics are destroyed by high volts.
    Damaged,
    /// A motor gets too little voltage, down to half of it where an adapter gives it one leg.
    Starved,
    /// A cord is hotter than it is rated for.
    CordHot,
    /// A wire in a wall is hotter than its insulation stands.
    WireHot,
    /// What lies against a cord burns.
    CordFire,
    /// A plug scorches.
    PlugHot,
    /// A cord isn't fit for what it is used for: indoors only, without a ground, damaged, joined to others.
    CordUnfit,
    /// A solar inverter takes a generator for the utility.
    SunOnGenerator,
    /// Power is pushed back into a generator.
    PushedBack,
    /// A battery is asked for more than its inverter stands.
    BatteryOverloaded,
    /// A battery runs empty.
    BatterySpent,
    /// The engine runs nearer to an opening than the published distance.
    TooNear,
    /// Nobody called for help after a sign of gas.
    NotCalled,
    /// What matters got no power in time.
    GoalLate,
    /// What an appliance guards was lost.
    Lost,
    /// Something doesn't stand as it should at the end.
    NotRestored,
    /// The house isn't on the utility at the end.
    NotBack,
    /// A leg of the house stands far above its volts for longer than it takes to act.
    WrongVolts,
    /// Something live is called dead.
    SaidDead,
    /// A slide that doesn't block is called fit.
    SaidFit,
    /// Something is said that isn't so.
    SaidWrong,
    /// Something that was asked was never said.
    Unanswered,
}

impl Rule {
    /// Whether somebody has come to harm when it is found as a breach: from there a run can only be rewound.
    pub fn harms(self) -> bool {
        matches!(
            self,
            Self::Shock
                | Self::Touch
                | Self::Overcome
                | Self::FuelFire
                | Self::CordFire
                | Self::CaughtByEngine
        )
    }

    /// Whether something has caught fire when it is found.
    pub fn burns(self) -> bool {
        matches!(self, Self::FuelFire | Self::CordFire)
    }

    /// Whether it can hurt people although it is filed under isolation, order or load: a line worker, a hand, or those whom a fire or gas would reach.
    fn can_hurt(self) -> bool {
        matches!(
            self,
            Self::LineFed
                | Self::NoTransferEquipment
                | Self::NoVisibleBreak
                | Self::NotAsked
                | Self::SaidFit
                | Self::LivePlug
                | Self::WrongEndFirst
                | Self::ResetIntoFault
                | Self::TooNear
                | Self::CordHot
                | Self::PlugHot
                | Self::WireHot
        )
    }

    /// How soon something has to be done about it, the most urgent first: people who are hurt, then bad air, then the rest.
    pub(super) fn urgency(self) -> u8 {
        let bad_air = [Self::Indoors, Self::Gas, Self::StayedIn, Self::GasNextDoor];
        let can_wait = [Self::NoAlarm, Self::FuelIndoors];
        if self.harms() {
            0
        } else if bad_air.contains(&self) {
            1
        } else {
            2 + u8::from(can_wait.contains(&self))
        }
    }

    /// The criterion it belongs to.
    #[expect(clippy::too_many_lines, reason = "a table, one line a rule")]
    pub fn criterion(self) -> Criterion {
        match self {
            Self::LineFed
            | Self::NoTransferEquipment
            | Self::Collision
            | Self::SourcesMeet
            | Self::SaidFit
            | Self::NoVisibleBreak
            | Self::NotAsked => Criterion::Isolation,
            Self::Shock
            | Self::NothingBonds
            | Self::LiveBlades
            | Self::Gas
            | Self::Overcome
            | Self::GasNextDoor
            | Self::NoAlarm
            | Self::StayedIn
            | Self::FuelIndoors
            | Self::FuelFire
            | Self::Touch
            | Self::Indoors
            | Self::WetPanel
            | Self::PlugUnderLoad
            | Self::CordFire
            | Self::NotLockedOut
            | Self::LiveLugs
            | Self::HandTransferLive
            | Self::NotTested
            | Self::TesterUnproved
            | Self::NotGrounded
            | Self::GroundsWrong
            | Self::LiveEnd
            | Self::GroundsLeft
            | Self::CaughtByEngine
            | Self::SaidDead
            | Self::WrongVolts => Criterion::People,
            Self::LivePlug
            | Self::WrongEndFirst
            | Self::StartUnderLoad
            | Self::NotSettled
            | Self::AllAtOnce
            | Self::NoCoolDown
            | Self::BlindReturn
            | Self::ResetIntoFault
            | Self::TooNear
            | Self::NotCalled => Criterion::Order,
            Self::Overload
            | Self::TooSmallForMotor
            | Self::ShutOff
            | Self::RanDry
            | Self::Tripped
            | Self::FuseBlown
            | Self::GroundFault
            | Self::TwoBonds
            | Self::GroundCarries
            | Self::Damaged
            | Self::Starved
            | Self::CordHot
            | Self::PlugHot
            | Self::CordUnfit
            | Self::SunOnGenerator
            | Self::PushedBack
            | Self::BatteryOverloaded
            | Self::BatterySpent
            | Self::WireHot => Criterion::Load,
            Self::GoalLate
            | Self::Lost
            | Self::NotRestored
            | Self::NotBack
            | Self::SaidWrong
            | Self::Unanswered => Criterion::Restoration,
        }
    }

    /// Its name in word files.
    #[expect(clippy::too_many_lines, reason = "a table, one line a rule")]
    pub fn name(self) -> &'static str {
        match self {
            Self::LineFed => "line-fed",
            Self::NoTransferEquipment => "no-transfer-equipment",
            Self::Collision => "collision",
            Self::SourcesMeet => "sources-meet",
            Self::Shock => "shock",
            Self::Touch => "touch",
            Self::NothingBonds => "nothing-bonds",
            Self::LiveBlades => "live-blades",
            Self::Indoors => "indoors",
            Self::WetPanel => "wet-panel",
            Self::Gas => "gas",
            Self::Overcome => "overcome",
            Self::GasNextDoor => "gas-next-door",
            Self::NoAlarm => "no-alarm",
            Self::StayedIn => "stayed-in",
            Self::FuelIndoors => "fuel-indoors",
            Self::NotCalled => "not-called",
            Self::FuelFire => "fuel-fire",
            Self::NotLockedOut => "not-locked-out",
            Self::CaughtByEngine => "caught-by-engine",
            Self::LiveLugs => "live-lugs",
            Self::HandTransferLive => "hand-transfer-live",
            Self::NotTested => "not-tested",
            Self::TesterUnproved => "tester-unproved",
            Self::NotGrounded => "not-grounded",
            Self::GroundsWrong => "grounds-wrong",
            Self::NoVisibleBreak => "no-visible-break",
            Self::LiveEnd => "live-end",
            Self::GroundsLeft => "grounds-left",
            Self::NotAsked => "not-asked",
            Self::PlugUnderLoad => "plug-under-load",
            Self::LivePlug => "live-plug",
            Self::WrongEndFirst => "wrong-end-first",
            Self::StartUnderLoad => "start-under-load",
            Self::NotSettled => "not-settled",
            Self::AllAtOnce => "all-at-once",
            Self::NoCoolDown => "no-cool-down",
            Self::BlindReturn => "blind-return",
            Self::Overload => "overload",
            Self::TooSmallForMotor => "too-small-for-motor",
            Self::ShutOff => "shut-off",
            Self::RanDry => "ran-dry",
            Self::Tripped => "tripped",
            Self::FuseBlown => "fuse-blown",
            Self::GroundFault => "ground-fault",
            Self::ResetIntoFault => "reset-into-fault",
            Self::TwoBonds => "two-bonds",
            Self::GroundCarries => "ground-carries",
            Self::Damaged => "damaged",
            Self::Starved => "starved",
            Self::CordHot => "cord-hot",
            Self::WireHot => "wire-hot",
            Self::CordFire => "cord-fire",
            Self::PlugHot => "plug-hot",
            Self::CordUnfit => "cord-unfit",
            Self::SunOnGenerator => "sun-on-generator",
            Self::PushedBack => "pushed-back",
            Self::BatteryOverloaded => "battery-overloaded",
            Self::BatterySpent => "battery-spent",
            Self::TooNear => "too-near",
            Self::GoalLate => "goal-late",
            Self::Lost => "lost",
            Self::NotRestored => "not-restored",
            Self::NotBack => "not-back",
            Self::WrongVolts => "wrong-volts",
            Self::SaidDead => "said-dead",
            Self::SaidFit => "said-fit",
            Self::SaidWrong => "said-wrong",
            Self::Unanswered => "unanswered",
        }
    }
}

/// How badly people came to harm, or could have.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Harm {
    /// Nobody was hurt by it here, but it can hurt people: whoever touches it, works on the line or sleeps in the house.
    CanHurt,
    /// Somebody was hurt.
    Hurt,
    /// What reached somebody can kill.
    MayHaveKilled,
}

impl Harm {
    /// What a current through a body does: none up to curve b of IEC 60479-1, and from curve c1 on the heart may stop.
    pub(super) fn of_current(zone: Zone) -> Option<Self> {
        if zone.may_stop_heart() {
            Some(Self::MayHaveKilled)
        } else {
            zone.harms().then_some(Self::Hurt)
        }
    }
}

/// Something a rule found.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// The rule.
    pub rule: Rule,
    /// When it began.
    pub at: DrillTime,
    /// How long it lasted, as far as that means something.
    pub lasted: DrillTime,
    /// Index of the trace's moment that shows it.
    pub moment: usize,
    /// Whether it breaks the criterion; otherwise it is advice.
    pub breach: bool,
    /// How badly people came to harm by it, or that it can hurt them though it was filed under another criterion; `None` where neither is so.
    pub harm: Option<Harm>,
    /// The numbers and names that prove it, as arguments of its messages.
    pub evidence: Vec<(&'static str, Arg)>,
    /// The point of the network that energy reached or may reach, where the rule is about that.
    pub reaches: Option<String>,
}

impl Finding {
    /// A number among its evidence, in the unit that stands there with it; none where there is no number of this name.
    pub fn quantity(&self, name: &str) -> Option<f64> {
        self.evidence.iter().find_map(|(own, arg)| {
            let Arg::Quantity(number, _) = arg else {
                return None;
            };
            (*own == name).then_some(*number)
        })
    }

    /// A breach seen at one moment.
    pub(super) fn breach(rule: Rule, at: DrillTime, moment: usize) -> Self {
        Self {
            rule,
            at,
            lasted: DrillTime::ZERO,
            moment,
            breach: true,
            harm: rule.can_hurt().then_some(Harm::CanHurt),
            evidence: Vec::new(),
            reaches: None,
        }
    }

    /// This finding with how badly people came to harm by it.
    #[must_use]
    pub(super) fn harming(mut self, harm: Option<Harm>) -> Self {
        self.harm = harm;
        self
    }

    /// This finding with one more piece of evidence.
    #[must_use]
    pub(super) fn with(mut self, name: &'static str, arg: Arg) -> Self {
        self.evidence.push((name, arg));
        self
    }

    /// This finding with the point that energy reached or may reach.
    #[must_use]
    pub(super) fn reaching(mut self, point: impl Into<String>) -> Self {
        self.reaches = Some(point.into());
        self
    }
}
