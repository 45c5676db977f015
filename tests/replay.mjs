#!/usr/bin/env node
// Recomputes every proof of a running service from nothing but its answers, the requests and /v1/tables.
//
// It does what the text of the OpenAPI document says of a proof (`DerivationView`, `StepView`, the schemas of requests),
// operation by operation, and nothing that stands in the engine or in the other replayer only. Where the text was not
// enough to write it from, the text was made better, so that whoever writes a third one needs neither of them. Every number
// is held as whole billionths (BigInt): no step is computed in binary floating point. Nothing but Node's own library.
//
//     node tests/replay.mjs http://127.0.0.1:8314

import { readFileSync, readdirSync } from "node:fs";
import { BILLION, COMPUTE, Wrong, converted, halfAway, must, read, write } from "./replay/exact.mjs";
import { leadsTo, standing } from "./replay/rows.mjs";

const AT_ONCE = 4;

// the service

class Service {
  #tables = new Map();

  constructor(base) {
    this.base = base;
  }

  async ask(path, body) {
    const headers = { "content-type": "application/json" };
    const response = await fetch(this.base + path, body && { method: "POST", headers, body: write(body) });
    const text = await response.text();
    must(response.ok, `${path}: ${response.status} ${text}`);
    return read(text);
  }

  /** The path of every check, by the operation's name. */
  async paths() {
    const { paths } = await this.ask("/openapi.json");
    const posted = Object.entries(paths).filter(([, operations]) => operations.post);
    return new Map(posted.map(([path, { post }]) => [post.operationId, path]));
  }

  /** Reads every table, so that steps can be recomputed without waiting. */
  async readTables() {
    for (const { id } of (await this.ask("/v1/tables")).tables) {
      const { columns, rows } = await this.ask(`/v1/tables/${id}`);
      const units = new Map(columns.map(({ name, unit }) => [name, unit]));
      this.#tables.set(id, { units, rows: new Map(rows.map(({ key, values }) => [key, values])) });
    }
  }

  table(id) {
    const table = this.#tables.get(id);
    must(table, `there is no table ${id}`);
    return table;
  }

  row({ table, row }) {
    const values = this.table(table).rows.get(row);
    must(values, `the table ${table} has no row ${row}`);
    return values;
  }

  cell(step) {
    const value = this.row(step)[step.column];
    must(value !== undefined, `the table ${step.table} has nothing in ${step.row}, ${step.column}`);
    return value;
  }
}

const RELATIONS = {
  ">=": (left, right) => left >= right,
  "<=": (left, right) => left <= right,
  "<": (left, right) => left < right,
  ">": (left, right) => left > right,
};

const COMBINE = {
  every: (truths) => truths.every(Boolean),
  any: (truths) => truths.some(Boolean),
};

function boxes(table, unit, [needed, added, gangs, square, octagonal]) {
  const serves = ({ shape }) => {
    if (shape === "square") return gangs <= square;
    if (shape === "octagonal") return gangs <= octagonal;
    if (shape.endsWith("-single-cover")) return gangs <= BILLION;
    return !shape.endsWith("-multiple-cover") || gangs > BILLION;
  };
  const column = unit === "in3" ? "volume_in3" : "volume_cm3";
  const volume = (row) => (row.per_gang === "yes" ? halfAway(row[column] * gangs, BILLION) : row[column]);
  return [...table.rows]
    .filter(([, row]) => serves(row) && volume(row) + added >= needed)
    .map(([key, row]) => ({ key, volume: volume(row) }))
    .sort((one, other) => (one.volume < other.volume ? -1 : Number(one.volume > other.volume)))
    .map(({ key }) => key);
}

// one proof

const SYSTEMS = {
  us: ["in", "in2", "in3", "lb"],
  si: ["mm", "mm2", "cm3", "kg"],
};
/** The system that a step is in: by its unit, or, of a figure without one, by the column where the two columns differ. */
function systemOf(service, { op, unit, column, ...cell }) {
  const [year, system] = op === "stated" ? column.split("_") : [];
  const differs = system && new Set(Object.keys(SYSTEMS).map((one) => service.cell({ ...cell, column: `${year}_${one}` }))).size > 1;
  return differs ? system : Object.keys(SYSTEMS).find((one) => SYSTEMS[one].includes(unit));
}

