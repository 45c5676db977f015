// The same request under other editions, and what changes.

import { ask, label, problemText, word } from "./api.js";
import { element, row, table } from "./dom.js";
import { told } from "./figures.js";
import { verdictText } from "./answer.js";

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
  if (!reply.ok) return element("p", { class: "fault" }, problemText(reply.body));
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
  if (edition.changes.length === 0 && edition.rules.length === 0) return element("div", {}, verdict, element("p", {}, word("ui-nothing-changes", { edition: base.edition })));
  const causes = edition.rules.filter((rule) => rule.cause).map((rule) => element("li", {}, [titles.get(rule.rule) ?? rule.rule, rule.citation_to ?? rule.citation_from].filter(Boolean).join(", ")));
  const rows = edition.changes.map((change) => row(placeOf(change.at), element("td", { class: "figure" }, told(change.from)), element("td", { class: "figure changed" }, told(change.to))));
  const heads = [word("ui-figure"), base.edition, edition.edition];
  const caption = word("ui-what-changes", { from: base.edition, to: edition.edition });
  return element(
    "div",
    {},
    verdict,
    causes.length > 0 && element("p", {}, word("ui-because-of")),
    causes.length > 0 && element("ul", {}, ...causes),
    rows.length > 0 && table(caption, heads, rows),
  );
}
