# What trade words mean. The first message has all forms of a word, parted by commas; the first is its name.

terminal-no-term = There is no such word in the glossary: { $name }.
terminal-terms = The words: { $names }.
terminal-terms-here = Words of the trade in this, and what they mean:
terminal-term = { $name }: { $meaning } ({ $source })

glossary-neutral = neutral, neutrals
glossary-neutral-meaning = The wire that brings the current back to its source. On its own it should stand near 0 V.
glossary-neutral-source = NEC Article 100 ‹from memory›.

glossary-ground = ground wire, ground wires, ground pin, ground
glossary-ground-meaning = The earth, and the wire that ties metal cases to it. It carries current only when something is broken.
glossary-ground-source = NEC Article 100 ‹from memory›.

glossary-grounds = grounds, set of grounds, sets of grounds
glossary-grounds-meaning = Clamps and a thick lead that a crew puts on a line. They keep the line at the same volts as the pole.
glossary-grounds-source = 29 CFR 1910.269(n) ‹from memory›.

glossary-hot = hot wire, hot wires, hots
glossary-hot-meaning = A wire that stands at full volts to the ground. A house has two of them.
glossary-hot-source = Common practice.

glossary-leg = leg, legs
glossary-leg-meaning = One of the two halves of the house, each 120 V to the neutral. Both together make 240 V.
glossary-leg-source = Common practice.

glossary-backfeed = backfeed, backfed, backfeeds
glossary-backfeed-meaning = Power that flows the wrong way, from a house out to the street. It can kill a worker on the line.
glossary-backfeed-source = Common practice.

glossary-interlock = interlock, interlocks
glossary-interlock-meaning = A piece of metal that lets only one of two breakers be on. So the house gets one source or the other, never both.
glossary-interlock-source = NEC 702.5 ‹checked in a copy›.

glossary-slide = slide, slides
glossary-slide-meaning = The metal part of an interlock that moves. It blocks one handle while the other is on.
glossary-slide-source = Common practice.

glossary-transfer-switch = transfer switch, transfer switches, transfer equipment
glossary-transfer-switch-meaning = A switch that takes a load from one source and gives it to another. It can not join the two.
glossary-transfer-switch-source = NEC Article 100 ‹from memory›.

glossary-inlet = power inlet, inlet, inlets
glossary-inlet-meaning = A plug with pins, fixed to the wall outside. The cord of the generator goes onto it.
glossary-inlet-source = Common practice.

glossary-gfci = ground-fault device, ground-fault devices, ground-fault protection, GFCI
glossary-gfci-meaning = A device that cuts the power when some current does not come back. It saves a person who touches bad metal.
glossary-gfci-source = UL 943, class A ‹checked in part›.

glossary-bond = bonded neutral, bonded, bonds, bond
glossary-bond-meaning = The place where the neutral and the ground are joined. There should be just one for each source.
glossary-bond-source = NEC 250.24 and 250.30 ‹from memory›.

glossary-inrush = inrush, starting surge
glossary-inrush-meaning = The large current that a motor draws for a moment while it starts. It can be six times what it needs to run.
glossary-inrush-source = NEMA MG 1 ‹from memory›.

glossary-main-breaker = main breaker, main breakers
glossary-main-breaker-meaning = The big switch between the house and the street. With it off, the house is cut from the line. The wires ahead of it stay live.
glossary-main-breaker-source = Common practice.

glossary-output-breaker = output breaker
glossary-output-breaker-meaning = The switch on the generator itself. With it off, no power leaves the set.
glossary-output-breaker-source = Common practice.

glossary-breaker = breaker, breakers
glossary-breaker-meaning = A switch that turns itself off when too much current flows. It guards the wire behind it.
glossary-breaker-source = UL 489 ‹checked in part›.

glossary-fuse = time-delay fuse, fuse, fuses
glossary-fuse-meaning = A strip of metal that melts when too much current flows. It works once and must then be replaced.
glossary-fuse-source = UL 248 ‹checked in part›.

glossary-panel = panel, panels
glossary-panel-meaning = The metal box with the breakers of the house.
glossary-panel-source = Common practice.

glossary-service-drop = service drop
glossary-service-drop-meaning = The wires from the pole to the house.
glossary-service-drop-source = NEC Article 100 ‹from memory›.

glossary-utility = utility
glossary-utility-meaning = The company that brings the power to the street.
glossary-utility-source = Common practice.

