# A line that a crew works: names, refusals, what testers show, what happens, findings.

name-feeder = recloser at the head
name-feeder-contacts = contacts of the recloser
name-broken-span = the broken line
name-away = not at the line
name-testing = at the pole, hands off
name-hands-on = hands on the line
name-clear = clear of the line
name-whole = whole
name-broken = broken
name-absent = taken off
name-present = there
name-sound = sound
name-welded = welded
name-earth-end = earth end on
name-both-ends = both ends on
name-line-end = line end on
name-line-end-off = line end off, earth end still on
name-earth-end-off = earth end off, line end still on
name-good = good
name-spent = spent
name-working = at work
name-tester = tester in hand
name-detector = detector from 720 volts up
name-low-range = tester with a low range
name-tall-detector = tester for a 138 kilovolt line
name-old-detector = old tester from the truck
name-proving-source = proving source
name-second-crew = second crew
name-disconnect = disconnect
name-pole-5 = pole 5
name-span-4 = line from pole 4 to pole 5

part-tag = tag, { $of }
part-jumper = jumper around the { $of }
part-cutout = cutout over the transformer, { $of }
part-grounds = grounds, { $of }
part-battery = battery, { $of }

close-line-work = The line that you work, from the head to the last pole. You order the recloser by radio. You work the rest with a stick. Only what is marked puts your hands on the line.
act-join-line = join the broken line
act-part-line = part the line
act-leave-line = leave the line
act-go-to-pole = go up to the pole, hands off
act-take-line = take the line in your hands
act-step-clear = step clear of the line
act-order-open = order it open
act-order-closed = order it closed
act-open = open it
act-close = close it
act-take-off = take it off
act-put-on = put it on
act-touches = touches the line

refused-blades-closed = You stand under it and look up. The blades are closed. A tag says that they are open.
refused-jumper-there = You stand under it and look up. A jumper bridges the open blades. Take it off first.
refused-tagged = A tag hangs there. Take your tag off first.
refused-no-jumper = Nobody sets a jumper here.
refused-one-clamp = One clamp at a time. Move the other end first.
refused-out-of-reach = You can only mend the line with your hands on it.
refused-no-reason = The line is whole. Leave it so.
refused-second-crew = The tag of the other crew hangs there. Only they take it off.

learnt-tester-lit = { $point }: it lights up. In hand: { $tester }.
learnt-tester-dark = { $point }: it stays dark. In hand: { $tester }.
learnt-customers-asked = You ask the customers to go back to the utility. They need a few minutes.

event-opened-on-fault = It opens on a fault, with { $amps }: { $switch }.
event-cannot-open = A short circuit, with { $amps }. It cannot open, as its contacts are welded: { $switch }.
event-customer-started = A customer on the line starts a generator.
event-customers-back = The customers say: our generators are off. We are back on the utility's side.
event-tie-closed = The tie closes by its remote control.
event-tie-held = The remote control wants to close the tie. Your tag holds it.
event-second-crew-clear = The other crew says: we are clear. Our grounds and tags are gone.

finding-not-tested-what = { $lit ->
    [one] You trusted this line after the tester had lit up on it.
   *[other] You took this line for dead. Nobody had tested it, or not since a switch on it was last closed.
} { $dead ->
    [one] It was dead then, but you could not know.
   *[other] { $before ->
        [one] Just before the touch it stood at { $volts } to earth.
       *[other] It stood at { $volts } to earth then.
    }
}
finding-not-tested-why = A dark street proves nothing. One generator in one house can bring the line to full voltage through its transformer, at any time.
finding-not-tested-now = Stop. Get clear of the line. Treat it as live.
finding-not-tested-instead = Test at your own pole, after the last switch was moved. Try the tester on the proving source before and after. Only then clamp the grounds.
source-not-tested = 29 CFR 1926.961: a line counts as live until it is tested dead and grounded ‹checked in a digest›. NIOSH FACE 90-02 ‹checked›.

