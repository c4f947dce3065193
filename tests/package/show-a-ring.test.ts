// Across: the built package's worker and view on an app's own page
/**
 * The lines of examples/guide/browser.md that show a ring, in Chromium as they are written: in plain HTML, and through a bundler.
 * Skipped where there is no browser or the package is not built: `npm run build`.
 */
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { openRing } from "annulet";
import { build as viteBuild } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser, openPage, serve } from "../support/browser.js";
import { guideBlock, guideHtml } from "../support/guide-block.js";
import { installPackage } from "../support/installed.js";

const PACKAGE = fileURLToPath(new URL("../../dist/view.js", import.meta.url));

const design = {
  annulet: 1,
  size: { system: "iso", value: 54 },
  tolerance: 0.1,
  profile: { width: 6, thickness: 2, outside: { form: "flat" } },
  pattern: { symmetry: "p2mm", regions: [{ path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", height: 0.3 }] },
};

/** What the guide leaves to the app: its design. */
const GIVEN = `<!doctype html><title>ring</title><body><script>globalThis.design = ${JSON.stringify(design)};</script>\n`;

/** Asked in the same task as the picture is drawn in: how much of it is not the page's ground, and what was drawn. */
const LOOK = `
const gl = renderer.getContext();
const pixels = new Uint8Array(4 * gl.drawingBufferWidth * gl.drawingBufferHeight);
gl.readPixels(0, 0, gl.drawingBufferWidth, gl.drawingBufferHeight, gl.RGBA, gl.UNSIGNED_BYTE, pixels);
globalThis.answer = Promise.resolve({
  triangles: metal.buffers.triangles.length / 3,
  covered: pixels.filter((value, at) => at % 4 === 3 && value > 127).length / (pixels.length / 4),
  lines: lines.object.children.length,
});
`;

interface Seen {
  readonly triangles: number;
  /** Share of the picture. */
  readonly covered: number;
  readonly lines: number;
}

let app: string;

beforeAll(() => {
  if (!hasBrowser() || !existsSync(PACKAGE)) return;
  app = mkdtempSync(join(tmpdir(), "annulet-app-"));
  installPackage(app);
  writeFileSync(join(app, "show.js"), guideBlock("show.js: with a bundler") + LOOK);
  writeFileSync(join(app, "rings.js"), guideBlock("rings.js: the worker"));
});

afterAll(() => {
  if (app !== undefined) rmSync(app, { recursive: true, force: true });
});

async function look(folder: string): Promise<Seen> {
  const server = await serve(folder);
  try {
    return (await openPage(server.address)) as Seen;
  } finally {
    await server.close();
  }
}

async function expectRing(seen: Seen): Promise<void> {
  const { triangles } = await openRing(design).solid({ detail: "draft" });
  expect(seen.triangles).toBe(triangles.length / 3);
  // A ring before an empty ground, with room round it.
  expect(seen.covered).toBeGreaterThan(0.03);
  expect(seen.covered).toBeLessThan(0.6);
  expect(seen.lines).toBeGreaterThan(0);
}

describe.skipIf(!hasBrowser() || !existsSync(PACKAGE))("a ring is shown by the guide's lines", () => {
  it("through a bundler", async () => {
    writeFileSync(join(app, "index.html"), `${GIVEN}<script type="module" src="./show.js"></script>`);
    await viteBuild({
      root: app,
      configFile: false,
      logLevel: "error",
      // The guide's lines wait at the module's top.
      build: { outDir: "built", minify: false, target: "es2022" },
    });
    await expectRing(await look(join(app, "built")));
  });

  it("in plain HTML", async () => {
    writeFileSync(join(app, "index.html"), GIVEN + guideHtml("importmap"));
    // As the guide says of workers: they have no import map.
    const worker = guideBlock("rings.js: the worker").replace(
      '"annulet/worker"',
      '"/node_modules/annulet/dist/worker.js"',
    );
    writeFileSync(join(app, "rings.js"), worker);
    await expectRing(await look(app));
  });
});
