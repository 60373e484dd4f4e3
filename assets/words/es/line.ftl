# Una línea en la que trabaja una cuadrilla: nombres, negativas, lo que muestran los detectores, lo que pasa, hallazgos.

name-feeder = reconectador de cabecera
    .of = del reconectador de cabecera
name-feeder-contacts = contactos del reconectador
name-broken-span = el tramo roto
name-away = fuera de la línea
name-testing = en el poste, sin tocar
name-hands-on = manos en la línea
name-clear = lejos de la línea
name-whole = entero
name-broken = roto
name-absent = retirado
name-present = puesto
name-sound = en buen estado
name-welded = soldado
name-earth-end = extremo de tierra puesto
name-both-ends = los dos extremos puestos
name-line-end = extremo de línea puesto
name-line-end-off = sin el extremo de línea, el de tierra sigue puesto
name-earth-end-off = sin el extremo de tierra, el de línea sigue puesto
name-good = buena
name-spent = agotada
name-working = trabajando
name-tester = detector en la mano
    .of = del detector en la mano
name-detector = detector desde 720 voltios
    .of = del detector desde 720 voltios
name-low-range = detector con escala baja
    .of = del detector con escala baja
name-tall-detector = detector para una línea de 138 kilovoltios
    .of = del detector para una línea de 138 kilovoltios
name-old-detector = detector viejo del camión
    .of = del detector viejo del camión
name-proving-source = fuente de prueba
    .of = de la fuente de prueba
name-second-crew = segunda cuadrilla
name-disconnect = seccionador
    .of = del seccionador
name-pole-5 = poste 5
    .of = del poste 5
name-span-4 = línea del poste 4 al poste 5
    .of = de la línea del poste 4 al poste 5

part-tag = etiqueta, { $of }
    .of = etiqueta { $of }
part-jumper = puente alrededor, { $of }
    .of = puente alrededor { $of }
part-cutout = cortacircuito del transformador, { $of }
    .of = cortacircuito del transformador { $of }
part-grounds = puestas a tierra, { $of }
    .of = puestas a tierra { $of }
part-battery = batería, { $of }
    .of = batería { $of }

close-line-work = La línea en la que usted trabaja, desde la cabecera hasta el último poste. El reconectador se ordena por radio. Lo demás se maniobra con pértiga. Solo lo marcado le pone las manos en la línea.
act-join-line = unir el tramo roto
act-part-line = separar el tramo
act-leave-line = irse de la línea
act-go-to-pole = subir al poste, sin tocar
act-take-line = tomar la línea con las manos
act-step-clear = apartarse de la línea
act-order-open = ordenar que abra
act-order-closed = ordenar que cierre
act-open = abrir
act-close = cerrar
act-take-off = quitar
act-put-on = poner
act-touches = toca la línea

refused-blades-closed = Usted está debajo y mira hacia arriba. Las cuchillas están cerradas. Una etiqueta dice que están abiertas.
refused-jumper-there = Usted está debajo y mira hacia arriba. Un puente une las cuchillas abiertas. Quítelo primero.
refused-tagged = Ahí cuelga una etiqueta. Quite primero su etiqueta.
refused-no-jumper = Aquí nadie pone un puente.
refused-one-clamp = Una pinza a la vez. Mueva primero el otro extremo.
refused-out-of-reach = La línea solo se repara con las manos en ella.
refused-no-reason = La línea está entera. Déjela así.
refused-second-crew = Ahí cuelga la etiqueta de la otra cuadrilla. Solo ellos la quitan.

learnt-tester-lit = { $point }: se enciende. En la mano: { $tester }.
learnt-tester-dark = { $point }: queda apagado. En la mano: { $tester }.
learnt-customers-asked = Usted pide a los clientes que vuelvan a la red. Necesitan unos minutos.

event-opened-on-fault = Abre por una falla, con { $amps }: { $switch }.
event-cannot-open = Un cortocircuito, con { $amps }. No puede abrir, pues sus contactos están soldados: { $switch }.
event-customer-started = Un cliente de la línea arranca un generador.
event-customers-back = Los clientes dicen: nuestros generadores están apagados. Estamos otra vez del lado de la red.
event-tie-closed = El enlace se cierra por su mando a distancia.
event-tie-held = El mando a distancia quiere cerrar el enlace. Su etiqueta lo impide.
event-second-crew-clear = La otra cuadrilla dice: estamos lejos. Nuestras puestas a tierra y etiquetas ya no están.

