//! A client made from the document asks a running service: `elbowroom-client-roundtrip URL`

mod client;

use anyhow::{Context, Result, bail, ensure};
use client::{
    ApiResponse, Cable, CableKind, Contents, DrawingOrOutletFillAnswer, Elbowroom, Enclosure, OutletBoxFillRequest, OutletFillRequest, RuleRequest,
    RuleRequestPath, Verdict,
};

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let client = Elbowroom::with_base_url(std::env::args().nth(1).context("the URL")?)?;
    let cable = Cable {
        kind: CableKind::NmB,
        size: "12 AWG".to_owned(),
        conductors: 2,
        grounding: Some("12 AWG".to_owned()),
        existing_cable: None,
        count: Some(2),
    };
    let request = OutletFillRequest {
        reference: Some("hall-3".to_owned()),
        enclosure: Some(Enclosure { standard: Some("square-4x2-1/8".to_owned()), ..Enclosure::default() }),
        contents: Some(Contents { cables: Some(vec![cable]), ..Contents::default() }),
        ..OutletFillRequest::default()
    };
    let ask = |body| client.outlet_box_fill(OutletBoxFillRequest { body, ..OutletBoxFillRequest::default() });
    let ApiResponse::Ok(answer) = ask(request).await? else { bail!("the request was not answered") };
    let DrawingOrOutletFillAnswer::OutletFillAnswer(answer) = answer.body else { bail!("a drawing that nobody asked for") };
    ensure!(answer.verdict == Some(Verdict::Complies) && answer.reference.as_deref() == Some("hall-3"), "{answer:?}");

    let id = answer.findings.first().context("a finding")?.rule.clone();
    let path = RuleRequestPath { id: id.clone() };
    let ApiResponse::Ok(rule) = client.rule(RuleRequest { path, ..RuleRequest::default() }).await? else { bail!("the rule was not found") };
    ensure!(rule.body.id == id, "{rule:?}");

    let ApiResponse::UnprocessableEntity(refused) = ask(OutletFillRequest::default()).await? else {
        bail!("a request without contents was not refused")
    };
    ensure!(refused.body.status == 422 && refused.body.errors.is_some_and(|errors| !errors.is_empty()));
    println!("Rust: an answer, its rule and a problem came back as their types say");
    Ok(())
}
