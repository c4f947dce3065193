/**
 * annulet explain: what a field of the design document is.
 */
import { explainField, type FieldLine, type FieldReference } from "../../index.js";
import { exampleOf, showJson } from "../../toolbox/index.js";
import { type Command, JSON_OPTION } from "../command.js";
import { exampleDesigns } from "../example-designs.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson } from "../io.js";
import { tint } from "../tint.js";
import { wrapLines } from "../wrap-lines.js";

export const explainCommand: Command<{ json?: boolean }> = {
  name: "explain",
  details: ["Without a field, the document's own fields. A form may be named in the path, or left out."],
  examples: [
    { line: "annulet explain", does: "the fields of a design" },
    { line: "annulet explain profile.outside", does: "the forms of a band's outside, with their fields" },
    { line: "annulet explain pattern.regions.section.domed", does: "one form" },
  ],
  args: [{ name: "[field]", description: "a field, as pattern.regions.height" }],
  options: [JSON_OPTION],
  async run({ args: [path = ""], options: { json } }, io) {
    const found = explainField(path);
    const example = path === "" ? undefined : exampleOf(path, exampleDesigns());
    if (json) printJson(io, { fields: found, example });
    else {
      const parts = found.map((field) => showField(io, field));
      if (example !== undefined) parts.push(`From examples/${example.from}:\n  ${showJson(example.value, "  ")}`);
      if (path === "") parts.push("annulet explain FIELD says more of one, as annulet explain profile.outside");
      print(io, parts.join("\n\n"));
    }
    return EXIT.done;
  },
};

function showField(io: Io, field: FieldReference): string {
  const name = field.path === "" ? "A design" : field.path;
  const of = field.of === undefined ? "" : ` of ${field.of.join(", ")}`;
  const head = [`${tint(io, io.stdout, "bold", name)}${of}: ${factsOf(field)}`];
  if (field.description !== undefined) head.push(wrapLines(field.description));
  if (field.examples !== undefined) head.push(wrapLines(`for example ${field.examples.join(", ")}`));
  const parts = [head.join("\n")];
  if (field.fields.length > 0) parts.push(showLines(io, field.fields));
  for (const form of field.forms) {
    const about = form.description === undefined ? "" : `\n${wrapLines(form.description)}`;
    parts.push(`${tint(io, io.stdout, "bold", form.name)}${about}\n${showLines(io, form.fields)}`);
  }
  return parts.join("\n\n");
}

function factsOf({ kind, unit, range, choices, required, default: preset }: FieldReference): string {
  const facts = [kind, unit, range, choices?.map((choice) => JSON.stringify(choice)).join(", ")];
  if (required) facts.push("required");
  else if (preset !== undefined) facts.push(`default ${JSON.stringify(preset)}`);
  return facts.filter((fact) => fact !== undefined).join("; ");
}

function showLines(io: Io, lines: readonly FieldLine[]): string {
  return lines
    .map((line) => `  ${tint(io, io.stdout, "bold", line.name)}  ${lineFacts(line)}${about(line)}`)
    .join("\n");
}

function lineFacts({ kind, required, default: preset }: FieldLine): string {
  if (required) return `(${kind}; required)`;
  return preset === undefined ? `(${kind})` : `(${kind}; default ${JSON.stringify(preset)})`;
}

function about({ description }: FieldLine): string {
  return description === undefined ? "" : `\n${wrapLines(description, "      ")}`;
}
