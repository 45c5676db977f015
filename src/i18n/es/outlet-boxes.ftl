## Volumen de una caja

rule-outlet-volume-scope = El volumen que aportan una caja y lo que se le acopla debe ser al menos el volumen que requiere su contenido. Lo exacto basta.
    .title = Volumen disponible y volumen requerido
rule-outlet-volume-assembly = El volumen de una caja es la suma de sus secciones ensambladas. Un anillo para yeso, un anillo de extensión, una tapa realzada o abovedada suma el volumen marcado en él o ella, o el de la caja estándar de que está hecho; sin ninguno de los dos no suma nada.
    .title = Secciones ensambladas
rule-outlet-volume-standard = Una caja metálica estándar sin marca tiene el volumen que da la tabla para sus dimensiones: no el producto de sus dimensiones exteriores, y nada entre dos filas.
    .title = Cajas metálicas estándar
rule-outlet-volume-marked = Toda caja no metálica, y cualquier caja de hasta 100 in³ (1650 cm³) que la tabla no tiene, toma el volumen que su fabricante marcó en ella. Una caja estándar marcada con más de lo que da la tabla puede usar su marca.
    .title = Cajas marcadas
rule-outlet-volume-barrier = Una barrera divide una caja en espacios, y cada uno debe dar cabida a su propio contenido. Una barrera sin marca ocupa 0.5 in³ (8.2 cm³) si es metálica y 1.0 in³ (16.4 cm³) si no lo es.
    .title = Barreras y los espacios que forman
rule-outlet-volume-offer = Se ofrecen cajas estándar para los gangs que necesitan los dispositivos: cajas cuadradas para hasta dos, cajas octagonales y cajas fundidas de una sola tapa para uno, cajas que se cuentan por gang para cualquier número.
    .title = Qué cajas estándar se ofrecen

finding-volume-enough = El contenido requiere { $required } de los { $available } que hay.
finding-volume-short = El contenido requiere { $required }, pero hay solo { $available }: faltan { $short }.
finding-volume-open = Lo que se pudo contar requiere { $required } de los { $available } que hay, pero no todo se pudo contar.
finding-volume-not-established = El volumen de esta caja no está establecido. Una caja no metálica, y una caja de hasta 100 in³ (1650 cm³) que la tabla no tiene, necesitan su volumen marcado.
finding-volume-enough-either-way = El contenido requiere de { $required } a { $most } de los { $available } que hay, sea lo que sea lo que no se dice.
finding-volume-unknown = El contenido requiere { $required }; cuánto tiene la caja no está establecido.
finding-contents-unsaid = No se dice nada de lo que hay en la caja. Nómbrelo, o diga con nothing que no hay nada.
finding-required-range = El contenido requiere de { $least } a { $most }: lo que no se dice ocupa espacio o no. Las cajas ofrecidas dan cabida a lo más.
finding-more-yokes-than-gangs = Los dispositivos necesitan { $needed } gangs, y hay { $gangs }.
finding-gangs-unsaid = Los dispositivos necesitan { $needed } gangs. Diga cuántos tiene la caja, o el anillo que lleva.
finding-barriers-fill-the-box = Las barreras ocupan { $taken } de una caja de { $whole }: no quedan espacios.
finding-fewer-barriers-than-spaces = Las barreras, { $barriers } en total, no pueden formar { $spaces } espacios.
finding-barriers-may-cross = Las barreras, { $barriers } en total, forman { $spaces } espacios solo si se cruzan, y lo que dejan las barreras que se cruzan no se calcula aquí. Nombre cada barrera entre dos espacios.
finding-more-barriers-than-spaces = Las barreras, { $barriers } en total y una al lado de otra, forman más de { $spaces } espacios. Nombre cada espacio, o diga que dividen la caja menos barreras.
finding-shares-of-an-unsaid-whole = Cada espacio tiene su parte por gangs, y no se dice cuántos gangs tiene la caja: juntas deben ser toda la caja.
finding-shares-do-not-make-the-whole = Los espacios miden { $together } en conjunto, y la caja tiene { $whole }, de los que sus barreras dejan { $left }. Mídalos de nuevo, o reparta la caja por gangs.
finding-section-adds-nothing = Esta sección no lleva marca de volumen y no se dice que esté hecha de una caja estándar, así que no suma nada.
finding-barrier-in-unknown-box = No se sabe lo que dejan las barreras mientras no se sepa el volumen de la caja.
finding-barrier-policy = Lo que ocupan las barreras se descontó primero de toda la caja, y el resto se repartió por gangs o por volumen medido. El código no dice cómo; este es un criterio de este servicio.
finding-inside-measure = La caja supera el tamaño que debe llevar marca y no la tiene; se calcularon { $volume } a partir de sus dimensiones interiores.

