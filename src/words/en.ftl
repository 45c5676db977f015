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

## Support of boxes

rule-box-support-means = An enclosure is supported by one or more of the means that the section names: fastened on a surface or a structure, in a finished surface or a suspended ceiling, by its raceways, embedded, or as a pendant. One complete means is enough.
    .title = Support of enclosures
rule-box-support-surface = On a building or another surface an enclosure is rigidly and securely fastened in place; a surface that is not rigid needs more support.
    .title = Fastened on a surface
rule-box-support-structure = On a structural member or from grade an enclosure is held rigidly, directly or by a brace.
    .title = Held by structure
rule-box-support-fasteners = Nails and screws hold by brackets outside the enclosure, by mounting holes in its back or a single side, or pass inside within 1/4 in (6 mm) of its back or ends. Mounting holes made in the field are approved.
    .title = Nails and screws
rule-box-support-screw-threads = Screws that pass through the inside have their exposed threads protected, so that they do not wear insulation. This holds whatever else supports the box.
    .title = Threads inside a box
rule-box-support-brace = A metal brace is at least 0.020 in (0.51 mm) thick without coating and protected against corrosion; a wood brace is at least a nominal 1 × 2 in (25 × 50 mm), and treated where it is wet; a polymeric brace is identified for the use.
    .title = Braces
rule-box-support-finished-surface = In a finished surface an enclosure is rigidly secured by clamps, anchors or fittings identified for the application.
    .title = Secured in a finished surface
rule-box-support-ceiling-volume = A suspended ceiling carries enclosures of at most 100 in³ (1650 cm³).
    .title = Volume of a box in a suspended ceiling
rule-box-support-ceiling-framing = On the framing of a suspended ceiling an enclosure is fastened by bolts, screws, rivets or identified clips, and the framing is supported and fastened to itself and to the building.
    .title = Framing of a suspended ceiling
rule-box-support-ceiling-wires = On support wires an enclosure is secured by identified methods. The wires may carry it under 300.11, and are fastened at both ends so as to be taut.
    .title = Wires of a suspended ceiling
rule-box-support-raceways = Raceways hold an enclosure without devices or luminaires when it is at most 100 in³ (1650 cm³), has threaded entries or identified hubs, and two or more conduits are threaded wrenchtight into it, each secured within 3 ft (900 mm), or within 18 in (450 mm) where all enter on one side.
    .title = Held by raceways, without devices or luminaires
rule-box-support-conduit-body = A conduit body of any size, even with one entry, may hang from rigid or intermediate metal conduit, rigid PVC or resin conduit, or electrical metallic tubing, when it is not larger than the largest of them.
    .title = Conduit body held by its raceway
rule-box-support-loaded-raceways = Raceways hold an enclosure with devices or luminaires when it is at most 100 in³ (1650 cm³), has threaded entries or identified hubs, and two or more conduits are threaded wrenchtight into it, each secured within 18 in (450 mm).
    .title = Held by raceways, with devices or luminaires
rule-box-support-loaded-conduit-body = A conduit body with devices or luminaires may hang from rigid or intermediate metal conduit when it is not larger than the largest of them.
    .title = Conduit body with devices held by its raceway
rule-box-support-luminaire-on-conduit = Unbroken rigid or intermediate metal conduit may carry a luminaire or its box: at most 3 ft (900 mm) beyond its last support, at least 12 in (300 mm) unbroken before it and fastened at least 12 in (300 mm) from it; where unqualified persons reach, at least 8 ft (2.5 m) high and 3 ft (900 mm) from windows, doors and the like; on a single conduit at most 12 in (300 mm) in any direction; at most 20 lb (9 kg) on each conduit; threaded wrenchtight, with no nipple over 3 in (75 mm).
    .title = Luminaire on unbroken conduit
rule-box-support-embedded = An enclosure in concrete or masonry is identified as protected from corrosion and securely embedded.
    .title = Embedded in concrete or masonry
