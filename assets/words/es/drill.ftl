# El simulacro: registro, lo que sucedió, lo que se supo.

log-set = { $control }: { $position }.
log-slid = { $deed } { $slide }
log-look = Usted mira: { $place }.
log-test = Usted mide: { $point }.
log-call = Usted llama: { $who }.
log-tell = Usted avisa: { $who }.
log-refuel = Usted llena el tanque del generador.
log-wait = Usted espera { $time }.
log-happen-sooner = Quien enseña hace que lo siguiente pase ya.
log-happen-utility-fails = Quien enseña hace fallar la red.
log-happen-utility-returns = Quien enseña hace volver la red.
log-happen-neutral-lost = Quien enseña suelta el neutro de la acometida.
log-happen-leg-lost = Quien enseña suelta un cable vivo de la acometida.
log-happen-drop-mended = Quien enseña hace reparar la acometida.
log-happen-tank-dry = Quien enseña vacía el tanque.
log-refused = { $deed } No se puede. { $why }
# Ya estaba así.
log-refused-already = { $deed } { $why }

learnt-street-lit = Hay luces encendidas en la calle.
learnt-street-dark = Toda la calle está a oscuras.
learnt-live = { $point }: con voltaje, { $volts }.
learnt-dead = { $point }: sin voltaje. Usted probó el medidor antes y después.
learnt-crew-at-work = La compañía eléctrica dice: una cuadrilla está trabajando en su línea.
learnt-in-service = La compañía eléctrica dice: su línea está en servicio.
learnt-drop-loose = La compañía dice: se soltó un cable de su casa. Deje apagado el principal. Una cuadrilla va en camino para repararlo.
learnt-line-down = La compañía eléctrica dice: su línea está fuera de servicio. Una cuadrilla va en camino o acaba de irse.
learnt-electrician = El electricista dice: use solo extensiones hasta que se arregle el tablero. Iré cuando se pueda pasar por los caminos.
learnt-emergency = El número de emergencias dice: saque a todos al aire libre. No se acerque a nada que pueda tener voltaje.
learnt-told = Ahora saben lo que pasa: { $who }.

