name-septic = septic pump
