### English. Keys are never renamed; a missing or unused message fails a test.
### Rules are stated in our own words. The adopted code, its amendments and the authority having jurisdiction control.

## Cautions

caution-de-energize = De-energize, lock out and tag out, and test with a proven tester before touching anything in a box. Do not open energized equipment to read a marking.
caution-authority = The adopted code with its local amendments, and the authority having jurisdiction, decide. Electrical work is for licensed or otherwise qualified persons, under a permit where one is required. This answer approves nothing.
caution-scope = Only the arithmetic of the rules named here was checked: not listing, temperature, ampacity, bonding, arc flash or hazardous (classified) locations.
caution-minimums = Volumes and dimensions are minimums; good workmanship may need more.
caution-unverified-edition = The 2026 text was not available: these are the rules of 2023 carried forward. Compare every figure and section number with print before relying on it.

caution-amended = Figures were amended as this request says. Whether the jurisdiction has adopted them was not checked.

## Proof in sentences

step-computed = { $told } ({ $rule })
step-left-out = Left out: { $told } ({ $rule })
step-read = Read as { $told } ({ $rule })
step-boxes = Boxes that would do: { $told } ({ $rule })

## Every request

rule-edition-unverified = An edition whose text could not be read is answered with the figures of the edition before it, and every citation says so.
    .title = Unverified edition
finding-unverified-edition = The 2026 edition is answered with the rules of 2023. None of its figures or section numbers could be verified.
fault-unverified-edition = The text of the 2026 edition was not available. Ask for a verified edition, or set accept_unverified_rules to true to have the rules of 2023 carried forward.
fault-said-by-the-review = The review says { $term } for every check. Leave it out here, or say the same.
fault-edition-twice = This edition stands twice. Name each once.
fault-editions-to-compare = Name from 2 to { $most } editions.
fault-unknown-check = No check has this name.
fault-not-amendable = This figure cannot be amended.
fault-amendment-not-in-edition = The { $edition } edition has no such figure to amend.
fault-amendment-out-of-bounds = An amendment of this figure must be from { $least } to { $most }.
fault-too-many-items = { $items } items are more than the { $most } that one list may have.
fault-duplicate-id = The id { $id } is carried by more than one thing. Give each its own.

## Volume of a box

rule-outlet-volume-scope = The volume that a box and what is fitted to it provide must be at least the volume that its contents require. Exactly enough is enough.
    .title = Volume provided and volume required
rule-outlet-volume-assembly = The volume of a box is the sum of its assembled sections. A plaster ring, extension ring, raised or domed cover adds the volume marked on it, or that of the standard box it is made from; with neither it adds nothing.
    .title = Assembled sections
rule-outlet-volume-standard = A standard metal box that carries no mark has the volume that the table gives for its dimensions: not the product of its outside dimensions, and nothing between two rows.
    .title = Standard metal boxes
rule-outlet-volume-marked = Every nonmetallic box, and any box of up to 100 in³ (1650 cm³) that the table does not have, takes the volume that its maker marked on it. A standard box marked with more than the table gives may use its mark.
    .title = Marked boxes
rule-outlet-volume-barrier = A barrier divides a box into spaces, each of which must hold its own contents. A barrier that is not marked takes 0.5 in³ (8.2 cm³) if metal and 1.0 in³ (16.4 cm³) if nonmetallic.
    .title = Barriers and the spaces they make
rule-outlet-volume-offer = Standard boxes are offered for the gangs that the devices need: square boxes for up to two, octagonal boxes and cast boxes of one cover for one, boxes counted by the gang for any number.
    .title = Which standard boxes are offered

finding-volume-enough = The contents require { $required } of the { $available } that are there.
finding-volume-short = The contents require { $required }, but only { $available } are there: { $short } too little.
finding-volume-open = What could be counted requires { $required } of the { $available } that are there, but not everything could be counted.
finding-volume-not-established = The volume of this box is not established. A nonmetallic box, and a box of up to 100 in³ (1650 cm³) that the table does not have, needs its marked volume.
finding-mark-below-table = The box is marked { $marked }, less than the { $table } that the table gives for its size. The mark was used.
finding-section-adds-nothing = This section carries no volume mark and is not said to be made from a standard box, so it adds nothing.
finding-barrier-policy = What barriers take was taken off the whole box first, and the rest shared out by gangs or by measured volume. The code does not say how; this is a policy of this service.
finding-inside-measure = The box is over the size that must be marked and has no mark; { $volume } was computed from its inside dimensions.

fault-no-contents = Say what is in the box: give contents, or spaces where barriers divide it. Contents may be empty.
fault-contents-and-spaces = Give either contents, for a box without barriers, or spaces, for a divided one: not both.
fault-barriers-without-spaces = Barriers make separate spaces. Give spaces, each with its share and its contents.
fault-spaces-without-barriers = Only barriers make separate spaces. Name them in enclosure.barriers, or give contents instead.
fault-one-space = A divided box has at least two spaces.
fault-shares-of-spaces = Give gangs for every space, or measured_volume for every space.
fault-standard-box-is-metal = The boxes of the table are metal. Give a nonmetallic box its marked volume instead of a standard size.
fault-standard-box-is-not-measured = A standard box has the volume of the table. Leave its inside dimensions out.
fault-marked-box-is-not-measured = A marked box has the volume that is marked. Leave its inside dimensions out.
fault-gangs-of-standard-box = { $box } with { $gangs } gangs is not a row of the table. Square and octagonal boxes are not counted by the gang; a cast box has one gang under a single cover and two or more under a multiple cover.
fault-side-too-long = An inside dimension may be at most { $most }.

point-unmarked_large_box = A box over 100 in³ that is neither marked nor in the table: may its inside measure serve, or only a mark?

## Contents of a box

rule-outlet-fill-sum = The volume required is the sum of what conductors, clamps, support fittings, devices, grounding conductors and (from 2023) terminal blocks take.
    .title = Volume required
rule-outlet-fill-allowance = Each size from 18 AWG to 6 AWG has one published volume allowance, whatever the insulation, stranding or metal of the conductor.
    .title = Allowance of one conductor
rule-outlet-fill-conductors = A conductor that enters and ends, or is spliced, in the box takes one allowance. One that passes through unbroken takes one; an unbroken loop takes two when it is at least twice as long as the free conductor required. One that never leaves the box takes none.
    .title = Conductors
rule-outlet-fill-canopy = Grounding conductors, and up to four fixture wires smaller than 14 AWG, that come from a domed canopy and end in the box may be left out.
    .title = Wires from a domed canopy
rule-outlet-fill-clamps = Internal clamps take one allowance together, however many there are, by the largest conductor in the box. A connector that clamps outside the box takes none.
    .title = Internal clamps
rule-outlet-fill-clamp-assembly = A listed clamp assembly that also ends the conductors of the cable takes the volume it occupies off the box, and no allowance.
    .title = Clamp assemblies with terminations
rule-outlet-fill-support-fittings = Each type of support fitting, such as a stud or a hickey, takes one allowance by the largest conductor in the box.
    .title = Support fittings
rule-outlet-fill-devices = Each yoke or strap takes two allowances by the largest conductor connected to a device on that yoke, however many devices it carries. One that needs several gangs for mounting takes two for each gang.
    .title = Devices and equipment
rule-outlet-fill-grounding = Grounding conductors and bonding jumpers are counted together by the largest of them: one allowance for all through 2017; from 2020 one for the first four, and a quarter for each one more.
    .title = Grounding conductors
