// Across: every design in examples/
/**
 * Every design in examples/ becomes one closed ring, which programs that are not ours read as we wrote it.
 */

import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import { type BuildResult, build, encodeMesh, formatForFile, formats } from "annulet";
import loadManifold from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import { filesBeside } from "../src/cli/design-folder.js";
import { findCrossings } from "../src/mesh/crossings.js";
import { roundToFloat32 } from "../src/mesh/float32.js";
import { signedVolume } from "../src/mesh/volume.js";
import { reportJsonSchema } from "../src/output/report/report-json-schema.js";
import { reportSchema } from "../src/output/report/report-schema.js";
import { admesh, hasAdmesh } from "./support/admesh.js";
import { type Checker, COMPILE_PATIENCE, compileChecker, hasCgal } from "./support/self-intersections.js";
import { hasSlicer, slicerInfo } from "./support/slicer.js";
import { readByThree } from "./support/three.js";

const folder = fileURLToPath(new URL("../examples/", import.meta.url));
const designs = readdirSync(folder).filter((file) => file.endsWith(".json") && file !== "tsconfig.json");

it("there are examples", () => {
  expect(designs.length).toBeGreaterThan(0);
});

/**
 * Triangles that cross are let pass where they do so by less than this, mm: as built, and as single precision holds them, which
 * turns the plane of a needle. Measured over fifteen of the examples: 7 nm (reedbed-lanes), and 0.12 µm (saltmarsh-lattice).
 */
const DEEPEST = { built: 1e-4, rounded: 5e-4 };

const isReport = new Ajv2020().compile(reportJsonSchema());

let checker: Checker | undefined;
beforeAll(() => {
  if (hasCgal) checker = compileChecker();
}, COMPILE_PATIENCE);

// three's loader of 3MF, with a tree of the whole model, takes 5 to 15 s a ring (measured): the slicer reads those.
const BY_THREE = formats.filter(({ name }) => name !== "3mf");

/** Rings are read by three and by the slicer by turns, as STL in binary and as text, OBJ, GLB and 3MF; by admesh and manifold-3d all. */
const byTurns = designs.map((file, i) => {
  const turn = i % (BY_THREE.length + 1);
  return { file, byThree: BY_THREE.slice(turn, turn + 1), bySlicer: turn === BY_THREE.length };
});

describe.each(byTurns)("$file", ({ file, byThree, bySlicer }) => {
  let ring: BuildResult;
  let stl: Uint8Array;

  beforeAll(async () => {
    ring = await build(readFileSync(folder + file, "utf8"), { files: filesBeside(folder + file) });
    stl = await encodeMesh(formats[0], ring.mesh, { name: ring.report.name });
  });

  it("is one closed ring of the handles that its holes make, with nothing to warn of that would spoil it", () => {
    const { report, design } = ring;
    expect(report).toMatchObject({ closed: true, components: 1, genus: report.genusExpected });
    const pierced = design.pattern?.regions.some(({ mode }) => mode === "pierced") ?? false;
    const open = design.stones.some(({ through }) => through !== false);
    expect(report.genus > 1).toBe(pierced || open);
    const codes = report.warnings.map(({ code }) => code);
    for (const code of ["genus-differs", "kernel-replaced", "hairline", "beads-crowded"]) {
      expect(codes).not.toContain(code);
    }
    if (report.headroom !== null) expect(report.headroom).toBeGreaterThanOrEqual(-1e-6);
  });

  it("is reported as the published schema says, and with no field beside", () => {
    const report = JSON.parse(JSON.stringify(ring.report));
    expect(isReport(report), JSON.stringify(isReport.errors?.slice(0, 3))).toBe(true);
    expect(reportSchema.parse(report)).toEqual(report);
    expect(isReport({ ...report, another: 1 })).toBe(false);
  });

  it.skipIf(!hasAdmesh)("is clean as an STL to admesh: one part, no facet degenerate, no edge open", () => {
    const found = admesh(stl);
    expect(found).toMatchObject({
      fileType: "Binary",
      facets: ring.report.triangles,
      parts: 1,
      degenerate: 0,
      disconnectedEdges: [0, 0, 0],
      backwards: 0,
      edgesFixed: 0,
      facetsRemoved: 0,
      facetsAdded: 0,
      facetsReversed: 0,
    });
    expect(Math.abs(found.volume / ring.report.volume - 1)).toBeLessThan(1e-4);
  });

  // By turns: tests/outside/formats.test.ts asks of each format all that it can hold.
  it.each(byThree.map((format) => [format.name, format] as const))("is read by three as %s", async (_, format) => {
    const found = await readByThree(format, await encodeMesh(format, ring.mesh, { name: ring.report.name }));
    expect(found.triangles.length / 3).toBe(ring.report.triangles);
    expect(Math.abs(signedVolume(found) / ring.report.volume - 1)).toBeLessThan(1e-5);
  });

  if (bySlicer) {
    it.skipIf(!hasSlicer)("is read by a slicer as 3MF: one manifold", async () => {
      const { report, mesh } = ring;
      const found = slicerInfo(await encodeMesh(formatForFile("ring.3mf"), mesh, { name: report.name }), ".3mf");
      expect(found).toMatchObject({ manifold: true, parts: 1, triangles: report.triangles });
      expect(Math.abs(found.volume / report.volume - 1)).toBeLessThan(1e-4);
    });
  }

  it.skipIf(!hasCgal)("crosses itself hardly anywhere by CGAL, as files hold it, and says where", async () => {
    expect((await findCrossings(ring.mesh)).deepest).toBeLessThan(DEEPEST.built);
    const { count, deepest, places } = (checker as Checker).check(roundToFloat32(ring.mesh));
    if (count > 0) {
      console.info(`${file}: ${count} pairs of triangles cross, by up to ${deepest} mm, at ${places.join(" | ")}`);
    }
    expect(deepest).toBeLessThan(DEEPEST.rounded);
  });

  it("has the volume and the genus that manifold-3d finds in it", async () => {
    const wasm = await loadManifold();
    wasm.setup();
    const { positions, triangles } = ring.mesh;
    const solid = new wasm.Manifold(
      new wasm.Mesh({ numProp: 3, vertProperties: Float32Array.from(positions), triVerts: triangles.slice() }),
    );
    try {
      expect(solid.status()).toBe("NoError");
      expect(solid.genus()).toBe(ring.report.genus);
      expect(Math.abs(solid.volume() / ring.report.volume - 1)).toBeLessThan(1e-5);
      expect(Math.abs(solid.surfaceArea() / ring.report.area - 1)).toBeLessThan(1e-5);
    } finally {
      solid.delete();
    }
  });
});
