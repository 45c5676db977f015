//! Settings, their precedence and their faults. The environment is tested with processes of their own.

use super::*;
use clap::Command;

fn gather(flags: &[&str], file: &str) -> (Sources, Vec<String>) {
    let command = Command::new("elbowroom").no_binary_name(true).args(sources::flags());
    let mut faults = Vec::new();
    let sources = Sources::gather(&command.get_matches_from(flags), file, &mut faults);
    (sources, faults)
}

fn read(flags: &[&str], file: &str) -> Result<Settings, Vec<String>> {
    let (sources, faults) = gather(flags, file);
    sources.settings(faults)
}

#[test]
fn without_anything_it_listens_on_loopback_without_keys_or_rates() {
    let settings = read(&[], "").unwrap();
    assert!(settings.bind.ip().is_loopback() && settings.keys.is_none() && settings.tls_key.is_none());
    assert_eq!(settings.limits, Limits::default());
    assert_eq!(settings.rate_limit, None);
    assert!(settings.cors_origins.is_empty() && settings.trusted_proxies.is_empty());
}

#[test]
fn a_flag_takes_precedence_over_the_file() {
    let file = "max_body_size = 4096\nmax_concurrent_requests = 7\nshutdown_grace = \"3s\"\n\
                cors_origins = [\"http://a\", \"http://b\"]\nkeys = \"\"";
    let settings = read(&["--shutdown-grace", "5s", "--trusted-proxies", "10.0.0.0/8, ::1,"], file).unwrap();
    assert_eq!(settings.limits.max_body_size, 4096);
    assert_eq!(settings.max_concurrent_requests, 7);
    assert_eq!(settings.shutdown_grace, Duration::from_secs(5));
    assert_eq!(settings.cors_origins, ["http://a", "http://b"]);
    assert_eq!(settings.trusted_proxies.len(), 2);
    assert_eq!(settings.keys, None);
}

#[test]
fn an_address_that_others_can_reach_asks_for_keys_or_a_plain_word() {
    for bind in ["0.0.0.0:80", "[::]:80", "192.0.2.7:80"] {
        let faults = read(&["--bind", bind], "").unwrap_err();
        assert_eq!(faults.len(), 1, "{faults:?}");
        assert!(faults[0].contains("--without-keys"), "{faults:?}");
        let settings = read(&["--bind", bind, "--without-keys"], "").unwrap();
        assert_eq!(settings.rate_limit, Some(6000));
        let settings = read(&["--bind", bind, "--keys", "k.toml", "--rate-limit", "none"], "").unwrap();
        assert!(settings.keys.is_some() && settings.rate_limit.is_none());
    }
    assert!(read(&["--bind", "[::1]:80"], "").is_ok());
}

#[test]
fn every_fault_is_reported_with_its_place() {
    let file = "body_timeout = \"soon\"\nmax_boddy_size = 1\nshutdown_delay = true\nlog_format = \"xml\"\n\
                bind = [\"127.0.0.1:0\"]";
    let flags = ["--max-connections=0", "--keys=k", "--without-keys", "--tls-key=k.pem", "--log="];
    let flags = [&flags[..], &["--otlp-headers=sesame"]].concat();
    let faults = read(&flags, file).unwrap_err().join("\n");
    for part in [
        "--max-connections: \"0\" is not a whole number",
        "settings file: body_timeout: \"soon\" is not a duration",
        "unknown setting max_boddy_size; did you mean max_body_size?",
        "shutdown_delay: \"true\" is not",
        "log_format: \"xml\" is neither",
        "bind: \"[",
        "--log: \"\" is empty",
        "--otlp-headers: the value",
        "--keys and --without-keys",
        "--tls-certificate and --tls-key",
    ] {
        assert!(faults.contains(part), "{part}: {faults}");
    }
    assert_eq!(faults.lines().count(), 10, "{faults}");
    assert!(!faults.contains("sesame"), "{faults}");
    let unreadable = read(&[], "grace = 1\notlp_headers = \"sesame\" \"").unwrap_err().join("\n");
    assert!(
        unreadable.starts_with("settings file: line 2: ") && !unreadable.contains("sesame"),
        "{unreadable}"
    );
}

#[test]
fn what_is_shown_is_a_file_of_the_same_settings_without_secrets() {
    let flags = [
        "--bind=0.0.0.0:80",
        "--without-keys",
        "--cors-origins=http://a,http://b",
        "--otlp-endpoint=http://127.0.0.1:4318/v1/traces",
        "--otlp-headers=authorization=sesame",
    ];
    let (sources, faults) = gather(&flags, "shutdown_delay = \"1s\"");
    let settings = sources.settings(faults).unwrap();
    let text = sources.to_string();
    assert!(!text.contains("sesame") && !format!("{settings:?}").contains("sesame"), "{text}");
    for part in [
        "otlp_headers is set",
        "without_keys = true  # flag",
        "shutdown_delay = \"1s\"  # settings file",
        "rate_limit = \"6000\"  # default",
    ] {
        assert!(text.contains(part), "{part}: {text}");
    }
    let again = read(&[], &text).unwrap();
    assert_eq!(again.bind, settings.bind);
    assert_eq!(again.cors_origins, settings.cors_origins);
    assert_eq!(again.shutdown_delay, settings.shutdown_delay);
    assert_eq!(again.rate_limit, settings.rate_limit);
}
