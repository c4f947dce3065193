// Across: the page of one ring that make writes, in a browser
import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { annulet, PLAIN, put, tempFolder } from "../../cli/support.js";
import { hasBrowser } from "../../support/browser.js";
import { startWorkbenchBrowser, type WorkbenchBrowser } from "../../support/workbench-page.js";

const TEMPLATE = fileURLToPath(new URL("../../../dist/workbench/one-ring.html", import.meta.url));

const LATTICE = fileURLToPath(new URL("../../../examples/saltmarsh-lattice.json", import.meta.url));

/** Most bytes of a page of the README's first ring. */
const MOST_BYTES = 1.5e6;

describe.skipIf(!hasBrowser() || !existsSync(TEMPLATE))("a page of one ring", () => {
  let browser: WorkbenchBrowser;
  beforeAll(async () => {
    browser = await startWorkbenchBrowser();
  });
  afterAll(() => browser?.close());

  it("shows the ring without network, in other metal, with dimension lines, whatever its name is", async () => {
    const folder = tempFolder();
    const name = "</script><img src=x onerror=alert(1)>";
    const stones = [{ size: 1, place: { form: "single" }, setting: { form: "flush" } }];
    const design = put(folder, "ring.json", { ...PLAIN, name, stones, casting: { shrinkage: 2 } });
    const [page, report] = ["ring.html", "report.json"].map((file) => join(folder, file));
    expect((await annulet(["make", design, "-o", page, "-r", report, "--stance", "standing"])).code).toBe(0);
    const { files } = JSON.parse(readFileSync(report, "utf8"));
    expect(files).toMatchObject([{ name: "ring.html", sha256: expect.stringMatching(/^[0-9a-f]{64}$/) }]);

    const address = pathToFileURL(page).href;
    const opened = await browser.open({ address, start: true }, await browser.profile({ offline: true }));
    await opened.page.getByRole("heading", { name }).waitFor();
    await opened.page.getByLabel("Metal").selectOption("au750-red");
    await opened.page.getByLabel("Surface").selectOption("satin");
    await opened.page.getByRole("button", { name: "Dimension lines" }).click();
    await opened.page.getByRole("button", { name: "Stones", pressed: true }).click();
    await opened.page.getByRole("button", { name: "Stones", pressed: false }).click();
    await opened.page.getByRole("application").press("ArrowLeft");
    // The finished piece, not the larger master: 54 mm round.
    expect(await opened.page.locator("footer").textContent()).toMatch(
      /Ø 17\.19 mm · 4\.00 × 1\.60 mm · [\d.]+ (to [\d.]+ )?g/,
    );
    expect(opened.complaints).toEqual([]);
  });
});

describe.skipIf(!existsSync(TEMPLATE))("the page of the README's first ring", () => {
  it("is small enough to be sent", async () => {
    const page = join(tempFolder(), "lattice.html");
    expect((await annulet(["make", LATTICE, "-o", page, "-q"])).code).toBe(0);
    expect(statSync(page).size).toBeLessThan(MOST_BYTES);
  });
});
