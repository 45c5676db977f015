//! Rows as people type them, and what is refused because it could mean two things.

use super::*;
use serde_json::json;

/// Reads a table of one row, given as (column, cell).
fn row(cells: &[(&str, &str)]) -> Result<Row, RowFaults> {
    let quoted = |text: &str| format!("\"{}\"", text.replace('"', "\"\""));
    let header: Vec<String> = cells.iter().map(|(column, _)| quoted(column)).collect();
    let line: Vec<String> = cells.iter().map(|(_, cell)| quoted(cell)).collect();
    Columns::read(&header.join(",")).unwrap().row(&line.join(","))
}

fn request(cells: &[(&str, &str)]) -> Value {
    let row = row(cells).unwrap_or_else(|faults| panic!("{cells:?}: {faults:?}"));
    serde_json::from_slice(&row.request).unwrap()
}

/// The faults of a row as (column, code, accepted).
fn faults(cells: &[(&str, &str)]) -> Vec<(String, FaultCode, Vec<String>)> {
    let faults = row(cells).expect_err("a refusal").faults;
    faults.iter().map(|fault| (fault.at.to_string(), fault.code, fault.accepted.clone())).collect()
}

#[test]
fn sizes_and_trade_sizes_are_read_as_people_type_them() {
    for size in ["12", "#12", "12 AWG", "12awg", "No. 12", "# 12"] {
        let found = request(&[("conductors", &format!("4 x {size}"))]);
        assert_eq!(
            found["contents"]["conductors"],
            json!([{"size": "12 AWG", "role": "terminated", "count": 4}]),
            "{size}"
        );
    }
    for size in ["1/2", "0.5", ".5", "½", "1/2\"", "1/2 in", "16 mm", "MD 16"] {
        let found = request(&[("raceway", "EMT"), ("trade size", size), ("conductors", "12 THHN")]);
        assert_eq!(found["raceway"], json!({"kind": "EMT", "trade_size": "1/2"}), "{size}");
    }
    for size in ["1-1/4", "1 1/4", "1.25", "1¼"] {
        let found = request(&[("conduit", "rigid"), ("trade_size", size), ("conductors", "12 THHN")]);
        assert_eq!(found["raceway"], json!({"kind": "RMC", "trade_size": "1-1/4"}), "{size}");
    }
}

#[test]
fn a_whole_box_is_read() {
    let found = request(&[
        ("Ref", "hall-3"),
        ("Box", "4\" square 2 1/8\" deep"),
        ("Ring volume", "4.5 cu. in."),
        ("Cables", "2 x 12-2 NM-B w/g; #14/3 MC no ground + 6-3 NM w/ #10 g"),
        ("Conductors", "2 x 12 spliced, 14 pigtail"),
        ("Grounds", "12 isolated"),
        ("Devices", "GFCI receptacle 12; 2 x 3-way switch #14; dimmer"),
        ("Clamps", "yes"),
        ("Fittings", "stud; 2 x hickey"),
        ("Edition", "2020"),
    ]);
    let expected = json!({
        "reference": "hall-3",
        "edition": "2020",
        "enclosure": {
            "standard": "square-4x2-1/8",
            "sections": [{"kind": "plaster_ring", "marked_volume": 4.5}]
        },
        "contents": {
            "cables": [
                {"kind": "NM-B", "size": "12 AWG", "conductors": 2, "grounding": "12 AWG", "count": 2},
                {"kind": "MC", "size": "14 AWG", "conductors": 3, "grounding": "none"},
                {"kind": "NM-B", "size": "6 AWG", "conductors": 3, "grounding": "10 AWG"}
            ],
            "conductors": [
                {"size": "12 AWG", "role": "spliced", "count": 2},
                {"size": "14 AWG", "role": "stays_inside"}
            ],
            "grounding": [{"size": "12 AWG", "kind": "isolated"}],
            "devices": [
                {"kind": "protective_device", "largest_conductor": "12 AWG"},
                {"kind": "switch", "largest_conductor": "14 AWG", "count": 2},
                {"kind": "control"}
            ],
            "clamps": [{"kind": "internal"}],
            "support_fittings": [{"kind": "stud"}, {"kind": "hickey", "count": 2}]
        }
    });
    assert_eq!(found, expected);
    crate::json::read_value::<crate::checks::outlet_fill::OutletFillRequest>(found).unwrap();
}

