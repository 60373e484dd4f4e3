# How a finding came about: ways of energy, chains of heat, sums of loads.

told-way = The path of the energy:
told-way-at = The path of the energy, at { $at }:
told-way-before = The path of the energy, just before { $at }:
told-step-before = Much happens within that one second. { $what } This shows how it stood just before that.
told-step-after = Much happens within that one second. { $what } This shows how it stood right after that.
told-chain = How it got so hot:
told-sum = What it adds up to:
told-sum-at = What it adds up to, at { $at }:

stage-generator = The generator makes { $volts } and delivers { $watts }. It is asked for { $asked }.
stage-generator-idle = The generator makes { $volts }. Nothing draws power from it at this moment.
stage-cord = The { $name } carries { $amps }.
stage-two-plugs = It has a plug at each end. Pull it out of the wall, and its bare blades stand at { $volts }.
stage-jumper = The { $name } stands open, but a jumper goes around it. The jumper carries the energy on.
stage-jumper-besides = The { $name } is closed. A jumper goes around it as well, so opening it alone would not help.
stage-welded = The { $name } shows open, but its contacts are welded. It carries { $amps } at { $volts }.
stage-cord-wire = The { $cord }: { $length } of { $gauge } AWG, { $lies }. That is { $ohm } there and back.
stage-cord-lost = At { $amps } it loses { $lost }. { $bad ->
    [one] Its bad plug takes { $plug } of that. { $volts } are left at its end.
   *[other] { $volts } are left at its end.
}
stage-cord-heat = What its wires lose turns into { $heat } of heat along the cord.
stage-cord-heated = { $shorted ->
    [one] Its wires met at { $whole }. The short circuit took it to { $reached }.
   *[other] In { $lasted } above its limit it reached { $reached }.
}
stage-cord-limit = Its insulation is made for { $rated }.
stage-cord-does = { $basis ->
    [thin] The table lets it carry { $carries }, laid out flat. That is too little.
    [lay] Laid out flat it may carry { $carries }. So for its heat its wire is thick enough. Here its heat could not leave.{ $long ->
        [one] {" "}For the volts at this length it is too thin.
       *[other] {""}
    }
    [damage] Laid out flat it may carry { $carries }. So its wire is not too thin: the damaged place made the heat.
   *[other] Laid out flat it may carry { $carries }. So its wire is not too thin: the place is too hot.
}
stage-cords-joined = The { $first } and the { $cord } are joined: { $length } in all. At { $amps } they lose { $lost }. { $volts } are left.
stage-cord-short = The wires of the { $name } have met. That is a short circuit: { $amps } go that way. It drags the outlet down to { $volts }.
stage-adapter = The { $cord } hangs on one 120 V outlet. One wire of it feeds both sides of the panel: { $amps }. So the outlet sags to { $near }.{ $over ->
    [one] {" "}Common outlets for 120 V are made for { $outlet } at most. So plug and outlet get hot. A breaker may hold so little too much for an hour.
    [2] {" "}Common outlets for 120 V are made for { $outlet } at most. So plug and outlet get hot.
   *[other] {""}
}
stage-inlet = The power inlet takes in { $amps }.
stage-branch = Through the { $name }, { $amps } flow the wrong way.
stage-breaker = The { $name } lets { $amps } through.
stage-live = The { $name } is live, with no current in it.
stage-main = The { $name } is on. { $amps } leave the house.
stage-drop = The { $name } carries { $amps } up to the pole.
stage-transformer = The pole transformer turns { $low } into { $high }.
stage-span = The { $name } stands at { $volts }.
stage-span-to-earth = The { $name } stands at { $volts } to earth.
stage-neighbor = The { $name } gets { $volts } from your generator.
stage-crew = The line worker's hands close the circuit. The way down to the earth takes a part of the volts. Across the body are { $volts }, and { $amps } go through it. It is a range, because bodies differ: one that takes more amps leaves fewer volts. The steps before are told for a body in the middle.
stage-generator-still = The generator stands still now.
stage-generator-stalled = The generator stalled at { $at }, and stands still now.
stage-battery = The battery makes { $volts } and delivers { $watts }.
stage-sun = The solar inverter stands at { $volts } and gives { $watts }.
stage-utility = The utility's line is made for { $volts }.
stage-carries = The { $name } carries { $amps } at { $volts }.
stage-carries-sides = The { $name } carries { $amps } on one side and { $other } on the other. Between the two are { $volts }.
stage-live-at = The { $name } is live at { $volts }, with no current in it.
stage-open = Off or open here: the { $name }. This holds the energy back.
stage-behind = Then comes the { $name }.
stage-behind-on = Then comes the { $name }. It is on.
stage-strays = From here it strays onto this: { $name }. That stands at { $volts }.
stage-transformer-down = The pole transformer turns { $high } into { $low }.
stage-line-live = { $tied ->
    [one] So your generator hung on a line that stood at { $volts }. This lasted { $lasted }.
   *[other] So the line stands at { $volts } at its highest. This lasted { $lasted }.
}
stage-handles = { $main-open ->
    [one] { $street ->
        [one] The street had power too. Only what is off here kept it and the generator apart.
       *[other] Only what is off here kept { $volts } from the street.
    }
   *[other] { $interlock ->
        [0] There is no lock and no slide here.
        [one] The slide does not reach: it holds neither handle.
       *[other] The slide was taken apart: it holds neither handle.
    } { $tied ->
        [one] Nothing kept the two sources apart.
       *[other] { $met ->
            [one] Nothing kept { $volts } from the street.
           *[other] { $street ->
                [one] The street had power too. Only a handle that was off kept it and the generator apart.
               *[other] Only a handle that was off kept { $volts } from the street.
            }
        }
    }
}
stage-meet = Here the two meet, { $angle } apart. { $amps } surge through the generator.
stage-hand = The hand closes the way to the ground. { $cause ->
    [wet] The wet joint and the earth underfoot take a part.
   *[other] The earth underfoot takes a part.
} { $volts } are left across the body, and { $body } go through it for { $seconds }.
stage-bare = The way ends here, at bare metal. { $across ->
    [one] From one pin to earth a hand meets { $earth }. Across two pins it meets { $volts }.
   *[other] A hand that touches it meets { $volts }.
}
stage-wet-hand = Water joins it to the box and the floor. The hand meets { $volts }.
stage-lug = The bare lugs behind the cover stand at { $volts }, close to the hand.
stage-parts = { $carried ->
    [one] The hand parts contacts that carry { $amps } at { $volts }. The current jumps on between them as an arc, a hot spark.
   *[other] The bare lugs behind the cover stand at { $volts }, close to the hand.
}
stage-plug-load = The hand moves a plug that carries { $amps } at { $volts }.
stage-plug = { $strip ->
    [one] Here the hand plugs it in. From now on the blades of its other plug stand at { $volts } too.
   *[other] The hand moves a plug that stands at { $volts }.
}
stage-blades = The blades hang on this. They stand at { $stands } now.
stage-no-bond = Neutral and ground are joined nowhere. { $worn ->
    [one] A worn hot wire touches this case: { $machine }. The earth rod keeps the case at { $frame } to earth. So the neutral is lifted to { $leg }, and the other hot wire to { $other }. No breaker trips.
   *[other] A worn hot wire that touches a case would lift the neutral to { $leg } to earth. No breaker would trip.
}
stage-work = { $dead ->
    [one] Here is the place of work on the line. It is dead now.
   *[other] Here is the place of work on the line. It stands at { $volts } to earth.
}
stage-gap = Here the wire is in two. Hands that join it bridge the gap between its two ends: { $volts }.
stage-grounds = The grounds make a short circuit of it: { $amps }.
stage-customers = Here the customers get { $stands }. { $asked ->
    [one] They have not called back.
   *[other] Nobody has asked them.
}
stage-said-dead = This is what you called dead: { $subject }. It stands at { $stands }.
stage-wrong-volts = One side of the house gets up to { $volts }. It is too much for { $lasted } in all.
stage-burnt = It gets { $volts } for { $stood }: { $appliance }. It can take { $most }, no more.
stage-astray = Here { $residual } go out and do not come back. The device opens in { $took }.
stage-ground-wire = On the way back, { $amps } take the ground wire.
stage-sun-joins = The sun's { $sun } can now flow toward a generator made for { $rated }.
stage-sun-used = { $charges ->
    [one] Of that, the battery takes { $charge } to charge. What is on in the house takes { $rest }.
   *[other] Of that, what is on in the house takes { $rest }.
}
stage-pushed = { $watts } go into the generator, the wrong way.{ $borrowed ->
    [one] {" "}Motors borrow current from it as well. So the cord's amps times volts are more.
   *[other] {""}
}
stage-unfit = { $fault ->
    [indoor] Its letters are { $letters }: without a W its skin is not made for sun and wet.
    [no-ground] { $pin ->
        [one] Its ground pin is cut off, so its ground wire leads nowhere.
       *[other] It has two wires, and no ground wire.
    } Faults in what hangs on it then have no safe way back.
    [wet] Its connector lies in the water. Current leaks from there to earth.
    [damaged] { $damage ->
        [strands] At its bad place only { $left } of the strands of one wire are left. That place got to { $spot }.
       *[crushed] At its crushed place little keeps its wires apart. The cord got to { $spot }.
    }
   *[joined] It hangs on another cord: one more joint that can get hot.
} It was in use for { $lasted } in all. Its far end stands at { $stands }.

