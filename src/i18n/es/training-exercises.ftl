## Ejercicios: temas, situaciones, preguntas

text-topic-outlet-conductors = Conductores en una caja
text-topic-outlet-devices = Dispositivos en una caja
text-topic-outlet-grounding = Conductores de puesta a tierra en una caja
text-topic-outlet-box-fill = Ocupación de una caja
text-topic-outlet-box-volume = Volumen de una caja
text-topic-outlet-box-room = Lugar que queda en una caja
text-topic-pull-straight = Tiros rectos
text-topic-pull-angle = Tiros en ángulo, tiros en U y empalmes
text-topic-pull-distance = Distancia entre entradas
text-topic-pull-over-1000-volts = Cajas de paso a más de 1000 V
text-topic-conduit-bodies = Cuerpos de tubo conduit
text-topic-raceway-fill = Ocupación de canalizaciones
text-topic-free-conductors = Conductor libre en una caja
text-topic-box-depths = Profundidad de una caja
text-difficulty-basic = Básico
text-difficulty-intermediate = Intermedio
text-difficulty-advanced = Avanzado

situation-in-kitchen = Usted alambra una caja en una cocina.
situation-in-garage = Usted alambra una caja en una cochera.
situation-in-workshop = Usted alambra una caja en un taller.
situation-in-hallway = Usted alambra una caja en un pasillo.
situation-in-office = Usted alambra una caja en una oficina.
situation-in-basement = Usted alambra una caja en un sótano.
situation-in-laundry = Usted alambra una caja en una lavandería.
situation-in-living-room = Usted alambra una caja en una sala.

situation-cable = { $count ->
        [one] Un cable NM-B de calibre { $size } con { $conductors } conductores aislados y uno de puesta a tierra de calibre { $grounding } termina en la caja.
       *[other] { $count } cables NM-B de calibre { $size }, cada uno con { $conductors } conductores aislados y uno de puesta a tierra de calibre { $grounding }, terminan en la caja.
    }
situation-cable-without-ground = { $count ->
        [one] Un cable de calibre { $size } con { $conductors } conductores aislados y sin conductor de puesta a tierra termina en la caja.
       *[other] { $count } cables de calibre { $size }, cada uno con { $conductors } conductores aislados y sin conductor de puesta a tierra, terminan en la caja.
    }
situation-conductors-end = { $count ->
        [one] Un conductor { $size } de una canalización termina en la caja.
       *[other] { $count } conductores { $size } de una canalización terminan en la caja.
    }
situation-conductors-spliced = { $count ->
        [one] Un conductor { $size } entra en la caja y se empalma allí.
       *[other] { $count } conductores { $size } entran en la caja y se empalman allí, cada uno con otro de ellos.
    }
situation-conductors-pass = { $count ->
        [one] Un conductor { $size } pasa por la caja sin empalme ni terminación.
       *[other] { $count } conductores { $size } pasan por la caja sin empalme ni terminación.
    }
situation-conductors-loop = { $count ->
        [one] Un conductor { $size } pasa con un bucle sin interrupción de { $length }.
       *[other] { $count } conductores { $size } pasan, cada uno con un bucle sin interrupción de { $length }.
    }
situation-pigtails = { $count ->
        [one] Una cola de empalme (pigtail) { $size } se queda dentro de la caja.
       *[other] { $count } colas de empalme (pigtails) { $size } se quedan dentro de la caja.
    }
situation-grounding = { $count ->
        [one] Un conductor de puesta a tierra { $size } entra en la caja.
       *[other] { $count } conductores de puesta a tierra { $size } entran en la caja.
    }
situation-bonding-jumpers = { $count ->
        [one] Un puente de unión { $size } entra en la caja.
       *[other] { $count } puentes de unión { $size } entran en la caja.
    }
situation-isolated-grounding = { $count ->
        [one] Un conductor de tierra aislada { $size } entra en la caja para un receptáculo de tierra aislada.
       *[other] { $count } conductores de tierra aislada { $size } entran en la caja para receptáculos de tierra aislada.
    }
situation-grounding-pigtails = { $count ->
        [one] Una cola de empalme de puesta a tierra { $size } se queda dentro de la caja.
       *[other] { $count } colas de empalme de puesta a tierra { $size } se quedan dentro de la caja.
    }
situation-device-switch = interruptor
situation-device-receptacle = receptáculo
situation-device-combination = dispositivo combinado (dos dispositivos en un yugo)
situation-device-protective = dispositivo GFCI o AFCI
situation-device-control = atenuador
situation-device-equipment = equipo sobre un yugo
situation-device = { $count ->
        [one] Lleva montado un { $device }; el conductor más grande conectado a él es { $size }.
       *[other] Lleva montados { $count } yugos, cada uno con un { $device }; el conductor más grande conectado a cada uno es { $size }.
    }
