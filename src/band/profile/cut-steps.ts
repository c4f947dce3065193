/**
 * A step cut along both edges of an outside, whatever its form: from each side a level ledge, then a wall up to what the form
 * draws there.
 */
import { reverseSegment, type Segment, segmentEnd, segmentStart } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import type { StepSpec } from "../../design/profile/step.js";
import type { Frame, OutsideLink, OutsideSketch } from "./form.js";
import { LEAST_SEAT } from "./least-sizes.js";
import { Misfit } from "./misfit.js";
import { splitAtW } from "./split.js";

/**
 * The outside with its steps.
 *
 * @throws Misfit `step-too-wide` where steps do not end on the curves that lead to the sides
 */
export function cutSteps(sketch: OutsideSketch, { width, depth, edge }: StepSpec, { halfWidth }: Frame): OutsideSketch {
  const half = halfWidth - width;
  if (2 * half < LEAST_SEAT) throw tooWide();
  const { links } = sketch;
  const corner = { round: edge, cornerOf: "step" } as const;
  const right = cutAt(links[0].segment, half);
  const inner: OutsideLink[] = [{ ...links[0], segment: right }, ...links.slice(1)];
  const last = inner[inner.length - 1];
  const left = reverseSegment(cutAt(reverseSegment(last.segment), -half));
  inner[inner.length - 1] = { ...last, ...corner, segment: left, runsOn: false };
  const line = (from: Point2, to: Point2, rest: Partial<OutsideLink> = {}): OutsideLink => ({
    segment: { kind: "line", from, to },
    ...corner,
    ...rest,
  });
  const [start, end] = [segmentStart(right), segmentEnd(left)];
  const high = Math.min(start[1], segmentStart(links[0].segment)[1]) - depth;
  const low = Math.min(end[1], segmentEnd(links[links.length - 1].segment)[1]) - depth;
  return {
    ...sketch,
    edge,
    edgeField: "step.edge",
    links: [
      line([halfWidth, high], [half, high], { ledge: true }),
      line([half, high], start),
      ...inner,
      line(end, [-half, low]),
      line([-half, low], [-halfWidth, low], { ledge: true }),
    ],
  };
}

/** What of a curve that begins at the band's side lies within w. */
function cutAt(segment: Segment, w: number): Segment {
  const [, within] = splitAtW(segment, w) ?? [];
  if (within === undefined) throw tooWide();
  return within;
}

function tooWide(): Misfit {
  return new Misfit("step-too-wide", "the steps reach beyond the curve of the outside that they are cut into", [
    "step.width",
  ]);
}
