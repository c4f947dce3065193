/**
 * What a material looks like, by its symbol.
 */
import type { Alloy } from "../measure/alloys/alloy.js";
import { alloys } from "../measure/alloys/catalogue.js";
import { type Look, lookOf as lookOfAlloy } from "../measure/alloys/look.js";

/**
 * The look of a built-in material, or of one that is told; a symbol that is not built in has that of an unknown alloy.
 *
 * @example
 * const { colour, metal } = lookOf("au750-red"); // linear red, green, blue; true
 */
export function lookOf(material: string | Pick<Alloy, "symbol" | "name" | "kind">): Look {
  if (typeof material !== "string") return lookOfAlloy(material as Alloy);
  const found = alloys.find(({ symbol }) => symbol === material);
  return lookOfAlloy(found ?? ({ symbol: material, name: material, kind: "other" } as Alloy));
}
