## Cajas para conductores grandes

rule-pull-applies = Las cajas en que entran conductores de calibre 4 AWG y mayores se dimensionan por longitud según sus canalizaciones, no por volumen. Una caja con conductores grandes y pequeños debe cumplir ambas clases de regla.
    .title = Cajas de paso y de empalme
finding-pull-box-size = Un conductor de calibre 4 AWG o mayor no tiene asignación de volumen: su caja se dimensiona por las reglas de cajas de paso. Envíe esta caja también a la revisión de cajas de paso.

## Cajas de paso

rule-pull-trade-size = En las sumas una canalización cuenta con su tamaño comercial en pulgadas, o con su designador métrico en milímetros: no con su diámetro exterior ni interior. Los dos sistemas nunca se mezclan.
    .title = Tamaño comercial en las sumas
rule-pull-straight = Un tiro recto pide una longitud, de pared a pared opuesta, de ocho veces la canalización más grande. No se suma nada por otras canalizaciones, y nada se pide en las direcciones transversales.
    .title = Tiros rectos
rule-pull-angle = Un tiro en ángulo, un tiro en U o un empalme pide una distancia, de la pared de la entrada a la pared opuesta, de seis veces la canalización más grande de su hilera más los tamaños comerciales de todas las demás canalizaciones de esa hilera. Cada hilera se calcula sola; rige el resultado mayor.
    .title = Tiros en ángulo, tiros en U y empalmes
rule-pull-entry-distance = Las entradas que contienen los mismos conductores están separadas al menos seis veces la mayor de las dos canalizaciones.
    .title = Distancia entre entradas
rule-pull-removable-cover = Desde una pared opuesta a una tapa removible, el espacio que necesita el conductor más grande para doblarse (Tabla 312.6(A), un alambre por terminal) puede servir en lugar de la regla de tiros en ángulo. Cambia solo esa dirección.
    .title = Pared opuesta a una tapa removible
rule-pull-cables = Un cable cuenta como la canalización más pequeña que necesitarían sus conductores.
    .title = Cables en las sumas
rule-pull-marked-smaller = Una caja o un cuerpo de tubo conduit listado puede ser más pequeño de lo que piden las reglas cuando lo que contiene queda por debajo de la ocupación plena de sus canalizaciones, o dentro del número y el calibre de conductores que su fabricante marcó en él de manera permanente; pueden usarse otras combinaciones hasta la misma sección transversal total.
    .title = Cajas más pequeñas listadas y marcadas
rule-pull-racking = En una caja con un lado de más de 6 ft (1.8 m), todos los conductores se atan en cables o se colocan en soportes.
    .title = Soportes en cajas grandes
rule-pull-covers = La tapa es adecuada para la caja y las condiciones de uso, y una tapa metálica se pone a tierra y se une eléctricamente.
    .title = Tapas de cajas de paso
rule-pull-barriers = Donde barreras permanentes dividen una caja, cada sección es una caja por sí misma.
    .title = Secciones entre barreras
rule-pull-distribution-blocks = Los bloques de distribución de energía van en cajas de más de 100 in³ (1650 cm³): listados, en una caja tan grande como piden sus instrucciones, con espacio de doblado en sus terminales, sin partes vivas expuestas, y con terminales que los conductores de paso dejan libres. Una barra para conductores de puesta a tierra de equipos puede ir en una caja más pequeña.
    .title = Bloques de distribución de energía
rule-pull-distribution-blocks-size = Una caja con bloques de distribución de energía mide, de cada pared con una entrada a la opuesta, lo que pide la regla del ángulo, sea cual sea lo que se jale ahí. Ninguna marca permite que mida menos.
    .title = Longitud de las cajas con bloques
rule-pull-distribution-blocks-line-side = Un bloque de distribución de energía en el lado de línea del equipo de acometida está listado y marcado para ese uso.
    .title = Bloques en el lado de línea
rule-pull-governs = En cada dirección de la caja rige lo mayor de todo lo que se pide; nada se suma entre sí.
    .title = Qué rige
