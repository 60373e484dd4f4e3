name-septic = bomba séptica
