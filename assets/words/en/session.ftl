# What a session says to either front end.
