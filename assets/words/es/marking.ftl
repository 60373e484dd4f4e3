# Evaluación: criterios, hallazgos, fuentes.

criterion-isolation-title = Separación
criterion-isolation-text = La electricidad de la casa nunca llega a la línea de la compañía, y nunca se juntan dos fuentes fuera de sincronía. Un equipo adecuado las separa, y no solo una palanca.
criterion-isolation-line = Antes de tocar la línea, todo camino desde la red está abierto a la vista. Ningún generador se junta con la red.
criterion-rule = La regla: { $rule }
criterion-against = Vea lo que se halló en estos minutos: { $times }.
# Junto a lo que pide el simulacro, si el trabajo se detuvo con razón antes de hacerlo.
criterion-not-shown = { $harm ->
    [fire] El trabajo se detiene ante un incendio. Por eso no se vio, y nadie se lo reprocha.
    [air] Después de una alarma nadie vuelve adentro. Por eso no se vio, y nadie se lo reprocha.
    [gas] El trabajo se detiene cuando hay personas sin conocimiento. Por eso no se vio, y nadie se lo reprocha.
   *[hurt] El trabajo se detiene cuando alguien está herido. Por eso no se vio, y nadie se lo reprocha.
}
# Beside a criterion that is met.
criterion-better = Con todo, podría ir mejor: vea { $times }.
# Beside people who are met, for what is filed under another criterion.
criterion-can-hurt = Esta vez nadie salió herido. Pero lo que se halló en estos minutos puede herir a alguien: { $times }.
criterion-people-title = Personas
criterion-people-text = Nadie sale herido, ni está donde el peligro lo alcance de inmediato.
criterion-order-title = Orden y cuidado
criterion-order-text = Cada paso viene en orden, a tiempo y en un lugar seguro. Así no sufren ni las personas ni las máquinas.
criterion-load-title = Máquinas y cargas
criterion-load-text = Nada se sobrecarga, ni recibe de menos, ni se calienta de más, ni se queda sin combustible o aceite.
criterion-load-line = Su propio trabajo no sobrecarga, no deja sin voltaje y no recalienta nada. Lo que usan los clientes no se juzga.
criterion-restoration-title = Lo que pide el simulacro
criterion-restoration-utility = Lo que importa recibe electricidad a tiempo. Al final, la casa está de nuevo en la red y todo está como pide este simulacro.
criterion-restoration-back = Al final, la casa está de nuevo en la red y todo está como pide este simulacro.
criterion-restoration-line = Al final, los clientes tienen electricidad de la red y todo está como pide este simulacro.
criterion-restoration-own = Lo que importa recibe electricidad a tiempo. Al final, la casa funciona con su propia fuente, como pide este simulacro.
criterion-restoration-asked = Al final, todo está como pide este simulacro.

finding-line-fed-what = { $tied ->
    [one] Su generador y la red estuvieron juntos en la línea durante { $lasted }. En su punto más alto la línea tuvo { $volts }.
   *[other] Su generador alimentó la calle durante { $lasted }. En su punto más alto la línea tuvo { $volts }.
}{ $came ->
    [one] {" "}Ya estaba así cuando usted llegó.
   *[other] {""}
}
finding-line-fed-why = El transformador del poste trabaja en los dos sentidos. Convierte cada voltio de la casa en muchos en la línea. { $tied ->
    [one] La red también alimentaba la línea. Si se va otra vez, su generador solo la mantiene con voltaje. Quien trabaja allí confía en que no lo tiene.
   *[other] { $neighbors ->
        [0] Quien trabaja en esa línea confía en que no tiene voltaje.
        [one] Un vecino también recibía de su generador. Su luz no es señal de que la red volvió. Quien trabaja en esa línea confía en que no tiene voltaje.
       *[other] { $neighbors } vecinos también recibían de su generador. Sus luces no son señal de que la red volvió. Quien trabaja en esa línea confía en que no tiene voltaje.
    } Lo más que se le pidió al motor fueron { $asked }. Está hecho para { $rated }. Si se apaga, eso es suerte y no protección.
}
finding-line-fed-now = Apague enseguida el interruptor principal. Apague también esto en el tablero: { $breaker }. Detenga el motor y déjelo detenido. Luego desenchufe el cable, primero el extremo de la casa. Llame a la compañía eléctrica. Diga que su generador le dio voltaje a la línea y que ya está apagado.
finding-line-fed-instead = { $tied ->
    [one] Apague el interruptor del generador en el tablero antes de encender el principal.{" "}
   *[other] {""}
}No alimente un tablero con un generador sin un bloqueo mecánico o un interruptor de transferencia. Mientras no lo haya, use solo extensiones.
source-line-fed = NEC 702.5: equipo de transferencia ‹verificado en una copia›. NIOSH FACE 90-02: murió un trabajador porque un interruptor principal quedó encendido ‹verificado›.

finding-no-transfer-equipment-what = { $plugs ->
    [one] Durante { $lasted }, un cable de dos enchufes unió el generador al cableado de la casa. { $met ->
        [one] En lo peor, nada lo separaba de la calle.
       *[other] Solo unas palancas lo separaban de la calle.
    }
   *[other] { $joined ->
        [one] Su generador en marcha estuvo a una sola palanca del cableado de la casa. Durante { $lasted } estuvieron unidos.
       *[other] Su generador en marcha estuvo a una sola palanca del cableado de la casa durante { $lasted }.
    } { $interlock ->
        [0] No había un equipo de transferencia de por medio.
        [one] El bloqueo mecánico de por medio no ajusta.
       *[other] El bloqueo mecánico de por medio estaba desarmado.
    }
}{ $came ->
    [one] {" "}Ya estaba así cuando usted llegó.
   *[other] {""}
}
finding-no-transfer-equipment-why = { $plugs ->
    [one] Un cable así mata de dos maneras. Si lo saca de la pared, sus patas desnudas quedan a { $volts } en su mano. { $main-open ->
        [one] Y un movimiento en falso en el principal le da voltaje a la línea.
       *[other] Y el principal estuvo encendido por lo menos una parte de ese tiempo.
    }
   *[other] { $main-open ->
        [one] El interruptor principal estaba apagado, pero nada lo sujeta así. Solo unas palancas separaban { $volts } de la calle. Basta un movimiento en falso de cualquiera para que la línea tenga voltaje.
        [2] El interruptor principal estuvo apagado todo ese tiempo, pero nada lo sujeta así. { $later ->
            [one] En el minuto { $then } se encendió, con el generador todavía dando voltaje.
           *[other] Antes estaba encendido, con el generador ya dando voltaje.
        } Entonces solo la palanca del interruptor del generador separaba { $volts } de la calle.
       *[other] El interruptor principal estuvo encendido por lo menos una parte de ese tiempo. { $met ->
            [one] { $tied ->
                [one] Entonces nada separaba el generador de la red.
               *[other] Entonces nada separaba { $volts } de la calle.
            }
           *[other] Entonces, solo una palanca que cualquiera puede mover separaba { $volts } de la calle.
        }
    }
}
finding-no-transfer-equipment-now = { $stands ->
    [joined] La red también alimenta ese cable. No toque ningún cable y aleje a la gente. Detenga el motor y déjelo detenido. Llame a un electricista.
    [main-on] Apague el interruptor de salida del generador. Luego detenga el motor y déjelo detenido. Apague el interruptor principal y esto en el tablero: { $breaker }. Desenchufe primero el extremo de la casa y después el del generador.
   *[main-off] Apague el interruptor de salida del generador. Luego detenga el motor y déjelo detenido. Apague esto en el tablero: { $breaker }. Deje apagado el interruptor principal hasta quitar el cable. Desenchufe primero el extremo de la casa y después el del generador.
}
finding-no-transfer-equipment-instead = Lleve extensiones del generador a lo que importa. { $interlock ->
    [0] Pida a un electricista con licencia que instale un bloqueo mecánico o un interruptor de transferencia, con permiso.
    [one] Mire una corredera antes de confiar en ella. Mueva solo la corredera, con la mano: debe bloquear del todo una palanca. No empuje ningún interruptor para probarla. Esta no alcanza: no sujeta ninguna palanca. Pida a un electricista con licencia que la cambie, con permiso.
   *[other] La corredera está desarmada: no sujeta ninguna palanca. Pida a un electricista con licencia que la repare o la cambie, con permiso.
}
source-no-transfer-equipment = NEC 702.5: equipo de transferencia ‹verificado en una copia›. OSHA 3277 y consejo de la CPSC: nunca conectar sin equipo de transferencia ‹verificado›.

finding-collision-what = { $crew ->
    [one] La red y el generador de un cliente se encontraron fuera de sincronía, a { $angle } entre sí. El generador giraba con { $slip } de diferencia. Golpe de corriente por el generador: { $amps }.
   *[other] La red y su generador se encontraron fuera de sincronía, a { $angle } entre sí. El generador giraba con { $slip } de diferencia. Golpe de corriente por el generador: { $amps }.
}
finding-collision-why = Dos fuentes fuera de sincronía luchan entre sí. En el peor ángulo son { $worst }, { $times } veces lo que el generador soporta. El eje se tuerce con hasta { $torque } veces la fuerza para la que está hecho. Se pueden romper ejes, quemar devanados e incendiar cosas.
finding-collision-now = { $crew ->
    [one] Abra el reconectador y déjelo abierto. Cuente con que la línea tiene voltaje: el generador quizá la alimenta todavía. Mande a alguien a la casa. Que nadie se acerque al generador. Abra y etiquete también esto: { $cutout }.
   *[other] { $stands ->
        [joined] Apague el interruptor del generador en el tablero, si puede llegar a él sin peligro.
       *[apart] Apártese y no toque ningún cable. Apague el interruptor principal, si puede llegar a él sin peligro.
    } Aleje a todos del generador. Si humea, huele o golpea: llame a los bomberos. { $engine ->
        [runs] Solo un motor que anda tranquilo se detiene con su interruptor.
       *[still] El motor está detenido. No lo arranque otra vez.
    } Haga que un electricista revise el generador, el cable y el tablero antes de volver a usarlos.
}
finding-collision-instead = { $crew ->
    [one] Pida a los clientes que vuelvan a la red, espere su respuesta y cierre al final.
   *[other] { $by ->
        [main] Apague el interruptor del generador en el tablero antes de encender el principal. Un bloqueo mecánico no permite otro orden.
        [utility] La red vuelve sin avisar. Deje apagado el interruptor principal mientras el generador alimenta la casa. Un bloqueo mecánico lo asegura.
       *[set] Apague el interruptor principal antes de unir el generador a la casa. Un bloqueo mecánico no permite otro orden.
    }
}
source-collision = NEC 702.5: equipo de transferencia ‹verificado en una copia›. IEEE 1547, tabla 5: cierre en paso ‹verificado en una copia›. Corriente y par se calculan con las dos impedancias.

