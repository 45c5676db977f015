## Exercises: topics, situations, questions

text-topic-outlet-conductors = Conductors in a box
text-topic-outlet-devices = Devices in a box
text-topic-outlet-grounding = Grounding conductors in a box
text-topic-outlet-box-fill = Box fill
text-topic-outlet-box-volume = Volume of a box
text-topic-outlet-box-room = Room left in a box
text-topic-pull-straight = Straight pulls
text-topic-pull-angle = Angle pulls, U pulls and splices
text-topic-pull-distance = Distance between entries
text-topic-pull-over-1000-volts = Pull boxes over 1000 V
text-topic-conduit-bodies = Conduit bodies
text-topic-raceway-fill = Raceway fill
text-topic-free-conductors = Free conductor at a box
text-topic-box-depths = Depth of a box
text-difficulty-basic = Basic
text-difficulty-intermediate = Intermediate
text-difficulty-advanced = Advanced

situation-in-kitchen = You are wiring a box in a kitchen.
situation-in-garage = You are wiring a box in a garage.
situation-in-workshop = You are wiring a box in a workshop.
situation-in-hallway = You are wiring a box in a hallway.
situation-in-office = You are wiring a box in an office.
situation-in-basement = You are wiring a box in a basement.
situation-in-laundry = You are wiring a box in a laundry room.
situation-in-living-room = You are wiring a box in a living room.

situation-cable = { $count ->
        [one] One NM-B cable of { $size } with { $conductors } insulated conductors and a { $grounding } grounding conductor ends in the box.
       *[other] { $count } NM-B cables of { $size }, each with { $conductors } insulated conductors and a { $grounding } grounding conductor, end in the box.
    }
situation-cable-without-ground = { $count ->
        [one] One cable of { $size } with { $conductors } insulated conductors and no grounding conductor ends in the box.
       *[other] { $count } cables of { $size }, each with { $conductors } insulated conductors and no grounding conductor, end in the box.
    }
situation-conductors-end = { $count ->
        [one] One { $size } conductor from a raceway ends in the box.
       *[other] { $count } conductors of { $size } from a raceway end in the box.
    }
situation-conductors-spliced = { $count ->
        [one] One { $size } conductor enters the box and is spliced there.
       *[other] { $count } conductors of { $size } enter the box and are spliced there, each to another of them.
    }
situation-conductors-pass = { $count ->
        [one] One { $size } conductor passes through the box without splice or termination.
       *[other] { $count } conductors of { $size } pass through the box without splice or termination.
    }
situation-conductors-loop = { $count ->
        [one] One { $size } conductor passes through in an unbroken loop of { $length }.
       *[other] { $count } conductors of { $size } pass through, each in an unbroken loop of { $length }.
    }
situation-pigtails = { $count ->
        [one] One { $size } pigtail stays inside the box.
       *[other] { $count } pigtails of { $size } stay inside the box.
    }
situation-grounding = { $count ->
        [one] One { $size } equipment grounding conductor enters the box.
       *[other] { $count } equipment grounding conductors of { $size } enter the box.
    }
situation-bonding-jumpers = { $count ->
        [one] One { $size } equipment bonding jumper enters the box.
       *[other] { $count } equipment bonding jumpers of { $size } enter the box.
    }
situation-isolated-grounding = { $count ->
        [one] One { $size } isolated grounding conductor enters the box for an isolated-ground receptacle.
       *[other] { $count } isolated grounding conductors of { $size } enter the box for isolated-ground receptacles.
    }
situation-grounding-pigtails = { $count ->
        [one] One { $size } grounding pigtail stays inside the box.
       *[other] { $count } grounding pigtails of { $size } stay inside the box.
    }
situation-device-switch = switch
situation-device-receptacle = receptacle
situation-device-combination = combination device (two devices on one yoke)
situation-device-protective = GFCI or AFCI device
situation-device-control = dimmer
situation-device-equipment = piece of equipment on a strap
situation-device = { $count ->
        [one] One { $device } is mounted in the box; the largest conductor connected to it is { $size }.
       *[other] { $count } yokes are mounted in the box, each with a { $device }; the largest conductor connected to each is { $size }.
    }
