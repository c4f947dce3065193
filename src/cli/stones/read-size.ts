/**
 * Sizes of stones as they are typed: 6, 6x4, 4x2x1.5.
 */
import { AnnuletError } from "../../index.js";
import { usage } from "../usage.js";

/** A size, mm; what is not typed is left to the cut. */
export interface TypedSize {
  readonly size?: number;
  readonly width?: number;
  readonly narrow?: number;
}

/** Numbers with x, × or * between. */
const TYPED = /^\s*(\d+(?:\.\d+)?)(?:\s*[x×*]\s*(\d+(?:\.\d+)?))?(?:\s*[x×*]\s*(\d+(?:\.\d+)?))?\s*$/i;

/** @throws AnnuletError `usage` */
export function readSize(text: string | undefined): TypedSize {
  if (text === undefined) return {};
  const found = TYPED.exec(text);
  if (found === null) {
    throw new AnnuletError({
      ...usage("This is no size of a stone."),
      path: "--size",
      value: text,
      allowed: "mm: 6 across, 6x4 length and width, 4x2x1.5 with the narrow end of a tapered baguette",
    });
  }
  const [size, width, narrow] = found.slice(1).map((part) => (part === undefined ? undefined : Number(part)));
  return {
    ...(size === undefined ? {} : { size }),
    ...(width === undefined ? {} : { width }),
    ...(narrow === undefined ? {} : { narrow }),
  };
}