rule-box-support-cord-pendant = An enclosure on a cord hangs in an approved way that keeps strain off the conductors.
    .title = Cord pendant
rule-box-support-stem-pendant = A luminaire or its box hangs from rigid or intermediate metal conduit, threaded wrenchtight. Stems over 18 in (450 mm) have flexible fittings. The joints of a single stem are kept from loosening, or the luminaire is at least 8 ft (2.5 m) high and 3 ft (900 mm) from windows, doors and the like; it reaches at most 12 in (300 mm) horizontally from a single stem.
    .title = Conduit pendant

finding-support-complete = The means of support pointed at is complete, and one complete means is enough.
finding-support-incomplete = No means that was named is complete. One has to be: each finding says what is lacking.
finding-support-open = No means that was named is known to be complete. Supply what the findings ask for, or name another means.
finding-support-not-named = What holds the enclosure was not said. Name at least one means.

finding-surface-rigid = It is rigidly and securely fastened on the surface.
finding-surface-not-rigid = It is not rigidly and securely fastened on the surface: fasten it, or add another support where the surface gives way.
finding-surface-rigid-open = Say whether it is rigidly and securely fastened on the surface.
finding-structure-rigid = The structure holds it rigidly.
finding-structure-not-rigid = It is not held rigidly by the structure.
finding-structure-rigid-open = Say whether the structure holds it rigidly.
finding-structure-how-open = Say how the structure holds it: by nails or screws, or by a brace.
finding-fastener-close = The nails or screws pass inside at most { $given } from the back or the ends, within the { $limit } allowed.
finding-fastener-not-close = The nails or screws pass inside { $given } from the back or the ends; at most { $limit } is allowed.
finding-fastener-open = Say how far from the back or the ends the nails or screws pass inside; at most { $limit } is allowed.
finding-threads-protected = The threads of the screws inside are protected.
finding-threads-exposed = Screws pass through the inside with bare threads, which wear insulation. Protect the threads in an approved way, or move the screws.
finding-threads-open = Say whether the threads of the screws inside are protected.
finding-field-holes-approved = The mounting holes made in the field are approved.
finding-field-holes-not-approved = The mounting holes made in the field are not approved.
finding-field-holes-open = Say whether the mounting holes made in the field are approved.
finding-metal-brace-thick-enough = The metal brace is { $given } thick, at least the { $limit } asked.
finding-metal-brace-too-thin = The metal brace is { $given } thick; at least { $limit } without coating is asked.
finding-metal-brace-open = Say how thick the metal brace is without coating; at least { $limit } is asked.
finding-brace-protected = The metal brace is protected against corrosion.
finding-brace-not-protected = The metal brace is not protected against corrosion.
finding-brace-protected-open = Say whether the metal brace is protected against corrosion.
finding-wood-brace-large-enough = This side of the wood brace is a nominal { $given }, at least the { $limit } asked.
finding-wood-brace-too-small = This side of the wood brace is a nominal { $given }; at least { $limit } is asked.
finding-wood-brace-open = Give this side of the section of the wood brace; at least a nominal { $limit } is asked.
finding-wood-brace-location-open = Say whether the wood brace is in a wet location, where it has to be treated.
finding-wood-brace-treated = The wood brace is treated for a wet location.
finding-wood-brace-not-treated = The wood brace is in a wet location and not treated for it.
finding-wood-brace-treated-open = Say whether the wood brace is treated for a wet location.
finding-brace-identified = The polymeric brace is identified for the use.
finding-brace-not-identified = The polymeric brace is not identified for the use.
finding-brace-identified-open = Say whether the polymeric brace is identified for the use.
finding-finished-surface-rigid = It is rigidly secured to the finished surface.
finding-finished-surface-not-rigid = It is not rigidly secured to the finished surface.
finding-finished-surface-rigid-open = Say whether it is rigidly secured to the finished surface.
finding-surface-fittings-identified = Its clamps, anchors or fittings are identified for the application.
finding-surface-fittings-not-identified = Its clamps, anchors or fittings are not identified for the application.
finding-surface-fittings-open = Say whether its clamps, anchors or fittings are identified for the application.
finding-ceiling-volume-enough = Its { $given } are within the { $limit } that a suspended ceiling carries.
finding-ceiling-volume-over = Its { $given } are more than the { $limit } that a suspended ceiling carries.
finding-ceiling-volume-open = Give its volume: a suspended ceiling carries at most { $limit }.
finding-framing-fastened = It is fastened to the ceiling framing by bolts, screws, rivets or identified clips.
finding-framing-not-fastened = It is not fastened to the ceiling framing by bolts, screws, rivets or identified clips.
finding-framing-fastened-open = Say whether it is fastened to the ceiling framing by bolts, screws, rivets or identified clips.
finding-framing-secured = The framing is supported, and fastened to itself and to the building.
finding-framing-not-secured = The framing is not supported, or not fastened to itself and to the building.
finding-framing-secured-open = Say whether the framing is supported, and fastened to itself and to the building.
finding-wires-independent = The wires may carry it: they do not hold the ceiling alone.
finding-wires-of-ceiling-alone = The wires that hold the ceiling alone do not carry a box. Add wires for it.
finding-wires-independent-open = Say whether the wires may carry it, or hold the ceiling alone.
finding-wire-method-identified = It is secured to the wires by identified methods.
finding-wire-method-not-identified = It is not secured to the wires by methods identified for that.
finding-wire-method-open = Say whether it is secured to the wires by methods identified for that.
finding-wires-taut = The wires are fastened at both ends and taut.
finding-wires-not-taut = The wires are not fastened at both ends so as to be taut.
finding-wires-taut-open = Say whether the wires are fastened at both ends and taut.
finding-raceways-volume-enough = Its { $given } are within the { $limit } that raceways hold.
finding-raceways-volume-over = Its { $given } are more than the { $limit } that raceways hold.
finding-raceways-volume-open = Give its volume: raceways hold at most { $limit }.
finding-threaded-entries = It has threaded entries or identified hubs.
finding-no-threaded-entries = It has neither threaded entries nor identified hubs, so raceways do not hold it.
finding-threaded-entries-open = Say whether it has threaded entries or identified hubs.
finding-conduits-open = Name the conduits that hold it.
finding-conduits-enough = Conduits that hold it: { $given }; at least { $limit } are asked.
finding-conduits-too-few = Conduits that hold it: { $given }; at least { $limit } are asked.
finding-conduit-threads = { $row } can be threaded into the enclosure.
finding-conduit-no-threads = { $row ->
    [other] This raceway is
   *[named] { $row } is
 } not threaded into an enclosure, so it does not hold one. Rigid or intermediate metal conduit would.