situation-device-wide = { $count ->
        [one] One { $device } that needs { $gangs } gangs is mounted in the box; the largest conductor connected to it is { $size }.
       *[other] { $count } yokes that need { $gangs } gangs each are mounted in the box, each with a { $device }; the largest conductor connected to each is { $size }.
    }
situation-clamps-internal = { $count ->
        [one] The box has one internal cable clamp.
       *[other] The box has { $count } internal cable clamps.
    }
situation-clamps-molded = { $count ->
        [one] The box has one molded spring tab.
       *[other] The box has { $count } molded spring tabs.
    }
situation-clamps-external = { $count ->
        [one] One connector holds the cables; it clamps outside the box.
       *[other] { $count } connectors hold the cables; they clamp outside the box.
    }
situation-clamps-assembly = { $count ->
        [one] One clamp assembly ends a cable.
       *[other] { $count } clamp assemblies end cables.
    }
situation-studs = { $count ->
        [one] There is a luminaire stud in the box.
       *[other] There are { $count } luminaire studs in the box.
    }
situation-hickeys = { $count ->
        [one] There is a hickey in the box.
       *[other] There are { $count } hickeys in the box.
    }
situation-terminal-blocks = { $count ->
        [one] There is a terminal block in the box; the largest conductor that ends on it is { $size }.
       *[other] There are { $count } terminal blocks in the box; the largest conductor that ends on each is { $size }.
    }
situation-canopy-domed = A luminaire with a domed canopy covers the box.
situation-canopy-flat = A flat luminaire without a canopy covers the box.
situation-canopy-fan = A ceiling fan hangs from the box.
situation-fixture-wires = { $count ->
        [one] One { $size } fixture wire enters the box from it.
       *[other] { $count } fixture wires of { $size } enter the box from it.
    }
situation-fixture-grounding = { $count ->
        [one] One { $size } grounding conductor enters the box from it.
       *[other] { $count } grounding conductors of { $size } enter the box from it.
    }
situation-wire-connectors = { $count ->
        [one] One wire connector is used.
       *[other] { $count } wire connectors are used.
    }
situation-small-parts = { $count ->
        [one] One small fitting, such as a locknut, is used.
       *[other] { $count } small fittings, such as locknuts, are used.
    }
situation-space = { $count ->
        [one] Space { $space } of the box is one gang wide.
       *[other] Space { $space } of the box is { $count } gangs wide.
    }

situation-shape-octagonal = octagonal
situation-shape-square = square
situation-shape-device = device
situation-shape-masonry = masonry
situation-shape-cast = cast
situation-box-standard = { $count ->
        [one] The box is a standard metal { $shape } box of { $dimensions } in, without a mark.
       *[other] { $count } standard metal { $shape } boxes of { $dimensions } in, without a mark, are joined.
    }
situation-box-standard-marked = { $count ->
        [one] The box is a standard metal { $shape } box of { $dimensions } in, marked { $volume }.
       *[other] { $count } standard metal { $shape } boxes of { $dimensions } in are joined and marked { $volume } together.
    }
situation-box-nonmetallic = { $count ->
        [one] The box is a plastic one-gang box marked { $volume }.
       *[other] The box is a plastic { $count }-gang box marked { $volume }.
    }
situation-box-metal = { $count ->
        [one] The box is a metal one-gang box marked { $volume }.
       *[other] The box is a metal { $count }-gang box marked { $volume }.
    }
situation-section-plaster-ring = plaster ring
situation-section-extension-ring = extension ring
situation-section-raised-cover = raised cover
situation-section-domed-cover = domed cover
situation-section-marked = { $count ->
        [one] A { $section } marked { $volume } is fitted.
       *[other] { $count } pieces are fitted, each a { $section } marked { $volume }.
    }
