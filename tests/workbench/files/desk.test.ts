// Covers: src/workbench/files/art-region.ts, src/workbench/keep/keep-pictures.ts
import { expose } from "comlink";
import { decode } from "fast-png";
import { describe, expect, it, onTestFinished } from "vitest";
import { serveRings } from "../../../src/entries/worker.js";
import { ringLibrary } from "../../../src/workbench/engine/ring-library.js";
import type { Ports } from "../../../src/workbench/engine/worker.js";
import { regionsWith } from "../../../src/workbench/files/art-region.js";
import { Desk, ON_DISK } from "../../../src/workbench/files/desk.js";
import { DiskDesign, type Send } from "../../../src/workbench/files/disk-design.js";
import type { Dropped } from "../../../src/workbench/files/take-in.js";
import { Keep } from "../../../src/workbench/keep/keep.js";
import { keepPictures } from "../../../src/workbench/keep/keep-pictures.js";
import { openBench } from "../../../src/workbench/state/bench.js";
import { memoryStore } from "../keep/memory-store.js";

class NearWorker extends EventTarget {
  postMessage({ rings, library }: Ports): void {
    serveRings(rings);
    expose(ringLibrary, library);
  }
  terminate(): void {}
}

const DESIGN = {
  annulet: 1,
  name: "Desk ring",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 4, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
};
const TEXT = JSON.stringify(DESIGN);

const file = (name: string, content: string, size = content.length): Dropped => ({
  name,
  size,
  arrayBuffer: () => new Blob([content]).arrayBuffer(),
});

function open({ disk, id }: { readonly disk?: DiskDesign; readonly id?: string } = {}) {
  const bench = openBench({ text: TEXT, id, startWorker: () => new NearWorker() as unknown as Worker, setup: {} });
  const store = memoryStore();
  const keep = new Keep(store);
  const handed: [string, Uint8Array][] = [];
  const desk = new Desk(bench, keep, disk, (name, bytes) => handed.push([name, bytes]));
  const ends = [keep.follow(bench), desk.follow(), () => bench.end()];
  onTestFinished(() => {
    for (const end of ends) end();
  });
  const notes = () => bench.notes.all.value.map(({ name }) => name);
  const choose = (text: string) => {
    const choice = bench.notes.all.value.flatMap(({ choices = [] }) => choices).find((one) => one.text === text);
    choice?.take();
  };
  return { bench, store, keep, desk, handed, notes, choose };
}

/** A program that serves one file, with a number for its digest. */
function program(text: string) {
  const file = { text, version: 1, answers: true, art: [] as string[], takesArt: false };
  const send: Send = async (path, how = {}) => {
    if (!file.answers) throw new TypeError("no answer");
    if (path.startsWith("files/") && how.method === "PUT") {
      file.art.push(path);
      return new Response(null, { status: file.takesArt ? 204 : 412 });
    }
    if (path !== "design") return new Response(null, { status: 404 });
    const tag = { etag: `"${file.version}"` };
    if (how.method !== "PUT") return new Response(file.text, { headers: tag });
    const { "if-match": match } = how.headers as Record<string, string>;
    if (match !== tag.etag) return new Response(null, { status: 412, headers: tag });
    file.version++;
    file.text = String(how.body);
    return new Response(null, { status: 204, headers: { etag: `"${file.version}"` } });
  };
  return { file, send };
}

