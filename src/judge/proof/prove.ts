/**
 * The proof: whether a built ring is the drawn one. What the flat art says is compared with the mesh on columns all over the
 * outside, place by place, so that what stands elsewhere, is missing, or comes too often is found where totals would agree:
 * a wrong mirror, a body that one tile of thirty has not. Beside that the volume, by the band's exact section and what the
 * columns add to it, and the area that stands higher than half of the relief.
 *
 * It shares nothing with the roads by which a ring is made: flat polygons, distances and spheres on one side, straight lines
 * through triangles on the other. The bounds follow from the tolerance. Heights, and the places of edges, may differ by two
 * tolerances, one of the facets and one of the art; a column that differs counts only where most of those close round it do
 * too, since along an edge or in a corner between contours a few always lie on the wrong side.
 *
 * Not seen: what is smaller than four of these bounds, what lies between columns (of a body that one tile lacks, about a
 * square millimetre is found nearly always), walls and undersides but by the columns that they move, and the inside.
 */
import type { Band } from "../../band/band.js";
import { bandSurface, bandVolume } from "../../band/profile/moments.js";
import type { BandSurface } from "../../band/surface/surface.js";
import { AnnuletError } from "../../base/errors.js";
import type { Point3 } from "../../base/math/point.js";
import { FORGET } from "../../base/memory.js";
import { showLength } from "../../base/units.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Turned } from "../../mesh/turned.js";
import type { Pattern } from "../../pattern/laid-out.js";
import type { FlatBody } from "../../relief/flat-body.js";
import { type Column, columnAt, columnsOf, type Density, placeBeside } from "./columns.js";
import { type AddedVolume, addedVolume } from "./expected-volume.js";
import { either, type Held } from "./held.js";
import { insideAlong } from "./hits.js";
import { insideUnits } from "./hits-in-unit.js";
import { Intent, type IntentOptions } from "./intent.js";
import { holds, type Intervals, intersect, interval, longest, without } from "./intervals.js";
import { stoneColumns } from "./stones/stone-columns.js";
import { stoneVolume } from "./stones/stone-volume.js";

/** What was found. */
export interface Proof {
  /** Whether the mesh is the ring that was drawn. */
  readonly agrees: boolean;
  /** Columns that were compared. */
  readonly columns: number;
  /** Places at which the ring is not what was drawn: by how much, mm, and where, mm. The worst first. */
  readonly astray: readonly { readonly by: number; readonly place: Point3 }[];
  /** mm³; the bound is tolerance times surface, what heights leave open, and three standard errors of the columns. */
  readonly volume: ProofFigure;
  /** Area of the seat on which the ring stands higher than half of the relief, flat, mm². */
  readonly relief: ProofFigure;
}

/** A figure from the flat art, the same of the mesh, and by how much they may differ. */
export interface ProofFigure {
  readonly expected: number;
  readonly built: number;
  readonly bound: number;
}

/**
 * How many columns: chosen so that a proof costs about a thirtieth of a build. Of turned images of one unit what is wrong in
 * one is wrong in all; a ring that is one union of everything takes several times as long, and may lack something in one
 * place. On a bare band nothing can.
 */
const DENSITIES = {
  units: { lines: 24, along: 16 },
  whole: { lines: 32, along: 32 },
  bare: { lines: 8, along: 8 },
} as const satisfies Record<string, Density>;

/** Heights may differ by so many tolerances, and outlines lie beside themselves by as much; with a little more, mm. */
const TOLERANCES = 2;
const SLACK = 0.005;

/** Directions in which a column that does not agree is looked for beside itself. */
const DIRECTIONS = 8;

/** Columns begin and end this far beyond what they go through, mm. */
const BEYOND = 0.6;

/** The most columns that are looked at more closely, by so many either way, within so many slacks. */
const CLOSER = 12;
const PATCH = 2;
const PATCH_SLACKS = 2;

/** Share of a patch that must differ. */
const PATCH_SHARE = 0.5;

interface Ready extends Column {
  readonly held: Held;
  readonly known: boolean;
  readonly span: readonly [number, number];
}

/**
 * Compares a mesh whose volume is known; `units`: of how many turned images of one unit it is made, 1 where of none; `turned`:
 * these, where they were seen.
 */
export type Compare = (
  mesh: Mesh,
  found: { readonly volume: number },
  made: { readonly units: number },
  turned?: Turned,
) => Proof;

