drill-only-our-house-title = Solo nuestra casa
drill-only-our-house-summary = La casa está a oscuras. Mire antes de llevar un generador a ninguna parte.
drill-only-our-house-goal = Averigüe si de verdad es un apagón. Diga si los cables de la calle tienen voltaje. Luego haga lo que haga falta.
drill-only-our-house-note = Los cables de la calle pueden tener voltaje aunque la casa esté a oscuras. Puede parar cuando quiera.
