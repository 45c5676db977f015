//! `elbowroom healthcheck`: for a container that has no other program in it.

use super::serve::ServeArguments;
use super::{complain, status};
use std::io::{self, Read, Write};
use std::net::{IpAddr, Ipv4Addr, Ipv6Addr, SocketAddr, TcpStream};
use std::process::ExitCode;
use std::time::Duration;

const TIMEOUT: Duration = Duration::from_secs(3);

/// Asks the service that has these settings whether it is ready: on the address of the metrics where there is one.
pub fn run(arguments: &ServeArguments) -> ExitCode {
    let settings = match arguments.settings() {
        Ok((_, settings)) => settings,
        Err(_) => {
            return complain(
                &"the settings have faults; run elbowroom --print-settings to see them",
                status::CONFIGURATION,
            );
        }
    };
    if settings.tls_certificate.is_some() && settings.metrics_bind.is_none() {
        return complain(
            &"with TLS, set --metrics-bind: health is then checked on that address",
            status::CONFIGURATION,
        );
    }
    let mut address = settings.metrics_bind.unwrap_or(settings.bind);
    match address.ip() {
        IpAddr::V4(Ipv4Addr::UNSPECIFIED) => address.set_ip(Ipv4Addr::LOCALHOST.into()),
        IpAddr::V6(Ipv6Addr::UNSPECIFIED) => address.set_ip(Ipv6Addr::LOCALHOST.into()),
        _ => {}
    }
    match ask(address) {
        Ok(answer) if answer.starts_with("HTTP/1.1 200 ") => ExitCode::SUCCESS,
        Ok(answer) => complain(&answer.lines().next().unwrap_or("no answer"), status::UNAVAILABLE),
        Err(error) => complain(&format!("{address}: {error}"), status::UNAVAILABLE),
    }
}

fn ask(address: SocketAddr) -> io::Result<String> {
    let mut stream = TcpStream::connect_timeout(&address, TIMEOUT)?;
    stream.set_read_timeout(Some(TIMEOUT))?;
    stream.set_write_timeout(Some(TIMEOUT))?;
    write!(stream, "GET /health/ready HTTP/1.1\r\nhost: {address}\r\nconnection: close\r\n\r\n")?;
    let mut answer = String::new();
    stream.take(16 * 1024).read_to_string(&mut answer)?;
    Ok(answer)
}
