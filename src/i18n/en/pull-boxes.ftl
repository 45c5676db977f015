## Boxes for large conductors

rule-pull-applies = Boxes that 4 AWG and larger conductors enter are sized by length from their raceways, not by volume. A box with larger and smaller conductors must satisfy both kinds of rule.
    .title = Pull and junction boxes
finding-pull-box-size = A conductor of 4 AWG or larger has no volume allowance: its box is sized by the pull-box rules. Send this box to the pull-box check too.

## Pull boxes

rule-pull-trade-size = In the sums a raceway counts with its trade size in inches, or with its metric designator in millimetres: not with its outside or inside diameter. The two systems are never mixed.
    .title = Trade size in the sums
rule-pull-straight = A straight pull asks for a length, from wall to opposite wall, of eight times the largest raceway. Nothing is added for other raceways, and nothing is asked of the directions across.
    .title = Straight pulls
rule-pull-angle = An angle pull, a U pull or a splice asks for a distance, from the wall of the entry to the opposite wall, of six times the largest raceway of its row and the trade sizes of all other raceways of that row. Each row is computed alone; the largest result governs.
    .title = Angle pulls, U pulls and splices
rule-pull-entry-distance = Entries that hold the same conductors stand at least six times the larger of the two raceways apart.
    .title = Distance between entries
rule-pull-removable-cover = From a wall opposite a removable cover, the space that the largest conductor needs to bend (Table 312.6(A), one wire per terminal) may serve instead of the angle rule. It changes that one direction only.
    .title = Wall opposite a removable cover
rule-pull-cables = A cable counts as the smallest raceway that its conductors would need.
    .title = Cables in the sums
rule-pull-marked-smaller = A listed box or conduit body may be smaller than the rules ask when what it holds stays below the full fill of its raceways, or within the number and size of conductors that its maker marked on it permanently; other combinations may be used up to the same total cross-section.
    .title = Listed and marked smaller boxes
rule-pull-racking = In a box with a side over 6 ft (1.8 m), all conductors are cabled or racked.
    .title = Racking in large boxes
rule-pull-covers = The cover suits the box and the conditions of use, and a metal cover is grounded and bonded.
    .title = Covers of pull boxes
rule-pull-barriers = Where permanent barriers divide a box, each section is a box of its own.
    .title = Sections between barriers
rule-pull-distribution-blocks = Power distribution blocks stand in boxes of over 100 in³ (1650 cm³): listed, in a box as large as their instructions ask, with bending space at their terminals, no exposed live part, and terminals that passing conductors leave free. A bar for equipment grounding conductors may stand in a smaller box.
    .title = Power distribution blocks
rule-pull-distribution-blocks-size = A box with power distribution blocks is, from each wall with an entry to the opposite wall, as long as the angle rule asks, whatever is pulled there. No marking lets it be shorter.
    .title = Length of boxes with blocks
rule-pull-distribution-blocks-line-side = A power distribution block on the line side of the service equipment is listed and marked for that use.
    .title = Blocks on the line side
rule-pull-governs = Along each direction of the box, the largest of all that is asked governs; nothing is added together.
    .title = What governs
rule-pull-placement = Every entry needs a place within its wall, clear of the other entries, and as far from entries with the same conductors as is asked.
    .title = Placement of entries
rule-pull-conduit-body = A conduit body that 4 AWG and larger conductors enter follows the lengths of the pull-box rules by its own dimensions, unless it is listed and marked for less.
    .title = Conduit bodies for large conductors

