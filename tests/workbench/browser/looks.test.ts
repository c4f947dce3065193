// Across: the look of the workbench at four sizes, by day and by night, in both languages
/**
 * Screenshots beside kept ones, cell by cell: so coarse that other letters or another driver change little, and a view that is missing,
 * moved or in the wrong colours changes much. `ANNULET_LOOKS=write` keeps new ones; look at each before it is committed.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { decode, encode } from "fast-png";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";
import { asFile, openFiles, whenQuiet } from "../../support/workbench-steps.js";

const KEPT = fileURLToPath(new URL("../../fixtures/looks/", import.meta.url));

/** Each with the side of a cell, CSS pixels. */
const SCREENS = [
  { width: 360, height: 800, cell: 4, colorScheme: "dark", locale: "de-DE" },
  { width: 768, height: 1024, cell: 8, colorScheme: "light", locale: "en-GB" },
  { width: 1440, height: 900, cell: 10, colorScheme: "light", locale: "de-DE" },
  { width: 3840, height: 2160, cell: 24, colorScheme: "dark", locale: "en-GB" },
] as const;

/** The picture is compared in so many blocks each way, so that a view that is missing is not lost in the mean of the whole. */
const BLOCKS = 8;

/**
 * Most that a block may differ in the mean of its cells, shades of 255. Two runs on one machine differed by 0.00; what
 * other letters or another driver would make of it was not measured. A block without what is drawn in it differs by more, but for
 * those that are nearly empty (tested below).
 */
const MOST = 6;

const DESIGN = JSON.stringify({
  annulet: 1,
  name: "Looked at",
  size: { system: "iso", value: 54 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, bore: { form: "comfort", rise: 0.2 }, outside: { form: "channel", rail: 0.9 } },
  pattern: { symmetry: "p2mm", regions: [{ path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.3 }] },
  beads: [{ along: "rail", diameter: 0.5 }],
});

interface Cells {
  readonly width: number;
  readonly height: number;
  /** Red, green and blue of each cell, row by row. */
  readonly data: Uint8Array;
}

/** The mean of each square of pixels; what is left over at the right and below is left out. */
function coarse(png: Uint8Array, cell: number): Cells {
  const { width: wide, height: high, data, channels } = decode(png);
  const [width, height] = [Math.floor(wide / cell), Math.floor(high / cell)];
  const sums = new Float64Array(3 * width * height);
  for (let y = 0; y < height * cell; y++) {
    for (let x = 0; x < width * cell; x++) {
      const at = 3 * (Math.floor(y / cell) * width + Math.floor(x / cell));
      for (let k = 0; k < 3; k++) sums[at + k] += data[channels * (y * wide + x) + k];
    }
  }
  return { width, height, data: Uint8Array.from(sums, (sum) => Math.round(sum / cell ** 2)) };
}

/** Of each block, row by row, how far its cells are off in the mean. */
function differences(one: Cells, other: Cells): number[] {
  expect([one.width, one.height]).toEqual([other.width, other.height]);
  const sums = Array.from({ length: BLOCKS ** 2 }, () => ({ sum: 0, count: 0 }));
  for (let i = 0; i < one.data.length; i++) {
    const cell = Math.floor(i / 3);
    const block = sums[blockOf(cell, one)];
    block.sum += Math.abs(one.data[i] - other.data[i]);
    block.count++;
  }
  return sums.map(({ sum, count }) => sum / count);
}

function blockOf(cell: number, { width, height }: Cells): number {
  const [x, y] = [cell % width, Math.floor(cell / width)];
  return BLOCKS * Math.floor((BLOCKS * y) / height) + Math.floor((BLOCKS * x) / width);
}

const fileOf = ({ width, height }: { width: number; height: number }) => join(KEPT, `${width}x${height}.png`);

function keptOf(screen: (typeof SCREENS)[number]): Cells {
  const { width, height, data } = decode(readFileSync(fileOf(screen)));
  return { width, height, data: Uint8Array.from(data) };
}

/** How often it is looked again. Chosen. */
const TRIES = 5;

/** The page once what it was told to draw two frames ago is there. */
async function look(page: Page): Promise<Uint8Array> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  return page.screenshot({ animations: "disabled", caret: "hide" });
}

function keep(screen: (typeof SCREENS)[number], seen: Uint8Array): void {
  mkdirSync(KEPT, { recursive: true });
  writeFileSync(fileOf(screen), encode({ ...coarse(seen, screen.cell), channels: 3, depth: 8 }));
}

const mostApart = (seen: Uint8Array, screen: (typeof SCREENS)[number]): number =>
  Math.max(...differences(coarse(seen, screen.cell), keptOf(screen)));

let browser: WorkbenchBrowser | undefined;
afterAll(() => browser?.close());

describe.skipIf(!hasBrowser())("the look of the workbench", () => {
  it.each(SCREENS)("is the kept one at $width × $height, $colorScheme, $locale", async (screen) => {
    browser ??= await startWorkbenchBrowser();
    const { width, height, cell: _, ...rest } = screen;
    const profile = await browser.profile({ viewport: { width, height }, reducedMotion: "reduce", ...rest });
    const { page, complaints } = await browser.open({ drawn: true }, profile);
    await openFiles(page, asFile("ring.json", DESIGN));
    await page.waitForFunction(() => document.title.startsWith("Looked at"));
    await whenQuiet(page);
    await page.waitForSelector("canvas[data-detail=full]");
    let seen = await look(page);
    if (process.env.ANNULET_LOOKS === "write") keep(screen, seen);
    let most = mostApart(seen, screen);
    // The last picture of the ring may still be on its way: a large one takes the processor seconds.
    for (let again = 0; again < TRIES && most >= MOST; again++) {
      seen = await look(page);
      most = mostApart(seen, screen);
    }
    console.info(`${width} × ${height}: ${most.toFixed(2)} shades in the block that differs most`);
    expect(most).toBeLessThan(MOST);
    expect(complaints).toEqual([]);
    await profile.close();
  });
});

describe("the comparison of looks", () => {
  it.each(SCREENS)("sees what is missing at $width × $height, and another theme", (screen) => {
    const kept = keptOf(screen);
    const ground = [...kept.data.slice(0, 3)];
    const empty = { ...kept, data: kept.data.map((_, i) => ground[i % 3]) };
    // Of the blocks that have anything in them, most would be missed.
    const missed = differences(kept, empty).filter((off) => off > 1);
    expect(missed.length).toBeGreaterThan(BLOCKS ** 2 / 3);
    expect(missed.filter((off) => off > MOST).length).toBeGreaterThan(missed.length / 2);
    const turned = { ...kept, data: kept.data.map((value) => 255 - value) };
    expect(Math.min(...differences(kept, turned))).toBeGreaterThan(MOST);
  });
});
