### Drawings. Words on paper are short; the description says the rest.

drawing-edition = NFPA 70, { $edition } edition
drawing-edition-unverified = NFPA 70, { $edition } edition, not verified
drawing-no-verdict = Sizing question, no verdict
drawing-caution = A drawing of arithmetic, not of an installation: it approves nothing.
drawing-left = { $figure } left
drawing-short = { $figure } short

## Outlet boxes

drawing-outlet-title = Volume of an outlet box
drawing-outlet-available = Available { $figure }
drawing-outlet-required = Required { $figure }
drawing-space = Space { $space }
drawing-outlet-own = Box { $figure }
drawing-outlet-sections = rings, covers and extensions { $figure }
drawing-outlet-barriers = barriers take { $figure }
drawing-outlet-shared = shared out among the spaces { $figure }
drawing-used = { $figure } used
drawing-more-lines = { $number } more lines are not listed here.

## Raceways

drawing-raceway-title = Conductors in a raceway
drawing-raceway-inside = Inside area { $figure }
drawing-raceway-diameter = Inside diameter { $figure }
drawing-raceway-allowed = Allowed { $figure }
drawing-raceway-taken = Filled { $figure }
drawing-raceway-raised = { $figure } over, permitted by { $rule }
drawing-raceway-number = Conductors and cables: { $number }
drawing-raceway-limit = { $limit ->
    [one] One conductor or cable
    [two] Two conductors or cables
    [nipple] Nipple
   *[over_two] Three or more conductors or cables
}: at most { $percent }
drawing-raceway-most = Most of this size: { $figure }
drawing-raceway-room = Room for more { $what }: { $number }
drawing-raceway-jam = Raceway to conductor, diameters: { $figure }
drawing-raceway-fits = Smallest trade size that takes all
drawing-raceway-no-size = none
drawing-raceway-none = No trade size of the table takes all.
drawing-raceway-assumed = No trade size was given: drawn in { $raceway }.
drawing-raceway-without-figures = The table has no figures for the given trade size: drawn in { $raceway }.
drawing-raceway-lie = To scale. How they lie is one of many ways.
drawing-raceway-as-areas = { $number } are too many to draw one by one: each size is drawn as the area that it takes, to scale.
drawing-raceway-no-place = Find no place in the circle as drawn: { $number }
drawing-raceway-more = Not drawn beside the raceway: { $number } more.

## Conduit bodies

drawing-body-title = Conduit body { $shape ->
    [straight] with opposite openings
    [back_outlet] with an outlet in the back
    [side_outlet] with an outlet in the side
    [tee] with three openings
   *[cross] with four openings or more
}
drawing-body-from-cover = Seen from the cover
drawing-body-from-side = Seen from the side, the cover above
drawing-body-to-scale = To scale. Where openings stand on their walls is not given.
drawing-body-dashed = Dashed: a size that is required or only assumed.
drawing-body-not-to-scale = Not to scale: no length is given or asked.
drawing-body-smaller = { $figure } smaller, by its marking
drawing-body-spliced = spliced
drawing-body-bare = bare
drawing-body-compact = compact
drawing-body-more = and { $number } more
drawing-body-governs = governs
drawing-body-apart = Apart { $figure }
drawing-body-too-close = Too close
drawing-body-by-mark = Closer, as its marking permits
drawing-body-cross-section = Cross-section of the body
drawing-body-overfull = More than is allowed

## Pull boxes

drawing-pull-box-title = Pull box in plan, its walls folded out
drawing-box-given = The given box
drawing-box-smallest = The smallest box with a place for every entry
drawing-box-laid-out = A box with a place for every entry
drawing-box-least = The least that the rules ask
drawing-section = Section { $section }
drawing-side = { $axis ->
    [width] Width
    [height] Height
   *[depth] Depth
 } { $figure }
drawing-side-least = Least { $axis ->
    [width] width
    [height] height
   *[depth] depth
 } { $figure }
drawing-side-assumed = The { $axis ->
    [width] width
    [height] height
   *[depth] depth
 } is assumed, so that the entries have room: no rule asks for as much.
drawing-places-assumed = Dashed entries have no known place: they are drawn evenly along their row.
drawing-ids-left-out = Entries too close together for their ids are told in the list.
drawing-rims-assumed = Entries without a diameter are drawn at a size that is assumed.
drawing-pulls-thin = Thin pulls are not sized by length.
drawing-splices = A dot on a pull is a splice.
drawing-room-between = Rings: { $figure } clear between entries.
drawing-room-to-walls = Inner frames: { $figure } clear of the walls beside.
drawing-cover = { $cover ->
    [removable] The cover comes off.
    [hinged] The cover is hinged.
   *[fixed] The cover does not come off.
 }
drawing-over-1000-volts = The system is over 1000 V.
drawing-blocks = { $count ->
    [one] One power distribution block.
   *[other] { $count } power distribution blocks.
 }
drawing-asked = What the rules ask
drawing-counted = Counted: { $entries }
drawing-wall = { $wall ->
    [left] left wall
    [right] right wall
    [top] top wall
    [bottom] bottom wall
   *[back] back
 }
drawing-row = { $wall }, row { $row }
drawing-distances = Between entries with the same conductors
drawing-least = least { $figure }
drawing-measured = { $figure } measured
drawing-too-close = too close
drawing-more = { $count ->
    [one] One more is in the answer.
   *[other] { $count } more are in the answer.
 }
drawing-pulls = Pulls
drawing-pulls-of = { $kind ->
    [straight] Straight
    [angle] Angle
   *[u] U
 }
drawing-spliced = spliced
drawing-by-volume = not sized by length
drawing-entries = Entries
drawing-from = { $figure } { $axis ->
    [width] from the left
    [height] from the bottom
   *[depth] from the back
 }
