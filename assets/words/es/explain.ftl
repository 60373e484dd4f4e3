# Cómo ocurrió un hallazgo: caminos de la energía, cadenas de calor, sumas de cargas.

told-way = El camino de la energía:
told-way-at = El camino de la energía, minuto { $at }:
told-way-before = El camino de la energía, justo antes del minuto { $at }:
told-step-before = En ese segundo pasa mucho. { $what } Esto muestra cómo estaba todo justo antes de eso.
told-step-after = En ese segundo pasa mucho. { $what } Esto muestra cómo estaba todo justo después de eso.
told-chain = Cómo llegó a calentarse tanto:
told-sum = La cuenta:
told-sum-at = La cuenta, minuto { $at }:

stage-generator = El generador da { $volts } y entrega { $watts }. Se le piden { $asked }.
stage-generator-idle = El generador da { $volts }. En este momento nada toma energía de él.
stage-cord = { $name }: lleva { $amps }.
stage-two-plugs = Tiene un enchufe en cada punta. Si se saca de la pared, sus patas desnudas quedan a { $volts }.
stage-jumper = Está abierto, pero un puente lo rodea: { $name }. Por el puente sigue la energía.
stage-jumper-besides = Está cerrado: { $name }. Además un puente lo rodea, así que abrirlo solo no basta.
stage-welded = { $name }: dice abierto, pero sus contactos están soldados. Lleva { $amps } a { $volts }.
stage-cord-wire = Cable: { $cord }. Son { $length } de calibre { $gauge } AWG; está así: { $lies }. Ida y vuelta son { $ohm }.
stage-cord-lost = Con { $amps } pierde { $lost }. { $bad ->
    [one] Su mal enchufe toma { $plug } de eso. Al final quedan { $volts }.
   *[other] Al final quedan { $volts }.
}
stage-cord-heat = Lo que pierden sus conductores se vuelve calor a lo largo del cable: { $heat }.
stage-cord-heated = { $shorted ->
    [one] Sus conductores se tocaron a { $whole }. El cortocircuito lo llevó a { $reached }.
   *[other] En { $lasted } sobre su límite llegó a { $reached }.
}
stage-cord-limit = Su aislamiento está hecho para { $rated }.
stage-cord-does = { $basis ->
    [thin] La tabla le permite { $carries }, extendido. Es muy poco.
    [lay] Extendido puede llevar { $carries }. Así que para su calor es bastante grueso. Aquí su calor no podía salir.{ $long ->
        [one] {" "}Para el voltaje a este largo es muy delgado.
       *[other] {""}
    }
    [damage] Extendido puede llevar { $carries }. Así que no es muy delgado: el calor salió del lugar dañado.
   *[other] Extendido puede llevar { $carries }. Así que no es muy delgado: el lugar es demasiado caliente.
}
stage-cords-joined = Están unidos: { $first } y { $cord }. Son { $length } en total. Con { $amps } pierden { $lost }. Quedan { $volts }.
stage-cord-short = Se tocaron los conductores de este cable: { $name }. Es un cortocircuito: por ahí van { $amps }. Baja el tomacorriente a { $volts }.
stage-adapter = { $cord }: está en un solo tomacorriente de 120 V. Un solo conductor alimenta los dos lados del tablero. Lleva { $amps }, y el tomacorriente baja a { $near }.{ $over ->
    [one] {" "}Un tomacorriente común de 120 V está hecho para { $outlet } como máximo. Así enchufe y tomacorriente se calientan. Un interruptor puede aguantar tan poco de más durante una hora.
    [2] {" "}Un tomacorriente común de 120 V está hecho para { $outlet } como máximo. Así enchufe y tomacorriente se calientan.
   *[other] {""}
}
stage-inlet = Por la entrada de corriente entran { $amps }.
stage-branch = { $name }: por ahí pasan { $amps } al revés.
stage-breaker = { $name }: deja pasar { $amps }.
stage-live = { $name }: hay voltaje, sin corriente.
stage-main = { $name }: está encendido. Salen { $amps } de la casa.
stage-drop = { $name }: lleva { $amps } hasta el poste.
stage-transformer = El transformador del poste convierte { $low } en { $high }.
stage-span = { $name }: tiene { $volts }.
stage-span-to-earth = { $name }: tiene { $volts } a tierra.
stage-neighbor = { $name }: recibe { $volts } de su generador.
stage-crew = Las manos de quien trabaja en la línea cierran el circuito. El camino hasta la tierra toma una parte del voltaje. Voltaje en el cuerpo: { $volts }. Corriente por el cuerpo: { $amps }. No todos los cuerpos son iguales: a más corriente, menos voltaje. Los pasos anteriores son para un cuerpo intermedio.
stage-generator-still = El generador está parado.
stage-generator-stalled = El generador se apagó por exceso de carga en el minuto { $at }, y sigue parado.
stage-battery = La batería da { $volts } y entrega { $watts }.
stage-sun = El inversor solar está a { $volts } y da { $watts }.
stage-utility = La línea de la compañía está hecha para { $volts }.
stage-carries = { $name }: por ahí pasan { $amps } a { $volts }.
stage-carries-sides = { $name }: por ahí pasan { $amps } de un lado y { $other } del otro. Entre los dos hay { $volts }.
stage-live-at = { $name }: hay { $volts }, sin corriente.
stage-open = Apagado o abierto aquí: { $name }. Esto detiene la energía.
stage-behind = Luego viene: { $name }.
stage-behind-on = Luego viene: { $name }. Está encendido.
stage-strays = De aquí la corriente se desvía a esto: { $name }. Está a { $volts }.
stage-transformer-down = El transformador del poste convierte { $high } en { $low }.
stage-line-live = { $tied ->
    [one] Así su generador quedó unido a una línea que estaba a { $volts }. Duró { $lasted }.
   *[other] Así la línea llega a { $volts } como máximo. Duró { $lasted }.
}
stage-handles = { $main-open ->
    [one] { $street ->
        [one] También la calle tenía voltaje. Solo lo que está apagado aquí la separó del generador.
       *[other] Solo lo que está apagado aquí separó { $volts } de la calle.
    }
   *[other] { $interlock ->
        [0] Aquí no hay candado ni corredera.
        [one] La corredera no alcanza: no sujeta ninguna palanca.
       *[other] La corredera está desarmada: no sujeta ninguna palanca.
    } { $tied ->
        [one] Nada mantuvo separadas las dos fuentes.
       *[other] { $met ->
            [one] Nada separó { $volts } de la calle.
           *[other] { $street ->
                [one] También la calle tenía voltaje. Solo una palanca apagada la separó del generador.
               *[other] Solo una palanca apagada separó { $volts } de la calle.
            }
        }
    }
}
stage-meet = Aquí se encuentran los dos, con { $angle } de diferencia. Por el generador pasan { $amps } de golpe.
stage-hand = La mano cierra el camino a tierra. { $cause ->
    [wet] La unión mojada y el suelo bajo los pies toman una parte.
   *[other] El suelo bajo los pies toma una parte.
} Al cuerpo le quedan { $volts }, y por él pasan { $body } durante { $seconds }.
stage-bare = Aquí termina el camino, en metal desnudo. { $across ->
    [one] De una pata a tierra, una mano encuentra { $earth }. Entre dos patas, { $volts }.
   *[other] Una mano que lo toca encuentra { $volts }.
}
stage-wet-hand = El agua lo une con la caja y el piso. La mano encuentra { $volts }.
stage-lug = Los bornes desnudos detrás de la cubierta están a { $volts }, cerca de la mano.
stage-parts = { $carried ->
    [one] La mano separa contactos que llevan { $amps } a { $volts }. La corriente sigue saltando entre ellos como un arco, una chispa muy caliente.
   *[other] Los bornes desnudos detrás de la cubierta están a { $volts }, cerca de la mano.
}
stage-plug-load = La mano mueve un enchufe que lleva { $amps } a { $volts }.
stage-plug = { $strip ->
    [one] Aquí la mano lo enchufa. Desde ahora las clavijas de su otro enchufe también están a { $volts }.
   *[other] La mano mueve un enchufe que está a { $volts }.
}
stage-blades = Las patas cuelgan de esto. Ahora están a { $stands }.
stage-no-bond = El neutro y la tierra no se unen en ningún lado. { $worn ->
    [one] Una fase gastada toca esta carcasa: { $machine }. La varilla de tierra la mantiene a { $frame } respecto a tierra. Así el neutro sube a { $leg }, y la otra fase a { $other }. No salta ningún interruptor.
   *[other] Una fase gastada que tocara una carcasa subiría el neutro a { $leg } respecto a tierra. No saltaría ningún interruptor.
}
stage-work = { $dead ->
    [one] Aquí se trabaja en la línea. Ahora no tiene voltaje.
   *[other] Aquí se trabaja en la línea. Tiene { $volts } a tierra.
}
stage-gap = Aquí el cable está partido en dos. Unas manos que lo unen cierran la distancia entre los dos extremos: { $volts }.
stage-grounds = Las puestas a tierra la ponen en cortocircuito: { $amps }.
stage-customers = Aquí los clientes reciben { $stands }. { $asked ->
    [one] No han contestado.
   *[other] Nadie les preguntó.
}
stage-said-dead = Esto es lo que usted dijo que no tenía voltaje: { $subject }. Está a { $stands }.
stage-wrong-volts = Un lado de la casa recibe hasta { $volts }. Es demasiado durante { $lasted } en total.
stage-burnt = Le llegan { $volts } durante { $stood }: { $appliance }. Su límite es { $most }.
stage-astray = Aquí salen { $residual } y no vuelven. El dispositivo abre en { $took }.
stage-ground-wire = En el camino de vuelta, { $amps } toman el cable de tierra.
stage-sun-joins = Los { $sun } del sol pueden ir ahora hacia un generador hecho para { $rated }.
stage-sun-used = { $charges ->
    [one] De eso, la batería toma { $charge } para cargarse. Lo que está encendido en la casa toma { $rest }.
   *[other] De eso, lo que está encendido en la casa toma { $rest }.
}
stage-pushed = Entran { $watts } al generador, al revés.{ $borrowed ->
    [one] {" "}Los motores además toman de él corriente prestada. Por eso los amperios por los voltios del cable dan más.
   *[other] {""}
}
stage-unfit = { $fault ->
    [indoor] Sus letras son { $letters }: sin W, su cubierta no es para sol ni agua.
    [no-ground] { $pin ->
        [one] Le cortaron la pata de tierra, así que su conductor de tierra no llega a nada.
       *[other] Tiene dos conductores y ninguno de tierra.
    } Una falla en lo que alimenta no tiene entonces un camino seguro de regreso.
    [wet] Su conector está en el agua. De ahí se fuga corriente a tierra.
    [damaged] { $damage ->
        [strands] En su punto malo solo queda el { $left } de los hilos de un conductor. Ese punto llegó a { $spot }.
       *[crushed] En su punto aplastado poco separa los conductores. El cable llegó a { $spot }.
    }
   *[joined] Cuelga de otro cable: una unión más que puede calentarse.
} Se usó durante { $lasted } en total. Su extremo está a { $stands }.

