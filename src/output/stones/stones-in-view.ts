/**
 * The stones of a ring as plain data for views: each body once, and where each stone stands, in space and on the band laid flat.
 */
import type { Point2, Point3 } from "../../base/math/point.js";
import { degrees } from "../../base/units.js";
import { findCut } from "../../gems/cuts/catalogue.js";
import { gemLookOf } from "../../gems/gem-look.js";
import { outlinePoints } from "../../gems/outline.js";
import { type FacetName, facetPlane, type Polyhedron, polyhedronMesh } from "../../gems/polyhedron.js";
import type { Stone } from "../../gems/stone.js";
import { stoneFacets } from "../../gems/stone-mesh.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { PlacedStones } from "../../stones/place-stones.js";
import type { PlacedStone } from "../../stones/placed-stone.js";
import type { FileGem } from "../files/file-stone.js";

/** What a view shows of a ring's stones. */
export interface StonesInView {
  readonly bodies: readonly StoneBodyInView[];
  /** In the order of their numbers on the setter's map. */
  readonly stones: readonly StoneInView[];
}

/** A stone's body in its own coordinates, mm: x along its length, z out of the ring, 0 at the girdle's upper edge. */
export interface StoneBodyInView {
  readonly mesh: Mesh;
  /** Planes of its facets but the girdle's, four numbers each: the outward normal, and how far along it the plane lies. */
  readonly planes: readonly number[];
  /** Whether its facets stand for a round surface: a cabochon. */
  readonly round: boolean;
  /** Of the way across. */
  readonly width: number;
  /** The girdle from above, counter-clockwise, and the facets above it. */
  readonly outline: readonly Point2[];
  readonly facets: readonly (readonly Point2[])[];
  readonly gem: FileGem;
}

/** One stone. */
export interface StoneInView {
  /** Which of the bodies it has. */
  readonly body: number;
  /** Which of the design's groups it is of, from 0, and its number on the setter's map, from 1. */
  readonly group: number;
  readonly number: number;
  /** Origin of its own coordinates, mm, and their z and x, unit vectors. */
  readonly at: Point3;
  readonly out: Point3;
  readonly along: Point3;
  readonly flat: FlatStone;
}

/** Where a stone stands on the band laid flat. */
export interface FlatStone {
  /** What it stands on. */
  readonly surface: "seat" | "rail";
  /** Degrees on the ring, counter-clockwise from +x. */
  readonly angle: number;
  /** mm from the seat's middle, + towards +z. */
  readonly v: number;
  /** Degrees from the band's length to the stone's, counter-clockwise from outside. */
  readonly turn: number;
}

/** How far chords lie inside a drawn outline, mm. */
const FINE = 0.01;

/** Facets that are seen from above. */
const CROWN: ReadonlySet<FacetName> = new Set(["table", "star", "bezel", "upper half", "crown step", "crown side"]);

export function stonesInView({ stones, gems }: PlacedStones): StonesInView {
  const known = new Map<string, number>();
  const bodies: StoneBodyInView[] = [];
  const places = stones.map((placed): StoneInView => {
    const key = JSON.stringify(placed.stone);
    const body = known.get(key) ?? bodies.push(bodyOf(placed.stone, gems.get(placed.stone.gem)?.name)) - 1;
    known.set(key, body);
    const { group, number, at, out, along } = placed;
    return { body, group, number, at, out, along, flat: flatStone(placed) };
  });
  return { bodies, stones: places };
}

function bodyOf(stone: Stone, name: string = stone.gem): StoneBodyInView {
  const whole = stoneFacets(stone);
  const planes = whole.facets
    .filter((facet) => facet.name !== "girdle")
    .flatMap((facet) => {
      const { normal, offset } = facetPlane(whole, facet);
      return [...normal, offset];
    });
  return {
    mesh: polyhedronMesh(whole),
    planes,
    round: stone.cut === "cabochon",
    width: stone.width,
    outline: outlinePoints(findCut(stone.cut).outline(stone), FINE),
    facets: crownOf(whole),
    gem: { name, ...gemLookOf(stone.gem) },
  };
}

function crownOf({ points, facets }: Polyhedron): Point2[][] {
  const seen = facets.filter(({ name }) => CROWN.has(name));
  return seen.map(({ ring }) => ring.map((corner): Point2 => [points[corner][0], points[corner][1]]));
}

/** The direction of its length on the flat band: the part of it round the finger, and the part along the axis. */
export function turnOnBand({ surface: { angle }, along }: Pick<PlacedStone, "surface" | "along">): number {
  return Math.atan2(along[2], Math.cos(angle) * along[1] - Math.sin(angle) * along[0]);
}

function flatStone(placed: PlacedStone): FlatStone {
  const { name: surface, angle, v } = placed.surface;
  return { surface, angle: degrees(angle), v, turn: degrees(turnOnBand(placed)) };
}
