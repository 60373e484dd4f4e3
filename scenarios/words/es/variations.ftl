# What is varied in a drill, by the name of the change; drills that use a name share its sentence.

variation-back-early = La compañía dice: su línea puede estar lista antes de lo usual.
variation-flicker = La línea se probó, falló y volvió del todo más tarde.
variation-slide-loose = La corredera del tablero no alcanzaba. Los dos interruptores podían estar conectados a la vez.
variation-slide-missing = En el tablero no había corredera.
variation-slide-defeated = Alguien le había quitado la barra a la corredera.
variation-slide-sound = La corredera del tablero estaba bien. Mantenía separados los dos interruptores.
variation-full-pit = Ha llovido por horas. El pozo de la bomba está lleno a más de la mitad.
variation-wind-to-house = El viento sopla del patio hacia la casa.
variation-plug-in-place = Un enchufe del cable de dos enchufes ya estaba en el tomacorriente de la secadora.
variation-neighbor-asks = Un vecino vino y pidió un cable.
variation-wet-night = Ha llovido por horas. El suelo está mojado.
variation-cold-night = Afuera está helando.
variation-hot-day = Es un día caluroso y los cables están al sol.
variation-mislabeled = La lista de circuitos del tablero estaba mal en dos de ellos.
variation-no-first-start = El motor no arrancó en los dos primeros intentos.
variation-early-outage = La luz se fue antes que la vez pasada.
variation-second-outage = La luz se fue una segunda vez.
variation-clouds = Nubes densas tapan el sol.
variation-own-main-off = La calle tenía luz: el interruptor principal de la casa estaba desconectado.
variation-dead-of-night = Son las dos y media de la madrugada.
variation-list-right = Esta vez la lista de circuitos del tablero estaba bien.
variation-other-pairs = La lista del tablero estaba mal en otros circuitos que de costumbre.
variation-television-off = Esta noche nadie ve la televisión.
variation-mended-early = La compañía dice: hay un camión cerca, puede ser rápido.
variation-engine-at-once = Un generador del camino alimentaba la línea desde el primer minuto.
variation-no-engine = No arrancó ningún generador del camino. Nadie podía saberlo.
