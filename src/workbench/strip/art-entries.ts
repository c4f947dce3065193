/**
 * What of the document is drawn on the tiles that are shown: its regions and bead runs, with the names that answers call them by.
 */
import type { TilePart } from "../../index.js";
import { type Path, valueAt } from "../state/json-text.js";

export interface ArtEntry {
  /** Its place in the document. */
  readonly path: Path;
  readonly name: string;
  readonly kind: "region" | "run" | "stones";
  readonly value: Readonly<Record<string, unknown>>;
}

/** Which tiles are shown. */
export interface ShownArt {
  readonly part: TilePart;
  /** Name of the lane; undefined or empty for the lowest. */
  readonly lane: string | undefined;
}

type Part = Readonly<Record<string, unknown>>;

export function isPart(value: unknown): value is Part {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The names of the document's lanes, the lowest first; none where the pattern is one. */
export function laneNames(document: unknown): string[] {
  const lanes = valueAt(document, ["pattern", "lanes"]);
  return Array.isArray(lanes) ? lanes.map((lane, i) => nameOf(lane) ?? `lane ${i + 1}`) : [];
}

/** The parts that the lane that is shown has. */
export function partsOf(document: unknown, lane: string | undefined): TilePart[] {
  const owner = ownerOf(document, lane).path;
  const has = (...keys: string[]): unknown => valueAt(document, [...owner, ...keys]);
  return [
    "tile",
    ...(has("medallion") === undefined ? [] : (["medallion"] as const)),
    ...(has("ends", "form") === "ornament" ? (["ornament"] as const) : []),
  ];
}

/** Where the lane stands in the document, and what its regions without a name are called after. */
function ownerOf(document: unknown, lane: string | undefined): { readonly path: Path; readonly label: string } {
  const names = laneNames(document);
  if (names.length === 0) return { path: ["pattern"], label: "" };
  const at = Math.max(0, names.indexOf(lane ?? ""));
  return { path: ["pattern", "lanes", at], label: `${names[at]} ` };
}

/** Keys of what holds a part's regions. */
const HOLDERS: Readonly<Record<TilePart, readonly string[]>> = {
  tile: [],
  medallion: ["medallion"],
  ornament: ["ends"],
};

/** The list of regions that are drawn on the tiles that are shown. */
export function regionsPath(document: unknown, { part, lane }: ShownArt): Path {
  return [...ownerOf(document, lane).path, ...HOLDERS[part], "regions"];
}

/** Everything drawn on the tiles that are shown, in the document's order. */
export function artEntries(document: unknown, { part, lane }: ShownArt): ArtEntry[] {
  const owner = ownerOf(document, lane);
  const holder = HOLDERS[part];
  const path = regionsPath(document, { part, lane });
  const label = `${owner.label}${holder.map((key) => `${key} `).join("")}region`;
  const regions = listAt(document, path).map((value, i): ArtEntry => {
    return { path: [...path, i], name: nameOf(value) ?? `${label} ${i + 1}`, kind: "region", value };
  });
  return part === "tile" ? [...regions, ...runsOf(document, lane), ...stonesOf(document, lane)] : regions;
}

function listAt(document: unknown, path: Path): Part[] {
  const list = valueAt(document, path);
  return Array.isArray(list) ? list.map((value) => (isPart(value) ? value : {})) : [];
}

/** Bead runs that are drawn in this lane's tiles, or stand at a place across the band. */
function runsOf(document: unknown, lane: string | undefined): ArtEntry[] {
  const [lowest] = laneNames(document);
  return listAt(document, ["beads"]).flatMap((value, i): ArtEntry[] => {
    const { along } = value;
    if (!isPart(along)) return [];
    const own = typeof along.lane === "string" ? along.lane : lowest;
    if (along.v === undefined && own !== (lane ?? lowest)) return [];
    return [{ path: ["beads", i], name: nameOf(value) ?? `beads ${i + 1}`, kind: "run", value }];
  });
}

/** Groups of stones that stand in this lane's tiles, or round the band. */
function stonesOf(document: unknown, lane: string | undefined): ArtEntry[] {
  const [lowest] = laneNames(document);
  return listAt(document, ["stones"]).flatMap((value, i): ArtEntry[] => {
    const { place } = value;
    const inTiles = isPart(place) && (place.form === "tile" || place.form === "line");
    if (inTiles && (typeof place.lane === "string" ? place.lane : lowest) !== (lane ?? lowest)) return [];
    return [{ path: ["stones", i], name: nameOf(value) ?? `stones ${i + 1}`, kind: "stones", value }];
  });
}

function nameOf(value: unknown): string | undefined {
  return isPart(value) && typeof value.name === "string" ? value.name : undefined;
}

/** The tiles that show what is chosen; undefined where any do, or none. */
export function tilesOf(document: unknown, selected: Path): ShownArt | undefined {
  const names = laneNames(document);
  const holdsLane = selected[0] === "beads" ? "along" : selected[0] === "stones" ? "place" : undefined;
  const along = holdsLane === undefined ? undefined : valueAt(document, [...selected.slice(0, 2), holdsLane]);
  if (holdsLane === "place" && !(isPart(along) && /^(?:tile|line)$/.test(String(along.form)))) return undefined;
  if (isPart(along) && along.v === undefined && names.length > 0) {
    return { part: "tile", lane: typeof along.lane === "string" ? along.lane : names[0] };
  }
  const inLane = selected[1] === "lanes" && typeof selected[2] === "number";
  const [holder, next] = inLane ? selected.slice(3) : selected.slice(1);
  const part = holder === "medallion" ? holder : holder === "ends" && next === "regions" ? "ornament" : "tile";
  if (selected[0] !== "pattern" || (!inLane && part === "tile" && holder !== "regions")) return undefined;
  return { part, lane: inLane ? names[Number(selected[2])] : undefined };
}

/** The entry that is chosen, or in which the chosen field lies. */
export function chosenEntry(entries: readonly ArtEntry[], selected: Path | undefined): ArtEntry | undefined {
  if (selected === undefined) return undefined;
  return entries.find(({ path }) => path.every((key, i) => selected[i] === key));
}

/** Which entry a press on what is called so chooses: the next of them where one is chosen already. */
export function nextEntry(
  entries: readonly ArtEntry[],
  names: readonly string[],
  chosen: ArtEntry | undefined,
): ArtEntry | undefined {
  const named = names.flatMap((name) => entries.find((entry) => entry.name === name) ?? []);
  const at =
    chosen === undefined
      ? -1
      : named.findIndex(({ path }) => path === chosen.path || String(path) === String(chosen.path));
  return named[(at + 1) % Math.max(1, named.length)];
}
