/**
 * The closed chain of sharp-cornered segments round the cross-section.
 */
import { segmentEnd, segmentStart } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import type { BoreSketch, OutsideLink, OutsideSketch } from "./form.js";
import { SAME_POINT } from "./least-sizes.js";
import { Misfit } from "./misfit.js";

/** A link with the field that holds its corner's radius, e.g. `outside.edge`. */
export type ChainLink = OutsideLink & { readonly field: string };

/** The closed chain right wall, outside, left wall, bore. A wall without height is left out. */
export function closeChain(bore: BoreSketch, { links, edge, edgeField = "outside.edge" }: OutsideSketch): ChainLink[] {
  const [left, right] = [segmentStart(bore.link.segment), segmentEnd(bore.link.segment)];
  const last = links[links.length - 1];
  const [start, end] = [segmentStart(links[0].segment), segmentEnd(last.segment)];
  const inner = { round: bore.link.round, field: "bore.edge" };
  const outer = { round: edge, field: edgeField };
  const hasRight = isApart(right, start);
  const hasLeft = isApart(end, left);
  if (edge > 0 && !(hasRight && hasLeft)) {
    const message = "where the outside meets the bore without a side wall, the only edge is the bore's";
    throw new Misfit("fillet-too-large", message, [edgeField]);
  }
  const chain: ChainLink[] = [];
  if (hasRight) chain.push({ segment: { kind: "line", from: right, to: start }, ...outer });
  for (const link of links.slice(0, -1)) {
    chain.push({ ...link, field: link.cornerOf === "step" ? "step.edge" : `outside.${link.field ?? "edge"}` });
  }
  chain.push({ ...last, ...(hasLeft ? outer : inner) });
  if (hasLeft) chain.push({ segment: { kind: "line", from: end, to: left }, ...inner });
  chain.push({ segment: bore.link.segment, ...inner });
  return chain;
}

/** Whether two points are further apart than rounding puts them. */
export function isApart(a: Point2, b: Point2): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) > SAME_POINT;
}