rule-outlet-fill-isolated-set = Through 2017, a separate set of grounding conductors for isolated-ground equipment takes one allowance of its own, by the largest of that set.
    .title = Isolated grounding conductors
rule-outlet-fill-terminal-blocks = From 2023, each terminal block assembly takes one allowance by the largest conductor that ends on it, whatever the number of its poles.
    .title = Terminal blocks
rule-outlet-fill-no-allowance = Locknuts, bushings, wire connectors, screws and other small parts take no allowance.
    .title = What takes no allowance

finding-devices-differ = Yokes in the same box can take different allowances: each is counted by the largest conductor connected to a device on that yoke, not by the largest in the box ({ $largest }). Here: { $yokes }.
finding-device-without-conductor = A yoke is counted by the largest conductor connected to it. Say what that is.
finding-block-without-conductor = A terminal block is counted by the largest conductor that ends on it. Say what that is.
finding-loop-threshold = An unbroken loop counts twice here when it is at least { $threshold } long.
finding-no-allowance-published = No allowance is published for a conductor smaller than 18 AWG, so it could not be counted.
finding-no-conductors = Clamps and support fittings are counted by the largest conductor in the box. Say which conductors there are.
finding-largest-has-no-allowance = Clamps and support fittings are counted by the largest conductor in the box, and no allowance is published for that size.

because-stays-inside = No part of it leaves the box.
because-factory-leads = Leads that came with the device do not leave the box.
because-canopy = It comes from a domed canopy and ends in the box.
because-no-canopy = What hangs here has no canopy that gives relief, so its wires count.
because-outside = It clamps outside the box.
because-molded = The marked volume is read as leaving molded tabs out already.
because-own-volume = Its own volume is taken off the box instead.
because-not-in-edition = This edition has no such rule.
because-wire-connector = A wire connector takes no allowance.
because-small-fitting = A small fitting takes no allowance.
because-not-a-conductor-inside = It is not a conductor inside the box.
because-unmarked = It carries no volume mark and is not made from a standard box.

fault-loop-without-length = A loop needs its length: it decides whether the loop counts once or twice.
fault-length-without-loop = Only a loop has a loop length.
fault-assembly-without-volume = A clamp assembly with terminations takes its own volume off the box. Say how much that is.
fault-volume-of-plain-clamp = Only a clamp assembly with terminations has a volume of its own.

point-canopy_wires = More than four small fixture wires from a canopy: do all of them count, or only those past four?
point-fan_canopy = Is the canopy of a ceiling fan one that lets its wires be left out?
point-molded_clamps = Are spring tabs molded into a plastic box internal clamps, or already outside its marked volume?
point-device_leads = A device with leads of its own: is its yoke counted by the circuit conductor, or by the leads?
point-loop_threshold = Where a deep box asks for more free conductor than the base length: does that lengthen a loop that counts twice?
point-rail_splices = Are splicing terminals on a mounting rail a terminal block, or splicing connectors?
point-small_conductors = May a conductor smaller than 18 AWG be counted as 18 AWG?

## Free conductor

rule-free-conductor-length = At each outlet, junction and switch point, 6 in (150 mm) of free conductor are left for splices and connections, measured from where the conductor leaves its raceway or sheath inside the box.
    .title = Length of free conductor
rule-free-conductor-outside = Where any dimension of the opening is under 8 in (200 mm), each conductor must also reach 3 in (75 mm) outside the opening.
    .title = Reach outside a small opening

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
finding-smaller-by-mark = The { $axis } of { $given } is less than the { $required } that entries { $entries } ask, but the box is listed and its marking covers what it holds.
finding-closer-by-mark = Entries { $first } and { $other } hold the same conductors and are { $measured } apart, less than { $required }, but the box is listed and its marking covers what it holds.
finding-mark-covers = The marking covers what the box holds.
finding-mark-exceeded = The marking of { $count } conductors of { $size } does not cover what the box holds, so the lengths of the rules apply.
finding-mark-not-listed = Only a listed box with the permanent marking of its maker may be smaller, so the lengths of the rules apply.
finding-mark-open = Whether the marking covers what the box holds depends on a cross-section that the tables do not have.
finding-entries-apart = Entries with the same conductors are as far apart as is asked.
finding-entries-close = Entries { $first } and { $other } hold the same conductors and are { $measured } apart: less than { $required }.
finding-entries-never-apart = Entries { $first } and { $other } hold the same conductors and must be { $required } apart, but in this box they can be at most { $measured } apart.
finding-positions-missing = Whether entries with the same conductors are far enough apart depends on where they are. Asked: { $pairs }. Give their positions.
finding-entry-outside-wall = Entry { $entry } does not lie within the { $wall }.
finding-entries-overlap = Entries { $first } and { $other } overlap.
finding-entries-placed = Every entry with a position lies within its wall, and none overlaps another.
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
fault-position-not-in-wall = Give the two measures that lie in the { $wall }: from_left and from_bottom on the back, from_bottom and from_back on the left and right walls, from_left and from_back on the top and bottom walls.
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

rule-over-1000-volts-scope = For systems over 1000 V (from 2023 also over 1500 V direct current) the lengths of a pull box are counted in outside diameters of the cables, not in trade sizes.
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

## Conduit bodies

rule-conduit-body-area = A conduit body for 6 AWG and smaller, other than a short-radius one, has a cross-section of at least twice that of the largest conduit or tubing that it can be attached to.
    .title = Cross-section of conduit bodies
rule-conduit-body-conductors = A conduit body may hold as many conductors as the raceway attached to it may, by Chapter 9: not twice as many.
    .title = Conductors in conduit bodies
rule-conduit-body-splices = Splices, taps and devices stand only in a conduit body that its maker marked with a volume; what is in it is then counted as in a box. The body is supported rigidly.
    .title = Splices in conduit bodies
rule-conduit-body-short-radius = Short-radius conduit bodies hold no splices, taps or devices.
    .title = Short-radius conduit bodies

## Free conductors of a box

rule-free-conductor-unbroken = A conductor that passes through a box, neither spliced nor terminated there, need not be left long.
    .title = Conductors that pass unbroken
rule-free-conductor-spliced = From 2023, the free length may be in one piece or made up by a splice. The editions before do not say.
    .title = Free length made up by a splice
rule-free-conductor-splice-place = Each splice stands in a box or conduit body, where it stays within reach.
    .title = Where a splice may stand

