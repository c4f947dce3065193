// Covers: src/output/report/report.ts, src/solids/detail.ts, src/ring/steps/output.ts, src/ring/steps/solid.ts
import { createHash } from "node:crypto";
import {
  AnnuletError,
  type BuildOptions,
  build,
  bvhKernel,
  checkSolid,
  encodeMesh,
  formats,
  manifoldKernel,
} from "annulet";
import { describe, expect, it } from "vitest";
import type { Kernel } from "../../src/union/kernels/kernel.js";
import { SMOOTH_FORMS } from "../band/surface/forms.js";

const COARSE = 0.05;

const plain = {
  annulet: 1,
  // A flat band of US size 6, 16.51 mm, whose volume is π(D + t)wt by Pappus.
  size: { diameter: 16.51 },
  profile: { width: 6, thickness: 1.8, bore: { form: "flat", edge: 0 }, outside: { form: "flat", edge: 0 } },
};

const quatrefoil = {
  symmetry: "p2mm",
  regions: [{ name: "leaf", path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.4, round: 0.05 }],
};

const beaded = {
  ...quatrefoil,
  regions: quatrefoil.regions.map((region) => ({ ...region, beads: { diameter: 0.24, on: 0.18 } })),
};

const patterned = {
  ...plain,
  tolerance: COARSE,
  profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
  pattern: quatrefoil,
  beads: [{ along: "rail", diameter: 0.4 }],
};

async function failureOf(document: unknown, options?: BuildOptions): Promise<AnnuletError> {
  const error: unknown = await build(document, options).then(
    () => undefined,
    (reason) => reason,
  );
  if (error instanceof AnnuletError) return error;
  throw new Error(`no AnnuletError: ${error}`);
}

const codes = (warnings: readonly { code: string }[]) => warnings.map(({ code }) => code);

describe("a plain band", () => {
  it("has the volume and surface that Pappus gives, less what the tolerance's chords take", async () => {
    const [volume, area] = [621.2437, 897.352];
    for (const tolerance of [0.05, 0.01, 0.002]) {
      const { report } = await build({ ...plain, tolerance });
      expect(report).toMatchObject({ closed: true, genus: 1, genusExpected: 1, components: 1, kernel: "none" });
      expect(report.road).toBe("plain");
      // Chords take no more than the tolerance off the outside; the bore's chords give back.
      expect(Math.abs(report.volume - volume)).toBeLessThan(tolerance * area);
      expect(Math.abs(report.area - area)).toBeLessThan(tolerance * area);
      expect(report.vertices * 2).toBe(report.triangles);
      expect(report.bounds.max[2] - report.bounds.min[2]).toBeCloseTo(6, 9);
    }
  });

  it("is told with its sharpest angle, in degrees, and its shortest edge", async () => {
    const { mesh, report } = await build({ ...plain, tolerance: COARSE });
    const point = (vertex: number) => [...mesh.positions.slice(3 * vertex, 3 * vertex + 3)];
    let [sharpest, shortest] = [180, Number.POSITIVE_INFINITY];
    for (let t = 0; t < mesh.triangles.length; t += 3) {
      const corners = [...mesh.triangles.slice(t, t + 3)].map(point);
      const [a, b, c] = [0, 1, 2].map((i) => Math.hypot(...corners[i].map((x, k) => x - corners[(i + 1) % 3][k])));
      shortest = Math.min(shortest, a, b, c);
      // The law of cosines, at the corner between each two sides.
      for (const [one, other, across] of [
        [a, b, c],
        [b, c, a],
        [c, a, b],
      ]) {
        const cos = (one ** 2 + other ** 2 - across ** 2) / (2 * one * other);
        sharpest = Math.min(sharpest, (Math.acos(cos) * 180) / Math.PI);
      }
    }
    expect(report.mesh.smallestAngle).toBeCloseTo(sharpest, 3);
    expect(report.mesh.shortestEdge).toBeCloseTo(shortest, 9);
  });

  it("leaves the bore no smaller than its circle by more than the tolerance, so that the finger fits", async () => {
    const { mesh } = await build({ ...plain, tolerance: 0.02 });
    let least = Number.POSITIVE_INFINITY;
    const { positions: p, triangles } = mesh;
    triangles.forEach((a, i) => {
      const b = triangles[i % 3 === 2 ? i - 2 : i + 1];
      least = Math.min(least, Math.hypot((p[3 * a] + p[3 * b]) / 2, (p[3 * a + 1] + p[3 * b + 1]) / 2));
    });
    expect(least).toBeGreaterThan(16.51 / 2 - 0.02);
  });
});

