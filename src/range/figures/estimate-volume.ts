/**
 * The volume of a ring before it is made: the bare band's by its exact section, and what is drawn on it.
 *
 * What is drawn is measured once for all variants that carry the same art, on the columns by which rings are proved, and counts
 * in proportion to the seat's area. So it is exact in the band, and off where art does not grow with its tile: lettering, and
 * widths and heights in mm.
 */
import { makeBand } from "../../band/make-band.js";
import { bandVolume, meanSeatRadius } from "../../band/profile/moments.js";
import { buildOutline } from "../../band/profile/outline.js";
import { taperOf } from "../../band/taper.js";
import { canonicalText } from "../../base/canonical.js";
import { AnnuletError } from "../../base/errors.js";
import type { FileSource } from "../../base/files.js";
import { TURN } from "../../base/units.js";
import type { Design } from "../../design/schema.js";
import { type DrawnVolume, drawnVolume } from "../../judge/proof/prove.js";
import { openInside } from "../../ring/open-ring.js";
import { detailLevels } from "../../solids/detail.js";
import type { FittedBand } from "./fit-variant.js";

/** Arts that are measured, each some tenths of a second; further ones count like the first. Chosen. */
const MOST_ARTS = 16;

/** Sections of a band that tapers, evenly round it. */
const SECTIONS = 24;

/** mm³ of metal that art adds to each mm² of its seat. */
type Thickness = number;

export class VolumeEstimate {
  readonly #files: FileSource;
  readonly #arts = new Map<string, Art>();
  readonly #bands = new Map<string, BareBand>();

  /** @param files that the designs name */
  constructor(files: FileSource) {
    this.#files = files;
  }

  /** Variants whose art counts like another's, since it could not be measured, or there were too many. */
  unmeasured = 0;

  /** mm³ of the finished ring. @throws AnnuletError what is wrong with the art, when it is first measured; the signal's reason */
  async of(design: Design, fitted: FittedBand, signal?: AbortSignal): Promise<number> {
    const band = this.#band(design, fitted);
    if (design.pattern === undefined && design.beads.length + design.lettering.length === 0) return band.volume;
    return band.volume + band.seat * (await this.#thickness(design, band, signal));
  }

  #band(design: Design, { fit, boreRadius }: FittedBand): BareBand {
    const width = fit?.bandWidth ?? design.profile.width;
    const key = canonicalText([boreRadius, width, design.profile, design.tolerance]);
    const known = this.#bands.get(key);
    if (known !== undefined) return known;
    const band = bareBand(design, width, boreRadius);
    if (this.#bands.size >= MOST_BANDS) this.#bands.clear();
    this.#bands.set(key, band);
    return band;
  }

  async #thickness(design: Design, band: BareBand, signal: AbortSignal | undefined): Promise<Thickness> {
    const key = artKey(design);
    const art = this.#arts.get(key) ?? { thickness: undefined, failures: new Map<BareBand, AnnuletError>() };
    if (art.thickness !== undefined) return art.thickness;
    const failure = art.failures.get(band);
    if (failure !== undefined) throw failure;
    if (this.#arts.size >= MOST_ARTS || art.failures.size >= MOST_FAILURES) {
      this.unmeasured++;
      return [...this.#arts.values()].find(({ thickness }) => thickness !== undefined)?.thickness ?? 0;
    }
    this.#arts.set(key, art);
    try {
      const { added } = await measureArt(design, this.#files, signal);
      art.thickness = added / band.seat;
      return art.thickness;
    } catch (error) {
      signal?.throwIfAborted();
      if (error instanceof AnnuletError) art.failures.set(band, error);
      throw error;
    }
  }
}

/** What is drawn on a band, however often it repeats. */
function artKey({ pattern, beads, lettering, hallmark }: Design): string {
  return canonicalText([
    pattern && { ...pattern, fit: { ...pattern.fit, repeats: undefined } },
    beads,
    lettering,
    hallmark,
  ]);
}

/** Art that could not be drawn on so many bands is not tried any more. Chosen. */
const MOST_FAILURES = 8;

/** What is known of one art. */
interface Art {
  thickness: Thickness | undefined;
  /** Bands on which it cannot be drawn. */
  readonly failures: Map<BareBand, AnnuletError>;
}

/** Bands that are remembered. Chosen. */
const MOST_BANDS = 4096;

/** Of the band without anything on it. */
interface BareBand {
  /** mm³ */
  readonly volume: number;
  /** Area of the seat, mm². */
  readonly seat: number;
}

function bareBand({ profile, tolerance }: Design, width: number, boreRadius: number): BareBand {
  const spec = { ...profile, width };
  const outline = buildOutline(spec, boreRadius, tolerance);
  const seat = TURN * meanSeatRadius(outline) * outline.seatLength;
  if (taperOf(spec) === undefined) return { volume: bandVolume(outline), seat };
  const band = makeBand(spec, boreRadius, tolerance);
  const angles = Array.from({ length: SECTIONS }, (_, i) => (TURN * i) / SECTIONS);
  const sum = angles.reduce((total, angle) => total + bandVolume(band.sectionAt(angle)), 0);
  return { volume: sum / SECTIONS, seat };
}

async function measureArt(design: Design, files: FileSource, signal: AbortSignal | undefined): Promise<DrawnVolume> {
  const ring = openInside(design, { files });
  const { answers } = await ring.ask(["profile", "wrap", "pattern", "marks", "beads"], { signal });
  const { profile, wrap, pattern, marks, beads } = answers;
  const { tolerance } = design;
  const { bead: beadDeviation } = detailLevels.full;
  return drawnVolume({ band: profile, wrap, pattern, marks, beads: beads.beads, tolerance, beadDeviation });
}
