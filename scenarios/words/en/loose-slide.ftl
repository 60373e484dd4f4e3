drill-loose-slide-title = Loose slide
drill-loose-slide-summary = The house of the first drill once more. Someone has changed the slide on the panel. Decide what can be trusted.
drill-loose-slide-goal = Get the fridge and the sump pump running within 20 minutes of the outage. In the end stop the engine and put the cords away. Or feed nothing and call an electrician. That is a good end too.
drill-loose-slide-note = Mistakes in this drill can kill a line worker. Nothing is shown in detail. You can stop at any time.
predict-line-past-the-slide = You turn the generator breaker on. How many volts to neutral are on the line at pole 2 then?