describe.each(SMOOTH_FORMS)("a band with the outside $name", ({ profile }) => {
  it("closes with a pattern, its beads and beads of their own", async () => {
    const { report } = await build({
      ...patterned,
      profile,
      pattern: { ...beaded, fit: { hold: "band" } },
      // Clear of each other: where the gap is less than the tolerance, beads may touch in one mesh and not in another.
      beads: [{ along: { v: 0 }, diameter: 0.4, pitch: 0.5 }],
      proud: true,
    });
    expect(report).toMatchObject({ closed: true, components: 1, genus: 1, kernel: "manifold", road: "mirror" });
    expect(report.volume).toBeGreaterThan(0);
    expect(codes(report.warnings)).not.toContain("kernel-replaced");
  });
});

describe("the report", () => {
  it("has what design.md lists, as plain JSON", async () => {
    const { report, mesh } = await build({ ...patterned, name: "Salt reed", material: "au585-white" });
    const keys = [
      "closed triangles vertices components genus volume area bounds size fit beads headroom mass warnings $schema tool",
      "kernel",
    ].flatMap((line) => line.split(" "));
    for (const key of keys) expect(report).toHaveProperty(key);
    for (const key of ["repeats", "rows", "tileWidth", "tileHeight", "bandWidth", "aspectError", "stretch"]) {
      expect(report.fit).toHaveProperty(key);
    }
    const [run] = report.beads;
    expect(run).toMatchObject({ run: "rail", diameter: 0.4 });
    expect(run.spacing / run.diameter).toBeCloseTo(run.ratio, 12);
    expect(run.count).toBeGreaterThan(0);
    expect(report.size.circumference).toBeCloseTo(Math.PI * 16.51, 9);
    expect(report.headroom).toBeCloseTo(0.2, 3);
    expect(report.name).toBe("Salt reed");
    // 14 K white 12.61 g/cm³ (tmtpages.com, specific gravity, table 4).
    expect(report.mass["au585-white"]).toBeCloseTo((report.volume * 12.61) / 1000, 9);
    expect(report.triangles).toBe(mesh.triangles.length / 3);
    expect(report.vertices).toBe(mesh.positions.length / 3);
    for (const warning of report.warnings) expect(warning).toMatchObject({ code: expect.any(String) });
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  });

  it("times every stage", async () => {
    const { timings } = await build(patterned);
    const stages = "document size fit profile pattern wrap solids union checks measure output".split(" ");
    expect(Object.keys(timings)).toEqual(stages);
    for (const time of Object.values(timings)) expect(time).toBeGreaterThanOrEqual(0);
  });

  it("is the same to the byte for equal designs, however they are written and in which order", async () => {
    const { annulet, ...others } = patterned;
    const reports = [
      patterned,
      JSON.stringify({ ...others, $schema: "design.json", material: "ag925", annulet }, null, 2),
      { ...patterned, tolerance: patterned.tolerance },
    ].map(async (document) => JSON.stringify((await build(document)).report));
    const [first, ...same] = await Promise.all(reports);
    for (const report of same) expect(report).toBe(first);
    const digestOf = (report: string) => JSON.parse(report).design.sha256;
    const other = await build({ ...patterned, name: "another" });
    expect(other.report.design.sha256).not.toBe(digestOf(first));
  });

  it("says where a plain band has nothing to say", async () => {
    const { report } = await build(plain);
    expect(report).toMatchObject({ fit: null, headroom: null, beads: [] });
  });
});

