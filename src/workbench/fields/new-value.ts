/**
 * What a part of the document begins with when it is added or given in another form.
 */
import type { FieldReference } from "../../index.js";
import { byPlace } from "./by-place.js";
import type { FieldBook } from "./field-book.js";
import { inForm, type Place } from "./place.js";
import { isObject, keysOfForm, type Way, wayOf, waysOf } from "./ways.js";

/** First values of fields that must be there and have no default. All chosen: they make a plain ring that can be cast. */
const FIRST: Readonly<Record<string, unknown>> = {
  width: 0.6,
  thickness: 1.8,
  height: 0.4,
  dip: 0.15,
  diameter: 0.4,
  length: 2,
  "size.diameter": 17.2,
  "size.circumference": 54,
  "size.system": "iso",
  "size.value": "54",
  "sprue.diameter": 3,
  "sprue.length": 8,
  "lettering.text": "abc",
  "regions.text.text": "abc",
  "alloys.symbol": "own",
  "alloys.density": 10,
  "taper.width": 4,
  "taper.thickness": 1.5,
  tiles: 2,
  repeats: 12,
  "{v}.v": 0,
  "{path}.path": "M 0 0.2 L 1 0.2",
  angle: 0,
  "stones.size": 1.2,
  "along.v": 0,
  "over.from": 60,
  "over.to": 120,
  "single.angle": 90,
  "gems.symbol": "own",
  "gems.density": 3.5,
};

/** Whole parts that begin with more than they must have. Chosen. */
const FIRST_PARTS: Readonly<Record<string, unknown>> = {
  "pattern.regions": { motif: { name: "lozenge" }, height: 0.4 },
  "pattern.lanes": { regions: [{ motif: { name: "zigzag" }, height: 0.4 }] },
  "lanes.regions": { motif: { name: "lozenge" }, height: 0.4 },
  "medallion.regions": { motif: { name: "flower" }, height: 0.4 },
  "ornament.regions": { motif: { name: "flower" }, height: 0.4 },
  beads: { along: "seat-edge", diameter: 0.4 },
  lettering: { text: "abc", at: "bore" },
  "regions.beads": { diameter: 0.34 },
  alloys: { symbol: "own", density: 10 },
  pattern: { regions: [{ motif: { name: "lozenge" }, height: 0.4 }] },
  medallion: { tiles: 2, regions: [{ motif: { name: "flower" }, height: 0.4 }] },
  "regions.section": { form: "domed", height: 0.4 },
  "section.ridge": { form: "ridge", height: 0.4 },
  "profile.taper": { width: 4 },
  "outside.free": {
    form: "free",
    points: [
      [-3, 1.4],
      [0, 2],
      [3, 1.4],
    ],
  },
  stones: { size: 1.2, place: { form: "single" }, setting: { form: "flush" } },
  gems: { symbol: "own", density: 3.5 },
  "place.tile": { form: "tile", at: [0.5, 0] },
  "place.line": { form: "line", path: "M 0 0 L 1 0" },
  "{shape}": { shape: { path: "M 0 0.2 L 1 0.2" } },
};

/** Deepest nesting of parts that must be there; chosen, twice what the schema has. */
const DEEPEST = 6;

/** A value to begin with, given in one of the ways of a field. */
export async function newValue(place: Place, way: Way, book: FieldBook, depth = 0): Promise<unknown> {
  switch (way.kind) {
    case "object":
      return partOf(place, way) ?? newObject(place, way, book, depth);
    case "objects":
      return [partOf(place, way) ?? (await newObject(place, { kind: "object", form: undefined }, book, depth))];
    default:
      return newPlain(place, way, book);
  }
}

/** The part that a place begins with, where one is told for it, in the form. */
function partOf(place: Place, way: Way): unknown {
  const form = way.kind === "object" ? way.form : undefined;
  if (form === undefined) return byPlace(FIRST_PARTS, place.schema);
  const parts = [byPlace(FIRST_PARTS, inForm(place, form.name).schema), byPlace(FIRST_PARTS, place.schema)];
  return parts.find((part) => wayOf(part, [way]) === 0);
}

/** Entries of a list begin with its part, or with what they must have. */
export async function newEntry(list: Place, book: FieldBook): Promise<unknown> {
  const [entry] = (await newValue(list, { kind: "objects" }, book)) as unknown[];
  return entry;
}

/**
 * The same object in another form: fields of the same name stay where the other form takes such a value, what it must have
 * beside them begins anew, all else goes.
 */
export async function changeForm(value: unknown, place: Place, way: Way, book: FieldBook): Promise<unknown> {
  if (way.kind !== "object" || way.form === undefined || !isObject(value)) return newValue(place, way, book);
  const begun = (await newValue(place, way, book)) as Readonly<Record<string, unknown>>;
  const { inside } = await book.ask(inForm(place, way.form.name).schema);
  const kept = way.form.fields
    .filter(({ name }) => Object.hasOwn(value, name) && takes(inside[name] ?? [], value[name]))
    .map(({ name }) => [name, value[name]] as const);
  return ordered(
    { ...begun, ...Object.fromEntries(kept) },
    way.form.fields.map(({ name }) => name),
  );
}

/** Whether a field may have a value, as far as its kind goes. Its constant is no value that could be kept. */
function takes(references: readonly FieldReference[], value: unknown): boolean {
  return references.some((reference) => waysOf(reference).some((way) => isOfKind(value, way)));
}

function isOfKind(value: unknown, way: Way): boolean {
  if (way.kind === "word") return value === way.word;
  if (way.kind === "number") return typeof value === "number";
  if (way.kind === "text") return typeof value === "string";
  if (way.kind === "switch") return typeof value === "boolean";
  return typeof value === "object";
}

function ordered(value: Readonly<Record<string, unknown>>, keys: readonly string[]): Record<string, unknown> {
  const known = keys.filter((key) => Object.hasOwn(value, key)).map((key) => [key, value[key]] as const);
  return { ...Object.fromEntries(known), ...value };
}

async function newObject(place: Place, way: Way & { kind: "object" }, book: FieldBook, depth: number): Promise<object> {
  const at = inForm(place, way.form?.name);
  const { own, inside } = await book.ask(at.schema);
  const lines = way.form?.fields ?? own.flatMap(({ fields }) => fields);
  const must = way.form === undefined ? undefined : keysOfForm(way.form.name);
  const value: Record<string, unknown> = {};
  for (const { name, required } of lines) {
    if (!required && must?.includes(name) !== true) continue;
    const [reference] = inside[name] ?? [];
    if (reference === undefined || depth >= DEEPEST) continue;
    const [first] = waysOf(reference);
    value[name] = await newValue({ path: [...at.path, name], schema: reference.path }, first, book, depth + 1);
  }
  return value;
}

async function newPlain({ schema }: Place, way: Way, book: FieldBook): Promise<unknown> {
  const first = byPlace(FIRST, schema);
  const [reference] = (await book.ask(schema)).own;
  const preset = reference?.default;
  switch (way.kind) {
    case "word":
      return way.word;
    case "switch":
      return preset === undefined ? true : !preset;
    case "number": {
      const told = [first, preset].find((value) => typeof value === "number");
      return told ?? way.limits.least ?? way.limits.most ?? 1;
    }
    case "text":
      return first ?? (typeof preset === "string" ? preset : "");
    case "pair":
      return [0, 0];
    case "numbers":
      return way.whole ? [0] : [];
    default:
      return [];
  }
}
