/**
 * The reference of the design document as pages of Markdown, one for each part of a design and one that lists them.
 *
 * A part that comes again elsewhere, as regions do in a medallion, is described once and linked to from there.
 */
import { describeField, objectsOf } from "../../design/reference/describe-field.js";
import { exampleOf } from "../../design/reference/example-of.js";
import type { FieldLine, FieldReference } from "../../design/reference/field-reference.js";
import { findField } from "../../design/reference/find-field.js";
import { fieldsOf, type SchemaNode } from "../../design/reference/schema-node.js";
import { type FieldLinks, fieldTable, linkTo, sectionOf } from "./markdown.js";

/** What the pages are made from. */
export interface ReferenceSource {
  /** The JSON Schema of the design document. */
  readonly schema: object;
  /** Designs from which examples are taken, by name. */
  readonly designs: Readonly<Record<string, unknown>>;
}

/** Deepest nesting that gets a section of its own; chosen, twice what the document has. */
const DEEPEST = 16;

/** File name → text of each page; `README.md` is the list. */
export function referencePages(source: ReferenceSource): Record<string, string> {
  const root = source.schema as SchemaNode;
  const sections = gather(root);
  const links: FieldLinks = new Map(sections.flatMap(({ path, also }) => [path, ...also].map((one) => [one, path])));
  const [whole, ...parts] = sections;
  const pages: Record<string, string> = { "README.md": listPage(whole.fields[0], links) };
  for (const { path, fields } of parts) {
    const name = `${path.split(".")[0]}.md`;
    const text = sectionOf(fields, { links, example: exampleOf(path, source.designs), page: name });
    pages[name] = name in pages ? `${pages[name]}\n${text}` : `${HEAD}\n${text}`;
  }
  return pages;
}

/** A part of the document that is described in a section. */
interface Section {
  readonly path: string;
  /** Other paths at which the same stands. */
  readonly also: string[];
  readonly fields: FieldReference[];
}

/** All parts that consist of fields, each where it is met first, in the document's order. */
function gather(root: SchemaNode): Section[] {
  const known = new Map<string, Section>();
  const visit = (path: string, depth: number) => {
    const found = findField(path, root);
    const objects = found.flatMap(({ node }) => objectsOf(node, root));
    if (objects.length === 0 || depth > DEEPEST) return;
    const key = JSON.stringify(objects.map((object) => ({ ...object, description: undefined })));
    const same = known.get(key);
    if (same !== undefined) {
      same.also.push(path);
      return;
    }
    const fields = found.map(({ node, required, of }) => describeField(node, root, { path, required, of }));
    known.set(key, { path, also: [], fields });
    const names = new Set(objects.flatMap((object) => fieldsOf(object).map(([name]) => name)));
    for (const name of names) visit(path === "" ? name : `${path}.${name}`, depth + 1);
  };
  visit("", 0);
  return [...known.values()];
}

const HEAD = "<!-- Made by `npm run reference` from the schema; do not edit. -->\n";

function listPage(whole: FieldReference, links: FieldLinks): string {
  return [
    HEAD,
    "# The design document, field by field\n",
    "A design is one JSON file with these fields. Lengths are millimetres, angles degrees. A field without a default has to",
    "be there only where it says `required`. `annulet explain pattern.regions.section` prints the same for one field.\n",
    fieldTable(whole.fields, "", links, "README.md"),
    `\nParts that consist of fields: ${partsOf(whole.fields, links).join(", ")}.\n`,
  ].join("\n");
}

function partsOf(fields: readonly FieldLine[], links: FieldLinks): string[] {
  return fields.filter(({ name }) => links.has(name)).map(({ name }) => linkTo(name, name, links, "README.md"));
}
