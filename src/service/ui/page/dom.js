// Elements, in as few words as they can be made in.

/**
 * An element with attributes and children. Names that begin with `on` are listeners; what is null, undefined or false is
 * left out; texts are texts, never markup.
 */
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith("on")) made.addEventListener(key.slice(2), value);
    else if (key in made && typeof value !== "string") made[key] = value;
    else made.setAttribute(key, value === true ? "" : value);
  }
  made.append(...children.flat(Infinity).filter((child) => child !== null && child !== undefined && child !== false));
  return made;
}

/** The element with an id. */
export const byId = (id) => document.getElementById(id);

/** A part that can be scrolled sideways, by keyboard too. */
export function scrolled(kind, name, ...children) {
  return element("div", { class: kind, role: "group", tabindex: "0", "aria-label": name }, ...children);
}

/** The options of a list to choose from: `[value, text]` each. */
export function fillOptions(select, options, chosen) {
  select.replaceChildren(
    ...options.map(([value, text]) => element("option", { value, selected: value === chosen }, text)),
  );
}

/** A table that can be scrolled sideways: its caption, the heads of its columns, and its rows. */
export function table(caption, heads, rows) {
  const head = heads.map((text) => element("th", { scope: "col" }, text));
  return scrolled("table", caption, element("table", {}, element("caption", {}, caption), element("thead", {}, element("tr", {}, ...head)), element("tbody", {}, ...rows)));
}

/** A row of a table. */
export function row(...cells) {
  return element("tr", {}, ...cells.map((cell) => (cell instanceof HTMLTableCellElement ? cell : element("td", {}, cell))));
}
