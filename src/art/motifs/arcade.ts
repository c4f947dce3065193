/**
 * An arcade: arches side by side on a sill, round or pointed.
 *
 * Each half of an arch is a circle's arc about a point on the springing line; its radius is half the opening for a
 * round arch and the whole of it for an equilateral one.
 */
import { arcadeMotif } from "../../design/motifs/arcade.js";
import type { Motif } from "./motif.js";
import { box, repeat } from "./outlines.js";

/** Height of all, share of the tile's. */
const SPAN = 0.92;

export const arcade: Motif<typeof arcadeMotif> = {
  ...arcadeMotif,
  draw({ arches, line, point }, { aspect }) {
    const [low, top] = [(-SPAN * aspect) / 2, (SPAN * aspect) / 2];
    const half = (1 / arches - line) / 2;
    const radius = half * (1 + point);
    const rise = (more: number) => Math.sqrt((radius + more) ** 2 - (radius - half) ** 2);
    const spring = top - rise(line);
    const arch = (x: number, more: number, foot: number) => {
      const [r, w] = [radius + more, half + more];
      const arc = (toX: number, toY: number) => `A ${r} ${r} 0 0 1 ${toX} ${toY}`;
      const crown = spring + rise(more);
      return `M ${x - w} ${foot} H ${x + w} V ${spring} ${arc(x, crown)} ${arc(x - w, spring)} Z`;
    };
    const all = (more: number, foot: number) => repeat(arches, (i) => arch((i + 0.5) / arches, more, foot));
    // The walls reach into the next tile by half a pier; the openings of both are taken out of both.
    return { difference: [{ path: `${all(line, low)} ${box(0, 1, low, low + line)}` }, { path: all(0, low + line) }] };
  },
};
