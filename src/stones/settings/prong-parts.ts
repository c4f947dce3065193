/**
 * The parts of a group held by prongs: what each stone has, and the prongs that neighbours share.
 */
import { radians, TURN } from "../../base/units.js";
import type { ProngsSpec } from "../../design/stones/settings/prongs.js";
import { placeBeside } from "./beside.js";
import { flushSetting } from "./flush.js";
import { layInSpace } from "./frame.js";
import { girdleBeside } from "./girdle-shape.js";
import { eachStone, type GroupParts, hollowOf, links, type SetGroupOptions, type SetStone } from "./group.js";
import { hollowLevels } from "./hollow.js";
import { hollowBodies } from "./hollow-bodies.js";
import { placedPart, type SettingPart } from "./parts-of-setting.js";
import { postMesh } from "./post.js";
import { collarMesh, collarReach, notchLevels, prongPost, prongSizes } from "./prongs.js";
import { NO_BODIES, type SettingBodies } from "./setting-bodies.js";
import { stackOutlines } from "./stacked.js";

export function prongParts(stones: readonly SetStone[], spec: ProngsSpec, options: SetGroupOptions): GroupParts {
  const { tolerance } = options;
  const feet = stones.map((stone) => footOf(stone, spec, tolerance));
  const own = eachStone(stones, (stone, i) => ownBodies(stone, feet[i], spec, options));
  const sizes = stones.map(({ shape }, i) => prongSizes(shape, spec, feet[i]));
  const [first] = sizes;
  const { posts, short } = placeBeside(stones, {
    away: first.away,
    sharedAway: first.sharedAway,
    radius: first.foot,
    wanted: spec.count,
    shared: spec.shared,
    angles: Array.from({ length: spec.count }, (_, i) => radians(spec.turn) + (TURN * i) / spec.count),
    tolerance,
  });
  const prongs = posts.map(({ frame, at, holds: [i] }): SettingPart => {
    return placedPart("walls", layInSpace(postMesh(prongPost(sizes[i], at, feet[i]), tolerance), frame));
  });
  return { parts: [...prongs, ...own, ...links(stones, options)], unheld: short };
}

/** Where collar and prongs begin: below the surface under all of the collar. */
function footOf({ shape, footUnder }: SetStone, spec: ProngsSpec, tolerance: number): number {
  const reach = collarReach(prongSizes(shape, spec, 0));
  return Math.min(footUnder(girdleBeside(shape, reach, tolerance, "body")), -shape.band - shape.pavilion / 2);
}

function ownBodies(stone: SetStone, foot: number, spec: ProngsSpec, options: SetGroupOptions): SettingBodies {
  const { shape } = stone;
  const { tolerance } = options;
  const hollow = hollowOf(stone, options);
  const walls = [collarMesh(shape, prongSizes(shape, spec, foot), foot, tolerance)];
  if (spec.ready !== "full") return { ...flushSetting(shape, hollow), walls };
  const clears = [stackOutlines(hollowLevels(shape, hollow).slice(-2))];
  return { ...NO_BODIES, clears, walls, hollows: hollowBodies(notchLevels(shape, hollow), shape, hollow) };
}
