/**
 * All parts of one group's settings, in space: what each stone has, what neighbours share, what goes along a row.
 */
import { beadSetParts } from "./bead-set.js";
import { bezelSetting } from "./bezel.js";
import { channelParts } from "./channel-parts.js";
import { flushSetting } from "./flush.js";
import { eachStone, type GroupParts, hollowOf, links, type SetGroupOptions, type SetStone } from "./group.js";
import type { SettingPart } from "./parts-of-setting.js";
import { prongParts } from "./prong-parts.js";
import type { SettingBodies } from "./setting-bodies.js";

export function setGroup(stones: readonly SetStone[], options: SetGroupOptions): GroupParts {
  if (stones.length === 0) return { parts: [], unheld: [] };
  const { setting } = options;
  switch (setting.form) {
    case "flush":
      return whole([
        ...eachStone(stones, (stone) => flushSetting(stone.shape, hollowOf(stone, options))),
        ...links(stones, options),
      ]);
    case "bezel":
      return whole([...eachStone(stones, (stone) => bezelOf(stone, options)), ...links(stones, options)]);
    case "bead-set":
      return beadSetParts(stones, setting, options);
    case "channel":
      return whole(channelParts(stones, setting, options));
    case "prongs":
      return prongParts(stones, setting, options);
  }
}

function whole(parts: readonly SettingPart[]): GroupParts {
  return { parts, unheld: [] };
}

function bezelOf(stone: SetStone, options: SetGroupOptions): SettingBodies {
  const { setting } = options;
  if (setting.form !== "bezel") throw new Error("only a bezel is made as one");
  return bezelSetting(stone.shape, { ...hollowOf(stone, options), ...setting, footUnder: stone.footUnder });
}