situation-section-standard = { $count ->
        [one] A { $section } made from a box of the same dimensions is fitted.
       *[other] { $count } pieces are fitted, each a { $section } made from a box of the same dimensions.
    }
situation-section-unmarked = { $count ->
        [one] A further { $section }, with no volume marked on it and not made from a standard box, is fitted.
       *[other] { $count } further pieces are fitted, each a { $section } with no volume marked on it and not made from a standard box.
    }
situation-barrier-metal = { $count ->
        [one] A metal barrier without a mark divides it.
       *[other] { $count } metal barriers without a mark divide it.
    }
situation-barrier = { $count ->
        [one] A barrier without a mark divides it.
       *[other] { $count } barriers without a mark divide it.
    }
situation-barrier-nonmetallic = { $count ->
        [one] A plastic barrier without a mark divides it.
       *[other] { $count } plastic barriers without a mark divide it.
    }

situation-pull-box = A pull box is to be sized. All conductors are insulated.
situation-pull-box-over-1000-volts = A pull box for a system over 1000 V is to be sized.
situation-wall-left = left wall
situation-wall-right = right wall
situation-wall-top = top wall
situation-wall-bottom = bottom wall
situation-wall-back = back wall
situation-entry = Raceway { $id }: { $wall }, trade size { $size }.
situation-entry-with-diameter = Raceway { $id }: { $wall }, trade size { $size }, outside diameter { $diameter }.
situation-entry-metric = Raceway { $id }: { $wall }, metric designator { $size }.
situation-entry-metric-with-diameter = Raceway { $id }: { $wall }, metric designator { $size }, outside diameter { $diameter }.
situation-entry-row = Raceway { $id } is in row { $row } of its wall.
situation-cable-shielded = Raceway { $id } holds one shielded cable with an outside diameter of { $diameter }.
situation-cable-lead-covered = Raceway { $id } holds one lead-covered cable with an outside diameter of { $diameter }.
situation-cable-nonshielded = Raceway { $id } holds one nonshielded cable with an outside diameter of { $diameter }.
situation-pull = Conductors of { $size } run from { $from } to { $to }.
situation-pull-spliced = Conductors of { $size } run from { $from } to { $to } and are spliced in the box.
situation-pull-of-cable = The cable runs from { $from } to { $to }.

situation-raceway = A run of { $kind }, { $size }, is to be filled.
situation-raceway-length = It is { $length } long, between two boxes.
situation-raceway-conductors = Only { $size } { $insulation } conductors go into it.
situation-body-straight = A straight conduit body (type C) is installed. Nothing is spliced in it.
situation-body-back = A conduit body with an opening in the back (type LB) is installed. Nothing is spliced in it.
situation-body-side = A conduit body with an opening at the side (type LL or LR) is installed. Nothing is spliced in it.
situation-body-raceway = The raceways attached to it are { $kind }, { $size }.
situation-body-conductors = Only { $size } { $insulation } conductors run through it.

situation-opening = The opening of the box is { $width } wide and { $height } high.
situation-emergence = The conductors leave their sheath { $depth } behind the front edge of the box.
situation-ring = A ring is fitted that moves the opening { $depth } outwards.
situation-equipment = A device that projects { $projection } behind its mounting plane is mounted in the box. It is supplied by { $size } conductors.
situation-rear-center = The conductors enter through the center of the back, behind the device.
situation-no-rear-center = The conductors enter through the sides.

question-required-volume = What volume do the contents require?
question-available-volume = How much volume counts for this box with what is fitted to it?
question-share-of-volume = How much volume counts for space A?
question-further-conductors = How many more { $size } insulated conductors may enter this box?
question-width = How far apart must the left and the right wall be at the least?
question-entry-distance = How far must the entries that hold the same conductors be apart at the least? If there are several, give the greatest distance.
question-most-conductors = How many of these conductors may it hold at the most?
question-required-length = How long must the free conductor be at the least, from where it leaves its sheath?
question-required-depth = How deep must the box be inside at the least?
