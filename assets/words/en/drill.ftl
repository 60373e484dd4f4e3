# The drill: titles and goals, log, what happened, what was learnt.

drill-there-and-back-title = There and back
drill-there-and-back-summary = A storm takes the power. Switch the house to the generator, then back to the utility. The panel has an interlock.
drill-there-and-back-goal = Get the fridge, the furnace and the sump pump running within 20 minutes of the outage. When the utility is back, switch back and put everything away.
drill-there-and-back-note = A mistake on the line can hurt someone. You can stop at any time.
drill-no-slide-title = No slide
drill-no-slide-summary = The same house, but someone added a generator breaker and left out the interlock. A cord with two plugs lies in the shed. Find the safe way.
drill-no-slide-goal = Get the fridge and the sump pump running within 20 minutes of the outage. Keep the street safe. When the utility is back, plug them into the wall again and put everything away.
drill-no-slide-note = Mistakes in this drill can kill a line worker. Nothing is shown in detail. You can stop at any time.

log-set = { $control }: { $position }.
log-look = You look at the { $place }.
log-test = You test: { $point }.
log-call = You call: { $who }.
log-tell = You tell: { $who }.
log-refuel = You fill the tank of the generator.
log-wait = You wait { $time }.
log-refused = { $deed } That does not work. { $why }

learnt-street-lit = Lights are on in the street.
learnt-street-dark = The whole street is dark.
learnt-live = { $point }: live, { $volts }.
learnt-dead = { $point }: no voltage. You proved the tester before and after.
learnt-crew-at-work = The utility says: a crew is at work on your line.
learnt-in-service = The utility says: your line is in service.
learnt-line-down = The utility says: your line is out. A crew is on its way or has just left.
learnt-electrician = The electrician says: use extension cords only, until the panel has been put right. I will come when the roads are clear.
learnt-emergency = The emergency number says: get everyone out to fresh air. Stay away from anything that may be live.
learnt-told = Now they know what is going on: { $who }.

event-outage = The power goes out. The street is dark.
event-crew-arrived = The line crew arrives and tests the line.
event-crew-took-hold = The line crew has found the line dead. They have it in their hands.
event-crew-found-live = The line crew tests the line and finds { $volts }. They stand back and wait.
event-crew-left = The line crew has mended the line. They are clear of it.
event-utility-returned = The utility is back on the street.
event-tripped = The { $breaker } trips at { $amps }.
event-starting = { $appliance }: starting, with { $amps } at first.
event-running = { $appliance }: running.
event-stalled = { $appliance }: humming, not turning. It gets { $percent } of its voltage.
event-protector = { $appliance }: too hot. Its own protector shuts it off.
event-lost-power = { $appliance }: no power.
event-lost-fridge = The food in the fridge has grown too warm to keep.
event-lost-furnace = The house has grown too cold.
event-lost-sump = The sump pit runs over. Water comes into the basement.
event-engine-ready = The engine has warmed up. Its voltage is steady.
event-engine-stalled = Too much is asked of the engine: { $watts }. It slows down and stalls.
event-out-of-fuel = The tank is empty. The engine stops.
event-collision = Two sources meet out of step, { $angle } apart. { $amps } surge through the generator.
event-generator-broken = The generator is damaged.
event-shock = A line worker has the line in hand. It stands at { $volts }. { $amps } go through the body.
event-alarm = The carbon monoxide alarm sounds. There are { $ppm } in the house.
event-overcome = People in the house have passed out. The gas has taken { $cohb } of their blood.
event-cord-soft = The insulation of the { $cord } goes soft at { $reached }.
event-fuel-fire = Fuel spills on the hot engine, which is at { $surface }. It catches fire.