stage-cord-warmed = The load took it from { $start } to { $rated }. That took { $time }.
stage-plug-ohm = The two contacts of this plug have { $ohm } in all.
stage-plug-heat = At { $amps } that makes { $heat } of heat in one small place.
stage-plug-reached = That took the plug from { $start } to { $reached } in { $time }.
stage-plug-limit = At { $limit } a plug begins to scorch.
stage-wire-adapter = The { $cord } hangs on one 120 V outlet. So both sides of the panel swing together, at { $near }.
stage-wire-shared = This neutral brings back { $one-amps } of the { $one } and { $other-amps } of the { $other }. On opposite sides they cancel. On one side they add up, or nearly so.
stage-wire-made = The wire is { $gauge } AWG, which is how thick it is. The largest breaker for it is { $breaker }.
stage-wire-carries = It carries { $amps }.
stage-wire-reached = From the first load on it went from { $start } to its limit, inside the wall. That took { $time }.
stage-wire-limit = Its insulation can take { $limit }, no more. { $climbs ->
    [one] It was still climbing.
   *[other] It got to { $reached }.
}

stage-on-the-way = The wires on the way turn { $watts } into heat.
stage-borrowed = A motor also borrows current and gives it back. So its watts are less than its amps times its volts.
stage-starting = The { $name } starts: { $amps } at { $volts }. It uses { $watts } for a moment.
stage-stalled = The { $name } tries to start and does not turn: { $amps } at { $volts }. It uses { $watts }.
stage-asked-street = At such low volts the generator delivers { $watts }. At full volts, house and street ask for { $asked }. Here it can give { $rated }.
stage-asked-low = At such low volts the generator delivers { $watts }. At full volts, all this asks for { $asked }. Here it can give { $rated }.
stage-asked-surge = All in all the generator is asked for { $asked }. It is made for { $rated }, and for { $surge } during a start.
stage-asked-battery-low = At such low volts the battery delivers { $watts }. At full volts, all this asks for { $asked }. It is made for { $rated }.
stage-asked-battery = All in all the battery is asked for { $asked }. It is made for { $rated }.
stage-street = { $neighbors ->
    [0] The main breaker sends { $amps } at { $volts } out to the street.
    [one] The main breaker sends { $amps } at { $volts } out to the street, where one neighbor hangs on it too.
   *[other] The main breaker sends { $amps } at { $volts } out to the street, where { $neighbors } neighbors hang on it too.
}
stage-opens = The { $name } saw { $amps }, { $times } times its rating. A cold one opens at that in { $seconds }.
stage-turning = At such low volts the motor has { $torque } of its turning force.
stage-low-volts = That leaves { $volts } for this: { $appliance }.
stage-order-motor = An order that works, number { $number }: { $name }. While it starts, all that is on asks for { $start }, then for { $then }.
stage-order = An order that works, number { $number }: { $name }. Then all that is on asks for { $then }.
stage-order-utility = An order that works, number { $number }: { $name }.
stage-leave-asked = Leave this off: { $name }. With it beside the rest, { $asked } would be asked for.
stage-leave-restart = Leave this off: { $name }. With it, { $asked } would be asked for whenever this starts by itself: { $starts }.
stage-begins-above = The first steps are as told above, at { $at }.
stage-ends-above = The rest is as told above, at { $at }.
stage-leave-through = Leave this off: { $name }. With it, { $amps } would go through the { $guard }.
stage-leave-stands = Leave this off: { $name }. At { $share } of its volts a motor would not turn.
stage-leave-starves = Leave this off: { $name }. With it, only { $share } of the volts would be left.
stage-frame = The frame of the generator is joined to its neutral and ground wires. They put { $volts } on it.
stage-generator-tied = The generator stands at { $volts }, tied to another source.
stage-two-bonds = The device finds neutral and ground joined on both its sides. It opens in { $took }.
stage-lent = The neighbor's generator gives { $volts } at the end of the cord they lend.
stage-sources-meet = { $met ->
    [one] Here it meets your generator, { $angle } apart. { $amps } surge between the two.
   *[other] It ends at the outlets of your generator. They stand at { $volts }.
}
stage-surge-held = This stayed closed: { $breaker }. Cold, it opens at such a surge only after { $opens }. The surge itself is over in a few turns.

