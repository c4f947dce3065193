/**
 * Holds what is to be drawn as a tile to all that the drawing reads of it: a caller in JavaScript may pass anything.
 */
import { friezeGroups, type TileOperation } from "../../base/frieze/symmetry.js";
import {
  A_FUNCTION,
  listOf,
  needed,
  numberAbove0,
  numberFrom,
  type OptionRule,
  type OptionRules,
  requireFields,
  TEXT,
  wholeFrom,
} from "../../base/options.js";
import type { DrawnTile, FlatBead, FlatRegion } from "./drawn-tile.js";

/** As documents have them, so that nothing is drawn without end. */
const MOST_TILES = 1000;
const MOST_ROWS = 50;

const LENGTH = needed(numberAbove0("mm"));
const FROM_0 = needed(numberFrom(0, Number.POSITIVE_INFINITY));
const OBJECT: OptionRule = {
  holds: (value) => typeof value === "object" && value !== null,
  allowed: "as flatTile gives it",
  needed: true,
};

const TILE: OptionRules<DrawnTile> = {
  name: needed(TEXT),
  part: needed(TEXT),
  group: {
    holds: isGroup,
    allowed: `a frieze group: ${friezeGroups.map(({ name }) => name).join(", ")}`,
    needed: true,
  },
  size: OBJECT,
  fit: OBJECT,
  lane: needed(TEXT),
  round: OBJECT,
  seatLength: LENGTH,
  tiles: needed(wholeFrom(1, MOST_TILES)),
  regions: needed(listOf(isRegion, "regions, {names, mode, height, rings}")),
  beads: needed(listOf(isBead, "beads, {centre, diameter, next}")),
  runs: needed(listOf(isRun, "bead runs, {run, count, diameter, ratio, …}")),
  lambda: OBJECT,
  top: OBJECT,
};

/** What is read of a fit. */
type FitField = "rows" | "cycle" | "cover" | "tileWidth" | "tileHeight" | "bandWidth" | "referenceRadius";

const FIT: OptionRules<Pick<DrawnTile["fit"], FitField>> = {
  rows: needed(wholeFrom(1, MOST_ROWS)),
  cycle: needed(wholeFrom(1, MOST_TILES)),
  cover: FROM_0,
  tileWidth: LENGTH,
  tileHeight: LENGTH,
  bandWidth: LENGTH,
  referenceRadius: LENGTH,
};

const RANGE: OptionRule = {
  holds: (value) => {
    const { min, max } = Object(value) as { min: unknown; max: unknown };
    return Number.isFinite(min) && Number.isFinite(max);
  },
  allowed: "{min, max}",
  needed: true,
};

/**
 * @param asWorn whether it is laid flat as it measures, which asks for `top.develop`: tiles from a worker have none
 * @throws AnnuletError `option-invalid`, `option-missing`, with every field that is wrong
 */
export function requireTile(tile: DrawnTile, asWorn: boolean): void {
  requireFields("tile", tile, TILE);
  requireFields("tile.fit", tile.fit, FIT);
  requireFields("tile.size", tile.size, { circumference: LENGTH, diameter: LENGTH, system: TEXT, label: TEXT });
  requireFields("tile.round", tile.round, { repeats: FROM_0, medallion: FROM_0 });
  requireFields("tile.lambda", tile.lambda, { top: RANGE, edge: RANGE, crown: FROM_0, topCrown: FROM_0 });
  requireFields("tile.top", tile.top, { height: FROM_0, develop: { ...A_FUNCTION, needed: asWorn } });
}

function isGroup(value: unknown): boolean {
  const { name, summary, operations } = Object(value) as Partial<DrawnTile["group"]>;
  if (!friezeGroups.some((group) => group.name === name) || typeof summary !== "string") return false;
  return Array.isArray(operations) && operations.every(isOperation);
}

function isOperation(value: unknown): boolean {
  const { flipX, flipY, shift } = Object(value) as Partial<TileOperation>;
  return typeof flipX === "boolean" && typeof flipY === "boolean" && (shift === 0 || shift === 0.5);
}

function isRegion(value: unknown): boolean {
  const { names, mode, height, rings } = Object(value) as Partial<FlatRegion>;
  const named = Array.isArray(names) && names.every((name) => typeof name === "string");
  const known = mode === "pierced" ? height === undefined : Number.isFinite(height);
  return named && known && ["raised", "sunk", "pierced"].includes(mode as string) && isRings(rings);
}

function isRings(value: unknown): boolean {
  return Array.isArray(value) && value.every((ring) => Array.isArray(ring) && ring.length > 0 && ring.every(isPoint));
}

function isPoint(value: unknown): boolean {
  return Array.isArray(value) && value.length === 2 && value.every(Number.isFinite);
}

function isBead(value: unknown): boolean {
  const { centre, diameter, next } = Object(value) as Partial<FlatBead>;
  return isPoint(centre) && Number.isFinite(diameter) && typeof next === "boolean";
}

function isRun(value: unknown): boolean {
  const { run, count, diameter, ratio, onRail } = Object(value) as Partial<DrawnTile["runs"][number]>;
  const numbers = [count, diameter, ratio].every(Number.isFinite);
  return typeof run === "string" && numbers && typeof onRail === "boolean";
}
