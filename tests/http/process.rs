//! The program: serving, shutting down, checking a file, printing the document.

use crate::support::{FILL, good};
use elbowroom::service::openapi;
use serde_json::{Value, json};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{SocketAddr, TcpStream};
use std::process::{Child, Command, Output, Stdio};

pub fn program(arguments: &[&str]) -> Command {
    let mut program = Command::new(env!("CARGO_BIN_EXE_elbowroom"));
    program.args(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let of_the_caller =
        |name: &str| name.starts_with("ELBOWROOM_") || ["LC_ALL", "LC_MESSAGES", "LANG"].contains(&name);
    for (name, _) in std::env::vars().filter(|(name, _)| of_the_caller(name)) {
        program.env_remove(name);
    }
    program
}

pub fn run(arguments: &[&str], input: &str) -> Output {
    let mut child = program(arguments).spawn().unwrap();
    // a program that refuses its arguments does not read its input
    let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
    child.wait_with_output().unwrap()
}

/// A served program, ended when it is dropped.
pub struct Served {
    pub child: Child,
    pub address: SocketAddr,
    pub line: String,
}

impl Served {
    pub fn start(arguments: &[&str]) -> Self {
        Self::of(program(arguments))
    }

    /// The same, of a program that is to be started in some other way.
    pub fn of(mut program: Command) -> Self {
        let mut child = program.spawn().unwrap();
        let mut line = String::new();
        BufReader::new(child.stdout.as_mut().unwrap()).read_line(&mut line).unwrap();
        let address = line.split("://").nth(1).unwrap().split(';').next().unwrap().parse().unwrap();
        Self { child, address, line }
    }

    /// Sends the program a signal.
    pub fn signal(&self, signal: &str) {
        let id = self.child.id().to_string();
        assert!(Command::new("kill").args(["-s", signal, &id]).status().unwrap().success());
    }

    pub fn ask(&self, request: &str) -> String {
        let mut stream = TcpStream::connect(self.address).unwrap();
        stream.write_all(request.as_bytes()).unwrap();
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        answer
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

#[test]
fn serving_says_where_it_listens_and_where_the_documentation_is() {
    for arguments in [&["--bind", "127.0.0.1:0"][..], &["serve", "--bind", "127.0.0.1:0"]] {
        let served = Served::start(arguments);
        assert!(served.line.contains(&format!("http://{}/docs", served.address)), "{}", served.line);
        let body = good().to_string();
        let answer = served.ask(&format!(
            "POST {FILL} HTTP/1.1\r\nhost: x\r\nconnection: close\r\ncontent-type: application/json\r\n\
             content-length: {}\r\n\r\n{body}",
            body.len()
        ));
        assert!(answer.starts_with("HTTP/1.1 200"), "{answer}");
        assert!(answer.contains("\"verdict\":\"complies\""), "{answer}");
    }
}

#[test]
fn a_signal_ends_it_in_good_order() {
    for signal in ["INT", "TERM"] {
        let mut served = Served::start(&["--bind", "127.0.0.1:0"]);
        served.signal(signal);
        assert!(served.child.wait().unwrap().success(), "{signal}");
    }
}

#[test]
fn an_address_that_is_taken_is_a_clear_failure() {
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    let taken = served.address.to_string();
    let output = run(&["--bind", &taken], "");
    assert_eq!(output.status.code(), Some(71));
    let error = String::from_utf8(output.stderr).unwrap();
    assert!(error.contains(&taken) && error.lines().count() == 1, "{error}");
}

#[test]
fn the_exit_status_says_the_verdict() {
    let with = |enclosure: Option<Value>| {
        let mut request = good();
        request.as_object_mut().unwrap().shift_remove("enclosure");
        if let Some(enclosure) = enclosure {
            request["enclosure"] = enclosure;
        }
        request.to_string()
    };
    let status = |body: &str| run(&["check", "-"], body).status.code();
    assert_eq!(status(&with(Some(json!({"standard": "square-4x2-1/8"})))), Some(0));
    assert_eq!(status(&with(None)), Some(0));
    assert_eq!(status(&with(Some(json!({"standard": "device-3x2x1-1/2"})))), Some(1));
    assert_eq!(status(&with(Some(json!({"material": "nonmetallic"})))), Some(2));
    assert_eq!(status("{"), Some(64));
    assert_eq!(run(&["check", "/nowhere/request.json"], "").status.code(), Some(66));
    assert_eq!(run(&["check", "-", "--as", "yaml"], "{}").status.code(), Some(64));
    assert_eq!(run(&["check", "-", "--check", "no_such_check"], "{}").status.code(), Some(64));
    assert_eq!(run(&["--bind", "nowhere"], "").status.code(), Some(78));
    assert_eq!(run(&["--help"], "").status.code(), Some(0));
}

#[test]
fn a_report_has_the_verdict_the_figures_the_tally_and_the_reasons() {
    let mut request = good();
    request["contents"]["small_parts"] = json!([{"kind": "locknut"}]);
    let output = run(&["check", "-", "--check", "outlet_box_fill"], &request.to_string());
    let report = String::from_utf8(output.stdout).unwrap();
    for part in ["hall-3", "COMPLIES", "15.75 in³", "30.3 in³", "4.5 in³", "12 AWG", "S1", "square-4x2-1/8"]
    {
        assert!(report.contains(part), "{part}: {report}");
    }
    // no key and no raw JSON reaches a reader
    for part in ["{", "\"", "finding-", "because-", "not_counted", "outlet-fill.", "in3"] {
        assert!(!report.contains(part), "{part}: {report}");
    }
    let explained = run(&["check", "-", "--explain", "summary"], &request.to_string()).stdout;
    assert!(explained.len() > report.len());
}

#[test]
fn the_answer_as_json_is_the_answer_of_the_service() {
    let output = run(&["check", "-", "--as", "json"], &good().to_string());
    let printed: Value = serde_json::from_slice(&output.stdout).unwrap();
    let answered =
        (elbowroom::service::register::CHECKS[0].evaluate)(good().to_string().as_bytes(), Default::default());
    assert_eq!(printed, serde_json::from_slice::<Value>(&answered.unwrap().json).unwrap());
}

#[test]
fn every_fault_of_a_refused_file_is_printed() {
    let mut request = good();
    request["edition"] = json!("2022");
    request["contents"]["devises"] = json!([]);
    let output = run(&["check", "-"], &request.to_string());
    let error = String::from_utf8(output.stderr).unwrap();
    for part in ["/edition", "unknown-value", "/contents/devises", "unknown-member", "devices", "2023"] {
        assert!(error.contains(part), "{part}: {error}");
    }
    let output = run(&["check", "-", "--as", "json"], &request.to_string());
    let problem: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert_eq!((output.status.code(), problem["errors"].as_array().unwrap().len()), (Some(64), 2));
}

#[test]
fn the_document_is_printed() {
    let output = run(&["openapi"], "");
    assert!(output.status.success());
    assert_eq!(String::from_utf8(output.stdout).unwrap(), openapi::text());
}