finding-conduit-wrenchtight = This conduit is threaded wrenchtight.
finding-conduit-not-wrenchtight = This conduit is not threaded wrenchtight into the enclosure or its hub.
finding-conduit-wrenchtight-open = Say whether this conduit is threaded wrenchtight into the enclosure or its hub.
finding-conduit-secured-close = This conduit is secured { $given } from the enclosure, within the { $limit } allowed.
finding-conduit-secured-too-far = This conduit is secured { $given } from the enclosure; at most { $limit } is allowed.
finding-conduit-secured-open = Say how far from the enclosure this conduit is secured. At most { $limit } is ever allowed.
finding-conduit-limit-open = Whether this conduit is secured near enough depends on what was not said here.
finding-raceway-carries-body = { $row } may carry this conduit body.
finding-raceway-carries-no-body = { $row ->
    [other] This raceway
   *[named] { $row }
 } does not carry a conduit body { $column ->
    [loaded_conduit_bodies] with a device, a luminaire or other equipment
   *[conduit_bodies] by itself
 }.
finding-body-load-open = Say whether the conduit body holds a device or a luminaire: this kind of raceway then does not carry it.
finding-body-not-larger = The conduit body (trade size { $given }) is not larger than the largest raceway ({ $limit }).
finding-body-larger = The conduit body (trade size { $given }) is larger than the largest raceway ({ $limit }).
finding-body-size-open = Give the trade size of the conduit body.
finding-conduit-size-open = Give the trade size of this raceway: the conduit body may not be larger than the largest.
finding-conduit-carries-luminaire = { $row } may carry a luminaire.
finding-conduit-carries-no-luminaire = { $row ->
    [other] This raceway
   *[named] { $row }
 } does not carry a luminaire; rigid or intermediate metal conduit does.
