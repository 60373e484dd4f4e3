name-shop-lights = workshop lights
name-compressor = compressor
name-welder = welder
name-lean-to = lean-to
