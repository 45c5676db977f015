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
finding-volume-enough-either-way = The contents require { $required } to { $most } of the { $available } that are there, whatever is not said.
finding-volume-unknown = The contents require { $required }; how much the box has is not established.
finding-contents-unsaid = Nothing is said about what is in the box. Name it, or say with nothing that there is nothing.
finding-required-range = The contents require { $least } to { $most }: what is not said takes room or not. The boxes offered hold the most.
finding-more-yokes-than-gangs = The devices need { $needed } gangs, and there are { $gangs }.
finding-gangs-unsaid = The devices need { $needed } gangs. Say how many the box, or the ring on it, has.
finding-barriers-fill-the-box = The barriers take { $taken } of a box of { $whole }: that leaves no spaces.
finding-fewer-barriers-than-spaces = Barriers to the number of { $barriers } cannot make { $spaces } spaces.
finding-barriers-may-cross = Barriers to the number of { $barriers } make { $spaces } spaces only where they cross, and what crossing barriers leave is not worked out here. Name every barrier between two spaces.
finding-more-barriers-than-spaces = Barriers to the number of { $barriers }, side by side, make more than { $spaces } spaces. Name every space, or say that fewer barriers divide the box.
finding-shares-of-an-unsaid-whole = Each space has its share by gangs, and how many gangs the box has is not said: together they must be the whole box.
finding-shares-do-not-make-the-whole = The spaces measure { $together } together, and the box has { $whole }, of which its barriers leave { $left }. Measure them again, or share the box out by gangs.
finding-section-adds-nothing = This section carries no volume mark and is not said to be made from a standard box, so it adds nothing.
finding-barrier-in-unknown-box = What the barriers leave is not known before the volume of the box is.
finding-barrier-policy = What barriers take was taken off the whole box first, and the rest shared out by gangs or by measured volume. The code does not say how; this is a policy of this service.
finding-inside-measure = The box is over the size that must be marked and has no mark; { $volume } was computed from its inside dimensions.

fault-mark-below-table = A box of the table has at least the volume of the table, and this mark is less. Which of the two is right?
fault-shares-are-not-the-box = The spaces have { $shares } gangs together and the box has { $gangs }. Which of the two is right?
fault-no-contents = Say what is in the box: give contents, or spaces where barriers divide it. An empty box is said with nothing.
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
rule-outlet-fill-nm-grounding = Nonmetallic-sheathed cable has an equipment grounding conductor: as large as the others up to 10 AWG, and at least 10 AWG above that.
    .title = Grounding conductor of NM cable
rule-outlet-fill-isolated-set = Through 2017, a separate set of grounding conductors for isolated-ground equipment takes one allowance of its own, by the largest of that set.
    .title = Isolated grounding conductors
rule-outlet-fill-terminal-blocks = From 2023, each terminal block assembly takes one allowance by the largest conductor that ends on it, whatever the number of its poles.
    .title = Terminal blocks
rule-outlet-fill-no-allowance = Locknuts, bushings, wire connectors, screws and other small parts take no allowance.
    .title = What takes no allowance

finding-devices-differ = Yokes in the same box can take different allowances: each is counted by the largest conductor connected to a device on that yoke, not by the largest in the box ({ $largest }). Here: { $yokes }.
finding-device-without-conductor = A yoke is counted by the largest conductor connected to it. Say what that is.
finding-block-without-conductor = A terminal block is counted by the largest conductor that ends on it. Say what that is.
finding-loop-depth-unsaid = In a deep box a loop must be longer to count twice. Say how deep behind the opening conductors emerge.
finding-loop-threshold = An unbroken loop counts twice here when it is at least { $threshold } long.
finding-no-allowance-published = No allowance is published for a conductor smaller than 18 AWG, so it could not be counted.
finding-no-conductors = Clamps and support fittings are counted by the largest conductor in the box. Say which conductors there are.
finding-largest-has-no-allowance = Clamps and support fittings are counted by the largest conductor in the box, and no allowance is published for that size.

finding-clamps-unsaid = A cable enters, and whether a clamp is inside the box is not said. It would take one allowance.
finding-cable-grounding-unsaid = Whether this cable has a grounding conductor, and of what size, is not said. Give its size, or none.
finding-nm-grounding-size-unsaid = NM cable has an equipment grounding conductor, from 10 AWG to the size of the circuit conductors; its size is not said, and here it matters. Give it.
finding-nm-without-grounding = NM cable has an equipment grounding conductor. Say that this is an existing cable, or give the size of the conductor.
finding-fixture-wires-unsaid = The wires of what hangs here count, and which there are is not said. Name them, or write the list out empty.
finding-assembly-in-metal-box = A clamp assembly with terminations is made for nonmetallic boxes, and this box is metal.
finding-assembly-in-unsaid-box = A clamp assembly with terminations is made for nonmetallic boxes. Say what this box is made of.
finding-assembly-not-listed = A clamp assembly with terminations serves in boxes that it is listed and marked for, and it is not for this one.
finding-assembly-not-read = What this edition says of a clamp assembly with terminations could not be read, so that what it takes is open. Take it from print.
finding-barrier-material-unsaid = What a barrier without a mark takes goes by its material, and here it matters. Say what it is made of, or give the volume marked on it.
finding-assembly-listing-unsaid = A clamp assembly with terminations serves in boxes that it is listed and marked for. Say whether it is for this one.

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

fault-nothing-and-something = There cannot be nothing in the box and this.
fault-listing-of-plain-clamp = Only a clamp assembly with terminations is listed for certain boxes.
fault-loop-without-length = A loop needs its length: it decides whether the loop counts once or twice.
fault-length-without-loop = Only a loop has a loop length.
fault-deeper-than-box = Conductors cannot emerge deeper than the box is. Say which of the two is right.
fault-opening-wider-than-box = The opening cannot be wider than the box. Say which of the two is right.
fault-ring-wider-than-box = A ring or cover of { $gangs } gangs does not go on this box: { $most } is the most. Say which of the two is right.
fault-extension-of-another-box = An extension has the face of the box that it extends, and this one is made from another. Say which of the two is right.
fault-ring-narrower-than-box = A ring of fewer gangs does not fit a box of so many. Say which of the two is right.
fault-molded-clamp-in-metal-box = Spring tabs are molded into plastic boxes, and this box is metal. Say which of the two is right.
fault-assembly-without-volume = A clamp assembly with terminations takes its own volume off the box. Say how much that is.
fault-volume-of-plain-clamp = Only a clamp assembly with terminations has a volume of its own.

point-canopy_wires = More than four small fixture wires from a canopy: do all of them count, or only those past four?
point-fan_canopy = Is the canopy of a ceiling fan one that lets its wires be left out?
point-bonding_jumpers = Where the edition names only grounding conductors: does a bonding jumper that enters join them, or is it a conductor like any other?
point-molded_clamps = Are spring tabs molded into a plastic box internal clamps, or already outside its marked volume?
point-device_leads = A device with leads of its own: is its yoke counted by the circuit conductor, or by the leads?
point-loop_threshold = Where a deep box asks for more free conductor than the base length: does that lengthen a loop that counts twice?
point-rail_splices = Are splicing terminals on a mounting rail a terminal block, or splicing connectors?
point-small_conductors = May a conductor smaller than 18 AWG be counted as 18 AWG?
