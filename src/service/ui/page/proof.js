// A proof, step by step.

import { label, word } from "./api.js";
import { element } from "./dom.js";
import { written } from "./figures.js";

const BETWEEN = { sum: " + ", product: " × ", difference: " − ", quotient: " ÷ ", every: " ∧ ", any: " ∨ ", converted: "" };
const AROUND = { largest: "max", smallest: "min", whole_quotient: "⌊ ÷ ⌋", round_count: "≈", percent: "%", distance: "√Σ²" };
const TAKEN = { given: "ui-op-given", fact: "ui-op-fact", chosen: "ui-op-chosen", nothing: "ui-op-nothing" };
const RELATIONS = { ">=": " ≥ ", "<=": " ≤ ", "<": " < ", ">": " > " };

export class Proof {
  /** A proof of an answer; `context` has the titles of rules and the sentences of reasons, and moves to inputs. */
  constructor(steps, context) {
    Object.assign(this, { steps, context, current: -1 });
    this.byId = new Map(steps.map((step) => [step.id, step]));
    this.position = element("span", { role: "status", "aria-live": "polite" }, word("ui-steps", { count: steps.length }));
    this.items = steps.map((step) => this.item(step));
    const move = (by) => () => this.go(Math.min(Math.max(this.current + by, 0), steps.length - 1));
    this.walk = element(
      "div",
      { class: "walk", role: "group", "aria-label": word("ui-proof") },
      element("button", { type: "button", onclick: move(-1) }, word("ui-previous-step")),
      element("button", { type: "button", onclick: move(1) }, word("ui-next-step")),
      this.position,
    );
    this.root = element("div", {}, this.walk, element("ol", { class: "steps" }, ...this.items));
  }

  /** Shows the step with a name, and what it is computed from. */
  show(id) {
    const place = this.steps.findIndex((step) => step.id === id);
    if (place < 0) return;
    this.go(place);
    this.items[place].focus();
  }

  go(place) {
    this.current = place;
    const step = this.steps[place];
    const used = new Set(step.of ?? []);
    this.items.forEach((item, index) => {
      item.classList.toggle("used", used.has(this.steps[index].id));
      if (index === place) item.setAttribute("aria-current", "step");
      else item.removeAttribute("aria-current");
    });
    this.position.textContent = word("ui-step-of", { step: place + 1, count: this.steps.length });
    this.items[place].scrollIntoView({ block: "nearest" });
  }

  item(step) {
    const title = this.context.titles.get(step.rule) ?? step.rule;
    const place = step.citation ? `${title}, ${step.citation}` : title;
    const result = this.result(step);
    return element(
      "li",
      { tabindex: "-1", id: `step-${step.id}` },
      element("span", { class: "name" }, step.id),
      element("span", {}, ...this.expression(step)),
      result && element("span", { class: "result" }, ` ${result}`),
      element("br"),
      element("span", { class: "rule" }, place, step.basis && step.basis !== "published" ? ` · ${step.basis.replaceAll("_", " ")}` : "", step.amended ? ` · ${word("ui-amended")}` : ""),
      step.at && this.input(step.at),
    );
  }

  /** The input that a step takes its number from. */
  input(pointer) {
    const move = () => this.context.moveTo(pointer);
    return element("span", {}, " ", element("button", { type: "button", class: "to-step mono", onclick: move }, pointer));
  }

  /** A step that is computed with, by its value and its name. */
  operand(id) {
    const step = this.byId.get(id);
    const value = step?.equals !== undefined ? written(step.equals, step.unit) : step?.holds !== undefined ? word(step.holds ? "text-yes" : "text-no") : "";
    return element("span", { class: "figure" }, value, " ", element("button", { type: "button", class: "to-step", onclick: () => this.show(id) }, id));
  }

  expression(step) {
    const operands = (step.of ?? []).map((id) => this.operand(id));
    const joined = (between) => operands.flatMap((operand, index) => (index === 0 ? [operand] : [between, operand]));
    if (step.op in BETWEEN) return joined(BETWEEN[step.op]);
    if (step.op in AROUND) return [`${AROUND[step.op]} (`, ...joined("; "), ")"];
    switch (step.op) {
      case "compare":
        return joined(RELATIONS[step.relation]);
      case "lookup":
      case "affirm":
        return [`${step.table} [${step.row} · ${step.column}]`];
      case "stated":
        return [step.row];
      case "read":
        return [`${step.point}: ${step.reading}`];
      case "does_not_apply":
        return [this.context.reasons.get(step.because) ?? step.because];
      case "word":
        return [word("ui-op-word", { says: step.says })];
      case "whatever":
        return [`${word("ui-op-whatever", { values: step.values.join(" / ") })}: `, ...joined(", ")];
      case "account":
        return [...joined(""), ` ${word("ui-op-account")}: ${label(step.status)}`];
      case "select_boxes":
        return [word("ui-selected", { boxes: (step.selects ?? []).join(", ") || "–" })];
      default:
        return [step.op in TAKEN ? word(TAKEN[step.op]) : step.op, ...(operands.length ? [" ", ...joined(", ")] : [])];
    }
  }

  result(step) {
    if (step.equals !== undefined) return `= ${written(step.equals, step.unit)}`;
    if (step.holds !== undefined) return `→ ${word(step.holds ? "ui-holds" : "ui-fails")}`;
    return null;
  }
}