rule-pull-placement = Cada entrada necesita un lugar dentro de su pared, libre de las demás entradas, y tan lejos de las entradas con los mismos conductores como se pide.
    .title = Colocación de las entradas
rule-pull-conduit-body = Un cuerpo de tubo conduit en que entran conductores de calibre 4 AWG y mayores sigue las longitudes de las reglas de cajas de paso con sus propias dimensiones, salvo que esté listado y marcado para menos.
    .title = Cuerpos de tubo conduit para conductores grandes

finding-sized-by-volume = Estos tiros contienen solo conductores menores que el calibre 4 AWG, o ninguno que deba estar aislado: no se dimensionan por longitud. Envíe la caja a la revisión de cajas de salida, que la dimensiona por volumen.
finding-entry-without-size = No se pudo establecer con qué cuentan estas entradas, así que cada suma de sus hileras está incompleta. Indique el tamaño comercial de una canalización, o conductores que las tablas tengan.
finding-side-enough = { $axis ->
    [width] El ancho
    [height] La altura
    [depth] La profundidad
   *[length] El largo
 } de { $given } tiene los { $required } que se piden (entradas: { $entries }).
finding-side-short = { $axis ->
    [width] El ancho
    [height] La altura
    [depth] La profundidad
   *[length] El largo
 } de { $given } es menor que los { $required } que se piden (entradas: { $entries }).
finding-smaller-by-mark = { $axis ->
    [width] El ancho
    [height] La altura
    [depth] La profundidad
   *[length] El largo
 } de { $given } es menor que los { $required } que se piden (entradas: { $entries }); el listado y la marca lo permiten para lo que se contiene.
finding-side-between = { $axis ->
    [width] El ancho
    [height] La altura
    [depth] La profundidad
   *[length] El largo
 } de { $given } basta si se piden { $least }, y no basta si se piden { $most } (entradas: { $entries }). Indique lo que se pide aquí, para que pueda decirse cuál.
finding-closer-by-mark = Las entradas { $first } y { $other } contienen los mismos conductores y están a { $measured } de distancia, menos que { $required }; el listado y la marca lo permiten para lo que se contiene.
finding-never-apart-by-mark = Las entradas { $first } y { $other } contienen los mismos conductores y aquí pueden estar a lo más a { $measured } de distancia, menos que { $required }; el listado y la marca lo permiten para lo que se contiene.
finding-entries-apart-between = Las entradas { $first } y { $other } contienen los mismos conductores y se piden { $required } entre ellas. Sus orillas más cercanas están a entre { $least } y { $measured }: más no se puede decir de entradas en paredes contiguas que no están a la misma altura. Póngalas a la misma altura, o más lejos.
finding-box-side-open = { $axis ->
    [width] El ancho
    [height] La altura
    [depth] La profundidad
   *[length] El largo
 } de la caja debe ser de al menos { $required }. Indique cuánto es.
