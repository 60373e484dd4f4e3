name-lent-cord = cable del vecino
name-strip = regleta con dos enchufes
