drill-battery-night-title = Battery night
drill-battery-night-summary = The power goes out at night and a battery takes over a few circuits. It is not made for everything that is on.
drill-battery-night-goal = Keep the fridge and the furnace running until the utility is back. Do not let the battery run empty.
drill-battery-night-note = The battery keeps wires live while the street is dark. You can stop at any time.
