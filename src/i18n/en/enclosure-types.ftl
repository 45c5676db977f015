## Enclosure types

rule-enclosure-type-selection = An enclosure is of a type that the table rates for every condition where it stands.
    .title = Enclosure types
rule-enclosure-type-scope = The table is for enclosures of switchboards, panelboards, meter sockets, enclosed switches, controllers and the like, up to 1000 V. It says nothing of what arises inside: condensation, icing, corrosion, contamination.
    .title = What the table of enclosure types covers
rule-enclosure-type-moisture = No row of the table says dry, damp or wet. Indoors, damp is taken as falling liquids and light splashing, wet as hosedown and splashing water; outdoors either is rain, snow and sleet.
    .title = Dry, damp and wet places
rule-enclosure-type-indoor-only = From 2023 on some enclosures of type 4X are marked for use indoors only. Those do not stand outdoors.
    .title = Type 4X for indoors only
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
finding-indoor-type-outdoors = Type { $type } is for indoors: the table rates it for nothing outdoors, and something is named that it would have to stand there.
finding-types-that-serve = Types rated for every condition here: { $types }.
finding-no-type-serves = No type is rated for all of these conditions together. Change the place, protect it, or ask for equipment listed for it.
finding-box-not-in-table = The table of type numbers judges no boxes: none is asked of an outlet, device, pull or junction box: 314.15 decides what moisture it stands. Ask it of the mounting of the box.
finding-not-indoor-only = The 4X enclosure is not marked for indoors only, so it may stand outdoors.
finding-indoor-only = The 4X enclosure is marked for indoors only, and stands outdoors.
finding-indoor-only-not-in-edition = The enclosure is marked for indoors only, and stands outdoors. This edition has no such mark in its table, so its numbers do not approve it: its listing decides.
finding-indoor-only-open = Some 4X enclosures are marked for indoors only. Say whether this one is: it stands outdoors.
finding-place-moisture-no-matter = The type stands falling liquids and hosedown too, so it does not matter whether the place is dry, damp or wet.
fault-indoor-only-without-4x = Only enclosures of type 4X are marked for indoors only, and none of that type is named.
finding-place-moisture-open = Say whether the place is dry, damp or wet. What follows is for a dry place.
finding-moisture-taken-as = This word for the place was taken as { $row ->
    [indoor_hosedown] hosedown and splashing water
   *[indoor_falling_liquids] falling liquids and light splashing
 }: the table has no dry, damp or wet. Name the conditions instead where that does not fit.
finding-enclosure-scope = The table is for enclosures of panelboards, meter sockets, enclosed switches, controllers and the like, up to 1000 V. An outlet or junction box in a damp or wet place needs its own listing for it.
finding-enclosure-inside = No type number speaks of what arises inside an enclosure: condensation, icing, corrosion, contamination.
finding-enclosure-in-hazardous-location = In a hazardous (classified) location the table of enclosure types does not decide. See Articles 500 to 506 for the class, division or zone, and group.
finding-hazardous-open = An ordinary type number says nothing in a hazardous (classified) location. Say whether the place is one.

because-hazardous-location = The location is hazardous (classified).
because-ordinary-location = The location is not hazardous (classified).
because-box-not-in-table = The enclosure is a box: the table of enclosure types does not judge it.
because-water-named = The conditions name the water that the enclosure must stand.

fault-condition-not-at-location = The table has no row for { $condition } at an { $location } place. Choose one that it has.
