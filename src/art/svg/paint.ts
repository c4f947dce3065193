/**
 * Whether a paint paints. A ring has no colours: whatever is painted counts as art, white and faint colours too; only
 * none, transparent and an opacity of 0 leave a shape out.
 */

/** What a paint comes to: nothing, a plain colour, or a reference to a gradient or pattern. */
export type Paint =
  | { readonly kind: "none" }
  | { readonly kind: "colour"; readonly colour: string }
  | { readonly kind: "reference"; readonly id: string; readonly fallback: string | undefined };

const NONE: Paint = { kind: "none" };
const REFERENCE = /^url\(\s*["']?([^"')]*)["']?\s*\)\s*(.*)$/;

/** Colours with an alpha of 0: #rgb0, #rrggbb00, rgba(…, 0), rgb(… / 0%). */
const CLEAR = /^#(?:[0-9a-f]{3}0|[0-9a-f]{6}00)$|^(?:rgb|hsl)a?\([^)]*[,/]\s*0*\.?0*%?\s*\)$/;
const HAS_ALPHA = /^#(?:[0-9a-f]{4}|[0-9a-f]{8})$|\/|^(?:rgb|hsl)a?\((?:[^,]*,){3}/;

/** The paint of a fill or stroke. `current` is the color property. */
export function paintOf(text: string, opacity: string, current: string): Paint {
  if (isClear(opacity)) return NONE;
  const word = text.trim();
  const lower = word.toLowerCase();
  const match = REFERENCE.exec(word);
  if (match !== null) {
    const fallback = match[2].trim();
    return { kind: "reference", id: targetId(match[1]) ?? "", fallback: fallback === "" ? undefined : fallback };
  }
  const colour = lower === "currentcolor" ? current.toLowerCase() : lower;
  if (colour === "none" || colour === "transparent" || (HAS_ALPHA.test(colour) && CLEAR.test(colour))) return NONE;
  return { kind: "colour", colour };
}

/** Whether a paint of that opacity hides all that is beneath it. */
export function isOpaque(colour: string, opacity: string): boolean {
  const share = Number.parseFloat(opacity) / (opacity.trim().endsWith("%") ? 100 : 1);
  return share >= 1 && !HAS_ALPHA.test(colour);
}

/** Whether an opacity is 0. */
export function isClear(opacity: string): boolean {
  return Number.parseFloat(opacity) <= 0;
}

/** The id in a reference to this file, `#leaf`; undefined for one to elsewhere. */
export function targetId(link: string): string | undefined {
  return link.startsWith("#") ? decodeId(link.slice(1)) : undefined;
}

/** The id in a property's url(#…); undefined where it is none. */
export function urlTarget(text: string): string | undefined {
  const match = REFERENCE.exec(text.trim());
  return match === null ? undefined : targetId(match[1]);
}

function decodeId(id: string): string {
  try {
    return decodeURIComponent(id);
  } catch {
    return id;
  }
}
