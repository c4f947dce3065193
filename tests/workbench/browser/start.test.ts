// Across: the page of the workbench, started from its file
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";

describe.skipIf(!hasBrowser())("the workbench from its file", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("shows a ring without network, and complains of nothing", async () => {
    const { page, complaints } = await browser.open({}, await browser.profile({ offline: true }));
    await page.waitForSelector(".sheet-strip svg path", { state: "attached" });
    expect(await page.title()).toContain("annulet");
    expect(complaints).toEqual([]);
    // What these tests rely on: that whatever goes wrong is noted.
    await page.evaluate(() => {
      setTimeout(() => {
        throw new Error("thrown on purpose");
      });
      return fetch("http://127.0.0.1:9/").catch(() => undefined);
    });
    await expect.poll(() => complaints.join("\n")).toMatch(/thrown on purpose/);
    expect(complaints.join("\n")).toMatch(/Content Security Policy/);
  });
});
