// What stands in a request, and the row of a table to which it leads.

import { NUMBER, billionths, must } from "./exact.mjs";

/** What stands at a JSON Pointer; undefined where there is nothing. */
export const standing = (request, pointer) =>
  pointer
    .split("/")
    .slice(1)
    .map((part) => part.replaceAll("~1", "/").replaceAll("~0", "~"))
    .reduce((value, part) => (value === null || typeof value !== "object" ? undefined : value[part]), request);

const FRACTIONS = { "⅜": "3/8", "½": "1/2", "¼": "1/4", "¾": "3/4" };

/** A size or a name as tables write it, from the ways in which a request may. */
function inFull(text) {
  const size = /^(?:#|no\.?)?\s*(\d+(?:\/0)?)\s*(awg|kcmil|mcm)?$/i.exec(text.trim());
  if (size) {
    const [, number, unit = Number(number) >= 250 ? "kcmil" : "awg"] = size;
    return `${number} ${unit.toLowerCase() === "awg" ? "AWG" : "kcmil"}`;
  }
  return text.trim();
}

function tradeSize(table, value) {
  const rows = [...table.rows];
  if (typeof value === "object") return rows.find(([, row]) => row.designator_mm === value.metric_designator)?.[0];
  const spelled = value
    .trim()
    .replace(/["″]+$/, "")
    .trimEnd()
    .replace(/(\d?)([⅜½¼¾])/g, (_, before, sign) => `${before}${before && "-"}${FRACTIONS[sign]}`);
  const inches = NUMBER.test(spelled) ? billionths(spelled) : undefined;
  return rows.find(([key, row]) => key === spelled.replaceAll(" ", "-") || row.size_in === inches)?.[0];
}

const WET = {
  outdoor: { damp: "outdoor_rain_snow_sleet", wet: "outdoor_rain_snow_sleet" },
  indoor: { damp: "indoor_falling_liquids", wet: "indoor_hosedown" },
};

/** Whether the row that a step takes is the one to which the member at its place leads. */
export function leadsTo(service, step, request) {
  const value = standing(request, step.at);
  const { table, row } = step;
  must(value !== undefined, `the request has nothing at ${step.at}`);
  const words = row.split(" ");
  if (table === "trade-sizes") {
    // a cable counts as the raceway that its conductors would need, which the steps before compare
    return step.at.endsWith("/cable") || row === tradeSize(service.table(table), value);
  }
  if (table === "raceway-outside-diameters") {
    // a kind that is not said, or that the table does not have in that size, is tried: the row is then any of that trade size
    const raceway = standing(request, step.at.slice(0, step.at.lastIndexOf("/")));
    const size = tradeSize(service.table("trade-sizes"), raceway.trade_size);
    return words[1] === size && (!service.table(table).rows.has(`${raceway.kind} ${size}`) || raceway.kind === words[0]);
  }
  if (table === "enclosure-types") {
    if (step.at === "/moisture") return row === WET[request.location][value];
    return step.at === "/location" ? row.startsWith(`${value}_`) : row === `${request.location}_${value}`;
  }
  if (typeof value === "string") return row === value || row === inFull(value) || row.endsWith(` ${inFull(value)}`);
  if (table.startsWith("wire-bending-space")) return largest(value) === row;
  must(value.size !== undefined, `nothing at ${step.at} leads to a row`);
  const size = inFull(value.size);
  if (table === "bare-conductor-dimensions") return row === `${size} ${value.construction ?? "stranded"}`;
  const types = service.row(step).types?.split(" ") ?? [words[0]];
  return row === `${words[0]} ${size}` && (value.insulation === undefined || types.includes(value.insulation));
}

/** The largest conductor of a pull. */
function largest(pull) {
  const sizes = [pull.largest_conductor, ...(pull.conductors ?? []).map(({ size }) => size)].filter(Boolean).map(inFull);
  const order = (size) => {
    const [number, unit] = size.split(" ");
    if (unit === "kcmil") return Number(number);
    return number.endsWith("/0") ? Number(number[0]) : -Number(number);
  };
  return sizes.sort((one, other) => order(one) - order(other)).at(-1);
}
