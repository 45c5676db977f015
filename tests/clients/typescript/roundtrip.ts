// A client made from the document asks a running service: node roundtrip.js URL
import createClient from "openapi-fetch";
import type { components, paths } from "./schema";

declare const process: { argv: string[] };

const [, , baseUrl = ""] = process.argv;
// answers, not drawings
const client = createClient<paths, "application/json" | "application/problem+json">({ baseUrl });

function expect(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Error(what);
}

const request: components["schemas"]["OutletFillRequest"] = {
  reference: "hall-3",
  enclosure: { standard: "square-4x2-1/8" },
  contents: {
    cables: [{ kind: "NM-B", size: "12 AWG", conductors: 2, grounding: "12 AWG", count: 2 }],
    devices: [{ id: "S1", kind: "switch", largest_conductor: "12 AWG" }],
  },
};
const filled = await client.POST("/v1/outlet-boxes/fill", { params: { query: { explain: "full" } }, body: request });
expect(filled.data !== undefined, "an answer");
const verdict: components["schemas"]["Verdict"] | null = filled.data.verdict;
expect(verdict === "complies" && filled.data.reference === "hall-3", "the verdict and the mark");
expect(filled.data.outcome.spaces[0]?.required.value === 15.75, "the volume that is required");

const named = filled.data.findings[0]?.rule;
expect(named !== undefined, "a finding");
const rule = await client.GET("/v1/rules/{id}", { params: { path: { id: named } } });
expect(rule.data?.id === named, "the rule that the finding names");

const compared = await client.POST("/v1/editions/compare", {
  body: { check: "outlet_box_fill", editions: ["2023", "2017"], request },
});
expect(compared.data?.editions.length === 2, "both editions");

const taken = await client.POST("/v1/takeoffs", { body: [{ check: "outlet_box_fill", request }] });
expect(typeof taken.data === "object" && taken.data.summary.lines.answered === 1, "the takeoff");

const refused = await client.POST("/v1/outlet-boxes/fill", { body: {} });
expect(refused.error?.status === 422 && (refused.error.errors?.length ?? 0) > 0, "the problem with its faults");
console.log("TypeScript: an answer, its rule, a comparison, a takeoff and a problem came back as their types say");