stage-cord-warmed = La carga lo llevó de { $start } a { $rated }. Tardó { $time }.
stage-plug-ohm = Los dos contactos de este enchufe tienen { $ohm } en total.
stage-plug-heat = Con { $amps } eso da { $heat } de calor en un lugar pequeño.
stage-plug-reached = Con eso el enchufe pasó de { $start } a { $reached } en { $time }.
stage-plug-limit = A { $limit } un enchufe empieza a chamuscarse.
stage-wire-adapter = Cuelga de un solo tomacorriente de 120 V: { $cord }. Así los dos lados del tablero van al mismo paso, a { $near }.
stage-wire-shared = Por este neutro vuelven { $one-amps } ({ $one }) y { $other-amps } ({ $other }). En lados opuestos se anulan. En un mismo lado se suman, o casi.
stage-wire-made = El alambre es de calibre { $gauge } AWG: así de grueso es. El interruptor más grande para él es de { $breaker }.
stage-wire-carries = Lleva { $amps }.
stage-wire-reached = Desde la primera carga pasó de { $start } a su límite, dentro de la pared. Tardó { $time }.
stage-wire-limit = Su aislamiento aguanta { $limit }, no más. { $climbs ->
    [one] Y seguía subiendo.
   *[other] Llegó a { $reached }.
}