#[test]
fn a_whole_raceway_is_read() {
    let found = request(&[
        ("raceway", "schedule 40 pvc"),
        ("trade size", "2"),
        ("length", "18\""),
        ("nipple", "yes"),
        ("insulation", "xhhw-2"),
        (
            "conductors",
            "3 x 1/0; 250 kcmil THHN/THWN-2; 1 x 8 bare stranded; 2 x 4 RHW without covering; 2 x 4 XHHW compact",
        ),
    ]);
    let expected = json!({
        "raceway": {"kind": "PVC-40", "trade_size": "2", "length": 18.0, "nipple": true},
        "conductors": [
            {"size": "1/0 AWG", "insulation": "XHHW-2", "count": 3},
            {"size": "250 kcmil", "insulation": "THHN"},
            {"covering": "without", "size": "4 AWG", "insulation": "RHW", "count": 2},
            {"size": "4 AWG", "insulation": "XHHW", "compact": true, "count": 2}
        ],
        "bare_conductors": [{"size": "8 AWG", "construction": "stranded", "count": 1}]
    });
    assert_eq!(found, expected);
    crate::json::read_value::<crate::checks::raceway_fill::RacewayFillRequest>(found).unwrap();
}

#[test]
fn a_conductor_called_ground_is_one_for_grounding() {
    let found = request(&[
        ("raceway", "LFMC"),
        ("trade size", "3/8"),
        ("conductors", "3 x 12 THHN + 1 x 12 THHN ground"),
    ]);
    let expected = json!([
        {"size": "12 AWG", "insulation": "THHN", "count": 3},
        {"size": "12 AWG", "insulation": "THHN", "equipment_grounding": true, "count": 1}
    ]);
    assert_eq!(found["conductors"], expected);
}

#[test]
fn what_could_mean_two_things_is_refused_with_both() {
    let ambiguous = |cells: &[(&str, &str)]| {
        let found = faults(cells);
        assert_eq!(found.len(), 1, "{cells:?}: {found:?}");
        let (at, code, accepted) = found.into_iter().next().unwrap();
        assert_eq!(code, FaultCode::Ambiguous, "{cells:?}");
        assert!(accepted.len() >= 2, "{cells:?}: {accepted:?}");
        (at, accepted)
    };
    assert_eq!(
        ambiguous(&[("box", "4 x 1-1/2")]),
        ("/box".to_owned(), vec!["octagonal-4x1-1/2".to_owned(), "square-4x1-1/2".to_owned()])
    );
    assert_eq!(ambiguous(&[("box", "4 square")]).1.len(), 3);
    // a cable may come with a grounding conductor or without, and a large one with a smaller one
    assert_eq!(ambiguous(&[("cables", "12-2 NM-B")]).0, "/cables");
    assert_eq!(ambiguous(&[("cables", "6-3 NM-B w/g")]).0, "/cables");
    assert_eq!(ambiguous(&[("raceway", "PVC"), ("conductors", "12 THHN")]).0, "/raceway");
    assert_eq!(ambiguous(&[("raceway", "EMT"), ("conductors", "3 x 12")]).0, "/conductors");
    assert_eq!(ambiguous(&[("raceway", "EMT"), ("conductors", "8 bare")]).0, "/conductors");
    assert_eq!(ambiguous(&[("marked_volume", "20,3")]).1, ["20.3", "203"]);
}

