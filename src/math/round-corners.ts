/**
 * Rounds the corners of a closed chain of lines and arcs with true tangent fillets.
 */
import { type Arc, type Segment, segmentLength, trimSegment } from "./curve.js";
import { filletBetween, ON_SEGMENT, SMOOTH_TURN, turnBetween } from "./fillet.js";

/** One segment of a closed chain and the corner at its end. */
export interface Link {
  readonly segment: Segment;
  /** Fillet radius of the corner between this segment and the next, mm; 0 leaves it as it is. */
  readonly round: number;
}

/** What is left of a link. */
export interface RoundedLink {
  /** The segment between the fillets; undefined where they meet and use it up. */
  readonly body: Segment | undefined;
  /** mm that the fillets took off its start and its end. */
  readonly trims: readonly [start: number, end: number];
  /** The fillet at its end; undefined where the corner is left or smooth already. */
  readonly fillet: Arc | undefined;
}

/** The links with their fillets, or the index of the link whose corner does not take its radius. */
export type Rounding =
  | { readonly fits: true; readonly links: readonly RoundedLink[] }
  | { readonly fits: false; readonly corner: number };

/** Puts every fillet in. Each must end inside its two segments, and two on one segment must not overlap. */
export function roundCorners(chain: readonly Link[]): Rounding {
  const fillets = chain.map((link, i) => {
    const next = chain[(i + 1) % chain.length];
    return link.round === 0 || isSmooth(link.segment, next.segment)
      ? NO_FILLET
      : filletBetween(link.segment, next.segment, link.round);
  });
  const missing = fillets.indexOf(undefined);
  if (missing >= 0) return { fits: false, corner: missing };
  const links: RoundedLink[] = [];
  for (let i = 0; i < chain.length; i++) {
    const before = (i + chain.length - 1) % chain.length;
    const start = Math.max(fillets[before]?.trimSecond ?? 0, 0);
    const end = Math.max(fillets[i]?.trimFirst ?? 0, 0);
    const left = segmentLength(chain[i].segment) - start - end;
    if (left < -ON_SEGMENT) return { fits: false, corner: chain[before].round > chain[i].round ? before : i };
    links.push({
      body: left > ON_SEGMENT ? trimSegment(chain[i].segment, start, end) : undefined,
      trims: [start, end],
      fillet: fillets[i]?.arc,
    });
  }
  return { fits: true, links };
}

const NO_FILLET = { arc: undefined, trimFirst: 0, trimSecond: 0 } as const;

function isSmooth(first: Segment, second: Segment): boolean {
  return Math.abs(turnBetween(first, second)) < SMOOTH_TURN;
}
