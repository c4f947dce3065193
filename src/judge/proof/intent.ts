/**
 * What a column should hold, from the flat art alone: the bare band's section, each body of the pattern in the order of
 * work by its height over the place, beads as spheres, marks last. Nothing of it is bent, repeated, mirrored or united:
 * a body is looked up where the document's repeats bring the place, so this shares nothing with how the ring is made.
 *
 * Two sets are worked out, what a column holds surely and what it may hold: they differ where a height is not known to the
 * last, at slopes between contours, beads' meshes, broken edges of holes.
 */
import type { Band } from "../../band/band.js";
import { type Meetings, meetings, normalsMeet } from "../../band/surface/normals-meet.js";
import type { BandSurface } from "../../band/surface/surface.js";
import { smoothStep } from "../../base/math/smooth-step.js";
import { FORGET, type Remember } from "../../base/memory.js";
import type { Bead } from "../../beads/bead.js";
import { distanceToField, type Field } from "../../marks/hallmark-field.js";
import type { Mark } from "../../marks/mark.js";
import type { Marks } from "../../marks/marks.js";
import type { Pattern } from "../../pattern/laid-out.js";
import type { FlatBody } from "../../relief/flat-body.js";
import type { PlacedStone } from "../../stones/placed-stone.js";
import { BeadFinder } from "./bead-finder.js";
import type { Place, Section, Stand } from "./columns.js";
import { HeightIndex, type Heights } from "./height-index.js";
import { added, cutOut, type Held, heldFor, type Stretch } from "./held.js";
import { withLeaningHole } from "./leaning-hole.js";
import { ToldStones } from "./stones/told-stones.js";
import { TriangleIndex } from "./triangle-index.js";
import { withUpright } from "./upright.js";
import { footAt } from "./walk-column.js";

export interface IntentOptions {
  readonly band: Band;
  readonly wrap: BandSurface;
  readonly pattern: Pattern;
  readonly marks: Marks;
  /** All beads of the ring. */
  readonly beads: readonly Bead[];
  /** The stones in their places. Default none. */
  readonly stones?: readonly PlacedStone[];
  /** Largest chordal deviation of the mesh, mm, and that of a bead's mesh as a share of its radius at most. */
  readonly tolerance: number;
  readonly beadDeviation: number;
  /** Takes over what was looked up before of the same bodies on the same band. Default: looks all up. */
  readonly remember?: Remember;
}

/** What of a column is asked for. */
interface Which {
  /** With false as if nothing were pierced. */
  readonly holes?: boolean;
  /** From where to where along the column beads are seen, mm. */
  readonly beads?: Stretch;
  /** With false as if no stones were set. */
  readonly stones?: boolean;
}

const NO_MEETINGS = { at: () => Number.POSITIVE_INFINITY };

const EVERYWHERE: Stretch = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

/** What tells heights over places. */
export type Index = Pick<HeightIndex, "at" | "box">;

/** A body of the pattern, ready to be looked up. */
interface Known {
  readonly body: FlatBody;
  readonly index: Index;
  /** Of a hole what lies inside its broken edges. */
  readonly throat: HeightIndex;
  /** mm along the band after which it comes again. */
  readonly period: number;
  /** mm that a tool surely reaches above the seat; of what is raised, how deep it surely stands. */
  readonly reach: number;
}

/** How far bodies reach beyond a surface at most, mm, and in tolerances: what is there to meet is met within that. */
const CLEAR = 0.05;
const CLEAR_TOLERANCES = 4;

/** Share of a sunk foot's depth by which relief that fades dips at most, and how steeply seat and column may differ. */
const DIP = 0.05;

/** A column beside the seat's normal by less, as a sine, stands along it. */
const UPRIGHT = 1e-6;

/** What columns should hold. */
export class Intent {
  readonly #options: IntentOptions;
  readonly #known: readonly Known[];
  readonly #marks: readonly { readonly mark: Mark; readonly index: Index }[];
  readonly #beads: BeadFinder;
  readonly #field: Field | undefined;
  readonly #meetingsOf = new Map<Section, Pick<Meetings, "at">>();
  readonly #clear: number;
  /** Undefined where there are none. */
  readonly #stones: ToldStones | undefined;

