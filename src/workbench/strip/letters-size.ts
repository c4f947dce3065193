/**
 * How large the page's letters are: they grow with the screen.
 */

/** What sizes in CSS pixels are meant for. */
const USUAL = 16;

/** By what factor the page's letters are larger than 16 CSS pixels. */
export function lettersSize(root: Element = document.documentElement): number {
  const size = Number.parseFloat(getComputedStyle(root).fontSize);
  return Number.isFinite(size) && size > 0 ? size / USUAL : 1;
}