finding-sources-meet-what = { $met ->
    [one] Su generador y el del vecino se juntaron en una regleta, con { $angle } de diferencia. Entre ellos pasó un golpe de { $amps }. En total, la regleta estuvo enchufada a los dos durante { $lasted }.
   *[other] El generador del vecino dio corriente a los tomacorrientes del suyo durante { $lasted }. Llegaron a { $volts }.
}
finding-sources-meet-why = { $met ->
    [one] Dos fuentes que no van al mismo paso luchan entre sí. En el peor ángulo son { $worst }, { $times } veces lo que aguanta su generador. Pueden quemarse los devanados y la electrónica. Quien saque un enchufe tiene en la mano patas con corriente.
   *[other] Cuando arranque su motor, las dos luchan entre sí. Hasta entonces sus tomacorrientes tienen corriente con el motor parado. Quien saque un enchufe tiene en la mano patas con corriente.
}
finding-sources-meet-now = { $stands ->
    [runs] Pare su motor y pida al vecino que pare el suyo.
   *[still] Deje su motor parado y pida al vecino que pare el suyo.
} Saque la regleta primero del cable del vecino. Saque el otro enchufe al final.
finding-sources-meet-instead = Dé las gracias al vecino y diga que no a la regleta. Enchufe una sola cosa en su cable. Enchufe lo demás en el de usted. Nunca una dos fuentes.
source-sources-meet = NEC 702.5: un equipo mantiene separadas las fuentes ‹verificado en una copia›. Una fuente para cada cable: práctica común. La corriente se calcula con ambas impedancias.

finding-shock-what = { $crew ->
    [one] Una persona de su cuadrilla tenía la línea en la mano, y había voltaje en ella. Voltaje en el cuerpo: { $volts }. Corriente por el cuerpo: { $amps }.
   *[other] Una persona de la cuadrilla tenía la línea en la mano cuando su generador le dio voltaje. Voltaje en el cuerpo: { $volts }. Corriente por el cuerpo: { $amps }.
}
finding-shock-why = { $stated ->
    [shorter] Por corto que fuera, aun en { $seconds } es por lo menos { $times } veces lo que puede parar un corazón.
    [longer] Duró más de { $seconds }. En ese tiempo es por lo menos { $times } veces lo que puede parar un corazón.
   *[within] { $crew ->
        [one] Duró { $seconds }.
       *[other] Duró por lo menos { $seconds }. Un motor real quizá se detenga más tarde, y eso es peor.
    } Es por lo menos { $times } veces lo que puede parar un corazón en ese tiempo.
} Es decir: { $zone }.
finding-shock-now = { $crew ->
    [one] Aleje a todos de la persona, de la línea y del suelo de alrededor. { $stands ->
        [live] La línea todavía tiene voltaje.
       *[dead] La línea puede volver a tener voltaje.
    } Llame al número de emergencias y mande traer un desfibrilador. { $by ->
        [customer] Haga que el operador mantenga la línea abierta en su cabecera. Abra esto con una pértiga: { $cutout }.
       *[utility] Haga que el operador abra la línea en su cabecera.
    } Mida la línea y póngala a tierra. Luego empiece la reanimación (RCP).
   *[other] { $stands ->
        [live] Su generador todavía alimenta la línea. Apague el interruptor principal y luego detenga el motor.
        [main-on] Su generador ya no alimenta nada. Apague el interruptor principal y deje el motor detenido.
       *[main-off] Su generador ya no puede alimentar la línea. Deje apagados el interruptor principal y el motor.
    } No se acerque ni a la persona ni a la línea. Llame al número de emergencias. Diga que quizá hay un trabajador herido y que su generador alimentó la línea. Diga que ya está apagado.
}
finding-shock-instead = { $crew ->
    [one] Desconecte la línea con un corte que todos vean. Mídala con un detector ya probado y póngala a tierra en el lugar de trabajo. Entonces tóquela.
   *[other] Nunca deje que un generador alimente el cableado de la casa con el interruptor principal encendido. Sin bloqueo mecánico ni interruptor de transferencia, use solo extensiones.
}
source-shock = IEEE Std 80: 0.116 A dividido entre la raíz cuadrada de los segundos, para 50 kg ‹verificado en una copia›. IEC 60479-1:2018: resistencia del cuerpo ‹mediana verificada, rango de memoria›. Primeros auxilios después de cortar: práctica común.

finding-touch-what = La mano que lo tocaba sintió corriente: { $metal }. Entre la mano y los pies había { $volts }. Por el cuerpo pasaron { $body } durante { $seconds }.
finding-touch-why = { $cleared ->
    [one] Un dispositivo contra fallas a tierra la cortó. Es el { $limit } de lo que puede parar un corazón en { $stated }. Es decir: { $zone }. Sin el dispositivo habría seguido.
   *[other] Es el { $limit } de lo que puede parar un corazón en { $stated }{ $beside ->
        [longer] , el tiempo más largo que cubre la regla
       *[other] {""}
    }. Es decir: { $zone }. Con la piel más mojada, o con las dos manos, es más. { $cause ->
        [wet] El agua en la unión de los cables llevó el voltaje a su parte de afuera. La persona fue el camino a tierra.
        [leak] En una unión de cables mojada la corriente se fuga a tierra. Vuelve por la carcasa del generador y le da voltaje.
        [neutral] La carcasa está unida al neutro. La corriente de la carga sube un poco el neutro, y con él la carcasa.
       *[worn] Un aislamiento gastado pone el metal al voltaje del cable. Sin cable de tierra, la persona es el camino a tierra.
    }
}
finding-touch-now = { $stands ->
    [held] { $cause ->
        [worn] Corte primero la corriente desde otro lugar. No toque a la persona. Pida ayuda.
       *[other] Apague primero el interruptor de salida. No toque a la persona. Pida ayuda.
    }
    [over] Ya no tiene corriente. Quien la sintió debe ver hoy a un médico, aunque se sienta bien.
   *[let-go] { $cause ->
        [wet] No la toque otra vez. Apague el interruptor de salida del generador. Luego saque la unión del agua.
        [leak] Apague el interruptor de salida del generador. Luego saque del agua la unión mojada.
        [neutral] Apague las cargas antes de tocar otra vez la carcasa.
       *[worn] No lo toque otra vez. Corte su corriente desde otro lugar. Luego desenchúfelo y márquelo como roto.
    }
}
finding-touch-instead = { $cause ->
    [wet] Apague el interruptor de salida del generador antes de levantar un cable mojado. Luego mantenga seca su unión.
    [leak] Apague el interruptor de salida del generador. Luego saque del agua la unión mojada y manténgala seca.
    [neutral] No toque la carcasa mientras el generador lleva carga.
   *[worn] No use nada con cables gastados o sin la pata de tierra.
} Use protección contra fallas a tierra (GFCI) para todo lo que se usa con la mano, afuera o en lo mojado. ¿Alguien no puede soltarse? Corte primero la corriente y nunca agarre a la persona.
source-touch = IEC 60479-1:2018: cuerpo y zonas ‹verificado en parte›. IEEE Std 80: límite del corazón para 50 kg ‹verificado en una copia›. UL 943: lo que corta un dispositivo contra fallas a tierra ‹verificado en parte›.

finding-live-blades-what = { $inlet ->
    [one] { $still ->
        [one] Las patas desnudas de la entrada de corriente tienen voltaje desde el minuto { $since }, hasta { $volts }. Todavía lo tienen.
       *[other] Las patas desnudas de la entrada de corriente tuvieron { $volts } durante { $lasted }.
    }
   *[other] { $still ->
        [one] Las patas desnudas de un cable tienen voltaje desde el minuto { $since }, hasta { $volts }. Todavía lo tienen.
       *[other] Las patas desnudas de un cable tuvieron { $volts } durante { $lasted }.
    }
}{ $came ->
    [one] {" "}Ya estaba así cuando usted llegó.
   *[other] {""}
}
finding-live-blades-why = Las patas desnudas están hechas para no tener voltaje cuando nada las cubre. Quien las toca cierra el circuito.
finding-live-blades-now = { $stands ->
    [own] Aleje a todos de ahí. Detenga el motor y déjelo detenido.
    [both] Aleje a todos de ahí y no toque ningún cable. Llame a un electricista.
   *[utility] { $plugs ->
        [one] Aleje a todos de esas patas. Apague el interruptor del tomacorriente que lo alimenta. Mídalo antes de tocar el cable.
       *[other] Aleje a todos de esas patas. Apague el interruptor del generador en el tablero. Luego mida las patas con un probador de voltaje, sin tocarlas.
    }
}
finding-live-blades-instead = { $plugs ->
    [one] Nunca use un cable con enchufe en los dos extremos. Conecte un cable adecuado antes de que el generador dé voltaje.
   *[other] { $unguarded ->
        [one] Deje apagado el interruptor del generador. Nada seguro lo separa del principal. No conecte ningún generador a esta entrada hasta que un electricista lo arregle. Use extensiones.
       *[other] Deje apagado el interruptor del generador mientras la red alimente la casa. Conecte el cable antes de darle voltaje.
    }
}
source-live-blades = { $plugs ->
    [one] OSHA 3277: nunca enchufar un generador a un tomacorriente ‹verificado›.{" "}
   *[other] {""}
}29 CFR 1910.303(g)(2): resguardar las partes con 50 V o más ‹de memoria›.

finding-wet-panel-what = { $live ->
    [one] Una mano fue a un tablero que está en agua, con { $volts } adentro: { $control }.
   *[other] Una mano fue a un tablero que está en agua: { $control }. En ese momento no tenía corriente, { $volts }.
}
finding-wet-panel-why = El agua une las partes con corriente con la caja y con el piso. Quien esté en el agua y toque la palanca puede morir.
finding-wet-panel-now = Salga del cuarto por donde está seco. No deje entrar a nadie.
finding-wet-panel-instead = No toque un tablero mojado, ni siquiera en un apagón. Llame a la compañía eléctrica y deje que desconecte la casa.
source-wet-panel = Consejos de muchas compañías eléctricas para inundaciones ‹de memoria›. Partes de 50 V o más: 29 CFR 1910.303(g)(2) ‹de memoria›.

finding-indoors-what = { $gathered ->
    [hardly] Un motor funcionó bajo techo. Su gas no se ve ni se huele, y puede matar en minutos.
   *[some] El motor del generador funcionó bajo techo durante { $lasted }. El aire junto a él llegó a { $beside }, con { $oxygen } de oxígeno. La casa llegó a { $house }.
}
finding-indoors-why = { $over ->
    [one] El aire junto al motor pasó de { $dangerous }, un peligro inmediato para la vida.
   *[other] Desde { $dangerous } hay peligro inmediato para la vida. { $gathered ->
        [hardly] Un garaje puede llegar ahí en minutos.
       *[some] El aire junto al motor estaba todavía por debajo.
    } Menos también mata, solo que más despacio.
} Al bajar el oxígeno, el motor da hasta ocho veces la cantidad de gas. Una puerta abierta no cambia eso.
finding-indoors-now = Saque a todos al aire libre. Llame al número de emergencias desde afuera. Nadie entra hasta que los bomberos lo digan.
finding-indoors-instead = Úselo solo al aire libre, a por lo menos 6 metros (20 pies) de toda abertura. Apunte el escape lejos de la casa. Nunca en un garaje, un sótano o un porche, ni siquiera con las puertas abiertas.
source-indoors = CPSC: nunca bajo techo ni en un garaje, ni siquiera con puertas abiertas; a 20 pies, con el escape hacia el otro lado ‹verificado en una copia›. NIOSH: nivel de peligro inmediato ‹verificado en una copia›. NIST: gas de motores con poco oxígeno ‹verificado›. UL 2034: tiempos de alarma ‹verificado en una copia›. Absorción según la ecuación de Coburn, Forster y Kane ‹verificado›. Síntomas, y que un niño toma el gas más rápido: tablas publicadas ‹de memoria›. Que el gas siga a la carga es un supuesto.

