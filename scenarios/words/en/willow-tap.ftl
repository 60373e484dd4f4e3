name-mill-house = mill house
name-smithy = smithy
name-school-house = school house
