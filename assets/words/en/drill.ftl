# The drill: log, events, refusals, titles and goals.
