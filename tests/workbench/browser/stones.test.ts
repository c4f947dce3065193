// Across: stones on the page of the workbench: put on the strip, dragged, counted, chosen in all views, gone back and forth
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";
import { asFile, changeLines, designText, download, openFiles, whenQuiet } from "../../support/workbench-steps.js";

/** A plain band with room for stones: six mirrored tiles, and a row all round at its edge. */
const DESIGN = {
  annulet: 1,
  name: "Stones",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 8, thickness: 2.4, bore: { form: "flat" }, outside: { form: "flat" } },
  pattern: { symmetry: "p2mm", fit: { repeats: 6, hold: "band" } },
  stones: [
    {
      name: "edge",
      size: 1.2,
      place: { form: "row", along: { v: 2.4 }, over: { from: 40, to: 140 }, count: 6 },
      setting: { form: "flush" },
    },
  ],
};
const TEXT = JSON.stringify(DESIGN, undefined, 2);

/** The machine may be busy with other tests. */
const LONG = { timeout: 400_000 };

const groups = async (page: Page) => JSON.parse(await designText(page)).stones;

/** Where the middle of an element is on the screen. */
async function middleOf(page: Page, selector: string): Promise<readonly [x: number, y: number]> {
  const box = await page.locator(selector).first().boundingBox();
  if (box === null) throw new Error(`${selector} is not seen`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Waits until so many stones are counted. */
const stonesCounted = (page: Page, count: number) =>
  page.waitForFunction(
    (wanted) => document.querySelector(".title-stones .figure")?.textContent?.startsWith(`${wanted} ·`),
    count,
  );

/** Drags a handle of the strip by CSS pixels. */
async function drag(page: Page, [dx, dy]: readonly [number, number]): Promise<void> {
  const [x, y] = await middleOf(page, ".strip-paper .handle");
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const share of [0.3, 0.6, 1]) await page.mouse.move(x + share * dx, y + share * dy);
  await page.mouse.up();
}

/** Puts a stone on the strip where a centre of half turns is near, and tries it about. */
async function putAndMove(page: Page): Promise<void> {
  const [x, y] = await middleOf(page, ".symmetry .two-fold");
  await page.getByRole("button", { name: "Add a stone" }).click();
  await page.mouse.click(x + 4, y - 3);
  // A centre of half turns and mirrors: one stone for each of the six tiles, snapped to it.
  await stonesCounted(page, 6 + 6);
  expect((await groups(page))[1]).toEqual({
    size: 1.2,
    place: { form: "tile", at: [0, 0] },
    setting: { form: "flush" },
  });
  await drag(page, [30, -22]);
  // Off both mirrors it has three images in its tile; their outlines followed while it was dragged.
  await stonesCounted(page, 6 + 24);
  const [mx, my] = (await groups(page))[1].place.at;
  expect(mx).toBeGreaterThan(0.05);
  expect(my).toBeGreaterThan(0.05);
  await page.locator(".strip-paper .handle").first().press("ArrowRight");
  await expect.poll(async () => (await groups(page))[1].place.at[0]).toBeGreaterThan(mx);
}

/** Counts the row and moves it across the band. */
async function countAndMoveRow(page: Page): Promise<void> {
  await page.mouse.click(...(await middleOf(page, ".strip-stones .stone")));
  const counts = page.getByRole("group", { name: /Stones in the row/ }).getByRole("button");
  expect(await counts.allTextContents()).toEqual([/^5/, /^6/, /^7/].map((text) => expect.stringMatching(text)));
  expect(await counts.nth(1).getAttribute("aria-pressed")).toBe("true");
  await counts.nth(2).click();
  await stonesCounted(page, 7 + 24);
  await drag(page, [0, -12]);
  const { count, along } = (await groups(page))[0].place;
  expect(count).toBe(7);
  expect(along.v).toBeGreaterThan(2.5);
  expect(along.v).toBeLessThan(3.2);
  // What the chosen stones weigh is told beside their size; the other way round the size follows.
  const carats = page.getByLabel("Weight of a stone, carats").first();
  await expect.poll(() => carats.inputValue()).toMatch(/^0\.00[5-9]$/);
  await carats.fill("0,01");
  await carats.press("Enter");
  await expect.poll(async () => (await groups(page))[0].size).toBeGreaterThan(1.2);
}

describe.skipIf(!hasBrowser())("stones on the bench", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("are put down, moved, counted, chosen in every view, ordered and gone back through", LONG, async () => {
    const { page, complaints } = await browser.open({ start: true });
    await page.waitForSelector(".start");
    await openFiles(page, asFile("stones.json", TEXT));
    await stonesCounted(page, 6);
    await putAndMove(page);
    await countAndMoveRow(page);
    await whenQuiet(page);
    expect(await page.locator(".ring-status").textContent()).toContain("Chosen: edge.");
    const order = new TextDecoder().decode(await download(page, "Stones to order (CSV)"));
    expect(order.split("\r\n")[1]).toMatch(/^1,round,diamond,1\.\d\d,1\.\d\d,7,/);

    const last = await designText(page);
    const lines = await changeLines(page);
    // Opened, added, dragged, one step by keys, counted, dragged, sized: one line each.
    expect(await lines.count()).toBe(7);
    await lines.first().click();
    expect(await designText(page)).toBe(TEXT);
    await lines.last().click();
    expect(await designText(page)).toBe(last);

    // Taken away by its handle.
    await page.mouse.click(...(await middleOf(page, ".strip-stones .stone")));
    await page.locator(".strip-paper .handle").first().press("Delete");
    await stonesCounted(page, 24);
    expect(complaints).toEqual([]);
  });
});