finding-gas-what = { $heard ->
    [yes] Sonó la alarma de monóxido de carbono. En la casa había { $ppm }.
   *[no] No sonó ninguna alarma de monóxido de carbono, y debía sonar. En la casa había { $ppm }.
}
finding-gas-why = El gas no huele. Ya ocupaba el { $cohb } de la sangre de quienes estaban adentro. Ninguna cantidad es segura. Sube mientras usted siga ahí.
finding-gas-now = Saque a todos al aire libre. Llame desde afuera al número de emergencias. Nadie vuelve a entrar hasta que los bomberos lo digan.
finding-gas-instead = { $engine ->
    [neighbor] Pida a sus vecinos que pongan su motor a por lo menos 6 metros (20 pies) de toda abertura, suya y de ustedes. Tenga una alarma que funcione.
   *[own] Use el motor afuera, a por lo menos 6 metros (20 pies) de toda abertura, con las ventanas cercanas cerradas. Apunte el escape lejos de la casa.
}
source-gas = UL 2034: tiempos de alarma ‹verificado en una copia›. CPSC: afuera, a por lo menos 20 pies de la casa ‹verificado en una copia›. NIST: gas de los motores ‹verificado›; que siga a la carga, y la parte que entra, son supuestos. Absorción según la ecuación de Coburn, Forster y Kane ‹verificado›. Síntomas, y que un niño toma el gas más rápido: tablas publicadas ‹de memoria›.

finding-overcome-what = Las personas de la casa perdieron el conocimiento. El gas ocupaba el { $cohb } de su sangre.
finding-overcome-why = A esta altura, las personas ya no pueden salvarse solas.
finding-overcome-now = Llame de inmediato al número de emergencias. No entre: el gas también puede vencerlo a usted.
finding-overcome-instead = Nunca use un motor en un garaje, un sótano o un porche, ni siquiera con las puertas abiertas.
source-overcome = Absorción según la ecuación de Coburn, Forster y Kane ‹verificado›. ‹El nivel en que se pierde el conocimiento es de memoria.› NIST: gas de los motores ‹verificado›; que siga a la carga, y la parte que entra, son supuestos. UL 2034: tiempos de alarma ‹verificado en una copia›. Síntomas, y que un niño toma el gas más rápido: tablas publicadas ‹de memoria›.

finding-fuel-fire-what = El combustible se derramó sobre un silenciador a { $surface } y se prendió.
finding-fuel-fire-why = El silenciador sigue caliente mucho después de que el motor se detiene. Al vapor del combustible le basta un punto caliente.
finding-fuel-fire-now = Aléjese, no toque nada del generador y deje la lata. Si arde la ropa: deténgase, tírese al suelo y ruede. Saque a todos de la casa. Llame a los bomberos desde lejos. No eche agua al combustible que arde: extiende el fuego.
finding-fuel-fire-instead = Detenga el motor y déjelo enfriar por lo menos 15 minutos antes de agregar combustible.
source-fuel-fire = OSHA 3277: detener y enfriar antes de echar combustible ‹verificado›. Los 15 minutos y nada de agua sobre combustible que arde: práctica común. Punto de inflamación y menor temperatura de ignición: obra de referencia de bomberos ‹verificado›. El enfriamiento del silenciador es un supuesto.

finding-not-locked-out-what = { $done ->
    [0] La cubierta estuvo abierta { $lasted } en un generador que podía arrancar en cualquier momento. Nada lo impedía.
    [one] La cubierta estuvo abierta { $lasted } en un generador sin asegurar. Se dio un paso de tres.
   *[other] La cubierta estuvo abierta { $lasted } en un generador sin asegurar. Se dieron dos pasos de tres.
}
finding-not-locked-out-why = Un generador fijo arranca solo, cuando falta la red y para su marcha semanal. No avisa. Entonces se juntan manos, correas y cables con voltaje.
finding-not-locked-out-now = Saque las manos y cierre la cubierta.
finding-not-locked-out-instead = Apague el controlador. Apague el interruptor del generador, póngale candado y etiqueta. Guarde la llave. Desconecte la batería de arranque, deje enfriar el motor y después abra la cubierta. Una batería detrás de la cubierta se desconecta antes de tocar otra cosa. Los cables que vienen de la casa, para medir y cargar, siguen con voltaje adentro. Haga apagar y bloquear también su interruptor.
source-not-locked-out = NEC 445.18: un seccionador que se puede bloquear en abierto y un paro del motor ‹verificado en una copia›. Candado, etiqueta y llave: 29 CFR 1910.147 ‹de memoria›. La batería, el enfriamiento y los cables de la casa: práctica común.

finding-caught-by-engine-what = El motor de arranque hizo girar el motor del generador por sí solo, con manos adentro.
finding-caught-by-engine-why = { $asked ->
    [weekly] El controlador empezó su marcha semanal, como está puesto. No puede ver manos.
    [test] Prueba en el controlador quiere decir arrancar ya. No puede ver manos.
   *[street] El controlador vio que faltaba la red e hizo su trabajo. No puede ver manos.
}
finding-caught-by-engine-now = { $stands ->
    [turns] Todavía gira o puede girar otra vez. Pulse el paro o apague el controlador desde afuera. No meta las manos. Luego llame al número de emergencias.
   *[still] No meta las manos. Llame al número de emergencias.
}
finding-caught-by-engine-instead = Asegure el generador antes de meter una mano. Controlador apagado, interruptor apagado con su candado y su etiqueta, batería desconectada. Los cables que vienen de la casa siguen con voltaje adentro hasta que se apague su interruptor.
source-caught-by-engine = NEC 445.18: un seccionador que se puede bloquear en abierto y un paro del motor ‹verificado en una copia›. La batería: práctica común.

finding-live-lugs-what = La cubierta del interruptor de transferencia estuvo abierta { $lasted }. Detrás había bornes, puntas desnudas de cables, a { $volts }. Los alimentaba esto: { $side }.
finding-live-lugs-why = Nada en la casa puede cortar la corriente de los cables que vienen de la calle. Siguen con voltaje con el principal apagado y el generador asegurado. Basta un descuido de la mano o de una herramienta.
finding-live-lugs-now = No meta las manos. Empuje la cubierta desde afuera si cuelga de bisagras. Si va suelta, déjela, no deje que nadie se acerque y llame a un electricista.
finding-live-lugs-instead = Cuente con que los cables de la calle tienen voltaje hasta que la compañía los desconecte. Mientras tanto, deje la cubierta cerrada. Llame a la compañía o a un electricista.
source-live-lugs = 29 CFR 1910.333(a)(1): las partes con voltaje se dejan sin voltaje antes de trabajar. Desde 50 voltios: 1910.303(g)(2). ‹Ambos de memoria.›

finding-hand-transfer-live-what = Los contactos del interruptor de transferencia se movieron a mano junto a { $volts }, alimentados por esta fuente: { $side }.
finding-hand-transfer-live-why = Un controlador los mueve rápido y dentro de una caja. Una mano es lenta y está delante de la chispa. Los contactos pueden quemarse y el arco puede alcanzarle.
finding-hand-transfer-live-now = Retire la mano y no busque nada detrás de la cubierta. Empújela desde afuera si cuelga de bisagras.{ $carried ->
    [one] {" "}Deje apagado el controlador: estos contactos hicieron arco. Llame a un electricista.
   *[other] {""}
}
finding-hand-transfer-live-instead = Deje que el controlador mueva los contactos. Si hay que moverlos a mano, lo hace un electricista, con ambas fuentes cortadas y comprobadas sin voltaje.{ $carried ->
    [one] {" "}Estos hicieron arco. Un electricista debe revisarlos antes de volver a usarlos.
   *[other] {""}
}
source-hand-transfer-live = 29 CFR 1910.333(a)(1) y (b)(2): sin voltaje, bloqueado y probado antes de trabajar ‹de memoria›. Ambas fuentes sin voltaje antes de mover un contactor a mano: práctica común.

finding-plug-under-load-what = Esto se movió mientras el cable llevaba { $amps } a { $volts }: { $plug }.
finding-plug-under-load-why = Los enchufes no están hechos para cortar una carga. La corriente sigue por el aire como un arco. Puede quemar la mano y soldar las patas, y el extremo del cable queda con voltaje.
finding-plug-under-load-now = { $stands ->
    [utility] No toque más el enchufe: lo alimenta la red. Aleje a la gente y llame a un electricista.
    [both] No toque más el enchufe: también lo alimenta la red. Aleje a la gente y llame a un electricista.
   *[own] No toque más el enchufe. Apague el interruptor de salida del generador y luego detenga el motor.
}
finding-plug-under-load-instead = { $transfer ->
    [one] Quite primero del generador cada palanca del interruptor de transferencia. Luego apague el interruptor de salida del generador.
   *[other] Apague primero las cargas y luego el interruptor de salida del generador.
} Mueva enchufes solo con el cable sin voltaje.
source-plug-under-load = Práctica común, en muchos manuales de fabricantes: nunca conectar ni desconectar con carga. ‹El medio amperio que hace arco es de memoria.›

finding-live-plug-what = { $strip ->
    [one] Esto entró en un tomacorriente con { $volts }: { $plug }. Dio voltaje a las patas de su otro enchufe.
   *[other] Esto se movió mientras tenía { $volts }: { $plug }.
}
finding-live-plug-why = { $strip ->
    [one] Una regleta con dos enchufes pasa el voltaje a las patas del otro. Solo un tomacorriente las cubre. Quien saque ese enchufe tiene en la mano metal con voltaje.
   *[other] Un enchufe que se mueve con voltaje puede hacer arco y quemar sus patas. Puede dar un choque a la mano que lo sujeta.
}
finding-live-plug-now = { $stands ->
    [utility] Deje los enchufes como están: los alimenta la red. Aleje a la gente y llame a un electricista.
    [both] Deje los enchufes como están: también los alimenta la red. Aleje a la gente y llame a un electricista.
   *[own] Deje los enchufes como están. Apague el interruptor de salida del generador y luego detenga el motor.
}
finding-live-plug-instead = { $strip ->
    [one] Deje guardada la regleta con dos enchufes. Dé a cada cosa un cable con un solo enchufe, desde una sola fuente.
   *[other] Conecte los dos extremos de un cable adecuado antes de arrancar su propio motor. Desconéctelos después de detenerlo.
}
source-live-plug = Práctica común; está en muchos manuales de fabricantes.

finding-wrong-end-first-what = { $fault ->
    [one] Se sacó el extremo del generador mientras el de la casa seguía en la pared: { $cord }.
    [2] Se sacó el extremo de la casa con el interruptor de ese tomacorriente aún encendido: { $cord }.
   *[3] Se sacó el extremo de la casa con la salida del generador aún encendida: { $cord }.
}
finding-wrong-end-first-why = { $fault ->
    [one] Las patas desnudas cuelgan entonces de la casa. Tienen voltaje en cuanto el tomacorriente lo tiene.
    [2] Las patas están en su mano. Tienen voltaje en cuanto vuelve la luz.
   *[3] Las patas están en su mano. Tienen voltaje en cuanto gira el motor.
}
finding-wrong-end-first-now = No se acerque a las patas. Detenga el motor y apague el interruptor de ese tomacorriente.
finding-wrong-end-first-instead = Detenga el motor y apague su salida. Apague el interruptor del tomacorriente. Saque el extremo de la casa y luego el del generador.
source-wrong-end-first = Práctica común.

