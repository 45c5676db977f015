//! What an operator sees: counts, log lines, traces — and that no content of a request is among it.

use crate::process::{Served, program};
use crate::support::{FILL, good};
use serde_json::{Value, json};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpListener;
use std::time::Duration;

const PARENT: &str = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";

fn post(served: &Served, body: &Value, headers: &str) -> String {
    let body = body.to_string();
    served.ask(&format!(
        "POST {FILL}?explain=none HTTP/1.1\r\nhost: x\r\nconnection: close\r\ncontent-type: application/json\r\n\
         {headers}content-length: {}\r\n\r\n{body}",
        body.len()
    ))
}

fn get(served: &Served, path: &str) -> String {
    served.ask(&format!("GET {path} HTTP/1.1\r\nhost: x\r\nconnection: close\r\n\r\n"))
}

/// A request that holds a word to look for.
fn marked() -> Value {
    let mut request = good();
    request["reference"] = json!("sesame");
    request
}

/// Ends a service and gives back what it wrote to standard error.
fn log_of(mut served: Served) -> String {
    served.signal("TERM");
    served.child.wait().unwrap();
    let mut log = String::new();
    served.child.stderr.take().unwrap().read_to_string(&mut log).unwrap();
    log
}

#[test]
fn counts_are_kept_by_operation_status_and_verdict() {
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    for _ in 0..3 {
        post(&served, &marked(), "");
    }
    post(&served, &json!({"editio": "sesame"}), "");
    get(&served, "/nowhere/sesame");
    get(&served, "/docs/");
    let lines = format!("{}\nsesame\n", json!({"check": "outlet_box_fill", "request": marked()}));
    served.ask(&format!(
        "POST /v1/takeoffs?explain=none HTTP/1.1\r\nhost: x\r\nconnection: close\r\ncontent-type: \
         application/x-ndjson\r\ncontent-length: {}\r\n\r\n{lines}",
        lines.len()
    ));
    let page = get(&served, "/metrics");
    for line in [
        "http_requests_total{operation=\"outlet_box_fill\",status=\"200\"} 3",
        "http_requests_total{operation=\"takeoff\",status=\"200\"} 1",
        "http_requests_total{operation=\"outlet_box_fill\",status=\"422\"} 1",
        "http_requests_total{operation=\"unknown\",status=\"404\"} 1",
        "http_requests_total{operation=\"documentation\",status=\"200\"} 1",
        "http_request_duration_seconds_bucket{operation=\"outlet_box_fill\",le=\"+Inf\"} 4",
        "http_request_duration_seconds_count{operation=\"outlet_box_fill\"} 4",
        "elbowroom_verdicts_total{check=\"outlet_box_fill\",verdict=\"complies\"} 4",
        "elbowroom_verdicts_total{check=\"outlet_box_fill\",verdict=\"violates\"} 0",
        "elbowroom_rejections_total{reason=\"busy\"} 0",
        "elbowroom_stream_lines_total{result=\"answered\"} 1",
        "elbowroom_stream_lines_total{result=\"refused\"} 1",
        "http_requests_in_progress 1",
    ] {
        assert!(page.contains(&format!("{line}\n")), "{line}: {page}");
    }
    assert!(page.contains("\nelbowroom_open_connections "), "{page}");
    for standard in
        ["cpu_seconds_total", "resident_memory_bytes", "open_fds", "max_fds", "start_time_seconds"]
    {
        assert!(page.contains(&format!("\nprocess_{standard} ")), "{standard}: {page}");
    }
    assert!(page.contains("elbowroom_build_info{version=\"") && !page.contains("sesame"), "{page}");
    assert!(page.contains("content-type: text/plain; version=0.0.4"), "{page}");
}

/// Every family is announced once, before its lines; every line has a family and a number.
#[test]
fn the_page_of_metrics_has_the_form_that_is_asked_for() {
    let served = Served::start(&["--bind", "127.0.0.1:0"]);
    post(&served, &good(), "");
    let page = get(&served, "/metrics");
    let page = page.split("\r\n\r\n").nth(1).unwrap();
    let mut families = std::collections::BTreeSet::new();
    let mut family = "";
    for line in page.lines() {
        if let Some(announced) = line.strip_prefix("# TYPE ") {
            family = announced.split(' ').next().unwrap();
            assert!(families.insert(family), "{family} stands twice");
        } else if !line.starts_with("# HELP ") {
            let (name, value) = line.rsplit_once(' ').unwrap();
            let name = name.split('{').next().unwrap();
            let bare =
                ["_bucket", "_sum", "_count"].iter().find_map(|end| name.strip_suffix(end)).unwrap_or(name);
            assert!(name == family || bare == family, "{line} is not of {family}");
            assert!(value.parse::<f64>().is_ok_and(|value| value >= 0.0), "{line}");
        }
    }
    assert!(families.len() > 10);
}