describe("warnings", () => {
  it("tell a band width that was fitted", async () => {
    const { report } = await build(patterned);
    expect(codes(report.warnings)).toContain("width-fitted");
    expect(report.band.width).toBeCloseTo(report.fit?.bandWidth as number, 12);
    expect(report.bounds.max[2] - report.bounds.min[2]).toBeCloseTo(report.band.width, 6);
  });

  it("tell handles that the design does not have, with their places", async () => {
    const { report } = await build({
      ...plain,
      tolerance: COARSE,
      profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 2.7, depth: 0.8, edge: 0 } },
      // Beads over a channel 0.6 wide touch both rails.
      beads: [{ along: { v: 0 }, diameter: 0.8, height: 0.8, count: 3 }],
      proud: true,
    });
    expect(report.genus).toBe(4);
    const [warning] = report.warnings.filter(({ code }) => code === "genus-differs");
    expect(warning.value).toMatchObject({ genus: 4, angles: { length: 3 } });
  });
});

describe("what is refused", () => {
  it("is relief above the rails, by how much, unless it may be", async () => {
    const high = { ...patterned, pattern: { ...quatrefoil, regions: [{ ...quatrefoil.regions[0], height: 0.7 }] } };
    const failure = await failureOf(high);
    expect(failure.code).toBe("headroom");
    expect(failure.value).toBeCloseTo(0.1, 3);
    expect((await build({ ...high, proud: true })).report.headroom).toBeCloseTo(-0.1, 3);
  });

  it("is a pattern on a seat with a corner", async () => {
    const knife = { width: 6, thickness: 2, outside: { form: "knife", ridge: 0 } };
    expect((await failureOf({ ...patterned, profile: knife, beads: [] })).code).toBe("seat-has-corner");
  });

  it("is a million beads, until the limit is raised for as many as there are", async () => {
    const many = { ...plain, beads: [{ along: { v: 0 }, diameter: 0.1, count: 1_000_000 }] };
    expect(await failureOf(many)).toMatchObject({ code: "too-many-beads", value: 1_000_000 });
    const some = { ...patterned, pattern: undefined };
    expect(await failureOf(some, { maxBeads: 20 })).toMatchObject({ code: "too-many-beads", allowed: "at most 20" });
    expect((await build(some, { maxBeads: 400 })).report.beads[0].count).toBeGreaterThan(20);
  });

  it("is a document that is none, with everything that is wrong", async () => {
    const failure = await failureOf({ annulet: 1, size: { system: "iso", value: -3 }, profile: { widht: 3 } });
    expect(failure.problems.length).toBeGreaterThan(1);
    for (const input of [undefined, null, 7, "", "{", [], () => 1]) {
      expect(await failureOf(input)).toBeInstanceOf(AnnuletError);
    }
  });
});

describe("a draft", () => {
  it.each(SMOOTH_FORMS)("of a band with the outside $name is the same closed ring, coarser", async ({ profile }) => {
    const document = {
      ...patterned,
      profile,
      pattern: { ...beaded, fit: { hold: "band" } },
      // Clear of each other: where the gap is less than the tolerance, beads may touch in one mesh and not in another.
      beads: [{ along: { v: 0 }, diameter: 0.4, pitch: 0.5 }],
      tolerance: 0.01,
      proud: true,
    };
    const [full, draft] = [await build(document), await build(document, { detail: "draft" })];
    expect(draft.report).toMatchObject({ closed: true, components: 1, genus: full.report.genus, detail: "draft" });
    expect(full.report.detail).toBe("full");
    expect(draft.report.triangles).toBeLessThan(0.7 * full.report.triangles);
    expect(draft.report.beads).toEqual(full.report.beads);
    expect(draft.report.size).toEqual(full.report.size);
    // Chords of 0.05 mm at most under the whole surface.
    expect(Math.abs(draft.report.volume - full.report.volume)).toBeLessThan(0.05 * full.report.area);
  });
});

