# Qué significan las palabras del oficio. El primer mensaje tiene todas las formas, separadas por comas; la primera es el nombre.

terminal-no-term = No hay tal palabra en el glosario: { $name }.
terminal-terms = Las palabras: { $names }.
terminal-terms-here = Palabras del oficio que aparecen aquí, y qué quieren decir:
terminal-term = { $name }: { $meaning } ({ $source })

glossary-neutral = neutro, neutros
glossary-neutral-meaning = El cable que devuelve la corriente a su fuente. Debe estar cerca de 0 V.
glossary-neutral-source = NEC, artículo 100 ‹de memoria›.

glossary-ground = cable de tierra, pata de tierra, tierra
glossary-ground-meaning = El suelo, y el cable que une a él las cajas de metal. Solo lleva corriente cuando algo falla.
glossary-ground-source = NEC, artículo 100 ‹de memoria›.

glossary-grounds = puestas a tierra, tierras
glossary-grounds-meaning = Pinzas y un cable grueso que la cuadrilla pone en la línea. Mantienen la línea al mismo voltaje que el poste.
glossary-grounds-source = 29 CFR 1910.269(n) ‹de memoria›.

glossary-hot = cable vivo, vivos, vivo
glossary-hot-meaning = Un cable que tiene todo el voltaje respecto a tierra. Una casa tiene dos.
glossary-hot-source = Práctica común.

glossary-leg = fase, fases
glossary-leg-meaning = Una de las dos mitades de la casa, cada una a 120 V del neutro. Las dos juntas dan 240 V.
glossary-leg-source = Práctica común.

glossary-backfeed = retroalimentación, retroalimentar
glossary-backfeed-meaning = Electricidad que va al revés, de una casa hacia la calle. Puede matar a quien trabaja en la línea.
glossary-backfeed-source = Práctica común.

glossary-interlock = bloqueo mecánico
glossary-interlock-meaning = Una pieza de metal que deja encender solo uno de dos interruptores. Así la casa recibe una fuente o la otra, nunca las dos.
glossary-interlock-source = NEC 702.5 ‹verificado en una copia›.

glossary-slide = corredera, correderas
glossary-slide-meaning = La parte de metal del bloqueo que se mueve. Bloquea una palanca mientras la otra está encendida.
glossary-slide-source = Práctica común.

glossary-transfer-switch = interruptor de transferencia, interruptores de transferencia, equipo de transferencia
glossary-transfer-switch-meaning = Un interruptor que pasa una carga de una fuente a otra. No puede unir las dos.
glossary-transfer-switch-source = NEC, artículo 100 ‹de memoria›.

glossary-inlet = entrada de corriente, entradas de corriente
glossary-inlet-meaning = Un enchufe con patas, fijo en la pared de afuera. En él va el cable del generador.
glossary-inlet-source = Práctica común.

glossary-gfci = dispositivo contra fallas a tierra, dispositivos contra fallas a tierra, protección contra fallas a tierra, GFCI
glossary-gfci-meaning = Se llama también GFCI. Corta cuando parte de la corriente no vuelve. Salva a quien toca un metal con voltaje.
glossary-gfci-source = UL 943, clase A ‹verificado en parte›.

glossary-bond = unión a tierra, uniones a tierra, unido a tierra, unida a tierra
glossary-bond-meaning = El lugar donde se unen el neutro y la tierra. Debe haber solo uno por fuente.
glossary-bond-source = NEC 250.24 y 250.30 ‹de memoria›.

glossary-inrush = corriente de arranque
glossary-inrush-meaning = La gran corriente que un motor toma por un momento al arrancar. Puede ser seis veces la que usa después.
glossary-inrush-source = NEMA MG 1 ‹de memoria›.

glossary-main-breaker = interruptor principal
glossary-main-breaker-meaning = El interruptor grande entre la casa y la calle. Apagado, separa la casa de la línea. Los cables antes de él siguen vivos.
glossary-main-breaker-source = Práctica común.

glossary-output-breaker = interruptor de salida
glossary-output-breaker-meaning = El interruptor del generador mismo. Apagado, no sale electricidad de él.
glossary-output-breaker-source = Práctica común.

glossary-breaker = interruptor, interruptores
glossary-breaker-meaning = Un aparato que se apaga solo cuando pasa demasiada corriente. Protege el cable que sigue.
glossary-breaker-source = UL 489 ‹verificado en parte›.

glossary-fuse = fusible de retardo, fusible, fusibles
glossary-fuse-meaning = Una tira de metal que se funde cuando pasa demasiada corriente. Sirve una vez y luego se cambia.
glossary-fuse-source = UL 248 ‹verificado en parte›.

glossary-panel = tablero, tableros
glossary-panel-meaning = La caja de metal con los interruptores de la casa.
glossary-panel-source = Práctica común.

glossary-service-drop = acometida
glossary-service-drop-meaning = Los cables del poste a la casa.
glossary-service-drop-source = NEC, artículo 100 ‹de memoria›.

glossary-utility = compañía, red
glossary-utility-meaning = La empresa que lleva la electricidad a la calle.
glossary-utility-source = Práctica común.

