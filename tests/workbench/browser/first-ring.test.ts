// Across: the start, the guide, the form, the text and the list of changes on one page
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";
import { asFile, openFiles, whenQuiet } from "../../support/workbench-steps.js";

/** The text in the editor, which shows only what is in sight: here the whole of a short design. */
const textOf = (page: Page) => page.locator(".editor .cm-content").textContent();

const next = (page: Page) => page.locator(".guide-next").click();

/** From the empty start to a ring with motif and beads, without a word of JSON. */
async function followGuide(page: Page): Promise<void> {
  await page.locator(".start-own").click();
  await page.getByLabel("size system").selectOption("us");
  await page.getByLabel("label", { exact: true }).fill("7");
  await next(page);
  await page.getByRole("radio", { name: "flat" }).first().click();
  await next(page);
  await page.getByRole("radio", { name: "lozenge", exact: true }).click();
  await next(page);
  await page.getByLabel("Beads along both edges").check();
  await next(page);
  await next(page);
}

/** Number, refused entry, comma, undo from the field, typing in the text, undo from there. */
async function shapeByHand(page: Page): Promise<void> {
  const width = page.locator("#field-profile-width");
  await width.press("ArrowUp");
  expect(await width.inputValue()).toBe("6.05");
  // Left, so that what comes next is a line of its own.
  await width.blur();
  await width.fill("wide");
  expect(await width.getAttribute("aria-invalid")).toBe("true");
  expect(await page.locator("#field-profile-width-refused").textContent()).toContain("number");
  await width.fill("7,5");
  await width.blur();
  expect(await width.inputValue()).toBe("7.5");
  await page.locator(".panel-text > summary").click();
  await expect.poll(() => textOf(page)).toContain('"width": 7.5');
  await width.press("Control+z");
  await expect.poll(() => textOf(page)).toContain('"width": 6.05');
}

describe.skipIf(!hasBrowser())("a first ring of one's own", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("gives way to a file that is opened while the start lies over the bench", async () => {
    const { page } = await browser.open({ start: true });
    await page.waitForSelector(".start");
    const own = { annulet: 1, name: "Own", size: { system: "iso", value: 54 }, profile: { width: 6, thickness: 2 } };
    await openFiles(page, asFile("own.json", JSON.stringify(own)));
    await page.waitForSelector(".start", { state: "detached" });
    // The demo's ring, which is left on an empty bench, would come within this time.
    await whenQuiet(page);
    expect(await page.title()).toMatch(/^Own/);
    await page.close();
  });

  it("is made step by step, shaped by fields and by text, and gone back through", async () => {
    const { page, complaints } = await browser.open({ start: true });
    await followGuide(page);
    await shapeByHand(page);
    const content = page.locator(".editor .cm-content");
    await content.click();
    await page.keyboard.press("Control+Home");
    await page.keyboard.type("x");
    await expect.poll(() => page.locator(".panel-text .fold-wrong").count()).toBe(1);
    await page.keyboard.press("Control+z");
    await expect.poll(() => page.locator(".panel-text .fold-wrong").count()).toBe(0);
    await page.locator(".panel-changes > summary").click();
    const lines = await page.locator(".changes button").allTextContents();
    expect(lines[0]).toBe("opened");
    expect(lines).toContain("band width 6 → 6.05 mm");
    await page.locator(".changes button").first().click();
    await expect.poll(() => textOf(page)).not.toContain("lozenge");
    await page.getByRole("button", { name: "Redo" }).click();
    expect(complaints).toEqual([]);
  });
});
