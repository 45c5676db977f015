// An answer: the verdict first, then the drawing, what was found, the figures, the proof.

import { label, word } from "./api.js";
import { element, scrolled } from "./dom.js";
import { members } from "./figures.js";
import { Proof } from "./proof.js";

/** A mark for each verdict, which is a shape and not only a colour. */
const MARKS = {
  complies: "M4 17 L12 25 L28 7",
  violates: "M6 6 L26 26 M26 6 L6 26",
  not_determined: "M10 11 Q10 5 16 5 Q22 5 22 11 Q22 15 16 17 L16 21 M16 26 L16 27",
};

function mark(verdict) {
  const space = "http://www.w3.org/2000/svg";
  const svg = document.createElementNS(space, "svg");
  svg.setAttribute("viewBox", "0 0 32 32");
  svg.setAttribute("aria-hidden", "true");
  const path = document.createElementNS(space, "path");
  for (const [name, value] of Object.entries({ d: MARKS[verdict] ?? "M4 16 L28 16", fill: "none", stroke: "currentColor", "stroke-width": "4" })) path.setAttribute(name, value);
  svg.append(path);
  return svg;
}

/** A verdict in words. */
export function verdictText(verdict) {
  return verdict ? label(verdict) : word("ui-sizing");
}

/** A verdict as it stands at the head of an answer. */
export function verdictPlate(verdict) {
  return element("p", { class: `verdict ${verdict ?? "sizing"}` }, mark(verdict), verdictText(verdict));
}

/** A drawing as it is drawn by the service: parsed as XML, so that nothing in it can be markup of the page. */
export function picture(svg) {
  const drawing = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  if (drawing.nodeName !== "svg") return null;
  // the policy of the page lets this style in by its digest
  return scrolled("picture", word("ui-drawing"), document.importNode(drawing, true));
}

/** Puts an answer, and its drawing where there is one, into an element. */
export function show(root, answer, svg, { titles, moveTo }) {
  const reasons = new Map(answer.reasons.map((reason) => [reason.because, reason.message]));
  const context = { titles, reasons, moveTo };
  const proof = new Proof(answer.derivation?.steps ?? [], context);
  const whole = element("details", { id: "proof" }, element("summary", {}, word("ui-proof-of", { count: proof.steps.length })), proof.root);
  context.toStep = (id) => {
    whole.open = true;
    proof.show(id);
  };
  const parts = [
    verdictPlate(answer.verdict),
    answer.reference && element("p", {}, `${label("reference")}: ${answer.reference}`),
    svg && picture(svg),
    element("h4", {}, label("findings")),
    findings(answer.findings, context),
    element("h4", {}, word("ui-figures")),
    ...members(answer.outcome, context),
  ];
  if (answer.interpretations.length > 0) parts.push(element("h4", {}, label("interpretations")), ...answer.interpretations.map(interpretation));
  parts.push(whole, cautions(answer.cautions), ruleset(answer.ruleset));
  root.replaceChildren(...parts.filter(Boolean));
}

function findings(found, context) {
  const item = (finding) => {
    const place = [context.titles.get(finding.rule) ?? finding.rule, finding.citation].filter(Boolean).join(", ");
    const inputs = [...(finding.at ?? []), ...(finding.supply ?? [])];
    return element(
      "li",
      { class: finding.status },
      element("b", {}, label(finding.status)),
      finding.message,
      element("br"),
      element("span", { class: "rule" }, place),
      finding.step && element("button", { type: "button", class: "to-step", onclick: () => context.toStep(finding.step) }, finding.step),
      ...inputs.map((pointer) => element("button", { type: "button", class: "to-step mono", onclick: () => context.moveTo(pointer) }, pointer || "/")),
    );
  };
  return element("ul", { class: "findings" }, ...found.map(item));
}

function interpretation(point) {
  const others = point.alternatives.map((other) => element("li", {}, `${label(other.reading)}: ${verdictText(other.verdict)}`));
  const changes = word(point.changes_verdict ? "ui-changes-verdict" : "ui-keeps-verdict");
  return element("div", {}, element("p", {}, point.question, " ", element("b", {}, label(point.reading)), `. ${changes}`), element("ul", {}, ...others));
}

function cautions(told) {
  return element("div", {}, element("h4", {}, label("cautions")), element("ul", { class: "cautions" }, ...told.map((caution) => element("li", {}, caution))));
}

function ruleset({ edition, version, digest }) {
  return element("p", { class: "rule digest" }, `${word("ui-ruleset")}: NFPA 70 ${edition} · ${version} · ${digest}`);
}
