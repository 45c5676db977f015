//! Settings as the program takes them.

use crate::access::TestFile;
use crate::process::{Served, program, run};
use std::process::Command;

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).unwrap()
}

#[test]
fn all_faults_are_reported_together_at_the_start() {
    let file = TestFile::new("faulty.toml", "shutdown_grace = \"long\"\nmax_boddy_size = 1\n");
    let mut program = program(&["--bind", "0.0.0.0:80", "--settings", file.path(), "--tls-key", "k.pem"]);
    let output = program.env("ELBOWROOM_MAX_CONCURRENT_REQUESTS", "many").output().unwrap();
    assert_eq!(output.status.code(), Some(78));
    let error = text(&output.stderr);
    for part in [
        "shutdown_grace",
        "max_boddy_size; did you mean max_body_size?",
        "ELBOWROOM_MAX_CONCURRENT_REQUESTS: \"many\"",
        "--tls-certificate",
        "--without-keys",
    ] {
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
    let mut first = program(&[
        "--shutdown-grace",
        "7s",
        "--print-settings",
        "--otlp-endpoint",
        "http://127.0.0.1:9/v1/traces",
    ]);
    let output = first.env("ELBOWROOM_OTLP_HEADERS", "authorization=sesame").output().unwrap();
    let printed = text(&output.stdout);
    assert!(output.status.success() && !printed.contains("sesame"), "{printed}");
    assert!(printed.contains("shutdown_grace = \"7s\"  # flag"), "{printed}");
    let file = TestFile::new("printed.toml", &printed);
    let again = text(&run(&["--settings", file.path(), "--print-settings"], "").stdout);
    assert!(again.contains("shutdown_grace = \"7s\"  # settings file"), "{again}");
}

#[test]
fn a_flag_takes_precedence_over_the_environment_and_that_over_the_file() {
    let file = TestFile::new("precedence.toml", "max_connections = 7\nmax_concurrent_requests = 7\n");
    let mut program = program(&[
        "--settings",
        file.path(),
        "--shutdown-grace",
        "5s",
        "--print-settings",
        "--log-requests=all",
    ]);
    let output = program
        .env("ELBOWROOM_MAX_CONCURRENT_REQUESTS", "8")
        .env("ELBOWROOM_SHUTDOWN_GRACE", "4s")
        .env("ELBOWROOM_CORS_ORIGINS", "http://a, http://b")
        .env("ELBOWROOM_KEYS", "")
        .output();
    let printed = text(&output.unwrap().stdout);
    for line in [
        "max_connections = \"7\"  # settings file",
        "max_concurrent_requests = \"8\"  # environment",
        "shutdown_grace = \"5s\"  # flag",
        "cors_origins = [\"http://a\", \"http://b\"]  # environment",
        "# keys is not set",
        "log = \"warn,elbowroom=info\"  # default",
    ] {
        assert!(printed.lines().any(|printed| printed == line), "{line}: {printed}");
    }
}

#[test]
fn help_names_every_setting_its_variable_and_its_default_but_no_secret() {
    let mut program = program(&["serve", "--help"]);
    let help = text(&program.env("ELBOWROOM_OTLP_HEADERS", "authorization=sesame").output().unwrap().stdout);
    for part in
        ["--max-body-size <SIZE>", "ELBOWROOM_MAX_BODY_SIZE", "[default: 1MiB]", "ELBOWROOM_OTLP_HEADERS"]
    {
        assert!(help.contains(part), "{part}: {help}");
    }
    assert!(!help.contains("sesame"), "{help}");
}

#[test]
fn settings_of_the_environment_do_not_stand_in_the_way_of_a_command() {
    let output = program(&["demo", "--boxes", "1"]).env("ELBOWROOM_BIND", "127.0.0.1:0").output().unwrap();
    assert!(output.status.success(), "{output:?}");
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
