// Covers: src/base/limits.ts, src/ring/time-limit.ts, src/solids/least-triangles.ts
import { afterEach, describe, expect, it, vi } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { fillLimits, LIMITS } from "../../src/base/limits.js";
import { build, fitDesign, flatTile, openRing, planBeads } from "../../src/index.js";

const band = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  profile: { width: 5, thickness: 1.6, bore: { form: "flat" }, outside: { form: "flat" } },
  tolerance: 0.03,
};

/** Some hundred bytes that ask for many million triangles. */
const thousandfold = {
  ...band,
  pattern: {
    fit: { repeats: 1000, hold: "band" },
    regions: Array.from({ length: 40 }, (_, i) => ({
      path: `M 0.3 ${i / 50 - 0.4} a 0.2 0.004 0 1 0 0.4 0 a 0.2 0.004 0 1 0 -0.4 0 Z`,
      height: 0.1,
    })),
  },
};

const studs = {
  ...band,
  pattern: { fit: { repeats: 12 }, regions: [{ path: "M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z", height: 0.3 }] },
};

const problemOf = async (question: Promise<unknown>) => {
  const error: unknown = await question.then(
    () => new Error("nothing was thrown"),
    (reason: unknown) => reason,
  );
  if (!(error instanceof AnnuletError)) throw error;
  return error;
};

describe("limits", () => {
  it("refuse more triangles than they allow, before they are made, and name the region that asks for most", async () => {
    const error = await problemOf(build(studs, { limits: { triangles: 100 } }));
    expect(error).toMatchObject({
      code: "too-many-triangles",
      path: "pattern.regions[0]",
      allowed: "at most 100 triangles",
    });
  });

  it("refuse more corners than they allow, and name the path", async () => {
    const error = await problemOf(build(studs, { limits: { corners: 10 } }));
    expect(error).toMatchObject({ code: "too-many-corners", path: "pattern.regions[0].path" });
    expect(error.value).toBeGreaterThan(10);
  });

  it("end work that takes too long, and name what was worked", async () => {
    const error = await problemOf(build(thousandfold, { limits: { seconds: 0.001 } }));
    expect(error).toMatchObject({ code: "too-long", value: undefined, allowed: "at most 0.001 seconds" });
  });

  it("leave every answer as it is, and are asked anew", async () => {
    const [tight, wide] = [{ triangles: 200 }, { triangles: 1e6 }];
    const ring = openRing(studs, { limits: tight });
    expect((await problemOf(ring.solid())).code).toBe("too-many-triangles");
    const again = ring.change(studs, { limits: wide });
    const solid = await again.solid();
    expect(solid.triangles).toEqual((await build(studs)).mesh.triangles);
    // What is made already costs nothing more.
    expect(await again.change(studs, { limits: tight }).solid()).toBe(solid);
  });

  it.each([
    [{ seconds: 0 }, { code: "option-invalid", path: "limits.seconds", allowed: "a number above 0" }],
    [{ triangles: Number.NaN }, { code: "option-invalid", path: "limits.triangles" }],
    [{ corners: "many" as unknown as number }, { code: "option-invalid", path: "limits.corners", value: "many" }],
    [{ second: 3 } as object, { code: "option-unknown", path: "limits.second", hint: 'did you mean "seconds"?' }],
  ])("are refused where they are none: %o", async (limits, problem) => {
    expect(await problemOf(build(studs, { limits }))).toMatchObject(problem);
    expect(await problemOf(openRing(studs, { limits }).fit())).toMatchObject(problem);
  });

  it("bound the fit alone, the flat tile and the bead runs", async () => {
    const corners = { code: "too-many-corners", path: "pattern.regions[0].path", allowed: "at most 10 corners" };
    const beaded = { ...studs, beads: [{ along: { v: 1 }, diameter: 0.5 }] };
    expect(await problemOf(flatTile(studs, { limits: { corners: 10 } }))).toMatchObject(corners);
    expect(await problemOf(planBeads(beaded, { limits: { corners: 10 } }))).toMatchObject(corners);
    const late = { code: "too-long", allowed: "at most 1e-9 seconds" };
    const [tile, beads] = [
      flatTile(studs, { limits: { seconds: 1e-9 } }),
      planBeads(beaded, { limits: { seconds: 1e-9 } }),
    ];
    expect(await problemOf(tile)).toMatchObject(late);
    expect(await problemOf(beads)).toMatchObject(late);
    const fitted = async () => fitDesign(studs, { limits: { seconds: 1e-9 } });
    expect(await problemOf(fitted())).toMatchObject({ ...late, path: "profile" });
    expect(fitDesign(studs, { limits: { seconds: 60 } })).toEqual(fitDesign(studs));
  });

  it("stand at their defaults where nothing is said", () => {
    expect(fillLimits({ corners: 7 })).toEqual({ ...LIMITS, corners: 7 });
  });
});

describe("a signal", () => {
  afterEach(() => vi.restoreAllMocks());

  it("is heard between regions while the pattern is worked", async () => {
    // A clock by which all work is long, so that it gives way wherever it may.
    let now = 0;
    vi.spyOn(performance, "now").mockImplementation(() => {
      now += 50;
      return now;
    });
    const controller = new AbortController();
    const stages: string[] = [];
    const onStage = (stage: string) => {
      stages.push(stage);
      if (stage === "drawnPattern") setTimeout(() => controller.abort(new Error("enough")), 0);
    };
    const ring = openRing(thousandfold, { onStage, limits: { seconds: 1e6 } });
    await expect(ring.solid({ signal: controller.signal })).rejects.toThrow("enough");
    expect(stages.at(-1)).toBe("drawnPattern");
  });
});