told-fire = How it caught fire:
told-gas-at = The path of the gas, at { $at }:

stage-exhaust = The engine carries a load of { $watts }. In fresh air it gives off { $fresh } of carbon monoxide an hour.
stage-exhaust-starved = The air around it is short of oxygen: { $oxygen } is left. So it gives off { $gives } an hour.
stage-exhaust-over = The engine has been off for { $time }. What it gave off is still in the air.
stage-exhaust-neighbor = A neighbor's engine beside an opening of this house gives off { $grams } of carbon monoxide an hour. About { $share } of it is drawn in, which is an estimate: { $enters } an hour.
stage-drawn-in = It stands { $feet } from an opening. About { $share } of its gas is drawn in, which is an estimate: { $enters } an hour. { $way ->
    [window] The gas comes in by the open window.
    [besides] The gas comes in by the openings near it, and the open window lets in more.
    [gaps] The gas comes in by gaps. The window stands like this: { $stands }.
   *[openings] The gas comes in by the openings near it.
}
stage-drawn-in-next-door = It stands { $feet } from an opening of the home next door. About { $share } of its gas is drawn in there, which is an estimate: { $enters } an hour.
stage-garage-air = All of it goes into the garage, and the big door is { $door }. Of it, { $leaves } an hour leave for the open. The air there holds { $ppm }.
stage-garage-passes = { $door ->
    [open] Through the open door to the house, { $enters } an hour pass on into the house.
   *[shut] Through cracks in doors, walls and floor, { $enters } an hour pass on into the house.
}
stage-all-in-house = All of it stays in the house: { $enters } an hour.
stage-house-air = The air in the house holds { $ppm } by now. The gas began to gather { $time } before.
stage-air-next-door = The air in that home holds { $ppm } by now. The gas began to gather { $time } before.
stage-alarm-sounded = At { $level } an alarm must sound after { $from } to { $to } minutes. This one sounded at { $at }.
stage-alarm-cannot = At { $level } an alarm must sound after { $from } to { $to } minutes. This one cannot sound: { $stands }.
stage-alarm-quiet = At { $level } an alarm must sound after { $from } to { $to } minutes. This one has not sounded yet.
stage-nobody = Nobody is in the house then, so nobody breathes it.
stage-blood = { $who ->
    [up] The gas has taken { $cohb } of the blood of those who are awake.
    [next-door] The gas has taken { $cohb } of the blood of anyone who has sat in there.
   *[sleeper] The gas has taken { $cohb } of the blood of the { $name }, counted like a grown-up asleep.
} At the start it was { $start }. { $felt ->
    [none] Most people feel nothing yet, and that is the danger: heads ache only from { $level } on.
    [headache] From { $level } on, heads ache.
    [nausea] From { $level } on, heads throb and stomachs turn.
    [confusion] From { $level } on, people are dizzy and may not find the way out.
    [collapse] From { $level } on, people fall down.
   *[unconscious] From { $level } on, people pass out and can die.
}{ $who ->
    [up] {""}
    [next-door] {""}
   *[sleeper] {" "}Children take the gas up faster for their size. They and the sick suffer from less.
}
stage-helpless = At { $at } it had taken { $level }. From there on, people cannot save themselves.
stage-helpless-ahead = If the air stays like this, it takes { $level } in { $time }. From there on, people cannot save themselves.