fault-mark-below-table = Una caja de la tabla tiene al menos el volumen de la tabla, y esta marca es menor. ¿Cuál de los dos es correcto?
fault-shares-are-not-the-box = Los espacios suman { $shares } gangs y la caja tiene { $gangs }. ¿Cuál de los dos es correcto?
fault-no-contents = Diga qué hay en la caja: indique contents, o spaces donde la dividen barreras. Una caja vacía se dice con nothing.
fault-contents-and-spaces = Indique contents, para una caja sin barreras, o spaces, para una dividida: no ambos.
fault-barriers-without-spaces = Las barreras forman espacios separados. Indique spaces, cada uno con su parte y su contenido.
fault-spaces-without-barriers = Solo las barreras forman espacios separados. Nómbrelas en enclosure.barriers, o indique contents en su lugar.
fault-one-space = Una caja dividida tiene al menos dos espacios.
fault-shares-of-spaces = Indique gangs para cada espacio, o measured_volume para cada espacio.
fault-standard-box-is-metal = Las cajas de la tabla son metálicas. A una caja no metálica dele su volumen marcado en lugar de un tamaño estándar.
fault-standard-box-is-not-measured = Una caja estándar tiene el volumen de la tabla. Omita sus dimensiones interiores.
fault-marked-box-is-not-measured = Una caja marcada tiene el volumen que lleva marcado. Omita sus dimensiones interiores.
fault-gangs-of-standard-box = { $box } con { $gangs } gangs no es una fila de la tabla. Las cajas cuadradas y octagonales no se cuentan por gang; una caja fundida tiene un gang bajo una tapa sencilla y dos o más bajo una tapa múltiple.
fault-side-too-long = Una dimensión interior puede ser de a lo más { $most }.

point-unmarked_large_box = Una caja de más de 100 in³ que ni está marcada ni está en la tabla: ¿puede servir su medida interior, o solo una marca?

## Contenido de una caja

rule-outlet-fill-sum = El volumen requerido es la suma de lo que ocupan conductores, abrazaderas, accesorios de soporte, dispositivos, conductores de puesta a tierra y (desde 2023) bloques de terminales.
    .title = Volumen requerido
rule-outlet-fill-allowance = Cada calibre de 18 AWG a 6 AWG tiene una sola asignación de volumen publicada, sean cuales sean el aislamiento, el cableado o el metal del conductor.
    .title = Asignación de un conductor
rule-outlet-fill-conductors = Un conductor que entra y termina, o se empalma, en la caja ocupa una asignación. Uno que pasa sin interrupción ocupa una; un bucle sin interrupción ocupa dos cuando mide al menos el doble del conductor libre requerido. Uno que nunca sale de la caja no ocupa ninguna.
    .title = Conductores
rule-outlet-fill-canopy = Los conductores de puesta a tierra, y hasta cuatro alambres para luminaria menores que el calibre 14 AWG, que vienen de un dosel abovedado y terminan en la caja pueden omitirse.
    .title = Alambres de un dosel abovedado
rule-outlet-fill-clamps = Las abrazaderas internas ocupan juntas una asignación, sean cuantas sean, según el conductor más grande de la caja. Un conector que sujeta por fuera de la caja no ocupa ninguna.
    .title = Abrazaderas internas
rule-outlet-fill-clamp-assembly = Un conjunto de abrazadera listado en que también terminan los conductores del cable descuenta de la caja el volumen que ocupa, y ninguna asignación.
    .title = Conjuntos de abrazadera con terminación