finding-free-length-enough = Conductor { $subject } has { $given } free from where it leaves its raceway or sheath; { $limit } are required.
finding-free-length-short = Conductor { $subject } has only { $given } free from where it leaves its raceway or sheath; { $limit } are required.
finding-free-length-open = Conductor { $subject } needs { $limit } free from where it leaves its raceway or sheath. Say how much it has.
finding-sound-length-enough = Cut back to sound insulation, conductor { $subject } keeps { $given } free; { $limit } are required. It needs no splice.
finding-sound-length-short = Cut back to sound insulation, conductor { $subject } keeps only { $given } free; { $limit } are required.
finding-sound-length-open = Conductor { $subject } needs { $limit } free when it is cut back to sound insulation. Say how much sound length is left.
finding-unspliced-length-enough = Conductor { $subject } has { $given } free in one piece; { $limit } are required, and here only length in one piece counts.
finding-unspliced-length-short = Conductor { $subject } has only { $given } free in one piece; { $limit } are required, and here only length in one piece counts.
finding-unspliced-length-open = Conductor { $subject } needs { $limit } free, and here only length in one piece counts. Say how long it is to the splice.
finding-reach-enough = Conductor { $subject } reaches { $given } outside the opening; { $limit } are required where the opening is small.
finding-reach-short = Conductor { $subject } reaches only { $given } outside the opening; { $limit } are required because the opening is small.
finding-reach-open = Conductor { $subject } must reach { $limit } outside the opening if that is small. Give its length and how deep it emerges, or how far it reaches.
finding-opening-open = Whether conductor { $subject } must reach { $limit } outside the opening depends on the size of the opening. Give its width and height, or its diameter.
finding-splice-inside-box = The splice that lengthens conductor { $subject } is inside this box.
finding-splice-outside-box = The splice that lengthens conductor { $subject } is not inside this box. A splice needs a box of its own, within reach.
finding-splice-place-open = A splice must stand in a box. Say whether the one that lengthens conductor { $subject } is inside this box.
finding-damage-in-wall = The insulation of conductor { $subject } is damaged behind the end of its raceway or sheath. A splice in this box cannot cut that out: replace the conductor or cable, free a sound length of it, or put a box where the damage is. This check does not decide it.
finding-splice-counts = This edition says that the free length of conductor { $subject } may be made up by a splice.
finding-splice-counts-silent = This edition does not say whether a splice may make up the free length of conductor { $subject }. It is read here as counting; inspectors have differed.
finding-splice-does-not-count = This edition does not say whether a splice may make up the free length of conductor { $subject }. It is read here as not counting.
finding-shared-pigtail = Conductor { $subject } and another are joined in one connector with a single pigtail. It is read here that each must be long enough before it is joined; inspectors differ.
finding-splice-may-reach = A splice inside this box may make up what conductor { $subject } lacks: this edition says so. With the piece spliced on it must be { $required } long from where it emerges, and reach past a small opening as required.
finding-splice-may-reach-silent = A splice inside this box may make up what conductor { $subject } lacks: this edition does not say so, and is read here as allowing it. With the piece spliced on it must be { $required } long from where it emerges, and reach past a small opening as required.
finding-splice-would-not-count = A splice would not make up what conductor { $subject } lacks: this edition does not say so, and is read here as asking for { $required } in one piece.

because-unbroken = It passes through, neither spliced nor terminated here.
because-cut-off-before-its-end = What was measured reaches past the length that counts, so the reach is computed.
because-large-opening = No dimension of the opening is under the limit.

fault-round-opening-with-sides = Give the diameter of a round opening, or width and height of another: not both.
fault-damage-already-spliced = Give either damage that is still to be cut out, or the splice that replaced it: not both.
fault-unbroken-conductor-spliced = A conductor that passes through unbroken is not spliced here. Give it the role spliced, or leave the splice out.
fault-sound-length-in-wall = Only damage inside the box leaves a sound length.
fault-part-longer-than-conductor = A part of the free length cannot be longer than the whole.

point-continuous_length = Where the edition does not say that a free length may be spliced: does a spliced length count, or only one in one piece?
point-shared_pigtail = May two short conductors be joined in one connector with a single pigtail, or must each be long enough on its own first?

## Depth of a box

rule-box-depth-plain = A box that encloses neither a device nor equipment is at least 1/2 in (12.7 mm) deep inside.
    .title = Depth of a plain box
rule-box-depth-equipment = With devices or equipment inside, the depth of a box goes by how far each projects behind its mounting plane and by the largest conductor that supplies it. Of all that is asked the largest governs.
    .title = Depth with devices or equipment
rule-box-depth-large-equipment = Equipment that projects more than 1-7/8 in (48 mm) stands in a box at least 1/4 in (6 mm) deeper than it projects.
    .title = Depth behind large equipment
rule-box-depth-over-4-awg = Equipment supplied by conductors larger than 4 AWG stands in a box that is identified for it.
    .title = Equipment on conductors larger than 4 AWG
rule-box-depth-over-4-awg-in-pull-box = Equipment on conductors larger than 4 AWG may stand in a pull or junction box over 100 in³ (1650 cm³) whose terminals have the wire-bending space of 312.6.
    .title = Equipment on large conductors in a pull box
rule-box-depth-8-to-4-awg = Equipment supplied by 8, 6 or 4 AWG asks for at least 2-1/16 in (52.4 mm) inside.
    .title = Depth with 8, 6 or 4 AWG
rule-box-depth-12-or-10-awg = Equipment supplied by 12 or 10 AWG asks for at least 1-3/16 in (30.2 mm) inside, and where it projects more than 1 in (25 mm) for 1/4 in (6 mm) behind it.
    .title = Depth with 12 or 10 AWG
rule-box-depth-rear-center-entry = From 2023, where conductors enter through the center of the back of the box, equipment on 12 or 10 AWG leaves 1/2 in (13 mm) behind it.
    .title = Room behind equipment with entry at the center of the back
rule-box-depth-rear-center-entry-shallow = Whether the room behind equipment with entry at the center of the back is asked of equipment that projects no more than 1 in (25 mm) is not confirmed.
    .title = Room behind shallow equipment with entry at the center of the back
rule-box-depth-up-to-14-awg = Equipment supplied by 14 AWG and smaller asks for at least 15/16 in (23.8 mm) inside.
    .title = Depth with 14 AWG and smaller
rule-box-depth-listed-combination = A box and equipment that are listed for one another need not meet these depths.
    .title = Box and equipment listed for one another
rule-box-depth-wall-clearance = A paragraph of 2023 speaks of 1/2 in (13 mm) between the walls of a box and what is installed in it. What it covers is not confirmed.
    .title = Clearance between box walls and equipment

