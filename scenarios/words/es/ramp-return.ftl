drill-ramp-return-title = Vuelta por la rampa
drill-ramp-return-summary = Dos generadores alimentan una casa donde alguien vive con oxígeno. La batería del concentrador está casi vacía. La red está por volver.
drill-ramp-return-goal = Vuelva a la red sin un corte largo. Después deje enfriar los motores, párelos y guarde el cable.
drill-ramp-return-note = Una persona depende de esta energía. Nada se muestra en detalle. Puede parar en cualquier momento.
