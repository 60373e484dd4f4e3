# Marking: criteria, findings, sources.

criterion-isolation-title = Isolation
criterion-isolation-text = No power from the house ever reaches the utility's line, and no two sources ever meet out of step. Proper equipment keeps them apart, and not a handle alone.
criterion-isolation-line = Before hands go on the line, every way from the utility is open for all to see. No generator meets the utility.
criterion-rule = The rule: { $rule }
criterion-against = See what was found at { $times }.
# Beside what the drill asks, where work rightly stopped before it was done.
criterion-not-shown = { $harm ->
    [fire] Work stops at a fire. So this was not shown, and nobody holds it against you.
    [air] After an alarm nobody goes back in. So this was not shown, and nobody holds it against you.
    [gas] Work stops when people pass out. So this was not shown, and nobody holds it against you.
   *[hurt] Work stops when somebody is hurt. So this was not shown, and nobody holds it against you.
}
# Beside a criterion that is met.
criterion-better = Still, it could go better: see { $times }.
# Beside people who are met, for what is filed under another criterion.
criterion-can-hurt = Nobody was hurt this time. But what was found at { $times } can hurt people.
criterion-people-title = People
criterion-people-text = Nobody is hurt, and nobody is where danger can reach them at once.
criterion-order-title = Order and care
criterion-order-text = Steps come in order, in time and at a safe place, so that people and machines are spared.
criterion-load-title = Machines and loads
criterion-load-text = Nothing is overloaded, starved or overheated, and no engine or battery runs dry.
criterion-load-line = Your own work overloads, starves and overheats nothing. What customers run is not judged.
criterion-restoration-title = What the drill asks
criterion-restoration-utility = What matters gets power in time. At the end the house is back on the utility, and all is as this drill asks.
criterion-restoration-back = At the end the house is back on the utility, and all is as this drill asks.
criterion-restoration-line = At the end the customers have power from the utility, and all is as this drill asks.
criterion-restoration-own = What matters gets power in time. At the end the house runs on its own source, as this drill asks.
criterion-restoration-asked = At the end all is as this drill asks.

finding-line-fed-what = { $tied ->
    [one] Your generator and the utility were on the line together for { $lasted }. At its highest the line stood at { $volts }.
   *[other] Your generator fed the street for { $lasted }. At its highest the line stood at { $volts }.
}{ $came ->
    [one] {" "}It was so when you came.
   *[other] {""}
}
finding-line-fed-why = The pole transformer works both ways. It turns each volt of the house into many on the line. { $tied ->
    [one] The utility fed the line too. When it drops out again, your generator alone keeps the line live. Whoever works there trusts that it is dead.
   *[other] { $neighbors ->
        [0] Whoever works on that line trusts that it is dead.
        [one] One neighbor was on your generator too. A light there is no sign that the utility is back. Whoever works on that line trusts that it is dead.
       *[other] { $neighbors } neighbors were on your generator too. Lights there are no sign that the utility is back. Whoever works on that line trusts that it is dead.
    } At most the engine was asked for { $asked }. It is made for { $rated }. If it stalls, that is luck, not protection.
}
finding-line-fed-now = Turn the main breaker off at once. Turn this off in the panel too: { $breaker }. Stop the engine and keep it off. Then unplug the cord, its house end first. Call the utility. Say that your generator made the line live, and that it is off now.
finding-line-fed-instead = { $tied ->
    [one] Turn the generator's breaker in the panel off before the main breaker goes on.{" "}
   *[other] {""}
}Feed no panel by a generator without an interlock or a transfer switch. Until one is in, use extension cords only.
source-line-fed = NEC 702.5: transfer equipment ‹checked in a copy›. NIOSH FACE 90-02: a worker killed because a main breaker was left on ‹checked›.

finding-no-transfer-equipment-what = { $plugs ->
    [one] For { $lasted } a cord with two plugs joined the generator to the house wiring. { $met ->
        [one] At its worst nothing kept it off the street.
       *[other] Nothing but handles kept it off the street.
    }
   *[other] { $joined ->
        [one] Your running generator stood one handle away from the house wiring. For { $lasted } the two were joined.
       *[other] Your running generator stood one handle away from the house wiring for { $lasted }.
    } { $interlock ->
        [0] There was no transfer equipment in between.
        [one] The interlock in between does not fit.
       *[other] The interlock in between was taken apart.
    }
}{ $came ->
    [one] {" "}It was so when you came.
   *[other] {""}
}
finding-no-transfer-equipment-why = { $plugs ->
    [one] Such a cord kills twice. Pull it out of the wall, and its bare blades stand at { $volts } in your hand. { $main-open ->
        [one] And one wrong move at the main breaker makes the line live.
       *[other] And the main breaker was on for at least part of that time.
    }
   *[other] { $main-open ->
        [one] The main breaker was off, but nothing holds it off. Only handles kept { $volts } off the street. One wrong move by anyone makes the line live.
        [2] The main breaker was off all that time, but nothing holds it off. { $later ->
            [one] At { $then } it went on, while the generator still made power.
           *[other] Before that it was on, while the generator made power already.
        } Then only the handle of the generator breaker kept { $volts } off the street.
       *[other] The main breaker was on for at least part of that time. { $met ->
            [one] { $tied ->
                [one] Nothing then kept the generator and the utility apart.
               *[other] Nothing then kept { $volts } off the street.
            }
           *[other] Only a handle that anyone can move then kept { $volts } off the street.
        }
    }
}
finding-no-transfer-equipment-now = { $stands ->
    [joined] The utility feeds that cord too. Touch no cord, and keep people away. Stop the engine and keep it off. Call an electrician.
    [main-on] Turn the output breaker on the generator off. Then stop the engine and keep it off. Turn off the main breaker, and this in the panel: { $breaker }. Unplug the house end of the cord first, then the generator end.
   *[main-off] Turn the output breaker on the generator off. Then stop the engine and keep it off. Turn this off in the panel: { $breaker }. Leave the main breaker off until the cord is gone. Unplug the house end of the cord first, then the generator end.
}
finding-no-transfer-equipment-instead = Run extension cords from the generator to what matters. { $interlock ->
    [0] Have a licensed electrician fit an interlock or a transfer switch, under a permit.
    [one] Look at a slide before you trust it. Move only the slide, by hand: it must block one handle all the way. Push no breaker to test it. This one does not reach: it holds neither handle. Have a licensed electrician replace it, under a permit.
   *[other] The slide was taken apart: it holds neither handle. Have a licensed electrician repair or replace it, under a permit.
}
source-no-transfer-equipment = NEC 702.5: transfer equipment ‹checked in a copy›. OSHA 3277 and CPSC advice: never connect without transfer equipment ‹checked›.

finding-collision-what = { $crew ->
    [one] The utility and a customer's generator met out of step, { $angle } apart. The generator turned { $slip } off the pace of the utility. { $amps } surged through it.
   *[other] The utility and your generator met out of step, { $angle } apart. The generator turned { $slip } off the pace of the utility. { $amps } surged through it.
}
finding-collision-why = Two sources that are out of step fight. At the worst angle it is { $worst }, { $times } times what the generator is made for. The shaft is twisted with up to { $torque } times the force it is made for. Shafts can break, windings can burn, and things can catch fire.
finding-collision-now = { $crew ->
    [one] Open the recloser and leave it open. Take the line for live: the generator may still feed it. Send somebody to the house. Keep people away from the generator. Open and tag this too: { $cutout }.
   *[other] { $stands ->
        [joined] Turn the generator breaker in the panel off, if you can reach it safely.
       *[apart] Stand back and touch no cord. Turn the main breaker off, if you can reach it safely.
    } Keep everyone away from the generator. If it smokes, smells or rattles: call the fire department. { $engine ->
        [runs] Only an engine that runs quietly is stopped at its switch.
       *[still] The engine has stopped. Do not start it again.
    } An electrician looks at generator, cord and panel before they are used again.
}
finding-collision-instead = { $crew ->
    [one] Ask the customers to go back to the utility, wait for their answer, and close last.
   *[other] { $by ->
        [main] Turn the generator's breaker in the panel off before the main breaker goes on. An interlock allows no other order.
        [utility] The utility comes back with no warning. Keep the main breaker off for as long as the generator feeds the house. An interlock makes sure of that.
       *[set] Turn the main breaker off before the generator is joined to the house. An interlock allows no other order.
    }
}
source-collision = NEC 702.5: transfer equipment ‹checked in a copy›. IEEE 1547, Table 5: closing in step ‹checked in a copy›. Current and torque are computed from both impedances.