#[test]
fn a_log_line_names_the_operation_and_the_trace_and_nothing_of_the_content() {
    let served = Served::start(&["--bind", "127.0.0.1:0", "--log-format", "json", "--log-requests", "all"]);
    let headers = format!("x-request-id: from-the-caller\r\ntraceparent: {PARENT}\r\nx-other: sesame\r\n");
    post(&served, &marked(), &headers);
    get(&served, "/nowhere/sesame?sesame=1");
    let log = log_of(served);
    assert!(!log.contains("sesame"), "{log}");
    let lines: Vec<Value> = log.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let line = lines.iter().find(|line| line["operation"] == "outlet_box_fill").unwrap();
    assert_eq!((&line["status"], &line["method"]), (&json!(200), &json!("POST")));
    assert_eq!(line["request_id"], "from-the-caller");
    assert_eq!(line["trace_id"], "4bf92f3577b34da6a3ce929d0e0e4736");
    assert!(line["micros"].is_u64());
    assert!(lines.iter().any(|line| line["operation"] == "unknown" && line["status"] == 404), "{log}");
}

#[test]
fn without_more_being_asked_for_only_failures_are_logged() {
    let served = Served::start(&["--bind", "127.0.0.1:0", "--shutdown-delay", "400ms"]);
    post(&served, &marked(), "");
    get(&served, "/nowhere");
    served.signal("TERM");
    std::thread::sleep(Duration::from_millis(150));
    assert!(get(&served, "/health/ready").starts_with("HTTP/1.1 503"));
    let mut served = served;
    served.child.wait().unwrap();
    let mut log = String::new();
    served.child.stderr.take().unwrap().read_to_string(&mut log).unwrap();
    assert!(log.contains("operation=\"ready\"") && log.contains("503"), "{log}");
    assert!(!log.contains("404") && !log.contains("outlet_box_fill"), "{log}");
}

/// Takes one export and answers it.
fn collect(listener: &TcpListener) -> (String, Value) {
    let (stream, _) = listener.accept().unwrap();
    stream.set_read_timeout(Some(Duration::from_secs(5))).unwrap();
    let mut reader = BufReader::new(stream);
    let mut head = String::new();
    while !head.ends_with("\r\n\r\n") {
        reader.read_line(&mut head).unwrap();
    }
    let length =
        head.lines().find_map(|line| line.strip_prefix("content-length: ")).unwrap().parse().unwrap();
    let mut body = vec![0; length];
    reader.read_exact(&mut body).unwrap();
    reader.get_mut().write_all(b"HTTP/1.1 200 OK\r\ncontent-length: 2\r\n\r\n{}").unwrap();
    (head, serde_json::from_slice(&body).unwrap())
}

#[test]
fn a_trace_reaches_its_collector_with_the_parent_of_the_caller() {
    let listener = TcpListener::bind("127.0.0.1:0").unwrap();
    let endpoint = format!("http://{}/v1/traces", listener.local_addr().unwrap());
    let mut program =
        program(&["--bind", "127.0.0.1:0", "--otlp-endpoint", &endpoint, "--otlp-sample", "10000000"]);
    program.env("ELBOWROOM_OTLP_HEADERS", "authorization=Bearer open");
    let served = Served::of(program);
    get(&served, "/health/live"); // the first of so many is sampled
    post(&served, &marked(), &format!("traceparent: {PARENT}\r\n"));
    post(&served, &marked(), &format!("traceparent: {}\r\n", PARENT.replace("-01", "-00")));
    let (head, export) = collect(&listener);
    assert!(
        head.starts_with("POST /v1/traces HTTP/1.1\r\n") && head.contains("authorization: Bearer open"),
        "{head}"
    );
    assert!(!export.to_string().contains("sesame"), "{export}");
    let spans = export["resourceSpans"][0]["scopeSpans"][0]["spans"].as_array().unwrap();
    assert_eq!(spans.len(), 2, "{export}");
    let span = spans.iter().find(|span| span["name"] == "outlet_box_fill").unwrap();
    assert_eq!(span["traceId"], "4bf92f3577b34da6a3ce929d0e0e4736");
    assert_eq!(span["parentSpanId"], "00f067aa0ba902b7");
    let time = |member: &str| span[member].as_str().unwrap().parse::<u128>().unwrap();
    assert!(time("startTimeUnixNano") < time("endTimeUnixNano"));
    assert_eq!(span["attributes"][1]["value"]["intValue"], "200");
    assert!(!log_of(served).contains("Bearer open"));
}

#[test]
fn a_collector_that_is_gone_costs_nothing_but_the_spans() {
    let served = Served::start(&[
        "--bind",
        "127.0.0.1:0",
        "--otlp-endpoint",
        "http://127.0.0.1:1/",
        "--otlp-sample",
        "1",
    ]);
    for _ in 0..5 {
        assert!(post(&served, &good(), "").starts_with("HTTP/1.1 200"));
    }
    std::thread::sleep(Duration::from_millis(1_500));
    let page = get(&served, "/metrics");
    assert!(page.contains("elbowroom_dropped_spans_total 5\n"), "{page}");
}
