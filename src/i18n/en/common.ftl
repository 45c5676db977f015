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

step-computed = { $result } ({ $rule })
step-rounded-down = { $result }, rounded down to { $whole } ({ $rule })
step-rounded-up = { $result }, raised to { $whole } from a rest of { $step } on ({ $rule })
step-left-out = Left out: { $result } ({ $rule })
step-read = Read as { $result } ({ $rule })
step-boxes = Boxes that would do: { $result } ({ $rule })

## Where a rule stands

word-citation-unverified = location in 2026 unverified
word-citation-informational-note = informational note
word-citation-article = Article
word-citation-chapter = Chapter
word-citation-exception = Exception
word-citation-location = Location
word-citation-note = Note
word-citation-table = Table
word-citation-geometry = geometry
word-citation-and = and

## Every request

rule-edition-unverified = An edition whose text could not be read is answered with the figures of the edition before it, and every citation says so.
    .title = Unverified edition
rule-geometry-gangs = Devices stand in the gangs of a box: a box has at least as many gangs as its devices need.
    .title = Gangs for the devices
rule-geometry-barriers = A box that is divided into spaces has one barrier fewer than it has spaces.
    .title = Barriers between spaces
rule-geometry-raceways = What is in a raceway is no wider than the raceway is inside.
    .title = Room in a raceway
rule-geometry-entries = The holes of the entries on one wall have room beside one another on that wall.
    .title = Room for the entries of a wall
rule-geometry-positions = An entry lies whole within the wall that it is on.
    .title = Entries within their wall
rule-units-either = Inches and pounds or metric units may be used, and what meets the figures of one system need not meet those of the other: each demand is worked wholly in one system, and is violated only where it fails in both.
    .title = Either system of units
point-units = Is a demand met where it is met in either system of units, or only in that of the request?
rule-nothing-described = A request is judged by what it describes; one that describes nothing that can be judged decides nothing.
    .title = Nothing described
finding-nothing-described = Nothing was described that could be judged.
finding-nothing-judged = No rule of this check applies to what was described, so nothing of it was judged. That is no approval.
finding-not-accounted-for = This rule applies, and what was described does not decide it.
finding-met-in-other-units-by-figures = Met in the other system of units, { $there } against { $other_limit }, and not in that of the request, { $here } against { $limit }: either may be used.
finding-met-in-other-units-by-figures-there = Met in the other system of units, { $there } against { $other_limit }, and not in that of the request: either may be used.
finding-met-in-either-units = Each of the things that it asks is met in one of the two systems of units, as the other findings say: either may be used.
finding-met-in-other-units = Met in the other system of units, and not in that of the request: either may be used.
finding-open-in-other-units = Not met in the units of the request. Whether it is met in the other system, which may be used as well, depends on what is not said.
finding-not-asked-in-other-units = Not asked in the other system of units, which may be used as well.
finding-under-a-reading = Read as { $reading }: { $sentence }
finding-open-reading = The rule is read in more than one way, and the verdict depends on the reading: { $readings }. Choose one.
text-reading-figures = { $given } against { $limit }
finding-open-readings-together = Nobody chose how { $one } and { $other } are read. Read together as { $one_reading } and { $other_reading }, they give another verdict. Choose a reading of each.
finding-unverified-edition = The 2026 edition is answered with the rules of 2023. None of its figures or section numbers could be verified.
fault-unverified-edition = The text of the 2026 edition was not available. Ask for a verified edition, or set accept_unverified_rules to true to have the rules of 2023 carried forward.
fault-review-of-nothing = A review needs something that is known of the box: the request of one check at the least.
fault-said-by-the-review = The review says { $term } for every check. Leave it out here, or say the same.
fault-said-twice-of-one-box = This says another thing of the same box than { $other }: { $here } here, { $there } there. Say which of them is right.
fault-devices-without-depth = The fill of this box names devices at { $other }, and the depth check is asked about the box without naming any. Say at equipment what stands in the box, or leave the depth check out.
fault-edition-twice = This edition stands twice. Name each once.
fault-editions-to-compare = Name from 2 to { $most } editions.
fault-unknown-check = No check has this name.
fault-not-amendable = This figure cannot be amended.
fault-amendment-not-in-edition = The { $edition } edition has no such figure to amend.
fault-amendment-out-of-bounds = An amendment of this figure must be from { $least } to { $most }.
fault-too-many-items = { $items } items are more than the { $most } that one list may have.
fault-duplicate-id = The id { $id } is carried by more than one thing. Give each its own.
