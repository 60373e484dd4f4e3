# Cantidades: el único lugar donde un número lleva su unidad.

unit-volts = { $number }{"\u00A0V"}
unit-amps = { $number }{"\u00A0A"}
unit-milliamps = { $number }{"\u00A0mA"}
unit-watts = { $number }{"\u00A0W"}
unit-ohms = { $number }{"\u00A0Ω"}
unit-hertz = { $number }{"\u00A0Hz"}
unit-ppm = { $number }{"\u00A0ppm"}
unit-percent = { $number }{"\u00A0%"}
unit-gallons = { $number }{"\u00A0gal"}
unit-grams = { $number }{"\u00A0g"}
unit-degrees = { $number }°
unit-seconds = { $number }{"\u00A0s"}
unit-plain = { $number }

unit-celsius = { $number }{"\u00A0°C"} ({ $fahrenheit }{"\u00A0°F"})

unit-feet = { $meters }{"\u00A0m"} ({ $number }{"\u00A0pies"})

range = de { $low } a { $high }

quantity-unknown = sin dato

lasting-moment = un momento
# The same on a button, by signs.
lasting-short-minutes = { $minutes }{"\u00A0min"}
lasting-short = { $minutes }{"\u00A0min"} { $seconds }{"\u00A0s"}
lasting-minutes = { $minutes ->
    [one] 1 minuto
   *[other] { $minutes } minutos
}{ $seconds ->
    [0] {""}
    [one] {" y 1 segundo"}
   *[other] {" y "}{ $seconds } segundos
}
lasting-hours = { $hours ->
    [one] 1 hora
   *[other] { $hours } horas
}{ $minutes ->
    [0] {""}
    [one] {" y 1 minuto"}
   *[other] {" y "}{ $minutes } minutos
}
