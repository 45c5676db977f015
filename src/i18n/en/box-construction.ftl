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
rule-box-construction-cover = A metal cover is as thick as its box, or is listed for the purpose.
    .title = Thickness of metal covers
rule-box-construction-cover-material = A metal cover is of the same material as its box, or is lined with at least 1/32 in (0.79 mm) of firmly attached insulation, or is listed for the purpose.
    .title = Material of metal covers

finding-walls-thick-enough = The walls are { $given } thick; at least { $limit } are required.
finding-walls-too-thin = The walls are only { $given } thick; at least { $limit } are required.
finding-wall-thickness-open = The walls must be at least { $limit } thick. Say how thick they are.
finding-thickness-and-volume-open = How thick walls of sheet steel must be goes by the volume of the box. Give the thickness of the walls, and the volume.
finding-volume-decides-thickness = Whether walls of { $given } suffice goes by the volume of the box: the thicker sheet is for boxes of up to 100 in³ (1650 cm³). Give the volume.
finding-listed-as-equal = The box is listed as equal in strength, or is a listed short-radius body: no thickness is asked.
finding-listing-excepts-walls = The box is listed, and the walls of a listed box may be thinner: its listing shows that it is as strong.
finding-listing-evidences-walls = The box is listed, and boxes are listed with walls that are thick enough.
finding-listing-evidences-provision = The box is listed, and metal boxes are listed with a means to connect an equipment grounding conductor.
finding-grounding-provision = The box has a means to connect an equipment grounding conductor.
finding-no-grounding-provision = The box has no means to connect an equipment grounding conductor; every metal box needs one.
finding-grounding-provision-open = A metal box needs a means to connect an equipment grounding conductor. Say whether it has one.
finding-cover-listed = The metal cover is listed for the purpose.
finding-cover-thick-enough = The metal cover is { $given } thick, at least the { $limit } of its box.
finding-cover-too-thin = The metal cover is only { $given } thick; it must have the { $limit } of its box or be listed, and it is not.
finding-cover-lined = The metal cover is lined with { $given } of insulation; at least { $limit } is required where it is of another material than its box.
finding-cover-not-lined = The metal cover is of another material than its box and is not listed, and its lining of { $given } is less than the { $limit } required.
finding-cover-same-material = The metal cover is of the material of its box.
finding-cover-material-open = A metal cover must be of the material of its box, or lined with insulation, or listed. What was given does not decide it yet.
finding-cover-thickness-open = A metal cover must be as thick as its box, or listed. Give both thicknesses, or say that it is listed.
finding-cover-listed-open = The metal cover is { $given } thick and its box { $limit }; only a listed cover may be thinner than its box. Say whether it is listed.
finding-thin-walls-listed-open = The walls are { $given } thick, less than the { $limit } required, which a box listed as equal in strength, or a listed short-radius body, may be. Say whether it is one.

because-nonmetallic-box = The box is not metal.
because-nonmetallic-cover = The cover is not metal.

fault-listed-and-not = listed says that the box is not listed, and listed_as_equal that it is. Leave one of them out.
fault-listed-without-provision = A metal box is listed with a means to connect an equipment grounding conductor, and this says that there is none. Say which of them is right, or read the listing as no evidence.
fault-listed-with-thin-walls = These walls are thinner than those of any box with this listing. Say which of them is right, or read the listing as no evidence.
fault-listed-thin-walls-of-unsaid-volume = Walls as thin as these are thinner than those of any listed box over 100 in³ (1650 cm³). Say the volume of the box.

point-listing_evidences_construction = Is the listing of a metal box evidence of the thickness of its walls and of its means to connect a grounding conductor, as far as nobody measured or looked for them?
