/** Parts of tori, for tests of what is repeated round the axis. */
import type { Mesh } from "../../src/mesh/mesh.js";
import type { TurnPart } from "../../src/mesh/turn-round.js";

/** The first of so many equal parts of a mesh whose vertices stand in rounds of `across`, one station after the other. */
export function sectorOf({ positions, triangles }: Mesh, places: number, across: number): TurnPart {
  const stations = positions.length / 3 / across / places;
  const own = stations * across;
  const last = own + across;
  const inside: number[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [...triangles.subarray(t, t + 3)];
    if (corners.every((v) => v < last) && corners.some((v) => v < own)) inside.push(...corners);
  }
  return {
    mesh: { positions: positions.slice(0, 3 * last), triangles: Uint32Array.from(inside) },
    follows: Int32Array.from({ length: last }, (_, v) => (v < own ? -1 : v - own)),
  };
}
