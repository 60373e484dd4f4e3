# Cautions: shown at the start, and within reach all the time.

caution-1 = This is practice. It does not give you leave to wire a house or to work on a line.
caution-2 = Leave wiring to a licensed person. Where a permit and an inspection are required, get both.
caution-3 = Never connect a generator to house wiring, except through listed transfer equipment.
caution-4 = Run engines outdoors, at least 20 feet (6 meters) from every door, window and vent. Point the exhaust away from the house. Put a carbon monoxide alarm on every level. You cannot smell this gas.
caution-5 = Your generator's manual, your local code and your utility's rules come first. The numbers here come from a model.
caution-6 = If something smells, sparks, buzzes or tingles, or an alarm sounds, get away from it. Then call the emergency number.
caution-7 = Some drills speak of people who are badly hurt or die. You can stop at any time.
caution-8 = Your records stay on this machine, unless you send them to someone.
