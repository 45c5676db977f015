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

finding-cross-section-by-listing = The body is listed and not a short-radius one, so it is taken to have the { $required } that its raceways ask.
finding-splices-without-volume = Splices, taps and devices stand only in a body that its maker marked with a volume.
finding-large-splices-not-counted = Splices of conductors larger than 6 AWG have no volume allowance: a marked volume and rigid support are asked, and no count.
finding-large-splices-without-allowance = Splices of conductors larger than 6 AWG are read as counted, and no volume allowance says how.
fault-distance-within-body = These openings are on opposite ends or sides of the body, and are said to be nearer to one another than these are. Which is right?
fault-cross-section-over-sides = The cross-section is more than the width times the depth. Which is right?
fault-volume-over-sides = The marked volume is more than the length times the width times the depth. Which is right?
fault-largest-raceway-under-opening = The largest raceway that the body can be attached to is smaller than one that is attached. Which is right?
finding-opening-smaller-than-conductors = The conductors of the { $opening } take at least { $area }, and its raceway has only { $inside } inside: they cannot enter it.
finding-opening-smaller-by-insulation = Whether the conductors of the { $opening } can enter its raceway depends on their insulation: with the thickest they take { $area }, and it has { $inside } inside.
fault-opening-larger-than-body = The body is narrower than the raceway of this opening is inside. Which is right?
fault-distance-beyond-body = No two places in a body of these dimensions are this far apart. Which is right?
because-not-short-radius = It is not a short-radius body.
fault-body-listed-and-not = The body is listed by what one member says, and not by another. Which is right?
fault-listed-body-without-area = A listed body is taken to have the cross-section that its raceways ask, and the one stated is less. Which is right? Where the listing should not count, choose how it is read.
fault-splices-not-in-contents = Each of these spliced conductors comes in at one opening and goes out at another, and the contents have fewer of their size. Which is right?
fault-unmarked-and-marked = The body is said to be unmarked, and a marking of it is given. Which is right?
fault-distances-differ = The same two openings are said to be differently far apart. Which is right?
point-listed_body_area = Does its listing show that a conduit body has the cross-section that is asked?
point-large_splice_count = Are splices of conductors larger than 6 AWG, which have no volume allowance, counted in a conduit body?