finding-nothing-bonds-what = Durante { $lasted } el generador alimentó la casa a { $volts }. Nada unía a tierra su neutro, el cable de regreso.
finding-nothing-bonds-why = Una fase gastada que toca una carcasa de metal no abre entonces ningún interruptor. En cambio, suben el neutro y la otra fase. Nadie lo nota hasta que alguien toca el neutro o se gasta un segundo cable. Si además se cortó su cable de tierra, la carcasa misma tiene voltaje.
finding-nothing-bonds-now = No toque carcasas de metal. Apague el interruptor de salida del generador y detenga el motor.{ $worn ->
    [one] {" "}Luego apague el interruptor de esto y desenchúfelo: { $machine }. No es seguro con ninguna fuente hasta que lo reparen.
   *[other] {""}
}
finding-nothing-bonds-instead = Lleve extensiones del generador a lo que más importa. Después, un electricista con licencia debe ajustar generador e interruptor de transferencia. Aquí el neutro del generador no está unido a su carcasa. Un generador así pide un interruptor que nunca corte el neutro.
source-nothing-bonds = Un camino que permite despejar una falla: NEC 250.4(A)(5), 250.30(A) y 702.11 ‹de memoria›.

finding-start-under-load-what = El motor del generador arrancó con una carga de { $watts }.
finding-start-under-load-why = Mientras toma velocidad, su voltaje es bajo y desigual. Los motores eléctricos conectados se quejan y se calientan. Los números son del primer instante, antes de que baje el voltaje.
finding-start-under-load-now = Apague el interruptor de salida del generador y deje que el motor se estabilice.
finding-start-under-load-instead = Arranque el motor con el interruptor de salida del generador apagado.
source-start-under-load = Práctica común. Consejo de compañías eléctricas: arrancar sin carga ‹verificado›.

finding-not-settled-what = El generador llevó hasta { $watts } antes de calentarse.
finding-not-settled-why = En los primeros { $settle }, el motor todavía busca su velocidad. El voltaje sube y baja con ella.
finding-not-settled-now = Quite la carga hasta que el motor ande parejo.
finding-not-settled-instead = Deje que el motor se estabilice antes de encender su interruptor de salida.
source-not-settled = Práctica común. Los generadores pequeños necesitan de 5 a 15 segundos o más ‹verificado en una copia›.

finding-all-at-once-what = { $motors } motores eléctricos arrancaron al mismo tiempo y tomaron { $amps } entre todos.
finding-all-at-once-why = Al arrancar, cada motor toma varias veces su corriente normal. Juntos pueden bajar tanto el voltaje que ninguno gire. { $well ->
    [one] Esta vez giraron todos. Con uno más, o uno más grande, quizá no.{" "}
   *[other] {""}
}El registro da a cada uno en su primer instante. Aquí todos se muestran en el mismo.
finding-all-at-once-now = Apague las cargas. Luego enciéndalas otra vez, una por una.
finding-all-at-once-instead = { $unguarded ->
    [one] No alimente este tablero hasta que haya un bloqueo mecánico o un interruptor de transferencia. Use extensiones y enchufe una cosa a la vez, el motor más grande primero.
   *[other] { $leaves ->
        [one] Primero apague todo, con su interruptor o su palanca. Deje esto apagado: { $leave }. Luego encienda el resto de uno en uno, primero su motor más grande.
       *[other] Primero apague todo, con su interruptor o su palanca. Luego encienda una cosa a la vez, el motor más grande primero.
    }
}
source-all-at-once = NEMA MG 1-10.37.2: letras de código de rotor bloqueado ‹verificado en una copia›. El orden es práctica común.

finding-no-cool-down-what = El motor del generador todavía llevaba carga { $rested } antes de detenerse.
finding-no-cool-down-why = Un motor caliente que se detiene de golpe se cuece en su propio calor. El aceite, los sellos y los devanados envejecen pronto así. Primero debe andar sin carga durante { $cool }.
finding-no-cool-down-now = No lo toque hasta que se enfríe. No le eche combustible todavía.
finding-no-cool-down-instead = Devuelva la casa a la red, o apague lo que funciona. Luego apague el interruptor de salida del generador. Deje andar el motor sin carga durante { $cool }. Luego deténgalo.
source-no-cool-down = Práctica común. Los equipos de respaldo fijos se enfrían de 1 a 10 minutos ‹verificado en parte›. El calor del silenciador es un supuesto.

finding-blind-return-what = Usted encendió el interruptor principal sin ninguna señal de que la red hubiera vuelto.
finding-blind-return-why = Con el interruptor principal apagado, la casa no ve la calle. Encenderlo a ciegas quizá solo traiga de vuelta la oscuridad.
finding-blind-return-now = Mire la calle, o llame a la compañía eléctrica.
finding-blind-return-instead = Busque luces en la calle, o pregunte a la compañía eléctrica, antes de volver a la red.
source-blind-return = Práctica común.

finding-sun-on-generator-what = El inversor solar confundió su generador con la red y se unió a él. El techo puede dar { $sun }.
finding-sun-on-generator-why = El inversor no distingue un generador estable de la red. Empuja lo que da el sol a los mismos cables. Cuando el sol da más de lo que la casa toma, el resto entra al generador.
finding-sun-on-generator-now = Apague el interruptor solar. Déjelo apagado mientras el generador alimente el tablero. No toque ningún cable que venga del techo: con luz de día sigue con voltaje.
finding-sun-on-generator-instead = Apague el interruptor solar antes de que cualquier generador alimente el mismo tablero. No toque ningún cable del techo: con luz de día sigue con voltaje. Encienda el interruptor de nuevo cuando la red alimente la casa.
source-sun-on-generator = IEEE 1547, tabla 4: el inversor se une a lo que quepa en su ventana durante 300 segundos ‹verificado en una copia›. Mantenerlo lejos de un generador, y los cables del techo con voltaje de día: práctica común.

finding-pushed-back-what = { $watts } del sol se empujaron de vuelta al generador.{ $broke ->
    [one] {" "}Eso lo dañó.
   *[other] {""}
}
finding-pushed-back-why = Un generador está hecho para dar electricidad, no para recibirla. Su motor se acelera, o su electrónica se daña para siempre.
finding-pushed-back-now = { $later ->
    [one] Antes de que funcione otra vez un generador, apague el interruptor solar.
   *[other] Apague el interruptor solar.
} Deje el motor detenido y haga revisar el generador antes de usarlo. No toque ningún cable que venga del techo: con luz de día sigue con voltaje.
finding-pushed-back-instead = Apague el interruptor solar antes de que el generador alimente el tablero: solo uno de los dos a la vez. Los cables del techo siguen con voltaje de día, aunque todo esté apagado.
source-pushed-back = Práctica común, también sobre los cables del techo de día; no se publica lo que soporta un generador doméstico.

finding-battery-overloaded-what = A la batería se le pidieron { $watts } y está hecha para { $rated }. Se apagó.
finding-battery-overloaded-why = Una batería da más de su capacidad solo unos segundos. Después se apaga de golpe todo lo que protege.
finding-battery-overloaded-now = Apague lo que más consume. Luego apague y encienda el interruptor de la batería.
finding-battery-overloaded-instead = Use los calentadores y el microondas de uno en uno, o espere a que vuelva la red.
source-battery-overloaded = Capacidades típicas ‹de memoria›. El tiempo se calcula a partir de la carga.

finding-battery-spent-what = La batería se vació.
finding-battery-spent-why = Todo lo que protegía se apagó de golpe.
finding-battery-spent-now = Apague lo que no haga falta. Cárguela con la red o con el sol.
finding-battery-spent-instead = Apague lo que puede esperar en cuanto la batería tome el mando.
source-battery-spent = Calculado a partir de su energía y de la carga.

finding-too-near-what = El motor del generador funcionó a { $feet } de una abertura de la casa.
finding-too-near-why = El gas del escape encuentra cómo entrar. Manténgalo a por lo menos { $rule }. Aun eso es una regla y no una pared.
finding-too-near-now = Detenga el motor, deje que se enfríe y aléjelo más.
finding-too-near-instead = { $far ->
    [one] Antes de arrancarlo, ponga el generador en este lugar: { $place }.
   *[other] Antes de arrancarlo, ponga el generador a { $rule } de toda abertura. Si no hay tal lugar, no lo use.
}
source-too-near = CPSC: afuera, a por lo menos 20 pies de la casa, con el escape hacia el otro lado ‹verificado en una copia›. NIST: gas de los motores ‹verificado›; que siga a la carga, y la parte que entra, son supuestos. UL 2034: tiempos de alarma ‹verificado en una copia›. Absorción según la ecuación de Coburn, Forster y Kane ‹verificado›. Síntomas, y que un niño toma el gas más rápido: tablas publicadas ‹de memoria›.

finding-overload-what = Se le pidió demasiado al generador: { $watts }. Aquí puede dar { $rated }.{ $times ->
    [one] {""}
   *[other] {" "}Ocurrió { $times } veces.
}
finding-overload-why = Bajan el voltaje y la velocidad, los motores eléctricos se recalientan, y el generador se apaga o su interruptor se dispara.
finding-overload-now = { $short ->
    [one] Apague el interruptor de salida del generador. No toque el cable.
   *[other] { $cause ->
        [street] Apague el interruptor de salida del generador. Luego apague el interruptor principal.
        [load] { $later ->
            [one] Antes de que el generador funcione otra vez, apague esto:{" "}
           *[other] Apague esto:{" "}
        }{ $leaves ->
            [one] { $leave }.
           *[other] { $most }.
        }
       *[none] Apague la carga más grande.
    }
}{ $stands ->
    [failed] {" "}El controlador se dio por vencido. Borre su falla como dice el manual, o el próximo apagón no tendrá respaldo.
   *[works] {""}
}
finding-overload-instead = { $short ->
    [one] Deseche un cable que estuvo caliente, blando o aplastado. Ningún generador puede alimentar un cortocircuito.
   *[other] { $cause ->
        [street] Aquí toda la calle dependía de él. No alimente más este tablero con él hasta que haya un bloqueo mecánico o un interruptor de transferencia. Use extensiones.
        [load] { $leaves ->
            [one] Deje esto apagado: { $leave }. Sume los vatios del resto y enciéndalo de uno en uno.
           *[other] Esto ya fue demasiado: { $most }. Déjelo apagado. Sume los vatios del resto y enciéndalo de uno en uno.
        }
       *[none] Sume los vatios de lo que quiere usar y enciéndalo de uno en uno.
    }
}
source-overload = La capacidad del generador. Guía de una empresa eléctrica pública: usar hasta el 90 % de esa capacidad ‹verificado en una copia›.

