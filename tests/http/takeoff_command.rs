//! The commands `takeoff` and `demo`, without a service.

use crate::process::run;
use crate::support::good;
use elbowroom::takeoff::demo::Job;
use serde_json::{Value, json};
use std::fs;
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};

pub fn text(output: &[u8]) -> String {
    String::from_utf8(output.to_vec()).unwrap()
}

pub fn job(boxes: u64) -> String {
    Job::new(boxes, 1).map(|line| line + "\n").collect()
}

/// A file in a folder of its own, taken away when it is dropped.
pub struct File(PathBuf);

impl File {
    pub fn new(name: &str, content: &str) -> Self {
        static NEXT: AtomicUsize = AtomicUsize::new(0);
        let number = NEXT.fetch_add(1, Ordering::Relaxed);
        let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR"))
            .join(format!("takeoff-{}-{number}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let file = folder.join(name);
        fs::write(&file, content).unwrap();
        Self(file)
    }

    pub fn path(&self) -> &str {
        self.0.to_str().unwrap()
    }
}

impl Drop for File {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(self.0.parent().unwrap());
    }
}

pub const TABLE: &str = "Ref,Box,Cables,Devices\n\
                     exam-1,square 4x2-1/8,2 x 12-2 NM-B w/g,receptacle 12\n\
                     \n\
                     exam-2,4x1-1/2,2 x 12-2 NM-B w/g,receptacle 12\n\
                     hall-1,3x2x2,2 x 12-2 NM-B w/g,receptacle 12\n\
                     hall-2,,2 x 12-2 NM-B w/g,receptacle 12\n";

pub fn document() -> String {
    let mut items: Vec<Value> = job(30).lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let wrong =
        json!({"check": "outlet_box_fill", "request": {"reference": "x-1", "contents": {"devises": []}}});
    items.extend([wrong, json!(7)]);
    serde_json::to_string_pretty(&json!({"items": items})).unwrap()
}

#[test]
fn the_demo_is_a_takeoff_that_is_answered_whole() {
    let made = run(&["demo", "--boxes", "60", "--seed", "1"], "");
    assert!(made.status.success());
    assert_eq!(text(&made.stdout), job(60));
    let answered = run(&["takeoff", "-"], &text(&made.stdout));
    let report = text(&answered.stdout);
    for part in
        ["Complete  yes", "Lines     65", "Bill", "square-4x2-1/8", "Places", "lobby", "Outlet-box fill"]
    {
        assert!(report.contains(part), "{part}: {report}");
    }
    // no bar in a pipe, and no key reaches a reader
    assert_eq!(text(&answered.stderr), "");
    for part in ["{", "finding-", "not_determined", "outlet-volume."] {
        assert!(!report.contains(part), "{part}: {report}");
    }
}

#[test]
fn the_exit_status_says_what_the_lines_come_to() {
    let line = |enclosure: Option<Value>| {
        let mut request = good();
        request.as_object_mut().unwrap().shift_remove("enclosure");
        if let Some(enclosure) = enclosure {
            request["enclosure"] = enclosure;
        }
        json!({"check": "outlet_box_fill", "request": request}).to_string()
    };
    let (fits, sized) = (line(Some(json!({"standard": "square-4x2-1/8"}))), line(None));
    let open = line(Some(json!({"material": "nonmetallic"})));
    let short = line(Some(json!({"standard": "device-3x2x1-1/2"})));
    let status = |lines: &[&str]| run(&["takeoff", "-"], &lines.join("\n")).status.code();
    assert_eq!(status(&[]), Some(0));
    assert_eq!(status(&[&fits, &sized]), Some(0));
    assert_eq!(status(&[&fits, &open]), Some(2));
    assert_eq!(status(&[&open, &short]), Some(1));
    assert_eq!(status(&[&fits, &short, "{"]), Some(65));
    assert_eq!(run(&["takeoff", "-", "--form", "json"], "{").status.code(), Some(64));
    assert_eq!(run(&["takeoff", "-", "--form", "csv"], "colour\n").status.code(), Some(64));
    assert_eq!(run(&["takeoff", "-", "--as", "yaml"], "").status.code(), Some(64));
    assert_eq!(run(&["takeoff", "/nowhere/takeoff.csv"], "").status.code(), Some(66));
    assert_eq!(run(&["takeoff", "/"], "").status.code(), Some(66));
}

#[test]
fn the_form_follows_from_the_name_of_the_file() {
    let table = File::new("rooms.csv", TABLE);
    let output = run(&["takeoff", table.path(), "--as", "ndjson"], "");
    let records: Vec<Value> =
        text(&output.stdout).lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(records.len(), 5);
    assert_eq!(records[1]["line"], 4);
    assert_eq!(
        records[4]["summary"]["lines"],
        json!({"received": 6, "answered": 3, "refused": 1, "blank": 1, "header": 1})
    );
    let document = File::new("rooms.json", &document());
    let output = run(&["takeoff", document.path(), "--as", "json"], "");
    let answer: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!(answer["answers"].as_array().unwrap().len(), 34);
    assert_eq!(output.status.code(), Some(65));
}
