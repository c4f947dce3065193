// Across: the page of the workbench: what it does with what is wrong, hostile, forbidden or dead

import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { serveWorkbench } from "../../../src/cli/open/serve-workbench.js";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser, workbenchFile } from "../../support/workbench-page.js";
import { asFile, chooseInNote, designText, noteText, openFiles, whenQuiet } from "../../support/workbench-steps.js";

const design = (more: object = {}) =>
  JSON.stringify({
    annulet: 1,
    name: "Small ring",
    size: { system: "iso", value: 54 },
    tolerance: 0.1,
    profile: { width: 4, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
    ...more,
  });

/** Sets the mark that hostile input would set if anything of it ran. */
const RUNS = "globalThis.ran=true";

const HOSTILE_SVG = `<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10" onload="${RUNS}">
  <script>${RUNS}</script><image href="https://rings.example/a.png"/><style>@import url(https://rings.example/a.css);</style>
  <foreignObject><img src="x" onerror="${RUNS}"/></foreignObject><path d="M1 1h8v5h-8z" onclick="${RUNS}"/></svg>`;

const BOMB = `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>
  <svg xmlns="http://www.w3.org/2000/svg"><text>&b;</text></svg>`;

const problemsShown = (page: Page) => page.evaluate(() => document.body.textContent ?? "");

/** The machine may be busy. */
const SLOW = { timeout: 20_000 };

describe.skipIf(!hasBrowser())("wrong input on the page", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("is told, and nothing of it runs, leaves the page or takes the work along", async () => {
    const { page, complaints } = await browser.open();
    await openFiles(page, asFile("ring.json", design()));
    await page.waitForFunction(() => document.title.startsWith("Small ring"));
    await whenQuiet(page);

    // 50 MB, dropped.
    await page.evaluate((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(50e6).fill(32), text], "huge.json"));
      document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: transfer, bubbles: true, cancelable: true }));
    }, design());
    expect(await noteText(page, "refused huge.json")).toBe("huge.json is too large.");

    const name = `<img src=x onerror=${RUNS}>`;
    await openFiles(page, asFile(`${name}.exe`, "MZ"), asFile("leaf.svg", HOSTILE_SVG), asFile("bomb.svg", BOMB));
    expect(await noteText(page, `refused ${name}.exe`)).toContain(name);
    await whenQuiet(page);
    await openFiles(page, asFile("face.ttf", "no font"));
    const hostile = design({
      name,
      lettering: [{ text: name, font: "face.ttf" }],
      pattern: { regions: [{ svg: "leaf.svg", name, height: 0.2 }] },
    });
    const withKeys = hostile.replace("{", `{ "__proto__": { "polluted": true }, "constructor": { "prototype": 1 }, `);
    await openFiles(page, asFile("hostile.json", withKeys), asFile("face.ttf", "no font"));
    await page.waitForFunction((name) => document.title.startsWith(name), name);
    await whenQuiet(page);
    expect(await problemsShown(page)).toMatch(/__proto__|constructor/);
    expect(await designText(page)).toBe(withKeys);
    expect(await page.evaluate(() => "ran" in globalThis || "polluted" in {})).toBe(false);
    expect(complaints).toEqual([]);
  });

  it("is a worker that dies: it comes again, but not for ever, and the design stays", async () => {
    const before = `globalThis.workers = []; globalThis.Worker = class extends Worker {
      constructor(...given) { super(...given); workers.push(this); } };`;
    const { page, complaints } = await browser.open({ before });
    await openFiles(page, asFile("ring.json", design()));
    await page.waitForFunction(() => document.title.startsWith("Small ring"));
    await whenQuiet(page);
    const kill = () =>
      page.evaluate(() => {
        const { workers } = globalThis as unknown as { workers: Worker[] };
        workers.at(-1)?.dispatchEvent(new ErrorEvent("error", { message: "died on purpose", cancelable: true }));
        return workers.length;
      });
    expect([await kill(), await kill(), await kill()]).toEqual([2, 3, 3]);
    expect(await noteText(page, "worker")).toMatch(/again and again/);
    expect(await designText(page)).toBe(design());
    await chooseInNote(page, "worker", "Try again");
    await whenQuiet(page);
    expect(await page.evaluate(() => performance.getEntriesByName("annulet-full").length)).toBe(1);
    expect(complaints).toEqual([]);
  });

  it("is storage that is forbidden, then one that is full: the work goes on and can be downloaded", async () => {
    const before = `
      globalThis.wrong = "SecurityError";
      const { open } = IDBFactory.prototype;
      IDBFactory.prototype.open = function (...given) {
        if (globalThis.wrong === "SecurityError") throw new DOMException("no", globalThis.wrong);
        return open.apply(this, given);
      };
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = function (...given) {
        if (globalThis.wrong !== undefined) throw new DOMException("no room", globalThis.wrong);
        return put.apply(this, given);
      };`;
    const { page, complaints } = await browser.open({ before });
    await openFiles(page, asFile("ring.json", design()));
    expect(await noteText(page, "storage")).toMatch(/keeps nothing/);
    await page.evaluate(() => Object.assign(globalThis, { wrong: "QuotaExceededError" }));
    await openFiles(page, asFile("ring.json", design({ name: "Full" })));
    // The note may come with a write of the design before: what is downloaded is what lies on the bench.
    await page.waitForFunction(() => document.title.startsWith("Full"));
    await expect.poll(() => noteText(page, "storage"), SLOW).toMatch(/no room/);
    const [saved] = await Promise.all([page.waitForEvent("download"), chooseInNote(page, "storage", "Download")]);
    expect(readFileSync(await saved.path(), "utf8")).toBe(design({ name: "Full" }));
    await page.evaluate(() => Object.assign(globalThis, { wrong: undefined }));
    await openFiles(page, asFile("ring.json", design({ name: "Room" })));
    await expect.poll(() => page.locator('[data-note="storage"]').count(), SLOW).toBe(0);
    expect(complaints).toEqual([]);
  });

  it("is WebAssembly that is forbidden: the other kernel takes over and says so", async () => {
    // The page's policy comes first; what its scripts say of it must stay, since the policy holds their digests.
    const html = readFileSync(await workbenchFile(), "utf8").replace(" 'wasm-unsafe-eval'", "");
    const { address, close } = await serveWorkbench(html);
    onTestFinished(close);
    const { page, complaints } = await browser.open({ address });
    await openFiles(page, asFile("ring.json", design()));
    await page.waitForFunction(() => document.title.startsWith("Small ring"));
    await whenQuiet(page);
    expect(await noteText(page, "wasm")).toMatch(/slower kernel/);
    expect(await page.evaluate(() => performance.getEntriesByName("annulet-full").length)).toBe(1);
    // The browser itself tells of what its policy refused, and of nothing else.
    expect(complaints.filter((complaint) => !/wasm|WebAssembly/i.test(complaint))).toEqual([]);
  });
});
