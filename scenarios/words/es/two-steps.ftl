name-red-cord = cable rojo
name-white-cord = cable blanco