finding-not-tested-what = { $lit ->
    [one] Usted confió en esta línea aunque el detector se había encendido en ella.
   *[other] Usted dio por hecho que esta línea no tenía voltaje. Nadie la midió, o no desde que se cerró un interruptor en ella.
} { $dead ->
    [one] En ese momento no tenía voltaje, pero usted no podía saberlo.
   *[other] { $before ->
        [one] Voltaje a tierra justo antes de tocarla: { $volts }.
       *[other] Voltaje a tierra en ese momento: { $volts }.
    }
}
finding-not-tested-why = Una calle oscura no prueba nada. Un solo generador en una casa puede llevar la línea a todo su voltaje por el transformador, en cualquier momento.
finding-not-tested-now = Pare. Aléjese de la línea. Trátela como si tuviera voltaje.
finding-not-tested-instead = Mida en su propio poste, después de la última maniobra. Pruebe el detector en la fuente de prueba antes y después. Solo entonces ponga las pinzas.
source-not-tested = 29 CFR 1926.961: una línea cuenta como viva hasta que se mide sin voltaje y se pone a tierra ‹verificado en un resumen›. NIOSH FACE 90-02 ‹verificado›.

finding-tester-unproved-what = { $why ->
    [0] El detector no se probó en la fuente de prueba antes de medir. En la mano: { $tester }.
    [one] El detector no se probó en la fuente de prueba después de medir. En la mano: { $tester }.
    [2] El detector quedó apagado también en la fuente de prueba. En la mano: { $tester }.
   *[other] Este detector no muestra nada por debajo de { $least }. En la mano: { $tester }.
} { $dead ->
    [one] La línea no tenía voltaje en ese momento, pero usted no podía saberlo.
   *[other] { $before ->
        [one] Voltaje de la línea a tierra justo antes de tocarla: { $volts }.
       *[other] Voltaje de la línea a tierra en ese momento: { $volts }.
    }
}
finding-tester-unproved-why = Un detector apagado puede querer decir línea sin voltaje, batería agotada o escala equivocada. El voltaje bajo de un generador pequeño también mata.
finding-tester-unproved-now = Retire las manos. Pruebe un detector con escala baja, mida y pruébelo otra vez.
finding-tester-unproved-instead = { $why ->
    [0] Mida tres veces: la fuente de prueba, la línea y otra vez la fuente.
    [one] Mida tres veces: la fuente de prueba, la línea y otra vez la fuente.
    [2] Mida tres veces: la fuente de prueba, la línea y otra vez la fuente. Deje el detector que falla.
   *[other] El orden de las pruebas era correcto. El detector no lo era.
} Use un detector de línea, con pértiga, que muestre también voltajes bajos. Nunca acerque a la línea un probador de casa.
source-tester-unproved = NIOSH 88-104: un detector que no vio voltaje bajo ‹verificado›. NFPA 70E: probar antes y después ‹verificado›. El mínimo que se pide aquí: práctica común.

finding-not-grounded-what = Las manos de su cuadrilla estuvieron en la línea sin puestas a tierra. Duró { $lasted }. { $dead ->
    [one] La línea siguió sin voltaje. Nada lo aseguraba.
   *[other] Voltaje más alto a tierra en ese tiempo: { $volts }.{ $pulled ->
        [one] {" "}Justo antes del contacto eran { $untouched }: el cuerpo lo bajó.
       *[other] {""}
    }
}
finding-not-grounded-why = Una línea medida puede tener voltaje un segundo después: arranca un generador, se cierra un interruptor. Las puestas a tierra son pinzas y un cable que unen la línea con la tierra. Así, todo lo que usted toca queda casi al mismo voltaje.
finding-not-grounded-now = Aléjese de la línea. Mida otra vez y ponga a tierra.
finding-not-grounded-instead = Ponga a tierra en el lugar de trabajo antes de tocar: primero el extremo de tierra, luego el de línea con pértiga.
source-not-grounded = 29 CFR 1926.962(b) y (c): puestas a tierra colocadas para que nadie quede expuesto a una diferencia de potencial ‹verificado en un resumen›.