finding-distances-without-sides = Las entradas con los mismos conductores deben estar a { $required } de distancia. Si pueden estarlo depende de las tres dimensiones de la caja: indique las demás.
finding-raceway-too-narrow = Lo que entra por { $entry } mide de ancho al menos { $widest }, y ninguna canalización de ese tamaño comercial y tipo mide por dentro más de { $inside }.
finding-raceway-kind-open = Lo que entra por { $entry } mide de ancho al menos { $widest }, y las canalizaciones de ese tamaño comercial pueden no medir por dentro más de { $inside }. Indique de qué tipo es.
finding-entries-at-most = Las entradas { $first } y { $other } contienen los mismos conductores y están a lo más a { $measured } de distancia: menos que { $required }.
finding-mark-covers = La marca abarca lo que se contiene.
finding-mark-exceeded = La marca de { $count } conductores de calibre { $size } no abarca lo que se contiene, así que valen las longitudes de las reglas.
finding-mark-not-listed = Solo una caja listada con la marca permanente de su fabricante puede ser más pequeña, así que valen las longitudes de las reglas.
finding-mark-insulation-open = Se contienen más conductores que los de la marca, así que su sección transversal decide si los abarca. Indique qué aislamiento tienen.
finding-mark-open = Si la marca abarca lo que contiene la caja depende de una sección transversal que las tablas no tienen.
finding-entries-apart = Las entradas con los mismos conductores están tan separadas como se pide.
finding-entries-close = Las entradas { $first } y { $other } contienen los mismos conductores y están a { $measured } de distancia: menos que { $required }.
finding-entries-never-apart = Las entradas { $first } y { $other } contienen los mismos conductores y deben estar a { $required } de distancia, pero en esta caja pueden estar a lo más a { $measured }.
finding-entry-distance-unknown = No se sabe qué distancia debe haber entre las entradas, porque no se conoce el tamaño de una de ellas.
finding-positions-missing = Si las entradas con los mismos conductores están lo bastante separadas depende de dónde están. Se pide: { $pairs }. Indique sus posiciones.
finding-entry-outside-wall = La entrada { $entry } no queda dentro { $wall ->
    [left] de la pared izquierda
    [right] de la pared derecha
    [top] de la pared superior
    [bottom] de la pared inferior
   *[back] del fondo
 }.
finding-entries-overlap = Las entradas { $first } y { $other } se traslapan.
finding-entries-placed = Cada entrada con posición queda dentro de su pared.
finding-layout-open = No se pueden buscar lugares mientras una entrada no tenga tamaño.
finding-layout-not-found = No se encontró ninguna caja con un lugar para cada entrada dentro del trabajo que una solicitud puede causar. Eso no prueba que no la haya: pregunte con un paso mayor.
finding-layout-smallest = Cada entrada tiene un lugar en una caja de { $width } de ancho, { $height } de altura y { $depth } de profundidad. En la misma cuadrícula, ninguna caja de esa profundidad con una suma menor de ancho y altura lo tiene.
finding-layout-not-proven = Cada entrada tiene un lugar en una caja de { $width } de ancho, { $height } de altura y { $depth } de profundidad. Puede servir una más pequeña: el trabajo que una solicitud puede causar terminó antes de mirarlas todas.
finding-layout-needs = Las sumas piden { $axis ->
    [width] un ancho
    [height] una altura
    [depth] una profundidad
   *[length] un largo
 } de { $sum }, pero en fila, con las distancias y los espacios libres pedidos, las entradas ocupan al menos { $needed }. La caja es { $growth } mayor de lo que piden las sumas.
finding-layout-grows = Las sumas piden { $axis ->
    [width] un ancho
    [height] una altura
    [depth] una profundidad
   *[length] un largo
 } de { $sum }, pero con cada entrada en un lugar que todas las reglas permiten debe ser de { $needed }: { $growth } más.
finding-racked = Un lado de { $longest } pasa de { $limit }; los conductores están atados en cables o colocados en soportes.
finding-not-racked = Un lado de { $longest } pasa de { $limit }, así que todos los conductores deben atarse en cables o colocarse en soportes.
finding-racking-open = Un lado de { $longest } pasa de { $limit }, así que todos los conductores deben atarse en cables o colocarse en soportes. Indique si lo están.
finding-racking-ahead = La caja tendrá un lado de al menos { $longest }, más de { $limit }: sus conductores tendrán que atarse en cables o colocarse en soportes.
finding-cover = La caja necesita una tapa adecuada para ella y las condiciones de uso; una tapa metálica se pone a tierra y se une eléctricamente.
finding-barriers = Las barreras permanentes hacen de cada sección una caja por sí misma, y cada una se calculó sola.
finding-block-volume-enough = La caja tiene { $volume }, más de los { $limit } por debajo de los cuales no puede contener ningún bloque de distribución de energía.
finding-block-volume-short = La caja tiene { $volume }. Solo una caja de más de { $limit } puede contener un bloque de distribución de energía.
finding-block-volume-open = Solo una caja de más de 100 in³ (1650 cm³) puede contener un bloque de distribución de energía. Indique sus dimensiones.
finding-block-conditions = El bloque de distribución de energía cumple las demás condiciones para su uso en una caja.
finding-block-conditions-broken = El bloque de distribución de energía no cumple estas condiciones para su uso en una caja.
finding-block-conditions-open = Si el bloque de distribución de energía puede usarse depende de lo que no se dijo: su listado, la caja que piden sus instrucciones, el espacio de doblado, las partes vivas cubiertas, las terminales libres.
finding-block-line-side = En el lado de línea del equipo de acometida el bloque debe estar listado y marcado para ese uso.

