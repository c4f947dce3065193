/**
 * Puts the bench sheet together from what was worked out for it.
 */
import { sha256 } from "../../base/sha256.js";
import type { Design } from "../../design/schema.js";
import { stackFigures } from "../../output/drawing/figure.js";
import type { Report } from "../../output/report/report.js";
import { makeSheet, type SheetContent, sheetFigures } from "../../output/sheet/sheet.js";
import type { Answers } from "../answers.js";

/** A bench sheet. */
export interface BenchSheet {
  /** The whole sheet: one HTML file that needs nothing else. */
  readonly html: string;
  /** The drawings alone: SVG whose unit is a millimetre. */
  readonly drawings: string;
  readonly report: Report;
}

/** What a sheet is put together from. */
export interface SheetSource
  extends Pick<Answers, "profile" | "wrap" | "stones" | "rules" | "judgement" | "laneTiles" | "sheetPictures"> {
  readonly report: Report;
  readonly design: Design;
  /** The document. */
  readonly text: string;
  /** Program and version for the sheet's foot. */
  readonly tool: string;
}

export function putSheet(source: SheetSource): BenchSheet {
  const { report, design, tool, profile, wrap, stones, rules, judgement, laneTiles, sheetPictures, text } = source;
  const content: SheetContent = {
    report,
    design,
    tool,
    profile,
    wrap,
    stones,
    check: { ...judgement, rules },
    tiles: laneTiles.flatMap(({ tile, others }) => [tile, ...others]),
    unrolled: laneTiles.map(({ unrolled }) => unrolled),
    pictures: sheetPictures,
    digest: sha256(text),
  };
  return { html: makeSheet(content), drawings: stackFigures(sheetFigures(content), report.name), report };
}
