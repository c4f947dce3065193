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
    const profile = await browser.profile({ viewport: { width, height }, ...rest });
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
    expect(complaints).toEqual([]);
    await profile.close();
  });
});
