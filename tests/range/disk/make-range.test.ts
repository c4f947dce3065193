// Covers: src/range/disk/*, src/range/records/*, src/range/expand/part.ts, src/range/summary/summary-*.ts, src/range/summary/columns.ts, src/disk/write-whole.ts
import { createHash } from "node:crypto";
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, encodeMesh, formatForFile } from "annulet";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { makeRange } from "../../../src/range/disk/make-range.js";
import type { Makers } from "../../../src/range/disk/makers.js";
import { mergeParts } from "../../../src/range/disk/merge-parts.js";
import type { RangeEvent } from "../../../src/range/disk/range-run.js";
import type { RangeSetup } from "../../../src/range/disk/range-setup.js";
import { makeVariants } from "../../../src/range/disk/range-worker.js";
import { verifyRange } from "../../../src/range/disk/verify-range.js";
import { expandPlan } from "../../../src/range/expand/expand-plan.js";
import type { KnownFigures } from "../../../src/range/figures/known-figures.js";
import { PLAIN, put, tempFolder } from "../../cli/support.js";

const BASE = { ...PLAIN, name: "Heron", tolerance: 0.2 };
const SIZES = { size: { system: "iso", from: 50, to: 54, step: 2 } };
const ALLOYS = { material: ["ag925", "au750-yellow"] };

const plan = (vary: readonly object[], more: object = {}) => ({
  range: 1,
  base: BASE,
  vary,
  outputs: ["stl"],
  ...more,
});

/** Makes rings in this process, and counts them. */
function inside(): Makers & { readonly made: string[] } {
  const made: string[] = [];
  return {
    made,
    async make(task) {
      const done = await makeVariants(task);
      for (const answer of done.answers) if (answer.kind === "made") made.push(answer.record.name);
      return done;
    },
    async end() {},
  };
}

async function run(source: unknown, folder: string, setup: Partial<RangeSetup> = {}) {
  const makers = inside();
  const events: RangeEvent[] = [];
  const range = makeRange(source, { folder, makers, jobs: 1, ...setup });
  let step = await range.next();
  for (; step.done !== true; step = await range.next()) events.push(step.value);
  return { events, manifest: step.value, made: makers.made, kinds: events.map(({ kind }) => kind) };
}

const failing = (work: Promise<unknown>): Promise<AnnuletError> =>
  work.then(
    () => expect.fail("nothing was thrown"),
    (error: unknown) => error as AnnuletError,
  );

/** Every file of a folder with its bytes' digest, by its path. */
function contents(folder: string): Record<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) =>
    statSync(join(folder, path)).isFile(),
  );
  const digest = (path: string) =>
    createHash("sha256")
      .update(readFileSync(join(folder, path)))
      .digest("hex");
  return Object.fromEntries(paths.sort().map((path) => [path, digest(path)]));
}

