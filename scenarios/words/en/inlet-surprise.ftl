drill-inlet-surprise-title = Inlet surprise
drill-inlet-surprise-summary = A quiet afternoon with the power on. The cover of the inlet outside is broken. The pins are at a child's height.
drill-inlet-surprise-goal = Find out whether the pins are live, and make them safe within 3 minutes. Say whether they are dead now, and whether the slide can be trusted.
drill-inlet-surprise-note = Live pins can kill. You can stop at any time.
predict-pins-on-the-wall = No storm, no generator. Are the bare pins of the inlet on the outside wall live or dead?
predict-above-the-main = You turn the main off. Are the wires that come in from the street live or dead then?
