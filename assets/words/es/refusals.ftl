# Lo que el mundo no deja hacer, y por qué: una respuesta, no un error.

refused-already = Ya está así.
refused-reset-first = Un interruptor disparado no se enciende de una vez. Primero apáguelo, y luego enciéndalo.
refused-breaker-hot = El interruptor sigue caliente por dentro y no engancha. Espere un minuto e intente de nuevo.
refused-fuse-out-first = Un fusible fundido no vuelve. Sáquelo primero y luego ponga uno nuevo.
refused-burning = El generador arde. No se acerque, y llame a los bomberos.
refused-engine-broken = El motor no arranca. El generador está dañado.
refused-no-fuel = El motor no arranca. El tanque está vacío.
refused-low-oil = El motor no arranca. Falta aceite.
refused-no-tank = Este generador usa gas de tubería. No hay tanque que llenar.
refused-no-turn = Así como está todo, no puede pasar.
refused-oil-running = Detenga el motor antes de abrir la tapa del aceite.
refused-oil-drain = Aquí el aceite solo se puede llenar.
refused-second-alone = Arranque el primer generador del par antes que el segundo.
refused-cover-shut = La tapa del aceite está bajo la cubierta. Abra primero la cubierta.
refused-transfer-cover = Los contactos están tras la cubierta y los mueve el controlador. Déjeselos a él.
refused-battery-running = Detenga el motor antes de desconectar la batería de arranque.
refused-in-shed = Primero saque el generador del cobertizo.
refused-cord-short = Este cable no alcanza desde allí.
refused-move-running = Detenga el motor antes de mover el generador.
refused-move-corded = Desenchufe el cable del generador antes de moverlo.
refused-locked = El candado sujeta la palanca. Primero quite el candado.
refused-lock-needs-off = El candado solo entra con el interruptor principal apagado.
refused-interlock = La corredera del bloqueo mecánico sujeta la palanca. De los dos interruptores, solo uno puede estar encendido.
refused-pair = La barra entre los dos interruptores bloquea la palanca. Solo uno del par puede estar encendido.
refused-outlet-taken = Ahí ya hay algo enchufado. Primero desenchúfelo.
refused-window-cord = Por la ventana pasa un cable. Puede estar abierta o sellada, pero no cerrada.
