## Raceway fill

rule-raceway-fill-limits = Of the inside area of a raceway, one conductor or cable may take 53 %, two may take 31 %, three or more 40 %.
    .title = Limits of raceway fill
rule-raceway-fill-counted = Every conductor counts with its own cross-section, equipment grounding and bonding conductors included.
    .title = What counts in a raceway
rule-raceway-fill-nipple = A nipple of up to 24 in (600 mm) between two enclosures may be filled to 60 %, whatever the number of conductors.
    .title = Nipples
rule-raceway-fill-actual-dimensions = A conductor or cable that the tables do not have counts with its actual dimensions. Where the actual dimensions of a tabulated one are known, they may be used instead.
    .title = Actual dimensions
rule-raceway-fill-conductors = An insulated conductor takes the cross-section that the table has for its insulation type and size, a compact one that of the table for compact conductors. Different sizes are added.
    .title = Insulated conductors
rule-raceway-fill-same-size = Of conductors or cables of one size, the next whole number is permitted when the computed number ends in 0.8 or more; otherwise the fraction is dropped.
    .title = Conductors of one size
rule-raceway-fill-single = The same holds for a single conductor: a computed number of 0.8 or more permits one.
    .title = A single conductor
rule-raceway-fill-bare = A bare conductor takes the cross-section of the table of conductor properties, solid or stranded.
    .title = Bare conductors
rule-raceway-fill-cables = A multiconductor cable or cord counts as one conductor. One of elliptical section takes the area of a circle with its larger diameter.
    .title = Cables in a raceway
rule-raceway-fill-raceway-area = The inside area of a raceway follows from its kind and trade size. The table has the inside diameter, and rounded areas beside it.
    .title = Inside area of a raceway
rule-raceway-fill-smallest = The smallest trade size of a kind that takes everything: it does, and the one below does not.
    .title = Smallest trade size
rule-raceway-fill-emt-size = Electrical metallic tubing comes in trade sizes up to 4, from the 2023 edition on up to 6.
    .title = Largest electrical metallic tubing
rule-raceway-fill-imc-size = Intermediate metal conduit comes in trade sizes up to 4, from the 2023 edition on up to 6.
    .title = Largest intermediate metal conduit
rule-raceway-fill-jamming = Three conductors of one size can jam while they are pulled in where the raceway's inside diameter is 2.8 to 3.2 times theirs. This is advice, not a requirement.
    .title = Jamming of three conductors

finding-fill-within = { $total } fill { $fill } of { $raceway }; up to { $limit } ({ $allowed }) are permitted for this number ({ $number }).
finding-fill-raised = { $total } are more than the { $allowed } that { $limit } of { $raceway } come to, but all are of one size, and the computed number ends in 0.8 or more: { $number } are permitted.
finding-fill-over = { $total } fill { $fill } of { $raceway }, more than the { $limit } ({ $allowed }) that are permitted for this number ({ $number }).
finding-raceway-without-figures = The inside dimensions of { $raceway } were not available here and are not guessed. Take them from print.
finding-trade-size-not-permitted = { $raceway } is not permitted by this edition: the largest trade size is { $most }.
finding-trade-size-permitted = { $raceway } is permitted: the largest trade size is { $most }.
finding-fill-not-confirmed = { $total } fill { $fill } of { $raceway }, of which { $limit } ({ $allowed }) would be permitted; but these rows of the tables are confirmed by nothing: { $rows }. Take them from print.
finding-nipple-of-unknown-length = { $total } fill { $raceway } beyond the { $ordinary } of an ordinary run, within the { $allowed } of a nipple. Only up to { $most } it is one: say its length.
finding-taken-as-nipple = Taken as a nipple between two enclosures. The 60 % hold for nothing else.
finding-too-long-for-nipple = { $length } are longer than the { $most } that a nipple may have, so the ordinary limits hold.
finding-may-jam = The raceway is { $ratio } times as wide as one of the three conductors. Between { $from } and { $to } they can jam while they are pulled in.
finding-no-trade-size = No trade size of { $kind } in the table takes everything.
finding-larger-without-figures = No trade size of { $kind } with known dimensions takes everything. There are also { $sizes }, whose dimensions were not available here.
finding-unconfirmed-dimensions = These rows of the tables are confirmed by nothing: { $rows }. Compare them with print before relying on this answer.
finding-other-area-count = Read as { $reading }, { $what } takes { $theirs } of this size, not { $ours }.
finding-other-area-room = Read as { $reading }, { $theirs } more of { $what } would fit, not { $ours }.
finding-other-area-size = Read as { $reading }, the smallest { $what } is { $theirs }, not { $ours }.

