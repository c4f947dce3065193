/**
 * The ring that the guide begins with, and what its steps put into it. All sizes chosen: a band that can be worn and cast.
 */
import type { MotifEntry } from "../../index.js";
import { ribbonOf } from "../fields/choose-motif.js";
import { isObject } from "../fields/ways.js";

type Part = Readonly<Record<string, unknown>>;

/** mm. */
const BAND = { width: 6, thickness: 2, rail: 0.8, depth: 0.6 } as const;

/** mm; below the rails, so that they guard it. */
const RELIEF = 0.45;

/** mm; the middle of usual milgrain. */
const BEAD = 0.4;

/** A plain band, with a motif where one is chosen. */
export function firstRing(name: string, motif?: MotifEntry): string {
  const { width, thickness, rail, depth } = BAND;
  const document = {
    annulet: 1,
    name,
    size: { system: "iso", value: "54" },
    profile: { width, thickness, bore: { form: "comfort" }, outside: { form: "channel", rail, depth } },
    ...(motif !== undefined && { pattern: patternOf(motif, width - 2 * rail) }),
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

/**
 * The band keeps its width and the tile takes the motif's natural height over its width.
 *
 * @param seat how wide the pattern is across the band, mm
 */
export function patternOf(motif: MotifEntry, seat: number): Part {
  const { natural } = motif.aspect;
  const ribbon = ribbonOf(motif, seat / natural);
  const region = {
    name: motif.name,
    motif: { name: motif.name },
    ...(ribbon !== undefined && { ribbon }),
    height: RELIEF,
  };
  return { fit: { aspect: natural, hold: "band" }, regions: [region] };
}

/** How wide the pattern is across a band, mm, as near as ribbons need it. */
export function seatOf(profile: unknown): number {
  const { width, outside } = isObject(profile) ? profile : {};
  const wide = typeof width === "number" ? width : BAND.width;
  const { rail = BAND.rail, bevel = 0, form } = (isObject(outside) ? outside : {}) as Part;
  const side = form === "channel" ? Number(rail) : Number(bevel);
  return Math.max(wide - 2 * side, wide / 4);
}

/** The motif that the guide put in; undefined where the band is plain or something else is drawn. */
export function motifIn(document: unknown): string | undefined {
  const { pattern } = isObject(document) ? document : {};
  const { regions } = isObject(pattern) ? pattern : {};
  const [region] = Array.isArray(regions) ? regions : [];
  const { motif } = isObject(region) ? region : {};
  const { name } = isObject(motif) ? motif : {};
  return typeof name === "string" ? name : undefined;
}

/** The run that the guide's switch puts on: on the rails where there are any. */
export function firstBeads(profile: unknown): Part[] {
  const { outside } = isObject(profile) ? profile : {};
  const along = isObject(outside) && outside.form === "channel" ? "rail" : "seat-edge";
  return [{ along, diameter: BEAD }];
}
