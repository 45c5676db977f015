//! Metrics of the process under their standard names, read from `/proc` at each scrape; absent where there is none.

use prometheus_client::collector::Collector;
use prometheus_client::encoding::{DescriptorEncoder, EncodeMetric};
use prometheus_client::metrics::counter::ConstCounter;
use prometheus_client::metrics::gauge::ConstGauge;
use std::fmt;
use std::fs;

/// Clock ticks a second, as `/proc` counts time: part of Linux's interface on every supported architecture.
const TICKS: f64 = 100.0;

/// Describes this process.
#[derive(Debug)]
pub struct ProcessCollector;

impl Collector for ProcessCollector {
    fn encode(&self, mut encoder: DescriptorEncoder<'_>) -> fmt::Result {
        let stat = fs::read_to_string("/proc/self/stat").unwrap_or_default();
        // the name of the program may hold anything; the fields after it begin with the third of proc(5)
        let fields: Vec<&str> =
            stat.rsplit_once(')').map_or(vec![], |(_, rest)| rest.split_whitespace().collect());
        let field = |number: usize| fields.get(number - 3)?.parse::<f64>().ok();
        let cpu = field(14).zip(field(15)).map(|(user, system)| ConstCounter::new((user + system) / TICKS));
        write(&mut encoder, "process_cpu_seconds", "Processor time, of user and system.", cpu)?;
        let mut gauge =
            |name, help, value: Option<f64>| write(&mut encoder, name, help, value.map(ConstGauge::new));
        let started =
            value_in("/proc/stat", "btime").zip(field(22)).map(|(boot, ticks)| boot + ticks / TICKS);
        gauge("process_start_time_seconds", "When the process started, since 1970.", started)?;
        let resident = value_in("/proc/self/status", "VmRSS:").map(|kibibytes| kibibytes * 1024.0);
        gauge("process_resident_memory_bytes", "Memory that is held.", resident)?;
        gauge("process_virtual_memory_bytes", "Memory that is mapped.", field(23))?;
        let open = fs::read_dir("/proc/self/fd").ok().map(|open| open.count() as f64);
        gauge("process_open_fds", "File descriptors that are open.", open)?;
        let most = value_in("/proc/self/limits", "Max open files");
        gauge("process_max_fds", "File descriptors that may be open.", most)
    }
}

fn write(
    encoder: &mut DescriptorEncoder<'_>,
    name: &str,
    help: &str,
    metric: Option<impl EncodeMetric>,
) -> fmt::Result {
    let Some(metric) = metric else { return Ok(()) };
    metric.encode(encoder.encode_descriptor(name, help, None, metric.metric_type())?)
}

/// The number after a name at the beginning of a line.
fn value_in(file: &str, name: &str) -> Option<f64> {
    let text = fs::read_to_string(file).ok()?;
    text.lines().find_map(|line| line.strip_prefix(name))?.split_whitespace().next()?.parse().ok()
}
