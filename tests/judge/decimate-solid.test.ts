import { build } from "annulet";
import { describe, expect, it } from "vitest";
import type { Warning } from "../../src/base/errors.js";
import { decimateSolid } from "../../src/judge/decimate-solid.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { farthest } from "../support/farthest.js";
import { torus } from "../support/meshes.js";

const accept = (mesh: Mesh) => checkSolid(mesh).closed;
const fine = torus(9, 1, 90, 24);

function warnings(): { list: Warning[]; warn: (warning: Warning) => void } {
  const list: Warning[] = [];
  return { list, warn: (warning) => list.push(warning) };
}

describe("decimating a solid", () => {
  it("gives fewer triangles and says how many, and how far", async () => {
    const { list, warn } = warnings();
    const { mesh, decimation } = await decimateSolid(fine, { deviation: 0.02, accept, warn });
    expect(decimation).toMatchObject({ trianglesBefore: 4320, trianglesAfter: mesh.triangles.length / 3 });
    expect(decimation?.trianglesAfter).toBeLessThan(4320);
    expect(farthest(fine, mesh)).toBeLessThanOrEqual((decimation?.deviation ?? 0) + 1e-9);
    expect(list).toEqual([]);
  });

  it("keeps the mesh and warns where fewer triangles do not pass the gate", async () => {
    const { list, warn } = warnings();
    const onlyAsItWas = (mesh: Mesh) => mesh === fine;
    expect(await decimateSolid(fine, { deviation: 0.02, accept: onlyAsItWas, warn })).toEqual({
      mesh: fine,
      decimation: undefined,
    });
    expect(list.map(({ code }) => code)).toEqual(["decimation-refused"]);
  });

  it("leaves open meshes to the gate, and all meshes where the deviation is 0", async () => {
    const open = { ...fine, triangles: fine.triangles.slice(3) };
    const { list, warn } = warnings();
    expect((await decimateSolid(open, { deviation: 0.02, accept, warn })).mesh).toBe(open);
    expect((await decimateSolid(fine, { deviation: 0, accept, warn })).mesh).toBe(fine);
    expect(list).toEqual([]);
  });
});

describe("build with decimate", () => {
  const document = {
    annulet: 1,
    size: { diameter: 16 },
    tolerance: 0.05,
    profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
    pattern: { symmetry: "p2mm", regions: [{ path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.4, round: 0.05 }] },
  };

  it("has fewer triangles within the deviation, and reports both", async () => {
    const whole = await build(document);
    expect(whole.report.mesh.decimation).toBeNull();
    const { mesh, report } = await build(document, { decimate: 0.01 });
    expect(report).toMatchObject({ closed: true, genus: whole.report.genus, triangles: mesh.triangles.length / 3 });
    expect(report.mesh.decimation).toMatchObject({
      trianglesBefore: whole.report.triangles,
      trianglesAfter: report.triangles,
    });
    expect(report.triangles).toBeLessThan(whole.report.triangles);
    const deviation = report.mesh.decimation?.deviation ?? 0;
    expect(deviation).toBeLessThanOrEqual(0.01);
    expect(farthest(whole.mesh, mesh)).toBeLessThanOrEqual(deviation + 1e-9);
    expect(farthest(mesh, whole.mesh)).toBeLessThanOrEqual(deviation + 1e-9);
    expect(Math.abs(report.volume - whole.report.volume)).toBeLessThan(0.01 * whole.report.area);
  });

  it.each([-0.1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %s before any work", async (decimate) => {
    const stages: string[] = [];
    const built = build(document, { decimate, onProgress: ({ stage }) => stages.push(stage) });
    await expect(built).rejects.toMatchObject({ code: "option-invalid", problems: [{ path: "decimate" }] });
    expect(stages).toEqual([]);
  });
});
