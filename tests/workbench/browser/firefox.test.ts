// Across: the page of the workbench in Debian's Firefox: opened from the disk, a ring made, changed and taken away
/**
 * Skipped where Firefox is missing. What stands here for Firefox alone is its worker, its WebAssembly, its policy and its
 * arithmetic: without a graphics driver it has no WebGL, and the page says so instead of drawing the ring.
 */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, launch, type Page } from "puppeteer-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { annulet, put, tempFolder } from "../../cli/support.js";
import { workbenchFile } from "../../support/workbench-page.js";

const FIREFOX = "/usr/bin/firefox-esr";

/** How long one step may take, ms: the machine may be busy. */
const PATIENCE = 150_000;

const DESIGN = {
  annulet: 1,
  name: "Fox",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
  pattern: { regions: [{ path: "M 0.2 0 L 0.5 0.3 L 0.8 0 L 0.5 -0.3 Z", height: 0.3 }] },
  lettering: [{ text: "925", at: "bore", height: 1.2 }],
};

/** Waits until all that was asked for is shown, in full too. */
async function whenQuiet(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await page.waitForSelector('main[aria-busy="false"]');
}

/** Types over what a field holds. */
async function typeOver(page: Page, field: string, text: string): Promise<void> {
  await page.$eval(field, (input) => {
    (input as HTMLInputElement).focus();
    (input as HTMLInputElement).select();
  });
  await page.keyboard.type(text);
  await page.keyboard.press("Tab");
}

/** Presses what has this text. */
async function press(page: Page, kind: string, text: string): Promise<void> {
  const pressed = await page.$$eval(
    kind,
    (all, wanted) => {
      const found = all.find((one) => one.textContent?.trim() === wanted);
      (found as HTMLElement | undefined)?.click();
      return found !== undefined;
    },
    text,
  );
  expect(pressed, text).toBe(true);
}

/** The file that comes into a folder, once it is whole. */
async function downloaded(folder: string, name: string): Promise<Uint8Array> {
  await expect.poll(() => readdirSync(folder), { timeout: PATIENCE }).toEqual([name]);
  return readFileSync(join(folder, name));
}

describe.skipIf(!existsSync(FIREFOX))("the workbench in Firefox", () => {
  const folder = mkdtempSync(join(tmpdir(), "annulet-firefox-"));
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await launch({
      browser: "firefox",
      executablePath: FIREFOX,
      headless: true,
      timeout: PATIENCE,
      protocolTimeout: PATIENCE,
      extraPrefsFirefox: {
        // Into a folder of our own, without asking.
        "browser.download.folderList": 2,
        "browser.download.dir": folder,
        "browser.download.always_ask_before_handling_new_types": false,
      },
    });
  }, PATIENCE);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true });
  });

  it("makes a ring, follows a change, and gives the command line's bytes", { timeout: 2 * PATIENCE }, async () => {
    const page = await (browser as Browser).newPage();
    page.setDefaultTimeout(PATIENCE);
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("console", (message) => {
      if (["error", "warn"].includes(message.type())) complaints.push(message.text());
    });
    await page.setViewport({ width: 1440, height: 900 });
    await page.goto(pathToFileURL(await workbenchFile()).href);

    const design = tempFolder();
    const input = await page.waitForSelector(".file-bar input[type=file]");
    await (input as NonNullable<typeof input> & { uploadFile(path: string): Promise<void> }).uploadFile(
      put(design, "fox.json", JSON.stringify(DESIGN)),
    );
    await page.waitForFunction(() => document.title.startsWith("Fox"));
    await whenQuiet(page);
    await typeOver(page, "#field-profile-width", "6.5");
    await whenQuiet(page);
    await press(page, ".drop-menu summary", "Download");
    await press(page, "button", "For the printer (STL)");
    const own = await downloaded(folder, "fox.stl");

    const changed = { ...DESIGN, profile: { ...DESIGN.profile, width: 6.5 } };
    const file = join(design, "own.stl");
    expect((await annulet(["make", put(design, "changed.json", JSON.stringify(changed)), "-o", file])).code).toBe(0);
    expect(Buffer.compare(own, readFileSync(file))).toBe(0);
    // A graphics driver may be missing here: then the page says so, and all else works.
    expect(complaints.filter((complaint) => !complaint.includes("WebGL"))).toEqual([]);
  });
});