finding-beyond-support-short = The conduit reaches { $given } beyond its last support, within the { $limit } allowed.
finding-beyond-support-long = The conduit reaches { $given } beyond its last support; at most { $limit } is allowed.
finding-beyond-support-open = Say how far the conduit reaches beyond its last support; at most { $limit } is allowed.
finding-before-support-long = It is unbroken for { $given } before its last support, at least the { $limit } asked.
finding-before-support-short = It is unbroken for { $given } before its last support; at least { $limit } is asked.
finding-before-support-open = Say for what length it is unbroken before its last support; at least { $limit } is asked.
finding-supports-apart = It is fastened { $given } from its last support, at least the { $limit } asked.
finding-supports-too-near = It is fastened { $given } from its last support; at least { $limit } is asked.
finding-supports-open = Say how far from its last support it is fastened; at least { $limit } is asked.
finding-conduit-weight-enough = It carries { $given }, within the { $limit } allowed for one conduit.
finding-conduit-weight-over = It carries { $given }; at most { $limit } is allowed for one conduit.
finding-conduit-weight-open = Say what weight it carries; at most { $limit } is allowed for one conduit.
finding-luminaire-wrenchtight = It is threaded wrenchtight at the luminaire.
finding-luminaire-not-wrenchtight = It is not threaded wrenchtight at the luminaire.
finding-luminaire-wrenchtight-open = Say whether it is threaded wrenchtight at the luminaire.
finding-secured-directly-open = Say whether the luminaire is secured directly to its box, or give the length of the nipple.
finding-nipple-short = The nipple is { $given } long, within the { $limit } allowed.
finding-nipple-long = The nipple is { $given } long; at most { $limit } is allowed.
finding-nipple-open = The luminaire is not secured directly: give the length of the threaded nipple, at most { $limit }.
finding-accessible-open = Say whether unqualified persons can reach the luminaire: its height and its distance from windows and doors then matter.
finding-luminaire-high-enough = Its lowest point is { $given } high, at least the { $limit } asked.
finding-luminaire-too-low = Its lowest point is { $given } high; at least { $limit } is asked.
finding-luminaire-height-open = Say how high its lowest point is; at least { $limit } is asked.
finding-luminaire-clear = It is { $given } from windows, doors and the like, at least the { $limit } asked.
finding-luminaire-not-clear = It is { $given } from windows, doors and the like; at least { $limit } is asked.
finding-luminaire-clear-open = Say how far it is from windows, doors and the like; at least { $limit } is asked.
finding-luminaire-compact = It reaches { $given } from where the conduit enters, within the { $limit } allowed.
finding-luminaire-reaches-too-far = It reaches { $given } from where the conduit enters; at most { $limit } is allowed on a single conduit.
finding-luminaire-extent-open = Say how far it reaches from where the conduit enters; at most { $limit } is allowed on a single conduit.
finding-stem-flexible = The long stem has a flexible fitting.
finding-stem-not-flexible = The stem is long and has no flexible fitting.
finding-stem-flexible-open = The stem is long: say whether it has a flexible fitting.
finding-stem-length-open = Give the length of the stem: a long one needs a flexible fitting.
finding-stem-joints-secured = The joints of the single stem are kept from loosening.
finding-stem-joints-open = Say whether the joints of the single stem are kept from loosening, or give a height and a distance from windows and doors that make it needless.
finding-embedded-identified = It is identified as protected from corrosion.
finding-embedded-not-identified = It is not identified as suitably protected from corrosion.
finding-embedded-identified-open = Say whether it is identified as suitably protected from corrosion.
finding-embedded-secure = It is securely embedded.
finding-embedded-not-secure = It is not securely embedded.
finding-embedded-secure-open = Say whether it is securely embedded.
finding-cord-relieved = The cord is held so that its conductors bear no strain.
finding-cord-not-relieved = The conductors of the cord bear strain: use a strain-relief connector threaded into a hub, or as good a way.
finding-cord-open = Say whether the conductors of the cord are kept from strain in an approved way.

