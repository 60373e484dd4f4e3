name-shop-lights = luces del taller
name-compressor = compresor
name-welder = soldadora
name-lean-to = cobertizo abierto
