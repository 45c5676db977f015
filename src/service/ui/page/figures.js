// Figures and members of an answer, whatever the check.

import { label, word } from "./api.js";
import { element, row, table } from "./dom.js";

const SYMBOLS = { in: "in", in2: "in²", in3: "in³", mm: "mm", mm2: "mm²", cm3: "cm³", "%": "%", 1: "", lb: "lb", kg: "kg" };

/** A value with its unit: `2.25 in³`. */
export function written(value, unit) {
  const symbol = SYMBOLS[unit] ?? unit ?? "";
  return symbol === "%" ? `${value}%` : `${value} ${symbol}`.trim();
}

export const isFigure = (value) => value !== null && typeof value === "object" && "value" in value && "unit" in value;

/** A figure, with a way to the step of the proof that made it. */
export function figure(value, context) {
  const step = value.step && context.toStep && element("button", { type: "button", onclick: () => context.toStep(value.step), "aria-label": word("ui-to-step", { step: value.step }) }, value.step);
  return element("span", { class: "figure" }, written(value.value, value.unit), " ", step);
}

/** What stands for a plain member of an answer. */
function plain(name, value, context) {
  if (isFigure(value)) return figure(value, context);
  if (name === "rule") return context.titles.get(value) ?? value;
  if (name === "because") return context.reasons?.get(value) ?? value;
  if (name === "step") return context.toStep ? element("button", { type: "button", class: "to-step", onclick: () => context.toStep(value) }, value) : value;
  if (Array.isArray(value)) return value.map((item) => (isPointer(item) ? item : optionText(item))).join(", ");
  if (typeof value === "boolean") return word(value ? "text-yes" : "text-no");
  if (value === null || value === undefined) return "–";
  return optionText(value);
}

const isPointer = (value) => typeof value === "string" && value.startsWith("/");

function optionText(value) {
  return typeof value === "string" && /^[a-z]+(_[a-z]+)*$/.test(value) ? label(value) : String(value);
}

const isPlain = (value) => value === null || typeof value !== "object" || isFigure(value) || (Array.isArray(value) && value.every((item) => item === null || typeof item !== "object"));

/** The members of an object: plain ones as a list of terms, lists of objects as tables, objects under headings. */
export function members(value, context) {
  const entries = Object.entries(value);
  const terms = entries.filter(([, member]) => isPlain(member) && !(Array.isArray(member) && member.length === 0));
  const parts = [];
  if (terms.length > 0) {
    const rows = terms.flatMap(([name, member]) => [element("dt", {}, label(name)), element("dd", {}, plain(name, member, context))]);
    parts.push(element("dl", {}, ...rows));
  }
  for (const [name, member] of entries.filter(([, member]) => !isPlain(member))) {
    if (!Array.isArray(member)) parts.push(element("h4", {}, label(name)), ...members(member, context));
    else if (member.every((item) => Object.values(item).every(isPlain))) parts.push(likeThings(label(name), member, context));
    else member.forEach((item, index) => parts.push(element("h4", {}, `${label(name)} ${item.id ?? (member.length > 1 ? index + 1 : "")}`), ...members(item, context)));
  }
  return parts;
}

/** Like things as a table, one column for each member that one of them has. */
function likeThings(caption, rows, context) {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const cells = (one) => columns.map((name) => (name in one ? plain(name, one[name], context) : ""));
  return table(caption, columns.map(label), rows.map((one) => row(...cells(one))));
}

/** What stands for any value in a list of values: texts as they are, the rest as JSON. */
export function told(value) {
  if (value === undefined) return "–";
  if (isFigure(value)) return written(value.value, value.unit);
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}