finding-tester-unproved-what = { $why ->
    [0] The tester was not tried on the proving source before the test. In hand: { $tester }.
    [one] The tester was not tried on the proving source after the test. In hand: { $tester }.
    [2] The tester stayed dark on the proving source too. In hand: { $tester }.
   *[other] This tester shows nothing below { $least }. In hand: { $tester }.
} { $dead ->
    [one] The line was dead then, but you could not know.
   *[other] { $before ->
        [one] Just before the touch the line stood at { $volts } to earth.
       *[other] The line stood at { $volts } to earth then.
    }
}
finding-tester-unproved-why = A dark tester can mean a dead line, a flat battery or the wrong range. Low volts from a small generator kill too.
finding-tester-unproved-now = Take your hands away. Prove a tester with a low range, test, and prove it again.
finding-tester-unproved-instead = { $why ->
    [0] Test three times: the proving source, the line, the proving source again.
    [one] Test three times: the proving source, the line, the proving source again.
    [2] Test three times: the proving source, the line, the proving source again. Leave a tester that fails.
   *[other] The order of the tests was right. The tester was not.
} Use a line tester on a stick that shows low volts too. Never put a house tester to a line.
source-tester-unproved = NIOSH 88-104: a tester that missed low volts ‹checked›. NFPA 70E: test before and after ‹checked›. The least volts asked here: common practice.

finding-not-grounded-what = For { $lasted } your crew's hands were on the line with no grounds on it. { $dead ->
    [one] It stayed dead in that time. Nothing made sure of that.
   *[other] It stood at up to { $volts } to earth in that time.{ $pulled ->
        [one] {" "}Just before the touch it was { $untouched }: the body pulled it down.
       *[other] {""}
    }
}
finding-not-grounded-why = A tested line can become live the next second: a generator starts, a switch closes. Grounds are clamps and a lead that join line and earth. So all that you touch stays at about the same volts.
finding-not-grounded-now = Get clear of the line. Test again and ground it.
finding-not-grounded-instead = Ground at the work before you touch: earth end first, then line end with a stick.
source-not-grounded = 29 CFR 1926.962(b) and (c): grounds, placed so that nobody is exposed to a difference of potential ‹checked in a digest›.

finding-grounds-wrong-what = { $how ->
    [0] The clamp at the line went on before the clamp at the earth. { $dead ->
        [one] The line was dead then. If it had come alive, the clamp in your hand would have been live too.
       *[other] The free clamp in your hand stood at the line's { $volts } to earth.
    }
    [one] The clamp at the earth came off before the clamp at the line. { $dead ->
        [one] The line was dead then. If it had come alive, the clamp in your hand would have been live too.
       *[other] The free clamp in your hand stood at the line's { $volts } to earth.
    }
   *[other] { $sets ->
        [one] A set hung on the line, but not at your pole. { $dead ->
            [one] The line at your hands stayed dead, by luck.
           *[other] The line at your hands stood at up to { $volts } to earth.
        }
       *[other] { $sets } sets hung on the line, but none at your pole. { $dead ->
            [one] The line at your hands stayed dead, by luck.
           *[other] The line at your hands stood at up to { $volts } to earth.
        }
    }
}
finding-grounds-wrong-why = Once a clamp is on the line, the free clamp in your hand is part of the line. Grounds elsewhere let your pole and the wire come to different volts.
finding-grounds-wrong-now = { $how ->
    [0] Take the line end off with the stick, and start the order anew.
    [one] Take the line end off with the stick, and start the order anew.
   *[other] Get clear of the line, and ground at the work.
}
finding-grounds-wrong-instead = On: earth end, then line end. Off: line end, then earth end. Always at the pole where you work. At a broken wire, test and ground both of its ends.
source-grounds-wrong = 29 CFR 1910.269(n) and 1926.962: order of clamps, and a zone of equal potential at the work ‹checked in digests›.

finding-no-visible-break-what = { $jumper ->
    [0] For { $lasted } your crew's hands were on the line. No break that you could see cut it off, open and tagged.
    [one] A jumper went around the open break: { $break }. For { $lasted } your crew's hands were on that line.
   *[other] For { $lasted } your crew's hands were on a line with no open break. The { $break } was never opened, and a jumper goes around it.
} { $dead ->
    [one] It stayed dead in that time, by luck.
   *[other] At its highest it stood at { $volts } to earth.{ $pulled ->
        [one] {" "}Just before the touch it was { $untouched }: the body pulled it down.
       *[other] {""}
    }{ $customer ->
        [one] {" "}That came from a customer's generator, and not from the utility.
       *[other] {""}
    }{ $zone ->
        [one] {" "}The grounds at your pole kept the volts from your hands there. They guard nothing beyond a break in the wire.
       *[other] {""}
    }
}
finding-no-visible-break-why = { $jumper ->
    [0] A break is a gap in the line. A switch that says open may have welded contacts. A jumper may bridge it. Somebody else may close it. Only a break that you see counts. Tag it. Then still test and ground.
    [one] The blades stood open, and the jumper carried the power past them. Look for one before you trust a break. Tag it. Then still test and ground.
   *[other] A switch that says open may have welded contacts. Here a jumper would carry the power past the blades even once they are open. Only a break that you see counts. Tag it. Then still test and ground.
}
finding-no-visible-break-now = { $jumper ->
    [one] Get clear of the line. Take the jumper off, look at the break, and hang your tag.
    [0] Get clear of the line. Open the breaks, look at them, and hang your tags.
   *[other] Get clear of the line. Open the break, take the jumper off, look at both, and hang your tag.
}
finding-no-visible-break-instead = Find every way that the utility can feed your piece of line. Open a break in each, see it, and hang a tag. Each customer can be a source too: open and tag the cutouts.
source-no-visible-break = 29 CFR 1926.961(c): all sources opened, tagged, made inoperable ‹checked in a digest›.

