# El camino para un hogar: seis noches cortas.

lesson-six-evenings-title = Seis noches en casa
lesson-six-evenings-about = De quince a veinte minutos cada una, para una persona o una familia. Las dos últimas noches son de prueba. Después practique dos veces al año.
sitting-my-house = Primera noche: mi casa
sitting-air-and-fuel = Segunda noche: aire y combustible
sitting-cords = Tercera noche: cables
sitting-way-back = Cuarta noche: el camino de vuelta
sitting-my-loads = Quinta noche: mis cargas
sitting-storm-night = Sexta noche: noche de tormenta

step-home-start = Lea las líneas de “antes de empezar”. Aquí un error no cuesta nada.
step-home-recall = Antes de mirar nada, responda de memoria. Luego compare.
step-home-back = Responda las preguntas de abajo, en voz alta o por escrito. Mire el resultado al final.
step-look-around = Señale cables, tomacorrientes y lámparas. Diga qué los alimenta y luego mida.
step-my-house = Vaya a su tablero con papel y lápiz, y solo mire. Escriba lo que encuentra.
step-guess-first = El simulacro le pregunta antes de mostrar. Adivine y diga qué tan seguro está.
step-try-it = Tómese su tiempo. Si algo sale mal, vuelva atrás y pruebe de otra manera.
step-found-so = Alguien lo dejó así. Usted no lo hizo. Usted solo lo hace seguro.
step-home-alone = Esto es una prueba: sin ayuda hasta el final. Cualquier orden seguro vale.
step-write-card = Escriba la tarjeta de modo que otra persona pueda usarla de noche.
step-home-card = Ponga la hoja junto a su tablero. Anote las fechas de práctica en su calendario.

question-must-run = ¿Qué tiene que funcionar en un apagón? ¿Qué puede esperar hasta la mañana?
question-recall-house = ¿Qué alimenta su casa en un día normal? ¿Dónde está el interruptor principal?
question-recall-gas = De memoria: ¿a qué distancia de la casa va el motor?

objective-fuel-cold = Llenar combustible solo con el motor apagado y frío.
objective-get-out = Actuar bien cuando hay gas, un choque o dos fuentes a punto de encontrarse.
objective-loads-in-turn = Elegir las cargas y arrancarlas una tras otra.
objective-leave-a-card = Dejar una tarjeta que otra persona pueda usar.
