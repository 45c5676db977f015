// Writes the examples of the document as typed constants: the compiler then says whether each is what the types say.
//
//     node examples.mjs openapi.json FILE
import { readFileSync, writeFileSync } from "node:fs";

const [, , document, file] = process.argv;
const { paths } = JSON.parse(readFileSync(document, "utf8"));
const lines = ['import type { operations } from "./schema";', ""];
let count = 0;
for (const item of Object.values(paths)) {
  for (const { operationId: id, requestBody, responses } of Object.values(item)) {
    const sides = [
      ["requestBody", requestBody?.content["application/json"], `operations["${id}"]["requestBody"]`],
      ["answer", responses["200"]?.content?.["application/json"], `operations["${id}"]["responses"]["200"]`],
    ];
    for (const [side, content, type] of sides) {
      for (const [name, { value }] of Object.entries(content?.examples ?? {})) {
        lines.push(`export const ${id}_${side}_${count++} = ${JSON.stringify(value)} satisfies ${type}["content"]["application/json"];`);
      }
    }
  }
}
writeFileSync(file, lines.join("\n") + "\n");
console.log(`TypeScript: ${count} examples are what their types say`);
