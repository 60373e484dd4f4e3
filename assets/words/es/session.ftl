# Lo que dice una sesión en la ventana y en la terminal.
