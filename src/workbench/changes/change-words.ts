/**
 * A line of the list of changes in words.
 */

import { writeNumber } from "../fields/read-number.js";
import { isObject } from "../fields/ways.js";
import type { Change } from "../state/document.js";
import { type Path, readText, valueAt } from "../state/json-text.js";
import { sayField } from "../words/fields/say-field.js";
import { language, say } from "../words/language.js";

/** Longest value that is told whole, in characters; chosen. */
const LONGEST = 24;

/**
 * What a change did: "band width 6 → 6.5 mm", "rail width added".
 *
 * @param before the line before it; undefined for the first
 * @param unitOf what a field is measured in, by its place
 */
export function sayChange(
  change: Change,
  before: Change | undefined,
  unitOf: (path: Path) => string | undefined = () => undefined,
): string {
  const { what } = change;
  if (typeof what === "string") return say(`change.${what}`);
  const name = nameOfPart(what);
  const [from, to] = [before, change].map((one) => (one === undefined ? undefined : valueIn(one, what)));
  if (from === undefined && to === undefined) return name;
  if (to === undefined) return say("change.removed", { name });
  const [old, now] = [told(from), told(to)];
  if (now === undefined || (from !== undefined && old === undefined)) {
    return from === undefined ? say("change.added", { name }) : say("change.changed", { name });
  }
  const unit = typeof to === "number" ? unitOf(what) : undefined;
  return `${name} ${old ?? "–"} → ${now}${unit === undefined ? "" : ` ${unit}`}`;
}

/** The field's name, with what it is in: "region 2: height". */
export function nameOfPart(path: Path): string {
  const schema = path.filter((key) => typeof key === "string").join(".");
  const at = path.findLast((key) => typeof key === "number");
  const isEntry = typeof path[path.length - 1] === "number";
  const name = schema === "" ? say("change.all") : sayField(schema);
  return at === undefined ? name : isEntry ? `${name} ${Number(at) + 1}` : `${name} (${Number(at) + 1})`;
}

function valueIn({ sound }: Change, path: Path): unknown {
  const read = readText(sound);
  return "value" in read ? valueAt(read.value, path) : undefined;
}

/** A plain value, a form or a name of an object; undefined for what is too long to tell. */
function told(value: unknown): string | undefined {
  if (typeof value === "number") return writeNumber(value, language.value);
  if (typeof value === "boolean") return say(value ? "change.on" : "change.off");
  if (typeof value === "string") return value.length <= LONGEST ? value : undefined;
  if (!isObject(value)) return undefined;
  const { form, name, value: label, system } = value;
  if (typeof system === "string") return `${system} ${String(label)}`;
  const word = [form, name].find((one) => typeof one === "string");
  return word as string | undefined;
}
