name-shop-lights = luces del taller
    .of = de las luces del taller
name-compressor = compresor
    .of = del compresor
name-welder = soldadora
    .of = de la soldadora
name-lean-to = cobertizo abierto
