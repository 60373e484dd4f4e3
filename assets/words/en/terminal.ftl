# The terminal.