finding-sources-meet-what = { $met ->
    [one] Your generator and the neighbor's met in one strip, { $angle } apart. { $amps } surged between them. In all, the strip was plugged into both for { $lasted }.
   *[other] The neighbor's generator made the outlets of yours live for { $lasted }. They stood at { $volts }.
}
finding-sources-meet-why = { $met ->
    [one] Two sources that are out of step fight. At the worst angle it is { $worst }, { $times } times what your generator is made for. Windings and electronics can burn. Whoever pulls one plug has live blades in hand.
   *[other] When your engine starts, the two fight out of step. Until then your outlets are live with the engine still. Whoever pulls one plug has live blades in hand.
}
finding-sources-meet-now = { $stands ->
    [runs] Stop your engine, and have the neighbor stop theirs.
   *[still] Keep your engine off, and have the neighbor stop theirs.
} Pull the strip out of the neighbor's cord first. Pull its other plug last.
finding-sources-meet-instead = Thank the neighbor and say no to the strip. Plug one thing into their cord. Plug the rest into your own. Never join two sources.
source-sources-meet = NEC 702.5: equipment keeps sources apart ‹checked in a copy›. One source for each cord: common practice. Current is computed from both impedances.

finding-shock-what = { $crew ->
    [one] A worker of your crew had the line in hand, and it was live. Across the body were { $volts }, and { $amps } went through it.
   *[other] A line worker had the line in hand when your generator made it live. Across the body were { $volts }, and { $amps } went through it.
}
finding-shock-why = { $stated ->
    [shorter] However short it was, even for { $seconds } that is at least { $times } times what can stop a heart.
    [longer] It went on for more than { $seconds }. In that time it is at least { $times } times what can stop a heart.
   *[within] { $crew ->
        [one] It lasted { $seconds }.
       *[other] It lasted at least { $seconds }. A real engine may stall later, which is worse.
    } That is at least { $times } times what can stop a heart in that time.
} It means: { $zone }.
finding-shock-now = { $crew ->
    [one] Keep everyone away from the worker, the line and the ground around. { $stands ->
        [live] The line is still live.
       *[dead] The line can come alive again.
    } Call the emergency number, and send for a defibrillator. { $by ->
        [customer] Have the operator keep the line open at its head. Open this with a stick: { $cutout }.
       *[utility] Have the operator open the line at its head.
    } Test the line and ground it. Then start CPR.
   *[other] { $stands ->
        [live] Your generator still feeds the line. Turn the main breaker off, then stop the engine.
        [main-on] Your generator feeds nothing now. Turn the main breaker off and keep the engine off.
       *[main-off] Your generator cannot feed the line now. Keep the main breaker and the engine off.
    } Go near neither the worker nor the line. Call the emergency number. Say that a line worker may be hurt, and that your generator fed the line. Say that it is off now.
}
finding-shock-instead = { $crew ->
    [one] Cut the line off for all to see, test it with a proved tester, and ground it at the work. Then touch it.
   *[other] Never let a generator feed the house wiring while the main breaker is on. Without an interlock or a transfer switch, use extension cords only.
}
source-shock = IEEE Std 80: 0.116 A divided by the square root of the seconds, for 50 kg ‹checked in a copy›. IEC 60479-1:2018: body resistance ‹median checked, range from memory›. First aid after cutting off: common practice.

finding-touch-what = The hand that was on this felt current: { $metal }. Across the body were { $volts }. { $body } went through the body for { $seconds }.
finding-touch-why = { $cleared ->
    [one] A ground-fault device cut it off. That is { $limit } of what can stop a heart in { $stated }. It means: { $zone }. Without the device it would have gone on.
   *[other] That is { $limit } of what can stop a heart in { $stated }{ $beside ->
        [longer] , the longest time that the rule covers
       *[other] {""}
    }. It means: { $zone }. Through wetter skin, or with both hands, it is more. { $cause ->
        [wet] Water in the joint of the cords carried the voltage of the wire to its outside. The person was the way to earth.
        [leak] Current leaks to earth at a cord joint that lies in the wet. It comes back by the frame of the generator, and puts volts on it.
        [neutral] The frame is joined to the neutral. The load's current lifts the neutral a little, and the frame with it.
       *[worn] Worn insulation puts metal at the voltage of the wire. With no ground wire, the person is the way to earth.
    }
}
finding-touch-now = { $stands ->
    [held] { $cause ->
        [worn] Turn the power off first, from elsewhere. Do not touch the person. Call for help.
       *[other] Turn the output breaker off first. Do not touch the person. Call for help.
    }
    [over] No power is on it now. Whoever felt the current should see a doctor today, even if they feel well.
   *[let-go] { $cause ->
        [wet] Do not touch it again. Turn the output breaker on the generator off. Then lift the joint out of the water.
        [leak] Turn the output breaker on the generator off. Then lift the wet joint out of the water.
        [neutral] Turn the loads off before you touch the frame again.
       *[worn] Do not touch it again. Turn the power to it off from elsewhere. Then unplug it, and mark it as broken.
    }
}
finding-touch-instead = { $cause ->
    [wet] Turn the output breaker on the generator off before you lift a wet cord. Then keep its joint dry.
    [leak] Turn the output breaker on the generator off. Then lift the wet joint out of the water, and keep it dry.
    [neutral] Keep hands off the frame while the generator carries load.
   *[worn] Use nothing with worn wires or a missing ground pin.
} Use ground-fault protection for all that is used by hand, outdoors or in the wet. Is a hand held fast? Cut the power first, and never grab the person.
source-touch = IEC 60479-1:2018: body and zones ‹checked in part›. IEEE Std 80: limit of the heart for 50 kg ‹checked in a copy›. UL 943: what a ground-fault device cuts off ‹checked in part›.

finding-live-blades-what = { $inlet ->
    [one] { $still ->
        [one] The bare pins of the power inlet have been live since { $since }, at up to { $volts }. They still are.
       *[other] The bare pins of the power inlet were live at { $volts } for { $lasted }.
    }
   *[other] { $still ->
        [one] The bare blades of a cord have been live since { $since }, at up to { $volts }. They still are.
       *[other] The bare blades of a cord were live at { $volts } for { $lasted }.
    }
}{ $came ->
    [one] {" "}It was so when you came.
   *[other] {""}
}
finding-live-blades-why = Bare blades and pins are made to be dead when nothing is plugged onto them. Anyone who touches them closes the circuit.
finding-live-blades-now = { $stands ->
    [own] Keep everyone away from these. Stop the engine and keep it off.
    [both] Keep everyone away from these, and touch no cord. Call an electrician.
   *[utility] { $plugs ->
        [one] Keep everyone away from these blades. Turn off the breaker of the outlet that feeds it. Test it before you touch the cord.
       *[other] Keep everyone away from these pins. Turn the generator breaker in the panel off. Then test the pins with a tester, and touch none.
    }
}
finding-live-blades-instead = { $plugs ->
    [one] Never use a cord with a plug at both ends. Connect a proper cord before the generator makes voltage.
   *[other] { $unguarded ->
        [one] Keep the generator breaker off. Nothing sound keeps it apart from the main breaker. Connect no generator to this inlet until an electrician has put that right. Use extension cords.
       *[other] Keep the generator breaker off while the utility feeds the house. Connect the cord before anything feeds it.
    }
}
source-live-blades = { $plugs ->
    [one] OSHA 3277: never plug a generator into an outlet ‹checked›.{" "}
   *[other] {""}
}29 CFR 1910.303(g)(2): guard live parts of 50 V or more ‹from memory›.

finding-wet-panel-what = { $live ->
    [one] A hand went to a panel that stands in water, with { $volts } in it: { $control }.
   *[other] A hand went to a panel that stands in water: { $control }. It was dead then, at { $volts }.
}
finding-wet-panel-why = Water joins live parts to the box and to the floor. A person who stands in it and touches the handle can be killed.
finding-wet-panel-now = Leave the room by the dry way. Keep all others out.
finding-wet-panel-instead = Do not touch a wet panel, even in an outage. Call the utility and let them disconnect the house.
source-wet-panel = Advice of many utilities on floods ‹from memory›. Live parts of 50 V or more: 29 CFR 1910.303(g)(2) ‹from memory›.

finding-indoors-what = { $gathered ->
    [hardly] An engine ran indoors. Nobody sees or smells its gas, and it can kill within minutes.
   *[some] The engine ran indoors for { $lasted }. The air beside it reached { $beside }, with { $oxygen } oxygen. The house reached { $house }.
}
finding-indoors-why = { $over ->
    [one] The air beside the engine was past { $dangerous }, an immediate danger to life.
   *[other] From { $dangerous } on, life is in danger at once. { $gathered ->
        [hardly] A garage can get there within minutes.
       *[some] The air beside the engine was still below that.
    } Less kills too, only slower.
} As the oxygen falls, the engine gives off up to eight times as much gas. An open door does not change that.
finding-indoors-now = Get everyone out to fresh air. Call the emergency number from outside. Nobody goes in until the fire department says so.
finding-indoors-instead = Run it outdoors only, at least 20 feet (6 meters) from every opening. Point its exhaust away from the house. Never in a garage, a basement or a porch, even with the doors open.
source-indoors = CPSC: never indoors or in a garage, even with doors open; 20 feet away, exhaust pointed away ‹checked in a copy›. NIOSH: immediately dangerous level ‹checked in a copy›. NIST: gas from engines short of oxygen ‹checked›. UL 2034: alarm times ‹checked in a copy›. Uptake by the Coburn, Forster and Kane equation ‹checked›. Symptoms, and that a child takes the gas up faster: published tables ‹from memory›. That its gas goes with the load is an assumption.

