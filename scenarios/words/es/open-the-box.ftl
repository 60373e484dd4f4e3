drill-open-the-box-title = ¿Abrir la caja?
drill-open-the-box-summary = Alguien quiere ver los contactos del interruptor de transferencia. El principal está a mano, y también el bloqueo del generador. ¿Basta con eso?
drill-open-the-box-goal = Asegure lo que pueda. Pruebe y diga qué sigue con voltaje. Abra la cubierta solo si detrás no hay nada con voltaje. Al final devuelva todo a la casa.
drill-open-the-box-note = Las partes con voltaje tras una cubierta pueden matar. Nada se muestra en detalle. Puede parar en cualquier momento.
