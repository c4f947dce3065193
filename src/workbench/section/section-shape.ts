/**
 * How a cross-section looks while its sizes are dragged, before the worker has drawn it: the last answer's outline, moved as the
 * surfaces move on which its points lie. Corners keep their radius; what is exact comes with the worker's answer.
 */
import type { Point2 } from "../../index.js";
import type { SectionNumbers } from "./section-sizes.js";

/** Height of a surface above the bore's narrowest circle, mm, at w; undefined where the surface is not. */
type Surface = (w: number) => number | undefined;

/** Rise above its chord of an arc over ± half with a sagitta, mm, at w. */
export function arcRise(w: number, half: number, sagitta: number): number {
  if (sagitta === 0 || half <= 0) return 0;
  const radius = (half ** 2 + sagitta ** 2) / (2 * Math.abs(sagitta));
  const from = Math.sqrt(Math.max(0, radius ** 2 - Math.min(Math.abs(w), half) ** 2)) - (radius - Math.abs(sagitta));
  return Math.sign(sagitta) * from;
}

/** A size that the form has, mm; 0 where it has none of the name. */
function sizeOf({ sizes }: SectionNumbers, name: string): number {
  return sizes[name] ?? 0;
}

/** Half the width of what lies between rails or bevels, mm. */
function innerHalf(numbers: SectionNumbers): number {
  const half = sizeOf(numbers, "width") / 2;
  if (numbers.form === "channel") return half - sizeOf(numbers, "outside.rail");
  if (numbers.form === "bevelled") return half - sizeOf(numbers, "outside.bevel");
  return half;
}

/** The outside's height over w between rails or bevels, and beside them. */
const OUTSIDES: Readonly<Record<string, (numbers: SectionNumbers, w: number, inner: boolean) => number>> = {
  flat: (numbers) => sizeOf(numbers, "thickness"),
  free: (numbers) => sizeOf(numbers, "thickness"),
  domed(numbers, w) {
    const rise = sizeOf(numbers, "outside.rise");
    return sizeOf(numbers, "thickness") - rise + arcRise(w, innerHalf(numbers), rise);
  },
  concave: (numbers, w) =>
    sizeOf(numbers, "thickness") + arcRise(w, innerHalf(numbers), -sizeOf(numbers, "outside.dip")),
  channel(numbers, w, inner) {
    const top = sizeOf(numbers, "thickness");
    if (!inner) return top;
    return top - sizeOf(numbers, "outside.depth") + arcRise(w, innerHalf(numbers), sizeOf(numbers, "outside.crown"));
  },
  bevelled(numbers, w, inner) {
    const top = sizeOf(numbers, "thickness");
    const bevel = sizeOf(numbers, "outside.bevel");
    if (inner || bevel === 0) return top;
    return top - (sizeOf(numbers, "outside.drop") * (Math.abs(w) - innerHalf(numbers))) / bevel;
  },
  knife(numbers, w) {
    const half = innerHalf(numbers);
    return sizeOf(numbers, "thickness") - (half > 0 ? (sizeOf(numbers, "outside.rise") * Math.abs(w)) / half : 0);
  },
};

/** The three surfaces on which an outline's points lie, or beside whose corners. */
function surfacesOf(numbers: SectionNumbers): readonly [bore: Surface, inner: Surface, outer: Surface] {
  const outside = OUTSIDES[numbers.form] ?? OUTSIDES.flat;
  const half = sizeOf(numbers, "width") / 2;
  const inside = innerHalf(numbers);
  return [
    (w) => (numbers.bore === "comfort" ? boreRise(numbers, w) : 0),
    (w) => (Math.abs(w) <= inside + SAME_W ? outside(numbers, w, true) : undefined),
    (w) => (Math.abs(w) >= inside - SAME_W && inside < half ? outside(numbers, w, false) : undefined),
  ];
}

/** The height above the bore's narrowest circle, which lies in the middle. */
function boreRise(numbers: SectionNumbers, w: number): number {
  const rise = sizeOf(numbers, "bore.rise");
  return rise - arcRise(w, sizeOf(numbers, "width") / 2, rise);
}

/** Points on a wall belong to both of its sides, mm. */
const SAME_W = 1e-6;

/** Where w goes: rails and bevels stay as wide as they are said to be, what lies between is stretched. */
function movedAcross(w: number, before: SectionNumbers, after: SectionNumbers): number {
  const [half, inner] = [sizeOf(before, "width") / 2, innerHalf(before)];
  const [halfAfter, innerAfter] = [sizeOf(after, "width") / 2, innerHalf(after)];
  const size = Math.abs(w);
  if (size <= inner) return inner > 0 ? (w * innerAfter) / inner : w;
  const share = half > inner ? (size - inner) / (half - inner) : 0;
  return Math.sign(w) * (innerAfter + share * (halfAfter - innerAfter));
}

/**
 * An outline as it is with other sizes.
 *
 * @param polyline (w, r) of the last answer, mm
 * @param boreRadius mm
 */
export function movedOutline(
  polyline: readonly Point2[],
  boreRadius: number,
  before: SectionNumbers,
  after: SectionNumbers,
): Point2[] {
  const [from, to] = [surfacesOf(before), surfacesOf(after)];
  return polyline.map(([w, r]): Point2 => {
    const moved = movedAcross(w, before, after);
    const height = r - boreRadius;
    let nearest = Number.POSITIVE_INFINITY;
    let by = 0;
    from.forEach((surface, i) => {
      const old = surface(w);
      const now = to[i](moved);
      if (old === undefined || now === undefined || Math.abs(height - old) >= nearest) return;
      nearest = Math.abs(height - old);
      by = now - old;
    });
    return [moved, r + by];
  });
}
