### Español de México y de los Estados Unidos. Las claves nunca cambian de nombre; un mensaje que falta o sobra hace fallar una prueba.
### Las reglas se dicen con palabras propias. Rigen el código adoptado, sus enmiendas y la autoridad competente.
###
### Un término para cada cosa:
###   authority having jurisdiction  autoridad competente
###   bonding                        unión eléctrica
###   bonding jumper                 puente de unión
###   box                            caja
###   brace                          travesaño
###   bushing                        boquilla
###   canopy                         dosel
###   check                          revisión
###   clamp                          abrazadera
###   conductor size                 calibre (12 AWG)
###   conduit                        tubo conduit (metálico pesado RMC, semipesado IMC, ligero EMT)
###   conduit body                   cuerpo de tubo conduit
###   cover / faceplate              tapa / placa
###   damp / wet / dry location      lugar húmedo / mojado / seco
###   device, yoke                   dispositivo, yugo
###   enclosure                      la envolvente
###   equipment grounding conductor  conductor de puesta a tierra de equipos
###   extension ring                 anillo de extensión
###   fastener                       elemento de fijación
###   fill                           ocupación
###   finding                        resultado
###   fitting                        accesorio
###   free conductor                 conductor libre
###   gang, hub, hickey              gang, hub, hickey
###   handhole enclosure             registro de mano
###   junction box                   caja de empalme
###   listed / identified / marked   listado / identificado / marcado
###   locknut                        contratuerca
###   luminaire                      luminaria
###   machine screw                  tornillo de máquina
###   metric designator              designador métrico
###   outlet box                     caja de salida
###   plaster ring                   anillo para yeso
###   proof                          demostración
###   pull: straight, angle, U       tiro recto, en ángulo, en U
###   pull box                       caja de paso
###   raceway                        canalización
###   receptacle                     receptáculo
###   sheath                         cubierta
###   splice / tap                   empalme / derivación
###   stem                           vástago
###   stud                           espárrago
###   suspended ceiling              plafón
###   takeoff                        cuantificación
###   trade size                     tamaño comercial
###   volume allowance               asignación de volumen
###   wiring                         alambrado
###   wrenchtight                    apretado con llave

## Precauciones

caution-de-energize = Desenergice, bloquee y etiquete, y compruebe la ausencia de tensión con un probador verificado antes de tocar nada en una caja. No abra un equipo energizado para leer una marca.
caution-authority = Deciden el código adoptado con sus enmiendas locales y la autoridad competente. El trabajo eléctrico es para personas con licencia o calificadas de otro modo, con permiso donde se requiere. Esta respuesta no aprueba nada.
caution-scope = Se revisó solo la aritmética de las reglas que aquí se nombran: no el listado, la temperatura, la ampacidad, la unión, el arco eléctrico ni los lugares peligrosos (clasificados).
caution-minimums = Los volúmenes y las dimensiones son mínimos; el buen trabajo puede necesitar más.
caution-unverified-edition = No se dispuso del texto de 2026: estas son las reglas de 2023 llevadas adelante. Compare cada cifra y cada número de sección con el texto impreso antes de confiar en ellos.

caution-amended = Se modificaron cifras como dice esta solicitud. No se comprobó si la jurisdicción las ha adoptado.

## La demostración en frases

step-computed = { $result } ({ $rule })
step-rounded-down = { $result }, redondeado hacia abajo a { $whole } ({ $rule })
step-rounded-up = { $result }, elevado a { $whole } desde un resto de { $step } ({ $rule })
step-left-out = Omitido: { $result } ({ $rule })
step-read = Leído como { $result } ({ $rule })
step-boxes = Cajas que servirían: { $result } ({ $rule })

## Dónde está una regla

word-citation-unverified = ubicación en 2026 sin verificar
word-citation-informational-note = nota informativa
word-citation-article = Artículo
word-citation-chapter = Capítulo
word-citation-exception = Excepción
word-citation-location = Lugar
word-citation-note = Nota
word-citation-table = Tabla
word-citation-geometry = geometría
word-citation-and = y

## Toda solicitud

rule-edition-unverified = Una edición cuyo texto no se pudo leer se responde con las cifras de la edición anterior, y cada cita lo dice.
    .title = Edición sin verificar
rule-geometry-gangs = Los dispositivos ocupan los gangs de una caja: una caja tiene al menos tantos gangs como piden sus dispositivos.
    .title = Gangs para los dispositivos
