/**
 * What is told, drawn and written of a ring.
 */

import { holdRounded } from "../../casting/hold-rounded.js";
import { materialsOf } from "../../design/materials.js";
import { rulesOf } from "../../design/own-rules.js";
import type { PrintSettings } from "../../design/print-settings.js";
import type { RuleSet } from "../../design/rules/rule-set.js";
import { reportMarks } from "../../marks/mark-report.js";
import type { Alloy } from "../../measure/alloys/alloy.js";
import { findAlloy } from "../../measure/alloys/catalogue.js";
import { type Look, lookOf } from "../../measure/alloys/look.js";
import { massOf } from "../../measure/mass.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Turned } from "../../mesh/turned.js";
import { type DrawnTile, drawFlatTile, drawLanes, type LaneTiles } from "../../output/drawing/drawn-tile.js";
import { knownBand } from "../../output/picture/known/known-band.js";
import { knownBeads } from "../../output/picture/known/known-beads.js";
import { knownDomes } from "../../output/picture/known/known-domes.js";
import { knownFilling } from "../../output/picture/known/known-filling.js";
import { knownLevels } from "../../output/picture/known/known-levels.js";
import { firstOf } from "../../output/picture/known/known-surface.js";
import { openStudioOf, type Picture, type Studio } from "../../output/picture/picture.js";
import { printFigures as figuresOf, type PrintFigures } from "../../output/print/figures.js";
import { layDown } from "../../output/print/lay-down.js";
import { printSettings as settingsOf } from "../../output/print/settings.js";
import { bandSizes } from "../../output/report/band-sizes.js";
import { noticesOf } from "../../output/report/notices.js";
import type { Facts } from "../../output/report/report.js";
import type { SheetPicture } from "../../output/sheet/sheet.js";
import { shownStones } from "../../output/stones/shown-stone.js";
import { detailLevels } from "../../solids/detail.js";
import { reportStones } from "../../stones/stone-report.js";
import type { From, OfDesign, OfOption } from "../answers.js";
import type { Tools } from "../stage.js";
import { takeSheetPictures } from "./sheet-pictures.js";

export function printSettings({ design, option }: OfDesign<"print"> & OfOption<"print">): PrintSettings {
  return settingsOf(option.print, settingsOf(design.print));
}

/** Nothing but its warnings: what no single stage before could say. */
export function notices({ size, profile, union }: From<"size" | "profile" | "union">, { warn }: Tools): undefined {
  for (const notice of noticesOf({ size, profile, union })) warn(notice);
}

/** What the ring is weighed in. */
export function metal({ design }: OfDesign<"alloys" | "material">): Alloy {
  return findAlloy(design.material, { alloys: materialsOf(design) });
}

export function facts(
  from: OfDesign<"name" | "material" | "profile" | "lettering" | "hallmark"> &
    OfOption<"detail"> &
    From<"marks"> &
    From<"size" | "fit" | "width" | "beads" | "headroom" | "union" | "thinned" | "genus" | "gate" | "measure"> &
    From<"profile" | "outermost" | "metal" | "stretch" | "stones">,
): Facts {
  const { design, option, size, fit, width, headroom, union, thinned, genus, gate, measure, metal, stretch } = from;
  const { decimation } = thinned;
  return {
    ...{ design, detail: option.detail, size, fit, headroom, union, decimation, check: gate, measure },
    band: bandSizes({ ...design.profile, width }, from.profile, from.outermost),
    genusExpected: genus,
    lambda: stretch,
    runs: from.beads.reports,
    stones: reportStones(from.stones),
    marks: reportMarks(design, from.marks),
    mass: massOf(measure.volume, metal),
  };
}

/** The set that the design is judged by: the one asked for, or the design's; its own limits stand above those of a named one. */
export function rules({ design, option }: OfDesign<"rules"> & OfOption<"rules">): RuleSet {
  return typeof option.rules === "object" ? option.rules : rulesOf(design.rules, option.rules);
}

type TileSource = OfDesign<"name" | "pattern"> & From<"size" | "fit" | "profile" | "pattern" | "wrap" | "beads">;

export function tile(from: TileSource & OfOption<"tile">): DrawnTile {
  return drawFlatTile(from, from.option.tile);
}

export function laneTiles(from: TileSource): readonly LaneTiles[] {
  return from.fit === undefined ? [] : drawLanes(from);
}

/** As it is written. Turned, its points round to others in float32 than those that passed the gate before. */
export function printed({ printSettings, piece }: From<"printSettings" | "piece">): Mesh {
  const turned = layDown(piece, printSettings);
  return turned === piece ? turned : holdRounded(turned);
}

export function printFigures({
  printSettings,
  printed,
  pieceTurned,
}: From<"printSettings" | "printed" | "pieceTurned">): PrintFigures {
  return figuresOf(printed, printSettings, ofMesh(printed, pieceTurned));
}

/** What was seen of a mesh, where it is still that mesh. */
export function ofMesh(mesh: Mesh, turned: Turned | undefined): Turned | undefined {
  return turned?.mesh === mesh ? turned : undefined;
}

/** Of the finished piece with its stones, with what is known of its surfaces. */
export function studio({
  option,
  bodyTolerance,
  profile,
  pattern,
  wrap,
  parts,
  stones,
  solid,
}: OfOption<"detail"> & From<"bodyTolerance" | "profile" | "pattern" | "wrap" | "parts" | "stones" | "solid">): Studio {
  const known = [
    knownBand(profile, bodyTolerance),
    firstOf(
      knownFilling(pattern, wrap, bodyTolerance),
      firstOf(knownDomes(pattern, wrap, bodyTolerance), knownLevels(pattern, wrap, bodyTolerance)),
    ),
    knownBeads(parts.spheres, detailLevels[option.detail].bead, bodyTolerance),
  ];
  return openStudioOf(solid, known, shownStones(stones));
}

export function look({ metal }: From<"metal">): Look {
  return lookOf(metal);
}

export function picture({ option, studio, look }: OfOption<"picture"> & From<"studio" | "look">): Picture {
  return studio({ ...option.picture, material: option.picture.material ?? look });
}

export function sheetPictures({
  option,
  studio,
  look,
}: OfOption<"pictureWidth"> & From<"studio" | "look">): readonly SheetPicture[] {
  return takeSheetPictures(studio, look, option.pictureWidth);
}
