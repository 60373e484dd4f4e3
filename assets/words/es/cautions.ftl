# Precauciones: al empezar, y siempre a la mano.

caution-1 = Esto es una práctica. No le da permiso para cablear una casa ni para trabajar en una línea.
caution-2 = Deje el cableado en manos de una persona con licencia. Donde se exijan permiso e inspección, obtenga los dos.
caution-3 = Nunca conecte un generador al cableado de una casa, salvo con un equipo de transferencia certificado.
caution-4 = Use los motores afuera, a por lo menos 6 metros (20 pies) de toda puerta, ventana y respiradero. Apunte el escape hacia el lado contrario a la casa. Ponga una alarma de monóxido de carbono en cada piso. Este gas no huele.
caution-5 = Primero están el manual de su generador, el código local y las reglas de la compañía eléctrica. Los números de aquí salen de un modelo.
caution-6 = Si algo huele raro, echa chispas, zumba o da cosquilleo, o si suena una alarma, aléjese. Luego llame al número de emergencias.
caution-7 = Algunos simulacros hablan de personas gravemente heridas o muertas. Puede detenerse cuando quiera.
caution-8 = Sus registros se quedan en esta máquina, a menos que usted los envíe.
