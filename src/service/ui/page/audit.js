// The service examined: every case that it carries, run while one waits.

import { ask, problemText, word } from "./api.js";
import { byId, element, fillOptions, row, table } from "./dom.js";
import { told } from "./figures.js";

const BASES = { published: "ui-basis-published", derived: "ui-basis-derived", common_practice: "ui-basis-common-practice" };

/** Fills the choices of the form, once. */
export function prepareAudit(checks) {
  if (byId("audit-check").options.length > 0) return;
  fillOptions(byId("audit-check"), [["", word("ui-all")], ...checks.map((check) => [check.name, check.title])], "");
  fillOptions(byId("audit-basis"), [...Object.entries(BASES).map(([basis, key]) => [basis, word(key)]), ["", word("ui-all")]], "published");
}

/** Runs the cases that the form asks for, and shows each with its source. */
export async function audit() {
  const query = new URLSearchParams();
  for (const name of ["check", "basis"]) {
    const chosen = byId(`audit-${name}`).value;
    if (chosen) query.set(name, chosen);
  }
  byId("audited").replaceChildren(word("ui-waiting"));
  byId("audit-cases").replaceChildren();
  const reply = await ask("GET", `/v1/self-audit?${query}`);
  if (!reply.ok) return byId("audited").replaceChildren(element("p", { class: "fault" }, problemText(reply.body)));
  const { summary, ruleset, cases } = reply.body;
  byId("audited").replaceChildren(
    element("p", { class: `verdict ${summary.differing === 0 ? "complies" : "violates"}` }, word(summary.differing === 0 ? "ui-audit-agrees" : "ui-audit-differs", { differing: summary.differing })),
    element("p", {}, word("ui-audit-summary", { cases: summary.cases, evaluations: summary.evaluations, comparisons: summary.comparisons, published: summary.by_basis.published, wrong: summary.source_held_wrong })),
    element("p", { class: "rule digest" }, `${word("ui-ruleset")}: ${ruleset.version} · ${ruleset.digest}`),
  );
  byId("audit-cases").replaceChildren(...cases.map(caseOf));
}

/** One case: its rows are made when it is opened, for there are many. */
function caseOf(one) {
  const agrees = one.evaluations.every((evaluation) => evaluation.agrees);
  const body = element("div", {});
  const open = (event) => {
    if (event.target.open && body.childElementCount === 0) body.replaceChildren(...details(one));
  };
  const title = `${agrees ? "✓" : "✕"} ${one.name}`;
  return element("details", { class: "case", ontoggle: open }, element("summary", { lang: "en" }, title), body);
}

function details(one) {
  const { source } = one;
  const origin = [word(BASES[source.basis]), source.title, source.publisher, source.date].filter(Boolean).join(" · ");
  const notes = [
    element("p", { lang: "en" }, origin),
    source.address && element("p", { class: "rule digest" }, source.address),
    one.source_says && element("p", {}, `${word("ui-source-says")}: `, element("span", { lang: "en" }, one.source_says)),
    one.source_held_wrong && element("p", {}, `${word("ui-source-wrong")}: `, element("span", { lang: "en" }, one.source_held_wrong)),
    one.note && element("p", { class: "rule", lang: "en" }, one.note),
  ];
  return [...notes.filter(Boolean), ...one.evaluations.map((evaluation) => values(evaluation))];
}

function values({ edition, values, proof, refused }) {
  if (refused) return element("p", { class: "fault" }, `NFPA 70 ${edition}: ${refused}`);
  const caption = `NFPA 70 ${edition} · ${word(proof.replays ? "ui-proof-replays" : "ui-proof-fails", { count: proof.steps })}`;
  const rows = values.map((value) => {
    const cells = [element("td", { class: "mono" }, value.pointer), told(value.expected), `${told(value.computed)} ${value.agrees ? "✓" : "✕"}`];
    const made = row(...cells);
    made.classList.toggle("changed", !value.agrees);
    return made;
  });
  return table(caption, [word("ui-place"), word("ui-expected"), word("ui-computed")], rows);
}
