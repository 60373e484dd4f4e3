name-mill-house = casa del molino
    .of = de la casa del molino
name-smithy = herrería
    .of = de la herrería
name-school-house = casa de la escuela
    .of = de la casa de la escuela
