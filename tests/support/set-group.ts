/**
 * A group of stones set on a flat band, as settings make it: its stones and the meshes of each kind.
 */
import { revolvedSurface } from "../../src/band/surface/revolved.js";
import type { Sector } from "../../src/base/math/round.js";
import { TOP } from "../../src/base/units.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { setStones } from "../../src/stones/set-stones.js";
import type { SettingPart } from "../../src/stones/settings/parts-of-setting.js";
import { flatBand, type RowOptions, rowOfStones } from "./set-stones.js";

/** Facets of the band round the finger. */
export const FACETS = 120;

/** @param document a group as a design has it, but for its place */
export function setOnFlat(document: Record<string, unknown>, row: RowOptions) {
  const band = flatBand();
  const wrap = revolvedSurface({ line: band.seat, referenceRadius: band.outsideRadius, startAngle: TOP });
  const stones = rowOfStones(wrap, document, row);
  const how = { band, standing: 0, clear: 0.05, tolerance: 0.01, facets: FACETS, startAngle: TOP };
  const { set, parts, unheld } = setStones(stones, how);
  const of = (kind: SettingPart["kind"], sector?: Sector): Mesh[] =>
    parts.filter((part) => part.kind === kind).flatMap(({ bodies }) => bodies(sector));
  return { stones, set, unheld, parts: of };
}
