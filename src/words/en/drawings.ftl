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
