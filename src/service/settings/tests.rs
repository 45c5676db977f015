//! Settings, their weight and their faults.

use super::*;
use std::collections::BTreeMap;

fn gather(
    flags: &[(&'static str, &str)],
    environment: &[(&str, &str)],
    file: &str,
) -> (Values, Vec<SettingFault>) {
    let flags: BTreeMap<&'static str, String> =
        flags.iter().map(|(name, text)| (*name, (*text).to_owned())).collect();
    let variable =
        |name: &str| environment.iter().find(|(known, _)| *known == name).map(|(_, text)| (*text).to_owned());
    let mut faults = Vec::new();
    let values = Values::gather(&flags, variable, Some(file), &mut faults);
    (values, faults)
}

fn read(
    flags: &[(&'static str, &str)],
    environment: &[(&str, &str)],
    file: &str,
) -> Result<Settings, Vec<String>> {
    let (values, faults) = gather(flags, environment, file);
    Settings::read(&values, faults).map_err(|faults| faults.iter().map(ToString::to_string).collect())
}

#[test]
fn without_anything_it_listens_on_loopback_without_keys_or_rates() {
    let settings = read(&[], &[], "").unwrap();
    assert!(settings.bind.ip().is_loopback() && settings.keys.is_none() && settings.tls.is_none());
    assert_eq!(settings.limits, Limits::default());
    assert_eq!(settings.address_rate, None);
    assert!(settings.cors_origins.is_empty() && settings.trusted_proxies.is_empty());
}

#[test]
fn a_flag_outweighs_the_environment_and_that_the_file() {
    let file = "max_body_size = 4096\nmost_requests = 7\ngrace = \"3s\"\ncors_origins = [\"http://a\", \"http://b\"]";
    let environment = [("ELBOWROOM_MOST_REQUESTS", "8"), ("ELBOWROOM_GRACE", "4s")];
    let settings = read(&[("grace", "5s")], &environment, file).unwrap();
    assert_eq!(settings.limits.max_body_size, 4096);
    assert_eq!(settings.most_requests, 8);
    assert_eq!(settings.grace, Duration::from_secs(5));
    assert_eq!(settings.cors_origins, ["http://a", "http://b"]);
}

#[test]
fn an_address_that_others_can_reach_asks_for_keys_or_a_plain_word() {
    for bind in ["0.0.0.0:80", "[::]:80", "192.0.2.7:80"] {
        let faults = read(&[("bind", bind)], &[], "").unwrap_err();
        assert_eq!(faults.len(), 1, "{faults:?}");
        assert!(faults[0].contains("--without-keys"), "{faults:?}");
        let settings = read(&[("bind", bind), ("without-keys", "true")], &[], "").unwrap();
        assert_eq!(settings.address_rate, Some(EXPOSED_ADDRESS_RATE));
        let settings =
            read(&[("bind", bind), ("keys", "k.toml"), ("address-rate", "none")], &[], "").unwrap();
        assert!(settings.keys.is_some() && settings.address_rate.is_none());
    }
    assert!(read(&[("bind", "[::1]:80")], &[], "").is_ok());
}

#[test]
fn every_fault_is_reported_with_its_place() {
    let file = "body_wait = \"soon\"\nlargest_boddy = 1\nnotice = true";
    let flags = [("bind", "nowhere"), ("keys", "k"), ("without-keys", "true"), ("tls-key", "k.pem")];
    let environment = [("ELBOWROOM_LOG_FORM", "xml"), ("ELBOWROOM_OTLP_HEADERS", "sesame")];
    let faults = read(&flags, &environment, file).unwrap_err().join("\n");
    for part in [
        "--bind: \"nowhere\"",
        "settings file: body_wait: \"soon\"",
        "largest_boddy is no setting; max_body_size is",
        "notice has a value of the wrong type",
        "ELBOWROOM_LOG_FORM: \"xml\"",
        "ELBOWROOM_OTLP_HEADERS: the value",
        "--keys and --without-keys",
        "--tls-certificate and --tls-key",
    ] {
        assert!(faults.contains(part), "{part}: {faults}");
    }
    assert_eq!(faults.lines().count(), 8, "{faults}");
    assert!(!faults.contains("sesame"), "{faults}");
    assert!(read(&[], &[], "a = ").unwrap_err()[0].starts_with("settings file: "));
}

#[test]
fn what_is_shown_is_a_file_of_the_same_settings_without_secrets() {
    let flags = [
        ("bind", "0.0.0.0:80"),
        ("without-keys", "true"),
        ("cors-origins", "http://a,http://b"),
        ("otlp-endpoint", "http://127.0.0.1:4318/v1/traces"),
        ("otlp-headers", "authorization=sesame"),
    ];
    let (values, faults) = gather(&flags, &[("ELBOWROOM_GRACE", "5s")], "notice = \"1s\"");
    let settings = Settings::read(&values, faults).unwrap();
    let text = shown(&values, &settings);
    assert!(!text.contains("sesame"), "{text}");
    for part in
        ["otlp_headers is set", "grace = \"5s\"  # environment", "notice = \"1s\"  # settings file", "6000"]
    {
        assert!(text.contains(part), "{part}: {text}");
    }
    let again = read(&[], &[], &text).unwrap();
    assert_eq!(again.bind, settings.bind);
    assert_eq!(again.cors_origins, settings.cors_origins);
    assert_eq!((again.grace, again.notice), (settings.grace, settings.notice));
    assert_eq!(again.address_rate, settings.address_rate);
}
