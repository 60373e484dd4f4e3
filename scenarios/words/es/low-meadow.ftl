name-septic = bomba séptica
    .of = de la bomba séptica
