name-red-cord = cable rojo
    .of = del cable rojo
name-white-cord = cable blanco
    .of = del cable blanco
