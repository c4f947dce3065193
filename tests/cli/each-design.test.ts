// Covers: src/cli/tell-written.ts
import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { annulet, namesIn, PLAIN, put, TILED, tempFolder } from "./support.js";

const ROUGH = { ...PLAIN, tolerance: 0.1 };

/** Two sound designs and one without a pattern, which fit cannot take. */
function three(): { folder: string; paths: readonly string[] } {
  const folder = tempFolder();
  const paths = [
    put(folder, "a.json", { ...TILED, tolerance: 0.1 }),
    put(folder, "b.json", ROUGH),
    put(folder, "c.json", { ...TILED, tolerance: 0.1, size: { diameter: 18 } }),
  ];
  return { folder, paths };
}

describe("several designs", () => {
  it("are worked one after the other; one that fails does not keep the others from their turn", async () => {
    const { paths } = three();
    const { code, out, err } = await annulet(["fit", ...paths]);
    expect(code).toBe(2);
    expect(out.match(/tiles go round/g)).toHaveLength(2);
    for (const path of [paths[0], paths[2]]) expect(out).toContain(`${path}\n`);
    expect(err).toMatch(/b\.json:\nerror: .*no pattern/);
    expect(err).toContain(`2 of 3 done; not ${paths[1]}`);
  });

  it("are a line of JSON each, which says the same as alone", async () => {
    const { paths } = three();
    const { code, out } = await annulet(["fit", ...paths, "--json"]);
    expect(code).toBe(2);
    const lines = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(lines.map(({ design }) => design)).toEqual(paths);
    expect(lines[0].result).toEqual(JSON.parse((await annulet(["fit", paths[0], "--json"])).out));
    expect(lines[1]).toMatchObject({ errors: [{ code: "no-pattern" }] });
    expect(lines[2].result.repeats).toBeGreaterThan(0);
  });

  it("each write the file of their own name", async () => {
    const { folder, paths } = three();
    mkdirSync(join(folder, "out"));
    const { code } = await annulet(["tile", paths[0], paths[2], "-o", join(folder, "out/{name}-tile.svg"), "--json"]);
    expect(code).toBe(0);
    expect(namesIn(join(folder, "out"))).toEqual(["a-tile.svg", "c-tile.svg"]);
    const alone = join(folder, "{name}.svg");
    expect((await annulet(["tile", paths[2], "-o", alone])).code).toBe(0);
    expect(readFileSync(join(folder, "c.svg"))).toEqual(readFileSync(join(folder, "out/c-tile.svg")));
  });

  it("end with the gravest code: a failed check is less than a design that cannot be read", async () => {
    const folder = tempFolder();
    const thin = put(folder, "thin.json", { ...ROUGH, profile: { ...ROUGH.profile, thickness: 0.5 } });
    const good = put(folder, "good.json", ROUGH);
    expect((await annulet(["check", good, thin, "--json"])).code).toBe(1);
    expect((await annulet(["check", thin, put(folder, "bad.json", "{"), good, "--json"])).code).toBe(2);
  });

  it.each<[string, readonly string[], RegExp]>([
    ["one output for all", ["-o", "ring.stl"], /ring\.stl cannot take what is made of several files/],
    ["standard output", ["-o", "-"], /Standard output cannot take/],
  ])("are refused with %s", async (_, words, message) => {
    const { paths } = three();
    const { code, err } = await annulet(["make", ...paths, ...words]);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  it("are refused where two would go to one file, before anything is written", async () => {
    const { folder, paths } = three();
    mkdirSync(join(folder, "sub"));
    const twin = put(join(folder, "sub"), "a.json", ROUGH);
    const { code, err } = await annulet(["make", paths[0], twin, "-o", join(folder, "{name}.stl")]);
    expect(code).toBe(2);
    expect(err).toContain(`${paths[0]} and ${twin} would both go to`);
    expect(namesIn(folder)).toEqual(["a.json", "b.json", "c.json", "sub"]);
  });
});

describe("standard output", () => {
  it("takes a mesh, byte for byte that of a file; all that is said goes elsewhere", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", ROUGH);
    const file = join(folder, "ring.obj");
    await annulet(["make", path, "-o", file, "--quiet"]);
    const { code, out, err } = await annulet([
      "make",
      path,
      "-o",
      "-",
      "--as",
      "obj",
      "--report",
      join(folder, "r.json"),
    ]);
    expect(code).toBe(0);
    expect(out).toBe(readFileSync(file, "utf8"));
    expect(err).toMatch(/closed +yes/);
    const { files } = JSON.parse(readFileSync(join(folder, "r.json"), "utf8"));
    expect(files).toEqual([{ name: "-", sha256: expect.stringMatching(/^[0-9a-f]{64}$/) }]);
  });

  it("takes drawings and sheets", async () => {
    const stdin = JSON.stringify({ ...TILED, tolerance: 0.1 });
    const tile = await annulet(["tile", "-", "-o", "-"], { stdin });
    expect(tile.out).toMatch(/^<\?xml|^<svg/);
    const sheet = await annulet(["sheet", "-", "-o", "-", "--pictures", "0"], { stdin });
    expect(sheet.out).toMatch(/^<!doctype html>/i);
  });

  it("cannot take JSON as well, nor a form that nothing asks for", async () => {
    const stdin = JSON.stringify(ROUGH);
    expect((await annulet(["make", "-", "-o", "-", "--json"], { stdin })).err).toMatch(/would both go/);
    expect((await annulet(["make", "-", "-o", "ring.stl", "--as", "obj"], { stdin })).err).toMatch(/no output is -/);
  });
});

describe("--json", () => {
  it("makes errors one JSON document too", async () => {
    const { code, out, err } = await annulet(["make", "-", "--json"], { stdin: '{"annulet": 1, "name": 3}' });
    expect(code).toBe(2);
    const { errors } = JSON.parse(out);
    expect(errors).toContainEqual(expect.objectContaining({ code: "value-invalid", path: "name", line: 1 }));
    expect(err).toContain("error:");
  });

  it("tells of files that were written, with their digests", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", { ...TILED, tolerance: 0.1 });
    const { out } = await annulet(["tile", path, "-o", join(folder, "t.svg"), "--json"]);
    const bytes = readFileSync(join(folder, "t.svg")).length;
    expect(JSON.parse(out)).toEqual({
      files: [{ path: join(folder, "t.svg"), bytes, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) }],
    });
  });
});
