name-tied-cord = cable con el adaptador
name-neutral-microwave = neutro que comparten microondas y calentador
