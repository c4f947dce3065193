/**
 * Which fields of an object count at all, by what else is chosen in it: a hole has no height, a round bore no rise. The schema
 * says so in words alone.
 */
import { byPlace } from "./by-place.js";

type Owner = Readonly<Record<string, unknown>>;
type Uses = Readonly<Record<string, (owner: Owner) => boolean>>;

const has =
  (...keys: readonly string[]) =>
  (owner: Owner): boolean =>
    keys.some((key) => owner[key] !== undefined);

const not =
  (condition: (owner: Owner) => boolean) =>
  (owner: Owner): boolean =>
    !condition(owner);

const is =
  (key: string, words: readonly unknown[], preset?: unknown) =>
  (owner: Owner): boolean =>
    words.includes(owner[key] ?? preset);

const raised = is("mode", ["raised"], "raised");
const sunk = is("mode", ["sunk"]);
const pierced = is("mode", ["pierced"]);
const drawn = has("path", "svg", "shape", "motif", "text");

const REGION: Uses = {
  take: has("svg"),
  map: has("image", "texture"),
  unit: has("path", "shape", "place"),
  fill: has("path", "svg", "shape"),
  ribbon: has("path", "svg", "shape", "motif"),
  edge: drawn,
  height: (owner) => raised(owner) && owner.section === undefined,
  depth: (owner) => sunk(owner) && owner.section === undefined,
  round: (owner) => !pierced(owner) && owner.section === undefined && owner.map === undefined,
  section: not(pierced),
  beneath: raised,
  upright: not(pierced),
  broken: pierced,
  offset: drawn,
  beads: drawn,
};

const RUN: Uses = {
  cornerAngle: is("corners", ["on", "split"]),
  inset: is("along", ["seat-edge"]),
  alternate: not(has("to")),
  to: not(has("alternate")),
  pitch: not(has("count")),
  over: (owner) => typeof owner.along === "string" || has("v")((owner.along ?? {}) as Owner),
  height: (owner) => typeof owner.along === "object" || owner.along === "seat-edge",
};

/** By the place of the object in the schema. */
const TABLES: Readonly<Record<string, Uses>> = {
  regions: REGION,
  beads: RUN,
  "regions.beads": { cornerAngle: RUN.cornerAngle, alternate: RUN.alternate, to: RUN.to, pitch: RUN.pitch },
  lettering: {
    side: is("at", ["rail"]),
    depth: is("mode", ["sunk"], "sunk"),
    relief: is("mode", ["raised"]),
  },
  hallmark: { side: is("at", ["rail"]) },
  "outside.free": { points: not(has("path")), path: not(has("points")) },
  "section.ridge": { slope: not(has("height")), height: not(has("slope")) },
  "section.flat": { round: not(has("bevel")), bevel: not(has("round")) },
  pattern: { plain: (owner) => owner.cover !== undefined, regions: not(has("lanes")), symmetry: not(has("lanes")) },
  stones: {
    width: not(is("cut", ["round", "princess", "square-step"], "round")),
    narrow: is("cut", ["tapered-baguette"]),
  },
  "place.line": { path: not(has("shape")), shape: not(has("path")), gap: not(has("count")) },
  "place.row": { gap: not(has("count")) },
  "setting.channel": { wall: (owner) => typeof owner.rise === "number" && owner.rise > 0 },
  proportions: {
    crownAngle: not(has("crownHeight")),
    crownHeight: not(has("crownAngle")),
    pavilionAngle: not(has("pavilionDepth")),
    pavilionDepth: not(has("pavilionAngle")),
  },
  print: { tilt: is("stance", ["tilted"]) },
};

/** Whether a field counts in an object. One that is written is shown in any case, so that it can be taken away. */
export function isUsed(schema: string, key: string, owner: Owner): boolean {
  const uses = byPlace(TABLES, schema);
  if (uses === undefined || !Object.hasOwn(uses, key) || owner[key] !== undefined) return true;
  return uses[key](owner);
}
