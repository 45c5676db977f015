### Dibujos. En el papel las palabras son cortas; la descripción dice el resto.

drawing-edition = NFPA 70, edición { $edition }
drawing-edition-unverified = NFPA 70, edición { $edition }, sin verificar
drawing-no-verdict = Pregunta de tamaño, sin veredicto
drawing-caution = Es el dibujo de un cálculo, no de una instalación: no aprueba nada.
drawing-left = Sobran { $figure }
drawing-short = Faltan { $figure }

## Cajas de salida

drawing-outlet-title = Volumen de una caja de salida
drawing-outlet-available = Disponible { $figure }
drawing-outlet-required = Requerido { $figure }
drawing-space = Espacio { $space }
