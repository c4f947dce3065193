// Across: the workbench for everyone: keyboard, names, contrast, narrow screens
import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";

/** WCAG 2.2 up to level AA, by axe-core's names. */
const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

/** What axe-core finds wrong on a page as it stands, one line for each place. */
async function findBarriers(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async (values) => {
    const { axe: inPage } = globalThis as unknown as {
      axe: { run(context: Document, options: object): Promise<{ violations: Violation[] }> };
    };
    interface Violation {
      readonly id: string;
      readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary: string }[];
    }
    const { violations } = await inPage.run(document, { runOnly: { type: "tag", values } });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary}`),
    );
  }, WCAG);
}

/** Whether anything sticks out of the page sideways. */
function sticksOut(page: Page): Promise<boolean> {
  return page.evaluate(() => document.documentElement.scrollWidth > innerWidth + 1);
}

type Place = readonly [x: number, y: number];

/** Fingers on the page: each moves from a place to another, in some steps. */
async function touch(page: Page, ...ways: readonly (readonly [from: Place, to: Place])[]): Promise<void> {
  const tools = await page.context().newCDPSession(page);
  const STEPS = 5;
  for (let i = 0; i <= STEPS; i++) {
    const touchPoints = ways.map(([from, to], id) => {
      const [x, y] = [0, 1].map((k) => from[k] + ((to[k] - from[k]) * i) / STEPS);
      return { x, y, id };
    });
    await tools.send("Input.dispatchTouchEvent", { type: i === 0 ? "touchStart" : "touchMove", touchPoints });
  }
  await tools.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await tools.detach();
}

/** Draws the strip apart by two fingers, one of them on a handle of what is chosen: it comes nearer, and nothing is moved. */
async function pinchStrip(page: Page): Promise<void> {
  const regions = page.locator(".strip-tools select").first();
  await regions.focus();
  await regions.selectOption({ index: 1 });
  const handle = page.locator(".strip-paper .handle").first();
  await handle.waitFor();
  await page.locator(".strip-paper").evaluate((paper) => paper.scrollIntoView({ block: "center" }));
  const box = (await handle.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const scale = async () =>
    Number(/scale\(([\d.]+)/.exec((await page.locator(".strip-world").getAttribute("transform")) ?? "")?.[1]);
  const before = await scale();
  const [changes, side] = [await page.locator(".panel-changes summary").textContent(), x < 180 ? 1 : -1];
  await touch(
    page,
    [
      [x + 40 * side, y + 8],
      [x + 120 * side, y + 8],
    ],
    [
      [x, y],
      [x, y],
    ],
  );
  await expect.poll(async () => (await scale()) / before).toBeGreaterThan(2.5);
  expect(await page.locator(".panel-changes summary").textContent()).toBe(changes);
}

const SCREENS = [
  { width: 1440, height: 900, colorScheme: "light", locale: "en-GB" },
  { width: 360, height: 800, colorScheme: "dark", locale: "de-DE" },
] as const;

let browser: WorkbenchBrowser | undefined;
afterAll(() => browser?.close());

describe.skipIf(!hasBrowser())("the workbench, for everyone", () => {
  it.each(SCREENS)("has no barrier at $width × $height, $colorScheme, $locale", async (screen) => {
    browser ??= await startWorkbenchBrowser();
    const { width, height, ...rest } = screen;
    const profile = await browser.profile({ viewport: { width, height }, hasTouch: width < height, ...rest });
    const { page, complaints } = await browser.open({ start: true }, profile);
    await page.waitForSelector(".start button");
    expect(await findBarriers(page)).toEqual([]);
    expect(await sticksOut(page)).toBe(false);
    await page.keyboard.press("Escape");
    await page.waitForFunction(() => document.querySelector("main")?.getAttribute("aria-busy") === "false");
    for (const summary of await page.locator("aside summary").all()) await summary.click();
    expect(await findBarriers(page)).toEqual([]);
    expect(await sticksOut(page)).toBe(false);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe(screen.locale.slice(0, 2));
    if (width < height) await pinchStrip(page);
    expect(complaints).toEqual([]);
    await profile.close();
  });
});