finding-too-small-for-motor-what = El generador no pudo hacer girar este motor: { $appliance }. Se intentó { $starts } veces, con apenas el { $torque } de su fuerza de giro.
finding-too-small-for-motor-why = Un motor que zumba y no gira se calienta rápido. Cada intento baja el voltaje de todo lo demás.
finding-too-small-for-motor-now = Apague ese motor y déjelo apagado.
finding-too-small-for-motor-instead = Después de un intento fallido, deje ese motor fuera del plan. Deje que se enfríe y hágalo revisar antes de usarlo otra vez. Necesita una fuente más grande o el consejo de un electricista.
source-too-small-for-motor = La fuerza de giro va con el cuadrado del voltaje: teoría del motor de inducción ‹de memoria›. Un intento como máximo: práctica común.

finding-shut-off-what = { $leg ->
    [one] Una línea del inversor tuvo que dar más de lo que puede, { $most }. Cortó su salida.
   *[other] Se pidió demasiado al inversor: { $watts }. Está hecho para { $rated }. Cortó su salida.
}
finding-shut-off-why = La electrónica mantiene la corriente en su límite. El voltaje baja, y pronto corta para protegerse.
finding-shut-off-now = Apague la carga más grande. Después pulse el rearme del inversor.
finding-shut-off-instead = Sume los vatios en marcha y el arranque más grande. Encienda las cargas una por una.
source-shut-off = La capacidad del generador. Límites de los inversores: datos de fabricantes ‹de memoria›.

finding-ran-dry-what = { $oil ->
    [one] El motor del generador se detuvo porque le faltaba aceite.
   *[other] El motor del generador se detuvo porque su tanque estaba vacío.
}
finding-ran-dry-why = Un generador que se detiene con carga la suelta toda de golpe. Un motor sin aceite se arruina pronto.
finding-ran-dry-now = Apague las cargas. Deje enfriar el motor antes de verter nada.
finding-ran-dry-instead = Mire el aceite en cada arranque, y el combustible cada hora.
source-ran-dry = Práctica común. Cargar combustible solo con el motor apagado y frío: una agencia estatal de emergencias ‹verificado en una copia›.

finding-tripped-what = Se disparó con { $amps }: { $breaker }. Está hecho para { $rated }.
finding-tripped-why = { $short ->
    [one] Los conductores de un cable se tocaron, y el interruptor lo cortó. Sin él, el cable seguiría quemándose.
   *[other] { $met ->
        [one] La red y el generador se encontraron, y esto terminó su lucha. Ninguna carga tuvo la culpa.
       *[other] Un interruptor que se dispara ha cumplido su trabajo. Algo pidió más de lo que puede dar el cable o el generador.
    }
}
finding-tripped-now = { $short ->
    [one] Deje apagado el interruptor. Desenchufe el cable cuando esté frío, y deséchelo.
   *[other] { $met ->
        [one] Déjelo apagado y deje el motor detenido. Llame a un electricista antes de volver a usar algo.
       *[other] Averigüe qué pidió tanto antes de encenderlo de nuevo.
    }
}
finding-tripped-instead = { $short ->
    [one] Use cables sanos, extendidos. Deseche uno que estuvo caliente, blando o aplastado.
   *[other] { $met ->
        [one] Nunca deje que las dos fuentes se encuentren. Un interruptor de transferencia o un bloqueo mecánico las separa.
       *[other] { $side ->
            [one] Sume los amperios de cada lado del tablero antes de encender otra cosa. Deje apagado lo que es demasiado para su lado.
           *[other] Sume los amperios detrás de ese interruptor antes de encender otra cosa. Deje apagado lo que sobra.
        }
    }
}
source-tripped = UL 489: corrientes que un interruptor aguanta y con las que se dispara ‹verificado en parte›.

finding-fuse-blown-what = Se fundió con { $amps }: { $fuse }. Está hecho para { $rated }.
finding-fuse-blown-why = Un fusible que se funde ha cumplido su trabajo, una sola vez. Lo que pidió tanto funde también el siguiente.
finding-fuse-blown-now = Averigüe qué pidió tanto. Luego ponga un fusible nuevo del mismo tamaño, nunca mayor.
finding-fuse-blown-instead = Encienda las cargas una por una. Un motor necesita un fusible de acción retardada.
source-fuse-blown = UL 248: corrientes que un fusible aguanta y con las que se abre ‹verificado en parte›. NEC 240.4: el cable decide el tamaño ‹verificado›.

finding-ground-fault-what = Una corriente de { $residual } salió de un cable activo y no volvió. Cortó la electricidad: { $device }.
finding-ground-fault-why = Un aislante gastado o un cuerpo le dio otro camino. El dispositivo necesita { $took }. La regla le da como máximo { $longest }. No ve un cuerpo entre el cable activo y el neutro.
finding-ground-fault-now = Desenchufe lo que cuelga de él. Actívelo de nuevo solo cuando la parte gastada esté fuera.
finding-ground-fault-instead = Mire los cables y enchufes antes de usarlos. Deje fuera lo que esté mojado, roto o gastado.
source-ground-fault = UL 943, clase A: aguanta debajo de 4 mA y se dispara desde 6 mA ‹verificado›. Tiempo máximo de una fuente del oficio; 25 ms es lo usual ‹verificado›.

finding-reset-into-fault-what = Usted lo activó de nuevo con la falla todavía presente: { $device }. Otra vez { $residual } tomaron otro camino.
finding-reset-into-fault-why = Cada intento vuelve a poner la carcasa con voltaje. Solo los { $took } que el dispositivo necesita separan una mano de una descarga.
finding-reset-into-fault-now = Déjelo abierto. Desenchufe lo que cuelga de él, una cosa tras otra, y busque la gastada.
finding-reset-into-fault-instead = Averigüe por qué se abrió antes de activarlo de nuevo. Si se abre dos veces, no lo active más.
source-reset-into-fault = OSHA: retirar cables y herramientas con defectos, 29 CFR 1926.416(e) y 1926.302(a) ‹de memoria›.

finding-two-bonds-what = Nada estaba roto, y aun así se abrió: { $device }. { $load ->
    [one] Vio que { $residual } tomaron otro camino.
   *[other] Envía una pequeña señal de prueba. La señal halló el neutro y la tierra unidos más allá.
}
finding-two-bonds-why = El neutro, el cable de regreso, está unido a tierra en el generador. En el tablero lo está otra vez. { $load ->
    [one] Así la corriente vuelve además por el cable de tierra. El dispositivo lo toma por una falla.
   *[other] Así la corriente volvería además por el cable de tierra. El dispositivo abre antes de que haya carga.
}
finding-two-bonds-now = Usted no hizo nada malo. No puentee el dispositivo y no corte ninguna unión a tierra. Use extensiones hasta lo más necesario.
finding-two-bonds-instead = No lo rearme: se abre cada vez hasta que se cambie el cableado. Lleve una extensión del generador a lo que más importa. Después pregunte a un electricista. Una solución es un interruptor de transferencia que cambie también el neutro. Otra es un generador cuyo neutro no esté unido a su carcasa, si el fabricante lo permite.
source-two-bonds = NEC 250.30 y 702.11: dónde se une el neutro ‹de memoria›. UL 943: un neutro a tierra debe abrir el dispositivo ‹de una fuente del oficio›.

finding-ground-carries-what = El cable de tierra llevó hasta { $amps } durante { $lasted }: { $cord }.
finding-ground-carries-why = El neutro y la tierra están unidos en el generador y en el tablero. Así la corriente de vuelta toma los dos cables. La carcasa del generador es entonces parte del circuito.
finding-ground-carries-now = No toque la carcasa mientras la prueba. Si tiene algunos voltios, pare el motor.
finding-ground-carries-instead = Pida a un electricista que deje una sola unión a tierra. O el interruptor de transferencia cambia también el neutro, o el neutro no está unido a la carcasa del generador.
source-ground-carries = NEC 250.6: nada de corriente molesta en los cables de tierra. NEC 250.34 y 702.11 sobre la unión a tierra ‹de memoria›.

finding-damaged-what = Se quemó por demasiado voltaje: { $appliance }. Llegaron { $volts } durante { $stood }.
finding-damaged-why = Su electrónica no aguanta más de { $most }. Según la curva publicada, { $volts } pueden durar { $allowed }. { $neutral ->
    [one] El neutro que viene a la casa está roto. Por eso el lado con poca carga recibe lo que le toca al otro.
   *[other] El lado con poca carga recibió lo que le toca al otro.
}
finding-damaged-now = { $stands ->
    [fed] Párese en piso seco, con zapatos secos. Apague el interruptor principal con una sola mano seca y solo por su palanca de plástico. No toque tubos ni carcasas de metal, tampoco la del tablero. Llame a la compañía.
   *[over] Desenchufe lo que se quemó o apague su interruptor. Déjelo así hasta que alguien lo revise.
} Si algo humea o huele: todos afuera, llame a los bomberos.
finding-damaged-instead = Si unas lámparas brillan de más y otras casi se apagan, apague enseguida el interruptor principal. Use una sola mano seca y solo su palanca de plástico. No toque otro metal.
source-damaged = Curva ITI (CBEMA), 2000 ‹verificado en una copia›. Cuánto dura un aparato por encima de ella es una suposición.

