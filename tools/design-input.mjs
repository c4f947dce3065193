/**
 * The design document as a TypeScript type with a comment on every field, made of the JSON Schema whose descriptions are
 * whole.
 */

const HEAD = `/**
 * The design document as it is written, with what each field means. Made of the schema's descriptions by
 * \`npm run reference\`: change those, not this.
 */
`;

/** Longest line of a comment, characters. */
const LONGEST = 110;

/** A part that differs from another in what is said of it alone: written where it is used. */
const NUMBERED = /-\d+$/;

/** Names that documents choose from, as types of their own. */
const NAMED = {
  MaterialName: { said: "Symbol of a built-in alloy.", find: ({ properties }) => properties.material.examples },
  MotifName: {
    said: "Name of a motif of the catalogue.",
    find: ({ $defs }) => ($defs.motif.anyOf ?? $defs.motif.oneOf).map(({ properties }) => properties.name.const),
  },
};

/** The text of the file. */
export function designInputText(schema) {
  const { $defs = {}, ...design } = schema;
  const names = new Map(
    Object.entries($defs)
      .filter(([name, part]) => isLarge(part) && !NUMBERED.test(name))
      .map(([name]) => [name, typeName(name)]),
  );
  const write = new Writer($defs, names);
  const types = [...names].map(([name, as]) => {
    const said = $defs[name].description ?? `A part of a design: ${name}.`;
    return `${comment(said, "")}export type ${as} = ${write.type($defs[name], "")};\n`;
  });
  const named = Object.entries(NAMED).map(([as, { said, find }]) => {
    return `/** ${said} */\nexport type ${as} = ${union(find(schema).map((one) => JSON.stringify(one)))};\n`;
  });
  const whole = `/** A design as it is written: fields with a default may be left out. */\nexport interface DesignInput ${write.object(design, "")}\n`;
  return [HEAD, ...named, ...types, whole].join("\n");
}

class Writer {
  #defs;
  #names;

  constructor(defs, names) {
    this.#defs = defs;
    this.#names = names;
  }

  type(part, indent) {
    if (part.$ref !== undefined) return this.#referred(part, indent);
    if (part.const !== undefined) return JSON.stringify(part.const);
    if (part.enum !== undefined) return part.enum.map((one) => JSON.stringify(one)).join(" | ");
    if (part.type === "object") return this.#record(part, indent);
    const choices = part.anyOf ?? part.oneOf;
    if (choices !== undefined) return union(choices.map((one) => this.type(one, indent)));
    if (part.type === "array") return this.#list(part, indent);
    if (part.examples !== undefined && part.type === "string") {
      return union(["MaterialName", "(string & {})"]);
    }
    return union([part.type ?? "unknown"].flat().map((one) => (one === "integer" ? "number" : one)));
  }

  object({ properties = {}, required = [] }, indent) {
    const inner = `${indent}  `;
    const fields = Object.entries(properties).map(([name, part]) => {
      const needed = required.includes(name);
      const type = this.type(part, inner);
      const key = /^[A-Za-z_$][\w$]*$/.test(name) ? name : JSON.stringify(name);
      const said = part.description ?? this.#defs[refOf(part)]?.description;
      return `${comment(said, inner)}${inner}readonly ${key}${needed ? "" : "?"}: ${type}${needed ? "" : " | undefined"};\n`;
    });
    return `{\n${fields.join("")}${indent}}`;
  }

  #referred(part, indent) {
    const name = refOf(part);
    return this.#names.get(name) ?? this.type(this.#defs[name], indent);
  }

  #list({ prefixItems, items }, indent) {
    if (prefixItems !== undefined) return `readonly [${prefixItems.map((one) => this.type(one, indent)).join(", ")}]`;
    const type = items === undefined ? "unknown" : this.type(items, indent);
    return `readonly ${/[ {]/.test(type) ? `(${type})` : type}[]`;
  }

  #record(part, indent) {
    if (part.properties !== undefined) return this.object(part, indent);
    const { additionalProperties: values, propertyNames } = part;
    const keys = propertyNames === undefined ? "string" : this.type(propertyNames, indent);
    const type = typeof values === "object" ? this.type(values, indent) : "unknown";
    const some = keys === "string" ? "" : "Partial<";
    return `Readonly<${some}Record<${keys}, ${type}>>${some === "" ? "" : ">"}`;
  }
}

/** Each once. */
function union(types) {
  return [...new Set(types.flatMap((type) => (/[{(]/.test(type) ? [type] : type.split(" | "))))].join(" | ");
}

function refOf(part) {
  return part.$ref?.slice("#/$defs/".length);
}

/** Whether a part deserves a name: it has fields, or forms with fields. */
function isLarge({ properties, anyOf, oneOf }) {
  const forms = (anyOf ?? oneOf ?? []).filter((form) => form.properties !== undefined);
  return properties !== undefined || forms.length > 1;
}

/** `edge-2` → `Edge2Input`. */
function typeName(name) {
  const words = name.split(/[^A-Za-z0-9]+/).filter((word) => word !== "");
  return `${words.map((word) => word[0].toUpperCase() + word.slice(1)).join("")}Input`;
}

function comment(said, indent) {
  if (said === undefined) return "";
  const lines = [];
  for (const word of said.replaceAll("*/", "*\\/").split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LONGEST - indent.length)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  if (lines.length === 1) return `${indent}/** ${lines[0]} */\n`;
  return `${indent}/**\n${lines.map((line) => `${indent} * ${line}\n`).join("")}${indent} */\n`;
}
