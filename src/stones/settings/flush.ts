/**
 * A flush setting: the stone's hollow in the plain metal, over whose edge the metal is rubbed.
 */

import type { GirdleShape } from "./girdle-shape.js";
import { type HollowOptions, hollowLevels, pilotOnly } from "./hollow.js";
import { hollowBodies } from "./hollow-bodies.js";
import { NO_BODIES, type Ready, type SettingBodies } from "./setting-bodies.js";

export function flushSetting(shape: GirdleShape, options: HollowOptions & { readonly ready: Ready }): SettingBodies {
  const levels = options.ready === "pilot" ? pilotOnly(shape, options) : hollowLevels(shape, options);
  return { ...NO_BODIES, hollows: hollowBodies(levels, shape, options) };
}
