/**
 * The flat half: profile → pattern → wrap → marks, stage by stage.
 */
import { drawingNames } from "../../art/drawing-names.js";
import { type ImageRegions, loadImages } from "../../art/image/load-images.js";
import type { Picture } from "../../art/image/read-picture.js";
import type { SvgName } from "../../art/shapes/svg-names.js";
import type { Drawing } from "../../art/svg/drawing.js";
import { loadDrawings } from "../../art/svg/load-drawings.js";
import { type FontUse, loadFonts } from "../../art/text/load-fonts.js";
import { textDrawings, textFonts } from "../../art/text/text-art.js";
import type { Typeface } from "../../art/text/typeface.js";
import type { Band } from "../../band/band.js";
import { makeBand } from "../../band/make-band.js";
import { seatLengths } from "../../band/seat-lengths.js";
import { measureStretch, type StretchReport } from "../../band/surface/stretch.js";
import type { BandSurface } from "../../band/surface/surface.js";
import { wrapSeat } from "../../band/surface/wrap-seat.js";
import { about } from "../../base/memory.js";
import { followsTile } from "../../beads/bead-lines.js";
import { regionLists } from "../../design/areas.js";
import { fontsOf, type Marks, makeMarks } from "../../marks/marks.js";
import { fillPlain } from "../../pattern/fill-plain.js";
import type { Pattern } from "../../pattern/laid-out.js";
import { liftPattern } from "../../pattern/lift-pattern.js";
import { completePattern, noPattern, type TileRunList } from "../../pattern/pattern.js";
import type { FlatBody } from "../../relief/flat-body.js";
import { detailLevels } from "../../solids/detail.js";
import { ACROSS_SHARE } from "../../solids/facet-counts.js";
import type { From, OfDesign, OfOption, SeatFacts } from "../answers.js";
import type { Tools } from "../stage.js";
import { type FileContents, takeFiles } from "./file-contents.js";

export function profile({
  design,
  boreRadius,
  width,
}: OfDesign<"profile" | "tolerance"> & From<"boreRadius" | "width">): Band {
  return makeBand({ ...design.profile, width }, boreRadius, design.tolerance * ACROSS_SHARE);
}

/** What of the band the flat pattern depends on. */
export function seat({ design, keepsSize, profile }: OfDesign<"tolerance"> & From<"keepsSize" | "profile">): SeatFacts {
  const { seatLength, rails, revolved } = profile;
  const keeps = keepsSize && !revolved;
  return {
    seatLength,
    rails: rails && { root: rails.root, width: rails.width },
    lengths: keeps ? seatLengths(profile, design.tolerance) : undefined,
  };
}

/** Fonts of lettering and of texts in the pattern. */
export function fontUses({ design: { lettering, pattern } }: OfDesign<"lettering" | "pattern">): FontUse[] {
  return [...fontsOf(lettering), ...textFonts(pattern === undefined ? [] : regionLists(pattern))];
}

export function fontFiles({ fontUses, option }: From<"fontUses"> & OfOption<"files">): Promise<FileContents> {
  return takeFiles(
    fontUses.map(({ name }) => name),
    option.files,
  );
}

export function fonts({ fontUses, fontFiles }: From<"fontUses" | "fontFiles">): Promise<ReadonlyMap<string, Typeface>> {
  return loadFonts(fontUses, fontFiles.source);
}

/** SVG drawings of the pattern, and of bead runs and rows of stones in its tiles. */
export function drawingUses({
  design: { pattern, beads, stones },
}: OfDesign<"pattern" | "beads" | "stones">): SvgName[] {
  return pattern === undefined ? [] : drawingNames(pattern, beads, stones);
}

export function drawingFiles({ drawingUses, option }: From<"drawingUses"> & OfOption<"files">): Promise<FileContents> {
  return takeFiles(
    drawingUses.map(({ name }) => name),
    option.files,
  );
}

export function drawings(
  { drawingUses, drawingFiles }: From<"drawingUses" | "drawingFiles">,
  { warn }: Tools,
): Promise<ReadonlyMap<string, Drawing>> {
  return loadDrawings(drawingUses, drawingFiles.source, warn);
}

/** Images of the pattern's regions, region by region. */
export function imageUses({ design: { pattern } }: OfDesign<"pattern">): ImageRegions[] {
  const lists = pattern === undefined ? [] : regionLists(pattern);
  return lists.map(({ regions, where }) => ({ where, regions: regions.map(({ image }) => ({ image })) }));
}

