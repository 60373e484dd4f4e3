drill-slide-back-title = Slide back
drill-slide-back-summary = Morning. The house has been on its generator all night, and the street is lit again. Take the house back to the utility.
drill-slide-back-goal = Turn the branches off first, then slide back. Check the volts with one small load before you give the house all of it. At the end the house is on the utility, the engine is still and the cord is put away.
drill-slide-back-note = A storm can hurt the wires to the house too. You can stop at any time.
