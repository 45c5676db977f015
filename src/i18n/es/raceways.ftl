## Ocupación de canalizaciones

rule-raceway-fill-limits = Del área interior de una canalización, un conductor o cable puede ocupar 53 %, dos pueden ocupar 31 %, tres o más 40 %.
    .title = Límites de ocupación de una canalización
rule-raceway-fill-counted = Todo conductor cuenta con su propia sección transversal, incluidos los de puesta a tierra de equipos y los de unión.
    .title = Qué cuenta en una canalización
rule-raceway-fill-nipple = Un niple de hasta 24 in (600 mm) entre dos envolventes puede ocuparse hasta 60 %, sea cual sea el número de conductores.
    .title = Niples
rule-raceway-fill-actual-dimensions = Un conductor o cable que las tablas no tienen cuenta con sus dimensiones reales. Donde se conocen las dimensiones reales de uno que está en las tablas, pueden usarse en su lugar.
    .title = Dimensiones reales
rule-raceway-fill-conductors = Un conductor aislado ocupa la sección transversal que la tabla tiene para su tipo de aislamiento y su calibre; uno compacto, la de la tabla de conductores compactos. Los calibres distintos se suman.
    .title = Conductores aislados
rule-raceway-fill-same-size = De conductores o cables de un mismo tamaño, se permite el siguiente número entero cuando el número calculado termina en 0.8 o más; si no, se desecha la fracción.
    .title = Conductores de un mismo tamaño
rule-raceway-fill-single = Lo mismo vale para un solo conductor: un número calculado de 0.8 o más permite uno.
    .title = Un solo conductor
rule-raceway-fill-bare = Un conductor desnudo ocupa la sección transversal de la tabla de propiedades de los conductores, sólido o cableado.
    .title = Conductores desnudos
rule-raceway-fill-cables = Un cable o cordón multiconductor cuenta como un conductor. Uno de sección elíptica ocupa el área de un círculo con su diámetro mayor.
    .title = Cables en una canalización
rule-raceway-fill-raceway-area = El área interior de una canalización resulta de su clase y su tamaño comercial. La tabla tiene el diámetro interior, y a su lado áreas redondeadas.
    .title = Área interior de una canalización
rule-raceway-fill-smallest = El menor tamaño comercial de una clase en que cabe todo: en él cabe, y en el anterior no.
    .title = Menor tamaño comercial
rule-raceway-fill-emt-size = La tubería eléctrica metálica (EMT) existe en tamaños comerciales hasta 4; desde la edición de 2023, hasta 6.
    .title = La tubería eléctrica metálica más grande
rule-raceway-fill-imc-size = El tubo conduit metálico intermedio (IMC) existe en tamaños comerciales hasta 4; desde la edición de 2023, hasta 6.
    .title = El tubo conduit metálico intermedio más grande
rule-raceway-fill-ent-size = La tubería eléctrica no metálica (ENT) existe en tamaños comerciales hasta 2-1/2; en 2017, que no se leyó, al menos hasta 2.
    .title = La tubería eléctrica no metálica más grande
rule-raceway-fill-lfnc-size = El tubo conduit no metálico flexible hermético a los líquidos (LFNC) existe en tamaños comerciales hasta 4.
    .title = El tubo conduit no metálico flexible hermético a los líquidos más grande
rule-raceway-fill-three-eighths = El tubo conduit metálico flexible de tamaño comercial 3/8, simple o hermético a líquidos, admite tantos conductores como su propia tabla tiene para su tipo y tamaño, y uno más de puesta a tierra de equipos.
    .title = Tubo conduit flexible de tamaño comercial 3/8
rule-raceway-fill-jamming = Tres conductores de un mismo tamaño pueden atascarse al jalarlos donde el diámetro interior de la canalización es de 2.8 a 3.2 veces el suyo. Esto es un consejo, no un requisito.
    .title = Atascamiento de tres conductores