stage-fuel-metal = { $how ->
    [running] The engine is running, and its muffler is at { $surface }.
   *[stopped] The engine stopped { $time } before, and its muffler is still at { $surface }.
}
stage-fuel-vapor = Above { $flash }, gasoline gives off vapor that can catch fire. The air here is at { $air }.
stage-fuel-lit = { $by ->
    [engine] An engine that runs lights the vapor by its sparks and its exhaust. Metal can light it from { $least } on.
    [metal] Metal can light the vapor from { $least } on, and this muffler is hotter.
   *[margin] By the lowest published figure, metal lights the vapor from { $least } on. The drill counts cooler metal too, to be on the safe side.
}
stage-one-side = All of these hang on one side of the panel. Together they put { $amps } through the { $name }.{ $less ->
    [one] {" "}The current of a motor comes a little later than that of a lamp. So this is less than the plain sum.
   *[other] {""}
}
names-and = { $name } and { $rest }
names-comma = { $name }, { $rest }
stage-half-plug = It hangs on this by an adapter: { $cord }. That has one hot wire, so it gives { $volts } and not { $rated }.
stage-half-tries = { $opened ->
    [0] It was on for { $lasted } in all, and hummed.
    [one] It hummed for { $each }. Then its own protector opened.
   *[other] The first time it hummed for { $each }. Then its own protector opened, { $opened } times in all.
}

