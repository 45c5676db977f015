// Certificates: made from a request, and held against what the service computes.

import { ask, problemText, word } from "./api.js";
import { verdictText } from "./answer.js";
import { byId, element, row, table } from "./dom.js";
import { told } from "./figures.js";

const FINDINGS = { reproduced: "ui-finding-reproduced", altered: "ui-finding-altered", other_ruleset: "ui-finding-other-ruleset" };

/** What can be done with an answer that is to be kept: a page to print, and a file to verify later. */
export function certificateActions(check, request) {
  const outcome = element("span", { role: "status", "aria-live": "polite" });
  const certify = async (accept, use) => {
    const reply = await ask("POST", "/v1/results/certify", { body: { check, request }, accept });
    if (!reply.ok) return outcome.replaceChildren(element("span", { class: "fault" }, problemText(reply.body)));
    outcome.replaceChildren();
    use(reply.body);
  };
  const open = (html) => {
    const address = URL.createObjectURL(new Blob([html], { type: "text/html" }));
    window.open(address, "_blank", "noopener");
    setTimeout(() => URL.revokeObjectURL(address), 60_000);
  };
  const save = (certificate) => {
    const address = URL.createObjectURL(new Blob([JSON.stringify(certificate, null, 2)], { type: "application/json" }));
    element("a", { href: address, download: `${request.reference ?? check}.certificate.json` }).click();
    URL.revokeObjectURL(address);
  };
  return element(
    "p",
    { class: "actions" },
    element("button", { type: "button", id: "certificate-page", onclick: () => certify("text/html", open) }, word("ui-certificate-page")),
    element("button", { type: "button", id: "certificate-save", onclick: () => certify("application/json", save) }, word("ui-certificate-save")),
    outcome,
  );
}

/** The certificate in a text: JSON, or a saved page that holds it. */
function certificateIn(text) {
  if (!text.trimStart().startsWith("<")) return text;
  const page = new DOMParser().parseFromString(text, "text/html");
  return page.getElementById("certificate")?.textContent ?? text;
}

/** Has the service compute the certificate of the form again, and shows what it finds. */
export async function verify() {
  const file = byId("certificate-file").files[0];
  const text = file ? await file.text() : byId("certificate-text").value;
  const root = byId("verified");
  const reply = await ask("POST", "/v1/results/verify", { body: certificateIn(text) });
  root.replaceChildren(...(reply.ok ? verification(reply.body) : refusal(reply.body)));
}

function refusal(problem) {
  const errors = (problem.errors ?? []).map((error) => element("li", {}, `${error.pointer ?? ""} ${error.detail}`));
  return [element("p", { class: "fault" }, problemText(problem)), element("ul", {}, ...errors)];
}

function verification(found) {
  const rules = (side) => `${found.ruleset[side].version} · ${found.ruleset[side].digest}`;
  const parts = [
    element("p", { class: `verdict ${found.finding === "altered" ? "violates" : found.finding}` }, word(FINDINGS[found.finding])),
    element("p", {}, found.message),
    found.reasons.length > 0 && element("ul", {}, ...found.reasons.map((reason) => element("li", {}, reason))),
    element("p", {}, element("b", {}, `${word("ui-signature")}: `), found.signature.message),
    element("p", { class: "rule digest" }, `${word("ui-rules-certificate")}: ${rules("certificate")}`),
    element("p", { class: "rule digest" }, `${word("ui-rules-here")}: ${rules("here")}`),
  ];
  if (found.inputs.length > 0) parts.push(differences(word("ui-inputs-differ"), found.inputs, found.more_inputs));
  if (found.differences.length > 0) parts.push(differences(word("ui-answers-differ"), found.differences, found.more_differences));
  if (found.faults.length > 0) parts.push(element("ul", {}, ...found.faults.map((fault) => element("li", {}, `${fault.pointer}: ${fault.detail}`))));
  if (found.today) parts.push(element("p", {}, `${word("ui-today")}: `, element("b", {}, verdictText(found.today.verdict))));
  parts.push(element("ul", { class: "cautions" }, ...found.cautions.map((caution) => element("li", {}, caution))));
  return parts.filter(Boolean);
}

function differences(caption, found, more = 0) {
  const rows = found.map(({ at, certificate, computed }) => row(element("td", { class: "mono" }, at), told(certificate), told(computed)));
  if (more > 0) rows.push(row(element("td", { colspan: "3" }, word("ui-more", { count: more }))));
  return table(caption, [word("ui-place"), word("ui-in-certificate"), word("ui-computed")], rows);
}
