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
drawing-outlet-own = Caja { $figure }
drawing-outlet-sections = anillos, tapas y extensiones { $figure }
drawing-outlet-barriers = las barreras ocupan { $figure }
drawing-outlet-shared = repartidos entre los espacios { $figure }
drawing-used = { $figure } ocupado
drawing-more-lines = Aquí no se listan { $number } líneas más.

## Canalizaciones

drawing-raceway-title = Conductores en una canalización
drawing-raceway-inside = Área interior { $figure }
drawing-raceway-diameter = Diámetro interior { $figure }
drawing-raceway-allowed = Permitido { $figure }
drawing-raceway-taken = Ocupado { $figure }
drawing-raceway-raised = { $figure } de más, permitido por { $rule }
drawing-raceway-number = Conductores y cables: { $number }
drawing-raceway-limit = { $limit ->
    [one] Un conductor o cable
    [two] Dos conductores o cables
    [nipple] Niple
   *[over_two] Tres o más conductores o cables
}: a lo más { $percent }
drawing-raceway-most = Máximo de este tamaño: { $figure }
drawing-raceway-room = Caben más de { $what }: { $number }
drawing-raceway-jam = Canalización a conductor, diámetros: { $figure }
drawing-raceway-fits = Menor tamaño comercial en que cabe todo
drawing-raceway-no-size = ninguno
drawing-raceway-none = En ningún tamaño comercial de la tabla cabe todo.
drawing-raceway-assumed = No se dio tamaño comercial: dibujado en { $raceway }.
drawing-raceway-without-figures = La tabla no tiene cifras para el tamaño comercial dado: dibujado en { $raceway }.
drawing-raceway-lie = A escala. La posición de cada uno es una de muchas.
drawing-raceway-as-areas = { $number } son demasiados para dibujarlos uno por uno: cada tamaño se dibuja como el área que ocupa, a escala.
drawing-raceway-no-place = No hallan lugar en el círculo dibujado: { $number }
drawing-raceway-more = No dibujados junto a la canalización: { $number } más.

## Cuerpos de tubo conduit

drawing-body-title = Cuerpo de tubo conduit { $shape ->
    [straight] con aberturas opuestas
    [back_outlet] con salida en el fondo
    [side_outlet] con salida en el costado
    [tee] con tres aberturas
   *[cross] con cuatro aberturas o más
}
drawing-body-from-cover = Visto desde la tapa
drawing-body-from-side = Visto de costado, la tapa arriba
drawing-body-to-scale = A escala. No se indica en qué punto de su pared está cada abertura.
drawing-body-dashed = De trazos: una medida requerida o solo supuesta.
drawing-body-not-to-scale = Sin escala: ninguna longitud se da ni se pide.
drawing-body-smaller = { $figure } menos, por su marca
drawing-body-spliced = empalmados
drawing-body-bare = desnudo
drawing-body-compact = compacto
drawing-body-more = y { $number } más
drawing-body-governs = rige
drawing-body-apart = Separadas { $figure }
drawing-body-too-close = Demasiado cerca
drawing-body-by-mark = Más cerca, como lo permite su marca
drawing-body-cross-section = Sección transversal del cuerpo
drawing-body-overfull = Más de lo permitido

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
