/**
 * Findings on the unrolled band, as SVG: the whole circumference laid flat in rows beneath each other, each finding's places
 * ringed and numbered, and the list of findings beneath.
 */

import type { Point2 } from "../../base/math/point.js";
import type { UnrolledBand } from "../../judge/details/unrolled-band.js";
import type { Finding } from "../../judge/finding.js";
import { bandRow, type RingedPlace } from "./band-row.js";
import { group, svgDocument } from "./svg.js";
import { charactersIn, SIZES, textAt, wrapText } from "./svg-text.js";

export interface FindingsDrawing {
  readonly name: string;
  readonly rules: { readonly name: string; readonly summary: string };
  readonly findings: readonly Finding[];
  readonly band: UnrolledBand;
}

/** Lengths of the sheet, mm. */
const MARGIN = 8;
const ROW_GAP = 9;

/** The band is cut into so many rows, drawn so many times as large: details are a few tenths of a millimetre. */
const ROWS = 2;
const SCALE = 4;

/** The sheet is at least this wide inside its margins, so that the list reads well, mm. */
const LEAST_WIDTH = 136;

/** From line to line, in font sizes. */
const LINE = 1.45;

/** Draws findings; the text of an SVG file. */
export function drawFindings({ name, rules, findings, band }: FindingsDrawing): string {
  const stretch = band.around / ROWS;
  const height = SCALE * band.seatLength;
  const width = Math.max(LEAST_WIDTH, SCALE * stretch);
  let y = MARGIN;
  const put = (text: string, size: number, bold = false) =>
    wrapText(text, charactersIn(width, size)).map((line) => {
      y += LINE * size;
      return textAt([MARGIN, y], line, { size, bold });
    });
  const title = [
    ...put(name, SIZES.title, true),
    ...put(`Castability by the rules ${rules.name}: ${rules.summary}`, SIZES.body),
    ...put(
      `The seat unrolled, ${SCALE} times true size; degrees counter-clockwise from +x, 90° is the top`,
      SIZES.body,
    ),
  ];
  const places = placesOf(findings);
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const at: Point2 = [MARGIN, y + ROW_GAP / 2 + height / 2];
    y += height + ROW_GAP;
    return bandRow({ from: i * stretch, to: (i + 1) * stretch, scale: SCALE, at }, i, band, places);
  });
  const list =
    findings.length === 0
      ? put("Every limit is kept.", SIZES.body, true)
      : findings.flatMap(({ severity, message, source }, i) => [
          ...put(`${i + 1}  ${severity}: ${message}`, SIZES.body, severity === "error"),
          ...put(`limit from ${source}`, SIZES.small),
        ]);
  const content = [group("title", ...title), ...rows, group("findings", ...list)];
  return svgDocument(width + 2 * MARGIN, y + MARGIN, name, ...content);
}

/** Places nearer than this are ringed once, degrees and mm. */
const SAME_ANGLE = 0.5;
const SAME_V = 0.1;

/** Every place once, with the numbers of all findings there. */
function placesOf(findings: readonly Finding[]): RingedPlace[] {
  const found: RingedPlace[] = [];
  findings.forEach(({ places, severity }, i) => {
    for (const { angle, v } of places) {
      const number = String(i + 1);
      const grave = severity !== "note";
      const at = found.findIndex((one) => Math.abs(one.angle - angle) < SAME_ANGLE && Math.abs(one.v - v) < SAME_V);
      if (at === -1) found.push({ angle, v, label: number, grave });
      else {
        const { label, ...one } = found[at];
        found[at] = {
          ...one,
          label: label.split(" ").includes(number) ? label : `${label} ${number}`,
          grave: one.grave || grave,
        };
      }
    }
  });
  return found;
}
