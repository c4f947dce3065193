/**
 * The workbench in Debian's Chromium: builds the page where what lies in dist is older than its sources, opens it, and
 * notes whatever it should not do.
 */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { build } from "vite";
import { CHROMIUM, FLAGS } from "./browser.js";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

const IN_DIST = join(ROOT, "dist/workbench/workbench.html");

/** What the page is made of. */
const SOURCES = ["src", "tools", "examples", "package-lock.json", "vite.workbench.config.mjs"];

/** How long the page may take for any one thing, ms: the machine may be busy. */
const PATIENCE = 150_000;

let built: Promise<string> | undefined;

/** The page's file: that in dist where it is newer than all its sources, else one that is built for these tests, once. */
export function workbenchFile(): Promise<string> {
  built ??= findOrBuild();
  return built;
}

async function findOrBuild(): Promise<string> {
  const newest = Math.max(...SOURCES.map((source) => newestIn(join(ROOT, source))));
  const isFresh = (file: string) => existsSync(file) && statSync(file).mtimeMs > newest;
  const folder = join(ROOT, "build/workbench-for-tests");
  const own = join(folder, "workbench.html");
  const found = [IN_DIST, own].find(isFresh);
  if (found !== undefined) return found;
  const fresh = `${folder}-${process.pid}`;
  await build({
    configFile: join(ROOT, "vite.workbench.config.mjs"),
    logLevel: "error",
    build: { outDir: fresh, emptyOutDir: true },
  });
  mkdirSync(folder, { recursive: true });
  renameSync(join(fresh, "workbench.html"), own);
  rmSync(fresh, { recursive: true });
  return own;
}

/** When the newest file was written, ms. */
function newestIn(path: string): number {
  if (!statSync(path).isDirectory()) return statSync(path).mtimeMs;
  const entries = readdirSync(path, { withFileTypes: true }).filter(({ name }) => /^[\w.-]+$/.test(name));
  return Math.max(...entries.map(({ name }) => newestIn(join(path, name))), 0);
}

/** A page of the workbench, with what it did that it should not. */
export interface OpenedPage {
  readonly page: Page;
  /** Errors that the page threw, what it logged as an error or a warning, and requests that left it. Holds nothing at the end. */
  readonly complaints: string[];
}

/** How a page is opened. */
export interface PageOptions {
  /** Default the page's file, from the disk. */
  readonly address?: string;
  /** A page that leads to the address by itself. */
  readonly led?: string;
  /** Whether the start, which lies over an empty bench, stays; true of a page without a bench. Default it is closed. */
  readonly start?: boolean;
  /** Whether the ring is drawn. Default it is not, since the processor draws it here: all else of the view stays. */
  readonly drawn?: boolean;
  /** Runs in the page before anything of its own: JavaScript. */
  readonly before?: string;
}

/** One Chromium for the tests of a file. Pages of one profile share their storage. */
export interface WorkbenchBrowser {
  /** A profile of its own: nothing is stored yet. */
  profile(options?: BrowserContextOptions): Promise<BrowserContext>;
  /** Opens a page in a profile, default a new one. */
  open(options?: PageOptions, profile?: BrowserContext): Promise<OpenedPage>;
  close(): Promise<void>;
}

/** Starts Chromium. Ask `hasBrowser` first. */
export async function startWorkbenchBrowser(): Promise<WorkbenchBrowser> {
  const browser: Browser = await chromium.launch({
    executablePath: CHROMIUM,
    args: [...FLAGS, "--ignore-gpu-blocklist"],
  });
  const profile = (options: BrowserContextOptions = {}): Promise<BrowserContext> =>
    browser.newContext({ viewport: { width: 1440, height: 900 }, locale: "en-GB", acceptDownloads: true, ...options });
  return {
    profile,
    open: async (options = {}, context) => openPage(context ?? (await profile()), options),
    close: () => browser.close(),
  };
}

/** Draws nothing where WebGL is asked to. */
const UNDRAWN = `for (const draw of ["drawElements", "drawArrays"]) WebGL2RenderingContext.prototype[draw] = () => undefined;`;

async function openPage(
  context: BrowserContext,
  { address, led, before, drawn = false, start = false }: PageOptions,
): Promise<OpenedPage> {
  const place = address ?? pathToFileURL(await workbenchFile()).href;
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.stack ?? error.message));
  page.on("console", (message) => {
    // Of a canvas that is shown without a graphics card Chromium says that it reads it: the machine's matter, not the page's.
    if (message.text().includes("GPU stall due to ReadPixels")) return;
    if (["error", "warning"].includes(message.type())) complaints.push(`${message.type()}: ${message.text()}`);
  });
  const origin = new URL(place).protocol === "file:" ? place : `${new URL(place).origin}/`;
  context.on("request", (request) => {
    if (request.url() !== led && !isOwn(request.url(), origin)) complaints.push(`asked for ${request.url()}`);
  });
  if (!drawn) await page.addInitScript(UNDRAWN);
  if (before !== undefined) await page.addInitScript(before);
  await page.goto(led ?? place);
  await page.waitForURL(place);
  if (!start) await closeStart(page);
  return { page, complaints };
}

/** Waits for the page, and lays the start aside where there is one. */
async function closeStart(page: Page): Promise<void> {
  await page.waitForSelector(".sheet");
  if (await page.locator(".start").isVisible()) await page.keyboard.press("Escape");
}

/** Whether an address is the page's own: itself, its server, or bytes that it made. */
function isOwn(address: string, origin: string): boolean {
  return address.startsWith(origin) || /^(blob|data):/.test(address);
}
