/**
 * Reading a JSON Schema: references followed, choices opened, names of forms.
 *
 * A part that is written once under `$defs` and pointed to by `$ref` reads the same as one that is written out in place.
 */

/** What is read of a JSON Schema, draft 2020-12. */
export interface SchemaNode {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, SchemaNode>>;
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly default?: unknown;
  readonly examples?: readonly unknown[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly SchemaNode[];
  readonly oneOf?: readonly SchemaNode[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | SchemaNode;
  readonly items?: boolean | SchemaNode;
  readonly prefixItems?: readonly SchemaNode[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
}

/** Longest chain of references, and deepest nesting of choices in choices, that is followed; chosen, far above any in use. */
const MOST_STEPS = 20;

/**
 * The node that a reference points to, under what stands beside the reference; any other node as it is. A reference that
 * leads nowhere gives what stands beside it.
 */
export function follow(node: SchemaNode, root: SchemaNode): SchemaNode {
  let found = node;
  for (let step = 0; step < MOST_STEPS && found.$ref !== undefined; step++) {
    const { $ref, ...beside } = found;
    found = { ...targetOf($ref, root), ...beside };
  }
  return found;
}

/** `#` is the root, `#/$defs/name` a definition; nothing else is in use. */
function targetOf(ref: string, root: SchemaNode): SchemaNode {
  if (ref === "#") return root;
  const name = /^#\/\$defs\/(.+)$/.exec(ref)?.[1];
  return (name === undefined ? undefined : root.$defs?.[decodeURIComponent(name)]) ?? {};
}

/**
 * All that a value may be: choices opened, however deep; one entry where there is no choice. An object whose choices only say
 * which of its fields go together is one.
 */
export function choicesOf(node: SchemaNode, root: SchemaNode, depth = 0): SchemaNode[] {
  const found = follow(node, root);
  const options = found.oneOf ?? found.anyOf;
  if (options === undefined || found.properties !== undefined || depth > MOST_STEPS) return [found];
  return options.flatMap((option) => choicesOf(option, root, depth + 1));
}

/** What the entries of a list may be; empty for what is no list. */
export function entriesOf(node: SchemaNode): SchemaNode[] {
  const { items, prefixItems } = node;
  return [...(prefixItems ?? []), ...(typeof items === "object" ? [items] : [])];
}

/** The fields of an object; those with any name stand under `*`. */
export function fieldsOf(node: SchemaNode): [string, SchemaNode][] {
  const { properties = {}, additionalProperties } = node;
  const any = typeof additionalProperties === "object" ? [["*", additionalProperties] as [string, SchemaNode]] : [];
  return [...Object.entries(properties), ...any];
}

/**
 * The name by which an object is told from the other choices: its constant field's value, as `channel`, or the fields that
 * it must have, as `{diameter}`; undefined for what is no object.
 */
export function formName(node: SchemaNode, root: SchemaNode): string | undefined {
  if (node.properties === undefined) return undefined;
  for (const field of Object.values(node.properties)) {
    const { const: constant } = follow(field, root);
    if (typeof constant === "string") return constant;
  }
  const keys = node.required ?? Object.keys(node.properties);
  return `{${keys.join(", ")}}`;
}