/** Makes ready what a design's meshes are compared with: columns are laid out when they are first asked for. */
export function proofOf(options: IntentOptions): Compare {
  const { pattern, beads, stones = [], marks, tolerance } = options;
  const intent = new Intent(options);
  const slack = TOLERANCES * tolerance + SLACK;
  const isBare = pattern.bodies.length + beads.length + stones.length + marks.marks.length === 0;
  const layouts = new Map<string, Layout>();
  const layoutFor = (name: keyof typeof DENSITIES, units: number): Layout => {
    // Columns through stones follow the units, others only whether there are any.
    const key = `${name} ${stones.length === 0 ? 0 : units}`;
    const layout = layouts.get(key) ?? layOut(options, intent, DENSITIES[name], units);
    layouts.set(key, layout);
    return layout;
  };
  return (mesh, { volume: built }, { units }, turned) => {
    const look: Look = { mesh, turned: turned?.mesh === mesh ? turned : undefined };
    const { columns, expected, bound } = layoutFor(isBare ? "bare" : units > 1 ? "units" : "whole", units);
    const solids = solidsOf(look, columns);
    const compared = columns.flatMap((column, i) => {
      const solid = solids[i];
      return column.known && solid !== undefined ? [{ column, solid }] : [];
    });
    const off = compared.flatMap(({ column, solid }) => (apart(column, solid, intent, slack) > slack ? [column] : []));
    const astray = closer(look, off, intent, slack);
    const volume = { expected, built, bound };
    const relief = reliefArea(compared, options);
    const agrees = astray.length === 0 && [volume, relief].every(isWithin);
    return { agrees, columns: compared.length, astray, volume, relief };
  };
}

/** The columns with what they should hold, the volume that the ring should have, mm³, and by how much it may differ. */
interface Layout {
  readonly columns: readonly Ready[];
  readonly expected: number;
  readonly bound: number;
}

function layOut(options: IntentOptions, intent: Intent, density: Density, units: number): Layout {
  const { band, wrap, pattern, tolerance } = options;
  const even = standing(options, intent, density).map(({ column, bodies }) => ready(column, intent, bodies));
  const told = intent.stones;
  const through = stoneColumns({ band, wrap, stones: told?.views ?? [], posts: told?.posts ?? [], units });
  const columns = [...even, ...through.map((column) => ready(column, intent))];
  const bare = bareBand(band);
  const { sum, open, error } = addedTogether(options, intent, even, units);
  const wall = pattern.bodies.some(({ mode }) => mode === "pierced") ? thickest(columns) : 0;
  const surface = bare.surface + edgeLength(pattern, wrap, ({ mode, height }) => (mode === "pierced" ? wall : height));
  return { columns, expected: bare.volume + sum, bound: tolerance * MEAN_GAP * surface + open + ERRORS * error };
}

/** What is drawn adds to the bare band's volume, and what stones take from it. */
function addedTogether(
  { band, wrap, pattern, tolerance }: IntentOptions,
  intent: Intent,
  even: readonly Ready[],
  units: number,
): AddedVolume {
  const told = intent.stones;
  if (told === undefined) return addedVolume(even, pattern, intent);
  const unset = even.map((column) => ({
    ...column,
    held: intent.at(column.place, column.stand, { stones: false }),
  }));
  const drawn = addedVolume(unset, pattern, intent);
  const sunk = pattern.bodies.filter(({ mode }) => mode === "sunk").map(({ height }) => height);
  const floor = -Math.max(0, ...sunk);
  const set = stoneVolume({ band, wrap, intent, told, units, floor, by: tolerance * MEAN_GAP });
  return { sum: drawn.sum + set.sum, open: drawn.open + set.open, error: Math.hypot(drawn.error, set.error) };
}

/** The columns with what each holds of the band and the bodies, which is the same as long as these, the marks and the tolerance are. */
function standing(
  { band, wrap, pattern, marks, tolerance, remember = FORGET }: IntentOptions,
  intent: Intent,
  density: Density,
): readonly { readonly column: Column; readonly bodies: Held }[] {
  const units = band.revolved ? pattern.repeats : 1;
  return remember(["columns", units, density, tolerance], [band, wrap, marks, ...pattern.bodies], () =>
    columnsOf({ band, wrap, units, density }).map((column) => ({
      column,
      bodies: intent.bodies(column.place, column.stand),
    })),
  );
}

/** The volume that a ring should have, by the drawing alone, mm³: of the bare band, and what is drawn on it adds to that. */
export interface DrawnVolume {
  readonly bare: number;
  readonly added: number;
}

