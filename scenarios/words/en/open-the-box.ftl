drill-open-the-box-title = Open the box?
drill-open-the-box-summary = Someone wants to look at the contacts of the transfer switch. The main is at hand, and so is the lock-out of the generator. Is that enough?
drill-open-the-box-goal = Make safe what you can. Test, and say what is still live. Open the cover only if nothing behind it is. At the end give all of it back to the house.
drill-open-the-box-note = Live parts behind a cover can kill. Nothing is shown in detail. You can stop at any time.
