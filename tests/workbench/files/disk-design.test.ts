import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { serveWorkbench } from "../../../src/cli/open/serve-workbench.js";
import { DiskDesign, type Loaded } from "../../../src/workbench/files/disk-design.js";
import { PLAIN, put, tempFolder } from "../../cli/support.js";

const NAMING = JSON.stringify({ ...PLAIN, pattern: { regions: [{ svg: "a b.svg", height: 0.2 }] } });

const HTML = `<html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'"></head></html>`;

it("reads and saves through the program, and is told of others' changes", async () => {
  const folder = tempFolder();
  const path = put(folder, "ring.json", '{"annulet":1}');
  put(folder, "leaf.svg", "<svg/>");
  const { address, close } = await serveWorkbench(HTML, path);
  onTestFinished(close);
  const { origin } = new URL(address);
  // As the browser does for the page itself.
  const send = (name: string, how: RequestInit = {}) =>
    fetch(new URL(name, address), { ...how, headers: { ...how.headers, origin } });
  const disk = new DiskDesign("ring.json", send);
  const loaded = (await disk.load()) as Loaded;
  expect(loaded.text).toBe('{"annulet":1}');
  disk.goOnFrom(loaded);
  expect(await disk.changed()).toBeUndefined();
  expect(await disk.save('{"annulet":2}')).toBe("saved");
  expect(await disk.save('{"annulet":3}')).toBe("saved");
  expect(readFileSync(path, "utf8")).toBe('{"annulet":3}');
  expect(disk.saved.value?.text).toBe('{"annulet":3}');

  writeFileSync(path, "theirs");
  expect((await disk.changed())?.text).toBe("theirs");
  expect(await disk.save("mine")).toBe("changed");
  expect(readFileSync(path, "utf8")).toBe("theirs");
  expect(await disk.saveOver("mine")).toBe("saved");
  expect(readFileSync(path, "utf8")).toBe("mine");

  rmSync(path);
  expect(await disk.load()).toBeUndefined();
  expect(await disk.save("again")).toBe("gone");
  expect(await disk.saveOver("again")).toBe("saved");
  expect(await disk.save("x".repeat(5e6 + 1))).toMatch(/refused|no-answer/);
  expect(readFileSync(path, "utf8")).toBe("again");

  expect(new TextDecoder().decode(await disk.file("leaf.svg"))).toBe("<svg/>");
  expect(await disk.file("none.svg")).toBeUndefined();
  expect(await disk.file("../ring.json")).toBeUndefined();

  // Art is added where the saved design names it and no other file has its name.
  const art = new TextEncoder().encode("<svg><path/></svg>");
  expect(await disk.addFile("a b.svg", art)).toBe(false);
  expect(await disk.saveOver(NAMING)).toBe("saved");
  expect(await disk.addFile("a b.svg", art)).toBe(true);
  expect(await disk.addFile("a b.svg", art)).toBe(true);
  expect(await disk.addFile("a b.svg", new TextEncoder().encode("other"))).toBe(false);
  expect(readFileSync(join(folder, "a b.svg"), "utf8")).toBe("<svg><path/></svg>");
  expect(await disk.addFile("../f.ttf", art)).toBe(false);
  await close();
  expect(await disk.addFile("a b.svg", art)).toBe(false);
  expect(await disk.save("late")).toBe("no-answer");
  expect(await disk.load()).toBeUndefined();
  expect(await disk.file(join("leaf.svg"))).toBeUndefined();
});