finding-live-end-what = You joined the broken wire by hand. Its far end, at { $end }, was live. Just before that it stood at { $volts }. { $tested ->
    [0] Nobody had tested that end, or not since a switch on the line was last closed.
    [one] A tester had stayed dark there before.
   *[other] A tester had lit up there before.
}{ $grounds ->
    [one] {" "}Grounds hung there, but none hung at your own pole.
   *[other] {" "}No grounds hung there.
}
finding-live-end-why = Whoever joins two ends has both in hand. The volts between them then act on the body. A test at your pole says nothing of the wire beyond the gap. Grounds at your pole do not hold that end down.
finding-live-end-now = Get clear of the line. Treat all of it as live. { $by ->
    [customer] Have the customer cut that source off.
   *[utility] Have the utility cut it off.
}
finding-live-end-instead = Find what can feed the far side too. Open a break there that you can see, and tag it. Test both ends with a tester that you have proved. Ground both sides of the gap before you join them. To join a live line is for licensed crews, with tools and rules made for that.
source-live-end = 29 CFR 1926.962(c) and 1910.269(n): nobody is exposed to a difference of potential ‹checked in digests›. Live from 50 V on: 29 CFR 1910.303(g)(2) ‹from memory›. To test and ground both sides of a gap: ‹from memory›.

finding-grounds-left-what = { $taken ->
    [one] You moved a clamp while the fault flowed.{" "}
   *[other] {""}
}{ $sets ->
    [one] The utility fed into one set of grounds that hung on the line: { $amps }, for { $lasted }.
   *[other] The utility fed into { $sets } sets of grounds that hung on the line: { $amps }, for { $lasted }.
}
finding-grounds-left-why = Grounds are a short circuit, made to be one. The lead can whip and the clamps can burn off. { $by ->
    [mended] A clamp that is taken off while this flows draws an arc that can kill.
   *[closed] Whoever stands there can be hurt.
}{ $welded ->
    [one] {" "}The contacts of the recloser are welded, so it could not end this. In the field a breaker in the station should end it within seconds. This drill leaves that breaker out, as a crew may not count on it.
   *[other] {""}
}
finding-grounds-left-now = { $stands ->
    [live] Stay away from the grounds and the line: power still flows into them. Have the utility cut it off.
   *[dead] Look for people near the grounds. Anyone hurt: call the emergency number. Leave the recloser open, and have it kept from closing by itself. Open a break that you can see, and tag it. Test. Then take all grounds off, line end first. Look over the grounds and the line.
}
finding-grounds-left-instead = { $by ->
    [mended] Open a break that you can see, and tag it, before you mend the line. Mending joins its two ends: test and ground both first.
   *[closed] Count the sets that go on and the sets that come off. Close only when none is left.
} Grounds that have carried a fault go out of service, even if they look whole.
source-grounds-left = DOE handbook on line work, removal of grounds ‹from memory›. ASTM F855: grounds are not used again after a fault ‹from memory›. The amps are computed from the impedances of line and source.

finding-not-asked-what = { $asked ->
    [one] You closed the line before the customers had called back. { $running ->
        [one] A generator was running on it.
       *[other] No generator was running, by luck.
    }
   *[other] You closed the line and had not asked the customers to go back first. { $running ->
        [one] A generator was running on it.
       *[other] No generator was running, by luck.
    }
}
finding-not-asked-why = A customer's generator is not in step with the utility. If the two meet, both fight.
finding-not-asked-now = Ask every customer on this line what runs there.
finding-not-asked-instead = Ask the customers to go back, wait for their answer, and close cutouts and recloser last.
source-not-asked = NEC 702.5 asks that the two sources be kept apart ‹checked in a copy›. To ask first: common practice.

proof-line-found = the start is as the storm and the customers left it, which no crew brings about.
proof-line-customers = in this drill the customers may feed the line at any time. That is what it is about.

error-break-in-broken-span = The break “{ $name }” sits in the line that breaks. Put it into another one.
