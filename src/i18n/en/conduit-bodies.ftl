## Conduit bodies

rule-conduit-body-area = A conduit body for 6 AWG and smaller, other than a short-radius one, has a cross-section of at least twice that of the largest conduit or tubing that it can be attached to.
    .title = Cross-section of conduit bodies
rule-conduit-body-conductors = A conduit body may hold as many conductors as the raceway attached to it may, by Chapter 9: not twice as many.
    .title = Conductors in conduit bodies
rule-conduit-body-splices = Splices, taps and devices stand only in a conduit body that its maker marked with a volume; what is in it is then counted as in a box. The body is supported rigidly.
    .title = Splices in conduit bodies
rule-conduit-body-short-radius = Short-radius conduit bodies hold no splices, taps or devices.
    .title = Short-radius conduit bodies

word-opening-end = end
word-opening-opposite-end = opposite end
word-opening-side = side
word-opening-opposite-side = opposite side
word-opening-back = back
