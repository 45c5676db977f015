//! The command `takeoff --to`: the answers of a service, over connections that fail, with a key.

use crate::access::key;
use crate::process::{Served, program, run};
use crate::takeoff_command::{File, TABLE, document, job, text};
use serde_json::Value;
use std::io::{Read, Write};
use std::net::{Shutdown, SocketAddr, TcpListener, TcpStream};
use std::process::Output;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Arc, Mutex};
use std::thread;

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
    // what is wrong with the whole is not tried again, nor is a scheme that nothing is posted by
    assert_eq!(run(&["takeoff", file.path(), "--to", "ftp://127.0.0.1"], "").status.code(), Some(64));
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
        (None, Some("open sesame"), "the key is not valid"),
        (Some(File::new("key", "\n")), None, "the key is not valid"),
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