told-cut-at = The path that power should take, at { $at }:
told-left-at = How it stood at { $at }:
told-lost = How it was lost:
told-fuel = Where the fuel went:
told-oil = Where the oil went:
told-stopped = Why that was too soon:
told-can = How that fuel can catch fire:
told-starter-at = How the engine can turn, at { $at }:

stage-by-cord = No safe way leads through this panel. So the way by an extension cord is shown.
stage-unplugged = Not plugged in here: the { $name }.
stage-gets = { $how ->
    [unplugged] The { $name } is plugged in nowhere.
    [elsewhere] The { $name } is not plugged in there. Where it is plugged in, it gets { $volts }.
    [low] The { $name } gets { $volts } there. It needs { $least } or more.
   *[gets] So this gets { $volts }: { $name }.
}
stage-came = { $came ->
    [one] Power came to stay at { $at }. That was { $late } too late.
   *[other] When the run ended, at { $at }, no lasting power had come.
}
stage-house-then = { $fed ->
    [crew] So the customers' house gets { $volts }.
    [own] So the street's power does not get into the house. The house gets { $volts } from its own source.
    [part] So the street's power does not get into the house. The main panel gets { $volts }. The smaller panel gets { $part } from the house's own source.
    [street] So the street's power does not get into the house. That is what is missing: nothing else may feed the wires of this house.
   *[dark] So the street's power does not get into the house. The house gets { $volts }.
}
stage-still-burns = It burns { $rate } of fuel an hour.
stage-without-it = Without it the house gets { $volts }.
stage-blind = Nobody had looked. The house now gets { $stands } from the street.

