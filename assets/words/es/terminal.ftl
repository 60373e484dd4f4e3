# La terminal.
