drill-silent-frame-title = Carcasa callada
drill-silent-frame-summary = El interruptor de la lavadora salta de inmediato y por eso quedó apagado. El generador y su conmutador se compraron por separado.
drill-silent-frame-goal = Diga cuántos puntos unen su neutro a tierra. Ponga en marcha el refrigerador en 22 minutos sin daños. Cuando vuelva la red, pare el motor y guarde los cables.
drill-silent-frame-note = Una carcasa puede tener voltaje sin señal alguna. No se muestra nada en detalle. Puede parar cuando quiera.
