/**
 * Runs a module in Debian's Chromium: bundles it with vite, serves it on 127.0.0.1 and hands back what it computed.
 */
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { build } from "vite";
import { selfLoading } from "../../tools/self-loading.mjs";

export const CHROMIUM = "/usr/bin/chromium";

export const FLAGS: readonly string[] = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".wasm": "application/wasm",
};

/** How long the page may take to answer, ms. */
const PATIENCE = 90_000;

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Whether there is a browser to test with. */
export function hasBrowser(): boolean {
  return existsSync(CHROMIUM);
}

/**
 * Runs `module`, the text of an ES module whose export `run` takes no argument and gives (a promise of) something that
 * JSON can hold. It may import `annulet` and whatever is installed here. Throws what the page throws or logs as an error,
 * and says which addresses were not found.
 */
export async function runInBrowser(module: string): Promise<unknown> {
  const folder = await mkdtemp(join(tmpdir(), "annulet-page-"));
  try {
    await bundle(module, folder);
    const server = await serve(join(folder, "site"));
    try {
      return await openPage(server.address);
    } finally {
      await server.close();
    }
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function bundle(module: string, folder: string): Promise<void> {
  const page = join(folder, "page");
  await mkdir(page);
  await writeFile(
    join(page, "index.html"),
    '<!doctype html><title>test</title><script type="module" src="./main.js"></script>',
  );
  await writeFile(join(page, "task.js"), module);
  await writeFile(
    join(page, "main.js"),
    'import { run } from "./task.js";\nglobalThis.answer = Promise.resolve().then(run);\n',
  );
  await build({
    root: page,
    base: "./",
    configFile: false,
    logLevel: "error",
    resolve: {
      alias: [
        { find: /^annulet$/, replacement: join(ROOT, "src/index.ts") },
        { find: /^annulet\/(\w+)$/, replacement: join(ROOT, "src/entries/$1.ts") },
      ],
    },
    plugins: [installedHere(), selfLoading()],
    build: { outDir: join(folder, "site"), emptyOutDir: true, target: "es2022", assetsInlineLimit: 0 },
  });
}

/** Finds packages from this checkout, since the page lies in a temporary folder. */
function installedHere() {
  const inCheckout = join(ROOT, "tests/page.js");
  return {
    name: "installed-here",
    enforce: "pre" as const,
    async resolveId(
      this: { resolve(id: string, importer: string, options: { skipSelf: true }): Promise<{ id: string } | null> },
      id: string,
      importer: string | undefined,
    ) {
      if (importer === undefined || importer.startsWith(ROOT) || /^[./\0]/.test(id)) return null;
      return this.resolve(id, inCheckout, { skipSelf: true });
    },
  };
}

/** A folder that is served on this machine. */
export interface Served {
  /** Of its index.html. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves a folder, with headers beside the type. */
export async function serve(folder: string, headers: Readonly<Record<string, string>> = {}): Promise<Served> {
  const server = createServer(async (request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname));
    try {
      const bytes = await readFile(join(folder, path));
      const type = MEDIA_TYPES[extname(path)] ?? "application/octet-stream";
      response.writeHead(200, { "content-type": type, ...headers }).end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready, failed) => {
    server.once("error", failed);
    server.listen(0, "127.0.0.1", ready);
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/index.html`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
    },
  };
}

/** What the page at an address puts into `globalThis.answer`, a promise too. Throws what it throws or logs as an error. */
export async function openPage(address: string): Promise<unknown> {
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: [...FLAGS] });
  const complaints: string[] = [];
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(PATIENCE);
    page.on("pageerror", (error) => complaints.push(error.stack ?? error.message));
    page.on("console", (message) => message.type() === "error" && complaints.push(message.text()));
    page.on("response", (response) => {
      // Chromium asks for an icon by itself.
      if (response.status() >= 400 && !response.url().endsWith("/favicon.ico")) {
        complaints.push(`${response.status()} ${response.url()}`);
      }
    });
    await page.goto(address);
    await page.waitForFunction("globalThis.answer !== undefined");
    return JSON.parse(await page.evaluate("globalThis.answer.then(JSON.stringify)"));
  } catch (error) {
    throw new Error([String(error), ...complaints].join("\n"), { cause: error });
  } finally {
    await browser.close();
  }
}