describe("the desk", () => {
  it("takes in designs with their art, and keeps them at once", async () => {
    const { desk, bench, keep, store, notes } = open();
    await desk.takeFiles([file("leaf.svg", "<svg/>"), file("other.json", '{"annulet":1,"name":"other"}')]);
    expect(bench.document.value.value).toEqual({ annulet: 1, name: "other" });
    expect([...bench.files.value.keys()]).toEqual(["leaf.svg"]);
    expect([...store.designs.values()].map(({ name }) => name)).toEqual(["other"]);
    expect(await desk.takeText("no design")).toBe(false);
    expect(await desk.takeText('{"annulet":1,"name":"pasted"}')).toBe(true);
    await keep.flush();
    expect(store.designs.size).toBe(2);
    const other = [...store.designs.values()].find(({ name }) => name === "other");
    await desk.openKept(other?.id ?? "");
    expect(bench.document.value.value.name).toBe("other");
    await desk.openKept("gone");
    expect(notes()).toContain("kept");
    await desk.takeFiles([file("<img src=x>.exe", "MZ"), file("huge.json", "{}", 50e6)]);
    expect(notes()).toEqual(["kept", "refused <img src=x>.exe", "refused huge.json"]);
  });

  it("places art where it was dropped on the tile, again and again, and chooses it", async () => {
    const { desk, bench } = open();
    const regions = ["pattern", "medallion", "regions"];
    await desk.takeFiles([file("leaf.svg", "<svg/>")], { regions, at: [0.25, 0.1] });
    await desk.takeFiles([file("leaf.svg", "<svg/>")], { regions, at: [0.75, 0] });
    await desk.takeFiles([file("hills.png", "png")], { regions, at: [0.5, 0] });
    expect(bench.document.value.value.pattern).toEqual({
      medallion: {
        regions: [
          { svg: "leaf.svg", place: { at: [0.25, 0.1], scale: 0.5 }, height: 0.3 },
          { svg: "leaf.svg", place: { at: [0.75, 0], scale: 0.5 }, height: 0.3 },
          { image: "hills.png", height: 0.3 },
        ],
      },
    });
    expect(bench.selected.value).toEqual([...regions, 2]);
  });

  it("makes regions of drawings and images, and gives fonts to texts, each as a change that is gone back", async () => {
    const { desk, bench, notes } = open();
    await desk.takeFiles([file("leaf.svg", "<svg/>"), file("hills.png", "png")]);
    expect(bench.document.value.value.pattern).toEqual({
      regions: [
        { svg: "leaf.svg", height: 0.3 },
        { image: "hills.png", height: 0.3 },
      ],
    });
    await desk.takeFiles([file("hills.png", "png")]);
    expect((bench.document.value.value.pattern as { regions: unknown[] }).regions).toHaveLength(2);
    await desk.takeFiles([file("face.ttf", "ttf")]);
    expect(notes()).toContain("art");
    bench.document.set(["lettering"], [{ text: "AB" }]);
    await desk.takeFiles([file("face.ttf", "ttf")]);
    expect(bench.document.value.value.lettering).toEqual([{ text: "AB", font: "face.ttf" }]);
    while (bench.document.at.value > 0) bench.document.undo();
    expect(bench.document.text.value).toBe(TEXT);
    expect(await desk.takeText('<?xml version="1.0"?><svg/>')).toBe(true);
    expect(bench.files.value.has("pasted.svg")).toBe(true);
    expect(regionsWith({ pattern: { lanes: [] } }, "leaf.svg")).toBeUndefined();
    expect(regionsWith({ pattern: { regions: 3 } }, "leaf.svg")).toBeUndefined();
    expect(regionsWith({ pattern: null }, "leaf.svg")).toBeUndefined();
  });

  it("saves into the file, and offers both where the file was changed", async () => {
    const { file, send } = program(TEXT);
    const disk = new DiskDesign("ring.json", send);
    disk.goOnFrom({ text: TEXT, digest: '"1"' });
    const { desk, bench, notes, choose, handed } = open({ disk, id: ON_DISK });
    expect([desk.isDisk.value, desk.unsaved.value, desk.atRisk.value]).toEqual([true, false, false]);
    bench.document.set(["name"], "mine");
    expect([desk.unsaved.value, desk.atRisk.value]).toEqual([true, true]);
    await desk.save();
    expect([desk.unsaved.value, file.text]).toEqual([false, bench.document.text.value]);
    await desk.lookAtDisk();
    expect(notes()).toEqual(["saved"]);

    Object.assign(file, { text: '{"name":"theirs"}', version: 7 });
    bench.document.set(["name"], "mine again");
    await desk.save();
    await expect.poll(notes).toEqual(["disk"]);
    expect(file.text).toBe('{"name":"theirs"}');
    choose("disk.take-theirs");
    expect([bench.document.text.value, desk.unsaved.value]).toEqual(['{"name":"theirs"}', false]);
    bench.document.undo();
    expect(bench.document.value.value.name).toBe("mine again");
    expect(desk.unsaved.value).toBe(true);

    Object.assign(file, { text: "{}", version: 9 });
    await desk.lookAtDisk();
    choose("disk.save-mine");
    await expect.poll(() => file.text).toBe(bench.document.text.value);
    file.answers = false;
    bench.document.set(["name"], "late");
    await desk.save();
    expect(bench.notes.all.value.at(-1)?.text).toBe("disk.no-answer");
    choose("file.download-design");
    await expect.poll(() => handed.map(([name]) => name)).toEqual(["late.json"]);
    expect(desk.atRisk.value).toBe(false);

    // Another design on the bench is never written over the file.
    file.answers = true;
    bench.begin({ text: TEXT });
    await desk.save();
    expect(handed.at(-1)?.[0]).toBe("desk-ring.json");
    expect(file.text).not.toBe(TEXT);
  });

  it("writes art beside the saved design once, and says what lies in the browser alone", async () => {
    const { file: served, send } = program(TEXT);
    const disk = new DiskDesign("ring.json", send);
    disk.goOnFrom({ text: TEXT, digest: '"1"' });
    const { desk, notes, choose, handed } = open({ disk, id: ON_DISK });
    await desk.takeFiles([file("leaf.svg", "<svg/>")]);
    await desk.save();
    await expect.poll(notes).toEqual(["loose"]);
    choose("file.download-art");
    expect(handed.map(([name]) => name)).toEqual(["leaf.svg"]);
    served.takesArt = true;
    await desk.save();
    await expect.poll(notes).not.toContain("loose");
    await desk.save();
    expect(served.art).toEqual(["files/leaf.svg", "files/leaf.svg"]);
  });

  it("tells of storage that is full, of copies and of what is deleted", async () => {
    const { desk, bench, store, keep, notes, choose } = open();
    store.wrong = new DOMException("no room", "QuotaExceededError");
    bench.document.set(["name"], "b");
    await keep.flush();
    expect([notes(), desk.atRisk.value]).toEqual([["storage"], true]);
    store.wrong = undefined;
    await keep.keepNow();
    expect([notes(), desk.atRisk.value]).toEqual([[], false]);
    const [design] = store.designs.values();
    store.designs.set(design.id, { ...design, revision: "another tab's" });
    bench.document.set(["name"], "c");
    await keep.flush();
    expect(notes()).toEqual(["copy"]);
    await desk.deleteKept(design.id, "b");
    expect(store.designs.get(design.id)?.deleted).toBeGreaterThan(0);
    choose("keep.bring-back");
    await expect.poll(() => store.designs.get(design.id)?.deleted).toBeUndefined();
  });

  it("makes one download at a time, which can be stopped, and tells what hinders it", async () => {
    const { desk, bench, handed, notes } = open();
    const made = desk.download("stl");
    await desk.download("obj");
    expect(desk.making.value?.kind).toBe("stl");
    await made;
    expect(handed.map(([name]) => name)).toEqual(["desk-ring.stl"]);
    const stopped = desk.download("glb");
    desk.making.value?.stop();
    await stopped;
    expect([handed.length, desk.making.value]).toEqual([1, undefined]);
    bench.document.set(["material"], "tin");
    await desk.download("stl");
    expect(notes()).toEqual(["download"]);
    await desk.download("json");
    expect(handed.at(-1)?.[0]).toBe("desk-ring.json");
  });

  it("keeps a picture of a ring that is kept", async () => {
    const { bench, keep, store } = open();
    onTestFinished(keepPictures(bench, keep));
    bench.document.set(["name"], "shown");
    await keep.flush();
    await expect.poll(() => store.parts.get(`picture ${bench.id.value}`), { timeout: 20_000 }).toBeDefined();
    const png = await keep.picture(bench.id.value);
    expect(decode(png as Uint8Array)).toMatchObject({ width: 192, height: 144 });
  });
});
