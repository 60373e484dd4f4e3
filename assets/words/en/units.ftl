# Quantities: the only place where a number meets its unit.
# The space before a unit is a no-break space, so that no line ends between the two.
# $number is finished text in the reader's own digits.

unit-volts = { $number }{"\u00A0V"}
unit-amps = { $number }{"\u00A0A"}
unit-milliamps = { $number }{"\u00A0mA"}
unit-watts = { $number }{"\u00A0W"}
unit-ohms = { $number }{"\u00A0Ω"}
unit-hertz = { $number }{"\u00A0Hz"}
unit-ppm = { $number }{"\u00A0ppm"}
unit-percent = { $number }%
unit-gallons = { $number }{"\u00A0gal"}
unit-grams = { $number }{"\u00A0g"}
unit-degrees = { $number }°
unit-seconds = { $number }{"\u00A0s"}
unit-plain = { $number }

# Lengths of time: whole minutes and seconds, or too short to measure.
lasting-moment = a moment
# The same on a button, by signs.
lasting-short-minutes = { $minutes }{"\u00A0min"}
lasting-short = { $minutes }{"\u00A0min"} { $seconds }{"\u00A0s"}
lasting-minutes = { $minutes ->
    [one] 1 minute
   *[other] { $minutes } minutes
}{ $seconds ->
    [0] {""}
    [one] {" and 1 second"}
   *[other] {" and "}{ $seconds } seconds
}
# Lengths of an hour and more: the seconds don't matter there.
lasting-hours = { $hours ->
    [one] 1 hour
   *[other] { $hours } hours
}{ $minutes ->
    [0] {""}
    [one] {" and 1 minute"}
   *[other] {" and "}{ $minutes } minutes
}

# $number is degrees Celsius, $fahrenheit the same temperature in degrees Fahrenheit.
unit-celsius = { $fahrenheit }{"\u00A0°F"} ({ $number }{"\u00A0°C"})

# $number is feet, $meters the same length in meters.
unit-feet = { $number }{"\u00A0ft"} ({ $meters }{"\u00A0m"})

# A range: $low is a number, $high a number with the unit of both.
range = { $low } to { $high }

# In place of a number that could not be computed.
quantity-unknown = not known
