/**
 * The notes beneath a tile's drawing: what its marks mean, its measures, beads and stretch.
 */

import { type SymmetryElements, symmetryElements } from "../../base/frieze/symmetry-elements.js";
import type { DrawnTile } from "./drawn-tile.js";
import { fillSample, type LegendBlock, type LegendLine, SYMMETRY_LINES } from "./legend.js";
import { regionKinds } from "./tile-fills.js";

/** The elements to be marked: where tiles vary, none on their borders, since operations then act within each tile. */
export function elementsOf({ group, fit }: DrawnTile): SymmetryElements {
  const elements = symmetryElements(group);
  if (fit.cycle === 1) return elements;
  const inside = (places: readonly number[]) => places.filter((x) => x > 0);
  return { ...elements, mirrors: inside(elements.mirrors), centres: inside(elements.centres) };
}

/** Which marks of symmetry there are. */
export function symmetryBlock(tile: DrawnTile): LegendBlock {
  const { group, fit } = tile;
  const { mirrors, middle, centres } = elementsOf(tile);
  const lines: LegendLine[] = [SYMMETRY_LINES.region];
  if (mirrors.length > 0 || middle === "mirror") lines.push(SYMMETRY_LINES.mirror);
  if (middle === "glide") lines.push(SYMMETRY_LINES.glide);
  if (centres.length > 0) lines.push(SYMMETRY_LINES.centre);
  if (fit.cycle > 1) lines.push({ text: `tiles vary, ${fit.cycle} in a cycle; the symmetry acts within each` });
  return { heading: `Symmetry ${group.name}`, lines };
}

/** What is raised or cut, highest first. */
export function heightBlock({ regions }: DrawnTile): LegendBlock {
  const lines = regionKinds(regions).map(
    ({ names, mode, height, fill }): LegendLine => ({
      text: names.join(", "),
      value: height === undefined ? "through" : `${mode} ${mm(Math.abs(height))}`,
      sample: fillSample({ fill }, true),
    }),
  );
  return { heading: "Regions", lines: lines.length > 0 ? lines : [{ text: "nothing is drawn" }] };
}

/** The flat measures. */
export function measureBlock({ fit, seatLength, lane }: DrawnTile): LegendBlock {
  const lines: LegendLine[] = [
    { text: "tile width, at the reference radius", value: mm(fit.tileWidth) },
    { text: "tile height", value: mm(fit.tileHeight) },
    { text: `${lane === "" ? "seat length" : "lane"} across the band`, value: mm(seatLength) },
    { text: "reference radius R", value: mm(fit.referenceRadius) },
  ];
  return { heading: "Flat measures", lines };
}

/** λu at the places that a maker can measure. */
export function stretchBlock({ lambda, top }: DrawnTile): LegendBlock {
  const { edge } = lambda;
  const atEdge = edge.max - edge.min < SAME_STRETCH ? share(edge.max) : `${share(edge.min)} to ${share(edge.max)}`;
  const raised: LegendLine[] = [
    { text: `relief top over the crown, +${top.height.toFixed(3)} mm`, value: share(lambda.topCrown) },
    { text: "relief top, least and most", value: `${share(lambda.top.min)} to ${share(lambda.top.max)}` },
  ];
  const lines: LegendLine[] = [
    { text: "seat edge, the floor beside a rail", value: atEdge },
    { text: "crown, the seat's middle line", value: share(lambda.crown) },
    ...(top.height > 0 ? raised : []),
  ];
  return { heading: "Stretch along the band λu, 1 is true", lines };
}

/** Below what is printed. */
const SAME_STRETCH = 5e-5;

/** The runs and how many circles stand for them. */
export function beadBlock({ runs, beads, tiles }: DrawnTile): LegendBlock {
  if (runs.length === 0) return { heading: "Beads", lines: [{ text: "no beads" }] };
  const next = beads.filter((bead) => bead.next).length;
  const lines = runs.map(
    ({ run, count, diameter, ratio, onRail }): LegendLine => ({
      text: onRail ? `${run}, not shown` : run,
      value: `${count} × ${diameter.toFixed(2)} mm, ratio ${ratio.toFixed(3)}`,
    }),
  );
  const shown = `${beads.length} circles on ${tiles === 1 ? "the tile" : `${tiles} tiles`}`;
  const shared = next === 0 ? "" : `, ${next} of them on the right border`;
  const rest = next === 0 ? [] : [{ text: "and counted with the tile that follows" }];
  return { heading: "Beads round the whole band", lines: [...lines, { text: `${shown}${shared}` }, ...rest] };
}

function mm(length: number): string {
  return `${length.toFixed(3)} mm`;
}

function share(value: number): string {
  return value.toFixed(4);
}
