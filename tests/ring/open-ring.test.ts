// Covers: src/ring/engine.ts, src/ring/pieces.ts, src/ring/steps/flat.ts
import { createHash } from "node:crypto";
import { build, checkDesign, encodeMesh, flatTile, formats, openRing, planBeads } from "annulet";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { openInside } from "../../src/ring/open-ring.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";

const design = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.06,
  profile: { width: 5, thickness: 1.8, outside: { form: "channel", rail: 0.8, depth: 0.6 } },
  pattern: {
    fit: { repeats: 8, hold: "band" },
    symmetry: "p2mm",
    regions: [{ path: "M 0.2 0 L 0.5 0.2 L 0.8 0 L 0.5 -0.2 Z", height: 0.3 }],
  },
  beads: [{ along: "rail", diameter: 0.5 }],
  casting: { shrinkage: 1.5, finishing: 0.05 },
};
type Design = typeof design;
const edited = (edit: (copy: Design) => void): Design => {
  const copy = structuredClone(design);
  edit(copy);
  return copy;
};

const bytes = async (mesh: Mesh) =>
  createHash("sha256")
    .update(await encodeMesh(formats[0], mesh, { name: "ring" }))
    .digest("hex");

/** Opens a ring and counts what works in it. */
function counted(document: unknown, setup: Parameters<typeof openInside>[1] = {}) {
  const worked: string[] = [];
  const ring = openInside(document, { ...setup, onStage: (stage, piece) => worked.push(`${piece} ${stage}`) });
  return { ring, worked };
}

describe("an opened ring", () => {
  it("answers as the functions that answer one question", async () => {
    const ring = openRing(design);
    const built = await build(design);
    expect(JSON.stringify(await ring.report())).toBe(JSON.stringify(built.report));
    expect((await ring.make()).mesh).toEqual(built.mesh);
    expect(await ring.beads()).toEqual(await planBeads(design));
    expect(JSON.stringify(await ring.tile())).toBe(JSON.stringify(await flatTile(design)));
    expect(JSON.stringify(await ring.check())).toBe(JSON.stringify(await checkDesign(design)));
    expect(await ring.allowances()).toEqual(built.report.allowances);
    expect(await ring.weights()).toEqual(built.report.weights);
    expect(await ring.printFigures()).toEqual(built.report.print);
    expect(await ring.fit()).toEqual(
      built.report.fit && Object.fromEntries(Object.entries(built.report.fit).filter(([key]) => key !== "lambda")),
    );
  });

  it("works nothing out twice, at draft and at full detail apart", async () => {
    const { ring, worked } = counted(design);
    await ring.make();
    await ring.sheet({ pictureWidth: 40 });
    await ring.check();
    await ring.make({ piece: "cast" });
    // How the printer has it is asked of three pieces.
    const once = worked.filter((stage) => !/print/.test(stage));
    expect(once.filter((stage, i) => once.indexOf(stage) !== i)).toEqual([]);
    const before = worked.length;
    await ring.make({ detail: "draft" });
    const again = worked.slice(before);
    expect(again).toContain("finished union");
    expect(again).not.toContain("finished pattern");
    await ring.make({ detail: "draft" });
    await ring.make();
    expect(worked.length).toBe(before + again.length);
  });

  it("builds no casting for a picture or a check of the finished piece", async () => {
    const { ring, worked } = counted(design);
    await ring.picture({ width: 40, height: 30 });
    await ring.check();
    expect(worked.filter((stage) => stage.startsWith("cast"))).toEqual([]);
  });

  it("shares one run among all who ask at the same time", async () => {
    const { ring, worked } = counted(design);
    const meshes = await Promise.all([ring.solid(), ring.solid(), ring.make({ piece: "finished" })]);
    expect(worked.filter((stage) => stage === "finished union")).toHaveLength(1);
    expect(meshes[0]).toBe(meshes[1]);
    expect(meshes[2].mesh).toBe(meshes[0]);
  });

  it("keeps the document as it was when it was opened", async () => {
    const document = structuredClone(design);
    const ring = openRing(document);
    const before = ring.solid();
    document.size.diameter = 21;
    document.pattern.regions.length = 0;
    expect(await bytes(await before)).toBe(await bytes(await openRing(design).solid()));
    expect((await ring.design()).size).toEqual(design.size);
    const told = await ring.design();
    told.pattern?.regions.splice(0);
    expect((await ring.design()).pattern?.regions).toHaveLength(1);
  });

  it("tells what is wrong with the document by every question, and not before", async () => {
    const ring = openRing({ annulet: 1 });
    await expect(ring.size()).rejects.toThrow(AnnuletError);
    await expect(ring.solid()).rejects.toMatchObject({ code: "value-missing" });
    expect((await ring.change(design).size()).diameter).toBe(17);
  });

  it("remembers what failed, and tells it with the warnings before it", async () => {
    const low = edited((copy) => {
      copy.pattern.fit.repeats = 4;
      copy.pattern.regions[0].height = 0.9;
    });
    const { ring, worked } = counted(low);
    const failure = await ring.solid().catch((error: unknown) => error);
    const alone = await build(low).catch((error: unknown) => error);
    if (!(failure instanceof AnnuletError && alone instanceof AnnuletError)) throw new Error("nothing was thrown");
    expect(failure.problems).toEqual(alone.problems);
    expect(failure.warnings.map(({ code }) => code)).toContain("tile-stretched");
    const before = worked.length;
    await expect(ring.solid()).rejects.toMatchObject({ code: failure.code });
    expect(worked.length).toBe(before);
  });

  it("says of the casting what is not true of the finished piece, and no sentence twice", async () => {
    const tight = edited((copy) => {
      copy.beads = [
        { along: "rail", diameter: 0.5 },
        { along: "rail", diameter: 0.5 },
      ];
    });
    const { warnings } = await openRing(tight).report({ detail: "draft" });
    const words = warnings.map(({ code, path, message }) => `${code} ${path} ${message}`);
    expect(new Set(words).size).toBe(words.length);
    const finished = await openRing({ ...tight, casting: undefined }).report({ detail: "draft" });
    expect(warnings.slice(0, finished.warnings.length)).toEqual(finished.warnings);
    for (const { message } of warnings.slice(finished.warnings.length)) expect(message).toMatch(/^with casting\./);
  });
});