finding-plain-depth-enough = The box is { $given } deep inside; at least { $limit } are required of a box without devices or equipment.
finding-plain-depth-short = The box is only { $given } deep inside; at least { $limit } are required even of a box without devices or equipment.
finding-plain-depth-open = A box without devices or equipment is at least { $limit } deep inside. Say how deep it is.
finding-depth-enough = Equipment { $subject } asks for a box at least { $limit } deep; this one is { $given }.
finding-depth-short = Equipment { $subject } asks for a box at least { $limit } deep; this one is only { $given }.
finding-depth-open = Equipment { $subject } asks for a box at least { $limit } deep. Say how deep it is.
finding-projection-open = The depth that equipment { $subject } asks for goes by how far it projects behind its mounting plane. Say how far that is.
finding-supply-conductor-open = The depth that equipment { $subject } asks for goes by the largest conductor that supplies it. Say which that is.
finding-rear-center-enough = With room for an entry at the center of the back, equipment { $subject } asks for a box at least { $limit } deep; this one is { $given }.
finding-rear-center-short = Conductors enter at the center of the back, so equipment { $subject } asks for a box at least { $limit } deep; this one is only { $given }.
finding-rear-center-open = If conductors enter through the center of the back, equipment { $subject } asks for a box at least { $limit } deep. Say whether they do.
finding-shallow-clearance-enough = Behind equipment { $subject } the box is { $given } deep, enough for the { $limit } that the room behind an entry at the center of the back would ask, if it is asked of shallow equipment; that is not confirmed.
finding-shallow-clearance-short = Behind equipment { $subject } the box is { $given } deep. If the room behind an entry at the center of the back is asked of shallow equipment too, { $limit } are needed; that is not confirmed. Compare with print.
finding-box-identified = The box is identified for equipment { $subject }, which is supplied by conductors larger than 4 AWG.
finding-box-not-identified = Equipment { $subject } is supplied by conductors larger than 4 AWG, and the box is not identified for it.
finding-box-identified-open = Equipment { $subject } is supplied by conductors larger than 4 AWG. Say whether the box is identified for it.
finding-box-must-be-identified = Equipment { $subject } is supplied by conductors larger than 4 AWG: no depth is stated, but the box must be identified for it, or be a pull or junction box over 100 in³ (1650 cm³) with the wire-bending space of 312.6 at its terminals.
finding-bending-space-open = Say whether the terminals of equipment { $subject } have the wire-bending space of 312.6.
finding-pull-box-large-enough = The pull or junction box with equipment { $subject } has { $given }, more than the { $limit } that it must exceed.
finding-pull-box-too-small = The pull or junction box with equipment { $subject } has { $given }; it must have more than { $limit }, or be identified for the equipment.
finding-pull-box-volume-open = A pull or junction box with equipment on conductors larger than 4 AWG must have more than { $limit }. Say how much it has.
finding-wall-clearance-enough = Equipment { $subject } stands { $given } clear of the walls, at least the { $limit } that a paragraph of this edition speaks of. What it covers is not confirmed.
finding-wall-clearance-short = Equipment { $subject } stands only { $given } clear of a wall; a paragraph of this edition speaks of { $limit }. What it covers is not confirmed. Compare with print.
finding-equipment-deeper = Equipment { $subject } projects { $given }, no less than the { $limit } that the rules ask for. A box of that depth would not take it: its own depth decides.

because-equipment-enclosed = The box encloses a device or equipment.
because-listed-for-one-another = Box and equipment are listed for one another.
because-no-rear-center-entry = No conductor enters through the center of the back.

## Construction of metal boxes

rule-box-construction-sheet-steel = The walls of a sheet-steel box of up to 100 in³ (1650 cm³) are at least 0.0625 in (1.59 mm) thick.
    .title = Thickness of small sheet-steel boxes
rule-box-construction-large-sheet-steel = The walls of a sheet-steel box over 100 in³ (1650 cm³) are at least 0.053 in (1.35 mm) thick, without coating: less than those of a smaller box.
    .title = Thickness of large sheet-steel boxes
rule-box-construction-cast = The walls of a box of malleable iron, or of die-cast or permanent-mold cast metal, are at least 3/32 in (2.38 mm) thick; those of other cast metal 1/8 in (3.17 mm).
    .title = Thickness of cast boxes
rule-box-construction-listed = A box listed as equal in strength, and a listed short-radius body, may have thinner walls.
    .title = Listed instead of thick
rule-box-construction-grounding-provision = Every metal box has a tapped hole or another means to connect an equipment grounding conductor.
    .title = Means to connect a grounding conductor
rule-box-construction-cover = A metal cover is as thick as the walls of its box must be, or is listed for the purpose, or is lined with at least 1/32 in (0.79 mm) of firmly attached insulation.
    .title = Thickness of metal covers

finding-walls-thick-enough = The walls are { $given } thick; at least { $limit } are required.
finding-walls-too-thin = The walls are only { $given } thick; at least { $limit } are required.
finding-wall-thickness-open = The walls must be at least { $limit } thick. Say how thick they are.
finding-thickness-and-volume-open = How thick walls of sheet steel must be goes by the volume of the box. Give the thickness of the walls, and the volume.
finding-volume-decides-thickness = Whether walls of this thickness suffice goes by the volume of the box: the thicker sheet is for boxes of up to 100 in³ (1650 cm³). Give the volume.
finding-listed-as-equal = The box is listed as equal in strength, or is a listed short-radius body: no thickness is asked.
finding-grounding-provision = The box has a means to connect an equipment grounding conductor.
finding-no-grounding-provision = The box has no means to connect an equipment grounding conductor; every metal box needs one.
finding-grounding-provision-open = A metal box needs a means to connect an equipment grounding conductor. Say whether it has one.
finding-cover-listed = The metal cover is listed for the purpose.
finding-cover-thick-enough = The metal cover is { $given } thick, at least the { $limit } that the walls of its box must have.
finding-cover-too-thin = The metal cover is only { $given } thick; it must have the { $limit } of the walls of its box, or be listed, or be lined with insulation. It is none of these.
finding-cover-lined = The metal cover is lined with { $given } of insulation, at least the { $limit } that serve instead of thickness.
finding-cover-open = A metal cover must be as thick as the walls of its box, or listed, or lined with insulation. What was given does not decide it yet.

because-nonmetallic-box = The box is not metal.

## A box in its surface

rule-box-surface-setback = Behind a flush-type cover or faceplate, the front edge of a box, ring or extender is set back at most 1/4 in (6 mm) in concrete, tile, gypsum, plaster and other surfaces that do not burn; in a combustible surface it is flush or projects.
    .title = Setback from the surface
rule-box-surface-gap = A surface that does not burn leaves a gap of at most 1/8 in (3 mm) around a box with a flush-type cover or faceplate.
    .title = Gaps around a box
rule-box-surface-flush-device = A box encloses a flush device completely at back and sides. Screws that support the box do not also hold the device.
    .title = Boxes with flush devices
rule-box-surface-extension-ring = A surface extension is made by mounting an extension ring over the box and securing it mechanically, with equipment grounding going on through it.
    .title = Extension rings
rule-box-surface-extension-box = Another box serves as an extension only where it is listed for that.
    .title = Another box as an extension
rule-box-surface-extension-from-cover = A surface extension may start from the cover of a box if the cover is unlikely to fall off, the wiring is flexible and long enough to take the cover off, and grounding does not depend on the joint between box and cover.
    .title = Extensions from a cover
rule-box-surface-cover = Every finished box has a cover, faceplate, lampholder or luminaire canopy.
    .title = Covers
rule-box-surface-cover-screws = Screws of covers and of what is fixed to a box are machine screws that match its threads, or what the instructions ask for.
    .title = Screws of covers
rule-box-surface-canopy-finish = A combustible finish of 180 in² (0.116 m²) or more that is exposed between the edge of a canopy and its box is covered with noncombustible material.
    .title = Combustible finish under a canopy
rule-box-surface-pendant-cord = The cord of a pendant leaves its cover through a bushing or a smooth, well-rounded hole.
    .title = Covers of cord pendants

