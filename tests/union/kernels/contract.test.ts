// Covers: src/union/kernels/*
import { describe, expect, it } from "vitest";
import type { HalfSpace } from "../../../src/base/math/half-space.js";
import type { RoundSymmetry } from "../../../src/base/math/round.js";
import { TURN } from "../../../src/base/units.js";
import { geodesicSphere } from "../../../src/beads/bead.js";
import { checkSolid } from "../../../src/judge/gate.js";
import { surfaceArea } from "../../../src/measure/measure.js";
import { concatMeshes, type Mesh } from "../../../src/mesh/mesh.js";
import type { Step } from "../../../src/mesh/step.js";
import { transformMesh } from "../../../src/mesh/transform.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { bvhKernel } from "../../../src/union/kernels/bvh.js";
import type { Kernel } from "../../../src/union/kernels/kernel.js";
import { manifoldKernel } from "../../../src/union/kernels/manifold.js";
import { type Road, uniteRing } from "../../../src/union/union.js";
import { box, revolve, sphere, torus } from "../../support/meshes.js";
import { unitStep } from "../../support/steps.js";

const ball = (radius: number, at: readonly [number, number, number], deviation = 2e-3): Mesh => {
  const [x, y, z] = at;
  return transformMesh(geodesicSphere(deviation), [radius, 0, 0, 0, 0, radius, 0, 0, 0, 0, radius, 0, x, y, z, 1]);
};

/** Cuts by the planes one after the other. */
async function cutAll(kernel: Kernel, body: Mesh, planes: readonly HalfSpace[]): Promise<Mesh> {
  let rest = body;
  for (const plane of planes) rest = await kernel.cut(rest, plane);
  return rest;
}

/** Volumes on two roads differ by what tidying and single precision change of faces and edges. */
const SAME_VOLUME = 1e-6;

const root = Math.SQRT1_2;

/** Scenes with a known volume; `share` is how far the result may be from it. */
const scenes: readonly {
  readonly name: string;
  readonly run: (kernel: Kernel) => Promise<Mesh>;
  readonly volume: number;
  readonly share: number;
  readonly genus?: number;
  /** Kernels that are known to leave it open, which the gate must see. */
  readonly leaks?: readonly string[];
}[] = [
  {
    name: "two boxes that cross: 8 + 8 − 1",
    run: (kernel) => kernel.union([box([2, 2, 2]), box([2, 2, 2], [1, 1, 1])]),
    volume: 15,
    share: 1e-6,
  },
  {
    name: "three boxes in a row, in one call",
    run: (kernel) => kernel.union([box([2, 1, 1]), box([2, 0.5, 0.5], [1.5, 0.2, 0.2]), box([2, 1, 1], [3, 0, 0])]),
    volume: 4.25,
    share: 1e-6,
  },
  {
    name: "a box less a box through it: a frame",
    run: (kernel) => kernel.subtract(box([3, 3, 1]), box([1, 1, 3], [1, 1, -1])),
    volume: 8,
    share: 1e-6,
    genus: 1,
  },
  {
    name: "a box less its corner",
    run: (kernel) => kernel.subtract(box([2, 2, 2]), box([2, 2, 2], [1, 1, 1])),
    volume: 7,
    share: 1e-6,
  },
  {
    // Lens of balls R and r, centres d apart: π(R + r − d)²(d² + 2d(r + R) − 3(r − R)²) / 12d (MathWorld, Sphere-Sphere
    // Intersection); R 2, r 1, d 2 gives 13π/24 = 1.701696.
    name: "two spheres: the sum less their lens",
    run: (kernel) => kernel.union([ball(2, [0, 0, 0]), ball(1, [2, 0, 0])]),
    volume: (4 / 3) * Math.PI * 9 - 1.701696,
    share: 2e-3,
  },
  {
    // Cap π h² (3R − h) / 3 with h = R / 2: 5/24 π R³.
    name: "a sphere cut above half its radius",
    run: (kernel) => kernel.cut(ball(1, [0, 0, 0]), { normal: [0, 0, 1], offset: 0.5 }),
    volume: (4 / 3 - 5 / 24) * Math.PI,
    share: 3e-3,
  },
  {
    name: "a box cut through four of its vertices: a half",
    run: (kernel) => kernel.cut(box([2, 2, 2], [-1, -1, -1]), { normal: [root, root, 0], offset: 0 }),
    volume: 4,
    share: 1e-6,
  },
  {
    name: "a box cut by three planes through its middle: an eighth",
    run: (kernel) =>
      cutAll(kernel, box([2, 2, 2], [-1, -1, -1]), [
        { normal: [1, 0, 0], offset: 0 },
        { normal: [0, -1, 0], offset: 0 },
        { normal: [0, 0, 1], offset: 0 },
      ]),
    volume: 1,
    share: 1e-6,
  },
  {
    // An n-gon's inscribed torus has a wedge of 1/n of its volume between planes through its vertices.
    name: "a torus cut to a quarter by planes through its vertices",
    run: (kernel) =>
      cutAll(kernel, torus(3, 1, 24, 12), [
        { normal: [-1, 0, 0], offset: 0 },
        { normal: [0, -1, 0], offset: 0 },
      ]),
    volume: signedVolume(torus(3, 1, 24, 12)) / 4,
    share: 1e-5,
    leaks: ["bvh"],
  },
  {
    name: "several shells in one part",
    run: (kernel) =>
      kernel.union([box([10, 1, 1]), concatMeshes([box([1, 1, 1], [1, 0.5, 0.5]), box([1, 1, 1], [5, 0.5, 0.5])])]),
    volume: 10 + 2 * 0.75,
    share: 1e-6,
  },
];

