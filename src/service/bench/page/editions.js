// The same request under other editions, and what changes.

import { ask, label, word } from "./api.js";
import { element, scrolled } from "./dom.js";
import { isFigure, written } from "./figures.js";
import { verdictText } from "./answer.js";

const told = (value) => (value === undefined || value === null ? "–" : isFigure(value) ? written(value.value, value.unit) : typeof value === "object" ? JSON.stringify(value) : String(value));

/** A pointer into an outcome in words: `Spaces 1 · Tally 2 · Volume`. */
function placeOf(pointer) {
  const parts = pointer.split("/").slice(1);
  return parts.map((part) => (/^\d+$/.test(part) ? String(Number(part) + 1) : label(part))).join(" · ");
}

/** Compares a request under some editions, the first of which the others are held against. */
export async function compare(check, request, editions, titles) {
  const plain = { ...request };
  delete plain.edition;
  const reply = await ask("POST", "/v1/editions/compare", { body: { check, editions, request: plain } });
  if (!reply.ok) return element("p", { class: "fault" }, [reply.body.title, reply.body.detail].filter(Boolean).join(": "));
  const [base, ...others] = reply.body.editions;
  return element(
    "div",
    {},
    element("p", {}, `${base.edition}: `, element("b", {}, verdictText(base.verdict))),
    ...others.map((edition) => difference(edition, base, titles)),
  );
}

function difference(edition, base, titles) {
  const verdict = element("p", {}, `${edition.edition}: `, element("b", { class: edition.verdict === base.verdict ? null : "changed" }, verdictText(edition.verdict)));
  if (edition.changes.length === 0 && edition.rules.length === 0) return element("div", {}, verdict, element("p", {}, word("bench-nothing-changes", { edition: base.edition })));
  const causes = edition.rules.filter((rule) => rule.cause).map((rule) => element("li", {}, [titles.get(rule.rule) ?? rule.rule, rule.citation_to ?? rule.citation_from].filter(Boolean).join(", ")));
  const rows = edition.changes.map((change) => element("tr", {}, element("td", {}, placeOf(change.at)), element("td", { class: "figure" }, told(change.from)), element("td", { class: "figure changed" }, told(change.to))));
  const head = [word("bench-figure"), base.edition, edition.edition].map((text) => element("th", { scope: "col" }, text));
  const caption = word("bench-what-changes", { from: base.edition, to: edition.edition });
  return element(
    "div",
    {},
    verdict,
    causes.length > 0 && element("p", {}, word("bench-because-of")),
    causes.length > 0 && element("ul", {}, ...causes),
    rows.length > 0 && scrolled("table", caption, element("table", {}, element("caption", {}, caption), element("thead", {}, element("tr", {}, ...head)), element("tbody", {}, ...rows))),
  );
}
