/**
 * What `annulet make` says of a ring it has made.
 */

import { showBytes } from "../disk/read-file.js";
import type { Fit, Report } from "../index.js";
import { densitySpan, fontOfMark, nameMark, nameStance, placeMark, showGrams, workOfMark } from "../toolbox/index.js";
import type { WrittenFile } from "./output-files.js";
import { fixed, showPairs, signedPercent } from "./show.js";

/** The report as lines for a maker, and the files with their sizes. */
export function describeRing(report: Report, files: readonly WrittenFile[]): string {
  const pairs: (readonly [string, string])[] = [
    ["ring", report.name],
    ["size", describeSize(report)],
    [
      "band",
      `${describeSizes(report.band)}${report.band.taper === undefined ? "" : " at the top"}${describeOverall(report.band)}`,
    ],
    ...(report.band.taper ?? []).map((place): [string, string] => [
      "",
      `${describeSizes(place)} at ${place.angle === BACK ? "the back" : `${fixed(place.angle, 1)}°`}`,
    ]),
    ...describePattern(report),
    ...report.beads.map(({ run, count, spacing, span }): [string, string] => [
      "beads",
      `${run}: ${count}, ${fixed(spacing)} mm apart${span === undefined ? "" : `, from ${fixed(span[0], 1)}° to ${fixed(span[1], 1)}°`}`,
    ]),
    ...report.marks.map((mark): [string, string] => ["mark", describeMark(mark)]),
    ["closed", report.closed ? "yes" : "no"],
    ["triangles", describeTriangles(report)],
    ["volume", `${fixed(report.volume)} mm³, ${fixed(report.proof.volume.expected)} mm³ by the drawing`],
    ...describeRelief(report),
    ...describeSprue(report),
    ["print", describePrint(report)],
    ...Object.entries(report.mass).map(([material, grams]): [string, string] => [
      "mass",
      `${showGrams(grams, densitySpan(report.weights, material))} g in ${material}, finished`,
    ]),
    ...files.map(({ path, size }): [string, string] => ["written", `${path} (${showBytes(size)})`]),
  ];
  return showPairs(pairs);
}

function describeMark(mark: Report["marks"][number]): string {
  const font = fontOfMark(mark);
  const size = `${fixed(mark.height)} mm high, ${fixed(mark.length)} mm long`;
  return `${nameMark(mark)} ${placeMark(mark)}, ${workOfMark(mark)}, ${size}${font === undefined ? "" : `, ${font}`}`;
}

function describeRelief({ proof: { relief } }: Report): [string, string][] {
  if (relief.expected === 0) return [];
  const drawn = `${fixed(relief.expected, 1)} mm² by the drawing`;
  return [["relief", `${fixed(relief.built, 1)} mm² stand higher than half of it, ${drawn}`]];
}

/** Degrees on the ring of its back. */
const BACK = 270;

function describeSizes({ width, thickness }: Pick<Report["band"], "width" | "thickness">): string {
  return `${fixed(width)} mm wide, ${fixed(thickness)} mm thick`;
}

/** What stands above the band by less is not told, mm: half of what is printed. */
const LEVEL = 5e-4;

/** How thick it is with what stands on it, where that is more. */
function describeOverall({ thickness, overall }: Report["band"]): string {
  return overall > thickness + LEVEL ? `; ${fixed(overall)} mm with all that stands on it` : "";
}

function describeTriangles({ triangles, mesh: { decimation } }: Report): string {
  if (decimation === null) return String(triangles);
  return `${triangles} of ${decimation.trianglesBefore}, within ${decimation.deviation.toFixed(4)} mm`;
}

function describeSprue({ sprue, weights }: Report): [string, string][] {
  if (sprue === null) return [];
  const { volume, weight, material, covers } = sprue;
  return [
    [
      "sprue",
      `${fixed(volume)} mm³, ${showGrams(weight, densitySpan(weights, material))} g in ${material}, over ${fixed(covers)} mm of the band; not counted above or below`,
    ],
  ];
}

function describePrint({ print }: Report): string {
  const { height, layer, layers, undersides } = print;
  const steep = `${fixed(undersides.area, 1)} mm² of undersides over ${undersides.support}°`;
  return `${nameStance(print)}, ${fixed(height)} mm high, ${layers} layers of ${fixed(layer)} mm, ${steep}`;
}

function describeSize({ size }: Report): string {
  const bore = `bore ${fixed(size.diameter)} mm, circumference ${fixed(size.circumference)} mm`;
  const charts = size.span === undefined ? "" : ` (in charts ${size.span.map((mm) => fixed(mm, 2)).join(" to ")} mm)`;
  return size.system === undefined ? bore : `${size.system} ${size.label}: ${bore}${charts}`;
}

function describeTiles(
  { repeats, rows, tileWidth, tileHeight, aspectError }: Omit<Fit, "lanes">,
  of: string,
): (readonly [string, string])[] {
  const stretch =
    signedPercent(aspectError) === signedPercent(0) ? "" : `, stretched across by ${signedPercent(aspectError)}`;
  return [
    ["repeats", `${of}${rows === 1 ? repeats : `${repeats} in ${rows} rows`}`],
    ["tile", `${of}${fixed(tileWidth)} × ${fixed(tileHeight)} mm${stretch}`],
  ];
}

function describePattern({ fit, headroom }: Report): (readonly [string, string])[] {
  if (fit === null) return [];
  const { lambda, lanes } = fit;
  const pairs: (readonly [string, string])[] = lanes.length === 0 ? describeTiles(fit, "") : [];
  for (const lane of lanes) pairs.push(...describeTiles(lane, `${lane.name}: `));
  const { edge, crown, topCrown } = lambda;
  const atEdge = fixed(edge.min) === fixed(edge.max) ? fixed(edge.max) : `${fixed(edge.min)} to ${fixed(edge.max)}`;
  pairs.push([
    "λu",
    `${atEdge} at the seat's edge, ${fixed(crown)} at its crown, ${fixed(topCrown)} at the relief's top`,
  ]);
  if (lambda.across !== undefined) {
    pairs.push(["λv", `${fixed(lambda.across.min)} to ${fixed(lambda.across.max)} across the band`]);
  }
  if (headroom !== null) pairs.push(["headroom", `${fixed(headroom)} mm from relief to rail`]);
  return pairs;
}