because-fastened-outside = Brackets outside the enclosure and the maker's mounting holes ask nothing more of nails and screws.
because-nails-have-no-threads = Nails have no threads.
because-no-brace = There is no brace.
because-no-fasteners = A brace holds it; no nails or screws were named.
because-not-wet = The location is not wet.
because-not-a-conduit-body = The exception is for conduit bodies.
because-not-accessible = Unqualified persons cannot reach it.
because-not-a-single-conduit = It does not hang from a single conduit.
because-not-a-single-stem = It does not hang from a single stem.
because-secured-directly = The luminaire is secured directly.
because-short-stem = The stem is short enough to need no flexible fitting.

fault-trade-size-of-box = Only a conduit body has a trade size. Set kind to conduit_body, or leave it out.
fault-nipple-and-direct = A luminaire that is secured directly has no nipple.
fault-threads-of-nails = Only screws have threads. Leave it out for nails.

## Luminaire and fan outlets

rule-luminaire-outlet-wall = A box on a wall that carries a luminaire is identified for it. It carries 50 lb (23 kg), or the other weight that is marked inside it.
    .title = Luminaires on walls
rule-luminaire-outlet-light = A luminaire on a wall of at most 6 lb (3 kg) may hang from any other box, or a plaster ring secured to one, by at least two No. 6 or larger screws.
    .title = Light luminaires on walls
rule-luminaire-outlet-ceiling = A box in a ceiling that carries a luminaire is made to carry at least 50 lb (23 kg). A heavier luminaire needs a box that is listed for its weight, or support of its own.
    .title = Luminaires on ceilings
rule-luminaire-outlet-independent = A heavy luminaire may be supported independently of the box.
    .title = Support apart from the box
rule-luminaire-outlet-mark = The weight that a box carries, if other than 50 lb (23 kg), is marked on its inside.
    .title = Marked weight
rule-luminaire-outlet-floor = A box for a receptacle in a floor is listed for floors.
    .title = Floor boxes
rule-luminaire-outlet-show-window = In the raised floor of a show window, judged free from damage, moisture and dirt, another box may serve; receptacle and cover are listed as an assembly for it.
    .title = Floors of show windows
rule-fan-outlet-support = A box that alone carries a ceiling fan is listed for it and marked by its maker as suitable. The fan weighs at most 70 lb (32 kg).
    .title = Ceiling fans
rule-fan-outlet-weight-mark = A box for fans over 35 lb (16 kg) is marked with the most weight that it carries.
    .title = Weight marked on fan boxes
rule-fan-outlet-mark-inside = From 2023, the marking of a fan box is on its inside.
    .title = Where fan boxes are marked
rule-fan-outlet-spare-conductors = In 2017, a ceiling box of a dwelling, in a place acceptable for a fan, with spare separately switched conductors, is listed as sole support of a fan.
    .title = Spare conductors for a fan
rule-fan-outlet-habitable-rooms = From 2020, a ceiling box in a habitable room of a dwelling, in a place acceptable for a fan, is listed as sole support of a fan or gives access to framing that can carry one; from 2023 that access is through the box, without removing it.
    .title = Habitable rooms ready for a fan
