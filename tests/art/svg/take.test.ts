// Covers: src/art/svg/drawing-key.ts, src/design/art/svg-take.ts
/** What of a drawing is taken: by colour, by id, by layer. */
import { build, readDesign } from "annulet";
import { describe, expect, it } from "vitest";
import { readSvg } from "../../../src/art/svg/read-svg.js";
import type { TakeSpec } from "../../../src/design/art/svg-take.js";
import { failureOf } from "../../flat/strips.js";
import { areaOfDrawing, svg } from "./svgs.js";

const LABELS = 'width="100" height="100" xmlns:n="http://example.com/names"';

/** A white ground of 100 × 100, a layer of two squares of 100 and 400, a circle drawn by `use`, a framed square. */
const PARTS = svg(
  `<rect id="ground" fill="#FFF" width="100" height="100"/>
  <g n:label="Leaves"><rect width="10" height="10"/><rect id="big" fill="rgb(255,0,0)" x="20" width="20" height="20"/></g>
  <defs><circle id="dot" r="10"/></defs><use id="seed" href="#dot" x="50" y="50"/>
  <g data-name="Frame"><rect x="70" y="70" width="20" height="20" fill="white" stroke="navy" stroke-width="2"/></g>`,
  LABELS,
);

function take(spec?: TakeSpec, text = PARTS) {
  const codes: string[] = [];
  const drawing = readSvg(text, "a.svg", "r.svg", ({ code }) => codes.push(code), spec);
  return { area: areaOfDrawing(drawing), codes };
}

const DOT = 100 * Math.PI;
/** The square's frame: a square of 22 less one of 18. */
const FRAME = 22 ** 2 - 18 ** 2;

describe("what is taken of a drawing", () => {
  it.each<[string, TakeSpec, number]>([
    ["a white ground left out, however white is written", { without: ["hsl(0, 0%, 100%)"] }, 500 + DOT + FRAME],
    ["one colour alone, a stroke without its fill", { only: ["#000080"] }, FRAME],
    ["two colours", { only: ["red", "navy"] }, 400 + FRAME],
    ["a layer by its label", { only: ["layer:Leaves"] }, 500],
    ["a layer, but not one colour of it", { only: ["layer:Leaves"], without: ["black"] }, 400],
    ["an element by its id", { only: ["id:big"] }, 400],
    ["what use draws, by its own id", { only: ["id:seed"] }, DOT],
    ["what use draws, by the target's id", { only: ["id:dot"] }, DOT],
    ["a layer by its other name", { only: ["layer:Frame"] }, 22 ** 2],
    ["all but a layer and the ground", { without: ["layer:Leaves", "id:ground"] }, DOT + 22 ** 2],
  ])("%s", (_, spec, area) => {
    expect(take(spec).area / area).toBeCloseTo(1, 3);
  });

  it("has no colours beside those that are left", () => {
    expect(take().codes).toEqual(["svg-colours"]);
    expect(take({ only: ["red"] }).codes).toEqual([]);
  });

  it("is not warned of what is left out with its layer, and is of what stays", () => {
    const text = svg('<g id="notes"><text>A</text></g><text>B</text><rect width="9" height="9"/>');
    expect(take(undefined, text).codes).toHaveLength(2);
    expect(take({ without: ["id:notes"] }, text).codes).toHaveLength(1);
    expect(take({ only: ["black"] }, text).codes).toHaveLength(0);
  });

  it("keeps clip paths whole: they are no paint", () => {
    const text = svg(
      '<clipPath id="c"><rect id="k" fill="white" width="5" height="9"/></clipPath><rect clip-path="url(#c)" width="9" height="9"/>',
    );
    expect(take({ only: ["black"] }, text).area).toBeCloseTo(45, 6);
    expect(failureOf(() => take({ only: ["white"] }, text)).code).toBe("svg-part-unknown");
  });

  it.each<[string, TakeSpec, RegExp]>([
    ["a colour that is not there", { without: ["#fffffe"] }, /"#fffffe"/],
    ["an id without its prefix", { only: ["big"] }, /"big"/],
    ["a layer by an id", { only: ["red"], without: ["layer:big"] }, /"layer:big"/],
    ["what is hidden", { only: ["id:big", "id:none"] }, /"id:none"/],
  ])("must be there: %s", (_, spec, message) => {
    const error = failureOf(() => take(spec));
    expect(error).toMatchObject({ code: "svg-part-unknown", path: "r.svg" });
    expect(error.message).toMatch(message);
    expect(error.allowed).toContain("#ffffff, layer:Leaves, #000000, id:big");
  });

  it("must leave something", () => {
    const error = failureOf(() => take({ only: ["id:big"], without: ["red"] }));
    expect(error.code).toBe("svg-empty");
  });
});

const design = (regions: readonly object[]) => ({
  annulet: 1,
  size: { diameter: 18 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 1.6, bore: { form: "flat" }, outside: { form: "flat", edge: 0.2 } },
  pattern: { fit: { repeats: 10, hold: "band" }, regions },
});

describe("a document that takes parts", () => {
  it("takes several of one file, each at its height", async () => {
    const text = svg(
      '<rect fill="white" width="100" height="100"/><rect x="20" y="20" width="20" height="60"/><rect x="60" y="20" fill="red" width="20" height="60"/>',
    );
    const path = (x: number) => `M ${x} -0.3 h 0.2 v 0.6 h -0.2 Z`;
    const place = { fit: [1, 1] };
    const [drawn, taken] = await Promise.all([
      build(design([0.2, 0.6].map((x, i) => ({ path: path(x), height: 0.3 + 0.1 * i })))),
      build(
        design([
          { svg: "a.svg", take: { only: ["black"] }, place, height: 0.3 },
          { shape: { svg: "a.svg", take: { without: ["white", "black"] }, place }, height: 0.4 },
        ]),
        { files: { "a.svg": text } },
      ),
    ]);
    expect(taken.report.volume).toBeCloseTo(drawn.report.volume, 3);
    expect(taken.report.warnings.filter(({ code }) => code === "svg-colours")).toEqual([]);
  });

  it("takes them of files alone", () => {
    const error = failureOf(() =>
      readDesign(design([{ path: "M 0 0 H 1 V 1 Z", take: { only: ["red"] }, height: 0.2 }])),
    );
    expect(error.path).toBe("pattern.regions[0].take");
  });
});
