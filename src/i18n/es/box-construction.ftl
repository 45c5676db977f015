## Construcción de cajas metálicas

rule-box-construction-sheet-steel = Las paredes de una caja de lámina de acero de hasta 100 in³ (1650 cm³) tienen un espesor de al menos 0.0625 in (1.59 mm).
    .title = Espesor de cajas pequeñas de lámina de acero
rule-box-construction-large-sheet-steel = Las paredes de una caja de lámina de acero de más de 100 in³ (1650 cm³) tienen un espesor de al menos 0.053 in (1.35 mm) sin recubrimiento: menos que las de una caja más pequeña.
    .title = Espesor de cajas grandes de lámina de acero
rule-box-construction-cast = Las paredes de una caja de hierro maleable, o de metal fundido a presión o en molde permanente, tienen un espesor de al menos 3/32 in (2.38 mm); las de otro metal fundido, de 1/8 in (3.17 mm).
    .title = Espesor de cajas fundidas
rule-box-construction-listed = Una caja listada como de resistencia equivalente, y un cuerpo de radio corto listado, pueden tener paredes más delgadas.
    .title = Listado en lugar de espesor
rule-box-construction-grounding-provision = Toda caja metálica tiene un agujero roscado u otro medio para conectar un conductor de puesta a tierra de equipos.
    .title = Medio para conectar un conductor de puesta a tierra
rule-box-construction-cover = Una tapa metálica es tan gruesa como su caja, o está listada para ese fin.
    .title = Espesor de tapas metálicas
rule-box-construction-cover-material = Una tapa metálica es del mismo material que su caja, o está forrada con al menos 1/32 in (0.79 mm) de aislamiento firmemente adherido, o está listada para ese fin.
    .title = Material de tapas metálicas

finding-walls-thick-enough = Las paredes tienen un espesor de { $given }; se requiere al menos { $limit }.
finding-walls-too-thin = Las paredes tienen un espesor de solo { $given }; se requiere al menos { $limit }.
finding-wall-thickness-open = Las paredes deben tener un espesor de al menos { $limit }. Indique su espesor.
finding-thickness-and-volume-open = El espesor que deben tener las paredes de lámina de acero depende del volumen de la caja. Indique el espesor de las paredes y el volumen.
finding-volume-decides-thickness = Si bastan paredes de { $given } depende del volumen de la caja: la lámina más gruesa es para cajas de hasta 100 in³ (1650 cm³). Indique el volumen.
finding-listed-as-equal = La caja está listada como de resistencia equivalente, o es un cuerpo de radio corto listado: no se pide ningún espesor.
finding-listing-excepts-walls = La caja está listada, y las paredes de una caja listada pueden ser más delgadas: su listado muestra que es igual de resistente.
finding-listing-evidences-walls = La caja está listada, y las cajas se listan con paredes del espesor suficiente.
finding-listing-evidences-provision = La caja está listada, y las cajas metálicas se listan con un medio para conectar un conductor de puesta a tierra de equipos.
finding-grounding-provision = La caja tiene un medio para conectar un conductor de puesta a tierra de equipos.
finding-no-grounding-provision = La caja no tiene ningún medio para conectar un conductor de puesta a tierra de equipos; toda caja metálica lo necesita.
finding-grounding-provision-open = Una caja metálica necesita un medio para conectar un conductor de puesta a tierra de equipos. Indique si lo tiene.
finding-cover-listed = La tapa metálica está listada para ese fin.
finding-cover-thick-enough = La tapa metálica tiene un espesor de { $given }, al menos los { $limit } de su caja.
finding-cover-too-thin = La tapa metálica tiene un espesor de solo { $given }; debe tener los { $limit } de su caja o estar listada, y no lo está.
finding-cover-lined = La tapa metálica está forrada con { $given } de aislamiento; se requiere al menos { $limit } donde es de otro material que su caja.
finding-cover-not-lined = La tapa metálica es de otro material que su caja y no está listada, y su forro de { $given } es menos que los { $limit } requeridos.
finding-cover-same-material = La tapa metálica es del material de su caja.
finding-cover-material-open = Una tapa metálica debe ser del material de su caja, o estar forrada con aislamiento, o estar listada. Lo indicado todavía no lo decide.
finding-cover-thickness-open = Una tapa metálica debe ser tan gruesa como su caja, o estar listada. Indique ambos espesores, o que está listada.
finding-cover-listed-open = La tapa metálica tiene { $given } de espesor y su caja { $limit }; solo una tapa listada puede ser más delgada que su caja. Indique si está listada.
finding-thin-walls-listed-open = Las paredes tienen { $given } de espesor, menos que los { $limit } requeridos, lo que puede ser una caja listada como de resistencia equivalente, o un cuerpo de radio corto listado. Indique si lo es.

because-nonmetallic-box = La caja no es metálica.
because-nonmetallic-cover = La tapa no es metálica.

fault-listed-and-not = listed dice que la caja no está listada, y listed_as_equal que lo está. Omita uno de los dos.
fault-listed-without-provision = Las cajas metálicas se listan con un medio para conectar un conductor de puesta a tierra de equipos, y esto dice que no hay ninguno. Indique cuál de los dos es cierto, o lea el listado como ninguna prueba.
fault-listed-with-thin-walls = Estas paredes son más delgadas que las de cualquier caja con este listado. Indique cuál de los dos es cierto, o lea el listado como ninguna prueba.
fault-listed-thin-walls-of-unsaid-volume = Paredes tan delgadas son más delgadas que las de cualquier caja listada de más de 100 in³ (1650 cm³). Indique el volumen de la caja.

point-listing_evidences_construction = ¿Demuestra el listado de una caja metálica el espesor de sus paredes y su medio para conectar un conductor de puesta a tierra, en cuanto nadie los midió ni los buscó?
