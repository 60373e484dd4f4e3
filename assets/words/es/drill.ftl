# La práctica: registro, sucesos, negativas, títulos y metas.