/** What a step comes to, recomputed: `equals`, `holds` or `selects`, and the unit where a table says it. */
function recomputed(service, request, answer, step, of) {
  const { op } = step;
  const values = of.map((operand) => operand.equals);
  const truths = of.map((operand) => operand.holds);
  const asked = request.units ?? "us";
  if (op === "given") {
    const value = standing(request, step.at);
    must(value !== undefined, `the request has nothing at ${step.at}`);
    return typeof value === "bigint" ? { equals: value } : { equals: BILLION, unit: "1" };
  }
  if (op === "fact") {
    const there = standing(request, step.at);
    return { holds: typeof there === "string" ? true : there };
  }
  if (op === "word") {
    must(standing(request, step.at) === step.says, `the request says ${shown(standing(request, step.at))}`);
    return {};
  }
  if (op === "whatever") {
    must(standing(request, step.at) === undefined, "the request says it");
    must(truths.length > 1 && truths.length === step.values.length, "it needs a step for each value");
    must(truths.every((truth) => truth === truths[0]), "the values do not agree");
    return { holds: truths[0] };
  }
  if (op === "account") {
    must(step.status === accounted(step, truths), `it is not ${step.status}`);
    return {};
  }
  if (op === "chosen") return { equals: step.equals };
  if (op === "lookup" || op === "affirm") {
    must(step.at === undefined || leadsTo(service, step, request), `${step.at} does not lead to the row ${step.row}`);
    const cell = service.cell(step);
    if (op === "lookup") return { equals: cell, unit: service.table(step.table).units.get(step.column) };
    must(cell === "yes" || cell === "no", `the table says ${cell}`);
    return { holds: cell === "yes" };
  }
  if (op === "converted") {
    must(of.length === 1 && (of[0].op === "given" || of[0].amended), "it converts what the request does not say");
    return { equals: converted(of[0].equals, of[0].unit, step.unit) };
  }
  if (op === "stated") {
    const units = step.column.slice(-2);
    must(step.table === "rule-figures" && step.column === `${request.edition}_${units}`, "that is another column");
    must(units === asked || !step.amended, "an amendment is in the units of the request");
    const amended = request.amendments?.find(({ figure }) => figure === step.row)?.value;
    must((amended !== undefined) === (step.amended ?? false), "amended or not?");
    return { equals: amended ?? service.cell(step), unit: service.row(step)[`unit_${units}`] };
  }
  if (op in COMPUTE) {
    must(values.every((value) => value !== undefined), "it computes with a step that has no value");
    return { equals: COMPUTE[op](values) };
  }
  if (op === "compare") {
    must(of.length === 2 && of[0].unit === of[1].unit, "it compares what has two units");
    return { holds: RELATIONS[step.relation](...values) };
  }
  if (op in COMBINE) {
    must(truths.length && truths.every((truth) => truth !== undefined), "it combines what neither holds nor does not");
    return { holds: COMBINE[op](truths) };
  }
  if (op === "select_boxes") return { selects: boxes(service.table(step.table), of[0].unit, values) };
  if (op === "read") {
    const chosen = request.interpretations?.[step.point];
    const told = answer.interpretations.find(({ point }) => point === step.point);
    must(told?.reading === step.reading, "the answer names another reading");
    must(chosen === undefined ? told.is_default : chosen === step.reading, "the request chooses another reading");
    return {};
  }
  must(op === "does_not_apply", `no operation is called ${op}`);
  return {};
}

/** What a rule comes to by the steps that decide it. */
function accounted({ status, wants }, truths) {
  // one that is not determined names what would decide it, which may be there and say too little
  if (status === "not_determined") return status;
  // a word decides, or something that no step says: what it decides is believed
  if (wants === undefined) return truths.every((truth) => truth === undefined) ? status : undefined;
  must(truths.length === 1 && truths[0] !== undefined, "it is decided by a step that neither holds nor does not");
  return truths[0] === wants ? "satisfied" : "violated";
}

const GRAVITY = ["violated", "not_determined", "satisfied", "does_not_apply"];
const gravest = (statuses) => GRAVITY.find((status) => statuses.includes(status));