because-smaller-than-4-awg = Sus conductores son menores que el calibre 4 AWG.
because-not-insulated = No se requiere que sus conductores grandes estén aislados.
because-row-only-straight = La hilera no tiene tiro en ángulo, tiro en U ni empalme.
because-cover-not-removable = La tapa opuesta al fondo no es removible.
because-not-listed = No está listado.
because-spliced = Los conductores están empalmados, y se lee que no son los mismos a ambos lados del empalme.
because-over-1000-volts = El sistema es de más de 1000 V: las longitudes siguen los cables.

fault-empty-list = Esta lista necesita al menos un elemento.
fault-box-and-sections = Una caja dividida tiene sus dimensiones sección por sección. Omita box, o sections.
fault-marked-and-sections = Una caja marcada no está dividida. Omita marked, o sections.
fault-one-section = Una caja dividida tiene al menos dos secciones.
fault-some-sections-measured = Indique las dimensiones de todas las secciones, o de ninguna.
fault-section-missing = Indique en qué sección está.
fault-unknown-section = No hay ninguna sección { $id }.
fault-unknown-entry = No hay ninguna entrada { $id }.
fault-raceway-and-cable = Una entrada es o una canalización o un cable: no ambos.
fault-neither-raceway-nor-cable = Diga qué entra: raceway o cable.
fault-entry-without-cables = Por encima de 1000 V se necesitan los cables de cada entrada: cuentan sus diámetros.
fault-cables-over-1000-volts = Los cables con sus diámetros cuentan solo por encima de 1000 V. Ponga over_1000_volts, u omítalos.
fault-cable-over-1000-volts = Por encima de 1000 V un cable se describe en cables_over_1000_volts.
fault-conductor-over-cable = Un conductor no puede ser más grueso que el cable en que está.
fault-position-without-box = Una posición es un lugar en una caja de dimensiones dadas. Indíquelas también.
fault-position-not-in-wall = Indique las dos medidas que quedan en { $wall ->
    [left] la pared izquierda
    [right] la pared derecha
    [top] la pared superior
    [bottom] la pared inferior
   *[back] el fondo
 }: from_left y from_bottom en el fondo, from_bottom y from_back en las paredes izquierda y derecha, from_left y from_back en las paredes superior e inferior.
fault-pull-of-one-entry = Un tiro une al menos dos entradas.
fault-entry-twice-in-pull = Un tiro nombra la entrada { $id } dos veces.
fault-pull-through-barrier = Un tiro se queda en una sección; los conductores que pasan una barrera entran ahí en la sección siguiente.
fault-offset-not-opposite = Solo las entradas en paredes opuestas pueden estar desalineadas entre sí.
fault-pull-without-conductor = Indique cuál es el conductor más grande: decide si el tiro se dimensiona por longitud.

point-angle_sum = ¿Suma la regla de tiros en ángulo todas las entradas de la hilera, o solo las de tiros en ángulo, tiros en U y empalmes?
point-back_wall_row = Donde no se declara ninguna hilera en el fondo, ¿qué entradas están en una misma hilera?
point-entry_distance = La distancia entre entradas, ¿se mide de borde a borde, o de centro a centro?
point-spliced_conductor = Un conductor empalmado en la caja, ¿es el mismo conductor a ambos lados del empalme?
point-straight_splice = Los conductores empalmados entre paredes opuestas, ¿siguen solo la regla de tiros en ángulo, o también la de tiros rectos?
point-offset_entries = Un tiro entre paredes opuestas cuyas entradas están desalineadas, ¿sigue siendo un tiro recto?
point-hinged_cover = ¿Es removible una tapa con bisagras?
point-cable_raceway = Un cable cuenta como la canalización que necesitarían sus conductores: ¿de qué clase?
point-cable_insulation = Donde no se dice el aislamiento de los conductores de un cable, ¿cuál se supone?
point-marked_size = El calibre de conductor marcado en una caja listada, ¿es también el mayor que puede usarse?