situation-device-wide = { $count ->
        [one] Lleva montado un { $device } que necesita { $gangs } gangs; el conductor más grande conectado a él es { $size }.
       *[other] Lleva montados { $count } yugos que necesitan { $gangs } gangs cada uno, cada uno con un { $device }; el conductor más grande conectado a cada uno es { $size }.
    }
situation-clamps-internal = { $count ->
        [one] La caja tiene una abrazadera interna para cable.
       *[other] La caja tiene { $count } abrazaderas internas para cable.
    }
situation-clamps-molded = { $count ->
        [one] La caja tiene una lengüeta moldeada.
       *[other] La caja tiene { $count } lengüetas moldeadas.
    }
situation-clamps-external = { $count ->
        [one] Un conector sujeta los cables; sujeta por fuera de la caja.
       *[other] { $count } conectores sujetan los cables; sujetan por fuera de la caja.
    }
situation-clamps-assembly = { $count ->
        [one] En un conjunto de abrazadera termina un cable.
       *[other] En { $count } conjuntos de abrazadera terminan cables.
    }
situation-studs = { $count ->
        [one] Hay un espárrago para luminaria en ella.
       *[other] Hay { $count } espárragos para luminaria en ella.
    }
situation-hickeys = { $count ->
        [one] Hay un hickey en ella.
       *[other] Hay { $count } hickeys en ella.
    }
situation-terminal-blocks = { $count ->
        [one] Hay un bloque de terminales en ella; el conductor más grande que termina en él es { $size }.
       *[other] Hay { $count } bloques de terminales en ella; el conductor más grande que termina en cada uno es { $size }.
    }
situation-canopy-domed = Una luminaria con dosel abovedado cubre la caja.
situation-canopy-flat = Una luminaria plana sin dosel cubre la caja.
situation-canopy-fan = Un ventilador de techo cuelga de la caja.
situation-fixture-wires = { $count ->
        [one] Un alambre de luminaria { $size } entra desde allí en la caja.
       *[other] { $count } alambres de luminaria { $size } entran desde allí en la caja.
    }
situation-fixture-grounding = { $count ->
        [one] Un conductor de puesta a tierra { $size } entra desde allí en la caja.
       *[other] { $count } conductores de puesta a tierra { $size } entran desde allí en la caja.
    }
situation-wire-connectors = { $count ->
        [one] Se usa un conector de alambre.
       *[other] Se usan { $count } conectores de alambre.
    }
situation-small-parts = { $count ->
        [one] Se usa un accesorio pequeño, como una contratuerca.
       *[other] Se usan { $count } accesorios pequeños, como contratuercas.
    }
situation-space = { $count ->
        [one] El espacio { $space } de la caja tiene un gang de ancho.
       *[other] El espacio { $space } de la caja tiene { $count } gangs de ancho.
    }

situation-shape-octagonal = octagonal
situation-shape-square = cuadrada
situation-shape-device = para dispositivos
situation-shape-masonry = para mampostería
situation-shape-cast = fundida
situation-box-standard = { $count ->
        [one] La caja es una caja metálica { $shape } estándar de { $dimensions } in, sin marca.
       *[other] Están unidas { $count } cajas metálicas estándar ({ $shape }) de { $dimensions } in, sin marca.
    }
situation-box-standard-marked = { $count ->
        [one] La caja es una caja metálica { $shape } estándar de { $dimensions } in, marcada con { $volume }.
       *[other] Están unidas { $count } cajas metálicas estándar ({ $shape }) de { $dimensions } in, marcadas juntas con { $volume }.
    }
situation-box-nonmetallic = { $count ->
        [one] La caja es de plástico, de un gang, marcada con { $volume }.
       *[other] La caja es de plástico, de { $count } gangs, marcada con { $volume }.
    }
situation-box-metal = { $count ->
        [one] La caja es metálica, de un gang, marcada con { $volume }.
       *[other] La caja es metálica, de { $count } gangs, marcada con { $volume }.
    }
situation-section-plaster-ring = anillo para yeso
situation-section-extension-ring = anillo de extensión
situation-section-raised-cover = tapa realzada
situation-section-domed-cover = tapa abovedada
situation-section-marked = { $count ->
        [one] Lleva acoplada una pieza ({ $section }) marcada con { $volume }.
       *[other] Lleva acopladas { $count } piezas ({ $section }), cada una marcada con { $volume }.
    }
