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
finding-not-listed-as-equal = The box is not listed as equal in strength.
finding-grounding-provision = The box has a means to connect an equipment grounding conductor.
finding-no-grounding-provision = The box has no means to connect an equipment grounding conductor; every metal box needs one.
finding-grounding-provision-open = A metal box needs a means to connect an equipment grounding conductor. Say whether it has one.
finding-cover-listed = The metal cover is listed for the purpose.
finding-cover-thick-enough = The metal cover is { $given } thick, at least the { $limit } that the walls of its box must have.
finding-cover-too-thin = The metal cover is only { $given } thick; it must have the { $limit } of the walls of its box, or be listed, or be lined with insulation. It is neither.
finding-cover-lined = The metal cover is lined with { $given } of insulation, at least the { $limit } that serve instead of thickness.
finding-cover-lining-too-thin = The insulating lining of the metal cover is { $given } thick; { $limit } would serve.
finding-cover-open = A metal cover must be as thick as the walls of its box, or listed, or lined with insulation. What was given does not decide it yet.

because-nonmetallic-box = The box is not metal.
