/**
 * How high a stone stands where the document does not say.
 */
import type { SettingSpec } from "../design/stones/setting.js";
import type { StoneHeights } from "../gems/stone.js";

/**
 * mm from the surface up to the table. Sunk stones: level with it (flush: orchid 8422, lucywalkerjewellery.com; pavé:
 * pfingst), between raised walls with their tops; stones in a wall or prongs of their own: the girdle's lower edge on the
 * surface, common practice, no source.
 */
export function usualLevel(setting: SettingSpec, { crown, girdle }: StoneHeights): number {
  switch (setting.form) {
    case "flush":
    case "bead-set":
      return 0;
    case "channel":
      return setting.rise;
    case "bezel":
    case "prongs":
      return crown + girdle;
  }
}
