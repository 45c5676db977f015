//! Whole takeoffs: order, accounting, what is wrong with single lines, streams that stall, the three forms.

use crate::support::{Reply, ask, good, send, the_app};
use axum::body::{Body, Bytes};
use axum::http::{Method, Request};
use elbowroom::answers::Explain;
use elbowroom::service::limits::ConnectionLimits;
use elbowroom::service::listen::Listener;
use elbowroom::service::listen::graceful_shutdown::GracefulShutdown;
use elbowroom::service::register::CheckEntry;
use elbowroom::service::{Limits, Service, app};
use elbowroom::takeoff::demo::Job;
use futures_util::{StreamExt, stream};
use serde_json::{Value, json};
use std::convert::Infallible;
use std::sync::Arc;
use std::time::{Duration, Instant};
use tokio::io::AsyncWriteExt;
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::mpsc;
use tokio::time::timeout;
use tower::ServiceExt;

/// The path of the operation.
pub const TAKEOFFS: &str = "/v1/takeoffs";

const NDJSON: &str = "application/x-ndjson";
const CSV: &str = "text/csv";
const JSON: &str = "application/json";

async fn post(sent: &str, wanted: Option<&str>, target: &str, body: impl Into<Body>) -> Reply {
    let mut headers = vec![("content-type", sent)];
    headers.extend(wanted.map(|wanted| ("accept", wanted)));
    ask(Method::POST, target, &headers, body).await
}

/// The records of an NDJSON answer, and the summary.
fn records(reply: &Reply) -> (Vec<Value>, Value) {
    assert_eq!((reply.status.as_u16(), reply.header("content-type")), (200, NDJSON));
    let text = std::str::from_utf8(&reply.body).unwrap();
    assert!(text.ends_with('\n'));
    let mut records: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    let last = records.pop().unwrap();
    assert_eq!(last.as_object().unwrap().len(), 1);
    (records, last["summary"].clone())
}

fn item(request: Value) -> Value {
    json!({"check": "outlet_box_fill", "request": request})
}

fn marked(reference: &str) -> Value {
    let mut request = good();
    request["reference"] = reference.into();
    item(request)
}

/// The lines of a summary add up.
fn assert_accounted(summary: &Value, received: u64) {
    let count = |member: &str| summary["lines"][member].as_u64().unwrap();
    assert_eq!(count("received"), received, "{summary}");
    assert_eq!(
        count("received"),
        count("answered") + count("refused") + count("blank") + count("header"),
        "{summary}"
    );
}

#[tokio::test]
async fn a_thousand_lines_are_answered_in_order_as_each_would_be_alone() {
    let lines: Vec<String> = Job::new(924, 3).collect();
    assert!(lines.len() > 1_000);
    let reply = post(NDJSON, None, TAKEOFFS, lines.join("\n")).await;
    let text = std::str::from_utf8(&reply.body).unwrap();
    let mut answers = text.lines();
    for (line, answer) in lines.iter().zip(&mut answers) {
        let item: Value = serde_json::from_str(line).unwrap();
        let check = CheckEntry::named(item["check"].as_str().unwrap()).unwrap();
        // the request as it stands in the line, not as it would be written anew
        let request = line.split_once("\"request\":").unwrap().1.strip_suffix('}').unwrap();
        let alone = (check.evaluate)(request.as_bytes(), Explain::Full).unwrap();
        assert!(answer.as_bytes() == alone.json, "{line}");
    }
    let summary: Value = serde_json::from_str(answers.next().unwrap()).unwrap();
    assert_eq!(answers.next(), None);
    assert_eq!(summary["summary"]["complete"], true);
    assert_accounted(&summary["summary"], lines.len() as u64);
}