stage-on-the-way = Los cables del camino convierten { $watts } en calor.
stage-borrowed = Un motor también toma corriente prestada y la devuelve. Por eso usa menos vatios que sus amperios por sus voltios.
stage-starting = Esto arranca: { $name }. Toma { $amps } a { $volts } y usa { $watts } por un momento.
stage-stalled = Esto intenta arrancar y no gira: { $name }. Toma { $amps } a { $volts } y usa { $watts }.
stage-asked-street = A un voltaje tan bajo, el generador entrega { $watts }. A voltaje pleno, la casa y la calle piden { $asked }. Aquí puede dar { $rated }.
stage-asked-low = A un voltaje tan bajo, el generador entrega { $watts }. A voltaje pleno, todo esto pide { $asked }. Aquí puede dar { $rated }.
stage-asked-surge = En total se le piden { $asked } al generador. Está hecho para { $rated }, y para { $surge } en un arranque.
stage-asked-battery-low = A un voltaje tan bajo, la batería entrega { $watts }. A voltaje pleno, todo esto pide { $asked }. Está hecha para { $rated }.
stage-asked-battery = En total se le piden { $asked } a la batería. Está hecha para { $rated }.
stage-street = { $neighbors ->
    [0] El interruptor principal deja salir { $amps } a { $volts } a la calle.
    [one] El interruptor principal deja salir { $amps } a { $volts } a la calle, donde un vecino también recibe de esa corriente.
   *[other] El interruptor principal deja salir { $amps } a { $volts } a la calle, donde { $neighbors } vecinos también reciben de esa corriente.
}
stage-opens = { $name }: por él pasaron { $amps }, { $times } veces su capacidad. Frío, con eso abre en { $seconds }.
stage-turning = Con tan poco voltaje el motor tiene el { $torque } de su fuerza de giro.
stage-low-volts = Así quedan { $volts } para esto: { $appliance }.
stage-order-motor = Un orden que funciona, número { $number }: { $name }. Mientras arranca, todo lo encendido pide { $start }; luego { $then }.
stage-order = Un orden que funciona, número { $number }: { $name }. Entonces todo lo encendido pide { $then }.
stage-order-utility = Un orden que funciona, número { $number }: { $name }.
stage-leave-asked = Deje esto apagado: { $name }. Con eso junto a lo demás se pedirían { $asked }.
stage-leave-restart = Deje esto apagado: { $name }. Con eso se pedirían { $asked } cada vez que esto arranque solo: { $starts }.
stage-begins-above = Los primeros pasos son como se contó arriba, en el minuto { $at }.
stage-ends-above = Lo demás es como se contó arriba, en el minuto { $at }.
stage-leave-through = Deje esto apagado: { $name }. Con eso pasarían { $amps } por aquí: { $guard }.
stage-leave-stands = Deje esto apagado: { $name }. Con el { $share } de su voltaje un motor no giraría.
stage-leave-starves = Deje esto apagado: { $name }. Con eso quedaría solo el { $share } del voltaje.
stage-frame = La carcasa del generador está unida a sus cables de neutro y de tierra. Ellos le ponen { $volts }.
stage-generator-tied = El generador está a { $volts }, unido a otra fuente.
stage-two-bonds = El dispositivo encuentra el neutro y la tierra unidos a sus dos lados. Abre en { $took }.
stage-lent = El generador del vecino da { $volts } en la punta del cable que presta.
stage-sources-meet = { $met ->
    [one] Aquí se junta con su generador, con { $angle } de diferencia. Entre los dos pasa un golpe de { $amps }.
   *[other] Termina en los tomacorrientes de su generador. Llegan a { $volts }.
}
stage-surge-held = Esto aguantó: { $breaker }. Frío, con un golpe así abre solo después de { $opens }. El golpe mismo dura unas pocas vueltas.

