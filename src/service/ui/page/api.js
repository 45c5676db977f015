// What the page knows of the service: its words, and how it is asked.

const shared = JSON.parse(document.getElementById("words").textContent);

/** The language of the page, as BCP 47 names it. */
export const language = document.documentElement.lang;

/** A sentence of the page, with what it names in place of `{$name}`. */
export function word(key, named = {}) {
  const text = shared.words[key] ?? key;
  return text.replace(/\{\$(\w+)\}/g, (whole, name) => named[name] ?? whole);
}

/** The label of a name: `not_counted` is `Not counted`. In English a name says it; other languages have labels. */
export function label(name) {
  const spaced = String(name).replaceAll("_", " ");
  return shared.labels[name] ?? spaced.charAt(0).toUpperCase() + spaced.slice(1);
}

/** The access key, which is kept nowhere but in its field. */
function token() {
  return document.getElementById("token").value.trim();
}

/** The headers of a request as the page sends it. */
export function headersOf(hasBody, accept) {
  const headers = { Accept: accept, "Accept-Language": language };
  if (hasBody) headers["Content-Type"] = "application/json";
  if (token()) headers.Authorization = `Bearer ${token()}`;
  return headers;
}

/**
 * Asks the service. Resolves to `{ ok, status, body }`: JSON where it is JSON, text otherwise. A service that cannot be
 * reached answers with a problem of the page's own.
 */
export async function ask(method, path, { body, accept = "application/json" } = {}) {
  const sent = body === undefined ? undefined : typeof body === "string" ? body : JSON.stringify(body);
  try {
    const reply = await fetch(path, { method, body: sent, headers: headersOf(sent !== undefined, accept) });
    const text = await reply.text();
    const isJson = (reply.headers.get("content-type") ?? "").includes("json");
    if (reply.status === 401) document.getElementById("key").open = true;
    return { ok: reply.ok, status: reply.status, body: isJson ? JSON.parse(text) : text };
  } catch (error) {
    return { ok: false, status: 0, body: { title: word("ui-unreachable"), detail: String(error.message ?? error) } };
  }
}

/** A problem in one line. */
export const problemText = ({ title, detail }) => [title, detail].filter(Boolean).join(": ");

const known = new Map();

/** A document that stays the same while the page is open, asked for once. */
export async function catalogue(path) {
  if (!known.has(path)) {
    const reply = await ask("GET", path);
    if (!reply.ok) return reply;
    known.set(path, reply);
  }
  return known.get(path);
}

/** The title of each rule, by its id. */
export async function ruleTitles() {
  const reply = await catalogue("/v1/rules");
  return new Map(reply.ok ? reply.body.rules.map((rule) => [rule.id, rule.title]) : []);
}
