// Covers: src/cli/read-mesh-file.ts, src/cli/reported-mesh.ts
import { renameSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { alloys } from "../../../src/measure/alloys/catalogue.js";
import { concatMeshes, type Mesh } from "../../../src/mesh/mesh.js";
import { reverseMesh } from "../../../src/mesh/transform.js";
import { formatForFile } from "../../../src/output/files/catalogue.js";
import { encodeMesh } from "../../../src/output/files/format.js";
import { showGrams } from "../../../src/output/report/show-grams.js";
import { box, revolve, torus } from "../../support/meshes.js";
import { annulet, PLAIN, put, tempFolder } from "../support.js";

async function write(name: string, mesh: Mesh): Promise<string> {
  const path = join(tempFolder(), name);
  writeFileSync(path, await encodeMesh(formatForFile(name), mesh, { name: "box" }));
  return path;
}

const BRICK = box([10, 20, 5]);

describe("annulet inspect", () => {
  it.each(["brick.stl", "brick.obj", "brick.3mf", "brick.glb"])("measures and weighs a brick from %s", async (name) => {
    const { code, out, err } = await annulet(["inspect", await write(name, BRICK)]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^closed +yes$/m);
    expect(out).toMatch(/^genus +0$/m);
    expect(out).toMatch(/^volume +1000\.000 mm³$/m);
    expect(out).toMatch(/^area +700\.000 mm²$/m);
    expect(out).toMatch(/^size +10\.000 × 20\.000 × 5\.000 mm$/m);
    // A cubic centimetre weighs its density.
    for (const { symbol, density, range = [0, 0] } of alloys) {
      const grams = showGrams(density, (range[1] - range[0]) / density);
      expect(out).toMatch(new RegExp(`^${symbol} .* ${grams}$`, "m"));
    }
  });

  it("exits with 1 and shows the places when a mesh is open", async () => {
    const open = { positions: BRICK.positions, triangles: BRICK.triangles.slice(3) };
    const path = await write("open.stl", open);
    const { code, out } = await annulet(["inspect", path]);
    expect(code).toBe(1);
    expect(out).toMatch(/^closed +no$/m);
    expect(out).toMatch(/^volume +–$/m);
    expect(out).toMatch(/open-edge: 3 edges .* at \(/);
    expect(out).not.toContain("ag925");
    const { code: again, out: json } = await annulet(["inspect", path, "--json"]);
    expect(again).toBe(1);
    expect(JSON.parse(json)).toMatchObject({
      closed: false,
      volume: null,
      mass: null,
      faults: [{ code: "open-edge", count: 3 }],
    });
  });

  it("takes two pieces for a solid only when told so", async () => {
    const path = await write("two.stl", concatMeshes([BRICK, box([1, 1, 1], [30, 0, 0])]));
    expect((await annulet(["inspect", path])).code).toBe(1);
    const { code, out } = await annulet(["inspect", path, "--components", "2", "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ closed: true, components: 2, volume: expect.closeTo(1001, 6) });
  });

  it("tells the bore, the sizes that it fits and the thinnest wall", async () => {
    // A flat band: bore 16.51 mm, US 6 (0.458 + 0.032 · 6 in), its facets let for; wall 2 mm.
    const around = 720;
    const radius = 16.51 / 2 / Math.cos(Math.PI / around);
    const band = revolve(
      [
        [-2, radius],
        [2, radius],
        [2, radius + 2],
        [-2, radius + 2],
      ],
      around,
    );
    const path = await write("band.stl", reverseMesh(band));
    const { code, out } = await annulet(["inspect", path]);
    expect(code).toBe(0);
    expect(out).toMatch(/^bore +16\.510 mm across, 51\.868 mm round, along z through \(0\.000, 0\.000, 0\.000\)$/m);
    expect(out).toMatch(/^wall +2\.000 mm at the thinnest, at \(/m);
    expect(out).toMatch(/US.* 6 +(\+0\.00|0\.00|-0\.00)/m);
    const { out: json } = await annulet(["inspect", path, "--json"]);
    const { bore, thinnestWall } = JSON.parse(json);
    expect(bore).toMatchObject({ axis: [0, 0, 1], diameter: expect.closeTo(16.51, 4) });
    expect(bore.sizes).toContainEqual(expect.objectContaining({ system: "iso", label: "52" }));
    expect(thinnestWall.thickness).toBeCloseTo(2, 3);
  });

  it("tells a hole that is no finger's without sizes", async () => {
    const path = await write("washer.stl", torus(3, 1, 60, 20));
    const { out } = await annulet(["inspect", path]);
    expect(out).toMatch(/^bore +3\.995 mm across/m);
    expect(out).not.toContain("finger size");
  });

  it("refuses a file of 4 GB before it reads it", async () => {
    const path = put(tempFolder(), "huge.stl", "");
    truncateSync(path, 4e9);
    const before = process.memoryUsage().arrayBuffers;
    const { code, err } = await annulet(["inspect", path]);
    expect(code).toBe(2);
    expect(err).toMatch(/huge\.stl is too large: 4000\.0 MB[\s\S]*at most 500\.0 MB/);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(1e6);
  });

  it("has no size for a sheet without volume", async () => {
    const sheet = { positions: new Float64Array([0, 0, 0, 1, 0, 0, 0, 1, 0]), triangles: new Uint32Array([0, 1, 2]) };
    const { code, out } = await annulet(["inspect", await write("sheet.stl", sheet)]);
    expect(code).toBe(1);
    expect(out).toMatch(/open-edge: 3 edges/);
  });

  it.each([
    ["another ending", "a.txt", "solid", /\.stl, \.obj, \.3mf, \.glb/],
    ["a broken file", "a.stl", "solid x\nfacet", /a\.stl/],
  ])("refuses %s with exit code 2", async (_, name, content, complaint) => {
    const { code, out, err } = await annulet(["inspect", put(tempFolder(), name, content)]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(complaint);
  });
});

describe("annulet inspect with a report", () => {
  async function made() {
    const folder = tempFolder();
    const [mesh, report] = [join(folder, "ring.stl"), join(folder, "ring-report.json")];
    await annulet(["make", put(folder, "ring.json", PLAIN), "-o", mesh, "--report", report, "-q"]);
    return { folder, mesh, report };
  }

  it("knows the mesh that it was written with, whatever that is called now", async () => {
    const { folder, mesh, report } = await made();
    const renamed = join(folder, "other.stl");
    renameSync(mesh, renamed);
    const { code, out } = await annulet(["inspect", renamed, "--report", report]);
    expect(code).toBe(0);
    expect(out).toMatch(/^reported +yes$/m);
  });

  it("fails on a sound mesh that is another", async () => {
    const { report } = await made();
    const path = await write("brick.stl", BRICK);
    const { code, out } = await annulet(["inspect", path, "--report", report]);
    expect(code).toBe(1);
    expect(out).toMatch(/^reported +no: the report is another mesh's$/m);
    const json = await annulet(["inspect", path, "--report", report, "--json"]);
    expect(JSON.parse(json.out)).toMatchObject({ closed: true, reported: false });
  });

  it("refuses a report that names no mesh", async () => {
    const { folder, mesh } = await made();
    const alone = join(folder, "alone.json");
    await annulet(["make", join(folder, "ring.json"), "--report", alone, "-q"]);
    for (const path of [alone, put(folder, "text.json", "not JSON")]) {
      const { code, err } = await annulet(["inspect", mesh, "--report", path]);
      expect(code).toBe(2);
      expect(err).toMatch(/names the mesh files/);
    }
  });
});
