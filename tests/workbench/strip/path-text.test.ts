import { readdirSync, readFileSync } from "node:fs";
import { SVGPathData } from "svg-pathdata";
import { describe, expect, it } from "vitest";
import { LONGEST_PATH, readPathText, writePathText } from "../../../src/workbench/strip/path-text.js";

/** Every text under a key `path` of a document. */
function pathsIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    typeof inner === "string" ? (key === "path" ? [inner] : []) : pathsIn(inner),
  );
}

const EXAMPLES = readdirSync("examples")
  .filter((name) => name.endsWith(".json"))
  .flatMap((name) => pathsIn(JSON.parse(readFileSync(`examples/${name}`, "utf8"))));

const ODD = [
  "M0 0 1 1-.5.5",
  "m.1-.2l3-4,5 6z m 1 1 l 2 0 0 2z",
  "M 0 0 H 1 V 2 h-1 v-2Z",
  "M0,0C1,0 2,1,2,2S3 4 4 4s1 1 2 2",
  "M0 0Q1 1 2 0T4 0t2 0",
  "M0 0a1 2 30 1 0 3 3A5 5 0 01 1 1a1 1 0 0012 2",
  " M 1e-1 2E+1 L 3. .4 \n Z \t",
  "M0 0L1 0L1 1zL2 2",
  "M0 0zz",
];

describe("path data taken apart", () => {
  it.each([...ODD, ...EXAMPLES])("is the same text where nothing is changed: %s", (d) => {
    const read = readPathText(d);
    expect(read).toBeDefined();
    if (read !== undefined) expect(writePathText(read)).toBe(d);
  });

  it.each([...ODD, ...EXAMPLES])("draws the same where every step is written anew: %s", (d) => {
    const read = readPathText(d);
    if (read === undefined) throw new Error("not read");
    const anew = writePathText({ ...read, steps: read.steps.map((step) => ({ ...step, written: undefined })) });
    // S and T written out, H and V too, so that both texts are numbers of the same kind.
    const numbers = (text: string) =>
      new SVGPathData(text)
        .toAbs()
        .normalizeHVZ(false, true, true)
        .normalizeST()
        .commands.flatMap((command) => Object.values(command).map(Number));
    const [was, is] = [numbers(d), numbers(anew)];
    expect(is).toHaveLength(was.length);
    is.forEach((number, i) => {
      expect(number).toBeCloseTo(was[i], 8);
    });
  });

  it("gives absolute points, those among them that a smooth curve takes over", () => {
    const { steps } = readPathText("m1 1 c0 1 1 2 2 2 s 2 0 2 1 t1 1 h3 z l1 0") ?? { steps: [] };
    expect(steps.map(({ points }) => points)).toEqual([
      [[1, 1]],
      [
        [1, 2],
        [2, 3],
        [3, 3],
      ],
      [
        [4, 3],
        [5, 3],
        [5, 4],
      ],
      // After S, T takes over nothing.
      [
        [5, 4],
        [6, 5],
      ],
      [[9, 5]],
      [],
      [[2, 1]],
    ]);
  });

  it("is none where the text is no path, or too long to be taken hold of", () => {
    for (const d of ["M 0 0 L", "L", "M 0 0 X 1", "M 0,,0"]) expect(readPathText(d)).toBeUndefined();
    expect(readPathText(`M0 0${"L1 1".repeat(LONGEST_PATH / 4)}`)).toBeUndefined();
  });
});