finding-sized-by-volume = These pulls hold only conductors smaller than 4 AWG, or none that must be insulated: they are not sized by length. Send the box to the outlet-box check, which sizes it by volume.
finding-entry-without-size = What these entries count as could not be established, so every sum of their rows is incomplete. Give the trade size of a raceway, or conductors that the tables have.
finding-side-enough = The { $axis } of { $given } has the { $required } that entries { $entries } ask.
finding-side-short = The { $axis } of { $given } is less than the { $required } that entries { $entries } ask.
finding-smaller-by-mark = The { $axis } of { $given } is less than the { $required } that entries { $entries } ask; the listing and the marking allow that for what is held.
finding-side-between = The { $axis } of { $given } is enough if entries { $entries } ask { $least }, and not if they ask { $most }. Say what is asked for here, so that it can be told which.
finding-closer-by-mark = Entries { $first } and { $other } hold the same conductors and are { $measured } apart, less than { $required }; the listing and the marking allow that for what is held.
finding-never-apart-by-mark = Entries { $first } and { $other } hold the same conductors and can here be at most { $measured } apart, less than { $required }; the listing and the marking allow that for what is held.
finding-entries-apart-between = Entries { $first } and { $other } hold the same conductors, and { $required } are asked between them. Their nearest edges are between { $least } and { $measured } apart: more cannot be said of entries on walls that meet which are not level. Put them level, or farther apart.
finding-box-side-open = The { $axis } of the box must be at least { $required }. Say what it is.
finding-distances-without-sides = Entries with the same conductors must be { $required } apart. Whether they can be goes by all three dimensions of the box: say the others.
finding-raceway-too-narrow = What comes in at { $entry } is at least { $widest } wide, and no raceway of that trade size and kind is wider inside than { $inside }.
finding-raceway-kind-open = What comes in at { $entry } is at least { $widest } wide, and raceways of that trade size may be no wider inside than { $inside }. Say which kind it is.
finding-entries-at-most = Entries { $first } and { $other } hold the same conductors and are at most { $measured } apart: less than { $required }.
finding-mark-covers = The marking covers what is held.
finding-mark-exceeded = The marking of { $count } conductors of { $size } does not cover what is held, so the lengths of the rules apply.
finding-mark-not-listed = Only a listed box with the permanent marking of its maker may be smaller, so the lengths of the rules apply.
finding-mark-insulation-open = More conductors are held than the marking has, so their cross-section decides whether it covers them. Say what insulation they have.
finding-mark-open = Whether the marking covers what the box holds depends on a cross-section that the tables do not have.
finding-entries-apart = Entries with the same conductors are as far apart as is asked.
finding-entries-close = Entries { $first } and { $other } hold the same conductors and are { $measured } apart: less than { $required }.
finding-entries-never-apart = Entries { $first } and { $other } hold the same conductors and must be { $required } apart, but in this box they can be at most { $measured } apart.
finding-entry-distance-unknown = How far apart the entries must be is not known, since the size of one of them is not.
finding-positions-missing = Whether entries with the same conductors are far enough apart depends on where they are. Asked: { $pairs }. Give their positions.
finding-entry-outside-wall = Entry { $entry } does not lie within the { $wall ->
    [left] left wall
    [right] right wall
    [top] top wall
    [bottom] bottom wall
   *[back] back
 }.
finding-entries-overlap = Entries { $first } and { $other } overlap.
finding-entries-placed = Every entry with a position lies within its wall.
finding-layout-open = No places can be looked for while an entry has no size.
finding-layout-not-found = No box with a place for every entry was found within the work that one request may cause. That is no proof that there is none: ask with a larger step.
finding-layout-smallest = Every entry has a place in a box { $width } wide, { $height } high and { $depth } deep. No box of that depth with a smaller sum of width and height has, on the same grid.
finding-layout-not-proven = Every entry has a place in a box { $width } wide, { $height } high and { $depth } deep. A smaller one may serve: the work that one request may cause ended before all were looked at.
finding-layout-needs = The sums ask for a { $axis } of { $sum }, but in line, with the distances and clearances asked, entries take at least { $needed }. The box is { $growth } larger than the sums ask.
finding-layout-grows = The sums ask for a { $axis } of { $sum }, but with every entry in a place that all rules allow it must be { $needed }: { $growth } more.
finding-racked = A side of { $longest } is over { $limit }; the conductors are cabled or racked.
finding-not-racked = A side of { $longest } is over { $limit }, so all conductors must be cabled or racked.
finding-racking-open = A side of { $longest } is over { $limit }, so all conductors must be cabled or racked. Say whether they are.
finding-racking-ahead = The box will have a side of at least { $longest }, over { $limit }: its conductors will have to be cabled or racked.
finding-cover = The box needs a cover that suits it and the conditions of use; a metal cover is grounded and bonded.
finding-barriers = Permanent barriers make each section a box of its own, and each was computed by itself.
finding-block-volume-enough = The box has { $volume }, over the { $limit } below which it may hold no power distribution block.
finding-block-volume-short = The box has { $volume }. Only a box of over { $limit } may hold a power distribution block.
finding-block-volume-open = Only a box of over 100 in³ (1650 cm³) may hold a power distribution block. Give its dimensions.
finding-block-conditions = The power distribution block satisfies the other conditions for its use in a box.
finding-block-conditions-broken = The power distribution block does not satisfy these conditions for its use in a box.
finding-block-conditions-open = Whether the power distribution block may be used depends on what was not said: its listing, the box its instructions ask, bending space, covered live parts, free terminals.
finding-block-line-side = On the line side of the service equipment the block must be listed and marked for that use.

