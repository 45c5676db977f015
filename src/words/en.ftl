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

## Service

problem-title-malformed-json = The body is not JSON
problem-meaning-malformed-json = The body could not be read as JSON text in UTF-8. The fault says in which line and column reading stopped.
problem-title-unauthorized = A key is needed
problem-meaning-unauthorized = The service asks for a key, and there is none in the request, or it is not known, or its time is over. Send it as Authorization: Bearer followed by the token. Whoever runs the service gives out keys.
problem-title-forbidden = The key is for something else
problem-meaning-forbidden = The key is known and in force, but what was asked for is not among its scopes. Whoever runs the service can give out a key with the scope that the detail names.
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
problem-title-too-many-requests = Too many requests
problem-meaning-too-many-requests = The quota of the key or of the address is used up. Ask again after the seconds of Retry-After; RateLimit-Policy and RateLimit say how large the quota is and how much of it is left.
problem-title-internal-error = The service failed
problem-meaning-internal-error = A fault of the service, not of the request. It was logged under the request id in the X-Request-Id header; nothing about it is told here.
problem-title-not-ready = The service takes no new requests
problem-meaning-not-ready = The service is shutting down: it finishes what it has, and takes nothing new.
problem-title-overloaded = The service is busy
problem-meaning-overloaded = As many requests are being answered as the service takes at once, or as many connections are open. Nothing was done; ask again after the seconds of Retry-After.

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
problem-detail-overloaded = Too many requests or connections at once.
problem-detail-key-missing = There is no key in the request.
problem-detail-key-unknown = The key is not known.
problem-detail-key-expired = The time of the key is over.
problem-detail-forbidden = The key { $name } does not have the scope { $scope }.
problem-detail-too-many-requests = The quota of { $most } requests a minute is used up for another { $seconds } seconds.

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
text-key = The token of a key, where the service asks for one. Whoever runs the service gives out keys.
text-header-www-authenticate = How to send a key, and what was wrong with the one that was sent.
text-header-retry-after = Seconds after which to ask again.
text-header-ratelimit = How many requests are left of the quota, and in how many seconds it is whole again.
text-header-ratelimit-policy = The quota: so many requests in a window of so many seconds.
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
