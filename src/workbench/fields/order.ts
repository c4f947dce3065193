/**
 * In which order the fields of an object are shown, and which of them at once: those that must be there or are written, and
 * the commonest; the others are folded.
 */
import type { FieldLine } from "../../index.js";
import { byPlace } from "./by-place.js";
import { isUsed } from "./uses.js";

type Owner = Readonly<Record<string, unknown>>;

/** The commonest fields by the object's place in the schema, in the order in which they are shown. Chosen. */
const COMMON: Readonly<Record<string, readonly string[]>> = {
  size: ["system", "value", "diameter", "circumference"],
  profile: ["width", "thickness", "outside", "bore"],
  outside: ["rail", "depth", "rise", "dip", "bevel", "drop", "crown", "edge"],
  bore: ["rise", "edge"],
  pattern: ["fit", "symmetry", "regions"],
  fit: ["repeats", "aspect", "rows", "hold"],
  regions: ["name", "motif", "text", "mode", "height", "depth", "section", "round", "ribbon", "beads"],
  section: ["height", "slope", "dip", "wall", "round", "radius"],
  ribbon: ["width", "to", "join", "ends"],
  beads: ["along", "diameter", "pitch", "count", "embed"],
  "regions.beads": ["diameter", "pitch", "count", "on", "embed"],
  lettering: ["text", "at", "height", "mode", "depth", "relief", "angle"],
  hallmark: ["at", "angle", "width", "height", "depth"],
  medallion: ["tiles", "symmetry", "regions"],
  casting: ["shrinkage", "finishing"],
  costing: ["prices", "currency"],
  sprue: ["diameter", "length", "at"],
  rules: ["set"],
  lanes: ["name", "share", "fit", "symmetry", "regions"],
  taper: ["width", "thickness"],
  step: ["width", "depth"],
  print: ["stance"],
  stones: ["name", "cut", "size", "width", "gem", "place", "setting"],
  "place.tile": ["at"],
  "place.line": ["path", "shape", "gap", "count"],
  "place.row": ["along", "over", "gap", "count"],
  "place.single": ["angle", "v"],
  "setting.bead-set": ["grains", "shared", "border"],
  "setting.channel": ["cover", "rise", "wall"],
  "setting.bezel": ["wall", "height"],
  "setting.prongs": ["count", "height", "shared"],
  through: ["shape", "size"],
  gems: ["symbol", "name", "density"],
};

/** Fields that are no choice: the document's own marks. */
const HIDDEN: readonly string[] = ["$schema", "annulet"];

/** Fields of an object in two parts. */
export interface OrderedFields {
  readonly first: readonly FieldLine[];
  readonly more: readonly FieldLine[];
}

/**
 * @param lines the object's fields, as its reference tells them
 * @param constant the field that only names the form; it is no field to fill
 */
export function orderFields(
  schema: string,
  lines: readonly FieldLine[],
  owner: Owner,
  constant?: string,
): OrderedFields {
  const common = byPlace(COMMON, schema) ?? [];
  const shown = lines.filter(({ name }) => {
    const isHidden = name === "*" || name === constant || (schema === "" && HIDDEN.includes(name));
    return !isHidden && isUsed(schema, name, owner);
  });
  const isFirst = ({ name, required }: FieldLine): boolean =>
    required || owner[name] !== undefined || common.includes(name);
  const rank = ({ name }: FieldLine): number => {
    const at = common.indexOf(name);
    return at < 0 ? common.length : at;
  };
  const first = shown.filter(isFirst).toSorted((a, b) => rank(a) - rank(b));
  return { first, more: shown.filter((line) => !isFirst(line)) };
}
