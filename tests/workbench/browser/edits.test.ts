// Across: the page of the workbench under many edits: no complaint, steady memory, the times from an edit to its picture
import type { CDPSession, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";
import {
  asFile,
  changeLines,
  designText,
  openFiles,
  typeDesign,
  whenQuiet,
  withoutInlineStyles,
} from "../../support/workbench-steps.js";

/** How many random edits; 300 take about a minute, so a run that is one of many makes fewer: ANNULET_EDITS says how many. */
const EDITS = Number(process.env.ANNULET_EDITS ?? 30);
const SEED = Number(process.env.ANNULET_SEED ?? Math.floor(Math.random() * 2 ** 31));

/** How much more the page may hold at the end than after the first third of the edits, bytes: lists and kept texts. Chosen. */
const MORE = 25e6;

/** The machine may be busy with other tests. */
const LONG = { timeout: 400_000 };

/** Of each kind of edit whose times are printed. */
const TIMED = 7;

/** Numbers from 0 to 1 (mulberry32, public domain). */
function random(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const SMALL = {
  annulet: 1,
  name: "Edited",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
  pattern: { regions: [{ path: "M 0.3 -0.2 H 0.7 V 0.2 H 0.3 Z", height: 0.3 }] },
};

type Edit = (text: string, next: () => number) => string;

/** Sizes, art, wrong values, half a document, strange signs. */
const KINDS: readonly Edit[] = [
  (text, next) => text.replace(/"width":[^,]*/, `"width":${(3 + 5 * next()).toFixed(2)}`),
  (text, next) => text.replace(/"value":[^,}]*/, `"value":${(44 + 26 * next()).toFixed(1)}`),
  (text, next) => text.replace(/"height":[^,}]*/, `"height":${(0.6 * next()).toFixed(3)}`),
  (text, next) => text.replace(/H [\d.]+ V/, `H ${(0.35 + 0.6 * next()).toFixed(3)} V`),
  (text, next) => text.replace(/"thickness":[^,]*/, `"thickness":${(5 * next() - 1).toFixed(2)}`),
  (text, next) =>
    text.replace(/"form":"[a-z]*"/, `"form":"${["flat", "domed", "comfort", "nonsense"][Math.floor(4 * next())]}"`),
  (text, next) => text.slice(0, Math.floor(text.length * next())),
  (text) => text.replace(/"name":"[^"]*"/, '"name":"<b>\\u202e\u00fc\u4e2d&amp;"'),
  () => JSON.stringify(SMALL),
];

/** Bytes that the page's own script holds, once what nobody needs is taken away. */
async function heldBytes(tools: CDPSession): Promise<number> {
  await tools.send("HeapProfiler.collectGarbage");
  return (await tools.send("Runtime.getHeapUsage")).usedSize;
}

/** From a change to the frame that shows it at draft, ms. */
async function timeOf(page: Page, edit: () => Promise<void>): Promise<number> {
  const time = page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        performance.clearMarks("annulet-draft");
        new PerformanceObserver((list, observer) => {
          if (list.getEntriesByName("annulet-draft").length === 0) return;
          observer.disconnect();
          const [change] = performance.getEntriesByName("annulet-change");
          requestAnimationFrame(() => requestAnimationFrame(() => resolve(performance.now() - change.startTime)));
        }).observe({ type: "mark" });
      }),
  );
  await edit();
  return time;
}

/** Unfolds the groups, parts and entries of the form, those of what was folded too. */
async function unfold(page: Page): Promise<void> {
  for (let depth = 0; depth < 3; depth++) {
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll<HTMLDetailsElement>("details.fold:not(.fold-more)"))
        fold.open = true;
    });
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  }
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

describe.skipIf(!hasBrowser())("many edits", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("leave no complaint and no memory behind, and are gone back and forth to the same bytes", LONG, async () => {
    console.log(`${EDITS} edits, ANNULET_SEED=${SEED}`);
    const next = random(SEED);
    const { page, complaints } = await browser.open();
    await openFiles(page, asFile("ring.json", JSON.stringify(SMALL)));
    await page.waitForFunction(() => document.title.startsWith("Edited"));
    await whenQuiet(page);
    const tools = await page.context().newCDPSession(page);
    let text = JSON.stringify(SMALL);
    let before = 0;
    for (let edit = 0; edit < EDITS; edit++) {
      if (edit === Math.floor(EDITS / 3)) before = await heldBytes(tools);
      text = KINDS[Math.floor(KINDS.length * next())](text, next) || "{}";
      await typeDesign(page, text);
      await page.waitForTimeout(200 * next() ** 2);
    }
    const end = JSON.stringify({ ...SMALL, name: "End" });
    await typeDesign(page, end);
    await whenQuiet(page);
    const after = await heldBytes(tools);
    console.log(`held: ${(before / 1e6).toFixed(1)} MB after a third, ${(after / 1e6).toFixed(1)} MB at the end`);
    expect(after).toBeLessThan(before + MORE);
    const changes = await changeLines(page);
    await changes.first().click();
    expect(await designText(page)).toBe(JSON.stringify(SMALL));
    await changes.last().click();
    expect(await designText(page)).toBe(end);
    expect(withoutInlineStyles(complaints)).toEqual([]);
  });

  // A measurement, so only where it is asked for: ANNULET_TIMES=1.
  it.runIf(process.env.ANNULET_TIMES !== undefined)("are shown in a time that is printed", LONG, async () => {
    const { page, complaints } = await browser.open();
    await page.waitForFunction(() => document.title.startsWith("Saltmarsh"));
    await whenQuiet(page);
    await unfold(page);
    await page.locator(".strip-tools select").first().selectOption({ label: "boss" });
    await whenQuiet(page);
    await page.evaluate(() => {
      const long: number[] = Object.assign(globalThis, { long: [] as number[] }).long;
      new PerformanceObserver((list) => long.push(...list.getEntries().map(({ duration }) => duration))).observe({
        type: "longtask",
      });
    });
    const kinds: Record<string, string> = {
      "a bead's diameter": "#field-beads-0--diameter",
      "a height": "#field-pattern-regions-3--height",
      "a point of art": ".handles .handle >> nth=0",
    };
    for (const [kind, control] of Object.entries(kinds)) {
      await page.locator(control).focus();
      const times: number[] = [];
      for (let step = 1; step <= TIMED; step++) {
        times.push(await timeOf(page, () => page.keyboard.press("ArrowUp")));
        await page.waitForTimeout(100);
      }
      console.log(
        `${kind}: median ${median(times).toFixed(0)} ms from edit to picture (${times.map((t) => t.toFixed(0)).join(", ")})`,
      );
      await whenQuiet(page);
    }
    const long = await page.evaluate(() => (globalThis as unknown as { long: number[] }).long);
    console.log(
      `tasks over 50 ms on the page's thread: ${long.length}, the longest ${Math.max(0, ...long).toFixed(0)} ms`,
    );
    expect(withoutInlineStyles(complaints)).toEqual([]);
  });
});
