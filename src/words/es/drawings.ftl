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

## Cajas de paso

drawing-pull-box-title = Caja de paso en planta, con sus paredes desplegadas
drawing-box-given = La caja dada
drawing-box-smallest = La caja más pequeña con un lugar para cada entrada
drawing-box-laid-out = Una caja con un lugar para cada entrada
drawing-box-least = Lo mínimo que piden las reglas
drawing-section = Sección { $section }
drawing-side = { $axis ->
    [width] Ancho
    [height] Altura
   *[depth] Profundidad
 } { $figure }
drawing-side-least = { $axis ->
    [width] Ancho mínimo
    [height] Altura mínima
   *[depth] Profundidad mínima
 } { $figure }
drawing-side-assumed = { $axis ->
    [width] El ancho es supuesto
    [height] La altura es supuesta
   *[depth] La profundidad es supuesta
 }, para que quepan las entradas: ninguna regla pide tanto.
drawing-places-assumed = Las entradas con trazos no tienen lugar conocido: se dibujan repartidas a lo largo de su hilera.
drawing-ids-left-out = Las entradas demasiado juntas para llevar su nombre se dicen en la lista.
drawing-rims-assumed = Las entradas sin diámetro se dibujan de un tamaño supuesto.
drawing-pulls-thin = Los tiros delgados no se dimensionan por longitud.
drawing-splices = Un punto sobre un tiro es un empalme.
drawing-room-between = Anillos: { $figure } libres entre entradas.
drawing-room-to-walls = Marcos interiores: { $figure } libres hasta las paredes vecinas.
drawing-cover = { $cover ->
    [removable] La tapa se quita.
    [hinged] La tapa tiene bisagras.
   *[fixed] La tapa no se quita.
 }
drawing-over-1000-volts = El sistema es de más de 1000 V.
drawing-blocks = { $count ->
    [one] Un bloque de distribución de energía.
   *[other] { $count } bloques de distribución de energía.
 }
drawing-asked = Lo que piden las reglas
drawing-counted = Contadas: { $entries }
drawing-wall = { $wall ->
    [left] pared izquierda
    [right] pared derecha
    [top] pared superior
    [bottom] pared inferior
   *[back] fondo
 }
drawing-row = { $wall }, hilera { $row }
drawing-distances = Entre entradas con los mismos conductores
drawing-least = al menos { $figure }
drawing-measured = { $figure } medidas
drawing-too-close = demasiado cerca
drawing-more = { $count ->
    [one] Una más está en la respuesta.
   *[other] { $count } más están en la respuesta.
 }
drawing-pulls = Tiros
drawing-pulls-of = { $kind ->
    [straight] Rectos
    [angle] En ángulo
   *[u] En U
 }
drawing-spliced = empalmado
drawing-by-volume = no se dimensiona por longitud
drawing-entries = Entradas
drawing-from = { $figure } { $axis ->
    [width] desde la izquierda
    [height] desde abajo
   *[depth] desde el fondo
 }
