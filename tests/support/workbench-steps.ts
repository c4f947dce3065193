/**
 * What a maker does on the workbench's page, for tests: opens files, types the design, downloads.
 */
import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";

/** A file for the page's own field. */
export const asFile = (name: string, content: string | Uint8Array) => ({
  name,
  mimeType: "application/octet-stream",
  buffer: Buffer.from(content),
});

/** Opens files by the page's field. */
export async function openFiles(page: Page, ...files: readonly ReturnType<typeof asFile>[]): Promise<void> {
  await page.locator(".file-bar input[type=file]").setInputFiles([...files]);
}

/**
 * What a page complained of but for style attributes: of these the browser tells once for each time that a selection in the text
 * editor is written over; where that comes from is not found yet.
 */
export function withoutInlineStyles(complaints: readonly string[]): string[] {
  return complaints.filter((complaint) => !complaint.includes("Applying inline style"));
}

/** Waits until all that the page was asked for is shown, in full too. */
export async function whenQuiet(page: Page): Promise<void> {
  // Two frames: what was done a moment ago is on its way then.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await page.waitForSelector('main[aria-busy="false"]');
}

/** The bytes of a download, by the ending of its name. */
export async function download(page: Page, label: string): Promise<Uint8Array> {
  const coming = page.waitForEvent("download");
  await page
    .locator(".drop-menu", { has: page.getByText("Download", { exact: true }) })
    .locator("summary")
    .click();
  await page.getByRole("button", { name: label, exact: true }).click();
  return Uint8Array.from(readFileSync(await (await coming).path()));
}

/** The design as the page has it. */
export async function designText(page: Page): Promise<string> {
  return new TextDecoder().decode(await download(page, "Design (JSON)"));
}

/** Waits for a line that tells something, and gives its text. */
export async function noteText(page: Page, name: string): Promise<string> {
  return (await page.locator(`[data-note="${name}"] > span`).textContent()) ?? "";
}

/** Presses a button of a line that tells something. */
export async function chooseInNote(page: Page, name: string, button: string): Promise<void> {
  await page.locator(`[data-note="${name}"]`).getByRole("button", { name: button }).click();
}

/** Writes the design anew in the text editor. */
export async function typeDesign(page: Page, text: string): Promise<void> {
  const panel = page.locator("details.panel-text");
  if ((await panel.getAttribute("open")) === null) await panel.locator("summary").click();
  await panel.locator(".cm-content").click();
  await page.keyboard.press("Control+a");
  await page.keyboard.insertText(text);
}

/** The lines of the list of changes. */
export async function changeLines(page: Page): Promise<Locator> {
  const panel = page.locator("details.panel-changes");
  if ((await panel.getAttribute("open")) === null) await panel.locator("summary").click();
  return panel.locator("ol button");
}
