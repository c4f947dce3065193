import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { decode } from "fast-png";
import { describe, expect, it } from "vitest";
import { meshBounds } from "../../../src/mesh/bounds.js";
import { encodeMesh } from "../../../src/output/files/format.js";
import { stlBinary } from "../../../src/output/files/formats/stl-binary.js";
import { readMesh } from "../../../src/output/files/read-mesh.js";
import { torus } from "../../support/meshes.js";
import { annulet, PLAIN, put, tempFolder } from "../support.js";

/** Pixels that are far more red than green. */
function redPixels(path: string): number {
  const { data, channels } = decode(readFileSync(path));
  let count = 0;
  for (let i = 0; i < data.length; i += channels) if (data[i] > 2 * data[i + 1]) count++;
  return count;
}

const boxOf = async (path: string) => {
  const { min, max } = meshBounds(await readMesh(new Uint8Array(readFileSync(path)), path));
  return { lowest: min[2], box: max.map((most, k) => most - min[k]) };
};

describe("annulet print", () => {
  it("sets the ways to print a design side by side", async () => {
    const design = put(tempFolder(), "ring.json", { ...PLAIN, print: { stance: "tilted", tilt: 40, layer: 0.1 } });
    const { code, out } = await annulet(["print", design]);
    expect(code).toBe(0);
    expect(out).toMatch(/^\* +tilted +40°/m);
    expect(out).toMatch(/^ +lying +0° .* 4\.000 +40 /m);
    expect(out).toContain("annulet cautions");
  });

  it("stops at the limits that it is told, as annulet picture does", async () => {
    const stdin = JSON.stringify({
      ...PLAIN,
      pattern: { fit: { repeats: 9 }, regions: [{ path: "M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z", height: 0.3 }] },
    });
    const picture = ["picture", "-", "-o", join(tempFolder(), "ring.png")];
    for (const command of [["print", "-"], picture]) {
      const many = await annulet([...command, "--max-triangles", "100"], { stdin });
      expect(many).toMatchObject({ code: 2, err: expect.stringContaining("at most 100 triangles") });
      const late = await annulet([...command, "--max-seconds", "1e-9"], { stdin });
      expect(late).toMatchObject({ code: 2, err: expect.stringContaining("at most 1e-9 seconds") });
    }
  });

  it("prints JSON of a mesh file and paints steep undersides", async () => {
    const folder = tempFolder();
    const [mesh, output] = [join(folder, "ring.stl"), join(folder, "steep.png")];
    writeFileSync(mesh, await encodeMesh(stlBinary, torus(9, 1.5, 96, 48), { name: "ring" }));
    const { code, out } = await annulet(["print", mesh, "--json", "-o", output, "--support", "60"]);
    expect(code).toBe(0);
    const [built, lying, standing] = JSON.parse(out);
    expect([built.stance, lying.stance, standing.stance]).toEqual(["built", "lying", "standing"]);
    expect(lying).toMatchObject({ tilt: 0, layers: 60 });
    expect(lying.undersides.share).toBeCloseTo(1 / 6, 1);
    const few = redPixels(output);
    await annulet(["print", mesh, "-o", output, "--support", "20"]);
    expect(few).toBeGreaterThan(1000);
    expect(redPixels(output)).toBeGreaterThan(1.3 * few);
  });

  it.each([
    [["print", "-", "-o", "steep.jpg"], /A picture is PNG/],
    [["print", "-", "--tilt", "20"], /only where the stance/],
    [["print", "-", "--stance", "tilted", "--tilt", "100"], /0 to 90 degrees/],
    [["print", "-", "--stance", "upright"], /Allowed choices/],
  ])("refuses %j", async (words, message) => {
    const { code, out, err } = await annulet(words, { stdin: JSON.stringify(PLAIN) });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });
});

describe("annulet make", () => {
  it("turns the mesh on request only, and reports it as it lies", async () => {
    const folder = tempFolder();
    const [design, output, report] = [
      put(folder, "ring.json", PLAIN),
      join(folder, "ring.stl"),
      join(folder, "report.json"),
    ];
    const files = ["-o", output, "--report", report];
    await annulet(["make", design, ...files]);
    expect((await boxOf(output)).lowest).toBe(-2);
    const told = JSON.parse(readFileSync(report, "utf8"));
    expect(told.print).toMatchObject({ stance: "built", tilt: null, layers: 80 });
    const { out } = await annulet(["make", design, ...files, "--stance", "standing"]);
    const standing = await boxOf(output);
    expect(standing.lowest).toBe(0);
    expect(standing.box[1]).toBeCloseTo(4, 5);
    const turned = JSON.parse(readFileSync(report, "utf8"));
    expect(turned.print.height).toBeCloseTo(standing.box[2], 5);
    expect(turned.bounds).toEqual(told.bounds);
    expect(out).toMatch(/^print +standing, 20\.389 mm high, 408 layers/m);
  });
});