finding-grounds-wrong-what = { $how ->
    [0] La pinza de la línea se puso antes que la de tierra. { $dead ->
        [one] La línea no tenía voltaje en ese momento. Si el voltaje hubiera vuelto, la pinza en su mano también lo habría tenido.
       *[other] La pinza libre en su mano tenía el voltaje de la línea a tierra: { $volts }.
    }
    [one] La pinza de tierra se quitó antes que la de la línea. { $dead ->
        [one] La línea no tenía voltaje en ese momento. Si el voltaje hubiera vuelto, la pinza en su mano también lo habría tenido.
       *[other] La pinza libre en su mano tenía el voltaje de la línea a tierra: { $volts }.
    }
   *[other] { $sets ->
        [one] Había un juego en la línea, pero no en su poste. { $dead ->
            [one] La línea en sus manos siguió sin voltaje, por suerte.
           *[other] Voltaje más alto a tierra en sus manos: { $volts }.
        }
       *[other] Había { $sets } juegos en la línea, pero ninguno en su poste. { $dead ->
            [one] La línea en sus manos siguió sin voltaje, por suerte.
           *[other] Voltaje más alto a tierra en sus manos: { $volts }.
        }
    }
}
finding-grounds-wrong-why = Con una pinza en la línea, la pinza libre en su mano es parte de la línea. Con puestas a tierra en otro lugar, su poste y el cable pueden llegar a voltajes distintos.
finding-grounds-wrong-now = { $how ->
    [0] Quite el extremo de línea con la pértiga y empiece de nuevo.
    [one] Quite el extremo de línea con la pértiga y empiece de nuevo.
   *[other] Aléjese de la línea y ponga a tierra en el lugar de trabajo.
}
finding-grounds-wrong-instead = Al poner: primero el extremo de tierra, luego el de línea. Al quitar: primero el extremo de línea, luego el de tierra. Siempre en el poste donde trabaja. En un cable roto, mida y ponga a tierra sus dos extremos.
source-grounds-wrong = 29 CFR 1910.269(n) y 1926.962: orden de las pinzas y zona de igual potencial en el lugar de trabajo ‹verificado en resúmenes›.

finding-no-visible-break-what = { $jumper ->
    [0] Las manos de su cuadrilla estuvieron { $lasted } en la línea. Ningún corte a la vista, abierto y con etiqueta, la separaba.
    [one] Un puente rodeaba este corte abierto: { $break }. Las manos de su cuadrilla estuvieron en esa línea durante { $lasted }.
   *[other] Las manos de su cuadrilla estuvieron { $lasted } en una línea sin un corte abierto. Nunca se abrió, y un puente lo rodea: { $break }.
} { $dead ->
    [one] Siguió sin voltaje en ese tiempo, por suerte.
   *[other] Voltaje más alto a tierra: { $volts }.{ $pulled ->
        [one] {" "}Justo antes del contacto eran { $untouched }: el cuerpo lo bajó.
       *[other] {""}
    }{ $customer ->
        [one] {" "}Venía del generador de un cliente, y no de la red.
       *[other] {""}
    }{ $zone ->
        [one] {" "}La puesta a tierra en su poste protegió allí sus manos. No protege nada más allá de una rotura del cable.
       *[other] {""}
    }
}
finding-no-visible-break-why = { $jumper ->
    [0] Un corte es un hueco en la línea. Un interruptor que dice abierto puede tener contactos soldados. Un puente puede saltarlo. Otra persona puede cerrarlo. Solo cuenta un corte que se ve. Póngale etiqueta. Después mida y ponga a tierra de todos modos.
    [one] Las cuchillas estaban abiertas, pero el puente las rodeaba y llevaba la energía. Busque uno antes de confiar en un corte. Póngale etiqueta. Después mida y ponga a tierra de todos modos.
   *[other] Un interruptor que dice abierto puede tener contactos soldados. Aquí, aun con las cuchillas abiertas, un puente las rodea y llevaría la energía. Solo cuenta un corte que se ve. Póngale etiqueta. Después mida y ponga a tierra de todos modos.
}
finding-no-visible-break-now = { $jumper ->
    [one] Aléjese de la línea. Quite el puente, mire el corte y cuelgue su etiqueta.
    [0] Aléjese de la línea. Abra los cortes, mírelos y cuelgue sus etiquetas.
   *[other] Aléjese de la línea. Abra el corte, quite el puente, mire los dos y cuelgue su etiqueta.
}
finding-no-visible-break-instead = Busque todos los caminos por los que la red puede alimentar su tramo. Abra un corte en cada uno, véalo y cuelgue una etiqueta. Cada cliente puede ser una fuente: abra y etiquete también los cortacircuitos.
source-no-visible-break = 29 CFR 1926.961(c): todas las fuentes abiertas, etiquetadas y sin poder accionarse ‹verificado en un resumen›.

