//! What an operator may set: by flag, by environment variable, in a file, in this order of weight.
//!
//! | module | what it is for |
//! |---|---|
//! | [`list`] | the settings there are |
//! | [`sources`] | where their values come from |
//! | [`values`] | how values are written |
//! | [`fault`] | what is wrong with one; all are reported together |

pub mod fault;
pub mod list;
pub mod sources;
pub mod values;

pub use fault::SettingFault;
pub use sources::Values;

use super::state::Limits;
use super::telemetry::log::{LogForm, LogRequests};
use super::telemetry::otlp::Collector;
use list::Form;
use std::net::SocketAddr;
use std::path::PathBuf;
use std::time::Duration;
use values::Network;

/// Requests a minute from one address when others can reach the service and nothing else is set.
const EXPOSED_ADDRESS_RATE: u32 = 6_000;

/// The files of TLS.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TlsFiles {
    /// The certificate chain.
    pub certificate: PathBuf,
    /// The private key.
    pub key: PathBuf,
}

/// Everything that is set.
#[derive(Clone, Debug)]
pub struct Settings {
    /// Where the service listens.
    pub bind: SocketAddr,
    /// Where metrics are served, when apart.
    pub metrics_bind: Option<SocketAddr>,
    /// The file of the keys; without it nobody is asked for one.
    pub keys: Option<PathBuf>,
    /// The files of TLS.
    pub tls: Option<TlsFiles>,
    /// The file of the key that signs certified results; without it they are not signed.
    pub signing_key: Option<PathBuf>,
    /// Origins whose pages may call the service.
    pub cors_origins: Vec<String>,
    /// Proxies whose word on the address of a caller is taken.
    pub trusted_proxies: Vec<Network>,
    /// What a request may take up.
    pub limits: Limits,
    /// What a connection may take up.
    pub connections: ConnectionLimits,
    /// Requests that are answered at once.
    pub most_requests: u32,
    /// Requests a minute from one address.
    pub address_rate: Option<u32>,
    /// How long the service says that it leaves before it stops taking connections.
    pub notice: Duration,
    /// How long running requests may then take.
    pub grace: Duration,
    /// What is logged.
    pub log: String,
    /// How a log line is written.
    pub log_form: LogForm,
    /// Requests that are logged.
    pub log_requests: LogRequests,
    /// Where traces are sent.
    pub collector: Option<Collector>,
}

/// What a connection may take up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ConnectionLimits {
    /// Connections that are open at once.
    pub most: u32,
    /// How long the next request may take to arrive up to its body, TLS included.
    pub header_wait: Duration,
    /// How long a caller may leave an answer unread.
    pub stall_wait: Duration,
}

/// Reads values one by one and keeps every fault.
struct Reader<'a> {
    values: &'a Values,
    faults: Vec<SettingFault>,
}

impl Reader<'_> {
    /// The value of a setting; `None` when it is empty or wrong.
    fn read<T>(&mut self, name: &str, read: impl Fn(&str) -> Result<T, String>) -> Option<T> {
        let given = self.values.get(name)?;
        match read(&given.text) {
            Ok(value) => Some(value),
            Err(wrong) => {
                let fault = |setting| SettingFault::of_value(setting, given, &wrong);
                self.faults.extend(list::named(name).map(fault));
                None
            }
        }
    }

    fn told(&mut self, fault: &str) {
        self.faults.push(SettingFault::told(fault));
    }
}

#[expect(clippy::unnecessary_wraps, reason = "the form that a reader has")]
fn path(text: &str) -> Result<PathBuf, String> {
    Ok(PathBuf::from(text))
}

