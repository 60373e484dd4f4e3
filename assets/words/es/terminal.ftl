# La terminal: el simulacro como texto, y los informes.

terminal-no-window = Esta versión no tiene ventana.
terminal-as-text = El simulacro también se hace como texto. Escriba: { $command }

terminal-language-unknown = Aquí no hay ningún idioma “{ $tag }”. Use uno de estos: { $available }.

terminal-drills = Simulacros:
terminal-place = En { $place }:
terminal-stands = Ahora: { $position }.
terminal-hint = Siguiente paso: { $hint }

terminal-wires = Cables:
terminal-appliances = En la casa:
terminal-people = Personas:
terminal-neighbors = Vecinos:
terminal-generator = Generador y aire:

terminal-kind-did = Hecho
terminal-kind-refused = No se pudo
terminal-kind-happened = Sucede
terminal-kind-learnt = Usted averigua
terminal-kind-mistake = Error
terminal-kind-harm = Daño

terminal-path = El camino de la energía:
terminal-why = Por qué importa: { $text }
terminal-now = Ahora: { $text }
terminal-instead = La próxima vez: { $text }
terminal-source = Fuente: { $text }
terminal-finding-critical = Por esto solo ya no se aprueba.

terminal-criteria = Lo que contaba:
terminal-criterion-met = { $title }: cumplido.
terminal-criterion-met-critical = { $title }: cumplido. Sin esto no se aprueba.
terminal-criterion-missed = { $title }: no cumplido.
terminal-criterion-missed-critical = { $title }: no cumplido. Sin esto no se aprueba.
terminal-findings = { $count ->
    [0] No se halló nada malo.
    [one] Se halló una cosa:
   *[other] Se hallaron { $count } cosas:
}

terminal-help = Escriba una acción por línea:
terminal-help-set = set MANDO POSICIÓN mueve algo. Puede omitir “set”.
terminal-help-look = look LUGAR muestra lo que hay allí.
terminal-help-test = test PUNTO mide el voltaje en un punto.
terminal-help-call = call QUIÉN, o tell QUIÉN, habla con alguien.
terminal-help-refuel = refuel echa combustible en el tanque.
terminal-help-wait = wait 2m30s deja pasar el tiempo.
terminal-help-event = wait sin más espera hasta que suceda algo.
terminal-help-own = help muestra esto. status dice cómo está todo. finish termina el simulacro y lo evalúa. quit sale sin evaluar.
terminal-left = Salió antes del final. No se evaluó nada.

terminal-file-unreadable = No se puede leer { $file }: { $reason }. Revise el nombre e inténtelo otra vez.
terminal-file-unwritable = No se puede escribir { $file }: { $reason }. Elija una carpeta donde usted pueda escribir.
terminal-saved = La ejecución quedó guardada en { $file }.
terminal-saved-not = El resultado de arriba vale, pero la ejecución no quedó guardada.

terminal-fault-found = Allí dice: { $text }
terminal-not-done = { $count ->
    [one] No se hizo nada: hay una falla.
   *[other] No se hizo nada: hay { $count } fallas.
}

terminal-grammar = Un archivo de acciones lleva una acción por línea, escrita como abajo. Cada una dura lo normal.
terminal-grammar-comment = Lo que sigue a un # es un comentario. Puede omitir “set”.
terminal-grammar-time = Ponga @12:30 antes de una acción para hacerla cuando el reloj del simulacro marque 12:30.

read-points = En los puntos que se pueden medir:
read-things = Corrientes:
read-thing = { $name }: { $amps }
read-taken = Todo aparato encendido se toma como en marcha.
read-not-converged = Estos números no valen: el cálculo no llegó a un resultado estable.

terminal-check-sound = { $name }: leído, sin fallas.
terminal-check-proof = Todavía no está demostrado que un camino seguro lleve a la meta. Esta versión solo lee los archivos.

terminal-language = { $tag } ({ $name }): { $present } de { $wanted } mensajes.
