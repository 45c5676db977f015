//! Shutting down: what was taken is finished, and callers are told in time.

use crate::process::Served;
use crate::support::{FILL, good};
use serde_json::json;
use std::io::{ErrorKind, Read, Write};
use std::net::TcpStream;
use std::thread;
use std::time::{Duration, Instant};

fn serve(arguments: &[&str]) -> Served {
    Served::start(&[&["--bind", "127.0.0.1:0"], arguments].concat())
}

/// The beginning of a request, with its body still to come.
fn begin(served: &Served) -> (TcpStream, String) {
    let body = good().to_string();
    let mut stream = TcpStream::connect(served.address).unwrap();
    let head = format!(
        "POST {FILL} HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: {}\r\n\r\n",
        body.len()
    );
    stream.write_all(head.as_bytes()).unwrap();
    (stream, body)
}

fn finish(mut stream: TcpStream, body: &str) -> String {
    stream.write_all(body.as_bytes()).unwrap();
    let mut answer = String::new();
    stream.read_to_string(&mut answer).unwrap();
    answer
}

#[test]
fn a_request_that_was_begun_is_answered_after_the_signal() {
    let mut served = serve(&[]);
    let (stream, body) = begin(&served);
    thread::sleep(Duration::from_millis(100));
    served.signal("TERM");
    thread::sleep(Duration::from_millis(300));
    // nothing new is taken, nothing old is dropped
    assert!(TcpStream::connect(served.address).is_err());
    let answer = finish(stream, &body);
    assert!(answer.starts_with("HTTP/1.1 200") && answer.contains("\"verdict\":\"complies\""), "{answer}");
    assert!(served.child.wait().unwrap().success());
}

#[test]
fn readiness_goes_first_while_connections_are_still_taken() {
    let mut served = serve(&["--shutdown-delay", "700ms"]);
    let ask = |path: &str| served.ask(&format!("GET {path} HTTP/1.1\r\nhost: x\r\n\r\n"));
    // kept open between requests, until the service says that it leaves
    let mut kept = TcpStream::connect(served.address).unwrap();
    kept.write_all(b"GET /health/ready HTTP/1.1\r\nhost: x\r\n\r\n").unwrap();
    let mut first = [0; 12];
    kept.read_exact(&mut first).unwrap();
    assert_eq!(&first, b"HTTP/1.1 200");
    served.signal("TERM");
    thread::sleep(Duration::from_millis(200));
    let answer = ask("/health/ready");
    assert!(answer.starts_with("HTTP/1.1 503") && answer.contains("/v1/problems/not-ready"), "{answer}");
    let answer = ask("/v1/editions");
    assert!(answer.starts_with("HTTP/1.1 200") && answer.contains("connection: close"), "{answer}");
    kept.write_all(b"GET /v1/editions HTTP/1.1\r\nhost: x\r\n\r\n").unwrap();
    let mut rest = String::new();
    kept.read_to_string(&mut rest).unwrap();
    assert!(rest.contains("connection: close"), "{rest}");
    assert!(served.child.wait().unwrap().success());
}

#[test]
fn whoever_does_not_finish_in_time_is_left_behind() {
    let mut served = serve(&["--shutdown-grace", "400ms"]);
    let (_stream, _body) = begin(&served);
    thread::sleep(Duration::from_millis(100));
    let start = Instant::now();
    served.signal("TERM");
    assert!(served.child.wait().unwrap().success());
    assert!(
        (Duration::from_millis(300)..Duration::from_secs(3)).contains(&start.elapsed()),
        "{:?}",
        start.elapsed()
    );
}

#[test]
fn a_second_signal_ends_it_at_once() {
    let mut served = serve(&["--shutdown-grace", "1m", "--shutdown-delay", "1m"]);
    let (_stream, _body) = begin(&served);
    thread::sleep(Duration::from_millis(100));
    let start = Instant::now();
    served.signal("TERM");
    thread::sleep(Duration::from_millis(200));
    assert!(served.child.try_wait().unwrap().is_none());
    served.signal("INT");
    assert!(served.child.wait().unwrap().success());
    assert!(start.elapsed() < Duration::from_secs(3));
}

#[test]
fn a_stream_that_was_begun_is_answered_to_its_last_line() {
    const LINES: usize = 4_000;
    let mut served = serve(&["--shutdown-grace", "2m"]);
    let line = format!("{}\n", json!({"check": "outlet_box_fill", "request": good()}));
    let mut stream = TcpStream::connect(served.address).unwrap();
    let mut reading = stream.try_clone().unwrap();
    let reader = thread::spawn(move || {
        let mut answer = String::new();
        reading.read_to_string(&mut answer).unwrap();
        answer
    });
    let head = format!(
        "POST /v1/takeoffs?explain=none HTTP/1.1\r\nhost: x\r\ncontent-type: application/x-ndjson\r\n\
         content-length: {}\r\n\r\n",
        line.len() * LINES
    );
    stream.write_all(head.as_bytes()).unwrap();
    stream.write_all(line.repeat(LINES / 2).as_bytes()).unwrap();
    served.signal("TERM");
    thread::sleep(Duration::from_millis(300));
    assert!(TcpStream::connect(served.address).is_err());
    stream.write_all(line.repeat(LINES - LINES / 2).as_bytes()).unwrap();
    let answer = reader.join().unwrap();
    assert_eq!(answer.matches("\"check\":\"outlet_box_fill\",\"reference\"").count(), LINES);
    assert!(answer.contains("\"summary\"") && answer.contains("\"complete\":true"));
    assert!(served.child.wait().unwrap().success());
}

#[test]
fn no_request_of_many_callers_is_lost_when_it_leaves() {
    let mut served = serve(&["--shutdown-delay", "300ms"]);
    let address = served.address;
    let caller = move || {
        let body = good().to_string();
        let request = format!(
            "POST {FILL} HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: {}\r\n\r\n{body}",
            body.len()
        );
        let request = request.replace("host: x", "host: x\r\nconnection: close");
        let (mut answered, mut refused) = (0, 0);
        // a connection for each request: until nobody listens
        while let Ok(mut stream) = TcpStream::connect(address) {
            let mut answer = String::new();
            match stream.write_all(request.as_bytes()).and_then(|()| stream.read_to_string(&mut answer)) {
                Ok(_) => {
                    assert!(answer.starts_with("HTTP/1.1 200") && answer.ends_with('}'), "{answer:?}");
                    answered += 1;
                }
                // the system said yes after the service had taken its last connection, and took it back
                Err(error) => {
                    assert_eq!((error.kind(), answer.as_str()), (ErrorKind::ConnectionReset, ""));
                    refused += 1;
                }
            }
        }
        (answered, refused)
    };
    let callers: Vec<_> = (0..8).map(|_| thread::spawn(caller)).collect();
    thread::sleep(Duration::from_millis(400));
    served.signal("TERM");
    let (answered, refused) = callers
        .into_iter()
        .map(|caller| caller.join().unwrap())
        .fold((0, 0), |(answered, refused), one: (usize, usize)| (answered + one.0, refused + one.1));
    assert!(served.child.wait().unwrap().success());
    assert!(answered > 50 && refused <= 2, "{answered} answered, {refused} refused");
}
