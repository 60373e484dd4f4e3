drill-hands-off-title = Sin manos
drill-hands-off-summary = El generador fijo pide aceite. Asegúrelo antes de abrirlo. No sabe que usted está ahí.
drill-hands-off-goal = Llene el aceite con el generador asegurado. Después devuélvalo a la casa: cubierta cerrada, batería conectada, interruptor encendido, controlador en automático.
drill-hands-off-note = Un motor que arranca solo puede herir a alguien. No se muestra nada en detalle. Puede parar en cualquier momento.
