## Cuerpos de tubo conduit

rule-conduit-body-area = Un cuerpo de tubo conduit para calibre 6 AWG y menor, que no sea de radio corto, tiene una sección transversal de al menos el doble de la del tubo conduit o la tubería más grande a que se puede acoplar.
    .title = Sección transversal de cuerpos de tubo conduit
rule-conduit-body-conductors = Un cuerpo de tubo conduit puede contener tantos conductores como la canalización acoplada a él, según el Capítulo 9: no el doble.
    .title = Conductores en cuerpos de tubo conduit
rule-conduit-body-splices = Los empalmes, las derivaciones y los dispositivos van solo en un cuerpo de tubo conduit que su fabricante marcó con un volumen; lo que hay en él se cuenta entonces como en una caja. El cuerpo se soporta de manera rígida.
    .title = Empalmes en cuerpos de tubo conduit
rule-conduit-body-short-radius = Los cuerpos de tubo conduit de radio corto no contienen empalmes, derivaciones ni dispositivos.
    .title = Cuerpos de tubo conduit de radio corto

word-opening-end = extremo
word-opening-opposite-end = extremo opuesto
word-opening-side = costado
word-opening-opposite-side = costado opuesto
word-opening-back = fondo

finding-cross-section-by-listing = El cuerpo está listado y no es de radio corto, así que se toma que tiene los { $required } que piden sus canalizaciones.
finding-splices-without-volume = Los empalmes, derivaciones y dispositivos solo se permiten en un cuerpo cuyo fabricante marcó su volumen.
finding-large-splices-not-counted = Los empalmes de conductores mayores que 6 AWG no tienen asignación de volumen: se pide un volumen marcado y un soporte rígido, y ninguna cuenta.
finding-large-splices-without-allowance = Los empalmes de conductores mayores que 6 AWG se leen como contados, y ninguna asignación de volumen dice cómo.
fault-distance-within-body = Estas aberturas están en extremos o lados opuestos del cuerpo, y se dice que están más cerca entre sí que ellos. ¿Cuál es correcto?
fault-cross-section-over-sides = La sección transversal es mayor que el ancho por la profundidad. ¿Cuál es correcta?
fault-volume-over-sides = El volumen marcado es mayor que el largo por el ancho por la profundidad. ¿Cuál es correcto?
fault-largest-raceway-under-opening = La canalización más grande a la que puede fijarse el cuerpo es menor que una que está fijada. ¿Cuál es correcta?
finding-opening-smaller-than-conductors = Los conductores de la abertura «{ $opening }» ocupan al menos { $area }, y su canalización solo tiene { $inside } por dentro: no pueden entrar.
finding-opening-smaller-by-insulation = De su aislamiento depende si los conductores de la abertura «{ $opening }» pueden entrar en su canalización: con el más grueso ocupan { $area }, y ella tiene { $inside } por dentro.
fault-opening-larger-than-body = El cuerpo es más estrecho que la canalización de esta abertura por dentro. ¿Cuál es correcto?
fault-distance-beyond-body = En un cuerpo de estas dimensiones no hay dos lugares tan alejados. ¿Cuál es correcto?
because-not-short-radius = No es un cuerpo de radio corto.
fault-body-listed-and-not = El cuerpo está listado según un miembro, y según otro no. ¿Cuál es correcto?
fault-listed-body-without-area = De un cuerpo listado se toma que tiene la sección transversal que piden sus canalizaciones, y la indicada es menor. ¿Cuál es correcta? Si el listado no debe contar, elija cómo se interpreta.
fault-splices-not-in-contents = Cada uno de estos conductores empalmados entra por una abertura y sale por otra, y el contenido tiene menos de su tamaño. ¿Cuál es correcto?
fault-unmarked-and-marked = Se dice que el cuerpo no está marcado, y se da un marcado suyo. ¿Qué es correcto?
fault-distances-differ = Se dice que las mismas dos aberturas están a distancias distintas. ¿Cuál es correcta?
point-listed_body_area = ¿Muestra su certificación que un cuerpo de tubo conduit tiene la sección que se pide?
point-large_splice_count = ¿Se cuentan en un cuerpo de tubo conduit los empalmes de conductores mayores que 6 AWG, que no tienen asignación de volumen?
