name-red-cord = red cord
name-white-cord = white cord
