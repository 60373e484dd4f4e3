name-mill-house = casa del molino
name-smithy = herrería
name-school-house = casa de la escuela