event-outage = Se va la luz. La calle queda a oscuras.
event-crew-arrived = La cuadrilla llega y mide la línea.
event-crew-took-hold = La cuadrilla midió la línea y la halló sin voltaje. Ya trabaja con las manos en ella, sin puestas a tierra todavía.
event-crew-found-live = La cuadrilla mide la línea y halla { $volts }. Se aparta y espera.
event-crew-left = La cuadrilla reparó la línea. Ya no está en ella.
event-utility-returned = La red volvió a la calle.
event-utility-failed = La línea no aguantó. La calle está otra vez a oscuras.
event-neighbor-asked = Un vecino está en la puerta. Le pide que lleve un cable de su casa a la de él.
event-tripped = Se dispara con { $amps }: { $breaker }.
event-fuse-blown = Se funde con { $amps }: { $fuse }.
event-ground-fault = { $load ->
    [one] Se abre, porque { $residual } tomaron otro camino: { $device }.
   *[other] Se abre antes de que haya carga: { $device }.
}
event-neutral-lost = El neutro de la casa se suelta en el poste. Con la red, unas lámparas brillan de más y otras casi se apagan.
event-leg-lost = Media casa queda a oscuras. Un cable activo de la casa se soltó en el poste.
event-drop-mended = La compañía reparó los cables de la casa.
event-damaged = Un chasquido y mal olor con { $volts }: { $appliance }.
event-starting = { $appliance }: arrancando, con { $amps } al principio.
event-running = { $appliance }: funcionando.
log-handed = { $name } sigue desde aquí.
event-stalled = { $appliance }: zumba y no gira. Recibe el { $percent } de su voltaje.
event-protector = { $appliance }: demasiado calor. Su propio protector corta la corriente.
event-lost-power = { $appliance }: sin electricidad.
event-lost-anything = Demasiado tiempo sin luz: { $of }. Se perdió lo que cuida.
event-lost-fridge = La comida del refrigerador se calentó demasiado para guardarla.
event-lost-furnace = La casa se enfrió demasiado.
event-lost-sump = El pozo de la bomba de sumidero se desborda. Entra agua al sótano.
event-engine-ready = El motor ya se calentó. Su voltaje es estable.
event-engine-stalled = Se le pide demasiado al motor: { $watts }. Pierde velocidad y se apaga.
event-out-of-fuel = El tanque está vacío. El motor se apaga.
event-low-oil = Falta aceite. El propio motor se detiene antes de dañarse.
event-no-start = El motor gira pero no arranca. Intente otra vez.
event-engine-started = El motor arranca y sigue en marcha.
event-shut-off = Se pide demasiado al inversor: { $watts }. Corta su salida. El motor sigue en marcha.
event-shut-off-leg = A una línea se le pide más de { $amps }. El inversor corta su salida. El motor sigue en marcha.
event-dip = El voltaje baja. Toda luz encendida parpadea. { $lasts ->
    [one] Cae a { $volts } y vuelve a los { $seconds }.
   *[other] Por un momento cae a { $volts }.
}
event-dip-stays = El generador cae a { $volts } y no puede recuperarse. Toda luz encendida se atenúa.
event-caught-by-engine = El motor de arranque hace girar el motor del generador por sí solo, con manos adentro.
event-controller-waiting = El controlador está en reposo.
event-controller-loss-seen = El controlador nota que falta la red. Espera a ver si eso dura.
event-controller-start-delay = El controlador se prepara para arrancar el motor.
event-controller-cranking = El controlador arranca el motor. Es el intento { $attempt }.
event-controller-resting = El motor no arrancó. El controlador deja descansar el motor de arranque.
event-controller-warming-up = El controlador deja calentar el motor antes de darle carga.
event-controller-to-generator = Los contactos de la transferencia dejan la red.
event-controller-on-generator = La transferencia ha pasado la casa al generador.
event-controller-back-seen = El controlador ve la red otra vez. Espera a ver si eso dura.
event-controller-retransfer-delay = El controlador deja la casa en el generador un rato más.
event-controller-to-utility = Los contactos de la transferencia dejan el generador.
event-controller-cooling-down = La casa ya no está en el generador. El motor marcha sin carga para enfriarse.
event-controller-exercising = El controlador pone el motor en marcha de ejercicio. La casa sigue en la red.
event-controller-overcrank = El motor no arrancó en ningún intento. El controlador se rinde. Alguien tiene que revisarlo.
event-controller-stopped = El motor se detuvo solo. El controlador se rinde. Alguien tiene que revisarlo.
event-controller-not-ready = El voltaje del generador nunca subió. El controlador se rinde. Alguien tiene que revisarlo.
event-collision = Dos fuentes se encuentran fuera de sincronía, a { $angle } entre sí. Golpe de corriente por el generador: { $amps }.
event-generator-broken = El generador está dañado.
event-solar-joined-utility = El inversor solar se une a la red. Su potencia vuelve paso a paso.
event-solar-joined-generator = El inversor solar confunde el generador con la red. Empieza a empujar potencia a los mismos cables.
event-solar-joined-battery = El inversor solar sigue a la batería. Alimenta la casa junto con ella.
event-solar-left = El inversor solar se apaga. Ve { $volts } a { $hertz }.
event-solar-left-dead = El inversor solar se apaga. Nada alimenta sus cables.
event-generator-pushed = El sol da más de lo que la casa toma. { $watts } se empujan de vuelta al generador.
event-battery-took = La batería toma los circuitos que protege.
event-battery-gave-back = La batería devuelve sus circuitos al tablero.
event-battery-overloaded = A la batería se le piden { $watts }. Se apaga y espera a su interruptor.
event-battery-empty = La batería está vacía. Se apaga.
event-shock = Una persona de la cuadrilla tiene la línea en la mano. Voltaje en el cuerpo: { $volts }. Corriente por el cuerpo: { $amps }.
event-touched = Una mano sobre esto siente corriente: { $metal }. Entre la mano y los pies hay { $volts }. Por el cuerpo pasan { $body } durante { $seconds }.
event-alarm = Suena la alarma de monóxido de carbono. En la casa hay { $ppm }.
event-overcome = Las personas de la casa perdieron el conocimiento. El gas ocupó el { $cohb } de su sangre.
event-cord-soft = El aislamiento se ablanda a { $reached }: { $cord }.
event-plug-scorched = Un enchufe se chamusca a { $reached }: { $cord }.
event-cord-shorted = Los conductores se tocan a { $reached }, con un destello: { $cord }.
event-cord-fire = Arde lo que toca el cable, que está a { $reached }: { $cord }.
event-fuel-fire = El combustible se derrama sobre el silenciador caliente, que está a { $surface }. Se prende fuego.
log-say = { $question } Usted dice: { $answer }.

event-unheard = No suena ninguna alarma, y debía sonar. Hay { $ppm } en la casa.
event-unwell = A la gente de la casa le duele la cabeza. El gas ocupa el { $cohb } de su sangre.
event-person-overcome = En la casa, { $person } se desmayó. El gas ocupa el { $cohb } de la sangre.
event-next-door-alarm = Suena la alarma de monóxido de carbono de al lado. Allí hay { $ppm }.
event-neighbor-runs = Un vecino enciende un motor justo debajo de su rejilla abierta.