finding-gas-what = { $heard ->
    [yes] The carbon monoxide alarm sounded. There were { $ppm } in the house.
   *[no] No carbon monoxide alarm sounded, and one should have. There were { $ppm } in the house.
}
finding-gas-why = The gas has no smell. It had taken { $cohb } of the blood of those inside. No share is safe. It climbs for as long as you stay.
finding-gas-now = Get everyone out to fresh air. Call the emergency number from outside. Nobody goes back in until the fire department says so.
finding-gas-instead = { $engine ->
    [neighbor] Ask your neighbors to keep their engine at least 20 feet (6 meters) from every opening, theirs and yours. Keep an alarm that works.
   *[own] Run the engine outdoors, at least 20 feet (6 meters) from every opening, with the windows near it shut. Point its exhaust away from the house.
}
source-gas = UL 2034: alarm times ‹checked in a copy›. CPSC: outdoors, at least 20 feet from the house ‹checked in a copy›. NIST: gas from engines ‹checked›; that it goes with the load, and the share drawn in, are assumptions. Uptake by the Coburn, Forster and Kane equation ‹checked›. Symptoms, and that a child takes the gas up faster: published tables ‹from memory›.

finding-overcome-what = People in the house passed out. The gas had taken { $cohb } of their blood.
finding-overcome-why = At this point people can no longer save themselves.
finding-overcome-now = Call the emergency number at once. Do not go in: the gas can take you too.
finding-overcome-instead = Never run an engine in a garage, a basement or a porch, even with the doors open.
source-overcome = Uptake by the Coburn, Forster and Kane equation ‹checked›. ‹The level at which people pass out is from memory.› NIST: gas from engines ‹checked›; that it goes with the load, and the share drawn in, are assumptions. UL 2034: alarm times ‹checked in a copy›. Symptoms, and that a child takes the gas up faster: published tables ‹from memory›.

finding-fuel-fire-what = Fuel ran over a hot muffler at { $surface } and caught fire.
finding-fuel-fire-why = A muffler stays hot long after the engine has stopped. Fuel vapor needs only one hot spot.
finding-fuel-fire-now = Get away from it, touch nothing on it, and leave the can. Clothes on fire: stop, drop and roll. Get everyone out of the house. Call the fire department from afar. Put no water on burning fuel: it spreads the fire.
finding-fuel-fire-instead = Stop the engine and let it cool for at least 15 minutes before you add fuel.
source-fuel-fire = OSHA 3277: shut down and cool before refueling ‹checked›. The 15 minutes, and no water on burning fuel: common practice. Flash point and lowest ignition temperature: fire service reference ‹checked›. The muffler's cooling is an assumption.

finding-not-locked-out-what = { $done ->
    [0] The cover was open for { $lasted } on a generator that could start at any time. Nothing had been done to stop it.
    [one] The cover was open for { $lasted } on a generator that was not locked out. One step of three was done.
   *[other] The cover was open for { $lasted } on a generator that was not locked out. Two steps of three were done.
}
finding-not-locked-out-why = A standby generator starts by itself, in an outage and for its weekly run. It gives no warning. Hands, belts and live wires then meet.
finding-not-locked-out-now = Take your hands out and shut the cover.
finding-not-locked-out-instead = Switch the controller off. Turn the breaker on the generator off, lock it and tag it. Keep the key. Disconnect the starter battery, let the engine cool, then open the cover. A battery behind the cover comes off before anything else is touched. Wires from the house for sensing and charging stay live in it. Have their breaker turned off and locked too.
source-not-locked-out = NEC 445.18: a disconnect that locks open and a stop for the engine ‹checked in a copy›. Lock, tag and key: 29 CFR 1910.147 ‹from memory›. The battery, the cooling and the wires from the house: common practice.

finding-caught-by-engine-what = The starter turned the engine by itself while hands were in it.
finding-caught-by-engine-why = { $asked ->
    [weekly] The controller began its weekly run, as it is set to. It cannot see hands.
    [test] Test on the controller means start now. It cannot see hands.
   *[street] The controller saw the utility drop out and did what it is there for. It cannot see hands.
}
finding-caught-by-engine-now = { $stands ->
    [turns] It still turns, or can turn again. Press stop or switch the controller off, from outside. Do not reach in. Then call the emergency number.
   *[still] Do not reach in. Call the emergency number.
}
finding-caught-by-engine-instead = Lock the generator out before a hand goes in. Controller off, breaker off with your lock and tag on it, starter battery disconnected. House wires in it stay live until their breaker is off.
source-caught-by-engine = NEC 445.18: a disconnect that locks open and a stop for the engine ‹checked in a copy›. The battery: common practice.

finding-live-lugs-what = The cover of the transfer switch was open for { $lasted }. Lugs behind it, bare metal ends of wires, stood at { $volts }. This fed them: { $side }.
finding-live-lugs-why = Nothing in the house opens the wires that come from the street. They stay live with the main off and the generator locked out. One slip of a hand or a tool is enough.
finding-live-lugs-now = Keep your hands out. Push the cover shut from outside if it hangs on hinges. If it does not, leave it, keep others away and call an electrician.
finding-live-lugs-instead = Take the street's wires for live until the utility has cut them off. Until then leave the cover shut. Call the utility or an electrician.
source-live-lugs = 29 CFR 1910.333(a)(1): live parts are made dead before work on them. From 50 volts on: 1910.303(g)(2). ‹Both from memory.›

finding-hand-transfer-live-what = The contacts of the transfer switch were moved by hand beside { $volts }. This fed them: { $side }.
finding-hand-transfer-live-why = A controller moves them fast and shut up in a box. A hand is slow, and it is in front of the spark. The contacts can burn and the arc can reach you.
finding-hand-transfer-live-now = Take your hand away, and reach for nothing behind the cover. Push it shut from outside if it hangs on hinges.{ $carried ->
    [one] {" "}Leave the controller off: these contacts have drawn an arc. Call an electrician.
   *[other] {""}
}
finding-hand-transfer-live-instead = Leave the contacts to the controller. Where they must be moved by hand, an electrician does it, with both sources cut off and tested dead.{ $carried ->
    [one] {" "}These have drawn an arc. An electrician has to look at them before they are used again.
   *[other] {""}
}
source-hand-transfer-live = 29 CFR 1910.333(a)(1) and (b)(2): dead, locked out and tested before work ‹from memory›. Both sources dead before a contactor is moved by hand: common practice.

finding-plug-under-load-what = This was moved while the cord carried { $amps } at { $volts }: { $plug }.
finding-plug-under-load-why = Plugs are not made to switch a load. The current goes on through the air as an arc. It can burn the hand and weld the blades, and the end of the cord stays live.
finding-plug-under-load-now = { $stands ->
    [utility] Do not touch the plug again: the utility feeds it. Keep people away and call an electrician.
    [both] Do not touch the plug again: the utility feeds it too. Keep people away and call an electrician.
   *[own] Do not touch the plug again. Turn the output breaker on the generator off, then stop the engine.
}
finding-plug-under-load-instead = { $transfer ->
    [one] Take every handle of the transfer switch off the generator first. Then turn the output breaker on the generator off.
   *[other] Turn the loads off first, then the output breaker on the generator.
} Move plugs only on a dead cord.
source-plug-under-load = Common practice, found in many makers' manuals: never connect or disconnect under load. ‹The half amp that draws an arc is from memory.›

finding-live-plug-what = { $strip ->
    [one] This went into a live outlet, at { $volts }: { $plug }. It made the blades of its other plug live.
   *[other] This was moved while it was live at { $volts }: { $plug }.
}
finding-live-plug-why = { $strip ->
    [one] A strip with two plugs passes the volts on to the blades of its other plug. Nothing but an outlet covers them. Whoever pulls that plug has live metal in hand.
   *[other] A plug that is moved under voltage can arc and burn its blades. It can shock the hand that holds it.
}
finding-live-plug-now = { $stands ->
    [utility] Leave the plugs as they are: the utility feeds them. Keep people away and call an electrician.
    [both] Leave the plugs as they are: the utility feeds them too. Keep people away and call an electrician.
   *[own] Leave the plugs as they are. Turn the output breaker on the generator off, then stop the engine.
}
finding-live-plug-instead = { $strip ->
    [one] Leave the strip with two plugs stowed. Give each thing a cord with one plug, from one source.
   *[other] Connect both ends of a proper cord before your own engine starts. Take them apart after it has stopped.
}
source-live-plug = Common practice, found in many makers' manuals.

finding-wrong-end-first-what = { $fault ->
    [one] The generator's end was pulled while the house's end was still in the wall: { $cord }.
    [2] The house's end was pulled with that outlet's breaker still on: { $cord }.
   *[3] The house's end was pulled with the generator's output still on: { $cord }.
}
finding-wrong-end-first-why = { $fault ->
    [one] The bare blades then hang on the house. They are live as soon as the outlet is.
    [2] The blades are in your hand. They are live as soon as power comes back.
   *[3] The blades are in your hand. They are live as soon as the engine turns.
}
finding-wrong-end-first-now = Keep away from the blades. Stop the engine and turn that outlet's breaker off.
finding-wrong-end-first-instead = Stop the engine and turn its output off. Turn the outlet's breaker off. Pull the house's end, then the generator's end.
source-wrong-end-first = Common practice.

