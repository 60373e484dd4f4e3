# La lección para una clase de dos horas.

lesson-two-hours-title = Dos horas con una clase
lesson-two-hours-about = Lo que hacen el gas y la línea de la calle; luego se practica y al final hay una prueba corta. Para una sala con una pantalla o muchas.
sitting-evening = Una tarde

step-what-tonight = Que cada uno escriba dos líneas, a solas. No corrija nada: las leerán otra vez al final.
step-gas-indoors = Hágalo en la pantalla. Que la gente apueste antes de que salga cada número.
step-move-it = Que la sala elija el lugar, a mano alzada. Muestre lo que cada lugar hace al aire de adentro.
step-two-ends = El grupo encuentra un cable con dos enchufes. Que apueste sobre la calle antes de verla.
step-up-the-line = Ahora párese bajo la línea, donde está la cuadrilla. Basta una casa.
step-six-ways = Reparta los nombres de las seis maneras seguras. Cada persona ordena: la mía, no la mía, no sé.
step-pairs-out = En parejas, uno maneja y otro dice por qué. Cambien de lugar cuando el principal esté apagado.
step-pairs-back = Ahora maneja el otro. Al final cada uno ha hecho un sentido.
step-pick-a-cord = Pase cables reales de mano en mano, desenchufados. Luego elijan juntos en la pantalla.
step-hot-coil = La mitad del cable está enrollada. Pregunte antes de esperar.
step-alone = Cada uno a solas, sin ayuda. Dé a cada máquina otra semilla. Cualquier orden seguro vale.
step-go-home = Reparta la hoja. Cada uno dice un cambio en voz alta. Primero van las normas locales y su compañía eléctrica.

question-who-owns-what = ¿Quién tiene un generador? ¿Quién tiene cables? ¿Quién tiene una alarma de monóxido de carbono en cada piso?
question-tonight = ¿Qué haría usted esta noche si se fuera la luz?
question-smell = ¿Lo olería usted? ¿Quién se despertaría primero?
question-who-is-hurt = ¿A quién hiere esto? ¿Es la persona que lo enchufó?
moment-crew-in-danger = La cuadrilla tiene las manos en la línea. ¿Qué de esta casa podría alcanzarla?