#[tokio::test]
async fn a_line_that_is_wrong_stops_nothing_and_is_told_with_its_number_and_pointers() {
    let wrong = [
        ("{", "malformed-json", ""),
        ("[]", "invalid-request", ""),
        (r#"["outlet_box_fill", {}]"#, "invalid-request", ""),
        (r#"{"request": {}}"#, "invalid-request", "/check"),
        (r#"{"check": "outlet_box_fill"}"#, "invalid-request", "/request"),
        (r#"{"check": "outlet_box_fil", "request": {}}"#, "invalid-request", "/check"),
        (r#"{"check": "outlet_box_fill", "request": {}, "more": 1}"#, "invalid-request", "/more"),
        (r#"{"check": "outlet_box_fill", "request": 1}"#, "invalid-request", "/request"),
        (
            r#"{"check": "outlet_box_fill", "request": {"contents": {"devises": []}}}"#,
            "invalid-request",
            "/request/contents/devises",
        ),
        (
            r#"{"check": "outlet_box_fill", "request": {"reference": "r-1", "contents": {}, "contents": {}}}"#,
            "invalid-request",
            "/request/contents",
        ),
        (
            r#"{"check": "raceway_fill", "request": {"conductors": [{"insulation": "THHN", "size": "13"}]}}"#,
            "invalid-request",
            "/request/conductors/0/size",
        ),
    ];
    let mut lines = Vec::new();
    for (line, ..) in wrong {
        lines.extend([marked("before-1").to_string(), line.to_owned(), "  \r".to_owned()]);
    }
    let received = lines.len() as u64;
    let reply = post(NDJSON, None, TAKEOFFS, lines.join("\n")).await;
    let (found, summary) = records(&reply);
    assert_eq!(found.len(), wrong.len() * 2);
    for (index, (line, slug, pointer)) in wrong.into_iter().enumerate() {
        assert_eq!(found[2 * index]["check"], "outlet_box_fill");
        let problem = &found[2 * index + 1];
        assert_eq!(problem["type"], format!("/v1/problems/{slug}"), "{line}: {problem}");
        assert_eq!(problem["line"], 3 * index + 2, "{line}");
        assert_eq!(problem["errors"][0]["pointer"], pointer, "{line}: {problem}");
    }
    assert_eq!(found[19]["reference"], "r-1");
    assert_accounted(&summary, received);
    assert_eq!((&summary["lines"]["refused"], &summary["lines"]["blank"]), (&json!(11), &json!(11)));
    let places = json!([
        {"prefix": "before", "verdicts": {"complies": 11, "violates": 0, "not_determined": 0, "sized": 0}, "refused": 0},
        {"prefix": "r", "verdicts": {"complies": 0, "violates": 0, "not_determined": 0, "sized": 0}, "refused": 1}
    ]);
    assert_eq!(summary["prefixes"], places);
    assert_eq!(summary["no_prefix"]["refused"], 10);
}

#[tokio::test]
async fn a_huge_line_is_refused_and_the_rest_goes_on() {
    let most = Limits::default().max_body_size;
    let padded = |length: usize| {
        let line = marked("p-1").to_string();
        format!("{}{line}", " ".repeat(length - line.len()))
    };
    let body = [padded(most), padded(most + 1), "x".repeat(3 * most), marked("p-2").to_string()].join("\n");
    let (found, summary) = records(&post(NDJSON, None, TAKEOFFS, body).await);
    let kinds: Vec<&Value> = found.iter().map(|record| &record["type"]).collect();
    let too_large = json!("/v1/problems/body-too-large");
    assert_eq!(kinds, [&Value::Null, &too_large, &too_large, &Value::Null]);
    assert_eq!((&found[1]["line"], &found[2]["line"]), (&json!(2), &json!(3)));
    assert!(found[1]["detail"].as_str().unwrap().contains(&most.to_string()));
    assert_accounted(&summary, 4);
}

#[tokio::test]
async fn the_forms_come_to_the_same() {
    let rows = [
        ("square 4x2-1/8", "2 x 12-2 NM-B w/g", "receptacle 12", "complies"),
        ("3x2x2", "2 x 12-2 NM-B w/g", "receptacle 12", "violates"),
        ("", "14/3 MC w/g", "switch", "sized"),
        ("octagonal 4x1-1/4", "2 x 14-2 w/g", "", "complies"),
    ];
    let mut table = "Ref,Box,Cables,Devices\n".to_owned();
    for (index, (standard, cables, devices, _)) in rows.iter().enumerate() {
        table.push_str(&format!("r-{index},{standard},{cables},{devices}\n"));
    }
    let cable = |kind: &str, size: &str, conductors: u32, count: Option<u32>| {
        let mut cable = json!({"kind": kind, "size": size, "conductors": conductors, "grounding": size});
        if let Some(count) = count {
            cable["count"] = count.into();
        }
        cable
    };
    let device = json!({"kind": "receptacle", "largest_conductor": "12 AWG"});
    let items = json!([
        item(
            json!({"reference": "r-0", "enclosure": {"standard": "square-4x2-1/8"}, "contents": {"cables": [cable("NM-B", "12 AWG", 2, Some(2))], "devices": [device]}})
        ),
        item(
            json!({"reference": "r-1", "enclosure": {"standard": "device-3x2x2"}, "contents": {"cables": [cable("NM-B", "12 AWG", 2, Some(2))], "devices": [device]}})
        ),
        item(
            json!({"reference": "r-2", "contents": {"cables": [cable("MC", "14 AWG", 3, None)], "devices": [{"kind": "switch"}]}})
        ),
        item(
            json!({"reference": "r-3", "enclosure": {"standard": "octagonal-4x1-1/4"}, "contents": {"cables": [cable("other", "14 AWG", 2, Some(2))]}})
        ),
    ]);
    let document = json!({"items": items}).to_string();
    let lines: Vec<String> = items.as_array().unwrap().iter().map(Value::to_string).collect();
    let none = "/v1/takeoffs?explain=none";
    let mut answers = Vec::new();
    let mut verdicts = Vec::new();
    for (sent, body) in
        [(JSON, document), (JSON, items.to_string()), (NDJSON, lines.join("\n")), (CSV, table)]
    {
        let whole = post(sent, Some(JSON), none, body.clone()).await;
        assert_eq!(whole.header("content-type"), JSON);
        let whole = whole.json();
        let (found, summary) = records(&post(sent, Some(NDJSON), none, body.clone()).await);
        assert_eq!((&whole["answers"], &whole["summary"]), (&json!(found), &summary), "{sent}");
        let rows = post(sent, Some(CSV), none, body).await;
        assert_eq!(rows.header("content-type"), CSV);
        let mut reader = csv::Reader::from_reader(rows.body.as_slice());
        let rows: Vec<csv::StringRecord> = reader.records().map(Result::unwrap).collect();
        let answered = rows.iter().filter(|row| &row[0] == "answer");
        verdicts.push(answered.map(|row| row[4].to_owned()).collect::<Vec<_>>());
        let lines = rows.iter().filter(|row| &row[0] == "summary_lines" && &row[10] == "answered");
        assert_eq!(lines.map(|row| row[9].to_owned()).collect::<Vec<_>>(), ["4"]);
        answers.push(found);
    }
    // a device without its conductor cannot be counted, so nothing can be offered: the question has no verdict all the same
    let expected: Vec<&str> = rows.iter().map(|row| row.3).collect();
    for (found, verdicts) in answers.iter().zip(&verdicts) {
        assert!(found == &answers[0], "{}", json!([found, answers[0]]));
        assert_eq!(verdicts, &expected);
    }
}

#[tokio::test]
async fn items_of_a_document_are_told_by_their_place() {
    for (above, body) in [
        ("/items", json!({"items": [marked("a-1"), {"check": "raceway_fill", "request": {"kind": 1}}, 7]})),
        ("", json!([marked("a-1"), {"check": "raceway_fill", "request": {"kind": 1}}, 7])),
    ] {
        let answer = post(JSON, None, TAKEOFFS, body.to_string()).await.json();
        let answers = answer["answers"].as_array().unwrap();
        assert_eq!(answers.len(), 3);
        assert_eq!((&answers[1]["item"], answers[1].get("line")), (&json!(1), None));
        assert_eq!(answers[1]["errors"][0]["pointer"], format!("{above}/1/request/kind"));
        assert_eq!(answers[2]["errors"][0]["pointer"], format!("{above}/2"));
        assert_accounted(&answer["summary"], 3);
    }
    let empty = post(JSON, None, TAKEOFFS, "[]").await;
    assert!(empty.body.starts_with(b"{\"answers\":[],\"summary\":{"), "{empty:?}");
    let first_refused = post(JSON, None, TAKEOFFS, "[1]").await.json();
    assert_eq!(first_refused["answers"].as_array().unwrap().len(), 1);
}

#[tokio::test]
async fn what_is_wrong_with_a_row_is_told_by_its_column() {
    let table = "reference,box,gangs,cables,clamps\n\
                 a-1,4 x 1-1/2,,12-2 w/g,\n\
                 a-2,square 4x2-1/8,2,12-2 w/g,perhaps\n\
                 a-3,square 4x2-1/8,2,12-2 w/g,\n\
                 a-4,square 4x2-1/8,,51 x 12-2 w/g,\n\
                 a-5,\"square,,,\n\
                 \u{fffd},square 4x2-1/8,,2000 x 12-2 w/g,\n";
    let (found, summary) = records(&post(CSV, Some(NDJSON), TAKEOFFS, table).await);
    let told = |index: usize| {
        let errors = found[index]["errors"].as_array().unwrap();
        let told =
            errors.iter().map(|fault| (fault["pointer"].as_str().unwrap(), fault["code"].as_str().unwrap()));
        (found[index]["line"].as_u64().unwrap(), told.collect::<Vec<_>>())
    };
    assert_eq!(told(0), (2, vec![("/box", "ambiguous")]));
    assert_eq!(told(1), (3, vec![("/clamps", "unknown-value")]));
    // a fault that the check finds is told by the column too
    assert_eq!(told(2), (4, vec![("/gangs", "conflict")]));
    assert_eq!(found[2]["reference"], "a-3");
    assert_eq!(found[3]["verdict"], "violates");
    assert_eq!(told(4), (6, vec![("", "not-accepted")]));
    assert_eq!(told(5), (7, vec![("/cables", "out-of-bounds")]));
    assert_accounted(&summary, 7);
    assert_eq!(summary["lines"]["header"], 1);
}

#[tokio::test]
async fn a_table_without_a_good_header_is_refused_whole() {
    let problem =
        post(CSV, None, TAKEOFFS, "reference,colour,box,Box\n").await.problem(422, "invalid-request");
    let places: Vec<&Value> =
        problem["errors"].as_array().unwrap().iter().map(|fault| &fault["pointer"]).collect();
    assert_eq!(places, [&json!("/colour"), &json!("/Box")]);
    post(CSV, None, TAKEOFFS, "").await.problem(422, "invalid-request");
    post(CSV, None, TAKEOFFS, "\n\n\n").await.problem(422, "invalid-request");
    post(CSV, None, TAKEOFFS, vec![0xff, b'\n']).await.problem(422, "invalid-request");
    post(CSV, None, TAKEOFFS, "x".repeat(2 * 1024 * 1024)).await.problem(413, "body-too-large");
}

#[tokio::test]
async fn forms_that_are_not_taken_are_refused_before_anything_is_read() {
    let body = || marked("a-1").to_string();
    post("application/xml", None, TAKEOFFS, body()).await.problem(415, "unsupported-media-type");
    post("text/csv; charset=latin1", None, TAKEOFFS, body()).await.problem(415, "unsupported-media-type");
    post(NDJSON, Some("text/html"), TAKEOFFS, body()).await.problem(406, "not-acceptable");
    post(NDJSON, None, "/v1/takeoffs?explain=much", body()).await.problem(422, "invalid-request");
    post(JSON, None, TAKEOFFS, "{\"items\": [").await.problem(400, "malformed-json");
    post(JSON, None, TAKEOFFS, "{\"itms\": []}").await.problem(422, "invalid-request");
    for (accept, form) in
        [("*/*", NDJSON), ("application/json;q=0.5, text/csv", CSV), ("application/*", NDJSON)]
    {
        assert_eq!(
            post(NDJSON, Some(accept), TAKEOFFS, body()).await.header("content-type"),
            form,
            "{accept}"
        );
    }
    let request = Request::get(TAKEOFFS).body(Body::empty()).unwrap();
    send(the_app(), request).await.problem(405, "method-not-allowed");
}

#[tokio::test]
async fn a_bill_has_what_complies_and_the_smallest_that_does_for_what_does_not() {
    let with = |enclosure: Value| {
        let mut request = good();
        request["enclosure"] = enclosure;
        item(request)
    };
    let mut sized = good();
    sized.as_object_mut().unwrap().shift_remove("enclosure");
    let items = json!([
        with(json!({"standard": "square-4x2-1/8"})),
        with(json!({"standard": "device-3x2x2"})),
        item(sized),
        with(json!({"material": "nonmetallic", "marked_volume": 20.3})),
        with(json!({"material": "nonmetallic", "marked_volume": 20.3})),
        with(json!({"material": "nonmetallic"})),
    ]);
    let summary = &post(JSON, None, TAKEOFFS, items.to_string()).await.json()["summary"];
    // 15.75 in³ are required: the smallest volume of the table from there on is 18.0
    let bill = json!({
        "standard_boxes": [
            {"box": "square-4x1-1/4", "gangs": 1.0, "count": 2},
            {"box": "square-4x2-1/8", "gangs": 1.0, "count": 1}
        ],
        "marked_boxes": [{"material": "nonmetallic", "marked_volume": 20.3, "unit": "in3", "count": 2}],
        "raceways": [],
        "open": 1,
        "more": 0
    });
    assert_eq!(summary["bill"], bill);
    assert_eq!(summary["rules_violated"], json!([{"rule": "outlet-volume.scope", "answers": 1}]));
    let verdicts = json!({"complies": 3, "violates": 1, "not_determined": 1, "sized": 1});
    assert_eq!(summary["checks"], json!([{"check": "outlet_box_fill", "verdicts": verdicts}]));
}

/// A body that is sent piece by piece, by whoever holds the sender.
fn piecemeal() -> (mpsc::Sender<Bytes>, Body) {
    let (sender, receiver) = mpsc::channel::<Bytes>(1);
    let pieces = stream::unfold(receiver, |mut receiver| async move {
        receiver.recv().await.map(|piece| (Ok::<_, Infallible>(piece), receiver))
    });
    (sender, Body::from_stream(pieces))
}

async fn begin(limits: Limits, body: Body) -> axum::body::BodyDataStream {
    let service = Arc::new(Service::start(limits).unwrap());
    let request = Request::post(TAKEOFFS).header("content-type", NDJSON).body(body).unwrap();
    let response = app(service).oneshot(request).await.unwrap();
    assert_eq!(response.status(), 200);
    response.into_body().into_data_stream()
}

#[tokio::test]
async fn a_line_is_answered_before_the_next_is_sent() {
    let (sender, body) = piecemeal();
    let mut answers = begin(Limits::default(), body).await;
    for number in 0..5 {
        let line = format!("{}\n", marked(&format!("n-{number}")));
        sender.send(line.into()).await.unwrap();
        let answer = timeout(Duration::from_secs(10), answers.next()).await.unwrap().unwrap().unwrap();
        let answer: Value = serde_json::from_slice(&answer).unwrap();
        assert_eq!(answer["reference"], format!("n-{number}"));
    }
    drop(sender);
    let last = answers.next().await.unwrap().unwrap();
    assert!(last.starts_with(b"{\"summary\""), "{last:?}");
    assert!(answers.next().await.is_none());
}

#[tokio::test]
async fn a_pause_that_is_too_long_ends_the_stream_and_what_had_arrived_is_accounted_for() {
    let limits = Limits { body_timeout: Duration::from_millis(300), ..Limits::default() };
    let (sender, body) = piecemeal();
    let answers = begin(limits, body).await;
    // longer altogether than a pause may be: what goes on is not cut
    let sending = tokio::spawn(async move {
        for _ in 0..8 {
            sender.send(format!("{}\n", marked("n-1")).into()).await.unwrap();
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
        sender.send("{\"check\"".into()).await.unwrap();
        // held, never ended
        sender
    });
    let pieces: Vec<Bytes> = answers.map(Result::unwrap).collect().await;
    let text = String::from_utf8(pieces.concat()).unwrap();
    let found: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(found.len(), 10, "{text}");
    assert_eq!((&found[8]["type"], &found[8]["line"]), (&json!("/v1/problems/request-timeout"), &json!(9)));
    let summary = &found[9]["summary"];
    assert_eq!(summary["complete"], false);
    assert_accounted(summary, 9);
    drop(sending.await.unwrap());
}

/// Bytes now and then are no lines: a caller that sends nothing but those is cut off after the time of a pause.
#[tokio::test]
async fn a_caller_that_sends_a_byte_now_and_then_is_cut_off() {
    let limits = Limits { body_timeout: Duration::from_millis(400), ..Limits::default() };
    for byte in ["x", "\n", " "] {
        let (sender, body) = piecemeal();
        let answers = begin(limits, body).await;
        let start = Instant::now();
        let sending = tokio::spawn(async move {
            while sender.send(byte.into()).await.is_ok() {
                tokio::time::sleep(Duration::from_millis(20)).await;
            }
        });
        let pieces: Vec<Bytes> = answers.map(Result::unwrap).collect().await;
        let took = start.elapsed();
        assert!((Duration::from_millis(350)..Duration::from_secs(3)).contains(&took), "{byte:?}: {took:?}");
        let text = String::from_utf8(pieces.concat()).unwrap();
        assert!(
            text.contains("/v1/problems/request-timeout") && text.contains("\"complete\":false"),
            "{text}"
        );
        timeout(Duration::from_secs(3), sending).await.expect("nothing more is taken").unwrap();
    }
}

#[tokio::test]
async fn a_line_without_an_end_is_cut_off_however_fast_it_comes() {
    let limits = Limits { body_timeout: Duration::from_millis(400), ..Limits::default() };
    let body = Body::from_stream(stream::repeat_with(|| Ok::<_, Infallible>(Bytes::from(vec![b'x'; 8192]))));
    let answers = begin(limits, body).await;
    let all = timeout(Duration::from_secs(5), answers.map(Result::unwrap).collect::<Vec<_>>());
    let text = all.await.expect("it is cut off").concat();
    assert!(String::from_utf8(text).unwrap().contains("/v1/problems/request-timeout"));
}

#[tokio::test]
async fn a_caller_who_leaves_frees_the_work_at_once() {
    let (sender, body) = piecemeal();
    let mut answers = begin(Limits::default(), body).await;
    sender.send(format!("{}\n", marked("n-1")).into()).await.unwrap();
    answers.next().await.unwrap().unwrap();
    drop(answers);
    // nobody takes in what is sent any more: the body was let go
    timeout(Duration::from_secs(5), sender.closed()).await.expect("the body is dropped");
}

#[tokio::test]
async fn a_caller_who_does_not_read_is_not_read_from() {
    let (sender, body) = piecemeal();
    let answers = begin(Limits::default(), body).await;
    let piece: String = (0..20).map(|_| format!("{}\n", marked("n-1"))).collect();
    let piece = Bytes::from(piece);
    let mut taken = 0;
    // until it is full it takes what it is sent; then no more, however long one waits
    while timeout(Duration::from_millis(500), sender.send(piece.clone())).await.is_ok_and(|sent| sent.is_ok())
    {
        taken += 1;
        assert!(taken < 200, "it takes {} bytes and goes on", taken * piece.len());
    }
    assert!(taken > 2);
    // and goes on when the caller does
    drop(sender);
    let pieces: Vec<Bytes> = answers.map(Result::unwrap).collect().await;
    let lines = pieces.concat().iter().filter(|byte| **byte == b'\n').count();
    assert!(lines > taken * 20 && (lines - 1) % 20 == 0, "{lines} of {taken}");
}

/// Over a socket: a caller who sends and sends and never reads is cut, and what it holds is free again.
#[tokio::test]
async fn a_caller_who_never_reads_is_cut() {
    let limits = Limits { body_timeout: Duration::from_millis(500), ..Limits::default() };
    let service = Arc::new(Service::start(limits).unwrap());
    let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
    let address = listener.local_addr().unwrap();
    let limits = ConnectionLimits {
        max_connections: 10,
        header_timeout: Duration::from_secs(5),
        write_timeout: Duration::from_millis(500),
    };
    let router = app(Arc::clone(&service));
    let serving = Listener { limits, tls: None, service, router };
    tokio::spawn(
        async move { serving.run(listener, std::future::pending(), &GracefulShutdown::default()).await },
    );
    let mut stream = TcpStream::connect(address).await.unwrap();
    let head = format!(
        "POST {TAKEOFFS} HTTP/1.1\r\nhost: x\r\ncontent-type: {NDJSON}\r\ntransfer-encoding: chunked\r\n\r\n"
    );
    stream.write_all(head.as_bytes()).await.unwrap();
    let line = format!("{}\n", marked("n-1"));
    let lines = line.repeat(100);
    let chunk = format!("{:x}\r\n{lines}\r\n", lines.len());
    let mut sent = 0;
    let cut = timeout(Duration::from_secs(60), async {
        while stream.write_all(chunk.as_bytes()).await.is_ok() {
            sent += chunk.len();
        }
    });
    cut.await.expect("the connection is cut");
    assert!(sent < 64 * 1024 * 1024, "{sent} bytes were taken");
}

#[tokio::test]
async fn many_takeoffs_at_a_time_keep_their_own_order() {
    let takeoffs = (0..12_u64).map(|seed| async move {
        let lines: Vec<String> = Job::new(120, seed).collect();
        let (found, summary) =
            records(&post(NDJSON, None, "/v1/takeoffs?explain=none", lines.join("\n")).await);
        for (line, record) in lines.iter().zip(&found) {
            let item: Value = serde_json::from_str(line).unwrap();
            assert_eq!(record["reference"], item["request"]["reference"]);
        }
        assert_accounted(&summary, lines.len() as u64);
    });
    futures_util::future::join_all(takeoffs).await;
}