finding-nothing-bonds-what = For { $lasted } the generator fed the house at { $volts }. Nothing joined its neutral, the return wire, to ground.
finding-nothing-bonds-why = A worn hot wire that touches a metal case then trips no breaker. It lifts the neutral and the other hot wire instead. Nobody notices until somebody touches the neutral, or a second wire wears through. If its ground wire is broken too, the case itself is live.
finding-nothing-bonds-now = Touch no metal case. Turn the output breaker on the generator off and stop the engine.{ $worn ->
    [one] {" "}Then turn off the breaker of this and unplug it: { $machine }. It is unsafe on any source until it is mended.
   *[other] {""}
}
finding-nothing-bonds-instead = Run extension cords from the generator to what matters most. Then have a licensed electrician match generator and transfer switch. Here the generator's neutral is not joined to its frame. Such a generator needs a transfer switch that never parts the neutral.
source-nothing-bonds = A path that lets a breaker clear a fault: NEC 250.4(A)(5), 250.30(A) and 702.11 ‹from memory›.

finding-start-under-load-what = The engine was started into a load of { $watts }.
finding-start-under-load-why = While it comes up to speed its voltage is low. Motors on it groan and heat up. The numbers here are of the first instant, before the voltage sags.
finding-start-under-load-now = Turn the output breaker on the generator off and let the engine settle.
finding-start-under-load-instead = Start the engine with the output breaker on the generator off.
source-start-under-load = Common practice. Utility advice: start with no load ‹checked›.

finding-not-settled-what = The generator carried up to { $watts } before it had warmed up.
finding-not-settled-why = In its first { $settle } the engine hunts for its speed. The voltage swings with it.
finding-not-settled-now = Take the load off until the engine runs evenly.
finding-not-settled-instead = Let the engine settle before you turn its output breaker on.
source-not-settled = Common practice. Small generators need 5 to 15 seconds or more ‹checked in a copy›.

finding-all-at-once-what = { $motors } motors started at the same moment and drew { $amps } together.
finding-all-at-once-why = Each motor draws several times its running current while it starts. Together they can pull the voltage down until none of them turns. { $well ->
    [one] This time all of them turned. One more, or a larger one, and they might not.{" "}
   *[other] {""}
}The log gives each at its own first instant. Here all are shown at one.
finding-all-at-once-now = Switch the loads off. Then bring them on again one by one.
finding-all-at-once-instead = { $unguarded ->
    [one] Do not feed this panel at all until an interlock or a transfer switch is in. Run extension cords, and plug in one thing at a time, the largest motor first.
   *[other] { $leaves ->
        [one] Switch everything off first, by breaker or by handle. Leave this off: { $leave }. Then bring on the rest one by one, its largest motor first.
       *[other] Switch everything off first, by breaker or by handle. Then bring it on one thing at a time, the largest motor first.
    }
}
source-all-at-once = NEMA MG 1-10.37.2: locked-rotor code letters ‹checked in a copy›. The order is common practice.

finding-no-cool-down-what = The engine still carried load { $rested } before it was stopped.
finding-no-cool-down-why = A hot engine that stops at once soaks in its own heat. Oil, seals and windings age fast then. First it should run without load for { $cool }.
finding-no-cool-down-now = Leave it alone until it has cooled. Do not add fuel yet.
finding-no-cool-down-instead = Give the house back to the utility, or turn off what runs. Then turn the output breaker on the generator off. Let the engine run on for { $cool } without load. Then stop it.
source-no-cool-down = Common practice. Standby controllers cool down for 1 to 10 minutes ‹checked in part›. The heat of the muffler is an assumption.

finding-blind-return-what = You turned the main breaker on with no sign that the utility was back.
finding-blind-return-why = Behind an open main breaker the house cannot see the street. Turning it on blind may only bring the dark back.
finding-blind-return-now = Look at the street, or call the utility.
finding-blind-return-instead = Look for lights in the street, or ask the utility, before you switch back.
source-blind-return = Common practice.

finding-sun-on-generator-what = The solar inverter took your generator for the utility and joined it. The roof can give { $sun }.
finding-sun-on-generator-why = The inverter cannot tell a steady generator from the utility. It pushes what the sun gives into the same wires. When the sun gives more than the house takes, the rest goes into the generator.
finding-sun-on-generator-now = Turn the solar breaker off. Leave it off while the generator feeds the panel. Touch no wire that comes from the roof: it stays live in daylight.
finding-sun-on-generator-instead = Turn the solar breaker off before any generator feeds the same panel. Touch no wire from the roof: it stays live in daylight. Turn the breaker on again once the utility feeds the house.
source-sun-on-generator = IEEE 1547, Table 4: the inverter joins whatever fits its window for 300 seconds ‹checked in a copy›. Keeping it off a generator, and wires of the roof live in daylight: common practice.

finding-pushed-back-what = { $watts } from the sun were pushed back into the generator.{ $broke ->
    [one] {" "}That damaged it.
   *[other] {""}
}
finding-pushed-back-why = A generator is made to give power, not to take it. Its engine speeds up, or its electronics fail for good.
finding-pushed-back-now = { $later ->
    [one] Before any generator runs again, turn the solar breaker off.
   *[other] Turn the solar breaker off.
} Keep the engine off, and have the generator checked before it runs again. Touch no wire that comes from the roof: it stays live in daylight.
finding-pushed-back-instead = Turn the solar breaker off before the generator feeds the panel: only one of the two at a time. Wires from the roof stay live in daylight, whatever is off.
source-pushed-back = Common practice, also for wires of the roof in daylight; what a generator stands is not published for household sets.

finding-battery-overloaded-what = The battery was asked for { $watts } and is made for { $rated }. It shut off.
finding-battery-overloaded-why = A battery gives more than its rating for a few seconds only. Then all it guards goes dark at once.
finding-battery-overloaded-now = Turn off what draws most. Then turn the switch of the battery off and on.
finding-battery-overloaded-instead = Run heaters and the microwave oven one at a time, or leave them until the utility is back.
source-battery-overloaded = Typical ratings ‹from memory›. The time is computed from the load.

finding-battery-spent-what = The battery ran empty.
finding-battery-spent-why = All that it guarded went dark at once.
finding-battery-spent-now = Turn off what is not needed. Charge it from the utility or the sun.
finding-battery-spent-instead = Turn off what can wait as soon as the battery takes over.
source-battery-spent = Computed from its energy and the load.

finding-too-near-what = The engine ran { $feet } from an opening of the house.
finding-too-near-why = Exhaust finds its way in. Keep at least { $rule } away. Even that is a rule of thumb and not a wall.
finding-too-near-now = Stop the engine, let it cool and move it farther away.
finding-too-near-instead = { $far ->
    [one] Put the generator in this place before you start it: { $place }.
   *[other] Put the generator as far as { $rule } from every opening before you start it. If there is no such place, do not run it.
}
source-too-near = CPSC: outdoors, at least 20 feet from the house, exhaust pointed away ‹checked in a copy›. NIST: gas from engines ‹checked›; that it goes with the load, and the share drawn in, are assumptions. UL 2034: alarm times ‹checked in a copy›. Uptake by the Coburn, Forster and Kane equation ‹checked›. Symptoms, and that a child takes the gas up faster: published tables ‹from memory›.

finding-overload-what = Too much was asked of the generator: { $watts }. Here it can give { $rated }.{ $times ->
    [one] {""}
   *[other] {" "}This happened { $times } times.
}
finding-overload-why = Voltage and speed sag, motors overheat, and the engine stalls or its breaker trips.
finding-overload-now = { $short ->
    [one] Turn the output breaker on the generator off. Do not touch the cord.
   *[other] { $cause ->
        [street] Turn the output breaker on the generator off. Then turn the main breaker off.
        [load] { $later ->
            [one] Before the generator runs again, turn this off:{" "}
           *[other] Turn this off:{" "}
        }{ $leaves ->
            [one] { $leave }.
           *[other] { $most }.
        }
       *[none] Turn the largest load off.
    }
}{ $stands ->
    [failed] {" "}The controller has given up. Clear its fault as the manual says, or the next outage finds no power.
   *[works] {""}
}
finding-overload-instead = { $short ->
    [one] Throw away a cord whose skin was hot, soft or crushed. No generator can feed a short circuit.
   *[other] { $cause ->
        [street] Here the whole street hung on it. Do not feed this panel by it again until an interlock or a transfer switch is in. Run extension cords.
        [load] { $leaves ->
            [one] Leave this off: { $leave }. Add up the running watts of the rest, and bring it on one by one.
           *[other] This was one too many: { $most }. Leave it off. Add up the running watts of the rest, and bring it on one by one.
        }
       *[none] Add up the running watts of what you want, and bring it on one by one.
    }
}
source-overload = The rating of the generator. A public power district's guide: running load within 90 % of it ‹checked in a copy›.

