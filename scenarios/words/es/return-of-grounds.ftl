drill-return-of-grounds-title = Devolver la línea
drill-return-of-grounds-summary = Todavía no amanece y el cable está reparado. Hay tres juegos de puestas a tierra en la línea. Un generador suena en el poste 5.
drill-return-of-grounds-goal = Devuelva la electricidad a todos los clientes. No deje etiquetas ni puestas a tierra.
drill-return-of-grounds-note = En este simulacro puede morir una persona de la cuadrilla. No se muestra nada en detalle. Puede parar cuando quiera.
