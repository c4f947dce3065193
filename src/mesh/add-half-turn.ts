/**
 * Completes a mesh that is open at a plane by its image under a half turn about a line of that plane. The rim is its own
 * image end for end, made of other points: they are joined as those of a seam are, so no gap can open.
 */
import type { Pausing } from "../base/pausing.js";
import type { Clipped } from "./clip.js";
import type { Mesh } from "./mesh.js";
import { joiningSeam } from "./seam.js";
import { END, START, turnRound } from "./turn-round.js";

export interface HalfTurnOptions {
  /** Bit of the points on the plane. */
  readonly bit: number;
  /** The half turn. */
  readonly image: (x: number, y: number, z: number) => readonly [number, number, number];
  /** What a point's other marks are of its image. Default: the same. */
  readonly marksOfImage?: (marks: number) => number;
}

/**
 * A mesh and its image, in pieces; points on the plane have lost its bit.
 *
 * @throws AnnuletError `border-tangled`, `seam-mismatch` where the rim is not its own image
 */
export function* addingHalfTurn({ mesh, marks }: Clipped, options: HalfTurnOptions): Pausing<Clipped> {
  const { bit, image, marksOfImage = (mark) => mark } = options;
  const count = marks.length;
  const sides = new Uint8Array(2 * count);
  const kept = new Uint8Array(2 * count);
  for (const [vertex, mark] of marks.entries()) {
    const isOn = (mark & bit) !== 0;
    sides[vertex] = isOn ? START : 0;
    sides[count + vertex] = isOn ? END : 0;
    kept[vertex] = mark & ~bit;
    kept[count + vertex] = marksOfImage(mark & ~bit);
  }
  const joined = yield* joiningSeam({ mesh: besideImage(mesh, image), marks: sides }, 0);
  // Of two points that have become one the first stays; points that the seam has added carry no marks.
  const whole = new Uint8Array(joined.follows.length);
  let own = 0;
  for (const [vertex, start] of joined.follows.entries()) if (start === -1) whole[own++] = kept[vertex] ?? 0;
  return { mesh: turnRound(joined, 1), marks: whole.slice(0, own) };
}

/** A mesh and its image as one mesh of two pieces: a half turn turns no triangle over. */
function besideImage({ positions, triangles }: Mesh, image: HalfTurnOptions["image"]): Mesh {
  const both = new Float64Array(2 * positions.length);
  both.set(positions);
  for (let i = 0; i < positions.length; i += 3) {
    both.set(image(positions[i], positions[i + 1], positions[i + 2]), positions.length + i);
  }
  const corners = new Uint32Array(2 * triangles.length);
  corners.set(triangles);
  const count = positions.length / 3;
  for (let i = 0; i < triangles.length; i++) corners[triangles.length + i] = triangles[i] + count;
  return { positions: both, triangles: corners };
}