finding-setback-small-enough = The front edge is { $given } behind the surface; up to { $limit } is allowed where the surface does not burn.
finding-setback-too-great = The front edge is { $given } behind the surface; even where the surface does not burn, { $limit } is the most.
finding-setback-none = The front edge is flush with the surface or projects.
finding-setback-in-combustible = The front edge is { $given } behind a combustible surface; it must be flush or project.
finding-setback-open = The front edge of the box may be at most { $limit } behind the surface. Say how far it is.
finding-combustible-open = Whether the front edge may be set back goes by the surface. Say whether it burns, and how far the edge is set back.
finding-gap-small-enough = The widest gap around the box is { $given }; up to { $limit } is allowed.
finding-gap-too-wide = The widest gap around the box is { $given }; at most { $limit } is allowed.
finding-gap-open = The gap around the box may be at most { $limit }. Say how wide it is.
finding-gap-combustible-open = The gap around the box is wider than the { $limit } that a surface which does not burn may leave. Say whether this surface burns.
finding-device-enclosed = The box encloses the flush device at back and sides.
finding-device-not-enclosed = The box does not enclose the flush device at back and sides.
finding-device-enclosed-open = A box must enclose a flush device at back and sides. Say whether it does.
finding-device-own-screws = The device is held by screws of its own.
finding-device-no-own-screws = The screws that support the box also hold the device.
finding-device-own-screws-open = Screws that support the box must not also hold the device. Say whether the device has screws of its own.
finding-extension-secured = The extension is mounted over the box and mechanically secured to it.
finding-extension-not-secured = The extension is not mechanically secured to the box.
finding-extension-secured-open = An extension must be mechanically secured to the box. Say whether it is.
finding-extension-grounding = Equipment grounding goes on through the extension.
finding-extension-no-grounding = Equipment grounding does not go on through the extension.
finding-extension-grounding-open = Equipment grounding must go on through an extension. Say whether it does.
finding-extension-listed = The box over the first is listed to serve as an extension.
finding-extension-not-listed = Another box was put over the first as an extension, and it is not listed for that. Use an extension ring.
finding-extension-listed-open = Another box serves as an extension only where it is listed for that. Say whether it is.
finding-extension-cover-stays = The cover that the extension starts from is unlikely to fall off.
finding-extension-cover-falls = The cover that the extension starts from can fall off.
finding-extension-cover-stays-open = An extension may start from a cover that is unlikely to fall off. Say whether it is.
finding-extension-wiring-flexible = The wiring of the extension is flexible and long enough to take the cover off.
finding-extension-wiring-stiff = The wiring of the extension does not let the cover come off.
finding-extension-wiring-flexible-open = The wiring of an extension from a cover must let the cover come off. Say whether it does.
finding-extension-grounding-independent = Grounding of the extension does not depend on the joint between box and cover.
finding-extension-grounding-dependent = Grounding of the extension depends on the joint between box and cover.
finding-extension-grounding-independent-open = Grounding of an extension from a cover must not depend on the joint between box and cover. Say whether it does not.
finding-cover-fitted = The box is covered.
finding-cover-missing = The box has no cover, faceplate, lampholder or canopy.
finding-cover-fitted-open = Every finished box is covered. Say whether this one has a cover, faceplate, lampholder or canopy.
finding-cover-screws-match = The screws of the cover match the threads of the box or follow the instructions.
finding-cover-screws-differ = The screws of the cover neither match the threads of the box nor follow instructions.
finding-cover-screws-open = Screws of a cover match the threads of the box or follow the instructions. Say whether they do.
finding-finish-small = { $given } of combustible finish is exposed under the canopy, less than the { $limit } from which on it must be covered.
finding-finish-bare = { $given } of combustible finish is exposed under the canopy; from { $limit } on it must be covered with noncombustible material.
finding-finish-area-open = From { $limit } on, a combustible finish that is exposed under a canopy must be covered with noncombustible material. Say how much is exposed.
finding-finish-covered = The combustible finish under the canopy is covered with noncombustible material.
finding-finish-covered-open = From { $limit } on, a combustible finish that is exposed under a canopy must be covered with noncombustible material. More is exposed; say whether it is covered.
finding-cord-bushed = The cord of the pendant leaves the cover through a bushing or a smooth, well-rounded hole.
finding-cord-bare = The cord of the pendant leaves the cover through a hole that is neither bushed nor well rounded.

because-combustible-surface = The rule on gaps is for surfaces that do not burn.

## Entries of a box

rule-box-entry-round-box = A round box takes no conduit or connector that needs a locknut or bushing on its side. Octagonal boxes have flat sides and do.
    .title = Round boxes
rule-box-entry-metal-in-nonmetallic = Metal raceways and armored cables enter a nonmetallic box only where it bonds all entries together inside, or is listed with bonding built into its threaded entries.
    .title = Metal wiring in nonmetallic boxes
rule-box-entry-secured = What enters a box is secured to it.
    .title = Securing wiring to a box
rule-box-entry-sheath = A nonmetallic cable sheath reaches at least 1/4 in (6 mm) into the box and past any clamp. In 2017 this is said of nonmetallic boxes, from 2020 of all.
    .title = Cable sheath inside the box
rule-box-entry-single-gang = Nonmetallic-sheathed and underground feeder cable need not be secured to a single-gang box, nominally up to 2-1/4 by 4 in, in a wall or ceiling, if it is fastened within 8 in (200 mm) of the box along its sheath and the sheath reaches in 1/4 in (6 mm). Several cables may share an opening.
    .title = Single-gang boxes without clamps
rule-box-entry-cable-in-raceway = From 2020, a cable that comes in a complete raceway need not itself be secured to the box.
    .title = Cable in a complete raceway
rule-box-entry-insulating-fitting = Insulated conductors of 4 AWG and larger enter over a smooth, rounded insulating surface.
    .title = Protection of large conductors
rule-box-entry-unused-openings = Openings that nothing uses are closed, and protect about as well as the wall of the box.
    .title = Unused openings

finding-round-box-side-free = Entry { $subject } bears no locknut or bushing on the side of the round box.
finding-round-box-side-locknut = Entry { $subject } bears a locknut or bushing on the side of a round box. Use a box with flat sides, or its back.
finding-round-box-side-open = A round box takes no locknut or bushing on its side. Say whether entry { $subject } has one there.
finding-entries-bonded = Metal wiring comes in at entry { $subject }, and the nonmetallic box bonds all entries together.
finding-entries-not-bonded = Metal wiring comes in at entry { $subject }, and nothing in the nonmetallic box bonds the entries together.
finding-entries-bonded-open = Metal wiring comes in at entry { $subject }. Say whether the nonmetallic box bonds all entries together.
finding-entry-material-open = What is asked of entry { $subject } goes by what the box is made of. Say whether it is metal.
finding-entry-secured = What comes in at entry { $subject } is secured to the box.
finding-entry-not-secured = What comes in at entry { $subject } is not secured to the box.
finding-entry-secured-open = What comes in at entry { $subject } must be secured to the box. Say whether it is.
finding-cable-in-raceway = The cable at entry { $subject } comes in a complete raceway and need not itself be secured.
finding-sheath-far-enough = The sheath at entry { $subject } reaches { $given } into the box; at least { $limit } is required.
finding-sheath-too-short = The sheath at entry { $subject } reaches only { $given } into the box; at least { $limit } is required, past any clamp.
finding-sheath-open = The sheath at entry { $subject } must reach at least { $limit } into the box, past any clamp. Say how far it does.
finding-single-gang = The box is a single-gang one in a wall or ceiling, so the cable at entry { $subject } may do without a clamp.
finding-not-single-gang = The cable at entry { $subject } is not secured to the box, and only a single-gang box in a wall or ceiling may do without.
finding-single-gang-open = The cable at entry { $subject } is not secured to the box. Say whether that is a single-gang box, nominally up to 2-1/4 by 4 in, in a wall or ceiling.
finding-fastened-near = The cable at entry { $subject } is fastened { $given } from the box; without a clamp it must be within { $limit }.
finding-fastened-far = The cable at entry { $subject } is fastened { $given } from the box; without a clamp it must be within { $limit }.
finding-fastened-open = Without a clamp, the cable at entry { $subject } must be fastened within { $limit } of the box, along its sheath. Say where it is.
finding-single-gang-needs-sheath = The cable at entry { $subject } may do without a clamp only while its sheath reaches far enough into the box.
finding-insulating-fitting = An insulating fitting protects the large conductors at entry { $subject }.
finding-no-insulating-fitting = Insulated conductors of 4 AWG or larger come in at entry { $subject } without a smooth insulating fitting.
finding-insulating-fitting-open = Insulated conductors of 4 AWG or larger come in at entry { $subject }. Say whether a smooth insulating fitting protects them.
finding-openings-closed = All unused openings are closed.
finding-openings-left-open = Unused openings are left open, or are closed with less than the wall of the box would give.
finding-openings-closed-open = Unused openings must be closed. Say whether all are.

