drill-trips-at-the-lamp-title = Trips at the lamp
drill-trips-at-the-lamp-summary = They say the generator trips as soon as a lamp goes on. Its outlets have ground-fault devices, and so far nobody knows why.
drill-trips-at-the-lamp-goal = Say how many places join its neutral to ground while it is on the house. Then get the fridge running within 22 minutes. When the utility is back, stop the engine and put the cords away.
drill-trips-at-the-lamp-note = Never cut a bond yourself. You can stop at any time.
