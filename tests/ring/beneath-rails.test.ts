// Across: relief that goes on beneath the rails, as if they stood on top of it
import { describe, expect, it } from "vitest";
import { build } from "../../src/ring/build.js";
import { halfPlaneSection } from "../support/half-plane-section.js";

const channel = { form: "channel", rail: 0.9, depth: 0.6, edge: 0.1 };
/** Half the seat, mm. */
const EDGE = 1.6;
/** θ through a tile, off every vertex. */
const ANGLE = Math.PI / 2 + Math.PI / 12 + 1e-4;

function ringOf(pattern: object, tolerance = 0.02, outside: object = channel) {
  return build({
    annulet: 1,
    size: { system: "iso", value: 55 },
    tolerance,
    profile: { width: 5, thickness: 2, outside },
    pattern: { fit: { repeats: 12, hold: "band" }, ...pattern },
  });
}

const ridge = { form: "ridge", height: 0.4 };

describe("a ridge whose crest lies on the seat's edge", () => {
  const path = `M 0 ${EDGE - 0.5} H 10 V ${EDGE + 0.5} H 0 Z`;
  const stripe = { path, unit: "mm", section: ridge, beneath: true };

  it("rises to the rail as if it stood on top", async () => {
    const [made, bare] = await Promise.all([ringOf({ regions: [stripe] }, 0.004), ringOf({ regions: [] }, 0.004)]);
    expect(made.report).toMatchObject({ closed: true, genus: 1, components: 1 });
    const area = (ring: typeof made) => halfPlaneSection(ring.mesh, ANGLE).area;
    expect(area(made) - area(bare)).toBeCloseTo((0.5 * 0.4) / 2, 2);
  });

  it("is refused where there is no rail, and outside the tile where it does not go beneath", async () => {
    const regions = [stripe];
    await expect(ringOf({ regions }, 0.02, { form: "flat" })).rejects.toMatchObject({ code: "no-rails" });
    const plain = { ...stripe, beneath: undefined };
    await expect(ringOf({ regions: [plain] })).rejects.toMatchObject({ code: "path-outside-tile" });
  });
});

describe("motifs in half-drop", () => {
  const disc = { path: "M 0.05 0 A 0.2 0.2 0 0 1 0.45 0 A 0.2 0.2 0 0 1 0.05 0 Z" };
  const shape = { lattice: { columns: 2, rows: 1, set: "half-drop" }, of: disc };
  const section = { form: "domed", height: 0.35, wall: 0.1 };

  it("stand at the rails as high as in the middle, closed, with beads along what is seen", async () => {
    const region = { shape, section, beneath: true, beads: { diameter: 0.2, on: 0.1 } };
    const { report, mesh } = await ringOf({ regions: [region] }, 0.03);
    expect(report).toMatchObject({ closed: true, genus: 1, components: 1 });
    const { w } = halfPlaneSection(mesh, ANGLE);
    expect(w[1] - w[0]).toBeCloseTo(5, 3);
  });
});