finding-live-end-what = Usted unió con las manos el cable roto. El extremo lejano ({ $end }) tenía voltaje. Justo antes eran { $volts }. { $tested ->
    [0] Nadie había medido en ese extremo, o no desde que se cerró por última vez un interruptor de la línea.
    [one] Antes, un detector se había quedado apagado ahí.
   *[other] Antes, un detector se había encendido ahí.
}{ $grounds ->
    [one] {" "}Ahí había puestas a tierra, pero ninguna en su propio poste.
   *[other] {" "}Ahí no había puestas a tierra.
}
finding-live-end-why = Quien une dos extremos tiene los dos en las manos. El voltaje entre ellos actúa entonces sobre el cuerpo. Una medición en su poste no dice nada del cable al otro lado de la rotura. La puesta a tierra de su poste no le quita el voltaje a ese extremo.
finding-live-end-now = Aléjese de la línea. Trátela toda como viva. { $by ->
    [customer] Haga que el cliente corte esa fuente.
   *[utility] Pida a la compañía que la corte.
}
finding-live-end-instead = Busque también qué puede alimentar el otro lado. Abra allí un corte visible y póngale etiqueta. Mida en los dos extremos con un detector comprobado. Ponga a tierra los dos lados de la rotura antes de unirlos. Unir una línea con voltaje es para cuadrillas con licencia, con herramientas y reglas hechas para eso.
source-live-end = 29 CFR 1926.962(c) y 1910.269(n): que nadie quede expuesto a una diferencia de potencial ‹verificado en resúmenes›. Con voltaje desde 50 V: 29 CFR 1910.303(g)(2) ‹de memoria›. Medir y poner a tierra los dos lados de una rotura: ‹de memoria›.

finding-grounds-left-what = { $taken ->
    [one] Usted movió una pinza mientras pasaba la corriente de falla.{" "}
   *[other] {""}
}{ $sets ->
    [one] La red alimentó un juego de puestas a tierra que seguía en la línea: { $amps }, durante { $lasted }.
   *[other] La red alimentó { $sets } juegos de puestas a tierra que seguían en la línea: { $amps }, durante { $lasted }.
}
finding-grounds-left-why = Las puestas a tierra son un cortocircuito, hechas para serlo. El cable puede dar latigazos y las pinzas pueden quemarse. { $by ->
    [mended] Una pinza que se quita con esa corriente hace un arco que puede matar.
   *[closed] Quien esté allí puede salir herido.
}{ $welded ->
    [one] {" "}Los contactos del reconectador están soldados, y no pudo cortarla. En la realidad, un interruptor de la subestación debería cortarla en segundos. Este simulacro lo deja fuera, pues una cuadrilla no puede contar con él.
   *[other] {""}
}
finding-grounds-left-now = { $stands ->
    [live] No se acerque a las puestas a tierra ni a la línea: la corriente sigue entrando. Pida a la compañía que la corte.
   *[dead] Busque personas cerca de las puestas a tierra. Si hay heridos, llame al número de emergencias. Deje abierto el reconectador y haga que no pueda cerrarse solo. Abra un corte visible y póngale etiqueta. Mida. Luego quite todas las puestas a tierra, primero el extremo de línea. Revise las puestas a tierra y la línea.
}
finding-grounds-left-instead = { $by ->
    [mended] Abra un corte visible y póngale etiqueta antes de reparar la línea. Reparar une sus dos extremos: mida y ponga a tierra los dos primero.
   *[closed] Cuente los juegos que se ponen y los que se quitan. Cierre solo cuando no quede ninguno.
} Un juego que llevó una falla sale de servicio, aunque parezca entero.
source-grounds-left = Manual del DOE sobre trabajo en líneas, retiro de puestas a tierra ‹de memoria›. ASTM F855: un juego no se usa otra vez tras una falla ‹de memoria›. La corriente se calcula con las impedancias de línea y fuente.

finding-not-asked-what = { $asked ->
    [one] Usted cerró la línea antes de que los clientes contestaran. { $running ->
        [one] Había un generador en marcha en ella.
       *[other] Ningún generador estaba en marcha, por suerte.
    }
   *[other] Usted cerró la línea sin pedir antes a los clientes que volvieran a la red. { $running ->
        [one] Había un generador en marcha en ella.
       *[other] Ningún generador estaba en marcha, por suerte.
    }
}
finding-not-asked-why = El generador de un cliente no va al paso de la red. Si los dos se encuentran, luchan entre sí.
finding-not-asked-now = Pregunte a cada cliente de esta línea qué tiene en marcha.
finding-not-asked-instead = Pida a los clientes que vuelvan a la red, espere su respuesta, y cierre al final cortacircuitos y reconectador.
source-not-asked = NEC 702.5 pide que las dos fuentes queden separadas ‹verificado en una copia›. Preguntar antes: práctica común.

proof-line-found = el comienzo es como lo dejaron la tormenta y los clientes, y ninguna cuadrilla lo produce.
proof-line-customers = en este simulacro los clientes pueden alimentar la línea en cualquier momento. De eso trata.

error-break-in-broken-span = El corte “{ $name }” está en el tramo que se rompe. Póngalo en otro.