because-sizes-differ = The conductors are not all of one cross-section.
because-not-a-nipple = It is not said to be a nipple between two enclosures.
because-longer-than-a-nipple = It is longer than a nipple may be.
because-not-three = There are not exactly three conductors.
because-diameters-differ = The three conductors are not of one diameter.

fault-short-and-no-nipple = A raceway of this length between two enclosures is a nipple. Leave the length out where it does not run between enclosures.
fault-nothing-in-raceway = Say what goes into the raceway: conductors, bare_conductors, cables or measured_conductors.
fault-too-many-conductors = { $number } conductors and cables are more than the { $most } that one request may have.
fault-trade-size-of-kind = { $kind } does not come in trade size { $size }.
fault-type-not-compact = The table of compact conductors does not have { $insulation }.
fault-covering-not-said = { $insulation } is made with and without an outer covering, of different dimensions. Say which.
fault-covering-of-other-type = { $insulation } is made in one way only. Leave covering out.
fault-no-area-in-units = The area of { $size } { $insulation } was not available in the units of this request, and is not converted. Ask in the other system.
fault-size-of-insulation = The table does not have { $size } { $insulation }. Give its actual dimensions as a measured conductor.
fault-size-of-construction = The table does not have a bare { $size } conductor made in this way.
fault-cable-without-diameter = Give the diameter of a round cable, or the major_diameter of an elliptical one.
fault-cable-with-two-diameters = A cable has a diameter when it is round, or a major_diameter when it is elliptical: not both.
fault-diameter-too-large = A cable or conductor may have a diameter of at most { $most }: no raceway of the tables takes a larger one.

point-raceway_area = Which inside area does a raceway have: that of its tabulated diameter, not rounded, or the rounded areas printed beside it?

finding-cross-section-enough = The body has a cross-section of { $given }; { $required } are asked.
finding-cross-section-short = The body has a cross-section of { $given }, less than the { $required } that are asked.
finding-cross-section-open = The body must have a cross-section of { $required }. Say what it has.
finding-raceway-not-tabulated = The tables have no figures for { $kind } of trade size { $size }, so no cross-section can be asked.
finding-opening-fill = The conductors of the { $opening } take { $area } of the { $allowed } that may be filled.
finding-opening-overfull = The conductors of the { $opening } take { $area }, more than the { $allowed } that may be filled.
finding-opening-not-tabulated = The conductors of the { $opening } cannot be counted: the tables lack its raceway or one of its conductors, or an insulation is not said.
finding-short-radius-space = A short-radius body needs a size that leaves its conductors free space; no figure is stated for it.
finding-short-radius-splices = A short-radius body may hold no splices, taps or devices, whatever its volume.
finding-body-not-supported = A body with splices or devices must be supported rigidly and securely.
finding-body-support-open = A body with splices or devices must be supported rigidly and securely. Say whether it is.
finding-body-volume-short = Splices and devices require { $required }, but the body is marked { $available }.
finding-body-volume-enough = Splices and devices require { $required } of the { $available } that the body is marked.
finding-body-side-open = The { $axis } of the body must be { $required }. Say what it is, or what is marked on the body.
finding-openings-open = The { $first } and the { $other } hold the same conductors and must be { $required } apart. Say how far apart they are, or what is marked on the body.
finding-full-fill = The body is marked as evaluated for all that its raceways may hold, and they hold no more.

because-short-radius = It is a short-radius body.

fault-body-of-one-opening = A conduit body has at least two openings.
fault-opening-twice = Two openings cannot be in the same place.
fault-unknown-opening = The body has no opening there.
fault-opening-twice-in-pull = A pull names one opening twice.
fault-conductor-without-insulation = Say the insulation: it decides how much of the raceway the conductor takes.
fault-bare-and-insulated = A bare conductor has no insulation and no compact dimensions here.
fault-splice-without-contents = Spliced conductors are counted by volume. List them in contents, each where it comes in and where it goes out.
fault-empty-contents = Contents list what is spliced or connected. Leave them out where nothing is.
