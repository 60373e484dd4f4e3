# What the world refuses, and why: an answer, not an error.

refused-already = It stands that way already.
refused-reset-first = A tripped breaker does not go straight to on. Turn it off first, then on.
refused-breaker-hot = The breaker is still hot inside and does not latch. Wait a minute and try again.
refused-fuse-out-first = A blown fuse does not come back. Take it out first, then put a new one in.
refused-burning = The generator burns. Stay away from it, and call the fire department.
refused-engine-broken = The engine does not start. The generator is damaged.
refused-no-fuel = The engine does not start. The tank is empty.
refused-low-oil = The engine does not start. The oil is low.
refused-no-tank = This generator runs on piped gas. There is no tank to fill.
refused-no-turn = It cannot happen as things stand.
refused-oil-running = Stop the engine before you open the oil cap.
refused-oil-drain = Oil can only be filled up here.
refused-second-alone = Start the first generator of the pair before the second.
refused-cover-shut = The oil cap is under the cover. Open the cover first.
refused-transfer-cover = The contacts are behind the cover, and the controller moves them. Leave them to it.
refused-battery-running = Stop the engine before you take the starter battery off.
refused-in-shed = Take the generator out of the shed first.
refused-cord-short = This cord is too short to reach from there.
refused-move-running = Stop the engine before you move the generator.
refused-move-corded = Unplug the cord from the generator before you move it.
refused-locked = The padlock holds the handle. Take the padlock off first.
refused-lock-needs-off = The padlock fits only when the main breaker is off.
refused-interlock = The slide of the interlock blocks the handle. Only one of the two breakers can be on.
refused-pair = The bar between the two breakers blocks the handle. Only one of the pair can be on.
refused-outlet-taken = Something is plugged in there already. Unplug that first.
refused-window-cord = A cord passes the window. It can be open or sealed around the cord, but not shut.
