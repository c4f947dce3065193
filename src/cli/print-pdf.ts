/**
 * Prints a page to PDF with a Chromium that is installed here.
 */
import { spawn } from "node:child_process";
import { accessSync, constants, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";
import { reasonOf } from "../disk/reason-of.js";
import { AnnuletError } from "../index.js";
import { holdSignals, Interrupted } from "./signals.js";

/** Names that it goes by. */
const NAMES = ["chromium", "chromium-browser", "google-chrome", "chrome"];

/** How long a page may take, ms. */
const PATIENCE = 60_000;

/** Headless, without a graphics card, and with nothing fetched or looked up: the page needs nothing but itself. */
const FLAGS = [
  "--headless",
  "--disable-gpu",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--disable-default-apps",
  "--disable-extensions",
  "--no-proxy-server",
  "--host-resolver-rules=MAP * ~NOTFOUND",
  "--no-pdf-header-footer",
];

/** Paper, as CSS calls it. */
export type Paper = "a4" | "letter";

/** The program's path; undefined where there is none. */
export function findChromium(path: string = process.env.PATH ?? ""): string | undefined {
  const places = path.split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return places.find((place) => {
    try {
      accessSync(place, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/**
 * The bytes of the PDF that a page prints as. Ctrl-C ends the browser and takes its folder away.
 *
 * @throws AnnuletError `pdf-printer-missing`, `pdf-not-printed`; Interrupted
 */
export function printPdf(html: string, paper: Paper): Promise<Uint8Array> {
  const program = requireChromium();
  return holdSignals(async (caught, stop) => {
    const folder = makeFolder();
    try {
      const [page, output] = [join(folder, "sheet.html"), join(folder, "sheet.pdf")];
      writeFileSync(page, html.replace("</style>", `@page { size: ${paper}; }\n</style>`));
      const profile = `--user-data-dir=${join(folder, "profile")}`;
      await execute(program, [...flags(), profile, `--print-to-pdf=${output}`, pathToFileURL(page).href], stop);
      return Uint8Array.from(readFileSync(output));
    } catch (cause) {
      const signal = await caught();
      if (signal !== undefined) throw new Interrupted(signal);
      const reason = cause instanceof Error ? cause.message.split("\n")[0] : String(cause);
      throw notPrinted(`${program} did not print the sheet: ${reason}.`, HTML_INSTEAD, cause);
    } finally {
      rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
    }
  });
}

/** Root may not use the sandbox; the page is our own and holds no script. */
function flags(): readonly string[] {
  return process.getuid?.() === 0 ? [...FLAGS, "--no-sandbox"] : FLAGS;
}

function makeFolder(): string {
  try {
    return mkdtempSync(join(tmpdir(), "annulet-print-"));
  } catch (cause) {
    const message = `There is no folder for temporary files at ${tmpdir()}: ${reasonOf(cause)}.`;
    throw notPrinted(message, "set TMPDIR to a folder that can be written to", cause);
  }
}

const HTML_INSTEAD = "write the sheet as .html and print it from a browser";

function notPrinted(message: string, hint: string, cause: unknown): AnnuletError {
  return new AnnuletError({ code: "pdf-not-printed", message, hint }, { cause });
}

/** @throws AnnuletError `pdf-printer-missing` */
export function requireChromium(): string {
  const program = findChromium();
  if (program !== undefined) return program;
  throw new AnnuletError({
    code: "pdf-printer-missing",
    message: "PDF is printed by Chromium, and none is installed here.",
    allowed: `a program of one of these names: ${NAMES.join(", ")}`,
    hint: "write the sheet as .html and print it from a browser at 100 %",
  });
}

/**
 * Runs a program to its end, or ends it with all that it has started: they are a process group of their own.
 *
 * @param stop ends it
 */
function execute(program: string, words: readonly string[], stop: AbortSignal): Promise<void> {
  return new Promise((done, failed) => {
    const child = spawn(program, words, { stdio: "ignore", detached: true });
    const end = () => endGroup(child.pid);
    const late = setTimeout(end, PATIENCE);
    stop.addEventListener("abort", end, { once: true });
    child.on("error", failed);
    child.on("close", (code, signal) => {
      clearTimeout(late);
      stop.removeEventListener("abort", end);
      if (code === 0) done();
      else failed(new Error(signal === null ? `it ended with ${code}` : `it was ended by ${signal}`));
    });
    if (stop.aborted) end();
  });
}

function endGroup(pid: number | undefined): void {
  if (pid === undefined) return;
  try {
    process.kill(-pid, "SIGKILL");
  } catch {
    // It has ended by itself.
  }
}
