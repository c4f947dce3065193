/**
 * Whether a bent body crosses itself: over a valley of the band's section walls that stand on both its sides lean into each
 * other, inside a ridge those of what is sunk do, though none stands in the valley or on the ridge itself.
 *
 * Parts of a body that cross each other are made bodies of their own, which are united like any others; a part that crosses
 * itself is no solid.
 */
import { meetings, normalsMeet } from "../band/surface/normals-meet.js";
import type { BandSurface, SurfaceLine } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { extent } from "../base/math/extent.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import { showLength, TURN } from "../base/units.js";
import { BoxTree } from "../mesh/box-tree.js";
import { depthOf } from "../mesh/crossings.js";
import type { Mesh } from "../mesh/mesh.js";
import { vertexShells } from "../mesh/shells.js";
import { TrianglesMeet } from "../mesh/triangles-meet.js";
import type { FlatBody } from "../relief/flat-body.js";

/** Triangles that cross by less do so by rounding, mm. */
const ROUNDING = 1e-5;

/** Angles at which a band that tapers is looked at (chosen). */
const ANGLES = 24;

/** Leaves of the tree that are asked between two places where the work may be interrupted (chosen). */
const LEAVES_AT_A_BREATH = 256;

/** Of what fits, so much is told as fitting: a twentieth less, as over a hollow (chosen). */
const SAFE_SHARE = 0.95;

/** Heights are told in whole µm. */
const TOLD = 1000;

/**
 * A bent body as bodies none of which crosses itself: itself nearly always.
 *
 * @throws AnnuletError `height-too-large` or `depth-too-large`, with the most that surely fits
 */
export function unfolded(mesh: Mesh, body: FlatBody, wrap: BandSurface): Mesh[] {
  return finish(unfolding(mesh, body, wrap));
}

/** The same in pieces. */
export function* unfolding(mesh: Mesh, body: FlatBody, wrap: BandSurface): Pausing<Mesh[]> {
  const to = body.mode === "sunk" ? -body.height : body.height;
  if (body.upright || !linesOf(wrap).some((line) => normalsMeet(line, to))) return [mesh];
  const { of, count } = vertexShells(mesh);
  const met = new Map<number, Set<number>>();
  for (const [s, t] of yield* crossingPairs(mesh)) {
    const [a, b] = [Math.min(of[s], of[t]), Math.max(of[s], of[t])];
    if (a === b) throw folds(body, wrap);
    met.set(b, (met.get(b) ?? new Set()).add(a));
  }
  if (met.size === 0) return [mesh];
  const group = groupsApart(count, met);
  const groups = Math.max(...group) + 1;
  return Array.from({ length: groups }, (_, wanted) => ({
    positions: mesh.positions,
    triangles: mesh.triangles.filter((__, i) => group[of[Math.floor(i / 3)]] === wanted),
  }));
}

/** A number for each part, other than those of parts that it meets. */
function groupsApart(count: number, met: ReadonlyMap<number, ReadonlySet<number>>): number[] {
  const group: number[] = [];
  for (let part = 0; part < count; part++) {
    const taken = new Set([...(met.get(part) ?? [])].map((other) => group[other]));
    let own = 0;
    while (taken.has(own)) own++;
    group.push(own);
  }
  return group;
}

function* crossingPairs(mesh: Mesh): Pausing<[number, number][]> {
  const tree = new BoxTree(
    mesh,
    Uint32Array.from({ length: mesh.triangles.length / 3 }, (_, t) => t),
  );
  const test = new TrianglesMeet(mesh);
  const found: [number, number][] = [];
  for (let leaf = 0; leaf < tree.leaves; leaf++) {
    if (leaf % LEAVES_AT_A_BREATH === 0) yield BREATH;
    tree.pairsFrom(leaf, (s, t) => {
      if (test.meet(s, t) && depthOf(mesh, s, t) > ROUNDING) found.push([s, t]);
    });
  }
  return found;
}

function linesOf(wrap: BandSurface): SurfaceLine[] {
  const count = wrap.revolved ? 1 : ANGLES;
  return Array.from({ length: count }, (_, i) => wrap.lineAt(wrap.startAngle + (TURN * i) / count));
}

function folds({ mode, outline, height, path }: FlatBody, wrap: BandSurface): AnnuletError {
  const [low, high] = extent(outline.flat(2).map(([, v]) => v));
  const most = Math.min(...linesOf(wrap).map((line) => meetings(line, [low, high], mode === "sunk" ? -1 : 1).least));
  const raised = mode === "raised";
  return new AnnuletError({
    code: raised ? "height-too-large" : "depth-too-large",
    message: raised
      ? `a region stands ${showLength(height)} high on both sides of a hollow of the seat so tight that its walls meet over it`
      : `a region is ${showLength(height)} deep on both sides of a ridge of the seat so tight that its walls meet inside it`,
    path,
    value: height,
    allowed: `at most ${showLength(Math.floor(SAFE_SHARE * most * TOLD) / TOLD)} there`,
    hint: `make it ${raised ? "lower" : "less deep"}, draw its two sides as regions of their own, or say "upright": true so that its walls stand along the radius`,
  });
}
