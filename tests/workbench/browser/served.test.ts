// Across: the page of the workbench as annulet open serves it
import { readFileSync, writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { writeLeadingPage } from "../../../src/cli/open/leading-page.js";
import { serveWorkbench } from "../../../src/cli/open/serve-workbench.js";
import { PLAIN, put, tempFolder } from "../../cli/support.js";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser, workbenchFile } from "../../support/workbench-page.js";
import {
  changeLines,
  chooseInNote,
  designText,
  noteText,
  typeDesign,
  whenQuiet,
  withoutInlineStyles,
} from "../../support/workbench-steps.js";

const SQUARE = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M1 1h8v5h-8z"/></svg>';

describe.skipIf(!hasBrowser())("the page that annulet open serves", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("shapes and saves the very file, and overwrites nothing unasked", async () => {
    const folder = tempFolder();
    const drawn = {
      ...PLAIN,
      name: "on disk",
      tolerance: 0.1,
      pattern: { regions: [{ svg: "square.svg", height: 0.2 }] },
    };
    const path = put(folder, "ring.json", drawn);
    put(folder, "square.svg", SQUARE);
    const { address, close } = await serveWorkbench(readFileSync(await workbenchFile(), "utf8"), path);
    onTestFinished(close);
    const lead = writeLeadingPage(address);
    onTestFinished(lead.remove);
    const { page, complaints } = await browser.open({ address, led: pathToFileURL(lead.path).href });
    const onDisk = () => readFileSync(path, "utf8");
    const edit = (text: string) => typeDesign(page, text);
    await page.waitForFunction(() => document.title === "on disk – annulet");
    await page.waitForSelector(".sheet-strip svg path", { state: "attached" });

    const mine = onDisk().replace("on disk", "mine");
    await edit(mine);
    await page.waitForFunction(() => document.title === "● mine – annulet");
    // Reload asks first, and what was not saved is there again.
    page.once("dialog", (dialog) => void dialog.accept());
    await page.reload();
    await page.waitForFunction(() => document.title === "● mine – annulet");
    await whenQuiet(page);
    await page.keyboard.press("Control+s");
    expect(await noteText(page, "saved")).toBe("ring.json is saved.");
    expect(onDisk()).toBe(mine);
    expect(await page.title()).toBe("mine – annulet");

    writeFileSync(path, mine.replace("mine", "theirs"));
    await edit(mine.replace("mine", "mine again"));
    await page.keyboard.press("Control+s");
    expect(await noteText(page, "disk")).toMatch(/changed by another program/);
    expect(onDisk()).toContain("theirs");
    await chooseInNote(page, "disk", "Take the file");
    expect(await designText(page)).toBe(onDisk());
    await (await changeLines(page)).nth(-2).click();
    expect(await designText(page)).toContain("mine again");
    writeFileSync(path, mine.replace("mine", "theirs again"));
    await page.keyboard.press("Control+s");
    await chooseInNote(page, "disk", "Save mine over it");
    await noteText(page, "saved");
    expect(onDisk()).toContain("mine again");

    await whenQuiet(page);
    await close();
    await edit(mine.replace("mine", "late"));
    await page.keyboard.press("Control+s");
    expect(await noteText(page, "disk")).toMatch(/does not answer/);
    // The browser tells of the requests that found nobody, and of the conflicts, by itself.
    const others = withoutInlineStyles(complaints);
    expect(others.filter((complaint) => !/Failed to load resource|412/.test(complaint))).toEqual([]);
  });
});
