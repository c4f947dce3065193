// Covers: src/marks/inscribe.ts, src/marks/mark.ts, src/marks/marks.ts
// Covers: src/design/marks.ts
import { type BuildOptions, build, type DesignInput } from "annulet";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { ringArea } from "../../src/flat/polygons.js";
import { openInside } from "../../src/ring/open-ring.js";
import { fontFiles } from "../support/fonts.js";

const CHANNEL = { form: "channel", rail: 2, depth: 0.4, edge: 0.1 } as const;
const band = (lettering: Record<string, unknown>, more: Partial<DesignInput> = {}): DesignInput =>
  ({
    annulet: 1,
    size: { system: "iso", value: 56 },
    profile: {
      width: 8,
      thickness: 1.8,
      outside: { form: "flat", edge: 0.2 },
      bore: { form: "comfort", rise: 0.2, edge: 0.3 },
    },
    ...more,
    lettering: [{ text: "Reed", ...lettering }],
  }) as DesignInput;

const make = (design: DesignInput, options: BuildOptions = {}) => build(design, { files: fontFiles, ...options });

async function failure(design: DesignInput, options: BuildOptions = {}): Promise<AnnuletError> {
  const error = await make(design, options).catch((cause: unknown) => cause);
  if (error instanceof AnnuletError) return error;
  throw new Error("nothing was thrown");
}

/** Area of a body's outline and its greatest depth or height, by the shoelace formula. */
async function flatArea(design: DesignInput): Promise<number> {
  const { answers } = await openInside(design, { files: fontFiles }).ask(["marks"]);
  const { marks } = answers.marks;
  const ring = (points: readonly (readonly number[])[]) => points.map(([x, y]) => ({ x, y }));
  return marks[0].body.outline.flat().reduce((sum, points) => sum + ringArea(ring(points)), 0);
}

describe("letters", () => {
  it.each([
    ["raised on a flat seat", { at: "seat", mode: "raised", relief: 0.3 }, 1],
    ["sunk in a flat seat", { at: "seat", depth: 0.3 }, -1],
    ["sunk in the bore", { at: "bore", depth: 0.2, text: "Reedbed 8" }, -1],
    ["raised in the bore", { at: "bore", mode: "raised", relief: 0.2 }, 1],
  ])("%s change the volume by their area times their height, and no handle is made", async (_, lettering, sign) => {
    const design = band(lettering, { tolerance: 0.002 });
    const bore = { form: "flat", edge: 0.3 } as const;
    const flat = { ...design, profile: { ...design.profile, bore } };
    const [ring, plain, area] = [await make(flat), await make({ ...flat, lettering: [] }), await flatArea(flat)];
    expect(ring.report).toMatchObject({ closed: true, components: 1, genus: 1, genusExpected: 1 });
    const height = ring.design.lettering[0].depth ?? ring.design.lettering[0].relief ?? 0;
    const inside = lettering.at === "bore";
    const radius = ring.report.size.diameter / 2 + (inside ? 0 : 1.8);
    // On a cylinder of radius R a level of height h covers its flat area times 1 + h / 2R on the whole (Pappus).
    const outward = sign * (inside ? -1 : 1);
    const expected = sign * area * height * (1 + (outward * height) / (2 * radius));
    expect((ring.report.volume - plain.report.volume) / expected).toBeCloseTo(1, 2);
  });

  it("on a rail stand on its flat top", async () => {
    const profile = { ...band({}).profile, outside: CHANNEL };
    const { mesh, report } = await make(band({ at: "rail", mode: "raised", relief: 0.25, height: 1.2 }, { profile }));
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1 });
    const top = report.size.diameter / 2 + 1.8;
    let most = 0;
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const r = Math.hypot(mesh.positions[i], mesh.positions[i + 1]);
      if (r > top + 0.1) expect(mesh.positions[i + 2]).toBeGreaterThan(1.9);
      most = Math.max(most, r);
    }
    expect(most).toBeCloseTo(top + 0.25, 4);
  });

  it("go through the relief where they are sunk", async () => {
    const regions = [{ path: "M 0.1 -0.3 L 0.9 -0.3 L 0.9 0.3 L 0.1 0.3 Z", height: 0.3 }];
    const pattern: DesignInput["pattern"] = { fit: { repeats: 8, aspect: 1, hold: "band" }, regions };
    const [cut, whole] = await Promise.all(
      [1, 0].map((count) => {
        const design = band({ text: "M", height: 3, depth: 0.2 }, { pattern });
        return make({ ...design, lettering: design.lettering?.slice(0, count) });
      }),
    );
    expect(cut.report).toMatchObject({ closed: true, components: 1, genus: 1 });
    // One stroke of the M alone is 3 by 0.4 mm, and most of it stands over the relief.
    expect(whole.report.volume - cut.report.volume).toBeGreaterThan(3 * 0.4 * (0.2 + 0.3));
  });

  it("turn with their angle", async () => {
    const at = async (angle: number) => (await make(band({ at: "bore", angle, mode: "raised" }))).report.centroid;
    const [[x0, y0], [x1, y1]] = [await at(90), await at(210)];
    const turn = (120 * Math.PI) / 180;
    expect(x0 * Math.cos(turn) - y0 * Math.sin(turn)).toBeCloseTo(x1, 4);
    expect(x0 * Math.sin(turn) + y0 * Math.cos(turn)).toBeCloseTo(y1, 4);
  });

  it("raised in the bore warn by how much they narrow it", async () => {
    const { report } = await make(band({ at: "bore", mode: "raised", relief: 0.2 }));
    expect(report.warnings).toContainEqual(expect.objectContaining({ code: "bore-narrowed", value: 0.2 }));
  });

  it("warn of strokes too thin to cast, with the width and the letter", async () => {
    const { report } = await make(band({ text: "He", height: 1.1 }));
    const warning = report.warnings.find(({ code }) => code === "stroke-thin");
    expect(warning?.message).toMatch(/a stroke of the letter e is 0\.1\d+ mm wide/);
    const bold = await make(band({ text: "IH", height: 3 }));
    expect(bold.report.warnings.map(({ code }) => code)).not.toContain("stroke-thin");
  });
});

