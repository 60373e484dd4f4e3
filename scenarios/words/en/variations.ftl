# What is varied in a drill, by the name of the change; drills that use a name share its sentence.

variation-back-early = The utility says: your line may be mended sooner than usual.
variation-flicker = The line was tried, failed, and came back for good later.
variation-slide-loose = The slide in the panel did not reach. Both breakers could be on at once.
variation-slide-missing = There was no slide in the panel at all.
variation-slide-defeated = Somebody had taken the bar off the slide.
variation-slide-sound = The slide in the panel was sound. It held the two breakers apart.
variation-full-pit = It has rained for hours. The sump pit is more than half full.
variation-wind-to-house = The wind blows from the yard to the house.
variation-plug-in-place = One plug of the cord with two plugs was in the dryer’s outlet already.
variation-neighbor-asks = A neighbor came and asked for a cord.
variation-wet-night = It has rained for hours. The ground is wet.
variation-cold-night = It is freezing outside.
variation-hot-day = It is a hot day, and the cords lie in the sun.
variation-mislabeled = The panel’s list of circuits was wrong for two of them.
variation-no-first-start = The engine did not catch at the first two tries.
variation-early-outage = The power went out sooner than last time.
variation-second-outage = The power went out a second time.
variation-clouds = Thick clouds hide the sun.
variation-own-main-off = The street was lit: the house’s own main was off.
variation-dead-of-night = It is half past two in the morning.
variation-list-right = The panel’s list of circuits was right this time.
variation-other-pairs = The panel’s list was wrong for other circuits than usual.
variation-television-off = Nobody is watching television tonight.
variation-mended-early = The utility says: a truck is near, it may be quick.
variation-engine-at-once = A generator along the road fed the line from the first minute.
variation-no-engine = No generator along the road was started. Nobody could know that.
