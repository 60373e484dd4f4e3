# La ventana.

window-title = Simulacro de apagón
window-clock = Reloj del ejercicio
window-goal = Meta
window-hint = Ahora
window-wait-short = Esperar 10 s
window-wait-minute = Esperar 1 min
window-wait-event = Hasta que pase algo
window-finish = Terminar
window-keys = Teclas
window-words = En palabras
window-back = Volver
window-deeds = Qué se puede hacer aquí
window-log = Lo que ha pasado
window-held = El tiempo está detenido
window-next = Siguiente
window-again = Desde el principio
window-why = Por qué importa
window-now = Qué hacer ahora
window-instead = En su lugar
window-source = Fuente
window-understood = Entendido
window-retry = Intentar de nuevo
window-leave = Volver al estante
window-met = cumplido
window-not-met = no cumplido
window-critical = Debe cumplirse
window-timeline = Línea de tiempo
window-findings = Hallazgos
window-finding = Hallazgo
window-no-findings = Nada que explicar: se cumplieron todas las reglas.
window-open-assessed = Abrir como prueba
window-assessed-means = Sin ayuda, y solo lo que usted miró o probó, hasta el final.
window-slide = placa de enclavamiento
window-slide-up = La placa está arriba. Impide encender el interruptor principal.
window-slide-down = La placa está abajo. Impide encender el interruptor del generador mientras el principal está encendido.

# Qué alimenta un conductor, en la leyenda.
window-fed-dead = probado sin tensión
window-fed-utility = alimentado por la compañía
window-fed-generator = alimentado por un generador
window-fed-both = alimentado por ambos
window-fed-grounded = puesto a tierra por la cuadrilla
window-fed-unknown = sin probar todavía

# Tipos de líneas del registro y de respuestas.
window-log-did = Hecho
window-log-refused = Rechazado
window-log-happened = Sucedió
window-log-learnt = Visto
window-log-mistake = Error
window-log-harm = Daño
window-log-unknown = No se conoce

# La escena en palabras.
window-words-people = Personas y vecinos
window-words-house = Generador y casa
window-words-wires = Cables

# Teclas.
window-key-keys = Mostrar u ocultar estas teclas
window-key-words = La escena en palabras
window-key-language = Otro idioma
window-key-motion = Movimiento sí o no
window-key-back = Volver
window-key-places = Abrir un lugar
window-key-walk = Recorrer lo que se puede pulsar, también con las flechas
window-key-press = Pulsar, también con la barra espaciadora

# Se dice en la terminal cuando no puede abrirse una ventana.
window-no-display = Aquí no hay pantalla para una ventana. El ejercicio también funciona como texto: outage-drill play.
window-no-adapter = Ningún adaptador gráfico responde aquí, ni siquiera por software. En Debian lo trae el paquete mesa-vulkan-drivers. El ejercicio también funciona como texto: outage-drill play.
