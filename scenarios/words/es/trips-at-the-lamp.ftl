drill-trips-at-the-lamp-title = Salta con la lámpara
drill-trips-at-the-lamp-summary = Dicen que el generador salta en cuanto se enciende una lámpara. Sus tomacorrientes tienen protección contra fallas a tierra y nadie sabe por qué.
drill-trips-at-the-lamp-goal = Diga cuántos puntos unen su neutro a tierra mientras está en la casa. Luego ponga en marcha el refrigerador en 22 minutos. Cuando vuelva la red, pare el motor y guarde los cables.
drill-trips-at-the-lamp-note = Nunca corte usted mismo una unión a tierra. Puede parar cuando quiera.
