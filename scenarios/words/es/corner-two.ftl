name-tied-cord = cable con el adaptador
    .of = del cable con el adaptador