describe("a range", () => {
  it("is made once: the next run finds all there and writes nothing", async () => {
    const folder = join(tempFolder(), "out");
    const first = await run(plan([SIZES, ALLOYS]), folder);
    expect(first.made).toHaveLength(6);
    const before = contents(folder);
    const times = statSync(join(folder, "manifest.json")).mtimeMs;
    const second = await run(plan([SIZES, ALLOYS]), folder);
    expect(second.kinds).toEqual(Array(6).fill("kept"));
    expect(contents(folder)).toEqual(before);
    expect(statSync(join(folder, "manifest.json")).mtimeMs).toBe(times);
    expect(second.manifest).toEqual(first.manifest);
    for (const { files } of first.manifest.variants) {
      for (const { path, sha256 } of files) expect(before[path]).toBe(sha256);
    }
    expect((await verifyRange(folder)).deviations).toEqual([]);
  });

  it("holds the bytes of each ring built by itself, whichever was made before it in one process", async () => {
    const folder = tempFolder();
    await run(plan([SIZES, ALLOYS]), folder);
    const name = "Heron-52-au750-yellow";
    const document = { ...BASE, name, size: { system: "iso", value: 52 }, material: "au750-yellow" };
    const { mesh } = await build(document, { piece: "master" });
    const alone = await encodeMesh(formatForFile("a.stl"), mesh, { name });
    expect(readFileSync(join(folder, `rings/${name}.stl`)).equals(alone)).toBe(true);
  });

  it("makes what is new, changed, missing or broken, and nothing else", async () => {
    const folder = tempFolder();
    await run(plan([SIZES]), folder);
    const wider = plan([{ size: { ...SIZES.size, to: 56 } }]);
    expect((await run(wider, folder)).made).toEqual(["Heron-56"]);
    rmSync(join(folder, "rings/Heron-50.stl"));
    writeFileSync(join(folder, "rings/Heron-54.stl"), "half");
    writeFileSync(join(folder, "records/Heron-56.json"), "{");
    expect((await run(wider, folder)).made).toEqual(["Heron-50", "Heron-54", "Heron-56"]);
    expect((await run({ ...wider, outputs: ["stl", "report"] }, folder)).made).toHaveLength(4);
    const thicker = { ...wider, base: { ...BASE, profile: { ...BASE.profile, thickness: 1.7 } } };
    expect((await run(thicker, folder)).made).toHaveLength(4);
    // Back to what was before: the records of those files are gone with them.
    expect((await run(wider, folder)).made).toHaveLength(4);
  });

  it("sees a changed file that the designs name", async () => {
    const folder = tempFolder();
    const planFolder = tempFolder();
    const region = { svg: "leaf.svg", unit: "mm", height: 0.2, place: { fit: [1, 1] } };
    const base = { ...BASE, pattern: { fit: { repeats: 6, hold: "band" }, regions: [region] } };
    const draw = (side: number) =>
      put(
        planFolder,
        "leaf.svg",
        `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><rect width="${side}" height="6"/></svg>`,
      );
    const source = plan([{ material: ["ag925"] }], { base });
    draw(5);
    expect((await run(source, folder, { planFolder })).made).toHaveLength(1);
    expect((await run(source, folder, { planFolder })).made).toEqual([]);
    draw(6);
    expect((await run(source, folder, { planFolder })).made).toHaveLength(1);
  });

  it("has the same bytes for any number of jobs, and merged from parts", async () => {
    const source = plan([SIZES, { path: "profile.width", values: [3, 4, 99, 0] }, ALLOYS], {
      leaveOut: [{ figure: "bandWidth", above: 50 }],
    });
    const [one, three, parts] = [tempFolder(), tempFolder(), tempFolder()];
    await run(source, one);
    await run(source, three, { jobs: 3 });
    expect(contents(three)).toEqual(contents(one));
    for (const part of [2, 3, 1]) {
      const own = tempFolder();
      const { events } = await run(source, own, { part: { part, of: 3 } });
      expect(events.length).toBe(8);
      cpSync(own, parts, { recursive: true });
    }
    await mergeParts(source, parts);
    for (const part of [1, 2, 3]) rmSync(join(parts, `manifest-${part}-of-3.json`));
    expect(contents(parts)).toEqual(contents(one));
  });

  it("tells a variant that fails and makes the rest; a fault is tried again, what is left out is not", async () => {
    const folder = tempFolder();
    const widths = { path: "profile.width", values: [4, -1, 20] };
    const source = plan([widths], { leaveOut: [{ figure: "bandWidth", above: 10 }] });
    const { kinds, manifest } = await run(source, folder);
    expect(kinds.toSorted()).toEqual(["failed", "left-out", "made"]);
    expect(manifest.failed).toEqual([{ name: "Heron-minus1", why: expect.stringMatching(/^value-invalid: /) }]);
    expect(manifest.leftOut).toEqual([{ name: "Heron-20", why: "bandWidth 20 is above 10" }]);
    expect((await run(source, folder)).kinds.toSorted()).toEqual(["failed", "kept", "left-out"].toSorted());
    const { variants } = JSON.parse(readFileSync(join(folder, "summary.json"), "utf8"));
    expect(variants.map(({ status }: { status: string }) => status)).toEqual(["made", "failed", "left-out"]);
  });

  it("finds which of a group does not end, and makes the others", async () => {
    const makers = inside();
    const stuck: Makers = {
      ...makers,
      make(task) {
        if (!task.variants.some(({ name }) => name === "Heron-ag925")) return makers.make(task);
        return Promise.reject(new AnnuletError({ code: "variant-stuck", message: "it was killed" }));
      },
    };
    const alloys = { material: ["au750-yellow", "ag925", "pd950"] };
    const { events } = await run(plan([alloys]), tempFolder(), { makers: stuck });
    expect(events.map(({ name, kind }) => [name, kind])).toEqual([
      ["Heron-au750-yellow", "made"],
      ["Heron-ag925", "failed"],
      ["Heron-pd950", "made"],
    ]);
  });

  it("goes on after an end in the middle", async () => {
    const folder = tempFolder();
    const stop = new AbortController();
    const range = makeRange(plan([SIZES]), { folder, makers: inside(), jobs: 1, signal: stop.signal });
    await range.next();
    stop.abort(new Error("enough"));
    await expect(range.next()).rejects.toThrow("enough");
    expect(existsSync(join(folder, "manifest.json"))).toBe(false);
    expect((await run(plan([SIZES]), folder)).kinds.filter((kind) => kind === "kept")).toHaveLength(1);
  });

  it("orders the stones of each ring, counted and weighed before it is made as after", async () => {
    const folder = tempFolder();
    const place = { form: "row", along: "middle", gap: 0.3 };
    const base = {
      ...BASE,
      pattern: { fit: { hold: "band" } },
      stones: [{ size: 1.5, place, setting: { form: "flush" } }],
    };
    const source = { ...plan([ALLOYS], { base, outputs: ["stones"] }) };
    const { events } = await run(source, folder);
    const planned: KnownFigures[] = [];
    for await (const variant of expandPlan(source)) if (variant.kind === "planned") planned.push(variant.figures);
    for (const [i, event] of events.entries()) {
      if (event.kind !== "made") throw new Error(event.kind);
      const { stones, carats } = event.record.figures;
      expect(stones).toBeGreaterThan(20);
      // 0.2 g a carat, exactly.
      expect(planned[i]).toMatchObject({ stones, carats, stoneWeight: 0.2 * carats });
      const [head, row, end] = readFileSync(join(folder, `rings/${event.name}.stones.csv`), "utf8").split("\r\n");
      expect([head, end]).toEqual(["no,cut,gem,length mm,width mm,count,carats,spares,order", ""]);
      expect(row).toMatch(new RegExp(`^1,round,diamond,1\\.50,1\\.50,${stones},${carats.toFixed(3)},`));
    }
  });

  it("writes tables that spreadsheets and programs read alike, with what changes from size to size", async () => {
    const folder = tempFolder();
    const base = { ...BASE, pattern: { fit: { hold: "band" } } };
    await run(plan([SIZES, { path: "name", values: ["=1+1"] }], { base, name: "{size}" }), folder);
    const csv = readFileSync(join(folder, "summary.csv"), "utf8").split("\r\n");
    expect(csv[0]).toMatch(/^name,size,name \(axis\),status,repeats,tileWidth \(mm\),/);
    expect(csv[1]).toMatch(/^50,50,'=1\+1,made,/);
    const { variants } = JSON.parse(readFileSync(join(folder, "summary.json"), "utf8"));
    expect(variants[0].change).toBe("");
    expect(variants[1].change).toMatch(/tile [+−]0\.\d{3} mm.*\+0\.\d\d g/);
  });
});

describe("a folder", () => {
  it("whose manifest was changed is told, and nothing is written over", async () => {
    const folder = tempFolder();
    await run(plan([SIZES]), folder);
    const path = join(folder, "manifest.json");
    writeFileSync(path, readFileSync(path, "utf8").replace("Heron-50", "Heron-51"));
    const before = contents(folder);
    const changed = plan([SIZES], { outputs: ["obj"] });
    expect((await failing(run(changed, folder))).code).toBe("manifest-damaged");
    expect((await failing(verifyRange(folder))).code).toBe("manifest-damaged");
    expect(contents(folder)).toEqual(before);
  });

  it("is verified file by file: changed, missing, and what does not belong there", async () => {
    const folder = tempFolder();
    await run(plan([SIZES]), folder);
    const stl = readFileSync(join(folder, "rings/Heron-50.stl"));
    stl[100] ^= 1;
    writeFileSync(join(folder, "rings/Heron-50.stl"), stl);
    rmSync(join(folder, "rings/Heron-52.stl"));
    writeFileSync(join(folder, "rings/other.stl"), "");
    writeFileSync(join(folder, "summary.csv"), "");
    expect((await verifyRange(folder)).deviations).toEqual([
      { path: "rings/Heron-50.stl", what: "changed" },
      { path: "rings/Heron-52.stl", what: "missing" },
      { path: "rings/other.stl", what: "not of this range" },
      { path: "summary.csv", what: "changed" },
    ]);
  });

  it("that somebody else has filled is refused", async () => {
    const folder = tempFolder();
    mkdirSync(join(folder, "rings"));
    put(folder, "rings/Heron-50.stl", "mine");
    expect((await failing(run(plan([SIZES]), folder))).code).toBe("folder-taken");
    expect(readFileSync(join(folder, "rings/Heron-50.stl"), "utf8")).toBe("mine");
    expect((await failing(run(plan([SIZES]), put(folder, "file", "")))).code).toBe("output-not-writable");
    expect((await failing(verifyRange(tempFolder()))).code).toBe("file-missing");
  });

  it("with parts of two plans, or without one of them, is not merged", async () => {
    const folder = tempFolder();
    await run(plan([SIZES]), folder, { part: { part: 1, of: 2 } });
    expect((await failing(mergeParts(plan([SIZES]), folder))).message).toMatch(/part 2 of 2 is missing/);
    await run(plan([SIZES, ALLOYS]), folder, { part: { part: 2, of: 2 } });
    expect((await failing(mergeParts(plan([SIZES]), folder))).code).toBe("parts-differ");
  });
});