/** What a ring should measure before it is made: of the columns of a ring of alike units, however this one is made. */
export function drawnVolume(options: IntentOptions): DrawnVolume {
  const bare = bareBand(options.band).volume;
  return {
    bare,
    added: layOut(options, new Intent(options), DENSITIES.units, options.pattern.repeats).expected - bare,
  };
}

function isWithin({ expected, built, bound }: ProofFigure): boolean {
  return Math.abs(expected - built) <= bound;
}

/** @throws AnnuletError `not-as-drawn` where the ring is not what was drawn, with where and by how much */
export function requireDrawn(proof: Proof): void {
  if (proof.agrees) return;
  const { astray, volume, relief } = proof;
  throw new AnnuletError({
    code: "not-as-drawn",
    message: `the ring is closed, but it is not the one that was drawn: ${describe(proof)}`,
    value: { places: astray.map(({ place }) => place), volume, relief },
    allowed: "the drawn ring, within the bounds that follow from the tolerance",
    hint: "this is a fault of the program, not of the design: report it with the design; a finer tolerance, or art moved by a few hundredths of a millimetre, often avoids it",
  });
}

function describe({ astray, volume, relief }: Proof): string {
  if (astray.length > 0) {
    const { by, place } = astray[0];
    return `it is off by ${showLength(by)} at (${place.map((x) => x.toFixed(2)).join(", ")})${astray.length > 1 ? `, and in ${astray.length - 1} more of the places looked at` : ""}`;
  }
  const [pair, unit, what] = isWithin(volume) ? [relief, "mm²", "relief"] : [volume, "mm³", "volume"];
  return `its ${what} is ${pair.built.toFixed(2)} ${unit} where the drawing makes ${pair.expected.toFixed(2)}, and they may differ by ${pair.bound.toFixed(2)}`;
}

function ready(column: Column, intent: Intent, bodies = intent.bodies(column.place, column.stand)): Ready {
  const { group, place, stand, weight } = column;
  const top = place.on === "seat" ? 0 : (stand.band[stand.band.length - 1] ?? 0);
  const span = [(stand.band[0] ?? 0) - BEYOND, top + intent.tallest + BEYOND] as const;
  const held = intent.beyond(bodies, place, stand);
  return { group, place, stand, weight, span, known: intent.knows(place, stand), held };
}

/** What is looked at: a mesh, and its units where it was seen to be made of such. */
interface Look {
  readonly mesh: Mesh;
  readonly turned: Turned | undefined;
}

function solidsOf({ mesh, turned }: Look, columns: readonly Ready[]): (Intervals | undefined)[] {
  const lines = columns.map(({ place, stand, span }) => ({
    angle: place.angle,
    point: stand.point,
    way: stand.way,
    span,
  }));
  return (turned && insideUnits(turned, lines)) ?? insideAlong(mesh, lines);
}

/** mm by which a column differs from what was drawn, 0 where that is too little to be asked; where it does, from what was drawn anywhere near it. */
function apart({ place, stand, span, held }: Ready, solid: Intervals, intent: Intent, slack: number): number {
  if (isBeside(solid, held, slack)) return 0;
  const clip = interval(...span);
  const off = ({ surely, maybe }: Held) =>
    Math.max(longest(intersect(without(solid, maybe), clip)), longest(intersect(without(surely, solid), clip)));
  const here = off(held);
  if (here <= slack) return here;
  let near = held;
  for (let i = 0; i < DIRECTIONS; i++) {
    const angle = (2 * Math.PI * i) / DIRECTIONS;
    const beside = placeBeside(place, stand, slack * Math.cos(angle), slack * Math.sin(angle));
    near = either(near, intent.at(beside, columnAt(beside)));
  }
  return off(near);
}

/** Whether each span of a solid is one that was drawn, but for so much at its ends: so are nearly all, and that costs no sets. */
function isBeside(solid: Intervals, { surely, maybe }: Held, slack: number): boolean {
  if (solid.length !== surely.length || solid.length !== maybe.length) return false;
  for (let i = 0; i < solid.length; i += 2) {
    if (solid[i] < maybe[i] - slack || solid[i] > surely[i] + slack) return false;
    if (solid[i + 1] > maybe[i + 1] + slack || solid[i + 1] < surely[i + 1] - slack) return false;
  }
  return true;
}

