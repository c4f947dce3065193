/**
 * Fields of the design document as Markdown.
 */
import type { FieldExample } from "../../design/reference/example-of.js";
import type { FieldLine, FieldReference } from "../../design/reference/field-reference.js";
import { showJson } from "./show-json.js";

/** Path of a part → path of the section that describes it. */
export type FieldLinks = ReadonlyMap<string, string>;

/** What a section is written with. */
export interface SectionParts {
  readonly links: FieldLinks;
  readonly example: FieldExample | undefined;
  /** Name of the page on which it stands. */
  readonly page: string;
}

/** A part of the document: what it is, its fields or forms, an example. */
export function sectionOf(fields: readonly FieldReference[], { links, example, page }: SectionParts): string {
  const [{ path }] = fields;
  const depth = path.includes(".") ? "##" : "#";
  const lines = [`${depth} \`${path}\`\n`];
  for (const field of fields) {
    if (field.of !== undefined) lines.push(`In ${field.of.map(code).join(", ")}:\n`);
    lines.push(`${sentence(field.description)}${factsOf(field)}\n`);
    if (field.fields.length > 0) lines.push(`${fieldTable(field.fields, path, links, page)}\n`);
    for (const form of field.forms) {
      const about = form.description === undefined ? "" : `: ${form.description}`;
      lines.push(`**\`${form.name}\`**${about}\n\n${fieldTable(form.fields, path, links, page)}\n`);
    }
  }
  if (example !== undefined)
    lines.push(`From \`${example.from}\`:\n\n\`\`\`json\n${showJson(example.value)}\n\`\`\`\n`);
  return lines.join("\n");
}

/** One row for each field. */
export function fieldTable(fields: readonly FieldLine[], owner: string, links: FieldLinks, page: string): string {
  const rows = fields.map((field) => {
    const path = owner === "" ? field.name : `${owner}.${field.name}`;
    const cells = [linkTo(field.name, path, links, page), field.kind, presetOf(field), field.description ?? ""];
    return `| ${cells.map(cell).join(" | ")} |`;
  });
  return ["| field | kind | default | what it is |", "|---|---|---|---|", ...rows].join("\n");
}

/** A field's name, linked to the section that describes what is inside it. */
export function linkTo(name: string, path: string, links: FieldLinks, page: string): string {
  const target = links.get(path);
  if (target === undefined) return code(name);
  const file = `${target.split(".")[0]}.md`;
  return `[${code(name)}](${file === page ? "" : file}#${target.toLowerCase().replace(/[^\w-]/g, "")})`;
}

function code(text: string): string {
  return `\`${text}\``;
}

/** What stands in a cell may hold no line break and no bar. */
function cell(text: string): string {
  return text.replaceAll("\n", " ").replaceAll("|", "\\|");
}

/** The default, or that the field has to be there. */
function presetOf({ required, default: preset }: FieldLine): string {
  if (required) return "required";
  return preset === undefined ? "" : code(JSON.stringify(preset));
}

function sentence(text: string | undefined): string {
  if (text === undefined) return "";
  return `${text[0].toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? "" : "."}`;
}

function factsOf({ kind, range, required, default: preset }: FieldReference): string {
  const facts = [kind, range, required ? "required" : undefined];
  if (preset !== undefined) facts.push(`default ${code(JSON.stringify(preset))}`);
  return ` *${facts.filter((fact) => fact !== undefined).join(", ")}.*`;
}