describe("a signal", () => {
  it("of one who asks does not stop the run of another", async () => {
    const { ring, worked } = counted(design);
    const controller = new AbortController();
    const reason = new Error("enough");
    const first = ring.solid({
      signal: controller.signal,
      onProgress: ({ stage }) => {
        if (stage === "union") queueMicrotask(() => controller.abort(reason));
      },
    });
    const second = ring.solid();
    await expect(first).rejects.toBe(reason);
    expect(await bytes(await second)).toBe(await bytes(await openRing(design).solid()));
    expect(worked.filter((stage) => stage === "finished union")).toHaveLength(1);
  });

  it("stops the run when all have gone, and the next who asks has a run of its own", async () => {
    let operations = 0;
    const kernel = {
      ...manifoldKernel,
      union: async (...args: Parameters<typeof manifoldKernel.union>) => {
        operations++;
        await new Promise((resolve) => setTimeout(resolve, 50));
        return manifoldKernel.union(...args);
      },
    };
    const carved = edited((copy) => {
      const hole = { path: "M 0.45 -0.3 H 0.55 V -0.25 H 0.45 Z", mode: "sunk", depth: 0.1, height: undefined };
      copy.pattern.regions.push(hole as unknown as (typeof copy.pattern.regions)[number]);
    });
    const { ring, worked } = counted(carved, { kernel });
    const controllers = [new AbortController(), new AbortController()];
    const asked = controllers.map(({ signal }) => ring.solid({ signal }).catch((error: unknown) => error));
    while (operations === 0) await new Promise((resolve) => setTimeout(resolve, 1));
    controllers[0].abort(new Error("first"));
    controllers[1].abort(new Error("second"));
    expect((await Promise.all(asked)).map(String)).toEqual(["Error: first", "Error: second"]);
    await new Promise((resolve) => setTimeout(resolve, 200));
    // The operation at hand ends; no other begins.
    expect(operations).toBe(1);
    const mesh = await ring.solid();
    expect(worked.filter((stage) => stage === "finished union")).toHaveLength(2);
    expect(await bytes(mesh)).toBe(await bytes(await openRing(carved).solid()));
  });

  it("that is up already is no answer for others", async () => {
    const { ring } = counted(design);
    await expect(ring.solid({ signal: AbortSignal.abort() })).rejects.toMatchObject({ name: "AbortError" });
    expect((await ring.solid()).triangles.length).toBeGreaterThan(0);
  });
});