describe.each([manifoldKernel, bvhKernel])("the $name kernel", (kernel) => {
  it.each(scenes)("$name", async ({ run, volume, share, genus = 0, leaks = [] }) => {
    const mesh = await run(kernel);
    if (leaks.includes(kernel.name)) {
      expect(checkSolid(mesh).closed).toBe(false);
      return;
    }
    expect(Math.abs(signedVolume(mesh) / volume - 1)).toBeLessThan(share);
    const check = checkSolid(mesh);
    expect(check.faults).toEqual([]);
    expect(check.genus).toBe(genus);
  });

  it("leaves its inputs alone", async () => {
    const parts = [box([2, 2, 2]), box([2, 2, 2], [1, 1, 1])];
    const before = structuredClone(parts);
    await kernel.union(parts);
    await kernel.subtract(parts[0], parts[1]);
    await kernel.cut(parts[0], { normal: [1, 0, 0], offset: 1 });
    expect(parts).toEqual(before);
  });

  it("gives the same bytes again", async () => {
    const parts = [sphere(1, 8, 12), box([1, 1, 1])];
    expect(await kernel.union(parts)).toEqual(await kernel.union(parts));
  });
});

describe("the two kernels", () => {
  it.each(scenes.filter(({ leaks }) => leaks === undefined))("agree: $name", async ({ run }) => {
    const [a, b] = [await run(manifoldKernel), await run(bvhKernel)];
    expect(signedVolume(a)).toBeCloseTo(signedVolume(b), 4);
    expect(surfaceArea(a)).toBeCloseTo(surfaceArea(b), 3);
  });
});

/** How a ring is to be united. */
interface RoadCase {
  readonly road: Road;
  readonly title: string;
  /** Default none. */
  readonly symmetry?: (ring: Ring) => RoundSymmetry;
}

/** A small ring of alike units whose volume is known; a mirror lies at the angle 0. */
interface Ring {
  readonly name: string;
  readonly units: number;
  readonly steps: readonly Step[];
  readonly volume: number;
  /** How far the result may be from it. */
  readonly share: number;
  readonly genus: number;
  /** `kernel, road` that is known to leave it open, so that manifold takes over. */
  readonly leaks?: readonly string[];
}

