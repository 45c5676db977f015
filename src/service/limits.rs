//! What a request and a connection may take up.

use super::settings::values;
use clap::Args;
use std::time::Duration;

/// The limits of a request.
#[derive(Args, Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// Largest request body, from 1KiB to 64MiB; also the longest line of a streamed takeoff
    #[arg(long, env = "ELBOWROOM_MAX_BODY_SIZE", value_name = "SIZE", default_value = "1MiB", value_parser = values::size)]
    pub max_body_size: usize,
    /// Largest takeoff sent as one JSON document; one that is streamed line by line has no limit
    #[arg(long, env = "ELBOWROOM_MAX_TAKEOFF_SIZE", value_name = "SIZE", default_value = "16MiB", value_parser = values::size)]
    pub max_takeoff_size: usize,
    /// Read timeout of a request body, or of the next whole line of one that is streamed
    // evaluating a request takes microseconds, so this bounds the whole of it
    #[arg(long, env = "ELBOWROOM_BODY_TIMEOUT", value_name = "TIME", default_value = "10s", value_parser = values::timeout)]
    pub body_timeout: Duration,
}

impl Default for Limits {
    fn default() -> Self {
        Self {
            max_body_size: 1024 * 1024,
            max_takeoff_size: 16 * 1024 * 1024,
            body_timeout: Duration::from_secs(10),
        }
    }
}

/// The limits of a connection, and of how many there are.
#[derive(Args, Clone, Copy, Debug, PartialEq, Eq)]
pub struct ConnectionLimits {
    /// Connections that may be open at once; further ones are answered 503
    #[arg(long, env = "ELBOWROOM_MAX_CONNECTIONS", value_name = "COUNT", default_value = "4096", value_parser = values::count)]
    pub max_connections: u32,
    /// Read timeout of the TLS handshake and of the next request up to its body; also closes idle keep-alive connections
    #[arg(long, env = "ELBOWROOM_HEADER_TIMEOUT", value_name = "TIME", default_value = "15s", value_parser = values::timeout)]
    pub header_timeout: Duration,
    /// Write timeout: a client must read at least 16 KiB of its answer, or all of it, within this time
    #[arg(long, env = "ELBOWROOM_WRITE_TIMEOUT", value_name = "TIME", default_value = "30s", value_parser = values::timeout)]
    pub write_timeout: Duration,
}