finding-too-small-for-motor-what = The generator could not turn this motor: { $appliance }. It was tried { $starts } times, with as little as { $torque } of its turning force.
finding-too-small-for-motor-why = A motor that hums and does not turn heats up fast. Each try pulls down the voltage for all else.
finding-too-small-for-motor-now = Turn that motor off and leave it off.
finding-too-small-for-motor-instead = After one failed start, leave that motor out of the plan. Let it cool, and have it looked at before it runs again. It needs a larger source or an electrician's advice.
source-too-small-for-motor = Turning force goes with the square of the voltage: theory of the induction motor ‹from memory›. One try at most: common practice.

finding-shut-off-what = { $leg ->
    [one] One leg of the inverter was asked for more than it gives, { $most }. It shut its output off.
   *[other] Too much was asked of the inverter: { $watts }. It is made for { $rated }. It shut its output off.
}
finding-shut-off-why = The electronics hold the current at their limit. The voltage sags, and soon they let go to save themselves.
finding-shut-off-now = Turn the largest load off. Then press the reset of the inverter.
finding-shut-off-instead = Add up the running watts and the largest start. Turn loads on one at a time.
source-shut-off = The rating of the generator. Limits of inverter sets: makers' figures ‹from memory›.

finding-ran-dry-what = { $oil ->
    [one] The engine stopped because its oil was low.
   *[other] The engine stopped because its tank was empty.
}
finding-ran-dry-why = A set that stops under load drops all of it at once. An engine that runs on without oil is soon ruined.
finding-ran-dry-now = Turn the loads off. Let the engine cool before you pour anything.
finding-ran-dry-instead = Look at the oil at each start, and at the fuel every hour.
source-ran-dry = Common practice. Refuel only when off and cool: a state emergency agency ‹checked in a copy›.

finding-tripped-what = The { $breaker } tripped at { $amps }. It is made for { $rated }.
finding-tripped-why = { $short ->
    [one] The wires of a cord met, and the breaker ended it. Without it the cord would burn on.
   *[other] { $met ->
        [one] The utility and the generator met, and this ended their fight. No load was to blame.
       *[other] A breaker that trips has done its work. Something asked for more than the wire or the generator can give.
    }
}
finding-tripped-now = { $short ->
    [one] Leave the breaker off. Unplug the cord when it is cool, and throw it away.
   *[other] { $met ->
        [one] Leave it off, and keep the engine off. Call an electrician before anything is used again.
       *[other] Find out what asked for so much before you reset it.
    }
}
finding-tripped-instead = { $short ->
    [one] Use sound cords, laid out flat. Throw away one that was hot, soft or crushed.
   *[other] { $met ->
        [one] Never let the two sources meet. A transfer switch or an interlock keeps them apart.
       *[other] { $side ->
            [one] Add up the amps of each side of the panel before you turn on the next thing. Leave off what is too much for its side.
           *[other] Add up the amps behind that breaker before you turn on the next thing. Leave off what is too much.
        }
    }
}
source-tripped = UL 489: currents at which a breaker holds and trips ‹checked in part›.

finding-fuse-blown-what = The { $fuse } blew at { $amps }. It is made for { $rated }.
finding-fuse-blown-why = A fuse that blows has done its work, once. What asked for so much blows the next one too.
finding-fuse-blown-now = Find out what asked for so much. Then put in a new fuse of the same size, never a larger one.
finding-fuse-blown-instead = Turn loads on one at a time. A motor needs a time-delay fuse.
source-fuse-blown = UL 248: currents at which a fuse holds and opens ‹checked in part›. NEC 240.4: the wire sets its size ‹checked›.

finding-ground-fault-what = A current of { $residual } left a hot wire and did not come back. This device cut the power: { $device }.
finding-ground-fault-why = Worn insulation or a body gave it another way. The device needs { $took }. The rule gives it { $longest } at most. It does not see a body between hot and neutral.
finding-ground-fault-now = Unplug what hangs on it. Set it again only when the worn part is off.
finding-ground-fault-instead = Look at cords and plugs before you use them. Leave out what is wet, cracked or worn.
source-ground-fault = UL 943, class A: holds below 4 mA, trips from 6 mA ‹checked›. Longest time from a trade source, 25 ms as usual ‹checked›.

finding-reset-into-fault-what = You set it again with the fault still there: { $device }. Again { $residual } went another way.
finding-reset-into-fault-why = Each try puts the frame under voltage once more. Only the { $took } that the device needs stand between a hand and a shock.
finding-reset-into-fault-now = Leave it off. Unplug what hangs on it, one after the other, and find the worn one.
finding-reset-into-fault-instead = Find out why it opened before you set it again. If it opens twice, do not set it again.
source-reset-into-fault = OSHA: take defective cords and tools out of use, 29 CFR 1926.416(e) and 1926.302(a) ‹from memory›.

finding-two-bonds-what = Nothing was broken, and still this opened: { $device }. { $load ->
    [one] It saw { $residual } go another way.
   *[other] It sends out a small test signal. The signal found neutral and ground joined past it.
}
finding-two-bonds-why = The neutral, the return wire, is joined to ground in the generator. It is joined again in the panel. { $load ->
    [one] So current comes back on the ground wire too. The device takes that for a fault.
   *[other] So current would come back on the ground wire too. The device opens before any load is on.
}
finding-two-bonds-now = You did nothing wrong. Do not bypass the device, and cut no bond. Use extension cords to what matters most.
finding-two-bonds-instead = Do not set it again: it opens each time until the wiring is changed. Run an extension cord from the generator to what matters most. Then ask an electrician. A transfer switch that switches the neutral too is one cure. A generator whose neutral is not joined to its frame is another, if its maker allows it.
source-two-bonds = NEC 250.30 and 702.11: where the neutral is bonded ‹from memory›. UL 943: a grounded neutral must open the device ‹from a trade source›.

finding-ground-carries-what = The ground wire carried up to { $amps } for { $lasted }: { $cord }.
finding-ground-carries-why = Neutral and ground are joined at the generator and at the panel. So the return current takes both wires. The frame of the generator is then part of the circuit.
finding-ground-carries-now = Keep hands off the frame while you test it. If it stands at some volts, stop the engine.
finding-ground-carries-instead = Ask an electrician for one bond only. Either the transfer switch switches the neutral too, or the neutral is not joined to the generator's frame.
source-ground-carries = NEC 250.6: no objectionable current on ground wires. NEC 250.34 and 702.11 on the bond ‹from memory›.

finding-damaged-what = Too much voltage burned this out: { $appliance }. It got { $volts } for { $stood }.
finding-damaged-why = Its electronics can take { $most }, no more. By the published curve, { $volts } may last { $allowed }. { $neutral ->
    [one] The neutral to the house is broken. So the side with little switched on gets what the other side should have.
   *[other] The side with little switched on got what the other side should have.
}
finding-damaged-now = { $stands ->
    [fed] Stand on a dry floor in dry shoes. Turn the main breaker off with one dry hand, on its plastic handle only. Touch no pipe and no metal case, the panel's own among them. Call the utility.
   *[over] Unplug what burned out, or turn its breaker off. Leave it so until somebody has looked at it.
} If anything smokes or smells: everyone out, call the fire department.
finding-damaged-instead = When lamps flare and others go dim, turn the main breaker off at once. Use one dry hand, on its plastic handle only. Touch no other metal.
source-damaged = ITI (CBEMA) curve, 2000 ‹checked in a copy›. How long a device lasts above it is an assumption.