rule-outlet-fill-support-fittings = Cada tipo de accesorio de soporte, como un espárrago o un hickey, ocupa una asignación según el conductor más grande de la caja.
    .title = Accesorios de soporte
rule-outlet-fill-devices = Cada yugo ocupa dos asignaciones según el conductor más grande conectado a un dispositivo de ese yugo, sean cuantos sean los dispositivos que lleva. Uno que necesita varios gangs para su montaje ocupa dos por cada gang.
    .title = Dispositivos y equipos
rule-outlet-fill-grounding = Los conductores de puesta a tierra y los puentes de unión se cuentan juntos según el más grande de ellos: una asignación para todos hasta 2017; desde 2020 una para los primeros cuatro, y un cuarto por cada uno más.
    .title = Conductores de puesta a tierra
rule-outlet-fill-nm-grounding = Un cable con cubierta no metálica tiene un conductor de puesta a tierra: tan grande como los demás hasta 10 AWG, y de 10 AWG al menos por encima de ese calibre.
    .title = Conductor de puesta a tierra del cable NM
rule-outlet-fill-isolated-set = Hasta 2017, un juego separado de conductores de puesta a tierra para equipos con tierra aislada ocupa una asignación propia, según el más grande de ese juego.
    .title = Conductores de tierra aislada
rule-outlet-fill-terminal-blocks = Desde 2023, cada conjunto de bloque de terminales ocupa una asignación según el conductor más grande que termina en él, sea cual sea el número de sus polos.
    .title = Bloques de terminales
rule-outlet-fill-no-allowance = Las contratuercas, las boquillas, los conectores de alambre, los tornillos y otras piezas pequeñas no ocupan ninguna asignación.
    .title = Lo que no ocupa ninguna asignación

finding-devices-differ = Los yugos de una misma caja pueden ocupar asignaciones distintas: cada uno se cuenta según el conductor más grande conectado a un dispositivo de ese yugo, no según el más grande de la caja ({ $largest }). Aquí: { $yokes }.
finding-device-without-conductor = Un yugo se cuenta según el conductor más grande conectado a él. Indique cuál es.
finding-block-without-conductor = Un bloque de terminales se cuenta según el conductor más grande que termina en él. Indique cuál es.
finding-loop-depth-unsaid = En una caja honda un lazo debe ser más largo para contar doble. Diga a qué profundidad tras la abertura salen los conductores.
finding-loop-threshold = Aquí un bucle sin interrupción cuenta doble cuando mide al menos { $threshold }.
finding-no-allowance-published = Para un conductor menor que el calibre 18 AWG no hay ninguna asignación publicada, así que no se pudo contar.
finding-no-conductors = Las abrazaderas y los accesorios de soporte se cuentan según el conductor más grande de la caja. Indique qué conductores hay.
finding-largest-has-no-allowance = Las abrazaderas y los accesorios de soporte se cuentan según el conductor más grande de la caja, y para ese calibre no hay ninguna asignación publicada.

finding-clamps-unsaid = Entra un cable, y no se dice si hay una abrazadera dentro de la caja. Ocuparía una asignación.
finding-cable-grounding-unsaid = No se dice si este cable tiene un conductor de puesta a tierra, ni de qué calibre. Indique su calibre, o none.
finding-nm-grounding-size-unsaid = El cable NM tiene un conductor de puesta a tierra de equipo, de 10 AWG hasta el calibre de los conductores del circuito; su calibre no se dice, y aquí importa. Indíquelo.
finding-nm-without-grounding = Un cable NM tiene un conductor de puesta a tierra. Diga que es un cable existente, o indique el calibre del conductor.
finding-fixture-wires-unsaid = Los alambres de lo que cuelga aquí cuentan, y no se dice cuáles hay. Nómbrelos, o escriba la lista vacía.
finding-assembly-in-metal-box = Un conjunto de abrazadera con terminación se hace para cajas no metálicas, y esta caja es metálica.
finding-assembly-in-unsaid-box = Un conjunto de abrazadera con terminación se hace para cajas no metálicas. Diga de qué es esta caja.
finding-assembly-not-listed = Un conjunto de abrazadera con terminación sirve en cajas para las que está listado y marcado, y no lo está para esta.
finding-assembly-not-read = No se pudo leer lo que esta edición dice de un conjunto de abrazadera con terminación, así que lo que ocupa queda abierto. Tómelo de la edición impresa.
finding-barrier-material-unsaid = Lo que ocupa una barrera sin marca depende de su material, y aquí importa. Diga de qué es, o indique el volumen marcado en ella.
finding-assembly-listing-unsaid = Un conjunto de abrazadera con terminación sirve en cajas para las que está listado y marcado. Diga si lo está para esta.