finding-fill-within = { $total } ocupan { $fill } de { $raceway }; para este número ({ $number }) se permite hasta { $limit } ({ $allowed }).
finding-fill-raised = { $total } son más que los { $allowed } a que llega { $limit } de { $raceway }, pero todos son de un mismo tamaño, y el número calculado termina en 0.8 o más: se permiten { $number }.
finding-fill-over = { $total } ocupan { $fill } de { $raceway }, más que { $limit } ({ $allowed }), lo que se permite para este número ({ $number }).
finding-raceway-without-figures = Las dimensiones interiores de { $raceway } no estaban disponibles aquí y no se adivinan. Tómelas del texto impreso.
finding-trade-size-not-permitted = Esta edición no permite { $raceway }: el tamaño comercial más grande es { $most }.
finding-trade-size-by-kind = Esta edición no permite el tamaño comercial { $size } de todos los tipos de canalización que lo tienen. Indique de qué tipo es.
finding-trade-size-permitted = { $raceway } está permitido: el tamaño comercial más grande es { $most }.
finding-trade-size-in-no-text = { $raceway } no lo permite ni el texto anterior a esta edición ni el posterior: el mayor tamaño comercial de ambos es { $most }.
finding-trade-size-not-read = Los textos anteriores y posteriores a esta edición permiten esta clase al menos hasta el tamaño comercial { $most }. No se leyó si esta edición permite { $raceway }: tómelo del texto impreso.
finding-fill-not-confirmed = { $total } ocupan el { $fill } de { $raceway }, del que se permitiría el { $limit } ({ $allowed }); pero nada confirma estas filas de las tablas: { $rows }. Tómelas del texto impreso.
finding-nipple-of-unknown-length = { $total } ocupan { $raceway } más allá de los { $ordinary } de un tramo ordinario, dentro de los { $allowed } de un niple. Solo hasta { $most } lo es: indique su longitud.
finding-three-eighths-within = El tubo conduit flexible de tamaño comercial 3/8 admite { $most } conductores de este tipo y tamaño además de uno de puesta a tierra de equipos; hay { $number }.
finding-not-side-by-side = Las dos cosas más anchas de la canalización miden { $together } una junto a otra, y por dentro tiene { $inside } de ancho.
finding-three-eighths-over = El tubo conduit flexible de tamaño comercial 3/8 admite { $most } conductores de este tipo y tamaño además de uno de puesta a tierra de equipos, no { $number }.
finding-not-in-three-eighths-table = El tubo conduit flexible de tamaño comercial 3/8 se cuenta con una tabla de tipos sueltos de un solo tamaño. No tiene lo que aquí entra.
finding-fittings-not-said = Cuántos conductores admite el tubo conduit flexible de tamaño comercial 3/8 depende de dónde están sus accesorios: indique si por dentro o por fuera.
finding-grounding-not-said = Un conductor más del mismo tamaño puede ser de puesta a tierra de equipos. Indique si uno de estos lo es.
finding-taken-as-nipple = Se tomó como un niple entre dos envolventes. El 60 % no vale para nada más.
finding-too-long-for-nipple = { $length } son más que los { $most } que puede medir un niple, así que valen los límites ordinarios.
finding-may-jam = La canalización es { $ratio } veces tan ancha como uno de los tres conductores. Entre { $from } y { $to } pueden atascarse al jalarlos.
finding-no-trade-size = Ningún tamaño comercial de { $kind } de la tabla da cabida a todo.
finding-larger-without-figures = Ningún tamaño comercial de { $kind } de dimensiones conocidas admite todo. Existen además { $sizes }, cuyas dimensiones no estaban disponibles aquí.
finding-unconfirmed-dimensions = Nada confirma estas filas de las tablas: { $rows }. Compárelas con el texto impreso antes de confiar en esta respuesta.
finding-other-area-count = Leído como { $reading }, en { $what } caben { $theirs } de este tamaño, no { $ours }.
finding-other-area-room = Leído como { $reading }, cabrían { $theirs } más de { $what }, no { $ours }.
finding-other-area-size = Leído como { $reading }, el menor { $what } es { $theirs }, no { $ours }.

because-sizes-differ = Los conductores no son todos de una misma sección transversal.
because-not-a-nipple = No se dice que sea un niple entre dos envolventes.
because-longer-than-a-nipple = Es más largo de lo que puede ser un niple.
because-not-three = No hay exactamente tres conductores.
because-diameters-differ = Los tres conductores no son de un mismo diámetro.

fault-short-and-no-nipple = Una canalización de esta longitud entre dos envolventes es un niple. Omita la longitud si no va entre envolventes.
fault-nothing-in-raceway = Diga qué va en la canalización: conductors, bare_conductors, cables o measured_conductors.
fault-too-many-conductors = { $number } conductores y cables son más que los { $most } que puede tener una solicitud.
fault-trade-size-of-kind = { $kind } no existe en tamaño comercial { $size }.
fault-type-not-compact = La tabla de conductores compactos no tiene { $insulation }.
fault-covering-not-said = { $insulation } se fabrica con y sin recubrimiento exterior, de dimensiones distintas. Indique cuál.
fault-covering-of-other-type = { $insulation } se fabrica de una sola manera. Omita covering.
fault-size-of-insulation = La tabla no tiene { $size } { $insulation }. Indique sus dimensiones reales como conductor medido.
fault-size-of-construction = La tabla no tiene un conductor desnudo { $size } fabricado de esta manera.
fault-cable-without-diameter = Indique el diámetro de un cable redondo, o el major_diameter de uno elíptico.
fault-cable-with-two-diameters = Un cable tiene un diámetro cuando es redondo, o un major_diameter cuando es elíptico: no ambos.
fault-diameter-too-large = Un cable o conductor puede tener un diámetro de a lo más { $most }: ninguna canalización de las tablas da cabida a uno mayor.