#[test]
fn what_is_not_understood_is_refused_with_its_column() {
    let codes = |cells: &[(&str, &str)]| -> Vec<(String, FaultCode)> {
        faults(cells).into_iter().map(|(at, code, _)| (at, code)).collect()
    };
    let one = |at: &str, code| vec![(at.to_owned(), code)];
    use FaultCode::{
        Conflict, MissingMember, UnknownConductorSize, UnknownStandardBox, UnknownTradeSize, UnknownValue,
    };
    // what a spreadsheet makes of 1/2
    for date in ["2-Jan", "1-Feb", "1/2/2026", "44928", "16", "7"] {
        let found = codes(&[("raceway", "EMT"), ("trade size", date), ("conductors", "12 THHN")]);
        assert_eq!(found, one("/trade_size", UnknownTradeSize), "{date}");
    }
    assert_eq!(codes(&[("conductors", "4 x 13")]), one("/conductors", UnknownConductorSize));
    assert_eq!(codes(&[("box", "5x5x2")]), one("/box", UnknownStandardBox));
    assert_eq!(codes(&[("cables", "NM-B w/g")]), one("/cables", UnknownValue));
    assert_eq!(codes(&[("devices", "fridge 12")]), one("/devices", UnknownValue));
    assert_eq!(codes(&[("gangs", "1.5")]), one("/gangs", UnknownValue));
    assert_eq!(codes(&[("check", "boxes")]), one("/check", UnknownValue));
    assert_eq!(codes(&[("units", "si"), ("marked_volume", "20 in3")]), one("/marked_volume", Conflict));
    assert_eq!(
        codes(&[("raceway", "EMT"), ("box", "4x4x2-1/8"), ("conductors", "12 THHN")]),
        one("/box", Conflict)
    );
    assert_eq!(codes(&[("trade size", "1/2"), ("conductors", "12 THHN")]), one("/raceway", MissingMember));
    assert_eq!(
        codes(&[("box", "hat"), ("clamps", "perhaps"), ("material", "wood")]),
        [("/box", UnknownStandardBox), ("/material", UnknownValue), ("/clamps", UnknownValue)]
            .map(|(at, code)| (at.to_owned(), code))
    );
    let refused = row(&[("reference", "a-1"), ("box", "hat")]).unwrap_err();
    assert_eq!(refused.reference.as_deref(), Some("a-1"));
}

#[test]
fn lines_that_do_not_fit_the_header_are_refused() {
    let columns = Columns::read("\u{feff}reference,box").unwrap();
    assert!(columns.row("a,").is_ok());
    assert!(columns.row("a").is_ok());
    assert!(columns.row("a,4x4x2-1/8,,").is_ok());
    for bad in ["a,4x4x2-1/8,b", "a,\"4x4x2-1/8"] {
        assert!(columns.row(bad).is_err(), "{bad}");
    }
}

#[test]
fn a_header_is_read_in_any_spelling_and_every_unknown_name_is_said() {
    let columns = |header| Columns::read(header);
    assert_eq!(columns("Trade Size,RACEWAY"), columns("trade_size,raceway"));
    assert_eq!(columns("trade-size"), columns(" trade size "));
    assert_eq!(
        columns("box,colour,Box,weight"),
        Err(vec![
            HeaderFault::Unknown("colour".to_owned()),
            HeaderFault::Twice("Box".to_owned()),
            HeaderFault::Unknown("weight".to_owned())
        ])
    );
    for column in Column::ALL {
        assert_eq!(Column::named(column.name()), Some(*column));
        assert_eq!(*column.pattern(), format!("/{}", column.name()));
        assert!(!(column.is_of_box() && column.is_of_raceway()));
    }
}

#[test]
fn a_place_of_the_request_leads_back_to_its_column() {
    let row = row(&[
        ("box", "3x2x3-1/2"),
        ("gangs", "2"),
        ("extension_volume", "3"),
        ("cables", "12-2 w/g; 14-2 w/g"),
    ]);
    let row = row.unwrap();
    for (place, column) in [
        ("/enclosure/gangs", "/gangs"),
        ("/enclosure/standard", "/box"),
        ("/enclosure/sections/0/marked_volume", "/extension_volume"),
        ("/contents/cables/1/conductors", "/cables"),
        ("/contents", ""),
        ("/enclosure/gangsters", ""),
    ] {
        assert_eq!(row.column_of(place), column, "{place}");
    }
}
