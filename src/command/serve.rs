//! `elbowroom serve`.

use super::{complain, print, status};
use crate::service::run::{self, RunFault, documentation};
use crate::service::{Limits, Service};
use clap::Args;
use std::net::SocketAddr;
use std::panic;
use std::process::ExitCode;
use tracing_subscriber::EnvFilter;

/// How the service is reached.
#[derive(Clone, Copy, Debug, Args)]
pub struct ServeArguments {
    /// The address and port to listen on; port 0 takes any free one.
    #[arg(long, env = "ELBOWROOM_BIND", value_name = "ADDRESS:PORT", default_value = "127.0.0.1:8314")]
    bind: SocketAddr,
}

/// What is logged: `ELBOWROOM_LOG=info` has a line for each request.
const LOG: &str = "ELBOWROOM_LOG";

/// Serves until told to stop.
pub fn run(arguments: &ServeArguments) -> ExitCode {
    let filter = EnvFilter::try_from_env(LOG).unwrap_or_else(|_| EnvFilter::new("warn"));
    tracing_subscriber::fmt().with_env_filter(filter).with_writer(std::io::stderr).init();
    // the place of a panic, never its message: that could hold part of a request
    panic::set_hook(Box::new(|panic| {
        let place = panic.location().map(ToString::to_string).unwrap_or_default();
        tracing::error!(place, "panic");
    }));
    let service = match Service::start(Limits::default()) {
        Ok(service) => service,
        Err(fault) => return complain(&fault, status::SOFTWARE),
    };
    let listening = |address: SocketAddr| {
        let line =
            format!("elbowroom listens on http://{address}; documentation: {}\n", documentation(address));
        print(&line, ExitCode::SUCCESS);
    };
    match run::serve(service, arguments.bind, listening) {
        Ok(()) => ExitCode::SUCCESS,
        Err(fault @ (RunFault::Bind(..) | RunFault::System(_))) => complain(&fault, status::SYSTEM),
    }
}