because-metal-box-before-the-merger = This edition says it of nonmetallic boxes only, and the box is metal.
because-no-large-conductor-enters = No insulated conductor of 4 AWG or larger comes in here.

fault-loose-cover-in-building = Only a box underground may lie under loose cover.
fault-short-side-longer = The shorter side is longer than the longer one.

## Access to a box

rule-box-access-building = Wiring in a box is reached without removing any part of the building.
    .title = Boxes within reach
rule-box-access-underground = Wiring in a box underground is reached without digging up sidewalks, paving, earth or whatever else makes the finished grade.
    .title = Boxes underground within reach
rule-box-access-under-loose-cover = A listed box may lie under gravel, light aggregate or noncohesive granular soil if its place is identified and it can be dug out.
    .title = Boxes under loose cover
rule-box-access-opening = Over a recessed box of up to 100 in³ (1650 cm³) the finish may leave an opening smaller than the box: its center within 1 in of that of the box, not beyond its walls, and at least 2-7/8 by 1-3/4 in, or 3-1/2 in across if round. An interim amendment to 2023, accepted for 2026.
    .title = Openings in the finish
rule-box-access-opening-metric = The millimetres printed for openings in the finish could not be read; their exact equivalents in inches advise only.
    .title = Openings in the finish, in millimetres
rule-box-access-opening-for-device = An opening in the finish may be smaller where it fits the individual device in it.
    .title = Openings that fit a device
rule-box-access-full-opening = Over a box of more than 100 in³ (1650 cm³), and over a conduit body, the finish leaves everything open up to the outer walls.
    .title = Openings over large boxes
rule-box-access-handhole = A handhole enclosure is identified for use in underground systems.
    .title = Handhole enclosures
rule-box-access-handhole-size = A handhole enclosure is as large as a pull box: by 314.28(A) up to 1000 V, above that by 314.71. Without a bottom, depth is measured from the end of the conduit or cable to the cover. Raceways and cables need not be attached to it.
    .title = Size of handhole enclosures
rule-box-access-handhole-wiring = Conductors, splices and terminations in a handhole enclosure are listed for wet locations.
    .title = Wiring in handhole enclosures
rule-box-access-handhole-cover = The cover of a handhole enclosure is marked with what it serves, and opens only with tools or weighs more than 100 lb (45 kg). A metal cover is bonded.
    .title = Covers of handhole enclosures

finding-reached-in-building = The wiring is reached without removing any part of the building.
finding-not-reached-in-building = The wiring is not reached without removing part of the building.
finding-reached-in-building-open = The wiring must be reached without removing any part of the building. Say whether it is.
finding-reached-underground = The wiring is reached without digging up paving or earth.
finding-not-reached-underground = The wiring is not reached without digging up paving or earth.
finding-reached-underground-open = The wiring must be reached without digging up paving or earth. Say whether it is, or what covers the box.
finding-loose-cover-listed-box = The box under loose cover is listed.
finding-loose-cover-unlisted-box = A box that is not listed lies covered up.
finding-loose-cover-listed-box-open = Only a listed box may lie under loose cover. Say whether it is listed.
finding-loose-cover = Only gravel, light aggregate or noncohesive granular soil covers the box.
finding-loose-cover-firm = More than gravel, light aggregate or noncohesive granular soil covers the box.
finding-loose-cover-open = Only gravel, light aggregate or noncohesive granular soil may cover a box. Say whether it is that.
finding-loose-cover-place-identified = The place of the covered box is identified, and it can be dug out.
finding-loose-cover-place-lost = The place of the covered box is not identified.
finding-loose-cover-place-open = The place of a covered box must be identified. Say whether it is.
finding-opening-amendment-open = This edition speaks of openings in the finish only by a tentative interim amendment. Say whether that is in force where the box is.
finding-opening-volume-open = What opening the finish must leave goes by the volume of the box. Give the volume, or say that the whole box is open.
finding-whole-box-open = The finish leaves the whole box open.
finding-large-box-covered = The finish covers part of a conduit body, or of a box too large for that.
finding-whole-box-open-open = Over a conduit body, and over a large box, the finish must leave everything open. Say whether it does.
finding-opening-fits-device = The opening in the finish fits the individual device in it, so it may be smaller.
finding-opening-centered = The center of the opening is { $given } from that of the box; up to { $limit } is allowed.
finding-opening-off-center = The center of the opening is { $given } from that of the box; at most { $limit } is allowed.
finding-opening-center-open = The center of the opening may be at most { $limit } from that of the box. Say how far it is.
finding-opening-within-walls = The opening stays within the walls of the box.
finding-opening-beyond-walls = The opening goes beyond the walls of the box.
finding-opening-walls-open = The opening must not go beyond the walls of the box. Say whether it stays within.
finding-opening-large-enough = The opening measures { $given }; at least { $limit } is required.
finding-opening-too-small = The opening measures only { $given }; at least { $limit } is required.
finding-opening-size-open = The opening must measure at least { $limit } here. Give both sides, or the diameter of a round one.
finding-handhole-identified = The handhole enclosure is identified for use in underground systems.
finding-handhole-not-identified = The handhole enclosure is not identified for use in underground systems.
finding-handhole-identified-open = A handhole enclosure must be identified for use in underground systems. Say whether it is.
finding-handhole-size = A handhole enclosure must also be as large as a pull box. Send its entries to the pull-box check; without a bottom, measure depth from the end of the conduit or cable to the cover.
finding-handhole-wiring-listed = Conductors and splices in the handhole enclosure are listed for wet locations.
finding-handhole-wiring-not-listed = Conductors or splices in the handhole enclosure are not listed for wet locations.
finding-handhole-wiring-open = Conductors and splices in a handhole enclosure must be listed for wet locations. Say whether they are.
finding-handhole-cover-marked = The cover is marked with what it serves.
finding-handhole-cover-unmarked = The cover is not marked with what it serves, such as “electric”.
finding-handhole-cover-marked-open = The cover of a handhole enclosure must be marked with what it serves. Say whether it is.
finding-handhole-cover-tools = The cover opens only with tools.
finding-handhole-cover-tools-open = The cover must open only with tools, or weigh more than { $limit }. Say whether it needs tools, or how much it weighs.
finding-handhole-cover-heavy = The cover weighs { $given }, more than the { $limit } that it must exceed to open without tools.
finding-handhole-cover-light = The cover opens without tools and weighs { $given }; it must weigh more than { $limit }.
finding-handhole-cover-weight-open = The cover opens without tools, so it must weigh more than { $limit }. Say how much it weighs.
finding-handhole-cover-bonded = The metal of the cover is bonded.
finding-handhole-cover-not-bonded = The metal of the cover is not bonded.

