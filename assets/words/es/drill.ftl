# El simulacro: títulos y metas, registro, lo que sucedió, lo que se supo.

drill-there-and-back-title = Ida y vuelta
drill-there-and-back-summary = Una tormenta deja la casa sin electricidad. Pase la casa al generador y luego de vuelta a la red. El tablero tiene un bloqueo mecánico.
drill-there-and-back-goal = Ponga a funcionar el refrigerador, la calefacción y la bomba de sumidero en los 20 minutos que siguen al apagón. Cuando la red haya vuelto, regrese a ella y guarde todo.
drill-there-and-back-note = Un error en la línea puede herir a alguien. Puede detenerse cuando quiera.
drill-no-slide-title = Sin corredera
drill-no-slide-summary = La misma casa, pero alguien agregó un interruptor del generador y dejó fuera el bloqueo mecánico. En el cobertizo hay un cable de dos enchufes. Busque el camino seguro.
drill-no-slide-goal = Ponga a funcionar el refrigerador y la bomba de sumidero en los 20 minutos que siguen al apagón. Cuide que la calle siga segura. Cuando la red haya vuelto, enchúfelos otra vez en la pared y guarde todo.
drill-no-slide-note = En este simulacro, un error puede matar a quien trabaja en la línea. Nada se muestra en detalle. Puede detenerse cuando quiera.

log-set = { $control }: { $position }.
log-look = Usted mira: { $place }.
log-test = Usted mide: { $point }.
log-call = Usted llama: { $who }.
log-tell = Usted avisa: { $who }.
log-refuel = Usted llena el tanque del generador.
log-wait = Usted espera { $time }.
log-refused = { $deed } No se puede. { $why }

learnt-street-lit = Hay luces encendidas en la calle.
learnt-street-dark = Toda la calle está a oscuras.
learnt-live = { $point }: con voltaje, { $volts }.
learnt-dead = { $point }: sin voltaje. Usted probó el medidor antes y después.
learnt-crew-at-work = La compañía eléctrica dice: una cuadrilla está trabajando en su línea.
learnt-in-service = La compañía eléctrica dice: su línea está en servicio.
learnt-line-down = La compañía eléctrica dice: su línea está fuera de servicio. Una cuadrilla va en camino o acaba de irse.
learnt-electrician = El electricista dice: use solo extensiones hasta que se arregle el tablero. Iré cuando se pueda pasar por los caminos.
learnt-emergency = El número de emergencia dice: saque a todos al aire libre. No se acerque a nada que pueda tener voltaje.
learnt-told = Ahora saben lo que pasa: { $who }.

event-outage = Se va la luz. La calle queda a oscuras.
event-crew-arrived = La cuadrilla llega y mide la línea.
event-crew-took-hold = La cuadrilla midió la línea y la halló sin voltaje. La tiene en las manos.
event-crew-found-live = La cuadrilla mide la línea y halla { $volts }. Se aparta y espera.
event-crew-left = La cuadrilla reparó la línea. Ya no está en ella.
event-utility-returned = La red volvió a la calle.
event-tripped = Se dispara con { $amps }: { $breaker }.
event-starting = { $appliance }: arrancando, con { $amps } al principio.
event-running = { $appliance }: funcionando.
event-stalled = { $appliance }: zumba y no gira. Recibe el { $percent } de su voltaje.
event-protector = { $appliance }: demasiado calor. Su propio protector corta la corriente.
event-lost-power = { $appliance }: sin electricidad.
event-lost-fridge = La comida del refrigerador se calentó demasiado para guardarla.
event-lost-furnace = La casa se enfrió demasiado.
event-lost-sump = El pozo de la bomba de sumidero se desborda. Entra agua al sótano.
event-engine-ready = El motor ya se calentó. Su voltaje es estable.
event-engine-stalled = Se le pide demasiado al motor: { $watts }. Pierde velocidad y se apaga.
event-out-of-fuel = El tanque está vacío. El motor se apaga.
event-collision = Dos fuentes se encuentran fuera de paso, a { $angle } una de otra. Golpe de corriente por el generador: { $amps }.
event-generator-broken = El generador está dañado.
event-shock = Una persona de la cuadrilla tiene la línea en la mano. Voltaje en la línea: { $volts }. Corriente por el cuerpo: { $amps }.
event-alarm = Suena la alarma de monóxido de carbono. En la casa hay { $ppm }.
event-overcome = Las personas de la casa perdieron el conocimiento. El gas ocupó el { $cohb } de su sangre.
event-cord-soft = El aislamiento se ablanda a { $reached }: { $cord }.
event-fuel-fire = El combustible se derrama sobre el motor caliente, que está a { $surface }. Se prende fuego.
