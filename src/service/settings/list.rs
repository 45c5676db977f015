//! The settings there are: one line each; flags, environment variables and members of the file follow from it.

/// How a setting is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// A value.
    Value,
    /// Values separated by commas; a list in the file.
    List,
    /// A flag without a value; true or false elsewhere.
    Switch,
    /// A value that is never shown.
    Secret,
}

/// One setting.
#[derive(Clone, Copy, Debug)]
pub struct Setting {
    /// The name, as the flag has it.
    pub name: &'static str,
    /// What stands for its value in the help.
    pub value: &'static str,
    /// The value that is in force when none is given; empty for none.
    pub default: &'static str,
    /// What it is for.
    pub help: &'static str,
    /// How it is given.
    pub form: Form,
}

impl Setting {
    /// The environment variable: `ELBOWROOM_LARGEST_BODY`.
    pub fn variable(&self) -> String {
        format!("ELBOWROOM_{}", self.member().to_ascii_uppercase())
    }

    /// The member of the settings file: `max_body_size`.
    pub fn member(&self) -> String {
        self.name.replace('-', "_")
    }
}

const fn value(
    name: &'static str,
    value: &'static str,
    default: &'static str,
    help: &'static str,
) -> Setting {
    Setting { name, value, default, help, form: Form::Value }
}

const fn with(form: Form, setting: Setting) -> Setting {
    Setting { form, ..setting }
}

/// Every setting.
pub static SETTINGS: &[Setting] = &[
    value(
        "bind",
        "ADDRESS:PORT",
        "127.0.0.1:8314",
        "The address and port to listen on; port 0 takes any free one",
    ),
    value("metrics-bind", "ADDRESS:PORT", "", "Serve /metrics on this address only, without a key"),
    value(
        "keys",
        "FILE",
        "",
        "Ask every caller for a key of this file; reread when it changes and on SIGHUP",
    ),
    with(
        Form::Switch,
        value("without-keys", "", "false", "Serve an address that others can reach without asking for keys"),
    ),
    value("tls-certificate", "FILE", "", "Speak TLS with this certificate chain (PEM)"),
    value("tls-key", "FILE", "", "The private key of the certificate (PEM)"),
    value(
        "signing-key",
        "FILE",
        "",
        "Sign certified results with the Ed25519 key of this file (PEM); public keys in it still verify",
    ),
    with(
        Form::List,
        value("cors-origins", "ORIGINS", "", "Origins whose pages may call the service; none unless given"),
    ),
    with(Form::List, value("trusted-proxies", "NETWORKS", "", "Proxies whose X-Forwarded-For is believed")),
    value("largest-body", "SIZE", "1MiB", "The largest body that is read"),
    value(
        "largest-takeoff",
        "SIZE",
        "16MiB",
        "The largest takeoff that is one document; lines have no limit together",
    ),
    value(
        "body-wait",
        "TIME",
        "10s",
        "How long a body may take to arrive, or the next whole line of one that is streamed",
    ),
    value(
        "header-wait",
        "TIME",
        "15s",
        "How long the next request on a connection may take to arrive up to its body",
    ),
    value(
        "stall-wait",
        "TIME",
        "30s",
        "How long a caller may leave an answer unread; in that time it reads 16 KiB, or all that there is",
    ),
    value("most-connections", "COUNT", "4096", "Connections that are open at once; more are turned away"),
    value("most-requests", "COUNT", "1024", "Requests that are answered at once; more are turned away"),
    value(
        "address-rate",
        "COUNT",
        "",
        "Requests a minute from one address, or none; by default none on loopback and 6000 elsewhere",
    ),
    value(
        "notice",
        "TIME",
        "0s",
        "After the signal to stop: how long to say not ready while still taking connections",
    ),
    value("grace", "TIME", "15s", "How long running requests may then take to finish"),
    value("log", "FILTER", "warn,elbowroom=info", "What is logged, by module and level"),
    value("log-form", "FORM", "text", "How a log line is written: text or json"),
    value(
        "log-requests",
        "WHICH",
        "failures",
        "Requests that are logged: all, none, failures, or failures and one in COUNT",
    ),
    value("otlp-endpoint", "URL", "", "Send traces to this collector (OTLP over HTTP, JSON)"),
    with(
        Form::Secret,
        value("otlp-headers", "NAME=VALUE,…", "", "Headers that the collector asks for; never shown"),
    ),
    value("otlp-sample", "COUNT", "100", "Trace one in so many requests, and those whose caller asks for it"),
];

/// The setting with a name.
pub fn named(name: &str) -> Option<&'static Setting> {
    SETTINGS.iter().find(|setting| setting.name == name)
}