describe("is refused with figures", () => {
  it.each([
    ["too long for the finger", { text: "reed ".repeat(20).trim() }, "mark-too-long", /mm long, and the seat only \d/],
    ["too high for the band", { height: 9 }, "mark-too-wide", /across the seat, which has/],
    ["beyond the edge", { v: 3.2 }, "mark-too-wide", /within/],
    ["too deep", { at: "bore", depth: 1.75 }, "depth-too-large", /at most 1\.\d+ mm/],
    [
      "rounded more than its strokes allow",
      { round: 0.2 },
      "round-too-large",
      /a stroke of the letter \w is only 0\.\d+/,
    ],
    ["on a rail that is not there", { at: "rail" }, "no-rail", /no rails/],
    ["in a font that is not there", { font: "other.ttf" }, "font-file-missing", /other\.ttf/],
    ["mixed in direction", { text: "שלום reed" }, "text-mixes-directions", /right to left/],
  ])("%s", async (_, lettering, code, message) => {
    const error = await failure(band(lettering));
    expect(error.code).toBe(code);
    expect(error.path).toMatch(/^lettering\[0\]/);
    expect(error.message).toMatch(message);
  });

  it.each([
    [{ at: "seat", side: "+z" }, "lettering[0].side"],
    [{ mode: "raised", depth: 0.2 }, "lettering[0].depth"],
    [{ relief: 0.2 }, "lettering[0].relief"],
  ])("fields that do not go together: %j", async (lettering, path) => {
    expect(await failure(band(lettering))).toMatchObject({ code: "value-invalid", path });
  });

  it("a bore text under a sunk seat text, where the wall between would be too thin", async () => {
    const both = (angle: number) => {
      const design = band({ at: "bore", depth: 1 });
      return { ...design, lettering: [...(design.lettering ?? []), { text: "Reed", depth: 0.8, angle }] };
    };
    expect((await failure(both(90))).message).toMatch(/0\.8 mm is cut from the other side/);
    expect((await make(both(270))).report.closed).toBe(true);
  });

  it("a font of 100 MB, handed over as it is", async () => {
    const files = { "big.ttf": new Uint8Array(100e6) };
    expect((await failure(band({ font: "big.ttf" }), { files })).code).toBe("font-too-large");
    expect((await failure(band({ font: "a.ttf" }), { files: { "a.ttf": "text" } })).code).toBe("font-kind-unknown");
  });
});