finding-starved-what = { $cause ->
    [halved] Hecho para { $rated }, pero conectado a { $volts } con un adaptador: { $appliance }.
    [cord] { $held ->
        [one] El calor de su cable no podía salir, y con calor un conductor se lleva más voltaje. Quedaron solo { $volts } de { $rated }: { $appliance }.
       *[other] { $long ->
            [one] Su cable es demasiado largo para un conductor tan delgado. Quedaron solo { $volts } de { $rated }: { $appliance }.
           *[other] Su cable le dejó muy poco voltaje, solo { $volts } de { $rated }: { $appliance }.
        }
    }
    [joined] Cables unidos uno tras otro le dejaron muy poco voltaje, solo { $volts } de { $rated }: { $appliance }.
    [neutral] El neutro que viene de la calle está roto. Este lado de la casa recibió solo { $volts }: { $appliance }.
    [adapter] Con un adaptador un solo conductor alimenta los dos lados. Quedaron solo { $volts }: { $appliance }.
   *[other] Muy poco voltaje, solo { $volts } de { $rated }: { $appliance }.
}
finding-starved-why = { $cause ->
    [halved] { $motor ->
        [one] Un adaptador cambia el enchufe, nunca los voltios. Con la mitad, un motor tiene el { $torque } de su fuerza de giro. Zumba y no gira. Sus devanados se calientan.
       *[other] Un adaptador cambia el enchufe, nunca los voltios. Con la mitad da el { $torque } de su potencia.
    }
   *[other] { $motor ->
        [one] { $turns ->
            [one] Con este voltaje un motor arranca con el { $torque } de su fuerza de giro. En marcha toma el { $running } de su corriente y se calienta.
           *[other] Con este voltaje un motor tiene el { $torque } de su fuerza de giro. Zumba y no gira, y sus devanados se calientan.
        }
       *[other] Lo que está hecho para el voltaje completo trabaja mal por debajo de nueve décimos.
    }
}
finding-starved-now = { $cause ->
    [halved] Apáguelo y desenchúfelo. Deje enfriar el motor.
    [cord] Apáguelo. Toque su cable: si está tibio, déjelo enfriar.
    [joined] Apáguelo y luego separe los cables. Toque cada uno: si está tibio, déjelo enfriar.
    [neutral] Párese en piso seco, con zapatos secos. Apague el interruptor principal con una sola mano seca y solo por su palanca de plástico. No toque tubos ni carcasas de metal, tampoco la del tablero. Llame a la compañía eléctrica.
    [adapter] Apáguelo hasta que el adaptador lleve menos carga.
    [start] Apague el motor que no arranca.
   *[other] Apáguelo hasta que el generador lleve menos carga.
}
finding-starved-instead = { $cause ->
    [halved] Hágalo revisar antes de usarlo otra vez. Luego dele un tomacorriente con todo su voltaje, o déjelo desenchufado.
    [cord] { $does ->
        [none] Ningún cable solo de este largo pierde tan poco. Acerque la carga, o use menos.
        [same] Extienda el cable, para que quede fresco. Un conductor caliente pierde más.
       *[other] { $has ->
            [one] Use otro cable, de calibre { $fit-gauge } AWG, extendido, que pierde menos: { $fit }.
           *[other] Use un cable más corto, o uno de calibre { $does } AWG, extendido. Pierde menos.
        } { $long ->
            [one] En el camino no debe perderse más del { $drop } del voltaje. Para eso, un cable de { $length } tiene que ser aquí de calibre { $does } AWG o más grueso. Extendido, este bastaría hasta unos { $would }.
           *[other] {""}
        }
    }
    [joined] { $does ->
        [none] Ningún cable solo de este largo pierde tan poco. Acerque la carga, o use menos.
       *[other] Use un solo cable de calibre { $does } AWG para todo el camino, extendido. Las uniones y los conductores delgados se llevan el voltaje.
    }
    [neutral] Si unas lámparas brillan de más y otras casi se apagan, apague el interruptor principal y llame a la compañía eléctrica. Usar menos no lo mejora.
    [adapter] No alimente ningún tablero con un adaptador así. Use extensiones, o haga reparar el tomacorriente grande del generador, que tiene un conductor para cada lado.
    [start] Arranque primero el motor más grande, solo. Deje fuera lo que el generador no puede arrancar.
   *[other] Use menos a la vez. Deje fuera lo que el generador no puede llevar.
}
source-starved = { $motor ->
    [one] NEMA MG 1-12.44: a no más de 10 % por encima o por debajo del voltaje nominal ‹verificado en parte›. El par sigue el cuadrado del voltaje ‹de memoria›.
   *[other] Nueve décimos del voltaje como mínimo: tomado de los motores, NEMA MG 1-12.44 ‹verificado en parte›. Los vatios siguen el cuadrado del voltaje: ley de Ohm.{ $cause ->
        [adapter] {" "}Tomacorrientes de 120 V de 30 A como máximo: NEMA L5-30 y TT-30 ‹de memoria›.
        [cord] {" "}Como máximo 5 % perdido en el camino: NEC 210.19 y 215.2, notas informativas ‹verificado›.
       *[other] {""}
    }
}

finding-cord-hot-what = Desde entonces: { $cord }, a más de los { $rated } para los que está hecho. Siguió así { $lasted }. Llegó a { $reached } en el minuto { $when }.
finding-cord-hot-why = { $basis ->
    [thin] Un conductor demasiado delgado para su carga se calienta, y el calor ablanda su aislamiento.
   *[other] El calor que no puede salir de un cable ablanda su aislamiento.
} Entonces los conductores pueden tocarse y causar un incendio.
finding-cord-hot-now = { $ruined ->
    [one] { $stands ->
        [live] Corte la corriente del cable y luego desenchúfelo. Déjelo donde está hasta que se enfríe.
        [dead] Ya no tiene corriente. Desenchúfelo y déjelo donde está hasta que se enfríe.
       *[away] Ya no tiene corriente. No lo toque ni lo enrolle hasta que se enfríe.
    } Busque quemaduras y humo donde estuvo. Su aislamiento se ablandó: deséchelo. Si algo humea: todos afuera, llame a los bomberos.
   *[other] Apague la carga y deje enfriar el cable. Si se siente blando, deséchelo.
}
finding-cord-hot-instead = { $ruined ->
    [one] Deseche este cable: el calor lo dañó.{" "}
   *[other] Revise este cable cuando esté frío. Si está blando o tieso, deséchelo.{" "}
}{ $basis ->
    [thin] { $has ->
        [one] Para esta carga use otro, de calibre { $fit-gauge } AWG, extendido y sin nada encima: { $fit }.
       *[other] { $does ->
            [none] Reparta la carga entre varios cables. Ningún cable de este largo la lleva solo.
           *[other] Extienda un cable de calibre { $does } AWG para esta carga, sin nada encima.
        }
    }
    [lay] { $does ->
        [none] Extienda el cable que use, sin nada encima. Aun así este largo pierde demasiado voltaje: use menos en su punta.
        [same] Extienda el cable que use, sin nada encima. Este calibre basta para esta carga.
       *[other] Extienda el cable que use, sin nada encima. Así su calor puede salir. { $has ->
            [one] Para esta carga use otro, de calibre { $fit-gauge } AWG: así también alcanza el voltaje. Es este: { $fit }.
           *[other] Para que a este largo también alcance el voltaje, use calibre { $does } AWG.
        }
    }
    [damage] Deje fuera un cable dañado. Use uno sano, extendido.
   *[other] Tenga el cable que use fuera del sol, extendido, sin nada encima.
}
source-cord-hot = NEC, tabla 400.5(A)(1): columna de dos conductores ‹verificada hasta 12 AWG, de memoria para cables más gruesos›. Cuánto calor guarda un rollo o lo que cubre un cable es un supuesto.

finding-cord-fire-what = Se prendió fuego lo que tocaba el cable: { $cord }. El cable estaba así: { $lies }. Temperatura: { $reached }.
finding-cord-fire-why = Un aislamiento carbonizado ya no separa los conductores. Se tocaron, y el arco prendió fuego a lo que tocaba el cable.
finding-cord-fire-now = Saque a todos de la casa. Llame al número de emergencias. No toque el cable.
finding-cord-fire-instead = Extienda los cables, sin nada encima. Toque cable y enchufe cada hora, y apague la carga si alguno está tibio.
source-cord-fire = Consejos de la CPSC: cables extendidos y nunca bajo alfombras ‹verificado en parte›. Las temperaturas de carbonización y de fuego son supuestos.

finding-wire-hot-what = { $cause ->
    [adapter] Alimentado con un adaptador, un cable dentro de la pared llegó a lo más que aguanta su aislamiento, { $limit }. Es el cable de esto: { $wire }.
   *[other] Un cable dentro de la pared llegó a lo más que aguanta su aislamiento, { $limit }. Es el cable de esto: { $wire }.
}
finding-wire-hot-why = { $cause ->
    [breaker] Un aislamiento caliente se derrite. Entonces el conductor desnudo puede incendiar la pared. { $guarded ->
        [one] Su interruptor es demasiado grande: uno de { $guard } no se abre con { $amps }. Para este cable, { $gauge } AWG, puede ser de { $breaker } como máximo.
       *[other] Es de calibre { $gauge } AWG. El interruptor más grande que puede protegerlo es de { $breaker }.
    }
   *[other] Es de calibre { $gauge } AWG y llevaba { $amps }. Ningún interruptor vigila un neutro. Cada uno ve solo su circuito y no se abre. El aislamiento caliente se derrite, y el conductor desnudo puede incendiar la pared.
}
finding-wire-hot-now = { $stands ->
    [own] Apague el interruptor de salida del generador y detenga el motor.
   *[circuit] { $cause ->
        [breaker] Apague ese interruptor y déjelo apagado.
       *[other] Apague los dos circuitos que comparten este cable, y déjelos apagados.
    }
} Luego toque la pared con el dorso de la mano, { $runs ->
    [inlet] desde la entrada de corriente hasta el tablero.
   *[circuit] desde el tablero hasta los tomacorrientes de ese cable.
} Si humea, huele o está caliente: todos afuera, llame a los bomberos.
finding-wire-hot-instead = { $cause ->
    [breaker] Deje apagado ese interruptor. Lleve una extensión del generador a lo que más importa. Pida a un electricista que revise el cable, que sufrió, y ponga el interruptor que soporta.
    [adapter] No alimente ningún tablero con un adaptador así: nadie puede ver qué circuitos comparten el neutro. Use extensiones, o haga reparar el tomacorriente grande del generador. Pida a un electricista que revise el neutro recalentado.
   *[other] Pida a un electricista que revise el neutro recalentado y pase uno de los dos circuitos al otro lado del tablero.
}
source-wire-hot = NEC 240.4(D): interruptores de cables delgados ‹verificado›. NEC 334.112: aislamiento de 90 °C ‹de memoria›.

finding-plug-hot-what = El enchufe llegó a { $reached }: { $cord }. A partir de { $limit } un enchufe empieza a chamuscarse.
finding-plug-hot-why = Contactos flojos o quemados convierten { $heat } en calor en un solo punto, con { $amps }.
finding-plug-hot-now = { $stands ->
    [live] Corte la corriente del enchufe y sáquelo solo cuando esté frío.
    [dead] Ya no tiene corriente. Saque el enchufe solo cuando esté frío.
   *[away] Ya no tiene corriente. No toque el enchufe hasta que esté frío.
} No use nunca más este cable. No use el tomacorriente donde estaba hasta que lo cambien: { $outlet }. Si algo humea: todos afuera, llame a los bomberos.
finding-plug-hot-instead = Deseche este cable y haga cambiar el tomacorriente quemado. Use un enchufe que entre firme en el tomacorriente.
source-plug-hot = UL 498: cuánto puede calentarse un enchufe sano ‹de memoria›. Cuánto peor es uno flojo es práctica común.

finding-cord-unfit-what = { $fault ->
    [indoor] Una parte estuvo en uso al aire libre durante { $lasted }: { $cord }. Sus letras son { $letters }, sin W.
    [no-ground] { $pin ->
        [one] Con la pata de tierra cortada, y en uso durante { $lasted } en total: { $cord }.
       *[other] Sin conductor de tierra, y en uso durante { $lasted } en total: { $cord }.
    }
    [wet] Con el conector en un charco, y en uso durante { $lasted }: { $cord }.
    [damaged] { $damage ->
        [strands] Deshilachado, y en uso durante { $lasted }: { $cord }.
       *[crushed] Aplastado, y en uso durante { $lasted }: { $cord }.
    }
   *[joined] Conectado a otro cable durante { $lasted }: { $cord }.
}
finding-cord-unfit-why = { $fault ->
    [indoor] Solo un cable con W está hecho para el sol y el suelo mojado.
    [no-ground] Una falla del aparato queda sin camino de regreso. Su metal puede quedar con voltaje sin que ningún interruptor lo corte.
    [wet] La corriente se fuga por el agua hacia el suelo. La mano que levanta el conector queda en su camino.
    [damaged] { $damage ->
        [strands] Los hilos rotos forman un punto caliente. Cada doblez rompe más, hasta que los últimos se ponen al rojo. Donde la cubierta está gastada, la mano que la toca recibe una descarga.
       *[crushed] Un aislamiento aplastado deja que los conductores se toquen al calentarse. Donde está abierto, la mano que lo toca recibe una descarga.
    }
   *[joined] Cada unión es un lugar más que puede calentarse. El cable más delgado decide por todos.
}
finding-cord-unfit-now = { $fault ->
    [wet] Apague el interruptor de salida del generador. Luego saque la unión del agua.
   *[other] Apague la carga y luego cambie el cable.
}
finding-cord-unfit-instead = { $fault ->
    [wet] Primero corte la corriente y luego saque la unión del agua. Mantenga secas las uniones de los cables.
    [damaged] Deseche un cable dañado. Use uno sano, con tres conductores y una W en la cubierta.
    [joined] Use un solo cable, lo bastante largo y grueso para todo el camino.
    [no-ground] Deseche un cable así. Use un solo cable sano, con tres conductores y una W en la cubierta, lo bastante largo y grueso para la carga.
   *[other] Use un solo cable sano, con tres conductores y una W en la cubierta, lo bastante largo y grueso para la carga.
}
source-cord-unfit = { $fault ->
    [indoor] NEC, tabla 400.4: letra W ‹verificada›.
    [joined] CPSC: un cable y no varios ‹de memoria›.
   *[other] OSHA 3277: cables sin daños y con tierra ‹verificado›. NEC, tabla 400.4: letra W ‹verificada›.
}