because-stays-inside = Ninguna parte de él sale de la caja.
because-factory-leads = Las puntas que venían con el dispositivo no salen de la caja.
because-canopy = Viene de un dosel abovedado y termina en la caja.
because-no-canopy = Lo que cuelga aquí no tiene un dosel que alivie, así que sus alambres cuentan.
because-outside = Sujeta por fuera de la caja.
because-molded = Se lee que el volumen marcado ya deja fuera las lengüetas moldeadas.
because-own-volume = En su lugar se descuenta de la caja su propio volumen.
because-not-in-edition = Esta edición no tiene esa regla.
because-wire-connector = Un conector de alambre no ocupa ninguna asignación.
because-small-fitting = Un accesorio pequeño no ocupa ninguna asignación.
because-not-a-conductor-inside = No es un conductor dentro de la caja.
because-unmarked = No lleva marca de volumen y no está hecho de una caja estándar.

fault-nothing-and-something = No puede no haber nada en la caja y haber esto.
fault-listing-of-plain-clamp = Solo un conjunto de abrazadera con terminación está listado para ciertas cajas.
fault-loop-without-length = Un bucle necesita su longitud: decide si cuenta una o dos veces.
fault-length-without-loop = Solo un bucle tiene longitud de bucle.
fault-deeper-than-box = Los conductores no pueden salir a mayor profundidad que la de la caja. Indique cuál de las dos cosas es cierta.
fault-opening-wider-than-box = La abertura no puede ser más ancha que la caja. Indique cuál de las dos cosas es cierta.
fault-ring-wider-than-box = Un aro o una tapa de { $gangs } gangs no va en esta caja: { $most } es lo máximo. Indique cuál de las dos cosas es cierta.
fault-extension-of-another-box = Una extensión tiene la cara de la caja que extiende, y esta está hecha de otra. Indique cuál de las dos cosas es cierta.
fault-ring-narrower-than-box = Un aro de menos módulos (gangs) no va en una caja de tantos. Indique cuál de las dos cosas es cierta.
fault-molded-clamp-in-metal-box = Las lengüetas elásticas se moldean en cajas de plástico, y esta caja es metálica. Indique cuál de las dos cosas es cierta.
fault-assembly-without-volume = Un conjunto de abrazadera con terminación descuenta de la caja su propio volumen. Indique cuánto es.
fault-volume-of-plain-clamp = Solo un conjunto de abrazadera con terminación tiene un volumen propio.

point-canopy_wires = Más de cuatro alambres pequeños para luminaria que vienen de un dosel: ¿cuentan todos, o solo los que pasan de cuatro?
point-fan_canopy = ¿Es el dosel de un ventilador de techo de los que permiten omitir sus alambres?
point-bonding_jumpers = Donde la edición nombra solo los conductores de puesta a tierra: un puente de unión que entra, ¿se suma a ellos o es un conductor como cualquier otro?
point-molded_clamps = Las lengüetas elásticas moldeadas en una caja de plástico, ¿son abrazaderas internas, o ya están fuera de su volumen marcado?
point-device_leads = Un dispositivo con puntas propias: ¿se cuenta su yugo según el conductor del circuito, o según las puntas?
point-loop_threshold = Donde una caja profunda pide más conductor libre que la longitud base: ¿alarga eso un bucle que cuenta doble?
point-rail_splices = Las terminales de empalme sobre un riel de montaje, ¿son un bloque de terminales, o conectores de empalme?
point-small_conductors = ¿Puede contarse como calibre 18 AWG un conductor menor que 18 AWG?