because-amendment-not-in-force = The interim amendment is not in force where the box is.

## Grounding, fasteners and moisture

rule-box-protection-grounded = A metal box is grounded and bonded as Article 250 asks, in nonmetallic wiring too.
    .title = Metal boxes grounded
rule-box-protection-blunt-fasteners = From 2023, a screw put in on site that reaches into the wiring space is what the maker provides or specifies, or is a machine screw with a blunt end; other fasteners have blunt ends.
    .title = Blunt fasteners
rule-box-protection-cover-screws = From 2023, screws that hold a cover reach at most 3/8 in (10 mm) into the box.
    .title = Reach of cover screws
rule-box-protection-fasteners-through-cover = From 2023, other fasteners through a cover reach at most 5/16 in (8 mm) into the box.
    .title = Reach of fasteners through a cover
rule-box-protection-fasteners-through-wall = From 2023, fasteners through the wall of a box over 100 in³ (1650 cm³) reach in at most 1/4 in (6 mm), or 7/16 in (11 mm) within 3/8 in (10 mm) of an adjacent wall.
    .title = Reach of fasteners through a wall
rule-box-protection-fasteners-through-small-wall = From 2023 there is also a limit for fasteners through the wall of a box of up to 100 in³ (1650 cm³), which could not be read.
    .title = Fasteners through the wall of a small box
rule-box-protection-moisture = In damp and wet locations a box is placed or equipped so that moisture neither enters nor gathers in it.
    .title = Moisture
rule-box-protection-wet-location = A box in a wet location is listed for wet locations.
    .title = Boxes in wet locations
rule-box-protection-drain-openings = Drain openings made on site, in boxes listed for damp or wet locations, are 1/8 in (3 mm) to 1/4 in (6 mm) in diameter.
    .title = Drain openings
rule-box-protection-drain-fittings = A larger drain opening takes a listed drain fitting, installed as its instructions say.
    .title = Drain fittings

finding-box-grounded = The metal box is grounded and bonded.
finding-box-not-grounded = The metal box is not grounded and bonded. Nonmetallic wiring does not free it from that; Article 250 has the exceptions.
finding-box-grounded-open = A metal box must be grounded and bonded. Say whether it is.
finding-fastener-as-specified = Fastener { $subject } is what the maker provides or specifies.
finding-fastener-blunt = Fastener { $subject } has a blunt end.
finding-fastener-sharp = Fastener { $subject } reaches into the wiring space and is neither a machine screw with a blunt end nor another fastener with one.
finding-fastener-blunt-open = Fastener { $subject } must have a blunt end, or be what the maker specifies. Say whether it does.
finding-fastener-short-enough = Fastener { $subject } reaches { $given } into the box; up to { $limit } is allowed.
finding-fastener-too-long = Fastener { $subject } reaches { $given } into the box; at most { $limit } is allowed.
finding-fastener-reach-open = Fastener { $subject } may reach at most { $limit } into the box. Say how far it does.
finding-fastener-volume-open = How far fastener { $subject } may reach through a wall goes by the volume of the box. Give it.
finding-fastener-corner-open = Fastener { $subject } reaches more than { $limit } through a wall, which is allowed only close to an adjacent wall. Say how far from one it stands.
finding-fastener-small-box = How far fastener { $subject } may reach through the wall of a box of this volume could not be confirmed. Compare with print.
finding-moisture-kept-out = Moisture is kept from entering and gathering in the box.
finding-moisture-enters = Moisture can enter or gather in the box.
finding-moisture-open = In a damp or wet location moisture must be kept out of the box. Say whether it is.
finding-listed-for-wet = The box is listed for wet locations.
finding-not-listed-for-wet = The box is in a wet location and is not listed for that.
finding-listed-for-wet-open = A box in a wet location must be listed for that. Say whether it is.
finding-drained-box-listed = The box with drain openings is listed for damp or wet locations.
finding-drained-box-not-listed = Drain openings are made only in boxes listed for damp or wet locations, and this one is not.
finding-drained-box-open = Drain openings are made only in boxes listed for damp or wet locations. Say whether this one is.
finding-drain-wide-enough = Drain opening { $subject } is { $given } in diameter; at least { $limit } is required.
finding-drain-too-narrow = Drain opening { $subject } is only { $given } in diameter; at least { $limit } is required.
finding-drain-narrow-enough = Drain opening { $subject } is { $given } in diameter; up to { $limit } is allowed.
finding-drain-too-wide = Drain opening { $subject } is { $given } in diameter; without a listed drain fitting { $limit } is the most.
finding-drain-fitting = A listed drain fitting is in drain opening { $subject }, so it may be larger.
finding-drain-fitting-open = Drain opening { $subject } is wider than { $limit }, which takes a listed drain fitting. Say whether one is in it.

because-dry-location = The location is dry.
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
rule-raceway-fill-jamming = Three conductors of one size can jam while they are pulled in where the raceway's inside diameter is 2.8 to 3.2 times theirs. This is advice, not a requirement.
    .title = Jamming of three conductors

finding-fill-within = { $total } fill { $fill } of { $raceway }; up to { $limit } ({ $allowed }) are permitted for this number ({ $number }).
finding-fill-raised = { $total } are more than the { $allowed } that { $limit } of { $raceway } come to, but all are of one size, and the computed number ends in 0.8 or more: { $number } are permitted.
finding-fill-over = { $total } fill { $fill } of { $raceway }, more than the { $limit } ({ $allowed }) that are permitted for this number ({ $number }).
finding-raceway-without-figures = The code permits { $raceway } since 2023, but its inside dimensions were not available here and are not guessed. Take them from print.
finding-taken-as-nipple = Taken as a nipple between two enclosures. The 60 % hold for nothing else.
finding-too-long-for-nipple = { $length } are longer than the { $most } that a nipple may have, so the ordinary limits hold.
finding-may-jam = The raceway is { $ratio } times as wide as one of the three conductors. Between { $from } and { $to } they can jam while they are pulled in.
finding-no-trade-size = No trade size of { $kind } in the table takes everything.
finding-larger-without-figures = No trade size of { $kind } with known dimensions takes everything. Trade sizes { $sizes } are permitted since 2023, but their dimensions were not available here.
finding-unconfirmed-dimensions = These rows of the tables are confirmed by nothing: { $rows }. Compare them with print before relying on this answer.
finding-other-area-count = Read as { $reading }, { $what } takes { $theirs } of this size, not { $ours }.
finding-other-area-room = Read as { $reading }, { $theirs } more of { $what } would fit, not { $ours }.
finding-other-area-size = Read as { $reading }, the smallest { $what } is { $theirs }, not { $ours }.

because-sizes-differ = The conductors are not all of one cross-section.
because-not-a-nipple = It is not said to be a nipple between two enclosures.
because-longer-than-a-nipple = It is longer than a nipple may be.
because-not-three = There are not exactly three conductors.
because-diameters-differ = The three conductors are not of one diameter.

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
finding-body-without-volume = Only a body marked with its volume may hold splices or devices. These require { $required }: give the marked volume.
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
## Service