## Cajas de más de 1000 V

rule-over-1000-volts-scope = Para sistemas de más de 1000 V las longitudes de una caja de paso se cuentan en diámetros exteriores de los cables, no en tamaños comerciales.
    .title = Cajas de más de 1000 V
rule-over-1000-volts-straight = Un tiro recto pide 48 diámetros del cable más grande con blindaje o con cubierta de plomo, y 32 del más grande sin ninguno de los dos.
    .title = Tiros rectos de más de 1000 V
rule-over-1000-volts-angle = Un tiro en ángulo o en U pide una distancia, de la pared de la entrada a la pared opuesta, de 36 diámetros del cable más grande (24 donde no tiene blindaje ni cubierta de plomo) más los diámetros de todos los demás cables que entran por la misma pared.
    .title = Tiros en ángulo y en U de más de 1000 V
rule-over-1000-volts-entry-exit = Donde un cable entra y donde sale están separados al menos 36 de sus diámetros, 24 donde no tiene blindaje ni cubierta de plomo.
    .title = Entrada y salida de un cable de más de 1000 V
rule-over-1000-volts-removable-cover = Desde una pared opuesta a una tapa removible, el radio de curvatura del cable puede servir en lugar de la regla de tiros en ángulo.
    .title = Pared opuesta a una tapa removible por encima de 1000 V
rule-over-1000-volts-bending-radius = El radio de curvatura mínimo es de 12 diámetros de un cable con blindaje o con cubierta de plomo y de 8 de otro; para un cable de varios conductores con blindaje, el mayor entre 12 diámetros de un conductor y 7 del cable.
    .title = Radio de curvatura por encima de 1000 V
rule-over-1000-volts-removable-side = Al menos un lado de la caja se puede quitar.
    .title = Lado removible por encima de 1000 V
rule-over-1000-volts-construction = Por encima de 1000 V la caja encierra todo por completo, protege contra la corrosión, redondea los bordes o lleva boquillas donde pasan cables, mantiene su tapa bien sujeta y lleva por fuera una advertencia permanente de alta tensión.
    .title = Construcción por encima de 1000 V

finding-removable-side = Un lado de la caja se puede quitar.
finding-no-removable-side = Ningún lado de la caja se puede quitar, y por encima de 1000 V al menos uno debe ser removible.
finding-high-voltage-construction = Por encima de 1000 V la caja debe además encerrar por completo, resistir la corrosión, proteger los cables donde atraviesan tabiques, tener tapas bien sujetas y estar marcada por fuera con una advertencia de alta tensión.

point-cable_diameter = En un cable de varios conductores de más de 1000 V, ¿cuenta el diámetro del cable, o el de su conductor más grande?

finding-insulated-open = Que estos tiros se dimensionen por longitud depende de si su conductor mayor debe ser aislado. Las longitudes se muestran como si debiera serlo.
finding-mark-at-full-fill = El marcado solo sirve por debajo de la ocupación plena de las canalizaciones, y aquí una canalización está tan llena como se permite: rigen las longitudes de las reglas.
finding-mark-fill-open = El marcado cubre lo que hay dentro, pero solo sirve donde cada canalización contiene menos que su ocupación plena. Indique si es así.
finding-mark-without-conductors = Que el marcado cubra lo que hay dentro depende de los conductores de la caja. Enumérelos.
finding-mark-over-1000-volts = Por encima de 1000 V, un marcado de conductores no permite que la caja sea menor.
finding-wall-without-room = { $wall ->
    [left] La pared izquierda
    [right] La pared derecha
    [top] La pared superior
    [bottom] La pared inferior
   *[back] El fondo
 } no tiene sitio para sus entradas, ni siquiera con los agujeros más pequeños que podrían tener.
