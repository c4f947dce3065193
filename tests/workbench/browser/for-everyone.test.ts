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

/** Fingers on the page: each touch moves from a place to another, in some steps. */
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

type Place = readonly [x: number, y: number];

/** The middle of what is found, brought into view. */
async function middleOf(page: Page, selector: string): Promise<Place> {
  await page.locator(selector).evaluate((element) => element.scrollIntoView({ block: "center" }));
  const box = await page.locator(selector).boundingBox();
  if (box === null) throw new Error(`nothing at ${selector}`);
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Two fingers drawn apart over a place. */
const apart = (page: Page, [x, y]: Place) =>
  touch(
    page,
    [
      [x - 20, y],
      [x - 60, y],
    ],
    [
      [x + 20, y],
      [x + 60, y],
    ],
  );

async function tryByHand(page: Page): Promise<void> {
  const strip = await middleOf(page, ".strip-paper");
  const near = () => page.locator(".strip-world").getAttribute("transform");
  const before = await near();
  await apart(page, strip);
  const scale = (text: string | null) => Number(/scale\(([\d.]+)/.exec(text ?? "")?.[1]);
  expect(scale(await near()) / scale(before)).toBeCloseTo(3, 1);
  expect(
    await page
      .locator(".grip-room")
      .first()
      .evaluate((room) => room.getBoundingClientRect().width),
  ).toBeGreaterThan(40);
  // The ring stands where it is touched, left of its bore, and what made it there is chosen.
  const ring = await middleOf(page, ".ring-picture");
  await page
    .getByRole("button", { name: /Finger|finger/ })
    .first()
    .click();
  for (const away of [100, 110, 120, 130])
    await touch(page, [
      [ring[0] - away, ring[1]],
      [ring[0] - away, ring[1]],
    ]);
  await expect.poll(() => page.locator(".ring-status").textContent()).toMatch(/Gewählt/);
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
    const profile = await browser.profile({
      viewport: { width, height },
      hasTouch: width < height,
      reducedMotion: "reduce",
      ...rest,
    });
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
    if (width < height) await tryByHand(page);
    expect(complaints).toEqual([]);
    await profile.close();
  });
});