told-fire = Cómo se prendió:
told-gas-at = El camino del gas, minuto { $at }:

stage-exhaust = El motor lleva una carga de { $watts }. En aire fresco da { $fresh } de monóxido de carbono por hora.
stage-exhaust-starved = Al aire que lo rodea le falta oxígeno: queda el { $oxygen }. Por eso da { $gives } por hora.
stage-exhaust-over = El motor lleva apagado { $time }. Lo que dio sigue en el aire.
stage-exhaust-neighbor = El motor de un vecino, junto a una abertura de esta casa, da { $grams } de monóxido de carbono por hora. Cerca del { $share } entra, y es una estimación: { $enters } por hora.
stage-drawn-in = Está a { $feet } de una abertura. Cerca del { $share } de su gas entra, y es una estimación: { $enters } por hora. { $way ->
    [window] El gas entra por la ventana abierta.
    [besides] El gas entra por las aberturas cercanas, y la ventana abierta deja entrar más.
    [gaps] El gas entra por rendijas. La ventana está así: { $stands }.
   *[openings] El gas entra por las aberturas cercanas.
}
stage-drawn-in-next-door = Está a { $feet } de una abertura de la casa de al lado. Cerca del { $share } de su gas entra allí, y es una estimación: { $enters } por hora.
stage-garage-air = Todo va al garaje, y la puerta grande está { $door }. De ese gas salen al aire libre { $leaves } por hora. El aire de allí tiene { $ppm }.
stage-garage-passes = { $door ->
    [open] Por la puerta abierta a la casa pasan { $enters } por hora adentro.
   *[shut] Por rendijas de puertas, paredes y piso pasan { $enters } por hora a la casa.
}
stage-all-in-house = Todo se queda en la casa: { $enters } por hora.
stage-house-air = El aire de la casa ya tiene { $ppm }. El gas empezó a juntarse { $time } antes.
stage-air-next-door = El aire de esa casa ya tiene { $ppm }. El gas empezó a juntarse { $time } antes.
stage-alarm-sounded = A { $level } una alarma debe sonar entre { $from } y { $to } minutos después. Esta sonó en el minuto { $at }.
stage-alarm-cannot = A { $level } una alarma debe sonar entre { $from } y { $to } minutos después. Esta no puede sonar: { $stands }.
stage-alarm-quiet = A { $level } una alarma debe sonar entre { $from } y { $to } minutos después. Esta no ha sonado todavía.
stage-nobody = Nadie está entonces en la casa, así que nadie lo respira.
stage-blood = { $who ->
    [up] El gas ocupa el { $cohb } de la sangre de quienes están despiertos.
    [next-door] El gas ocupa el { $cohb } de la sangre de quien ha estado allí adentro.
   *[sleeper] El gas ocupa el { $cohb } de la sangre de esta persona, contada como un adulto que duerme: { $name }.
} Al principio era el { $start }. { $felt ->
    [none] La mayoría no siente nada todavía, y ese es el peligro: la cabeza duele solo desde el { $level }.
    [headache] Desde el { $level } duele la cabeza.
    [nausea] Desde el { $level } la cabeza late y el estómago se revuelve.
    [confusion] Desde el { $level } la gente se marea y quizá no halle la salida.
    [collapse] Desde el { $level } la gente se desploma.
   *[unconscious] Desde el { $level } la gente pierde el conocimiento y puede morir.
}{ $who ->
    [up] {""}
    [next-door] {""}
   *[sleeper] {" "}Un niño toma el gas más rápido por su tamaño. Los niños y los enfermos sufren con menos.
}
stage-helpless = En el minuto { $at } ya ocupaba el { $level }. Desde ahí nadie puede salvarse solo.
stage-helpless-ahead = Si el aire sigue así, ocupará el { $level } en { $time }. Desde ahí nadie puede salvarse solo.