glossary-recloser = reconectador
glossary-recloser-meaning = Un interruptor en un poste que abre cuando hay una falla y puede cerrar solo.
glossary-recloser-source = Práctica común.

glossary-cutout = cortacircuitos, cortacircuito
glossary-cutout-meaning = Un fusible en un poste que se abre con una pértiga.
glossary-cutout-source = Práctica común.

glossary-pole-transformer = transformador del poste, transformador
glossary-pole-transformer-meaning = El tanque del poste que convierte el voltaje de la línea en el de una casa. Funciona en las dos direcciones.
glossary-pole-transformer-source = Práctica común.

glossary-standby = generador fijo, planta de emergencia
glossary-standby-meaning = Un generador instalado que arranca solo cuando falla la electricidad.
glossary-standby-source = Práctica común.

glossary-inverter = inversor
glossary-inverter-meaning = Electrónica que hace corriente de casa con una batería, el sol o un motor.
glossary-inverter-source = Práctica común.

glossary-volt = voltios, voltaje
glossary-volt-meaning = Con cuánta fuerza empuja la electricidad. Su signo es V. Una casa tiene 120 V y 240 V. Desde unos 50 V puede hacerle daño. En lo mojado basta menos.
glossary-volt-source = 29 CFR 1910.303(g)(2) ‹de memoria›.

glossary-amp = amperios, amperio
glossary-amp-meaning = Cuánta corriente pasa. Su signo es A. Un cable se calienta cuando pasa demasiada.
glossary-amp-source = Práctica común.

glossary-watt = vatios, potencia
glossary-watt-meaning = Cuánta potencia toma un aparato. Su signo es W. Son más o menos voltios por amperios.
glossary-watt-source = Práctica común.

glossary-ohm = ohmios, ohmio, ohm
glossary-ohm-meaning = Cuánto frena la corriente un cable o un cuerpo. Su signo es Ω.
glossary-ohm-source = Práctica común.

glossary-hertz = frecuencia, hercios
glossary-hertz-meaning = Cuántas veces por segundo va y viene la corriente. Su signo es Hz. Aquí debe ser de unos 60.
glossary-hertz-source = Práctica común.

glossary-awg = AWG, calibre
glossary-awg-meaning = Qué tan grueso es un cable. Un número pequeño es un cable grueso.
glossary-awg-source = American Wire Gauge, ASTM B258 ‹de memoria›.

glossary-insulation = aislamiento
glossary-insulation-meaning = La funda de un cable que separa el metal de las manos y de otros cables.
glossary-insulation-source = Práctica común.

glossary-lug = borne, bornes
glossary-lug-meaning = Una pinza de metal desnudo donde termina un cable grueso.
glossary-lug-source = Práctica común.

glossary-lockout = bloqueado, bloqueo
glossary-lockout-meaning = Apagado con candado, para que nadie lo encienda mientras usted trabaja.
glossary-lockout-source = 29 CFR 1910.147 ‹de memoria›.

glossary-tag = etiqueta, etiquetas
glossary-tag-meaning = Una tarjeta en un interruptor que dice: no lo mueva.
glossary-tag-source = 29 CFR 1910.269(m) ‹de memoria›.

glossary-jumper = puente, puentes
glossary-jumper-meaning = Un cable que rodea un interruptor abierto. Con él puesto, el interruptor no corta nada.
glossary-jumper-source = Práctica común.

glossary-short-circuit = cortocircuito
glossary-short-circuit-meaning = Un camino casi sin ohmios, así que pasa una corriente enorme.
glossary-short-circuit-source = Práctica común.

glossary-arc = arco, arcos
glossary-arc-meaning = Corriente que salta por el aire como una chispa muy caliente.
glossary-arc-source = Práctica común.

glossary-frame = carcasa, carcasas
glossary-frame-meaning = La caja de metal de una máquina. Su mano está en ella cuando la usa.
glossary-frame-source = Práctica común.

glossary-load = carga, cargas
glossary-load-meaning = Lo que toma electricidad, y cuánta toma.
glossary-load-source = NEC, artículo 100 ‹de memoria›.

glossary-live = con voltaje
glossary-live-meaning = Que tiene voltios. Le puede dar una descarga.
glossary-live-source = NEC, artículo 100 ‹de memoria›.

glossary-proving-source = fuente de prueba
glossary-proving-source-meaning = Una caja pequeña con voltaje conocido, para ver si el detector funciona.
glossary-proving-source-source = NFPA 70E, probar antes y después ‹verificado›.

glossary-out-of-step = fuera de sincronía, fuera de sincronismo
glossary-out-of-step-meaning = Dos fuentes cuyas ondas no coinciden. Si se unen, luchan. El oficio dice también: fuera de sincronismo.
glossary-out-of-step-source = Práctica común.

glossary-torque = par de giro, par
glossary-torque-meaning = La fuerza con que gira un motor o un eje.
glossary-torque-source = Práctica común.

glossary-ppm = ppm, partes por millón
glossary-ppm-meaning = Cuánto gas hay en el aire: partes en un millón. Desde 70, las alarmas deben sonar a tiempo.
glossary-ppm-source = UL 2034 ‹verificado en una copia›.
