// Covers: src/worker/*, src/ring/made-file.ts
import { readFileSync } from "node:fs";
import { AnnuletError, build, encodeMesh, formatForFile, openRing, type Progress, toBuffers } from "annulet";
import { connectRings, serveRings } from "annulet/worker";
import { afterAll, describe, expect, it } from "vitest";

const DOCUMENT = {
  annulet: 1,
  name: "Worker ring",
  size: { system: "iso", value: 54 },
  tolerance: 0.05,
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "channel" } },
  pattern: { regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.4 }] },
  beads: [{ along: "rail", diameter: 0.5 }],
} as const;

const { port1, port2 } = new MessageChannel();
serveRings(port2 as unknown as MessagePort);
const rings = connectRings(port1 as unknown as MessagePort);

afterAll(() => {
  port1.close();
  port2.close();
});

describe("a ring behind a port", () => {
  it("answers every question as a ring here does", async () => {
    const there = rings.open(DOCUMENT);
    const here = openRing(DOCUMENT);
    expect(await there.design()).toEqual(await here.design());
    expect(await there.size()).toEqual(await here.size());
    expect(await there.fit()).toEqual(await here.fit());
    expect(await there.beads()).toEqual(await here.beads());
    expect(await there.stones()).toEqual(await here.stones());
    expect(await there.report()).toEqual(await here.report());
    expect(await there.weights({ detail: "draft" })).toEqual(await here.weights({ detail: "draft" }));
    const place = { point: [9.8, 0, 0.1], normal: [1, 0, 0] } as const;
    expect(await there.partAt(place)).toEqual(await here.partAt(place));
    expect(await there.partLines({ path: "profile.bore" })).toEqual(await here.partLines({ path: "profile.bore" }));
    expect(await there.warnings()).toEqual(await here.warnings());
    expect(sameBytes((await there.solid()).positions, (await here.solid()).positions)).toBe(true);
    const { top, ...tile } = await there.tile({ tiles: 2 });
    const own = await here.tile({ tiles: 2 });
    expect(tile).toEqual(withoutTop(own));
    expect(top).toEqual({ height: own.top.height });
    expect((await there.check()).findings).toEqual((await here.check()).findings);
    expect((await there.sheet({ pictureWidth: 0 })).html).toBe((await here.sheet({ pictureWidth: 0 })).html);
  });

  it("gives files as encodeMesh does, and buffers as toBuffers does", async () => {
    const ring = rings.open(DOCUMENT);
    const { mesh, report } = await build(DOCUMENT);
    const own = await encodeMesh(formatForFile("a.stl"), mesh, { name: report.name });
    expect(Buffer.compare(await ring.file("a.stl"), own)).toBe(0);
    const [there, here] = [
      await ring.buffers({ crease: 0.2 }),
      toBuffers(await openRing(DOCUMENT).solid(), { crease: 0.2 }),
    ];
    for (const key of ["positions", "normals", "triangles"] as const)
      expect(sameBytes(there[key], here[key])).toBe(true);
  });

  it("keeps what it remembers whole although arrays are handed over", async () => {
    const ring = rings.open(DOCUMENT);
    const first = await ring.solid();
    first.positions.fill(0);
    const [buffers, file] = [await ring.buffers(), await ring.file("a.obj")];
    const again = await ring.solid();
    expect(sameBytes(again.positions, (await openRing(DOCUMENT).solid()).positions)).toBe(true);
    expect(sameBytes((await ring.buffers()).normals, buffers.normals)).toBe(true);
    expect(sameBytes(await ring.file("a.obj"), file)).toBe(true);
  });

  it("takes over what a change leaves as it is", async () => {
    const stages: string[] = [];
    const ring = rings.open(DOCUMENT, { onStage: (stage) => stages.push(stage) });
    await ring.solid();
    expect(stages).toContain("union");
    stages.length = 0;
    const gold = ring.change({ ...DOCUMENT, material: "au750-yellow" });
    const { mass } = await gold.report({ piece: "finished" });
    expect(stages).not.toContain("union");
    expect(mass).toEqual((await build({ ...DOCUMENT, material: "au750-yellow" }, { piece: "finished" })).report.mass);
  });

  it("asks its page for files, once a name, by a record or a function", async () => {
    const lettered = {
      ...DOCUMENT,
      pattern: undefined,
      beads: [],
      profile: { ...DOCUMENT.profile, outside: { form: "flat" } },
      lettering: [{ text: "OWN", font: "own.ttf", height: 1.2, depth: 0.2 }],
    };
    const bytes = new Uint8Array(
      readFileSync("node_modules/@expo-google-fonts/nunito/800ExtraBold/Nunito_800ExtraBold.ttf"),
    );
    const asked: string[] = [];
    const files = (name: string) => {
      asked.push(name);
      return bytes;
    };
    const byFunction = await rings.open(lettered, { files }).report();
    expect(asked).toEqual(["own.ttf"]);
    expect(byFunction).toEqual(await rings.open(lettered, { files: { "own.ttf": bytes } }).report());
    expect(byFunction).toEqual(await openRing(lettered, { files: { "own.ttf": bytes } }).report());
  });

  it("asks its page for files and tells stages after a change too, once the ring before it is closed", async () => {
    const drawn = { ...DOCUMENT, pattern: { regions: [{ svg: "own.svg", height: 0.3 }] } };
    const files = {
      "own.svg": '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1h7v4h-7z"/></svg>',
    };
    for (const source of [files, (name: string) => files[name as "own.svg"]]) {
      const stages: string[] = [];
      const first = rings.open(drawn, { files: source, onStage: (stage) => stages.push(stage) });
      await first.tile();
      const second = first.change({ ...drawn, name: "changed" });
      first.close();
      stages.length = 0;
      const report = await second.report();
      expect(stages).toContain("union");
      expect(report).toEqual(await openRing({ ...drawn, name: "changed" }, { files }).report());
      // What is left out of a change's setup stays as it was.
      const third = second.change({ ...drawn, name: "again" }, { maxBeads: 5000 });
      second.close();
      expect(await third.report()).toEqual(await openRing({ ...drawn, name: "again" }, { files }).report());
    }
  });

  it("passes errors on whole", async () => {
    const wrong = { ...DOCUMENT, size: { system: "iso", value: 540 }, material: "tin" };
    const there = await rings
      .open(wrong)
      .report()
      .catch((error: unknown) => error);
    const here = await openRing(wrong)
      .report()
      .catch((error: unknown) => error);
    expect(there).toBeInstanceOf(AnnuletError);
    expect((there as AnnuletError).problems).toEqual((here as AnnuletError).problems);
    await expect(rings.open(DOCUMENT).tile({ tiles: 1000 })).rejects.toMatchObject({ code: "tiles-out-of-range" });
    await expect(rings.open(DOCUMENT).solid({ detail: "drft" } as never)).rejects.toMatchObject({
      code: "option-invalid",
    });
  });

  it("refuses what cannot be posted, and rings that were closed", async () => {
    const own = { name: "own", union: () => undefined, subtract: () => undefined, cut: () => undefined };
    await expect(rings.open(DOCUMENT, { kernel: own as never }).size()).rejects.toMatchObject({
      code: "option-invalid",
      path: "kernel",
    });
    await expect(rings.open({ ...DOCUMENT, name: () => "f" }).size()).rejects.toBeInstanceOf(AnnuletError);
    const ring = rings.open(DOCUMENT);
    ring.close();
    await expect(ring.size()).rejects.toMatchObject({ code: "ring-closed" });
  });

  it("stops for the signal and tells progress", async () => {
    const stop = new AbortController();
    const told: Progress[] = [];
    const ring = rings.open({ ...DOCUMENT, tolerance: 0.01, name: "stopped" });
    const asked = ring.solid({ signal: stop.signal, onProgress: (progress) => told.push(progress) });
    stop.abort(new Error("enough"));
    await expect(asked).rejects.toThrow("enough");
    await ring.solid({ onProgress: (progress) => told.push(progress) });
    expect(told.length).toBeGreaterThan(3);
    expect(told.at(-1)?.share).toBeGreaterThan(0.5);
  });

  it("loses all questions where the worker is lost, and says so", async () => {
    const { port1: mine, port2: theirs } = new MessageChannel();
    const dead = connectRings(mine as unknown as MessagePort);
    const asked = dead.open(DOCUMENT).size();
    dead.leave();
    await expect(asked).rejects.toMatchObject({ code: "worker-lost" });
    await expect(dead.open(DOCUMENT).size()).rejects.toMatchObject({ code: "worker-lost" });
    mine.close();
    theirs.close();
  });
});

function withoutTop<Tile extends { top: unknown }>({ top: _, ...rest }: Tile) {
  return rest;
}

function sameBytes(a: ArrayBufferView, b: ArrayBufferView): boolean {
  return Buffer.from(a.buffer, a.byteOffset, a.byteLength).equals(Buffer.from(b.buffer, b.byteOffset, b.byteLength));
}