stage-fuel-metal = { $how ->
    [running] El motor está en marcha y su silenciador está a { $surface }.
   *[stopped] El motor se detuvo { $time } antes y su silenciador sigue a { $surface }.
}
stage-fuel-vapor = A más de { $flash }, la gasolina da un vapor que puede encenderse. Aquí el aire está a { $air }.
stage-fuel-lit = { $by ->
    [engine] Un motor en marcha enciende el vapor con sus chispas y su escape. El metal puede encenderlo desde { $least }.
    [metal] El metal puede encender el vapor desde { $least }, y este silenciador está más caliente.
   *[margin] Según la cifra publicada más baja, el metal enciende el vapor desde { $least }. El simulacro cuenta también metal menos caliente, para mayor seguridad.
}
stage-one-side = Todo esto está de un mismo lado del tablero. Junto hace pasar { $amps } por aquí: { $name }.{ $less ->
    [one] {" "}La corriente de un motor llega un poco después que la de una lámpara. Así que es menos que la simple suma.
   *[other] {""}
}
names-and = { $name } y { $rest }
names-comma = { $name }, { $rest }
stage-half-plug = Cuelga de esto con un adaptador: { $cord }. Tiene un solo conductor con voltaje: da { $volts } y no { $rated }.
stage-half-tries = { $opened ->
    [0] Estuvo encendido { $lasted } en total, y zumbó.
    [one] Zumbó durante { $each }. Luego se abrió su propio protector.
   *[other] La primera vez zumbó durante { $each }. Luego se abrió su propio protector, { $opened } veces en total.
}