/** The columns that differ with most of those close round them: the worst of each, and where. */
function closer(look: Look, columns: readonly Ready[], intent: Intent, slack: number): Proof["astray"] {
  const looked = columns.slice(0, CLOSER);
  const step = (PATCH_SLACKS * slack) / PATCH;
  const patches = looked.map(({ place, stand }) => {
    const found: Ready[] = [];
    for (let i = -PATCH; i <= PATCH; i++) {
      for (let j = -PATCH; j <= PATCH; j++) {
        const beside = placeBeside(place, stand, i * step, j * step);
        found.push(ready({ place: beside, stand: columnAt(beside), group: 0, weight: 0 }, intent));
      }
    }
    return found;
  });
  if (patches.length === 0) return [];
  const solids = solidsOf(look, patches.flat());
  let at = 0;
  return patches
    .flatMap((patch, i) => {
      const by = patch.flatMap((column) => {
        const solid = solids[at++];
        return column.known && solid !== undefined ? [apart(column, solid, intent, slack)] : [];
      });
      const off = by.filter((one) => one > slack);
      if (off.length === 0 || off.length < PATCH_SHARE * by.length) return [];
      return [{ by: Math.max(...off), place: placeOf(looked[i]) }];
    })
    .sort((a, b) => b.by - a.by);
}

function placeOf({ place, stand: { point, way, band } }: Column): Point3 {
  const t = place.on === "seat" ? 0 : (band[band.length - 1] ?? 0);
  const r = point[1] + t * way[1];
  return [r * Math.cos(place.angle), r * Math.sin(place.angle), point[0] + t * way[0]];
}

/** What is cut off at half of the relief's height, of what was drawn and of the mesh, by the same columns. */
function reliefArea(
  compared: readonly { readonly column: Ready; readonly solid: Intervals }[],
  { pattern, wrap, tolerance }: IntentOptions,
): ProofFigure {
  const level = pattern.height / 2;
  let [expected, built, open, largest] = [0, 0, 0, 0];
  if (level === 0) return { expected, built, bound: 0 };
  for (const { column, solid } of compared) {
    const { place, held, weight } = column;
    if (place.on !== "seat") continue;
    const area = weight * wrap.referenceRadius;
    largest = Math.max(largest, area);
    if (holds(held.likely, level)) expected += area;
    if (holds(solid, level)) built += area;
    if (holds(held.surely, level + tolerance) !== holds(held.maybe, level - tolerance)) open += area;
  }
  // Both bend the same outlines, the mesh in chords, so that edges may lie beside themselves by the tolerance. That many columns differ as counts do, by a few roots of their number.
  const edges = tolerance * edgeLength(pattern, wrap) + open;
  return { expected, built, bound: edges + DEVIATIONS * Math.sqrt(edges * largest) + DEVIATIONS * largest };
}

/** A volume stays within so many of its standard errors, which are rather too large (chosen). */
const ERRORS = 3;

/** The mean distance of a chord from its arc, of the greatest: of a parabola's 2/3; triangles on a double curve lie nearer. */
const MEAN_GAP = 2 / 3;

/** Counts stay within so many of their standard deviations (chosen: one of 15 000 would not). */
const DEVIATIONS = 4;

/** The greatest length that the bare band fills of a column, mm. */
function thickest(columns: readonly Ready[]): number {
  return columns.reduce((most, { stand }) => Math.max(most, longest(stand.band)), 0);
}

/** mm of outlines round the whole band, each by what it counts. */
function edgeLength(
  { bodies }: Pattern,
  { round }: BandSurface,
  weightOf: (body: FlatBody) => number = () => 1,
): number {
  let sum = 0;
  for (const body of bodies) {
    const { outline, seam, period } = body;
    const weight = weightOf(body);
    const times = seam === undefined ? (period === undefined ? 1 : round / period) : round / (seam[1] - seam[0]);
    for (const ring of outline.flat()) {
      let [u, v] = ring[ring.length - 1];
      for (const [nextU, nextV] of ring) {
        sum += weight * times * Math.hypot(nextU - u, nextV - v);
        [u, v] = [nextU, nextV];
      }
    }
  }
  return sum;
}

/** Volume, mm³, and surface, mm², of the bare band: by its exact section, of one that tapers by the mean of its sections. */
function bareBand({ revolved, looks, sectionAt }: Band): { volume: number; surface: number } {
  const sections = (revolved ? [0] : looks.slice(0, EVEN_LOOKS)).map(sectionAt);
  const mean = (of: (section: (typeof sections)[number]) => number) =>
    sections.reduce((sum, section) => sum + of(section), 0) / sections.length;
  return { volume: mean(bandVolume), surface: mean(bandSurface) };
}

/** The first looks of a band stand evenly round it. */
const EVEN_LOOKS = 48;
