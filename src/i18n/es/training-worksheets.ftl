## Hojas de ejercicios

text-sheet-name = Nombre
text-sheet-date = Fecha
text-sheet-score = Puntos
text-sheet-task = Marque una opción en cada ejercicio. Muestre su procedimiento.
text-sheet-working = Procedimiento
text-sheet-edition = NFPA 70, edición { $edition }, { $units }
text-sheet-us = pulgadas y pulgadas cúbicas
text-sheet-si = milímetros y centímetros cúbicos
text-sheet-key = Clave de respuestas
text-sheet-other-editions = En otras ediciones:

## Enseñanza por HTTP

text-tag-teaching = Ejercicios, qué tiene mal una respuesta, hojas para imprimir.
problem-detail-not-acceptable-html = El encabezado Accept no admite text/html.
fault-unknown-quantity = A la revisión no se le pide esta cifra.
fault-no-answer = Dé una respuesta, una cuenta, o ambas.
fault-no-tally = La respuesta de esta revisión no tiene cuenta.
fault-too-many-lines = Una cuenta tiene a lo más 50 líneas.
fault-request-or-exercise = Dé una revisión con su solicitud, o un ejercicio.
fault-not-taught = No se enseña tal revisión.