rule-luminaire-outlet-equipment = Equipment other than a fan is carried as a luminaire of the same size and weight.
    .title = Other equipment
rule-luminaire-outlet-light-equipment = Equipment of at most 6 lb (3 kg) may hang from any other box, or a plaster ring secured to one, by at least two No. 6 or larger screws.
    .title = Light equipment
rule-luminaire-outlet-separable = A listed locking mounting receptacle with the fitting that belongs to it may carry equipment within the weight and the orientation of its listing.
    .title = Locking mounting receptacles

finding-box-identified = The box is designed or identified to carry a luminaire.
finding-box-not-identified = The box is not designed or identified to carry a luminaire.
finding-box-identified-open = Say whether the box is designed or identified to carry a luminaire.
finding-box-carries-load = The load weighs { $given }, within the { $limit } that the box may carry.
finding-box-overloaded = The load weighs { $given }, but the box may carry { $limit }.
finding-load-weight-open = Say what the load weighs.
finding-ceiling-box-strong-enough = The box is marked { $given }, at least the { $limit } asked in a ceiling.
finding-ceiling-box-too-weak = The box is marked { $given }; in a ceiling at least { $limit } is asked.
finding-marked-inside = The marking is on the inside of the box.
finding-not-marked-inside = The marking is not on the inside of the box.
finding-marked-inside-open = Say whether the marking is on the inside of the box.
finding-box-listed-for-weight = The box is listed for the weight that is marked.
finding-box-not-listed-for-weight = The luminaire is heavy and the box is not listed for its weight: support it independently of the box, or fit a box that is listed for it.
finding-box-listed-for-weight-open = The luminaire is heavy: say whether the box is listed for its weight, or whether the structure carries it.
finding-load-is-light = The load weighs { $given }, light enough for any box ({ $limit }).
finding-load-is-not-light = The load weighs { $given }, too much to hang from any box by two screws ({ $limit }).
finding-screws-enough = { $given } screws hold it; at least { $limit } are asked.
finding-screws-too-few = Screws that hold it: { $given }; at least { $limit } are asked.
finding-screws-open = Say how many screws hold it; at least { $limit } are asked of a light load on any box.
finding-screws-large-enough = The screws are No. { $given }, at least the No. { $limit } asked.
finding-screws-too-small = The screws are No. { $given }; at least No. { $limit } is asked.
finding-screw-size-open = Say what size the screws are; at least No. { $limit } is asked.
finding-carried-by-structure = The structure carries the load, so it does not rest on the box.
finding-load-carried = One of the ways in which this load may be carried is complete, which is enough.
finding-load-not-carried = None of the ways in which this load may be carried is complete. One has to be.
finding-load-carried-open = None of the ways in which this load may be carried is known to be complete. One is enough.
finding-ready-for-fan = The box is ready for a fan: it is listed for one, or framing can be reached. One is enough.
finding-not-ready-for-fan = The box is not ready for a fan: it has to be listed for one, or framing has to be within reach.
finding-ready-for-fan-open = Whether the box is ready for a fan is open: a listing for one, or framing within reach, is enough.
finding-fan-box-listed = The box is listed as the sole support of a fan.
finding-fan-box-not-listed = The box is not listed as the sole support of a fan.
finding-fan-box-open = Say whether the box is listed as the sole support of a fan.
finding-fan-box-marked = The box is marked as suitable for a fan.
finding-fan-box-not-marked = The box is not marked by its maker as suitable for a fan.
finding-fan-box-marked-open = Say whether the box is marked by its maker as suitable for a fan.
finding-fan-within-limit = The fan weighs { $given }, within the { $limit } that any box may carry.
finding-fan-too-heavy = The fan weighs { $given }. No box alone carries more than { $limit }: support it independently.
finding-fan-needs-no-weight-mark = The fan weighs { $given }. Up to { $limit } the marking need not state a weight.
finding-fan-needs-weight-mark = The fan weighs { $given }, and no weight is marked on the box. Over { $limit } the marking has to state the most weight.
finding-fan-location-not-told = Nothing was said of whether a ceiling fan may come here. In a dwelling that can ask for a fan box: give fan_location.
finding-fan-location-open = Whether this box must be ready for a fan depends on what was not said here.
finding-framing-through-box = Framing that can carry a fan is reached through the box.
finding-framing-not-through-box = Framing that can carry a fan is not reached through the box without removing it.
finding-framing-through-box-open = Say whether framing that can carry a fan is reached through the box without removing it.
finding-framing-reached = Framing that can carry a fan can be reached.
finding-framing-not-reached = Framing that can carry a fan cannot be reached.
finding-framing-open = Say whether framing that can carry a fan can be reached.
finding-floor-box-listed = The box is listed for floors.
finding-floor-box-not-listed = The box is not listed for floors.
finding-floor-box-open = Say whether the box is listed for floors.
finding-show-window-assembly-listed = Receptacle and cover are listed as an assembly for such a floor.
finding-show-window-assembly-not-listed = Receptacle and cover are not listed as an assembly for such a floor.
finding-show-window-assembly-open = Say whether receptacle and cover are listed as an assembly for such a floor.
finding-mounting-receptacle-listed = The locking mounting receptacle is listed.
finding-mounting-receptacle-not-listed = The locking mounting receptacle is not listed.
finding-mounting-receptacle-open = Say whether the locking mounting receptacle is listed.
finding-mounting-fitting-compatible = Mounting receptacle and fitting are identified for one another and for this orientation.
finding-mounting-fitting-not-compatible = Mounting receptacle and fitting are not identified for one another, or not for this orientation.
finding-mounting-fitting-open = Say whether mounting receptacle and fitting are identified for one another and for this orientation.
finding-mounting-weight-enough = The load weighs { $given }, within the { $limit } that the mounting receptacle is identified for.
finding-mounting-weight-over = The load weighs { $given }; the mounting receptacle is identified for { $limit }.
finding-mounting-weight-open = Give the weight that the mounting receptacle is identified for.
finding-mounting-receptacle-takes-room = A mounting receptacle inside the box takes room as a device does: name it among the devices of a fill check.

