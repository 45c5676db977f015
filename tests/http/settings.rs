//! Settings as the program takes them.

use crate::access::TestFile;
use crate::process::{Served, program, run};
use std::process::Command;

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

#[test]
fn all_faults_are_reported_together_at_the_start() {
    let file = TestFile::new("faulty.toml", "grace = \"long\"\nlargest_boddy = 1\n");
    let mut program = program(&["--bind", "0.0.0.0:80", "--settings", file.path(), "--tls-key", "k.pem"]);
    let output = program.env("ELBOWROOM_MOST_REQUESTS", "many").output().unwrap();
    assert_eq!(output.status.code(), Some(78));
    let error = text(&output.stderr);
    for part in ["grace", "largest_boddy", "ELBOWROOM_MOST_REQUESTS", "--tls-certificate", "--without-keys"] {
        assert!(error.contains(part), "{part}: {error}");
    }
    assert_eq!(error.lines().count(), 5, "{error}");

    let output =
        run(&["--keys", "/nowhere/keys", "--tls-certificate", "/nowhere/c", "--tls-key", "/nowhere/k"], "");
    let error = text(&output.stderr);
    assert_eq!((output.status.code(), error.lines().count()), (Some(78), 2), "{error}");
}

#[test]
fn what_is_in_force_is_printed_without_secrets_and_can_be_read_again() {
    let mut first =
        program(&["--grace", "7s", "--print-settings", "--otlp-endpoint", "http://127.0.0.1:9/v1/traces"]);
    let output = first.env("ELBOWROOM_OTLP_HEADERS", "authorization=sesame").output().unwrap();
    let printed = text(&output.stdout);
    assert!(output.status.success() && !printed.contains("sesame"), "{printed}");
    assert!(printed.contains("grace = \"7s\"  # flag"), "{printed}");
    let file = TestFile::new("printed.toml", &printed);
    let again = text(&run(&["--settings", file.path(), "--print-settings"], "").stdout);
    assert!(again.contains("grace = \"7s\"  # settings file"), "{again}");
}

#[test]
fn health_is_asked_with_the_settings_of_the_service() {
    let served = Served::start(&["--bind", "127.0.0.1:0", "--metrics-bind", "127.0.0.1:0"]);
    let metrics = served.line.split("metrics: http://").nth(1).unwrap().split('/').next().unwrap();
    for arguments in [vec!["--bind", &served.address.to_string()], vec!["--metrics-bind", metrics]] {
        let output = run(&[&["healthcheck"], arguments.as_slice()].concat(), "");
        assert!(output.status.success(), "{output:?}");
    }
    // metrics are there and only there
    let ask = |address: &str| {
        let output =
            Command::new(env!("CARGO_BIN_EXE_elbowroom")).args(["healthcheck", "--bind", address]).output();
        output.unwrap().status.code()
    };
    assert_eq!(ask("127.0.0.1:1"), Some(69));
    assert!(
        served
            .ask("GET /metrics HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n")
            .starts_with("HTTP/1.1 404")
    );
}