told-cut-at = El camino que la energía debía tomar, minuto { $at }:
told-left-at = Cómo estaba en el minuto { $at }:
told-lost = Cómo se perdió:
told-fuel = Adónde fue el combustible:
told-oil = Adónde fue el aceite:
told-stopped = Por qué fue demasiado pronto:
told-can = Cómo puede prenderse ese combustible:
told-starter-at = Cómo puede girar el motor, minuto { $at }:

stage-unplugged = Sin enchufar aquí: { $name }.
stage-by-cord = Por este tablero no hay un camino seguro. Por eso se muestra el camino por una extensión.
stage-gets = { $how ->
    [unplugged] Sin enchufar en ningún lado: { $name }.
    [elsewhere] Sin enchufar ahí: { $name }. Donde está su enchufe llegan { $volts }.
    [low] { $name }: ahí llegan { $volts }. Hacen falta { $least } o más.
   *[gets] Así a esto le llegan { $volts }: { $name }.
}
stage-came = { $came ->
    [one] La electricidad llegó para quedarse en el minuto { $at }, { $late } tarde.
   *[other] Cuando acabó el simulacro, minuto { $at }, no había llegado electricidad duradera.
}
stage-house-then = { $fed ->
    [crew] Así la casa de los clientes recibe { $volts }.
    [own] Así la corriente de la calle no entra a la casa. La casa recibe { $volts } de su propia fuente.
    [part] Así la corriente de la calle no entra a la casa. El tablero principal recibe { $volts }. El tablero menor recibe { $part } de la fuente de la casa.
    [street] Así la corriente de la calle no entra a la casa. Eso es lo que falta: nada más debe alimentar los cables de esta casa.
   *[dark] Así la corriente de la calle no entra a la casa. La casa recibe { $volts }.
}
stage-still-burns = Gasta { $rate } de combustible por hora.
stage-without-it = Sin él la casa recibe { $volts }.
stage-blind = Nadie había mirado. La casa recibe ahora { $stands } de la calle.

