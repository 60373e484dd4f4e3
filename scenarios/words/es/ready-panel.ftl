drill-ready-panel-title = Tablero preparado
drill-ready-panel-summary = Este tablero se hizo para un generador. Su parte baja tiene los circuitos elegidos. Dos interruptores pueden alimentarla y una barra deja encender solo uno.
drill-ready-panel-goal = Ponga a funcionar la calefacción, el refrigerador y las luces de la cocina en los 15 minutos que siguen al apagón. Cuando la parte alta tenga red otra vez, regrese, pare el motor y guarde el cable.
drill-ready-panel-note = El compresor pide electricidad en cuanto puede. Puede detenerse cuando quiera.
