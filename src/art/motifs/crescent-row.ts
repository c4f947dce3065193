/**
 * Crescents that open along the band, one behind the other.
 *
 * The hollow is the circle through the ends of both horns and the point `thickness` inside the back:
 * its middle is at (p² − q²) / (2 (q + pₓ)) with horn p and q = radius − thickness.
 */
import { crescentRowMotif } from "../../design/motifs/crescent-row.js";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { repeat } from "./outlines.js";

/** Width of the horns' ends, share of the tile's width. */
const HORN = 0.06;

/** Crescents keep this much clear of the next, share of the tile's width. */
const CLEAR = LEAST_DETAIL + 0.01;

/** Thickness of backs that lie in each other is a share of at most this share of the room that each has. */
const NESTED = 0.75;

/** x of the horns' ends over the radius, at most: horns that go further round close to a ring. */
const FARTHEST = 0.6;

export const crescentRow: Motif<typeof crescentRowMotif> = {
  ...crescentRowMotif,
  draw({ crescents, size, thickness }, { aspect }) {
    const pitch = 1 / crescents;
    const radius = (size * aspect) / 2;
    // The horn's end lies where it is as far as that from the next crescent's back (law of cosines).
    const cos = Math.min(FARTHEST, (pitch ** 2 - 2 * radius * CLEAR - CLEAR ** 2) / (2 * radius * pitch));
    const sin = Math.sqrt(1 - cos ** 2);
    const [px, py] = [(radius - HORN) * cos, (radius - HORN) * sin];
    const q = radius - thickness * Math.min(radius, NESTED * pitch);
    const middle = (px ** 2 + py ** 2 - q ** 2) / (2 * (q + px));
    const back = `A ${radius} ${radius} 0 ${cos > 0 ? 1 : 0} 0`;
    const hollow = `A ${q + middle} ${q + middle} 0 ${px > middle ? 1 : 0} 1`;
    const end = `A ${HORN / 2} ${HORN / 2} 0 0 0`;
    const one = (x: number) =>
      `M ${x + radius * cos} ${radius * sin} ${end} ${x + px} ${py} ${hollow} ${x + px} ${-py} ${end} ${x + radius * cos} ${-radius * sin} ${back} ${x + radius * cos} ${radius * sin} Z`;
    return { path: repeat(crescents, (i) => one((i + 0.5) * pitch)) };
  },
};
