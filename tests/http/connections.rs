//! What a connection may take up: silence, slowness, number.

use crate::process::{Served, program};
use crate::support::{FILL, good};
use std::io::{Read, Write};
use std::net::TcpStream;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};
use std::{fs, thread};

const LOOPBACK: [&str; 2] = ["--bind", "127.0.0.1:0"];

fn serve(arguments: &[&str]) -> Served {
    Served::start(&[&LOOPBACK[..], arguments].concat())
}

fn get(served: &Served, path: &str) -> String {
    served.ask(&format!("GET {path} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n"))
}

/// The value of a line of `/metrics`.
fn metric(served: &Served, line: &str) -> u64 {
    let page = get(served, "/metrics");
    let found =
        page.lines().find_map(|text| text.strip_prefix(line)).unwrap_or_else(|| panic!("{line}: {page}"));
    found.trim().parse().unwrap()
}

/// Sends text a byte at a time until the other end has had enough; says what came back and how long it took.
fn trickle(served: &Served, text: &str, pause: Duration) -> (String, Duration) {
    let mut stream = TcpStream::connect(served.address).unwrap();
    let mut reading = stream.try_clone().unwrap();
    let start = Instant::now();
    let reader = thread::spawn(move || {
        let mut answer = Vec::new();
        // a connection that was reset has been read to its end
        let _ = reading.read_to_end(&mut answer);
        (String::from_utf8_lossy(&answer).into_owned(), start.elapsed())
    });
    for byte in text.as_bytes() {
        if stream.write_all(&[*byte]).is_err() || reader.is_finished() {
            break;
        }
        thread::sleep(pause);
    }
    reader.join().unwrap()
}

#[test]
fn a_caller_that_sends_its_head_byte_by_byte_is_cut_off() {
    let served = serve(&["--header-timeout", "600ms"]);
    let head = format!("GET /{} HTTP/1.1\r\nhost: x\r\n\r\n", "a".repeat(500));
    let (answer, took) = trickle(&served, &head, Duration::from_millis(20));
    assert_eq!(answer, "");
    assert!((Duration::from_millis(500)..Duration::from_secs(3)).contains(&took), "{took:?}");
    // and one that sends nothing at all
    let (answer, took) = trickle(&served, "", Duration::ZERO);
    assert_eq!(answer, "");
    assert!((Duration::from_millis(500)..Duration::from_secs(3)).contains(&took), "{took:?}");
}

#[test]
fn a_connection_that_stays_idle_after_an_answer_is_closed() {
    let served = serve(&["--header-timeout", "400ms"]);
    let mut stream = TcpStream::connect(served.address).unwrap();
    let start = Instant::now();
    stream.write_all(b"GET /health/live HTTP/1.1\r\nhost: x\r\n\r\n").unwrap();
    let mut answer = String::new();
    stream.read_to_string(&mut answer).unwrap();
    assert!(answer.starts_with("HTTP/1.1 200"));
    assert!((Duration::from_millis(300)..Duration::from_secs(3)).contains(&start.elapsed()));
}

#[test]
fn a_caller_that_sends_its_body_byte_by_byte_is_told_and_cut_off() {
    let served = serve(&["--body-timeout", "600ms"]);
    let body = good().to_string();
    let mut stream = TcpStream::connect(served.address).unwrap();
    let head = format!(
        "POST {FILL} HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: {}\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes()).unwrap();
    let mut reading = stream.try_clone().unwrap();
    let start = Instant::now();
    let reader = thread::spawn(move || {
        let mut answer = Vec::new();
        let _ = reading.read_to_end(&mut answer);
        (String::from_utf8_lossy(&answer).into_owned(), start.elapsed())
    });
    for byte in body.as_bytes() {
        if stream.write_all(&[*byte]).is_err() || reader.is_finished() {
            break;
        }
        thread::sleep(Duration::from_millis(20));
    }
    let (answer, took) = reader.join().unwrap();
    assert!(
        answer.starts_with("HTTP/1.1 408") && answer.contains("/v1/problems/request-timeout"),
        "{answer}"
    );
    assert!(took < Duration::from_secs(3), "{took:?}");
}

#[test]
fn more_connections_than_there_is_room_for_are_told_so() {
    let served = serve(&["--max-connections", "2", "--header-timeout", "5s"]);
    let held: Vec<TcpStream> = (0..2).map(|_| TcpStream::connect(served.address).unwrap()).collect();
    thread::sleep(Duration::from_millis(100));
    let answer = get(&served, "/health/live");
    assert!(answer.starts_with("HTTP/1.1 503") && answer.contains("/v1/problems/overloaded"), "{answer}");
    assert!(answer.contains("retry-after: 1"), "{answer}");
    drop(held);
    thread::sleep(Duration::from_millis(100));
    assert!(get(&served, "/health/live").starts_with("HTTP/1.1 200"));
    assert_eq!(metric(&served, "elbowroom_rejections_total{reason=\"connections\"}"), 1);
}

#[test]
fn a_caller_that_does_not_read_is_given_up() {
    let served = serve(&["--write-timeout", "500ms"]);
    let mut stream = TcpStream::connect(served.address).unwrap();
    let request = b"GET /openapi.json HTTP/1.1\r\nhost: x\r\n\r\n".repeat(200);
    stream.set_write_timeout(Some(Duration::from_secs(1))).unwrap();
    // more answers than the buffers of the system hold, none of them read
    let _ = stream.write_all(&request);
    let open = || metric(&served, "elbowroom_open_connections ");
    let start = Instant::now();
    while open() > 1 {
        assert!(start.elapsed() < Duration::from_secs(8), "the connection is still held");
        thread::sleep(Duration::from_millis(50));
    }
}

#[test]
fn without_files_left_it_waits_and_goes_on() {
    let binary = env!("CARGO_BIN_EXE_elbowroom");
    let mut shell = Command::new("sh");
    shell.args(["-c", &format!("ulimit -n 40; exec {binary} --bind 127.0.0.1:0 --header-timeout 2s")]);
    shell.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::null());
    let served = Served::of(shell);
    let held: Vec<TcpStream> = (0..60).filter_map(|_| TcpStream::connect(served.address).ok()).collect();
    assert!(held.len() > 40);
    thread::sleep(Duration::from_millis(200));
    drop(held);
    assert!(get(&served, "/health/ready").starts_with("HTTP/1.1 200"));
}

#[test]
fn a_full_disk_for_logs_stops_nothing() {
    let full = fs::OpenOptions::new().write(true).open("/dev/full").unwrap();
    let mut program = program(&["--bind", "127.0.0.1:0", "--log-requests", "all"]);
    program.stderr(full);
    let served = Served::of(program);
    for _ in 0..20 {
        assert!(get(&served, "/health/ready").starts_with("HTTP/1.1 200"));
    }
}