finding-starved-what = { $cause ->
    [halved] Made for { $rated }, but run on { $volts } through an adapter: { $appliance }.
    [cord] { $held ->
        [one] Its cord could not give off its heat, and heat makes a wire take more of the volts. That left only { $volts } of { $rated }: { $appliance }.
       *[other] { $long ->
            [one] Its cord is too long for so thin a wire. That left only { $volts } of { $rated }: { $appliance }.
           *[other] Its cord left it too little voltage, only { $volts } of { $rated }: { $appliance }.
        }
    }
    [joined] Cords joined one after the other left it too little voltage, only { $volts } of { $rated }: { $appliance }.
    [neutral] The neutral wire from the street is broken. This side of the house got only { $volts }: { $appliance }.
    [adapter] An adapter makes one wire feed both sides. That left only { $volts }: { $appliance }.
   *[other] Too little voltage, only { $volts } of { $rated }: { $appliance }.
}
finding-starved-why = { $cause ->
    [halved] { $motor ->
        [one] An adapter changes the plug, never the volts. On half of them a motor has { $torque } of its turning force. It hums and does not turn. Its windings get hot.
       *[other] An adapter changes the plug, never the volts. On half of them it gives { $torque } of its power.
    }
   *[other] { $motor ->
        [one] { $turns ->
            [one] At this voltage a motor starts with { $torque } of its turning force. Running, it draws { $running } of its current and gets hot.
           *[other] At this voltage a motor has { $torque } of its turning force. It hums and does not turn, and its windings get hot.
        }
       *[other] Things made for the full voltage work badly below nine tenths of it.
    }
}
finding-starved-now = { $cause ->
    [halved] Turn it off and unplug it. Let the motor cool.
    [cord] Turn it off. Feel its cord: if it is warm, let it cool.
    [joined] Turn it off, then take the cords apart. Feel each: if it is warm, let it cool.
    [neutral] Stand on a dry floor in dry shoes. Turn the main breaker off with one dry hand, on its plastic handle only. Touch no pipe and no metal case, the panel's own among them. Call the utility.
    [adapter] Turn it off until less runs through the adapter.
    [start] Turn off the motor that does not start.
   *[other] Turn it off until less runs on the generator.
}
finding-starved-instead = { $cause ->
    [halved] Have it looked at before you use it again. Then give it an outlet with its full voltage, or leave it unplugged.
    [cord] { $does ->
        [none] No single cord of this length loses little enough. Put the load nearer, or use less.
        [same] Lay the cord out flat, so that it stays cool. A warm wire loses more.
       *[other] { $has ->
            [one] Use the { $fit }, { $fit-gauge } AWG, laid out flat. It loses less.
           *[other] Use a shorter cord, or one of { $does } AWG, laid out flat. It loses less.
        } { $long ->
            [one] No more than { $drop } of the volts should be lost on the way. For that, a cord of { $length } has to be { $does } AWG or thicker here. Laid out flat, this one would do up to about { $would }.
           *[other] {""}
        }
    }
    [joined] { $does ->
        [none] No single cord of this length loses little enough. Put the load nearer, or use less.
       *[other] Use one cord of { $does } AWG for the whole way, laid out flat. Joints and thin wire take the volts.
    }
    [neutral] When some lamps flare and others go dim, turn the main breaker off and call the utility. Running less makes it no better.
    [adapter] Feed no panel by such an adapter. Run extension cords, or have the large outlet of the generator mended. It has a wire for each side.
    [start] Start the largest motor first, alone. Leave out what the generator cannot start.
   *[other] Run less at a time. Leave out what the generator cannot carry.
}
source-starved = { $motor ->
    [one] NEMA MG 1-12.44: within 10 % of rated voltage ‹checked in part›. Torque goes with the square of the volts ‹from memory›.
   *[other] Nine tenths of the volts as the least: taken over from motors, NEMA MG 1-12.44 ‹checked in part›. Watts go with the square of the volts: Ohm's law.{ $cause ->
        [adapter] {" "}Outlets for 120 V of 30 A at most: NEMA L5-30 and TT-30 ‹from memory›.
        [cord] {" "}At most 5 % lost on the way: NEC 210.19 and 215.2, informational notes ‹checked›.
       *[other] {""}
    }
}

finding-cord-hot-what = From then on the { $cord } was hotter than the { $rated } that it is made for. It stayed so for { $lasted }. It reached { $reached } at { $when }.
finding-cord-hot-why = { $basis ->
    [thin] A wire that is too thin for its load heats up, and the heat softens its insulation.
   *[other] Heat that cannot leave a cord softens its insulation.
} Then the wires can touch and start a fire.
finding-cord-hot-now = { $ruined ->
    [one] { $stands ->
        [live] Cut the power to the cord, then pull its plug. Leave it where it is until it is cold.
        [dead] It has no power any more. Pull its plug, and leave it where it is until it is cold.
       *[away] It has no power any more. Do not touch it or roll it up until it is cold.
    } Look for scorch and smoke where it lay. Its insulation has gone soft: throw it away. If anything smokes: everyone out, call the fire department.
   *[other] Turn the load off and let the cord cool. If it feels soft, throw it away.
}
finding-cord-hot-instead = { $ruined ->
    [one] Throw this cord away: the heat has spoiled it.{" "}
   *[other] Look this cord over once it is cold. If it is soft or stiff, throw it away.{" "}
}{ $basis ->
    [thin] { $has ->
        [one] Use the { $fit } for this load, { $fit-gauge } AWG, laid out flat with nothing on it.
       *[other] { $does ->
            [none] Split the load over several cords. No cord of this length carries it alone.
           *[other] Lay out a cord of { $does } AWG for this load, flat, with nothing on it.
        }
    }
    [lay] { $does ->
        [none] Lay a cord out flat, with nothing on it. Even so this length loses too many volts: use less at its end.
        [same] Lay a cord out flat, with nothing on it. This gauge is heavy enough for this load.
       *[other] Lay a cord out flat, with nothing on it. Then its heat can leave. { $has ->
            [one] For this load, use the { $fit }, { $fit-gauge } AWG: it keeps the volts up as well.
           *[other] To keep the volts up at this length as well, use { $does } AWG.
        }
    }
    [damage] Leave a damaged cord out. Use a sound one, laid out flat.
   *[other] Keep a cord out of the sun, laid out flat, with nothing on it.
}
source-cord-hot = NEC Table 400.5(A)(1): two-wire column ‹checked to 12 AWG, from memory for thicker cords›. How a coil or a cover traps heat is an assumption.

finding-cord-fire-what = What lay against the { $cord } caught fire. The cord was { $lies } and stood at { $reached }.
finding-cord-fire-why = Charred insulation no longer keeps the wires apart. They met, and the arc set fire to what touched the cord.
finding-cord-fire-now = Get everyone out of the house. Call the emergency number. Do not touch the cord.
finding-cord-fire-instead = Lay cords out flat, with nothing on them. Feel cord and plug every hour, and turn the load off when one is warm.
source-cord-fire = CPSC advice: cords uncoiled and never under rugs ‹checked in part›. The temperatures of charring and fire are assumptions.

finding-wire-hot-what = { $cause ->
    [adapter] Fed through an adapter, a wire inside the wall reached its limit, { $limit }: { $wire }.
   *[other] A wire inside the wall got as hot as its insulation can take, { $limit }. It is the wire of this: { $wire }.
}
finding-wire-hot-why = { $cause ->
    [breaker] Hot insulation melts. Then the bare wire can set the wall on fire. { $guarded ->
        [one] Its breaker is too large: a { $guard } one stays on at { $amps }. For this wire, { $gauge } AWG, it may be { $breaker } at most.
       *[other] It is { $gauge } AWG. The largest breaker that may guard it is { $breaker }.
    }
   *[other] It is { $gauge } AWG and carried { $amps }. No breaker watches a neutral. Each breaker sees its own circuit alone and stays on. Hot insulation melts, and the bare wire can set the wall on fire.
}
finding-wire-hot-now = { $stands ->
    [own] Turn the output breaker on the generator off and stop the engine.
   *[circuit] { $cause ->
        [breaker] Turn that breaker off and leave it off.
       *[other] Turn off both circuits that share this wire, and leave them off.
    }
} Then feel the wall with the back of your hand, { $runs ->
    [inlet] from the power inlet to the panel.
   *[circuit] from the panel to the outlets of that wire.
} If it smokes, smells or is hot: everyone out, call the fire department.
finding-wire-hot-instead = { $cause ->
    [breaker] Leave that breaker off. Run what matters most on an extension cord from the generator. Have an electrician look at the wire, which has suffered, and fit the breaker that it can stand.
    [adapter] Feed no panel by such an adapter: nobody can see which circuits share a neutral. Run extension cords, or have the large outlet of the generator mended. Have an electrician look at the overheated neutral.
   *[other] Have an electrician look at the overheated neutral. One of the two circuits has to move to the other side of the panel.
}
source-wire-hot = NEC 240.4(D): breakers of small wires ‹checked›. NEC 334.112: 90 °C insulation ‹from memory›.

finding-plug-hot-what = The plug of the { $cord } reached { $reached }. At { $limit } a plug begins to scorch.
finding-plug-hot-why = Loose or burnt contacts turn { $heat } into heat in one small place, at { $amps }.
finding-plug-hot-now = { $stands ->
    [live] Cut the power to the plug, and pull it only when it is cool.
    [dead] It has no power any more. Pull the plug only when it is cool.
   *[away] It has no power any more. Do not touch the plug until it is cool.
} Never use this cord again. Do not use the outlet it was in until that has been replaced: { $outlet }. If anything smokes: everyone out, call the fire department.
finding-plug-hot-instead = Throw this cord away, and have the scorched outlet replaced. Use a plug that sits tight in its outlet.
source-plug-hot = UL 498: what a sound plug may warm up ‹from memory›. How much worse a loose one is comes from common practice.

