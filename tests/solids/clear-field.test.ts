import { describe, expect, it } from "vitest";
import { makeBand } from "../../src/band/make-band.js";
import type { Warning } from "../../src/base/errors.js";
import type { Bead } from "../../src/beads/bead.js";
import { profileSchema } from "../../src/design/profile/profile.js";
import { makeField } from "../../src/marks/hallmark-field.js";
import { clearBeads } from "../../src/solids/clear-field.js";

describe("beads beside a hallmark's field", () => {
  // A flat outside of radius 10 mm; the field lies at +x, 4 mm round and 2 mm across.
  const spec = profileSchema.parse({
    width: 8,
    thickness: 2,
    bore: { form: "flat", edge: 0 },
    outside: { form: "flat", edge: 0 },
  });
  const band = makeBand(spec, 8, 0.001);
  const hallmark = { at: "seat", side: "+z", angle: 0, v: 0, width: 4, height: 2, depth: 0, corner: 0 } as const;
  const field = makeField(hallmark, { profile: band, startAngle: 0, tolerance: 0.01, path: "hallmark" });
  const bead = (z: number, radius: number): Bead => ({ centre: [10, 0, z], radius, outward: [1, 0, 0] });

  it("are left out where they reach into it, and stand where they do not", () => {
    const warnings: Warning[] = [];
    const [near, far] = [bead(1.3, 0.31), bead(1.3, 0.29)];
    const kept = clearBeads([near, far, bead(0, 0.1), bead(3, 0.5)], field, (warning) => warnings.push(warning));
    expect(kept).toEqual([far, bead(3, 0.5)]);
    expect(warnings).toMatchObject([{ code: "beads-cleared", value: 2 }]);
  });

  it("are all there where none does, and nothing is said", () => {
    const beads = [bead(1.3, 0.29)];
    const never = () => expect.unreachable();
    expect(clearBeads(beads, field, never)).toEqual(beads);
    expect(clearBeads(beads, undefined, never)).toBe(beads);
  });
});
