// Across: the ring on its canvas, in a browser
import { decode } from "fast-png";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";

/** Counts what is drawn. */
const COUNT_DRAWS = `
globalThis.draws = 0;
const draw = WebGL2RenderingContext.prototype.drawElements;
WebGL2RenderingContext.prototype.drawElements = function (...given) {
  globalThis.draws++;
  return draw.apply(this, given);
};`;

/** What is seen of the ring: red, green, blue of each pixel. */
async function pictureOf(page: Page): Promise<Uint8Array> {
  // Two frames: the first draws what was asked for.
  await page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
  const { data, channels } = decode(await page.locator(".ring-picture").screenshot());
  return Uint8Array.from(
    { length: (data.length / channels) * 3 },
    (_, i) => data[Math.floor(i / 3) * channels + (i % 3)],
  );
}

/** Share of pixels that differ by more than a shade. */
function differing(one: Uint8Array, other: Uint8Array): number {
  let count = 0;
  for (let i = 0; i < one.length; i += 3) {
    if ([0, 1, 2].some((k) => Math.abs(one[i + k] - other[i + k]) > 24)) count++;
  }
  return count / (one.length / 3);
}

describe.skipIf(!hasBrowser())("the ring on its canvas", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("is drawn, turned, cut, dimensioned and measured, and outlives a lost graphics card", async () => {
    const { page, complaints } = await browser.open(
      { before: COUNT_DRAWS, drawn: true, start: true },
      await browser.profile({ reducedMotion: "reduce" }),
    );
    await page.getByText("Saltmarsh lattice").first().click();
    await expect.poll(() => page.locator(".title-name input").inputValue()).toMatch(/lattice/);
    await page.locator(".title-work progress").waitFor();
    await page.locator(".title-work [role=status]", { hasText: "up to date" }).waitFor();
    await page.waitForSelector("canvas[data-detail=full]");
    await page.getByRole("button", { name: "Findings at their places" }).click();
    await page.getByRole("button", { name: "along the finger" }).click();
    const front = await pictureOf(page);
    const empty = front.slice(0, 3);
    const paper = new Uint8Array(front.length).map((_, i) => empty[i % 3]);
    expect(differing(front, paper)).toBeGreaterThan(0.05);

    // A distance: across the front face of the band, from its inner to its outer edge. What is clicked beside it is nothing.
    const status = page.locator(".ring-status");
    const box = await page.locator(".ring-picture").boundingBox();
    if (box === null) throw new Error("no picture");
    await page.getByRole("button", { name: "Measure between two places" }).click();
    const [middleX, middleY] = [box.width / 2, box.height / 2];
    const click = (x: number, y: number) => page.locator(".ring-picture").click({ position: { x, y } });
    await click(middleX, middleY);
    expect(await status.textContent()).toMatch(/first place/);
    const onRing = [0, 1].map((side) => firstMetal(front, box, side === 0));
    await click(onRing[0], middleY);
    await click(onRing[1], middleY);
    const distance = Number.parseFloat((await status.textContent()) ?? "");
    // The ring is 21.7 mm across; the places lie on its outer edge, some pixels in.
    expect(distance).toBeGreaterThan(19);
    expect(distance).toBeLessThan(22.5);
    await page.locator(".ring-picture").press("Escape");

    await page.getByRole("button", { name: "Dimension lines" }).click();
    const dimensioned = await pictureOf(page);
    expect(differing(dimensioned, front)).toBeGreaterThan(0.001);
    await page.getByRole("button", { name: "Dimension lines" }).click();
    expect(differing(await pictureOf(page), front)).toBeLessThan(0.0005);

    await page.getByLabel("Cut", { exact: true }).selectOption("axis");
    expect(differing(await pictureOf(page), front)).toBeGreaterThan(0.02);
    await page.getByRole("slider", { name: "Where the ring is cut" }).press("ArrowUp");
    expect(await status.textContent()).toMatch(/91°/);
    await page.getByLabel("Cut", { exact: true }).selectOption("none");

    await page.locator(".ring-picture").press("ArrowLeft");
    const turned = await pictureOf(page);
    expect(differing(turned, front)).toBeGreaterThan(0.01);

    // What is pressed is chosen in all views, and marked; beside the ring nothing is.
    const chosen = page.locator(".strip-tools select").first();
    await page.getByRole("button", { name: "from the top" }).click();
    // A key, so that the sign of the focus is in this picture too.
    await page.locator(".ring-picture").press("Escape");
    const side = await pictureOf(page);
    await page.locator(".ring-picture").press("Enter");
    await expect.poll(() => status.textContent()).toMatch(/Chosen: boss/);
    expect(await chosen.evaluate((select: HTMLSelectElement) => select.selectedOptions[0].text)).toBe("boss");
    expect(await page.locator(".fold-entry[data-selected=true] > summary").first().textContent()).toContain("boss");
    await expect.poll(async () => differing(await pictureOf(page), side)).toBeGreaterThan(0.002);
    await click(4, middleY);
    await expect.poll(async () => differing(await pictureOf(page), side)).toBeLessThan(0.0005);
    await page.getByRole("button", { name: "along the finger" }).click();
    await page.locator(".ring-picture").press("ArrowLeft");
    await pictureOf(page);

    // Nothing changes, nothing is drawn.
    const before = await page.evaluate("globalThis.draws");
    await page.waitForTimeout(400);
    expect(await page.evaluate("globalThis.draws")).toBe(before);
    expect(complaints).toEqual([]);

    await page.evaluate(() => {
      const context = document.querySelector("canvas")?.getContext("webgl2");
      const lose = context?.getExtension("WEBGL_lose_context");
      lose?.loseContext();
      setTimeout(() => lose?.restoreContext(), 300);
    });
    await expect.poll(() => status.textContent()).toMatch(/graphics card/);
    await expect.poll(() => status.textContent()).not.toMatch(/graphics card/);
    expect(differing(await pictureOf(page), turned)).toBeLessThan(0.01);
  });

  it("says so where the browser draws no solid pictures, and the rest works", async () => {
    const none = `const own = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
        return kind.startsWith("webgl") ? null : own.call(this, kind, ...rest);
      };`;
    const { page } = await browser.open({ before: none });
    await expect.poll(() => page.locator(".ring-status").textContent()).toMatch(/WebGL/);
    await page.waitForSelector(".sheet-strip svg path", { state: "attached" });
  });
});

/** Where the ring begins from the left or the right, on the picture's middle line, some pixels in. */
function firstMetal(
  picture: Uint8Array,
  box: { readonly width: number; readonly height: number },
  left: boolean,
): number {
  const width = Math.round(box.width);
  const line = Math.floor(box.height / 2) * width * 3;
  const at = (x: number) => picture.subarray(line + 3 * x, line + 3 * x + 3);
  const paper = at(left ? 3 : width - 4);
  for (let i = 4; i < width / 2; i++) {
    const x = left ? i : width - 1 - i;
    if ([0, 1, 2].some((k) => Math.abs(at(x)[k] - paper[k]) > 24)) return left ? x + 3 : x - 3;
  }
  throw new Error("no ring on the middle line");
}
