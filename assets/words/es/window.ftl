# La ventana.
