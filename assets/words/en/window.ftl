# The window.
