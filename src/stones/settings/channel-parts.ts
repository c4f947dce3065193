/**
 * The parts of a group held in channels: walls and groove along each row, and each stone's hollow below it.
 */
import { radians } from "../../base/units.js";
import type { ChannelSpec } from "../../design/stones/settings/channel.js";
import { type Groove, grooveOf, grooveSection, hollowUnder, wallSection } from "./channel.js";
import { layInSpace } from "./frame.js";
import { hollowOf, type SetGroupOptions, type SetStone } from "./group.js";
import { ROOM } from "./hollow.js";
import { placedPart, type SettingPart } from "./parts-of-setting.js";
import { sweepRows, waysOf } from "./sweep-rows.js";

const FIELDS = ["half", "notch", "ledge", "lower", "upper", "end"] as const satisfies readonly (keyof Groove)[];

export function channelParts(stones: readonly SetStone[], spec: ChannelSpec, options: SetGroupOptions): SettingPart[] {
  const { tolerance } = options;
  const shape = { ...spec, bearing: radians(spec.bearing) };
  const ways = waysOf(stones);
  const grooves = stones.map((stone, i) => {
    const [x, y] = stone.frame.at;
    const radius = stone.row === undefined || stone.row.count === 1 ? Number.POSITIVE_INFINITY : Math.hypot(x, y);
    return grooveOf(stone.shape, { way: ways[i], radius }, shape, tolerance);
  });
  const hollows = stones.flatMap((stone, i) => {
    const meshes = hollowUnder(stone.shape, grooves[i], ways[i], hollowOf(stone, options));
    return meshes.map((mesh) => placedPart("hollows", layInSpace(mesh, stone.frame)));
  });
  if (spec.ready === "pilot") return hollows;
  const along = ({ shape: { length, width } }: SetStone) => Math.max(length, width) / 2 + ROOM;
  const sizesAt = (stone: SetStone, i: number) => {
    const groove = grooves[i];
    const { surface, above } = stone.around;
    const wide = groove.half + spec.wall;
    const foot = stone.footUnder([-1, 1].flatMap((x) => [-1, 1].map((y) => [x * wide, y * wide] as const)));
    return [...FIELDS.map((field) => groove[field]), surface, above, foot];
  };
  const grooveAt = (sizes: readonly number[]) =>
    Object.fromEntries(FIELDS.map((field, k) => [field, sizes[k]])) as unknown as Groove;
  const [surface, above, foot] = [0, 1, 2].map((k) => FIELDS.length + k);
  const sweep = { sizesAt: (stone: SetStone, _: unknown, i: number) => sizesAt(stone, i) };
  const walls =
    spec.rise === 0
      ? []
      : sweepRows(stones, options, {
          ...sweep,
          kind: "walls",
          beyond: (stone) => along(stone) + spec.wall,
          section: (sizes) => wallSection(sizes[0], shape, sizes[foot], sizes[surface] + spec.rise),
        });
  const groove = sweepRows(stones, options, {
    ...sweep,
    kind: "hollows",
    beyond: along,
    section: (sizes) => grooveSection(grooveAt(sizes), sizes[above], spec.ready === "full"),
  });
  return [...walls, ...groove, ...hollows];
}
