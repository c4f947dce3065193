import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { decode } from "fast-png";
import { describe, expect, it } from "vitest";
import { encodeMesh } from "../../../src/output/files/format.js";
import { stlBinary } from "../../../src/output/files/formats/stl-binary.js";
import { readMesh } from "../../../src/output/files/read-mesh.js";
import type { PictureOptions } from "../../../src/output/picture/options.js";
import { takePicture } from "../../../src/output/picture/picture.js";
import { torus } from "../../support/meshes.js";
import { annulet, namesIn, PLAIN, put, tempFolder } from "../support.js";

const SMALL = ["--pixels", "60x40"];

/** Sums of red, green and blue. */
function colourOf(path: string): readonly number[] {
  const { data, channels } = decode(readFileSync(path));
  const sums = [0, 0, 0];
  for (let i = 0; i < data.length; i += channels) for (let k = 0; k < 3; k++) sums[k] += data[i + k];
  return sums;
}

describe("annulet picture", () => {
  it("shows a design in its own alloy, or in another", async () => {
    const folder = tempFolder();
    const [gold, silver] = [join(folder, "gold.png"), join(folder, "silver.png")];
    const design = put(folder, "ring.json", { ...PLAIN, material: "au750-yellow" });
    const { code, out } = await annulet(["picture", design, "-o", gold, ...SMALL]);
    expect(code).toBe(0);
    expect(out).toMatch(/^written: .*gold\.png \(\d+(\.\d)? k?B\)\n$/);
    const { width, height, channels } = decode(readFileSync(gold));
    expect([width, height, channels]).toEqual([60, 40, 3]);
    await annulet(["picture", design, "-o", silver, ...SMALL, "--material", "ag925"]);
    const [[goldRed, , goldBlue], [silverRed, , silverBlue]] = [colourOf(gold), colourOf(silver)];
    expect(goldBlue / goldRed).toBeLessThan(silverBlue / silverRed);
    expect(namesIn(folder)).toEqual(["gold.png", "ring.json", "silver.png"]);
  });

  it("shows a mesh file, from where it is told, without a ground", async () => {
    const folder = tempFolder();
    const [mesh, output] = [join(folder, "ring.stl"), join(folder, "ring.png")];
    writeFileSync(mesh, await encodeMesh(stlBinary, torus(9, 1.5, 48, 16), { name: "ring" }));
    const shown = async (...words: string[]) => {
      const ran = await annulet(["picture", mesh, "-o", output, ...SMALL, "--ground", "clear", ...words]);
      expect(ran).toMatchObject({ code: 0, err: "" });
      const { data, channels } = decode(readFileSync(output));
      expect(channels).toBe(4);
      return Array.from(data).reduce((sum, value, i) => (i % 4 === 3 ? sum + value / 255 : sum), 0);
    };
    const front = await shown("--view", "front");
    expect(await shown("--view", "front", "--azimuth", "90")).toBeLessThan(0.6 * front);
    expect(await shown("--view", "front", "--stance", "lying", "--elevation", "90")).toBeCloseTo(front, -1);
    expect(await shown("--view", "front", "--zoom", "0.5")).toBeLessThan(0.3 * front);
  });

  it("looks at a place of the ring, from outside or from within, and goes round with the frames", async () => {
    const folder = tempFolder();
    const [mesh, output] = [join(folder, "ring.stl"), join(folder, "at.png")];
    writeFileSync(mesh, await encodeMesh(stlBinary, torus(9, 1.5, 48, 16), { name: "ring" }));
    const look = ["picture", mesh, "-o", output, ...SMALL, "--look-at", "270"];
    const shown = async (...words: string[]) => {
      expect(await annulet([...look, ...words])).toMatchObject({ code: 0, err: "" });
      return [...decode(readFileSync(output)).data];
    };
    const read = await readMesh(readFileSync(mesh), "ring.stl");
    const taken = (options: PictureOptions) => {
      const { pixels } = takePicture(read, { width: 60, height: 40, ...options });
      return [...pixels.filter((_, i) => i % 4 !== 3)];
    };
    expect(await shown("--zoom", "3")).toEqual(taken({ lookAt: { angle: 270 }, zoom: 3 }));
    expect(await shown("--inside")).toEqual(taken({ lookAt: { angle: 270, from: "inside" } }));
    const view = { stance: "lying", azimuth: 250, elevation: 40 } as const;
    const aside = ["--azimuth", "250", "--elevation", "40"];
    expect(await shown(...aside)).toEqual(taken({ lookAt: { angle: 270 }, view }));
    expect((await annulet([...look, "--frames", "2"])).code).toBe(0);
    const frame = decode(readFileSync(join(folder, "at-2.png"))).data;
    expect([...frame]).toEqual(taken({ lookAt: { angle: 90 } }));
  });

  it("numbers the frames of a turn", async () => {
    const folder = tempFolder();
    const mesh = join(folder, "ring.stl");
    writeFileSync(mesh, await encodeMesh(stlBinary, torus(9, 1.5, 24, 12), { name: "ring" }));
    expect((await annulet(["picture", mesh, "-o", join(folder, "turn.png"), ...SMALL, "--frames", "10"])).code).toBe(0);
    const names = Array.from({ length: 10 }, (_, i) => `turn-${String(i + 1).padStart(2, "0")}.png`);
    expect(namesIn(folder)).toEqual(["ring.stl", ...names]);
  });

  it.each([
    [["picture", "-"], /name an output: -o ring.png/],
    [["picture", "-", "-o", "ring.jpg"], /A picture is PNG/],
    [["picture", "-", "-o", "ring.png", "--pixels", "big"], /two whole numbers/],
    [["picture", "-", "-o", "ring.png", "--pixels", "0x40"], /1 to 8192/],
    [["picture", "-", "-o", "ring.png", "--frames", "0"], /1 to 720/],
    [["picture", "-", "-o", "ring.png", "--view", "inside"], /Allowed choices/],
    [["picture", "-", "-o", "ring.png", "--material", "tin"], /There is no material/],
    [["picture", "-", "-o", "ring.png", "--tolerance", "-1"], /tolerance/],
    [["picture", "ring.stl", "-o", "ring.png", "--tolerance", "0.1"], /as fine as it is/],
  ])("refuses %j", async (words, message) => {
    const { code, out, err } = await annulet(words, { stdin: JSON.stringify(PLAIN) });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });
});