  constructor(options: IntentOptions) {
    const { pattern, wrap, marks, beads, stones = [], band, tolerance, beadDeviation, remember = FORGET } = options;
    this.#options = options;
    this.#clear = Math.max(CLEAR, CLEAR_TOLERANCES * tolerance);
    let [raised, sunk] = [0, 0];
    this.#known = pattern.bodies.map((body): Known => {
      const reach = body.mode === "raised" ? sunk : raised;
      if (body.mode === "raised") raised = Math.max(raised, body.height);
      if (body.mode === "sunk") sunk = Math.max(sunk, body.height);
      const period = body.seam === undefined ? (body.period ?? wrap.round) : body.seam[1] - body.seam[0];
      const make = () => ({ index: heightIndexOf(body), throat: new HeightIndex(body.throat) });
      return { body, ...remember(["index"], [body], make), period, reach };
    });
    this.#marks = marks.marks.map((mark) => ({ mark, index: heightIndexOf(mark.body) }));
    const { field } = marks;
    this.#field = field;
    const cleared = field !== undefined && field.surface.name !== "bore";
    const outside = cleared ? beads.filter(({ centre, radius }) => distanceToField(field, centre) >= radius) : beads;
    const told = stones.length === 0 ? undefined : new ToldStones({ band, stones, tolerance });
    this.#stones = told;
    const kept = told === undefined ? outside : outside.filter((bead) => !told.clears(bead));
    this.#beads = new BeadFinder(kept, (radius) => Math.min(tolerance, radius * beadDeviation) + tolerance);
  }

  /** Highest point above the seat that relief and beads reach, mm. */
  get tallest(): number {
    const standing = Math.max(this.#options.pattern.height, 0) + this.#beads.largest;
    return Math.max(standing, this.#stones?.tallest ?? 0);
  }

  /**
   * Whether a place is known: not beside the seat's end, where relief leans out or runs beneath a rail,
   * nor over a valley where walls from both its sides meet, nor at a field's edge.
   */
  knows(place: Place, stand: Stand): boolean {
    const { pattern, band } = this.#options;
    if (this.#stones?.knows(place.angle, stand) === false) return false;
    if (pattern.bodies.length === 0) return true;
    if (place.on === "rest") {
      const { line } = place.section;
      const away = Math.min(...[-1, 1].map((side) => Math.abs(line.point(side * line.reach, 0)[0] - place.across)));
      return away > (band.rails === undefined ? pattern.height : 0) + BESIDE;
    }
    if (this.#meetings(place.section).at(place.across) < this.tallest) return false;
    if (this.#field?.free === undefined) return true;
    return Math.abs(this.#toField(place, stand)) > BESIDE + pattern.height * Math.abs(stand.way[0]);
  }

  get hasRails(): boolean {
    return this.#options.band.rails !== undefined;
  }

  /** The stones of the ring with their settings; undefined where there are none. */
  get stones(): ToldStones | undefined {
    return this.#stones;
  }

  /** Whether anything but holes and stones may reach deeper than the pattern: marks in the bore. */
  get reachesDeep(): boolean {
    return this.#marks.length > 0;
  }

  /** Whether a hole goes through the wall under a place on the seat. */
  pierced({ u, across }: Place): boolean {
    return this.#known.some(
      ({ body, throat, period }) => body.mode === "pierced" && heightsAt(throat, period, u, across) !== undefined,
    );
  }

  /** Whether a bead reaches beyond a stretch of a column. */
  hasBeadsBeyond({ angle }: Place, stand: Stand, [low, high]: Stretch): boolean {
    let found = false;
    this.#beads.along(angle, stand, (from, to) => {
      found ||= from < low || to > high;
    });
    return found;
  }

  /** What a column holds, or some of it. */
  at(place: Place, stand: Stand, { holes = true, ...which }: Which = {}): Held {
    return this.beyond(this.bodies(place, stand, holes), place, stand, which);
  }

  /** What a column holds of the band and the pattern's bodies: neither beads nor marks are asked. */
  bodies(place: Place, stand: Stand, holes = true): Held {
    let held = heldFor(stand.band);
    const bare = this.#field?.free !== undefined && place.on === "seat" && this.#toField(place, stand) < 0;
    if (place.on === "seat" && !bare) {
      for (const known of this.#known) {
        if (holes || known.body.mode !== "pierced") held = this.#body(held, known, place, stand);
      }
    }
    if (place.on === "rest") for (const known of this.#known) held = this.#besideSeat(held, known, place, stand);
    return held;
  }

  /** The same with beads, or some of them, and marks. */
  beyond(
    bodies: Held,
    place: Place,
    stand: Stand,
    { beads = EVERYWHERE, stones = true }: Omit<Which, "holes"> = {},
  ): Held {
    let held = bodies;
    this.#beads.along(place.angle, stand, (from, to, open) => {
      const [low, high] = [Math.max(from, beads[0]), Math.min(to, beads[1])];
      if (high > low) held = added(held, [Math.min(low + open, high), Math.max(high - open, low)], [low, high]);
    });
    if (stones && this.#stones !== undefined) held = this.#stones.on(held, place.angle, stand);
    for (const op of ["sunk", "raised"] as const) {
      for (const { mark, index } of this.#marks)
        if (mark.body.mode === op) held = markOn(held, mark, index, place, stand);
    }
    return held;
  }

  /** Where normals of a section meet; nowhere below the relief's top on nearly all bands. */
  #meetings(section: Section): Pick<Meetings, "at"> {
    const known = this.#meetingsOf.get(section);
    if (known !== undefined) return known;
    const { line } = section;
    const found = normalsMeet(line, this.tallest) ? meetings(line, [-line.reach, line.reach], 1) : NO_MEETINGS;
    this.#meetingsOf.set(section, found);
    return found;
  }

  #toField({ angle }: Place, { point: [w, r] }: Stand): number {
    return this.#field === undefined
      ? Infinity
      : distanceToField(this.#field, [r * Math.cos(angle), r * Math.sin(angle), w]);
  }

  #body(held: Held, known: Known, place: Place, stand: Stand): Held {
    const { body, reach } = known;
    if (body.mode === "pierced") return this.#hole(held, known, place, stand);
    if (body.upright && Math.abs(stand.way[0]) > UPRIGHT) return this.#upright(held, known, place, stand);
    const heights = heightsAt(known.index, known.period, place.u, place.across, body);
    if (heights === undefined) return held;
    const { low, high } = heights;
    if (body.mode === "raised") return added(held, [-reach, low], [-reach - this.#clear, high]);
    return cutOut(held, [-low, reach], [-high, reach + 2 * this.#clear]);
  }

  #upright(held: Held, { body, index, period, reach }: Known, { u, section }: Place, stand: Stand): Held {
    const { line } = section;
    const heights = (v: number) => heightsAt(index, period, u, v, body);
    const raised = body.mode === "raised";
    const [inward, outward] = raised
      ? [reach, LEANING * body.height]
      : [LEANING * body.height, reach + 2 * this.#clear];
    const stretch: Stretch = [-inward, outward];
    return withUpright(held, { mode: raised ? "raised" : "sunk", line, stand, stretch, heightsAt: heights });
  }

  /** What fills the plain zone goes on over the rails' rounded edges. */
  #besideSeat(held: Held, { body, index, period }: Known, { u, across, section }: Place, stand: Stand): Held {
    if (body.filling !== true) return held;
    const { line } = section;
    const v = footAt(line, across);
    const heights = heightsAt(index, period, u, v);
    // In the rail's wall itself a column stands on neither side of it.
    if (heights === undefined || Math.abs(v) < line.reach + ON_EDGE) return held;
    const foot = line.point(v, 0)[1] - stand.point[1];
    const [low, high] = [heights.low, heights.high].map((h) => foot + h / line.normal(v)[1]);
    return added(held, [foot, low], [foot - this.#clear, high]);
  }

  /** Holes go along the radius. */
  #hole(held: Held, { index, throat, period, reach }: Known, { u, across, section }: Place, stand: Stand): Held {
    const { way, band } = stand;
    if (band.length === 0) return held;
    const isIn = (which: Index, v: number) => heightsAt(which, period, u, v) !== undefined;
    const piercedAt = (v: number) => (!isIn(index, v) ? "no" : isIn(throat, v) ? "through" : "edge");
    const [bottom] = band;
    if (Math.abs(way[0]) > UPRIGHT) {
      const top = held.maybe[held.maybe.length - 1] ?? bottom;
      return withLeaningHole(held, { line: section.line, stand, stretch: [bottom, top], piercedAt });
    }
    const kind = piercedAt(across);
    const all: Stretch = [bottom - 1, reach + 2 * this.#clear];
    if (kind === "no") return held;
    return kind === "through" ? cutOut(held, [bottom - 1, reach], all) : cutOut(held, NOWHERE, all);
  }
}

/** A column along the normal holds at most so many heights of an upright body (chosen: where it leans by 60° on a tight dome). */
const LEANING = 1.5;

/** Nearer to the seat's edge than this is on it, mm: rounding. */
const ON_EDGE = 1e-6;

/** Within so many mm of the seat's end or of a field's edge nothing is compared. */
const BESIDE = 0.35;

/** Tells a body's heights over places of its own period. */
export function heightIndexOf({ surface, top, outline, mode }: FlatBody): Index {
  if (mode === "pierced") return new HeightIndex(outline);
  return surface === undefined ? new HeightIndex(top) : new TriangleIndex(surface.top.points, surface.top.triangles);
}

/** The heights of a body that comes again, wherever it does. */
export function heightsAt(index: Index, period: number, u: number, v: number, body?: FlatBody): Heights | undefined {
  const { left, right, low, high } = index.box;
  if (v < low || v > high) return undefined;
  let found: Heights | undefined;
  for (let at = u - period * Math.floor((u - left) / period); at <= right; at += period) {
    const flat = index.at(at, v);
    if (flat === undefined) continue;
    const here = body === undefined ? flat : shaped(body, flat, at, v);
    found = found === undefined ? here : { low: Math.max(found.low, here.low), high: Math.max(found.high, here.high) };
  }
  return found;
}

/** Heights as they rise and fade at a place. */
function shaped({ rise, fade }: FlatBody, heights: Heights, u: number, v: number): Heights {
  if (rise === undefined && fade === undefined) return heights;
  const share = fade === undefined ? 1 : smoothStep(Math.min(u - fade.ends[0], fade.ends[1] - u) / fade.length);
  const lift = rise === undefined ? 0 : rise.at(u, v);
  const lifted = (h: number) => (h + (rise === undefined ? 0 : lift * Math.min(1, Math.max(0, h) / rise.from))) * share;
  const { low, high } = heights;
  return { low: lifted(low) - (share < 1 ? DIP : 0), high: lifted(high) };
}

/** A mark's normal may lean by so much against the column, as a cosine, that it is compared at all. */
const FACING = 0.8;

/** What a mark makes of a column: over the surface's place where the column comes out of the band, and one so deep. */
function markOn(held: Held, { surface, body, box }: Mark, index: Index, place: Place, stand: Stand): Held {
  const { wrap, name } = surface;
  const { band, point, way } = stand;
  if (band.length === 0 || (name === "seat") !== (place.on === "seat" && name !== "bore")) {
    if (name !== "bore") return held;
  }
  const middle = (box.u[0] + box.u[1]) / 2;
  const u = wrap.uAt(place.angle);
  const home = u - wrap.round * Math.round((u - middle) / wrap.round);
  if (home < box.u[0] || home > box.u[1]) return held;
  const line = wrap.lineAt(place.angle);
  const inBore = name === "bore";
  const end = inBore ? band[0] : band[band.length - 1];
  const vAt = (t: number) => line.inverse(point[0] + t * way[0], point[1] + t * way[1])[0];
  const v = vAt(end);
  if (Math.abs(v) > line.reach) return held;
  const [nw, nr] = line.normal(v);
  const facing = (nw * way[0] + nr * way[1]) * (inBore ? -1 : 1);
  const out = inBore ? -1 : 1;
  const sunk = body.mode === "sunk";
  const others = [end, end + out * (sunk ? -1 : 1) * body.height].map((t) =>
    heightsAt(index, wrap.round, home, vAt(t)),
  );
  if (others.every((heights) => heights === undefined)) return held;
  const low = facing < FACING ? 0 : Math.min(...others.map((heights) => heights?.low ?? 0)) / facing;
  const high = Math.max(...others.map((heights) => heights?.high ?? 0)) / Math.max(facing, FACING);
  const stretch = (inside: number, outside: number): Stretch =>
    inBore ? [end - outside, end + inside] : [end - inside, end + outside];
  if (sunk) return cutOut(held, low > 0 ? stretch(low, FAR) : NOWHERE, stretch(high, FAR));
  return added(held, low > 0 ? stretch(0, low) : NOWHERE, stretch(0, high));
}

const NOWHERE: Stretch = [0, 0];

/** Beyond everything that stands on a surface, mm. */
const FAR = 1;