const roads: readonly RoadCase[] = [
  { road: "whole", title: "whole" },
  {
    road: "turn",
    title: "turn",
    symmetry: ({ units }) => {
      // Clear of the mirrors, where bodies and facets begin and end.
      const from = (0.31 * TURN) / units;
      return { units, mirrored: false, sectors: [{ from, to: from + TURN / units }] };
    },
  },
  {
    road: "mirror",
    title: "mirror, half a unit",
    symmetry: ({ units }) => ({ units, mirrored: true, sectors: [{ from: 0, to: TURN / units / 2 }] }),
  },
  {
    road: "mirror",
    title: "mirror, a quarter of a unit",
    symmetry: ({ units }) => ({ units, mirrored: true, sectors: [{ from: 0, to: TURN / units / 2, upper: true }] }),
  },
];

/** Bore and outside of the flat-faceted rings, half their width, mm; their facets, one in the middle of each unit. */
const FLAT = { bore: 5, outside: 7, half: 1, facets: 6 } as const;

const rings: readonly Ring[] = [necklace(), studded(), flush(), pierced()];

/** Balls in a circle, each in the next: n balls less n lenses, V = n (4/3 π r³ − π (2r − d)² (d² + 4 d r) / 12 d). */
function necklace(): Ring {
  const [units, reach, radius] = [6, 6, 3.6];
  // Turned, not only moved: the facets of each are to be those of the next.
  const balls = Array.from({ length: units }, (_, i) =>
    transformMesh(ball(radius, [reach, 0, 0]), turnAbout((TURN * i) / units)),
  );
  const apart = 2 * reach * Math.sin(TURN / units / 2);
  // MathWorld, Sphere-Sphere Intersection, eq. 16 with R = r; from memory.
  const lens = (Math.PI * (2 * radius - apart) ** 2 * (apart ** 2 + 4 * apart * radius)) / (12 * apart);
  return {
    name: "balls in a circle, each in the next: their sum less the lenses",
    units,
    share: 2e-3,
    genus: 1,
    steps: [unitStep("add", balls.slice(0, 1)), unitStep("add", balls.slice(1), true)],
    volume: units * ((4 / 3) * Math.PI * radius ** 3 - lens),
  };
}

/**
 * A ring of flat facets. By Pappus its volume is 2π R A as the facets grow many; with n of them each is a prism between
 * two half planes, and 2π becomes n sin(2π/n).
 */
function facetRing(): { readonly band: Mesh; readonly volume: number } {
  const { bore, outside, half, facets } = FLAT;
  const outline = [
    [-half, bore],
    [-half, outside],
    [half, outside],
    [half, bore],
  ] as const;
  const turned = transformMesh(revolve(outline, facets), turnAbout(TURN / facets / 2));
  const area = 2 * half * (outside - bore);
  return { band: turned, volume: facets * Math.sin(TURN / facets) * area * ((bore + outside) / 2) };
}

/** Boxes through the middles of the facets. */
function boxes(size: readonly [number, number, number], from: number): Mesh[] {
  const [deep, wide, high] = size;
  return Array.from({ length: FLAT.facets }, (_, i) =>
    transformMesh(box([deep, wide, high], [from, -wide / 2, -high / 2]), turnAbout((TURN * i) / FLAT.facets)),
  );
}

function studded(): Ring {
  const { band, volume } = facetRing();
  const [face, top] = [FLAT.outside * Math.cos(TURN / FLAT.facets / 2), 7];
  return {
    name: "a ring of flat facets with a box on each: Pappus, and what stands out",
    units: FLAT.facets,
    share: 1e-6,
    genus: 1,
    steps: [unitStep("add", [band]), unitStep("add", boxes([top - 5.5, 1, 0.8], 5.5))],
    volume: volume + FLAT.facets * (top - face) * 1 * 0.8,
  };
}

function flush(): Ring {
  const { band, volume } = facetRing();
  const [face, top, wide] = [FLAT.outside * Math.cos(TURN / FLAT.facets / 2), 7, 1];
  return {
    name: "the same with boxes as wide as the ring: faces in one plane",
    units: FLAT.facets,
    share: 1e-6,
    genus: 1,
    leaks: ["bvh, whole"],
    steps: [unitStep("add", [band]), unitStep("add", boxes([top - 5.5, wide, 2 * FLAT.half], 5.5))],
    volume: volume + FLAT.facets * (top - face) * wide * 2 * FLAT.half,
  };
}