because-smaller-than-4-awg = Its conductors are smaller than 4 AWG.
because-not-insulated = Its large conductors are not required to be insulated.
because-row-only-straight = The row has no angle pull, U pull or splice.
because-cover-not-removable = The cover opposite the back is not removable.
because-not-listed = It is not listed.
because-spliced = The conductors are spliced, and read as not being the same on both sides of the splice.
because-over-1000-volts = The system is over 1000 V: the lengths follow the cables.

fault-empty-list = This list needs at least one item.
fault-box-and-sections = A divided box has its dimensions section by section. Leave box out, or sections.
fault-marked-and-sections = A marked box is not divided. Leave marked out, or sections.
fault-one-section = A divided box has at least two sections.
fault-some-sections-measured = Give the dimensions of every section, or of none.
fault-section-missing = Say which section it is in.
fault-unknown-section = There is no section { $id }.
fault-unknown-entry = There is no entry { $id }.
fault-raceway-and-cable = An entry is either a raceway or a cable: not both.
fault-neither-raceway-nor-cable = Say what enters: raceway or cable.
fault-entry-without-cables = Over 1000 V the cables of every entry are needed: their diameters count.
fault-cables-over-1000-volts = Cables with their diameters count only over 1000 V. Set over_1000_volts, or leave them out.
fault-cable-over-1000-volts = Over 1000 V a cable is described in cables_over_1000_volts.
fault-conductor-over-cable = A conductor cannot be thicker than the cable that it is in.
fault-position-without-box = A position is a place in a box of given dimensions. Give those too.
fault-position-not-in-wall = Give the two measures that lie in the { $wall ->
    [left] left wall
    [right] right wall
    [top] top wall
    [bottom] bottom wall
   *[back] back
 }: from_left and from_bottom on the back, from_bottom and from_back on the left and right walls, from_left and from_back on the top and bottom walls.
fault-pull-of-one-entry = A pull joins at least two entries.
fault-entry-twice-in-pull = A pull names entry { $id } twice.
fault-pull-through-barrier = A pull stays in one section; conductors that pass a barrier enter the next section there.
fault-offset-not-opposite = Only entries on opposite walls can be out of line with one another.
fault-pull-without-conductor = Say what the largest conductor is: it decides whether the pull is sized by length.

point-angle_sum = Does the angle rule add every entry of the row, or only those of angle pulls, U pulls and splices?
point-back_wall_row = Where no row is declared on the back wall, which entries are in one row?
point-entry_distance = Is the distance between entries measured from edge to edge, or from centre to centre?
point-spliced_conductor = Is a conductor that is spliced in the box the same conductor on both sides of the splice?
point-straight_splice = Do conductors spliced between opposite walls follow the angle rule only, or the straight rule too?
point-offset_entries = Is a pull between opposite walls whose entries are out of line still a straight pull?
point-hinged_cover = Is a hinged cover a removable one?
point-cable_raceway = A cable counts as the raceway that its conductors would need: of which kind?
point-cable_insulation = Where the insulation of the conductors of a cable is not said, which is it taken to be?
point-marked_size = Is the conductor size marked on a listed box also the largest that may be used?

## Boxes over 1000 V

rule-over-1000-volts-scope = For systems over 1000 V the lengths of a pull box are counted in outside diameters of the cables, not in trade sizes.
    .title = Boxes over 1000 V
rule-over-1000-volts-straight = A straight pull asks for 48 diameters of the largest shielded or lead-covered cable, and 32 of the largest that is neither.
    .title = Straight pulls over 1000 V
rule-over-1000-volts-angle = An angle or U pull asks for a distance, from the wall of the entry to the opposite wall, of 36 diameters of the largest cable (24 where it is neither shielded nor lead-covered) and the diameters of all other cables that enter through the same wall.
    .title = Angle and U pulls over 1000 V
rule-over-1000-volts-entry-exit = Where a cable enters and where it leaves are at least 36 of its diameters apart, 24 where it is neither shielded nor lead-covered.
    .title = Entry and exit of a cable over 1000 V
rule-over-1000-volts-removable-cover = From a wall opposite a removable cover, the bending radius of the cable may serve instead of the angle rule.
    .title = Wall opposite a removable cover over 1000 V
rule-over-1000-volts-bending-radius = The least bending radius is 12 diameters of a shielded or lead-covered cable and 8 of another; for a cable of several shielded conductors the greater of 12 diameters of a conductor and 7 of the cable.
    .title = Bending radius over 1000 V
