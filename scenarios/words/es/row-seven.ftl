name-insulin-fridge = refrigerador de la insulina
    .of = del refrigerador de la insulina
name-back-step = escalón de atrás
name-shared-green = jardín compartido
name-short-cord = cable corto del generador
    .of = del cable corto del generador
name-long-cord = cable largo del generador
    .of = del cable largo del generador
