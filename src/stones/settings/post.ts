/**
 * Posts with domed tops: grains, and prongs, which are thinner above than at the foot.
 */
import type { Mesh } from "../../mesh/mesh.js";
import { transformMesh } from "../../mesh/transform.js";
import { circle, circleCorners } from "./offset-outline.js";
import { type Level, stackOutlines } from "./stacked.js";

export interface Post {
  /** Its axis, in the stone's coordinates, mm. */
  readonly at: readonly [x: number, y: number];
  readonly foot: number;
  /** Its highest point. */
  readonly top: number;
  /** Radius at the foot and below the dome. */
  readonly radius: number;
  readonly tip: number;
}

/** Levels of a dome: within a hundredth of its radius (sagitta of 15° is 0.0086). */
const DOME_LEVELS = 6;

/** A dome ends in a flat of so much of its radius: as wide as its chords are long. */
const FLAT_ANGLE = Math.PI / 2 / DOME_LEVELS / 2;

export function postMesh({ at, foot, top, radius, tip }: Post, tolerance: number): Mesh {
  const corners = circleCorners(radius, tolerance);
  const levels: Level[] = [{ z: foot, outline: circle(radius, corners, "even") }];
  for (let i = 0; i <= DOME_LEVELS; i++) {
    const angle = ((Math.PI / 2 - FLAT_ANGLE) * i) / DOME_LEVELS;
    levels.push({
      z: top - tip * (1 - Math.sin(angle)),
      outline: circle(tip * Math.cos(angle), corners, "even"),
    });
  }
  return transformMesh(stackOutlines(levels), [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, at[0], at[1], 0, 1]);
}
