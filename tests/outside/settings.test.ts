// Across: every setting, as other programs see it
import loadManifold, { type Manifold } from "manifold-3d";
import { beforeAll, describe, expect, test } from "vitest";
import type { Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { encodeMesh } from "../../src/output/files/format.js";
import { stlBinary } from "../../src/output/files/formats/stl-binary.js";
import { type Made, openRing } from "../../src/ring/open-ring.js";
import { admesh, hasAdmesh } from "../support/admesh.js";
import { type Checker, COMPILE_PATIENCE, compileChecker, hasCgal } from "../support/self-intersections.js";
import { FLAT_BAND } from "../support/set-stones.js";

/** Room between a stone and its hollow, mm a side. */
const ROOM = 0.05;

/** Stones and metal are chords: the stone's facets lie inside it by up to 5 µm, the hollow's outside by up to the tolerance. */
const LESS = 0.004;
const MORE = 0.016;

const row = { form: "row", count: 3, over: { from: 78, to: 102 } };
const one = { form: "single", angle: 90 };

/** Small rings: each setting on cuts of its own, open below or closed. */
const groups: readonly (readonly [string, object, number])[] = [
  ["flush", { cut: "oval", size: 2, through: true, place: row, setting: { form: "flush" } }, 3],
  ["bead-set", { size: 1.5, place: row, setting: { form: "bead-set", border: 0.3 } }, 0],
  ["channel", { cut: "princess", size: 1.6, level: 0.4, place: row, setting: { form: "channel", rise: 0.4 } }, 0],
  ["bezel", { cut: "emerald", size: 3, through: true, place: one, setting: { form: "bezel" } }, 1],
  ["prongs", { cut: "pear", size: 3, through: true, place: one, setting: { form: "prongs", count: 3, turn: 0 } }, 1],
];

describe.each(groups)("%s", (_, group, openings) => {
  let made: Made;
  let library: Awaited<ReturnType<typeof loadManifold>>;
  beforeAll(async () => {
    made = await openRing({ ...FLAT_BAND, stones: [group] }).make({ piece: "finished" });
    library = await loadManifold();
    library.setup();
  });

  test("has a handle for each clean opening, and is what was drawn", () => {
    expect(made.report).toMatchObject({ closed: true, genus: 1 + openings });
  });

  test("keeps the asked room between every stone and the metal, by another library", () => {
    const owned: Manifold[] = [];
    const solidOf = ({ positions, triangles }: Mesh): Manifold => {
      const mesh = new library.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles });
      const solid = new library.Manifold(mesh);
      owned.push(solid);
      return solid;
    };
    const metal = solidOf(made.mesh);
    for (const { mesh, map } of made.stones) {
      const gap = metal.minGap(solidOf(transformMesh(mesh, map as Parameters<typeof transformMesh>[1])), 1);
      expect(gap).toBeGreaterThan(ROOM - LESS);
      expect(gap).toBeLessThan(ROOM + MORE);
    }
    for (const solid of owned) solid.delete();
  });

  test.skipIf(!hasAdmesh)("has nothing for admesh to mend", async () => {
    const report = admesh(await encodeMesh(stlBinary, made.mesh, { name: "ring" }));
    expect(report).toMatchObject({ parts: 1, degenerate: 0, disconnectedEdges: [0, 0, 0], backwards: 0 });
    expect([report.edgesFixed, report.facetsRemoved, report.facetsAdded, report.facetsReversed]).toEqual([0, 0, 0, 0]);
  });

  test.skipIf(!hasCgal)(
    "has nothing that crosses deeper than a step of single precision, by CGAL",
    () => {
      expect(checkerOf().check(made.mesh).deepest).toBeLessThan(1e-3);
    },
    COMPILE_PATIENCE,
  );
});

let checker: Checker | undefined;

/** Compiled when it is first asked for. */
function checkerOf(): Checker {
  checker ??= compileChecker();
  return checker;
}