export function imageFiles({ imageUses, option }: From<"imageUses"> & OfOption<"files">): Promise<FileContents> {
  const names = imageUses.flatMap(({ regions }) => regions.flatMap(({ image }) => image ?? []));
  return takeFiles(names, option.files);
}

export function images({
  imageUses,
  imageFiles,
}: From<"imageUses" | "imageFiles">): Promise<ReadonlyMap<string, Picture>> {
  return loadImages(imageUses, imageFiles.source);
}

/** The bead runs that follow a tile, at their places in the list. */
export function tileRuns({ design }: OfDesign<"beads">): TileRunList {
  return design.beads.map((run) => (followsTile(run.along) ? run : undefined));
}

/** Largest chordal deviation of bodies, mm: that of the design, or of a draft. */
export function bodyTolerance({ design, option }: OfDesign<"tolerance"> & OfOption<"detail">): number {
  return Math.max(design.tolerance, detailLevels[option.detail].tolerance);
}

/** Steps that are told of a region while it is drawn and raised, about: 3 where its top is flat, 50 where it is a dome. */
const STEPS_OF_REGION = 12;

/** As drawn: its regions completed on the seat. */
export function drawnPattern(
  from: OfDesign<"pattern" | "tolerance"> &
    From<"bodyTolerance" | "fit" | "seat" | "fonts" | "drawings" | "images" | "tileRuns">,
  tools: Tools,
): Pattern | Promise<Pattern> {
  const { design, bodyTolerance, fit, seat, fonts, images, tileRuns } = from;
  const { pattern, tolerance } = design;
  if (pattern === undefined || fit === undefined) return noPattern(tileRuns);
  const regions = regionLists(pattern).reduce((sum, list) => sum + list.regions.length, 0);
  tools.work.expect(STEPS_OF_REGION * Math.max(regions, 1));
  const drawings = new Map([...from.drawings, ...textDrawings(regionLists(pattern), fonts)]);
  const pausing = completePattern(pattern, tileRuns, fit, {
    profile: seat,
    tolerance,
    bodyTolerance,
    warn: tools.warn,
    work: tools.work,
    remember: about(tools.remember, [tolerance, bodyTolerance], [from.drawings, fonts]),
    drawings,
    images,
  });
  return tools.work.through(pausing);
}

/** The plain zone as one body, where it is filled. */
export function filling({
  design,
  bodyTolerance,
  fit,
  profile,
  seat,
}: OfDesign<"pattern"> & From<"bodyTolerance" | "fit" | "profile" | "seat">): FlatBody | undefined {
  const { pattern } = design;
  const keeps = seat.lengths !== undefined;
  return pattern && fit && fillPlain(pattern, fit, { band: profile, keeps, tolerance: bodyTolerance });
}

/** The relief lifted; the filling, which goes up to the rails, with them. */
export function pattern({
  design,
  drawnPattern,
  filling,
}: OfDesign<"lift"> & From<"drawnPattern" | "filling">): Pattern {
  const lifted = liftPattern(drawnPattern, design.lift);
  return filling === undefined ? lifted : { ...lifted, bodies: [...lifted.bodies, filling] };
}

/** Whether something stands on the seat, or is cut into it. */
export function seatCarries({ design, pattern }: OfDesign<"lettering" | "hallmark"> & From<"pattern">): boolean {
  if (pattern.bodies.length > 0) return true;
  const { lettering, hallmark } = design;
  return [...lettering, ...(hallmark ? [hallmark] : [])].some(({ at }) => at === "seat");
}

export function wrap({
  profile,
  fit,
  seat,
  seatCarries,
}: From<"profile" | "fit" | "seat" | "seatCarries">): BandSurface {
  return wrapSeat(profile, fit, seatCarries, seat.lengths !== undefined);
}

export function marks(
  from: OfDesign<"lettering" | "hallmark" | "tolerance"> & From<"profile" | "fonts" | "wrap">,
  { warn, work }: Tools,
): Promise<Marks> {
  const { design, profile, fonts, wrap } = from;
  const { tolerance } = design;
  return work.through(makeMarks(design, { profile, startAngle: wrap.startAngle, fonts, tolerance, warn }));
}

/** λu on the seat and at the relief's top. */
export function stretch({ pattern, wrap }: From<"pattern" | "wrap">, { remember }: Tools): StretchReport {
  const { height } = pattern;
  return remember(["stretch", height], [wrap], () => measureStretch(wrap, height));
}
