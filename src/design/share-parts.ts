/**
 * Writes the parts of a JSON Schema that come again once, under `$defs`, and points to them by `$ref`.
 *
 * Two rounds: parts that are the same in every word, then those that differ in description and default alone, which stay
 * at the reference: draft 2020-12 reads keywords beside it.
 */

/** A JSON Schema as a plain object. */
export interface SchemaPart {
  readonly [keyword: string]: unknown;
}

/** What stays at a reference in the second round. */
const NOTES = ["description", "default"] as const;

/** Keywords whose value is a schema, a list of schemas, and schemas by name. */
const ONE = ["items", "additionalProperties"];
const LIST = ["anyOf", "oneOf", "prefixItems"];
const NAMED = ["properties", "$defs"];

/** What a reference takes beside its name, characters: `{"$ref":"#/$defs/"}`. */
const REFERENCE = 19;

/** What a definition takes beside its name and itself, characters: `"":,`. */
const DEFINITION = 4;

/** The schema with its parts shared; it means the same. Definitions that it has already stay as they are called. */
export function shareParts(schema: SchemaPart): SchemaPart {
  return shareRound(
    shareRound(schema, (part) => ({ core: part, notes: {} })),
    partWithoutNotes,
  );
}

type Split = (part: SchemaPart) => { readonly core: SchemaPart; readonly notes: SchemaPart };

function partWithoutNotes(part: SchemaPart): ReturnType<Split> {
  const notes = Object.fromEntries(NOTES.flatMap((note) => (note in part ? [[note, part[note]]] : [])));
  const core = Object.fromEntries(Object.entries(part).filter(([keyword]) => !(keyword in notes)));
  return { core, notes };
}

function shareRound(schema: SchemaPart, split: Split): SchemaPart {
  const counts = countParts(schema, split);
  const names = new Map<string, string>();
  const definitions: Record<string, SchemaPart> = {};
  const taken = new Set(Object.keys((schema.$defs ?? {}) as SchemaPart));
  const share = (part: SchemaPart, name: string): SchemaPart => {
    const { core, notes } = split(part);
    const key = JSON.stringify(core);
    if (!isWorthwhile(key, counts.get(key) ?? 0, nameOf(core, name)) || "$ref" in part)
      return mapParts(part, share, name);
    const known = names.get(key);
    if (known !== undefined) return { ...notes, $ref: `#/$defs/${known}` };
    const chosen = unusedName(nameOf(core, name), taken);
    names.set(key, chosen);
    definitions[chosen] = mapParts(core, share, name);
    return { ...notes, $ref: `#/$defs/${chosen}` };
  };
  const shared = mapParts(schema, share);
  return { ...shared, $defs: { ...(shared.$defs as SchemaPart), ...definitions } };
}

/** How often each part would be written if its like were written once: what lies inside a like is not counted again. */
function countParts(schema: SchemaPart, split: Split): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const count = (part: SchemaPart, name: string): SchemaPart => {
    const { core } = split(part);
    const key = JSON.stringify(core);
    const before = counts.get(key) ?? 0;
    counts.set(key, before + 1);
    return before === 0 || !isWorthwhile(key, before + 1, nameOf(core, name)) ? mapParts(part, count, name) : part;
  };
  mapParts(schema, count);
  return counts;
}

/** Whether a definition and references to it are shorter than the part itself each time. */
function isWorthwhile(key: string, count: number, name: string): boolean {
  return count * key.length > count * (REFERENCE + name.length) + key.length + DEFINITION + name.length;
}

/** A part with all schemas in it mapped; `name` is the property that each stands at, or its definition's. */
export function mapParts(
  part: SchemaPart,
  map: (inner: SchemaPart, name: string) => SchemaPart,
  name = "part",
): SchemaPart {
  const inner = (value: unknown) => (isPart(value) ? map(value, name) : value);
  return Object.fromEntries(
    Object.entries(part).map(([keyword, value]) => {
      if (ONE.includes(keyword)) return [keyword, inner(value)];
      if (LIST.includes(keyword) && Array.isArray(value)) return [keyword, value.map(inner)];
      if (!NAMED.includes(keyword) || !isPart(value)) return [keyword, value];
      const mapNamed = keyword === "$defs" ? (one: SchemaPart, at: string) => mapParts(one, map, at) : map;
      const named = Object.entries(value).map(([at, one]) => [at, isPart(one) ? mapNamed(one, at) : one]);
      return [keyword, Object.fromEntries(named)];
    }),
  );
}

function isPart(value: unknown): value is SchemaPart {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Plain numbers and texts are called by their limits, all else by the property that it first stands at. */
function nameOf(core: SchemaPart, property: string): string {
  const { type, minimum, exclusiveMinimum, maximum, minLength, maxLength, ...others } = core;
  if (Object.keys(others).length > 0) return property;
  if (type === "string" && maxLength !== undefined) return `text-${minLength ?? 0}-${maxLength}`;
  if (typeof type !== "string") return property;
  const kind = type === "number" ? "" : `${type}-`;
  const most = maximum ?? "";
  if (exclusiveMinimum !== undefined) return `${kind}above-${exclusiveMinimum}..${most}`;
  return minimum === undefined ? property : `${kind}${minimum}..${most}`;
}

function unusedName(wanted: string, taken: Set<string>): string {
  let name = wanted;
  for (let i = 2; taken.has(name); i++) name = `${wanted}-${i}`;
  taken.add(name);
  return name;
}
