## Conductor libre

rule-free-conductor-length = En cada punto de salida, de empalme y de interruptor se dejan 6 in (150 mm) de conductor libre para empalmes y conexiones, medidos desde donde el conductor sale de su canalización o cubierta dentro de la caja.
    .title = Longitud de conductor libre
rule-free-conductor-outside = Donde alguna dimensión de la abertura es menor que 8 in (200 mm), cada conductor debe además alcanzar 3 in (75 mm) fuera de la abertura.
    .title = Alcance fuera de una abertura pequeña

## Conductores libres de una caja

rule-free-conductor-unbroken = Un conductor que pasa por una caja sin empalmarse ni terminar en ella no necesita dejarse largo.
    .title = Conductores que pasan sin interrupción
rule-free-conductor-spliced = Desde 2023, la longitud libre puede ser de una sola pieza o completarse con un empalme. Las ediciones anteriores no lo dicen.
    .title = Longitud libre completada con un empalme
rule-free-conductor-splice-place = Cada empalme va en una caja o en un cuerpo de tubo conduit, donde queda accesible.
    .title = Dónde puede ir un empalme

finding-free-length-enough = El conductor { $subject } tiene { $given } libres desde donde sale de su canalización o cubierta; se requieren { $limit }.
finding-free-length-short = El conductor { $subject } tiene solo { $given } libres desde donde sale de su canalización o cubierta; se requieren { $limit }.
finding-free-length-open = El conductor { $subject } necesita { $limit } libres desde donde sale de su canalización o cubierta. Indique cuánto tiene.
finding-sound-length-enough = Recortado hasta el aislamiento sano, el conductor { $subject } conserva { $given } libres; se requieren { $limit }. No necesita empalme.
finding-sound-length-short = Recortado hasta el aislamiento sano, el conductor { $subject } conserva solo { $given } libres; se requieren { $limit }.
finding-sound-length-open = El conductor { $subject } necesita { $limit } libres una vez recortado hasta el aislamiento sano. Indique cuánta longitud sana queda.
finding-unspliced-length-enough = El conductor { $subject } tiene { $given } libres en una sola pieza; se requieren { $limit }, y aquí solo cuenta la longitud de una sola pieza.
finding-unspliced-length-short = El conductor { $subject } tiene solo { $given } libres en una sola pieza; se requieren { $limit }, y aquí solo cuenta la longitud de una sola pieza.
finding-unspliced-length-open = El conductor { $subject } necesita { $limit } libres, y aquí solo cuenta la longitud de una sola pieza. Indique cuánto mide hasta el empalme.
finding-reach-enough = El conductor { $subject } alcanza { $given } fuera de la abertura; se requieren { $limit } donde la abertura es pequeña.
finding-reach-short = El conductor { $subject } alcanza solo { $given } fuera de la abertura; se requieren { $limit } porque la abertura es pequeña.
finding-reach-open = El conductor { $subject } debe alcanzar { $limit } fuera de la abertura si esta es pequeña. Indique su longitud y a qué profundidad sale, o cuánto alcanza.
finding-opening-open = Si el conductor { $subject } debe alcanzar { $limit } fuera de la abertura depende del tamaño de la abertura. Indique su ancho y su altura, o su diámetro.
finding-reach-unknown = El conductor { $subject } debe alcanzar { $limit } fuera de la abertura. Indique su longitud y a qué profundidad sale, o cuánto alcanza.
finding-reach-short-at-most = El conductor { $subject } alcanza como máximo { $given } fuera de la abertura, por lo profundos que son ya los aros; se requieren { $limit } porque la abertura es pequeña.
finding-free-length-at-least = El conductor { $subject } tiene por lo menos { $given } libres, por lo que alcanza fuera de la abertura; se requieren { $limit }.
finding-splice-inside-box = El empalme que alarga el conductor { $subject } está dentro de esta caja.
finding-splice-outside-box = El empalme que alarga el conductor { $subject } no está dentro de esta caja. Un empalme necesita una caja propia y accesible.
finding-splice-place-open = Un empalme debe ir en una caja. Indique si el que alarga el conductor { $subject } está dentro de esta caja.
finding-damage-in-wall = El aislamiento del conductor { $subject } está dañado detrás del extremo de su canalización o cubierta. Un empalme en esta caja no puede eliminar ese daño: reemplace el conductor o el cable, libere una longitud sana, o ponga una caja donde está el daño. Esta revisión no lo decide.
finding-damage-of-unspliced = El aislamiento del conductor { $subject } está dañado. Si se corta el daño, ya no pasa aquí sin interrupción, y lo que lo reemplace debe juzgarse: indique qué se hace con el daño. Esta revisión no lo decide.
finding-splice-counts = Esta edición dice que la longitud libre del conductor { $subject } puede completarse con un empalme.
finding-splice-counts-silent = Esta edición no dice si un empalme puede completar la longitud libre del conductor { $subject }. Aquí se lee que cuenta; los inspectores han diferido.
finding-splice-does-not-count = Esta edición no dice si un empalme puede completar la longitud libre del conductor { $subject }. Aquí se lee que no cuenta.
finding-shared-pigtail = El conductor { $subject } y otro están unidos en un solo conector con una sola cola de empalme (pigtail). Aquí se lee que cada uno debe tener la longitud suficiente antes de unirse; los inspectores difieren.
finding-splice-may-reach = Un empalme dentro de esta caja puede completar lo que le falta al conductor { $subject }: esta edición lo dice. Con la pieza empalmada debe medir { $required } desde donde sale, y alcanzar fuera de una abertura pequeña como se requiere.
finding-splice-may-reach-silent = Un empalme dentro de esta caja puede completar lo que le falta al conductor { $subject }: esta edición no lo dice, y aquí se lee que lo permite. Con la pieza empalmada debe medir { $required } desde donde sale, y alcanzar fuera de una abertura pequeña como se requiere.
finding-splice-would-not-count = Un empalme no completaría lo que le falta al conductor { $subject }: esta edición no lo dice, y aquí se lee que pide { $required } en una sola pieza.

