// The page: choose a check, say what is in the box, look at what comes back.

import { ask, catalogue, headersOf, label, ruleTitles, word } from "./api.js";
import { show } from "./answer.js";
import { audit, prepareAudit } from "./audit.js";
import { certificateActions, verify } from "./certificate.js";
import { byId, element, fillOptions } from "./dom.js";
import { compare } from "./editions.js";
import { Form } from "./form.js";

const state = { checks: [], check: null, editions: [], text: null, titles: new Map() };
const form = new Form(byId("panel-form"), () => (state.text = null));

/** The request as it is now: what the form holds, or the text where that was written to last. */
function request() {
  return state.text === null ? form.value : JSON.parse(state.text);
}

const requestText = () => (state.text === null ? JSON.stringify(form.value, null, 2) : state.text);

// Views

const VIEWS = ["check", "certificate", "audit"];

function view() {
  const wanted = location.hash.slice(1).split("/")[0];
  const chosen = VIEWS.includes(wanted) ? wanted : "check";
  for (const name of VIEWS) byId(`view-${name}`).hidden = name !== chosen;
  for (const link of document.querySelectorAll(".plate nav a")) {
    if (link.hash === `#${chosen}`) link.setAttribute("aria-current", "page");
    else link.removeAttribute("aria-current");
  }
  if (chosen === "audit") prepareAudit(state.checks);
}

// The choice of a check and of what to begin with

async function choose(name, example) {
  const reply = await catalogue(`/v1/checks/${name}`);
  if (!reply.ok) return tellProblem(reply.body);
  state.check = reply.body;
  byId("check").value = name;
  byId("purpose").textContent = reply.body.purpose;
  const options = reply.body.requests.map((known) => [known.name, known.summary]);
  const begin = example ?? reply.body.requests[0]?.name;
  fillOptions(byId("example"), [...options, ["", word("ui-empty")]], begin);
  start(begin);
}

function start(example) {
  const begun = state.check.requests.find((known) => known.name === example)?.request;
  const value = begun ? structuredClone(begun) : {};
  value.edition ??= state.editions.find((edition) => edition.is_default)?.edition ?? "2023";
  state.text = null;
  form.show(state.check.schema, value);
  if (!begun) form.show(state.check.schema, { edition: value.edition, ...form.initial(state.check.schema) });
  byId("json").value = requestText();
  showEdition();
  tellProblem(null);
  evaluate();
}

// Editions

function drawEditions() {
  const radio = ({ edition, must_accept_unverified_rules: unverified }) => {
    const input = element("input", { type: "radio", name: "edition", value: edition, onchange: () => switchEdition(edition) });
    return element("label", {}, input, unverified ? word("ui-unverified", { edition }) : edition);
  };
  byId("editions").replaceChildren(byId("editions").querySelector("legend"), ...state.editions.map(radio));
}

function showEdition() {
  let chosen;
  try {
    chosen = request().edition;
  } catch {
    return;
  }
  for (const input of document.querySelectorAll("input[name=edition]")) input.checked = input.value === chosen;
}

function switchEdition(edition) {
  let changed;
  try {
    changed = { ...request(), edition };
  } catch (error) {
    return tellProblem({ title: word("ui-not-json"), detail: error.message });
  }
  const { must_accept_unverified_rules: unverified } = state.editions.find((known) => known.edition === edition);
  if (!unverified) delete changed.accept_unverified_rules;
  else changed.accept_unverified_rules = true;
  form.show(state.check.schema, changed);
  state.text = null;
  byId("json").value = requestText();
  if (byId("answer-body").childElementCount > 0) evaluate();
}

// Form and JSON

const tabs = ["form", "json"];

function openTab(name) {
  if (name === "json") byId("json").value = requestText();
  else if (state.text !== null) {
    try {
      form.show(state.check.schema, JSON.parse(state.text));
      state.text = null;
    } catch (error) {
      return tellProblem({ title: word("ui-not-json"), detail: error.message });
    }
  }
  for (const tab of tabs) {
    const isOpen = tab === name;
    byId(`tab-${tab}`).setAttribute("aria-selected", String(isOpen));
    byId(`tab-${tab}`).tabIndex = isOpen ? 0 : -1;
    byId(`panel-${tab}`).hidden = !isOpen;
  }
}

function moveTo(pointer) {
  openTab("form");
  form.moveTo(pointer);
}

// Asking

function tellProblem(problem) {
  const box = byId("problem");
  box.hidden = problem === null;
  if (problem === null) return;
  const errors = problem.errors ?? [];
  const line = (error) => {
    const told = error.pointer === undefined ? error.detail : `${error.pointer || "/"}: ${error.detail}`;
    const jump = error.pointer !== undefined && element("button", { type: "button", class: "to-step", onclick: () => moveTo(error.pointer) }, word("ui-go-there"));
    return element("li", {}, told, " ", jump);
  };
  box.replaceChildren(element("p", {}, element("b", {}, problem.title), ` ${problem.detail ?? ""}`), errors.length > 0 && element("ul", {}, ...errors.map(line)));
  byId("status").textContent = `${problem.title}. ${problem.detail ?? ""}`;
  byId("answer-body").replaceChildren();
  box.focus();
}

