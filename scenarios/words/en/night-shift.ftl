name-house-socket = four-wire outlet on the generator
name-washer = washing machine