describe("kernels", () => {
  const leaky: Kernel = {
    ...manifoldKernel,
    name: "leaky",
    // One in 50 triangles is lost: of a unit's ends alone it would do no harm, since they are cut away.
    union: async ([band]) => ({ ...band, triangles: band.triangles.filter((_, i) => Math.floor(i / 3) % 50 !== 0) }),
  };
  const throwing: Kernel = { ...manifoldKernel, name: "throwing", union: () => Promise.reject(new TypeError("no")) };

  it.each([
    [leaky, "did not close", /leaky kernel's result was not closed/],
    [throwing, "failed", /throwing kernel failed in union: TypeError: no; the manifold kernel/],
  ])("are replaced where they fail, and the report says so: %o", async (kernel, how, message) => {
    const { report, mesh } = await build(patterned, { kernel });
    expect(report).toMatchObject({ closed: true, kernel: "manifold" });
    expect(report.warnings).toContainEqual(
      expect.objectContaining({
        code: "kernel-replaced",
        value: kernel.name,
        message: expect.stringMatching(message),
      }),
    );
    expect(report.roadReason).toContain(`by ${kernel.name} ${how}`);
    expect(mesh).toEqual((await build(patterned)).mesh);
  });

  it("in plain JavaScript give the same ring, or say that they were replaced", async () => {
    const small = { ...patterned, beads: [], pattern: { ...quatrefoil, cover: 60, fit: { hold: "band" } } };
    const [js, wasm] = [await build(small, { kernel: bvhKernel }), await build(small)];
    expect(js.report.closed).toBe(true);
    expect(js.report.kernel === "bvh" || codes(js.report.warnings).includes("kernel-replaced")).toBe(true);
    expect(js.report.volume).toBeCloseTo(wasm.report.volume, 2);
    expect(js.report.genus).toBe(wasm.report.genus);
  });
});

describe("progress and stopping", () => {
  it("tells every stage with a share that only grows, to 1", async () => {
    const told: { stage: string; share: number }[] = [];
    await build(patterned, { onProgress: (progress) => told.push(progress) });
    expect([...new Set(told.map(({ stage }) => stage))]).toEqual(
      "document size fit profile pattern wrap solids union checks measure output done".split(" "),
    );
    for (const phase of ["pattern", "solids", "union"]) {
      expect(told.filter(({ stage }) => stage === phase).length, phase).toBeGreaterThan(3);
    }
    const shares = told.map(({ share }) => share);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(new Set(shares).size).toBe(shares.length);
    expect([shares[0], shares[shares.length - 1]]).toEqual([0, 1]);
  });

  it("rejects at once where the signal is up already, with its reason", async () => {
    const told: string[] = [];
    const reason = new Error("not today");
    const stopped = build(patterned, {
      signal: AbortSignal.abort(reason),
      onProgress: ({ stage }) => told.push(stage),
    });
    await expect(stopped).rejects.toBe(reason);
    expect(told).toEqual(["document"]);
    await expect(build(patterned, { signal: AbortSignal.abort() })).rejects.toMatchObject({ name: "AbortError" });
  });

  it.each(["fit", "solids", "union", "measure"])("rejects where the signal goes up before %s", async (last) => {
    const controller = new AbortController();
    const told: string[] = [];
    const stopped = build(patterned, {
      signal: controller.signal,
      onProgress: ({ stage }) => {
        told.push(stage);
        if (stage === last) controller.abort(new Error(`at ${last}`));
      },
    });
    await expect(stopped).rejects.toThrow(`at ${last}`);
    expect(told[told.length - 1]).toBe(last);
  });
});

describe("the same design", () => {
  const bytesOf = async (document: unknown) =>
    createHash("sha256")
      .update(await encodeMesh(formats[0], (await build(document)).mesh, { name: "ring" }))
      .digest("hex");

  it("gives the same bytes, and as JSON text too", async () => {
    const first = await bytesOf(patterned);
    expect(await bytesOf(patterned)).toBe(first);
    expect(await bytesOf(JSON.stringify(patterned))).toBe(first);
  });

  it("comes back with its defaults, which build the same", async () => {
    const { design } = await build(patterned);
    expect(design).toMatchObject({ name: "ring", material: "ag925", proud: false });
    expect(await bytesOf(design)).toBe(await bytesOf(patterned));
  });

  it("is not changed by being built", async () => {
    const document = structuredClone(patterned);
    await build(document);
    expect(document).toEqual(patterned);
  });
});

describe("a geometry for viewers", () => {
  it("comes where it is asked for, with as many triangles", async () => {
    const { geometry, report } = await build(patterned, { geometry: true });
    expect(geometry?.triangles.length).toBe(3 * report.triangles);
    expect((await build(plain)).geometry).toBeUndefined();
  });
});

describe("the mesh", () => {
  it("passes the public gate", async () => {
    const { mesh } = await build(patterned);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1, genus: 1 });
  });
});