function pierced(): Ring {
  const { band, volume } = facetRing();
  const wall = (FLAT.outside - FLAT.bore) * Math.cos(TURN / FLAT.facets / 2);
  return {
    name: "a ring of flat facets with a hole through each: Pappus, less the holes",
    units: FLAT.facets,
    share: 1e-6,
    genus: 1 + FLAT.facets,
    steps: [unitStep("add", [band]), unitStep("cut", boxes([4, 1.2, 0.7], 3.5))],
    volume: volume - FLAT.facets * wall * 1.2 * 0.7,
  };
}

/** Round z, by columns. */
function turnAbout(angle: number) {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1] as const;
}

describe.each([manifoldKernel, bvhKernel])("rings by the $name kernel", (kernel) => {
  describe.each(roads)("on the road $title", ({ road, title, symmetry }) => {
    it.each(rings)("$name", async (ring) => {
      const options = { fallback: manifoldKernel, check: checkSolid };
      const { steps } = ring;
      const { mesh, check, ...how } = await uniteRing({ steps, symmetry: symmetry?.(ring) }, { kernel, ...options });
      expect(check.faults).toEqual([]);
      expect(check).toMatchObject({ components: 1, genus: ring.genus });
      const volume = signedVolume(mesh);
      expect(Math.abs(volume / ring.volume - 1)).toBeLessThan(ring.share);
      const whole = await uniteRing({ steps }, { kernel: manifoldKernel, ...options });
      expect(Math.abs(volume / signedVolume(whole.mesh) - 1)).toBeLessThan(SAME_VOLUME);
      if (ring.leaks?.includes(`${kernel.name}, ${title}`)) {
        expect(how).toMatchObject({ kernel: "manifold", road, rejected: kernel.name });
        expect(how.roadReason).toContain(`${road} by ${kernel.name} did not close`);
      } else {
        expect(how).toMatchObject({ kernel: kernel.name, road });
        expect(how).not.toHaveProperty("rejected");
        expect(how.roadReason).not.toContain("did not close");
      }
    });
  });
});

describe("the manifold kernel", () => {
  it("refuses a part that is not closed, by a name", async () => {
    const open = { ...box(), triangles: box().triangles.slice(3) };
    await expect(manifoldKernel.union([box(), open])).rejects.toMatchObject({ code: "kernel-failed" });
  });

  it("still works after a refusal", async () => {
    const open = { ...box(), triangles: box().triangles.slice(3) };
    await manifoldKernel.union([open]).catch(() => undefined);
    expect(signedVolume(await manifoldKernel.union([box()]))).toBeCloseTo(1, 6);
  });

  it("frees what it takes: its memory does not grow from the 20th union to the 100th", async () => {
    const parts = [ball(1, [0, 0, 0], 5e-4), ball(1, [0.7, 0.2, 0.1], 5e-4)];
    const resident: number[] = [];
    for (let i = 1; i <= 100; i++) {
      await manifoldKernel.union(parts);
      if (i === 20 || i === 100) resident.push(process.memoryUsage().rss);
    }
    // Kept, each union would hold some 3 MB in the WASM heap.
    expect(resident[1] - resident[0]).toBeLessThan(100 * 2 ** 20);
  });
});

describe.each([manifoldKernel, bvhKernel])("the union of many by the $name kernel", (kernel) => {
  const row = Array.from({ length: 12 }, (_, i) => box([1.5, 1, 1], [i, 0.01 * i, 0.02 * i]));

  it("stops between two parts at a signal that a timer raises", async () => {
    await kernel.union(row.slice(0, 2));
    const controller = new AbortController();
    const united = kernel.union(row, controller.signal);
    setTimeout(() => controller.abort(new Error("enough")), 0);
    await expect(united).rejects.toThrow("enough");
  });

  it("is the same whether or not there is a signal", async () => {
    const { signal } = new AbortController();
    expect(await kernel.union(row.slice(0, 3), signal)).toEqual(await kernel.union(row.slice(0, 3)));
  });
});