situation-section-standard = { $count ->
        [one] Lleva acoplada una pieza ({ $section }) hecha de una caja de las mismas dimensiones.
       *[other] Lleva acopladas { $count } piezas ({ $section }) hechas de una caja de las mismas dimensiones.
    }
situation-section-unmarked = { $count ->
        [one] Lleva acoplada además una pieza ({ $section }) sin volumen marcado y que no está hecha de una caja estándar.
       *[other] Lleva acopladas además { $count } piezas ({ $section }) sin volumen marcado y que no están hechas de una caja estándar.
    }
situation-barrier-metal = { $count ->
        [one] La divide una barrera metálica sin marca.
       *[other] La dividen { $count } barreras metálicas sin marca.
    }
situation-barrier = { $count ->
        [one] La divide una barrera sin marca.
       *[other] La dividen { $count } barreras sin marca.
    }
situation-barrier-nonmetallic = { $count ->
        [one] La divide una barrera de plástico sin marca.
       *[other] La dividen { $count } barreras de plástico sin marca.
    }

situation-pull-box = Se dimensiona una caja de paso. Todos los conductores son aislados.
situation-pull-box-over-1000-volts = Se dimensiona una caja de paso de un sistema de más de 1000 V.
situation-wall-left = pared izquierda
situation-wall-right = pared derecha
situation-wall-top = pared superior
situation-wall-bottom = pared inferior
situation-wall-back = pared del fondo
situation-entry = Canalización { $id }: { $wall }, tamaño comercial { $size }.
situation-entry-with-diameter = Canalización { $id }: { $wall }, tamaño comercial { $size }, diámetro exterior { $diameter }.
situation-entry-metric = Canalización { $id }: { $wall }, designador métrico { $size }.
situation-entry-metric-with-diameter = Canalización { $id }: { $wall }, designador métrico { $size }, diámetro exterior { $diameter }.
situation-entry-row = La canalización { $id } está en la hilera { $row } de su pared.
situation-cable-shielded = La canalización { $id } contiene un cable con pantalla de { $diameter } de diámetro exterior.
situation-cable-lead-covered = La canalización { $id } contiene un cable con cubierta de plomo de { $diameter } de diámetro exterior.
situation-cable-nonshielded = La canalización { $id } contiene un cable sin pantalla de { $diameter } de diámetro exterior.
situation-pull = Conductores { $size } van de { $from } a { $to }.
situation-pull-spliced = Conductores { $size } van de { $from } a { $to } y se empalman en la caja.
situation-pull-of-cable = El cable va de { $from } a { $to }.

situation-raceway = Se ocupa un tramo de { $kind }, { $size }.
situation-raceway-length = Mide { $length }, entre dos cajas.
situation-raceway-conductors = En él solo van conductores { $size } { $insulation }.
situation-body-straight = Está instalado un cuerpo de tubo conduit recto (tipo C). En él no se empalma nada.
situation-body-back = Está instalado un cuerpo de tubo conduit con una abertura en el fondo (tipo LB). En él no se empalma nada.
situation-body-side = Está instalado un cuerpo de tubo conduit con una abertura al costado (tipo LL o LR). En él no se empalma nada.
situation-body-raceway = Las canalizaciones acopladas son { $kind }, { $size }.
situation-body-conductors = Por él solo pasan conductores { $size } { $insulation }.

situation-opening = La abertura de la caja mide { $width } de ancho y { $height } de alto.
situation-emergence = Los conductores salen de su cubierta { $depth } detrás del borde frontal de la caja.
situation-ring = Un anillo acoplado mueve la abertura { $depth } hacia afuera.
situation-equipment = Lleva montado un dispositivo que sobresale { $projection } detrás de su plano de montaje. Lo alimentan conductores { $size }.
situation-rear-center = Los conductores entran por el centro del fondo, detrás del dispositivo.
situation-no-rear-center = Los conductores entran por los costados.

question-required-volume = ¿Qué volumen requiere el contenido?
question-available-volume = ¿Cuánto volumen cuenta para esta caja con lo que lleva acoplado?
question-share-of-volume = ¿Cuánto volumen cuenta para el espacio A?
question-further-conductors = ¿Cuántos conductores aislados { $size } más pueden entrar en esta caja?
question-width = ¿A qué distancia deben estar al menos la pared izquierda y la derecha?
question-entry-distance = ¿A qué distancia deben estar al menos las entradas que contienen los mismos conductores? Si hay varias, dé la mayor.
question-most-conductors = ¿Cuántos de estos conductores puede contener a lo más?
question-required-length = ¿Qué longitud libre debe tener al menos el conductor, desde donde sale de su cubierta?
question-required-depth = ¿Qué profundidad interior debe tener al menos la caja?
