name-lent-cord = cable del vecino
    .of = del cable del vecino
name-strip = regleta con dos enchufes
    .of = de la regleta con dos enchufes