glossary-recloser = recloser
glossary-recloser-meaning = A switch on a pole that opens on a fault and can close again by itself.
glossary-recloser-source = Common practice.

glossary-cutout = cutout, cutouts
glossary-cutout-meaning = A fuse on a pole that a worker can swing open with a stick.
glossary-cutout-source = Common practice.

glossary-pole-transformer = pole transformer, transformer
glossary-pole-transformer-meaning = The can on the pole that turns the volts of the line into those of a house. It works both ways.
glossary-pole-transformer-source = Common practice.

glossary-standby = standby set, standby
glossary-standby-meaning = A generator that is built in and starts by itself when the power fails.
glossary-standby-source = Common practice.

glossary-inverter = inverter
glossary-inverter-meaning = Electronics that make house power from a battery, the sun or an engine.
glossary-inverter-source = Common practice.

glossary-volt = volts, volt
glossary-volt-meaning = How hard power pushes. Its sign is V. A house has 120 V and 240 V. From about 50 V on it can hurt you. In the wet, less is enough.
glossary-volt-source = 29 CFR 1910.303(g)(2) ‹from memory›.

glossary-amp = amps, amp
glossary-amp-meaning = How much current flows. Its sign is A. A wire gets hot when too many flow.
glossary-amp-source = Common practice.

glossary-watt = watts, watt
glossary-watt-meaning = How much power a thing takes. Its sign is W. It is about volts times amps.
glossary-watt-source = Common practice.

glossary-ohm = ohms, ohm
glossary-ohm-meaning = How much a wire or a body holds current back. Its sign is Ω.
glossary-ohm-source = Common practice.

glossary-hertz = frequency, hertz
glossary-hertz-meaning = How often the current swings to and fro in a second. Its sign is Hz. Here it should be about 60.
glossary-hertz-source = Common practice.

glossary-awg = AWG, gauge
glossary-awg-meaning = How thick a wire is. A small number means a thick wire.
glossary-awg-source = American Wire Gauge, ASTM B258 ‹from memory›.

glossary-insulation = insulation
glossary-insulation-meaning = The skin around a wire that keeps hands and other wires off the metal.
glossary-insulation-source = Common practice.

glossary-lug = lug, lugs
glossary-lug-meaning = A bare metal clamp where a thick wire ends.
glossary-lug-source = Common practice.

glossary-lockout = locked out, lock-out
glossary-lockout-meaning = Held off with a lock, so that nobody can turn it on while you work.
glossary-lockout-source = 29 CFR 1910.147 ‹from memory›.

glossary-tag = tag, tags
glossary-tag-meaning = A card on a switch that says: do not move this.
glossary-tag-source = 29 CFR 1910.269(m) ‹from memory›.

glossary-jumper = jumper, jumpers
glossary-jumper-meaning = A wire that goes around an open switch. With it in place, the switch cuts nothing.
glossary-jumper-source = Common practice.

glossary-short-circuit = short circuit
glossary-short-circuit-meaning = A path with next to no ohms, so a huge current flows.
glossary-short-circuit-source = Common practice.

glossary-arc = arc, arcs
glossary-arc-meaning = Current that jumps through the air as a white hot spark.
glossary-arc-source = Common practice.

glossary-frame = frame, frames
glossary-frame-meaning = The metal case of a machine. Your hand is on it when you use it.
glossary-frame-source = Common practice.

glossary-load = load, loads
glossary-load-meaning = What takes power, and how much it takes.
glossary-load-source = NEC Article 100 ‹from memory›.

glossary-live = live
glossary-live-meaning = With volts on it. It can shock you.
glossary-live-source = NEC Article 100 (energized) ‹from memory›.

glossary-proving-source = proving source
glossary-proving-source-meaning = A small box with known volts, to see if a tester works.
glossary-proving-source-source = NFPA 70E, test before and after ‹checked›.

glossary-out-of-step = out of step
glossary-out-of-step-meaning = Two sources whose waves do not match. Joined, they fight.
glossary-out-of-step-source = Common practice.

glossary-torque = torque
glossary-torque-meaning = The turning force of a motor or a shaft.
glossary-torque-source = Common practice.

glossary-ppm = ppm, parts per million
glossary-ppm-meaning = How much gas is in the air: parts in a million. From 70 on, alarms must sound in time.
glossary-ppm-source = UL 2034 ‹checked in a copy›.
