# La lección para una clase de dos horas.

lesson-two-hours-title = Dos horas con una clase
lesson-two-hours-about = Lo que hacen el gas y la línea de la calle; luego se practica y al final hay una prueba corta. Para una sala con una pantalla o muchas.
sitting-evening = Una tarde
talk-welcome = Bienvenida. Diga qué es real aquí y qué no. Un error no hiere a nadie y por eso estamos aquí. Cualquiera puede apartarse cuando quiera.
talk-what-tonight = Pregunte: ¿qué haría usted esta noche si se fuera la luz? Que cada uno escriba dos líneas.
talk-which-way = Ordenen las seis maneras seguras. ¿Cuál es la suya? ¿Cuál necesita antes un electricista y un permiso?
talk-pause = Una pausa.
talk-look-back = Primero pregunte y después diga: ¿qué pasó, cómo se sintió, por qué y qué sigue?
talk-go-home = Nombre una cosa que cambiará antes de la próxima tormenta. Primero van las normas locales y su compañía eléctrica.