because-unbroken = Pasa de largo, sin empalmarse ni terminar aquí.
because-cut-off-before-its-end = Lo que se midió va más allá de la longitud que cuenta, así que el alcance se calcula.
because-large-opening = Ninguna dimensión de la abertura es menor que el límite.

fault-round-opening-with-sides = Indique el diámetro de una abertura redonda, o el ancho y la altura de otra: no ambas cosas.
fault-round-opening-with-gangs = Una abertura redonda no tiene módulos (gangs). Indique cuál de las dos es.
fault-large-opening-of-small-box = Una caja de dispositivos, y cualquier caja de la tabla, tiene una abertura menor que 8 in (200 mm) al menos en un sentido. Indique cuál de las dos cosas es cierta.
fault-opening-wider-than-gangs = Según la práctica común, un gang tiene a lo más 2-1/2 in (65 mm) de ancho, y una caja de dispositivos, cuadrada u octagonal a lo más 5 in (130 mm) de alto. Indique cuál de las dos cosas es cierta.
fault-damage-outside-of-box = Ninguna parte de este conductor sale de la caja, así que no puede estar dañado en la pared. Indique cuál de las dos cosas es cierta.
fault-reach-longer-than-conductor = Se dice que el conductor llega más afuera de la abertura de lo que su longitud libre deja sobre la profundidad. Indique cuál de las dos es cierta.
fault-reach-shorter-than-conductor = Se dice que el conductor llega demasiado poco afuera de la abertura, mientras que su longitud libre llega lo suficiente sobre la profundidad. Indique cuál de las dos es cierta.
fault-damage-already-spliced = Indique el daño que todavía hay que cortar, o el empalme que lo reemplazó: no ambas cosas.
fault-unbroken-conductor-spliced = Un conductor que pasa sin interrupción no se empalma aquí. Dele el papel spliced, u omita el empalme.
fault-sound-length-in-wall = Solo un daño dentro de la caja deja una longitud sana.
fault-part-longer-than-conductor = Una parte de la longitud libre no puede ser más larga que el todo.

point-continuous_length = Donde la edición no dice que una longitud libre puede empalmarse: ¿cuenta una longitud empalmada, o solo la de una sola pieza?
point-shared_pigtail = ¿Pueden unirse dos conductores cortos en un solo conector con una sola cola de empalme (pigtail), o cada uno debe tener antes por sí solo la longitud suficiente?