because-not-on-a-wall = The exception is for luminaires on walls.
because-marked-as-if-unmarked = A box that carries the usual weight need not be marked with it.
because-no-weight-marked = No weight is marked on the box, so it carries the usual one.
because-the-box-carries-it = It was not said that the structure carries the load.
because-not-a-show-window = It was not said to be the accepted floor of a show window.
because-a-fan-is-there = The box carries a fan, which asks for a fan box in any case.
because-not-a-dwelling = It is not in a dwelling.
because-not-a-habitable-room = It is not in a habitable room.
because-no-place-for-a-fan = It is no place acceptable for a fan.
because-no-spare-conductors = No spare switched conductors are run to it.

fault-fan-location-of-no-ceiling = Only a box in a ceiling may have to be ready for a fan. Leave fan_location out.

## Enclosure types

rule-enclosure-type-selection = An enclosure is of a type that the table rates for every condition where it stands.
    .title = Enclosure types
rule-enclosure-type-scope = The table is for enclosures of switchboards, panelboards, meter sockets, enclosed switches, controllers and the like, up to 1000 V. It says nothing of what arises inside: condensation, icing, corrosion, contamination.
    .title = What the table of enclosure types covers
rule-enclosure-type-moisture = No row of the table says dry, damp or wet. Indoors, damp is taken as falling liquids and light splashing, wet as hosedown and splashing water; outdoors either is rain, snow and sleet.
    .title = Dry, damp and wet places
rule-enclosure-type-hazardous = In hazardous (classified) locations enclosures follow Articles 500 to 506, not the table of enclosure types.
    .title = Hazardous (classified) locations

