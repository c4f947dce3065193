/**
 * The flat half of the pipeline: document → size → fit → profile → pattern → wrap → marks.
 */

import { drawingNames } from "../art/drawing-names.js";
import { loadImages } from "../art/image/load.js";
import { loadDrawings } from "../art/svg/load.js";
import { loadFonts } from "../art/text/load.js";
import { textDrawings, textFonts } from "../art/text/text-art.js";
import { type Band, makeBand } from "../band/band.js";
import type { Fit } from "../band/fit/fit.js";
import { fitBand } from "../band/fit/fit-band.js";
import type { BandSurface } from "../band/surface/surface.js";
import { wrapSeat } from "../band/surface/wrap-seat.js";
import type { FileSource } from "../base/files.js";
import type { Finishing } from "../casting/allowances/allowance.js";
import { asCast } from "../casting/as-cast.js";
import { regionLists } from "../design/areas.js";
import { readDesign } from "../design/read.js";
import type { Design } from "../design/schema.js";
import { fontsOf, type Marks, makeMarks } from "../marks/marks.js";
import type { Pattern } from "../pattern/laid-out.js";
import { liftPattern } from "../pattern/lift.js";
import { completePattern, noPattern } from "../pattern/pattern.js";
import { type ResolvedSize, resolveSize } from "../size/size.js";
import { ACROSS_SHARE } from "../solids/facets.js";
import type { Stages } from "./stages.js";

/** A design laid out flat, with the map that bends it. */
export interface Layout {
  /** The document with its defaults filled in. */
  readonly design: Design;
  readonly size: ResolvedSize;
  /** Undefined where there is no pattern. */
  readonly fit: Fit | undefined;
  /** Band width as built, mm. */
  readonly width: number;
  readonly profile: Band;
  readonly pattern: Pattern;
  readonly wrap: BandSurface;
  readonly marks: Marks;
}

/**
 * Lays a design out.
 *
 * @param document the design document: an object, or JSON text
 * @param files the files that it names
 * @param finishing what finishing takes off, added on: the casting before it is finished; default the finished piece
 * @throws AnnuletError with everything that is wrong in the document
 */
export async function layOut(
  document: unknown,
  stages: Stages,
  files: FileSource = {},
  finishing?: Finishing,
): Promise<Layout> {
  const { warn } = stages;
  const design = await stages.run("document", () => {
    const finished = readDesign(document);
    return finishing === undefined ? finished : asCast(finished, finishing);
  });
  const { tolerance, beads, pattern: art, lettering } = design;
  const size = await stages.run("size", () => resolveSize(design.size));
  const boreRadius = size.diameter / 2;
  const fit = await stages.run("fit", () => fitBand(art, { profile: design.profile, boreRadius, tolerance, warn }));
  const width = fit?.bandWidth ?? design.profile.width;
  const profile = await stages.run("profile", () =>
    makeBand({ ...design.profile, width }, boreRadius, tolerance * ACROSS_SHARE),
  );
  const { pattern, fonts } = await stages.run("pattern", async () => {
    const lists = art === undefined ? [] : regionLists(art);
    const fonts = await loadFonts([...fontsOf(lettering), ...textFonts(lists)], files);
    if (!(art && fit)) return { pattern: noPattern(beads), fonts };
    const svgs = await loadDrawings(drawingNames(art, beads), files, warn);
    const drawings = new Map([...svgs, ...textDrawings(lists, fonts)]);
    const images = await loadImages(lists, files);
    const pattern = completePattern(art, beads, fit, { profile, tolerance, warn, drawings, images });
    return { pattern: liftPattern(pattern, finishing?.relief ?? 0), fonts };
  });
  const carries =
    pattern.bodies.length > 0 ||
    [...lettering, ...(design.hallmark ? [design.hallmark] : [])].some(({ at }) => at === "seat");
  const { wrap, marks } = await stages.run("wrap", () => {
    const wrap = wrapSeat(profile, fit, carries);
    return { wrap, marks: makeMarks(design, { profile, startAngle: wrap.startAngle, fonts, tolerance, warn }) };
  });
  return { design, size, fit, width, profile, pattern, wrap, marks };
}
