/**
 * What the trade says about the feel of wide bands and comfort bores, in the design's own size system. Advice: no size is ever
 * changed for it.
 */
import { AnnuletError, type Warning } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { findSizeSystem } from "./catalogue.js";
import type { ResolvedSize } from "./size.js";
import { SIZE_STEP } from "./us-tables.js";

export interface SizeAdviceOptions {
  /** Width of the band along the finger, mm, above 0. */
  readonly bandWidth: number;
  /** Form of the bore. */
  readonly bore: "flat" | "comfort";
  /** The size as it was given. */
  readonly size: ResolvedSize;
}

/** How many US sizes. */
type Allowance = readonly [least: number, most: number];

/** Widths from which bands are said to fit tighter, mm, widest first, with the usual allowance (retail guides). */
const WIDE_BANDS: readonly { readonly from: number; readonly allowance: Allowance }[] = [
  { from: 8, allowance: [0.5, 1] },
  { from: 5, allowance: [0.25, 0.5] },
];

/** What comfort bores are said to fit looser by (sources conflict). */
const COMFORT: Allowance = [0.25, 0.5];

const HINT = "Try on a sample of the same width and bore.";

/**
 * Notes on how the ring will feel, none for a narrow flat band.
 *
 * @throws AnnuletError `size-advice-width` for a width that is not above 0
 */
export function sizeAdvice({ bandWidth, bore, size }: SizeAdviceOptions): Warning[] {
  if (!(bandWidth > 0 && Number.isFinite(bandWidth))) {
    throw new AnnuletError({
      code: "size-advice-width",
      message: "A band has a width.",
      path: "profile.width",
      value: bandWidth,
      allowed: "a number above 0, mm",
    });
  }
  const advice: Warning[] = [];
  const wide = WIDE_BANDS.find((band) => bandWidth >= band.from);
  if (wide) {
    advice.push({
      code: "size-advice-wide-band",
      message:
        `A band ${showLength(bandWidth)} wide fits tighter: many makers ${inSystem("take", size, wide.allowance, 1)}. ` +
        "Sources disagree on how much; the size was left as it is.",
      path: "profile.width",
      value: bandWidth,
      hint: HINT,
    });
  }
  if (bore === "comfort") {
    advice.push({
      code: "size-advice-comfort-bore",
      message:
        `A comfort bore often fits looser: ${inSystem("like", size, COMFORT, -1)}. ` +
        "Sources disagree on whether and how much; the size was left as it is.",
      path: "profile.bore.form",
      value: bore,
      hint: HINT,
    });
  }
  return advice;
}

/** An allowance as labels of the design's own system; as circumference where it names none, or one without such labels. */
function inSystem(verb: "take" | "like", size: ResolvedSize, allowance: Allowance, sign: 1 | -1): string {
  const [least, most] = allowance.map((sizes) => sizes * Math.PI * SIZE_STEP);
  const round = `${least.toFixed(1)} to ${most.toFixed(1)} mm ${sign > 0 ? "more" : "less"} round the finger`;
  const system = size.system === undefined ? undefined : findKnown(size.system);
  const labels = [least, most].map((length) => system?.labelOf(size.circumference + sign * length));
  const [from, to] = labels;
  if (system === undefined || from === undefined || to === undefined) return `${verb} ${round}`;
  const names = from === to ? from : `${from} to ${to}`;
  const instead = verb === "take" ? ` instead of ${size.label}` : ` and not ${size.label}`;
  return `${verb} ${system.title} ${names}${instead}, ${round}`;
}

/** Systems of the caller's own are not known here. */
function findKnown(name: string) {
  try {
    return findSizeSystem(name);
  } catch (error) {
    if (error instanceof AnnuletError) return undefined;
    throw error;
  }
}
