/**
 * A JSON Schema as text: on as many lines as it has properties and definitions, so that it is short and can be looked into.
 */

/** Keywords whose entries stand on lines of their own. */
const OPENED = ["properties", "$defs"];

export function showSchema(schema: object): string {
  const fields = Object.entries(schema).map(([keyword, value]) => {
    const text = OPENED.includes(keyword) ? `{\n${entriesOf(value).join(",\n")}\n}` : JSON.stringify(value);
    return `${JSON.stringify(keyword)}:${text}`;
  });
  return `{\n${fields.join(",\n")}\n}`;
}

function entriesOf(parts: object): string[] {
  return Object.entries(parts).map(([name, part]) => `${JSON.stringify(name)}:${JSON.stringify(part)}`);
}
