// A form for any request, made from its JSON Schema.

import { label, word } from "./api.js";
import { element } from "./dom.js";

const YES_NO = "boolean";

/** The first sentence of a description. */
function firstSentence(text = "") {
  const plain = text.replaceAll("`", "").replace(/\s+/g, " ");
  const end = plain.search(/[.:] [A-Z0-9]/);
  return (end < 0 ? plain : plain.slice(0, end + 1)).replace(/:$/, "");
}

/** The way to a part of the request, as JSON Pointer (RFC 6901). */
export function pointerOf(path) {
  return path.map((part) => `/${String(part).replaceAll("~", "~0").replaceAll("/", "~1")}`).join("");
}

const idOf = (path) => `field${pointerOf(path)}`;

export class Form {
  /** A form in an element; `changed` is told of every change. */
  constructor(root, changed) {
    Object.assign(this, { root, changed, value: {}, faults: new Map() });
  }

  /** Shows a request of a schema that has no references. */
  show(schema, value) {
    Object.assign(this, { schema, value, faults: new Map() });
    this.draw();
  }

  /** Shows the faults of a problem at the fields that they are about. */
  tell(errors) {
    this.faults = new Map();
    for (const error of errors) {
      if (typeof error.pointer !== "string") continue;
      this.faults.set(error.pointer, [...(this.faults.get(error.pointer) ?? []), error.detail]);
    }
    this.draw();
  }

  /** Moves to the field of a part of the request, or to the nearest that there is around it. Says whether there is one. */
  moveTo(pointer) {
    for (let at = pointer; ; at = at.slice(0, at.lastIndexOf("/"))) {
      const field = document.getElementById(`field${at}`);
      if (field) {
        const target = field.matches("input, select, textarea") ? field : (field.querySelector("legend") ?? field);
        if (target !== field) target.tabIndex = -1;
        target.focus();
        return true;
      }
      if (at === "") return false;
    }
  }

  draw() {
    const focused = this.root.contains(document.activeElement) ? document.activeElement.id : null;
    const members = this.members(this.schema, this.value, []);
    this.root.replaceChildren(element("div", { class: "members" }, ...members));
    if (focused) document.getElementById(focused)?.focus();
  }

  at(path) {
    return path.reduce((value, part) => value?.[part], this.value);
  }

  put(path, value, redraw) {
    if (path.length === 0) this.value = value;
    else {
      const holder = this.at(path.slice(0, -1));
      if (value === undefined) {
        if (Array.isArray(holder)) holder.splice(path.at(-1), 1);
        else delete holder[path.at(-1)];
      } else holder[path.at(-1)] = value;
    }
    if (redraw) {
      this.faults = new Map();
      this.draw();
    }
    this.changed();
  }

  /** The members of an object: those that it has or must have, and a list of the others. */
  members(schema, value, path) {
    const all = Object.entries(schema.properties ?? {}).filter(([name]) => path.length > 0 || name !== "edition");
    const required = new Set(schema.required ?? []);
    const tag = all.find(([name, member]) => this.isTag(schema, name, member))?.[0];
    const shown = all.filter(([name]) => name !== tag && (name in (value ?? {}) || required.has(name)));
    const absent = all.filter(([name]) => name !== tag && !(name in (value ?? {})) && !required.has(name));
    const parts = shown.map(([name, member]) =>
      this.part(member, [...path, name], label(name), required.has(name) ? null : () => this.put([...path, name], undefined, true)),
    );
    if (absent.length > 0) parts.push(this.adder(absent, path));
    return parts;
  }

  /** Whether a member only says which of several kinds of thing this is: the choice above it says so already. */
  isTag(schema, name, member) {
    return schema.isVariant && member.enum?.length === 1;
  }

