## Free conductor

rule-free-conductor-length = At each outlet, junction and switch point, 6 in (150 mm) of free conductor are left for splices and connections, measured from where the conductor leaves its raceway or sheath inside the box.
    .title = Length of free conductor
rule-free-conductor-outside = Where any dimension of the opening is under 8 in (200 mm), each conductor must also reach 3 in (75 mm) outside the opening.
    .title = Reach outside a small opening

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
finding-reach-unknown = Conductor { $subject } must reach { $limit } outside the opening. Give its length and how deep it emerges, or how far it reaches.
finding-reach-short-at-most = Conductor { $subject } reaches at most { $given } outside the opening, since the rings alone are that deep; { $limit } are required because the opening is small.
finding-free-length-at-least = Conductor { $subject } has at least { $given } free, by what reaches outside the opening; { $limit } are required.
finding-splice-inside-box = The splice that lengthens conductor { $subject } is inside this box.
finding-splice-outside-box = The splice that lengthens conductor { $subject } is not inside this box. A splice needs a box of its own, within reach.
finding-splice-place-open = A splice must stand in a box. Say whether the one that lengthens conductor { $subject } is inside this box.
finding-damage-in-wall = The insulation of conductor { $subject } is damaged behind the end of its raceway or sheath. A splice in this box cannot cut that out: replace the conductor or cable, free a sound length of it, or put a box where the damage is. This check does not decide it.
finding-damage-of-unspliced = The insulation of conductor { $subject } is damaged. Cut out, it is no longer unbroken here, and what replaces it must be judged: say what is done about the damage. This check does not decide it.
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
fault-round-opening-with-gangs = A round opening has no gangs. Say which of the two it is.
fault-large-opening-of-small-box = A device box, and any box of the table, has an opening under 8 in (200 mm) one way at the least. Say which of the two is right.
fault-opening-wider-than-gangs = By common practice a gang is at most 2-1/2 in (65 mm) wide, and a device, square or octagonal box at most 5 in (130 mm) high. Say which of the two is right.
fault-damage-outside-of-box = No part of this conductor leaves the box, so that it cannot be damaged in the wall. Say which of the two is right.
fault-reach-longer-than-conductor = The conductor is said to reach farther outside the opening than its free length leaves over the depth. Say which of the two is right.
fault-reach-shorter-than-conductor = The conductor is said to reach too short outside the opening, while its free length reaches far enough over the depth. Say which of the two is right.
fault-damage-already-spliced = Give either damage that is still to be cut out, or the splice that replaced it: not both.
fault-unbroken-conductor-spliced = A conductor that passes through unbroken is not spliced here. Give it the role spliced, or leave the splice out.
fault-sound-length-in-wall = Only damage inside the box leaves a sound length.
fault-part-longer-than-conductor = A part of the free length cannot be longer than the whole.

point-continuous_length = Where the edition does not say that a free length may be spliced: does a spliced length count, or only one in one piece?
point-shared_pigtail = May two short conductors be joined in one connector with a single pigtail, or must each be long enough on its own first?
