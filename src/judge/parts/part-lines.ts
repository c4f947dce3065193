/**
 * Lines on the ring along the edges of a part of the document: of a region its outline in every copy, of beads a circle round each,
 * of the band the circles at which a part of its cross-section begins and ends.
 */
import { vec3 } from "gl-matrix";
import type { Band } from "../../band/band.js";
import type { Profile } from "../../band/profile/profile.js";
import { partEnds, sectionParts } from "../../band/profile/section-parts.js";
import type { Point2, Point3 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import type { Bead } from "../../beads/bead.js";
import { bandPartsOf, isWithin } from "./band-paths.js";
import { bodyLines, LIFT, regionLines, topOf } from "./body-lines.js";
import type { PartSource } from "./members.js";

/** Corners of the circle round a bead, and of one round the finger. Chosen. */
const BEAD_CORNERS = 16;
const ROUND_CORNERS = 180;

/** Takes a line's points; of a closed one the last is joined to the first. */
type Draw = (points: readonly Point3[], closed: boolean) => void;

/** Segments of a part, six numbers each. */
export function partLines(source: PartSource, path: string): Float32Array {
  const segments: number[] = [];
  const draw: Draw = (points, closed) => {
    points.forEach((point, i) => {
      if (i > 0) segments.push(...points[i - 1], ...point);
    });
    if (closed && points.length > 1) segments.push(...points[points.length - 1], ...points[0]);
  };
  const { marks, beads, profile } = source;
  // Beads on a region stand in it: a place among theirs means them alone.
  const runs = beads.runs.filter((run) => isWithin(path, run.path));
  for (const { beads: own } of runs) for (const bead of own) draw(roundBead(bead), true);
  if (runs.length === 0) {
    for (const line of regionLines(source, path)) draw(line.points, line.closed);
    for (const { surface, body } of marks.marks) {
      if (!isWithin(path, body.path)) continue;
      for (const line of bodyLines(body, [], { wrap: surface.wrap, heightAt: () => topOf(body) })) {
        draw(line.points, line.closed);
      }
    }
  }
  for (const round of bandRounds(profile, path)) draw(round, true);
  return Float32Array.from(segments);
}

/** A circle round a bead, as seen from above it. */
function roundBead({ centre, radius, outward }: Bead): Point3[] {
  const along = vec3.normalize([0, 0, 0], [-centre[1], centre[0], 0]);
  const across = vec3.cross([0, 0, 0], outward, along);
  return Array.from({ length: BEAD_CORNERS }, (_, i): Point3 => {
    const angle = (TURN * i) / BEAD_CORNERS;
    const [cos, sin] = [(radius + LIFT) * Math.cos(angle), (radius + LIFT) * Math.sin(angle)];
    return [0, 1, 2].map((k) => centre[k] + cos * along[k] + sin * across[k]) as never;
  });
}

/** The circles at which what a place tells of the band begins and ends. */
function bandRounds(profile: Band, path: string): Point3[][] {
  const ends = partEnds(sectionParts(profile), bandPartsOf(path));
  // All sections have as many corners as the one at the top.
  return ends.map((at) =>
    Array.from({ length: ROUND_CORNERS }, (_, i): Point3 => {
      const angle = (TURN * i) / ROUND_CORNERS;
      const [w, r] = lifted(profile.sectionAt(angle).polyline, at);
      return [r * Math.cos(angle), r * Math.sin(angle), w];
    }),
  );
}

/** A corner of a cross-section, a little outside of it. */
function lifted(polyline: Profile["polyline"], at: number): Point2 {
  const [before, [w, r], after] = [-1, 0, 1].map((step) => polyline[(at + step + polyline.length) % polyline.length]);
  const [out, up] = [after[1] - before[1], before[0] - after[0]];
  const length = Math.hypot(out, up);
  return [w + (LIFT * out) / length, r + (LIFT * up) / length];
}
