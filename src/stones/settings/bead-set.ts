/**
 * Bead setting: hollows, a bright cut along the row or round each stone, and grains beside the girdles, which the setter pushes
 * over the stones' edges.
 */

import { radians, TURN } from "../../base/units.js";
import type { BeadSetSpec } from "../../design/stones/settings/bead-set.js";
import { acrossRow } from "./across-row.js";
import { placeBeside, type Standing } from "./beside.js";
import { brightPlate, brightSection } from "./bright-cut.js";
import { flushSetting } from "./flush.js";
import { layInSpace } from "./frame.js";
import { eachStone, type GroupParts, hollowOf, links, type SetGroupOptions, type SetStone } from "./group.js";
import { ROOM } from "./hollow.js";
import { placedPart, type SettingPart } from "./parts-of-setting.js";
import { postMesh } from "./post.js";
import { NO_BODIES } from "./setting-bodies.js";
import { sweepRows } from "./sweep-rows.js";

/** A grain stands this far off the hollow that it stands beside, mm: in touch with its wall no union would be sound (chosen). */
const OFF_HOLLOW = 0.02;

/** A grain is a dome on a post of this share of its radius (chosen), and stands so deep in the metal, mm. */
const POST_SHARE = 0.6;
const IN_METAL = 0.15;

export function beadSetParts(stones: readonly SetStone[], spec: BeadSetSpec, options: SetGroupOptions): GroupParts {
  const hollows = [
    ...eachStone(stones, (stone) => flushSetting(stone.shape, hollowOf(stone, options))),
    ...links(stones, options),
  ];
  if (spec.ready === "pilot") return { parts: hollows, unheld: [] };
  const parts = [...brightParts(stones, spec, options), ...hollows];
  if (spec.ready === "bearing") return { parts, unheld: [] };
  const { posts, short } = grainsOf(stones, spec, options);
  return { parts: [...parts, ...posts], unheld: short };
}

function brightParts(
  stones: readonly SetStone[],
  { border, grain }: BeadSetSpec,
  options: SetGroupOptions,
): SettingPart[] {
  if (border === 0) return [];
  const { tolerance } = options;
  if (stones[0].row === undefined) {
    return eachStone(stones, ({ shape, around }) => ({
      ...NO_BODIES,
      hollows: [brightPlate(shape, { border, flat: OFF_HOLLOW + grain * shape.width, around, tolerance })],
    }));
  }
  return sweepRows(stones, options, {
    kind: "hollows",
    beyond: ({ shape }) => shape.length / 2 + ROOM + border,
    sizesAt: ({ shape, around }, way) => [acrossRow(shape, way).half, around.surface, around.above],
    section: ([half, surface, above]) => brightSection(half, border, { surface, above }),
  });
}

/** Grains of the group, and stones that too few hold. */
function grainsOf(stones: readonly SetStone[], spec: BeadSetSpec, { tolerance }: SetGroupOptions) {
  const radius = (spec.grain * Math.max(...stones.map(({ shape }) => shape.width))) / 2;
  const { posts, short } = placeBeside(stones, {
    away: ROOM + OFF_HOLLOW + radius,
    radius,
    wanted: spec.grains,
    shared: spec.shared,
    angles: anglesOf(spec.grains),
    tolerance,
  });
  return { posts: posts.map((standing) => grainPart(standing, stones, { spec, radius, tolerance })), short };
}

function grainPart(
  { frame, at, holds }: Standing,
  stones: readonly SetStone[],
  { spec, radius, tolerance }: { readonly spec: BeadSetSpec; readonly radius: number; readonly tolerance: number },
): SettingPart {
  const surface = holds.reduce((sum, i) => sum + stones[i].around.surface, 0) / holds.length;
  const ground = spec.border > 0 ? 0 : surface;
  const post = {
    at,
    foot: Math.min(0, ground) - IN_METAL,
    top: ground + (1 + POST_SHARE) * radius,
    radius,
    tip: radius,
  };
  return placedPart("grains", layInSpace(postMesh(post, tolerance), frame));
}

/** Where a stone's own grains stand: two across it, others evenly, the first at 45° or, of three, at 90°. */
function anglesOf(count: number): number[] {
  const first = radians(count === 4 ? 45 : 90);
  return Array.from({ length: count }, (_, i) => first + (TURN * i) / count);
}
