// Certificates: made from a request, and held against what the service computes.

import { ask, word } from "./api.js";
import { verdictText } from "./answer.js";
import { byId, element, scrolled } from "./dom.js";

const FINDINGS = { reproduced: "bench-finding-reproduced", altered: "bench-finding-altered", other_ruleset: "bench-finding-other-ruleset" };

/** What can be done with an answer that is to be kept: a page to print, and a file to verify later. */
export function certificateActions(check, request) {
  const told = element("span", { role: "status", "aria-live": "polite" });
  const certify = async (accept, use) => {
    const reply = await ask("POST", "/v1/results/certify", { body: { check, request }, accept });
    if (!reply.ok) return told.replaceChildren(element("span", { class: "fault" }, [reply.body.title, reply.body.detail].filter(Boolean).join(": ")));
    told.replaceChildren();
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
    element("button", { type: "button", id: "certificate-page", onclick: () => certify("text/html", open) }, word("bench-certificate-page")),
    element("button", { type: "button", id: "certificate-save", onclick: () => certify("application/json", save) }, word("bench-certificate-save")),
    told,
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
  return [element("p", { class: "fault" }, [problem.title, problem.detail].filter(Boolean).join(": ")), element("ul", {}, ...errors)];
}

function verification(found) {
  const rules = (side) => `${found.ruleset[side].version} · ${found.ruleset[side].digest}`;
  const parts = [
    element("p", { class: `verdict ${found.finding === "altered" ? "violates" : found.finding}` }, word(FINDINGS[found.finding])),
    element("p", {}, found.message),
    found.reasons.length > 0 && element("ul", {}, ...found.reasons.map((reason) => element("li", {}, reason))),
    element("p", {}, element("b", {}, `${word("bench-signature")}: `), found.signature.message),
    element("p", { class: "rule digest" }, `${word("bench-rules-certificate")}: ${rules("certificate")}`),
    element("p", { class: "rule digest" }, `${word("bench-rules-here")}: ${rules("here")}`),
  ];
  if (found.inputs.length > 0) parts.push(differences(word("bench-inputs-differ"), found.inputs, found.more_inputs));
  if (found.differences.length > 0) parts.push(differences(word("bench-answers-differ"), found.differences, found.more_differences));
  if (found.faults.length > 0) parts.push(element("ul", {}, ...found.faults.map((fault) => element("li", {}, `${fault.pointer}: ${fault.detail}`))));
  if (found.today) parts.push(element("p", {}, `${word("bench-today")}: `, element("b", {}, verdictText(found.today.verdict))));
  parts.push(element("ul", { class: "cautions" }, ...found.cautions.map((caution) => element("li", {}, caution))));
  return parts.filter(Boolean);
}

const told = (value) => (value === undefined ? "–" : typeof value === "string" ? value : JSON.stringify(value));

function differences(caption, rows, more = 0) {
  const head = ["bench-place", "bench-in-certificate", "bench-computed"].map((key) => element("th", { scope: "col" }, word(key)));
  const body = rows.map(({ at, certificate, computed }) => element("tr", {}, element("td", { class: "mono" }, at), element("td", {}, told(certificate)), element("td", {}, told(computed))));
  if (more > 0) body.push(element("tr", {}, element("td", { colspan: "3" }, word("bench-more", { count: more }))));
  return scrolled("table", caption, element("table", {}, element("caption", {}, caption), element("thead", {}, element("tr", {}, ...head)), element("tbody", {}, ...body)));
}
