## Tipos de envolvente

rule-enclosure-type-selection = Una envolvente es de un tipo que la tabla clasifica para cada condición del lugar donde está.
    .title = Tipos de envolvente
rule-enclosure-type-scope = La tabla es para envolventes de tableros de distribución, tableros de alumbrado y control, bases para medidor, interruptores en envolvente, controladores y similares, hasta 1000 V. No dice nada de lo que surge adentro: condensación, hielo, corrosión, contaminación.
    .title = Qué abarca la tabla de tipos de envolvente
rule-enclosure-type-moisture = Ninguna fila de la tabla dice seco, húmedo o mojado. En interiores, húmedo se toma como líquidos que caen y salpicaduras ligeras, mojado como chorro de manguera y salpicaduras de agua; en exteriores, ambos son lluvia, nieve y aguanieve.
    .title = Lugares secos, húmedos y mojados
rule-enclosure-type-indoor-only = Desde 2023, algunas envolventes de tipo 4X están marcadas para uso solo en interiores. Esas no se ponen en exteriores.
    .title = Tipo 4X solo para interiores
rule-enclosure-type-hazardous = En lugares peligrosos (clasificados) las envolventes siguen los Artículos 500 a 506, no la tabla de tipos de envolvente.
    .title = Lugares peligrosos (clasificados)

caution-hazardous-location = Lugar peligroso (clasificado): un número ordinario de tipo de envolvente no dice nada ahí. La protección a prueba de explosión, a prueba de ignición de polvo u otra, y los sellos, siguen los Artículos 500 a 506 según la clase, la división o zona, y el grupo. Haga que una persona calificada para ello clasifique el área y elija el equipo.

finding-type-rated = El tipo { $column } está clasificado para { $row ->
    [indoor_falling_dirt] suciedad que cae
    [indoor_falling_liquids] líquidos que caen y salpicaduras ligeras
    [indoor_circulating_dust] polvo, pelusa, fibras y partículas en circulación
    [indoor_settling_dust] polvo, pelusa, fibras y partículas que se asientan
    [indoor_hosedown] chorro de manguera y salpicaduras de agua
    [indoor_oil_seepage] filtración de aceite y refrigerante
    [indoor_oil_spray] rociado y salpicadura de aceite y refrigerante
    [indoor_corrosive_agents] agentes corrosivos
    [indoor_temporary_submersion] inmersión temporal
    [indoor_prolonged_submersion] inmersión prolongada
    [outdoor_rain_snow_sleet] lluvia, nieve y aguanieve
    [outdoor_operable_when_iced] un mecanismo que funciona cubierto de hielo
    [outdoor_windblown_dust] polvo arrastrado por el viento
    [outdoor_hosedown] chorro de manguera
    [outdoor_corrosive_agents] agentes corrosivos
    [outdoor_temporary_submersion] inmersión temporal
    [outdoor_prolonged_submersion] inmersión prolongada
   *[incidental_contact] contacto accidental con el equipo
 }.
finding-type-not-rated = El tipo { $column } no está clasificado para { $row ->
    [indoor_falling_dirt] suciedad que cae
    [indoor_falling_liquids] líquidos que caen y salpicaduras ligeras
    [indoor_circulating_dust] polvo, pelusa, fibras y partículas en circulación
    [indoor_settling_dust] polvo, pelusa, fibras y partículas que se asientan
    [indoor_hosedown] chorro de manguera y salpicaduras de agua
    [indoor_oil_seepage] filtración de aceite y refrigerante
    [indoor_oil_spray] rociado y salpicadura de aceite y refrigerante
    [indoor_corrosive_agents] agentes corrosivos
    [indoor_temporary_submersion] inmersión temporal
    [indoor_prolonged_submersion] inmersión prolongada
    [outdoor_rain_snow_sleet] lluvia, nieve y aguanieve
    [outdoor_operable_when_iced] un mecanismo que funciona cubierto de hielo
    [outdoor_windblown_dust] polvo arrastrado por el viento
    [outdoor_hosedown] chorro de manguera
    [outdoor_corrosive_agents] agentes corrosivos
    [outdoor_temporary_submersion] inmersión temporal
    [outdoor_prolonged_submersion] inmersión prolongada
   *[incidental_contact] contacto accidental con el equipo
 }.
finding-type-not-in-table = La tabla no tiene el tipo { $type } para este lugar, así que no dice ni que sirve ni que no sirve. Pida su listado, o elija un tipo que esté en la tabla.
finding-indoor-type-outdoors = El tipo { $type } es para interiores: la tabla no lo clasifica para nada a la intemperie, y se nombra algo que tendría que resistir ahí.
finding-types-that-serve = Tipos clasificados para todas las condiciones de aquí: { $types }.
finding-no-type-serves = Ningún tipo está clasificado para todas estas condiciones juntas. Cambie el lugar, protéjalo, o pida un equipo listado para él.
finding-box-not-in-table = La tabla de números de tipo no juzga cajas: a una caja de salida, de dispositivo, de paso o de empalme no se le pide ningún número de tipo: 314.15 decide qué humedad soporta. Pregúntelo del montaje de la caja.
finding-not-indoor-only = La envolvente 4X no está marcada solo para interiores, así que puede estar en exteriores.
finding-indoor-only = La envolvente 4X está marcada solo para interiores, y está en exteriores.
finding-indoor-only-not-in-edition = La envolvente está marcada solo para interiores, y está en exteriores. Esta edición no tiene esa marca en su tabla, así que sus números no la aprueban: decide su listado.
finding-indoor-only-open = Algunas envolventes 4X están marcadas solo para interiores. Indique si esta lo está: se encuentra en exteriores.
finding-place-moisture-no-matter = El tipo resiste también líquidos que caen y chorros de manguera, así que no importa si el lugar es seco, húmedo o mojado.
fault-indoor-only-without-4x = Solo las envolventes de tipo 4X se marcan solo para interiores, y no se nombra ninguna de ese tipo.
finding-place-moisture-open = Indique si el lugar es seco, húmedo o mojado. Lo que sigue es para un lugar seco.
finding-moisture-taken-as = Esta palabra para el lugar se tomó como { $row ->
    [indoor_hosedown] chorro de manguera y salpicaduras de agua
   *[indoor_falling_liquids] líquidos que caen y salpicaduras ligeras
 }: la tabla no tiene seco, húmedo ni mojado. Nombre en su lugar las condiciones donde eso no corresponda.
finding-enclosure-scope = La tabla es para envolventes de tableros, bases para medidor, interruptores en envolvente, controladores y similares, hasta 1000 V. Una caja de salida o de empalme en un lugar húmedo o mojado necesita su propio listado para ese lugar.
finding-enclosure-inside = Ningún número de tipo habla de lo que surge dentro de una envolvente: condensación, hielo, corrosión, contaminación.
finding-enclosure-in-hazardous-location = En un lugar peligroso (clasificado) la tabla de tipos de envolvente no decide. Vea los Artículos 500 a 506 según la clase, la división o zona, y el grupo.
finding-hazardous-open = Un número ordinario de tipo no dice nada en un lugar peligroso (clasificado). Indique si el lugar lo es.

because-hazardous-location = El lugar es peligroso (clasificado).
because-ordinary-location = El lugar no es peligroso (clasificado).
because-box-not-in-table = La envolvente es una caja: la tabla de tipos de envolvente no la juzga.
because-water-named = Las condiciones nombran el agua que la envolvente debe resistir.

fault-condition-not-at-location = La tabla no tiene una fila para { $condition } en un lugar { $location ->
    [indoor] interior
   *[outdoor] exterior
 }. Elija una que tenga.