finding-cord-unfit-what = { $fault ->
    [indoor] A part of the { $cord } ran outdoors for { $lasted }. Its letters are { $letters }, without a W.
    [no-ground] { $pin ->
        [one] The ground pin of the { $cord } is cut off. It was in use for { $lasted } in all.
       *[other] The { $cord } has no ground wire. It was in use for { $lasted } in all.
    }
    [wet] The connector of the { $cord } lay in a puddle and was in use for { $lasted }.
    [damaged] { $damage ->
        [strands] The { $cord } is frayed and was in use for { $lasted }.
       *[crushed] The { $cord } is crushed and was in use for { $lasted }.
    }
   *[joined] The { $cord } was plugged into another cord for { $lasted }.
}
finding-cord-unfit-why = { $fault ->
    [indoor] Only a cord with a W is made for sun and wet ground.
    [no-ground] A fault in the machine then has no way back. Its metal can stay live with no breaker to end it.
    [wet] Current leaks through the wet to the ground. A hand that lifts the connector is in its way.
    [damaged] { $damage ->
        [strands] Broken strands make a hot spot. Each bend breaks more of them, until the last ones glow. Where the skin is worn through, a hand on it gets a shock.
       *[crushed] Crushed insulation lets the wires meet as soon as it warms. Where it is split, a hand on it gets a shock.
    }
   *[joined] Each joint is one more place that can get hot. The thinnest cord decides for all of them.
}
finding-cord-unfit-now = { $fault ->
    [wet] Turn the output breaker on the generator off. Then lift the joint out of the water.
   *[other] Turn the load off, then change the cord.
}
finding-cord-unfit-instead = { $fault ->
    [wet] Turn the power off first, then lift the joint out of the water. Keep the joints of cords dry.
    [damaged] Throw a damaged cord away. Use a sound one with three wires and a W on its skin.
    [joined] Use one cord that is long and heavy enough for the whole way.
    [no-ground] Throw such a cord away. Use one sound cord with three wires and a W on its skin, long and heavy enough for the load.
   *[other] Use one sound cord with three wires and a W on its skin, long and heavy enough for the load.
}
source-cord-unfit = { $fault ->
    [indoor] NEC Table 400.4: letter W ‹checked›.
    [joined] CPSC: one cord and not several ‹from memory›.
   *[other] OSHA 3277: undamaged, grounded cords ‹checked›. NEC Table 400.4: letter W ‹checked›.
}

finding-goal-late-what = { $ended ->
    [2] The run ended before the outage came. So this was not shown: power within { $within } of it for the { $appliance }.
    [one] Without power when the run ended: { $appliance }. The goal was { $within } after the outage, so there was still time.{ $had ->
        [one] {" "}It had power before, but that did not last.
       *[other] {""}
    }
   *[other] Without power in time: { $appliance }. The goal was { $within } after the outage.{ $had ->
        [one] {" "}It had power before, but that did not last.
       *[other] {""}
    }
}
finding-goal-late-why = { $cause ->
    [off] The controller was off, so the generator did not start. This household counts on it.
    [cover] The generator stood open for service when the outage came. This household counts on it.
   *[other] That is what this household counts on.
}
finding-goal-late-now = Carry on, safely.
finding-goal-late-instead = { $cause ->
    [cover] Finish the service with the generator locked out. Then close the cover and put the controller back to auto.
    [off] No start within a minute of an outage? Look at the controller from outside. Is there a lock, a tag, an open cover or a person at it? Then leave it off, and ask whoever works there. If there is none, turn off what is too much for the generator. Stand clear and put the controller to auto: the engine starts at once. After each service, see that it is on auto.
    [shed] Turn off what is too much for the generator before it has to run again. If its controller gave up, clear the fault as the manual says. Then leave it on auto.
    [standby] Have the generator serviced, and leave its controller on auto. Look at it after each weekly run.
    [load] Bring on first what matters most, one thing at a time. Leave off what is too large for the generator.
    [device] Run an extension cord from the generator to what matters most.
    [waits] The generator ran. Plug in or switch on first what matters most, one thing at a time.
    [before-unguarded] Make the house safe, then carry on. When the outage comes, run extension cords from the generator to what matters most.
    [before] Make the house safe, then carry on. When the outage comes, bring on first what matters most.
   *[other] Get ready before the storm: cords, fuel, and a card beside the panel with the steps.
}
source-goal-late = The goal of this drill.

finding-lost-what = Too long without power: { $appliance }.
finding-lost-why = What it guards does not wait for power. { $came }
finding-lost-now = Carry on, safely.
finding-lost-instead = Power what cannot wait first.
source-lost = The goal of this drill.

finding-not-restored-what = { $harm ->
    [fire] { $after ->
        [one] Work went on after the fire began.{ $called ->
            [one] {""}
           *[other] {" "}Nobody called for help.
        }
       *[other] { $called ->
            [one] Work ended with the fire, as it should. The rest was not shown.
           *[other] Work ended with the fire, but nobody called for help. So the rest was not shown.
        }
    }
    [air] After the first sign of gas nobody should have been inside. So the switching done from then on is not judged. The call for help still counts.
    [neutral] Not finished: the house still hangs on the street's broken neutral. Until that is mended, the generator and its cords stay where they are.
   *[none] { $welded ->
        [one] The { $control } shows { $stands }, but its contacts are welded. Nobody has reported it.
       *[other] { $first ->
            [one] Left undone: { $control } ({ $stands }). It should be: { $wanted }.
           *[other] After that: { $control } ({ $stands }). It should be: { $wanted }.
        }
    }
    [hurt] { $after ->
        [one] Work went on after somebody was hurt.{ $called ->
            [one] {""}
           *[other] {" "}Nobody called for help.
        }
       *[other] { $called ->
            [one] Work ended when somebody was hurt, as it should. The rest was not shown.
           *[other] Work ended when somebody was hurt, but nobody called for help. So the rest was not shown.
        }
    }
    [engine] { $after ->
        [one] Work went on after somebody was hurt.{ $called ->
            [one] {""}
           *[other] {" "}Nobody called for help.
        }
       *[other] { $called ->
            [one] Work ended when somebody was hurt, as it should. The rest was not shown.
           *[other] Work ended when somebody was hurt, but nobody called for help. So the rest was not shown.
        }
    }
    [gas] { $after ->
        [one] Work went on after people had passed out.{ $called ->
            [one] {""}
           *[other] {" "}Nobody called for help.
        }
       *[other] { $called ->
            [one] Work ended when people passed out, as it should. The rest was not shown.
           *[other] Work ended when people passed out, but nobody called for help. So the rest was not shown.
        }
    }
}
finding-not-restored-why = { $harm ->
    [none] What is left half done waits for the next person.
    [neutral] The neutral is the return wire. Without it, power from the street is not safe to use.
   *[other] No handle is worth more than a person.
}
finding-not-restored-now = { $harm ->
    [fire] Stay away from the fire. The fire department says when you may go back.
    [hurt] Help comes first. Take power away where that is safe, and move nothing else.
    [engine] Help comes first. Keep the engine from turning, from outside, and move nothing else.
    [gas] Help comes first. Stay out of the house, and move nothing in it.
    [air] Everyone goes out and stays out until the fire department says so. Move nothing in the house.
    [neutral] Leave the engine and its cords as they are until the utility has mended the wires.
   *[none] { $crew ->
        [one] { $live ->
            [one] The line is live. Stand clear and touch nothing. Have it cut off farther up, test it and ground it. Only then go on.
           *[other] Finish it while the line is open, tagged and tested.
        }
       *[other] Finish it in the order that is shown.
    }
}
finding-not-restored-instead = { $harm ->
    [fire] At a fire, go away at once and call the fire department from afar. Leave all as it stands. Go back only when the fire department allows it.
    [hurt] When somebody is hurt by current, have help called and the source cut, both at once. Cut it from a safe place, and touch nobody before that. Then leave all else as it stands.
    [engine] When an engine has hurt somebody, stop it from outside. Call for help. Then leave all else as it stands.
    [gas] When people pass out, call for help and stay out. Leave all else as it stands.
    [air] At the first sign of gas everyone goes out. Call for help from outside, and leave all else as it stands. The fire department stops the engine.
    [neutral] Turn the main breaker off. Run on the generator, and put it away only when the utility has mended the neutral.
   *[none] { $welded ->
        [one] Report a switch with welded contacts. Leave it cut off by breaks that you can see, with tags on them.
       *[other] { $crew ->
            [one] Before you close a line, walk all of it: people, grounds, tags, breaks, cutouts. If it is live already, have it cut off and test it first.
           *[other] { $loaded ->
                [engine] Turn its output breaker off, then the breakers of all loads. Leave off what was too much. Then start it, and turn its output breaker on once it runs evenly. Bring the rest on one by one.
                [tripped] Turn off all loads first, by breaker or by handle. Push the output breaker fully off, then on. Bring the loads on one by one, and leave off what was too much.
               *[none] { $back ->
                    [standby] Look over the whole unit: covers, breakers, transfer switch, starter battery, controller.
                    [back] Walk the whole way once more: the panel, and all that was brought out for the outage.
                   *[out] Walk the whole job once more: cords, engine, panel, loads.
                }
            }
        }
    }
}
source-not-restored = The goal of this drill.

