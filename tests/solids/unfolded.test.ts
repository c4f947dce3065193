import { build } from "annulet";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { findCrossings } from "../../src/mesh/crossings.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { openInside } from "../../src/ring/open-ring.js";
import { unfolded } from "../../src/solids/unfolded.js";
import { box } from "../support/meshes.js";
import { bodiesOf } from "../support/stages.js";

/** Straight flanks that lean by 39°, with a rounded bottom between them. */
const VALLEY = {
  width: 5,
  thickness: 3.2,
  bore: { form: "flat" },
  outside: { form: "free", path: "M -2.5 3.2 L -0.4 1.5 C -0.2 1.33809524 0.2 1.33809524 0.4 1.5 L 2.5 3.2", edge: 0 },
};

/** Both stand on the flanks, 1.1 mm off the middle. */
const LOW = "M 0.2 -0.13 H 0.8 V -0.3 H 0.2 Z";
const HIGH = "M 0.2 0.13 H 0.8 V 0.3 H 0.2 Z";

const ring = (height: number, paths: readonly string[], extra: object = {}) => ({
  annulet: 1,
  size: { diameter: 17.5 },
  tolerance: 0.05,
  profile: VALLEY,
  proud: true,
  pattern: {
    fit: { repeats: 8, hold: "band" },
    symmetry: "p1",
    regions: paths.map((path) => ({ path, height })),
    ...extra,
  },
});

/** What stands along the normals of a band, as one body. */
async function bent(height: number) {
  const document = ring(height, [LOW, HIGH]);
  const [{ parts }, { answers }] = [bodiesOf(document), await openInside(document).ask(["wrap", "pattern"])];
  return { mesh: concatMeshes(parts.reliefs), wrap: answers.wrap, body: answers.pattern.bodies[0] };
}

describe("walls that lean into each other over a valley", () => {
  it.each([
    ["of one region", ring(1.3, [`${LOW} ${HIGH}`])],
    ["of two regions", ring(1.3, [LOW, HIGH])],
    ["of images of each other, which stop", ring(1.3, [HIGH], { symmetry: "p11m", cover: 200 })],
  ])("%s, are one solid that nowhere crosses itself", async (_, document) => {
    const { mesh, report } = await build(document);
    expect(report.closed).toBe(true);
    expect((await findCrossings(mesh)).deepest).toBeLessThan(1e-5);
    // They meet over the valley: a tunnel under each pair.
    expect(report.genus).toBe(1 + 8);
  });

  it("stay one body while they do not reach each other, and become two where they do", async () => {
    const low = await bent(0.5);
    expect(unfolded(low.mesh, low.body, low.wrap)).toEqual([low.mesh]);
    const { mesh, body, wrap } = await bent(1.3);
    expect((await findCrossings(mesh)).deepest).toBeGreaterThan(0.01);
    const apart = unfolded(mesh, body, wrap);
    expect(apart).toHaveLength(2);
    for (const one of apart) {
      expect((await findCrossings(one)).count).toBe(0);
      expect(checkSolid(one, { components: 8 }).closed).toBe(true);
    }
    expect(apart.reduce((sum, { triangles }) => sum + triangles.length, 0)).toBe(mesh.triangles.length);
  });

  it("of one piece are an error that says what surely fits", async () => {
    const { body, wrap } = await bent(1.3);
    // Two boxes through each other, which have a corner in common.
    const two = concatMeshes([box(), box([1, 1, 1], [0.5, 0.4, 0.3])]);
    const crossed: Mesh = { ...two, triangles: two.triangles.map((vertex) => (vertex === 8 ? 0 : vertex)) };
    expect(() => unfolded(crossed, body, wrap)).toThrow(
      expect.objectContaining({
        code: "height-too-large",
        allowed: expect.stringMatching(/^at most 0\.\d+ mm there$/),
      }),
    );
  });

  it("upright stand beside each other", async () => {
    const document = ring(1.3, [LOW, HIGH]);
    const upright = document.pattern.regions.map((region) => ({ ...region, upright: true }));
    const { report } = await build({ ...document, pattern: { ...document.pattern, regions: upright } });
    expect(report).toMatchObject({ closed: true, genus: 1 });
  });
});
