# Nombres de las cosas del sitio.
