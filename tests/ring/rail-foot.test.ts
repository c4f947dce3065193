// Covers: src/band/profile/outline.ts
import { describe, expect, it } from "vitest";
import { build } from "../../src/ring/build.js";
import { halfPlaneSection } from "../support/half-plane-section.js";

const ROOT = 0.25;
const HEIGHT = 0.4;
/** Half of what lies between the rails' walls, mm. */
const HALF = 1.6;
/** Half the seat. */
const EDGE = HALF - ROOT;
/** θ through the middle of a tile, off every vertex. */
const ANGLE = Math.PI / 2 + Math.PI / 12 + 1e-4;

const channel = { form: "channel", rail: 0.9, depth: 0.6, root: ROOT, edge: 0.1 };

function ringOf(regions: readonly object[], outside: object = channel, tolerance = 0.02) {
  return build({
    annulet: 1,
    size: { system: "iso", value: 55 },
    tolerance,
    profile: { width: 5, thickness: 2, outside },
    pattern: { fit: { repeats: 12, hold: "band" }, regions },
  });
}

const sectionArea = async (regions: readonly object[]) =>
  halfPlaneSection((await ringOf(regions, channel, 0.003)).mesh, ANGLE).area;

describe("relief that reaches rails with a fillet at their root", () => {
  const bar = `M 1.5 ${-EDGE} H 3.4 V ${EDGE} H 1.5 Z`;

  it("fills the fillet to the rail's wall, without a slot", async () => {
    const [filled, bare] = await Promise.all([
      sectionArea([{ path: bar, unit: "mm", height: HEIGHT }]),
      sectionArea([]),
    ]);
    const fillets = 2 * (1 - Math.PI / 4) * ROOT ** 2;
    expect(filled - bare).toBeCloseTo(2 * HALF * HEIGHT - fillets, 2);
  });

  it("does not come out at the side of a narrow rail", async () => {
    const narrow = { ...channel, rail: 0.3 };
    const edge = 2.5 - 0.3 - ROOT;
    const path = `M 1.5 ${-edge} H 3.4 V ${edge} H 1.5 Z`;
    const { mesh } = await ringOf([{ path, unit: "mm", height: HEIGHT, round: 0.3 }], narrow);
    const { w } = halfPlaneSection(mesh, ANGLE);
    expect(w[1] - w[0]).toBeCloseTo(5, 3);
  });

  it("joins slanting sides that meet within the fillet", async () => {
    const towards = [
      `M 1 0 L 1.9 0 L 2.45 ${EDGE} L 2.1 ${EDGE} Z`,
      `M 4 0 L 3.1 0 L 2.55 ${EDGE} L 2.9 ${EDGE} Z`,
    ].join(" ");
    const { report } = await ringOf([{ path: towards, unit: "mm", height: HEIGHT }]);
    expect(report).toMatchObject({ closed: true, components: 1, genus: expect.any(Number) });
  });
});