/** The verdict that steps come to: rule by rule, and then that of all. */
function verdict(answer, steps) {
  if (answer.verdict === null) return;
  const about = new Map();
  for (const step of steps.values()) about.set(step.rule, [...(about.get(step.rule) ?? []), step]);
  const found = (about.get("nothing-described") ?? []).map((step) => step.status);
  for (const status of GRAVITY) {
    for (const rule of answer.account[status]) {
      const named = about.get(rule) ?? [];
      const decided = named.filter(({ op }) => op === "account").map((step) => step.status);
      const worked = named.some(({ op }) => op !== "account" && op !== "does_not_apply");
      const came = gravest(decided) ?? (worked ? "satisfied" : "does_not_apply");
      // a rule that is worked with and decides nothing: nothing raises it, or another way to satisfy the same demand is met
      const unraised = status === "does_not_apply" && came === "satisfied" && decided.length === 0;
      must(came === status || unraised, `${rule} comes to ${came}, the account says ${status}`);
      found.push(came);
    }
  }
  const listed = new Set(["nothing-described", ...GRAVITY.flatMap((status) => answer.account[status])]);
  for (const { op, rule } of steps.values()) must(op !== "account" || listed.has(rule), `${rule} is not in the account`);
  const comes = { violated: "violates", not_determined: "not_determined" }[gravest(found)] ?? "complies";
  must(answer.verdict === comes, `the steps come to ${comes}, the verdict is ${answer.verdict}`);
}

const same = (one, other) => (Array.isArray(one) ? write(one) === write(other ?? null) : one === other);
const shown = (value) => (value === undefined ? "nothing" : write(value));

/** Recomputes the proof of one answer. Returns how many steps it has. */
function replay(service, request, answer) {
  const steps = new Map();
  const units = request.units ?? "us";
  for (const step of answer.derivation.steps) {
    try {
      const of = (step.of ?? []).map((name) => steps.get(name));
      must(!of.includes(undefined), "it computes with a step that is not before it");
      const found = recomputed(service, request, answer, step, of);
      for (const member of ["equals", "holds", "selects"]) {
        must(same(found[member], step[member]), `${member} ${shown(step[member])}, but it is ${shown(found[member])}`);
      }
      must(found.unit === undefined || found.unit === step.unit, `its unit is ${found.unit}`);
      const systems = new Set([step, ...of].map((one) => systemOf(service, one)).filter(Boolean));
      must(systems.size < 2 || step.op === "converted", "it computes with both systems of units");
      must(step.op !== "given" || (systemOf(service, step) ?? units) === units, "the request is in the other system");
      const touched = step.op === "stated" ? step.amended : of.some(({ amended }) => amended) || undefined;
      must(step.amended === touched, "what an amendment touches is marked");
    } catch (error) {
      throw new Wrong(`${step.id} (${step.op}): ${error.message}`);
    }
    steps.set(step.id, step);
  }
  figures(answer.outcome, steps, "/outcome");
  if (answer.account) verdict(answer, steps);
  for (const { step } of answer.findings) must(step === undefined || steps.has(step), `a finding names ${step}`);
  return steps.size;
}

/** Compares every figure of the outcome with the step that it names. */
function figures(part, steps, place) {
  if (part === null || typeof part !== "object") return;
  if (part.step !== undefined && part.value !== undefined) {
    const { equals, unit } = steps.get(part.step) ?? {};
    must(equals === part.value && unit === part.unit, `${place} is not what ${part.step} comes to`);
  }
  for (const [name, member] of Object.entries(part)) figures(member, steps, `${place}/${name}`);
}

// every conformance case, in every edition that it names

const [base] = process.argv.slice(2);
if (!base) {
  console.error("node tests/replay.mjs http://127.0.0.1:8314");
  process.exit(2);
}
const service = new Service(base.replace(/\/$/, ""));
await service.readTables();
const paths = await service.paths();
const folder = new URL("conformance/", import.meta.url);
const asked = readdirSync(folder)
  .filter((file) => file.endsWith(".json"))
  .sort()
  .flatMap((file) => read(readFileSync(new URL(file, folder), "utf8")).map((found) => ({ file, ...found })))
  .flatMap((found) => found.editions.map((edition) => ({ ...found, edition })));

let [passed, failed, count] = [0, 0, 0];
async function work() {
  for (let next = asked.pop(); next; next = asked.pop()) {
    const request = { ...next.request, edition: next.edition };
    try {
      const answer = await service.ask(paths.get(next.check), request);
      count += replay(service, request, answer);
      passed += 1;
    } catch (error) {
      failed += 1;
      console.log(`${next.file}: «${next.name}» (${next.edition}): ${error.message}`);
    }
  }
}
await Promise.all(Array.from({ length: AT_ONCE }, work));
console.log(`${count} proof steps recomputed from the answers and the published tables`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed || !passed ? 1 : 0);
