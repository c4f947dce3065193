// Covers: src/cli/design-file.ts, src/cli/io.ts, src/cli/limit-options.ts, src/cli/show-progress.ts, src/cli/warnings.ts
import { mkdirSync, readFileSync, truncateSync } from "node:fs";
import { join } from "node:path";
import { decode } from "fast-png";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../../src/judge/gate.js";
import { measureMesh } from "../../../src/measure/measure.js";
import { readMesh } from "../../../src/output/files/read-mesh.js";
import { annulet, namesIn, PLAIN, PROUD, put, tempFolder } from "../support.js";

/**
 * Volume, mm³, of the plain band: a tube, π (R² − r²) w, whose circles are polygons with n corners, which have
 * n sin(2π / n) / 2π of a circle's area.
 */
function tubeVolume(n: number): number {
  const bore = 54 / Math.PI / 2;
  return Math.PI * ((bore + 1.6) ** 2 - bore ** 2) * 4 * ((n * Math.sin((2 * Math.PI) / n)) / (2 * Math.PI));
}

/** Triangles of a tube round each facet: two on each of its four faces. */
const FACET_TRIANGLES = 8;

describe("annulet make", () => {
  it("puts the metal into 3MF and GLB, and a picture into 3MF", async () => {
    const folder = tempFolder();
    const design = put(folder, "ring.json", { ...PLAIN, material: "au585-red" });
    const [package3mf, scene] = ["ring.3mf", "ring.glb"].map((name) => join(folder, name));
    expect((await annulet(["make", design, "-o", package3mf, "-o", scene])).code).toBe(0);
    const parts = unzipSync(readFileSync(package3mf));
    expect(strFromU8(parts["3D/3dmodel.model"])).toContain('<base name="14 K red gold"');
    const { width, height, channels, data } = decode(parts["Metadata/thumbnail.png"]);
    expect([width, height, channels]).toEqual([256, 256, 4]);
    // Some of it is ring and some is clear.
    const opaque = data.filter((value, i) => i % 4 === 3 && value === 255).length / (256 * 256);
    expect(opaque).toBeGreaterThan(0.1);
    expect(opaque).toBeLessThan(0.9);
    expect(readFileSync(scene).includes('"name":"14 K red gold"')).toBe(true);
    for (const path of [package3mf, scene])
      expect(checkSolid(await readMesh(readFileSync(path), path)).closed).toBe(true);
  });

  it("writes every file asked for and tells what it made", async () => {
    const folder = tempFolder();
    const design = put(folder, "ring.json", PLAIN);
    const files = ["ring.stl", "ring.obj", "report.json"].map((name) => join(folder, name));
    const { code, out, err } = await annulet(["make", design, "-o", files[0], "-o", files[1], "--report", files[2]]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const report = JSON.parse(readFileSync(files[2], "utf8"));
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1, fit: null, size: { circumference: 54 } });
    const volume = tubeVolume(report.triangles / FACET_TRIANGLES);
    expect(report.volume / volume).toBeCloseTo(1, 9);
    for (const path of files.slice(0, 2)) {
      // Files hold float32.
      expect(measureMesh(await readMesh(readFileSync(path), path)).volume / volume).toBeCloseTo(1, 5);
    }
    for (const line of [
      /^size +iso 54: bore 17\.189 mm/m,
      /^band +4\.000 mm wide/m,
      /^closed +yes/m,
      new RegExp(`^volume +${report.volume.toFixed(3)} mm³`, "m"),
      new RegExp(`^mass +${report.mass.ag925.toFixed(2)} g in ag925`, "m"),
      /^written +.*ring\.stl \([\d.]+ kB\)/m,
      /annulet cautions/,
    ]) {
      expect(out).toMatch(line);
    }
    expect(namesIn(folder)).toEqual(["report.json", "ring.json", "ring.obj", "ring.stl"]);
  });

  it("writes STL as text or bytes as it is told, and replaces old files", async () => {
    const folder = tempFolder();
    const design = put(folder, "ring.json", PLAIN);
    const path = put(folder, "ring.STL", "old");
    await annulet(["make", design, "-o", path]);
    expect(readFileSync(path).subarray(0, 5).toString()).not.toBe("solid");
    await annulet(["make", design, "-o", path, "--stl", "ascii"]);
    expect(readFileSync(path, "utf8")).toMatch(/^solid plain band .*\n *facet [\s\S]*\n *endsolid/);
  });

  it("reads standard input and prints the report as JSON", async () => {
    const { code, out } = await annulet(["make", "-", "--json"], { stdin: JSON.stringify(PLAIN) });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ closed: true, name: "plain band" });
  });

  it("says nothing when quiet, and shows a bar only to somebody", async () => {
    const folder = tempFolder();
    const words = ["make", put(folder, "ring.json", PLAIN), "-o", join(folder, "ring.stl")];
    expect(await annulet([...words, "--quiet"], { isTTY: true })).toEqual({ code: 0, out: "", err: "" });
    expect((await annulet(words, { isTTY: true })).err).toContain("░");
    expect((await annulet(words)).err).toBe("");
  });

  it("writes the same report each time, and times only where they are asked for", async () => {
    const design = put(tempFolder(), "ring.json", PLAIN);
    const path = join(tempFolder(), "report.json");
    const reports: string[] = [];
    for (const more of [[], [], ["--timings"]]) {
      expect((await annulet(["make", design, "--report", path, "-q", ...more])).code).toBe(0);
      reports.push(readFileSync(path, "utf8"));
    }
    const [first, second, timed] = reports;
    expect(second).toBe(first);
    expect(first).not.toContain("timings");
    const { timings, ...rest } = JSON.parse(timed);
    expect(rest).toEqual(JSON.parse(first));
    expect(Object.keys(JSON.parse(timed)).at(-1)).toBe("timings");
    expect(timings.union).toBeGreaterThanOrEqual(0);
    expect(JSON.parse((await annulet(["make", design, "--json", "--timings"])).out).timings).toBeDefined();
  });

  it("takes triangles out when asked to, and says how many and how far", async () => {
    const words = ["make", put(tempFolder(), "ring.json", PLAIN), "--report", join(tempFolder(), "report.json")];
    const { code, out } = await annulet([...words, "--decimate", "0.05"]);
    expect(code).toBe(0);
    const [, after, before, deviation] = out.match(/^triangles +(\d+) of (\d+), within (\S+) mm$/m) ?? [];
    expect(Number(after)).toBeLessThan(Number(before));
    expect(Number(deviation)).toBeLessThanOrEqual(0.05);
  });

  it("puts warnings on standard error, data on standard output", async () => {
    const wide = { ...PLAIN, profile: { ...PLAIN.profile, width: 9 } };
    const { code, out, err } = await annulet(["make", "-", "--json"], { stdin: JSON.stringify(wide) });
    expect(code).toBe(0);
    expect(err).toMatch(/^warning: profile\.width: A band 9 mm wide fits tighter/);
    expect(JSON.parse(out).warnings).toHaveLength(1);
  });

  it("exits with 1 when the design fails a check, and writes nothing", async () => {
    const folder = tempFolder();
    const { code, err } = await annulet(["make", put(folder, "a.json", PROUD), "-o", join(folder, "a.stl")]);
    expect(err).toMatch(/above the rails/);
    expect(code).toBe(1);
    expect(namesIn(folder)).toEqual(["a.json"]);
  });

  it("lists all that is wrong in a document", async () => {
    const wrong = { ...PLAIN, materail: "ag925", profile: { ...PLAIN.profile, width: -1 } };
    const { code, err } = await annulet(["make", "-", "--json"], { stdin: JSON.stringify(wrong, null, 2) });
    expect(code).toBe(2);
    expect(err.match(/^error: /gm)?.length).toBeGreaterThanOrEqual(2);
    expect(err).toMatch(/material/);
    expect(err).toMatch(/profile\.width, line \d+, column \d+/);
  });

  it("shows line and column of malformed JSON", async () => {
    const { code, err } = await annulet(["make", "-", "--json"], { stdin: '{\n  "annulet": 1,\n  "name": oops\n}' });
    expect(code).toBe(2);
    expect(err).toMatch(/line 3, column 11/);
  });

  // Each would fail later too: what matters is that no output has to be named rightly for the input to be judged,
  // and that the folder stays as it was.
  const refused: [string, (folder: string) => string[], RegExp][] = [
    ["an ending without a format", (f) => [put(f, "a.json", PLAIN), "-o", `${f}/ring.step`], /\.stl, \.obj/],
    ["a missing folder", (f) => [put(f, "a.json", PLAIN), "-o", `${f}/none/ring.stl`], /no folder/],
    ["nothing to do", (f) => [put(f, "a.json", PLAIN)], /Nothing is asked for[\s\S]*-o ring\.stl/],
    ["a report that is no JSON", (f) => [put(f, "a.json", PLAIN), "--report", `${f}/a.txt`], /\.json/],
    ["--stl without STL", (f) => [put(f, "a.json", PLAIN), "-o", `${f}/a.obj`, "--stl", "ascii"], /no output/],
    [
      "more triangles than are allowed",
      (f) => [put(f, "a.json", PLAIN), "--json", "--max-triangles", "0"],
      /triangles: must be above 0/,
    ],
    ["too many beads to build", (f) => [put(f, "a.json", PLAIN), "--json", "--max-beads", "-1"], /beads/i],
    ["a deviation that is no length", (f) => [put(f, "a.json", PLAIN), "--json", "--decimate", "-1"], /decimat/],
    ["a missing design", (f) => [`${f}/a.json`, "--json"], /There is no file/],
    ["a drawing", (f) => [put(f, "a.svg", "<svg/>"), "--json"], /drawing[\s\S]*pattern\.regions/],
    ["a drawing in disguise", (f) => [put(f, "a.json", "<svg/>"), "--json"], /SVG[\s\S]*pattern\.regions/],
    ["a mesh", (f) => [put(f, "a.stl", "solid"), "--json"], /annulet inspect/],
    ["an empty file", (f) => [put(f, "a.json", " \n"), "--json"], /is empty[\s\S]*annulet schema/],
  ];
  it.each(refused)("refuses %s with exit code 2", async (_, words, complaint) => {
    const folder = tempFolder();
    const given = words(folder);
    const before = namesIn(folder);
    const { code, out, err } = await annulet(["make", ...given]);
    expect(err).toMatch(complaint);
    expect(code).toBe(2);
    if (given.includes("--json")) expect(Object.keys(JSON.parse(out))).toEqual(["errors"]);
    else expect(out).toBe("");
    expect(namesIn(folder)).toEqual(before);
  });

  it("refuses a folder and bytes that are no text as a design", async () => {
    const folder = tempFolder();
    mkdirSync(join(folder, "design.json"));
    expect((await annulet(["make", join(folder, "design.json"), "--json"])).err).toMatch(/is a folder/);
    const { code, err } = await annulet(["make", "/proc/self/exe", "--json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/too large/);
  });

  it.each(["huge.json", "huge.svg"])("judges %s of 100 MB by its size or name, unread", async (name) => {
    const path = put(tempFolder(), name, "");
    truncateSync(path, 100e6);
    const { code, err } = await annulet(["make", path, "--json"]);
    expect(code).toBe(2);
    // Had the zeros been read, they would have been called malformed or no JSON.
    expect(err).toMatch(name.endsWith(".svg") ? /is a drawing/ : /too large: 100\.0 MB[\s\S]*at most 5\.0 MB/);
  });
});