caution-hazardous-location = Hazardous (classified) location: an ordinary enclosure type number says nothing there. Explosionproof, dust-ignitionproof or other protection, and seals, follow Articles 500 to 506 for the class, division or zone, and group. Have the area classified and the equipment chosen by someone qualified for it.

finding-type-rated = Type { $column } is rated for { $row ->
    [indoor_falling_dirt] falling dirt
    [indoor_falling_liquids] falling liquids and light splashing
    [indoor_circulating_dust] circulating dust, lint, fibers and flyings
    [indoor_settling_dust] settling dust, lint, fibers and flyings
    [indoor_hosedown] hosedown and splashing water
    [indoor_oil_seepage] oil and coolant seepage
    [indoor_oil_spray] oil and coolant spraying and splashing
    [indoor_corrosive_agents] corrosive agents
    [indoor_temporary_submersion] temporary submersion
    [indoor_prolonged_submersion] prolonged submersion
    [outdoor_rain_snow_sleet] rain, snow and sleet
    [outdoor_operable_when_iced] a mechanism that works while ice covers it
    [outdoor_windblown_dust] windblown dust
    [outdoor_hosedown] hosedown
    [outdoor_corrosive_agents] corrosive agents
    [outdoor_temporary_submersion] temporary submersion
    [outdoor_prolonged_submersion] prolonged submersion
   *[incidental_contact] incidental contact with the equipment
 }.
finding-type-not-rated = Type { $column } is not rated for { $row ->
    [indoor_falling_dirt] falling dirt
    [indoor_falling_liquids] falling liquids and light splashing
    [indoor_circulating_dust] circulating dust, lint, fibers and flyings
    [indoor_settling_dust] settling dust, lint, fibers and flyings
    [indoor_hosedown] hosedown and splashing water
    [indoor_oil_seepage] oil and coolant seepage
    [indoor_oil_spray] oil and coolant spraying and splashing
    [indoor_corrosive_agents] corrosive agents
    [indoor_temporary_submersion] temporary submersion
    [indoor_prolonged_submersion] prolonged submersion
    [outdoor_rain_snow_sleet] rain, snow and sleet
    [outdoor_operable_when_iced] a mechanism that works while ice covers it
    [outdoor_windblown_dust] windblown dust
    [outdoor_hosedown] hosedown
    [outdoor_corrosive_agents] corrosive agents
    [outdoor_temporary_submersion] temporary submersion
    [outdoor_prolonged_submersion] prolonged submersion
   *[incidental_contact] incidental contact with the equipment
 }.
finding-type-not-in-table = The table does not have type { $type } for this location, so it says neither that it serves nor that it does not. Ask for its listing, or choose a type that the table has.
finding-types-that-serve = Types rated for every condition here: { $types }.
finding-no-type-serves = No type is rated for all of these conditions together. Change the place, protect it, or ask for equipment listed for it.
finding-moisture-open = Say whether the place is dry, damp or wet. What follows is for a dry place.
finding-moisture-taken-as = This word for the place was taken as { $row ->
    [indoor_hosedown] hosedown and splashing water
   *[indoor_falling_liquids] falling liquids and light splashing
 }: the table has no dry, damp or wet. Name the conditions instead where that does not fit.
finding-enclosure-scope = The table is for enclosures of panelboards, meter sockets, enclosed switches, controllers and the like, up to 1000 V. An outlet or junction box in a damp or wet place needs its own listing for it.
finding-enclosure-inside = No type number speaks of what arises inside an enclosure: condensation, icing, corrosion, contamination.
finding-enclosure-in-hazardous-location = In a hazardous (classified) location the table of enclosure types does not decide. See Articles 500 to 506 for the class, division or zone, and group.

because-hazardous-location = The location is hazardous (classified).

fault-condition-not-at-location = The table has no row for { $condition } at an { $location } place. Choose one that it has.
