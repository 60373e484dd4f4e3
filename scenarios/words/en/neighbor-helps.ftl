drill-neighbor-helps-title = The neighbor helps
drill-neighbor-helps-summary = It is hot, and the power is out. Your neighbor's generator runs already, and they hand you the end of a cord. In the shed hangs a strip with a plug at each end. Somebody has put an adapter on the plug of the air conditioner.
drill-neighbor-helps-goal = Get the fridge and the freezer running within 20 minutes of the outage. Use your own generator and the neighbor's cord, and never join the two. Leave out what cannot run. When the utility is back, plug in at the wall, stop the engine and put the cords away.
drill-neighbor-helps-note = Plugs can be live in your hand in this drill. Nothing is shown in detail. You can stop at any time.