rule-geometry-barriers = Una caja dividida en espacios tiene una barrera menos que espacios.
    .title = Barreras entre espacios
rule-geometry-raceways = Lo que va en una canalización no es más ancho que ella por dentro.
    .title = Espacio en una canalización
rule-geometry-entries = Los agujeros de las entradas de una pared caben uno junto a otro en esa pared.
    .title = Lugar para las entradas de una pared
rule-geometry-positions = Una entrada queda entera dentro de la pared en la que está.
    .title = Entradas dentro de su pared
rule-units-either = Pueden usarse pulgadas y libras o unidades métricas, y lo que cumple las cifras de un sistema no tiene que cumplir las del otro: cada exigencia se calcula por entero en un sistema y se incumple solo si falla en los dos.
    .title = Cualquiera de los dos sistemas de unidades
point-units = ¿Se cumple una exigencia si se cumple en cualquiera de los dos sistemas de unidades, o solo en el de la solicitud?
rule-nothing-described = Una solicitud se juzga por lo que describe; la que no describe nada que se pueda juzgar no decide nada.
    .title = Nada descrito
finding-nothing-described = No se describió nada que se pueda juzgar.
finding-nothing-judged = Ninguna regla de esta comprobación es aplicable a lo descrito, así que nada de ello se juzgó. Eso no es una aprobación.
finding-not-accounted-for = Esta regla es aplicable, y lo descrito no la decide.
finding-met-in-other-units-by-figures = Se cumple en el otro sistema de unidades, { $there } frente a { $other_limit }, y no en el de la solicitud, { $here } frente a { $limit }: puede usarse cualquiera de los dos.
finding-met-in-other-units-by-figures-there = Se cumple en el otro sistema de unidades, { $there } frente a { $other_limit }, y no en el de la solicitud: puede usarse cualquiera de los dos.
finding-met-in-either-units = Cada una de las cosas que pide se cumple en uno de los dos sistemas de unidades, como dicen los otros resultados: puede usarse cualquiera de los dos.
finding-met-in-other-units = Se cumple en el otro sistema de unidades y no en el de la solicitud: puede usarse cualquiera de los dos.
finding-open-in-other-units = No se cumple en las unidades de la solicitud. Si se cumple en el otro sistema, que también puede usarse, depende de lo que no se dice.
finding-not-asked-in-other-units = No se exige en el otro sistema de unidades, que también puede usarse.
finding-under-a-reading = Leída como { $reading }: { $sentence }
finding-open-reading = La regla se lee de más de una manera, y el veredicto depende de la lectura: { $readings }. Elija una.
text-reading-figures = { $given } frente a { $limit }
finding-open-readings-together = Nadie eligió cómo se leen { $one } y { $other }. Leídos juntos como { $one_reading } y { $other_reading }, dan otro veredicto. Elija una lectura de cada uno.
finding-unverified-edition = La edición 2026 se responde con las reglas de 2023. No se pudo verificar ninguna de sus cifras ni de sus números de sección.
fault-unverified-edition = No se dispuso del texto de la edición 2026. Pida una edición verificada, o ponga accept_unverified_rules en true para que se lleven adelante las reglas de 2023.
fault-review-of-nothing = Una revisión de la caja necesita algo que se sepa de ella: al menos la solicitud de una revisión.
fault-said-by-the-review = La solicitud ya dice { $term } para todas las revisiones. Omítalo aquí, o diga lo mismo.
fault-said-twice-of-one-box = Esto dice de la misma caja otra cosa que { $other }: { $here } aquí, { $there } allí. Diga cuál es lo correcto.
fault-devices-without-depth = El llenado de esta caja nombra dispositivos en { $other }, y la revisión de profundidad se pide de la caja sin nombrar ninguno. Diga en equipment qué está en la caja, u omita la revisión de profundidad.
fault-edition-twice = Esta edición está dos veces. Nombre cada una solo una vez.
fault-editions-to-compare = Nombre de 2 a { $most } ediciones.
fault-unknown-check = Ninguna revisión tiene este nombre.
fault-not-amendable = Esta cifra no se puede modificar.
fault-amendment-not-in-edition = La edición { $edition } no tiene tal cifra que modificar.
fault-amendment-out-of-bounds = Una modificación de esta cifra debe ir de { $least } a { $most }.
fault-too-many-items = { $items } elementos son más que los { $most } que puede tener una lista.
fault-duplicate-id = Más de una cosa lleva el id { $id }. Dele a cada una el suyo.
