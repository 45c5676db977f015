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
