/**
 * A bezel: a wall raised all round the stone, with a ledge inside that it rests on; the wall is pushed over the crown.
 */
import type { Point2 } from "../../base/math/point.js";
import { type GirdleShape, girdleBeside } from "./girdle-shape.js";
import { type Around, hollowLevels, type Opening, pilotOnly, ROOM } from "./hollow.js";
import { hollowBodies } from "./hollow-bodies.js";
import { NO_BODIES, type Ready, type SettingBodies } from "./setting-bodies.js";
import { type Level, stackOutlines } from "./stacked.js";

export interface BezelOptions {
  readonly ready: Ready;
  /** Thickness of the wall, mm. */
  readonly wall: number;
  /** Height over the girdle, share of the crown's. */
  readonly height: number;
  /** Width of the ledge, mm. */
  readonly ledge: number;
  /** Undefined where it is closed below. */
  readonly opening: Opening | undefined;
  /** Where walls of an outline may begin, well below the surface; mm. */
  readonly footUnder: (outline: readonly Point2[]) => number;
  readonly around: Around;
  readonly tolerance: number;
}

/** Radius of outer edges, mm (morrisandwatson.com: all edges 0.125), and at most so much of the wall (chosen). */
const EDGE_RADIUS = 0.125;
const EDGE_SHARE = 1 / 3;

/** Chords of a rounded edge: within 0.01 mm of its arc. */
const EDGE_CHORDS = 3;

/** The pilot's least share of the width that a ledge leaves (chosen). */
const LEAST_PILOT = 0.1;

export function bezelSetting(shape: GirdleShape, options: BezelOptions): SettingBodies {
  const { ready, ledge, height, wall, tolerance } = options;
  const pilot = Math.max(LEAST_PILOT, 1 - (2 * ledge) / shape.width);
  const opening = options.opening && { ...options.opening, size: Math.min(options.opening.size, pilot) };
  const hollow = { ...options, pilot, opening };
  const levels = ready === "pilot" ? pilotOnly(shape, hollow) : hollowLevels(shape, hollow);
  const beside = (by: number) => girdleBeside(shape, ROOM + by, tolerance, "body");
  const foot = options.footUnder(beside(wall));
  const outside = roundedTop(foot, height * shape.crown, wall).map(({ z, by }): Level => ({ z, outline: beside(by) }));
  return {
    ...NO_BODIES,
    walls: [stackOutlines(outside)],
    hollows: hollowBodies(levels, shape, hollow),
  };
}

/** The outside of a wall so thick: straight up, its upper edge rounded; `by`: outside of the hollow, mm. */
function roundedTop(foot: number, top: number, wall: number): { readonly z: number; readonly by: number }[] {
  const radius = Math.min(EDGE_RADIUS, EDGE_SHARE * wall);
  const arc = Array.from({ length: EDGE_CHORDS + 1 }, (_, i) => {
    const angle = ((Math.PI / 2) * i) / EDGE_CHORDS;
    return { z: top - radius * (1 - Math.sin(angle)), by: wall - radius * (1 - Math.cos(angle)) };
  });
  return [{ z: foot, by: wall }, ...arc];
}