finding-goal-late-what = { $ended ->
    [2] El simulacro acabó antes del apagón. Así que no se vio si esto recibe electricidad en { $within }: { $appliance }.
    [one] Sin electricidad cuando acabó el simulacro: { $appliance }. La meta era { $within } después del apagón, así que aún había tiempo.{ $had ->
        [one] {" "}La tuvo antes, pero no duró.
       *[other] {""}
    }
   *[other] Sin electricidad a tiempo: { $appliance }. La meta era { $within } después del apagón.{ $had ->
        [one] {" "}La tuvo antes, pero no duró.
       *[other] {""}
    }
}
finding-goal-late-why = { $cause ->
    [off] El controlador estaba apagado, así que el generador no arrancó. Esta casa cuenta con él.
    [cover] El generador estaba abierto para su revisión cuando llegó el apagón. Esta casa cuenta con él.
   *[other] Con eso cuentan las personas de esta casa.
}
finding-goal-late-now = Siga, con seguridad.
finding-goal-late-instead = { $cause ->
    [cover] Termine la revisión con el generador asegurado. Luego cierre la cubierta y vuelva a poner el controlador en automático.
    [off] ¿No arranca en el primer minuto de un apagón? Mire el controlador desde afuera. ¿Hay un candado, una etiqueta, una cubierta abierta o una persona? Entonces déjelo apagado y pregunte a quien trabaja ahí. Si no hay nada de eso, apague lo que es demasiado para el generador. Apártese y póngalo en automático: el motor arranca enseguida. Después de cada revisión, vea que esté en automático.
    [shed] Apague lo que es demasiado para el generador antes de que tenga que funcionar otra vez. Si su controlador se rindió, borre la falla como dice el manual. Luego déjelo en automático.
    [standby] Haga revisar el generador fijo y deje su controlador en automático. Mírelo después de cada marcha semanal.
    [load] Encienda primero lo que más importa, de uno en uno. Deje apagado lo que es demasiado grande para el generador.
    [device] Lleve una extensión del generador a lo que más importa.
    [waits] El generador funcionaba. Enchufe o encienda primero lo que más importa, de uno en uno.
    [before-unguarded] Deje la casa segura y siga. Cuando llegue el apagón, lleve extensiones del generador a lo que más importa.
    [before] Deje la casa segura y siga. Cuando llegue el apagón, encienda primero lo que más importa.
   *[other] Prepárese antes de la tormenta: cables, combustible y una tarjeta con los pasos junto al tablero.
}
source-goal-late = La meta de este simulacro.

finding-lost-what = Demasiado tiempo sin electricidad: { $appliance }.
finding-lost-why = Lo que este aparato protege no espera a la electricidad. { $came }
finding-lost-now = Siga, con seguridad.
finding-lost-instead = Dé electricidad primero a lo que no puede esperar.
source-lost = La meta de este simulacro.

finding-not-restored-what = { $harm ->
    [fire] { $after ->
        [one] El trabajo siguió después de empezar el incendio.{ $called ->
            [one] {""}
           *[other] {" "}Nadie pidió ayuda.
        }
       *[other] { $called ->
            [one] El trabajo se detuvo con el incendio. Así debe ser. Por eso no se vio lo demás.
           *[other] El trabajo se detuvo con el incendio, pero nadie pidió ayuda. Por eso no se vio lo demás.
        }
    }
    [hurt] { $after ->
        [one] El trabajo siguió cuando alguien ya estaba herido.{ $called ->
            [one] {""}
           *[other] {" "}Nadie pidió ayuda.
        }
       *[other] { $called ->
            [one] El trabajo se detuvo cuando alguien resultó herido. Así debe ser. Por eso no se vio lo demás.
           *[other] El trabajo se detuvo cuando alguien resultó herido, pero nadie pidió ayuda. Por eso no se vio lo demás.
        }
    }
    [engine] { $after ->
        [one] El trabajo siguió cuando alguien ya estaba herido.{ $called ->
            [one] {""}
           *[other] {" "}Nadie pidió ayuda.
        }
       *[other] { $called ->
            [one] El trabajo se detuvo cuando alguien resultó herido. Así debe ser. Por eso no se vio lo demás.
           *[other] El trabajo se detuvo cuando alguien resultó herido, pero nadie pidió ayuda. Por eso no se vio lo demás.
        }
    }
    [gas] { $after ->
        [one] El trabajo siguió cuando ya había personas sin conocimiento.{ $called ->
            [one] {""}
           *[other] {" "}Nadie pidió ayuda.
        }
       *[other] { $called ->
            [one] El trabajo se detuvo cuando hubo personas sin conocimiento. Así debe ser. Por eso no se vio lo demás.
           *[other] El trabajo se detuvo cuando hubo personas sin conocimiento, pero nadie pidió ayuda. Por eso no se vio lo demás.
        }
    }
    [air] Después de la primera señal de gas nadie debía estar adentro. Por eso no se juzga qué se movió desde entonces. Pedir ayuda sí cuenta.
    [neutral] Sin terminar: la casa todavía depende del neutro roto de la calle. Hasta que lo reparen, el generador y sus cables se quedan donde están.
   *[none] { $welded ->
        [one] Marca { $stands }, pero sus contactos están soldados, y nadie avisó de ello: { $control }.
       *[other] { $first ->
            [one] Quedó sin hacer: { $control } ({ $stands }). Posición correcta: { $wanted }.
           *[other] Luego falta: { $control } ({ $stands }). Posición correcta: { $wanted }.
        }
    }
}
finding-not-restored-why = { $harm ->
    [none] Lo que queda a medias espera a la persona que sigue.
    [neutral] El neutro es el cable de regreso. Sin él, la electricidad de la calle no es segura.
   *[other] Ninguna palanca vale más que una persona.
}
finding-not-restored-now = { $harm ->
    [fire] No se acerque al fuego. Los bomberos dirán cuándo puede volver.
    [hurt] Primero la ayuda. Corte la corriente donde sea seguro y no mueva nada más.
    [engine] Primero la ayuda. Impida desde afuera que el motor gire y no mueva nada más.
    [gas] Primero la ayuda. Quédese fuera de la casa y no mueva nada en ella.
    [air] Todos salen y se quedan afuera hasta que los bomberos lo permitan. No mueva nada en la casa.
    [neutral] Deje el motor y sus cables como están hasta que la compañía repare los cables de la calle.
   *[none] { $crew ->
        [one] { $live ->
            [one] La línea tiene voltaje. Apártese y no toque nada. Haga que la desconecten del lado de la fuente, mida y póngala a tierra. Solo entonces siga.
           *[other] Termine mientras la línea está abierta, etiquetada y medida.
        }
       *[other] Termine en el orden que se muestra.
    }
}
finding-not-restored-instead = { $harm ->
    [fire] Ante un incendio, aléjese enseguida y llame a los bomberos desde lejos. Deje todo como está. Vuelva solo cuando los bomberos lo permitan.
    [hurt] Si la corriente hirió a alguien, haga a la vez dos cosas: pedir ayuda y cortar la fuente. Córtela desde un lugar seguro, y antes no toque a nadie. Luego deje lo demás como está.
    [engine] Si un motor hirió a alguien, deténgalo desde afuera. Pida ayuda. Luego deje lo demás como está.
    [gas] Si hay personas sin conocimiento, pida ayuda y no entre. Deje lo demás como está.
    [air] A la primera señal de gas, todos salen. Pida ayuda desde afuera y deje lo demás como está. Los bomberos detienen el motor.
    [neutral] Apague el interruptor principal. Use el generador, y guárdelo solo cuando la compañía haya reparado el neutro.
   *[none] { $welded ->
        [one] Avise de un aparato con contactos soldados. Déjelo separado con cortes visibles y con etiqueta.
       *[other] { $crew ->
            [one] Antes de cerrar una línea, recórrala toda: personas, puestas a tierra, etiquetas, cortes, cortacircuitos. Si ya tiene voltaje, primero haga que la desconecten y mida.
           *[other] { $loaded ->
                [engine] Apague su interruptor de salida y luego los de todas las cargas. Deje apagado lo que era demasiado. Luego arránquelo, y encienda su interruptor de salida cuando marche parejo. Encienda lo demás de uno en uno.
                [tripped] Apague primero todas las cargas, por interruptor o por palanca. Lleve el interruptor de salida del todo a apagado y luego a encendido. Encienda las cargas de una en una, y deje apagado lo que era demasiado.
               *[none] { $back ->
                    [standby] Revise todo el equipo: cubiertas, interruptores, transferencia, batería de arranque, controlador.
                    [back] Recorra todo el camino otra vez: el tablero y todo lo que se sacó para el apagón.
                   *[out] Recorra otra vez todo el trabajo: cables, motor, tablero, cargas.
                }
            }
        }
    }
}
source-not-restored = La meta de este simulacro.

