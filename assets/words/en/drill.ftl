# The drill: log, what happened, what was learnt.

log-set = { $control }: { $position }.
log-slid = { $deed } { $slide }
log-look = You look at the { $place }.
log-test = You test: { $point }.
log-call = You call: { $who }.
log-tell = You tell: { $who }.
log-refuel = You fill the tank of the generator.
log-wait = You wait { $time }.
log-happen-sooner = The instructor lets what comes next come now.
log-happen-utility-fails = The instructor lets the utility fail.
log-happen-utility-returns = The instructor lets the utility return.
log-happen-neutral-lost = The instructor lets the neutral of the drop come loose.
log-happen-leg-lost = The instructor lets one live wire of the drop come loose.
log-happen-drop-mended = The instructor lets the drop be mended.
log-happen-tank-dry = The instructor lets the tank run dry.
log-refused = { $deed } That does not work. { $why }
# It stood so before.
log-refused-already = { $deed } { $why }

learnt-street-lit = Lights are on in the street.
learnt-street-dark = The whole street is dark.
learnt-live = { $point }: live, { $volts }.
learnt-dead = { $point }: no voltage. You proved the tester before and after.
learnt-crew-at-work = The utility says: a crew is at work on your line.
learnt-in-service = The utility says: your line is in service.
learnt-drop-loose = The utility says: a wire to your house has come loose. Leave your main breaker off. A crew is on its way to mend it.
learnt-line-down = The utility says: your line is out. A crew is on its way or has just left.
learnt-electrician = The electrician says: use extension cords only, until the panel has been put right. I will come when the roads are clear.
learnt-emergency = The emergency number says: get everyone out to fresh air. Stay away from anything that may be live.
learnt-told = Now they know what is going on: { $who }.