finding-not-back-what = { $crew ->
    [one] At the end the customers have no power from the utility.
   *[other] { $early ->
        [one] The run ended before the street was back. So the way back was not shown.
       *[other] At the end the house is not on the utility.
    }
}
finding-not-back-why = The way back is part of the job. It is where tired people make mistakes.
finding-not-back-now = { $crew ->
    [one] See who is still on the line. Then close what is left open.
   *[other] { $lit ->
        [one] Stop your generator: it lights the street. Then ask the utility whether it is back.
       *[other] { $stands ->
            [automatic] The utility is there. Finish what is left undone, and let the controller switch back.
            [moved] Leave the set locked out. Call an electrician to look at the contacts.
            [main] The utility is there. Finish what is left undone, in the order that is shown.
            [there] The utility is there. Finish what is left undone, then switch back.
           *[other] Look for a sign that the utility is back. Then switch back.
        }
    }
}
finding-not-back-instead = { $crew ->
    [one] When all are clear, grounds off and customers asked, close breaks and cutouts. Close the recloser last.
   *[other] { $lit ->
        [one] Turn the main breaker off and stop your generator: it lights the street. Take its cord away. Ask the utility whether it is back. Then turn the main breaker on.
       *[other] { $stands ->
            [own] Wait until the street is lit. Take the house off the generator first. Then give it back to the utility.
            [automatic] The utility is there. Finish what is left undone. The controller then gives the house back by itself. Move no contacts by hand.
            [moved] Move no contacts by hand. These were moved, and drew an arc. The set stays locked out until an electrician has looked at them.
            [main] The utility is there. Finish what is left undone, in the order that is shown.
            [tripped] Turn off all loads first, by breaker or by handle. Push the output breaker fully off, then on. Bring the loads on one by one, and leave off what was too much. Give the house back once the street is lit.
            [stalled] Turn the output breaker off, then the breakers of all loads. Leave off what was too much. Start the engine, turn the output breaker on, and bring the rest on one by one. Give the house back once the street is lit.
            [there] The utility is there, and nothing feeds the house. Finish what is left undone. Then give the house back to the utility.
           *[dark] Wait until the street is lit. Then give the house back to the utility.
        }
    }
}
source-not-back = The goal of this drill.

name-zone-ac-1 = hardly felt
name-zone-ac-2 = felt, no lasting harm
name-zone-ac-3 = the hand may not let go
name-zone-ac-4-1 = the heart may stop, in up to 5 of 100 people
name-zone-ac-4-2 = the heart may stop, in up to half of people
name-zone-ac-4-3 = the heart may stop, in more than half of people
finding-said-dead-what = You called it dead: { $subject }. It was live.
finding-said-dead-why = Someone who trusts that word puts a hand on it.
finding-said-dead-now = Take the word back. Tell everyone to stay clear of it.
finding-said-dead-instead = { $where ->
    [line] Say dead only after a test with a tester that is made for these volts. Prove it on something live, before the test and after it.
    [street] These wires are live until the utility has cut them off. Open nothing to test them: that is work for an electrician.
   *[house] Say dead only after a test from outside, with a tester that is made for these volts. Prove it on something live, before the test and after it. Open no panel and no machine for it.
}
source-said-dead = What has not been tested dead is taken for live: { $line ->
    [one] 29 CFR 1926.961 ‹checked in a digest›.
   *[other] 29 CFR 1910.333(b)(2) ‹from memory›.
}
finding-said-fit-what = You trusted it: { $subject }. It does not block.
finding-said-fit-why = Nothing but a hand keeps the generator off the line then. One slip and the line is live.
finding-said-fit-now = Take the word back. Leave the generator breaker off.
finding-said-fit-instead = Look at the slide. It must be made for this panel, fixed with all its screws, and block the main.
source-said-fit = Equipment is used as it was listed: NEC 110.3(B) ‹from memory›.
finding-said-wrong-what = { $asked } You said: { $said }. It was: { $truth }.
finding-said-wrong-why = A wrong picture of the house leads to a wrong move later.
finding-said-wrong-now = Look or test again. The right answer was: { $truth }.
finding-said-wrong-instead = Look, and test from outside, before you say. Open no panel and no machine for it: read the plate, or ask an electrician.
source-said-wrong = Common practice.
finding-unanswered-what = The drill asked you this, and you gave no answer. { $asked }
finding-unanswered-why = What is not said, the next person does not know.
finding-unanswered-now = Open the answers and say what you found.
finding-unanswered-instead = { $tested ->
    [one] You tested it. Say what you found.
   *[other] { $crew ->
        [one] Look and test until you can say it.
       *[other] Look, and test from outside, until you can say it. Open no panel and no machine for it.
    }
}
source-unanswered = Common practice.
finding-wrong-volts-what = { $neutral ->
    [one] The neutral wire to the house broke at { $broke }. On the utility one side was then too high, for { $lasted } and up to { $volts }.
   *[other] One side of the house was too high for { $lasted }, { $volts } at most.
}
finding-wrong-volts-why = Lamps and machines on that side are made for 120 V. At this voltage electronics burn out within seconds or minutes, and motors overheat. What burns out can start a fire.{ $neutral ->
    [one] {" "}What came back over the neutral now takes ground wires and pipes. They can be live.
   *[other] {""}
}{ $stalled ->
    [0] {""}
    [one] {" "}On the low side a motor hums and does not turn. Little current heats it slowly: its own protector would open after { $opens }.
   *[other] {" "}On the low side { $stalled } motors hum and do not turn. Little current heats them slowly: the first protector would open after { $opens }.
}
finding-wrong-volts-now = Stand on a dry floor in dry shoes. Turn the main breaker off with one dry hand, on its plastic handle only. Touch no pipe and no metal case, the panel's own among them. If that cannot be done, stay away from it. Call the utility. If anything smokes or smells: everyone out, call the fire department.
finding-wrong-volts-instead = When some lamps flare and others go dim, turn the main breaker off at once. Use one dry hand, on its plastic handle only. Touch no other metal. Call the utility, and leave it off until the wires are mended. Then turn it on with all else off, and look at one lamp first.
source-wrong-volts = ITI (CBEMA) curve, 2000: 110 % for good ‹checked in a copy›. The drill allows a minute. That, and hands off pipes and cases: common practice.

finding-gas-next-door-what = The carbon monoxide alarm sounded next door. There were { $ppm } in that home.
finding-gas-next-door-why = The engine ran { $feet } from their opening. Gas goes where the air takes it, and walls that are shared do not stop it at the window.
finding-gas-next-door-now = Stop the engine. Knock at their door and get them out. Call the emergency number.
finding-gas-next-door-instead = Count the distance to every opening, your own and your neighbors'. Keep at least 20 feet (6 meters).
source-gas-next-door = CPSC: outdoors, at least 20 feet from the house ‹checked in a copy›. UL 2034: alarm times ‹checked in a copy›.

finding-no-alarm-what = The engine ran for { $lasted } and the carbon monoxide alarm could not sound: { $stands }.
finding-no-alarm-why = The gas has no smell. This time the air stayed at { $ppm } or less. At 150 ppm an alarm sounds after about { $would } minutes, long before heads ache.
finding-no-alarm-now = { $engine ->
    [runs] Stop the engine.{" "}
   *[still] {""}
}Put a fresh battery in the alarm and press its test button.
finding-no-alarm-instead = Put a fresh battery in the alarm and press its test button before you start the engine. Never take the battery out to make it quiet.
source-no-alarm = CPSC and NFPA: alarms on each level and outside bedrooms ‹checked›. UL 2034: alarm times ‹checked in a copy›. NIST: gas from engines ‹checked›; that it goes with the load, and the share drawn in, are assumptions. Uptake by the Coburn, Forster and Kane equation ‹checked›. Symptoms, and that a child takes the gas up faster: published tables ‹from memory›.

finding-stayed-in-what = { $how ->
    [back] Somebody went back into the house. There were { $ppm } in it.
   *[late] Somebody was still in the house three minutes after the first sign. There were { $ppm } in it.
}
finding-stayed-in-why = The gas had taken up to { $cohb } of the blood of those inside. No share is safe. It climbs for as long as you stay. People who sleep do not wake from it.
finding-stayed-in-now = Get everyone out and count heads. Call the emergency number. Nobody goes back in.
finding-stayed-in-instead = At an alarm or a headache, wake everyone and go outside at once. Call for help from outside. Nobody goes back, not for the engine either. Let the fire department stop it and look for anyone who is missing.
source-stayed-in = State health agencies: all out, call, nobody goes back ‹checked›. Uptake by the Coburn, Forster and Kane equation ‹checked›. NIST: gas from engines ‹checked›; that it goes with the load, and the share drawn in, are assumptions. UL 2034: alarm times ‹checked in a copy›. Symptoms, and that a child takes the gas up faster: published tables ‹from memory›.

finding-fuel-indoors-what = A can of gasoline was kept indoors for { $lasted }.
finding-fuel-indoors-why = { $lights ->
    [flame] One spilled cup gives off { $times } times the vapor it takes for the air at the floor to burn. A flame burns in that room.
   *[spark] One spilled cup gives off { $times } times the vapor it takes for the air at the floor to burn. Any spark lights it.
}
finding-fuel-indoors-now = Does it smell of fuel? Then touch nothing, get everyone out, and call the fire department from outside. No smell? Then carry the can outside, away from every flame.
finding-fuel-indoors-instead = Keep fuel outdoors in its own can, in a shed away from the house.
source-fuel-indoors = OSHA 3277: never store fuel indoors ‹checked›. Limits of burning: fire service reference ‹checked›. The cup, and that all of it dries up low in that room, are assumptions.

finding-not-called-what = Nobody called the emergency number within ten minutes of the first sign of gas.
finding-not-called-why = People with gas in their blood need oxygen. The fire department can measure the air and go in safely.
finding-not-called-now = Call the emergency number now. Say that there is carbon monoxide.
finding-not-called-instead = Get out first. Then call from outside.
source-not-called = State health agencies: get out, then call ‹checked›. The ten minutes are common practice.