let asked = 0;

async function evaluate() {
  if (state.check === null) return load();
  const body = requestText();
  const number = ++asked;
  byId("status").textContent = word("ui-waiting");
  byId("answer").setAttribute("aria-busy", "true");
  const { path, drawn, name } = state.check;
  const [reply, drawing, titles] = await Promise.all([
    ask("POST", path, { body }),
    drawn ? ask("POST", path, { body, accept: "image/svg+xml" }) : null,
    ruleTitles(),
  ]);
  // an answer that was overtaken by a later question is not shown
  if (number !== asked) return;
  byId("answer").setAttribute("aria-busy", "false");
  if (!reply.ok) {
    form.tell(reply.body.errors ?? []);
    return tellProblem(reply.body);
  }
  form.tell([]);
  byId("problem").hidden = true;
  state.titles = titles;
  const root = byId("answer-body");
  show(root, reply.body, drawing?.ok ? drawing.body : null, { titles, moveTo });
  const sent = JSON.parse(body);
  root.append(editionsPart(name, sent), certificateActions(name, sent));
  byId("status").textContent = word("ui-answered", { verdict: reply.body.verdict ? label(reply.body.verdict) : word("ui-sizing") });
}

/** What other editions say of the same request, asked for when it is opened. */
function editionsPart(name, sent) {
  const { edition: chosen } = sent;
  const verified = state.editions.filter((known) => !known.must_accept_unverified_rules).map((known) => known.edition);
  const others = verified.filter((edition) => edition !== chosen);
  const body = element("div", {});
  const open = async (event) => {
    if (!event.target.open || body.childElementCount > 0) return;
    body.replaceChildren(await compare(name, sent, [chosen, ...others], state.titles));
  };
  return element("details", { id: "other-editions", ontoggle: open }, element("summary", {}, word("ui-other-editions")), body);
}

// Copying

/** The request as a command that any shell takes. */
function curl() {
  const quoted = (text) => `'${text.replaceAll("'", "'\\''")}'`;
  const headers = headersOf(true, "application/json");
  // a key does not belong into a text that is passed on
  delete headers.Authorization;
  const parts = Object.entries(headers).map(([name, value]) => `-H ${quoted(`${name}: ${value}`)}`);
  return `curl -sS ${quoted(new URL(state.check.path, location.href).href)} ${parts.join(" ")} --data-binary ${quoted(requestText())}`;
}

async function copy(text, button) {
  try {
    await navigator.clipboard.writeText(text);
    byId("status").textContent = word("ui-copied");
  } catch {
    // without the right to the clipboard the text is shown, to be copied by hand
    openTab("json");
    byId("json").value = text;
    byId("json").select();
    button.blur();
  }
}

// Beginning

function listen() {
  addEventListener("hashchange", view);
  byId("check").addEventListener("change", (event) => choose(event.target.value));
  byId("example").addEventListener("change", (event) => start(event.target.value));
  byId("json").addEventListener("input", (event) => {
    state.text = event.target.value;
    showEdition();
  });
  for (const tab of tabs) {
    byId(`tab-${tab}`).addEventListener("click", () => openTab(tab));
    byId(`tab-${tab}`).addEventListener("keydown", (event) => {
      if (!["ArrowLeft", "ArrowRight"].includes(event.key)) return;
      const other = tabs.find((name) => name !== tab);
      openTab(other);
      byId(`tab-${other}`).focus();
    });
  }
  byId("request").addEventListener("submit", async (event) => {
    event.preventDefault();
    await evaluate();
    // in one column the answer is far below the form
    const isBelow = byId("answer").offsetTop > byId("request").offsetTop;
    if (isBelow && byId("problem").hidden) byId("answer").scrollIntoView();
  });
  byId("request").addEventListener("keydown", (event) => {
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) evaluate();
  });
  byId("copy-curl").addEventListener("click", (event) => state.check && copy(curl(), event.target));
  byId("copy-json").addEventListener("click", (event) => state.check && copy(requestText(), event.target));
  byId("verify").addEventListener("submit", (event) => {
    event.preventDefault();
    verify();
  });
  byId("token").addEventListener("change", () => {
    if (state.check === null) load();
  });
  byId("audit").addEventListener("submit", (event) => {
    event.preventDefault();
    audit();
  });
}

/** Loads what the page is made of. Where the service asks for a key, this is done again when one has been entered. */
async function load() {
  const [checks, editions] = await Promise.all([catalogue("/v1/checks"), catalogue("/v1/editions")]);
  if (!checks.ok || !editions.ok) return tellProblem((checks.ok ? editions : checks).body);
  state.checks = checks.body.checks;
  state.editions = editions.body.editions;
  fillOptions(byId("check"), state.checks.map((check) => [check.name, check.title]));
  drawEditions();
  view();
  await choose(state.checks[0].name);
}

listen();
load();
