## Calificación

text-grade-right = La respuesta es correcta.
text-grade-explained = La respuesta no es correcta. Lo que se enumera da exactamente esta cifra; puede haber resultado de otra manera.
text-grade-unexplained = La respuesta no es correcta. Ni una idea equivocada conocida, ni dos juntas, ni un descuido dan esta cifra.
text-grade-no-figure = Aquí las reglas no piden tal cifra, o no está determinada.
text-grade-misconception = Esta idea equivocada da exactamente esta cifra.
text-grade-pair = Estas dos ideas equivocadas juntas dan exactamente esta cifra.
text-slip-converted = Esta es la cifra correcta, convertida a otra unidad.
text-slip-other-column = Esta es la cifra correcta en el otro sistema de unidades, como el código mismo la imprime.
text-slip-wrong-unit = El número es correcto, la unidad no.
text-slip-number-of-other-unit = Este número es correcto en la otra unidad.
text-slip-rounded-up = Esta es la cifra correcta, redondeada hacia arriba.
text-slip-rounded-down = Esta es la cifra correcta, redondeada hacia abajo.
text-slip-digits-exchanged = Dos dígitos de la cifra correcta están intercambiados.
text-slip-product = Las asignaciones son correctas, lo que suman no.
text-slip-sum = Las líneas de la cuenta no suman la respuesta.