  /** The members that may be added. */
  adder(absent, path) {
    const id = `add${pointerOf(path)}`;
    const choose = (event) => {
      const name = event.target.value;
      if (!name) return;
      const holder = this.at(path);
      if (holder === undefined) this.put(path, {}, false);
      this.put([...path, name], this.initial(absent.find(([known]) => known === name)[1]), true);
      this.moveTo(pointerOf([...path, name]));
    };
    const options = absent.map(([name, member]) =>
      element("option", { value: name, title: firstSentence(member.description) }, label(name)),
    );
    const whose = path.length === 0 ? word("ui-add-to-request") : word("ui-add-to", { part: this.nameOf(path) });
    return element(
      "p",
      { class: "field add" },
      element("label", { for: id, class: "hint" }, whose),
      element("select", { id, onchange: choose }, element("option", { value: "" }, "…"), ...options),
    );
  }

  /** A path in words: `Devices 2`. */
  nameOf(path) {
    const named = path.map((part) => (typeof part === "number" ? part + 1 : label(part)));
    return named.slice(-2).join(" ");
  }

  /** One part of the request: a field, or a group of them. */
  part(schema, path, name, remove) {
    if (schema.oneOf) return this.choice(schema, path, name, remove);
    if (schema.type === "object") {
      if (this.at(path) === undefined) this.put(path, this.initial(schema), false);
      return this.group(schema, path, name, remove, this.members(schema, this.at(path), path));
    }
    if (schema.type === "array") return this.list(schema, path, name, remove);
    return this.field(schema, path, name, remove);
  }

  group(schema, path, name, remove, parts) {
    return element(
      "fieldset",
      { id: idOf(path) },
      element("legend", {}, name),
      schema.description && element("p", { class: "hint", lang: "en" }, firstSentence(schema.description)),
      this.faultsAt(path),
      element("div", { class: "members" }, ...parts),
      remove && this.remover(name, remove),
    );
  }

  remover(name, remove) {
    return element("button", { type: "button", class: "plain", onclick: remove }, word("ui-remove", { part: name }));
  }

  list(schema, path, name, remove) {
    const items = this.at(path) ?? [];
    const parts = items.map((item, index) => {
      const place = [...path, index];
      return this.part(schema.items, place, this.nameOf(place), () => this.put(place, undefined, true));
    });
    const add = () => {
      if (this.at(path) === undefined) this.put(path, [], false);
      this.at(path).push(this.initial(schema.items));
      this.put(path, this.at(path), true);
      this.moveTo(pointerOf([...path, items.length]));
    };
    const most = schema.maxItems ?? Infinity;
    const adding = element("button", { type: "button", class: "plain", onclick: add, disabled: items.length >= most }, word("ui-add-item", { part: name }));
    parts.push(element("p", { class: "field add" }, adding));
    return this.group(schema, path, name, remove, parts);
  }

  /** One of several forms of a thing. */
  choice(schema, path, name, remove) {
    const variants = schema.oneOf.map((variant) => ({ ...variant, isVariant: true }));
    const value = this.at(path);
    const chosen = Math.max(0, variants.findIndex((variant) => this.fits(variant, value)));
    const id = `kind${pointerOf(path)}`;
    const titles = variants.map((variant) => this.titleOf(variant));
    const choose = (event) => {
      this.put(path, this.initial(variants[event.target.value]), true);
      document.getElementById(id)?.focus();
    };
    const options = titles.map((title, index) => element("option", { value: String(index), selected: index === chosen }, title));
    const select = element("p", { class: "field" }, element("label", { for: id, class: "hint" }, word("ui-kind", { part: name })), element("select", { id, onchange: choose }, ...options));
    const variant = variants[chosen];
    if (variant.type !== "object") return element("div", { class: "either" }, this.part({ ...variant, description: schema.description }, path, name, remove), select);
    const inner = this.members(variant, value ?? {}, path);
    return element(
      "fieldset",
      { id: idOf(path) },
      element("legend", {}, name),
      select,
      this.faultsAt(path),
      element("div", { class: "members" }, ...inner),
      remove && this.remover(name, remove),
    );
  }

  titleOf(variant) {
    const tag = Object.values(variant.properties ?? {}).find((member) => member.enum?.length === 1);
    if (tag) return label(tag.enum[0]);
    return variant.title?.replace(/([a-z])([A-Z])/g, "$1 $2") ?? firstSentence(variant.description) ?? variant.type;
  }

