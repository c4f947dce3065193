// Covers: src/cli/commands/watch.ts, src/ring/made-file.ts
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { decode } from "fast-png";
import { describe, expect, it, onTestFinished } from "vitest";
import { watchDesign } from "../../src/cli/watch-design.js";
import { readMesh } from "../../src/index.js";
import { annulet, listen, PLAIN, put, tempFolder } from "./support.js";

/** Waits for something, as long as the test may take. */
async function until(met: () => boolean): Promise<void> {
  while (!met()) await new Promise((resolve) => setTimeout(resolve, 20));
}

/** A band with a square of the drawing beside it on each tile. */
const DRAWN = { ...PLAIN, tolerance: 0.05, pattern: { regions: [{ svg: "square.svg", height: 0.2 }] } };
const SQUARE = { path: "M 0.2 -0.3 H 0.8 V 0.3 H 0.2 Z", height: 0.2 };
const square = (side: number) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h${side}v${side}h-${side}z"/></svg>`;

describe("watching a design", () => {
  it("makes it again at each save of it or its files, tells of errors and goes on, until it is stopped", async () => {
    const folder = tempFolder();
    const [path, picture, mesh] = [put(folder, "ring.json", DRAWN), join(folder, "ring.png"), join(folder, "ring.stl")];
    put(folder, "square.svg", square(4));
    const { io, heard } = listen();
    const stopper = new AbortController();
    onTestFinished(() => stopper.abort());
    const watched = { path, outputs: [picture, mesh], draft: true };
    const ended = watchDesign(watched, io, stopper.signal).catch((reason) => reason);
    const waits = (times: number) => until(() => heard.err.split("Ctrl-C ends it").length > times);

    await waits(1);
    expect(heard.out).toMatch(
      /^plain band: closed, \d+ triangles, [\d.]+ mm³, [\d.]+ g in ag925, check: .*; [\d.]+ s$/m,
    );
    expect(decode(readFileSync(picture)).width).toBeGreaterThan(0);
    const trianglesOf = async () => (await readMesh(Uint8Array.from(readFileSync(mesh)), "ring.stl")).triangles.length;
    expect(await trianglesOf()).toBeGreaterThan(0);
    const volumes = () => [...heard.out.matchAll(/triangles, ([\d.]+) mm³/g)].map(([, volume]) => Number(volume));

    put(folder, "square.svg", square(8));
    await waits(2);
    expect(volumes()).toHaveLength(2);
    expect(volumes()[1]).toBeGreaterThan(volumes()[0]);

    writeFileSync(path, "{ not JSON");
    await waits(3);
    expect(heard.err).toMatch(/error: line 1, column 3/);
    expect(volumes()).toHaveLength(2);

    put(folder, "ring.json", { ...DRAWN, profile: { ...DRAWN.profile, thickness: 1.9 } });
    await waits(4);
    expect(volumes()[2]).toBeGreaterThan(volumes()[1]);

    stopper.abort();
    expect((await ended).name).toBe("AbortError");
  });

  it("never writes over a file of the design, also one that a later save names", async () => {
    const folder = tempFolder();
    const path = put(folder, "ring.json", { ...DRAWN, pattern: {} });
    const mesh = join(folder, "ring.stl");
    put(folder, "square.svg", square(4));
    const { io, heard } = listen();
    const stopper = new AbortController();
    onTestFinished(() => stopper.abort());
    watchDesign({ path, outputs: [mesh], draft: true }, io, stopper.signal).catch(() => {});
    await until(() => existsSync(mesh) && heard.err.includes("Ctrl-C"));
    const before = readFileSync(mesh);
    put(folder, "ring.json", { ...DRAWN, pattern: { regions: [{ svg: "ring.stl", height: 0.2 }] } });
    await until(() => heard.err.split("Ctrl-C").length > 2);
    expect(heard.err).toMatch(/is a file that the design names/);
    expect(readFileSync(mesh)).toEqual(before);
  });

  it("refuses what cannot be watched or written", async () => {
    const { code, err } = await annulet(["watch", "-", "-o", "ring.xyz"]);
    expect(code).toBe(2);
    expect(err).toMatch(/Standard input cannot be watched[\s\S]*ring\.xyz/);
  });

  it("holds each making to the limits that it is told", async () => {
    const path = put(tempFolder(), "ring.json", { ...DRAWN, pattern: { regions: [SQUARE] } });
    const { io, heard } = listen();
    const stopper = new AbortController();
    onTestFinished(() => stopper.abort());
    const watched = { path, outputs: [], draft: true, limits: { corners: 5 } };
    const ended = watchDesign(watched, io, stopper.signal).catch((reason) => reason);
    await until(() => heard.err.includes("Ctrl-C ends it"));
    expect(heard.err).toContain("at most 5 corners");
    stopper.abort();
    await ended;
  });
});
