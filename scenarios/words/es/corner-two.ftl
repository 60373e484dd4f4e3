name-tied-cord = cable con el adaptador