stage-last-ran = { $ran ->
    [one] Funcionó por última vez en el minuto { $at }, con { $watts }: { $name }.
   *[other] No ha funcionado desde el minuto { $at }: { $name }.
}
stage-can-wait = En el mejor caso, lo que protege aguanta { $whole } sin electricidad. En el minuto { $at } ya se había gastado el { $share } de ese tiempo.
stage-rest-lasted = El resto duró { $time }. En el minuto { $at } se acabó.
stage-tank = En el minuto { $at } el tanque tenía { $held }.
stage-burned = Luego el motor estuvo en marcha { $time }, con { $watts } en promedio. Así gastó { $rate } por hora.
stage-burns-then = Al final llevaba { $watts }. Con esa carga gasta { $rate } por hora.
stage-oil = En el minuto { $at } el aceite alcanzaba para { $time } más.
stage-oil-used = Luego el motor estuvo en marcha { $time }, con { $watts } en promedio. Entonces su propio interruptor lo detuvo.
stage-went-dark = { $loads ->
    [0] En ese momento nada tomaba energía de él. Entregaba { $watts }.
    [one] Enseguida se apagó esto: { $names }. El motor entregaba { $watts }.
   *[other] De golpe se apagó esto: { $names }. El motor entregaba { $watts }.
}

stage-last-load = Al final el motor llevaba { $watts }. Es el { $share } de aquello para lo que está hecho.
stage-rested = Luego debía seguir en marcha { $cool } sin carga. Se detuvo { $missing } antes de eso.
stage-muffler = Al pararse, se paró también su ventilador. El simulacro cuenta con un silenciador a { $surface } en ese momento.
stage-muffler-cools = Parado, el silenciador sigue a más de { $cooled } durante { $hot }.

stage-can = La lata estaba aquí: { $place }. Estuvo ahí { $lasted }.
stage-cup = Una lata puede volcarse. Una taza derramada da { $grams } de vapor.
stage-floor-air = El vapor pesa más que el aire y se queda abajo. Cuando toda se ha secado, es el { $mix } de los 30 cm más bajos de aire (un pie) de ese cuarto.
stage-can-lit = Ese aire arde desde el { $burns }. { $lights ->
    [flame] En ese cuarto arde una llama, y ella enciende el vapor.
   *[spark] Cualquier chispa lo enciende, como la de un interruptor de luz.
}

stage-controller = { $off ->
    [one] El controlador está apagado. Basta una mano para volver a encenderlo.
   *[other] El controlador está despierto. Actúa { $delay } después de que la calle baje del { $loss } de su voltaje.{ $weekly ->
        [one] {" "}Su próxima marcha semanal toca en { $next }.
       *[other] {""}
    }
}
stage-starter-battery = { $off ->
    [one] La batería de arranque está desconectada, así que el motor de arranque no puede girar.
   *[other] La batería de arranque está conectada, así que el motor de arranque puede girar.
}
stage-set-breaker = { $off ->
    [one] El interruptor del generador está apagado. Separa { $volts } de los cables de la casa.
   *[other] El interruptor del generador está encendido. Con el motor en marcha, en los cables hay { $volts }.
}
stage-hands-in = { $runs ->
    [one] El motor giraba, y la cubierta estuvo abierta { $lasted }.
   *[other] La cubierta estuvo abierta { $lasted }. Una mano ahí adentro no tiene tiempo de apartarse.
}
stage-start-asked = { $why ->
    [test] En el minuto { $at } el controlador estaba en prueba. Eso le ordena arrancar.
    [weekly] En el minuto { $at } tocaba la marcha semanal.
   *[street] En el minuto { $at } se fue la electricidad de la calle.
}
stage-controller-off = Apagado: el controlador. Por eso el motor no arranca solo, y el interruptor de transferencia espera.
stage-controller-waits = El controlador esperó { $time }, como está ajustado. Luego dio la orden.
stage-oil-kept = El aceite estaba bajo. Por eso un interruptor del motor no lo dejó funcionar, pero el motor de arranque sí lo hizo girar.
stage-caught = El motor de arranque hizo girar el motor { $time } después de abrirse la cubierta. Había manos adentro.