  fits(variant, value) {
    if (variant.type !== "object") return typeof value !== "object" || value === null;
    if (typeof value !== "object" || value === null) return false;
    return Object.entries(variant.properties ?? {}).every(([name, member]) => {
      return member.enum?.length !== 1 || value[name] === member.enum[0];
    });
  }

  field(schema, path, name, remove) {
    const id = idOf(path);
    const value = this.at(path);
    const faults = this.faults.get(pointerOf(path));
    const hint = schema.description && element("span", { class: "hint", id: `hint-${id}`, lang: "en" }, this.hintOf(schema));
    const describedBy = [hint && `hint-${id}`, faults && `fault-${id}`].filter(Boolean).join(" ") || null;
    const shared = { id, "aria-describedby": describedBy, "aria-invalid": faults ? "true" : null };
    const input = this.input(schema, path, value, shared);
    const removing = remove && element("button", { type: "button", class: "plain", onclick: remove, "aria-label": word("ui-remove", { part: name }) }, "✕");
    const caption = schema.type === YES_NO ? null : element("label", { for: id }, name);
    const body = schema.type === YES_NO ? element("label", { class: "yes", for: id }, input, name) : input;
    return element("div", { class: "field" }, caption, hint, element("div", { class: "row" }, body, removing), this.faultsAt(path));
  }

  hintOf(schema) {
    const bounds = [schema.minimum, schema.maximum].every((bound) => bound !== undefined) ? ` ${schema.minimum}–${schema.maximum}.` : "";
    return firstSentence(schema.description) + bounds;
  }

  input(schema, path, value, shared) {
    if (schema.enum) {
      const choose = (event) => this.put(path, event.target.value === "" ? "" : schema.enum[event.target.selectedIndex - (known ? 0 : 1)], false);
      const known = schema.enum.includes(value);
      const options = schema.enum.map((option) => element("option", { value: String(option), selected: option === value }, this.optionOf(option)));
      return element("select", { ...shared, onchange: choose }, known ? null : element("option", { value: "", selected: true }, value === undefined || value === "" ? "…" : String(value)), ...options);
    }
    if (schema.type === YES_NO) {
      return element("input", { ...shared, type: "checkbox", checked: value === true, onchange: (event) => this.put(path, event.target.checked, false) });
    }
    const isNumber = schema.type === "number" || schema.type === "integer";
    const write = (event) => this.put(path, isNumber ? numberOf(event.target.value) : event.target.value, false);
    const example = schema.examples?.[0] ?? schema.example;
    return element("input", {
      ...shared,
      type: "text",
      inputmode: isNumber ? "decimal" : null,
      autocomplete: "off",
      spellcheck: "false",
      value: value === undefined ? "" : String(value),
      placeholder: example === undefined ? null : String(example),
      oninput: write,
    });
  }

  /** Names of the service are read as words; names that the trade writes with digits and points stay as they are. */
  optionOf(option) {
    return typeof option === "string" && /^[a-z_]+$/.test(option) ? label(option) : String(option);
  }

  faultsAt(path) {
    const faults = this.faults.get(pointerOf(path));
    return faults && element("span", { class: "fault", id: `fault-${idOf(path)}` }, faults.join(" "));
  }

  /** What a new part begins with: whatever it must have. */
  initial(schema) {
    if (schema.oneOf) return this.initial(schema.oneOf[0]);
    if (schema.type === "object") {
      const required = (schema.required ?? []).map((name) => [name, this.initial(schema.properties?.[name])]);
      return Object.fromEntries(required);
    }
    if (schema.type === "array") return schema.minItems ? Array.from({ length: schema.minItems }, () => this.initial(schema.items)) : [];
    if (schema.enum) return schema.enum[0];
    if (schema.type === YES_NO) return true;
    const example = schema.examples?.[0] ?? schema.example;
    return example ?? schema.minimum ?? "";
  }
}

/** A number as it is written; a text that is none is left as it is, and the service says what is wrong with it. */
function numberOf(text) {
  const plain = text.trim();
  return plain !== "" && Number.isFinite(Number(plain)) ? Number(plain) : text;
}
