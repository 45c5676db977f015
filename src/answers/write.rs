//! An answer as JSON text.

use super::{Answer, ProofView};
use crate::json::{self, WriteFault};
use serde::Serialize;

impl<O: Serialize> Answer<'_, O> {
    /// Writes the answer: byte for byte what `serde_json` makes of it, at a fraction of the cost.
    ///
    /// # Errors
    ///
    /// An outcome that has no form in JSON. No check has one.
    pub fn write_json(&self, out: &mut Vec<u8>) -> Result<(), WriteFault> {
        let Self {
            check,
            reference,
            verdict,
            outcome,
            findings,
            account,
            reasons,
            interpretations,
            derivation,
            cautions,
            ruleset,
        } = self;
        out.extend_from_slice(br#"{"check":"#);
        json::name(check, out);
        if let Some(reference) = reference {
            out.extend_from_slice(br#","reference":"#);
            json::text(reference, out);
        }
        out.extend_from_slice(br#","verdict":"#);
        json::write(verdict, out)?;
        out.extend_from_slice(br#","outcome":"#);
        json::write(outcome, out)?;
        out.extend_from_slice(br#","findings":"#);
        json::write(findings, out)?;
        if let Some(account) = account {
            out.extend_from_slice(br#","account":"#);
            json::write(account, out)?;
        }
        out.extend_from_slice(br#","reasons":"#);
        json::write(reasons, out)?;
        out.extend_from_slice(br#","interpretations":"#);
        json::write(interpretations, out)?;
        match derivation {
            None => {}
            Some(ProofView::Full(proof)) => {
                out.extend_from_slice(br#","derivation":"#);
                proof.write_json(out);
            }
            Some(summary @ ProofView::Summary(_)) => {
                out.extend_from_slice(br#","derivation":"#);
                json::write(summary, out)?;
            }
        }
        out.extend_from_slice(br#","cautions":"#);
        json::write(cautions, out)?;
        out.extend_from_slice(br#","ruleset":"#);
        json::write(ruleset, out)?;
        out.push(b'}');
        Ok(())
    }
}
