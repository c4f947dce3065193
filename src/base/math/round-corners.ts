/**
 * Rounds the corners of a closed chain of lines and arcs with true tangent fillets.
 */
import { type Arc, type Segment, segmentLength, trimSegment } from "./curve.js";
import { type Fillet, filletBetween, ON_SEGMENT, SMOOTH_TURN, turnBetween } from "./fillet.js";

/** One segment of a closed chain and the corner at its end. */
export interface Link {
  readonly segment: Segment;
  /** Fillet radius of the corner between this segment and the next, mm; 0 leaves it as it is. */
  readonly round: number;
  /** Whether it and the next are pieces of one smooth curve, so that a fillet may pass over the joint. Default no. */
  readonly runsOn?: boolean;
}

/** What is left of a link. */
export interface RoundedLink {
  /** The segment between the fillets; undefined where they meet and use it up. */
  readonly body: Segment | undefined;
  /** mm that the fillets took off its start and its end. */
  readonly trims: readonly [start: number, end: number];
  /** The fillet after it; undefined where the corner is left or smooth already. */
  readonly fillet: Arc | undefined;
  /** Index of the link at which that fillet ends. */
  readonly filletTo: number;
}

/** The links with their fillets, or the index of the link whose corner does not take its radius. */
export type Rounding =
  | { readonly fits: true; readonly links: readonly RoundedLink[] }
  | { readonly fits: false; readonly corner: number };

/** Puts every fillet in. Each must end inside its two segments, and two on one segment must not overlap. */
export function roundCorners(chain: readonly Link[]): Rounding {
  const count = chain.length;
  const lengths = chain.map(({ segment }) => segmentLength(segment));
  const trims = chain.map((): [number, number] => [0, 0]);
  const fillets: (Fillet | undefined)[] = new Array(count).fill(undefined);
  const targets = chain.map((_, i) => (i + 1) % count);
  const corners: number[][] = chain.map(() => []);
  for (let i = 0; i < count; i++) {
    const { round, segment } = chain[i];
    if (round === 0 || Math.abs(turnBetween(segment, chain[(i + 1) % count].segment)) < SMOOTH_TURN) continue;
    const placed = placeFillet(chain, i);
    if (placed === undefined) return { fits: false, corner: i };
    const { from, to, fillet } = placed;
    fillets[from] = fillet;
    targets[from] = to;
    trims[from][1] += Math.max(fillet.trimFirst, 0);
    trims[to][0] += Math.max(fillet.trimSecond, 0);
    corners[from].push(i);
    corners[to].push(i);
    for (let j = (from + 1) % count; j !== to; j = (j + 1) % count) {
      trims[j][1] += lengths[j];
      corners[j].push(i);
    }
  }
  const links: RoundedLink[] = [];
  for (let i = 0; i < count; i++) {
    const left = lengths[i] - trims[i][0] - trims[i][1];
    if (left < -ON_SEGMENT) {
      return { fits: false, corner: corners[i].reduce((a, b) => (chain[b].round > chain[a].round ? b : a)) };
    }
    links.push({
      body: left > ON_SEGMENT ? trimSegment(chain[i].segment, ...trims[i]) : undefined,
      trims: trims[i],
      fillet: fillets[i]?.arc,
      filletTo: targets[i],
    });
  }
  return { fits: true, links };
}

interface PlacedFillet {
  readonly from: number;
  readonly to: number;
  readonly fillet: Fillet;
}

/** The fillet of the corner after link `i`, passing over as few pieces of smooth curves as it can. */
function placeFillet(chain: readonly Link[], i: number): PlacedFillet | undefined {
  const count = chain.length;
  const backs = [i];
  while (backs.length < count && chain[before(backs[backs.length - 1], count)].runsOn) {
    backs.push(before(backs[backs.length - 1], count));
  }
  const fronts = [(i + 1) % count];
  while (fronts.length < count && chain[fronts[fronts.length - 1]].runsOn) {
    fronts.push((fronts[fronts.length - 1] + 1) % count);
  }
  const side = Math.sign(turnBetween(chain[i].segment, chain[fronts[0]].segment));
  for (let passed = 0; passed <= backs.length + fronts.length - 2; passed++) {
    for (let back = Math.max(0, passed - fronts.length + 1); back <= Math.min(passed, backs.length - 1); back++) {
      const [from, to] = [backs[back], fronts[passed - back]];
      const fillet = filletBetween(chain[from].segment, chain[to].segment, chain[i].round, side);
      if (fillet !== undefined) return { from, to, fillet };
    }
  }
  return undefined;
}

function before(i: number, count: number): number {
  return (i + count - 1) % count;
}