impl Settings {
    /// Reads every value; or says everything that is wrong.
    pub fn read(values: &Values, faults: Vec<SettingFault>) -> Result<Self, Vec<SettingFault>> {
        let mut reader = Reader { values, faults };
        let bind = reader.read("bind", values::address);
        let keys = reader.read("keys", path);
        let without_keys = reader.read("without-keys", values::yes_or_no);
        let exposed = bind.is_some_and(|bind| !bind.ip().is_loopback());
        if exposed && keys.is_none() && without_keys == Some(false) {
            reader.told(
                "others can reach the address of --bind: give --keys, or say --without-keys to let anyone in",
            );
        }
        if keys.is_some() && without_keys == Some(true) {
            reader.told("--keys and --without-keys contradict each other");
        }
        let tls = match (reader.read("tls-certificate", path), reader.read("tls-key", path)) {
            (Some(certificate), Some(key)) => Some(TlsFiles { certificate, key }),
            (None, None) => None,
            _ => {
                reader.told("--tls-certificate and --tls-key go together");
                None
            }
        };
        let signing_key = reader.read("signing-key", path);
        let address_rate = reader.read("address-rate", values::count_or_none);
        let limits = Some(())
            .and_then(|()| reader.read("largest-body", values::size))
            .zip(reader.read("largest-takeoff", values::size))
            .zip(reader.read("body-wait", values::wait))
            .map(|((max_body_size, max_takeoff_size), body_timeout)| Limits {
                max_body_size,
                max_takeoff_size,
                body_timeout,
            });
        let connections = reader
            .read("most-connections", values::count)
            .zip(reader.read("header-wait", values::wait))
            .zip(reader.read("stall-wait", values::wait))
            .map(|((most, header_wait), stall_wait)| ConnectionLimits { most, header_wait, stall_wait });
        let collector = reader.read("otlp-endpoint", Collector::at);
        let headers = reader.read("otlp-headers", Collector::headers).unwrap_or_default();
        let sample = reader.read("otlp-sample", values::count);
        let most_requests = reader.read("most-requests", values::count);
        let notice = reader.read("notice", values::duration);
        let grace = reader.read("grace", values::duration);
        let log = reader.read("log", LogForm::filter);
        let log_form = reader.read("log-form", LogForm::read);
        let log_requests = reader.read("log-requests", LogRequests::read);
        let metrics_bind = reader.read("metrics-bind", values::address);
        let cors_origins = reader.read("cors-origins", |text| values::list(text, values::origin));
        let trusted_proxies = reader.read("trusted-proxies", |text| values::list(text, Network::read));
        let Reader { faults, .. } = reader;
        let settings = || {
            Some(Self {
                bind: bind?,
                metrics_bind,
                keys,
                tls,
                signing_key,
                cors_origins: cors_origins.unwrap_or_default(),
                trusted_proxies: trusted_proxies.unwrap_or_default(),
                limits: limits?,
                connections: connections?,
                most_requests: most_requests?,
                address_rate: address_rate.unwrap_or(exposed.then_some(EXPOSED_ADDRESS_RATE)),
                notice: notice?,
                grace: grace?,
                log: log?,
                log_form: log_form?,
                log_requests: log_requests?,
                collector: collector.zip(sample).map(|(collector, sample)| collector.with(headers, sample)),
            })
        };
        match settings() {
            Some(settings) if faults.is_empty() => Ok(settings),
            Some(_) => Err(faults),
            None if faults.is_empty() => {
                Err(vec![SettingFault::told("a setting is empty that needs a value")])
            }
            None => Err(faults),
        }
    }
}

/// The values in force, as a settings file; what is secret is only said to be there.
pub fn shown(values: &Values, settings: &Settings) -> String {
    let rate = settings.address_rate.map_or_else(|| "none".to_owned(), |rate| rate.to_string());
    let line = |(setting, given): (&list::Setting, &sources::Given)| {
        let member = setting.member();
        let text = if setting.name == "address-rate" { &rate } else { &given.text };
        let source = given.source;
        match setting.form {
            _ if text.is_empty() => format!("# {member} is not set\n"),
            Form::Secret => format!("# {member} is set and not shown  # {source}\n"),
            Form::Value => format!("{member} = {}  # {source}\n", quoted(text)),
            Form::Switch => format!("{member} = {text}  # {source}\n"),
            Form::List => {
                let members: Vec<String> = text.split(',').map(|member| quoted(member.trim())).collect();
                format!("{member} = [{}]  # {source}\n", members.join(", "))
            }
        }
    };
    values.iter().map(line).collect()
}

fn quoted(text: &str) -> String {
    toml::Value::String(text.to_owned()).to_string()
}

#[cfg(test)]
mod tests;