finding-not-back-what = { $crew ->
    [one] Al final, los clientes no tienen electricidad de la red.
   *[other] { $early ->
        [one] El simulacro terminó antes de que volviera la red. Por eso no se vio el camino de vuelta.
       *[other] Al final, la casa no está en la red.
    }
}
finding-not-back-why = La vuelta es parte del trabajo. Ahí se equivoca la gente cansada.
finding-not-back-now = { $crew ->
    [one] Vea quién sigue en la línea. Luego cierre lo que queda abierto.
   *[other] { $lit ->
        [one] Detenga su generador: es él quien ilumina la calle. Luego pregunte a la compañía eléctrica si la red volvió.
       *[other] { $stands ->
            [automatic] La red está ahí. Termine lo que quedó sin hacer y deje que el controlador regrese a ella.
            [moved] Deje asegurado el generador. Llame a un electricista para que revise los contactos.
            [main] La red está ahí. Termine lo que quedó sin hacer, en el orden que se muestra.
            [there] La red está ahí. Termine lo que quedó sin hacer y regrese a ella.
           *[other] Busque una señal de que la red ha vuelto. Luego regrese a ella.
        }
    }
}
finding-not-back-instead = { $crew ->
    [one] Con todos lejos, sin puestas a tierra y con los clientes avisados, cierre cortes y cortacircuitos. El reconectador, al final.
   *[other] { $lit ->
        [one] Apague el interruptor principal y detenga su generador: él ilumina la calle. Quite su cable. Pregunte a la compañía eléctrica si la red volvió. Luego encienda el principal.
       *[other] { $stands ->
            [own] Espere a que la calle tenga luz. Primero quite la casa del generador. Luego devuélvala a la red.
            [automatic] La red está ahí. Termine lo que quedó sin hacer. El controlador le devuelve la casa por sí solo. No mueva contactos a mano.
            [moved] No mueva contactos a mano. Estos se movieron e hicieron arco. El generador queda asegurado hasta que un electricista los haya revisado.
            [main] La red está ahí. Termine lo que quedó sin hacer, en el orden que se muestra.
            [tripped] Apague primero todas las cargas, con su interruptor o su palanca. Lleve el interruptor de salida del todo a apagado y luego a encendido. Encienda las cargas de una en una, y deje apagado lo que era demasiado. Devuelva la casa cuando la calle tenga luz.
            [stalled] Apague el interruptor de salida y luego los de todas las cargas. Deje apagado lo que era demasiado. Arranque el motor, encienda el interruptor de salida y lo demás de uno en uno. Devuelva la casa cuando la calle tenga luz.
            [there] La red está ahí, y nada alimenta la casa. Termine lo que quedó sin hacer. Luego devuelva la casa a la red.
           *[dark] Espere a que la calle tenga luz. Luego devuelva la casa a la red.
        }
    }
}
source-not-back = La meta de este simulacro.

name-zone-ac-1 = apenas se siente
name-zone-ac-2 = se siente, sin daño duradero
name-zone-ac-3 = la mano quizá no pueda soltarse
name-zone-ac-4-1 = el corazón puede pararse, hasta en 5 de 100 personas
name-zone-ac-4-2 = el corazón puede pararse, hasta en la mitad de las personas
name-zone-ac-4-3 = el corazón puede pararse, en más de la mitad de las personas
finding-said-dead-what = Usted dijo que no tenía voltaje: { $subject }. Sí lo tenía.
finding-said-dead-why = Quien confía en esa palabra pone la mano encima.
finding-said-dead-now = Retire lo dicho. Avise a todos que no se acerquen.
finding-said-dead-instead = { $where ->
    [line] Diga que no hay voltaje solo después de medir con un probador hecho para ese voltaje. Pruébelo en algo con voltaje, antes y después.
    [street] Estos cables tienen voltaje hasta que la compañía los desconecte. No abra nada para medirlos: eso es trabajo de un electricista.
   *[house] Diga que no hay voltaje solo después de medir desde afuera, con un probador hecho para ese voltaje. Pruébelo en algo con voltaje, antes y después. Para eso no abra ningún tablero ni máquina.
}
source-said-dead = Lo que no se midió sin voltaje se toma por algo que lo tiene: { $line ->
    [one] 29 CFR 1926.961 ‹verificado en un resumen›.
   *[other] 29 CFR 1910.333(b)(2) ‹de memoria›.
}
finding-said-fit-what = Usted confió en esto: { $subject }. No bloquea.
finding-said-fit-why = Entonces solo una mano separa el generador de la línea. Un descuido y la línea tiene voltaje.
finding-said-fit-now = Retire lo dicho. Deje apagado el interruptor del generador.
finding-said-fit-instead = Mire la corredera. Debe ser para este tablero, tener todos sus tornillos y bloquear el principal.
source-said-fit = El equipo se usa como fue listado: NEC 110.3(B) ‹de memoria›.
finding-said-wrong-what = { $asked } Usted dijo: { $said }. Era: { $truth }.
finding-said-wrong-why = Una idea equivocada de la casa lleva después a un paso equivocado.
finding-said-wrong-now = Mire o mida otra vez. La respuesta correcta era: { $truth }.
finding-said-wrong-instead = Antes de decirlo, mire y mida desde afuera. Para eso no abra ningún tablero ni máquina: lea la placa o pregunte a un electricista.
source-said-wrong = Práctica común.
finding-unanswered-what = El simulacro le preguntó esto, y usted no respondió. { $asked }
finding-unanswered-why = Lo que no se dice, el siguiente no lo sabe.
finding-unanswered-now = Abra las respuestas y diga lo que encontró.
finding-unanswered-instead = { $tested ->
    [one] Usted lo midió. Diga lo que encontró.
   *[other] { $crew ->
        [one] Mire y mida hasta que pueda decirlo.
       *[other] Mire, y mida desde afuera, hasta que pueda decirlo. Para eso no abra ningún tablero ni máquina.
    }
}
source-unanswered = Práctica común.
finding-wrong-volts-what = { $neutral ->
    [one] El neutro que viene a la casa se soltó en el minuto { $broke }. Con la red, un lado tuvo demasiado voltaje durante { $lasted }, hasta { $volts }.
   *[other] Un lado de la casa tuvo demasiado voltaje durante { $lasted }, { $volts } como máximo.
}
finding-wrong-volts-why = Las lámparas y los aparatos de ese lado son para 120 V. Con este voltaje la electrónica se quema en segundos o minutos, y los motores se recalientan. Lo que se quema puede causar un incendio.{ $neutral ->
    [one] {" "}Lo que volvía por el neutro va ahora por cables de tierra y tubos. Pueden tener voltaje.
   *[other] {""}
}{ $stalled ->
    [0] {""}
    [one] {" "}En el lado bajo un motor zumba y no gira. Con poca corriente se calienta despacio: su propio protector se abriría después de { $opens }.
   *[other] {" "}En el lado bajo { $stalled } motores zumban y no giran. Con poca corriente se calientan despacio: el primer protector se abriría después de { $opens }.
}
finding-wrong-volts-now = Párese en piso seco, con zapatos secos. Apague el interruptor principal con una sola mano seca y solo por su palanca de plástico. No toque tubos ni carcasas de metal, tampoco la del tablero. Donde no se pueda, aléjese. Llame a la compañía eléctrica. Si algo humea o huele: todos afuera, llame a los bomberos.
finding-wrong-volts-instead = Cuando unas lámparas brillan mucho y otras casi nada, apague enseguida el interruptor principal. Use una sola mano seca y solo su palanca de plástico. No toque otro metal. Llame a la compañía y déjelo apagado hasta que reparen los cables. Luego enciéndalo con todo lo demás apagado, y mire primero una sola lámpara.
source-wrong-volts = Curva ITI (CBEMA), 2000: 110 % sin límite de tiempo ‹verificada en una copia›. Un minuto para actuar, y manos lejos de tubos y carcasas: práctica común.

finding-gas-next-door-what = Sonó la alarma de monóxido de carbono en la casa de al lado. Allí había { $ppm }.
finding-gas-next-door-why = El motor del generador funcionó a { $feet } de una abertura de ellos. El gas va adonde lo lleva el aire, y una pared en común no lo detiene en la ventana.
finding-gas-next-door-now = Apague el motor. Toque a su puerta y sáquelos. Llame al número de emergencias.
finding-gas-next-door-instead = Cuente la distancia hasta cada abertura, la suya y la de los vecinos. Guarde al menos 20 pies (6 metros).
source-gas-next-door = CPSC: afuera, al menos a 20 pies de la casa ‹verificado en una copia›. UL 2034: tiempos de alarma ‹verificado en una copia›.

finding-no-alarm-what = El motor del generador funcionó { $lasted } y la alarma de monóxido de carbono no podía sonar: { $stands }.
finding-no-alarm-why = El gas no huele. Esta vez el aire no pasó de { $ppm }. Con 150 ppm una alarma suena a los { $would } minutos, mucho antes de que duela la cabeza.
finding-no-alarm-now = { $engine ->
    [runs] Apague el motor.{" "}
   *[still] {""}
}Ponga una pila nueva en la alarma y oprima su botón de prueba.
finding-no-alarm-instead = Ponga una pila nueva en la alarma y oprima su botón de prueba antes de encender el motor. Nunca quite la pila para callarla.
source-no-alarm = CPSC y NFPA: alarmas en cada piso y junto a los dormitorios ‹verificado›. UL 2034: tiempos de alarma ‹verificado en una copia›. NIST: gas de los motores ‹verificado›; que siga a la carga, y la parte que entra, son supuestos. Absorción según la ecuación de Coburn, Forster y Kane ‹verificado›. Síntomas, y que un niño toma el gas más rápido: tablas publicadas ‹de memoria›.

finding-stayed-in-what = { $how ->
    [back] Alguien volvió a entrar en la casa. En ella había { $ppm }.
   *[late] Alguien seguía en la casa tres minutos después de la primera señal. En ella había { $ppm }.
}
finding-stayed-in-why = El gas ya ocupaba hasta el { $cohb } de la sangre de quienes estaban adentro. Ninguna cantidad es segura. Sube mientras usted siga ahí. Quien duerme no se despierta.
finding-stayed-in-now = Saque a todos y cuéntelos. Llame al número de emergencias. Nadie vuelve a entrar.
finding-stayed-in-instead = Con una alarma o un dolor de cabeza, despierte a todos y salgan enseguida. Pida ayuda desde afuera. Nadie vuelve a entrar, ni siquiera por el motor. Deje que los bomberos lo detengan y busquen a quien falte.
source-stayed-in = Agencias de salud estatales: todos afuera, llamar, nadie vuelve ‹verificado›. Absorción según la ecuación de Coburn, Forster y Kane ‹verificado›. NIST: gas de los motores ‹verificado›; que siga a la carga, y la parte que entra, son supuestos. UL 2034: tiempos de alarma ‹verificado en una copia›. Síntomas, y que un niño toma el gas más rápido: tablas publicadas ‹de memoria›.

finding-fuel-indoors-what = Una lata de gasolina estuvo dentro de la casa { $lasted }.
finding-fuel-indoors-why = { $lights ->
    [flame] Una taza derramada da { $times } veces el vapor que hace falta para que arda el aire junto al piso. En ese cuarto arde una llama.
   *[spark] Una taza derramada da { $times } veces el vapor que hace falta para que arda el aire junto al piso. Cualquier chispa lo enciende.
}
finding-fuel-indoors-now = ¿Huele a combustible? Entonces no toque nada, saque a todos y llame desde afuera a los bomberos. ¿No huele? Entonces lleve la lata afuera, lejos de toda llama.
finding-fuel-indoors-instead = Guarde el combustible afuera, en su lata, en un cobertizo lejos de la casa.
source-fuel-indoors = OSHA 3277: nunca guardar combustible adentro ‹verificado›. Límites de combustión: referencia de bomberos ‹verificado›. La taza, y que toda se seque abajo en ese cuarto, son supuestos.

finding-not-called-what = Nadie llamó al número de emergencias en los diez minutos tras la primera señal de gas.
finding-not-called-why = Quien tiene gas en la sangre necesita oxígeno. Los bomberos pueden medir el aire y entrar con seguridad.
finding-not-called-now = Llame ahora al número de emergencias. Diga que hay monóxido de carbono.
finding-not-called-instead = Primero salga. Después llame desde afuera.
source-not-called = Agencias de salud estatales: salir y luego llamar ‹verificado›. Los diez minutos son práctica común.
