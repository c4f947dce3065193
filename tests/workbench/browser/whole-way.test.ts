// Across: the page of the workbench: a design to its files, changes gone back and forth, reload, two tabs, without network
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readMesh } from "../../../src/index.js";
import { annulet, put, tempFolder } from "../../cli/support.js";
import { admesh, hasAdmesh } from "../../support/admesh.js";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";
import {
  asFile,
  changeLines,
  designText,
  download,
  noteText,
  openFiles,
  typeDesign,
  whenQuiet,
  withoutInlineStyles,
} from "../../support/workbench-steps.js";

const SQUARE = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h8v5h-8z"/></svg>';

/** Small, with a drawing and lettering, and a master larger than the finished piece. */
const DESIGN = {
  annulet: 1,
  name: "Whole way",
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 5, thickness: 1.8, bore: { form: "flat" }, outside: { form: "flat" } },
  pattern: { regions: [{ svg: "square.svg", height: 0.3 }] },
  casting: { shrinkage: 1.5 },
  lettering: [{ text: "925", at: "bore", height: 1.2 }],
};
const TEXT = JSON.stringify(DESIGN, undefined, 2);

/** How the page calls what it makes, with the ending and the command that writes the same. */
const FILES = [
  ["For the printer (STL)", "stl", "make"],
  ["Mesh (OBJ)", "obj", "make"],
  ["For the printer (3MF)", "3mf", "make"],
  ["For screens (GLB)", "glb", "make"],
  ["Bench sheet (HTML)", "html", "sheet"],
  ["Picture (PNG)", "png", "picture"],
  ["Tile, flat (SVG)", "svg", "tile"],
] as const;

/**
 * Formats that show the last digits of what sines and roots give, which two versions of V8 work out differently: how far
 * coordinates may be off, mm. Some hundred units in the last place of 10 mm; in GLB one of single precision.
 */
const LAST_DIGITS: Readonly<Record<string, number>> = { obj: 2e-13, "3mf": 2e-13, glb: 2e-6 };

/** Most that any coordinate of two mesh files differs; the triangles must be the same. */
async function farthestApart(own: Uint8Array, theirs: Uint8Array, ending: string): Promise<number> {
  const [a, b] = [await readMesh(own, `a.${ending}`), await readMesh(theirs, `b.${ending}`)];
  expect(a.triangles).toEqual(b.triangles);
  return a.positions.reduce((most, value, index) => Math.max(most, Math.abs(value - b.positions[index])), 0);
}

/** The machine may be busy with other tests. */
const SLOW = { timeout: 60_000 };
const LONG = { timeout: 400_000 };

describe.skipIf(!hasBrowser())("the way from a design to its files", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("ends at the command line's bytes, and loses nothing on reload or in another tab", LONG, async () => {
    const profile = await browser.profile({ offline: true });
    const { page, complaints } = await browser.open({}, profile);
    await openFiles(page, asFile("ring.json", TEXT), asFile("square.svg", SQUARE));
    await page.waitForFunction(() => document.title.startsWith("Whole way"));
    await whenQuiet(page);

    const folder = tempFolder();
    const path = put(folder, "ring.json", TEXT);
    put(folder, "square.svg", SQUARE);
    for (const command of ["make", "sheet", "picture", "tile"]) {
      const outputs = FILES.filter(([, , of]) => of === command).flatMap(([, ending]) => [
        "-o",
        join(folder, `a.${ending}`),
      ]);
      expect((await annulet([command, path, ...outputs])).code).toBe(0);
    }
    const others: string[] = [];
    for (const [label, ending] of FILES) {
      const own = await download(page, label);
      const theirs = Uint8Array.from(readFileSync(join(folder, `a.${ending}`)));
      if (Buffer.compare(own, theirs) !== 0) others.push(ending);
      if (ending in LAST_DIGITS) expect(await farthestApart(own, theirs, ending)).toBeLessThan(LAST_DIGITS[ending]);
      if (ending === "stl" && hasAdmesh) {
        expect(admesh(own)).toMatchObject({ parts: 1, degenerate: 0, disconnectedEdges: [0, 0, 0], backwards: 0 });
      }
    }
    expect(others.filter((ending) => !(ending in LAST_DIGITS))).toEqual([]);

    // Changes, gone back to the start and forth to the end.
    const last = TEXT.replace("Whole way", "Changed").replace('"width": 5', '"width": 6');
    await typeDesign(page, last);
    await whenQuiet(page);
    expect(await designText(page)).toBe(last);
    await (await changeLines(page)).first().click();
    expect(await designText(page)).toBe(TEXT);
    await (await changeLines(page)).last().click();
    expect(await designText(page)).toBe(last);
    await whenQuiet(page);

    await page.reload();
    await page.waitForFunction(() => document.title.startsWith("Changed"));
    expect(await designText(page)).toBe(last);
    await (await changeLines(page)).first().click();
    expect(await designText(page)).toBe(TEXT);
    await (await changeLines(page)).last().click();

    // A second tab begins with the same ring; once both change it there are two.
    const second = await browser.open({}, profile);
    await second.page.waitForFunction(() => document.title.startsWith("Changed"));
    await typeDesign(second.page, last.replace("Changed", "Second tab"));
    await whenQuiet(second.page);
    await typeDesign(page, last.replace("Changed", "First tab"));
    expect(await noteText(page, "copy")).toMatch(/Another tab/);
    await whenQuiet(page);
    await second.page.close();
    await page.reload();
    await page.getByText("My rings").click();
    const names = await page.locator(".kept > span:not(.kept-picture)").allTextContents();
    expect(names.sort()).toEqual(["First tab", "Second tab"]);
    await page.locator(".kept img").first().waitFor();
    // To and fro between them, and one put away and brought back.
    await page.getByRole("button", { name: /^Second tab/ }).click();
    await page.waitForFunction(() => document.title.startsWith("Second tab"));
    expect(await designText(page)).toBe(last.replace("Changed", "Second tab"));
    await page.getByText("My rings").click();
    await page.getByRole("button", { name: "Delete First tab" }).click();
    await page.locator('[data-note="deleted"]').getByRole("button", { name: "Bring it back" }).click();
    await page.getByText("My rings").click();
    await expect.poll(() => page.locator(".kept").count(), SLOW).toBe(2);
    expect(withoutInlineStyles([...complaints, ...second.complaints])).toEqual([]);
  });
});