finding-wall-room-open = Que { $wall ->
    [left] la pared izquierda
    [right] la pared derecha
    [top] la pared superior
    [bottom] la pared inferior
   *[back] el fondo
 } tenga sitio para sus entradas depende de dónde estén.
finding-walls-with-room = Cada pared tiene sitio para los agujeros más pequeños que podrían tener sus entradas.
finding-block-line-side-marked = El bloque de distribución está marcado para el lado de la línea del equipo de acometida.
finding-block-line-side-open = Indique si el bloque está en el lado de la línea del equipo de acometida, donde debe estar marcado para ese uso.
finding-block-over-1000-volts = La regla de los bloques de distribución no es de las que rigen por encima de 1000 V: no puede decirse si este bloque se permite.
finding-cable-insulation-open = Lo que cuenta un cable depende del aislamiento de sus conductores. Indíquelo, o elija cómo debe leerse.
finding-removable-side-open = Por encima de 1000 V un lado de la caja debe ser removible: indique si lo es la tapa.
because-spliced-by-angle = Los conductores están empalmados: rige la regla de ángulo, y no la de tiros rectos.
because-at-full-fill = Una canalización está tan llena como se permite.
because-marked-over-1000-volts = Por encima de 1000 V un marcado de conductores no cuenta.
because-not-on-line-side = No está en el lado de la línea del equipo de acometida.
because-marked-smaller = El marcado cubre lo que contiene el cuerpo.
fault-mark-list-and-pulls = Los conductores enumerados con el marcado no son los de los tiros. ¿Cuáles son correctos?
fault-box-without-sides = Indique al menos una dimensión interior de la caja, u omita la caja para preguntar qué se requiere.
fault-outside-smaller-than-trade-size = Ninguna canalización de este tamaño comercial es tan delgada. ¿Cuál es correcto?
fault-outside-not-of-raceway = Ninguna canalización de este tipo y tamaño comercial tiene este diámetro exterior, con recubrimiento o sin él. ¿Cuál es correcto?
fault-cable-thinner-than-conductors = Los conductores de este cable ocupan más que todo él. ¿Cuál es correcto?
fault-pull-larger-than-cable = El tiro contiene un conductor mayor que el cable en que llega. ¿Cuál es correcto?
fault-cables-of-one-pull-differ = Los mismos cables entran por una de estas entradas y salen por la otra, y se describen de manera distinta. ¿Cuál es correcta?
finding-placed-by-kind = Que la entrada { $entry } tenga sitio donde está depende de cuánto miden de ancho las canalizaciones. Indique de qué tipo son.
finding-wall-room-by-kind = Que { $wall ->
    [left] la pared izquierda
    [right] la pared derecha
    [top] la pared superior
    [bottom] la pared inferior
   *[back] el fondo
 } tenga sitio para sus entradas depende de cuánto miden de ancho sus canalizaciones. Indique de qué tipo son.
finding-wall-room-unsaid = Que los agujeros de las entradas tengan sitio en sus paredes depende de dimensiones de la caja que no se dijeron. Indíquelas.
finding-racking-side-open = En una caja con un lado de más de { $limit }, los conductores se atan en cables o se colocan en soportes, y no se dijeron todos los lados. Indique los demás, o si los conductores lo están.
fault-row-and-positions = Por las posiciones, esta entrada no está en la hilera que se le indica: las entradas cuyas orillas se traslapan a través de la hilera están en una, y las demás en varias. ¿Cuál es correcta?
fault-box-unmarked-and-marked = Se dice que la caja no está marcada, y se da una marca suya. ¿Cuál es correcto?
fault-some-positions = Indique dónde está cada entrada de la caja o sección, o ninguna.
fault-offset-and-positions = Que estas entradas estén alineadas se dice aquí de una manera y por sus posiciones de otra. ¿Cuál es correcta?
