/**
 * The stones of a ring as they stand in the mesh of a piece: at its places, turned and set down as it is printed. A stone keeps its
 * true size beside a master, which is larger: what is cast from it shrinks to the stone.
 */
import { mat4, type ReadonlyMat4 } from "gl-matrix";
import { radians } from "../base/units.js";
import type { AxisScale } from "../casting/allowances/allowance.js";
import type { PrintSettings } from "../design/print-settings.js";
import { meshBounds } from "../mesh/bounds.js";
import type { Mesh } from "../mesh/mesh.js";
import { transformMesh } from "../mesh/transform.js";
import type { FileStone } from "../output/files/file-stone.js";
import { tiltOf } from "../output/print/lay-down.js";
import { shownStones } from "../output/stones/shown-stone.js";
import { acrossOf, type Frame } from "../stones/frame.js";
import type { PlacedStones } from "../stones/place-stones.js";

export interface PieceStonesOptions {
  /** The piece before it is turned. */
  readonly piece: Mesh;
  /** By how much it is larger than the casting. */
  readonly scale: AxisScale;
  readonly print: PrintSettings;
}

/** One entry a stone, in the order of their numbers. */
export function pieceStones(placed: PlacedStones, options: PieceStonesOptions): readonly FileStone[] {
  if (placed.stones.length === 0) return [];
  const { axial, radial } = options.scale;
  const down = layDownMap(options);
  return shownStones(placed).map(({ body, frame, group, number }) => {
    const { name, look } = body.gem;
    const [x, y, z] = frame.at;
    const map = [...mat4.multiply(fresh(), down, frameMap({ ...frame, at: [x * radial, y * radial, z * axial] }))];
    return { group, number, mesh: body.mesh, map, round: body.round, gem: { ...look, name } };
  });
}

/** What `layDown` does with the piece. */
function layDownMap({ piece, print }: PieceStonesOptions): ReadonlyMat4 {
  const tilt = tiltOf(print);
  if (tilt === undefined) return mat4.identity(fresh());
  const turn = mat4.fromXRotation(fresh(), radians(tilt));
  const { min } = meshBounds(transformMesh(piece, turn));
  return mat4.multiply(fresh(), mat4.fromTranslation(fresh(), [0, 0, -min[2]]), turn);
}

function frameMap(frame: Frame): ReadonlyMat4 {
  const { at, along, out } = frame;
  return [...along, 0, ...acrossOf(frame), 0, ...out, 0, ...at, 1] as unknown as ReadonlyMat4;
}

/** A matrix in double precision. */
function fresh(): mat4 {
  return new Array<number>(16).fill(0) as unknown as mat4;
}
