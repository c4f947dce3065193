/**
 * A chain: links seen from the front and from the side by turns.
 */
import { chainMotif } from "../../design/motifs/chain.js";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { oval, rod } from "./outlines.js";

export const chain: Motif<typeof chainMotif> = {
  ...chainMotif,
  draw({ line, length, height }, { aspect }) {
    const [rx, ry] = [length / 2, (height * aspect) / 2];
    const front = {
      difference: [{ path: oval([0.5, 0], rx, ry) }, { path: oval([0.5, 0], rx - line, ry - line) }],
    };
    // The link between reaches through the bend, and shows its round end inside.
    const end = 0.5 - rx + line + LEAST_DETAIL;
    return { union: [front, { path: rod([-end, 0], [end, 0], line) }] };
  },
};
