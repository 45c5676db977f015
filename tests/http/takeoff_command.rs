//! The commands `takeoff` and `demo`: without a service, and by one whose connections fail.

use crate::access::key;
use crate::process::{Served, program, run};
use crate::support::good;
use elbowroom::takeoff::demo::Job;
use serde_json::{Value, json};
use std::fs;
use std::io::{Read, Write};
use std::net::{Shutdown, SocketAddr, TcpListener, TcpStream};
use std::path::PathBuf;
use std::process::Output;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex};
use std::thread;

fn text(output: &[u8]) -> String {
    String::from_utf8(output.to_vec()).unwrap()
}

fn job(boxes: u64) -> String {
    Job::new(boxes, 1).map(|line| line + "\n").collect()
}

/// A file in a folder of its own, taken away when it is dropped.
struct File(PathBuf);

impl File {
    fn new(name: &str, content: &str) -> Self {
        static NEXT: AtomicUsize = AtomicUsize::new(0);
        let number = NEXT.fetch_add(1, Ordering::Relaxed);
        let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR"))
            .join(format!("takeoff-{}-{number}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let file = folder.join(name);
        fs::write(&file, content).unwrap();
        Self(file)
    }

    fn path(&self) -> &str {
        self.0.to_str().unwrap()
    }
}

impl Drop for File {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(self.0.parent().unwrap());
    }
}

const TABLE: &str = "Ref,Box,Cables,Devices\n\
                     exam-1,square 4x2-1/8,2 x 12-2 NM-B w/g,receptacle 12\n\
                     \n\
                     exam-2,4x1-1/2,2 x 12-2 NM-B w/g,receptacle 12\n\
                     hall-1,3x2x2,2 x 12-2 NM-B w/g,receptacle 12\n\
                     hall-2,,2 x 12-2 NM-B w/g,receptacle 12\n";

fn document() -> String {
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
    // a scheme that nothing is posted by
    assert_eq!(run(&["takeoff", "-", "--to", "ftp://127.0.0.1"], &fits).status.code(), Some(64));
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

/// What a service answers is what is evaluated here, in every form.
#[test]
fn a_service_answers_the_same() {
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    let url = format!("http://{}", served.address);
    let lines = format!("{}\n{{\n", job(60));
    let files = [File::new("a.ndjson", &lines), File::new("b.csv", TABLE), File::new("c.json", &document())];
    for file in &files {
        for form in ["text", "json", "ndjson", "csv"] {
            let here = run(&["takeoff", file.path(), "--as", form], "");
            let there = run(&["takeoff", file.path(), "--as", form, "--to", &url], "");
            assert_eq!(text(&there.stderr), "", "{} as {form}", file.path());
            assert!(there.stdout == here.stdout, "{} as {form}: {}", file.path(), text(&there.stdout));
            assert_eq!(there.status.code(), here.status.code());
        }
    }
}

/// A go-between on loopback that does to each connection what a plan says, and to all after the last nothing.
struct Between {
    address: SocketAddr,
    connections: Arc<AtomicUsize>,
}

#[derive(Clone, Copy)]
enum Fate {
    /// The connection is cut after so many bytes of the answer.
    Cut(usize),
    /// The connection is answered with 503.
    Busy,
}

impl Between {
    fn start(service: SocketAddr, plan: Vec<Fate>) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").unwrap();
        let address = listener.local_addr().unwrap();
        let connections = Arc::new(AtomicUsize::new(0));
        let counted = Arc::clone(&connections);
        thread::spawn(move || {
            for client in listener.incoming() {
                let fate = plan.get(counted.fetch_add(1, Ordering::SeqCst)).copied();
                let Ok(client) = client else { return };
                thread::spawn(move || serve(client, service, fate));
            }
        });
        Self { address, connections }
    }

    fn url(&self) -> String {
        format!("http://{}", self.address)
    }

    fn connections(&self) -> usize {
        self.connections.load(Ordering::SeqCst)
    }
}

fn serve(mut client: TcpStream, service: SocketAddr, fate: Option<Fate>) {
    if let Some(Fate::Busy) = fate {
        let mut head = [0; 1024];
        let _ = client.read(&mut head);
        let busy = "HTTP/1.1 503 Service Unavailable\r\ncontent-length: 0\r\nretry-after: 0\r\nconnection: close\r\n\r\n";
        let _ = client.write_all(busy.as_bytes());
        return;
    }
    let mut upstream = TcpStream::connect(service).unwrap();
    let (mut from, mut to) = (client.try_clone().unwrap(), upstream.try_clone().unwrap());
    thread::spawn(move || {
        let _ = std::io::copy(&mut from, &mut to);
        let _ = to.shutdown(Shutdown::Write);
    });
    let mut left = match fate {
        Some(Fate::Cut(bytes)) => bytes,
        _ => usize::MAX,
    };
    let mut piece = [0; 4096];
    while left > 0 {
        let most = piece.len().min(left);
        match upstream.read(&mut piece[..most]) {
            Ok(length @ 1..) if client.write_all(&piece[..length]).is_ok() => left -= length,
            _ => break,
        }
    }
    let _ = client.shutdown(Shutdown::Both);
    let _ = upstream.shutdown(Shutdown::Both);
}

fn through(between: &Between, file: &File, form: &str) -> Output {
    run(&["takeoff", file.path(), "--as", form, "--to", &between.url()], "")
}

#[test]
fn a_takeoff_goes_on_with_the_first_unanswered_line_when_a_connection_fails() {
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    let lines = format!("{}\n\n{{\n{}", job(100), job(50));
    // before the head of the answer, in the middle of it, in the middle of records
    let plan =
        vec![Fate::Busy, Fate::Cut(0), Fate::Cut(60), Fate::Cut(50_000), Fate::Cut(400_000), Fate::Cut(1)];
    for (name, content, forms) in [
        ("a.ndjson", lines.as_str(), &["ndjson", "json", "csv", "text"][..]),
        ("c.json", &document(), &["json"]),
        ("b.csv", TABLE, &["csv"]),
    ] {
        let file = File::new(name, content);
        for form in forms {
            let between = Between::start(served.address, plan.clone());
            let here = run(&["takeoff", file.path(), "--as", form], "");
            let there = through(&between, &file, form);
            assert_eq!(text(&there.stderr), "", "{name} as {form}");
            assert!(there.stdout == here.stdout, "{name} as {form}: {}", text(&there.stdout));
            assert_eq!(there.status.code(), here.status.code());
            assert!(between.connections() > 3, "{}", between.connections());
        }
    }
}

#[test]
fn a_service_that_never_answers_is_given_up() {
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    let file = File::new("a.ndjson", &job(12));
    let between = Between::start(served.address, vec![Fate::Cut(0); 50]);
    let output = through(&between, &file, "ndjson");
    assert_eq!(output.status.code(), Some(69), "{}", text(&output.stderr));
    assert_eq!((text(&output.stderr).lines().count(), between.connections()), (1, 5));
    // what is wrong with the whole is not tried again
    let output = run(&["takeoff", file.path(), "--to", &format!("{}/nowhere", between.url())], "");
    assert_eq!(output.status.code(), Some(69));
    let output = run(&["takeoff", file.path(), "--to", &format!("http://{}/nowhere", served.address)], "");
    assert_eq!(output.status.code(), Some(64), "{}", text(&output.stderr));
}

#[test]
fn a_key_comes_from_a_file_or_the_environment_and_is_shown_nowhere() {
    let (token, lines) = key("estimating", &["takeoff", "outlet_box_fill", "raceway_fill"], None, None);
    let keys = File::new("keys.toml", &lines);
    let served = Served::start(&["--bind", "127.0.0.1:0", "--keys", keys.path()]);
    let url = format!("http://{}", served.address);
    let file = File::new("a.ndjson", &job(12));
    let post = |key_file: Option<&File>, variable: Option<&str>| {
        let mut program = program(&["takeoff", file.path(), "--as", "ndjson", "--to", &url]);
        program.args(key_file.into_iter().flat_map(|file| ["--key-file", file.path()]));
        program.envs(variable.map(|key| ("ELBOWROOM_KEY", key)));
        let output = program.output().unwrap();
        let told = text(&output.stderr) + &text(&output.stdout);
        assert!(!told.contains(&token) && !told.contains("sesame"), "{told}");
        (output.status.code().unwrap(), told)
    };
    let right = File::new("key", &format!("{token}\n"));
    let here = run(&["takeoff", file.path(), "--as", "ndjson"], "").status.code().unwrap();
    assert_eq!(post(Some(&right), None).0, here);
    assert_eq!(post(None, Some(&token)).0, here);
    // the file outweighs the environment
    assert_eq!(post(Some(&right), Some("sesame")).0, here);
    for (file, variable, part) in [
        (None, None, "401"),
        (None, Some("sesame"), "401"),
        (None, Some("open sesame"), "the key is none"),
        (Some(File::new("key", "\n")), None, "the key is none"),
    ] {
        let (status, told) = post(file.as_ref(), variable);
        assert!(status == 64 && told.contains(part), "{status}: {told}");
    }
    let mut program = program(&["takeoff", file.path(), "--to", &url, "--key-file", "/nowhere/key"]);
    let output = program.output().unwrap();
    assert!(output.status.code() == Some(64) && text(&output.stderr).contains("/nowhere/key"));
}

/// Lines are sent as they come, and their answers given at once.
#[test]
fn standard_input_is_posted_line_by_line() {
    use std::io::{BufRead, BufReader};
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    let url = format!("http://{}", served.address);
    for to in [&["takeoff", "-", "--as", "ndjson"][..], &["takeoff", "-", "--as", "ndjson", "--to", &url]] {
        let mut child = program(to).spawn().unwrap();
        let (mut input, output) = (child.stdin.take().unwrap(), child.stdout.take().unwrap());
        let output = Mutex::new(BufReader::new(output));
        for line in job(12).lines() {
            writeln!(input, "{line}").unwrap();
            input.flush().unwrap();
            let mut answer = String::new();
            output.lock().unwrap().read_line(&mut answer).unwrap();
            let answer: Value = serde_json::from_str(&answer).unwrap();
            let item: Value = serde_json::from_str(line).unwrap();
            assert_eq!(answer["reference"], item["request"]["reference"]);
        }
        drop(input);
        assert!(child.wait().unwrap().code().is_some_and(|code| code < 3));
    }
}