problem-title-malformed-json = The body is not JSON
problem-meaning-malformed-json = The body could not be read as JSON text in UTF-8. The fault says in which line and column reading stopped.
problem-title-not-found = There is nothing here
problem-meaning-not-found = The path, or what it names, is not served. The nearest known name is given where there is one.
problem-title-method-not-allowed = The method is not for this path
problem-meaning-method-not-allowed = The path is served, but not with this method. The Allow header lists the methods that are.
problem-title-not-acceptable = The answer is JSON only
problem-meaning-not-acceptable = The Accept header admits no JSON. Ask for application/json, or leave the header out.
problem-title-request-timeout = The body took too long to arrive
problem-meaning-request-timeout = The request was given up because its body did not arrive in time. It is safe to send it again.
problem-title-body-too-large = The body is too large
problem-meaning-body-too-large = A request has a largest size, which the detail states. Send large jobs in parts.
problem-title-unsupported-media-type = The body is not said to be JSON
problem-meaning-unsupported-media-type = Send the body with Content-Type application/json, in UTF-8 and without Content-Encoding.
problem-title-invalid-request = The request is not valid
problem-meaning-invalid-request = The request is readable, but something in it is wrong or missing. Every fault is listed with its place, a stable code, what would be right, and the accepted values where there is a closed set of them.
problem-title-internal-error = The service failed
problem-meaning-internal-error = A fault of the service, not of the request. It was logged under the request id in the X-Request-Id header; nothing about it is told here.
problem-title-not-ready = The service takes no new requests
problem-meaning-not-ready = The service is shutting down: it finishes what it has, and takes nothing new.

problem-detail-malformed-json = The body cannot be read as JSON.
problem-detail-not-found = { $path } is not served.
problem-detail-unknown-name = { $name } is not known here.
problem-detail-method-not-allowed = { $method } is not for { $path }.
problem-detail-not-acceptable = The Accept header admits no application/json.
problem-detail-request-timeout = The body did not arrive within { $seconds } seconds.
problem-detail-body-too-large = The body is larger than { $most } bytes.
problem-detail-no-media-type = There is no Content-Type. Send application/json.
problem-detail-media-type = { $given } is not application/json.
problem-detail-charset = The charset { $given } is not taken. JSON is sent in UTF-8.
problem-detail-content-encoding = The Content-Encoding { $given } is not taken. Send the body as it is.
problem-detail-invalid-request = { $count ->
        [one] One fault.
       *[other] { $count } faults.
    }
problem-detail-internal-error = The service failed on this request.
problem-detail-not-ready = The service is shutting down.

text-code-malformed-json = The body is not JSON.
text-code-duplicate-member = A member stands more than once in one object, or a query parameter more than once.
text-code-unknown-member = A member that does not exist here. Accepted names, and the nearest of them, are given.
text-code-unknown-parameter = A query parameter that this operation does not have.
text-code-missing-member = A member that must be there is not.
text-code-wrong-type = A value of another JSON type than asked for. A null is never accepted: leave the member out.
text-code-unknown-value = A value outside a closed set. The set is given.
text-code-unknown-conductor-size = A text that is no conductor size. The sizes are given.
text-code-unknown-trade-size = A text that is no trade size of a raceway. The sizes are given.
text-code-unknown-standard-box = A text that is no standard box of the table standard-boxes. The boxes are given.
text-code-out-of-bounds = A number, a text or a depth outside its bounds, which the sentence states.
text-code-too-many-decimals = A number with more decimals than are kept exactly.
text-code-too-many-items = A list with more items than are taken.
text-code-duplicate-id = Two things carry the same id.
text-code-unknown-reference = A reference to something that is not in the request.
text-code-conflict = Members that cannot stand together, or one that needs another.
text-code-unverified-edition = An edition whose text could not be verified, without the word that this is accepted.
text-code-not-accepted = A value that is not accepted for a reason that no other code describes.

fault-json-empty = The body is empty. Send a JSON object.
fault-json-byte-order-mark = The body begins with a byte-order mark. Send UTF-8 without one.
fault-json-not-utf8 = The body is not UTF-8: byte { $byte } cannot stand where it does.
fault-json-incomplete = The body broke off before its end.
fault-json-ends-early = The text ends too early, in line { $line }, column { $column }: something is still open.
fault-json-unexpected = Line { $line }, column { $column }: { $found } cannot stand here.
fault-json-duplicate = { $member } stands more than once here. Keep one.
fault-json-too-deep = Nothing here is nested deeper than { $most } levels.

fault-schema-unknown-member = { $member } is not a member here.
fault-schema-missing-member = { $member } must be given.
fault-schema-wrong-type = Wanted here: { $wanted }. Given: { $given }.
fault-schema-null = Wanted here: { $wanted }. Leave the member out instead of giving null.
fault-schema-unknown-value = { $given } is not one of the accepted values.
fault-schema-conductor-size = { $given } is not a conductor size. Write it as in 12 AWG, 4/0 AWG or 250 kcmil.
fault-schema-trade-size = { $given } is not a trade size. Write it in inches, as in 1/2, 1-1/4 or 4.
fault-schema-standard-box = { $given } is not a standard box. Write its key in the table standard-boxes, as in square-4x1-1/2.
fault-schema-at-least = { $limit } is the least that is taken here.
fault-schema-at-most = { $limit } is the most that is taken here.
fault-schema-above = Only more than { $limit } is taken here.
fault-schema-below = Only less than { $limit } is taken here.
fault-schema-too-short = The text has at least { $limit } characters.
fault-schema-too-long = The text has at most { $limit } characters.
fault-schema-decimals = Numbers are taken with at most { $limit } decimals.
fault-schema-too-few-items = The list has at least { $limit } items.
fault-schema-not-accepted = This value is not accepted.
fault-decode-not-accepted = Something in line { $line }, column { $column } is not accepted.
fault-query-unknown-parameter = { $parameter } is not a query parameter of this operation.
fault-query-unknown-value = { $parameter } is not taken as { $given }.
fault-query-duplicate = { $parameter } stands more than once. Keep one.

text-type-object = an object
text-type-array = a list
text-type-string = a text
text-type-number = a number
text-type-integer = a whole number
text-type-boolean = true or false
text-type-null = null
text-end-of-line = the end of the line

text-edition-title = NFPA 70, { $year } edition
text-api-description = Audited box and enclosure calculations for the electrical trade. Post what is there, and the answer says what the code requires, whether it complies, what was counted and what was not, and carries a proof that anyone can replay from the answer and the published tables. Nothing is kept between requests. The answers are arithmetic, not approval: the adopted code with its amendments and the authority having jurisdiction decide.
text-tag-checks = Checks: a request describes what is built or planned, the answer says what the code requires and whether it complies. A verdict of violates is an answer, not an error.
text-tag-rulebook = What every answer is made from: editions, tables, rules and disputed points, each with where it comes from. Cacheable.
text-tag-service = The service itself: the problems that it answers with, and whether it is up.
text-outlet-box-fill-title = Outlet-box fill
text-outlet-box-fill = Is the volume there that the contents of an outlet, device or junction box require (NFPA 70, 314.16)? Say what the box is, what is fitted to it and what enters it; leave the enclosure out to ask only what volume is required and which standard boxes would do.
text-raceway-fill-title = Raceway fill
text-raceway-fill = May these conductors and cables go into this raceway (NFPA 70, Chapter 9)? Say what goes in; give the raceway for a verdict and for what more would fit, or leave its trade size out to learn the smallest that takes everything, kind by kind.
text-report-no-verdict = none: only a size was asked for
text-report-supply = To decide it, give
text-yes = yes
text-no = no
