// Covers: src/solids/mark-steps.ts
import { readFileSync } from "node:fs";
import { build, type DesignInput } from "annulet";
import { describe, expect, it } from "vitest";
import { makeBand } from "../../src/band/make-band.js";
import { AnnuletError } from "../../src/base/errors.js";
import { radians } from "../../src/base/units.js";
import { profileSchema } from "../../src/design/profile/profile.js";
import { distanceToField, makeField } from "../../src/marks/hallmark-field.js";
import { fontFiles } from "../support/fonts.js";

const FIELD = { at: "seat", angle: 270, width: 5, height: 2.4, corner: 0.5, depth: 0 } as const;
const make = (design: DesignInput) => build(design, { files: fontFiles });
const flat = (more: Partial<DesignInput>): DesignInput => ({
  annulet: 1,
  size: { system: "iso", value: 56 },
  tolerance: 0.004,
  profile: { width: 7, thickness: 1.8, bore: { form: "flat", edge: 0.3 }, outside: { form: "flat", edge: 0.2 } },
  ...more,
});

describe("a hallmark's field", () => {
  it.each(["bore", "seat"] as const)("sunk in the %s takes its area times its depth", async (at) => {
    const hallmark = { ...FIELD, at, depth: 0.2 };
    const [ring, plain] = [await make(flat({ hallmark })), await make(flat({}))];
    expect(ring.report).toMatchObject({ closed: true, components: 1, genus: 1, genusExpected: 1 });
    const area = 5 * 2.4 - (4 - Math.PI) * 0.5 ** 2;
    const radius = ring.report.size.diameter / 2 + (at === "bore" ? 0 : 1.8);
    const outward = at === "bore" ? 1 : -1;
    const expected = area * 0.2 * (1 + (outward * 0.2) / (2 * radius));
    expect((plain.report.volume - ring.report.volume) / expected).toBeCloseTo(1, 2);
  });

  it("on the seat is plain: no relief, no bead and no hole stands in it", async () => {
    const design = JSON.parse(readFileSync("examples/eelgrass-pierced.json", "utf8")) as DesignInput;
    const more = { hallmark: { ...FIELD, width: 6.5, height: 6.1 }, beads: [{ along: { v: 2.9 }, diameter: 0.3 }] };
    const [ring, whole] = [await make({ ...design, ...more } as DesignInput), await make(design)];
    const { report, mesh } = ring;
    expect(report).toMatchObject({ closed: true, components: 1, genus: report.genusExpected });
    expect(report.genus).toBeLessThan(whole.report.genus);
    expect(report.warnings).toContainEqual(expect.objectContaining({ code: "beads-cleared", path: "hallmark" }));
    const outside = report.size.diameter / 2 + 1.5;
    let found = 0;
    for (let i = 0; i < mesh.positions.length; i += 3) {
      const [x, y, z] = mesh.positions.slice(i, i + 3);
      const r = Math.hypot(x, y);
      const along = Math.atan2(x, -y) * outside;
      if (Math.abs(along) > 6.5 / 2 - 0.6 || Math.abs(z) > 6.1 / 2 - 0.6) continue;
      found++;
      expect(Math.min(Math.abs(r - outside), Math.abs(r - report.size.diameter / 2))).toBeLessThan(0.12);
    }
    expect(found).toBeGreaterThan(0);
  });

  it("clears raised art too", async () => {
    const regions = [{ path: "M 0.1 -0.3 L 0.9 -0.3 L 0.9 0.3 L 0.1 0.3 Z", height: 0.3 }];
    const pattern: DesignInput["pattern"] = { fit: { repeats: 8, hold: "band" }, regions };
    const [ring, whole] = [await make(flat({ pattern, hallmark: FIELD })), await make(flat({ pattern }))];
    expect(ring.report).toMatchObject({ closed: true, components: 1, genus: 1, genusExpected: 1 });
    // The field lies on two neighbouring tiles and the gap between them; both are 0.3 mm high.
    const lost = whole.report.volume - ring.report.volume;
    expect(lost).toBeGreaterThan(0.3 * 2.4 * 2);
    expect(lost).toBeLessThan(0.3 * 5 * 2.4 * 1.05);
  });

  it.each([
    { at: "seat", radius: 10.8 },
    { at: "bore", radius: 9 },
  ] as const)("lies where it is asked to be, + towards +z: $at", ({ at, radius }) => {
    const profile = profileSchema.parse({
      width: 7,
      thickness: 1.8,
      bore: { form: "flat", edge: 0 },
      outside: { form: "flat", edge: 0 },
    });
    const band = makeBand(profile, 9, 0.005);
    const spec = { ...FIELD, at, v: 1.2, angle: 200, depth: 0.1 };
    const field = makeField(spec, { profile: band, startAngle: -0.3, tolerance: 0.005, path: "hallmark" });
    const distance = (along: number, z: number) => {
      const angle = radians(200) + along / radius;
      return distanceToField(field, [radius * Math.cos(angle), radius * Math.sin(angle), z]);
    };
    // The middle lies half its height, 1.2 mm, inside.
    expect(distance(0, 1.2)).toBeCloseTo(-1.2, 6);
    expect(distance(0, 2.4)).toBeCloseTo(0, 6);
    expect(distance(0, 0)).toBeCloseTo(0, 6);
    expect(distance(0, -1.2)).toBeCloseTo(1.2, 6);
    expect(distance(2.5, 1.2)).toBeCloseTo(0, 6);
    expect(distance(-3, 1.2)).toBeCloseTo(0.5, 6);
    // What is cut has its points in the same place.
    const { surface, body } = field.mark ?? { surface: field.surface, body: undefined };
    const heights = (body?.outline ?? []).flat(2).map((point) => surface.wrap.forward(...point)[2]);
    expect(Math.min(...heights)).toBeCloseTo(0, 2);
    expect(Math.max(...heights)).toBeCloseTo(2.4, 2);
  });

  it("warns of lettering over it", async () => {
    const lettering = [{ text: "Reed", angle: 270 }];
    const { report } = await make(flat({ hallmark: FIELD, lettering }));
    expect(report.warnings.map(({ code }) => code)).toContain("lettering-on-hallmark");
    const apart = await make(flat({ hallmark: FIELD, lettering: [{ text: "Reed", angle: 90 }] }));
    expect(apart.report.warnings.map(({ code }) => code)).not.toContain("lettering-on-hallmark");
  });

  it.each([
    [{ ...FIELD, height: 7 }, "mark-too-wide", "hallmark"],
    [{ ...FIELD, width: 50, height: 2 }, undefined, undefined],
    [{ ...FIELD, depth: 1.75 }, "depth-too-large", "hallmark"],
    [{ ...FIELD, corner: 1.3 }, "value-invalid", "hallmark.corner"],
    [{ ...FIELD, at: "rail" }, "no-rail", "hallmark.at"],
  ])("%j", async (hallmark, code, path) => {
    const error = await make(flat({ hallmark } as Partial<DesignInput>)).catch((cause: unknown) => cause);
    if (code === undefined) expect(error).toMatchObject({ report: { closed: true } });
    else {
      expect(error).toBeInstanceOf(AnnuletError);
      expect(error).toMatchObject({ code, path });
    }
  });
});