stage-last-ran = { $ran ->
    [one] It ran last at { $at }, with { $watts }: { $name }.
   *[other] It has not run since { $at }: { $name }.
}
stage-can-wait = At its best, what it guards can do without power for { $whole }. At { $at }, { $share } of that was used up already.
stage-rest-lasted = The rest lasted { $time }. At { $at } it was all gone.
stage-tank = At { $at } the tank held { $held }.
stage-burned = The engine then ran for { $time }, with { $watts } on average. So it burned { $rate } an hour.
stage-burns-then = At the end it carried { $watts }. At that load it burns { $rate } an hour.
stage-oil = At { $at } the oil was good for { $time } more.
stage-oil-used = The engine then ran for { $time }, with { $watts } on average. Then its own switch stopped it.
stage-went-dark = { $loads ->
    [0] Nothing drew power from it then. It delivered { $watts }.
    [one] At once this went dark: { $names }. The engine had delivered { $watts }.
   *[other] All at once this went dark: { $names }. The engine had delivered { $watts }.
}

stage-last-load = The engine last carried { $watts }. That is { $share } of what it is made for.
stage-rested = Then it should run { $cool } without load. It was stopped { $missing } before that was over.
stage-muffler = When it stopped, its fan stopped too. The drill takes its muffler for { $surface } hot then.
stage-muffler-cools = Standing still, the muffler stays hotter than { $cooled } for { $hot }.

stage-can = The can stood here: { $place }. It was there for { $lasted }.
stage-cup = A can may tip over. One spilled cup gives off { $grams } of vapor.
stage-floor-air = The vapor is heavier than air and stays low. Once it has all dried, it makes { $mix } of the lowest foot (30 cm) of air in that room.
stage-can-lit = Such air burns from { $burns } on. { $lights ->
    [flame] A flame burns in that room, and it lights the vapor.
   *[spark] Any spark lights it, such as that of a light switch.
}

stage-controller = { $off ->
    [one] The controller is off. One hand is enough to put it back.
   *[other] The controller is awake. It acts { $delay } after the street falls below { $loss } of its volts.{ $weekly ->
        [one] {" "}Its next weekly run is due in { $next }.
       *[other] {""}
    }
}
stage-starter-battery = { $off ->
    [one] The starter battery is disconnected, so the starter cannot turn.
   *[other] The starter battery is connected, so the starter can turn.
}
stage-set-breaker = { $off ->
    [one] The breaker on the generator is off. It keeps { $volts } from the wires of the house.
   *[other] The breaker on the generator is on. When the engine runs, { $volts } stand on the wires.
}
stage-hands-in = { $runs ->
    [one] The engine was turning, and the cover was open for { $lasted }.
   *[other] The cover was open for { $lasted }. A hand in it has no time to get away.
}
stage-start-asked = { $why ->
    [test] At { $at } the controller stood on test. That tells it to start.
    [weekly] At { $at } the weekly run was due.
   *[street] At { $at } the street's power went away.
}
stage-controller-off = Off: the controller. So the engine does not start by itself, and the transfer switch waits.
stage-controller-waits = The controller waited { $time }, as it is set to. Then it gave its order.
stage-oil-kept = The oil was low. So a switch in the engine kept it from running, but not the starter from turning it.
stage-caught = The starter turned the engine { $time } after the cover was opened. Hands were in it.