event-outage = The power goes out. The street is dark.
event-crew-arrived = The line crew arrives and tests the line.
event-crew-took-hold = The line crew has found the line dead. They have it in their hands, before any grounds are on it.
event-crew-found-live = The line crew tests the line and finds { $volts }. They stand back and wait.
event-crew-left = The line crew has mended the line. They are clear of it.
event-utility-returned = The utility is back on the street.
event-utility-failed = The line did not hold. The street is dark again.
event-neighbor-asked = A neighbor is at the door. They ask you to run a cord from your house to theirs.
event-tripped = The { $breaker } trips at { $amps }.
event-fuse-blown = The { $fuse } blows at { $amps }.
event-ground-fault = { $load ->
    [one] It opens, as { $residual } went another way: { $device }.
   *[other] It opens before any load is on: { $device }.
}
event-neutral-lost = The neutral of the house comes loose at the pole. On utility power some lamps now flare, and others go dim.
event-leg-lost = Half of the house goes dark. One hot wire of the house has come loose at the pole.
event-drop-mended = The utility has mended the wires to the house.
event-damaged = A pop and a bad smell at { $volts }: { $appliance }.
event-starting = { $appliance }: starting, with { $amps } at first.
event-running = { $appliance }: running.
log-handed = { $name } takes over.
event-stalled = { $appliance }: humming, not turning. It gets { $percent } of its voltage.
event-protector = { $appliance }: too hot. Its own protector shuts it off.
event-lost-power = { $appliance }: no power.
event-lost-anything = Too long without power: { $of }. What it guards is lost.
event-lost-fridge = The food in the fridge has grown too warm to keep.
event-lost-furnace = The house has grown too cold.
event-lost-sump = The sump pit runs over. Water comes into the basement.
event-engine-ready = The engine has warmed up. Its voltage is steady.
event-engine-stalled = Too much is asked of the engine: { $watts }. It slows down and stalls.
event-out-of-fuel = The tank is empty. The engine stops.
event-low-oil = The oil is low. The switch in the engine stops it before it is harmed.
event-no-start = The engine turns over but does not catch. Try again.
event-engine-started = The engine catches and runs.
event-shut-off = Too much is asked of the inverter: { $watts }. It shuts its output off. The engine runs on.
event-shut-off-leg = One leg is asked for more than { $amps }. The inverter shuts its output off. The engine runs on.
event-dip = The voltage dips. Any light that is on blinks. { $lasts ->
    [one] It falls to { $volts } and is back after { $seconds }.
   *[other] For a moment it falls to { $volts }.
}
event-dip-stays = The generator sags to { $volts } and cannot come back up. Any light that is on goes dim.
event-caught-by-engine = The starter turns the engine by itself while hands are in it.
event-controller-waiting = The controller is at rest.
event-controller-loss-seen = The controller sees that the utility is lost. It waits to see if that lasts.
event-controller-start-delay = The controller gets ready to start the engine.
event-controller-cranking = The controller starts the engine. This is try { $attempt }.
event-controller-resting = The engine did not catch. The controller lets the starter rest.
event-controller-warming-up = The controller lets the engine warm up before it gets load.
event-controller-to-generator = The contacts of the transfer switch leave the utility.
event-controller-on-generator = The transfer switch has brought the house to the generator.
event-controller-back-seen = The controller sees the utility again. It waits to see if that lasts.
event-controller-retransfer-delay = The controller keeps the house on the generator for a while longer.
event-controller-to-utility = The contacts of the transfer switch leave the generator.
event-controller-cooling-down = The house is off the generator. The engine runs without load to cool down.
event-controller-exercising = The controller runs the engine for its exercise. The house stays on the utility.
event-controller-overcrank = The engine did not catch in all its tries. The controller gives up. Someone has to look at it.
event-controller-stopped = The engine stopped by itself. The controller gives up. Someone has to look at it.
event-controller-not-ready = The voltage of the generator never came up. The controller gives up. Someone has to look at it.
event-collision = Two sources meet out of step, { $angle } apart. { $amps } surge through the generator.
event-generator-broken = The generator is damaged.
event-solar-joined-utility = The solar inverter joins the utility. Its power comes back step by step.
event-solar-joined-generator = The solar inverter takes the generator for the utility. It begins to push power into the same wires.
event-solar-joined-battery = The solar inverter follows the battery. It feeds the house with it.
event-solar-left = The solar inverter shuts off. It sees { $volts } at { $hertz }.
event-solar-left-dead = The solar inverter shuts off. Nothing feeds its wires.
event-generator-pushed = The sun gives more than the house takes. { $watts } are pushed back into the generator.
event-battery-took = The battery takes over the circuits it guards.
event-battery-gave-back = The battery gives its circuits back to the panel.
event-battery-overloaded = The battery is asked for { $watts }. It shuts off and waits for its switch.
event-battery-empty = The battery is empty. It shuts off.
event-shock = A line worker has the line in hand. Across the body are { $volts }, and { $amps } go through it.
event-touched = A hand on this feels current: { $metal }. Across the body are { $volts }. { $body } go through the body for { $seconds }.
event-alarm = The carbon monoxide alarm sounds. There are { $ppm } in the house.
event-overcome = People in the house have passed out. The gas has taken { $cohb } of their blood.
event-cord-soft = The insulation of the { $cord } goes soft at { $reached }.
event-plug-scorched = A plug scorches at { $reached }: { $cord }.
event-cord-shorted = The wires inside the { $cord } meet, at { $reached }. There is a flash.
event-cord-fire = What lies against the { $cord } burns. The cord stands at { $reached }.
event-fuel-fire = Fuel spills on the hot muffler, which is at { $surface }. It catches fire.
log-say = { $question } You say: { $answer }.

event-unheard = No alarm sounds, and one should. There are { $ppm } in the house.
event-unwell = The people in the house have a headache. The gas has taken { $cohb } of their blood.
event-person-overcome = In the house, { $person } has passed out. The gas has taken { $cohb } of the blood.
event-next-door-alarm = The carbon monoxide alarm next door sounds. There are { $ppm } in that home.
event-neighbor-runs = A neighbor starts an engine right below your open vent.
