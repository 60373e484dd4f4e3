drill-first-transfer-title = First transfer
drill-first-transfer-summary = A townhouse with shared walls loses its power. A switch with six handles sits beside the panel. A small fridge holds insulin.
drill-first-transfer-goal = Get the furnace, the insulin fridge and the kitchen lights running within 15 minutes of the outage. Bring loads on one at a time. Keep the engine far from every window, the neighbors' too.
drill-first-transfer-note = Exhaust can make people next door ill. You can stop at any time.
predict-blower-as-it-starts = You turn the furnace’s handle to the generator. How many watts is the set asked for at that moment?