point-raceway_area = ¿Qué área interior tiene una canalización: la de su diámetro tabulado, sin redondear, o las áreas redondeadas impresas a su lado?
point-conductor_area = RFH-1 y los alambres para luminaria de su fila en 18 AWG: ¿cuenta el área impresa, o la del diámetro impreso a su lado?
point-ent_dimensions = La tabla de 2017 no se leyó. ¿Es la tubería eléctrica no metálica tan ancha como en 2011, o como en 2020?
point-fmc_three_eighths = El tubo conduit metálico flexible de tamaño comercial 3/8, ¿admite lo que tiene su propia tabla, o lo que dan los porcentajes de otras canalizaciones?

finding-cross-section-enough = El cuerpo tiene una sección transversal de { $given }; se piden { $required }.
finding-cross-section-short = El cuerpo tiene una sección transversal de { $given }, menos que los { $required } que se piden.
finding-cross-section-open = El cuerpo debe tener una sección transversal de { $required }. Indique la que tiene.
finding-raceway-not-tabulated = Las tablas no tienen cifras para { $kind } de tamaño comercial { $size }, así que no se puede pedir ninguna sección transversal.
finding-opening-fill = Los conductores de la abertura «{ $opening }» ocupan { $area } de los { $allowed } que pueden ocuparse.
finding-opening-overfull = Los conductores de la abertura «{ $opening }» ocupan { $area }, más que los { $allowed } que pueden ocuparse.
finding-opening-fill-whatever = Sea cual sea su aislamiento, los conductores de la abertura «{ $opening }» ocupan a lo más { $area } de los { $allowed } que pueden ocuparse.
finding-opening-overfull-whatever = Sea cual sea su aislamiento, los conductores de la abertura «{ $opening }» ocupan al menos { $area }, más que los { $allowed } que pueden ocuparse.
finding-opening-not-tabulated = Los conductores de la abertura «{ $opening }» no se pueden contar: a las tablas les falta su canalización o uno de sus conductores, o no se dijo un aislamiento.
finding-short-radius-space = Un cuerpo de radio corto necesita un tamaño que deje espacio libre a sus conductores; no se establece ninguna cifra para ello.
finding-short-radius-splices = Un cuerpo de radio corto no puede contener empalmes, derivaciones ni dispositivos, sea cual sea su volumen.
finding-body-not-supported = Un cuerpo con empalmes o dispositivos debe soportarse de manera rígida y segura.
finding-body-support-open = Un cuerpo con empalmes o dispositivos debe soportarse de manera rígida y segura. Indique si es así.
finding-body-volume-short = Los empalmes y dispositivos requieren { $required }, pero el cuerpo está marcado con { $available }.
finding-body-volume-enough = Los empalmes y dispositivos requieren { $required } de los { $available } con que está marcado el cuerpo.
finding-body-side-open = { $axis ->
    [width] El ancho
    [height] La altura
    [depth] La profundidad
   *[length] El largo
 } del cuerpo debe ser de { $required }. Indique su medida, o lo que está marcado en el cuerpo.
finding-openings-open = Las aberturas «{ $first }» y «{ $other }» contienen los mismos conductores y deben estar a { $required } de distancia. Indique a qué distancia están, o lo que está marcado en el cuerpo.
finding-full-fill = El cuerpo está marcado como evaluado para todo lo que pueden contener sus canalizaciones, y no contienen más.
finding-full-fill-exceeded = El cuerpo está marcado como evaluado para todo lo que pueden contener sus canalizaciones, y una de ellas contiene más: valen las longitudes de las reglas.
finding-full-fill-open = El cuerpo está marcado como evaluado para todo lo que pueden contener sus canalizaciones, y no se sabe si no contienen más: a las tablas les falta una canalización o un conductor, o no se dijo un aislamiento.

because-short-radius = Es un cuerpo de radio corto.

fault-body-of-one-opening = Un cuerpo de tubo conduit tiene al menos dos aberturas.
fault-opening-twice = Dos aberturas no pueden estar en el mismo lugar.
fault-unknown-opening = El cuerpo no tiene ninguna abertura ahí.
fault-opening-twice-in-pull = Un tiro nombra una abertura dos veces.
fault-bare-and-insulated = Un conductor desnudo no tiene aquí aislamiento ni dimensiones compactas.
fault-splice-without-contents = Los conductores empalmados se cuentan por volumen. Enumérelos en contents, cada uno donde entra y donde sale.
fault-empty-contents = Contents enumera lo que se empalma o conecta. Omítalo donde no hay nada.
