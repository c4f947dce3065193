/**
 * What all settings of a group are made with: its stones where they stand, and what each of them has by itself.
 */
import type { Point2 } from "../../base/math/point.js";
import type { SettingSpec } from "../../design/stones/setting.js";
import type { RowPlace } from "../placed-stone.js";
import { layInSpace } from "./frame.js";
import type { Around, HollowOptions, Opening } from "./hollow.js";
import { linkMesh, linksOf } from "./link.js";
import type { StandingStone } from "./neighbours.js";
import { placedPart, type SettingPart } from "./parts-of-setting.js";
import type { SettingBodies } from "./setting-bodies.js";

/** A stone where it stands, with what lies round it. */
export interface SetStone extends StandingStone {
  readonly around: Around;
  /** The lowest height under an outline in its coordinates at which walls may begin, mm. */
  readonly footUnder: (outline: readonly Point2[]) => number;
  readonly row: RowPlace | undefined;
}

export interface SetGroupOptions {
  readonly setting: SettingSpec;
  /** Undefined where stones are closed below. */
  readonly opening: Opening | undefined;
  readonly tolerance: number;
  /** Facets of the band round the finger, and where they begin, radians. */
  readonly facets: number;
  readonly startAngle: number;
}

/** The parts, and the numbers of stones that nothing holds where their setting has grains or prongs. */
export interface GroupParts {
  readonly parts: readonly SettingPart[];
  readonly unheld: readonly number[];
}

/** What a stone's hollow is made by. */
export function hollowOf(
  { around }: SetStone,
  { setting: { ready, pilot }, opening, tolerance }: SetGroupOptions,
): HollowOptions & { readonly ready: SettingSpec["ready"] } {
  return { ready, pilot, opening, tolerance, around };
}

/** Each stone's own bodies. */
export function eachStone(
  stones: readonly SetStone[],
  make: (stone: SetStone, number: number) => SettingBodies,
): SettingPart[] {
  return stones.flatMap((stone, i) => {
    const bodies = make(stone, i);
    return (["clears", "walls", "hollows", "grains"] as const).flatMap((kind) =>
      bodies[kind].map((mesh) => placedPart(kind, layInSpace(mesh, stone.frame))),
    );
  });
}

/** What is cut away between hollows that nearly meet. */
export function links(stones: readonly SetStone[], { setting, tolerance }: SetGroupOptions): SettingPart[] {
  if (setting.ready === "pilot") return [];
  return linksOf(stones, tolerance).map((link) => {
    const [a, b] = link.stones.map((i) => stones[i]);
    const above = (a.around.above + b.around.above) / 2;
    const edge = -(a.shape.band + b.shape.band) / 2;
    return placedPart("hollows", linkMesh(link, { edge, above, tolerance }));
  });
}
