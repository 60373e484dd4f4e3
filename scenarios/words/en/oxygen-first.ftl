drill-oxygen-first-title = Oxygen first
drill-oxygen-first-summary = Somebody in this home lives on oxygen. The concentrator has a battery for a quarter of an hour. Two small generators stand in the shed.
drill-oxygen-first-goal = Get the oxygen and the furnace running within 12 minutes of the outage, and keep them running. The outage goes on.
drill-oxygen-first-note = A person depends on this power. Nothing is shown in detail. You can stop at any time.