describe("a changed ring", () => {
  it("takes over what does not depend on the change, and leaves the first as it was", async () => {
    const { ring, worked } = counted(design);
    const first = await ring.make();
    worked.length = 0;
    const other = ring.change(edited((copy) => Object.assign(copy, { name: "other", material: "au750-yellow" })));
    const second = await other.make();
    expect(worked.filter((stage) => /pattern|wrap|beads|parts|union|gate|measure/.test(stage))).toEqual([]);
    expect(second.mesh).toEqual(first.mesh);
    expect(second.report.name).toBe("other");
    expect(Object.keys(second.report.mass)).toEqual(["au750-yellow"]);
    expect((await ring.report()).name).toBe("ring");
  });

  it("takes over the bodies, bead lines and beads of regions that are as they were, and no others", async () => {
    const two = edited((copy) => {
      const other = { path: "M 0.45 0.3 H 0.55 V 0.4 H 0.45 Z", height: 0.2, beads: { diameter: 0.3, on: "border" } };
      copy.pattern.regions.push(other);
      copy.pattern.regions[0] = { ...copy.pattern.regions[0], beads: { diameter: 0.3, on: "border" } } as typeof other;
    });
    const { ring } = counted(two);
    const before = (await ring.ask(["pattern"])).answers.pattern;
    const higher = structuredClone(two);
    higher.pattern.regions[0].height = 0.35;
    const { pattern } = (await ring.change(higher).ask(["pattern"])).answers;
    const at = (one: typeof pattern, height: number) => one.bodies.find((body) => body.height === height);
    expect(at(pattern, 0.2)).toBe(at(before, 0.2));
    expect(at(pattern, 0.35)).toBeDefined();
    expect(at(pattern, 0.3)).toBeUndefined();
    // Beads stand higher, on lines that are flat and the same.
    expect(pattern.beadLines[0]).not.toBe(before.beadLines[0]);
    expect(pattern.beadLines[0].height).toBe(0.35);
    expect(pattern.beadLines[0].lines).toBe(before.beadLines[0].lines);
    expect(pattern.beadLines[1]).toBe(before.beadLines[1]);
    const anew = (await openInside(higher).ask(["pattern"])).answers.pattern;
    expect(JSON.stringify(pattern)).toBe(JSON.stringify(anew));
  });

  it("comes back to what it was without any work", async () => {
    const { ring, worked } = counted(design);
    const first = await ring.solid();
    await ring.change(edited((copy) => (copy.size.diameter = 18))).solid();
    worked.length = 0;
    expect(await ring.change(structuredClone(design)).solid()).toBe(first);
    expect(worked.filter((stage) => !stage.endsWith("Files"))).toEqual([]);
  });

  it("takes another kernel's or another number of beads for another ring", async () => {
    const { ring, worked } = counted(design);
    await ring.solid();
    worked.length = 0;
    await ring.change(design, { kernel: { ...manifoldKernel } }).solid();
    expect(worked).toContain("finished union");
    expect(worked).not.toContain("finished parts");
    await expect(ring.change(design, { maxBeads: 3 }).solid()).rejects.toMatchObject({ code: "too-many-beads" });
  });

  it("is kept within bounds, however often it changes", async () => {
    const ring = openInside(design);
    for (let i = 0; i < 20; i++) {
      const other = ring.change(edited((copy) => (copy.pattern.regions[0].height = 0.3 + 0.001 * i)));
      await other.make({ detail: "draft" });
    }
    const { answers, bytes: held } = ring.store.size;
    const stages = new Set(ring.store.stages);
    expect(answers).toBeLessThanOrEqual(8 * stages.size);
    expect(held).toBeLessThanOrEqual(256e6);
    for (const stage of stages) expect(ring.store.of(stage).length).toBeLessThanOrEqual(8);
    expect(ring.store.of("union").length).toBe(8);
  });
});

describe("files", () => {
  const square = (side: number) =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10"><rect width="${side}" height="${side}"/></svg>`;
  const drawn = edited((copy) => {
    const region = { svg: "a.svg", height: 0.3, path: undefined, unit: "mm", place: { fit: [3, 3] } };
    copy.pattern.regions = [region as unknown as (typeof copy.pattern.regions)[number]];
  });

  it("are asked for once, and again by a ring that is changed: another content is another ring", async () => {
    let side = 6;
    const asked: string[] = [];
    const files = (name: string) => {
      asked.push(name);
      return square(side);
    };
    const { ring, worked } = counted(drawn, { files });
    const first = await ring.solid({ detail: "draft" });
    await ring.sheet({ detail: "draft", pictureWidth: 0 });
    expect(asked).toEqual(["a.svg"]);
    side = 3;
    expect(await ring.solid({ detail: "draft" })).toBe(first);
    const other = await ring.change(drawn).solid({ detail: "draft" });
    expect(await bytes(other)).toBe(await bytes(await openRing(drawn, { files }).solid({ detail: "draft" })));
    expect(await bytes(other)).not.toBe(await bytes(first));
    side = 6;
    worked.length = 0;
    expect(await ring.change(drawn).solid({ detail: "draft" })).toBe(first);
    expect(worked.filter((stage) => !stage.endsWith("Files"))).toEqual([]);
  });

  it("are copied: bytes that are filled with another drawing do not change the ring", async () => {
    const content = new TextEncoder().encode(square(6));
    const { ring, worked } = counted(drawn, { files: { "a.svg": content } });
    const first = await ring.solid({ detail: "draft" });
    content.set(new TextEncoder().encode(square(3)));
    worked.length = 0;
    const other = await ring.change(drawn).solid({ detail: "draft" });
    expect(worked).toContain("finished drawings");
    expect(await bytes(other)).not.toBe(await bytes(first));
  });

  it("that were missing may be there the next time", async () => {
    const files: Record<string, string> = {};
    const { ring } = counted(drawn, { files });
    await expect(ring.solid()).rejects.toMatchObject({ code: "svg-file-missing" });
    files["a.svg"] = square(6);
    await expect(ring.solid()).rejects.toMatchObject({ code: "svg-file-missing" });
    expect((await ring.change(drawn).solid({ detail: "draft" })).triangles.length).toBeGreaterThan(0);
  });
});