rule-over-1000-volts-removable-side = At least one side of the box can be removed.
    .title = Removable side over 1000 V
rule-over-1000-volts-construction = Over 1000 V the box encloses everything completely, protects against corrosion, rounds or bushes what cables pass, keeps its cover securely fastened and carries a permanent warning of high voltage outside.
    .title = Construction over 1000 V

finding-removable-side = A side of the box can be removed.
finding-no-removable-side = No side of the box can be removed, and over 1000 V one must.
finding-high-voltage-construction = Over 1000 V the box must also enclose completely, resist corrosion, protect cables where they pass partitions, have securely fastened covers and be marked outside with a warning of high voltage.

point-cable_diameter = In a cable of several conductors over 1000 V, does the diameter of the cable count, or that of its largest conductor?

finding-insulated-open = Whether these pulls are sized by length depends on whether their largest conductor must be insulated. Lengths are shown as if it must.
finding-mark-at-full-fill = The marking serves only below the full fill of the raceways, and a raceway here is as full as it may be: the lengths of the rules apply.
finding-mark-fill-open = The marking covers what is held, but it serves only where each raceway holds less than its full fill. Say whether they do.
finding-mark-without-conductors = Whether the marking covers what is held depends on the conductors in the box. List them.
finding-mark-over-1000-volts = Over 1000 V a marking of conductors does not let a box be smaller.
finding-wall-without-room = The { $wall ->
    [left] left wall
    [right] right wall
    [top] top wall
    [bottom] bottom wall
   *[back] back
 } has no room for its entries, even with the smallest holes that they could have.
finding-wall-room-open = Whether the { $wall ->
    [left] left wall
    [right] right wall
    [top] top wall
    [bottom] bottom wall
   *[back] back
 } has room for its entries depends on where they are.
finding-walls-with-room = Each wall has room for the smallest holes that its entries could have.
finding-block-line-side-marked = The power distribution block is marked for use on the line side of service equipment.
finding-block-line-side-open = Say whether the block is on the line side of the service equipment, where it must be marked for that use.
finding-block-over-1000-volts = The rule for power distribution blocks is not one of those that apply over 1000 V: whether this block may be used cannot be said.
finding-cable-insulation-open = What a cable counts as depends on the insulation of its conductors. Give it, or choose how it is to be read.
finding-removable-side-open = Over 1000 V a side of the box must be removable: say whether the cover is.
because-spliced-by-angle = The conductors are spliced: the angle rule is asked, and not the straight rule.
because-at-full-fill = A raceway is as full as it may be.
because-marked-over-1000-volts = Over 1000 V a marking of conductors does not count.
because-not-on-line-side = It is not on the line side of the service equipment.
because-marked-smaller = The marking covers what the body holds.
fault-mark-list-and-pulls = The conductors listed with the marking are not those of the pulls. Which is right?
fault-box-without-sides = Say at least one inside dimension of the box, or leave the box out to ask what is required.
fault-outside-smaller-than-trade-size = No raceway of this trade size is as thin as this. Which is right?
fault-outside-not-of-raceway = No raceway of this kind and trade size has this outside diameter, coated or not. Which is right?
fault-cable-thinner-than-conductors = The conductors of this cable take more than the whole of it. Which is right?
fault-pull-larger-than-cable = The pull holds a larger conductor than the cable that it comes in. Which is right?
fault-cables-of-one-pull-differ = The same cables go in at one of these entries and out at the other, and they are described differently. Which is right?
finding-placed-by-kind = Whether entry { $entry } has room where it stands depends on how wide the raceways are. Say which kind they are.
finding-wall-room-by-kind = Whether the { $wall ->
    [left] left wall
    [right] right wall
    [top] top wall
    [bottom] bottom wall
   *[back] back
 } has room for its entries depends on how wide their raceways are. Say which kind they are.
finding-wall-room-unsaid = Whether the holes of the entries have room in their walls goes by dimensions of the box that were not said. Say them.
finding-racking-side-open = In a box with a side over { $limit }, conductors are cabled or racked, and not every side was said. Say the others, or whether the conductors are cabled or racked.
fault-row-and-positions = By the positions, this entry is not in the row that it is said to be in: entries whose rims overlap across the row are in one, and those that do not are in several. Which is right?
fault-box-unmarked-and-marked = The box is said to be unmarked, and a marking of it is given. Which is right?
fault-some-positions = Say where every entry of the box or section is, or of none.
fault-offset-and-positions = Whether these entries are in line is said one way here and another by their positions. Which is right?
