## Cuantificaciones

text-code-ambiguous = Un texto que se puede leer de más de una manera. Se indica qué podría significar.
fault-table-not-understood = Aquí no se entiende { $given }.
fault-table-ambiguous = { $given } se puede leer de más de una manera. Escriba cuál se quiere decir.
fault-table-unit = { $given } está en otra unidad que la fila, que usa { $unit }.
fault-table-quote = En esta línea se abre una comilla y no se cierra, o hay algo detrás de una cerrada. Un salto de línea no puede estar en una celda.
fault-table-columns = La línea tiene { $cells } celdas, el encabezado { $columns } columnas.
fault-table-other-check = { $column } no pertenece a una fila para { $check }.
fault-table-raceway = Falta la clase de canalización.
fault-table-not-utf8 = La línea no es UTF-8: el byte { $byte } no puede estar donde está.
fault-table-no-header = La tabla no tiene encabezado: su primera línea nombra las columnas.
fault-table-unknown-column = Ninguna columna se llama { $column }.
fault-table-column-twice = { $column } nombra una columna que el encabezado ya tiene.
problem-detail-takeoff-media-type = { $given } no es ninguno de application/json, application/x-ndjson y text/csv.
problem-detail-takeoff-not-acceptable = El encabezado Accept no admite ninguno de application/json, application/x-ndjson y text/csv.
problem-detail-takeoff-pause = No llegó ninguna línea completa en { $seconds } segundos. Lo que había llegado se respondió.
problem-detail-line-too-long = La línea tiene más de { $most } bytes.
text-takeoff-title = Cuantificaciones completas
text-takeoff = Muchas revisiones a la vez. Cada elemento nombra su revisión y lleva la solicitud de esa revisión, y se responde como responde la operación de esa revisión, byte por byte. Un elemento con errores nunca detiene a los demás: en el lugar de su respuesta va un problema con su línea. Las respuestas llegan en el orden de los elementos, como JSON, línea por línea o como tabla, lo que se pida con Accept; sin él, en la forma en que se envió. Las líneas se responden mientras llegan, con memoria acotada sean cuantas sean, así que lea mientras envía; el servicio espera a quien lee despacio, y abandona a aquel de quien no llega ninguna línea completa en el tiempo que puede tomar un cuerpo. El último registro es un resumen que da cuenta de cada línea. explain es full si no dice otra cosa; en una tabla no hay demostración.
text-takeoff-body = Los elementos. Como application/json hasta 16 MiB y 50,000 elementos, todos leídos antes de responder el primero; como application/x-ndjson o text/csv cualquier número de líneas de hasta 1 MiB cada una.
text-takeoff-answered = Las respuestas en orden, problemas en los lugares de las que no hay, y el resumen.
text-takeoff-lines = Un elemento por línea, cada uno un TakeoffItem como texto JSON sin saltos de línea. Las líneas en blanco se cuentan, y se responden con nada.
text-takeoff-answer-lines = Un registro por línea: por cada elemento, en orden, un TakeoffRecord; después un objeto cuyo único miembro es summary, un TakeoffSummary. Un registro con el miembro check es una respuesta, uno con el miembro type un problema. Una secuencia sin resumen no está completa.
text-takeoff-table = Un encabezado, después una caja de salida o una canalización por línea (RFC 4180, pero un salto de línea no puede estar en una celda). Columnas, en cualquier orden y con mayúsculas o minúsculas: reference, su propia marca; check, box o raceway, que si falta lo deciden las columnas llenas; edition y units, como en una solicitud; box, una caja metálica estándar como square 4 x 2-1/8 o 3x2x3-1/2; gangs; marked_volume y material de una caja por su marca; ring_volume, extension_volume y cover_volume, como están marcados; cables, como 2 x 12-2 NM-B w/g; conductors, en una caja como 4 x 12 spliced, en una canalización como 3 x 12 THHN o 1 x 8 bare solid; grounds, como 2 x 12 o 12 isolated; devices, como receptacle 12 o 2 x switch 14; clamps, las internas, yes, no o cuántas; fittings, stud o hickey; raceway, como EMT o PVC schedule 40; trade_size, como 1/2, 0.5, ½ o 16 mm; length y nipple; insulation, de los conductores que no nombran ninguno. Varias cosas en una celda se separan con punto y coma, coma o signo más, y su número va delante de una x. 12, #12 y 12 AWG son lo mismo. Lo que podría significar dos cosas se rechaza con ambas, como 4 x 1-1/2, que es una caja cuadrada y una octagonal. En los problemas un puntero nombra la columna.
text-takeoff-answer-table = Un encabezado, después una fila por cada registro, que su columna record nombra: answer o problem, en el orden de los elementos, con line, reference, check, verdict, lo que se requiere y lo disponible con su unidad, lo que necesita la obra, y lo que resultó o está mal; después el resumen, una cuenta por fila: summary_lines, summary, summary_check, summary_rule, summary_bill, summary_prefix.
